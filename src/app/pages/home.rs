//! The front door: the ways in, what was kept, and what stays private.

use std::rc::Rc;

use protocol::document::Fitting;
use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::components::cores::Cores;
use crate::day;
use crate::hooks::{use_kept, use_offline, use_store};
use crate::lesson::Lesson;
use crate::platform::serviceworker::{self, LocalCopy, Newer, Offline};
use crate::platform::{address, clock, files, view};
use crate::records::{Kind, Record, RecordFormat, identity};
use crate::route::Route;
use crate::state::{Action, Notice};
use crate::words::fitting;
use crate::words::{say, summary};

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
        Callback::from(move |_: MouseEvent| dispatcher.dispatch(Action::StartOver))
    };
    let undo = {
        let dispatcher = store.dispatcher();
        Callback::from(move |_: MouseEvent| dispatcher.dispatch(Action::Undo))
    };
    // While it is offered beside what has happened, once is enough.
    let can_undo =
        store.undo.is_some() && store.notice.as_ref().is_none_or(|notice| !notice.undoes);
    html! {
        <div class="home">
            <div class="hero">
                <h1>{ say!("home-title") }</h1>
                <Cores />
            </div>
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
                <li>
                    <a class="door" href={Route::Class(Lesson::default()).to_string()}>
                        <strong>{ say!("class-open") }</strong>
                        <span>{ say!("home-class") }</span>
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
            if can_undo {
                <p class="other">
                    { say!("home-undo") }{ " " }
                    <button class="button quiet" type="button" onclick={undo}>{ say!("undo") }</button>
                </p>
            }
            <Others />
            <Kept />
            <Unreadable />
            <p class="private">{ say!("home-private") }</p>
            <p class="kept-here"><State /></p>
        </div>
    }
}

/// The fittings that were kept, and the invented ones.
#[component]
fn Kept() -> Html {
    let store = use_store();
    use_kept(&store);
    // What is pressed here goes, and with it the focus; where the keyboard goes on is said beforehand.
    let onward = use_mut_ref(|| None::<&'static str>);
    {
        let onward = Rc::clone(&onward);
        use_effect(move || {
            if let Some(heading) = onward.take() {
                view::focus(heading, true);
            }
        });
    }
    let then = |heading: &'static str, action: Box<dyn Fn() -> Action>| {
        let (dispatcher, onward) = (store.dispatcher(), Rc::clone(&onward));
        Callback::from(move |_: MouseEvent| {
            onward.replace(Some(heading));
            dispatcher.dispatch(action());
        })
    };
    let item = |fitting: &Fitting| {
        let identity = identity(fitting);
        let name = fitting::name(fitting);
        let dispatcher = store.dispatcher();
        let open = Callback::from(move |_: MouseEvent| {
            dispatcher.dispatch(Action::Reopen(identity));
            address::go(&Route::Set.to_string());
        });
        let own = fitting.invented.is_none();
        let date = fitting.at.get(..10).and_then(day::read).map(day::spoken);
        let told = fitting.strings.as_deref().map(summary::lines).filter(|lines| !lines.is_empty());
        let lines = told.unwrap_or_else(|| fitting.summary.clone());
        html! {
            <li key={identity.to_string()}>
                <h3>{ &name }</h3>
                if let Some(date) = date.filter(|_| own) {
                    <p class="date">{ date }</p>
                }
                <ul class="lines">{ for lines.into_iter().map(|line| html! { <li>{ line }</li> }) }</ul>
                <p class="actions">
                    <button class="button quiet" type="button" onclick={open}>
                        { say!("open") }<span class="unseen">{ format!(" {name}") }</span>
                    </button>
                    if own {
                        <button class="button quiet" type="button" onclick={then("#kept", Box::new(move || Action::Remove(identity)))}>
                            { say!("remove") }<span class="unseen">{ format!(" {name}") }</span>
                        </button>
                    }
                </p>
            </li>
        }
    };
    let all = store.document.fittings.iter();
    let (invented, own): (Vec<_>, Vec<_>) = all.partition(|fitting| fitting.invented.is_some());
    let invent = then("#invented", Box::new(|| Action::AddInvented { at: clock::now_iso() }));
    let uninvent = then("#kept", Box::new(|| Action::RemoveInvented));
    let none_invented = invented.is_empty();
    html! {
        <>
            <section class="kept" aria-labelledby="kept">
                <h2 id="kept">{ say!("home-kept") }</h2>
                if own.is_empty() {
                    <p class="none">{ say!("home-kept-none") }</p>
                    if none_invented {
                        <p><button class="button quiet" type="button" onclick={invent}>{ say!("home-invent") }</button></p>
                    }
                } else {
                    <ul>{ for own.into_iter().map(item) }</ul>
                }
            </section>
            if !none_invented {
                <section class="kept" aria-labelledby="invented">
                    <h2 id="invented">{ say!("home-invented") }</h2>
                    <p class="none">{ say!("home-invented-about") }</p>
                    <ul>{ for invented.into_iter().map(item) }</ul>
                    <p class="actions"><button class="button quiet" type="button" onclick={uninvent}>{ say!("home-uninvent") }</button></p>
                </section>
            }
        </>
    }
}

/// Answers in hand that other tabs have, or had when they were closed.
#[component]
fn Others() -> Html {
    let store = use_store();
    if store.shared.others.is_empty() {
        return Html::default();
    }
    let items = store.shared.others.iter().map(|begun| {
        let name = fitting::name_of(&begun.document.label, &begun.document.answers);
        let (dispatcher, id) = (store.dispatcher(), begun.id.clone());
        let open = Callback::from(move |_: MouseEvent| {
            dispatcher.dispatch(Action::TakeOver(id.clone()));
            address::go(&Route::Check.to_string());
        });
        html! {
            <li key={begun.id.clone()}>
                <h3>{ &name }</h3>
                <p class="actions">
                    <button class="button quiet" type="button" onclick={open}>
                        { say!("open") }<span class="unseen">{ format!(" {name}") }</span>
                    </button>
                </p>
            </li>
        }
    });
    html! {
        <section class="kept" aria-labelledby="others">
            <h2 id="others">{ say!("home-others") }</h2>
            <p class="none">{ say!("home-others-about") }</p>
            <ul>{ for items }</ul>
        </section>
    }
}

/// What is kept here and cannot be read, to be saved as files.
#[component]
fn Unreadable() -> Html {
    let store = use_store();
    if store.shared.unreadable.is_empty() {
        return Html::default();
    }
    let items = store.shared.unreadable.iter().map(|record| {
        let name = match record.kind {
            Kind::Set => say!("unread-set"),
            Kind::Undo => say!("unread-undo"),
            Kind::Answers | Kind::Aside | Kind::TakenOver => say!("unread-answers"),
        };
        let reason = match record.format {
            RecordFormat::Newer => say!("unread-later"),
            RecordFormat::Known | RecordFormat::Damaged => say!("unread-damaged"),
        };
        let removable = record.format != RecordFormat::Newer;
        let remove = {
            let (dispatcher, kind, id) = (store.dispatcher(), record.kind, record.id.clone());
            Callback::from(move |_: MouseEvent| {
                dispatcher.dispatch(Action::Discard(kind, id.clone()));
                view::focus_heading();
            })
        };
        let (dispatcher, record) = (store.dispatcher(), record.clone());
        let key = format!("{} {}", record.kind.key(), record.id);
        let save = Callback::from(move |_: MouseEvent| {
            if let Err(reason) = files::save(&file_name(&record), "application/json", &record.text)
            {
                let text = say!("not-saved", reason = reason);
                dispatcher.dispatch(Action::Tell(Notice::grave(text)));
            }
        });
        html! {
            <li {key}>
                <h3>{ name }</h3>
                <p class="date">{ reason }</p>
                <p class="actions">
                    <button class="button quiet" type="button" onclick={save}>
                        { say!("unread-save") }<span class="unseen">{ format!(" {name}") }</span>
                    </button>
                    if removable {
                        <button class="button quiet" type="button" onclick={remove}>
                            { say!("remove") }<span class="unseen">{ format!(" {name}") }</span>
                        </button>
                    }
                </p>
            </li>
        }
    });
    html! {
        <section class="kept" aria-labelledby="unreadable">
            <h2 id="unreadable">{ say!("home-unreadable") }</h2>
            <p class="none">{ say!("home-unreadable-about") }</p>
            <ul>{ for items }</ul>
        </section>
    }
}

/// A file name for what cannot be read.
fn file_name(record: &Record) -> String {
    let short: String = record.id.chars().filter(char::is_ascii_alphanumeric).take(8).collect();
    format!("ropewalk-{}-{short}.json", record.kind.key())
}

/// How far the page is kept on this machine.
#[component]
fn State() -> Html {
    let update = Callback::from(|_: MouseEvent| serviceworker::take_update());
    let Some(Offline { copy, newer }) = use_offline() else { return Html::default() };
    html! {
        <>
            { match copy {
                LocalCopy::Ready => say!("offline-ready").to_owned(),
                LocalCopy::Impossible => say!("offline-impossible").to_owned(),
                LocalCopy::Failed(reason) => say!("offline-failed", reason = reason),
            } }
            if let Some(newer) = newer {
                { " " }
                { match newer {
                    Newer::Waits => say!("offline-newer"),
                    Newer::Elsewhere => say!("offline-newer-elsewhere"),
                } }
                { " " }
                <button class="button quiet" type="button" onclick={update}>{ say!("offline-use") }</button>
            }
        </>
    }
}
