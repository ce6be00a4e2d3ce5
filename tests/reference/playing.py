"""What playing does to pitch: a string pressed down in its middle, and a wide swing; by geometry and quadrature, no series.

Pressed: the string's natural length N is found from its tension; the path over the finger is two straight lines; Hooke's law
gives the tension. `tension_cent` is the rise from tension alone, `whole_cent` counts also that the string over there is lighter
and that the slanted half is longer than half of the string.
Swinging in its first mode, amplitude a: the mean slope squared adds to the stretch of the sounding length, and the mode obeys
q'' = -w^2 q (1 + (EA/T) (pi q/2L)^2); its period is integrated from the energy.
Made with:  python3 playing.py > playing.json
"""

import json

import numpy as np
from scipy.integrate import quad

rows = []
for name, axial, tension, sounding, whole, height, amplitude in (
    ("violin E, steel", 10618.6, 73.0, 0.328, 0.450, 3.0e-3, 0.0061),
    ("violin A, gut", 2722.0, 55.0, 0.328, 0.450, 3.0e-3, 0.0061),
    ("violin D, polyamide bundle", 900.0, 42.0, 0.325, 0.445, 4.5e-3, 0.0061),
    ("cello C, steel rope", 21000.0, 138.0, 0.690, 0.900, 7.0e-3, 0.0050),
    ("cello A, steel", 20000.0, 165.0, 0.690, 0.900, 5.5e-3, 0.0040),
    ("bass E, gut", 21000.0, 290.0, 1.060, 1.400, 9.0e-3, 0.0080),
):
    natural = whole / (1 + tension / axial)
    half = np.hypot(sounding / 2, height)
    path = whole - sounding + 2 * half
    pressed = axial * (path / natural - 1)
    by_tension = 600 * np.log2(pressed / tension)
    lighter = 600 * np.log2(path / whole)
    longer = 1200 * np.log2(2 * half / sounding)
    # Period of the swing: x = q/a, x'^2 = w^2 ((1 - x^2) + k/2 (1 - x^4)), a quarter of it from 0 to 1 with x = sin u.
    k = axial / tension * (np.pi * amplitude / 2) ** 2
    quarter = quad(lambda u: 1 / np.sqrt(1 + k / 2 * (1 + np.sin(u) ** 2)), 0, np.pi / 2, epsabs=0, epsrel=1e-13)[0]
    glide = 1200 * np.log2(np.pi / 2 / quarter)
    given = {"name": name, "axial_n": axial, "tension_n": tension, "sounding_m": sounding, "whole_m": whole, "height_m": height, "amplitude": amplitude}
    rows.append(given | {"tension_cent": by_tension, "whole_cent": by_tension + lighter - longer, "glide_cent": glide, "k": k})
print(json.dumps({"strings": rows}, indent=1))
