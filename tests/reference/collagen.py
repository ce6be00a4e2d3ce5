"""Water in collagen: the law of Guggenheim, Anderson and de Boer fitted anew to the printed table.

Table 1 of Heritage Science 2013, 1:14 (collagen at 25 degrees Celsius, water in per cent of dry mass).
`share` is the fitted water as a share of the dry mass.
Made with:  python3 collagen.py > collagen.json
"""

import json

import numpy as np
from scipy.optimize import curve_fit

humidity = np.array([5, 10, 20, 30, 40, 50, 60, 70, 80, 90, 95]) / 100
water = np.array([5.45, 7.39, 10.06, 12.44, 15.14, 17.95, 21.06, 25.05, 30.20, 40.70, 50.01]) / 100


def gab(a, layer, c, k):
    return layer * c * k * a / ((1 - k * a) * (1 - k * a + c * k * a))


fit, _ = curve_fit(gab, humidity, water, p0=(0.1, 10.0, 0.8), xtol=1e-14, ftol=1e-14)
rows = [{"humidity": round(float(h), 2), "share": float(gab(h, *fit))} for h in np.arange(0.05, 0.951, 0.05)]
# Seven digits: how far a fit converges depends on the machine.
for each in rows:
    each["share"] = float(f"{each['share']:.7g}")
print(json.dumps({"fit": [float(f"{p:.5g}") for p in fit], "water": rows}, indent=1))
