//! The fields of the questions: what they show, what they report, and what those who cannot see them are told.

use std::cell::RefCell;
use std::rc::Rc;

use app::components::field::{Choices, NumberField, Scale};
use app::components::question::Ask;
use app::fields::{Number, Wish, Word};
use app::words::questions::{Question, choices};
use app::words::speech;
use js_sys::{Function, Promise};
use protocol::request::Answers;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use wasm_bindgen_test::wasm_bindgen_test;
use web_sys::Element;
use yew::prelude::*;

/// Waits until what has changed is drawn.
async fn drawn() {
    let wait = Function::new_no_args("return new Promise((done) => setTimeout(done, 100))");
    let promise: Promise = wait.call0(&JsValue::NULL).unwrap().unchecked_into();
    JsFuture::from(promise).await.unwrap();
}

/// A place on the page for a component.
fn place() -> Element {
    let document = gloo::utils::document();
    let place = document.create_element("div").unwrap();
    document.body().unwrap().append_child(&place).unwrap();
    place
}

/// Runs a piece of JavaScript on an element, as `it`.
fn js(it: &Element, body: &str) -> JsValue {
    Function::new_with_args("it", body).call1(&JsValue::NULL, it).unwrap()
}

fn all(it: &Element, selector: &str) -> u32 {
    it.query_selector_all(selector).unwrap().length()
}

fn one(it: &Element, selector: &str) -> Element {
    it.query_selector(selector)
        .unwrap()
        .unwrap_or_else(|| panic!("no {selector}: {}", it.inner_html()))
}

fn told<T: 'static>() -> (Rc<RefCell<Vec<T>>>, Callback<T>) {
    let heard = Rc::new(RefCell::new(Vec::new()));
    let callback = {
        let heard = Rc::clone(&heard);
        Callback::from(move |value| heard.borrow_mut().push(value))
    };
    (heard, callback)
}

#[wasm_bindgen_test]
async fn choices_are_a_group_with_i_dont_know_in_it() {
    let (heard, on_choose) = told();
    let place = place();
    yew::Renderer::<Choices>::with_root_and_props(
        place.clone(),
        yew::props!(app::components::field::ChoicesProps {
            id: "instrument",
            ask: "Which?",
            why: "So.",
            choices: choices(Word::Instrument, &Answers::default()),
            value: Some(AttrValue::from("viola")),
            on_choose,
        }),
    )
    .render();
    drawn().await;
    assert_eq!(all(&place, "input[type=radio][name=instrument]"), 5);
    assert_eq!(all(&place, "input:checked"), 1);
    assert_eq!(one(&place, "legend").text_content().as_deref(), Some("Which?"));
    let describes = one(&place, "fieldset").get_attribute("aria-describedby").unwrap();
    assert_eq!(one(&place, &format!("#{describes}")).text_content().as_deref(), Some("So."));
    js(&place, "it.querySelector('input[value=cello]').click()");
    js(&place, "[...it.querySelectorAll('input')].at(-1).click()");
    assert_eq!(*heard.borrow(), [Some("cello".to_owned()), None]);
    place.remove();
}

#[wasm_bindgen_test]
async fn a_number_has_its_unit_and_tells_its_fault() {
    let (heard, on_type) = told();
    let place = place();
    yew::Renderer::<NumberField>::with_root_and_props(
        place.clone(),
        yew::props!(app::components::field::NumberProps {
            id: "a4_hz",
            ask: "What is a′?",
            text: "44o",
            unit: Some(Number::A4.unit(None)),
            units: Number::A4.units().to_vec(),
            fault: Some(AttrValue::from("“44o” is not a number")),
            on_type,
        }),
    )
    .render();
    drawn().await;
    let field = one(&place, "input");
    assert_eq!(js(&field, "return it.value").as_string().as_deref(), Some("44o"));
    assert_eq!(field.get_attribute("aria-invalid").as_deref(), Some("true"));
    let describes = field.get_attribute("aria-describedby").unwrap();
    let said: Vec<_> = describes
        .split(' ')
        .map(|id| one(&place, &format!("#{id}")).text_content().unwrap())
        .collect();
    assert_eq!(said, ["Hz", "“44o” is not a number"]);
    assert_eq!(one(&place, "label").get_attribute("for").as_deref(), Some("a4_hz"));
    js(&field, "it.value = '440'; it.dispatchEvent(new Event('input', { bubbles: true }))");
    assert_eq!(*heard.borrow(), ["440"]);
    place.remove();
}

#[wasm_bindgen_test]
async fn a_slider_has_a_number_and_a_word() {
    let (heard, on_type) = told();
    let place = place();
    yew::Renderer::<Scale>::with_root_and_props(
        place.clone(),
        yew::props!(app::components::field::ScaleProps {
            id: Number::Wish(Wish::Feel).key(),
            wish: Wish::Feel,
            value: -1.0,
            text: "-1",
            on_type,
        }),
    )
    .render();
    drawn().await;
    let slider = one(&place, "input[type=range]");
    assert_eq!(js(&slider, "return it.value").as_string().as_deref(), Some("-1"));
    assert_eq!(slider.get_attribute("aria-valuetext").as_deref(), Some("softer"));
    assert_eq!(one(&place, "output").text_content().as_deref(), Some("softer"));
    assert_eq!(all(&place, "input[type=text]"), 1);
    js(&slider, "it.value = '2'; it.dispatchEvent(new Event('input', { bubbles: true }))");
    assert_eq!(*heard.borrow(), ["2"]);
    place.remove();
}

/// Two questions that share a state of their own.
#[component]
fn Two() -> Html {
    let store = use_reducer(app::state::State::default);
    html! {
        <ContextProvider<app::hooks::Store> context={store}>
            <Ask question={Question::Word(Word::Instrument)} />
            <Ask question={Question::Word(Word::Size)} />
            <Ask question={Question::Number(Number::Length)} />
        </ContextProvider<app::hooks::Store>>
    }
}

#[wasm_bindgen_test]
async fn sizes_follow_the_instrument_and_a_fault_shows_when_the_field_is_left() {
    let place = place();
    yew::Renderer::<Two>::with_root(place.clone()).render();
    drawn().await;
    assert_eq!(all(&place, "input[name=size]"), 0);
    js(&place, "it.querySelector('input[value=cello]').click()");
    drawn().await;
    assert_eq!(all(&place, "input[name=size]"), 7);
    let type_328 =
        "const field = it.querySelector('#sounding_length_m'); field.focus(); field.value = '328';
        field.dispatchEvent(new Event('input', { bubbles: true }))";
    js(&place, type_328);
    drawn().await;
    assert_eq!(all(&place, ".slip"), 0);
    js(&place, "it.querySelector('#sounding_length_m').dispatchEvent(new FocusEvent('blur'))");
    drawn().await;
    let fault = one(&place, ".slip").text_content().unwrap();
    assert!(fault.starts_with("Sounding length: 328 mm is outside"), "{fault}");
    js(&place, "it.querySelector('input[value=violin]').click()");
    drawn().await;
    assert_eq!(all(&place, ".slip"), 0);
    let kept = js(&place, "return it.querySelector('#sounding_length_m').value");
    assert_eq!(kept.as_string().as_deref(), Some("328"));
    place.remove();
}

/// Everything the page with all questions asks.
#[component]
fn Everything() -> Html {
    let questions = app::words::questions::EVERYTHING.iter().flat_map(|part| part.questions);
    let asked = questions.map(|question| html! { <Ask question={*question} hints=true /> });
    html! { <>{ for asked }</> }
}

#[wasm_bindgen_test]
async fn every_question_is_asked_in_german_too() {
    speech::learn(catalogue::Language::German, catalogue::GERMAN);
    speech::speak(catalogue::Language::German);
    let place = place();
    let app = yew::Renderer::<Everything>::with_root(place.clone()).render();
    drawn().await;
    let said = place.text_content().unwrap();
    speech::speak(catalogue::Language::English);
    for german in [
        "Welches Instrument?",
        "Weiß ich nicht",
        "Wie lang ist die schwingende Saitenlänge (Mensur)?",
        "Holzwirbel",
    ] {
        assert!(said.contains(german), "{german}: {said}");
    }
    for english in ["I don’t know", "Which", "string"] {
        assert!(!said.contains(english), "{english}: {said}");
    }
    app.destroy();
    place.remove();
}

/// What bothers, with a state of its own.
#[component]
fn Complaints() -> Html {
    let store = use_reducer(app::state::State::default);
    html! {
        <ContextProvider<app::hooks::Store> context={store}>
            <Ask question={Question::Bothers} />
        </ContextProvider<app::hooks::Store>>
    }
}

#[wasm_bindgen_test]
async fn which_string_bothers_is_asked_right_after_the_complaint() {
    let place = place();
    yew::Renderer::<Complaints>::with_root(place.clone()).render();
    drawn().await;
    let which = "input[name=only-on-whistles]";
    assert_eq!(all(&place, which), 0);
    for (name, value) in [("bothers", "whistles"), ("bothers", "uneven")] {
        js(&place, &format!("it.querySelector('input[name={name}][value={value}]').click()"));
        drawn().await;
    }
    // Of what lies between strings it is not asked.
    assert_eq!((all(&place, which), all(&place, "input[name=only-on-uneven]")), (4, 0));
    let legend = one(&place, "#only-on-whistles legend").text_content().unwrap();
    assert_eq!(legend, "Whistles, only on");
    js(&place, &format!("it.querySelector('{which}[value=E5]').click()"));
    drawn().await;
    assert_eq!(all(&place, &format!("{which}:checked")), 1);
    assert_eq!(all(&place, "input[name=bothers][value=whistles]:checked"), 1);
    js(&place, "it.querySelector('input[name=bothers][value=whistles]').click()");
    drawn().await;
    assert_eq!(all(&place, which), 0);
    place.remove();
}
