"""A bowed string as a sum of modes: an independent way to the same note.

The string between fixed ends is q'' + eta w q' + w^2 q = f phi/m, one equation a mode, each stepped exactly for a force that
is constant over the step; twist is a second string with the impedance of twist, seen at the surface. The bow's friction is
F (mu_d + (mu_s - mu_d) v0/(v0 + |v|)), held while it can be. The start is the ideal motion with the corner at the nut: the
string straight and turning about the bridge. No travelling waves, no delay lines, no filters.
Made with:  python3 bowed.py > bowed.json
"""

import json

import numpy as np

RATE, PERIODS, LAST = 192000, 60, 20


def steppers(omega, eta, dt):
    """Exact step of q'' + eta w q' + w^2 q = g with g constant: q, p -> A [q, p] + B g."""
    a = eta * omega / 2
    w = np.sqrt(np.maximum(omega**2 - a**2, 1e-12))
    e, c, s = np.exp(-a * dt), np.cos(w * dt), np.sin(w * dt)
    qq, qp = e * (c + a / w * s), e * s / w
    pq, pp = -e * s * omega**2 / w, e * (c - a / w * s)
    return qq, qp, pq, pp, (1 - qq) / omega**2, qp


def note(case):
    z, pitch, beta, v, press = (case[k] for k in ("impedance", "pitch", "beta", "speed", "force"))
    length, dt = case["length"], 1 / RATE
    count = int(RATE / 2 / pitch)
    n = np.arange(1, count + 1)
    mass = z / (2 * length * pitch) * length / 2
    phi = np.sin(n * np.pi * beta)
    eta = np.minimum(case["loss"] * (1 + case["steep"] * n**2), 1.5)
    twist_pitch = pitch * case["torsion_ratio"]
    k = np.arange(1, int(RATE / 2 / twist_pitch) + 1)
    twist_mass = case["torsion_impedance"] / (2 * length * twist_pitch) * length / 2
    omega = 2 * np.pi * np.concatenate((n * pitch, k * twist_pitch))
    loss = np.concatenate((eta, np.full(len(k), 1 / case["torsion_q"])))
    shape = np.concatenate((phi, np.sin(k * np.pi * beta)))
    drive = shape / np.concatenate((np.full(count, mass), np.full(len(k), twist_mass)))
    qq, qp, pq, pp, gq, gp = steppers(omega, loss, dt)
    yields = float(np.sum(shape * gp * drive))
    tension = z * 2 * length * pitch
    bridge = np.concatenate((tension * n * np.pi / length, np.zeros(len(k))))
    q = np.zeros(len(omega))
    p = np.concatenate((v / beta * 2 * (-1.0) ** (n + 1) / (n * np.pi), np.zeros(len(k))))
    rest, slide, v0 = case["static"], case["sliding"], case["friction_speed"]
    sticks, onsets, slid, forces = True, [], 0, []
    steps = int(PERIODS * RATE / pitch)
    for i in range(steps):
        hq, hp = qq * q + qp * p, pq * q + pp * p
        free = float(shape @ hp) - v
        hold = -free / yields
        w = None
        # Slower than the bow: the speed behind it at which line and curve meet, the faster of two.
        side = -1.0 if free < 0 else 1.0
        b, c = v0 - abs(free) + yields * press * slide, yields * press * rest * v0 - abs(free) * v0
        inside = b * b - 4 * c
        if inside >= 0:
            root = (-b + np.sqrt(inside)) / 2
            w = root if root > 0 else None
        if abs(hold) <= press * rest and (sticks or w is None):
            force, now = hold, True
        else:
            force, now = -side * press * (slide + (rest - slide) * v0 / (v0 + w)), False
        if sticks and not now:
            onsets.append(i)
        sticks = now
        q, p = hq + gq * drive * force, hp + gp * drive * force
        forces.append(float(bridge @ q))
        if i >= steps - LAST * RATE / pitch:
            slid += not now
    # One slip a period: an onset that follows another within a fifth of a period belongs to it.
    period = RATE / pitch
    true = [t for j, t in enumerate(onsets) if j == 0 or t - onsets[j - 1] > 0.2 * period]
    late = np.array([t for t in true if t > steps - LAST * period])
    found = (late[-1] - late[0]) / (len(late) - 1)
    whole = round((len(late) - 1) * found)
    x = np.array(forces[-whole:])
    x = (x - x.mean()) * np.hanning(whole)
    t = np.arange(whole)
    harmonics = [2 * abs(np.sum(x * np.exp(-2j * np.pi * h * t / found))) / (whole / 2) for h in range(1, 11)]
    return {
        "cents": float(f"{-1200 * np.log2(found / period):.4g}"),
        "slip_share": float(f"{slid / (LAST * period):.4g}"),
        "gaps": float(f"{np.ptp(np.diff(late)) / period:.3g}"),
        "harmonics_n": [float(f"{h:.4g}") for h in harmonics],
    }


common = {
    "length": 0.328, "impedance": 0.25, "pitch": 293.66, "loss": 1e-3, "steep": 0.1, "speed": 0.1, "torsion_ratio": 5.0,
    "torsion_impedance": 0.6, "torsion_q": 30.0, "static": 0.9, "sliding": 0.3, "friction_speed": 0.2,
}
rows = []
for name, beta, force in (("light", 0.113, 0.15), ("middling", 0.113, 0.3), ("heavy", 0.113, 0.5), ("near the bridge", 0.067, 0.5)):
    case = common | {"name": name, "beta": beta, "force": force}
    rows.append(case | note(case))
print(json.dumps({"notes": rows}, indent=1))
