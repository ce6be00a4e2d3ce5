"""How much a drawn wire relaxes in the decade about a day: the law of EN 1992-1-1, eq. 3.28, differentiated numerically.

Delta sigma / sigma = 5.39 rho e^(6.7 mu) (t/1000 h)^(0.75 (1 - mu)) 1e-5, rho = 8 for class 1, mu the share of strength. The slope
in log10 t at 24 h by mpmath's own differences with forty digits; nothing is differentiated by hand.
Made with:  python3 relaxing.py > relaxing.json
"""

import json

from mpmath import mp, mpf

mp.dps = 40


def lost(share, hours):
    return mpf("5.39") * 8 * mp.e ** (mpf("6.7") * share) * (hours / 1000) ** (mpf("0.75") * (1 - share)) * mpf("1e-5")


rows = []
for share in ("0.2", "0.3", "0.4", "0.5", "0.55", "0.6", "0.7", "0.8"):
    slope = mp.diff(lambda decades: lost(mpf(share), 10**decades), mp.log10(24))
    rows.append({"share": float(share), "a_decade": mp.nstr(slope, 20)})
print(json.dumps({"wires": rows}, indent=1))
