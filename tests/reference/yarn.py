"""Modulus of an ideal twisted yarn, by averaging over its cross-section.

A fibre at radius r lies at theta with tan theta = (r/R) tan alpha. Its strain is cos^2 theta of the yarn's; its
force along the yarn is cos theta of its own; a cut across the yarn shows it 1/cos theta larger. So the modulus is the
average of cos^4 theta over the circle, integrated here numerically.
Made with:  python3 yarn.py > yarn.json
"""

import json

import numpy as np
from scipy.integrate import quad

rows = []
for alpha in (0.0, 5.0, 10.0, 20.0, 30.0, 45.0, 58.3):
    slope = np.tan(np.radians(alpha))
    share = quad(lambda r: 2 * r * np.cos(np.arctan(r * slope)) ** 4, 0, 1, epsabs=0, epsrel=1e-13)[0]
    rows.append({"twist_deg": alpha, "modulus_share": share})

print(json.dumps({"yarns": rows}, indent=1))
