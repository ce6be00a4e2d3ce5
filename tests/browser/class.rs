//! Keys of a lesson, its answers, and the walk along a chart.

use std::cell::RefCell;
use std::rc::Rc;
use std::time::Duration;

use app::components::chart::{Chart, Point};
use app::lesson::Step;
use app::platform::keys::{self, Key};
use app::words::lesson;
use gloo::utils::{body, document};
use js_sys::Function;
use protocol::reply::{Place, Reply, Report};
use protocol::request::{Answers, PlaceRequest, Request};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_test::wasm_bindgen_test;
use yew::prelude::*;

/// Presses a key in an element; false if somebody took it.
fn press(target: &JsValue, key: &str, ctrl: bool) -> bool {
    let press = "return target.dispatchEvent(new KeyboardEvent('keydown', \
        { key, ctrlKey: ctrl, bubbles: true, cancelable: true }))";
    let press = Function::new_with_args("target, key, ctrl", press);
    let went_on = press.call3(&JsValue::NULL, target, &key.into(), &ctrl.into()).unwrap();
    went_on.as_bool().unwrap()
}

#[wasm_bindgen_test]
fn keys_are_taken_unless_they_belong_to_a_field_or_another_key_is_held() {
    let taken = Rc::new(RefCell::new(Vec::<Key>::new()));
    let watch = {
        let taken = taken.clone();
        keys::watch(move |key| {
            taken.borrow_mut().push(key);
            key != Key::Stop
        })
    };
    let host = document().create_element("div").unwrap();
    host.set_inner_html("<input><select></select><textarea></textarea><div class='scroll' tabindex='0'></div><button></button>");
    body().append_child(&host).unwrap();
    for own in ["input", "select", "textarea", ".scroll"] {
        let field = host.query_selector(own).unwrap().unwrap();
        assert!(press(&field, "ArrowRight", false), "{own} keeps its keys");
    }
    assert!(taken.borrow().is_empty());
    let button = host.query_selector("button").unwrap().unwrap();
    assert!(press(&button, "1", true), "with Ctrl it is the browser's");
    assert!(!press(&button, "1", false));
    assert!(!press(&body(), "ArrowRight", false));
    assert!(press(&body(), "Escape", false), "what nobody takes goes on");
    assert!(press(&body(), "x", false), "what stands for nothing goes on");
    assert_eq!(*taken.borrow(), [Key::Number(1), Key::On, Key::Stop]);
    drop(watch);
    assert!(press(&body(), "ArrowRight", false), "nobody listens any more");
    host.remove();
}

fn place(instrument: &str, string: usize) -> Place {
    let answers = Answers { instrument: Some(instrument.to_owned()), ..Answers::default() };
    match protocol::handle(&Request::Place(Box::new(PlaceRequest { answers, string }))) {
        Reply::Place(place) => *place,
        other => panic!("no place but {other:?}"),
    }
}

#[wasm_bindgen_test]
fn every_answer_names_a_core_or_says_that_nobody_can() {
    for (instrument, string) in
        [("violin", 0), ("violin", 3), ("viola", 1), ("cello", 0), ("double-bass", 2)]
    {
        let place = place(instrument, string);
        let reports: Vec<&Report> = place.families.iter().take(3).map(|f| &f.report).collect();
        assert!(reports.len() >= 2, "{instrument} {string}");
        for step in Step::ALL {
            let title = lesson::title(step, &reports, "A");
            assert!(!title.is_empty() && !title.contains("class-"), "{title}");
            for question in lesson::questions(step, &reports, None, "A") {
                let named =
                    reports.iter().any(|r| question.answer.contains(&lesson::the_core(r)[4..]));
                let nobody = question.answer.contains("cannot tell");
                assert!(question.ask.ends_with('?') && (named || nobody), "{question:?}");
                // Every core's own number stands there.
                assert_eq!(
                    question.answer.matches("; ").count(),
                    reports.len() - 1,
                    "{question:?}"
                );
            }
        }
    }
}

#[component]
fn Drawn() -> Html {
    let point = |n: u32| Point {
        x: f64::from(n) * 20.0,
        y: (n != 2).then_some(10.0),
        said: format!("point {n}").into(),
    };
    html! {
        <Chart class="nights" title="A takeaway" how={html! { "How" }} label="A drawing" height={40.0} drawn={html! { <g /> }}
            points={(1..=3).map(point).collect::<Vec<_>>()} folded="The table" table={html! { <table></table> }} />
    }
}

#[wasm_bindgen_test]
async fn a_chart_is_walked_along_point_by_point() {
    let host = document().create_element("div").unwrap();
    body().append_child(&host).unwrap();
    let page = yew::Renderer::<Drawn>::with_root(host.clone()).render();
    let soon = || yew::platform::time::sleep(Duration::from_millis(30));
    soon().await;
    let find = |css: &str| host.query_selector(css).unwrap();
    let walk = find(".walk input").unwrap();
    assert!(find(".here").is_none() && walk.get_attribute("max").unwrap() == "3");
    assert!(!find("details").unwrap().has_attribute("open"));
    for (value, mark) in [("1", "circle.here"), ("2", "line.here"), ("3", "circle.here")] {
        let field = walk.dyn_ref::<web_sys::HtmlInputElement>().unwrap();
        field.set_value(value);
        let input = Function::new_with_args(
            "field",
            "field.dispatchEvent(new Event('input', { bubbles: true }))",
        );
        input.call1(&JsValue::NULL, &walk).unwrap();
        soon().await;
        let said = format!("point {value}");
        assert_eq!(walk.get_attribute("aria-valuetext"), Some(said.clone()));
        assert_eq!(find(".walk p").unwrap().text_content(), Some(said));
        assert!(find(mark).is_some(), "{value}");
    }
    page.destroy();
    host.remove();
}
