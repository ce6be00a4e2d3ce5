//! The words that the reader knows: what they mean in numbers, said a second time, apart from the page.
//!
//! A sentence is read by its message's name; that its words say what the name does, is read off the catalogue here,
//! once, in both languages.

use catalogue::{Catalogue, ENGLISH, GERMAN};

use crate::reader::knows;

/// A property of a report: in which unit it is shown, and the words by which it is told from others, and more of it from less.
pub(crate) struct Property {
    /// Its name in a reply.
    pub(crate) key: &'static str,
    /// What the value of the reply is multiplied by.
    pub(crate) factor: f64,
    /// The unit after that; one that is a message, in braces.
    pub(crate) unit: &'static str,
    /// A word of its name, one for more of it and one for less, in English and in German.
    words: [[&'static str; 3]; 2],
}

const fn p(
    key: &'static str,
    factor: f64,
    unit: &'static str,
    english: [&'static str; 3],
    german: [&'static str; 3],
) -> Property {
    Property { key, factor, unit, words: [english, german] }
}

/// Every property, in the order in which a person reads them.
#[rustfmt::skip]
pub(crate) const PROPERTIES: [Property; 52] = [
    p("tension_n", 1.0, "N", ["Tension", "more", "less"], ["Zug", "mehr", "weniger"]),
    p("stretch", 100.0, "%", ["Stretch", "more", "less"], ["Dehnung", "elastischer", "weniger"]),
    p("breaking_share", 100.0, "%", ["strength", "nearer", "further"], ["Festigkeit", "näher", "weiter"]),
    p("breaking_pitch_hz", 1.0, "Hz", ["breaks", "higher", "lower"], ["Tonhöhe", "höher", "tiefer"]),
    p("downforce_n", 1.0, "N", ["Force", "more", "less"], ["Druck", "mehr", "weniger"]),
    p("outer_diameter_m", 1e3, "mm", ["Gauge", "thicker", "thinner"], ["Stärke", "dicker", "dünner"]),
    p("outer_diameter_at_pitch_m", 1e3, "mm", ["Gauge", "thicker", "thinner"], ["Stärke", "dicker", "dünner"]),
    p("winding_mass_share", 100.0, "%", ["Winding", "more", "less"], ["Umspinnung", "mehr", "weniger"]),
    p("mass_unstretched_kg_m", 1e3, "g/m", ["unstretched", "heavier", "lighter"], ["ungedehnt", "schwerer", "leichter"]),
    p("mass_at_pitch_kg_m", 1e3, "g/m", ["length", "heavier", "lighter"], ["Länge", "schwerer", "leichter"]),
    p("core_stress_pa", 1e-6, "MPa", ["Stress", "more", "less"], ["Spannung", "stärker", "schwächer"]),
    p("axial_stiffness_n", 1e-3, "kN", ["along", "stiffer", "easier"], ["längs", "steifer", "nachgiebiger"]),
    p("impedance_kg_s", 1e3, "g/s", ["impedance", "more", "gentler"], ["Impedanz", "kräftiger", "sanfter"]),
    p("speaks_s", 1.0, "s", ["speak", "later", "sooner"], ["Zeit", "später", "früher"]),
    p("bow_room_db", 1.0, "dB", ["Room", "more", "less"], ["Spielraum", "mehr", "weniger"]),
    p("sharpness_acum", 1.0, "acum", ["Sharpness", "sharper", "rounder"], ["Schärfe", "schärfer", "runder"]),
    p("rings_on_s", 1.0, "s", ["bridge", "longer", "shorter"], ["Steg", "länger", "kürzer"]),
    p("attack_m_s2_n", 1.0, "{unit-start}", ["Briskest", "brisker", "gentler"], ["Raschester", "rascheren", "sanfteren"]),
    p("gentlest_attack_m_s2_n", 1.0, "{unit-start}", ["Gentlest", "brisker", "gentler"], ["Sanftester", "rascheren", "sanfteren"]),
    p("bow_force_greatest_n", 1.0, "N", ["Greatest", "heavier", "lighter"], ["Größter", "schwereren", "leichteren"]),
    p("bow_force_greatest_falling_n", 1.0, "N", ["friction", "more", "less"], ["fallende", "mehr", "weniger"]),
    p("bow_force_least_n", 1.0, "N", ["theory", "heavier", "lighter"], ["Kleinster", "schwereren", "leichteren"]),
    p("bow_force_least_measured_n", 1.0, "N", ["measured", "heavier", "lighter"], ["gemessen", "schwereren", "leichteren"]),
    p("bow_window_db", 1.0, "dB", ["theory", "more", "less"], ["Spielraum", "mehr", "weniger"]),
    p("wolf", 100.0, "%", ["Nearness", "nearer", "further"], ["Wolfston", "näher", "weiter"]),
    p("brilliance_hz", 1e-3, "kHz", ["shine", "brighter", "darker"], ["Glanz", "heller", "dunkler"]),
    p("ring_s", 1.0, "s", ["partial", "longer", "shorter"], ["Teiltons", "länger", "kürzer"]),
    p("loss_first", 1e3, "{unit-thousandths}", ["Loss", "sooner", "later"], ["Verlust", "früher", "später"]),
    p("inharmonicity", 1e6, "{unit-millionths}", ["Inharmonicity", "more", "truer"], ["Inharmonizität", "weiter", "reinere"]),
    p("bending_stiffness_n_m2", 1e6, "N·mm²", ["bending", "stiffer", "easier"], ["Biegesteifheit", "schwerer", "leichter"]),
    p("torsion_speed_m_s", 1.0, "m/s", ["Speed", "faster", "slower"], ["Tempo", "schneller", "langsamer"]),
    p("torsion_ratio", 1.0, "{unit-times}", ["against", "higher", "lower"], ["Schwingung", "höher", "tiefer"]),
    p("torsion_q", 1.0, "{unit-swings}", ["twist", "longer", "sooner"], ["Nachklang", "länger", "früher"]),
    p("torsion_impedance_ratio", 1.0, "{unit-times}", ["Resistance", "less", "more"], ["Drehen", "weniger", "mehr"]),
    p("settling_d", 1.0, "{unit-days}", ["settle", "later", "sooner"], ["setzt", "später", "früher"]),
    p("loss_cent_decade", 1.0, "{cents}", ["Creep", "more", "less"], ["Kriechen", "mehr", "weniger"]),
    p("constructional_cent", 1.0, "{cents}", ["Bedding", "further", "less"], ["Anliegen", "weiter", "weniger"]),
    p("drift_cent", 1.0, "{cents}", ["room", "more", "less"], ["Raum", "mehr", "weniger"]),
    p("drift_temperature_cent", 1.0, "{cents}", ["warmth", "more", "less"], ["Wärme", "mehr", "weniger"]),
    p("drift_moisture_cent", 1.0, "{cents}", ["moisture", "more", "less"], ["Feuchte", "mehr", "weniger"]),
    p("drift_body_cent", 1.0, "{cents}", ["body", "more", "less"], ["Korpus", "mehr", "weniger"]),
    p("drift_ratchet_cent", 1.0, "{cents}", ["damp", "more", "less"], ["neue", "mehr", "weniger"]),
    p("drift_seats_cent", 1.0, "{cents}", ["knots", "more", "less"], ["Knoten", "mehr", "weniger"]),
    p("drift_transient_cent", 1.0, "{cents}", ["another", "more", "less"], ["Stunden", "mehr", "weniger"]),
    p("lateral_stiffness_n_m", 1e-3, "N/mm", ["Firmness", "firmer", "softer"], ["Hand", "fester", "weicher"]),
    p("stopping_cent", 1.0, "{cents}", ["Sharpening", "sharper", "truer"], ["Erhöhung", "höher", "reiner"]),
    p("glide_cent", 1.0, "{cents}", ["stroke", "more", "less"], ["Absinken", "mehr", "weniger"]),
    p("peg_cent_deg", 1.0, "{unit-cents-degree}", ["degree", "coarser", "finer"], ["Grad", "gröber", "feiner"]),
    p("pull_cent_m", 1e-3, "{unit-cents-mm}", ["millimetre", "coarser", "finer"], ["Millimeter", "gröber", "feiner"]),
    p("over_the_nut", 100.0, "%", ["nut", "more", "less"], ["Sattel", "mehr", "weniger"]),
    p("over_the_peg", 100.0, "%", ["peg", "harder", "gently"], ["Wirbel", "schärfer", "sanfter"]),
    p("fatigue", 100.0, "%", ["Weariness", "sooner", "later"], ["Ermüdung", "früher", "später"]),
];

/// At one pitch and length, tension is firmness under the hand: the draws compare the latter.
pub(crate) const DECIDED_BY: [(&str, &str); 1] = [("tension_n", "lateral_stiffness_n_m")];

/// The message that says that two strings are alike.
pub(crate) const ALIKE: &str = "no-difference";

/// A comparative word is said only when so many of the draws lie beyond a just-noticeable difference.
pub(crate) const SURE: f64 = 0.80;

/// Scales of messages, from the largest down: from which number on each is said.
pub(crate) type Ladder = &'static [(f64, &'static str)];

/// How likely something is (the ground rules: very likely from 85 of 100, likely from 65, else a close call).
pub(crate) const LIKELY: Ladder = &[
    (0.85, "very-likely"),
    (0.65, "likely"),
    (0.35, "close-call"),
    (0.15, "unlikely"),
    (0.0, "very-unlikely"),
];

/// The step of tension between neighbours, over the usual one.
pub(crate) const STEPS: Ladder = &[
    (1.25, "step-much-steeper"),
    (1.05, "step-steeper"),
    (0.95, "step-usual"),
    (0.8, "step-flatter"),
    (0.0, "step-much-flatter"),
];

/// Where a load lies, counted from the low end of the usual range in widths of it.
pub(crate) const LOAD: Ladder = &[
    (1.0, "load-above"),
    (2.0 / 3.0, "load-upper"),
    (1.0 / 3.0, "load-middle"),
    (0.0, "load-lower"),
    (f64::MIN, "load-below"),
];

/// From where to where a wish can swing, as the model's book has it.
pub(crate) const SWINGS: [(&str, f64, f64); 7] = [
    ("elasticity", 0.1, 8.0),
    ("settling", 14.0, 0.1),
    ("drift", 80.0, 4.0),
    ("ring", 60.0, 1200.0),
    ("bow-room", 0.0, 40.0),
    ("durability", 75.0, 25.0),
    ("tuning", 30.0, 2.0),
];

/// Parts of pictures: marks on an axis, the bar of a scale. What they mark is drawn, not said.
pub(crate) const PICTURES: &[&str] = &["axes", "scale-bar"];

/// How the names of messages end that explain a word and say the same to everybody.
pub(crate) const SILENT_ENDS: &[&str] = &[".means", ".formula", ".said", ".asks"];

/// Messages that say the same to everybody; what stands in their places is read by itself. An asterisk stands for any
/// ending.
#[rustfmt::skip]
pub(crate) const SILENT: &[&str] = &[
    // Headings, labels and buttons.
    "along-*", "balance-axis", "balance-caption", "balance-how", "balance-mark-*", "balance-parts", "balance-picture",
    "balance-stretch", "balance-table", "balance-today", "balance-chosen", "bench-*", "card-balance", "card-bow", "card-made", "card-numbers", "card-worths",
    "card-among", "card-changes", "card-compare", "card-core", "card-costs", "card-counter", "card-print", "card-print-of", "card-wound",
    "change", "chart-*", "column-*", "compare-computing", "compare-every", "compare-how", "compare-table", "depth-*", "disputed-means", "doubts-title",
    "findings-title", "group-*", "hear-*", "load-all", "load-bridge", "load-legend", "map-*", "nights-axis", "nights-caption",
    "nights-column-*", "nights-day", "nights-enough", "nights-how", "nights-picture", "nights-settled-is", "nights-table",
    "nothing-any", "nothing-help", "nothing-left-out", "nothing-single", "nothing-string", "nothing-why", "part-*", "partials-caption",
    "partials-column-*", "partials-how", "partials-picture", "partials-table", "piece-*", "plan-care", "plan-check", "plan-daily",
    "plan-days", "plan-days-caption", "plan-one", "plan-often", "plan-string", "plan-likely", "plan-long", "filter-label",
    "portrait-gut", "report-core", "report-label", "report-losses", "report-setting", "report-wound",
    "set-cautions", "set-change", "set-compare-two", "set-differs", "set-download", "set-ear", "set-first", "set-first-strings", "set-keep",
    "set-metal", "set-print", "set-second", "set-sharpen",
    "sheet-ask", "sheet-date", "sheet-foot", "sheet-for", "sheet-fitted", "sheet-label", "sheet-look", "sheet-one", "sheet-when",
    "steps-table", "stop", "sure-bench-error", "sure-bench-spreads", "sure-how", "sure-more", "sure-sheet", "sure-sources", "sure-title",
    "sure-waits", "swings-how", "swings-reset", "swings-title", "table-of", "turn-confirmed", "turn-sheet", "turn-title",
    "weights-every", "weights-how", "weights-base", "weights-moved", "weights-here", "wish-*", "year-apart", "year-section",
];

/// Words by which messages say their direction, in English and in German: each must stand in the message, which is not
/// read word for word otherwise. Where it chooses its text, the name and the key stand in brackets; with an asterisk
/// they mean every message that chooses so. An equals sign says that there is nothing else; a place that could be taken
/// for another stands with the words about it.
const DIRECTIONS: &str = include_str!("directions.tsv");

/// Figures that messages hold themselves, the same in both languages. That something is so many of 100 needs no entry.
#[rustfmt::skip]
const FIGURES: &[(&str, &str)] = &[
    ("compare-how", "80 85"),
    ("core-strand", "19 7 7 7"),
    ("days-safe", "1"),
    ("nights-how", "90"),
    ("number-body", "3 5"),
    ("partials-how", "60"),
    ("load-legend", "90"),
    ("property-bow_room_db.means", "20"),
    ("property-bow_window_db.means", "20"),
    ("property-ring_s.means", "60"),
    ("property-rings_on_s.means", "60"),
    ("report-sources", "90"),
    ("setting", "1"),
    ("sure-bench-error", "65 85"),
    ("sure-bench-spreads", "0.6 0.75 1.33 1.6 8"),
    ("turn-confirmed", "0.5 1 1 1"),
    ("weights-how", "2"),
    ("column-range", "90"),
    ("map-place-how", "20 6"),
    ("regime-not-settled.means", "60"),
    ("balance-axis", "0"),
    ("wish-number", "2 2"),
];

/// The text of a pattern with its places in braces; of a choice only what stands under a key, if one is given.
fn text(pattern: &str, only: Option<(&str, &str)>) -> String {
    let (mut out, mut open) = (String::new(), Vec::<(&str, &str)>::new());
    let mut rest = pattern;
    while let Some(sign) = rest.chars().next() {
        rest = &rest[sign.len_utf8()..];
        let until = |end: char| rest.split_once(end).unwrap();
        let wanted = |open: &[_]| only.is_none_or(|only| open.contains(&only));
        match sign {
            '\u{1}' => {
                let (name, after) = until('\u{2}');
                if wanted(&open) {
                    out.push_str(&format!("{{{name}}}"));
                }
                rest = after;
            }
            '\u{3}' => {
                let (name, _) = until('\u{4}');
                rest = &rest[name.len()..];
                open.push((name, ""));
            }
            '\u{4}' => {
                let (key, after) = until('\u{5}');
                open.last_mut().unwrap().1 = key.trim_start_matches('*');
                rest = after;
                if wanted(&open) {
                    out.push(' ');
                }
            }
            '\u{6}' => drop(open.pop()),
            letter if wanted(&open) => out.push(if letter == '\u{a0}' { ' ' } else { letter }),
            _ => {}
        }
    }
    out.trim().to_owned()
}

/// Whether a text has these words, from the beginning of a word on.
fn has(text: &str, words: &str) -> bool {
    let (text, words) = (text.to_lowercase(), words.to_lowercase());
    match words.strip_prefix('=') {
        Some(all) => text == all,
        None => text.match_indices(&words).any(|(at, _)| {
            !(words.starts_with(char::is_alphanumeric)
                && text[..at].ends_with(char::is_alphanumeric))
        }),
    }
}

/// The messages of both languages.
fn catalogues() -> [Catalogue; 2] {
    [Catalogue::of(ENGLISH), Catalogue::of(GERMAN)]
}

/// The texts of a message, or of all that choose so.
fn texts(catalogue: &Catalogue, id: &str) -> Vec<(String, String)> {
    let (name, choice) = id
        .split_once('[')
        .map_or((id, None), |(name, choice)| (name, choice.trim_end_matches(']').split_once('=')));
    let all = catalogue
        .names()
        .filter(|known| *known == name || (name == "*" && *known != "counter-core"));
    let of = |name: &'static str| (name.to_owned(), text(catalogue.pattern(name).unwrap(), choice));
    all.map(of).filter(|(_, text)| name != "*" || !text.is_empty()).collect()
}

#[test]
fn messages_say_the_direction_that_their_names_claim() {
    let (mut missed, catalogues) = (Vec::new(), catalogues());
    let mut check = |id: &str, language: usize, words: &str| {
        let texts = texts(&catalogues[language], id);
        let german = id.starts_with("*[") && texts.is_empty() && language == 0;
        if texts.is_empty() && !german {
            missed.push(format!("there is no {id}"));
        }
        for (name, text) in texts {
            for words in words.split('|').filter(|words| !has(&text, words)) {
                missed.push(format!("{id}: {name} does not say “{words}”: {text}"));
            }
        }
    };
    for line in DIRECTIONS.lines().filter(|line| !line.starts_with('#')) {
        let columns: Vec<&str> = line.split('\t').collect();
        for id in columns[0].split(' ') {
            check(id, 0, columns[1]);
            check(id, 1, columns[2]);
        }
    }
    for p in &PROPERTIES {
        for (language, words) in p.words.iter().enumerate() {
            for (end, word) in ["", ".more", ".less"].into_iter().zip(words) {
                check(&format!("property-{}{end}", p.key), language, word);
            }
        }
    }
    assert!(missed.is_empty(), "{missed:#?}");
}

#[test]
fn messages_hold_the_same_figures_in_both_languages() {
    let [english, german] = catalogues();
    let figures = |catalogue: &Catalogue, id: &str| {
        let text = text(catalogue.pattern(id).unwrap(), None).replace(',', ".");
        let digits = |word: &&str| word.starts_with(|c: char| c.is_ascii_digit()) && *word != "100";
        let words =
            text.split(|c: char| !(c.is_ascii_digit() || c == '.')).map(|w| w.trim_matches('.'));
        let mut found: Vec<&str> = words.filter(digits).collect();
        found.sort_unstable();
        found.join(" ")
    };
    let mut odd = Vec::new();
    for id in english.names().filter(|id| knows(id)) {
        let known =
            FIGURES.iter().find(|(known, _)| *known == id).map_or("", |(_, figures)| figures);
        let (one, other) = (figures(&english, id), figures(&german, id));
        // A formula is read in no table, and stands beside its source.
        if one != other || (one != known && !id.ends_with(".formula")) {
            odd.push(format!("{id}: {one:?} in English, {other:?} in German, {known:?} expected"));
        }
    }
    assert!(odd.is_empty(), "{odd:#?}");
}
