"""A bundle of fibres on helices that takes up water: fibres grow along and across, and the bundle cannot untwist.

A fibre at radius r of a bundle of radius 1 and of the surface twist alpha runs round with tan beta = r tan alpha. Its length
in one turn is the root of (height)^2 + (2 pi r)^2. In water every fibre wants to be longer by `along` and lies further out by
`across`; the turns stay. `alone` is the mean over the section of how much higher one turn of each fibre would be by itself:
arc length, solved for the height. `together` is the height at which the pulls of all fibres, tied to one height, sum to
nothing: a fibre pulls by its strain, and shows a cut cos beta of its area and of its pull. Both exact, by quadrature and root
finding; nothing is small here.
Made with:  python3 helix.py > helix.json
"""

import json

import numpy as np
from scipy.integrate import quad
from scipy.optimize import brentq


def over_the_section(of):
    return quad(lambda r: 2 * r * of(r), 0, 1, epsabs=0, epsrel=1e-11)[0]


def rows():
    for twist in (5.0, 10.0, 20.0, 30.0):
        for along, across in ((0.0033, 0.0026), (0.0002, 0.005)):
            slope = np.tan(np.radians(twist))
            # One turn: the height of it is 2 pi / slope for a bundle of radius 1.
            height = 2 * np.pi / slope

            def length(r, h, out=0.0):
                return np.hypot(h, 2 * np.pi * r * (1 + out))

            def by_itself(r):
                wanted = length(r, height) * (1 + along)
                return brentq(lambda h: length(r, h, across) - wanted, height * 0.9, height * 1.1, xtol=1e-14, rtol=1e-15) / height - 1

            def pull(h):
                def of(r):
                    strain = length(r, h, across) / (length(r, height) * (1 + along)) - 1
                    return strain * (h / length(r, h, across)) ** 2

                return over_the_section(of)

            together = brentq(pull, height * 0.95, height * 1.05, xtol=1e-13, rtol=1e-14) / height - 1
            yield {
                "twist_deg": twist,
                "along": along,
                "across": across,
                "alone": float(f"{over_the_section(by_itself):.9g}"),
                "together": float(f"{together:.9g}"),
            }


print(json.dumps({"bundles": list(rows())}, indent=1))
