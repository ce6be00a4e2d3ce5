"""Every physical number of the replies, worked out again from the pages of the model.

This program knows the model only from `src/strings/README.md` and `src/protocol/README.md`, and the constants only
from the reply to `{"ask": "tables"}`. It reads from standard input one object

    {"tables": <reply to tables>, "replies": [<replies to fit, report, stretch or year>, ...]}

and, for every report that it finds (a report reply; in a fit the chosen strings, their rivals, today's strings, the
strings of the runner-up), computes each entry of `numbers`, `partials`, `nights` and `doubts` from `construction` and
`setting`. Of a fit it also computes the pitches, the loads, the ratios between neighbours and the plan, and holds the
chosen strings against their `bands`.

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
# How far a chance may lie from the one computed here.
WITHIN_OF_CHANCE = 1e-4

# Cents for a small relative change of pitch.
KAPPA = 1200 / math.log(2)

# The ends of a 90 % range, in standard deviations of the normal distribution.
HALF_RANGE = 1.645

# How many partials and how many days a report lists.
PARTIALS = 16
DAYS = 14
# The cents that a string may lose in a night and count as settled.
SETTLED_CENT = 5

# A strand by its layout: wires across the diameter, then (number of wires, how often the lay angle counts) a layer.
STRANDS = {
    "1x7": (3, [(1, 0), (6, 1)]),
    "1x19": (5, [(1, 0), (18, 1)]),
    "7x7": (9, [(1, 0), (12, 1), (36, 2)]),
}
# Bonded wires of a strand over the full circle of its diameter, in bending.
BONDED_STRAND = {"1x7": 55 / 63, "1x19": 403 / 475, "7x7": 3409 / 3969}

# The bow: its place on the string, the frictions, its speed.
BETA, MU_D, BOW_SPEED = 0.1, 0.3, 0.1
# The amplitude of the string over its length.
AMPLITUDE = 0.002 / 0.328
# Share of its tension that a strand can lose while its wires find their places, at the most.
NEARLY_SLACK = 0.95

# The properties whose doubts a report lists, and how many constants it names for each at the most.
DOUBTED = ("bow_window_db", "breaking_share", "brilliance_hz", "season_cent", "settling_d", "tension_n")
DOUBTS = 3

# What the ends of the usual tensions are multiplied by, where the set-up changes them.
SET_UP = {"historical": (0.75, 0.97)}

SEMITONES_ABOVE_C = {"C": 0, "D": 2, "E": 4, "F": 5, "G": 7, "A": 9, "B": 11}

# Numbers in decibels, which may be negative.
LEVELS = ("bow_window_db", "bow_room_db")
# How long a string goes untuned, seconds, and what its swings are called in a setting.
UNTUNED = {
    "evening": (2.5 * 3600, "evening_temperature_swing_k", "evening_humidity_swing"),
    "week": (7 * 86400, "week_temperature_swing_k", "week_humidity_swing"),
    "season": (90 * 86400, "temperature_swing_k", "humidity_swing"),
}
# Changes of pitch, up or down.
DRIFTS = (
    *(f"{time}_{part}" for time in UNTUNED for part in ("warmth_cent", "damp_cent", "cent")),
    "season_moisture_cent",
    "season_body_cent",
)
# Both may lie below zero.
SIGNED = LEVELS + DRIFTS
# Squares of the first three zeros of the Bessel function J0.
BESSEL = (2.404825557695773**2, 5.520078110286311**2, 8.653727912911013**2)
# Angle over the nut; decades over which ends and wires give; greatest share of strength that the law of steel takes.
NUT_ANGLE, GIVING_DECADES, MOST_SHARE = 12, 3, 0.85
# ln of the least and the greatest force of the bow, of what `simulated` lists.
FORCES = (
    (1.6177, 1.0335, 0.9144, -2.0938, -0.4269, 0.0045, 0.0449, 0.0487, -0.1495, -0.8110),
    (1.2478, 1.0344, -0.0553, 0.8085, 3.5703, 0.0942, 0.0104, -0.1090, 2.5267, 0.1884),
)
# The generic bodies: signature modes (Hz, Q, share of the strongest), the many modes between (Hz), the bridge hill (Hz).
BODIES = {
    "violin": (((272, 18, 0.25), (407, 30, 0.15), (462, 35, 0.8), (551, 35, 1.0)), 900, 2300),
    "viola": (((220, 18, 0.25), (310, 30, 0.15), (355, 35, 0.8), (440, 35, 1.0)), 700, 1900),
    "cello": (((97, 18, 0.25), (173, 30, 1.0), (209, 30, 0.5), (281, 30, 0.4)), 450, 1350),
    "double-bass": (((60, 15, 0.25), (98, 25, 1.0), (116, 25, 0.5), (170, 25, 0.4)), 280, 800),
}


def circle(x):
    """The area of a circle of diameter x."""
    return math.pi * x * x / 4


# Least strength of music wire by ASTM A228, ksi by thousandths of an inch.
A228 = {4: 439, 6: 415, 8: 399, 10: 387, 12: 377, 14: 369, 16: 362, 20: 350, 24: 341, 30: 330, 40: 315, 51: 303, 63: 293, 80: 282}


def least_strength(mil):
    """Straight between the rows in the logarithms, the last slope going on; pascals."""
    rows = sorted(A228.items())
    (d, low), (e, high) = next(((a, b) for a, b in zip(rows, rows[1:]) if mil < b[0]), (rows[-2], rows[-1]))
    return 4448.2216152605 / 645.16e-6 * low * (high / low) ** (math.log(mil / d) / math.log(e / d))


def between(low, x, high):
    """x, held between low and high."""
    return min(max(x, low), high)


def normal(x):
    """Φ: the share of a standard normal distribution that lies under x."""
    return math.erfc(-x / math.sqrt(2)) / 2


def water(a):
    """X(a): the water that collagen takes up at the relative humidity a, as a share of its dry mass."""
    x_m, c, k = 0.1090, 20.15, 0.8235
    return x_m * c * k * a / ((1 - k * a) * (1 - k * a + c * k * a))


def pitch_of(note, a4, temperament):
    """The pitch of a note such as `Bb4` or `F#2` when a' is a4."""
    semitone = SEMITONES_ABOVE_C[note[0]]
    rest = note[1:]
    while rest[0] in "#b":
        semitone += 1 if rest[0] == "#" else -1
        rest = rest[1:]
    above_a4 = 12 * (int(rest) - 4) + semitone - SEMITONES_ABOVE_C["A"]
    equal = a4 * 2 ** (above_a4 / 12)
    if temperament == "equal":
        return equal
    # A fifth is seven semitones, and seven times seven is one more than whole octaves.
    fifths = (7 * above_a4 + 6) % 12 - 6
    return equal * (1.5 / 2 ** (7 / 12)) ** fifths


class Tables:
    """The published tables, by key."""

    def __init__(self, reply):
        self.materials = {row["key"]: row for row in reply["core_materials"]}
        self.metals = {row["key"]: row for row in reply["winding_metals"]}
        self.constants = reply["constants"]
        self.properties = {row["key"] for row in reply["properties"]}
        # The first precedent of a position that is not plain gut is the one whose tension is usual there.
        usual = [row for row in reply["precedents"] if row["family"] != "plain-gut"]
        self.usual = {row["position"]: row for row in reversed(usual)}


class Constants:
    """The constants of one string, each a (value, low, high); one of them may be moved to an end of its range.

    The key of each is (whose it is, which it is), as `doubts` names it; general constants are nobody's.
    """

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
        "water",
        "shear",
        "diffusivity",
        "swelling_along",
        "swelling_across",
        "damp_softening",
        "damp_creep",
    )
    # General constants of which one or the other applies; in `doubts` they have one name.
    EITHER = {
        "edge_friction": ("friction_plain", "friction_wound"),
        "constructional": ("constructional_spiral", "constructional_rope"),
    }
    WINDING = ("density", "modulus")

    def __init__(self, tables, construction, setting):
        def ends(row):
            return row["value"], row["low"], row["high"]

        material = tables.materials[construction["core"]["material"]]
        self.all = {(material["key"], name): ends(material["constants"][name]) for name in self.CORE}
        for winding in construction["windings"]:
            metal = winding["metal"]
            for name in self.WINDING:
                self.all[(metal, name)] = ends(tables.metals[metal][name])
        other = {
            "edge_friction": bool(construction["windings"]),
            "constructional": construction["core"].get("layout") == "7x7",
        }
        for name, both in self.EITHER.items():
            self.all[("", name)] = ends(tables.constants[both[other[name]]])
        for name, row in tables.constants.items():
            if not any(name in both for both in self.EITHER.values()):
                self.all[("", name)] = ends(row)
        length, doubt = setting["sounding_length_m"], setting["sounding_length_doubt_m"]
        self.all[("", "sounding_length")] = (length, length - doubt, length + doubt)

    def central(self):
        """All constants at their values."""
        return {key: value for key, (value, _, _) in self.all.items()}

    def moved(self):
        """Each constant alone at its low end and at its high end, the others at their values."""
        for key, (_, low, high) in self.all.items():
            yield key, {**self.central(), key: low}, {**self.central(), key: high}


def costello(layers, lay, nu):
    """S: the pull of a strand over that of its straight wire, for the numbers of wires in its layers."""
    if lay == 0:
        return 1 + sum(layers)
    a = math.pi / 2 - lay
    sine, cosine, cot_2 = math.sin(a), math.cos(a), 1 / math.tan(a) ** 2
    s = g = 1.0
    for j, wires in enumerate(layers, start=1):
        r = 2 * j
        xi = (1 - nu * g * cot_2 / r) / (1 + cot_2 + nu * cot_2 / r)
        delta = (1 - xi) * math.tan(a)
        q = nu * (g + xi) / r
        bending = (-2 * sine * cosine * delta + q * cosine**2) / r
        twist = ((1 - 2 * sine**2) * delta + q * sine * cosine) / r
        shear = (twist * cosine**2 / (4 * (1 + nu)) - bending * sine * cosine / 4) / r
        s += wires * (xi * sine + shear * cosine)
        g += 2 * xi
    return s


class String:
    """A string of known constants: all that the page names, step by step."""

    def __init__(self, tables, construction, setting, value_of):
        self.setting = setting
        self.core, self.windings = construction["core"], construction["windings"]
        self.material = tables.materials[self.core["material"]]
        self.kind, self.build = self.material["class"], self.core["build"]
        self.value_of = value_of
        self.length = value_of["", "sounding_length"]
        self.f = setting["pitch_hz"]
        self.d = self.core["diameter_m"] * self.general("core_gauge")
        self.pull_of_core()
        self.elasticity_and_strength()
        self.wind()
        self.tune()
        self.bend()
        self.twist()

    def general(self, name):
        """A general constant."""
        return self.value_of["", name]

    def own(self, name):
        """A constant of the core's material."""
        return self.value_of[self.material["key"], name]

    def pull_of_core(self):
        """The core's mass a length, the area that pulls, and how many filaments of what diameter at what angle."""
        rho, nu = self.own("density"), self.own("poisson")
        if self.build == "strand":
            across, layers = STRANDS[self.core["layout"]]
            lay = math.radians(self.core["lay_deg"])
            c = math.cos(lay)
            one = circle(self.d / across)
            self.core_mass = rho * one * sum(n / c**times for n, times in layers)
            self.a_e = one * {
                "1x7": lambda: costello([6], lay, nu),
                "1x19": lambda: costello([6, 12], lay, nu),
                "7x7": lambda: costello([6], lay, nu) * (1 + 6 * c**3),
            }[self.core["layout"]]()
            self.n, self.filament, self.angle = sum(n for n, _ in layers), self.d / across, lay
        elif self.build == "multifilament":
            fill, alpha = self.core["fill"], math.radians(self.core["twist_deg"])
            self.core_mass = rho * fill * circle(self.d)
            self.a_e = fill * circle(self.d) * math.cos(alpha) ** 2
            self.filament, self.angle = self.core["filament_m"], alpha
            self.n = fill * (self.d / self.filament) ** 2
        else:
            self.core_mass = rho * circle(self.d)
            self.a_e = circle(self.d)
            self.filament = self.d
        if self.kind == "gut":
            self.core_mass *= (1 + water(self.setting["humidity"])) / (1 + water(0.5))

    def elasticity_and_strength(self):
        """The moduli and the strength, at the room's temperature."""
        factor = 1 - self.own("softening") * (self.setting["temperature_c"] - 20)
        self.strength = self.own("strength")
        if self.kind == "gut":
            alpha, usual = math.radians(self.core["twist_deg"]), math.radians(25)
            factor *= (math.cos(alpha) / math.cos(usual)) ** 2
            self.strength *= math.cos(alpha) / math.cos(usual)
        if self.kind == "steel":
            self.strength *= least_strength(between(0.10, self.filament * 1e3, 6.5) / 0.0254)
        self.e = self.own("modulus") * factor
        # Until the stress is known; see `bend`.
        self.e_v = self.e_v_unstressed = self.own("fast_modulus") * factor

    def wind(self):
        """The windings, from the inside: their mass, their tubes W and W_t, their polar inertia P, and the gauge D."""
        u = self.d
        self.winding_mass = self.w = self.w_t = self.p = 0.0
        for winding in self.windings:
            t = winding["thickness_m"] * self.general("winding_gauge")
            # A reply leaves out the gap of a close winding.
            b, g = winding["bedding"], winding.get("gap", 0.0)
            rho, e = (self.value_of[winding["metal"], name] for name in Constants.WINDING)
            m = u - 2 * b * t + t
            if winding["form"] == "flat":
                mass = rho * math.pi * t * m / (1 + g)
            else:
                mass = rho * circle(t) * math.sqrt((math.pi * m / (t * (1 + g))) ** 2 + 1)
            e /= 1 + g
            self.winding_mass += mass
            self.w += e * math.pi * m**3 * t / 8
            self.w_t += 0.375 * e * math.pi * m**3 * t / 4
            self.p += mass * m**2 / 4
            u += 2 * t * (1 - b)
        self.gauge = u

    def tune(self):
        """Tension, stretch and mass at pitch."""
        self.mu_0 = self.core_mass + self.winding_mass
        self.ea = self.e * self.a_e
        t_0 = 4 * (self.length * self.f) ** 2 * self.mu_0
        self.tension = 2 * t_0 / (1 + math.sqrt(1 + 4 * t_0 / self.ea))
        self.stretch = self.tension / self.ea
        self.mu = self.mu_0 / (1 + self.stretch)
        self.sigma = self.tension / self.a_e
        self.z = math.sqrt(self.tension * self.mu)
        self.whole = self.length + self.setting["afterlength_m"] + self.setting["nut_to_peg_m"]
        strong = self.general("bridge_resistance")
        self.resistance = self.setting["bridge_resistance_kg_s"] * strong
        self.resistance_at_peak = self.setting["peak_resistance_kg_s"] * strong

    def bonded_or_free(self, low, central, high):
        """What lies between filaments that slide and filaments that stick."""
        y = self.general("bonding")
        return central + y * ((central - low) if y < 0 else (high - central))

    def bend(self):
        """The modulus of bending, K, the bending stiffness and the inharmonicity."""
        held = between(20e6, self.sigma, 200e6)
        self.e_v += self.material["fast_slope"] * (held + self.general("beyond_measured") * (self.sigma - held))
        bonded = self.e_v * self.a_e * self.d**2 / 16
        self.k = bonded
        if self.build in ("strand", "multifilament"):
            one = self.e_v * math.pi * self.filament**4 / 64
            turn = 2 * math.cos(self.angle) / (2 + self.own("poisson") * math.sin(self.angle) ** 2)
            free = self.n * one * turn
            if self.build == "strand":
                bonded *= BONDED_STRAND[self.core["layout"]]
                self.k = self.bonded_or_free(free, math.sqrt(free * bonded), bonded)
            else:
                self.k = self.bonded_or_free(free, bonded / 2, 2 * bonded)
        self.bending = self.k * (1 + self.general("winding_stiffening")) if self.windings else self.k
        self.b = math.pi**2 * self.bending / (self.tension * self.length**2)
        # What bending loses, over what it stores were there no winding: K η and the winding's share.
        self.lossy_stiffness = self.k * self.own("loss") + self.general("winding_loss") * self.w

    def twist(self):
        """The torsional stiffness C and the inertia J."""
        shear = self.own("shear")
        one = shear * math.pi * self.d**4 / 32
        self.c = one
        if self.build == "strand":
            free = self.n * shear * math.pi * self.filament**4 / 32
            self.c = self.bonded_or_free(free, free ** (1 / 3) * one ** (2 / 3), one)
        elif self.build == "multifilament":
            fill = self.core["fill"]
            free = fill * (self.filament / self.d) ** 2 * one
            self.c = self.bonded_or_free(free, fill * one / 2, one)
        self.c += self.general("winding_torsion") * self.w_t
        self.j = self.core_mass * self.d**2 / 8 + self.p

    def partial(self, n):
        """What a partial loses, and to what; with how long it rings."""
        inharmonic = (1 + self.b * n**2) / (1 + self.b)
        frequency = n * self.f * math.sqrt(inharmonic)
        m = self.gauge / 4 * math.sqrt(2 * math.pi * frequency / self.general("air_viscosity"))
        rho_s = self.mu / circle(self.gauge)
        losses = {
            "air": self.general("air_density") / rho_s * (2 * math.sqrt(2) * m + 1) / (2 * m**2),
            "string": self.general("string_loss"),
            "bending": (math.pi * n / self.length) ** 2 * self.lossy_stiffness / self.tension,
            "bridge": 2 * self.z / (math.pi * n * self.resistance),
        }
        on_stiff_ends = (losses["air"] + losses["string"] + losses["bending"]) / (1 + self.b * n**2)
        decay = math.pi * frequency * (on_stiff_ends + losses["bridge"])
        return {
            "n": n,
            "frequency_hz": frequency,
            "sharpness_cent": KAPPA / 2 * math.log(inharmonic),
            **{f"loss_{cause}": loss for cause, loss in losses.items()},
            "q": 1 / on_stiff_ends,
            "ring_s": math.log(1000) / decay,
            "most": max(losses, key=losses.get),
        }

    def numbers(self):
        """Every property of the string."""
        over_bridge = math.radians(180 - self.setting["angle_over_bridge_deg"])
        pull = KAPPA / 2 * (self.ea / self.tension + 1) / self.whole
        peg = math.pi * self.setting["peg_diameter_m"] / 360 / self.setting["gear_ratio"]
        breaking_pitch = math.sqrt(self.strength * self.a_e / self.mu_0) / (2 * self.length)
        return {
            "mass_unstretched_kg_m": self.mu_0,
            "tension_n": self.tension,
            "stretch": self.stretch,
            "mass_at_pitch_kg_m": self.mu,
            "core_stress_pa": self.sigma,
            "breaking_share": self.sigma / self.strength,
            "breaking_pitch_hz": breaking_pitch,
            "axial_stiffness_n": self.ea,
            "lateral_stiffness_n_m": 4 * self.tension / self.length,
            "impedance_kg_s": self.z,
            "pull_cent_m": pull,
            "peg_cent_deg": pull * peg,
            "outer_diameter_m": self.gauge,
            "outer_diameter_at_pitch_m": self.gauge - self.d * (1 - (1 + self.stretch) ** -self.own("poisson")),
            "winding_mass_share": self.winding_mass / self.mu_0,
            "downforce_n": 2 * self.tension * math.sin(over_bridge / 2),
            "bending_stiffness_n_m2": self.bending,
            "inharmonicity": self.b,
            "brilliance_hz": self.brilliance(),
            **self.bowed(),
            **self.ringing(),
            **self.torsion(),
            **self.simulated(),
            **self.hand_and_edge(),
            **self.settling(),
            **self.drift(),
        }

    def brilliance(self):
        """The frequency from which bending loss takes the shine."""
        allowed = self.general("brilliance_loss") * self.tension * self.length**2
        return self.f * math.sqrt(allowed / (math.pi**2 * self.lossy_stiffness))

    def bowed(self):
        """The limits of bowing."""
        m = self.mu * self.length
        across = BETA * (1 - BETA)
        mu_s = MU_D + self.general("friction_drop")
        root = math.sqrt((1 - 2 * BETA) * (2 * (1 - BETA) * mu_s**2 - mu_s * MU_D))
        highest = across * ((3 - 4 * BETA) * mu_s - MU_D - 2 * root) / ((1 - 2 * BETA) * 2 * m)
        lowest = across * (3 * mu_s - MU_D - 2 * math.sqrt(2 * mu_s**2 - mu_s * MU_D)) / (2 * m)
        greatest = 2 * self.z * BOW_SPEED / (BETA * (mu_s - MU_D))
        least = self.z**2 * BOW_SPEED / (2 * BETA**2 * self.resistance * (mu_s - MU_D))
        return {
            "attack_m_s2_n": highest,
            "gentlest_attack_m_s2_n": lowest,
            "bow_force_greatest_n": greatest,
            "bow_force_greatest_falling_n": greatest * (BOW_SPEED + 0.2 * BETA) / BOW_SPEED,
            "bow_force_least_n": least,
            "bow_force_least_measured_n": self.general("least_force") * self.z**2 / BETA**2,
            "bow_window_db": 20 * math.log10(greatest / least),
            "wolf": self.z / (4 * BETA * self.resistance_at_peak),
        }

    def ringing(self):
        """The loss and the ring of the first partial."""
        first = self.partial(1)
        return {"loss_first": 1 / first["q"], "ring_s": first["ring_s"]}

    def torsion(self):
        """Waves of twist."""
        speed = math.sqrt(self.c / self.j)
        return {
            "torsion_speed_m_s": speed,
            "torsion_q": self.general("torsion_q"),
            "torsion_ratio": speed / (2 * self.length * self.f),
            "torsion_impedance_ratio": math.sqrt(self.c * self.j) / (self.gauge / 2) ** 2 / self.z,
        }

    def gives(self, hz):
        """Speed of the generic bridge for a force on it, a complex number."""
        signature, between_hz, hill = BODIES[self.setting["body"]]
        strongest = max(1 / self.resistance_at_peak - 1 / self.resistance, 0.0)
        modes = [(at, q, share * strongest) for at, q, share in signature]
        modes += [(between_hz, 0.3, 1 / self.resistance), (hill, 1.5, 1.5 / self.resistance)]
        return sum(g / (1 + 1j * q * (hz / at - at / hz)) for at, q, g in modes)

    def simulated(self):
        """What the numbers fitted to the simulation say."""
        y = self.gives(self.f)
        over_nine = sum(self.gives(n * self.f).real / n for n in range(1, 10))
        ln_z = math.log(self.z)
        g = between(-6.0, ln_z + math.log(y.real), -3.0)
        g_9 = between(-6.0, ln_z + math.log(over_nine), -2.0)
        s = between(-0.5, 100 * self.z * y.imag, 2.5)
        twist = math.sqrt(self.c * self.j) / (self.gauge / 2) ** 2
        left = math.log(twist / (self.z + twist))
        w, w_speaking = between(-0.70, left, 0.0), between(-0.95, left, 0.0)
        slack = between(-1.70, left, -0.85) + 0.85
        b = between(-2.7, math.log(self.b / 6e-5), 3.0)
        x = math.log(self.f / 220)
        of_forces = (1, ln_z, g, s, w, b, b**2, s**2, w**2, s * g_9)
        least, greatest = (sum(a * c for a, c in zip(of, of_forces)) for of in FORCES)
        hill = math.log(BODIES[self.setting["body"]][2] / 1500)
        return {
            "speaks_s": math.exp(-1.9739 - 0.9912 * x + 0.4645 * ln_z - 0.7884 * w_speaking),
            "bow_room_db": 20 * (greatest + 1.2 * slack - least) / math.log(10),
            "sharpness_acum": math.exp(0.2919 + 0.1793 * x + 0.3537 * hill - 0.0421 * b + 0.0895 * w),
            "rings_on_s": self.rings_on(),
        }

    def rings_on(self):
        """How long twelve plucked partials ring on, as what is still to come of their energy falls; by halving."""
        energy, rate = [], []
        for n in range(1, 13):
            partial = self.partial(n)
            y = self.gives(partial["frequency_hz"])
            loss = 1 / partial["q"] + 2 * self.z * y.real / (math.pi * n)
            rate.append(2 * math.pi * partial["frequency_hz"] * loss)
            energy.append((math.sin(n * math.pi * 0.23) / n * abs(y)) ** 2 / rate[-1])

        def when(decibels):
            early, late, share = 0.0, 1e4, 10 ** (decibels / 10)
            for _ in range(90):
                t = (early + late) / 2
                left = sum(e * math.exp(-r * t) for e, r in zip(energy, rate))
                early, late = (t, late) if left > share * sum(energy) else (early, t)
            return t

        return 6 * (when(-15) - when(-5))

    def hand_and_edge(self):
        """What stopping and playing loudly do to the pitch, and the nut and the bow to the filaments."""
        height = self.setting["string_height_m"]
        x = self.filament
        to_and_fro = self.e_v * x / 2 * math.pi * AMPLITUDE * math.sqrt(self.tension / self.bending)
        return {
            "stopping_cent": KAPPA / 2 / self.stretch * 2 * height**2 / (self.length * self.whole),
            "glide_cent": KAPPA * 3 / 8 / self.stretch * (math.pi * AMPLITUDE / 2) ** 2,
            "over_the_peg": self.e * x / ((self.setting["peg_diameter_m"] + x) * self.strength),
            "over_the_nut": self.e * x / ((2 * self.setting["nut_radius_m"] + x) * self.strength),
            "fatigue": self.sigma / self.strength + to_and_fro / (self.general("endurance") * self.strength),
        }

    def settling(self):
        """What a new string loses."""
        k = KAPPA / 2 * (self.creep() + self.ends_and_wires())
        strand = self.build == "strand"
        lost = min(self.general("constructional") / self.stretch, NEARLY_SLACK)
        return {
            "loss_cent_decade": k,
            "settling_d": 1 / (10 ** (SETTLED_CENT / k) - 1),
            "constructional_cent": -KAPPA / 2 * math.log(1 - lost) if strand else 0.0,
        }

    def creep(self):
        """What creep takes of the tension in a decade of time."""
        share = self.sigma / self.strength
        if self.kind == "steel":
            share = min(share, MOST_SHARE)
            p = 0.75 * (1 - share)
            law = 5.39 * 8e-5 * math.exp(6.7 * share) * 0.024**p * p * math.log(10)
            return self.own("creep") * law
        damp = (1 + self.own("damp_creep")) ** ((self.setting["humidity"] - 0.5) / 0.1)
        bundle = self.general("bundle_creep") if self.build == "multifilament" else 1.0
        rise = max(0.1, 1 + self.general("stress_creep") * (share - 0.4))
        slope = self.material["fast_slope"]
        x = slope * between(20e6, self.sigma, 200e6) / self.e_v_unstressed
        r = (1 + x) * math.log(1 + x) / x if x > 0 else 1.0
        return self.own("creep") * damp * bundle * rise * r

    def ends_and_wires(self):
        """What nut, bridge, peg, knot and wires give in a decade of time, as a share of the tension."""
        mu = self.general("edge_friction")
        a = self.setting["peg_diameter_m"] / 2
        over_nut = self.setting["nut_to_peg_m"] * (math.exp(mu * math.radians(NUT_ANGLE)) - 1)
        bridge = math.radians(180 - self.setting["angle_over_bridge_deg"])
        over_bridge = self.setting["afterlength_m"] * (math.exp(mu * bridge) - 1)
        given = self.general("seating") * (over_nut + over_bridge + a / mu) / self.whole
        if self.kind == "gut":
            given += (1 / self.stretch + 1) * self.general("knot") / self.whole
        if self.build == "strand":
            given += self.general("bedding_in") * self.general("constructional") / self.stretch
        return given / GIVING_DECADES

    def water_of_core(self, a):
        """X(a), for gut that of collagen."""
        a = between(0.05, a, 0.95)
        return water(a) if self.kind == "gut" else self.own("water") * a / 0.6

    def soaked(self, time):
        """S: the share of its end state that water in a filament reaches."""
        diffusivity = self.own("diffusivity")
        if self.windings:
            diffusivity /= self.general("winding_delay")
        x = diffusivity * time / (self.filament / 2) ** 2
        if x < 0.05:
            return 4 * math.sqrt(x / math.pi) - x - x * math.sqrt(x / math.pi) / 3
        return 1 - sum(4 / j_2 * math.exp(-j_2 * x) for j_2 in BESSEL)

    def moved(self, untuned):
        """What the swing of a time untuned does, from cool and dry to warm and damp: warmth, water, body."""
        time, kelvin, damp = UNTUNED[untuned]
        swing_theta, swing_h = self.setting[kelvin], self.setting[damp]
        h, stiff = self.setting["humidity"], 1 / self.stretch
        w = 1 - math.exp(-time / self.general("body_warming"))
        u = 1 - math.exp(-time / self.general("body_soaking"))
        expansion = self.own("expansion") - w * self.general("body_expansion")
        warmth = -KAPPA / 2 * (stiff * expansion + self.own("softening")) * swing_theta
        gain = self.water_of_core(h + swing_h / 2) - self.water_of_core(h - swing_h / 2)
        # Crank's share multiplies all that water does.
        gain *= self.soaked(time)
        m = -KAPPA / 2 * gain / (1 + self.water_of_core(h))
        left = self.own("moisture_left")
        if self.kind == "gut":
            e, f = 0.0, -(1 - left) * m
        else:
            q = math.tan(self.angle) ** 2 / 2 if self.build == "multifilament" else 0.0
            growth = self.own("swelling_along") * (1 + q) - q * self.own("swelling_across")
            e = -KAPPA / 2 * left * growth * gain
            f = -KAPPA / 2 * left * self.own("damp_softening") * gain
        moisture = self.core_mass / self.mu_0 * m + stiff * e + f
        body = KAPPA / 2 * (stiff - 1) * u * self.general("body_movement") * swing_h / 0.10
        return warmth, moisture, body

    def drift(self):
        """What the room does to the pitch of a settled string."""
        found = {}
        for untuned in UNTUNED:
            warmth, moisture, body = self.moved(untuned)
            found[f"{untuned}_warmth_cent"] = warmth
            found[f"{untuned}_damp_cent"] = moisture + body
            found[f"{untuned}_cent"] = warmth + moisture + body
        # The season comes last.
        found["season_moisture_cent"], found["season_body_cent"] = moisture, body
        gut = self.kind == "gut"
        found["ratchet_cent"] = self.general("ratchet") * self.setting["humidity_swing"] / 0.20 if gut else 0.0
        return found

    def after(self, wound):
        """What the string does after so much of it was wound over the nut."""
        share = wound / self.whole
        signed = (self.stretch + share) / (1 - share)
        taut = max(signed, 0.0)
        tension = self.ea * taut
        pitch = math.sqrt(tension * (1 + taut) / self.mu_0) / (2 * self.length)
        thins = self.d * (1 - (1 + taut) ** -self.own("poisson"))
        return {
            "slack_m": self.stretch * self.whole,
            "stretch": taut,
            "tension_n": tension,
            "above_cent": KAPPA * math.log(pitch / self.f) if pitch > 0 else -math.inf,
            "core_diameter_m": self.d - thins,
            "outer_diameter_m": self.gauge - thins,
            "breaking_share": tension / self.a_e / self.strength,
        }

    def in_month(self, month):
        """How far the pitch lies above that of the middle of the room's swing, in a month."""
        return -math.cos(2 * math.pi * (month - 1) / 12) / 2 * sum(self.moved("season"))


def with_range(tables, player, numbers_of, floor):
    """Numbers of a string, each (value, low, high): every constant moved to either end, none below `floor`."""
    constants = Constants(tables, player["construction"], player["setting"])

    def numbers(values):
        return numbers_of(String(tables, player["construction"], player["setting"], values))

    central = numbers(constants.central())
    ends = [(numbers(low), numbers(high)) for _, low, high in constants.moved()]
    found = {}
    for name, value in central.items():
        steps = [(0.0, low[name] - value, high[name] - value) for low, high in ends]
        down, up = math.hypot(*map(min, steps)), math.hypot(*map(max, steps))
        found[name] = (value, max(floor.get(name, 0.0), value - down), value + up)
    return found


def missed(name, value):
    """By how much a number fitted to the simulation may miss it: down and up, beside what the constants do."""
    if name == "bow_room_db":
        return -HALF_RANGE * 1.7, HALF_RANGE * 1.7
    off = {"speaks_s": 0.20, "sharpness_acum": 0.056, "rings_on_s": 0.14}.get(name, 0.0) * HALF_RANGE
    return value * (math.exp(-off) - 1), value * (math.exp(off) - 1)


class Report:
    """A report as computed here.

    `numbers` is of (value, low, high) by property; `doubts` of [(share, constant), ...] by property, largest first.
    """

    def __init__(self, tables, construction, setting):
        constants = Constants(tables, construction, setting)

        def string(values):
            return String(tables, construction, setting, values)

        middle = string(constants.central())
        central = middle.numbers()
        down, up, halved = ({name: {} for name in central} for _ in range(3))
        for key, at_low, at_high in constants.moved():
            at_low, at_high = string(at_low).numbers(), string(at_high).numbers()
            for name, value in central.items():
                steps = (0.0, at_low[name] - value, at_high[name] - value)
                down[name][key], up[name][key] = min(steps), max(steps)
                halved[name][key] = (at_high[name] - at_low[name]) / 2
        self.numbers = {
            name: (
                value,
                max(
                    -math.inf if name in SIGNED else 0.0,
                    value - math.hypot(*down[name].values(), missed(name, value)[0]),
                ),
                value + math.hypot(*up[name].values(), missed(name, value)[1]),
            )
            for name, value in central.items()
        }
        self.partials = [middle.partial(n) for n in range(1, PARTIALS + 1)]
        self.nights = list(self.days_after())
        self.doubts = {name: shares(halved[name]) for name in DOUBTED}

    def days_after(self):
        """Each day's loss as (value, low, high), and the chance that the string is settled by then."""
        for day in range(1, DAYS + 1):
            decades = math.log10((day + 1) / day)
            lost = [k * decades for k in self.numbers["loss_cent_decade"]]
            yield day, lost, chance_under(SETTLED_CENT, lost)


def shares(halved):
    """The share of each constant in the sum of squares, largest first, without those that matter nothing."""
    total = sum(step**2 for step in halved.values())
    found = [(step**2 / total, key) for key, step in halved.items() if step != 0]
    return sorted(found, reverse=True)


def chance_under(limit, quantity):
    """The chance that a number with a range lies under a limit."""
    value, low, high = quantity
    if low == high:
        return 1.0 if value <= limit else 0.0
    if low > 0:
        return normal((math.log(limit) - math.log(value)) * 2 * HALF_RANGE / math.log(high / low))
    return normal((limit - value) * 2 * HALF_RANGE / (high - low))


class Checker:
    """Counts comparisons and keeps what missed."""

    def __init__(self, tables):
        self.tables = tables
        self.checked = 0
        self.worst = {"share": 0.0, "what": None}
        self.misses = []
        # The reports computed so far, by the string and its setting: replies often tell of the same string.
        self.reports = {}

    def miss(self, what, found, expected):
        """Something in a reply that is not what it should be."""
        self.misses.append({"what": what, "found": found, "expected": expected})

    def number(self, what, found, expected):
        """A number of a reply against the one computed here."""
        self.checked += 1
        off = distance(found, expected)
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

    def chance(self, what, found, expected):
        """A chance of a reply against the one computed here."""
        self.checked += 1
        if not distance(found, expected) <= WITHIN_OF_CHANCE:
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
        """All of one report; gives its numbers as computed here."""
        string = json.dumps([report["construction"], report["setting"]])
        if string not in self.reports:
            self.reports[string] = Report(self.tables, report["construction"], report["setting"])
        own = self.reports[string]
        expected, found = own.numbers, report["numbers"]
        self.same(f"{where}: the names in numbers", sorted(found), sorted(expected))
        self.same(f"{where}: the properties in tables", sorted(self.tables.properties), sorted(expected))
        for name in sorted(expected.keys() & found.keys()):
            for end, number in zip(("value", "low", "high"), expected[name]):
                self.number(f"{where}: {name} {end}", found[name][end], number)
        self.partials(where, report["partials"], own.partials)
        self.nights(where, report["nights"], own.nights)
        self.doubts(where, report["doubts"], own.doubts)
        return expected

    def partials(self, where, found, expected):
        """What each partial loses."""
        self.same(f"{where}: number of partials", len(found), len(expected))
        for partial, own in zip(found, expected):
            here = f"{where}: partial {own['n']}"
            self.same(f"{here}, names", sorted(partial), sorted(own))
            for name in sorted(partial.keys() & own.keys()):
                check = self.same if name in ("n", "most") else self.number
                check(f"{here}, {name}", partial[name], own[name])

    def nights(self, where, found, expected):
        """What each night loses."""
        self.same(f"{where}: number of nights", len(found), len(expected))
        for night, (day, lost, chance) in zip(found, expected):
            here = f"{where}: night {day}"
            self.same(f"{here}, day", night["day"], day)
            for end, number in zip(("value", "low", "high"), lost):
                self.number(f"{here}, lost_cent {end}", night["lost_cent"][end], number)
            self.chance(f"{here}, chance", night["chance"], chance)

    def doubts(self, where, found, expected):
        """What to measure to know more: the shares in order, each the one of the constant that is named."""
        self.same(f"{where}: the names in doubts", sorted(found), sorted(expected))
        for name in sorted(expected.keys() & found.keys()):
            here = f"{where}: doubts of {name}"
            largest = expected[name][:DOUBTS]
            self.same(f"{here}, how many", len(found[name]), len(largest))
            by_key = {key: share for share, key in expected[name]}
            for i, (doubt, (share, _)) in enumerate(zip(found[name], largest)):
                self.number(f"{here}, share {i}", doubt["share"], share)
                key = (doubt["owner"], doubt["which"])
                # Two constants may have the same share, so the names are not held against those of the order here.
                self.number(f"{here}, constant {i}", by_key.get(key), share)

    def range(self, what, found, expected):
        """A number of a reply with its range."""
        for end, number in zip(("value", "low", "high"), expected):
            self.number(f"{what} {end}", found[end], number)

    def stretched(self, where, reply):
        """Strings of which more was wound over the nut; `asked` repeats the strings of the request."""
        for i, (player, found) in enumerate(zip(reply["asked"], reply["strings"])):
            here = f"{where}: string {i},"
            floor = {"above_cent": -math.inf}
            own = with_range(self.tables, player, lambda s: s.after(reply["pull_m"]), floor)
            above = own.pop("above_cent")
            for name, expected in own.items():
                self.range(f"{here} {name}", found[name], expected)
            if found["above_cent"] is None:
                # Said of strings alone that may be slack.
                self.same(f"{here} slack", own["stretch"][1] < 1e-5, True)
                self.same(f"{here} pitch of a slack string", found["pitch_hz"], None)
            else:
                self.range(f"{here} above_cent", found["above_cent"], above)
                pitch = player["setting"]["pitch_hz"] * 2 ** (above[0] / 1200)
                self.number(f"{here} pitch", found["pitch_hz"], pitch)

    def year(self, where, reply):
        """Strings through a year; `asked` repeats the strings of the request."""
        for i, (player, found) in enumerate(zip(reply["asked"], reply["strings"])):
            setting = player["setting"]
            months = range(1, 13)
            self.same(f"{where}: months", [m["month"] for m in found["months"]], list(months))
            floor = {month: -math.inf for month in months}
            own = with_range(self.tables, player, lambda s: {month: s.in_month(month) for month in months}, floor)
            for month in found["months"]:
                here = f"{where}: string {i}, month {month['month']},"
                season = -math.cos(2 * math.pi * (month["month"] - 1) / 12)
                warm = setting["temperature_c"] + setting["temperature_swing_k"] / 2 * season
                damp = between(0.05, setting["humidity"] + setting["humidity_swing"] / 2 * season, 0.95)
                self.number(f"{here} temperature", month["temperature_c"], warm)
                self.number(f"{here} humidity", month["humidity"], damp)
                if abs(season) > 1e-9:
                    self.range(f"{here} above_cent", month["above_cent"], own[month["month"]])

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
            self.pitch(here, string, problem)
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
            setting = string["report"]["setting"]
            untuned = setting["untuned"]
            # What gut loses for good by the swing of that time.
            for_good = own["ratchet_cent"][0] / setting["humidity_swing"] * setting[UNTUNED[untuned][2]]
            for name, expected in (
                ("stretch", own["stretch"][0]),
                ("settling_d", own["settling_d"][0]),
                ("warmth_cent", abs(own[f"{untuned}_warmth_cent"][0])),
                ("damp_cent", abs(own[f"{untuned}_damp_cent"][0]) + for_good),
            ):
                self.number(f"{here}, chosen_point {name}", point[name], expected)
        self.loads(where, chosen, problem, computed)
        if chosen["runner_up"]:
            others = chosen["runner_up"]["strings"]
            self.same(f"{where}: strings of the runner-up", len(others), len(computed))
            self.same(f"{where}: some string of the runner-up is its own", any(others), True)
            for string, report in zip(chosen["strings"], others):
                if not report:
                    continue
                here = f"{where}, {string['note']}, runner-up"
                self.report(here, report)
                expected = pitch_of(string["note"], problem["a4_hz"], problem["temperament"])
                self.number(f"{here}, pitch", report["setting"]["pitch_hz"], expected)

    def pitch(self, here, string, problem):
        """The pitch of a chosen string and of those beside it, from its note."""
        expected = pitch_of(string["note"], problem["a4_hz"], problem["temperament"])
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

    def loads(self, where, chosen, problem, computed):
        """The loads of a set, the steps between its strings, and when it is settled.

        The strings of a set stand or fall together, so the ends of their ranges are added, not their squares.
        """
        for total, name in (("total_tension_n", "tension_n"), ("downforce_n", "downforce_n")):
            for i, end in enumerate(("value", "low", "high")):
                expected = sum(own[name][i] for own in computed)
                self.number(f"{where}: {total} {end}", chosen[total][end], expected)
        self.same(f"{where}: number of steps", len(chosen["steps"]), len(computed) - 1)
        usual = [self.usual_tension(string, problem) for string in chosen["strings"]]
        for i, step in enumerate(chosen["steps"]):
            # Tension is that of the upper string over the lower, impedance that of the lower over the upper.
            upper, lower = computed[i : i + 2]
            tension = upper["tension_n"][0] / lower["tension_n"][0]
            impedance = lower["impedance_kg_s"][0] / upper["impedance_kg_s"][0]
            self.number(f"{where}: step {i}, tension_ratio", step["tension_ratio"], tension)
            self.number(f"{where}: step {i}, usual_ratio", step["usual_ratio"], usual[i] / usual[i + 1])
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

    def usual_tension(self, string, problem):
        """The middle of the usual tensions of a position, for the set-up and at the pitch that the string has.

        A size moves all tensions of an instrument alike, so it is not in their ratios.
        """
        usual = self.tables.usual[string["position"]]
        shares = SET_UP.get(problem["set_up"], (1, 1))
        middle = sum(tension * share for tension, share in zip(usual["tension_n"], shares)) / 2
        pitch = string["report"]["setting"]["pitch_hz"]
        return middle * (pitch / pitch_of(usual["note"], 440, "equal")) ** 2


def distance(found, expected):
    """How far what a reply holds lies from the number computed here."""
    is_number = isinstance(found, (int, float)) and not isinstance(found, bool)
    return abs(found - expected) if is_number else math.inf


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
        elif reply["reply"] == "stretch":
            checker.stretched(where, reply)
        elif reply["reply"] == "year":
            checker.year(where, reply)
        else:
            checker.miss(where, reply["reply"], "report, fit, stretch or year")
    summary = {"checked": checker.checked, "worst": checker.worst, "misses": checker.misses}
    print(json.dumps(summary, indent=1))
    return 1 if checker.misses or checker.checked == 0 else 0


if __name__ == "__main__":
    sys.exit(main())
