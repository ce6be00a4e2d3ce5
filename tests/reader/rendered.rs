//! The page drawn without a browser, as the text of its elements.

use std::rc::Rc;

use app::detail_level::DetailLevel;
use app::hooks::Sureness;
use app::pages::compare::Compared;
use app::pages::set::SetPage;
use app::preferences::{self, Preferences};
use app::report_sheet::ReportSheet;
use app::words::speech;
use catalogue::Language;
use protocol::reply::{Compare, Fit};
use protocol::request::Answers;
use yew::prelude::*;
use yew::{BaseComponent, LocalServerRenderer};

use crate::marks::marked;

/// The day on which the pages are drawn: 1 March 2027, a Monday.
pub(crate) const TODAY: i64 = 20_878;

/// What yew draws on: one of a thread.
pub(crate) struct Easel(tokio::runtime::Runtime, tokio::task::LocalSet);

/// Properties of [`Whole`].
#[derive(Clone, PartialEq, Properties)]
struct WholeProps {
    fit: Rc<Fit>,
    sureness: Sureness,
}

/// The set page with its sheet.
#[component]
fn Whole(props: &WholeProps) -> Html {
    html! {
        <SetPage fit={props.fit.clone()} answers={Rc::new(Answers::default())} sureness={props.sureness.clone()} label="" today={TODAY}
            on_change={Callback::noop()} on_compare={Callback::noop()} on_keep={Callback::noop()} on_download={Callback::noop()} />
    }
}

/// Properties of [`Paper`].
#[derive(Clone, PartialEq, Properties)]
struct PaperProps {
    fit: Rc<Fit>,
    string: usize,
}

/// The report of one string on paper.
#[component]
fn Paper(props: &PaperProps) -> Html {
    let Some(set) = &props.fit.set else { return Html::default() };
    let string = &set.strings[props.string];
    html! {
        <ReportSheet string={string.clone()} problem={Rc::new(props.fit.problem.clone())}
            name={app::words::set::names(set)[props.string].clone()} label="" />
    }
}

/// Properties of [`Pair`].
#[derive(Clone, PartialEq, Properties)]
struct PairProps {
    found: Rc<Compare>,
}

/// Two strings side by side.
#[component]
fn Pair(props: &PairProps) -> Html {
    html! { <Compared found={props.found.clone()} /> }
}

impl Easel {
    /// Draws in a language, which the thread speaks from then on.
    pub(crate) fn new(language: Language) -> Self {
        speech::learn(language, marked(language));
        speech::speak(language);
        let runtime = tokio::runtime::Builder::new_current_thread().build().unwrap();
        Self(runtime, tokio::task::LocalSet::new())
    }

    fn draw<C: BaseComponent>(&self, props: C::Properties) -> String {
        let page = LocalServerRenderer::<C>::with_props(props).hydratable(false).render();
        self.1.block_on(&self.0, page)
    }

    /// The set page, and the sheet after it.
    pub(crate) fn set(&self, fit: &Rc<Fit>, sureness: Sureness, depth: DetailLevel) -> String {
        preferences::take(Preferences { depth, ..Preferences::default() });
        self.draw::<Whole>(WholeProps { fit: fit.clone(), sureness })
    }

    /// The printed report of one string.
    pub(crate) fn report(&self, fit: &Rc<Fit>, string: usize) -> String {
        self.draw::<Paper>(PaperProps { fit: fit.clone(), string })
    }

    /// Two strings side by side.
    pub(crate) fn pair(&self, found: &Rc<Compare>) -> String {
        self.draw::<Pair>(PairProps { found: found.clone() })
    }
}
