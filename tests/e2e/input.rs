//! What scripts may hand to the page, and what a page that lives long keeps: nothing wrong is taken, nothing piles up.

use std::time::Duration;

use serde_json::{Value, json};

use crate::support::{Page, drive};

/// What `JSON.stringify` would leave out, turn into something else or throw over, and what comes of it as a member:
/// how it is written, and the kind of the error or else the value that the refusal names.
const ODD: [(&str, &str); 22] = [
    ("NaN", "NaN"),
    ("Infinity", "Infinity"),
    ("-Infinity", "-Infinity"),
    ("12n", "a BigInt"),
    ("Symbol('x')", "a symbol"),
    ("() => 1", "a function"),
    ("new Map([['instrument', 'violin']])", "an object of a class"),
    ("new Set([1])", "an object of a class"),
    ("new Number(NaN)", "an object of a class"),
    ("new Float64Array(4)", "an object of a class"),
    ("new (class { a = 1 })()", "an object of a class"),
    ("Object.create({ instrument: 'violin' })", "an object of a class"),
    ("new Proxy({}, { getPrototypeOf() { throw new Error('thrown') } })", "an object of a class"),
    ("{ toJSON() { return NaN } }", "NaN"),
    ("{ toJSON() { throw new Error('thrown') } }", "not-json: thrown"),
    ("{ get a() { throw new Error('thrown') } }", "not-json: thrown"),
    ("{ get a() { throw { get message() { throw 1 } } } }", "not-json: something was thrown"),
    ("{ get a() { return request } }", "not-json: circular"),
    ("request", "not-json: circular"),
    (
        "(() => { const { proxy, revoke } = Proxy.revocable({}, {}); revoke(); return proxy })()",
        "not-json: revoked",
    ),
    ("new Proxy({}, { ownKeys() { throw new Error('thrown') } })", "not-json: thrown"),
    (
        "new Proxy([], { get(of, key) { if (key === 'length') throw new Error('thrown'); return of[key] } })",
        "not-json: thrown",
    ),
];

/// Where they are put: the path, and how the refusal names it.
const PLACES: [(&str, &str); 7] = [
    ("['ask']", "ask"),
    ("['answers']", "answers"),
    ("['answers']['a4_hz']", "answers.a4_hz"),
    ("['answers']['instrument']", "answers.instrument"),
    ("['answers']['strings'][1]", "answers.strings[1]"),
    ("['answers']['weights']['feel']", "answers.weights.feel"),
    ("['answers']['must_settle']", "answers.must_settle"),
];

/// Asks for what an expression makes, with a fit as `request`.
async fn ask(page: &Page, change: &str) -> Result<Value, String> {
    let script = format!(
        "const request = {{ ask: 'fit', answers: {{ instrument: 'violin', strings: [{{}}, {{}}], weights: {{ feel: 1 }} }} }};
        {change}; return await window.ropewalk.ask(request)"
    );
    page.script_async(&script, Vec::new()).await
}

/// The page still answers, and leads where a link leads.
async fn lives(page: &Page) {
    assert_eq!(page.ask(json!({ "ask": "report" })).await.unwrap()["reply"], "refused");
    page.script("location.hash = '#/everything'").await;
    page.until("a link leads on", "return document.querySelectorAll('main input').length > 20")
        .await;
    page.script("location.hash = '#/'").await;
    page.until("a link leads back", "return document.querySelectorAll('main input').length < 20")
        .await;
}

#[test]
fn whatever_a_script_asks_is_answered_or_refused_by_name() {
    drive(async |page| {
        for (odd, expected) in ODD {
            for (place, field) in PLACES {
                let answer = ask(page, &format!("request{place} = {odd}")).await;
                match (expected.strip_prefix("not-json: "), answer) {
                    (Some(says), Err(error)) => assert!(
                        error.starts_with("not-json: ") && error.contains(says),
                        "{odd} at {field}: {error}"
                    ),
                    (None, Ok(reply)) => {
                        let fault = &reply["faults"][0];
                        assert_eq!(fault["field"], field, "{odd}: {reply}");
                        assert!(
                            fault["value"].as_str().unwrap().contains(expected),
                            "{odd} at {field}: {reply}"
                        );
                    }
                    (_, other) => panic!("{odd} at {field}: {other:?}"),
                }
            }
        }
        lives(page).await;
    });
}

#[test]
fn a_request_that_is_too_deep_or_too_large_is_refused_and_the_page_lives() {
    drive(async |page| {
        let nested = |levels: u32| {
            format!(
                "let deep = 1; for (let i = 0; i < {levels}; i += 1) deep = {{ a: deep }}; request.answers = deep"
            )
        };
        let refused = [
            (nested(20), "answers.a.a", "deeper nesting"),
            (nested(4_000), "request", "more than 1000 values"),
            (nested(100_000), "request", "more than 1000 values"),
            (
                "const fresh = () => ({ get a() { return fresh() } }); request.answers = fresh()"
                    .to_owned(),
                "request",
                "more than 1000 values",
            ),
            (
                "request.answers.strings = new Array(10_000_000).fill({})".to_owned(),
                "request",
                "more than 1000 values",
            ),
            (
                "request.answers.size = 'x'.repeat(100_000_000)".to_owned(),
                "request",
                "more than 65536 bytes",
            ),
            (
                "request.answers['x'.repeat(100_000)] = 1".to_owned(),
                "request",
                "more than 65536 bytes",
            ),
            ("request.answers.size = 'x'.repeat(1000)".to_owned(), "answers.size", "xxx"),
        ];
        // More than once, for what is lost on the way adds up.
        for _ in 0..20 {
            for (change, field, value) in &refused {
                let reply = ask(page, change).await.unwrap();
                let fault = &reply["faults"][0];
                let says = |part: &str, what: &str| fault[part].as_str().unwrap().contains(what);
                assert!(says("field", field) && says("value", value), "{change}: {reply}");
            }
        }
        for (request, value) in [
            ("undefined", "undefined"),
            ("null", "null"),
            ("'fit'", "fit"),
            ("[1]", "[1]"),
            ("NaN", "NaN"),
        ] {
            let script = format!("return await window.ropewalk.ask({request})");
            let reply = page.script_async(&script, Vec::new()).await.unwrap();
            assert_eq!(reply["faults"][0]["field"], "request", "{request}: {reply}");
            assert!(reply["faults"][0]["value"].as_str().unwrap().contains(value), "{reply}");
        }
        lives(page).await;
    });
}

/// The size of the memory of the page's module, which no metric of the browser's counts. Asked to start once more, the
/// module hands out what it exports.
const MODULE_BYTES: &str = "return (await window.ropewalk.default()).memory.buffer.byteLength";

/// Nodes, listeners, and bytes of the scripts' and of the module's memory, after everything that nobody holds is gone.
async fn held(page: &Page) -> [f64; 4] {
    // What is drawn part by part and let go of later is waited for.
    tokio::time::sleep(Duration::from_millis(700)).await;
    for _ in 0..3 {
        page.devtools("HeapProfiler.collectGarbage", json!({})).await;
    }
    let metrics = page.devtools("Performance.getMetrics", json!({})).await;
    let of = |name: &str| {
        let all = metrics["metrics"].as_array().unwrap();
        all.iter().find(|metric| metric["name"] == name).unwrap()["value"].as_f64().unwrap()
    };
    let module = page.script_async(MODULE_BYTES, Vec::new()).await.unwrap();
    [of("Nodes"), of("JSEventListeners"), of("JSHeapUsedSize"), module.as_f64().unwrap()]
}

/// Does something five times, and then `times` more, a multiple of ten: nodes, listeners and memory may not grow by a
/// twentieth. Ten rounds are one script, for the browser remembers every script that a driver runs.
async fn stays_flat(page: &Page, times: usize, round: &str) {
    page.devtools("Performance.enable", json!({})).await;
    page.devtools("HeapProfiler.enable", json!({})).await;
    let rounds = format!(
        "const until = async (is) => {{ while (!is()) await new Promise((go) => setTimeout(go, 20)) }};
        for (let i = 0; i < args[0]; i += 1) {{ {round} }}"
    );
    page.script_async(&rounds, vec![json!(5)]).await.unwrap();
    let before = held(page).await;
    for _ in 0..times / 10 {
        page.script_async(&rounds, vec![json!(10)]).await.unwrap();
    }
    let after = held(page).await;
    for (before, after) in before.into_iter().zip(after) {
        // One or two of a few listeners may come or go with the moment.
        assert!(after <= 1.05 * before + 4.0, "from {before} to {after} in {times} rounds");
    }
}

#[test]
fn leaving_the_answer_sixty_times_leaves_nothing_behind() {
    drive(async |page| {
        let round = "location.hash = '#/set';
            await until(() => document.querySelector('.sheet'));
            location.hash = '#/';
            await until(() => !document.querySelector('.sheet, .answer'));";
        stays_flat(page, 60, round).await;
    });
}

#[test]
fn changing_the_language_eighty_times_leaves_nothing_behind() {
    drive(async |page| {
        let round = "for (const [language, word] of [['de', 'Sprache'], ['en', 'Language']]) {
                const list = document.querySelector('#language');
                list.value = language;
                list.dispatchEvent(new Event('change', { bubbles: true }));
                await until(() => document.querySelector('label[for=language]').textContent.includes(word));
            }";
        stays_flat(page, 40, round).await;
    });
}
