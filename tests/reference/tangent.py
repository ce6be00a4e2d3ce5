"""A fibre whose modulus rises with stress: pulled step by step, d sigma = E(sigma) d epsilon.

E(sigma) = E + slope sigma. Strain is added up from no stress to the stress at hand; the secant modulus is stress over strain,
the tangent modulus the stress that the last little strain adds, over it. `relaxation` is what a creep of a hundred-thousandth
of the stretch takes of the stress at a fixed length, over that creep: the fibre is let back along its own curve.
Made with:  python3 tangent.py > tangent.json
"""

import json

from scipy.integrate import solve_ivp


def strain_of(modulus, slope, stress):
    run = solve_ivp(lambda s, e: 1 / (modulus + slope * s), (0.0, stress), [0.0], rtol=1e-12, atol=1e-16)
    return run.y[0, -1]


rows = []
for modulus, slope, mpa in (
    (4.5e9, 39.0, 20.0),
    (4.5e9, 39.0, 60.0),
    (4.5e9, 39.0, 120.0),
    (4.5e9, 39.0, 200.0),
    (3.6e9, 39.0, 200.0),
    (5.4e9, 39.0, 90.0),
    (12.0e9, 10.0, 150.0),
    (6.0e9, 0.0, 100.0),
):
    stress = mpa * 1e6
    strain = strain_of(modulus, slope, stress)
    crept = 1e-5
    # The stress at which the strain is less by the creep; by stepping down the curve.
    back = solve_ivp(lambda e, s: -(modulus + slope * s), (0.0, crept * strain), [stress], rtol=1e-12, atol=1e-3)
    little = 1e-6 * stress
    tangent = little / (strain_of(modulus, slope, stress + little / 2) - strain_of(modulus, slope, stress - little / 2))
    rows.append(
        {
            "modulus_pa": modulus,
            "slope": slope,
            "stress_pa": stress,
            "ratio": float(f"{tangent / (stress / strain):.6g}"),
            "relaxation": float(f"{(stress - back.y[0, -1]) / stress / crept:.4g}"),
        }
    )
print(json.dumps({"fibres": rows}, indent=1))
