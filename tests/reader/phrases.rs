//! The phrases that the page may say, and what must be true of the reply when it does.
//!
//! In a phrase `{#}` stands for a figure, `{-}` for a range or a figure, and `{~}` for any words. The first phrase
//! that fits a sentence judges it, so narrow ones stand before wide ones.

use serde_json::Value;

use crate::heard::{
    Agrees, Heard, called, capital, counts, family, list, material, named, names, number, property,
    read, real, rung, small, text, wish,
};
use crate::vocabulary::{DOUBT_ABOUT, FAMILIES, GOES, LIKELY, LIMITS, LOAD, PROPERTIES, STEPS};

/// What must be true.
pub(crate) type Check = fn(&mut Heard) -> Agrees;
/// A phrase and its check.
pub(crate) type Phrase = (&'static str, Check);

/// Phrases that are whole lines: they take several sentences together.
pub(crate) const LINES: &[Phrase] =
    &[("Cross-section of {~}, to scale, {#} mm across. Core: {~}", portrait)];

/// Sentences of the set page, the string cards and both papers.
#[rustfmt::skip]
pub(crate) const OF_FIT: &[Phrase] = &[
    // The answer.
    ("Nothing fits: every set for this {~} pulls harder than it should.", |h| {
        holds(h.set().is_null() && list(&h.reply["obstacles"]).iter().all(|o| o["note"].is_null()))
    }),
    ("Nothing fits: no string that is made meets every wish for the {~} of this {~}.", |h| holds(h.set().is_null())),
    ("Two sets would suit your {~} about equally: {~}; or {~}.", |h| {
        h.tally.words += 1;
        holds(h.set()["close_call"] == true)?;
        families(h.hole(1), &first(h.set()))?;
        families(h.hole(2), &second(h.set()))
    }),
    ("Your {~} wants {~}, and either {~}.", |h| holds(h.set()["close_call"] == true)),
    ("Your {~} wants either {~}.", |h| holds(h.set()["close_call"] == true)),
    ("Your {~} wants {~}.", |h| families(h.hole(1), &first(h.set()))),
    ("These two come out about level.", |h| { h.tally.words += 1; holds(h.set()["close_call"] == true) }),
    ("The next best set, {~}, comes out {#} % behind.", |h| {
        h.tally.words += 1;
        holds(h.set()["close_call"] == false)?;
        families(h.hole(0), &second(h.set()))?;
        h.is_number(1, real(&h.set()["lead"]).map(|lead| (lead - 1.0) * 100.0))
    }),
    ("On the scale below the first set leads the second by {#} %, which is no difference to speak of.", |h| {
        h.tally.words += 1;
        holds(h.set()["close_call"] == true)?;
        h.is_number(0, real(&h.set()["lead"]).map(|lead| (lead - 1.0) * 100.0))
    }),
    ("On the scale below neither set leads the other.", |h| holds((real(&h.set()["lead"])? - 1.0).abs() < 0.0005)),
    ("Another set, {~}, comes out about level.", |h| {
        h.tally.words += 1;
        families(h.hole(0), &second(h.set()))?;
        holds(h.set()["close_call"] == true)
    }),
    ("By itself nothing speaks for it that can be computed or judged; it suits the set as a whole.", |h| {
        holds(list(&h.of_string()?["reasons"]).is_empty())
    }),
    ("For it ask for {~}.", counter_of_other),
    ("And for {~}.", counter_of_other),
    ("Its other strings are as above.", |h| {
        // Whatever of it is not asked for otherwise: a string with the same family, outer metal and gauge class.
        let (set, second) = (h.set(), &h.set()["runner_up"]);
        let (own, shopping) = (list(&second["strings"]), list(&second["shopping"]));
        let alike = |place: usize| {
            own[place].is_null()
                || ["family", "outer_metal", "gauge_class"].iter().all(|word| {
                    shopping[place][*word] == set["strings"][place]["shopping"][*word]
                })
        };
        holds((0..own.len()).any(alike))
    }),
    ("{~} {~}, {~}, a′ at {#} Hz, {~} set-up", |h| { context(h, 0)?; h.is_number(3, real(&h.problem()["a4_hz"])) }),
    ("We took for granted: {~}.", assumed),

    // The load.
    ("The load is {~}", |h| { let said = h.hole(0).to_owned(); load(h, &said) }),
    ("{#} N ({#} kg, {#} lb), within {#} to {#} N.", |h| {
        let sum = &h.set()[if h.place.heading == "All strings together" { "total_tension_n" } else { "downforce_n" }];
        h.force(0, real(&sum["value"])?)?;
        h.is_number(3, real(&sum["low"]))?;
        h.is_number(4, real(&sum["high"]))
    }),
    ("Usual is {#} to {#} N.", |h| usual_load(h, 0)),
    ("For an old or light instrument we stay under {#} N.", |h| h.is_number(0, real(&h.problem()["most_load_n"]))),
    ("Total tension {#} to {#} N; usual {#} to {#} N", |h| {
        let sum = &h.set()["total_tension_n"];
        h.is_number(0, real(&sum["low"]))?;
        h.is_number(1, real(&sum["high"]))?;
        usual_load(h, 2)
    }),
    ("Force on the bridge {#} to {#} N", |h| {
        let sum = &h.set()["downforce_n"];
        h.is_number(0, real(&sum["low"]))?;
        h.is_number(1, real(&sum["high"]))
    }),
    ("All strings together pull with {#} N ({#} kg, {#} lb), {~}.", |h| {
        h.force(0, real(&h.set()["total_tension_n"]["value"])?)?;
        let said = h.hole(3).to_owned();
        load(h, &said)
    }),
    ("They press on the bridge with {#} N ({#} kg, {#} lb).", |h| h.force(0, real(&h.set()["downforce_n"]["value"])?)),
    ("The steps from string to string are the usual ones", |h| {
        holds(list(&h.set()["steps"]).iter().all(|s| step(s).is_ok_and(|r| rung(STEPS, r) == "as usual")))
    }),
    ("From {~} the tension falls {~} than usual", steps),

    // Reasons and costs.
    ("{~}: it stretches by {#} % at pitch, the other by {#} %.", |h| h.compares("elasticity", "stretch", 0, 1, 2)),
    ("{~}: after {#} days, the other after {#} days.", |h| h.compares("settling", "settling_d", 0, 1, 2)),
    ("{~} in this room: {#} cents, the other {#} cents.", |h| h.compares("drift", "drift_cent", 0, 1, 2)),
    ("{~}: within {#} s, the other within {#} s.", |h| h.compares("response", "speaks_s", 0, 1, 2)),
    ("{~}: {#} dB {~} between the lightest and the hardest clean stroke.", |h| {
        let comparison = &h.compared("bow-room", "bow_room_db", 0)?["comparison"];
        let apart = real(&comparison["this"])? - real(&comparison["other"])?;
        h.is(1, apart.abs())?;
        holds(h.hole(2) == if apart > 0.0 { "more" } else { "less" })
    }),
    ("{~} under the hand, and {~} what is wanted: {#} N/mm, the other {#} N/mm.", |h| {
        h.compares("feel", "lateral_stiffness_n_m", 0, 2, 3)?;
        h.wanted("feel", 1)
    }),
    ("{~}, and {~} what is wanted: {#} g/s at the bridge, the other {#} g/s.", |h| {
        h.compares("power", "impedance_kg_s", 0, 2, 3)?;
        h.wanted("power", 1)
    }),
    ("{~}, and {~} what is wanted: its shine ends at {#} kHz, that of the other at {#} kHz, both above hearing.", |h| {
        h.compares("brightness", "brilliance_hz", 0, 2, 3)?;
        holds(h.figure(2)?.printed() >= 20.0 && h.figure(3)?.printed() >= 20.0)?;
        h.wanted("brightness", 1)
    }),
    ("{~}, and {~} what is wanted: its shine ends at {#} kHz, that of the other at {#} kHz.", |h| {
        h.compares("brightness", "brilliance_hz", 0, 2, 3)?;
        h.wanted("brightness", 1)
    }),
    ("{~}: a degree of peg changes it by {#} cents, the other by {#} cents.", |h| h.compares("tuning", "peg_cent_deg", 0, 1, 2)),
    ("{~}: {#} s until a plucked note has faded, the other {#} s.", |h| h.compares("ring", "rings_on_s", 0, 1, 2)),
    ("{~}: at {#} % of its strength, the other at {#} %.", |h| {
        h.compares("durability", "breaking_share", 0, 1, 2)?;
        // Without a word of wear, reserve alone must speak for the string that is said to be better off.
        holds((small(h.hole(0)) == "further from breaking") != h.cost)
    }),
    ("Easier to buy: it is made every day, the other only sometimes.", |h| {
        h.judges("availability", true)?;
        holds(h.of_string()?["grade"] == "everyday")
    }),
    ("Harder to buy: it is made only sometimes, and may have to be ordered.", |h| {
        h.judges("availability", false)?;
        holds(h.of_string()?["grade"] == "sometimes")
    }),
    ("Its materials cost less.", |h| h.judges("price", true).map(drop)),
    ("Its materials cost more.", |h| h.judges("price", false).map(drop)),
    ("Steadier by what fitters say of such cores: {#} of 100, the other {#}.", |h| fitters(h, true)),
    ("Less steady by what fitters say of such cores: {#} of 100, the other {#}.", |h| fitters(h, false)),
    ("Fitters give such cores {#} of 100 for holding their pitch.", |h| {
        let worth = real(&h.reason("fitters-judgement")?["worth"])?;
        h.is(0, worth * 100.0)
    }),
    ("Better in {~}.", |h| { let key = wish_of(h.hole(0))?; h.judges(key, true).map(drop) }),
    ("Less good in {~}.", |h| { let key = wish_of(h.hole(0))?; h.judges(key, false).map(drop) }),
    ("Its weakest point is its reserve: in tune it is at {~} of its strength.", |h| weakest(h, "durability", "breaking_share")),
    ("Its weakest point is elasticity: it stretches by only {~} at pitch.", |h| weakest(h, "elasticity", "stretch")),
    ("Its weakest point is {~}.", |h| { let key = wish_of(h.hole(0))?; h.reason(key).map(drop) }),

    // What it is, and the counter.
    ("{~}, {#} mm ({#} thousandths of an inch).", |h| { let metres = metres(h, "outer_diameter_m")?; h.gauge(1, metres) }),
    ("It is made only sometimes for this place.", |h| holds(h.of_string()?["grade"] == "sometimes")),
    ("“I would like {~}.”", |h| { let said = h.hole(0).to_owned(); counter(h, &said) }),
    ("On the packet look for about {-} N ({-} kg, {-} lb) at {#} Hz and {#} mm of sounding length.", |h| {
        let shopping = &h.of_string()?["shopping"];
        let (low, high) = (real(&shopping["tension_n"][0])?, real(&shopping["tension_n"][1])?);
        h.spans(0, low, high)?;
        h.spans(1, low / crate::figure::KILOGRAM_N, high / crate::figure::KILOGRAM_N)?;
        h.spans(2, low / crate::figure::POUND_N, high / crate::figure::POUND_N)?;
        h.is_number(3, real(&shopping["pitch_hz"]))?;
        h.is_number(4, real(&shopping["sounding_length_m"]).map(|m| m * 1e3))
    }),
    ("In tune it pulls with {#} N ({#} kg, {#} lb).", |h| { let n = h.number("tension_n")?; h.force(0, n.value) }),
    ("It is {~} longer in tune than slack.", |h| { h.tally.comparatives += 1; of(h, 0, "stretch") }),
    ("How much it stretches is {~}.", |h| of(h, 0, "stretch")),
    ("In tune it uses {~} of the strength of its core.", |h| of(h, 0, "breaking_share")),
    ("How near it is to breaking is {~}.", |h| of(h, 0, "breaking_share")),
    ("A degree of peg moves it by {~} cents; it has a fine tuner.", |h| { holds(h.of_string()?["fine_tuner"] == true)?; peg(h) }),
    ("A degree of peg moves it by {~} cents.", |h| { holds(h.of_string()?["fine_tuner"] == false)?; peg(h) }),
    ("It has settled after {~}.", |h| of(h, 0, "settling_d")),
    ("Days until it has settled: {~}.", |h| of(h, 0, "settling_d")),
    ("How far its pitch wanders as this room changes: {~}.", |h| of(h, 0, "drift_cent")),
    ("{~} strings are made here from {#} to {#} mm across, for {#} to {#} N, stretching {#} to {#} %.", |h| {
        let bands = &h.of_string()?["bands"];
        holds(small(h.hole(0)) == family(text(&h.report()?["family"])))?;
        for (i, (key, factor)) in [("gauge_m", 1e3), ("tension_n", 1.0), ("stretch", 1e2)].into_iter().enumerate() {
            h.is_number(2 * i + 1, real(&bands[key][0]).map(|x| x * factor))?;
            h.is_number(2 * i + 2, real(&bands[key][1]).map(|x| x * factor))?;
        }
        Ok(())
    }),
    ("Core: {~}.", |h| { let said = h.hole(0).to_owned(); core(h, &said, &h.report()?["construction"]) }),
    ("Wound with: {~}.", |h| { let said = h.hole(0).to_owned(); windings(h, &said, &h.report()?["construction"]) }),
    ("One part in {#} of the filaments is drawn; the rest is alike.", |_| Ok(())),

    // The balance of elasticity and steadiness.
    ("For the {~}, stretch up to {#} % costs next to no steadiness; from there to {#} % it costs {#} of 100{~}", |h| balance(h, true)),
    ("For the {~}, more stretch costs steadiness: from {#} % to {#} % it falls by {#} of 100{~}", |h| {
        h.tally.comparatives += 1;
        balance(h, false)
    }),
    ("{~} strings overlap in steadiness: the kind alone does not decide it.", overlap),
    ("Today’s {~} was taken for {~} string, the most usual one: it stretches {#} % and holds its pitch {#} of 100.", |h| {
        let today = &h.of_string()?["today_point"];
        h.is_number(2, real(&today["stretch"]).map(|x| x * 100.0))?;
        h.is_number(3, real(&today["steadiness"]).map(|x| x * 100.0))
    }),

    // Doubt.
    ("{~} decides {~} of the doubt about {~}.", doubt),

    // Days.
    ("The {~} has very likely settled {~}.", |h| { settled(h, 1, 0.85)?; settled(h, 1, 0.65) }),
    ("The {~} has likely settled {~}, but not even after {#} days very likely.", |h| {
        settled(h, 1, 0.65)?;
        let nights = list(&h.report()?["nights"]);
        h.is(2, nights.len() as f64)?;
        holds(nights.iter().all(|n| real(&n["chance"]).is_ok_and(|c| c < 0.85)))
    }),
    ("The {~} has likely settled {~}, very likely {~}.", |h| { settled(h, 1, 0.65)?; settled(h, 2, 0.85) }),
    ("That the {~} has settled within {#} days is {~}.", |h| {
        let nights = list(&h.report()?["nights"]);
        h.is(1, nights.len() as f64)?;
        holds(nights.iter().all(|n| real(&n["chance"]).is_ok_and(|c| c < 0.65)))?;
        let said = h.hole(2).to_owned();
        h.likely(&said, real(&nights[nights.len() - 1]["chance"])?)
    }),

    // Partials.
    ("Each of the first {#} partials of the {~} goes mostly {~}.", |h| {
        let partials = list(&h.report()?["partials"]);
        h.is(0, partials.len() as f64)?;
        holds(partials.iter().all(|p| called(&GOES, text(&p["most"])) == h.hole(2)))
    }),
    ("Of the first {#} partials of the {~}, {#} go mostly {~}.", |h| {
        let partials = list(&h.report()?["partials"]);
        h.is(0, partials.len() as f64)?;
        let count = |goes: &str| partials.iter().filter(|p| called(&GOES, text(&p["most"])) == goes).count();
        let most = count(h.hole(3));
        holds(GOES.iter().all(|(_, goes)| count(goes) <= most))?;
        h.is(2, most as f64)
    }),
    ("Of the {~}’s partials go {~}.", runs),
    ("How easily the bridge gives is little known, and all bars lengthen or shorten with it: the first is {~}.", |h| of(h, 0, "ring_s")),

    // The plan.
    ("Fit it {~} before it matters, {~} to be safe", |h| { fit_before(h) }),
    ("Fit the set {~} before it matters; {~} to be safe.", |h| { fit_before(h) }),
    ("You said it matters in {~}.", |h| {
        let (said, days) = (h.hole(0).to_owned(), real(&h.problem()["concert_days"])?);
        h.days(&said, days)
    }),
    ("{~}: It is tuned far from the note for which such strings are made, so less is known about it.", |h| beware(h, "far-from-usual-note")),
    ("{~}: It will not have settled by the day.", |h| beware(h, "not-settled-in-time")),
    ("It is tuned far from the note for which such strings are made, so less is known about it.", |h| beware(h, "far-from-usual-note")),

    // What counted.
    ("What counted most: {~}", |h| {
        let mut weights: Vec<(f64, &str)> = list(&h.problem()["weights"]).iter().map(|w| (w["weight"].as_f64().unwrap(), wish(text(&w["attribute"])))).collect();
        weights.sort_by(|a, b| b.0.total_cmp(&a.0));
        let said: Vec<&str> = weights.iter().take(3).map(|w| w.1).collect();
        holds(h.hole(0) == format!("{}, {} and {}", said[0], said[1], said[2]))
    }),
    ("{~} counts {#} %", |h| {
        let weights = list(&h.problem()["weights"]);
        let weight = |w: &Value| w["weight"].as_f64().ok_or("a weight without a number");
        let all: f64 = weights.iter().map(weight).sum::<Result<f64, _>>()?;
        let own = weights.iter().find(|w| capital(wish(text(&w["attribute"]))) == h.hole(0)).ok_or("no such wish")?;
        h.is(1, 100.0 * weight(own)? / all)
    }),
    ("{#} strings could be made for the {~}.", |h| h.is_number(0, real(&h.set()["searched"]["space"]))),
    ("Limits and bounds left {#} to be wound and weighed; {#} of them would do.", |h| {
        h.is_number(0, real(&h.set()["searched"]["wound"]))?;
        h.is_number(1, real(&h.set()["searched"]["inside"]))
    }),
    ("We could not check every string that could be made; another set could score up to {#} % higher.", |h| {
        holds(h.set()["proven"] == false)?;
        // Rounded up: a better set lies no further.
        let gap = real(&h.set()["optimality_gap"])?;
        h.is(0, (1000.0 * gap).ceil().max(1.0) / 10.0)
    }),
    ("We could not check every string that could be made; another set could score higher.", |h| {
        let set = h.set();
        holds(set["proven"] == false && real(&set["optimality_gap"])? >= 0.5)
    }),

    // Where nothing fits.
    ("Even the lightest set pulls with {#} N ({#} kg, {#} lb); the most we recommend here is {#} N ({#} kg, {#} lb).", |h| {
        let obstacle = list(&h.reply["obstacles"]).iter().find(|o| !o["lightest_n"].is_null()).ok_or("no load in the way")?;
        h.force(0, real(&obstacle["lightest_n"])?)?;
        h.force(3, real(&obstacle["most_n"])?)?;
        holds(real(&obstacle["lightest_n"])? > real(&obstacle["most_n"])?)
    }),

    // The papers.
    ("{~} {#} mm ({#} thousandths of an inch) for a {~}", |h| {
        let metres = metres(h, "outer_diameter_m")?;
        holds(h.hole(0) == format!("{} {}", capital(family(text(&h.report()?["family"]))), h.name))?;
        holds(h.hole(3) == format!("{} {}", text(&h.problem()["size"]), text(&h.problem()["instrument_name"])))?;
        h.gauge(1, metres)
    }),
    ("Setting: {~}.", setting),
    ("Sources: {~}.", |h| {
        let keys: Vec<String> = h.report()?["numbers"].as_object().unwrap().values().map(|q| text(&q["source"]).to_owned()).collect();
        let all = h.hole(0).to_owned();
        for (i, one) in all.split(", ").enumerate() {
            let (n, key) = one.split_once(' ').ok_or("a source without a number")?;
            h.reads(n, (i + 1) as f64)?;
            holds(keys.iter().any(|k| k == key))?;
        }
        Ok(())
    }),

    // Last, as they fit almost anything.
    ("{~}, {#} Hz", |h| { holds(h.place.within("context"))?; context(h, 0)?; h.is_number(1, real(&h.problem()["a4_hz"])) }),
    ("{#} s, {~}", |h| {
        // Beside the bar of a partial, whose number stands before it.
        let p = list(&h.report()?["partials"]).iter().find(|p| counts(&p["n"], h.before)).ok_or("of which partial?")?;
        holds(h.place.within("partials") && text(&p["most"]) == h.hole(1))?;
        h.is(0, real(&p["ring_s"])?)
    }),
    ("{#}", |h| {
        if h.place.within("range-bar") {
            let (figure, usual) = (h.figure(0)?, &h.problem()["usual_load_n"]);
            h.tally.figures += 1;
            return holds(figure.is(real(&usual[0])?) || figure.is(real(&usual[1])?));
        }
        // The number of a partial beside its bar.
        h.tally.figures += 1;
        let n = h.figure(0)?.printed();
        holds(h.place.within("partials") && list(&h.report()?["partials"]).iter().any(|p| p["n"].as_f64() == Some(n)))
    }),
    ("{~}: {~}", named_value),
    ("{~}.", |h| {
        // How it is made, under the heading that says of what.
        let said = small(h.hole(0));
        match h.place.heading.as_str() {
            "Core" if h.place.within("made") => core(h, &said, &h.report()?["construction"]),
            "Wound with" if h.place.within("made") => windings(h, &said, &h.report()?["construction"]),
            _ => Err(UNKNOWN.to_owned()),
        }
    }),
    ("{~}", |h| {
        // A word under the picture of the days.
        let said = h.hole(0).to_owned();
        if !h.place.within("nights") || !LIKELY.iter().any(|(_, word)| *word == said) {
            return Err(UNKNOWN.to_owned());
        }
        h.tally.words += 1;
        let chance = |n: &Value| n["chance"].as_f64().unwrap_or(f64::NAN);
        holds(list(&h.report()?["nights"]).iter().any(|n| rung(LIKELY, chance(n)) == said))
    }),
];

/// Sentences of the compare page.
#[rustfmt::skip]
pub(crate) const OF_PAIR: &[Phrase] = &[
    ("No difference we can compute", |h| { h.tally.words += 1; Ok(()) }),
    ("{~} against {~}: {~}", |h| {
        let families = [&h.reply["this"], &h.reply["other"]].map(|r| family(text(&r["family"])).to_owned());
        let called = if families[0] == families[1] { ["first".to_owned(), "second".to_owned()] } else { families };
        holds(small(h.hole(0)) == called[0] && h.hole(1) == called[1])?;
        let words = h.hole(2).to_owned();
        for word in words.split("; ") {
            let p = PROPERTIES.iter().find(|p| SIX.contains(&p.key) && (p.more == word || p.less == word)).ok_or_else(|| format!("“{word}” is of none of the six"))?;
            let by = called_by(p.key);
            let comparison = list(&h.reply["comparisons"]).iter().find(|c| c["property"] == by).ok_or("no comparison")?;
            h.word(word, comparison, p.key)?;
        }
        Ok(())
    }),
    ("First: {~}", |h| of_side(h, "this")),
    ("Second: {~}", |h| of_side(h, "other")),
    ("First {~}", |h| of_side(h, "this")),
    ("Second {~}", |h| of_side(h, "other")),
    ("The first: {~}.", |h| {
        let key = named(&h.place.heading).ok_or("of what?")?.key;
        let said = h.hole(0).to_owned();
        h.verdict(&said, key)
    }),
];

/// The six numbers that are drawn.
const SIX: [&str; 6] =
    ["tension_n", "stretch", "speaks_s", "brilliance_hz", "settling_d", "drift_cent"];

/// What a check says of a sentence that is not for it after all.
pub(crate) const UNKNOWN: &str = "no phrase fits";

fn called_by(key: &str) -> &str {
    called(&crate::vocabulary::DECIDED_BY, key)
}

fn holds(fits: bool) -> Agrees {
    if fits { Ok(()) } else { Err("it is not so in the reply".to_owned()) }
}

fn metres(h: &Heard, key: &str) -> Result<f64, String> {
    Ok(h.number(key)?.value / property(key).factor)
}

fn of(h: &mut Heard, hole: usize, key: &str) -> Agrees {
    let said = h.hole(hole).to_owned();
    let report = h.report()?;
    h.property(&said, report, key)
}

fn of_side(h: &mut Heard, side: &str) -> Agrees {
    let key = named(&h.place.heading).ok_or("of what?")?.key;
    let said = h.hole(0).to_owned();
    let report = &h.reply[side];
    h.property(&said, report, key)
}

/// A degree of peg: its unit is said in words.
fn peg(h: &mut Heard) -> Agrees {
    let said = format!("{} cents/degree", h.hole(0));
    let report = h.report()?;
    h.property(&said, report, "peg_cent_deg")
}

fn wish_of(name: &str) -> Result<&'static str, String> {
    crate::vocabulary::WISHES
        .iter()
        .find(|(_, called)| *called == name)
        .map(|(key, _)| *key)
        .ok_or_else(|| format!("“{name}” is no wish"))
}

/// The name of a property and its value.
fn named_value(h: &mut Heard) -> Agrees {
    let (name, said) = (h.hole(0).to_owned(), h.hole(1).to_owned());
    if h.place.within("obstacle") {
        let count = read(&said)?;
        h.tally.figures += 1;
        let fits = |l: &Value| {
            called(&LIMITS, text(&l["limit"])) == name
                && l["count"].as_f64().is_some_and(|c| count.is(c))
        };
        return holds(
            list(&h.reply["obstacles"]).iter().any(|o| list(&o["limits"]).iter().any(fits)),
        );
    }
    let key = named(&name).ok_or(UNKNOWN)?.key;
    let report = h.report()?;
    h.property(&said, report, key)
}

/// The reports of the chosen strings.
fn first(set: &Value) -> Vec<&Value> {
    list(&set["strings"]).iter().map(|string| &string["report"]).collect()
}

/// The reports of the second set's strings: where it has none of its own, those of the chosen ones.
fn second(set: &Value) -> Vec<&Value> {
    let own = list(&set["runner_up"]["strings"]).iter();
    own.zip(first(set)).map(|(own, chosen)| if own.is_null() { chosen } else { own }).collect()
}

/// Exactly the families of these strings are named.
fn families(said: &str, strings: &[&Value]) -> Agrees {
    for (key, name) in FAMILIES {
        let has = strings.iter().any(|string| string["family"] == key);
        let says = format!(" {said}").contains(&format!(" {name}"));
        if has != says {
            return Err(format!(
                "{name}: {}",
                if has { "it is left out" } else { "there is none" }
            ));
        }
    }
    Ok(())
}

fn context(h: &mut Heard, hole: usize) -> Agrees {
    let problem = h.problem();
    let of = |key: &str| text(&problem[key]).to_owned();
    let all: String = h.holes[hole..].join(" ");
    let begins = format!("{} {}", capital(&of("instrument_name")), of("size"));
    h.tally.figures += 1;
    holds(all.starts_with(&begins) && all.contains(&of("tuning_name")))
}

fn assumed(h: &mut Heard) -> Agrees {
    let said = h.hole(0).to_owned();
    let values: Vec<&str> =
        list(&h.problem()["assumed"]).iter().map(|a| text(&a["value"])).collect();
    let mut rest = said;
    // What was taken, word for word, and nothing else that has a figure.
    for value in &values {
        if value.chars().any(|c| c.is_ascii_digit()) {
            let value = value.replace('\u{a0}', " ");
            if !rest.contains(&value) {
                return Err(format!("it does not say {value}"));
            }
            h.tally.figures += 1;
            rest = rest.replacen(&value, "", 1);
        }
    }
    for (field, value) in
        list(&h.problem()["assumed"]).iter().map(|a| (text(&a["field"]), text(&a["value"])))
    {
        let figure = value.split(['\u{a0}', ' ']).next().unwrap_or_default();
        match field {
            "a4_hz" => h.reads(figure, real(&h.problem()["a4_hz"])?)?,
            // The strings say how long they sound; an extension makes the lowest longer.
            "sounding_length_m" if !h.set().is_null() => {
                let length =
                    real(&h.set()["strings"][0]["report"]["setting"]["sounding_length_m"])?;
                h.reads(figure, length * 1e3)?;
            }
            _ => {}
        }
    }
    holds(!rest.chars().any(|c| c.is_ascii_digit()))
}

fn usual_load(h: &mut Heard, i: usize) -> Agrees {
    let usual = &h.problem()["usual_load_n"];
    h.is_number(i, real(&usual[0]))?;
    h.is_number(i + 1, real(&usual[1]))
}

fn load(h: &mut Heard, said: &str) -> Agrees {
    let usual = &h.problem()["usual_load_n"];
    let (low, high) = (real(&usual[0])?, real(&usual[1])?);
    let place = (real(&h.set()["total_tension_n"]["value"])? - low) / (high - low);
    h.on(LOAD, said, place)
}

/// The step of tension over the usual one.
pub(crate) fn step(step: &Value) -> Result<f64, String> {
    Ok(real(&step["tension_ratio"])? / real(&step["usual_ratio"])?)
}

/// Every step that is not the usual one, and no other: `G to D`, `much steeper, from D to A ... a little flatter`.
fn steps(h: &mut Heard) -> Agrees {
    let names = names(h.set());
    let said = format!("from {} the tension falls {} than usual", h.hole(0), h.hole(1));
    let said = said.trim_end_matches(" than usual").replace(" and from ", ", from ");
    let mut told = Vec::new();
    for one in said.split(", from ") {
        let (pair, word) = one
            .trim_start_matches("from ")
            .split_once(" the tension falls ")
            .ok_or("from where to where?")?;
        told.push((pair.to_owned(), format!("{word} than usual")));
    }
    let mut odd = 0;
    for (i, s) in list(&h.set()["steps"]).iter().enumerate() {
        let pair = format!("{} to {}", names[i], names[i + 1]);
        let ratio = step(s)?;
        match told.iter().find(|(p, _)| *p == pair) {
            Some((_, word)) => {
                odd += 1;
                h.tally.comparatives += 1;
                h.on(STEPS, word, ratio)?;
            }
            None => holds(rung(STEPS, ratio) == "as usual")?,
        }
    }
    holds(odd == told.len())
}

fn fitters(h: &mut Heard, better: bool) -> Agrees {
    let reason = h.judges("fitters-judgement", better)?;
    h.is_number(0, real(&reason["worth"]).map(|w| w * 100.0))?;
    h.is_number(1, real(&reason["rival_worth"]).map(|w| w * 100.0))
}

fn weakest(h: &mut Heard, wish: &str, key: &str) -> Agrees {
    holds(h.reason(wish)?["judged"] == false)?;
    of(h, 0, key)
}

/// The words for the counter: an instrument with its size, a string, a gauge where it is bought by one.
pub(crate) fn counter(h: &mut Heard, said: &str) -> Agrees {
    let string = h.of_string()?;
    let name = h.name.clone();
    asks_for(h, said, &name, &string["shopping"], &string["report"])
}

/// What to ask for where the second set differs.
fn counter_of_other(h: &mut Heard) -> Agrees {
    let said = h.hole(0).to_owned();
    let set = h.set();
    holds(set["close_call"] == true)?;
    let (own, names) = (&set["runner_up"]["strings"], names(set));
    let place = (0..names.len())
        .filter(|place| !own[*place].is_null())
        .find(|place| said.contains(&format!(" {} string, ", names[*place])))
        .ok_or("no string of that name differs")?;
    let shopping = &set["runner_up"]["shopping"][place];
    asks_for(h, &said, &names[place], shopping, &own[place])
}

fn asks_for(h: &mut Heard, said: &str, name: &str, shopping: &Value, report: &Value) -> Agrees {
    let problem = h.problem();
    let who = format!("{} {name} string, ", text(&problem["instrument_name"]));
    let (before, after) = said.split_once(&who).ok_or_else(|| format!("it is not for a {who}"))?;
    let size = text(&problem["size"]);
    let small = before.split_once(' ').map_or("", |(_, size)| size.trim());
    holds(small == size || (small.is_empty() && size == "4/4"))?;
    holds(after.split(", ").any(|word| word == text(&shopping["gauge_class"])))?;
    match shopping["outer_metal"].as_str() {
        Some(metal) => holds(after.contains(&format!("wound with {metal} outside")))?,
        None => holds(!after.contains("wound with"))?,
    }
    holds(after.contains("long enough for the extension") == (shopping["extension"] == true))?;
    h.tally.comparatives += usize::from(shopping["extension"] == true);
    let has_figures = after.chars().any(|c| c.is_ascii_digit());
    match crate::reader::fit("{~}, {#} mm ({#} thousandths of an inch), {~}", after) {
        Some(holes) => {
            h.holes = holes;
            let diameter = real(&report["construction"]["core"]["diameter_m"])?;
            h.gauge(1, diameter)
        }
        None => holds(!has_figures),
    }
}

/// A portrait: the outside of the string, and how it is made.
fn portrait(h: &mut Heard) -> Agrees {
    let (name, made) = (h.hole(0).to_owned(), h.hole(2).to_owned());
    let name = name.trim_start_matches("the ").trim_end_matches(" string");
    let set = h.set();
    let place = names(set).iter().position(|n| n == name).ok_or("whose portrait is it?")?;
    let mut reports = vec![first(set)[place]];
    if h.place.within("level") {
        reports.extend(second(set).get(place));
    }
    // In a picture of two sets the reader does not see which of them this is: one of both must agree.
    let mut objection = String::new();
    for report in reports {
        let made = made
            .split_once(". One part in ")
            .or_else(|| made.split_once(". The ribbons of gut "))
            .map_or(made.trim_end_matches('.'), |(made, _)| made);
        let construction = &report["construction"];
        let across = number(report, "outer_diameter_m")?.value;
        let agrees = h.is(1, across).and_then(|()| match made.split_once("; wound with ") {
            Some((inside, outside)) => {
                core(h, inside, construction)?;
                windings(h, outside, construction)
            }
            None => core(h, made.trim_end_matches("; with nothing wound round it"), construction),
        });
        match agrees {
            Ok(()) => return Ok(()),
            Err(e) => objection = e,
        }
    }
    Err(objection)
}

/// How a core is made.
pub(crate) fn core(h: &mut Heard, said: &str, construction: &Value) -> Agrees {
    let core = &construction["core"];
    let across = real(&core["diameter_m"])? * 1e3;
    let of = material(text(&core["material"]));
    let is = |h: &mut Heard, phrase: &str, then: &dyn Fn(&mut Heard, &[String]) -> Agrees| {
        match crate::reader::fit(phrase, said) {
            Some(holes) => then(h, &holes),
            None => Err(format!("“{said}” is not “{phrase}”")),
        }
    };
    match text(&core["build"]) {
        "strand" => {
            // A wire in the middle and rounds of wires about it: how many of them lie across the whole.
            let (wires, wide) = match text(&core["layout"]) {
                "1x19" => ("a strand of 19 wires", 5.0),
                "7x7" => ("a rope of 7 strands of 7 wires", 9.0),
                _ => ("a strand of 7 wires", 3.0),
            };
            is(h, &format!("{wires}, {of}, {{#}} mm across, each wire {{#}} mm"), &|h, holes| {
                h.tally.figures += 1;
                h.reads(&holes[0], across)?;
                h.reads(&holes[1], across / wide)
            })
        }
        "multifilament" => {
            let filament = real(&core["filament_m"])? * 1e3;
            let count = real(&core["fill"])? * (across / filament) * (across / filament);
            is(
                h,
                &format!(
                    "a bundle of about {{#}} filaments, {of}, {{#}} mm across, each filament {{#}} mm"
                ),
                &|h, holes| {
                    h.tally.figures += 1;
                    // To two digits.
                    let step = if count >= 10_000.0 {
                        1000.0
                    } else if count >= 1000.0 {
                        100.0
                    } else if count >= 100.0 {
                        10.0
                    } else {
                        1.0
                    };
                    let about = read(&holes[0])?;
                    if !about.is_to(count, 1.2 * step) {
                        return Err(format!("{} filaments are not {count}", holes[0]));
                    }
                    h.reads(&holes[1], across)?;
                    h.reads(&holes[2], filament)
                },
            )
        }
        "twisted" => {
            let twist = real(&core["twist_deg"])?;
            let how = if twist >= 35.0 { "high" } else { "low" };
            is(
                h,
                &format!("twisted {of}, {{#}} mm across, {how} twist ({{#}}° at the surface)"),
                &|h, holes| {
                    h.tally.words += 1;
                    h.reads(&holes[0], across)?;
                    h.reads(&holes[1], twist)
                },
            )
        }
        _ => {
            let one = if of.contains("steel") { "one wire" } else { "one filament" };
            is(h, &format!("{one}, {of}, {{#}} mm across"), &|h, holes| h.reads(&holes[0], across))
        }
    }
}

/// What is wound round it, from the inside out.
pub(crate) fn windings(h: &mut Heard, said: &str, construction: &Value) -> Agrees {
    let windings = list(&construction["windings"]);
    if windings.is_empty() {
        return holds(said == "nothing");
    }
    let told: Vec<&str> = said.split(", then ").collect();
    holds(told.len() == windings.len())?;
    for (said, winding) in told.into_iter().zip(windings) {
        let form = if winding["form"] == "round" { "round wire" } else { "flat ribbon" };
        let phrase = format!("{} {form} {{#}} mm thick", material(text(&winding["metal"])));
        let holes = crate::reader::fit(&phrase, said)
            .ok_or_else(|| format!("“{said}” is not “{phrase}”"))?;
        h.reads(&holes[0], real(&winding["thickness_m"])? * 1e3)?;
    }
    Ok(())
}

/// Two strings of the picture whose steadiness differs by what is said.
fn balance(h: &mut Heard, free: bool) -> Agrees {
    let points: Vec<(f64, f64)> = list(&h.of_string()?["picture"])
        .iter()
        .map(|p| {
            (
                p["stretch"].as_f64().unwrap_or(f64::NAN) * 100.0,
                p["steadiness"].as_f64().unwrap_or(f64::NAN) * 100.0,
            )
        })
        .collect();
    let (from, to, fall) = (h.figure(1)?, h.figure(2)?, h.figure(3)?);
    h.tally.figures += 3;
    let most = points.iter().map(|p| p.1).fold(0.0, f64::max);
    let widest = points.iter().map(|p| p.0).fold(0.0, f64::max);
    let fits = points.iter().any(|a| {
        let begins = if free { most - a.1 <= 5.0 + 1e-9 } else { a.1 >= most - 1e-9 };
        from.is(a.0)
            && begins
            && points
                .iter()
                .any(|b| to.is(b.0) && b.0 >= widest - 1e-9 && b.0 > a.0 && fall.is(a.1 - b.1))
    });
    holds(fits)
}

/// The families whose strings overlap in steadiness: each with another.
fn overlap(h: &mut Heard) -> Agrees {
    h.tally.words += 1;
    let points = list(&h.of_string()?["picture"]);
    let span = |key: &str| {
        let own =
            points.iter().filter(|p| p["family"] == key).filter_map(|p| p["steadiness"].as_f64());
        own.fold((f64::MAX, f64::MIN), |(low, high), s| (low.min(s), high.max(s)))
    };
    let said = format!(" {}", small(h.hole(0)));
    let told: Vec<&str> = FAMILIES
        .iter()
        .filter(|(_, name)| said.contains(&format!(" {name}")))
        .map(|(key, _)| *key)
        .collect();
    holds(told.len() > 1)?;
    holds(told.iter().all(|one| {
        let (low, high) = span(one);
        FAMILIES
            .iter()
            .any(|(other, _)| other != one && low < span(other).1 && span(other).0 < high)
    }))
}

fn doubt(h: &mut Heard) -> Agrees {
    let (first, about) = (h.hole(1).to_owned(), h.hole(2).to_owned());
    let all = DOUBT_ABOUT
        .iter()
        .map(|(name, key)| (*name, *key))
        .chain(PROPERTIES.iter().map(|p| (p.name, p.key)));
    let (name, key) = all
        .filter(|(name, _)| about == *name || about.starts_with(&format!("{name}, ")))
        .max_by_key(|(name, _)| name.len())
        .ok_or_else(|| format!("about what: {about}?"))?;
    let doubts = list(&h.report()?["doubts"][key]);
    let mut shares = vec![first.as_str()];
    let rest = &about[name.len()..];
    let words: Vec<&str> = rest.split_whitespace().collect();
    let more: Vec<String> =
        words.windows(2).filter(|w| w[1].starts_with('%')).map(|w| format!("{} %", w[0])).collect();
    shares.extend(more.iter().map(String::as_str));
    for (said, doubt) in shares.iter().zip(doubts) {
        let share = real(&doubt["share"])?;
        match said.strip_suffix(" %") {
            Some(figure) => h.reads(figure, share * 100.0)?,
            None => holds(*said == "nearly all" && share >= 0.995)?,
        }
    }
    holds(shares.len() <= doubts.len() && rest.matches('%').count() + 1 == shares.len())
}

/// The first day on which the chance is so large.
fn settled(h: &mut Heard, hole: usize, chance: f64) -> Agrees {
    let said = match h.hole(hole) {
        "on the first day" => "1".to_owned(),
        other => other.trim_start_matches("on day ").to_owned(),
    };
    h.tally.words += 1;
    let first = list(&h.report()?["nights"])
        .iter()
        .find(|n| n["chance"].as_f64().is_some_and(|c| c >= chance));
    h.reads(&said, real(&first.ok_or("on no day")?["day"])?)
}

/// `1 to 14 mostly to the bridge and 15 to 16 mostly into bending`: all partials, each once.
fn runs(h: &mut Heard) -> Agrees {
    let partials = list(&h.report()?["partials"]);
    let said = h.hole(1).replace(" and ", ", ");
    let mut next = 1.0;
    for run in said.split(", ") {
        let (which, goes) = run.split_once(" mostly ").ok_or("mostly where?")?;
        let (from, to) = which.split_once(" to ").unwrap_or((which, which));
        h.reads(from, next)?;
        let to = read(to)?.printed();
        for p in partials.iter().filter(|p| p["n"].as_f64().is_some_and(|n| n >= next && n <= to)) {
            h.tally.figures += 1;
            holds(called(&GOES, text(&p["most"])) == goes)?;
        }
        next = to + 1.0;
    }
    holds((next - 1.0 - partials.len() as f64).abs() < 0.5)
}

fn fit_before(h: &mut Heard) -> Agrees {
    let days = &h.set()["plan"]["fit_before_d"];
    let (likely, safe) = (h.hole(0).to_owned(), h.hole(1).to_owned());
    h.enough_days(&likely, real(&days[0])?)?;
    h.enough_days(&safe, real(&days[1])?)
}

pub(crate) fn beware(h: &mut Heard, key: &str) -> Agrees {
    h.tally.comparatives += 1;
    let names = names(h.set());
    let of = |i: &Value| i.as_u64().and_then(|i| names.get(usize::try_from(i).ok()?).cloned());
    let who = h
        .holes
        .first()
        .map(|lead| lead.trim_start_matches("An ").trim_start_matches("A ").to_owned());
    let who = who.unwrap_or_else(|| h.name.clone());
    holds(
        list(&h.set()["plan"]["cautions"])
            .iter()
            .any(|c| c["caution"] == key && of(&c["string"]).is_some_and(|n| n == who)),
    )
}

/// Where a string works, piece by piece.
fn setting(h: &mut Heard) -> Agrees {
    /// A piece, the fields of the setting in it, and by what each is multiplied.
    type Piece = (&'static str, &'static [(&'static str, f64)]);
    const PIECES: &[Piece] = &[
        ("sounding length {#} mm", &[("sounding_length_m", 1e3)]),
        ("give or take {#} mm", &[("sounding_length_doubt_m", 1e3)]),
        ("{#} mm behind the bridge", &[("afterlength_m", 1e3)]),
        ("{#} mm from nut to peg", &[("nut_to_peg_m", 1e3)]),
        ("{#} Hz", &[("pitch_hz", 1.0)]),
        ("{#}° over the bridge", &[("angle_over_bridge_deg", 1.0)]),
        ("peg {#} mm across", &[("peg_diameter_m", 1e3)]),
        ("geared {#} to 1", &[("gear_ratio", 1.0)]),
        ("{#} mm high at the octave", &[("string_height_m", 1e3)]),
        ("nut’s edge {#} mm round", &[("nut_radius_m", 1e3)]),
        (
            "bridge resists {#} to {#} kg/s",
            &[("peak_resistance_kg_s", 1.0), ("bridge_resistance_kg_s", 1.0)],
        ),
        ("room {#} °C ± {#} K", &[("temperature_c", 1.0), ("temperature_swing_k", 0.5)]),
        ("{#} % ± {#} % damp", &[("humidity", 1e2), ("humidity_swing", 50.0)]),
    ];
    let said = h.hole(0).replace("; ", ", ");
    let setting = &h.report()?["setting"];
    for piece in said.split(", ") {
        let found = PIECES
            .iter()
            .find_map(|(phrase, fields)| Some((crate::reader::fit(phrase, piece)?, fields)));
        let (holes, fields) = found.ok_or_else(|| format!("“{piece}” of a setting?"))?;
        for (printed, (field, factor)) in holes.iter().zip(*fields) {
            h.reads(printed, real(&setting[field])? * factor)?;
        }
    }
    Ok(())
}
