//! Seven instruments as people bring them, each fitted on the page and again without a network.

use fantoccini::Locator;
use serde_json::{Value, json};

use crate::support::{Page, drive};

/// An instrument: what is ticked and typed on the page, and what the heading of its set must name.
struct Situation {
    what: &'static str,
    ticks: &'static [(&'static str, &'static str)],
    typed: &'static [(&'static str, &'static str)],
    /// The same in the words of the door, for the numbers behind the page.
    answers: fn() -> Value,
    strings: usize,
    named: &'static [&'static str],
}

const SITUATIONS: [Situation; 7] = [
    Situation {
        what: "a full-size modern violin",
        ticks: &[("instrument", "violin"), ("size", "4/4"), ("set_up", "modern")],
        typed: &[],
        answers: || json!({"instrument": "violin", "size": "4/4", "set_up": "modern"}),
        strings: 4,
        named: &["violin", "steel E"],
    },
    Situation {
        what: "a baroque violin at 415 Hz",
        ticks: &[("instrument", "violin"), ("set_up", "historical"), ("music", "early")],
        typed: &[("a4_hz", "415")],
        answers: || json!({"instrument": "violin", "set_up": "historical", "a4_hz": 415, "music": "early"}),
        strings: 4,
        named: &["violin", "gut"],
    },
    Situation {
        what: "a 15 in viola",
        ticks: &[("instrument", "viola"), ("size", "15 in")],
        typed: &[],
        answers: || json!({"instrument": "viola", "size": "15 in"}),
        strings: 4,
        named: &["viola"],
    },
    Situation {
        what: "an orchestral cello",
        ticks: &[("instrument", "cello"), ("music", "classical")],
        typed: &[],
        answers: || json!({"instrument": "cello", "music": "classical"}),
        strings: 4,
        named: &["cello", "steel"],
    },
    Situation {
        what: "a jazz bass",
        ticks: &[("instrument", "double-bass"), ("music", "jazz")],
        typed: &[],
        answers: || json!({"instrument": "double-bass", "music": "jazz"}),
        strings: 4,
        named: &["bass", "steel"],
    },
    Situation {
        what: "a quarter-size school violin",
        ticks: &[("instrument", "violin"), ("size", "1/4"), ("level", "beginner")],
        typed: &[],
        answers: || json!({"instrument": "violin", "size": "1/4", "level": "beginner"}),
        strings: 4,
        named: &["violin", "steel"],
    },
    Situation {
        what: "nobody knows anything",
        ticks: &[],
        typed: &[],
        answers: || json!({}),
        strings: 4,
        named: &["violin", "steel E"],
    },
];

impl Page {
    /// Clicks whatever this finds, wherever it lies on the page.
    async fn reach(&self, css: &str) {
        let script = "const e = document.querySelector(arguments[0]); e.scrollIntoView({block: 'center'}); e.click();";
        self.client
            .execute(script, vec![json!(css)])
            .await
            .unwrap_or_else(|e| panic!("{css}: {e}"));
    }

    /// Forgets what was kept and begins on the page of all questions.
    async fn begin(&self) {
        self.seed(&json!({ "format": "ropewalk-fitting", "version": 1 })).await;
        self.script("location.hash = '#/'").await;
        self.reload().await;
        self.until("the front door", "return document.querySelector('main h1') !== null").await;
        self.script("location.hash = '#/everything'").await;
        self.until("all questions", "return document.querySelector('input[name=budget]') !== null")
            .await;
    }

    /// Answers as one situation says, and waits for its set.
    async fn fit(&self, situation: &Situation) -> Value {
        self.begin().await;
        for (name, value) in situation.ticks {
            let css = format!("input[name={name}][value='{value}']");
            let there = format!("return document.querySelector({}) !== null", json!(css));
            self.until(&format!("{name} takes {value}"), &there).await;
            self.reach(&css).await;
        }
        for (id, text) in situation.typed {
            self.client
                .find(Locator::Css(&format!("[id='{id}']")))
                .await
                .unwrap()
                .send_keys(text)
                .await
                .unwrap();
        }
        self.reach("main button[type=submit]").await;
        self.until(
            situation.what,
            "return document.querySelectorAll('main section.string').length > 0",
        )
        .await;
        // Its last part, drawn a moment after the first.
        self.until("all of it is drawn", "return !!document.querySelector('.sheet')").await;
        self.open_everything().await;
        self.script(
            "return {
                heading: ['main h1', '.set-kind', '.equal p'].map((what) => document.querySelector(what)?.textContent).join(' '),
                strings: document.querySelectorAll('main section.brief').length,
                portraits: document.querySelectorAll('main .portraits svg').length,
                text: document.querySelector('main').textContent,
            }",
        )
        .await
    }
}

/// What the page shows is complete, and fit to be read to a customer.
fn assert_complete(situation: &Situation, shown: &Value) {
    let what = situation.what;
    assert_eq!(shown["strings"], situation.strings, "{what}");
    assert!(
        shown["portraits"].as_u64().unwrap() >= situation.strings as u64,
        "{what}: a string without a portrait"
    );
    let heading = shown["heading"].as_str().unwrap();
    for word in situation.named {
        assert!(heading.contains(word), "{what}: “{heading}” does not say {word}");
    }
    let text = shown["text"].as_str().unwrap();
    for broken in ["NaN", "undefined", "Infinity", "null", "inf "] {
        assert!(!text.contains(broken), "{what}: “{broken}” on the page");
    }
    for part in ["Ask for", "What it costs you", "with care", "luthier", "safe"] {
        assert!(text.contains(part), "{what}: the page does not hold “{part}”");
    }
}

/// The numbers behind the page lie in the bands within which such strings are made.
fn assert_in_bands(situation: &Situation, reply: &Value) {
    let strings = reply["set"]["strings"].as_array().unwrap();
    assert_eq!(strings.len(), situation.strings);
    for string in strings {
        let number = |key: &str| string["report"]["numbers"][key]["value"].as_f64().unwrap();
        for (key, band) in
            [("tension_n", "tension_n"), ("outer_diameter_m", "gauge_m"), ("stretch", "stretch")]
        {
            let (low, high) = (
                string["bands"][band][0].as_f64().unwrap(),
                string["bands"][band][1].as_f64().unwrap(),
            );
            let slack = 1e-9;
            let value = number(key);
            assert!(
                value >= low - slack && value <= high + slack,
                "{}: {key} {value} outside {low} to {high}",
                situation.what
            );
        }
        if situation.ticks.is_empty() {
            assert_eq!(string["grade"], "everyday");
            assert_eq!(string["shopping"]["gauge_class"], "medium");
        }
    }
    assert!(reply["set"]["plan"]["cautions"].as_array().unwrap().len() >= 5);
}

#[test]
fn seven_instruments_are_fitted_with_a_network_and_without() {
    drive(async |page| {
        page.kept().await;
        let mut headings = Vec::new();
        for situation in &SITUATIONS {
            let shown = page.fit(situation).await;
            assert_complete(situation, &shown);
            let request = json!({"ask": "fit", "answers": (situation.answers)()});
            let reply = page.ask(request).await.unwrap();
            assert_in_bands(situation, &reply);
            // The longest sheet is the one that says how sure the set is.
            page.until(situation.what, "return !!document.querySelector('.sheet-sure')").await;
            assert_eq!(
                page.print(&format!("sheet {}", situation.what)).await,
                1,
                "{}: the sheet",
                situation.what
            );
            headings.push(shown["heading"].clone());
        }
        page.end_server();
        page.reload().await;
        for (situation, heading) in SITUATIONS.iter().zip(&headings) {
            let shown = page.fit(situation).await;
            assert_complete(situation, &shown);
            assert_eq!(
                &shown["heading"], heading,
                "{}: another set without a network",
                situation.what
            );
        }
    });
}
