//! What is each number of a report called, what does it mean, and by which formula does it come about?

/// What the page says of a property.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Property {
    /// Its name in a reply.
    pub key: &'static str,
    /// Its name on the page.
    pub name: &'static str,
    /// What it tells a player.
    pub means: &'static str,
    /// The formula, in the letters of the model's own page.
    pub formula: &'static str,
    /// The word for a string that has more of it than another.
    pub more: &'static str,
    /// The word for one that has less.
    pub less: &'static str,
}

const fn p(
    key: &'static str,
    name: &'static str,
    means: &'static str,
    formula: &'static str,
    more: &'static str,
    less: &'static str,
) -> Property {
    Property { key, name, means, formula, more, less }
}

/// Every property, in the order in which a person reads them.
pub const ALL: &[Property] = &[
    p(
        "tension_n",
        "Tension",
        "how hard the string pulls when it is in tune",
        "T = 2 T₀ / (1 + √(1 + 4 T₀ / EA)), with T₀ = 4 (L f)² μ₀",
        "more tension",
        "less tension",
    ),
    p(
        "lateral_stiffness_n_m",
        "Firmness under the hand",
        "the push that moves it one millimetre sideways at the middle",
        "4 T / L",
        "firmer",
        "softer",
    ),
    p(
        "stretch",
        "Stretch at pitch",
        "how much longer it has become when it is in tune: its elasticity",
        "ε = T / EA",
        "more elastic",
        "less elastic",
    ),
    p(
        "breaking_share",
        "Share of its strength",
        "how much of what would break it is used when it is in tune",
        "σ / σ_b",
        "nearer to breaking",
        "further from breaking",
    ),
    p(
        "breaking_pitch_hz",
        "Pitch at which it breaks",
        "how high it could be tuned before the core gives way",
        "√(σ_b A / μ₀) / 2L",
        "breaks higher",
        "breaks lower",
    ),
    p(
        "settling_d",
        "Days to settle",
        "how long until a night costs no more than five cents",
        "the larger of 1 / (10^(5/K) − 1) and the time the windings need to seat",
        "settles later",
        "settles sooner",
    ),
    p(
        "loss_cent_decade",
        "Creep",
        "pitch lost in each tenfold of time: from one day to ten, from ten to a hundred",
        "K = (κ/2) · creep",
        "creeps more",
        "creeps less",
    ),
    p(
        "drift_cent",
        "Drift in this room",
        "how far the pitch may wander as the room gets warmer, cooler, damper and drier",
        "the sum of the three parts",
        "drifts more",
        "drifts less",
    ),
    p(
        "drift_temperature_cent",
        "Drift from warmth",
        "the part that comes from the string’s own warmth",
        "(κ/2) · |(EA/T)(α − α_body) + s| · Δθ",
        "minds warmth more",
        "minds warmth less",
    ),
    p(
        "drift_moisture_cent",
        "Drift from moisture",
        "the part that comes from water in the string",
        "(κ/2) · ΔX / (1 + X) · the share that tension does not give back",
        "minds moisture more",
        "minds moisture less",
    ),
    p(
        "drift_body_cent",
        "Drift from the body",
        "the part that comes from the wood of the instrument moving",
        "(κ/2) · |EA/T − 1| · movement of the body",
        "minds the body’s movement more",
        "minds the body’s movement less",
    ),
    p(
        "peg_cent_deg",
        "Change for a degree of peg",
        "how far the pitch moves when the peg turns by one degree",
        "pull · π · peg diameter / 360 / gear ratio",
        "coarser to tune",
        "finer to tune",
    ),
    p(
        "pull_cent_m",
        "Change for a millimetre of pull",
        "how far the pitch moves when the string is pulled on by one millimetre",
        "(κ/2)(EA/T + 1) / whole length",
        "coarser to tune",
        "finer to tune",
    ),
    p(
        "attack_m_s2_n",
        "Quickness under the bow",
        "how briskly the bow may set off, for each newton it presses, and still get a clean note at once",
        "Guettler’s upper limit at a tenth of the string, for the mass μ L",
        "quicker to speak",
        "slower to speak",
    ),
    p(
        "impedance_kg_s",
        "Push on the bridge (impedance)",
        "how much push the string can give the bridge: power, if the instrument takes it",
        "√(T μ)",
        "more powerful",
        "gentler",
    ),
    p(
        "brilliance_hz",
        "Where the shine ends",
        "the pitch from which bending swallows the string’s overtones: a measure of brightness, also where it lies above hearing",
        "f √(q T L² / (π² · lossy bending stiffness))",
        "brighter",
        "darker",
    ),
    p(
        "inharmonicity",
        "Inharmonicity",
        "how far the overtones of the plucked string are spread by its stiffness",
        "B = π² · bending stiffness / (T L²)",
        "more spread overtones",
        "truer overtones",
    ),
    p(
        "outer_diameter_m",
        "Gauge",
        "how thick it is before it is stretched",
        "core and windings",
        "thicker",
        "thinner",
    ),
    p(
        "outer_diameter_at_pitch_m",
        "Gauge at pitch",
        "how thick it is when it is in tune",
        "D − d ν ε",
        "thicker",
        "thinner",
    ),
    p(
        "winding_mass_share",
        "Winding’s share of the mass",
        "how much of its weight is metal wound round it",
        "mass of the windings / μ₀",
        "more winding",
        "less winding",
    ),
    p(
        "mass_at_pitch_kg_m",
        "Mass a length at pitch",
        "how heavy a metre of it is when it is in tune",
        "μ = μ₀ / (1 + ε)",
        "heavier",
        "lighter",
    ),
    p(
        "mass_unstretched_kg_m",
        "Mass a length, unstretched",
        "how heavy a metre of it is before it is stretched",
        "μ₀ = core + windings",
        "heavier",
        "lighter",
    ),
    p(
        "downforce_n",
        "Force on the bridge",
        "how hard this string presses the bridge down",
        "2 T sin((180° − angle over the bridge) / 2)",
        "presses more",
        "presses less",
    ),
    p(
        "core_stress_pa",
        "Stress in the core",
        "the pull on each square millimetre of core",
        "σ = T / A",
        "more stressed",
        "less stressed",
    ),
    p(
        "axial_stiffness_n",
        "Stiffness along the string",
        "the pull that would double its length, if it stayed as it is",
        "EA",
        "stiffer to pull",
        "easier to pull",
    ),
    p(
        "bending_stiffness_n_m2",
        "Stiffness in bending",
        "how much it resists being bent",
        "between loose and bonded wires or filaments",
        "stiffer to bend",
        "easier to bend",
    ),
];

/// What the page says of the property with that name in a reply.
#[must_use]
pub fn of(key: &str) -> Option<&'static Property> {
    ALL.iter().find(|p| p.key == key)
}

/// Its name on the page; that in the reply, if the page does not know it yet.
#[must_use]
pub fn name(key: &str) -> &str {
    of(key).map_or(key, |p| p.name)
}

/// What an evidence grade means, in a sentence.
#[must_use]
pub fn evidence_means(key: &str) -> &'static str {
    match key {
        "measured" => "You measured it, on your own instrument or string.",
        "published" => "It is printed in a paper, a standard, a handbook or a data set.",
        "computed" => "It follows from the other grades by a published formula that was checked.",
        "judged" => "It is common practice, or somebody’s judgement of what one hears and feels.",
        "guessed" => "It comes from memory or by likeness. The range is wide on purpose.",
        _ => "How it is known was not said.",
    }
}

/// The grades of evidence, the surest first.
pub const EVIDENCE: [&str; 5] = ["measured", "published", "computed", "judged", "guessed"];
