"""Quantiles of a normal number that bounds the middle 90 % at -1 and 1, by scipy.

Made with:  python3 normal.py > normal.json
"""

import json

from scipy.stats import norm

shares = (0.01, 0.05, 0.10, 0.25, 0.50, 0.75, 0.90, 0.95, 0.99)
print(json.dumps({"quantiles": [{"share": s, "t": norm.ppf(s) / norm.ppf(0.95)} for s in shares], "ends": norm.ppf(0.95)}, indent=1))
