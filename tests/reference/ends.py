"""A stiff string between pinned ends and between clamped ones, by finite elements; eigenvalues by scipy.

Cubic Hermite elements on a mesh that is finest at the ends, where stiffness bends a clamped string in a layer of sqrt(EI/T).
`hz` are the partials; `end_curvature` is that of the first one at the clamp, for one metre of amplitude in the middle.
No closed form of the model is used.
Made with:  python3 ends.py > ends.json
"""

import json

import numpy as np
from scipy.linalg import eigh

ELEMENTS, PARTIALS = 100, 10


def matrices(length, tension, bending, mass):
    x = length / 2 * (1 - np.cos(np.pi * np.arange(ELEMENTS + 1) / ELEMENTS))
    n = 2 * (ELEMENTS + 1)
    stiff, inert = np.zeros((n, n)), np.zeros((n, n))
    for i in range(ELEMENTS):
        h = x[i + 1] - x[i]
        bend = np.array([[12, 6 * h, -12, 6 * h], [6 * h, 4 * h * h, -6 * h, 2 * h * h], [-12, -6 * h, 12, -6 * h], [6 * h, 2 * h * h, -6 * h, 4 * h * h]]) / h**3
        pull = np.array([[36, 3 * h, -36, 3 * h], [3 * h, 4 * h * h, -3 * h, -h * h], [-36, -3 * h, 36, -3 * h], [3 * h, -h * h, -3 * h, 4 * h * h]]) / (30 * h)
        weigh = np.array([[156, 22 * h, 54, -13 * h], [22 * h, 4 * h * h, 13 * h, -3 * h * h], [54, 13 * h, 156, -22 * h], [-13 * h, -3 * h * h, -22 * h, 4 * h * h]]) * h / 420
        at = slice(2 * i, 2 * i + 4)
        stiff[at, at] += bending * bend + tension * pull
        inert[at, at] += mass * weigh
    return x, stiff, inert


def partials(length, tension, bending, mass, clamped):
    x, stiff, inert = matrices(length, tension, bending, mass)
    n = len(stiff)
    held = [0, 1, n - 2, n - 1] if clamped else [0, n - 2]
    free = [i for i in range(n) if i not in held]
    m = len(free)
    # The other way round, so that the low partials are the largest eigenvalues and keep their digits.
    values, shapes = eigh(inert[np.ix_(free, free)], stiff[np.ix_(free, free)], subset_by_index=[m - PARTIALS, m - 1])
    values, shapes = 1 / values[::-1], shapes[:, ::-1]
    whole = np.zeros(n)
    whole[free] = shapes[:, 0]
    h = x[1] - x[0]
    curvature = -6 * whole[0] / h**2 - 4 * whole[1] / h + 6 * whole[2] / h**2 - 2 * whole[3] / h
    return np.sqrt(values) / (2 * np.pi), abs(curvature / whole[ELEMENTS])


rows = []
for name, tension, mass, length, bending in (
    ("violin E, steel", 73.0, 4.1e-4, 0.325, 4.5e-5),
    ("violin A, gut", 52.0, 6.0e-4, 0.328, 9.8e-5),
    ("guitar G3", 58.3, 9.0e-4, 0.65, 3.1e-4),
    ("cello G2", 145.31, 7.721e-3, 0.70, 3.03e-4),
    ("bass E", 290.0, 3.5e-2, 1.06, 2.0e-3),
):
    pinned, _ = partials(length, tension, bending, mass, False)
    clamped, curvature = partials(length, tension, bending, mass, True)
    given = {"name": name, "tension_n": tension, "mass_kg_m": mass, "length_m": length, "bending_n_m2": bending}
    digits = lambda hz: [float(f"{f:.10g}") for f in hz]
    rows.append(given | {"pinned_hz": digits(pinned), "clamped_hz": digits(clamped), "end_curvature": float(f"{curvature:.8g}")})
print(json.dumps({"strings": rows}, indent=1))
