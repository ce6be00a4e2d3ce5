//! The tables that the page may show, by their headings, and what must be true of each row.

use serde_json::Value;

use crate::figure::Figure;
use crate::heard::{
    Agrees, Heard, capital, counts, family, list, named, names, number, property, read, real,
    small, text, wish,
};
use crate::phrases::{UNKNOWN, counter, step};
use crate::vocabulary::STEPS;

/// What must be true of a row, given its cells.
pub(crate) type RowCheck = fn(&mut Heard, &[Vec<String>]) -> Agrees;

/// The tables: their headings, in which `{~}` stands for any words, and the check of a row.
#[rustfmt::skip]
pub(crate) const TABLES: &[(&str, RowCheck)] = &[
    ("From, to | Tension, upper over lower | Usual | In a word | Push on the bridge, lower over upper", a_step),
    ("Number | Value | Range, 90 of 100 | How known | Source", a_number),
    ("{~} | Value | Range | Known | Src", a_number),
    ("Number | First | Second | The first is or has | How known | Source", a_pair),
    ("Number | Today | Then | In a word", a_change),
    ("Kind | Stretch, % | Steadiness, of 100 | Days to settle | Drift, cents | Fitters (judgement), of 100", a_point),
    ("Day | Cents lost | Within five cents, and seated | In words", a_day),
    ("Day | Cents lost | Range | Within five cents", a_day_on_paper),
    ("Partial | Frequency | Sharp by, cents | Rings, s | To the bridge | To the air | In bending | In the string’s pull | Q on firm ends", a_partial),
    ("Partial | Hz | Sharp, cents | Rings, s | Bridge | Air | Bending | Pull", a_partial),
    ("Wish | The number under it | Met, of 100 | Weight", a_worth),
    ("Wish | Weight for anybody | Moved by your answers | Weight here", a_weight),
    ("String | Likely | At the long end", days_of_retuning),
    (" | String | Ask for | Gauge, pull in tune | Why, and what it costs | Settles", on_the_sheet),
];

fn holds(fits: bool, said: &str) -> Agrees {
    if fits { Ok(()) } else { Err(format!("“{said}” is not so in the reply")) }
}

fn cell(cells: &[Vec<String>], i: usize) -> &str {
    cells.get(i).and_then(|c| c.first()).map_or("", String::as_str)
}

fn a_step(h: &mut Heard, cells: &[Vec<String>]) -> Agrees {
    let names = names(h.set());
    let place =
        (0..names.len() - 1).find(|i| format!("{}, {}", names[*i], names[i + 1]) == cell(cells, 0));
    let s = &h.set()["steps"][place.ok_or("of which strings?")?];
    h.reads(cell(cells, 1), real(&s["tension_ratio"])?)?;
    h.reads(cell(cells, 2), real(&s["usual_ratio"])?)?;
    h.tally.comparatives += usize::from(cell(cells, 3) != "as usual");
    h.on(STEPS, cell(cells, 3), step(s)?)?;
    h.reads(cell(cells, 4), real(&s["impedance_ratio"])?)
}

fn a_number(h: &mut Heard, cells: &[Vec<String>]) -> Agrees {
    if cell(cells, 0) == "Least bow force: disputed" {
        return disputed(h, cells);
    }
    let key =
        named(cell(cells, 0)).ok_or_else(|| format!("{} is no property", cell(cells, 0)))?.key;
    let n = h.number(key)?;
    let q = &h.report()?["numbers"][key];
    let unit = format!(" {}", n.unit);
    match cell(cells, 1) {
        "unknown within" | "unknown" => holds(n.unknown, "unknown")?,
        said => h.value(said, &n)?,
    }
    match cell(cells, 2) {
        "none" => holds(n.half() <= 1e-12 * n.value.abs().max(1e-12), "none")?,
        said => h.range(said.strip_suffix(&unit).unwrap_or(said), n.low, n.high, n.half())?,
    }
    holds(cell(cells, 3) == text(&q["evidence"]), cell(cells, 3))?;
    // On paper a number leads to the list of sources, which is read there.
    let source = cell(cells, 4);
    holds(source == text(&q["source"]) || h.place.within("report"), source)
}

/// The least bow force, about which theory and measurement disagree.
fn disputed(h: &mut Heard, cells: &[Vec<String>]) -> Agrees {
    let (theory, measured) =
        (h.number("bow_force_least_n")?, h.number("bow_force_least_measured_n")?);
    let (low, high) = (theory.low.min(measured.low), theory.high.max(measured.high));
    for said in &cells[1] {
        if let Some(band) = said.strip_prefix("somewhere within ") {
            h.range(band.strip_suffix(" N").ok_or("in newtons")?, low, high, (high - low) / 2.0)?;
        } else if let Some(said) = said.strip_prefix("By theory") {
            h.value(said.trim_start_matches(':').trim(), &theory)?;
        } else if let Some(said) = said.strip_prefix("As measured") {
            h.value(said.trim_start_matches(':').trim(), &measured)?;
        } else {
            return Err(format!("“{said}”: {UNKNOWN}"));
        }
    }
    let numbers = &h.report()?["numbers"];
    let source = |key: &str| text(&numbers[key]["source"]);
    let both = format!("{}, {}", source("bow_force_least_n"), source("bow_force_least_measured_n"));
    holds(cell(cells, 3) == both, cell(cells, 3))
}

fn a_pair(h: &mut Heard, cells: &[Vec<String>]) -> Agrees {
    let key =
        named(cell(cells, 0)).ok_or_else(|| format!("{} is no property", cell(cells, 0)))?.key;
    for (i, side) in [(1, "this"), (2, "other")] {
        let n = number(&h.reply[side], key)?;
        h.value(cell(cells, i), &n)?;
        for range in &cells[i][1..] {
            h.range(range, n.low, n.high, n.half())?;
        }
    }
    h.verdict(cell(cells, 3), key)?;
    let q = &h.reply["this"]["numbers"][key];
    holds(
        cell(cells, 4) == text(&q["evidence"]) && cell(cells, 5) == text(&q["source"]),
        cell(cells, 5),
    )
}

fn a_change(h: &mut Heard, cells: &[Vec<String>]) -> Agrees {
    let p = named(cell(cells, 0)).ok_or_else(|| format!("{} is no property", cell(cells, 0)))?;
    let changes = list(&h.of_string()?["changes"]);
    let change = changes
        .iter()
        .find(|c| c["property"] == p.key)
        .ok_or("the reply knows of no such change")?;
    for (i, which) in [(1, "other"), (2, "this")] {
        let printed =
            cell(cells, i).strip_suffix(&format!(" {}", p.unit)).ok_or("in another unit")?;
        h.reads(printed, real(&change[which])? * p.factor)?;
    }
    h.word(cell(cells, 3), change, p.key)
}

fn a_point(h: &mut Heard, cells: &[Vec<String>]) -> Agrees {
    let string = h.of_string()?;
    let (kind, which) = cell(cells, 0).split_once(" (").unwrap_or((cell(cells, 0), ""));
    let points: Vec<&Value> = match which {
        "chosen)" => vec![&string["chosen_point"]],
        "today’s)" => vec![&string["today_point"]],
        _ => list(&string["picture"]).iter().collect(),
    };
    let columns = [
        ("stretch", 1e2),
        ("steadiness", 1e2),
        ("settling_d", 1.0),
        ("drift_cent", 1.0),
        ("fitters_judgement", 1e2),
    ];
    let mut printed: Vec<(Figure, &str, f64)> = Vec::new();
    for (i, (key, factor)) in columns.into_iter().enumerate() {
        printed.push((read(cell(cells, i + 1))?, key, factor));
    }
    h.tally.figures += printed.len();
    let fits = |p: &&Value| {
        family(text(&p["family"])) == small(kind)
            && printed
                .iter()
                .all(|(figure, key, factor)| p[key].as_f64().is_some_and(|x| figure.is(x * factor)))
    };
    holds(points.iter().any(fits), &format!("{cells:?}"))
}

/// The lost cents of a day; they are unknown where the high end is over three times the low one.
fn lost(h: &mut Heard, cells: &[Vec<String>]) -> Result<(crate::heard::Number, f64), String> {
    let nights = list(&h.report()?["nights"]);
    let day = nights.iter().find(|n| counts(&n["day"], cell(cells, 0))).ok_or("which day?")?;
    let lost = &day["lost_cent"];
    let (value, low, high) = (real(&lost["value"])?, real(&lost["low"])?, real(&lost["high"])?);
    let unknown = high > 3.0 * low && high > 0.0;
    Ok((crate::heard::Number { value, low, high, unknown, unit: "cents" }, real(&day["chance"])?))
}

fn of_hundred(h: &mut Heard, said: &str, chance: f64) -> Agrees {
    match said {
        "over 99" => holds(chance >= 0.994_999, said),
        "under 1" => holds(chance <= 0.005_001, said),
        _ => h.reads(said, chance * 100.0),
    }
}

fn a_day(h: &mut Heard, cells: &[Vec<String>]) -> Agrees {
    let (n, chance) = lost(h, cells)?;
    h.value(cell(cells, 1), &n)?;
    of_hundred(h, cell(cells, 2).strip_suffix(" of 100").ok_or("of 100")?, chance)?;
    h.likely(cell(cells, 3), chance)
}

fn a_day_on_paper(h: &mut Heard, cells: &[Vec<String>]) -> Agrees {
    let (n, chance) = lost(h, cells)?;
    match cell(cells, 1) {
        "unknown" => holds(n.unknown, "unknown")?,
        said => h.value(&format!("{said} cents"), &n)?,
    }
    h.range(cell(cells, 2), n.low, n.high, n.half())?;
    let (word, share) = cell(cells, 3).split_once(", ").ok_or("in words and per cent")?;
    h.likely(word, chance)?;
    of_hundred(h, share.strip_suffix(" %").ok_or("per cent")?, chance)
}

fn a_partial(h: &mut Heard, cells: &[Vec<String>]) -> Agrees {
    let partials = list(&h.report()?["partials"]);
    let p = partials.iter().find(|p| counts(&p["n"], cell(cells, 0))).ok_or("which partial?")?;
    h.reads(cell(cells, 1).trim_end_matches(" Hz"), real(&p["frequency_hz"])?)?;
    let sharp = real(&p["sharpness_cent"])?;
    match cell(cells, 2) {
        "under 0.1" => holds(sharp < 0.1, "under 0.1")?,
        said => h.reads(said, sharp)?,
    }
    h.reads(cell(cells, 3), real(&p["ring_s"])?)?;
    for (i, key) in
        ["loss_bridge", "loss_air", "loss_bending", "loss_string"].into_iter().enumerate()
    {
        h.reads(cell(cells, i + 4), real(&p[key])? * 1e3)?;
    }
    if cells.len() > 8 {
        // Nobody knows a Q closer than to ten.
        h.tally.figures += 1;
        let q = cell(cells, 8);
        holds(q.ends_with('0') && read(q)?.is_to(real(&p["q"])?, 10.0), q)?;
    }
    Ok(())
}

fn a_worth(h: &mut Heard, cells: &[Vec<String>]) -> Agrees {
    let worths = list(&h.of_string()?["attributes"]);
    let own = worths
        .iter()
        .find(|a| capital(wish(text(&a["attribute"]))) == cell(cells, 0))
        .ok_or("which wish?")?;
    match own["property"].as_str() {
        Some(key) => {
            let said = cell(cells, 1)
                .strip_prefix(&format!("{}: ", property(key).name))
                .ok_or("of which number?")?;
            let report = h.report()?;
            h.property(said, report, key)?;
        }
        None => holds(cell(cells, 1) == "a judgement", cell(cells, 1))?,
    }
    h.reads(cell(cells, 2), real(&own["desirability"])? * 100.0)?;
    h.reads(cell(cells, 3), real(&own["weight"])?)
}

fn a_weight(h: &mut Heard, cells: &[Vec<String>]) -> Agrees {
    let weights = list(&h.problem()["weights"]);
    let own = weights
        .iter()
        .find(|w| capital(wish(text(&w["attribute"]))) == cell(cells, 0))
        .ok_or("which wish?")?;
    h.reads(cell(cells, 1), real(&own["base"])?)?;
    let steps = list(&own["steps"]);
    if steps.is_empty() {
        holds(cell(cells, 2) == "as for anybody", cell(cells, 2))?;
    } else {
        let told: Vec<&str> = cell(cells, 2).split("times ").skip(1).collect();
        holds(told.len() == steps.len(), cell(cells, 2))?;
        for (said, step) in told.into_iter().zip(steps) {
            h.reads(said.split(' ').next().unwrap_or_default(), real(&step["factor"])?)?;
        }
    }
    h.reads(cell(cells, 3), real(&own["weight"])?)
}

fn days_of_retuning(h: &mut Heard, cells: &[Vec<String>]) -> Agrees {
    let place = names(h.set()).iter().position(|n| n == cell(cells, 0)).ok_or("which string?")?;
    let days = &h.set()["plan"]["settled_d"][place];
    h.days(cell(cells, 1), real(&days[0])?)?;
    h.enough_days(cell(cells, 2), real(&days[1])?)
}

fn on_the_sheet(h: &mut Heard, cells: &[Vec<String>]) -> Agrees {
    let said = cell(cells, 2).trim_end_matches('.').to_owned();
    match text(&h.of_string()?["standing"]) {
        "kept" => return holds(said == "Stays", &said),
        "not-judged" => return holds(said == "Not judged", &said),
        _ => {}
    }
    counter(h, &said)?;
    let holes = crate::reader::fit(
        "{#} mm ({#} thousandths of an inch); {#} N ({#} kg, {#} lb)",
        cell(cells, 3),
    );
    h.holes = holes.ok_or("gauge and pull")?;
    let (gauge, pull) = (h.number("outer_diameter_m")?.value, h.number("tension_n")?.value);
    h.gauge(0, gauge / 1e3)?;
    h.force(2, pull)?;
    let place = names(h.set()).iter().position(|n| *n == h.name).ok_or("which string?")?;
    let days = &h.set()["plan"]["settled_d"][place];
    let (likely, long) = cell(cells, 5).split_once(", at most ").ok_or("settles when?")?;
    h.days(likely, real(&days[0])?)?;
    h.enough_days(long, real(&days[1])?)?;
    // The reason and the cost are read as sentences, by whoever called.
    let (reasons, costs) = cell(cells, 4).split_once("But: ").unwrap_or((cell(cells, 4), ""));
    let mut told = Vec::new();
    if reasons.trim() == "No other kind would do here." {
        holds(h.of_string()?["rival"].is_null(), reasons)?;
    } else if !reasons.is_empty() {
        let (rival, reason) = reasons
            .trim_start_matches("Rather than ")
            .split_once(": ")
            .ok_or("rather than what?")?;
        let own = family(text(&h.of_string()?["rival"]["family"]));
        holds(rival.contains(own), rival)?;
        told.push((reason.trim().to_owned(), false));
    }
    if !costs.is_empty() {
        told.push((costs.trim().to_owned(), true));
    }
    for (sentence, cost) in told {
        h.cost = cost;
        h.rests = None;
        crate::reader::judge_line(h, &capital(&sentence))?;
    }
    Ok(())
}
