//! A long table leaves only the rows with some words, tells how many, and is quick about it.

use std::time::Duration;

use app::components::table::Scroll;
use gloo::utils::{body, document};
use js_sys::{Array, Function};
use wasm_bindgen::JsValue;
use wasm_bindgen_test::{console_log, wasm_bindgen_test};
use web_sys::Element;
use yew::prelude::*;

const FAMILIES: [&str; 5] =
    ["plain gut", "wound gut", "plain steel", "stranded steel", "synthetic"];
const METALS: [&str; 4] = ["silver", "aluminium", "tungsten", "nickel"];

#[derive(Clone, PartialEq, Properties)]
struct LongProps {
    rows: usize,
}

/// A table like that of every number, with headings over hundreds of rows.
#[component]
fn Long(props: &LongProps) -> Html {
    let row = |i: usize| {
        html! {
            <tr>
                <th scope="row">{ format!("String {i}") }<span class="means">{ FAMILIES[i % 5] }</span></th>
                <td>{ METALS[i % 4] }</td>
                { for (1..=5).map(|k| html! { <td class="figure">{ format!("{}.{k}", i * 7) }</td> }) }
            </tr>
        }
    };
    let parts = props.rows.div_ceil(250);
    html! {
        <Scroll label="every string" rows={props.rows}>
            <table>
                <thead><tr>{ for (1..=7).map(|k| html! { <th scope="col">{ k }</th> }) }</tr></thead>
                { for (0..parts).map(|part| html! {
                    <tbody>
                        <tr class="group"><th scope="rowgroup" colspan="7">{ format!("Part {part}") }</th></tr>
                        { for (part * 250..props.rows.min(part * 250 + 250)).map(row) }
                    </tbody>
                }) }
            </table>
        </Scroll>
    }
}

async fn drawn(rows: usize) -> (Element, AppHandle<Long>) {
    let host = document().create_element("div").unwrap();
    body().append_child(&host).unwrap();
    let page = yew::Renderer::<Long>::with_root_and_props(host.clone(), LongProps { rows });
    let page = page.render();
    yew::platform::time::sleep(Duration::from_millis(100)).await;
    (host, page)
}

/// Types a text in place of what is there, and tells how many milliseconds it took until the table was laid out anew.
fn typed(host: &Element, text: &str) -> f64 {
    let script = "const field = host.querySelector('input'); field.value = text; host.getBoundingClientRect();
        const before = performance.now();
        field.dispatchEvent(new InputEvent('input', { bubbles: true }));
        host.querySelector('table').getBoundingClientRect();
        return performance.now() - before";
    let script = Function::new_with_args("host, text", script);
    script.call2(&JsValue::NULL, host, &text.into()).unwrap().as_f64().unwrap()
}

/// How many rows of each kind are seen: those of the table, and its headings.
fn seen(host: &Element) -> (u32, u32) {
    let script = "const seen = (rows) => [...host.querySelectorAll(rows)].filter((row) => row.getClientRects().length > 0).length;
        return [seen('tbody tr:not(.group)'), seen('tbody tr.group')]";
    let found = Function::new_with_args("host", script).call1(&JsValue::NULL, host).unwrap();
    let found: Vec<f64> = Array::from(&found).iter().filter_map(|n| n.as_f64()).collect();
    (found[0] as u32, found[1] as u32)
}

fn told(host: &Element) -> String {
    let status = host.query_selector("[role=status]").unwrap().unwrap();
    status.text_content().unwrap_or_default().trim().to_owned()
}

#[wasm_bindgen_test]
async fn only_rows_with_the_words_are_left_and_their_number_is_told_after_a_pause() {
    let (host, page) = drawn(600).await;
    assert_eq!(seen(&host), (600, 3));
    typed(&host, "Gut  silver");
    // Every fifth row is plain gut, the next wound, and every fourth has silver.
    assert_eq!(seen(&host), (50, 3), "what one sees of them comes at once");
    assert_eq!(told(&host), "", "no word while one is typing");
    yew::platform::time::sleep(Duration::from_millis(800)).await;
    assert_eq!(seen(&host), (60, 3), "and the rest by itself");
    assert_eq!(told(&host), "60 rows of 600 are left.");
    typed(&host, "string 599");
    assert_eq!(seen(&host), (1, 1), "a heading over nothing goes too");
    yew::platform::time::sleep(Duration::from_millis(800)).await;
    assert_eq!(told(&host), "1 row of 600 is left.");
    typed(&host, "catgut");
    assert_eq!(seen(&host), (0, 0));
    yew::platform::time::sleep(Duration::from_millis(800)).await;
    assert_eq!(told(&host), "No row has these words.");
    typed(&host, "");
    yew::platform::time::sleep(Duration::from_millis(800)).await;
    assert_eq!(seen(&host), (600, 3));
    // Whoever types on while they come sees none that lacks the words.
    typed(&host, "");
    typed(&host, "gut");
    yew::platform::time::sleep(Duration::from_millis(800)).await;
    assert_eq!(seen(&host), (240, 3));
    let label = host.query_selector("label").unwrap().unwrap().text_content().unwrap();
    assert!(label.starts_with("Show only rows with (every string)"), "{label}");
    page.destroy();
    host.remove();

    // Where all can be seen at once, nothing stands over them.
    let (host, page) = drawn(20).await;
    assert!(host.query_selector("input").unwrap().is_none());
    page.destroy();
    host.remove();
}

#[wasm_bindgen_test]
async fn filtering_a_thousand_rows_is_timed() {
    let (host, page) = drawn(1000).await;
    let mut times = Vec::new();
    for _ in 0..3 {
        for text in ["g", "gu", "gut", "gut s", "gut si", "", "steel", "string 99"] {
            times.push(typed(&host, text));
            // The browser has other things to do too.
            yew::platform::time::sleep(Duration::from_millis(1)).await;
        }
    }
    times.sort_by(f64::total_cmp);
    let (median, worst) = (times[times.len() / 2], times[times.len() - 1]);
    // A number for the console, no gate: machines differ and are noisy.
    console_log!(
        "1000 rows: from the letter to the table laid out {median:.1} ms, at worst {worst:.1} ms"
    );
    assert!(median > 0.0);
    page.destroy();
    host.remove();
}
