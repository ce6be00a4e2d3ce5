"""Truths about strings, from other laws than the model's: five hundred worlds for five hundred strings.

Reads from its input one JSON document: strings with their settings, and the constants of materials with value and range.
For each string every constant is drawn anew, from a flat or a triangular shape whose middle 90 % is the range (not the normal
of the model), and then the laws differ: elastic cores that stiffen or soften with stretch, strands by their least energy,
bending stiffness anywhere between its bounds with the 29 % by which one string measured twice has differed, Stokes' air by
Bessel functions, bending at the end by its layer, bow forces with the scatter of their measurement. What time does: creep by a
chain of dashpots that rises with a power of the load, wire by a power of load and time, friction place by place as each lets go. What the
room does: water by the measured table or a curve, soaked in by stepping rings in which it moves the faster the wetter they are, a
body of two parts, fast and slow, and the pitch by tuning and disturbing. Prints for each string the true properties.
"""

import json
import sys

import numpy as np
from scipy.linalg import solve_banded
from scipy.optimize import brentq
from scipy.special import kve

KAPPA = 600 / np.log(2)
TABLE = np.array([(0, 0), (5, 5.45), (10, 7.39), (20, 10.06), (30, 12.44), (40, 15.14), (50, 17.95), (60, 21.06), (70, 25.05), (80, 30.20), (90, 40.70), (95, 50.01)]) / 100
WIRES = {"1x7": (7, 3, (6,)), "1x19": (19, 5, (6, 12)), "7x7": (49, 9, (6,))}
BONDED = {"1x7": 55 / 63, "1x19": 403 / 475, "7x7": 3409 / 3969}

BODIES = {
    "violin": (((272, 18, 0.25), (407, 30, 0.15), (462, 35, 0.8), (551, 35, 1.0)), 900, 2300),
    "viola": (((220, 18, 0.25), (310, 30, 0.15), (355, 35, 0.8), (440, 35, 1.0)), 700, 1900),
    "cello": (((97, 18, 0.25), (173, 30, 1.0), (209, 30, 0.5), (281, 30, 0.4)), 450, 1350),
    "double-bass": (((60, 15, 0.25), (98, 25, 1.0), (116, 25, 0.5), (170, 25, 0.4)), 280, 800),
}
# Decibels of room between the greatest and the least force.
ROOM = 20 / np.log(10) * (
    np.array([1.2478, 1.0344, -0.0553, 0.8085, 3.5703, 0.0942, 0.0104, -0.1090, 2.5267, 0.1884])
    - np.array([1.6177, 1.0335, 0.9144, -2.0938, -0.4269, 0.0045, 0.0449, 0.0487, -0.1495, -0.8110])
)


def drawn(rng, constant):
    value, low, high = constant
    # Flat or triangular, nine tenths of it within the range; no further below zero than the range goes.
    t = rng.uniform(-1, 1) / 0.9 if rng.random() < 0.5 else rng.triangular(-1, 0, 1) / (1 - np.sqrt(0.1))
    truth = value + t * (high - value if t > 0 else value - low)
    # What is above zero, as a time is, is not drawn down to nothing.
    return max(truth, low / 3) if low >= 0 else truth


def strand_area(layout, d, lay, nu):
    count, across, layers = WIRES[layout]
    s2, c2 = np.cos(np.radians(lay)) ** 2, np.sin(np.radians(lay)) ** 2
    area, grown = 1.0, 1.0
    for j, n in enumerate(layers):
        r = 2 * (j + 1)
        x = (s2 - c2 * nu * grown / r) / (1 + c2 * nu / r)
        area += n * x * x / np.sqrt(s2)
        grown += 2 * x
    if layout == "7x7":
        area *= 1 + 6 * s2**1.5
    return area * np.pi / 4 * (d / across) ** 2


def air_loss(density_air, viscosity, mass, d, hz):
    omega = 2 * np.pi * hz
    z = np.sqrt(1j * omega * d * d / (4 * viscosity))
    return density_air * np.pi / 4 * d * d / mass * (1 + 4j / z * kve(1, -1j * z) / kve(0, -1j * z)).imag


def chain(t):
    times = 10 ** np.arange(-4, 6, 0.125)
    return float(np.sum(-np.expm1(-t / times)) / 8)


def soaking():
    """Share of its end state that a cylinder reaches, by time in radius squared over diffusivity; stepped once for all."""
    walls = 1 - (1 - np.linspace(0, 1, 121)) ** 1.5
    middles, volumes = (walls[1:] + walls[:-1]) / 2, (walls[1:] ** 2 - walls[:-1] ** 2) / 2
    between, surface = walls[1:-1] / np.diff(middles), 1 / (1 - middles[-1])
    w, times, shares, t = np.zeros(120), [0.0], [0.0], 0.0
    for dt in np.geomspace(1e-9, 3e-2, 1200):
        eases = 0.7 + 0.6 * w
        inner, out = between * (eases[1:] + eases[:-1]) / 2, surface * 1.3
        bands = np.zeros((3, 120))
        bands[1] = 1 + dt * (np.append(inner, out) + np.insert(inner, 0, 0.0)) / volumes
        bands[0, 1:], bands[2, :-1] = -dt * inner / volumes[:-1], -dt * inner / volumes[1:]
        right = w.copy()
        right[-1] += dt * out / volumes[-1]
        w = solve_banded((1, 1), bands, right)
        t += dt
        times.append(t)
        shares.append(float(np.sum(w * volumes) * 2))
    assert t > 1 and shares[-1] > 0.99
    return np.array(times), np.array(shares)


TIMES_SOAKED, SHARES_SOAKED = soaking()
# An evening, a week, a season, in seconds.
UNTUNED = {"evening": 9e3, "week": 7 * 86400.0, "season": 90 * 86400.0}


def soaked(x):
    return float(np.interp(np.sqrt(x), np.sqrt(TIMES_SOAKED), SHARES_SOAKED))


def in_two_parts(time, constant):
    """A body of a fast part and a slow one."""
    return 1 - (np.exp(-2 * time / constant) + np.exp(-time / 2 / constant)) / 2


def truth(rng, string, setting, general):
    core = string["core"]
    m = {k: drawn(rng, v) for k, v in core["material"].items()}
    g = {k: drawn(rng, v) for k, v in general.items()}
    if core["class"] == "steel":
        m["fast_modulus"] = m["modulus"]
    gauge = g["core_gauge"]
    d, build, lay = core["diameter_m"] * gauge, core["build"], core["angle_deg"]
    length = rng.uniform(-1, 1) * setting["doubt_m"] / 0.9 + setting["length_m"]
    whole = length + setting["afterlength_m"] + setting["nut_to_peg_m"]
    hz, area = setting["pitch_hz"], np.pi / 4 * d * d
    twist = np.cos(np.radians(lay)) ** 2 / np.cos(np.radians(25.0)) ** 2
    nu = m["poisson"]
    scatter = 1 + rng.uniform(-0.29, 0.29)
    if build == "solid":
        mass, pull, filament, e, fast, strength = m["density"] * area, area, d, m["modulus"], m["fast_modulus"], m["strength"]
        free = bonded = lambda e: e * np.pi * d**4 / 64
        c0 = c1 = m["shear"] * np.pi * d**4 / 32
        scatter = 1.0
    elif build == "twisted":
        mass, pull, filament = m["density"] * area, area, d
        e, fast, strength = m["modulus"] * twist, m["fast_modulus"] * twist, m["strength"] * np.sqrt(twist)
        free = bonded = lambda e: e * np.pi * d**4 / 64
        c0 = c1 = m["shear"] * np.pi * d**4 / 32
        scatter = 1.0
    elif build == "strand":
        count, across, layers = WIRES[core["layout"]]
        c = np.cos(np.radians(lay))
        wires = 1 + sum(layers) / c if core["layout"] != "7x7" else 1 + 12 / c + 36 / c**2
        filament = d / across
        mass, pull = m["density"] * np.pi / 4 * filament**2 * wires, strand_area(core["layout"], d, lay, nu)
        e, fast, strength = m["modulus"], m["fast_modulus"], m["strength"]
        free = lambda e: count * e * np.pi * filament**4 / 64 * c
        bonded = lambda e: e * pull * d * d / 16 * BONDED[core["layout"]]
        c0, c1 = count * m["shear"] * np.pi * filament**4 / 32, m["shear"] * np.pi * d**4 / 32
    else:
        c = np.cos(np.radians(lay))
        fill, filament = core["fill"], core["filament_m"]
        mass, pull = m["density"] * fill * area, fill * area * c * c
        e, fast, strength = m["modulus"], m["fast_modulus"], m["strength"]
        free = lambda e: fill * (d / filament) ** 2 * e * np.pi * filament**4 / 64 * c
        bonded = lambda e: 2 * e * pull * d * d / 16
        c1 = m["shear"] * fill * np.pi * d**4 / 32
        c0 = c1 * (filament / d) ** 2
    if core["class"] == "steel":
        # EN 10270 rather than Shigley: linear in the logarithm of the diameter.
        x = min(max(filament * 1e3, 0.1), 6.5)
        strength = m["strength"] * (2220 - 820 * np.log10(x)) * 1e6
    if core["class"] == "gut":
        water = lambda a: np.interp(a, TABLE[:, 0], TABLE[:, 1])
        mass *= (1 + water(setting["humidity"])) / (1 + water(0.5))
    else:
        power = rng.uniform(1.0, 1.6)
        water = lambda a: m["water"] * (a / 0.6) ** power
    warm = 1 - m["softening"] * (setting["temperature_c"] - 20)
    e, fast = e * warm, fast * warm
    core_mass, outer, tube, winding_mass, inertia = mass, d, 0.0, 0.0, mass * d * d / 8
    for w in string["windings"]:
        t = w["thickness_m"] * g["winding_gauge"]
        rho, modulus = drawn(rng, w["density"]), drawn(rng, w["modulus"]) / (1 + w["gap"])
        mean = outer - 2 * w["bedding"] * t + t
        if w["form"] == "round":
            own = rho * np.pi / 4 * t * t * np.sqrt((np.pi * mean / (t * (1 + w["gap"]))) ** 2 + 1)
        else:
            own = rho * np.pi * t * mean / (1 + w["gap"])
        winding_mass += own
        tube += modulus * np.pi * ((mean + t) ** 4 - (mean - t) ** 4) / 64
        inertia += own * mean * mean / 4
        outer += 2 * t * (1 - w["bedding"])
    mass += winding_mass
    # A core whose stress is not quite straight in its stretch.
    bend = {"steel": 0.0, "gut": rng.uniform(-0.5, 0.5), "polymer": rng.uniform(-2, 2)}[core["class"]]
    force = lambda x, softer=1.0: pull * e * softer * (x + bend * x * x)
    pitch = lambda x, l=length, mu=mass, softer=1.0: np.sqrt(max(force(x, softer), 1e-9) * (1 + x) / mu) / (2 * l)
    # The first stretch that brings it to pitch; a core that would soften past it is taken as straight.
    steps = np.geomspace(1e-6, 0.6, 400)
    reached = [s for s in steps if pitch(s) > hz]
    if not reached:
        bend = 0.0
        reached = [s for s in steps if pitch(s) > hz]
    x = brentq(lambda x: pitch(x) - hz, 1e-7, reached[0])
    tension, mu = force(x), mass / (1 + x)
    slope = pull * e * (1 + 2 * bend * x)
    impedance, stress = np.sqrt(tension * mu), tension / pull
    if core["key"] == "polyamide":
        fast += 39 * rng.uniform(0.9, 1.1) * min(max(stress, 2e7), 2e8)
    wound = bool(string["windings"])
    low, high = free(fast), bonded(fast)
    bare = np.exp(rng.uniform(np.log(low), np.log(high))) * scatter if high > low else high
    bending = bare * (1 + g["winding_stiffening"] if wound else 1)
    lossy = bare * m["loss"] + tube * g["winding_loss"]
    b = np.pi**2 * bending / tension / length**2
    resistance, peak = setting["resistance"] * g["bridge_resistance"], setting["peak"] * g["bridge_resistance"]
    eta = (air_loss(g["air_density"], g["air_viscosity"], mu, outer, hz) + g["string_loss"] + np.pi**2 * lossy / tension / length**2) / (1 + b)
    ring = np.log(1000) / (np.pi * hz * (eta + 2 * impedance / np.pi / resistance))
    torsion = (np.exp(rng.uniform(np.log(c0), np.log(c1))) if c1 > c0 else c1) + g["winding_torsion"] * 0.375 * 2 * tube
    # Drift: string tuned, then warmed, soaked and moved, and its pitch computed again.
    natural = whole / (1 + x)
    cents = lambda now: 1200 * np.log2(now / hz)

    def moved(grow=0.0, swell=0.0, softer=1.0, heavier=1.0, pulls=1.0):
        longer = 1 + grow
        n = natural * (1 + swell)
        return cents(pitch(whole * longer / n - 1, length * longer, mass * heavier / (1 + swell), softer * pulls))

    share_of_core = core_mass / mass
    held = lambda a: min(max(a, 0.05), 0.95)
    left = m["moisture_left"]
    diffusivity = m["diffusivity"] / (g["winding_delay"] if string["windings"] else 1.0)
    t2 = np.tan(np.radians(lay)) ** 2 if build == "multifilament" else 0.0
    # Fibres tied to one height, by the balance of their pulls.
    tied = (1 + t2) * np.log1p(t2) / t2 if t2 > 0 else 1.0
    drifts = {}
    for (untuned, seconds), (dt, dh) in zip(UNTUNED.items(), setting["swings"]):
        warm_body = g["body_expansion"] * in_two_parts(seconds, g["body_warming"])
        damp_body = g["body_movement"] * in_two_parts(seconds, g["body_soaking"]) / 0.1
        wet = soaked(diffusivity * seconds / (filament / 2) ** 2)

        def warmth(side):
            theta = side * dt / 2
            return moved(warm_body * theta, m["expansion"] * theta, np.exp(-m["softening"] * theta))

        def watered(side):
            before, end = water(setting["humidity"]), water(held(setting["humidity"] + side * dh / 2))
            gain = wet * (end - before)
            heavier = 1 + share_of_core * gain / (1 + before)
            if core["class"] == "gut":
                # Its pull gives back all but a part of what a bare string's mass does.
                return moved(heavier=heavier, pulls=(1 + gain / (1 + before)) ** (1 - left))
            swell = m["swelling_along"] * tied - m["swelling_across"] * (tied - 1)
            return moved(swell=left * swell * gain, softer=np.exp(-left * m["damp_softening"] * gain), heavier=heavier)

        body = lambda side: moved(damp_body * side * dh / 2)
        by_warmth, by_water, by_body = (of(1) - of(-1) for of in (warmth, watered, body))
        drifts[f"{untuned}_warmth_cent"], drifts[f"{untuned}_damp_cent"] = by_warmth, by_water + by_body
        drifts[f"{untuned}_cent"] = by_warmth + by_water + by_body
    drifts["season_moisture_cent"], drifts["season_body_cent"] = by_water, by_body
    drifts["ratchet_cent"] = g["ratchet"] * dh / 0.2 if core["class"] == "gut" else 0.0
    # Settling. What the core has lost of its tension by a day: wire by a power of load and of time, 2.6 in a thousand a decade at
    # half its strength and a day; all else by the chain, the faster the harder it is pulled, along its own curve.
    used = stress / strength
    if core["class"] == "steel":
        p = 0.75 * (1 - min(used, 0.85))
        slope_at_a_day = m["creep"] * 2.62e-3 * (used / 0.5) ** 3.6
        crept = lambda t: slope_at_a_day / np.log(10) / p * t**p
    else:
        damp = max(1 + m["damp_creep"] * (setting["humidity"] - 0.5) / 0.1, 0.2)
        load = (used / 0.4) ** (0.4 * g["stress_creep"])
        ratio = slope * x / tension
        if core["key"] == "polyamide":
            # Pulled along a modulus that rises with stress: the strain is added up.
            s = np.linspace(0, min(stress, 2e8), 400)
            e_of = m["fast_modulus"] * warm + 39 * rng.uniform(0.9, 1.1) * s
            ratio = e_of[-1] * np.trapezoid(1 / e_of, s) / s[-1]
        bundled = g["bundle_creep"] if build == "multifilament" else 1.0
        c = m["creep"] * damp * load * ratio * bundled
        crept = lambda t: c * chain(t)
    # Places at the ends, each with the same share of what friction holds, letting go one by one; and a knot, and wires that bed down.
    mu_edge = g["friction_wound"] if string["windings"] else g["friction_plain"]
    over = lambda degrees, l: 2 * np.tanh(mu_edge * np.radians(degrees) / 2) * l / whole
    turns = rng.uniform(2.0, 4.0)
    round_peg = setting["peg_m"] / 2 / mu_edge * (1 - np.exp(-2 * np.pi * turns * mu_edge)) / whole
    give = g["seating"] * (over(12.0, setting["nut_to_peg_m"]) + over(180 - setting["angle_deg"], setting["afterlength_m"]) + round_peg)
    if core["class"] == "gut":
        give += -moved(swell=g["knot"] / whole) / KAPPA
    once = {"7x7": g["constructional_rope"]}.get(core["layout"], g["constructional_spiral"]) if build == "strand" else 0.0
    give += g["bedding_in"] * once * slope / tension
    # Evenly over three decades from a quarter of an hour on, each a little early or late.
    places = np.sort(0.0104 * 10 ** (3 * (np.arange(80) + rng.uniform(0, 1, 80)) / 80))
    let_go = lambda t: give * np.searchsorted(places, t) / 80
    # Slack comes at most to nearly all of it.
    between_days = lambda a, b: -600 * np.log2(1 - min(crept(b) - crept(a) + let_go(b) - let_go(a), 0.95))
    settled = next((t for t in np.geomspace(1e-3, 100, 400) if between_days(t, t + 1) <= 5.0), 100.0)
    h = setting["height_m"]
    half = np.hypot(length / 2, h)
    stopped = 600 * np.log2(force((whole - length + 2 * half) / natural - 1) / tension)
    share = 0.002 / 0.328
    glide = 1200 * np.log2(1 + 0.375 * slope / tension * (np.pi * share / 2) ** 2)
    layer = np.sqrt(bending / tension)
    swing = fast * filament / 2 * np.pi * share / layer * (1 + 2 * layer / length)
    friction = rng.normal(1, 0.07)
    given_once = slope / tension * once
    v, beta, dmu, sounding = 0.1, 0.1, g["friction_drop"], mu * length
    slide, rest = 0.3, 0.3 + dmu
    attack = beta * 0.9 * (2.6 * rest - slide - 2 * np.sqrt(0.8 * (1.8 * rest**2 - rest * slide))) / (0.8 * 2 * sounding)
    gentle = beta * 0.9 * (3 * rest - slide - 2 * np.sqrt(2 * rest**2 - rest * slide)) / (2 * sounding)
    greatest = 2 * impedance * v / beta / dmu * friction
    least = impedance**2 * v / (2 * beta**2 * resistance * dmu) * friction
    # What the simulation would say: the fitted number, and by how much it misses.
    def gives(f):
        signature, middle, hill = BODIES[setting["body"]]
        modes = [(at, q, part * max(1 / peak - 1 / resistance, 0)) for at, q, part in signature]
        modes += [(middle, 0.3, 1 / resistance), (hill, 1.5, 1.5 / resistance)]
        return sum(c / (1 + 1j * q * (f / at - at / f)) for at, q, c in modes)

    between = lambda low, x, high: min(max(x, low), high)
    ln_z, y = np.log(impedance), gives(hz)
    taken = between(-6, ln_z + np.log(y.real), -3)
    taken_in_all = between(-6, ln_z + np.log(sum(gives(n * hz).real / n for n in range(1, 10))), -2)
    springs = between(-0.5, 100 * impedance * y.imag, 2.5)
    twisting = np.sqrt(torsion * inertia) / (outer / 2) ** 2
    twisted = np.log(twisting / (impedance + twisting))
    left, in_speaking = between(-0.7, twisted, 0), between(-0.95, twisted, 0)
    stiff = between(-2.7, np.log(b / 6e-5), 3)
    room = ROOM @ [1, ln_z, taken, springs, left, stiff, stiff**2, springs**2, left**2, springs * taken_in_all]
    room += 20 / np.log(10) * 1.2 * (between(-1.7, twisted, -0.85) + 0.85)
    x_pitch, x_hill = np.log(hz / 220), np.log(BODIES[setting["body"]][2] / 1500)
    energies, rates = [], []
    for n in range(1, 13):
        f = n * hz * np.sqrt((1 + b * n**2) / (1 + b))
        eta_n = (air_loss(g["air_density"], g["air_viscosity"], mu, outer, f) + g["string_loss"] + (np.pi * n / length) ** 2 * lossy / tension) / (1 + b * n**2)
        rates.append(2 * np.pi * f * (eta_n + 2 * impedance * gives(f).real / np.pi / n))
        energies.append((np.sin(0.23 * n * np.pi) / n * abs(gives(f))) ** 2 / rates[-1])
    times = np.geomspace(1e-4, 1e3, 20_000)
    to_come = 10 * np.log10(np.exp(-np.outer(times, rates)) @ energies / sum(energies) + 1e-300)
    ring_out = 6 * (np.interp(15, -to_come, times) - np.interp(5, -to_come, times))
    return {
        "speaks_s": np.exp(-1.9739 - 0.9912 * x_pitch + 0.4645 * ln_z - 0.7884 * in_speaking + rng.normal(0, 0.2)), "bow_room_db": room + rng.normal(0, 1.7),
        "sharpness_acum": np.exp(0.2919 + 0.1793 * x_pitch + 0.3537 * x_hill - 0.0421 * stiff + 0.0895 * left + rng.normal(0, 0.056)),
        "rings_on_s": ring_out * np.exp(rng.normal(0, 0.14)),
        "mass_unstretched_kg_m": mass, "mass_at_pitch_kg_m": mu, "tension_n": tension, "core_stress_pa": stress,
        "breaking_share": stress / strength, "breaking_pitch_hz": np.sqrt(strength * pull / mass) / (2 * length), "stretch": x,
        "pull_cent_m": KAPPA * (slope / tension + 1) / whole, "peg_cent_deg": KAPPA * (slope / tension + 1) / whole * np.pi * setting["peg_m"] / 360,
        "lateral_stiffness_n_m": 4 * tension / length, "impedance_kg_s": impedance, "axial_stiffness_n": slope, "bending_stiffness_n_m2": bending,
        "inharmonicity": b, "outer_diameter_m": outer, "outer_diameter_at_pitch_m": outer - d * nu * x, "winding_mass_share": winding_mass / mass,
        "brilliance_hz": hz * np.sqrt(g["brilliance_loss"] * tension * length**2 / (np.pi**2 * lossy)), "attack_m_s2_n": attack,
        "loss_cent_decade": between_days(10**-0.5, 10**0.5), "settling_d": settled, **drifts,
        "downforce_n": 2 * tension * np.cos(np.radians(setting["angle_deg"] / 2)), "gentlest_attack_m_s2_n": gentle, "bow_force_greatest_n": greatest,
        "bow_force_greatest_falling_n": greatest * 1.2, "torsion_q": g["torsion_q"],
        "over_the_peg": e * filament / (setting["peg_m"] + filament) / strength, "bow_force_least_n": least, "bow_force_least_measured_n": g["least_force"] * impedance**2 / beta**2 * friction,
        "bow_window_db": 20 * np.log10(greatest / least), "wolf": impedance / (4 * beta * peak), "loss_first": eta, "ring_s": ring,
        "torsion_speed_m_s": np.sqrt(torsion / inertia), "torsion_ratio": np.sqrt(torsion / inertia) / (2 * length * hz),
        "torsion_impedance_ratio": np.sqrt(torsion * inertia) / (outer / 2) ** 2 / impedance, "stopping_cent": stopped, "glide_cent": glide,
        "over_the_nut": e * filament / (2 * setting["nut_radius_m"] + filament) / strength, "fatigue": stress / strength + swing / (g["endurance"] * strength),
        "constructional_cent": -KAPPA * np.log1p(-min(given_once, 0.999)),
    }


def main():
    told = json.load(sys.stdin)
    rng = np.random.default_rng(told["seed"])
    truths = [truth(rng, s, s["setting"], told["general"]) for s in told["strings"]]
    print(json.dumps([{k: float(v) for k, v in t.items()} for t in truths]))


main()
