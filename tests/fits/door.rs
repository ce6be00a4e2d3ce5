//! The door as its page describes it: the examples work, and what is wrong is named.

use std::cell::RefCell;
use std::pin::pin;
use std::task::{Context, Poll, Waker};

use serde_json::{Value, json};

const PAGE: &str = include_str!("../../src/protocol/README.md");

fn answer(request: &Value) -> Value {
    serde_json::from_str(&protocol::answer(&request.to_string())).unwrap()
}

/// The JSON blocks of the page, in order.
fn examples() -> Vec<Value> {
    let blocks = PAGE.split("```json").skip(1).filter_map(|rest| rest.split("```").next());
    blocks
        .map(|text| serde_json::from_str(text).unwrap_or_else(|e| panic!("{e}: {text}")))
        .collect()
}

#[test]
fn the_examples_of_the_page_are_answered_as_it_says() {
    let examples = examples();
    assert_eq!(examples.len(), 9);
    assert_eq!(answer(&examples[0])["reply"], "report");
    let fit = answer(&examples[1]);
    assert_eq!(fit["reply"], "fit");
    assert!(fit["set"]["strings"].as_array().unwrap().len() == 4);
    assert_eq!(answer(&examples[2])["reply"], "fit");
    assert_eq!(answer(&examples[3]), examples[4], "the refusal reads as printed");
    let map = answer(&examples[5]);
    assert_eq!(map["rows"][0]["row"], 7);
    assert_eq!(map["rows"][0]["cells"].as_array().unwrap().len(), 24);
    let sound = answer(&examples[6]);
    assert!(sound["samples"].as_array().unwrap().len() > 48_000);
    assert_eq!(answer(&examples[7])["strings"].as_array().unwrap().len(), 1);
    assert_eq!(answer(&examples[8])["strings"][0]["months"].as_array().unwrap().len(), 12);
}

#[test]
fn a_pull_and_a_year_agree_with_the_report_of_the_same_string() {
    let mut request = examples()[7].clone();
    request["pull_m"] = json!(0);
    let player = &request["strings"][0];
    let ask = json!({ "ask": "report", "construction": player["construction"], "setting": player["setting"] });
    let report = answer(&ask);
    let still = answer(&request)["strings"][0].clone();
    let near = |a: &Value, b: f64| (a.as_f64().unwrap() - b).abs() <= 1e-9 * b.abs().max(1e-6);
    for name in ["stretch", "tension_n", "breaking_share"] {
        assert!(
            near(&still[name]["value"], report["numbers"][name]["value"].as_f64().unwrap()),
            "{name}"
        );
    }
    assert!(near(&still["above_cent"]["value"], 0.0), "{still}");
    // Let back by what it is told, it is slack: no pitch, no tension.
    request["pull_m"] = json!(-still["slack_m"]["value"].as_f64().unwrap());
    let slack = answer(&request)["strings"][0].clone();
    assert!(slack["above_cent"].is_null() && slack["pitch_hz"].is_null(), "{slack}");
    assert!(slack["tension_n"]["value"].as_f64().unwrap().abs() < 1e-9, "{slack}");
    // From January to July the parts of a year are those of the report, and July is January's opposite without gut.
    request["ask"] = json!("year");
    request.as_object_mut().unwrap().remove("pull_m");
    let months = answer(&request)["strings"][0]["months"].clone();
    let cent = |month: usize| months[month - 1]["above_cent"]["value"].as_f64().unwrap();
    let part = |name: &str| report["numbers"][name]["value"].as_f64().unwrap();
    let expected = part("season_cent");
    assert!((cent(7) - cent(1) - expected).abs() < 1e-9 * expected.abs(), "{months}");
    assert!((cent(7) + cent(1)).abs() < 1e-9 && cent(4).abs() < 1e-9, "{months}");
}

#[test]
fn a_place_has_the_most_usual_string_of_each_family_that_is_made_there() {
    let place = |answers: Value, string: usize| {
        let reply = answer(&json!({ "ask": "place", "answers": answers, "string": string }));
        assert_eq!(reply["reply"], "place", "{reply}");
        reply
    };
    let families = |reply: &Value| -> Vec<String> {
        let all = reply["families"].as_array().unwrap();
        all.iter().map(|f| f["report"]["family"].as_str().unwrap().to_owned()).collect()
    };
    let a = place(json!({ "instrument": "violin", "a4_hz": 442 }), 1);
    assert_eq!(a["notes"], json!(["E5", "A4", "D4", "G3"]));
    assert_eq!(a["setting"]["pitch_hz"], 442.0);
    for family in ["plain-gut", "wound-gut", "wound-steel", "synthetic"] {
        assert!(families(&a).contains(&family.to_owned()), "{family} is made for a violin's A");
    }
    for one in a["families"].as_array().unwrap() {
        assert_eq!(one["report"]["setting"], a["setting"]);
    }
    // A family comes once.
    let mut once = families(&a);
    once.sort();
    once.dedup();
    assert_eq!(once.len(), families(&a).len());
    assert!(families(&place(json!({}), 0)).contains(&"plain-steel".to_owned()), "a violin's E");
    let wrong =
        answer(&json!({ "ask": "place", "answers": { "instrument": "cello" }, "string": 4 }));
    assert_eq!(wrong["faults"][0]["field"], "string");
    assert_eq!(wrong["faults"][0]["allowed"], "0 to 3");
}

#[test]
fn every_fault_of_a_lesson_is_named() {
    let wrong = |i: usize, field: &str, value: Value| {
        let mut request = examples()[i].clone();
        request[field] = value;
        let reply = answer(&request);
        assert_eq!(reply["reply"], "refused", "{field}");
        assert!(reply["faults"][0]["field"].as_str().unwrap().starts_with(field), "{reply}");
    };
    wrong(7, "pull_m", json!(0.06));
    wrong(7, "pull_m", json!(-0.6));
    for i in [7, 8] {
        wrong(i, "strings", json!([]));
        let mut string = examples()[i]["strings"].clone();
        string[0]["setting"]["humidity"] = json!(2.0);
        wrong(i, "strings", string);
    }
}

#[test]
fn a_map_row_by_row_is_the_map_at_once_and_the_page_gets_samples_apart() {
    let mut request = examples()[5].clone();
    request["count"] = json!(5);
    request["row"] = Value::Null;
    let whole = answer(&request);
    for row in 0..5 {
        request["row"] = json!(row);
        let one = answer(&request);
        assert_eq!(one["rows"][0], whole["rows"][row]);
        assert_eq!((&one["at"], &one["forces_n"]), (&whole["at"], &whole["forces_n"]));
    }
    let (mut told, request) = (Vec::new(), examples()[6].to_string());
    let (text, samples) = protocol::answer_telling(&request, &mut |share| told.push(share));
    let whole: Value = serde_json::from_str(&protocol::answer(&request)).unwrap();
    let text: Value = serde_json::from_str(&text).unwrap();
    assert_eq!(told, [1.0]);
    assert_eq!(text["samples"], json!([]));
    assert_eq!(whole["samples"].as_array().unwrap().len(), samples.unwrap().len());
}

#[test]
fn every_fault_of_a_string_under_the_bow_is_named() {
    let wrong = |i: usize, field: &str, value: Value| {
        let mut request = examples()[i].clone();
        request[field] = value;
        let reply = answer(&request);
        assert_eq!(reply["reply"], "refused", "{field}");
        assert!(reply["faults"][0]["field"].as_str().unwrap().starts_with(field), "{reply}");
    };
    wrong(5, "map", json!("speed"));
    wrong(5, "instrument", json!("viol"));
    wrong(5, "count", json!(1000));
    wrong(5, "row", json!(24));
    wrong(6, "piece", json!("trill"));
    wrong(6, "strings", json!([]));
    wrong(6, "loudness_lufs", json!(3));
    let mut string = examples()[6]["strings"].clone();
    string[0]["setting"]["pitch_hz"] = json!(4.0);
    wrong(6, "strings", string);
}

#[test]
fn every_fault_names_field_value_and_what_is_allowed() {
    let core = |build: &str| json!({"material": "gut", "build": build, "diameter_m": 0.001, "twist_deg": 25});
    let cases = [
        (
            json!({"ask": "fit", "answers": {"sounding_length_m": 3.0}}),
            "answers.sounding_length_m",
            "3",
            "m (sounding length)",
        ),
        (
            json!({"ask": "fit", "answers": {"instrument": "cello", "size": "15 in"}}),
            "answers.size",
            "15 in",
            "4/4",
        ),
        (
            json!({"ask": "fit", "answers": {"wishes": {"colour": 3}}}),
            "answers.wishes.colour",
            "3",
            "-2 to 2",
        ),
        (
            json!({"ask": "fit", "answers": {"bothers": ["squeaks"]}}),
            "answers.bothers[0]",
            "squeaks",
            "whistles",
        ),
        (
            json!({"ask": "fit", "answers": {"strings": [{"note": "H4"}]}}),
            "answers.strings[0].note",
            "H4",
            "scientific pitch",
        ),
        (json!({"ask": "fit", "answers": {"aim": "less"}}), "answers.aim", "less", "is-it-time"),
        (
            json!({"ask": "fit", "answers": {"also_tuned": [{}]}}),
            "answers.also_tuned[0]",
            "nothing",
            "a4_hz, semitones",
        ),
        (
            json!({"ask": "fit", "answers": {"also_tuned": [{"semitones": 13}]}}),
            "answers.also_tuned[0].semitones",
            "13",
            "-12 to 12",
        ),
        (
            json!({"ask": "fit", "answers": {"strings": [{"keep": true}]}}),
            "answers.strings[0].today.family",
            "nothing",
            "answers.now",
        ),
        (
            json!({"ask": "fit", "answers": {"strings": [{}, {"today": {"family": "silk"}}]}}),
            "answers.strings[1].today.family",
            "silk",
            "wound-gut",
        ),
        (
            json!({"ask": "fit", "answers": {"strings": [{"today": {"gauge_class": "thick"}}]}}),
            "answers.strings[0].today.gauge_class",
            "thick",
            "heavy",
        ),
        (
            json!({"ask": "fit", "answers": {"strings": [{"today": {"outer_metal": "lead"}}]}}),
            "answers.strings[0].today.outer_metal",
            "lead",
            "silver",
        ),
        (
            json!({"ask": "fit", "answers": {"strings": [{"today": {"age_months": -1}}]}}),
            "answers.strings[0].today.age_months",
            "-1",
            "0 to 600",
        ),
        (
            json!({"ask": "fit", "answers": {"strings": [{"bothers": ["thin", "fat"]}]}}),
            "answers.strings[0].bothers[1]",
            "fat",
            "breaks-at-the-peg",
        ),
        (
            json!({"ask": "fit", "answers": {"weights": {"beauty": 1}}}),
            "answers.weights",
            "beauty",
            "elasticity",
        ),
        (
            json!({"ask": "fit", "answers": {"concert_days": "soon"}}),
            "answers.concert_days",
            "soon",
            "a number",
        ),
        (json!({"ask": "fit", "answers": {"colour": 1}}), "answers.colour", "1", "instrument"),
        (json!({"ask": "fit", "answers": []}), "answers", "a list", "object"),
        (json!({"ask": "sing"}), "ask", "sing", "compare, stretch, year, place, fit"),
        (json!({"construction": {}}), "ask", "nothing", "compare, stretch, year, place, fit"),
        (json!("fit"), "request", "fit", "one JSON object"),
        (
            json!({"ask": "report", "construction": {"core": core("solid")}, "setting": {"sounding_length_m": 0.3, "pitch_hz": 440}}),
            "construction.core.build",
            "solid for gut",
            "gut: twisted",
        ),
        (
            json!({"ask": "report", "construction": {"core": core("twisted")}, "setting": {"pitch_hz": 440}}),
            "setting.sounding_length_m",
            "nothing",
            "must be given",
        ),
        (
            json!({"ask": "report", "construction": {"core": core("twisted"), "windings": [{"metal": "lead", "form": "flat", "thickness_m": 0.0001}]},
                "setting": {"sounding_length_m": 0.3, "pitch_hz": 440}}),
            "construction.windings[0].metal",
            "lead",
            "tungsten",
        ),
    ];
    for (request, field, value, allowed) in cases {
        let reply = answer(&request);
        assert_eq!(reply["reply"], "refused", "{request}");
        let fault = &reply["faults"][0];
        assert_eq!(fault["field"], field, "{request}: {fault}");
        assert!(fault["value"].as_str().unwrap().contains(value), "{request}: {fault}");
        assert!(fault["allowed"].as_str().unwrap().contains(allowed), "{request}: {fault}");
        let message = fault["message"].as_str().unwrap();
        assert!(
            message.contains(field) && message.contains(value) && message.contains(allowed),
            "{message}"
        );
    }
}

#[test]
fn text_that_is_no_request_is_refused_and_nothing_panics() {
    for text in [
        "",
        "{",
        "null",
        "[]",
        "{\"ask\":",
        "\u{0}",
        "{\"ask\":\"fit\",\"answers\":{\"a4_hz\":1e999}}",
        "{\"ask\":7}",
        "𝄞",
    ] {
        let reply: Value = serde_json::from_str(&protocol::answer(text)).unwrap();
        assert_eq!(reply["reply"], "refused", "{text}");
    }
    let deep = "[".repeat(10_000);
    assert!(protocol::answer(&deep).contains("refused"));
}

#[test]
fn the_schema_is_written_for_requests_and_replies() {
    let schema = protocol::schema();
    for part in ["request", "reply"] {
        assert!(schema[part]["oneOf"].as_array().is_some_and(|all| all.len() >= 4), "{part}");
    }
}

#[test]
fn a_saved_file_that_is_broken_keeps_what_can_be_read() {
    let text = json!({
        "format": "ropewalk-fitting", "version": 1, "label": "Desk 3 viola, 15 in",
        "answers": {"instrument": "viola", "size": 15, "a4_hz": 442, "colour": "blue"},
        "drafts": {"sounding_length_m": "0.3", "age_months": 7},
        "fittings": [{"at": "2026-11-25T10:00:00Z", "answers": {}}, {"answers": {}}],
    })
    .to_string();
    let (document, notes) = protocol::document::restore(&text);
    assert_eq!(document.label, "Desk 3 viola, 15 in");
    assert_eq!(document.answers.instrument.as_deref(), Some("viola"));
    assert_eq!(document.answers.a4_hz, Some(442.0));
    assert_eq!(
        document.typed.get("sounding_length_m").map(|typed| typed.text.as_str()),
        Some("0.3")
    );
    assert_eq!(document.fittings.len(), 1);
    assert_eq!(notes.len(), 4, "{notes:?}");
    for foreign in [
        "",
        "{}",
        "[1]",
        "{\"format\":\"another\"}",
        "{\"format\":\"ropewalk-fitting\",\"version\":99}",
    ] {
        let (empty, notes) = protocol::document::restore(foreign);
        assert_eq!(empty, protocol::document::Document::default());
        assert_eq!(notes.len(), 1, "{foreign}");
    }
    // Nothing that is new since then stands in a file of before.
    let (before, notes) = protocol::document::restore(
        &json!({"format": "ropewalk-fitting", "version": 1, "answers": {"instrument": "cello",
            "strings": [{"note": "A3"}, {"family": "synthetic"}], "bothers": ["wolf"]}})
        .to_string(),
    );
    assert_eq!((before.answers.strings.len(), notes.len()), (2, 0));
    let (again, notes) = protocol::document::restore(&protocol::document::save(&document));
    assert_eq!((again, notes.len()), (document, 0));
}

/// Two workers or one: the same reply to the byte; and half a message is as good as none.
#[test]
fn a_shared_fit_is_the_same_fit() {
    let ready = |request: &str, helped: Option<Vec<f64>>| {
        let answers = protocol::split_search::asked(request).unwrap();
        let helped = std::future::ready(helped);
        let mut answer = pin!(protocol::split_search::answer(&answers, helped, async |_| ()));
        match answer.as_mut().poll(&mut Context::from_waker(Waker::noop())) {
            Poll::Ready(reply) => reply,
            Poll::Pending => panic!("nothing is waited for"),
        }
    };
    let people = [
        json!({"instrument": "violin"}),
        json!({"instrument": "viola", "music": "folk"}),
        json!({"instrument": "cello", "aim": "one-string"}),
        json!({"instrument": "double-bass", "wishes": {"brightness": 2.0}}),
        json!({"instrument": "violin", "set_up": "historical"}),
    ];
    for answers in people {
        let request = json!({"ask": "fit", "answers": answers}).to_string();
        let alone = protocol::answer(&request);
        let helped =
            protocol::split_search::helped(&protocol::split_search::asked(&request).unwrap());
        assert!(helped.len() > 20, "the helper did nothing for {request}");
        let cut = helped[..helped.len() - 3].to_vec();
        for helped in [Some(helped), Some(cut), Some(vec![f64::NAN; 6]), None] {
            assert!(alone == ready(&request, helped), "another fit for {request}");
        }
    }
    for other in ["", "{\"ask\":\"tables\"}", "{\"ask\":\"fit\",\"answers\":{\"a4_hz\":1}}"] {
        assert!(protocol::split_search::asked(other).is_none(), "{other}");
    }
}

/// A helper that never answers costs a pause; one that answers while its places are searched saves the rest of them.
#[test]
fn a_silent_helper_holds_up_no_fit() {
    let request = json!({"ask": "fit", "answers": {"instrument": "cello"}}).to_string();
    let answers = protocol::split_search::asked(&request).unwrap();
    let alone = protocol::answer(&request);
    let half = protocol::split_search::helped(&answers);
    for answers_at_pause in [1, usize::MAX] {
        let pauses = RefCell::new(Vec::new());
        let helped = std::future::poll_fn(|_| {
            let late = pauses.borrow().len() < answers_at_pause;
            if late { Poll::Pending } else { Poll::Ready(Some(half.clone())) }
        });
        let pause = async |ms: u32| pauses.borrow_mut().push(ms);
        let mut answer = pin!(protocol::split_search::answer(&answers, helped, pause));
        let Poll::Ready(reply) = answer.as_mut().poll(&mut Context::from_waker(Waker::noop()))
        else {
            panic!("it waits for a helper that does not answer");
        };
        assert!(alone == reply, "another fit");
        // It waits a little once, and then only lets messages in.
        let pauses = pauses.borrow();
        assert!(pauses[0] > 0 && pauses[0] < 100, "{pauses:?}");
        assert!(pauses[1..].iter().all(|ms| *ms == 0), "{pauses:?}");
        assert!(pauses.len() <= 2, "{pauses:?}");
    }
}
