"""Second moment of area of wires that hold together, each wire's disc integrated about the strand's axis.

The wires lie straight where the layouts put them: hexagons of 7 and 19 discs that touch, seven such hexagons of seven.
`moment` is the mean of the two moments about axes across the strand, over the fourth power of the wire's radius.
Made with:  python3 section.py > section.json
"""

import json

import numpy as np
from scipy.integrate import dblquad

UNITS = [(np.cos(k * np.pi / 3), np.sin(k * np.pi / 3)) for k in range(6)]


def hexagon(rings):
    found = [(0.0, 0.0)]
    for ring in range(1, rings + 1):
        for k in range(6):
            a, b = np.array(UNITS[k]) * 2 * ring, np.array(UNITS[(k + 1) % 6]) * 2 * ring
            found += [tuple(a + (b - a) * i / ring) for i in range(ring)]
    return found


def moment(centres):
    def disc(x, y):
        # y^2 + x^2 over a disc of radius 1 about (x, y), halved: the mean of both axes.
        return dblquad(lambda f, r: ((x + r * np.cos(f)) ** 2 + (y + r * np.sin(f)) ** 2) / 2 * r, 0, 1, 0, 2 * np.pi, epsabs=1e-11, epsrel=1e-11)[0]

    return sum(disc(x, y) for x, y in centres)


seven = hexagon(1)
rope = [(x + 3 * a, y + 3 * b) for a, b in seven for x, y in seven]
rows = [{"layout": name, "wires": len(c), "moment": float(f"{moment(c):.10g}")} for name, c in (("1x7", seven), ("1x19", hexagon(2)), ("7x7", rope))]
print(json.dumps({"strands": rows, "circle": float(f"{moment([(0.0, 0.0)]):.10g}")}, indent=1))
