"""A strand of six wires round one: pulled (Costello's linear theory) and bent (a helical rod, integrated).

Pulling: Costello, Theory of Wire Rope, 2nd ed. 1997, ch. 3; ends held against rotation; equations from memory, alpha the
angle of the helix above the transverse plane. Unknowns are the strain of the outer wires and the change of alpha, solved
as a linear system; R1, R2 are the radii of the straight wire and of the outer ones. `modulus_share` is the strand's
modulus over the wire's, on the metal's own area.
Bending: a wire laid at lambda takes the strand's bending moment partly as bending, partly as torsion; the strain energy of
both is integrated over a turn. `share` is the bending stiffness over that of a straight wire, for one metre of strand.
Made with:  python3 strand.py > strand.json
"""

import json

import numpy as np
from scipy.integrate import quad


def pulled(straight, outer, lay, poisson):
    r1, r2 = straight, outer
    a = np.pi / 2 - np.radians(lay)
    s, c, t = np.sin(a), np.cos(a), np.tan(a)
    r = r1 + r2
    e1 = 1e-3
    # Unknowns e2 (strain of the outer wires) and da (change of alpha):
    #   e1 = e2 + da / tan a
    #   0  = e2 / tan a - da + poisson (r1 e1 + r2 e2) / (r tan a)
    system = np.array([[1.0, 1.0 / t], [1.0 / t + poisson * r2 / (r * t), -1.0]])
    e2, da = np.linalg.solve(system, np.array([e1, -poisson * r1 * e1 / (r * t)]))
    squeeze = poisson * (r1 * e1 + r2 * e2) / r
    bent = -2 * s * c * (r2 / r) * da + squeeze * c * c * (r2 / r)
    twisted = (1 - 2 * s * s) * (r2 / r) * da + squeeze * s * c * (r2 / r)
    couple = np.pi / 4 * bent
    torque = np.pi / (4 * (1 + poisson)) * twisted
    pull = np.pi * e2
    shear = torque * c * c * (r2 / r) - couple * s * c * (r2 / r)
    force = np.pi * r1**2 * e1 + 6 * r2**2 * (pull * s + shear * c)
    return force / (np.pi * (r1**2 + 6 * r2**2) * e1), e2 / e1


def layered(counts, lay, poisson):
    """Straight wire and layers of equal wires, radii of helices 2, 4 ... wires, all laid alike; one system for all.

    Unknowns for each layer: its wires' strain x and change of angle d. A layer lies on what is inside it, whose radius
    shrinks by poisson times (strain of the straight wire + 2 x of each layer between + its own x), in wire radii.
    """
    a = np.pi / 2 - np.radians(lay)
    s, c, t = np.sin(a), np.cos(a), np.tan(a)
    m = len(counts)
    system, given = np.zeros((2 * m, 2 * m)), np.zeros(2 * m)
    for j in range(m):
        r = 2.0 * (j + 1)
        # 1 = x + d / t, and 0 = x / t - d + poisson * (1 + sum of 2 x below + x) / (r t)
        system[2 * j, 2 * j], system[2 * j, 2 * j + 1], given[2 * j] = 1.0, 1.0 / t, 1.0
        system[2 * j + 1, 2 * j] = 1.0 / t + poisson / (r * t)
        system[2 * j + 1, 2 * j + 1] = -1.0
        for i in range(j):
            system[2 * j + 1, 2 * i] = 2.0 * poisson / (r * t)
        given[2 * j + 1] = -poisson / (r * t)
    solved = np.linalg.solve(system, given)
    force, grown = np.pi, 1.0
    for j, count in enumerate(counts):
        r, x, d = 2.0 * (j + 1), solved[2 * j], solved[2 * j + 1]
        squeeze = poisson * (grown + x) / r
        couple = np.pi / 4 * (-2 * s * c / r * d + squeeze * c * c / r)
        torque = np.pi / (4 * (1 + poisson)) * ((1 - 2 * s * s) / r * d + squeeze * s * c / r)
        force += count * (np.pi * x * s + (torque * c * c / r - couple * s * c / r) * c)
        grown += 2 * x
    return force / (np.pi * (1 + sum(counts)))


def bent(lay, poisson):
    lam = np.radians(lay)

    def energy(phi):
        # Unit moment about a fixed axis across the strand; the wire's tangent turns round the strand with phi.
        tangent = np.array([np.sin(lam) * np.cos(phi), np.sin(lam) * np.sin(phi), np.cos(lam)])
        along = tangent[0]
        # Torsional stiffness of a round wire is its bending stiffness over (1 + poisson).
        return (1 - along**2) + (1 + poisson) * along**2

    compliance = quad(energy, 0, 2 * np.pi, epsabs=0, epsrel=1e-13)[0] / (2 * np.pi) / np.cos(lam)
    return 1 / compliance


share, ratio = pulled(1.97e-3, 1.865e-3, np.degrees(np.arctan(2 * np.pi * (1.97 + 1.865) / 115)), 0.3)
test_strand = {"modulus_share": share, "outer_strain_share": ratio}
pulls = []
bends = []
for lay in (0.0, 4.0, 8.0, 10.0, 11.834, 12.0, 15.0):
    if lay == 0.0:
        lay = 1e-6
    for poisson in (0.29, 0.36):
        one = {"lay_deg": lay, "poisson": poisson}
        pulls.append({"layout": "1x7"} | one | {"modulus_share": pulled(1.0, 1.0, lay, poisson)[0]})
        pulls.append({"layout": "1x19"} | one | {"modulus_share": layered((6, 12), lay, poisson)})
for lay in (0.0, 5.0, 12.0, 20.0, 30.0, 45.0):
    for poisson in (0.29, 0.39):
        bends.append({"lay_deg": lay, "poisson": poisson, "share": bent(lay, poisson)})

print(json.dumps({"test_strand": test_strand, "pulls": pulls, "bends": bends}, indent=1))
