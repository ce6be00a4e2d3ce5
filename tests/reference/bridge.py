"""A string with one end on a resistance: its complex frequencies, solved to 30 digits, and the time to fall by 60 dB.

u = sin(k x) e^(i w t), w = c k; at the bridge T u' = -R du/dt, so cos(k L) + i (R/Z) sin(k L) = 0. The loss factor is 2 Im w/Re w.
Made with:  python3 bridge.py > bridge.json
"""

import json

from mpmath import cos, findroot, log, mp, mpc, mpf, nstr, pi, sin, sqrt

mp.dps = 40
rows = []
for name, tension, mass, length, resistance, n in (
    ("violin E", "73.0", "4.1e-4", "0.325", "30", 1),
    ("violin G", "43.9", "2.79e-3", "0.325", "30", 1),
    ("violin G", "43.9", "2.79e-3", "0.325", "30", 4),
    ("cello G", "145.31", "7.721e-3", "0.70", "50", 1),
    ("cello G at a wolf", "145.31", "7.721e-3", "0.70", "10", 1),
    ("bass E", "290", "3.5e-2", "1.06", "150", 2),
):
    t, mu, l, r = mpf(tension), mpf(mass), mpf(length), mpf(resistance)
    z, c = sqrt(t * mu), sqrt(t / mu)
    root = findroot(lambda kl: cos(kl) + mpc(0, 1) * r / z * sin(kl), mpc(n * pi, z / r))
    w = root * c / l
    eta = 2 * w.imag / w.real
    ring = log(1000) / w.imag
    given = {"name": name, "tension_n": tension, "mass_kg_m": mass, "length_m": length, "resistance_kg_s": resistance, "n": n}
    rows.append(given | {"loss": nstr(eta, 20), "hz": nstr(w.real / (2 * pi), 20), "ring_s": nstr(ring, 20), "share": nstr(z / r, 10)})
print(json.dumps({"strings": rows}, indent=1))
