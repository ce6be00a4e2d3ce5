//! The phrases of the verdict and of what may be behind a complaint, and what must be true of the reply.

use serde_json::Value;

use crate::heard::{Agrees, Heard, Number, family, list, names, property, real, text};
use crate::phrases::{Phrase, UNKNOWN, beware};

/// The causes by the first words said of each.
const CAUSES: [(&str, &str); 25] = [
    ("old-string", "it is old"),
    ("faulty-string", "the string has a fault"),
    ("winding-open", "the winding is loose"),
    ("sweat-eats-winding", "sweat eats the metal"),
    ("not-settled", "it is still new"),
    ("kind-too-bright", "this kind is bright"),
    ("kind-too-dark", "this kind is dark"),
    ("tension-too-high", "it pulls too hard"),
    ("tension-too-low", "it pulls too little"),
    ("too-heavy-to-start", "it is heavy for the bow"),
    ("torsion-whistle", "the wire twists under the bow"),
    ("near-its-limit", "it works near its limit"),
    ("thin-under-the-finger", "it is thin and cuts"),
    ("one-stands-out", "one string stands out"),
    ("core-drinks-humidity", "the core drinks from the air"),
    ("body-moves-it", "the body moves, and a stiff string follows"),
    ("peg-slips", "the peg slips or sticks"),
    ("not-tuned", "nobody tunes it between lessons"),
    ("worn-groove", "a groove pinches the string"),
    ("sharp-edge", "an edge cuts the string"),
    ("string-height", "the strings stand too high"),
    ("soundpost-or-bridge", "the soundpost or bridge is out of place"),
    ("wolf-of-the-body", "the wolf is the body’s own"),
    ("rosin-or-bow-hair", "the bow’s hair or rosin is at fault"),
    ("bow-stroke", "it is how the bow meets the string"),
];

/// How likely a cause is said to be, and whether a number was asked.
const SAID: [(&str, &str, bool); 4] = [
    (" likely, judged", "likely", true),
    (" likely, checked", "likely", false),
    (" possible, judged", "possible", true),
    (" possible, checked", "possible", false),
];

fn holds(fits: bool) -> Agrees {
    if fits { Ok(()) } else { Err("it is not so in the reply".to_owned()) }
}

fn causes<'a>(h: &Heard<'a>) -> impl Iterator<Item = &'a Value> + use<'a> {
    list(&h.reply["verdict"]["findings"]).iter().flat_map(|f| list(&f["causes"]))
}

fn answers(h: &mut Heard, answer: &str, one: bool) -> Agrees {
    h.tally.words += 1;
    let verdict = &h.reply["verdict"];
    holds(verdict["answer"] == answer && (verdict["string"].is_null() != one))
}

/// Takes the word for how likely a cause is off its line, when the reply says so too.
pub(crate) fn likelihood<'l>(h: &mut Heard, line: &'l str) -> Result<&'l str, String> {
    let Some((rest, likely, judged)) = SAID
        .iter()
        .find_map(|(said, likely, judged)| Some((line.strip_suffix(said)?, likely, judged)))
    else {
        return Ok(line);
    };
    h.tally.words += 1;
    let small = rest.to_lowercase();
    let key = CAUSES.iter().find(|(_, said)| small.starts_with(said)).map(|(key, _)| *key);
    let fits = causes(h).any(|c| {
        Some(text(&c["cause"])) == key && c["likely"] == *likely && c["judged"] == *judged
    });
    if fits { Ok(rest) } else { Err(format!("“{line}”: no cause of the reply is that")) }
}

/// A number of a finding is what is said in this hole; the string that is named before it, if one is, is its own.
fn caused(h: &mut Heard, key: &str) -> Agrees {
    let hole = h.holes.len() - 1;
    let whose = (hole > 0).then(|| h.hole(0).to_owned());
    let said = h.hole(hole).to_owned();
    let names = names(h.set());
    let p = property(key);
    let numbers: Vec<&Value> =
        causes(h).flat_map(|c| list(&c["numbers"])).filter(|n| n["property"] == key).collect();
    let mut why = format!("no cause rests on {key}");
    for n in numbers {
        let at = |end: &str| n[end].as_f64().or_else(|| n["value"].as_f64()).unwrap_or(f64::NAN);
        let (low, high) = (at("low"), at("high"));
        let own = n["string"].as_u64().and_then(|i| names.get(usize::try_from(i).ok()?));
        let number = Number {
            value: at("value") * p.factor,
            low: low * p.factor,
            high: high * p.factor,
            unknown: low <= 0.0 && high > 0.0 || high > 3.0 * low,
            unit: p.unit,
        };
        match h.value(&said, &number) {
            Ok(()) if whose.is_none() || own.is_none() || whose.as_ref() == own => return Ok(()),
            Ok(()) => why = format!("that is not of {whose:?}"),
            Err(other) => why = other,
        }
    }
    Err(why)
}

/// A limit of a finding is the figure in the last hole.
fn limited(h: &mut Heard, key: &str) -> Agrees {
    let hole = h.holes.len() - 1;
    let factor = property(key).factor;
    let limits: Vec<f64> = causes(h)
        .flat_map(|c| list(&c["numbers"]))
        .filter(|n| n["property"] == key)
        .filter_map(|n| n["limit"].as_f64())
        .collect();
    let mut why = Err(format!("no cause rests on {key}"));
    for limit in limits {
        why = h.is(hole, limit * factor);
        if why.is_ok() {
            return why;
        }
    }
    why
}

/// Months that are said are those of a finding: of its number, or of its limit.
fn months(h: &mut Heard, of: &str) -> Agrees {
    let said = h.hole(h.holes.len() - 1).to_owned();
    let figure = said.trim_end_matches(" months").trim_end_matches(" month").to_owned();
    let ages: Vec<f64> = causes(h)
        .flat_map(|c| list(&c["numbers"]))
        .filter(|n| n["property"] == "age_months")
        .filter_map(|n| n[of].as_f64())
        .collect();
    if said.ends_with("month") || said.ends_with("months") {
        return holds(ages.iter().any(|age| h.reads(&figure, *age).is_ok()));
    }
    let days: Vec<f64> = causes(h)
        .flat_map(|c| list(&c["numbers"]))
        .filter(|n| n["property"] == "settling_d")
        .filter_map(|n| n["limit"].as_f64())
        .collect();
    holds(days.iter().any(|d| h.days(&said, *d).is_ok()))
}

/// Sentences of the verdict and of the findings.
#[rustfmt::skip]
pub(crate) const OF_VERDICT: &[Phrase] = &[
    ("Leave the strings of your {~} as they are.", |h| answers(h, "leave-it", false)),
    ("Give your {~} a fresh set of the same kind.", |h| answers(h, "fresh-same", false)),
    ("Put on a fresh {~} of the same kind.", |h| {
        answers(h, "fresh-same", true)?;
        let i = h.reply["verdict"]["string"].as_u64().ok_or("which string?")?;
        let named = usize::try_from(i).ok().and_then(|i| names(h.set()).get(i).cloned());
        // Without a set the reply names no strings.
        holds(h.set().is_null() || named.as_deref() == Some(h.hole(0)))
    }),
    ("Take your {~} to a luthier before you buy strings.", |h| {
        h.tally.words += 1;
        holds(h.reply["verdict"]["answer"] == "luthier-first")
    }),
    ("Change one string: take {~} gauge.", |h| {
        answers(h, "one-string", true)?;
        let i = h.reply["verdict"]["string"].as_u64().and_then(|i| usize::try_from(i).ok()).ok_or("which string?")?;
        let (string, name) = (&h.set()["strings"][i], names(h.set())[i].clone());
        let said = format!("{} {name}, {}", family(text(&string["report"]["family"])), text(&string["shopping"]["gauge_class"]));
        holds(h.hole(0).ends_with(&said))
    }),
    ("No set that fits comes out clearly better than what is there.", |h| {
        h.tally.comparatives += 1;
        holds(list(&h.reply["verdict"]["because"]).iter().any(|b| b == "no-better"))
    }),
    ("Less likely: {~}.", |h| {
        h.tally.words += 1;
        let said = h.hole(0).to_owned();
        let told = CAUSES.iter().filter(|(_, words)| said.contains(words));
        let mut any = false;
        for (key, _) in told {
            any = true;
            holds(causes(h).any(|c| c["cause"] == *key && c["likely"] == "unlikely"))?;
        }
        holds(any)
    }),
    ("The {~}: It pulls with {~}.", |h| caused(h, "tension_n")),
    ("It pulls with {~}.", |h| caused(h, "tension_n")),
    ("Over {#} N is heavy here.", |h| limited(h, "tension_n")),
    ("Under {#} N is light here.", |h| limited(h, "tension_n")),
    ("The {~}: Its shine ends at {~}.", |h| caused(h, "brilliance_hz")),
    ("Its shine ends at {~}.", |h| caused(h, "brilliance_hz")),
    ("Over {#} kHz is bright for your wish.", |h| limited(h, "brilliance_hz")),
    ("Under {#} kHz is dark for your wish.", |h| limited(h, "brilliance_hz")),
    ("The {~}: It uses {~} of its strength.", |h| caused(h, "breaking_share")),
    ("It uses {~} of its strength.", |h| caused(h, "breaking_share")),
    ("Over {#} % is hard work.", |h| limited(h, "breaking_share")),
    ("The {~}: Moist and dry air move it: {~}.", |h| caused(h, "drift_moisture_cent")),
    ("Moist and dry air move it: {~}.", |h| caused(h, "drift_moisture_cent")),
    ("One hears {#} cents.", |h| limited(h, "drift_moisture_cent")),
    ("The {~}: The body moves it: {~}.", |h| caused(h, "drift_body_cent")),
    ("The body moves it: {~}.", |h| caused(h, "drift_body_cent")),
    // Just noticeable in pitch: 3 to 5 cents, as the ground rules have it.
    ("One hears 3 to 5.", |_| Ok(())),
    ("The {~}: How stiff it is to twist, against swinging: {~}.", |h| caused(h, "torsion_impedance_ratio")),
    ("How stiff it is to twist, against swinging: {~}.", |h| caused(h, "torsion_impedance_ratio")),
    ("Wound strings stay under {#} times.", |h| limited(h, "torsion_impedance_ratio")),
    ("The {~}: It speaks within {~}.", |h| caused(h, "speaks_s")),
    ("It speaks within {~}.", |h| caused(h, "speaks_s")),
    ("Over {#} s is slow here.", |h| limited(h, "speaks_s")),
    ("The {~}: Least bow force at the wolf, as a share of the greatest: {~}.", |h| caused(h, "wolf")),
    ("Least bow force at the wolf, as a share of the greatest: {~}.", |h| caused(h, "wolf")),
    ("The {~}: It is {~} thick.", |h| caused(h, "outer_diameter_m")),
    ("It is {~} thick.", |h| caused(h, "outer_diameter_m")),
    ("Under {#} mm cuts.", |h| limited(h, "outer_diameter_m")),
    ("It has been on for {~}.", |h| months(h, "value")),
    ("Such a string lasts about {~}.", |h| months(h, "limit")),
    ("The {~}: Days it takes to settle: {~}.", |h| caused(h, "settling_d")),
    ("Days it takes to settle: {~}.", |h| caused(h, "settling_d")),
    ("The {~}: Its step to the next string is {#} times the usual one.", step),
    ("Its step to the next string is {#} times the usual one.", step),
    ("For the sums we took the most usual of the kind you named: {#} mm ({#} thousandths of an inch), pulling with {#} N ({#} kg, {#} lb).", |h| {
        holds(h.of_string()?["standing"] == "kept")?;
        let (gauge, pull) = (h.number("outer_diameter_m")?.value, h.number("tension_n")?.value);
        h.gauge(0, gauge / 1e3)?;
        h.force(2, pull)
    }),
    ("For the load we took a usual one: {#} N ({#} kg, {#} lb).", |h| {
        holds(h.of_string()?["standing"] == "not-judged")?;
        let pull = h.number("tension_n")?.value;
        h.force(0, pull)
    }),
    ("No other kind of {~} would do here.", |h| {
        h.tally.words += 1;
        if h.hole(0) == "set" || h.hole(0) == "string" { holds(h.set()["runner_up"].is_null()) } else { Err(UNKNOWN.to_owned()) }
    }),
    ("At its higher tuning the set pulls harder: a quarter more for a whole tone.", |h| {
        h.tally.comparatives += 2;
        let rise = real(&h.problem()["highest_ratio"])?;
        holds(rise > 1.0 && list(&h.set()["plan"]["cautions"]).iter().any(|c| c["caution"] == "tuned-up"))
    }),
    ("{~}: At its highest tuning this string works nearer to breaking than it should.", |h| beware(h, "kept-near-breaking")),
    ("At its highest tuning this string works nearer to breaking than it should.", |h| beware(h, "kept-near-breaking")),
];

fn step(h: &mut Heard) -> Agrees {
    let hole = h.holes.len() - 1;
    let sizes: Vec<f64> = causes(h)
        .flat_map(|c| list(&c["numbers"]))
        .filter(|n| n["property"] == "tension_step")
        .filter_map(|n| n["value"].as_f64())
        .collect();
    let mut why = Err("no cause rests on a step".to_owned());
    for size in sizes {
        why = h.is(hole, size);
        if why.is_ok() {
            return why;
        }
    }
    why
}
