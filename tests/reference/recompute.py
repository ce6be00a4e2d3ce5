"""Every physical number of the replies, worked out again from the pages of the model.

This program knows the model only from `src/strings/README.md` and `src/protocol/README.md`, and the constants only
from the reply to `{"ask": "tables"}`. It reads from standard input one object

    {"tables": <reply to tables>, "replies": [<replies to fit or report>, ...]}

and, for every report that it finds (a report reply; in a fit the chosen strings, their rivals, today's strings, the
strings of the runner-up), computes each entry of `numbers` from `construction` and `setting`. Of a fit it also
computes the pitches, the loads, the ratios between neighbours and the plan, and holds the chosen strings against
their `bands`.

It prints {"checked": N, "worst": {...}, "misses": [...]} and exits 1 if anything missed. Units are SI, angles are
degrees in the tables and radians inside; the letters are those of the page.
"""

import json
import math
import sys

# How far a number of a reply may lie from the one computed here, as a share of the latter.
WITHIN = 1e-3
# How far where the number computed here is zero, in the unit of the number.
WITHIN_OF_ZERO = 1e-12

# Cents for a small relative change of pitch.
# Bonded wires of a strand over the full circle of its diameter, in bending.
BONDED_STRAND = {"1x7": 55 / 63, "1x19": 403 / 475, "7x7": 3409 / 3969}
KAPPA = 1200 / math.log(2)

# The layers of a strand: wires across the diameter, then (number of wires, how often the lay angle counts) a layer.
STRANDS = {
    "1x7": (3, [(1, 0), (6, 1)]),
    "1x19": (5, [(1, 0), (18, 1)]),
    "7x7": (9, [(1, 0), (12, 1), (36, 2)]),
}

SEMITONES_ABOVE_C = {"C": 0, "D": 2, "E": 4, "F": 5, "G": 7, "A": 9, "B": 11}


def circle(x):
    """The area of a circle of diameter x."""
    return math.pi * x * x / 4


def between(low, x, high):
    """x, held between low and high."""
    return min(max(x, low), high)


def water(a):
    """X(a): the water that collagen takes up at the relative humidity a, as a share of its dry mass."""
    x_m, c, k = 0.1090, 20.15, 0.8235
    return x_m * c * k * a / ((1 - k * a) * (1 - k * a + c * k * a))


def equal_tempered(note, a4):
    """The pitch of a note such as `Bb4` or `F#2`, in equal temperament, when a' is a4."""
    semitone = SEMITONES_ABOVE_C[note[0]]
    rest = note[1:]
    while rest[0] in "#b":
        semitone += 1 if rest[0] == "#" else -1
        rest = rest[1:]
    octaves_and_semitones = 12 * (int(rest) - 4) + semitone - SEMITONES_ABOVE_C["A"]
    return a4 * 2 ** (octaves_and_semitones / 12)


class Tables:
    """The published tables, by key."""

    def __init__(self, reply):
        self.materials = {row["key"]: row for row in reply["core_materials"]}
        self.metals = {row["key"]: row for row in reply["winding_metals"]}
        self.constants = reply["constants"]
        self.properties = {row["key"] for row in reply["properties"]}


class Constants:
    """The constants of one string, each a (value, low, high); one of them may be moved to an end of its range."""

    CORE = (
        "density",
        "modulus",
        "fast_modulus",
        "strength",
        "poisson",
        "loss",
        "creep",
        "expansion",
        "moisture_left",
        "softening",
    )
    GENERAL = (
        "body_expansion",
        "body_movement",
        "brilliance_loss",
        "winding_loss",
        "winding_stiffening",
        "bonding",
    )

    def __init__(self, tables, construction, setting):
        def ends(row):
            return row["value"], row["low"], row["high"]

        material = tables.materials[construction["core"]["material"]]
        self.all = {("core", name): ends(material["constants"][name]) for name in self.CORE}
        for winding in construction["windings"]:
            metal = winding["metal"]
            for name in ("density", "modulus"):
                self.all[(metal, name)] = ends(tables.metals[metal][name])
        seating = seating_time(material["class"], construction)
        for name in (*self.GENERAL, seating):
            self.all[("general", name)] = ends(tables.constants[name])
        # Under a name of its own, so that the computation need not know which one applies.
        self.all[("general", "seating")] = self.all.pop(("general", seating))
        length, doubt = setting["sounding_length_m"], setting["sounding_length_doubt_m"]
        self.all[("setting", "length")] = (length, length - doubt, length + doubt)

    def central(self):
        """All constants at their values."""
        return {key: value for key, (value, _, _) in self.all.items()}

    def moved(self):
        """Each constant alone at its low end, then at its high end, the others at their values."""
        for key, (_, low, high) in self.all.items():
            for end in (low, high):
                yield {**self.central(), key: end}


def seating_time(material_class, construction):
    """The name of the seating time that applies to a string."""
    if material_class == "gut":
        return "seating_gut"
    if material_class == "polymer":
        return "seating_bundle"
    if construction["core"]["build"] == "strand":
        return "seating_strand"
    return "seating_wound_wire" if construction["windings"] else "seating_plain_wire"


def numbers(tables, construction, setting, value_of):
    """Every property of a string, from the values of its constants."""
    core, windings = construction["core"], construction["windings"]
    material = tables.materials[core["material"]]
    gut = material["class"] == "gut"
    build, d = core["build"], core["diameter_m"]
    length, f = value_of["setting", "length"], setting["pitch_hz"]
    theta, h = setting["temperature_c"], setting["humidity"]
    nu = value_of["core", "poisson"]

    # Core: mass a length and the area that pulls.
    rho = value_of["core", "density"]
    d_w = d
    if build == "strand":
        across, layers = STRANDS[core["layout"]]
        d_w = d / across
        c = math.cos(math.radians(core["lay_deg"]))
        core_mass = rho * circle(d_w) * sum(n / c**times for n, times in layers)
        a_e = circle(d_w) * sum(n * c ** (3 * times) for n, times in layers)
    elif build == "multifilament":
        alpha = math.radians(core["twist_deg"])
        core_mass = rho * core["fill"] * circle(d)
        a_e = core["fill"] * circle(d) * math.cos(alpha) ** 2
    else:
        core_mass = rho * circle(d)
        a_e = circle(d)
    if gut:
        core_mass *= (1 + water(h)) / (1 + water(0.5))

    # Moduli and strength.
    softening = value_of["core", "softening"]
    factor = 1 - softening * (theta - 20)
    strength = value_of["core", "strength"]
    if gut:
        alpha, usual = math.radians(core["twist_deg"]), math.radians(25)
        factor *= (math.cos(alpha) / math.cos(usual)) ** 2
        strength *= math.cos(alpha) / math.cos(usual)
    if material["class"] == "steel":
        strength *= 2211e6 * between(0.10, d_w * 1e3, 6.5) ** -0.145
    e = value_of["core", "modulus"] * factor
    e_v = value_of["core", "fast_modulus"] * factor

    # Windings, from the inside.
    u, winding_mass, w = d, 0.0, 0.0
    for winding in windings:
        t, b, metal = winding["thickness_m"], winding["bedding"], winding["metal"]
        m = u - 2 * b * t + t
        if winding["form"] == "flat":
            winding_mass += value_of[metal, "density"] * math.pi * t * m
        else:
            turn = math.sqrt((math.pi * m / t) ** 2 + 1)
            winding_mass += value_of[metal, "density"] * circle(t) * turn
        w += value_of[metal, "modulus"] * math.pi * m**3 * t / 8
        u += 2 * t * (1 - b)
    gauge = u

    # At pitch.
    mu_0 = core_mass + winding_mass
    ea = e * a_e
    t_0 = 4 * (length * f) ** 2 * mu_0
    tension = 2 * t_0 / (1 + math.sqrt(1 + 4 * t_0 / ea))
    stretch = tension / ea
    mu = mu_0 / (1 + stretch)
    sigma = tension / a_e
    whole = length + setting["afterlength_m"] + setting["nut_to_peg_m"]
    pull = KAPPA / 2 * (ea / tension + 1) / whole
    over_bridge = math.radians(180 - setting["angle_over_bridge_deg"])

    # Bending.
    e_v += material["fast_slope"] * between(20e6, sigma, 200e6)
    bonded = e_v * a_e * d**2 / 16
    if build == "strand":
        n, beta, d_f = sum(n for n, _ in layers), math.radians(core["lay_deg"]), d_w
        free = free_bending(e_v, n, d_f, beta, nu)
        bonded *= BONDED_STRAND[core["layout"]]
        low, middle, high = free, math.sqrt(free * bonded), bonded
    elif build == "multifilament":
        d_f = core["filament_m"]
        n, beta = core["fill"] * (d / d_f) ** 2, math.radians(core["twist_deg"])
        free = free_bending(e_v, n, d_f, beta, nu)
        low, middle, high = free, bonded / 2, 2 * bonded
    else:
        low = middle = high = bonded
    y = value_of["general", "bonding"]
    k = middle + y * ((middle - low) if y < 0 else (high - middle))
    bending = k * (1 + value_of["general", "winding_stiffening"]) if windings else k
    losses = k * value_of["core", "loss"] + value_of["general", "winding_loss"] * w
    q = value_of["general", "brilliance_loss"]

    # Settling.
    k_c = KAPPA / 2 * value_of["core", "creep"]
    settling = 1 / (10 ** (5 / k_c) - 1) if k_c > 0 else 0.0

    # Drift.
    swing_theta, swing_h = setting["temperature_swing_k"], setting["humidity_swing"]
    expansion = value_of["core", "expansion"] - value_of["general", "body_expansion"]
    warmth = KAPPA / 2 * abs(ea / tension * expansion + softening) * swing_theta
    h_1, h_2 = (between(0.05, h + side * swing_h / 2, 0.95) for side in (-1, 1))
    moisture = KAPPA / 2 * (water(h_2) - water(h_1)) / (1 + water(h))
    moisture *= value_of["core", "moisture_left"]
    movement = value_of["general", "body_movement"] * swing_h / 0.10
    body = KAPPA / 2 * abs(ea / tension - 1) * movement

    return {
        "mass_unstretched_kg_m": mu_0,
        "tension_n": tension,
        "stretch": stretch,
        "mass_at_pitch_kg_m": mu,
        "core_stress_pa": sigma,
        "breaking_share": sigma / strength,
        "breaking_pitch_hz": math.sqrt(strength * a_e / mu_0) / (2 * length),
        "axial_stiffness_n": ea,
        "lateral_stiffness_n_m": 4 * tension / length,
        "impedance_kg_s": math.sqrt(tension * mu),
        "pull_cent_m": pull,
        "peg_cent_deg": pull * math.pi * setting["peg_diameter_m"] / 360 / setting["gear_ratio"],
        "outer_diameter_m": gauge,
        "outer_diameter_at_pitch_m": gauge - d * (1 - (1 + stretch) ** -nu),
        "winding_mass_share": winding_mass / mu_0,
        "downforce_n": 2 * tension * math.sin(over_bridge / 2),
        "bending_stiffness_n_m2": bending,
        "inharmonicity": math.pi**2 * bending / (tension * length**2),
        "brilliance_hz": f * math.sqrt(q * tension * length**2 / (math.pi**2 * losses)),
        "attack_m_s2_n": attack(mu * length),
        "loss_cent_decade": k_c,
        "settling_d": max(settling, value_of["general", "seating"]),
        "drift_temperature_cent": warmth,
        "drift_moisture_cent": moisture,
        "drift_body_cent": body,
        "drift_cent": warmth + moisture + body,
    }


def free_bending(e_v, n, d_f, beta, nu):
    """B₀: the bending stiffness of n wires or filaments that slide on one another."""
    one = e_v * math.pi * d_f**4 / 64
    return n * one * 2 * math.cos(beta) / (2 + nu * math.sin(beta) ** 2)


def attack(m):
    """The highest clean bow acceleration for each newton of bow force, of a sounding string of mass m."""
    beta, mu_s, mu_d = 0.1, 0.8, 0.3
    root = math.sqrt((1 - 2 * beta) * (2 * (1 - beta) * mu_s**2 - mu_s * mu_d))
    bracket = (3 - 4 * beta) * mu_s - mu_d - 2 * root
    return beta * (1 - beta) * bracket / ((1 - 2 * beta) * 2 * m)


def quantities(tables, construction, setting):
    """Every property of a string as (value, low, high)."""
    constants = Constants(tables, construction, setting)
    central = numbers(tables, construction, setting, constants.central())
    # For each property and each constant: the lower and the upper of the two differences, with zero.
    down = {name: 0.0 for name in central}
    up = {name: 0.0 for name in central}
    moved = [numbers(tables, construction, setting, values) for values in constants.moved()]
    for at_low, at_high in zip(moved[0::2], moved[1::2]):
        for name, value in central.items():
            steps = (0.0, at_low[name] - value, at_high[name] - value)
            down[name] += min(steps) ** 2
            up[name] += max(steps) ** 2
    return {
        name: (value, max(0.0, value - math.sqrt(down[name])), value + math.sqrt(up[name]))
        for name, value in central.items()
    }


def unknown(low, high):
    """Whether a range is too wide to say anything within it; a range of nothing but zero is not."""
    return high > 3 * low


class Checker:
    """Counts comparisons and keeps what missed."""

    def __init__(self, tables):
        self.tables = tables
        self.checked = 0
        self.worst = {"share": 0.0, "what": None}
        self.misses = []

    def miss(self, what, found, expected):
        """Something in a reply that is not what it should be."""
        self.misses.append({"what": what, "found": found, "expected": expected})

    def number(self, what, found, expected):
        """A number of a reply against the one computed here."""
        self.checked += 1
        is_number = isinstance(found, (int, float)) and not isinstance(found, bool)
        off = abs(found - expected) if is_number else math.inf
        if abs(expected) > WITHIN_OF_ZERO:
            share = off / abs(expected)
            near = share <= WITHIN
            if math.isfinite(share) and share > self.worst["share"]:
                self.worst = {"share": share, "what": what}
        else:
            # Zero, or what rounding has left of it.
            near = off <= WITHIN_OF_ZERO
        if not near:
            self.miss(what, found, expected)

    def same(self, what, found, expected):
        """A word, a length of a list or a truth of a reply against what it should be."""
        self.checked += 1
        if found != expected:
            self.miss(what, found, expected)

    def within(self, what, found, low, high):
        """A number of a reply that must lie in a range of that reply; to rounding."""
        self.checked += 1
        slack = 1e-9 * max(abs(low), abs(high))
        if not low - slack <= found <= high + slack:
            self.miss(what, found, [low, high])

    def report(self, where, report):
        """All numbers of one report; gives them as computed here."""
        expected = quantities(self.tables, report["construction"], report["setting"])
        found = report["numbers"]
        self.same(f"{where}: the names in numbers", sorted(found), sorted(expected))
        self.same(f"{where}: the properties in tables", sorted(self.tables.properties), sorted(expected))
        for name in sorted(expected.keys() & found.keys()):
            value, low, high = expected[name]
            self.number(f"{where}: {name} value", found[name]["value"], value)
            self.number(f"{where}: {name} low", found[name]["low"], low)
            self.number(f"{where}: {name} high", found[name]["high"], high)
            self.same(f"{where}: {name} unknown", found[name]["unknown"], unknown(low, high))
        return expected

    def fit(self, where, reply):
        """All reports of a fit, and what follows from them."""
        chosen, problem = reply["set"], reply["problem"]
        if not chosen:
            self.miss(f"{where}: set", chosen, "a set of strings")
            return
        computed = []
        for string in chosen["strings"]:
            here = f"{where}, {string['note']}"
            own = self.report(f"{here}, chosen", string["report"])
            computed.append(own)
            self.pitch(here, string, problem["a4_hz"])
            self.bands(here, string, own)
            others = {}
            for other in ("rival", "today"):
                if string[other]:
                    others[other] = self.report(f"{here}, {other}", string[other])
            for about, other in (("reasons", "rival"), ("costs", "rival"), ("changes", "today")):
                for entry in string[about]:
                    comparison = entry.get("comparison") if about != "changes" else entry
                    if comparison:
                        what = f"{here}, {about}, {comparison['property']}"
                        self.comparison(what, comparison, own, others.get(other))
            point = string["chosen_point"]
            for name in ("stretch", "settling_d", "drift_cent"):
                self.number(f"{here}, chosen_point {name}", point[name], own[name][0])
        self.loads(where, chosen, computed)
        if chosen["runner_up"]:
            others = chosen["runner_up"]["strings"]
            self.same(f"{where}: strings of the runner-up", len(others), len(computed))
            for string, report in zip(chosen["strings"], others):
                here = f"{where}, {string['note']}, runner-up"
                self.report(here, report)
                expected = equal_tempered(string["note"], problem["a4_hz"])
                self.number(f"{here}, pitch", report["setting"]["pitch_hz"], expected)

    def pitch(self, here, string, a4):
        """The pitch of a chosen string and of those beside it, from its note."""
        expected = equal_tempered(string["note"], a4)
        self.number(f"{here}, pitch", string["report"]["setting"]["pitch_hz"], expected)
        self.number(f"{here}, pitch to shop for", string["shopping"]["pitch_hz"], expected)
        for other in ("rival", "today"):
            if string[other]:
                self.number(f"{here}, pitch of {other}", string[other]["setting"]["pitch_hz"], expected)

    def bands(self, here, string, own):
        """A chosen string lies within what is made."""
        bands = string["bands"]
        for band, name in (
            ("tension_n", "tension_n"),
            ("gauge_m", "outer_diameter_m"),
            ("stretch", "stretch"),
            ("winding_mass_share", "winding_mass_share"),
        ):
            self.within(f"{here}, band of {band}", own[name][0], *bands[band])
        share = own["breaking_share"][0]
        self.within(f"{here}, band of breaking_share", share, 0.0, bands["breaking_share"])

    def comparison(self, what, comparison, own, other):
        """The two numbers of a comparison are those of the two reports."""
        if other is None:
            self.miss(what, "a comparison", "no comparison, as there is nothing to compare with")
            return
        name = comparison["property"]
        self.number(f"{what}, this", comparison["this"], own[name][0])
        self.number(f"{what}, other", comparison["other"], other[name][0])

    def loads(self, where, chosen, computed):
        """The loads of a set, the steps between its strings, and when it is settled.

        The strings of a set stand or fall together, so the ends of their ranges are added, not their squares.
        """
        for total, name in (("total_tension_n", "tension_n"), ("downforce_n", "downforce_n")):
            for i, end in enumerate(("value", "low", "high")):
                expected = sum(own[name][i] for own in computed)
                self.number(f"{where}: {total} {end}", chosen[total][end], expected)
        self.same(f"{where}: number of steps", len(chosen["steps"]), len(computed) - 1)
        for i, (step, upper, lower) in enumerate(zip(chosen["steps"], computed, computed[1:])):
            # Tension is that of the upper string over the lower, impedance that of the lower over the upper.
            tension = upper["tension_n"][0] / lower["tension_n"][0]
            impedance = lower["impedance_kg_s"][0] / upper["impedance_kg_s"][0]
            self.number(f"{where}: step {i}, tension_ratio", step["tension_ratio"], tension)
            self.number(f"{where}: step {i}, impedance_ratio", step["impedance_ratio"], impedance)
        plan = chosen["plan"]
        self.same(f"{where}: strings in the plan", len(plan["settled_d"]), len(computed))
        for i, (settled, own) in enumerate(zip(plan["settled_d"], computed)):
            value, _, high = own["settling_d"]
            self.number(f"{where}: string {i} settled, value", settled[0], value)
            self.number(f"{where}: string {i} settled, high", settled[1], high)
        for i, end in ((0, "value"), (2, "high")):
            expected = max(own["settling_d"][i] for own in computed)
            self.number(f"{where}: fit before, {end}", plan["fit_before_d"][i // 2], expected)


def main():
    """Checks the replies on standard input."""
    given = json.load(sys.stdin)
    checker = Checker(Tables(given["tables"]))
    for i, reply in enumerate(given["replies"]):
        where = f"reply {i} ({reply['reply']})"
        if reply["reply"] == "report":
            checker.report(where, reply)
        elif reply["reply"] == "fit":
            checker.fit(where, reply)
        else:
            checker.miss(where, reply["reply"], "report or fit")
    summary = {"checked": checker.checked, "worst": checker.worst, "misses": checker.misses}
    print(json.dumps(summary, indent=1))
    return 1 if checker.misses or checker.checked == 0 else 0


if __name__ == "__main__":
    sys.exit(main())
