"""The sweep of src/strings/report/lean/sweep.rs in NumPy: python sweep.py NUMBERS.json writes the seconds of one, the median of many, and what it came to."""

import json
import sys
import time
from math import log, pi, sqrt
from statistics import median

import numpy as np


def sweep(n):
    """The sum of what is computed of every string, as whole arrays."""
    l, f = n["length"], n["pitch"]
    thick = n["thinnest"] + n["step"] * np.arange(int(n["strings"]))
    mean = n["diameter"] + thick
    gauge = n["diameter"] + 2 * thick
    winding = n["density"] * pi * thick * mean
    tube = n["modulus"] * pi * mean**3 * thick / 8
    whole = winding + n["mass"]
    rigid = 4 * (l * f) ** 2 * whole
    tension = 2 * rigid / (1 + np.sqrt(1 + 4 * rigid / n["axial"]))
    mass = whole / (1 + tension / n["axial"])
    stress = tension / n["area"]
    held = np.clip(stress, n["slope_from"], n["slope_to"])
    fast = n["fast_modulus"] + n["fast_slope"] * (held + n["beyond"] * (stress - held))
    core = n["bending_of_one"] * fast
    lossy = core * n["core_loss"] + tube * n["winding_loss"]
    brilliance = f * np.sqrt(n["brilliance_loss"] * l * l / pi**2 * tension / lossy)
    inharmonicity = pi**2 / (l * l) * n["stiffening"] * core / tension
    layer = gauge * (sqrt(2 * pi * f / n["air_viscosity"]) / 4)
    air = n["air_density"] * pi / 4 * gauge * gauge / mass * (2 * sqrt(2) * layer + 1) / (2 * layer * layer)
    bending = pi**2 / (l * l) * lossy / tension
    bridge = 2 / (pi * n["resistance"]) * np.sqrt(tension * mass)
    loss = (air + n["string_loss"] + bending) / (1 + inharmonicity) + bridge
    ring = log(1000) / (pi * f) / loss
    return float(np.sum(tension + gauge + winding / whole + brilliance + ring))


def main():
    with open(sys.argv[1], encoding="utf-8") as file:
        n = json.load(file)
    times = []
    for _ in range(99):
        start = time.perf_counter()
        for _ in range(20):
            sweep(n)
        times.append((time.perf_counter() - start) / 20)
    print(json.dumps({"sum": sweep(n), "numpy": median(times)}))


main()
