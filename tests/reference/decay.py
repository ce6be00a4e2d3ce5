"""A stiff string that loses to air, in its pull and in bending: stepped through time, its loss read off its energy.

Finite differences on 120 pieces between pinned ends; implicit midpoint rule, which loses nothing of its own. Friction is
viscous, set so that at the frequency of the partial the force of air, the pull and the bending have the loss factors given.
The string is let go in the shape of one partial; the loss factor is the fall of ln(energy) for each radian.
Made with:  python3 decay.py > decay.json
"""

import json

import numpy as np
from scipy.linalg import lu_factor, lu_solve

PIECES, PERIODS, STEPS = 120, 12, 300


def loss(tension, mass, length, bending, n, air, pull, bend):
    h = length / PIECES
    m = PIECES - 1
    d2 = (np.diag(np.ones(m - 1), 1) + np.diag(np.ones(m - 1), -1) - 2 * np.eye(m)) / h**2
    # Pinned ends: the fourth difference is the second one twice.
    pulled, bent = -tension * d2, bending * d2 @ d2
    stiff = pulled + bent
    shape = np.sin(n * np.pi * np.arange(1, PIECES) / PIECES)
    omega = np.sqrt(shape @ stiff @ shape / (mass * shape @ shape))
    friction = mass * omega * air * np.eye(m) + pulled * pull / omega + bent * bend / omega
    dt = 2 * np.pi / omega / STEPS
    # Midpoint: M (v' - v)/dt = -C (v + v')/2 - K (u + u')/2, u' = u + dt (v + v')/2.
    left = mass * np.eye(m) + dt / 2 * friction + dt**2 / 4 * stiff
    right = mass * np.eye(m) - dt / 2 * friction - dt**2 / 4 * stiff
    factors = lu_factor(left)
    u, v = shape.copy(), np.zeros(m)
    energy = lambda: (mass * v @ v + u @ stiff @ u) / 2
    first = energy()
    for _ in range(PERIODS * STEPS):
        new = lu_solve(factors, right @ v - dt * stiff @ u)
        u += dt * (v + new) / 2
        v = new
    return -np.log(energy() / first) / (PERIODS * 2 * np.pi)


rows = []
for name, tension, mass, length, bending, n, air, pull, bend in (
    ("guitar E4", 70.3, 3.8e-4, 0.65, 1.30e-4, 1, 7e-4, 4.0e-4, 0.024),
    ("guitar E4", 70.3, 3.8e-4, 0.65, 1.30e-4, 6, 1.2e-4, 4.0e-4, 0.024),
    ("guitar G3", 58.3, 9.0e-4, 0.65, 3.10e-4, 1, 1.4e-3, 1.4e-4, 0.020),
    ("guitar G3", 58.3, 9.0e-4, 0.65, 3.10e-4, 5, 3e-4, 1.4e-4, 0.020),
    ("violin A, gut", 52.0, 6.0e-4, 0.328, 9.8e-5, 1, 5e-4, 1.5e-4, 0.025),
    ("violin A, gut", 52.0, 6.0e-4, 0.328, 9.8e-5, 4, 2.5e-4, 1.5e-4, 0.025),
    ("cello G", 145.31, 7.721e-3, 0.70, 3.03e-4, 2, 1e-4, 5e-4, 0.010),
    ("cello G", 145.31, 7.721e-3, 0.70, 3.03e-4, 7, 5e-5, 5e-4, 0.010),
):
    given = {"name": name, "tension_n": tension, "length_m": length, "bending_n_m2": bending, "n": n, "air": air, "pull": pull, "bend": bend}
    rows.append(given | {"loss": float(f"{loss(tension, mass, length, bending, n, air, pull, bend):.8g}")})
print(json.dumps({"partials": rows}, indent=1))
