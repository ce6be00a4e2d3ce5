"""Twisting: torsional stiffness and polar inertia integrated over the section, and the first torsional partial as an eigenvalue.

Stiffness is the integral of G r^2, inertia that of rho r^2; tubes are integrated over their ring. The eigenvalue is that of a
shaft held at both ends, by finite elements of two nodes; speed = 2 L f. Impedance is the torque for a turn at one radian a
second sent into an endless shaft, found by stepping the wave equation, over the square of the radius.
Made with:  python3 twisting.py > twisting.json
"""

import json

import numpy as np
from scipy.integrate import quad
from scipy.linalg import eigh

ELEMENTS = 400


def over_ring(inner, outer, value):
    return quad(lambda r: value * r**2 * 2 * np.pi * r, inner, outer, epsabs=0, epsrel=1e-13)[0]


def speed(stiffness, inertia, length):
    h = length / ELEMENTS
    m = ELEMENTS - 1
    stiff = stiffness / h * (2 * np.eye(m) - np.diag(np.ones(m - 1), 1) - np.diag(np.ones(m - 1), -1))
    inert = inertia * h / 6 * (4 * np.eye(m) + np.diag(np.ones(m - 1), 1) + np.diag(np.ones(m - 1), -1))
    w2 = eigh(stiff, inert, subset_by_index=[0, 0])[0][0]
    return 2 * length * np.sqrt(w2) / (2 * np.pi)


def impedance(stiffness, inertia, radius):
    # A shaft at rest whose end begins to turn at 1 rad/s, at the step where finite differences are exact.
    n = 200
    now, before = np.zeros(n), np.zeros(n)
    h = 1.0 / n
    dt = h / np.sqrt(stiffness / inertia)
    for step in range(1, 100):
        new = np.zeros(n)
        new[1:-1] = now[2:] + now[:-2] - before[1:-1]
        new[0] = step * dt
        before, now = now, new
    torque = stiffness * (now[0] - now[1]) / h
    return torque / radius**2


solids = [{"shear_pa": g, "diameter_m": d, "stiffness": over_ring(0, d / 2, g)} for g, d in ((7.9e10, 0.26e-3), (7.5e8, 0.76e-3), (7.1e10, 0.5e-3))]
tubes = [
    {"shear_pa": g, "mean_m": d, "thickness_m": t, "stiffness": over_ring((d - t) / 2, (d + t) / 2, g), "bending": over_ring((d - t) / 2, (d + t) / 2, g) / 2}
    for g, d, t in ((3.0e10, 0.6e-3, 0.05e-3), (1.5e11, 1.1e-3, 0.1e-3), (4.1e10, 0.8e-3, 0.15e-3))
]
wires = []
for layout, count, across in (("1x7", 7, 3), ("1x19", 19, 5), ("7x7", 49, 9)):
    wires.append({"layout": layout, "diameter_m": 0.6e-3, "share": count * over_ring(0, 0.3e-3 / across, 1.0)})
waves = []
for name, stiffness, inertia, length, radius in (
    ("cello G by Woodhouse and Loach", 2.9e-4, 4.2e-10, 0.69, 0.6e-3),
    ("violin E, steel rod", over_ring(0, 0.13e-3, 7.9e10), over_ring(0, 0.13e-3, 7850.0), 0.328, 0.13e-3),
    ("violin A, gut", over_ring(0, 0.38e-3, 7.5e8), over_ring(0, 0.38e-3, 1320.0), 0.328, 0.38e-3),
):
    given = {"name": name, "stiffness": stiffness, "inertia": inertia, "radius_m": radius}
    waves.append(given | {"speed_m_s": float(f"{speed(stiffness, inertia, length):.9g}"), "impedance_kg_s": float(f"{impedance(stiffness, inertia, radius):.9g}")})
print(json.dumps({"solids": solids, "tubes": tubes, "wires": wires, "waves": waves}, indent=1))
