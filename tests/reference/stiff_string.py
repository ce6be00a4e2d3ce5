"""Partials of a stiff string with pinned ends, as eigenvalues of a discretised string.

T y'' - EI y'''' = -mu w^2 y, with y = y'' = 0 at both ends, by Chebyshev collocation on 96 points (Trefethen,
Spectral Methods in Matlab, 2000, ch. 6 and 14). Twelve partials are good to a few parts in 10^9. The closed form is not used.
Made with:  python3 stiff_string.py > stiff_string.json
"""

import json

import numpy as np
from scipy.linalg import eigvals

POINTS = 96
PARTIALS = 12


def second_derivative():
    k = np.arange(POINTS + 1)
    x = np.cos(np.pi * k / POINTS)
    c = np.where((k == 0) | (k == POINTS), 2.0, 1.0) * (-1.0) ** k
    dx = x[:, None] - x[None, :]
    d = np.outer(c, 1 / c) / (dx + np.eye(POINTS + 1))
    d -= np.diag(d.sum(axis=1))
    return (d @ d)[1:-1, 1:-1]


rows = []
for name, tension, mass, length, bending in (
    ("violin E, steel", 73.0, 4.1e-4, 0.325, 4.5e-5),
    ("guitar G3", 58.3, 9.0e-4, 0.65, 3.1e-4),
    ("cello G2", 145.31, 7.721e-3, 0.70, 3.03e-4),
    ("a rod almost", 60.0, 2.0e-3, 0.20, 1.0e-2),
):
    d2 = second_derivative() * (2 / length) ** 2
    # With pinned ends y'' vanishes at the ends as well, so the fourth derivative is the second one twice.
    values = eigvals(-tension * d2 + bending * d2 @ d2)
    values = np.sort(values.real[np.abs(values.imag) < 1e-6 * np.abs(values.real)])
    hertz = np.sqrt(values[:PARTIALS] / mass) / (2 * np.pi)
    given = {"name": name, "tension_n": tension, "mass_kg_m": mass, "length_m": length, "bending_n_m2": bending}
    rows.append(given | {"hz": hertz.tolist()})

print(json.dumps({"strings": rows}, indent=1))
