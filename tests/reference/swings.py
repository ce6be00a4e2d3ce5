"""A string through an evening, a week and a season, untuned: everything at once, stepped through time, and then its pitch.

The room gets warmer and damper at time 0. The body's warmth and water follow, each by its own store, dT/dt = (room - T)/tau. Water
goes into every fibre from its surface by diffusion, in rings. Fibres grow along and across and lie on helices whose turns stay; the
string becomes heavier and softer, its own warmth stretches and softens it at once, and the body moves its ends. From the natural
length, the stiffness, the mass and the place of the ends follows the pitch, and the cents from the state on the cool and dry side
to the one on the warm and damp side, each half a swing from where it was tuned. `warmth` and `damp` are by one of the two alone.
All numbers of the strings are made up, near those of strings.
Made with:  python3 swings.py > swings.json
"""

import json

import numpy as np
from scipy.integrate import solve_ivp
from scipy.linalg import solve_banded
from scipy.optimize import brentq

HOURS = {"evening": 2.5, "week": 168.0, "season": 2160.0}
WARMING, SOAKING = 1800.0, 2.6e5


def stored(hours, tau):
    return solve_ivp(lambda t, y: (1 - y) / tau, (0, hours * 3600), [0.0], rtol=1e-9, atol=1e-11, method="LSODA").y[0, -1]


def soaked(x):
    """Share of its end state that a fibre has reached at the time x in units of radius squared over diffusivity."""
    if x > 5:
        return 1.0
    walls = 1 - (1 - np.linspace(0, 1, 401)) ** 2
    middles, volumes = (walls[1:] + walls[:-1]) / 2, (walls[1:] ** 2 - walls[:-1] ** 2) / 2
    between, surface = walls[1:-1] / np.diff(middles), 1 / (1 - middles[-1])
    w, steps = np.zeros(400), 4000
    dt = x / steps
    bands = np.zeros((3, 400))
    bands[1] = 1 + dt * (np.append(between, surface) + np.insert(between, 0, 0.0)) / volumes
    bands[0, 1:], bands[2, :-1] = -dt * between / volumes[:-1], -dt * between / volumes[1:]
    for _ in range(steps):
        right = w.copy()
        right[-1] += dt * surface / volumes[-1]
        w = solve_banded((1, 1), bands, right)
    return float(np.sum(w * volumes) * 2)


def grown(along, across, twist):
    """How much longer a free bundle becomes: the mean over its section of what one turn of each fibre does."""
    if twist == 0:
        return along
    height = 2 * np.pi / np.tan(np.radians(twist))
    radii = np.sqrt((np.arange(400) + 0.5) / 400)
    turn = np.hypot(height, 2 * np.pi * radii) * (1 + along)
    return float(np.mean(np.sqrt(turn**2 - (2 * np.pi * radii * (1 + across)) ** 2)) / height - 1)


# EA N, mass kg/m, sounding and whole length m, Hz; expansion and softening of warmth; the core's share of the mass, its water and
# what it gains over the damp of the room by a tenth; growth along and across and softening for each unit of water, the share that is
# left of all three; twist, radius of a fibre and diffusivity; kelvins and tenths of humidity in the three times.
STRINGS = (
    ("violin E, wire", 10600.0, 4.17e-4, 0.328, 0.433, 659.255, 1.15e-5, 2.5e-4, 1.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 1.3e-4, 1.0),
    ("violin D, bundle", 1000.0, 1.3e-3, 0.328, 0.433, 293.665, -6e-5, 3e-3, 0.3, 0.030, 0.006, 0.33, 0.26, 6.0, 0.10, 15.0, 1.5e-5, 6e-14),
    ("violin A, one piece", 2400.0, 6.4e-4, 0.328, 0.433, 440.0, -2e-5, 1e-3, 1.0, 0.0033, 0.0007, 0.15, 0.30, 2.0, 0.5, 0.0, 3.5e-4, 5e-13),
    ("cello G, bundle", 15000.0, 7.5e-3, 0.69, 0.855, 98.0, -3.5e-6, 8e-4, 0.4, 0.042, 0.0083, 0.02, 0.50, 1.0, 0.5, 10.0, 6e-6, 2e-16),
)
ROOM = {"evening": (4.0, 0.8), "week": (5.0, 1.2), "season": (6.0, 2.5)}
BODY_GROWTH, BODY_MOVEMENT = 4e-6, 9e-5


def pitch(natural, whole, sounding, axial, mass):
    return np.sqrt(axial * (whole / natural - 1) * whole / (mass * natural)) / (2 * sounding)


rows = []
for name, axial, mass, sounding, whole, hertz, expansion, softening, share, water, tenth, along, across, damp_soft, left, twist, radius, diffusivity in STRINGS:
    natural = brentq(lambda n: pitch(n, whole, sounding, axial, mass) - hertz, whole / 2, whole * (1 - 1e-9), xtol=1e-16, rtol=1e-15)
    for time, hours in HOURS.items():
        kelvin, tenths = ROOM[time]
        heated, moved = stored(hours, WARMING), stored(hours, SOAKING)
        wet = soaked(diffusivity * hours * 3600 / radius**2)

        def state(warm, damp):
            """The pitch where the room is so far from the middle, in halves of its swing."""
            theta, gain = warm * kelvin / 2, damp * tenths / 2 * tenth * wet
            longer = (1 + BODY_GROWTH * heated * theta) * (1 + BODY_MOVEMENT * moved * damp * tenths / 2)
            growth = grown(left * along * gain, left * across * gain, twist)
            free = natural * (1 + expansion * theta) * (1 + growth)
            soft = axial * (1 - softening * theta) * (1 - left * damp_soft * gain)
            heavy = mass * natural / free * (1 - share + share * (1 + water + gain) / (1 + water))
            return pitch(free, whole * longer, sounding * longer, soft, heavy)

        cents = lambda warm, damp: float(f"{1200 * np.log2(state(warm, damp) / state(-warm, -damp)):.8g}")
        rows.append(
            {
                "name": name, "time": time, "hours": hours, "kelvin": kelvin, "tenths": tenths, "axial_n": axial,
                "tension_n": float(f"{axial * (whole / natural - 1):.10g}"), "expansion_k": expansion, "softening_k": softening,
                "core_share": share, "water": water, "water_a_tenth": tenth, "along": along, "across": across,
                "damp_softening": damp_soft, "left": left, "twist_deg": twist, "radius_m": radius, "diffusivity": diffusivity,
                "body_growth_k": BODY_GROWTH, "body_movement": BODY_MOVEMENT, "warming_s": WARMING, "soaking_s": SOAKING,
                "warmth": cents(1, 0), "damp": cents(0, 1), "all": cents(1, 1),
            }
        )  # fmt: skip

print(json.dumps({"swings": rows}, indent=1))
