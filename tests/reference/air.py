"""Loss of a string to the air it swings in: Stokes' cylinder in a viscous fluid, solved exactly with Bessel functions.

Stokes 1851 in modern form (Rosenhead, Laminar Boundary Layers, 1963; Sader 1998): the force on a length of cylinder is
pi/4 rho_a omega^2 D^2 Gamma times its displacement, Gamma = 1 + 4 i K1(-i sqrt(i Re)) / (sqrt(i Re) K0(-i sqrt(i Re))), Re =
omega D^2/(4 nu); equations from memory. Its imaginary part is resistance: eta = R/(mu omega) = (rho_a/rho) Im Gamma.
For thin boundary layers the same follows by hand: the air slips past the surface at twice the string's speed where it is
widest, each area loses rho_a/2 sqrt(omega nu/2) times the square of the slip, and the sum is R = 2 sqrt(2) pi a rho_a sqrt(omega nu).
Made with:  python3 air.py > air.json
"""

import json

import numpy as np
from scipy.special import kve

rows = []
for name, diameter, mass, hertz in (
    ("violin E, steel", 0.26e-3, 4.17e-4, 659.255),
    ("violin A, gut", 0.76e-3, 5.99e-4, 440.0),
    ("violin G, wound", 0.80e-3, 2.79e-3, 195.998),
    ("guitar E4, nylon", 0.65e-3, 3.8e-4, 329.63),
    ("cello A, wound", 0.70e-3, 1.6e-3, 220.0),
    ("cello C, wound", 1.50e-3, 1.7e-2, 65.406),
    ("bass E, wound", 2.6e-3, 3.5e-2, 41.203),
    ("violin E, tenth partial", 0.26e-3, 4.17e-4, 6592.55),
):
    air, viscosity = 1.20, 1.5e-5
    omega = 2 * np.pi * hertz
    z = np.sqrt(1j * omega * diameter**2 / (4 * viscosity))
    # K1 over K0, both scaled alike.
    gamma = 1 + 4j / z * kve(1, -1j * z) / kve(0, -1j * z)
    density = mass / (np.pi / 4 * diameter**2)
    given = {"name": name, "diameter_m": diameter, "mass_kg_m": mass, "hz": hertz, "air_kg_m3": air, "viscosity_m2_s": viscosity}
    layer = 2 * np.sqrt(2) * np.pi * diameter / 2 * air * np.sqrt(omega * viscosity) / (mass * omega)
    rows.append(given | {"loss": float(air / density * gamma.imag), "loss_thin_layer": float(layer)})
print(json.dumps({"strings": rows}, indent=1))
