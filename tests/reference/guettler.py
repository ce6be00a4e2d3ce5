"""Highest and lowest bow acceleration for a clean start, each for one newton of bow force.

Guettler 2002, Acta Acust. u. Acust. 88, 970, eqs. 8a and 8b, as cited in secondary texts; from the period T0 and the wave
impedance Z0 themselves, to 30 digits.
Made with:  python3 guettler.py > guettler.json
"""

import json

from mpmath import mp, mpf, nstr, sqrt

mp.dps = 40
DIGITS = 30

rows = []
for name, tension, mass, length in (("violin G", "43.9", "2.79e-3", "0.320"), ("violin E", "73.0", "0.41e-3", "0.320"), ("cello G", "145.31", "7.721e-3", "0.700")):
    for beta in ("0.05", "0.1", "0.125", "0.2"):
        for static, sliding in (("0.8", "0.3"), ("1.05", "0.3"), ("0.8", "0.4")):
            t, mu, l = mpf(tension), mpf(mass), mpf(length)
            b, s, d = mpf(beta), mpf(static), mpf(sliding)
            period = 2 * l / sqrt(t / mu)
            impedance = sqrt(t * mu)
            scale = b * (1 - b) / (period * impedance)
            lowest = scale * (3 * s - d - 2 * sqrt(2 * s**2 - s * d))
            highest = scale * ((3 - 4 * b) * s - d - 2 * sqrt((1 - 2 * b) * (2 * (1 - b) * s**2 - s * d))) / (1 - 2 * b)
            given = {"name": name, "mass_kg_m": mass, "length_m": length, "beta": beta, "static": static, "sliding": sliding}
            rows.append(given | {"lowest": nstr(lowest, DIGITS), "highest": nstr(highest, DIGITS)})

print(json.dumps({"attacks": rows}, indent=1))
