//! How sure a set is, and what would change it: the phrases, and what must be true of the two replies.

use serde_json::Value;

use crate::heard::{Agrees, Heard, capital, family, list, names, read, real, small, text};
use crate::phrases::{Phrase, UNKNOWN};
use crate::reader::judge;
use crate::vocabulary::{LIKELY, PROPERTIES, WISHES};

/// What rests on numbers fitted to the simulation, and how well they rank strings to which they were not: over all, and
/// over those of one place. From the model's book, *Answer*.
const FITTED: [(&str, f64, f64); 3] =
    [("response", 0.99, 0.83), ("bow-room", 0.92, 0.85), ("ring", 0.99, 0.99)];

/// Sentences about how sure a set is.
#[rustfmt::skip]
pub(crate) const OF_SURE: &[Phrase] = &[
    ("How sure: {~}", |h| { let said = h.hole(0).to_owned(); judge(h, &said) }),
    ("Would change it first: {~}", |h| { let said = h.hole(0).to_owned(); judge(h, &said) }),
    ("These kinds of string are very likely the best for you.", |h| { level(h, false)?; chosen(h, "very likely") }),
    ("These kinds of string are likely the best for you.", |h| { level(h, false)?; chosen(h, "likely") }),
    ("The first comes out ahead nearly every time, but only a little: if one cannot be had, take the other.", |h| { level(h, true)?; chosen(h, "very likely") }),
    ("The first comes out ahead most of the time, but only a little: if one cannot be had, take the other.", |h| { level(h, true)?; chosen(h, "likely") }),
    ("It is a close call.", |h| { h.tally.words += 1; holds(chosen_share(h)? < 0.65) }),
    ("Another set is as good a choice: {~}.", |h| {
        level(h, false)?;
        h.tally.words += 1;
        holds(chosen_share(h)? < 0.65 && real(&sure(h)["next"]["share"]["share"])? >= chosen_share(h)?)?;
        families(h.hole(0), &sure(h)["next"]["families"])
    }),
    ("As you answered it leads; meant a little otherwise, another may.", |h| {
        level(h, false)?;
        holds(chosen_share(h)? < 0.65)
    }),
    ("In {#} of 100 tries, with answers and numbers moved a little, these kinds come out best, give or take {#}.", |h| {
        h.is_number(0, hundred(&sure(h)["chosen"]["share"]))?;
        h.is_number(1, hundred(&sure(h)["chosen"]["error"]))
    }),
    ("The second set comes out best in {#} of 100.", |h| {
        level(h, true)?;
        h.is_number(0, hundred(&sure(h)["second"]["share"]))
    }),
    ("After these, most often best are {~}: in {#} of 100.", |h| {
        families(h.hole(0), &sure(h)["next"]["families"])?;
        h.is_number(1, hundred(&sure(h)["next"]["share"]["share"]))
    }),
    ("{~}: {~} in {#} of 100, else {~} in {#}; {~} gauge in {#} of 100.", |h| {
        let of = string_of(h, 5)?;
        h.is_number(2, hundred(&of["family"]["share"]))?;
        let own = h.hole(1).to_owned();
        let other = list(&of["families"]).iter().find(|f| family(text(&f["key"])) != own).ok_or("no other kind")?;
        holds(family(text(&other["key"])) == h.hole(3))?;
        h.is_number(4, hundred(&other["share"]))?;
        h.is_number(6, hundred(&of["gauge_class"]["share"]))
    }),
    ("{~}: {~} in {#} of 100, {~} gauge in {#} of 100.", |h| {
        let of = string_of(h, 3)?;
        h.is_number(2, hundred(&of["family"]["share"]))?;
        holds(list(&of["families"]).iter().skip(1).all(|f| real(&f["share"]).is_ok_and(|s| s < 0.005)))?;
        h.is_number(4, hundred(&of["gauge_class"]["share"]))
    }),
    ("{~}: {~}, {~}; {~} gauge, {~}.", |h| {
        let of = string_of(h, 3)?;
        for (hole, what) in [(2, "family"), (4, "gauge_class")] {
            let said = h.hole(hole).to_owned();
            h.on(&LIKELY[..3], &said, real(&of[what]["share"])?.max(0.35))?;
        }
        Ok(())
    }),
    ("{#} worlds, each a draw of every constant and one way in which the answers can be meant; the best set of the finalists is found anew in each, exactly.", |h| {
        h.is_number(0, real(&sure(h)["worlds"]))
    }),
    ("No single answer would change the kind or the gauge of a string.", |h| {
        holds(sure(h)["turned"] == 0 && list(&sure(h)["turning_points"]).is_empty())
    }),
    ("We changed {#} answers and weights, one at a time.", |h| h.is_number(0, real(&sure(h)["tried"]))),
    ("Some answers might, but we ran out of time to make sure of any.", |h| {
        holds(sure(h)["turned"] != 0 && list(&sure(h)["turning_points"]).is_empty())
    }),
    ("Wished one step {~} (from {#} to {#} on the scale, {#} is not enough): {~}.", |h| wish(h, None, 0, Some((1, 2, Some(3))), 4)),
    ("Wished one step {~} (from {#} to {#} on the scale): {~}.", |h| wish(h, None, 0, Some((1, 2, None)), 3)),
    ("Wished one step {~}: {~}.", |h| wish(h, None, 0, None, 1)),
    ("Wished {#} steps {~} (from {#} to {#} on the scale, {#} is not enough): {~}.", |h| wish(h, Some(0), 1, Some((2, 3, Some(4))), 5)),
    ("Wished {#} steps {~} (from {#} to {#} on the scale): {~}.", |h| wish(h, Some(0), 1, Some((2, 3, None)), 4)),
    ("Wished {#} steps {~}: {~}.", |h| wish(h, Some(0), 1, None, 2)),
    ("If “{~}” counted for more ({#} in place of {#}, {#} is not enough): {~}.", |h| weight(h, true, Some((1, 2, Some(3))), 4)),
    ("If “{~}” counted for more ({#} in place of {#}): {~}.", |h| weight(h, true, Some((1, 2, None)), 3)),
    ("If “{~}” counted for more: {~}.", |h| weight(h, true, None, 1)),
    ("If “{~}” counted for less ({#} in place of {#}, {#} is not enough): {~}.", |h| weight(h, false, Some((1, 2, Some(3))), 4)),
    ("If “{~}” counted for less ({#} in place of {#}): {~}.", |h| weight(h, false, Some((1, 2, None)), 3)),
    ("If “{~}” counted for less: {~}.", |h| weight(h, false, None, 1)),
    ("At an a′ of {#} Hz in place of {#} Hz: {~}.", |h| {
        let point = point(h, 2, |p| p["answer"] == "a4_hz")?;
        h.is_number(0, real(&point["turns_at"]))?;
        h.is_number(1, real(&point["from"]))
    }),
    ("If it mattered in {~}: {~}.", |h| {
        let point = point(h, 1, |p| p["answer"] == "concert_days")?;
        let said = h.hole(0).to_owned();
        h.days(&said, real(&point["turns_at"])?)
    }),
    ("If this were so: {~}: {~}.", |h| flag(h, true)),
    ("If this were not so: {~}: {~}.", |h| flag(h, false)),
    // Reasons at another depth.
    ("{~} than the other string, which is nearer to what you want.", |h| { let said = h.hole(0).to_owned(); plainly(h, &said, Some(true)) }),
    ("{~} than the other string, which is further from what you want.", |h| { let said = h.hole(0).to_owned(); plainly(h, &said, Some(false)) }),
    ("Fitters find such cores steadier than those of the other string.", |h| h.judges("fitters-judgement", true).map(drop)),
    ("Fitters find such cores less steady than those of the other string.", |h| h.judges("fitters-judgement", false).map(drop)),
    ("Fitters have seen cores that hold their pitch better.", |h| {
        h.tally.comparatives += 1;
        let reason = h.reason("fitters-judgement")?;
        holds(real(&reason["worth"])? < real(&reason["rival_worth"])?)
    }),
    ("{~} than the other string.", |h| { let said = h.hole(0).to_owned(); plainly(h, &said, None) }),
    ("That is {#} % more; {#} % is about the least that is noticed.", |h| noticed(h, |ratio| (ratio - 1.0) * 100.0)),
    ("That is {#} % less; {#} % is about the least that is noticed.", |h| noticed(h, |ratio| (1.0 - ratio) * 100.0)),
    ("That is {#} times as much; {#} % is about the least that is noticed.", |h| noticed(h, |ratio| ratio)),
    ("The other has {#} times as much; {#} % is about the least that is noticed.", |h| noticed(h, |ratio| 1.0 / ratio)),
    ("That is {#} cents more; 5 cents are about the least that is noticed.", |h| cents(h, 1.0)),
    ("That is {#} cents less; 5 cents are about the least that is noticed.", |h| cents(h, -1.0)),
    ("Of the score, {~} carries {#} here, by a weight of {#}.", |h| {
        let key = WISHES.iter().find(|(_, name)| *name == h.hole(0)).ok_or("which wish?")?.0;
        let gain = real(&h.reason(key)?["gain"])?;
        h.is(1, gain)?;
        let all = list(&h.of_string()?["attributes"]);
        let weight = all.iter().find(|a| a["attribute"] == key).ok_or("it has no weight")?;
        h.is_number(2, real(&weight["weight"]))
    }),
    ("Over {#} strings that it was not fitted to, its ranks correlate with those of the simulation by {#}, over those of one place by {#}.", |h| {
        h.is(0, 300.0)?;
        let (all, place) = (read(h.hole(1))?, read(h.hole(2))?);
        let fitted = FITTED.iter().find(|f| all.is(f.1) && place.is(f.2)).ok_or("no fitted number ranks so")?;
        holds(list(&h.of_string()?["attributes"]).iter().any(|a| a["attribute"] == fitted.0))?;
        h.is(1, fitted.1)?;
        h.is(2, fitted.2)
    }),
    ("{~}: “{~}” in place of “{~}”: {~}.", |h| answer(h, Some(2), 3)),
    ("{~}: “{~}”: {~}.", |h| answer(h, None, 2)),
];

fn holds(fits: bool) -> Agrees {
    if fits { Ok(()) } else { Err("the reply says otherwise".to_owned()) }
}

fn sure<'a>(h: &Heard<'a>) -> &'a Value {
    &h.reply["certainty"]
}

fn chosen_share(h: &Heard) -> Result<f64, String> {
    real(&sure(h)["chosen"]["share"])
}

fn hundred(share: &Value) -> Result<f64, String> {
    real(share).map(|share| share * 100.0)
}

fn chosen(h: &mut Heard, said: &str) -> Agrees {
    let share = chosen_share(h)?;
    h.likely(said, share)
}

/// Whether the set leads by so little that two are shown as level.
fn level(h: &Heard, level: bool) -> Agrees {
    holds(h.set()["close_call"] == level)
}

/// Every family of a list is named, and no other.
fn families(said: &str, keys: &Value) -> Agrees {
    let said = format!(" {said}");
    for (key, name) in crate::vocabulary::FAMILIES {
        let has = list(keys).iter().any(|k| k == key);
        if has != said.contains(&format!(" {name}")) {
            return Err(format!("{name} is {}", if has { "left out" } else { "not there" }));
        }
    }
    Ok(())
}

/// How sure the string is that a sentence names first, with its family after that and its gauge in another hole.
fn string_of<'a>(h: &Heard<'a>, gauge: usize) -> Result<&'a Value, String> {
    let name = h.hole(0);
    let i = names(h.set()).iter().position(|n| n == name).ok_or_else(|| UNKNOWN.to_owned())?;
    let string = &h.set()["strings"][i];
    if family(text(&string["report"]["family"])) != h.hole(1) {
        return Err(UNKNOWN.to_owned());
    }
    holds(string["shopping"]["gauge_class"] == h.hole(gauge))?;
    let of = &sure(h)["strings"][i];
    if of.is_null() { Err("nobody asked how sure it is".to_owned()) } else { Ok(of) }
}

/// The turning point that a sentence tells of, whose consequence stands in a hole.
fn point<'a>(
    h: &mut Heard<'a>,
    then: usize,
    is: impl Fn(&Value) -> bool,
) -> Result<&'a Value, String> {
    let all = list(&sure(h)["turning_points"]);
    let point = all.iter().find(|p| is(p)).ok_or("the reply knows no such turning point")?;
    consequence(h, then, &point["strings"])?;
    Ok(point)
}

/// What the strings would be: each with all that changes in it.
fn consequence(h: &mut Heard, hole: usize, strings: &Value) -> Agrees {
    let said = h.hole(hole).to_owned();
    let all = names(h.set());
    let mut left = list(strings).len();
    // Parts begin with an article: “the A and E would be …”.
    for part in said.split("the ").filter(|part| !part.is_empty()) {
        let part = part.trim_end_matches(" and ").trim_end_matches(", ");
        let (who, what) = part.split_once(" would be ").ok_or("would be what?")?;
        for name in who.split(", ").flat_map(|some| some.split(" and ")) {
            let i = all.iter().position(|n| n == name).ok_or(format!("which string is {name}?"))?;
            let turned = list(strings)
                .iter()
                .find(|t| t["string"] == i)
                .ok_or(format!("{name} stays as it is"))?;
            h.tally.words += 1;
            let gauge = text(&turned["gauge_class_then"]);
            let kind = family(text(&turned["family_then"]));
            let (kind_turns, gauge_turns) = (
                turned["family"] != turned["family_then"],
                turned["gauge_class"] != turned["gauge_class_then"],
            );
            let expected = match (kind_turns, gauge_turns) {
                (true, false) => kind.to_owned(),
                (false, true) => format!("of {gauge} gauge"),
                _ => format!("{kind} of {gauge} gauge"),
            };
            if what != expected {
                return Err(format!("{name} would be {expected}, not {what}"));
            }
            left = left.checked_sub(1).ok_or("a string too many")?;
        }
    }
    if left == 0 { Ok(()) } else { Err(format!("{left} more strings would change")) }
}

/// A step of a wish towards either end, as the page says it.
const STEPS: [(&str, &str, &str); 5] = [
    ("wishes.colour", "more colour", "steadier"),
    ("wishes.brightness", "brighter", "darker"),
    ("wishes.power", "more powerful", "gentler"),
    ("wishes.feel", "firmer", "softer"),
    ("wishes.response", "quicker", "broader"),
];

/// From, to and the last value that holds, by their holes.
type Figures = Option<(usize, usize, Option<usize>)>;

fn figures(h: &mut Heard, point: &Value, holes: Figures, to_first: bool) -> Agrees {
    let Some((one, other, holds_at)) = holes else { return Ok(()) };
    let (from, to) = if to_first { (other, one) } else { (one, other) };
    h.is_number(from, real(&point["from"]))?;
    h.is_number(to, real(&point["turns_at"]))?;
    match holds_at {
        Some(hole) => h.is_number(hole, real(&point["holds_at"])),
        None => holds(point["holds_at"] == point["from"]),
    }
}

fn wish(h: &mut Heard, steps: Option<usize>, more: usize, told: Figures, then: usize) -> Agrees {
    let said = h.hole(more).to_owned();
    let (key, up) = STEPS
        .iter()
        .find_map(|(key, up, down)| {
            if said == *up { Some((*key, true)) } else { (said == *down).then_some((*key, false)) }
        })
        .ok_or_else(|| UNKNOWN.to_owned())?;
    let point = point(h, then, |p| p["answer"] == key)?;
    h.tally.comparatives += 1;
    let by = real(&point["turns_at"])? - real(&point["from"])?;
    holds((by > 0.0) == up)?;
    // A step is half a point of the scale; at its end there may be less than one left.
    let count = (by.abs() / 0.5).round().max(1.0);
    match steps {
        Some(hole) => h.is(hole, count)?,
        None => holds(count < 1.5)?,
    }
    figures(h, point, told, false)
}

/// What the weights are called where they are set.
const WEIGHTS: [(&str, &str); 15] = [
    ("weights.feel", "feel under the hand"),
    ("weights.elasticity", "elastic core"),
    ("weights.settling", "settling fast"),
    ("weights.drift", "computed drift"),
    ("weights.fitters-judgement", "steadiness, as fitters judge it"),
    ("weights.response", "quick response"),
    ("weights.bow-room", "room for the bow"),
    ("weights.power", "power"),
    ("weights.brightness", "brightness as wished"),
    ("weights.ring", "ring of a plucked note"),
    ("weights.durability", "reserve to breaking"),
    ("weights.care", "bears hands and sweat"),
    ("weights.price", "price"),
    ("weights.availability", "easy to get"),
    ("weights.tuning", "easy to tune"),
];

fn weight(h: &mut Heard, more: bool, told: Figures, then: usize) -> Agrees {
    let said = h.hole(0).to_owned();
    let key = WEIGHTS.iter().find(|(_, name)| *name == said).ok_or_else(|| UNKNOWN.to_owned())?.0;
    let point = point(h, then, |p| p["answer"] == key)?;
    h.tally.comparatives += 1;
    holds((real(&point["turns_at"])? > real(&point["from"])?) == more)?;
    figures(h, point, told, true)
}

/// Whether a figure with such digits may stand for a value.
fn prints(printed: &str, value: f64) -> bool {
    value > 0.0 && read(printed).is_ok_and(|figure| figure.is(value))
}

/// The least that is noticed of each property, in per cent (the ground rules: a level 1 dB, a centroid 7.5 %, damping
/// 5 %; the others as the model's book has them).
const LEAST: [(&str, f64); 9] = [
    ("impedance_kg_s", 12.2),
    ("brilliance_hz", 7.5),
    ("lateral_stiffness_n_m", 5.0),
    ("breaking_share", 5.0),
    ("rings_on_s", 5.0),
    ("stretch", 10.0),
    ("speaks_s", 10.0),
    ("peg_cent_deg", 10.0),
    ("settling_d", 30.0),
];

/// One of the string's reasons, or costs, is about a difference of that size.
fn noticed(h: &mut Heard, size: fn(f64) -> f64) -> Agrees {
    h.tally.figures += 2;
    h.tally.comparatives += 1;
    let (by, least) = (h.hole(0).to_owned(), h.hole(1).to_owned());
    let is = |reason: &Value| {
        let c = &reason["comparison"];
        let known = LEAST.iter().find(|(key, _)| c["property"] == *key);
        let ratio = c["this"].as_f64().zip(c["other"].as_f64()).map(|(this, other)| this / other);
        known.zip(ratio).is_some_and(|((_, noticed), ratio)| {
            prints(&least, *noticed) && prints(&by, size(ratio))
        })
    };
    if h.weighed()?.iter().any(is) {
        Ok(())
    } else {
        Err(format!("no reason is about {by} at {least} % noticed"))
    }
}

fn cents(h: &mut Heard, side: f64) -> Agrees {
    let c = &h.reason("drift")?["comparison"];
    h.tally.comparatives += 1;
    let by = real(&c["this"])? - real(&c["other"])?;
    h.is(0, by * side)
}

/// A reason in plain words: one of the string's comparisons says that word.
fn plainly(h: &mut Heard, said: &str, wanted: Option<bool>) -> Agrees {
    let said = small(said);
    for reason in h.weighed()? {
        let comparison = &reason["comparison"];
        let key = text(&comparison["property"]);
        if !PROPERTIES.iter().any(|p| p.key == key && (p.more == said || p.less == said)) {
            continue;
        }
        h.word(&said, comparison, key)?;
        let two_sided = ["feel", "power", "brightness"].contains(&text(&reason["attribute"]));
        holds(two_sided == wanted.is_some())?;
        h.computed(comparison)?;
        return h.better(reason, wanted.unwrap_or(!h.cost));
    }
    Err(UNKNOWN.to_owned())
}

fn flag(h: &mut Heard, so: bool) -> Agrees {
    let key = match h.hole(0) {
        "The hand hurts" => "hand_pain",
        "Sweat eats strings" => "acid_sweat",
        _ => return Err(UNKNOWN.to_owned()),
    };
    let point = point(h, 1, |p| p["answer"] == key)?;
    holds(point["turns_at"] == so)
}

/// A question that takes a word, what it is called, and its words.
type Question = (&'static str, &'static str, &'static [(&'static str, &'static str)]);

/// All of them.
#[rustfmt::skip]
const QUESTIONS: [Question; 7] = [
    ("room", "Where it lives", &[("steady", "The same all year"), ("seasonal", "Heated winters, warm summers"), ("damp", "Damp"), ("dry", "Dry"), ("travelling", "It travels")]),
    ("level", "Level", &[("beginner", "Beginner"), ("student", "Student"), ("advanced", "Advanced"), ("professional", "Professional")]),
    ("budget", "Budget", &[("modest", "Little"), ("middle", "The usual"), ("any", "Whatever is best")]),
    ("music", "Music", &[("classical", "Classical"), ("early", "Early music"), ("folk", "Folk"), ("jazz", "Jazz")]),
    ("pegs", "Pegs", &[("friction", "Wooden pegs"), ("geared", "Geared pegs"), ("machine", "Machine heads")]),
    ("tuners", "Fine tuners", &[("none", "Nowhere"), ("top", "Top string"), ("all", "Every string")]),
    ("who_tunes", "Who tunes", &[("player", "The player"), ("adult", "An adult"), ("nobody", "Nobody")]),
];

fn answer(h: &mut Heard, from: Option<usize>, then: usize) -> Agrees {
    let (key, _, words) = QUESTIONS
        .iter()
        .find(|(_, name, _)| *name == capital(h.hole(0)))
        .ok_or_else(|| UNKNOWN.to_owned())?;
    let word = |said: &str| -> Result<&str, String> {
        let found = words.iter().find(|(_, label)| *label == said);
        found.map(|(word, _)| *word).ok_or_else(|| format!("“{said}” answers nothing"))
    };
    let to = word(h.hole(1))?;
    let from = from.map(|hole| word(h.hole(hole))).transpose()?;
    let point = point(h, then, |p| p["answer"] == *key)?;
    holds(point["turns_at"] == to && point["from"].as_str() == from)?;
    Ok(())
}
