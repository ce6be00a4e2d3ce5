//! The tables that the page may show, by the messages in their headings, and what must be true of each row.

use serde_json::Value;

use crate::charts::{lost, partial, sources, under, wish};
use crate::heard::{Agrees, Heard, cites, entry, holds, is, list, named, number, real, same, text};
use crate::marks::{Part, all, flat, sole};
use crate::reader::after;
use crate::set::step;
use crate::text::Cell;
use crate::words::STEPS;

/// What must be true of a row, given its cells.
type RowCheck = for<'a> fn(&mut Heard<'a>, &'a [Cell]) -> Agrees;

/// The tables: how their headings begin, and the check of a row.
pub(crate) const TABLES: &[(&str, RowCheck)] = &[
    ("{steps-from} {steps-tension} {steps-column-usual} {column-word} {steps-push}", a_step),
    ("{column-number} {column-value} {column-range}", a_number),
    ("{column-value} {report-range}", a_number),
    ("{column-number} {compare-first} {compare-second} {compare-column}", a_pair),
    ("{column-number} {column-today} {column-then} {column-word}", a_change),
    (
        "{balance-column-kind} {balance-column-stretch} {balance-axis-settling} {balance-axis-warmth} {balance-axis-damp}",
        a_point,
    ),
    (
        "{nights-column-day} {nights-column-lost} {nights-column-chance} {nights-column-words}",
        a_day,
    ),
    ("{nights-column-day} {nights-column-lost} {report-range} {report-five}", a_day_on_paper),
    (
        "{partials-column-n} {partials-column-frequency} {partials-column-sharp} {partials-column-rings} {partials-column-bridge} {partials-column-air} {partials-column-bending} {partials-column-pull} {partials-column-q}",
        a_partial,
    ),
    (
        "{partials-column-n} {report-hz} {report-sharp} {partials-column-rings} {report-bridge} {report-air} {report-bending} {report-pull}",
        a_partial,
    ),
    ("{column-wish} {column-under} {column-met} {column-weight}", a_worth),
    ("{column-wish} {weights-base} {weights-moved} {weights-here}", a_weight),
    (" {plan-string} {sheet-ask} {sheet-gauge} {sheet-why} {sheet-settles}", on_the_sheet),
];

/// The first line of a cell.
fn cell(cells: &[Cell], i: usize) -> &[Part] {
    cells.get(i).and_then(|lines| lines.first()).map_or(&[], Vec::as_slice)
}

/// The grade of a number.
fn graded(cell: &Cell, q: &Value) -> Agrees {
    let grade = format!("evidence-{}", text(&q["evidence"]));
    holds(cell.iter().flat_map(|words| all(words)).any(|said| said.id == grade))
}

/// The lines under the first of a row's heading: what a number means.
fn means<'a>(h: &mut Heard<'a>, cells: &'a [Cell]) -> Agrees {
    cells[0].iter().skip(1).try_for_each(|words| h.line(words))
}

fn a_step<'a>(h: &mut Heard<'a>, cells: &'a [Cell]) -> Agrees {
    let named = h.names(cell(cells, 0))?;
    let [upper, lower] = named[..] else { return Err("of which strings?".to_owned()) };
    holds(upper + 1 == lower)?;
    let s = &h.set()["steps"][upper];
    for (i, key) in [(1, "tension_ratio"), (2, "usual_ratio"), (4, "impedance_ratio")] {
        h.reads(cell(cells, i), real(&s[key])?)?;
    }
    h.on(STEPS, sole(cell(cells, 3)).map_or("", |said| said.id), step(s)?)
}

fn a_number<'a>(h: &mut Heard<'a>, cells: &'a [Cell]) -> Agrees {
    means(h, cells)?;
    if flat(cell(cells, 0)) == "{disputed}" {
        return disputed(h, cells);
    }
    let key = named(cell(cells, 0))?.key;
    let (n, q) = (h.number(key)?, &h.report()?["numbers"][key]);
    h.value(cell(cells, 1), &n)?;
    let range = cell(cells, 2);
    // On paper a range has the unit of its value.
    let paper = h.place.within("report");
    match flat(range).as_str() {
        "{table-none}" => holds(n.half() <= 1e-12 * n.value.abs().max(1e-12))?,
        _ => {
            let unit = if paper { "" } else { n.unit };
            h.range(range, unit, n.low, n.high, n.half())?;
        }
    }
    graded(&cells[3], q)?;
    // On paper a number leads to the list of sources.
    match paper {
        true => holds(is(
            cell(cells, 4),
            1.0 + sources(h.report()?).iter().position(|key| *key == q["source"]).unwrap_or(99)
                as f64,
        )),
        false => cites(&flat(cell(cells, 4)), text(&q["source"])),
    }
}

/// The least bow force, about which theory and measurement disagree.
fn disputed<'a>(h: &mut Heard<'a>, cells: &'a [Cell]) -> Agrees {
    let (theory, measured) =
        (h.number("bow_force_least_n")?, h.number("bow_force_least_measured_n")?);
    let (low, high) = (theory.low.min(measured.low), theory.high.max(measured.high));
    for words in &cells[1] {
        let told = words.first().and_then(|part| sole(std::slice::from_ref(part)));
        let told = told.ok_or("of which of them?")?;
        match told.id {
            "disputed-within" => h.range(
                told.place("range").unwrap_or_default(),
                "N",
                low,
                high,
                (high - low) / 2.0,
            )?,
            "disputed-theory" => h.value(&after(words), &theory)?,
            "disputed-measured" => h.value(&after(words), &measured)?,
            other => return Err(format!("{other} is nothing that is disputed")),
        }
    }
    let numbers = &h.report()?["numbers"];
    let source = |key: &str| text(&numbers[key]["source"]);
    let both = format!("{}, {}", source("bow_force_least_n"), source("bow_force_least_measured_n"));
    graded(&cells[2], &numbers["bow_force_least_n"])?;
    cites(&flat(cell(cells, 3)), &both)
}

fn a_pair<'a>(h: &mut Heard<'a>, cells: &'a [Cell]) -> Agrees {
    let key = named(cell(cells, 0))?.key;
    for (i, side) in [(1, "this"), (2, "other")] {
        let n = number(&h.reply()[side], key)?;
        h.value(cell(cells, i), &n)?;
        for range in &cells[i][1..] {
            h.range(range, "", n.low, n.high, n.half())?;
        }
    }
    h.verdict(cell(cells, 3), key)?;
    let q = &h.reply()["this"]["numbers"][key];
    graded(&cells[4], q)?;
    cites(&flat(cell(cells, 5)), text(&q["source"]))
}

fn a_change<'a>(h: &mut Heard<'a>, cells: &'a [Cell]) -> Agrees {
    let p = named(cell(cells, 0))?;
    let change = entry(&h.string()?["changes"], "property", p.key)?;
    for (i, which) in [(1, "other"), (2, "this")] {
        h.in_unit(cell(cells, i), real(&change[which])? * p.factor, p.unit)?;
    }
    h.word(cell(cells, 3), change, p.key)
}

fn a_point<'a>(h: &mut Heard<'a>, cells: &'a [Cell]) -> Agrees {
    let string = h.string()?;
    let told: Vec<&str> = all(cell(cells, 0)).iter().map(|said| said.id).collect();
    let points: Vec<&Value> = match told.get(1).copied() {
        Some("balance-mark-chosen") => vec![&string["chosen_point"]],
        Some("balance-mark-today") => vec![&string["today_point"]],
        _ => list(&string["picture"]).iter().collect(),
    };
    let columns = [("stretch", 1e2), ("settling_d", 1.0), ("warmth_cent", 1.0), ("damp_cent", 1.0)];
    let shows = |p: &&Value| {
        let column = |(i, (key, factor)): (usize, &(&str, f64))| {
            p[*key].as_f64().is_some_and(|x| is(cell(cells, i + 1), x * factor))
        };
        told.first().and_then(|id| id.strip_prefix("family-")) == p["family"].as_str()
            && columns.iter().enumerate().all(column)
    };
    holds(points.iter().any(shows))
}

/// The day of a row.
fn day<'a>(h: &Heard<'a>, cells: &[Cell]) -> Result<&'a Value, String> {
    let n = flat(cell(cells, 0));
    let found = list(&h.report()?["nights"])
        .iter()
        .find(|day| n.parse().is_ok_and(|n: u64| day["day"] == n));
    found.ok_or_else(|| "which day?".to_owned())
}

/// A chance of a hundred or in per cent, never nought and never all.
fn of_hundred(h: &mut Heard, words: &[Part], chance: f64) -> Agrees {
    let bare = flat(words);
    let said = all(words).into_iter().next();
    let inside = said.and_then(|said| said.place("number")).map(flat);
    match (said.map_or("", |said| said.id), inside.as_deref()) {
        ("over" | "over-of-hundred", Some("99")) => holds(chance >= 0.994_999),
        ("under" | "under-of-hundred", Some("1")) => holds(chance <= 0.005_001),
        ("of-hundred", Some(number)) => h.reads(&[Part::Text(number.to_owned())], chance * 100.0),
        _ => h.in_unit(&[Part::Text(bare)], chance * 100.0, "%"),
    }
}

fn a_day<'a>(h: &mut Heard<'a>, cells: &'a [Cell]) -> Agrees {
    let (n, chance) = lost(day(h, cells)?)?;
    h.told(cell(cells, 1), &n)?;
    of_hundred(h, cell(cells, 2), chance)?;
    h.likely(cell(cells, 3), chance)
}

fn a_day_on_paper<'a>(h: &mut Heard<'a>, cells: &'a [Cell]) -> Agrees {
    let (n, chance) = lost(day(h, cells)?)?;
    h.value(cell(cells, 1), &crate::heard::Number { unit: "", ..n })?;
    h.range(cell(cells, 2), "", n.low, n.high, n.half())?;
    let words = cell(cells, 3);
    h.likely(&words[..1], chance)?;
    let mut share = words[1..].to_vec();
    if let Some(Part::Text(text)) = share.first_mut() {
        *text = text.trim_start_matches([',', ' ']).to_owned();
    }
    of_hundred(h, &share, chance)
}

fn a_partial<'a>(h: &mut Heard<'a>, cells: &'a [Cell]) -> Agrees {
    partial(h, &flat(cell(cells, 0)))?;
    let p = h.partial.ok_or("which partial?")?;
    let whole = cells.len() > 8;
    h.in_unit(cell(cells, 1), real(&p["frequency_hz"])?, if whole { "Hz" } else { "" })?;
    let sharp = real(&p["sharpness_cent"])?;
    match sole(cell(cells, 2)) {
        Some(said) => holds(
            said.id == "under" && sharp < 0.1 && said.place("number").is_some_and(|n| is(n, 0.1)),
        )?,
        None => h.reads(cell(cells, 2), sharp)?,
    }
    h.reads(cell(cells, 3), real(&p["ring_s"])?)?;
    for (i, key) in
        ["loss_bridge", "loss_air", "loss_bending", "loss_string"].into_iter().enumerate()
    {
        h.reads(cell(cells, i + 4), real(&p[key])? * 1e3)?;
    }
    if whole {
        // Nobody knows a Q closer than to ten.
        let q = cell(cells, 8);
        holds(flat(q).ends_with('0') && crate::heard::read(q)?.is_to(real(&p["q"])?, 10.0))?;
    }
    Ok(())
}

fn a_worth<'a>(h: &mut Heard<'a>, cells: &'a [Cell]) -> Agrees {
    let own = wish(&h.string()?["attributes"], cell(cells, 0))?;
    under(h, cell(cells, 1), own)?;
    h.reads(cell(cells, 2), real(&own["desirability"])? * 100.0)?;
    h.reads(cell(cells, 3), real(&own["weight"])?)
}

fn a_weight<'a>(h: &mut Heard<'a>, cells: &'a [Cell]) -> Agrees {
    means(h, cells)?;
    let own = wish(&h.problem()["weights"], cell(cells, 0))?;
    h.reads(cell(cells, 1), real(&own["base"])?)?;
    h.reads(cell(cells, 3), real(&own["weight"])?)?;
    let moved = cell(cells, 2);
    let told: Vec<_> = all(moved).into_iter().filter(|said| said.id == "weights-step").collect();
    let steps = list(&own["steps"]);
    holds(told.len() == steps.len() && (!steps.is_empty() || flat(moved) == "{weights-none}"))?;
    for (said, step) in told.into_iter().zip(steps) {
        h.of(said, |h| {
            let words = h.arg("factor")?;
            h.reads(words, real(&step["factor"])?)?;
            let because = text(&step["because"]).replace('.', "-");
            same(&h.key("because")?, &format!("because-{because}"))
        })?;
    }
    Ok(())
}

fn on_the_sheet<'a>(h: &mut Heard<'a>, cells: &'a [Cell]) -> Agrees {
    cells[0].iter().try_for_each(|words| h.line(words))?;
    let said = flat(cell(cells, 2)).trim_end_matches('.').to_owned();
    match text(&h.string()?["standing"]) {
        "kept" => return same(&said, "{stays}"),
        "not-judged" => return same(&said, "{not-judged}"),
        _ => same(&said, "{counter}")?,
    }
    h.line(cell(cells, 2))?;
    let size = cell(cells, 3);
    holds(size.len() == 3)?;
    let across = h.real("report.numbers.outer_diameter_m.value")?;
    h.gauge(&size[..1], across)?;
    let pull = h.number("tension_n")?.value;
    h.force(&size[2..], pull, pull)?;
    // There is room for one reason and one cost.
    let why = cell(cells, 4);
    let ids: Vec<&str> =
        why.iter().filter_map(|part| Some(sole(std::slice::from_ref(part))?.id)).collect();
    let (reasons, costs) = (list(&h.string()?["reasons"]).len(), list(&h.string()?["costs"]).len());
    holds((ids[0] == "card-no-other") == h.string()?["rival"].is_null())?;
    let told = 1 + usize::from(ids[0] != "card-no-other") + 2 * costs.min(1);
    holds(ids.len() == told && (costs == 0 || ids[told - 2] == "sheet-but"))?;
    holds(reasons > 0 || ids.contains(&"card-alike") || ids[0] == "card-no-other")?;
    h.line(why)?;
    h.line(cell(cells, 5))
}
