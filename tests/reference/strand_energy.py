"""A strand of six wires round one, pulled by a given amount: the state of least elastic energy, geometry in full.

No theory of strands is used. A wire that lies on a helix of radius r and angle a (from the plane across) has curvature
cos^2 a / r and torsion sin a cos a / r, its length is that of the strand over sin a. The strand is stretched by e with its
ends held against rotation, so that every helix keeps its turns. Each wire thins by Poisson's ratio times its own strain,
and the helix lies on the straight wire: r = R1 (1 - nu e) + R2 (1 - nu x). Its strain x follows from that geometry alone.
The wires do work on each other where they touch, which the linear theory leaves out: hence its being up to 1 % stiffer.
Energy: pulling E A x^2/2, bending E I (dk)^2/2, torsion G J (dt)^2/2 along each wire, from the state of no strain. The force
is the slope of the whole energy. `modulus_share` is the strand's modulus over the wire's, on the metal's own area.
Made with:  python3 strand_energy.py > strand_energy.json
"""

import json

import numpy as np
from scipy.optimize import brentq


def helix(radius, height, turns):
    """Length, curvature and torsion of a helix of that radius and height with that angle turned through."""
    length = np.hypot(height, turns * radius)
    sine, cosine = height / length, turns * radius / length
    return length, cosine**2 / radius, sine * cosine / radius


def energy(strain, r1, r2, lay, poisson):
    radius, height = r1 + r2, 1.0
    turns = np.tan(np.radians(lay)) * height / radius
    length, bend, twist = helix(radius, height, turns)

    def now(x):
        return helix(r1 * (1 - poisson * strain) + r2 * (1 - poisson * x), height * (1 + strain), turns)

    x = brentq(lambda x: now(x)[0] / length - 1 - x, -0.1, 0.1, xtol=1e-17, rtol=1e-15)
    _, bent, twisted = now(x)
    area, second = np.pi * r2**2, np.pi * r2**4 / 4
    wire = area * x**2 + second * (bent - bend) ** 2 + 2 * second / (2 * (1 + poisson)) * (twisted - twist) ** 2
    return (np.pi * r1**2 * strain**2 * height + 6 * wire * length) / 2


def share(r1, r2, lay, poisson):
    # The energy is a parabola near no strain: its second difference, at steps that leave ten digits and no third order.
    step = 1e-4
    second = (energy(step, r1, r2, lay, poisson) + energy(-step, r1, r2, lay, poisson)) / step**2
    return second / (np.pi * (r1**2 + 6 * r2**2))


worked = share(1.97, 1.865, np.degrees(np.arctan(2 * np.pi * (1.97 + 1.865) / 115)), 0.3)
pulls = []
for lay in (1.0, 4.0, 8.0, 10.0, 12.0, 15.0):
    for poisson in (0.29, 0.36):
        pulls.append({"lay_deg": lay, "poisson": poisson, "modulus_share": float(f"{share(1.0, 1.0, lay, poisson):.9g}")})
print(json.dumps({"test_strand": {"modulus_share": float(f"{worked:.9g}")}, "pulls": pulls}, indent=1))
