//! The words that the reader knows: what they mean in numbers, said a second time, apart from the page.
//!
//! Whoever adds wording to the page adds it here or in `phrases.rs`; until then the reader objects to it.

/// A property of a report: what it is called, in which unit it is shown, and the words for more and less of it.
pub(crate) struct Property {
    /// Its name in a reply.
    pub(crate) key: &'static str,
    /// Its name on the page.
    pub(crate) name: &'static str,
    /// What the value of the reply is multiplied by.
    pub(crate) factor: f64,
    /// The unit after that.
    pub(crate) unit: &'static str,
    /// Said of a string that has more of it.
    pub(crate) more: &'static str,
    /// Said of one that has less.
    pub(crate) less: &'static str,
}

const fn p(
    key: &'static str,
    name: &'static str,
    factor: f64,
    unit: &'static str,
    more: &'static str,
    less: &'static str,
) -> Property {
    Property { key, name, factor, unit, more, less }
}

/// Every property. A word may serve two of them: two gauges, two ways of turning a peg.
#[rustfmt::skip]
pub(crate) const PROPERTIES: [Property; 52] = [
    p("tension_n", "Tension", 1.0, "N", "more tension", "less tension"),
    p("stretch", "Stretch at pitch", 100.0, "%", "more elastic", "less elastic"),
    p("breaking_share", "Share of its strength", 100.0, "%", "nearer to breaking", "further from breaking"),
    p("breaking_pitch_hz", "Pitch at which it breaks", 1.0, "Hz", "breaks higher", "breaks lower"),
    p("downforce_n", "Force on the bridge", 1.0, "N", "presses more", "presses less"),
    p("outer_diameter_m", "Gauge", 1e3, "mm", "thicker", "thinner"),
    p("outer_diameter_at_pitch_m", "Gauge at pitch", 1e3, "mm", "thicker", "thinner"),
    p("winding_mass_share", "Winding’s share of the mass", 100.0, "%", "more winding", "less winding"),
    p("mass_unstretched_kg_m", "Mass a length, unstretched", 1e3, "g/m", "heavier", "lighter"),
    p("mass_at_pitch_kg_m", "Mass a length at pitch", 1e3, "g/m", "heavier", "lighter"),
    p("core_stress_pa", "Stress in the core", 1e-6, "MPa", "more stressed", "less stressed"),
    p("axial_stiffness_n", "Stiffness along the string", 1e-3, "kN", "stiffer to pull", "easier to pull"),
    p("impedance_kg_s", "Push on the bridge (impedance)", 1e3, "g/s", "more powerful", "gentler"),
    p("speaks_s", "Time to speak", 1.0, "s", "speaks later", "speaks sooner"),
    p("bow_room_db", "Room for the bow", 1.0, "dB", "more room for the bow", "less room for the bow"),
    p("sharpness_acum", "Sharpness to the ear", 1.0, "acum", "sounds sharper", "sounds rounder"),
    p("rings_on_s", "Ring at the bridge", 1.0, "s", "rings longer", "rings shorter"),
    p("attack_m_s2_n", "Briskest start under the bow", 1.0, "m/s² per N", "allows a brisker start", "wants a gentler start"),
    p("gentlest_attack_m_s2_n", "Gentlest start under the bow", 1.0, "m/s² per N", "wants a brisker start", "allows a gentler start"),
    p("bow_force_greatest_n", "Greatest bow force", 1.0, "N", "takes a heavier bow", "takes a lighter bow"),
    p("bow_force_greatest_falling_n", "Most bow force, friction falling", 1.0, "N", "takes more force", "takes less force"),
    p("bow_force_least_n", "Least bow force, by theory", 1.0, "N", "needs a heavier bow", "needs a lighter bow"),
    p("bow_force_least_measured_n", "Least bow force, as measured", 1.0, "N", "needs a heavier bow", "needs a lighter bow"),
    p("bow_window_db", "Room for the bow, by theory", 1.0, "dB", "more room by theory", "less room by theory"),
    p("wolf", "Nearness to a wolf", 100.0, "%", "nearer to a wolf", "further from a wolf"),
    p("brilliance_hz", "Where the shine ends", 1e-3, "kHz", "brighter", "darker"),
    p("ring_s", "Ring of the first partial", 1.0, "s", "rings longer", "rings shorter"),
    p("loss_first", "Loss of the first partial", 1e3, "thousandths", "dies away sooner by itself", "dies away later by itself"),
    p("inharmonicity", "Inharmonicity", 1e6, "millionths", "more spread overtones", "truer overtones"),
    p("bending_stiffness_n_m2", "Stiffness in bending", 1e6, "N·mm²", "stiffer to bend", "easier to bend"),
    p("torsion_speed_m_s", "Speed of a twist", 1.0, "m/s", "twists run faster", "twists run slower"),
    p("torsion_ratio", "Twist against swing", 1.0, "times", "twisting lies higher", "twisting lies lower"),
    p("torsion_q", "Ring of a twist", 1.0, "swings", "twists last longer", "twists die sooner"),
    p("torsion_impedance_ratio", "Resistance to twisting", 1.0, "times", "rolls less under the bow", "rolls more under the bow"),
    p("settling_d", "Days to settle", 1.0, "days", "settles later", "settles sooner"),
    p("loss_cent_decade", "Creep", 1.0, "cents", "creeps more", "creeps less"),
    p("constructional_cent", "Bedding of the strands", 1.0, "cents", "beds down further", "beds down less"),
    p("drift_cent", "Drift in this room", 1.0, "cents", "drifts more", "drifts less"),
    p("drift_temperature_cent", "Drift from warmth", 1.0, "cents", "minds warmth more", "minds warmth less"),
    p("drift_moisture_cent", "Drift from moisture", 1.0, "cents", "minds moisture more", "minds moisture less"),
    p("drift_body_cent", "Drift from the body", 1.0, "cents", "minds the body’s movement more", "minds the body’s movement less"),
    p("drift_ratchet_cent", "Drift from a new damp", 1.0, "cents", "loses more to a new damp", "loses less to a new damp"),
    p("drift_seats_cent", "Drift from pegs and knots", 1.0, "cents", "gives more at its ends", "gives less at its ends"),
    p("drift_transient_cent", "First hours in another room", 1.0, "cents", "strays more at first", "strays less at first"),
    p("lateral_stiffness_n_m", "Firmness under the hand", 1e-3, "N/mm", "firmer", "softer"),
    p("stopping_cent", "Sharpening under the finger", 1.0, "cents", "sharper under the finger", "truer under the finger"),
    p("glide_cent", "Glide of a hard stroke", 1.0, "cents", "pitch bends more when hit hard", "pitch bends less when hit hard"),
    p("peg_cent_deg", "Change for a degree of peg", 1.0, "cents/degree", "coarser to tune", "finer to tune"),
    p("pull_cent_m", "Change for a millimetre of pull", 1e-3, "cents/mm", "coarser to tune", "finer to tune"),
    p("over_the_nut", "Bend over the nut", 100.0, "%", "minds a sharp edge more", "minds a sharp edge less"),
    p("over_the_peg", "Bend round the peg", 100.0, "%", "bends harder round the peg", "bends more gently round the peg"),
    p("fatigue", "Weariness", 100.0, "%", "tires sooner", "tires later"),
];

/// At one pitch and length, tension is firmness under the hand: the draws compare the latter.
pub(crate) const DECIDED_BY: [(&str, &str); 1] = [("tension_n", "lateral_stiffness_n_m")];

/// Other names under which the doubt about a property is told.
pub(crate) const DOUBT_ABOUT: [(&str, &str); 6] = [
    ("tension", "tension_n"),
    ("the share of its strength", "breaking_share"),
    ("where the shine ends", "brilliance_hz"),
    ("the days to settle", "settling_d"),
    ("drift", "drift_cent"),
    ("the room for the bow, by theory", "bow_window_db"),
];

/// Scales of words, from the largest down: from which number on each is said.
pub(crate) type Ladder = &'static [(f64, &'static str)];

/// How likely something is (the ground rules: very likely from 85 of 100, likely from 65, else a close call).
pub(crate) const LIKELY: Ladder = &[
    (0.85, "very likely"),
    (0.65, "likely"),
    (0.35, "a close call"),
    (0.15, "unlikely"),
    (0.0, "very unlikely"),
];

/// The step of tension between neighbours, over the usual one.
pub(crate) const STEPS: Ladder = &[
    (1.25, "much steeper than usual"),
    (1.05, "a little steeper than usual"),
    (0.95, "as usual"),
    (0.8, "a little flatter than usual"),
    (0.0, "much flatter than usual"),
];

/// Where a load lies, counted from the low end of the usual range in widths of it.
pub(crate) const LOAD: Ladder = &[
    (1.0, "above what is usual"),
    (2.0 / 3.0, "in the upper part of what is usual"),
    (1.0 / 3.0, "in the middle of what is usual"),
    (0.0, "in the lower part of what is usual"),
    (f64::MIN, "below what is usual"),
];

/// A comparative word is said only when so many of the draws lie beyond a just-noticeable difference.
pub(crate) const SURE: f64 = 0.80;

/// Words for alike.
pub(crate) const ALIKE: &str = "no difference we can compute";

/// What the wishes are called.
pub(crate) const WISHES: [(&str, &str); 15] = [
    ("feel", "feel under the hand"),
    ("elasticity", "elasticity"),
    ("settling", "quick settling"),
    ("drift", "steadiness against the room"),
    ("fitters-judgement", "steadiness, by what fitters say"),
    ("response", "quickness under the bow"),
    ("bow-room", "room for the bow"),
    ("power", "power"),
    ("brightness", "brightness"),
    ("ring", "ring"),
    ("durability", "reserve to breaking"),
    ("care", "bearing hands and sweat"),
    ("price", "price"),
    ("availability", "ease of buying"),
    ("tuning", "fine tuning"),
];

/// Families, as they are called.
pub(crate) const FAMILIES: [(&str, &str); 7] = [
    ("plain-gut", "plain gut"),
    ("wound-gut", "wound gut"),
    ("plain-steel", "plain steel"),
    ("wound-steel", "wound steel"),
    ("stranded-steel", "stranded steel"),
    ("synthetic", "synthetic"),
    ("monofilament", "single-filament"),
];

/// Materials of cores whose name is not their key, and metals.
pub(crate) const MATERIALS: [(&str, &str); 5] = [
    ("spring-steel", "spring steel"),
    ("stainless-steel", "stainless steel"),
    ("polyamide", "polyamide (nylon)"),
    ("high-modulus-polymer", "stiff composite fibre"),
    ("chrome-steel", "chrome steel"),
];

/// To what most of a partial goes.
pub(crate) const GOES: [(&str, &str); 4] = [
    ("bridge", "to the bridge"),
    ("air", "to the air"),
    ("bending", "into bending"),
    ("string", "into the string’s own pull"),
];

/// Why constructions were left out.
pub(crate) const LIMITS: [(&str, &str); 14] = [
    ("not-makeable", "cannot be made"),
    ("animal", "come from an animal"),
    ("nickel", "have nickel under the fingers"),
    ("pickup", "have no steel for the pickup"),
    ("other-family", "are of another kind than you asked for"),
    ("nobody-makes-it", "are made by nobody we know of"),
    ("tension", "would pull outside what is made here"),
    ("gauge", "are thinner or thicker than what is made here"),
    ("stretch", "stretch more or less than what is made here"),
    ("winding-share", "carry more or less winding than what is made here"),
    ("breaking", "are too near to breaking"),
    ("not-settled", "would hardly settle by the day"),
    ("needs-fine-tuner", "cannot be tuned on the peg alone, and there is no fine tuner"),
    ("same-fault", "would bother in the same way"),
];

/// Words that make a claim although they do not end like a comparative.
pub(crate) const CLAIMS: &[&str] = &[
    "more",
    "less",
    "worse",
    "fewer",
    "likely",
    "unlikely",
    "same",
    "equal",
    "equally",
    "level",
    "alike",
    "difference",
    "differences",
    "twice",
    "half",
    "overlap",
    "behind",
    "as usual",
    "close call",
];

/// Words that end like a comparative and are none.
pub(crate) const NO_COMPARATIVES: &[&str] = &[
    "after",
    "either",
    "ever",
    "finger",
    "fitter",
    "hammer",
    "however",
    "luthier",
    "matter",
    "maker",
    "master",
    "metre",
    "micrometer",
    "neither",
    "never",
    "newer",
    "number",
    "order",
    "other",
    "over",
    "paper",
    "per",
    "peter",
    "player",
    "power",
    "proper",
    "rather",
    "silver",
    "soldier",
    "together",
    "tuner",
    "under",
    "upper",
    "water",
    "weather",
    "whether",
    "answer",
    "another",
    "polymer",
    "copper",
    "whichever",
    "whatever",
    "wherever",
    "timber",
    "winter",
    "corner",
    "remember",
    "counter",
    "outer",
    "inner",
    "wander",
];

/// Parts of pictures: marks on an axis, the bar of a scale. What they mark is drawn, not said;
/// and formulas with their sources, which say the same to everybody.
pub(crate) const PICTURES: &[&str] = &["axes", "scale-bar", "formula"];

/// Sentences that say the same to everybody.
pub(crate) const FIXED: &[&str] = &[
    "A luthier can lower them.",
    "A brighter core or metal would help.",
    "A darker core or metal would help.",
    "A heavier gauge gives it body.",
    "A lighter gauge lets it breathe.",
    "A lighter one starts sooner.",
    "A more elastic core moves less.",
    "A stronger kind would last longer.",
    "A synthetic or steel core minds it less.",
    "A thicker kind is kinder.",
    "Try a fresh one of the same kind first.",
    "Try another of the same kind; keep the receipt.",
    "Try it straighter, and nearer the bridge.",
    "Take a steadier kind, or ask someone to tune.",
    "Wipe it after playing, and take a harder metal.",
    "If you want to change all the same",
    "What may be behind it",
    "Each bar is one partial of the plucked string, counted from the lowest: its length is the seconds in which it falls by 60 dB, its filling what takes most of it.",
    "Each block is one day, retuned every evening: it reaches from the least to the most cents that the day may cost, 90 times in 100.",
    "Each mark is one string that would do here: the further right, the more it stretches in tune; the higher, the better it holds its pitch.",
    "Each wish is met between 2 and 100 of 100; a string’s score is the weighted mean of the logarithms.",
    "Fit later, or choose another set.",
    "Its core is pulled harder or less hard than in the measurements of how stiff it sounds; that stiffness is held at the end of what was measured.",
    "Line with ends: where it lies, 90 times in 100.",
    "One string at a time; tune often on the first day, then daily until a night costs no more than five cents, a twentieth of a semitone.",
    "One wire of its core is thinner or thicker than the strengths of wire are tabled for; the strength is held at the end of the table.",
    "Ranges hold the true number 90 times in 100; “unknown” stands where the high end of a range is over three times the low end.",
    "The kind of core changes, so the strings may swing wider or narrower: check their height over the fingerboard.",
    "The last is a judgement and carries most of the difference between gut and the rest.",
    "The lowest string runs over the extension: it must be the longer kind.",
    "Then tune once a day until a night costs no more than five cents.",
    "What to measure to know more",
    "few days until a night costs no more than five cents",
    "how far the greatest bow force lies above the least, by theory: 20 dB is ten times",
    "how hard the bow must press at the same stroke.",
    "how long the plucked string’s first partial sounds on the instrument, until it has fallen by 60 dB",
    "how far the hardest clean stroke lies above the lightest, by the bowed string in time: 20 dB is ten times",
    "how long the plucked string is heard at the bridge, until it has fallen by 60 dB",
    "fitted to the bowed string in time, which it misses by 20 %: pitch, √(T μ) and twist",
    "fitted to the bowed string in time, which it misses by 1.7 dB: √(T μ), what the bridge takes, twist and stiffness",
    "fitted to the bowed string in time, which it misses by 6 %: pitch, bridge hill, stiffness and twist",
    "the sum of twelve partials, each with its own loss; misses the bowed string in time by 14 %, or by 1 % at one place",
    "how long until a night costs no more than five cents",
    "how many times higher the string’s first note of twisting lies than its pitch",
    "how much harder it is to roll the string under the bow than to push it aside",
    "how much longer it has become when it is in tune: its elasticity",
    "how much of the greatest bow force the least one takes on the instrument’s strongest note; at 100 % no force holds that note",
    "how much sharper a hard stroke begins than it ends, because a wide swing stretches the string",
    "how much sharper a note at the octave becomes because the finger stretches the string down to the board",
    "pitch lost once, within hours, as the wires of a strand lie closer; not creep",
    "the part that comes from the string being warmer or cooler",
    "the part that gut loses for good when the air is damper than it ever was on the instrument",
    "the pull that would double its length, if it stayed as it is",
    "the same where friction keeps falling the faster the bow slides",
    "the standing pull and the swing of hard playing together, as a share of what the core would bear for ever; over 100 % it tires and breaks one day",
    "the stress that lying close round the nut’s edge would add, as a share of its strength; over 100 % it keeps a kink there or lies less close",
    "the trade hears more colour in an elastic core; that is its judgement",
    "“Likely” and “very likely” come from the two strings in the same draws of all that is uncertain, so that what they share cancels out: from 80 and from 85 of 100.",
    "how far the pitch may wander as the room gets warmer, cooler, damper and drier",
    "Nine times in ten a wish lies within half a step of where you put it, a weight within 0.75 to 1.33 of itself, the humidity of a room within 8 of 100 of its word, the swings within 0.6 to 1.6 of theirs.",
    "Very likely: 85 of 100 and over.",
    "Likely: 65 and over.",
    "Under that: a close call.",
    "Three are told at most, the nearest first: a step of a wish counts 0.5, a doubling of a weight 1, five hertz 1, another word 1.",
    "Below the dashed line a day costs no more than five cents.",
    "The ribbons of gut are drawn by eye, not counted.",
    "From steady (−2) to colour (2), as a number",
    "from 0.10 to 8.0 % of stretch",
    "from 14 to 0.10 days until it has settled",
    "from 80 to 4.0 cents of drift in your room",
    "from 60 to 1200 swings until a plucked note has faded",
    "from 0 to 40 dB between the lightest and the hardest clean stroke",
    "from 75 to 25 % of its strength used",
    "from 30 to 2.0 cents for a degree of peg",
];
