"""Water into a cylinder, and what follows its surroundings: the diffusion itself, stepped outwards from the axis.

A cylinder of radius 1 whose surface is brought to the damp of the room at time 0; d w/dt = (1/r) d/dr (r dw/dr), time in units
of radius squared over diffusivity. Finite volumes, finer towards the surface, by an implicit rule; `stepped` is the share of
the end state that it has taken up. `series` is the solution of Crank (The Mathematics of Diffusion, eq. 5.23): four hundred
terms with the zeros of J0. The two know nothing of one another and must agree.
`followed`: dT/dt = (1 - T)/tau, integrated by Runge and Kutta.
Made with:  python3 soaking.py > soaking.json
"""

import json

import numpy as np
from scipy.integrate import solve_ivp
from scipy.linalg import solve_banded
from scipy.special import jn_zeros

TIMES = (0.0005, 0.003, 0.01, 0.03, 0.06, 0.12, 0.3, 0.8)

zeros = jn_zeros(0, 400)


def series(t):
    return 1 - float(np.sum(4 / zeros**2 * np.exp(-(zeros**2) * t)))


# Rings whose walls crowd at the surface.
walls = 1 - (1 - np.linspace(0, 1, 601)) ** 2
middles = (walls[1:] + walls[:-1]) / 2
volumes = (walls[1:] ** 2 - walls[:-1] ** 2) / 2
between = walls[1:-1] / np.diff(middles)
at_surface = 1.0 / (1.0 - middles[-1])


def matrix(theta, dt):
    """Bands of 1 - theta dt A, for the rings' rates A w + b."""
    bands = np.zeros((3, len(middles)))
    out = np.append(between, at_surface)
    inner = np.insert(between, 0, 0.0)
    bands[1] = 1 + theta * dt * (out + inner) / volumes
    bands[0, 1:] = -theta * dt * between / volumes[:-1]
    bands[2, :-1] = -theta * dt * between / volumes[1:]
    return bands


def rate(w):
    flow = np.concatenate([[0.0], between * np.diff(w), [at_surface * (1 - w[-1])]])
    return np.diff(flow) / volumes


def stepped():
    found, w, t = [], np.zeros(len(middles)), 0.0
    source = np.zeros(len(middles))
    source[-1] = at_surface / volumes[-1]
    for end in TIMES:
        # Steps that grow with time; the first of each stretch by the implicit rule, which forgets what is rough.
        steps = 1200
        dt = (end - t) / steps
        for i in range(steps):
            theta = 1.0 if i < 4 else 0.5
            right = w + (1 - theta) * dt * rate(w) + theta * dt * source
            w = solve_banded((1, 1), matrix(theta, dt), right)
        t = end
        found.append(float(np.sum(w * volumes) * 2))
    return found


cylinder = []
for t, by_steps in zip(TIMES, stepped()):
    # The series of four hundred terms is short at the earliest times by less than this.
    assert abs(by_steps - series(t)) < 2e-4, (t, by_steps, series(t))
    cylinder.append({"time": t, "stepped": float(f"{by_steps:.7f}"), "series": float(f"{series(t):.10f}")})

followed = []
for share in (0.1, 0.5, 2.0, 5.0):
    run = solve_ivp(lambda t, y: (1 - y) / 1800.0, (0, share * 1800.0), [0.0], rtol=1e-10, atol=1e-12)
    followed.append({"time_s": share * 1800.0, "constant_s": 1800.0, "share": float(f"{run.y[0, -1]:.8f}")})

print(json.dumps({"cylinder": cylinder, "followed": followed}, indent=1))
