"""A string that creeps, held at its length and tuned every evening: a chain of springs and dashpots stepped through time.

A Burgers body of many elements: a spring, and Kelvin elements whose times are spread evenly over the decades from a
ten-thousandth of a day to a million days, each decade giving the creep c of the stretch. No logarithm enters. At fixed length
what creeps is taken from the spring. On the first day the string is tuned again and again; from then on every evening it
is stretched until its tension is what it was. `lost_cent` is what a day has taken.
Slips: beside the chain three hundred places at nut, bridge and peg hold the string by friction; one after the other lets go, as
many between a quarter of an hour and two and a half hours as in the next tenfold of time and the next, up to ten days. `slack` is
what all of them give, as a share of the stretch.
Constructional: a string whose natural length grows once by a share, pitch before and after.
Made with:  python3 creeping.py > creeping.json
"""

import json

import numpy as np

A_DECADE = 8


def nights(creep, days, slack=0.0):
    times = 10 ** np.arange(-4, 6, 1 / A_DECADE)
    # Strain and stress in units of the stretch at pitch and of the stress at pitch; each element gives `part` for stress 1.
    part = creep / A_DECADE
    element = np.zeros(len(times))
    # When each place lets go, days.
    go = np.geomspace(0.01, 10.0, 301)[1:]
    total = 1.0
    lost = {}
    t = 0.0
    grid = np.concatenate([np.geomspace(1e-5, 1.0, 600), np.arange(1.0 + 1 / 200, max(days) + 1.5, 1 / 200)])
    evening = 1
    start = None
    for now in grid:
        dt, t = now - t, now
        stress = total - element.sum() - slack * np.count_nonzero(go <= now - dt) / len(go)
        # Each element goes towards part * stress with its own time; exact over the step for this stress.
        element += (part * stress - element) * -np.expm1(-dt / times)
        given = slack * np.count_nonzero(go <= now) / len(go)
        stress = total - element.sum() - given
        if now < 1.0:
            total = 1.0 + element.sum() + given
        elif now >= evening - 1e-9:
            if start is not None and (evening - 1) in days:
                lost[evening - 1] = 600 * np.log2(start / stress)
            total = 1.0 + element.sum() + given
            start = 1.0
            evening += 1
    return lost


days = (2, 4, 7, 14)
rows = []
for creep in (0.003, 0.01, 0.03, 0.06):
    for day, cent in nights(creep, days).items():
        rows.append({"creep": creep, "day": day, "lost_cent": float(f"{cent:.7g}")})
slips = []
for creep, slack in ((0.001, 0.01), (0.01, 0.01), (0.03, 0.02), (0.05, 0.03)):
    for day, cent in nights(creep, (2, 4, 7), slack).items():
        slips.append({"creep": creep, "slack": slack, "day": day, "lost_cent": float(f"{cent:.7g}")})
once = []
for axial, tension, share in ((30000.0, 140.0, 0.0001), (12000.0, 70.0, 0.0002), (21000.0, 165.0, 0.0001)):
    whole, natural = 0.9, 0.9 / (1 + tension / axial)
    after = axial * (whole / (natural * (1 + share)) - 1)
    once.append({"axial_n": axial, "tension_n": tension, "share": share, "lost_cent": float(600 * np.log2(tension / after))})
print(json.dumps({"days": rows, "slips": slips, "once": once}, indent=1))
