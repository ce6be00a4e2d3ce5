"""An elastic string tuned to pitch, and what it does when something moves: solved by root finding, not by formula.

A piece of string of natural length N is stretched over the whole length W between its ends. T = EA (W/N - 1),
mass a length = mu0 N / W, f = sqrt(T/mu) / (2 L). N is sought so that f is the pitch. Then one thing changes a little -
string is pulled over the nut, the body grows, the string warms - and the pitch is computed again.
`wound` winds as much string over the nut as one sees in a lesson, and tells what it then is.
`pull_cent_m` counts the string as it lies stretched, `body_cent` is for a growth of 1e-5, `warmth_cent_k` for a kelvin, `swelling_cent`
for a free growth of 5e-6 and a softening of 1e-3.
Made with:  python3 elastic_string.py > elastic_string.json
"""

import json

import numpy as np
from scipy.optimize import brentq


def pitch(natural, whole, sounding, axial, mass):
    tension = axial * (whole / natural - 1)
    return np.sqrt(tension / (mass * natural / whole)) / (2 * sounding)


def cents(change, before):
    return 1200 * np.log2(change / before)


rows = []
for name, axial, mass, sounding, whole, hertz, expansion, softening in (
    ("violin E, steel wire", 10618.6, 4.168e-4, 0.328, 0.450, 659.255, 11.5e-6, 2.5e-4),
    ("violin A, gut", 2722.0, 6.0e-4, 0.328, 0.450, 440.0, -2.0e-5, 2.0e-3),
    ("violin D, polyamide bundle", 900.0, 1.35e-3, 0.325, 0.445, 293.665, -1.0e-4, 3.0e-3),
    ("cello C, steel rope", 21000.0, 1.70e-2, 0.690, 0.900, 65.406, 11.5e-6, 2.5e-4),
    ("bass E, gut", 21000.0, 5.0e-2, 1.060, 1.400, 41.203, -2.0e-5, 2.0e-3),
):
    natural = brentq(lambda n: pitch(n, whole, sounding, axial, mass) - hertz, whole / 2, whole * (1 - 1e-9), xtol=1e-16, rtol=1e-15)
    before = pitch(natural, whole, sounding, axial, mass)
    # Central differences, so that the error is of the third order in the step.
    step = 1e-5
    slack = step * natural / whole
    pull = (
        cents(pitch(natural - slack, whole, sounding, axial, mass), before)
        - cents(pitch(natural + slack, whole, sounding, axial, mass), before)
    ) / (2 * step)
    wound = []
    for x in (-0.002, 0.001, 0.003):
        shorter = natural - x * natural / whole
        wound.append(
            {
                "wound_m": x,
                "stretch": whole / shorter - 1,
                "tension_n": axial * (whole / shorter - 1),
                "cent": cents(pitch(shorter, whole, sounding, axial, mass), before),
            }
        )
    grow = 1e-5
    body = (
        cents(pitch(natural, whole * (1 + grow), sounding * (1 + grow), axial, mass), before)
        - cents(pitch(natural, whole * (1 - grow), sounding * (1 - grow), axial, mass), before)
    ) / 2

    def warmed(kelvin, body_expansion=4.0e-6):
        longer = 1 + body_expansion * kelvin
        return pitch(
            natural * (1 + expansion * kelvin), whole * longer, sounding * longer, axial * (1 - softening * kelvin), mass / (1 + expansion * kelvin)
        )

    warmth = (cents(warmed(0.1), before) - cents(warmed(-0.1), before)) / 0.2
    # Water that was a twentieth of the dry mass becomes six hundredths; nothing else changes. Then the same where the core
    # that takes it is two fifths of the mass, the rest winding.
    watered = cents(pitch(natural, whole, sounding, axial, mass * 1.06 / 1.05), before)
    under = cents(pitch(natural, whole, sounding, axial, mass * (0.6 + 0.4 * 1.06 / 1.05)), before)

    def swollen(growth, softer):
        # The string is as heavy as before, and so much longer if it were free.
        return pitch(natural * (1 + growth), whole, sounding, axial * (1 - softer), mass / (1 + growth))

    # A little, so that what is left out is of the second order: a growth of five in a million and a softening of one in a thousand.
    swelling = (cents(swollen(5e-6, 1e-3), before) - cents(swollen(-5e-6, -1e-3), before)) / 2
    stretch = whole / natural - 1
    rows.append(
        {
            "name": name,
            "axial_stiffness_n": axial,
            "mass_unstretched_kg_m": mass,
            "sounding_m": sounding,
            "whole_m": whole,
            "hz": hertz,
            "expansion_k": expansion,
            "body_expansion_k": 4.0e-6,
            "softening_k": softening,
            "tension_n": axial * stretch,
            "stretch": stretch,
            "mass_at_pitch_kg_m": mass * natural / whole,
            "pull_cent_m": pull,
            "wound": wound,
            "body_cent": body,
            "warmth_cent_k": warmth,
            "water_cent": watered,
            "water_under_windings_cent": under,
            "swelling_cent": swelling,
        }
    )

print(json.dumps({"strings": rows}, indent=1))
