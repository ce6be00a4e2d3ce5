//! What to do, and why something bothers, as sentences.

use protocol::reply::{CauseNumber, Finding, Fit, Quantity};

use strings::instrument::Kind;

use super::naming::{a, capital, family, letters};
use super::questions::bother_label;
use super::set;
use crate::units;

/// The names of the strings of a fit, highest first; where there is no set, those of the tuning.
fn names(fit: &Fit) -> Vec<String> {
    match &fit.set {
        Some(set) => letters(set.strings.iter().map(|string| string.note.as_str())),
        None => {
            let problem = &fit.problem;
            let tuning =
                Kind::of(&problem.instrument).and_then(|kind| kind.tuning(&problem.tuning));
            letters(tuning.iter().flat_map(|tuning| tuning.strings).map(|(note, _)| *note))
        }
    }
}

/// The answer in one sentence: what to do, which is often less than a new set.
#[must_use]
pub fn answer(fit: &Fit) -> String {
    let instrument = &fit.problem.instrument_name;
    let names = names(fit);
    let at = fit.verdict.string.and_then(|i| Some((i, names.get(i)?)));
    match (fit.verdict.answer.as_str(), at) {
        ("leave-it", _) if fit.set.is_none() => format!("{} Leave it as it is.", set::answer(fit)),
        ("leave-it", _) => format!("Leave the strings of your {instrument} as they are."),
        ("fresh-same", Some((_, name))) => {
            format!("Put on a fresh {name} of the same kind. Keep the others.")
        }
        ("fresh-same", None) => format!("Give your {instrument} a fresh set of the same kind."),
        ("luthier-first", _) => {
            format!("Take your {instrument} to a luthier before you buy strings.")
        }
        ("one-string", Some((i, name))) => match fit.set.as_ref().and_then(|s| s.strings.get(i)) {
            Some(string) => format!(
                "Change one string: take {} {name}, {} gauge.",
                a(family(&string.report.family)),
                string.shopping.gauge_class
            ),
            None => format!("Change one string: the {name}."),
        },
        _ => set::answer(fit),
    }
}

/// What stands over the set where the answer is not to buy it; none where it is.
#[must_use]
pub fn all_the_same(fit: &Fit) -> Option<&'static str> {
    match fit.verdict.answer.as_str() {
        "leave-it" | "fresh-same" => Some("If you want to change all the same"),
        "luthier-first" => Some("What we would put on after that"),
        _ => None,
    }
}

/// A fact that led to the answer, where it is no cause of a complaint: those are told with the complaint.
#[must_use]
pub fn because(key: &str) -> Option<&'static str> {
    Some(match key {
        "old" => "It has been on as long as such strings last.",
        "not-old" => "Nothing on it is old, as far as we know.",
        "nothing-bothers" => "Nothing bothers you.",
        "wishes" => "You wish for another sound or feel.",
        "animal" => "There is gut on it, and you want nothing from animals.",
        "nickel" => "There is nickel under the fingers, and your skin cannot bear it.",
        "pickup" => "The pickup hears steel, and what is on it has none in the core.",
        "other-family" => "You asked for another kind of string.",
        "no-better" => "No set that fits comes out clearly better than what is there.",
        "nothing-fits" => "Nothing that is made meets every wish.",
        _ => return None,
    })
}

/// A complaint as a heading: what, and on which string.
#[must_use]
pub fn complaint(finding: &Finding, fit: &Fit) -> String {
    let label = bother_label(&finding.bother);
    match finding.string.and_then(|i| names(fit).get(i).cloned()) {
        Some(name) => format!("{label}: the {name} string"),
        None => label.to_owned(),
    }
}

/// A cause: what it is, and what to do about it.
#[must_use]
pub fn cause(key: &str) -> (&str, &str) {
    match key {
        "old-string" => ("It is old.", "Try a fresh one of the same kind first."),
        "faulty-string" => {
            ("The string has a fault.", "Try another of the same kind; keep the receipt.")
        }
        "winding-open" => {
            ("The winding is loose.", "Run a nail along it. If it catches or buzzes, change it.")
        }
        "sweat-eats-winding" => {
            ("Sweat eats the metal.", "Wipe it after playing, and take a harder metal.")
        }
        "not-settled" => ("It is still new.", "Give it a few days before you judge it."),
        "kind-too-bright" => ("This kind is bright.", "A darker core or metal would help."),
        "kind-too-dark" => ("This kind is dark.", "A brighter core or metal would help."),
        "tension-too-high" => ("It pulls too hard.", "A lighter gauge lets it breathe."),
        "tension-too-low" => ("It pulls too little.", "A heavier gauge gives it body."),
        "too-heavy-to-start" => ("It is heavy for the bow.", "A lighter one starts sooner."),
        "torsion-whistle" => {
            ("The wire twists under the bow.", "A wound top string hardly does that.")
        }
        "near-its-limit" => ("It works near its limit.", "A stronger kind would last longer."),
        "thin-under-the-finger" => ("It is thin and cuts.", "A thicker kind is kinder."),
        "one-stands-out" => ("One string stands out.", "Change that one to match its neighbours."),
        "core-drinks-humidity" => {
            ("The core drinks from the air.", "A synthetic or steel core minds it less.")
        }
        "body-moves-it" => {
            ("The body moves, and a stiff string follows.", "A more elastic core moves less.")
        }
        "peg-slips" => (
            "The peg slips or sticks.",
            "Push it in as you turn. If that fails, a luthier fits it.",
        ),
        "not-tuned" => {
            ("Nobody tunes it between lessons.", "Take a steadier kind, or ask someone to tune.")
        }
        "worn-groove" => {
            ("A groove pinches the string.", "Rub a soft pencil in it. A luthier can cut it anew.")
        }
        "sharp-edge" => {
            ("An edge cuts the string.", "Feel for it where the string broke. A luthier rounds it.")
        }
        "string-height" => ("The strings stand too high.", "A luthier can lower them."),
        "soundpost-or-bridge" => (
            "The soundpost or bridge is out of place.",
            "A luthier can see it. Do not move it yourself.",
        ),
        "wolf-of-the-body" => {
            ("The wolf is the body’s own.", "Strings move it a little. A luthier can tame it.")
        }
        "rosin-or-bow-hair" => {
            ("The bow’s hair or rosin is at fault.", "Try another bow first. It costs nothing.")
        }
        "bow-stroke" => {
            ("It is how the bow meets the string.", "Try it straighter, and nearer the bridge.")
        }
        other => (other, ""),
    }
}

/// The word beside a cause: how likely it is, and on what that rests.
#[must_use]
pub fn likely(likely: &str, judged: bool) -> String {
    let on = if judged { "judged" } else { "checked" };
    format!("{likely}, {on}")
}

/// A number of today's string, as one would say it.
#[must_use]
pub fn number(n: &CauseNumber, cause: &str) -> String {
    let limit = n.limit.unwrap_or(n.value);
    let (low, high) = (n.low.unwrap_or(n.value), n.high.unwrap_or(n.value));
    let quantity = Quantity {
        value: n.value,
        low,
        high,
        evidence: String::new(),
        source: String::new(),
        unknown: low <= 0.0 && high > 0.0 || high > 3.0 * low,
    };
    let value = units::plainly(&n.property, &quantity);
    let scale = units::scale(&n.property);
    let limit_of = |figures: i32| {
        units::with_unit(&units::significant(limit * scale.factor, figures), scale.unit)
    };
    match (n.property.as_str(), cause) {
        ("age_months", _) => format!(
            "It has been on for {}. Such a string lasts about {}.",
            months(n.value),
            months(limit)
        ),
        ("settling_d", _) => {
            format!("Days it takes to settle: {value}. It has been on for {}.", units::days(limit))
        }
        ("tension_step", _) => format!(
            "Its step to the next string is {} times the usual one.",
            units::fixed(n.value, 2)
        ),
        ("tension_n", "tension-too-low") => {
            format!("It pulls with {value}. Under {} is light here.", limit_of(2))
        }
        ("tension_n", _) => format!("It pulls with {value}. Over {} is heavy here.", limit_of(2)),
        ("brilliance_hz", "kind-too-dark") => {
            format!("Its shine ends at {value}. Under {} is dark for your wish.", limit_of(2))
        }
        ("brilliance_hz", _) => {
            format!("Its shine ends at {value}. Over {} is bright for your wish.", limit_of(2))
        }
        ("breaking_share", _) => {
            format!("It uses {value} of its strength. Over {} is hard work.", limit_of(2))
        }
        ("drift_moisture_cent", _) => {
            format!("Moist and dry air move it: {value}. One hears {}.", limit_of(1))
        }
        ("drift_body_cent", _) => format!("The body moves it: {value}. One hears 3 to 5."),
        ("torsion_impedance_ratio", _) => {
            format!(
                "How stiff it is to twist, against swinging: {value}. Wound strings stay under {}.",
                limit_of(2)
            )
        }
        ("attack_m_s2_n", _) => {
            format!("How briskly it starts: {value}. Under {} is slow here.", limit_of(2))
        }
        ("wolf", _) => format!("Least bow force at the wolf, as a share of the greatest: {value}."),
        ("outer_diameter_m", _) => format!("It is {value} thick. Under {} cuts.", limit_of(1)),
        (other, _) => format!("{}: {value}.", super::property::name(other)),
    }
}

/// Whose number it is, where the complaint is about the whole set.
#[must_use]
pub fn whose(n: &CauseNumber, finding: &Finding, fit: &Fit) -> String {
    // An age is as a rule that of the whole set.
    let one_of = finding.string.is_none() && n.property != "age_months";
    let name = names(fit).get(n.string).cloned().filter(|_| one_of);
    name.map_or_else(String::new, |name| format!("The {name}: "))
}

fn months(months: f64) -> String {
    let text = units::fixed(months, i32::from(months < 1.95));
    let text = text.strip_suffix(".0").unwrap_or(&text).to_owned();
    let plural = if text == "1" { "month" } else { "months" };
    format!("{text}{}{plural}", units::SPACE)
}

/// What becomes of a string that is not new; none for a new one.
#[must_use]
pub fn standing(key: &str) -> Option<&'static str> {
    match key {
        "kept" => Some("stays"),
        "not-judged" => Some("not judged"),
        _ => None,
    }
}

/// The complaints in one line, for paper: each with what to look at first.
#[must_use]
pub fn on_paper(fit: &Fit) -> Vec<String> {
    let line = |finding: &Finding| {
        let first = finding.causes.first()?;
        let (what, advice) = cause(&first.cause);
        Some(format!("{}: {} {advice}", complaint(finding, fit), lower(what)))
    };
    fit.verdict.findings.iter().filter_map(line).collect()
}

/// A sentence as the second part of another.
fn lower(sentence: &str) -> String {
    let mut chars = sentence.chars();
    chars.next().map_or_else(String::new, |first| first.to_lowercase().chain(chars).collect())
}

/// Facts that led to the answer, as sentences.
#[must_use]
pub fn reasons(fit: &Fit) -> Vec<String> {
    fit.verdict.because.iter().filter_map(|key| because(key)).map(capital).collect()
}
