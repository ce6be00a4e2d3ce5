//! Maps and sounds on the page: drawn as far as they have come, played side by side, and kept as files that open.

use std::rc::Rc;
use std::time::Duration;

use app::components::bow_map::BowMapFigure;
use app::components::listening::{Listening, ListeningGroup, Played};
use app::hooks::factors;
use app::platform::audio::{Deck, Samples};
use app::{wave, words::bowed};
use gloo::utils::document;
use protocol::reply::{BowMap, Reply};
use protocol::request::{BowMapRequest, Construction, Core, Player, Request, Setting, Winding};
use wasm_bindgen_test::{console_log, wasm_bindgen_test};
use yew::prelude::*;

/// A full-size violin's A: steel under aluminium.
fn string() -> Player {
    let core = Core {
        material: "spring-steel".to_owned(),
        build: "solid".to_owned(),
        diameter_m: 0.00024,
        layout: None,
        lay_deg: None,
        filament_m: None,
        fill: None,
        twist_deg: None,
    };
    let ribbon = Winding {
        metal: "aluminium".to_owned(),
        form: "flat".to_owned(),
        thickness_m: 0.00011,
        bedding: 0.0,
        gap: 0.0,
    };
    Player {
        construction: Construction { core, windings: vec![ribbon] },
        setting: Setting::of(0.328, 440.0),
    }
}

fn map(map: &str, count: usize) -> BowMap {
    let count = (map != "window").then_some(count);
    let Player { construction, setting } = string();
    let instrument = "violin".to_owned();
    let request =
        BowMapRequest { map: map.to_owned(), instrument, construction, setting, count, row: None };
    match protocol::handle(&Request::BowMap(Box::new(request))) {
        Reply::BowMap(map) => *map,
        other => panic!("no map but {other:?}"),
    }
}

#[derive(Clone, PartialEq, Properties)]
struct Props {
    map: Rc<BowMap>,
}

#[component]
fn Drawn(props: &Props) -> Html {
    html! { <BowMapFigure map={props.map.clone()} name="this A" length_m=0.328 /> }
}

#[wasm_bindgen_test]
async fn a_map_is_drawn_as_far_as_it_has_come_and_has_a_table() {
    for kind in ["place", "attack"] {
        let whole = map(kind, 8);
        let half = BowMap { rows: whole.rows[..4].to_vec(), ..whole.clone() };
        for map in [half, whole] {
            let host = document().create_element("div").unwrap();
            document().body().unwrap().append_child(&host).unwrap();
            let rows = map.rows.len() as u32;
            // Fields of one kind that lie together are one.
            let fields: usize = map
                .rows
                .iter()
                .map(|row| 1 + row.cells.windows(2).filter(|w| w[0].regime != w[1].regime).count())
                .sum();
            let page = yew::Renderer::<Drawn>::with_root_and_props(
                host.clone(),
                Props { map: Rc::new(map) },
            );
            let page = page.render();
            yew::platform::time::sleep(Duration::from_millis(30)).await;
            let count = |css: &str| host.query_selector_all(css).unwrap().length();
            assert_eq!(count("tbody tr"), rows);
            assert_eq!(count("rect.field"), fields as u32);
            assert_eq!(count("polyline.limit"), 2);
            let drawing = host.inner_html();
            assert!(!drawing.contains("NaN") && !drawing.contains("style="), "{drawing}");
            page.destroy();
            host.remove();
        }
    }
}

#[wasm_bindgen_test]
fn the_sentence_over_a_map_tells_its_window_and_the_other() {
    let of = |found: &[Option<f64>]| bowed::windows("this A", Some("today’s string"), found);
    assert_eq!(
        of(&[Some(12.2), Some(8.9)]),
        "This A speaks cleanly over a window of 12\u{a0}dB; today’s string gave 9"
    );
    assert!(of(&[None, None]).contains("at no force that was tried; today’s string gave none"));
    assert_eq!(
        bowed::windows("this A", None, &[Some(3.0)]),
        "This A speaks cleanly over a window of 3\u{a0}dB"
    );
    let window = map("window", 24).window.unwrap();
    console_log!("window of a steel A: {:.1} dB", window.width_db);
    assert!(window.width_db > 0.0 && window.greatest_n > window.least_n);
}

#[wasm_bindgen_test]
fn a_wave_file_has_its_header_and_every_sample() {
    let bytes = wave::file(&[0.0, 0.5, -1.0, 2.0], 48_000, 1.0);
    // The layout of RIFF WAVE, from memory: sizes in bytes, least first.
    assert_eq!(bytes.len(), 44 + 8);
    assert_eq!(&bytes[..4], b"RIFF");
    assert_eq!(bytes[4..8], 44_u32.to_le_bytes());
    assert_eq!(&bytes[8..16], b"WAVEfmt ");
    assert_eq!(bytes[24..28], 48_000_u32.to_le_bytes());
    assert_eq!(&bytes[36..40], b"data");
    assert_eq!(bytes[40..44], 8_u32.to_le_bytes());
    let samples: Vec<i16> =
        bytes[44..].chunks(2).map(|two| i16::from_le_bytes([two[0], two[1]])).collect();
    assert_eq!(samples, [0, 16384, -32767, 32767]);
    assert_eq!(wave::file(&[1.0], 48_000, 0.5)[44..], 16384_i16.to_le_bytes());
}

#[wasm_bindgen_test]
fn nothing_is_made_louder_to_show_a_difference() {
    assert_eq!(factors(&[-30.0, -24.0], true), [1.0, 1.0]);
    let by_itself = factors(&[-30.0, -24.0], false);
    assert!((by_itself[0] - 0.501).abs() < 0.001 && (by_itself[1] - 1.0).abs() < 1e-6);
}

#[wasm_bindgen_test]
fn two_sounds_start_together_and_stop_when_dropped() {
    let tone: Vec<f32> = (0..4800).map(|i| if i % 100 < 50 { 0.01 } else { -0.01 }).collect();
    let sounds = [(Samples::of(&tone), 1.0), (Samples::of(&tone[..2400]), 0.5)];
    let deck = Deck::start(&sounds, 48_000, 0, Rc::new(|| ())).unwrap();
    deck.hear(1, &[1.0, 0.5]);
    drop(deck);
}

#[component]
fn Ear() -> Html {
    let played = |name: &str| Played { name: name.to_owned().into(), strings: vec![string()] };
    let group = |name: &str, count: usize| ListeningGroup {
        name: name.to_owned().into(),
        played: ["this one", "the other"][..count].iter().map(|name| played(name)).collect(),
    };
    let groups = Rc::new(vec![group("both", 2), group("one", 1)]);
    html! { <Listening id="ear" instrument="violin" groups={groups} /> }
}

#[wasm_bindgen_test]
async fn a_player_without_a_worker_says_so_and_nothing_else_breaks() {
    let host = document().create_element("div").unwrap();
    document().body().unwrap().append_child(&host).unwrap();
    let page = yew::Renderer::<Ear>::with_root(host.clone()).render();
    yew::platform::time::sleep(Duration::from_millis(30)).await;
    let text = || host.text_content().unwrap_or_default();
    assert!(text().contains("not a prediction"), "{}", text());
    assert_eq!(host.query_selector_all("select").unwrap().length(), 4);
    assert_eq!(host.query_selector_all("[aria-pressed]").unwrap().length(), 2);
    page.destroy();
    host.remove();
}
