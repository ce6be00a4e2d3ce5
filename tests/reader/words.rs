//! The words that the reader knows: what they mean in numbers, said a second time, apart from the page.
//!
//! A sentence is read by its message's name; that its words say what the name does, is read off the catalogue here,
//! once, in both languages.

use catalogue::{Catalogue, ENGLISH, GERMAN, Word, fill};

use crate::claims::{claim, rows};

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
pub(crate) const PROPERTIES: [Property; 57] = [
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
    p("loss_cent_decade", 1.0, "{cents}", ["Loss", "more", "less"], ["Verlust", "mehr", "weniger"]),
    p("constructional_cent", 1.0, "{cents}", ["Bedding", "further", "less"], ["Anliegen", "weiter", "weniger"]),
    p("evening_cent", 1.0, "{cents}", ["evening", "more", "less"], ["Abend", "mehr", "weniger"]),
    p("evening_warmth_cent", 1.0, "{cents}", ["Warmth of an evening", "moves more", "moves less"], ["Wärme eines Abends", "mehr", "weniger"]),
    p("evening_damp_cent", 1.0, "{cents}", ["Damp of an evening", "moves more", "moves less"], ["Feuchte eines Abends", "mehr", "weniger"]),
    p("week_cent", 1.0, "{cents}", ["week", "more", "less"], ["Woche", "mehr", "weniger"]),
    p("week_warmth_cent", 1.0, "{cents}", ["Warmth of a week", "moves more", "moves less"], ["Wärme einer Woche", "mehr", "weniger"]),
    p("week_damp_cent", 1.0, "{cents}", ["Damp of a week", "moves more", "moves less"], ["Feuchte einer Woche", "mehr", "weniger"]),
    p("season_cent", 1.0, "{cents}", ["seasons", "more", "less"], ["Jahreszeiten", "mehr", "weniger"]),
    p("season_warmth_cent", 1.0, "{cents}", ["Warmth of the seasons", "moves more", "moves less"], ["Wärme der Jahreszeiten", "mehr", "weniger"]),
    p("season_damp_cent", 1.0, "{cents}", ["Damp of the seasons", "moves more", "moves less"], ["Feuchte der Jahreszeiten", "mehr", "weniger"]),
    p("season_moisture_cent", 1.0, "{cents}", ["Water", "more", "less"], ["Wasser", "mehr", "weniger"]),
    p("season_body_cent", 1.0, "{cents}", ["body", "more", "less"], ["Korpus", "mehr", "weniger"]),
    p("ratchet_cent", 1.0, "{cents}", ["first damp spell", "more", "less"], ["neue", "mehr", "weniger"]),
    p("lateral_stiffness_n_m", 1e-3, "N/mm", ["Firmness", "firmer", "softer"], ["Hand", "fester", "weicher"]),
    p("stopping_cent", 1.0, "{cents}", ["Sharpening", "sharper", "truer"], ["Erhöhung", "höher", "reiner"]),
    p("glide_cent", 1.0, "{cents}", ["stroke", "more", "less"], ["Absinken", "mehr", "weniger"]),
    p("peg_cent_deg", 1.0, "{unit-cents-degree}", ["degree", "coarser", "finer"], ["Grad", "gröber", "feiner"]),
    p("pull_cent_m", 1e-3, "{unit-cents-mm}", ["millimetre", "coarser", "finer"], ["Millimeter", "gröber", "feiner"]),
    p("over_the_nut", 100.0, "%", ["nut", "more", "less"], ["Sattel", "mehr", "weniger"]),
    p("over_the_peg", 100.0, "%", ["peg", "harder", "gently"], ["Wirbel", "schärfer", "sanfter"]),
    p("fatigue", 100.0, "%", ["Fatigue", "sooner", "later"], ["Ermüdung", "früher", "später"]),
];

/// At one pitch and length, tension is firmness under the hand: the draws compare the latter.
pub(crate) const DECIDED_BY: [(&str, &str); 1] = [("tension_n", "lateral_stiffness_n_m")];

/// The messages that say that no difference of two strings is noticed, and that nobody can say whether one is.
pub(crate) const ALIKE: &str = "alike";
pub(crate) const UNDECIDED: &str = "undecided";
/// The message that says which of two is more so, but not that it is noticed.
pub(crate) const RATHER: &str = "rather";

/// Whether a property is a move of the pitch, up or down, of which the size is compared.
pub(crate) fn is_move(key: &str) -> bool {
    ["evening_", "week_", "season_"].iter().any(|time| key.starts_with(time))
}

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

/// How much better the chosen set is than that of another kind: level is what the model's book calls a close call.
pub(crate) const BEHIND: Ladder =
    &[(1.4, "far"), (1.15, "clearly"), (1.02, "little"), (f64::MIN, "level")];

/// Where a load lies, counted from the low end of the usual range in widths of it.
pub(crate) const LOAD: Ladder = &[
    (1.0, "load-above"),
    (2.0 / 3.0, "load-upper"),
    (1.0 / 3.0, "load-middle"),
    (0.0, "load-lower"),
    (f64::MIN, "load-below"),
];

/// Parts of pictures: marks on an axis, the bar of a scale. What they mark is drawn, not said.
pub(crate) const PICTURES: &[&str] = &["axes", "scale-bar"];

/// Figures that messages hold themselves, the same in both languages. That something is so many of 100 needs no entry.
#[rustfmt::skip]
const FIGURES: &[(&str, &str)] = &[
    ("compare-how", "80 80 85"),
    ("core-strand", "19 7 7 7"),
    ("cents-one", "1"),
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
    ("wish-number", "2 2"),
];

/// What stands in a pattern between two of its signs.
fn between(pattern: &str, open: char, close: char) -> impl Iterator<Item = &str> {
    pattern.split(open).skip(1).filter_map(move |after| Some(after.split_once(close)?.0))
}

/// The text of a pattern with its places in braces, and with the text of a choice, if one is given.
fn text(pattern: &str, choice: Option<(&str, &str)>) -> String {
    let names = between(pattern, '\u{1}', '\u{2}').chain(between(pattern, '\u{3}', '\u{4}'));
    let names = names.map(|name| (name, Word::from(format!("{{{name}}}"))));
    let words: Vec<_> =
        choice.into_iter().map(|(name, key)| (name, key.into())).chain(names).collect();
    fill(pattern, &words).replace('\u{a0}', " ").trim().to_owned()
}

/// Whether a text has these words, from the beginning of a word on. An equals sign before them means that it has
/// nothing else, dots in them that other words may stand there, but no place.
fn has(text: &str, words: &str) -> bool {
    let (text, words) = (text.to_lowercase(), words.to_lowercase());
    if let Some(whole) = words.strip_prefix('=') {
        return text == whole;
    }
    let (first, rest) =
        words.split_once('…').map_or((&*words, None), |(first, rest)| (first, Some(rest)));
    text.match_indices(first).any(|(at, _)| {
        let after = &text[at + first.len()..];
        let inside =
            first.starts_with(char::is_alphanumeric) && text[..at].ends_with(char::is_alphanumeric);
        !inside
            && rest.is_none_or(|rest| after.find(rest).is_some_and(|to| !after[..to].contains('{')))
    })
}

/// The messages of both languages.
fn catalogues() -> [Catalogue; 2] {
    [Catalogue::of(ENGLISH), Catalogue::of(GERMAN)]
}

/// Whether a pattern chooses by this name, and has a text for this key.
fn chooses(pattern: &str, (name, key): (&str, &str)) -> bool {
    pattern.contains(&format!("\u{3}{name}\u{4}"))
        && between(pattern, '\u{4}', '\u{5}').any(|known| known.trim_start_matches('*') == key)
}

/// The texts of a message; with an asterisk, of all that choose so.
fn texts(catalogue: &Catalogue, id: &str) -> Vec<(&'static str, String)> {
    let (name, choice) = id
        .split_once('[')
        .map_or((id, None), |(name, choice)| (name, choice.trim_end_matches(']').split_once('=')));
    let wanted = |known: &&'static str, pattern: &str| match name {
        "*" => *known != "counter-core" && choice.is_some_and(|choice| chooses(pattern, choice)),
        name => *known == name,
    };
    let all = catalogue.names().filter_map(|name| Some((name, catalogue.pattern(name)?)));
    all.filter(|(name, pattern)| wanted(name, pattern))
        .map(|(name, pattern)| (name, text(pattern, choice)))
        .collect()
}

/// The words that messages should have and lack.
fn lacking(catalogues: &[Catalogue; 2]) -> Vec<String> {
    let mut lacking = Vec::new();
    let mut check = |id: &str, words: [&str; 2]| {
        let texts = catalogues.each_ref().map(|catalogue| texts(catalogue, id));
        if texts.iter().all(Vec::is_empty) {
            lacking.push(format!("there is no {id}"));
        }
        for (texts, words) in texts.into_iter().zip(words) {
            for (name, text) in texts {
                let missing = words.split('|').filter(|words| !has(&text, words));
                lacking.extend(
                    missing.map(|words| format!("{id}: {name} does not say “{words}”: {text}")),
                );
            }
        }
    };
    for [ids, _, english, german] in rows().filter(|row| !row[2].is_empty()) {
        ids.split(' ').for_each(|id| check(id, [english, german]));
    }
    for Property { key, words: [english, german], .. } in &PROPERTIES {
        for (i, end) in ["", ".more", ".less"].into_iter().enumerate() {
            check(&format!("property-{key}{end}"), [english[i], german[i]]);
        }
    }
    lacking
}

#[test]
fn messages_say_the_direction_that_their_names_claim() {
    let lacking = lacking(&catalogues());
    assert!(lacking.is_empty(), "{lacking:#?}");
}

/// A message that claims the opposite, in the one language or in the other.
#[test]
fn a_message_that_claims_something_else_is_noticed() {
    const PLANTED: [(&str, &str, &str); 12] = [
        ("compared-elasticity", "\u{1}this\u{2}", "\u{1}other\u{2}"),
        ("property-brilliance_hz.more", "heller", "dunkler"),
        ("property-speaks_s.less", "sooner", "later"),
        ("judged-price", "cost more", "cost less"),
        ("moves-falls", "falls", "rises"),
        ("picture-gains", "steadier", "worse"),
        ("alike", "about the same", "unlike"),
        ("rather", "if it is noticed", "as is noticed"),
        ("sure-likely", "sind wahrscheinlich", "sind sehr wahrscheinlich"),
        ("family-plain-gut", "blanker", "umsponnener"),
        ("unit-lb", "lb", "kg"),
        ("number-speaks", "Over", "Under"),
    ];
    for (id, said, instead) in PLANTED {
        let changed = [ENGLISH, GERMAN].map(|messages| {
            let change = |line: &str| match line.split_once('\t') {
                Some((name, pattern)) if name == id => {
                    let pattern =
                        pattern.replace(said, "\0").replace(instead, said).replace('\0', instead);
                    format!("{name}\t{pattern}\n")
                }
                _ => format!("{line}\n"),
            };
            Catalogue::of(messages.lines().map(change).collect::<String>().leak())
        });
        let lacking = lacking(&changed);
        assert!(lacking.iter().any(|lack| lack.starts_with(id)), "{id}: “{instead}” for “{said}”");
    }
}

/// The figures of a pattern, in whatever it chooses; that something is so many of 100 is no news.
fn figures(pattern: &str) -> String {
    let bare = |piece: &str| match piece.split_once(['\u{2}', '\u{5}']) {
        Some((_, text)) => format!(" {}", text.replace(',', ".")),
        None => String::new(),
    };
    let mut pieces = pattern.split(['\u{1}', '\u{3}', '\u{4}']);
    let text =
        pieces.next().unwrap_or_default().replace(',', ".") + &pieces.map(bare).collect::<String>();
    let words =
        text.split(|c: char| !(c.is_ascii_digit() || c == '.')).map(|word| word.trim_matches('.'));
    let mut found: Vec<&str> = words.filter(|word| !["", "100"].contains(word)).collect();
    found.sort_unstable();
    found.join(" ")
}

#[test]
fn messages_hold_the_same_figures_in_both_languages() {
    let [english, german] = catalogues();
    let figures = |catalogue: &Catalogue, id: &str| figures(catalogue.pattern(id).unwrap());
    let mut odd = Vec::new();
    for id in english.names().filter(|id| claim(id).is_some()) {
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
