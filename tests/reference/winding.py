"""Mass of a close winding, by integrating along the wire and over the ring.

Round wire: the axis of the wire is the helix (R cos u, R sin u, p u / 2 pi); its length in one turn is
integrated numerically, and the mass a length of string is density * wire area * length of a turn / pitch.
Flat ribbon: the ring between its inner and outer radius is integrated over the radius.
`gap` is the bare share between turns, of the diameter of the wire or the width of the ribbon.
Inputs in SI units; `bedding` is the share of the thickness by which the winding sinks into what lies under it.
Made with:  python3 winding.py > winding.json
"""

import json

import numpy as np
from scipy.integrate import quad


def round_wire(density, under, thickness, bedding, gap):
    radius = under / 2 - bedding * thickness + thickness / 2
    pitch = thickness * (1 + gap)

    def speed(u):
        tangent = np.array([-radius * np.sin(u), radius * np.cos(u), pitch / (2 * np.pi)])
        return np.linalg.norm(tangent)

    turn = quad(speed, 0, 2 * np.pi, epsabs=0, epsrel=1e-13)[0]
    area = quad(lambda r: 2 * np.pi * r, 0, thickness / 2, epsabs=0, epsrel=1e-13)[0]
    return density * area * turn / pitch


def flat_ribbon(density, under, thickness, bedding, gap):
    inner = under / 2 - bedding * thickness
    return density * quad(lambda r: 2 * np.pi * r, inner, inner + thickness, epsabs=0, epsrel=1e-13)[0] / (1 + gap)


rows = []
for density, under, thickness, bedding, gap in (
    (10490.0, 0.50e-3, 0.10e-3, 0.0, 0.0),
    (2700.0, 0.60e-3, 0.05e-3, 0.0, 0.0),
    (2700.0, 0.60e-3, 0.05e-3, 0.2, 0.3),
    (19250.0, 0.40e-3, 0.15e-3, 0.1, 0.0),
    (8900.0, 1.80e-3, 0.40e-3, 0.05, 0.0),
    (8940.0, 0.30e-3, 0.30e-3, 0.0, 0.0),
    (19300.0, 5.00e-3, 1.50e-3, 0.5, 0.0),
    (7730.0, 0.25e-3, 0.02e-3, 0.5, 1.0),
):
    # Half-way between the inner and the outer edge of what is wound, across the string.
    mean = ((under - 2 * bedding * thickness) + (under - 2 * bedding * thickness + 2 * thickness)) / 2
    given = {"mean_m": mean, "density_kg_m3": density, "under_m": under, "thickness_m": thickness, "bedding": bedding, "gap": gap}
    rows.append(given | {"form": "round", "kg_m": round_wire(density, under, thickness, bedding, gap)})
    rows.append(given | {"form": "flat", "kg_m": flat_ribbon(density, under, thickness, bedding, gap)})

print(json.dumps({"windings": rows}, indent=1))
