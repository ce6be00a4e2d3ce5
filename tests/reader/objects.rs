//! Does the reader object when a page says something else than its reply?

use std::rc::Rc;
use std::sync::OnceLock;

use app::detail_level::DetailLevel;
use app::hooks::Sureness;
use catalogue::Language;
use protocol::reply::Reply;
use protocol::request::{Answers, CompareRequest, FitRequest, Request};
use serde_json::Value;

use crate::cases::{fit, reply, sure};
use crate::marks::{of_a_message, sign, sign_of_choice};
use crate::reader::read_page;
use crate::rendered::Easel;

/// Replies and their pages, to which there is no objection: of two people who said what is on their instrument, and of
/// each two strings side by side; one in English, one in German.
fn pages() -> &'static [(Value, String)] {
    static PAGES: OnceLock<Vec<(Value, String)>> = OnceLock::new();
    PAGES.get_or_init(|| {
        let word = |word: &str| Some(word.to_owned());
        let bothers = vec!["goes-flat".to_owned()];
        let english =
            Answers { now: word("gut"), concert_days: Some(9.0), bothers, ..Answers::default() };
        let german = Answers {
            aim: word("is-it-time"),
            instrument: word("cello"),
            now: word("steel"),
            room: word("damp"),
            ..Answers::default()
        };
        let mut pages = draw(Language::English, english, DetailLevel::Bench);
        pages.extend(draw(Language::German, german, DetailLevel::Words));
        for (reply, html) in &pages {
            assert_eq!(read_page(reply, html, None).objections, Vec::<String>::new());
        }
        pages
    })
}

fn draw(language: Language, answers: Answers, depth: DetailLevel) -> Vec<(Value, String)> {
    let easel = Easel::new(language);
    let (mut value, set) = fit(FitRequest { answers: answers.clone() });
    let (certainty, known) = sure(FitRequest { answers });
    value["certainty"] = certainty;
    let string = &set.set.as_ref().unwrap().strings[1];
    let request = CompareRequest {
        this: string.report.construction.clone(),
        other: string.rival.as_ref().unwrap().construction.clone(),
        setting: string.report.setting.clone(),
    };
    let (pair, found) = reply(&Request::Compare(Box::new(request)));
    let Reply::Compare(found) = found else { panic!("{pair}") };
    let page = easel.set(&set, Sureness::Known(known), depth);
    vec![(value, page), (pair, easel.pair(&Rc::new(*found)))]
}

fn objects(reply: &Value, html: &str) -> bool {
    !read_page(reply, html, None).objections.is_empty()
}

/// Each of two marks in the place of the other, wherever it stands, one place at a time: every one must be noticed.
fn swap(pairs: &[(char, char)]) -> usize {
    let (mut swapped, mut missed) = (0, Vec::new());
    for (reply, html) in pages() {
        for (one, other) in pairs.iter().flat_map(|(a, b)| [(*a, *b), (*b, *a)]) {
            for (at, _) in html.match_indices(one).take(4) {
                let (before, after) = (&html[..at], &html[at + one.len_utf8()..]);
                swapped += 1;
                if !objects(reply, &format!("{before}{other}{after}")) {
                    let from = before.char_indices().rev().nth(100).map_or(0, |(i, _)| i);
                    missed.push(format!("{one:?} became {other:?} in {:.200}", &html[from..]));
                }
            }
        }
    }
    assert!(missed.is_empty(), "{missed:#?}");
    swapped
}

#[test]
fn another_message_in_its_place_meets_one() {
    let pairs = [
        ("property-tension_n.more", "property-tension_n.less"),
        ("property-stretch.more", "property-stretch.less"),
        ("property-settling_d.more", "property-settling_d.less"),
        ("property-evening_warmth_cent.more", "property-evening_warmth_cent.less"),
        ("property-brilliance_hz.more", "property-brilliance_hz.less"),
        ("property-lateral_stiffness_n_m.more", "property-lateral_stiffness_n_m.less"),
        ("property-speaks_s.more", "property-rings_on_s.more"),
        ("property-stretch", "property-breaking_share"),
        ("nearer-to-wanted", "further-from-wanted"),
        ("computed-very-likely", "computed-likely"),
        ("computed-likely", "judgement"),
        ("compare-overlap", "compare-same"),
        ("alike", "undecided"),
        ("moves-falls", "moves-rises"),
        ("picture-costs", "picture-gains"),
        ("picture-level", "picture-between"),
        ("very-likely", "likely"),
        ("unlikely", "close-call"),
        ("load-lower", "load-upper"),
        ("load-middle", "load-above"),
        ("step-flatter", "step-steeper"),
        ("sure-very-likely", "sure-likely"),
        ("turn-weight-up", "turn-weight-down"),
        ("gauge-light.listed", "gauge-heavy.listed"),
        ("family-synthetic", "family-plain-gut"),
        ("material-gut", "material-polyamide"),
        ("note-A", "note-D"),
        ("unit-kg", "unit-lb"),
        ("unit-days", "cents"),
        ("reason-more", "reason-less"),
        ("evidence-computed", "evidence-judged"),
    ];
    let pairs = pairs.map(|(one, other)| (sign(one), sign(other)));
    let swapped = swap(&pairs);
    assert!(swapped > 60, "only {swapped} messages were swapped");
}

#[test]
fn another_text_of_a_choice_meets_one() {
    let pairs = [
        ("cost", "yes", "no"),
        ("family", "synthetic", "plain-gut"),
        ("family", "wound-steel", "stranded-steel"),
        ("gauge", "light", "medium"),
        ("tuner", "yes", "no"),
        ("aspect", "warmth", "damp"),
        ("untuned", "evening", "week"),
        ("step", "steeper", "flatter"),
        ("likely", "likely", "possible"),
        ("instrument", "violin", "cello"),
    ];
    let pairs = pairs.map(|(by, one, other)| (sign_of_choice(by, one), sign_of_choice(by, other)));
    let swapped = swap(&pairs);
    assert!(swapped > 20, "only {swapped} choices were swapped");
}

/// What is changed in a reply after its page was drawn, so that the page contradicts it: as if a number were stale or
/// rounded wrongly, a string taken for another, more for less.
#[rustfmt::skip]
const CHANGED: &[&str] = &[
    "/problem/instrument", "/problem/size", "/problem/tuning", "/problem/a4_hz", "/problem/usual_load_n/1",
    "/problem/concert_days", "/problem/assumed/0/field", "/problem/weights/0/weight",
    "/verdict/answer", "/verdict/findings/0/causes/0/cause", "/verdict/findings/0/causes/0/likely",
    "/set/close_call", "/set/lead", "/set/total_tension_n/value", "/set/downforce_n/high", "/set/steps/0/tension_ratio", "/set/searched/inside",
    "/set/plan/fit_before_d/1", "/set/plan/settled_d/1/1", "/set/plan/checks/0", "/set/plan/cautions/0/caution",
    "/set/strings/0/note", "/set/strings/0/report/family", "/set/strings/0/shopping/gauge_class", "/set/strings/0/shopping/pitch_hz",
    "/set/strings/1/fine_tuner", "/set/strings/1/rival/family", "/set/strings/1/today/family",
    "/set/strings/1/reasons/0/attribute", "/set/strings/1/reasons/0/worth", "/set/strings/1/costs/0/judged", "/set/strings/1/changes/0/this",
    "/set/strings/1/attributes/0/desirability", "/set/strings/1/report/construction/core/material",
    "/set/strings/1/report/construction/windings/0/metal", "/set/strings/1/report/numbers/tension_n/value",
    "/set/strings/1/report/numbers/speaks_s/high", "/set/strings/1/report/numbers/settling_d/high", "/set/strings/1/report/numbers/stretch/source",
    "/set/strings/1/report/numbers/season_cent/evidence", "/set/strings/1/report/nights/0/chance", "/set/strings/1/report/partials/1/ring_s",
    "/set/strings/1/report/partials/0/most", "/set/strings/1/today_point/stretch", "/set/strings/1/bands/gauge_m/0",
    "/certainty/chosen/share", "/certainty/strings/0/gauge_class/share", "/certainty/worlds",
    "/this/family", "/this/numbers/stretch/value", "/other/numbers/tension_n/low", "/comparisons",
];

/// Another value of the same kind.
fn another(value: &Value) -> Value {
    match value {
        Value::Bool(value) => (!value).into(),
        Value::Number(number) => (0.3 - 0.4 * number.as_f64().unwrap()).into(),
        Value::String(text) if text == "synthetic" => "wound-gut".into(),
        Value::Array(all) => all.iter().map(another).collect(),
        // What was above is below.
        Value::Object(drawn) => {
            let mut other = drawn.clone();
            for (key, with) in [
                ("chance_above", "chance_below"),
                ("chance_below", "chance_above"),
                ("this", "other"),
                ("other", "this"),
            ] {
                other[key] = drawn[with].clone();
            }
            other["verdict"] = if drawn["verdict"] == "above" { "below" } else { "above" }.into();
            other.into()
        }
        _ => "synthetic".into(),
    }
}

#[test]
fn a_page_that_contradicts_its_reply_meets_one() {
    let pages = pages();
    let mut missed = Vec::new();
    for path in CHANGED {
        let there = pages
            .iter()
            .filter(|(reply, _)| reply.pointer(path).is_some_and(|value| !value.is_null()));
        let noticed = there.filter(|(reply, html)| {
            let mut reply = reply.clone();
            let value = reply.pointer_mut(path).unwrap();
            *value = another(value);
            objects(&reply, html)
        });
        if noticed.count() == 0 {
            missed.push(path);
        }
    }
    assert!(missed.is_empty(), "{missed:#?}");
}

#[test]
fn what_the_reader_has_no_check_for_meets_one() {
    let (reply, html) = &pages()[0];
    let title = sign("home-title");
    for new in [
        "<p>It sounds warmer than the other.</p>",
        "<p>Enjoy it.</p>",
        "<p>12</p>",
        "<p aria-label=\"very likely\"></p>",
        &format!("<p>{title}Find strings{}</p>", '\u{10_FFFD}'),
        "<table><thead><tr><th>A</th><th>B</th></tr></thead><tbody><tr><th>x</th><td>7</td></tr></tbody></table>",
    ] {
        let more = html.replacen("</article>", &format!("{new}</article>"), 1);
        assert_eq!(read_page(reply, &more, None).objections.len(), 1, "{new}");
    }
}

/// Where the figures of a page stand, in the text between its tags: the last digit of each.
fn last_digits(html: &str) -> Vec<usize> {
    let mut inside = false;
    let bytes = html.as_bytes();
    let mut found = Vec::new();
    for (i, byte) in bytes.iter().enumerate() {
        match byte {
            b'<' => inside = true,
            b'>' => inside = false,
            _ => {}
        }
        let ends = |next: u8, after: u8| {
            !(next.is_ascii_digit() || (next == b'.' && after.is_ascii_digit()))
        };
        if !inside && byte.is_ascii_digit() && ends(bytes[i + 1], bytes[i + 2]) {
            found.push(i);
        }
    }
    found
}

#[test]
fn a_shifted_figure_meets_one() {
    let (mut shifted, mut missed) = (0, Vec::new());
    for (reply, html) in pages() {
        let digits = last_digits(html);
        // Ten thousand figures would take minutes: every nineteenth is shifted, alone.
        for at in digits.into_iter().step_by(19) {
            let before = &html[..at];
            // What a picture shows is not read; see `words::PICTURES`.
            let picture =
                before.rfind("class=\"axes\"").is_some_and(|open| !before[open..].contains("</g>"))
                    || before
                        .rfind("class=\"scale-bar\"")
                        .is_some_and(|open| !before[open..].contains("</svg>"));
            // What a message says by itself, its table holds.
            if picture || of_a_message(before) {
                continue;
            }
            let digit = html.as_bytes()[at] - b'0';
            let other = format!("{}{}{}", before, (digit + 3) % 10, &html[at + 1..]);
            shifted += 1;
            if !objects(reply, &other) {
                let from = before.char_indices().rev().nth(60).map_or(0, |(i, _)| i);
                missed.push(format!("{} -> {}", &html[from..=at], (digit + 3) % 10));
            }
        }
    }
    assert!(shifted > 300, "only {shifted} figures were shifted");
    // What may be missed: a row of the table of strings that would do, when it becomes that of another such string;
    // and a figure to whose last digit nobody is bound, when the range is so wide that it may be rounded to tens.
    assert!(missed.len() * 100 <= shifted, "{} of {shifted}: {missed:#?}", missed.len());
    support::tell(&format!("{} of {shifted} shifted figures were seen", shifted - missed.len()));
}
