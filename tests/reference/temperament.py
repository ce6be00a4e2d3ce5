"""Equal temperament, pitch standards and the pure fifth, to 30 digits.

Frequencies of all notes from C0 to B8 at several pitch standards: f = a4 * 2^(k/12), k semitones above A4.
Made with:  python3 temperament.py > temperament.json
"""

import json

from mpmath import log, mp, mpf, nstr

mp.dps = 40
DIGITS = 30

notes = []
for a4 in ("392", "415", "430", "440", "442", "443", "466"):
    for k in range(-57, 51):
        notes.append({"a4_hz": a4, "semitones_above_c0": k + 57, "hz": nstr(mpf(a4) * mpf(2) ** (mpf(k) / 12), DIGITS)})

cents = []
for low, high in (("440", "392"), ("440", "415"), ("440", "430"), ("440", "442"), ("440", "443"), ("2", "3"), ("3", "4"), ("1", "2")):
    cents.append({"from": low, "to": high, "cents": nstr(1200 * log(mpf(high) / mpf(low), 2), DIGITS)})

print(json.dumps({"notes": notes, "cents": cents, "cents_per_neper": nstr(1200 / log(2), DIGITS)}, indent=1))
