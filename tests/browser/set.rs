//! The answer on the page: the model is asked, and what it says is drawn and read back.

use std::rc::Rc;
use std::time::Duration;

use app::pages::set::SetPage;
use app::report_sheet::ReportSheet;
use app::words::picture::{self, Aspect};
use app::words::{days, doubt, naming, partials, plan, property, reasons, set as words, verdict};
use gloo::utils::document;
use protocol::reply::{Doubt, Fit, FittedString, Night, Partial, Point, Problem, Range, Reply};
use protocol::request::{Answers, FitRequest, Request, StringAnswer};
use wasm_bindgen_test::wasm_bindgen_test;
use yew::prelude::*;

fn fit(answers: Answers) -> Fit {
    match protocol::handle(&Request::Fit(Box::new(FitRequest { answers }))) {
        Reply::Fit(fit) => *fit,
        other => panic!("no fit but {other:?}"),
    }
}

#[derive(Clone, PartialEq, Properties)]
struct Props {
    fit: Rc<Fit>,
}

#[component]
fn Page(props: &Props) -> Html {
    html! {
        <SetPage fit={props.fit.clone()} answers={Rc::new(Answers::default())} label="Desk 3" today={0}
            on_change={Callback::noop()} on_compare={Callback::noop()} on_keep={Callback::noop()} on_download={Callback::noop()} />
    }
}

/// Draws a page for a fit, unfolds what is folded, and gives its element, its text, and the page to take down again.
async fn drawn(fit: Fit) -> (web_sys::Element, String, AppHandle<Page>) {
    let host = document().create_element("div").unwrap();
    document().body().unwrap().append_child(&host).unwrap();
    let page =
        yew::Renderer::<Page>::with_root_and_props(host.clone(), Props { fit: Rc::new(fit) });
    let page = page.render();
    still(&host).await;
    // What is folded within something folded is drawn when that is unfolded.
    for _ in 0..2 {
        let folded = host.query_selector_all("details").unwrap();
        for i in 0..folded.length() {
            let part: web_sys::Element =
                wasm_bindgen::JsCast::unchecked_into(folded.item(i).unwrap());
            part.set_attribute("open", "").unwrap();
        }
        still(&host).await;
    }
    let text = still(&host).await;
    (host, text, page)
}

/// The text of an element when its parts have come one after the other: it has not changed for half a second.
async fn still(host: &web_sys::Element) -> String {
    let mut text = String::new();
    loop {
        yew::platform::time::sleep(Duration::from_millis(500)).await;
        let before = std::mem::replace(&mut text, host.text_content().unwrap_or_default());
        if text == before && !text.is_empty() {
            return text;
        }
    }
}

/// The portraits on the page; the sheet, which is only seen in print, has its own.
const PORTRAITS: &str = ".portrait:not(.sheet .portrait)";

fn count(host: &web_sys::Element, selector: &str) -> u32 {
    host.query_selector_all(selector).unwrap().length()
}

#[wasm_bindgen_test]
async fn a_violin_gets_its_set_with_everything_said() {
    let fit = fit(Answers { instrument: Some("violin".to_owned()), ..Answers::default() });
    let set = fit.set.clone().unwrap();
    let (host, text, page) = drawn(fit).await;
    assert_eq!(count(&host, ".brief"), 4);
    assert_eq!(count(&host, ".string:not(.brief)"), 4);
    let portraits = 4 + if set.close_call { 8 } else { 4 };
    assert_eq!(count(&host, PORTRAITS), portraits);
    // What is not seen is said.
    for portrait in 0..portraits {
        let label = host
            .query_selector_all(PORTRAITS)
            .unwrap()
            .item(portrait)
            .and_then(|node| wasm_bindgen::JsCast::dyn_into::<web_sys::Element>(node).ok())
            .and_then(|element| element.get_attribute("aria-label"))
            .unwrap();
        assert!(label.contains("to scale"), "{label}");
    }
    assert!(count(&host, ".against li") >= 4, "every string has its cost");
    assert_eq!(count(&host, ".ask"), 4);
    for word in ["For your violin", "We took for granted", "to settle", "judgement", "Ask for"] {
        assert!(text.contains(word), "the page should say {word:?}");
    }
    for wrong in ["NaN", "inf", "undefined", "_cent", "_n_m", "wishes."] {
        assert!(!text.contains(wrong), "the page says {wrong:?}");
    }
    for (drawing, each) in [(".nights", 1), (".partials", 1), (".disputed", 1), (".balance", 3)] {
        assert_eq!(count(&host, drawing), 4 * each, "{drawing}");
    }
    assert_eq!(count(&host, ".nights .band"), 4 * 14);
    assert_eq!(count(&host, ".partials > svg .bar"), 4 * 16);
    assert_eq!(count(&host, ".balance .today"), 0, "nobody said what is on it now");
    for word in
        ["What to measure to know more", "somewhere within", "five cents", "of the doubt about"]
    {
        assert!(text.contains(word), "the page should say {word:?}");
    }
    assert_eq!(count(&host, "[style]"), 0, "the content policy forbids style attributes");
    // The sheet stands in the page and has a row for every string.
    assert_eq!(count(&host, ".sheet tbody tr"), 4);
    page.destroy();
    host.remove();
}

#[wasm_bindgen_test]
async fn nothing_that_fits_is_told_with_what_would_help() {
    let fit = fit(Answers {
        animal_free: true,
        strings: vec![StringAnswer {
            family: Some("plain-gut".to_owned()),
            ..StringAnswer::default()
        }],
        ..Answers::default()
    });
    assert!(fit.set.is_none());
    let (host, text, page) = drawn(fit).await;
    for word in
        ["Nothing fits", "come from an animal", "What would help", "the kind, note or limit"]
    {
        assert!(text.contains(word), "the page should say {word:?}: {text}");
    }
    assert!(!text.contains("for the E, A"), "only the E stands in the way: {text}");
    page.destroy();
    host.remove();
}

#[wasm_bindgen_test]
async fn old_strings_and_a_wolf_are_looked_at_first() {
    let fit = fit(Answers {
        instrument: Some("viola".to_owned()),
        now: Some("steel".to_owned()),
        age_months: Some(30.0),
        bothers: vec!["wolf".to_owned()],
        ..Answers::default()
    });
    assert_eq!(fit.verdict.answer, "luthier-first");
    let (host, text, page) = drawn(fit).await;
    let (looks, set) =
        (text.find("What may be behind it").unwrap(), text.find("We took for granted").unwrap());
    assert!(looks < set, "what may make a set needless comes before the set");
    assert!(text.contains("From today’s A to this one"));
    assert_eq!(count(&host, ".balance .today"), 12, "today’s string is a mark in every picture");
    assert!(text.contains("(today’s)"));
    page.destroy();
    host.remove();
}

#[wasm_bindgen_test]
fn every_key_of_the_model_has_its_words() {
    let tables = protocol::handle(&Request::Tables(protocol::request::TablesRequest {}));
    let Reply::Tables(tables) = tables else { panic!("tables were asked for") };
    for entry in &tables.properties {
        assert!(property::of(&entry.key).is_some(), "no words for {}", entry.key);
        assert_ne!(app::units::scale(&entry.key).unit, "", "no unit for {}", entry.key);
    }
    // The parts of a drift stand right under it, and no property stands twice.
    let keys: Vec<&str> = property::all().map(|p| p.key).collect();
    for (sum, parts) in [("evening_cent", 0..2), ("week_cent", 2..4), ("season_cent", 4..8)] {
        let drift = keys.iter().position(|k| *k == sum).unwrap();
        assert_eq!(keys[drift + 1..][..parts.len()], property::PARTS_OF_DRIFT[parts]);
    }
    assert!(keys.iter().all(|k| keys.iter().filter(|l| l == &k).count() == 1));
    assert_eq!(keys.len(), tables.properties.len());
    let cause = |owner: &str, which: &str| {
        doubt::cause(&Doubt { owner: owner.to_owned(), which: which.to_owned(), share: 1.0 })
    };
    for which in tables.constants.keys().map(String::as_str).chain(["sounding_length"]) {
        // Plain and wound strings, spirals and ropes are called by one name.
        let which = match which {
            "friction_plain" | "friction_wound" => "edge_friction",
            "constructional_spiral" | "constructional_rope" => "constructional",
            which => which,
        };
        assert_ne!(cause("", which), which, "no words for {which}");
    }
    for which in tables.core_materials[0].constants.keys() {
        assert!(!cause("gut", which).contains('_'), "no words for {which}");
        assert_ne!(cause("gut", which), format!("{which} of gut"));
    }
    for attribute in tables.base_weights.keys() {
        assert_ne!(reasons::attribute_means(attribute), "", "no words for {attribute}");
    }
    for family in &tables.words["family"] {
        assert_ne!(naming::family_is(family), family, "no words for {family}");
    }
    for key in strings::fit::plan::Caution::ALL {
        assert_ne!(plan::caution(key.key()), key.key());
    }
    for key in strings::fit::plan::Check::ALL {
        assert_ne!(plan::check(key.key()), key.key());
    }
    for key in strings::fit::complaint::Cause::ALL {
        assert_ne!(verdict::cause(key.key()).0, key.key());
    }
}

#[wasm_bindgen_test]
fn a_doubt_says_what_to_measure() {
    let doubt = |owner: &str, which: &str, share: f64| Doubt {
        owner: owner.to_owned(),
        which: which.to_owned(),
        share,
    };
    let doubts = [
        doubt("", "core_gauge", 0.6),
        doubt("spring-steel", "density", 0.3),
        doubt("silver", "density", 0.01),
    ];
    let said = doubt::sentence("tension_n", &doubts).unwrap();
    let wanted = "The diameter of the core decides 60\u{a0}% of the doubt about tension, the density of spring steel 30\u{a0}%.";
    assert!(said.starts_with(wanted), "{said}");
    assert!(said.contains("micrometer"), "{said}");
    assert_eq!(doubt::sentence("tension_n", &[]), None);
    for caveat in ["stress-not-measured", "wire-not-tabled", "breaks"] {
        assert!(doubt::caveat(caveat).ends_with('.'));
    }
}

#[wasm_bindgen_test]
fn strings_are_called_by_their_letters() {
    assert_eq!(naming::letters(["E5", "A4", "D4", "G3"]), ["E", "A", "D", "G"]);
    assert_eq!(naming::letters(["E5", "A4", "E4", "A3"]), ["high E", "high A", "low E", "low A"]);
    assert_eq!(naming::letters(["F#2", "Bb3", "B0"]), ["F♯", "B♭", "B"]);
    let names = ["E", "A", "D", "G"].map(str::to_owned);
    assert_eq!(
        words::families(&["plain-steel", "synthetic", "synthetic", "synthetic"], &names),
        "a plain steel E and synthetic A, D and G"
    );
    assert_eq!(words::families(&["plain-gut"; 4], &names), "plain gut strings throughout");
    assert_eq!(words::differing(&["a", "b"], &["a", "c"]), [1]);
}

#[wasm_bindgen_test]
fn the_picture_says_what_its_points_say() {
    // Eight times the stretch: days and cents by warmth and by damp as they are asked for.
    let title = |aspect: Aspect, cost: &dyn Fn(f64) -> f64| {
        let point = |i: i32| Point {
            family: "synthetic".to_owned(),
            stretch: 0.01 * f64::from(i),
            settling_d: cost(f64::from(i)),
            warmth_cent: cost(f64::from(i)),
            damp_cent: cost(f64::from(i)),
        };
        let points: Vec<Point> = (1..=8).map(point).collect();
        assert_eq!(picture::overlap(aspect, &points), None);
        picture::title(aspect, &points)
    };
    for (aspect, cost, said) in [
        (Aspect::Settling, 1.0, "More stretch costs time to settle: at best a day"),
        (Aspect::Settling, 0.01, "More stretch costs no time to settle: at best less than a day"),
        (Aspect::Settling, -1.0, "More stretch even settles sooner"),
        (Aspect::Warmth, 2.0, "More stretch costs steadiness in warmth"),
        (Aspect::Damp, 0.2, "More stretch costs nothing in damp"),
        (Aspect::Damp, -1.0, "More stretch is even steadier in damp"),
    ] {
        let title = title(aspect, &|i| if cost > 0.0 { cost * i } else { 9.0 + cost * i });
        assert!(title.starts_with(said), "{title}");
    }
    let title = title(Aspect::Warmth, &|i| 10.0 * (i - 4.0).abs());
    let said = "A middling stretch is steadiest in warmth: less than a cent at 4.0\u{a0}%";
    assert!(title.starts_with(said), "{title}");
    let few = picture::title(Aspect::Damp, &[]);
    assert!(few.contains("too much alike"), "{few}");
}

#[derive(Clone, PartialEq, Properties)]
struct PaperProps {
    string: Rc<FittedString>,
    problem: Rc<Problem>,
}

#[component]
fn Paper(props: &PaperProps) -> Html {
    html! { <ReportSheet string={props.string.clone()} problem={props.problem.clone()} name="A" label="Desk 3" /> }
}

#[wasm_bindgen_test]
async fn the_report_of_a_string_has_every_number_day_and_partial() {
    let fit = fit(Answers { instrument: Some("cello".to_owned()), ..Answers::default() });
    let string = fit.set.unwrap().strings[0].clone();
    let report = string.report.clone();
    let host = document().create_element("div").unwrap();
    document().body().unwrap().append_child(&host).unwrap();
    let props = PaperProps { string, problem: Rc::new(fit.problem) };
    let page = yew::Renderer::<Paper>::with_root_and_props(host.clone(), props).render();
    yew::platform::time::sleep(Duration::from_millis(400)).await;
    let rows = |selector: &str| count(&host, selector) as usize;
    assert_eq!(rows(".report-numbers tbody tr"), report.numbers.len());
    assert_eq!(rows(".report-curves tbody tr"), report.nights.len() + report.partials.len());
    let text = host.text_content().unwrap_or_default();
    for (key, q) in &report.numbers {
        assert!(text.contains(property::name(key)), "{key}");
        assert!(text.contains(&property::cited(&q.source)), "{key} rests on {}", q.source);
    }
    for wrong in ["NaN", "inf ", "undefined", "_cent"] {
        assert!(!text.contains(wrong), "the report says {wrong:?}");
    }
    assert_eq!(rows("[style]"), 0);
    page.destroy();
    host.remove();
}

#[wasm_bindgen_test]
fn days_are_called_likely_as_their_chances_are() {
    for (chance, word) in [
        (1.0, "very likely"),
        (0.85, "very likely"),
        (0.84, "likely"),
        (0.65, "likely"),
        (0.5, "a close call"),
        (0.3, "unlikely"),
        (0.1, "very unlikely"),
    ] {
        assert_eq!(days::likely(chance), word, "{chance}");
    }
    assert_eq!(days::of_hundred(1.0), "over 99 of 100");
    assert_eq!(days::of_hundred(0.0), "under 1 of 100");
    let night = |day: u32, chance: f64| Night {
        day,
        lost_cent: Range { value: 4.0, low: 3.0, high: 6.0 },
        chance,
    };
    let title = |chances: &[f64]| {
        let nights: Vec<Night> =
            (1..).zip(chances).map(|(day, chance)| night(day, *chance)).collect();
        days::title(&nights, "A")
    };
    assert_eq!(title(&[0.9, 0.95]), "The A has very likely settled on the first day");
    assert_eq!(title(&[0.2, 0.7, 0.9]), "The A has likely settled on day 2, very likely on day 3");
    assert_eq!(title(&[0.1, 0.5]), "That the A has settled within 2 days is a close call");
    assert!(title(&[0.1, 0.7]).contains("but not even after 2 days very likely"));
    let nights = [night(1, 0.2), night(2, 0.9), night(3, 1.0)];
    assert_eq!(days::runs(&nights), [("unlikely", 1, 1), ("very likely", 2, 3)]);
    assert_eq!(
        days::lost(&Range { value: 2.0, low: 1.0, high: 6.0 }),
        "2.0\u{a0}cents (1.0 to 6.0)"
    );
}

#[wasm_bindgen_test]
fn partials_are_told_by_what_takes_most() {
    let partial = |n: u32, most: &str| Partial {
        n,
        frequency_hz: 440.0 * f64::from(n),
        sharpness_cent: 0.0,
        loss_air: 0.0,
        loss_string: 0.0,
        loss_bending: 0.0,
        loss_bridge: 0.001,
        q: 1000.0,
        ring_s: 1.0,
        most: most.to_owned(),
    };
    let all = |most: &[&str]| -> Vec<Partial> {
        (1..).zip(most).map(|(n, most)| partial(n, most)).collect()
    };
    let same = all(&["bridge", "bridge"]);
    assert_eq!(
        partials::title(&same, "A"),
        "Each of the first 2 partials of the A goes mostly to the bridge"
    );
    let mixed = all(&["bridge", "bridge", "air", "bending"]);
    assert_eq!(
        partials::title(&mixed, "A"),
        "Of the A’s partials go 1 to 2 mostly to the bridge, 3 mostly to the air and 4 mostly into bending"
    );
}
