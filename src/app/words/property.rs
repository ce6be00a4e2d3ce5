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

/// Properties that answer one kind of question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Group {
    /// What they are about.
    pub name: &'static str,
    /// The question they answer.
    pub asks: &'static str,
    /// The properties, in the order in which a person reads them.
    pub properties: &'static [Property],
}

/// Every property, by what it is about, in the order in which a person reads them.
pub const GROUPS: [Group; 4] = [
    Group {
        name: "Pull and strength",
        asks: "what the string is, how hard it pulls, and how near it is to its limits",
        properties: PULL,
    },
    Group {
        name: "Sound and bow",
        asks: "how it answers, how bright it is and how long it rings",
        properties: SOUND,
    },
    Group {
        name: "Time and room",
        asks: "how it settles, and how it minds the weather",
        properties: TIME,
    },
    Group {
        name: "Hand and edge",
        asks: "how it feels, how finely it tunes, and what bends it",
        properties: HAND,
    },
];

const PULL: &[Property] = &[
    p(
        "tension_n",
        "Tension",
        "how hard the string pulls when it is in tune",
        "T = 2 T₀ / (1 + √(1 + 4 T₀ / EA)), with T₀ = 4 (L f)² μ₀",
        "more tension",
        "less tension",
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
        "downforce_n",
        "Force on the bridge",
        "how hard this string presses the bridge down",
        "2 T sin((180° − angle over the bridge) / 2)",
        "presses more",
        "presses less",
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
        "D − d (1 − (1 + ε)^(−ν))",
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
        "mass_unstretched_kg_m",
        "Mass a length, unstretched",
        "how heavy a metre of it is before it is stretched",
        "μ₀ = core + windings",
        "heavier",
        "lighter",
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
];

const SOUND: &[Property] = &[
    p(
        "impedance_kg_s",
        "Push on the bridge (impedance)",
        "how much push the string can give the bridge: power, if the instrument takes it",
        "√(T μ)",
        "more powerful",
        "gentler",
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
        "gentlest_attack_m_s2_n",
        "Gentlest start under the bow",
        "how gently the bow may set off, for each newton it presses, and still get a clean note at once",
        "Guettler’s lower limit at a tenth of the string, for the mass μ L",
        "wants a brisker start",
        "allows a gentler start",
    ),
    p(
        "bow_force_greatest_n",
        "Greatest bow force",
        "how hard the bow may press, at a slow stroke a tenth along the string, before the note breaks into noise",
        "2 Z v / (β (μs − μd))",
        "takes a heavier bow",
        "takes a lighter bow",
    ),
    p(
        "bow_force_greatest_falling_n",
        "Most bow force, friction falling",
        "the same where friction keeps falling the faster the bow slides",
        "2 Z (v + β · 0.2 m/s) / (β (μs − μd))",
        "takes more force",
        "takes less force",
    ),
    p(
        "bow_force_least_n",
        "Least bow force, by theory",
        "how hard the bow must press at the same stroke: the one theory, in which it grows with the speed of the bow",
        "Z² v / (2 β² R (μs − μd))",
        "needs a heavier bow",
        "needs a lighter bow",
    ),
    p(
        "bow_force_least_measured_n",
        "Least bow force, as measured",
        "how hard the bow must press: the one measurement, which found the same force at every speed",
        "c Z² / β², c as measured",
        "needs a heavier bow",
        "needs a lighter bow",
    ),
    p(
        "bow_window_db",
        "Room for the bow",
        "how far the greatest bow force lies above the least, by theory: 20 dB is ten times",
        "20 log₁₀(greatest / least)",
        "more room for the bow",
        "less room for the bow",
    ),
    p(
        "wolf",
        "Nearness to a wolf",
        "how much of the greatest bow force the least one takes on the instrument’s strongest note; at 100 % no force holds that note",
        "Z / (4 β R′), R′ at the strongest note",
        "nearer to a wolf",
        "further from a wolf",
    ),
    p(
        "brilliance_hz",
        "Where the shine ends",
        "the pitch from which bending swallows the string’s overtones: a measure of brightness, also where it lies above hearing",
        "f √(q T L² / (π² (K η + loss of the windings)))",
        "brighter",
        "darker",
    ),
    p(
        "ring_s",
        "Ring",
        "how long the plucked string sounds on the instrument, until it has fallen by 60 dB",
        "ln 1000 / (π f (η₁ + bridge))",
        "rings longer",
        "rings shorter",
    ),
    p(
        "loss_first",
        "Loss of the first partial",
        "how much of its swing the plucked string loses by itself, on ends that do not give",
        "η₁ = 1/Q: air, string and bending together",
        "dies away sooner by itself",
        "dies away later by itself",
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
        "bending_stiffness_n_m2",
        "Stiffness in bending",
        "how much it resists being bent",
        "between loose and bonded wires or filaments",
        "stiffer to bend",
        "easier to bend",
    ),
    p(
        "torsion_speed_m_s",
        "Speed of a twist",
        "how fast a twist runs along the string; under the bow, string and hair twist it all the time",
        "√(C/J)",
        "twists run faster",
        "twists run slower",
    ),
    p(
        "torsion_ratio",
        "Twist against swing",
        "how many times higher the string’s first note of twisting lies than its pitch",
        "√(C/J) / 2 L f",
        "twisting lies higher",
        "twisting lies lower",
    ),
    p(
        "torsion_q",
        "Ring of a twist",
        "how many swings a twist lasts; measured on cello and bass strings and taken for all",
        "Q, as published",
        "twists last longer",
        "twists die sooner",
    ),
    p(
        "torsion_impedance_ratio",
        "Resistance to twisting",
        "how much harder it is to roll the string under the bow than to push it aside",
        "√(C J) / (D/2)² / Z",
        "rolls less under the bow",
        "rolls more under the bow",
    ),
];

const TIME: &[Property] = &[
    p(
        "settling_d",
        "Days to settle",
        "how long until a night costs no more than five cents",
        "the larger of 1 / (10^(5/K) − 1) and the time the string needs to seat",
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
        "constructional_cent",
        "Bedding of the strands",
        "pitch lost once, within hours, as the wires of a strand lie closer; not creep",
        "−(κ/2) ln(1 − (EA/T) · first stretch of the strand)",
        "beds down further",
        "beds down less",
    ),
    p(
        "drift_cent",
        "Drift in this room",
        "how far the pitch may wander as the room gets warmer, cooler, damper and drier",
        "the sum of the five parts below",
        "drifts more",
        "drifts less",
    ),
    p(
        "drift_temperature_cent",
        "Drift from warmth",
        "the part that comes from the string being warmer or cooler",
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
        "drift_ratchet_cent",
        "Drift from a new damp",
        "the part that gut loses for good when the air is damper than it ever was on the instrument",
        "what was measured · Δh/0.20, for gut",
        "loses more to a new damp",
        "loses less to a new damp",
    ),
    p(
        "drift_seats_cent",
        "Drift from pegs and knots",
        "the part that comes from pegs, knots and grooves giving a little",
        "judged, the same for every string",
        "gives more at its ends",
        "gives less at its ends",
    ),
    p(
        "drift_transient_cent",
        "First hours in another room",
        "how far the pitch strays at first and comes back, until the water in the string has balanced; no part of the sum",
        "(κ/2) · ΔX / (1 + X) · the share that passes",
        "strays more at first",
        "strays less at first",
    ),
];

const HAND: &[Property] = &[
    p(
        "lateral_stiffness_n_m",
        "Firmness under the hand",
        "the push that moves it one millimetre sideways at the middle",
        "4 T / L",
        "firmer",
        "softer",
    ),
    p(
        "stopping_cent",
        "Sharpening under the finger",
        "how much sharper a note at the octave becomes because the finger stretches the string down to the board",
        "(κ/2)(EA/T) · 2h² / (L Lₜ)",
        "sharper under the finger",
        "truer under the finger",
    ),
    p(
        "glide_cent",
        "Glide of a hard stroke",
        "how much sharper a hard stroke begins than it ends, because a wide swing stretches the string",
        "κ (3/8)(EA/T)(π a/2)², a the swing over the length",
        "pitch bends more when hit hard",
        "pitch bends less when hit hard",
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
        "over_the_nut",
        "Bend over the nut",
        "the stress that lying close round the nut’s edge would add, as a share of its strength; over 100 % it keeps a kink there or lies less close",
        "E x / ((2 r + x) σ_b), x one wire or filament, r the edge",
        "minds a sharp edge more",
        "minds a sharp edge less",
    ),
    p(
        "over_the_peg",
        "Bend round the peg",
        "how hard the bend round the peg pulls at one wire or filament, against its strength",
        "E x / ((peg + x) σ_b)",
        "bends harder round the peg",
        "bends more gently round the peg",
    ),
    p(
        "fatigue",
        "Weariness",
        "the standing pull and the swing of hard playing together, as a share of what the core would bear for ever; over 100 % it tires and breaks one day",
        "σ/σ_b + stress of the swing / (endurance · σ_b)",
        "tires sooner",
        "tires later",
    ),
];

/// The parts that drift is the sum of; they stand under it.
pub const PARTS_OF_DRIFT: [&str; 5] = [
    "drift_temperature_cent",
    "drift_moisture_cent",
    "drift_body_cent",
    "drift_ratchet_cent",
    "drift_seats_cent",
];

/// Every property.
pub fn all() -> impl Iterator<Item = &'static Property> {
    GROUPS.iter().flat_map(|group| group.properties)
}

/// What the page says of the property with that name in a reply.
#[must_use]
pub fn of(key: &str) -> Option<&'static Property> {
    all().find(|p| p.key == key)
}

/// Its name on the page; that in the reply, if the page does not know it yet.
#[must_use]
pub fn name(key: &str) -> &str {
    of(key).map_or(key, |p| p.name)
}

/// What a formula of the model that nothing outside holds is about.
#[must_use]
pub fn formula(key: &str) -> &str {
    match key {
        "damping::air" => "Loss to the air",
        "strength::gut_twist_factor" => "Strength of gut against its twist",
        "climate::polymer_water" => "Water in synthetic cores",
        other => other,
    }
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
