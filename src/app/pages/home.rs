//! The front door: the ways in, what was kept, and what stays private.

use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::day;
use crate::hooks::{use_offline, use_store};
use crate::lesson::Lesson;
use crate::platform::serviceworker::{self, Offline};
use crate::platform::{address, files};
use crate::route::Route;
use crate::state::{Action, Notice, fitting_name};
use crate::words::say;

/// The front door.
#[component]
pub fn HomePage() -> Html {
    let store = use_store();
    let open = {
        let dispatcher = store.dispatcher();
        Callback::from(move |event: Event| {
            let dispatcher = dispatcher.clone();
            spawn_local(async move {
                match files::open(event).await {
                    Ok(Some(files::Opened { name, text })) => {
                        let good = crate::state::read_file(&text).is_ok();
                        dispatcher.dispatch(Action::Opened { name, text });
                        if good {
                            address::go(&Route::Check.to_string());
                        }
                    }
                    Ok(None) => {}
                    Err(reason) => {
                        let text = say!("home-not-opened", reason = reason.to_string());
                        dispatcher.dispatch(Action::Tell(Notice::grave(text)));
                    }
                }
            });
        })
    };
    let afresh = {
        let dispatcher = store.dispatcher();
        Callback::from(move |_: MouseEvent| dispatcher.dispatch(Action::Afresh))
    };
    html! {
        <div class="home">
            <h1>{ say!("home-title") }</h1>
            if store.is_begun() {
                <p class="begun">
                    <a class="button" href={Route::Check.to_string()}>{ say!("home-go-on", name = store.name()) }</a>
                    <button class="button quiet" type="button" onclick={afresh}>{ say!("home-afresh") }</button>
                </p>
            }
            <ul class="doors">
                <li>
                    <a class="door" href={Route::Ask { screen: 1, checking: false }.to_string()}>
                        <strong>{ say!("home-path") }</strong>
                        <span>{ say!("home-path.more") }</span>
                    </a>
                </li>
                <li>
                    <a class="door" href={Route::Everything { field: None }.to_string()}>
                        <strong>{ say!("everything-title") }</strong>
                        <span>{ say!("home-everything") }</span>
                    </a>
                </li>
            </ul>
            <p class="other">
                if !store.is_begun() {
                    <a href={Route::Set.to_string()}>{ say!("home-just") }</a>
                }
                <label class="file">
                    <input type="file" accept=".json,application/json" onchange={open} />
                    <span>{ say!("home-open") }</span>
                </label>
            </p>
            <p class="other"><a href={Route::Class(Lesson::default()).to_string()}>{ say!("class-open") }</a></p>
            <Kept />
            <p class="private">{ say!("home-private") }</p>
            <p class="kept-here"><State /></p>
        </div>
    }
}

/// The fittings that were kept.
#[component]
fn Kept() -> Html {
    let store = use_store();
    let fittings = &store.document.fittings;
    if fittings.is_empty() {
        return Html::default();
    }
    let item = |(i, fitting): (usize, &protocol::document::Fitting)| {
        let name = fitting_name(fitting);
        let dispatcher = store.dispatcher();
        let open = Callback::from(move |_: MouseEvent| {
            dispatcher.dispatch(Action::Reopen(i));
            address::go(&Route::Set.to_string());
        });
        let dispatcher = store.dispatcher();
        let remove = Callback::from(move |_: MouseEvent| dispatcher.dispatch(Action::Remove(i)));
        let date = fitting.at.get(..10).and_then(day::read).map(day::spoken);
        html! {
            <li key={format!("{} {i}", fitting.at)}>
                <h3>{ &name }</h3>
                if let Some(date) = date {
                    <p class="date">{ date }</p>
                }
                <ul class="lines">{ for fitting.summary.iter().map(|line| html! { <li>{ line }</li> }) }</ul>
                <p class="actions">
                    <button class="button quiet" type="button" onclick={open}>
                        { say!("open") }<span class="unseen">{ format!(" {name}") }</span>
                    </button>
                    <button class="button quiet" type="button" onclick={remove}>
                        { say!("remove") }<span class="unseen">{ format!(" {name}") }</span>
                    </button>
                </p>
            </li>
        }
    };
    html! {
        <section class="kept" aria-labelledby="kept">
            <h2 id="kept">{ say!("home-kept") }</h2>
            <ul>{ for fittings.iter().enumerate().map(item) }</ul>
        </section>
    }
}

/// How far the page is kept on this machine.
#[component]
fn State() -> Html {
    let update = Callback::from(|_: MouseEvent| serviceworker::take_update());
    match use_offline() {
        None => Html::default(),
        Some(Offline::Ready) => html! { say!("offline-ready") },
        Some(Offline::UpdateWaiting) => html! {
            <>
                { say!("offline-newer") }{ " " }
                <button class="button quiet" type="button" onclick={update}>{ say!("offline-use") }</button>
            </>
        },
        Some(Offline::Impossible) => {
            html! { say!("offline-impossible") }
        }
        Some(Offline::Failed(reason)) => {
            html! { say!("offline-failed", reason = reason) }
        }
    }
}
