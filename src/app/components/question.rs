//! A question of the fitting: the fields that answer it, bound to the state of the page.

use protocol::request::Today;
use strings::construction::Family;
use strings::fit::answers::GaugeClass;
use strings::fit::desirability;
use strings::material;
use yew::prelude::*;

use crate::components::field::{Choices, NumberField, Scale, TextField, Tick, Ticks};
use crate::components::fold::Fold;
use crate::fields::{self, Flag, Number, Wish, Word};
use crate::hooks::{Store, use_store};
use crate::platform::{field, pointer};
use crate::state::{Action, FieldError, StringAction};
use crate::words::questions::{self, BOTHERS, Question, Text};
use crate::words::{naming, say};

/// What a question is made of.
#[derive(Clone, Debug, PartialEq, Properties)]
pub struct Props {
    /// Which.
    pub question: Question,
    /// Whether choices show their few more words.
    #[prop_or_default]
    pub hints: bool,
}

/// The fields of one question.
#[component]
pub fn Ask(props: &Props) -> Html {
    let store = use_store();
    let text = props.question.text();
    match props.question {
        Question::Word(word) => word_field(&store, word, props.hints),
        Question::Number(number) => html! {
            <NumberOf {store} {number} ask={text.ask} why={text.why} hint={text.hint} />
        },
        Question::Concert => concert(&store),
        Question::Bothers => {
            let ticks = bother_ticks(&questions::complaints(&store.document.answers));
            let on_tick =
                act(&store, |(key, yes): (&'static str, bool)| Action::Bother(key.to_owned(), yes));
            let fault = store.error_of("bothers").map(AttrValue::from);
            html! {
                <>
                    <Ticks key="bothers" id="bothers" ask={text.ask} why={text.why} ticks={ticks.clone()} {fault} {on_tick} />
                    { for ticks.iter().filter(|t| t.ticked && questions::is_of_a_string(t.key)).map(|t| only_on(&store, t)) }
                </>
            }
        }
        Question::Wishes => html! {
            <fieldset class="field" id="wishes" aria-describedby="wishes-why">
                <legend>{ text.ask }</legend>
                <p class="why" id="wishes-why">{ text.why }</p>
                { for Wish::ALL.map(|wish| wish_field(&store, wish)) }
            </fieldset>
        },
        Question::Flags(flags) => flags_field(&store, flags),
        Question::AlsoTuned => also_tuned(&store),
        Question::Strings => strings_field(&store),
        Question::Weights => weights_field(&store),
    }
}

/// A callback that makes an action of what it gets.
fn act<T: 'static>(store: &Store, action: impl Fn(T) -> Action + 'static) -> Callback<T> {
    let dispatcher = store.dispatcher();
    Callback::from(move |value| dispatcher.dispatch(action(value)))
}

/// Tells that a field was left, once the press that left it is over.
fn leave(store: &Store, field: String) -> Callback<()> {
    let dispatcher = store.dispatcher();
    Callback::from(move |()| {
        let (dispatcher, field) = (dispatcher.clone(), field.clone());
        pointer::when_up(move || dispatcher.dispatch(Action::Left(field)));
    })
}

fn word_field(store: &Store, word: Word, hints: bool) -> Html {
    let text = Question::Word(word).text();
    let answers = &store.document.answers;
    if questions::waits(Question::Word(word), answers) {
        return Html::default();
    }
    html! {
        <Choices
            id={word.key()}
            ask={text.ask}
            why={text.why}
            choices={questions::choices(word, answers)}
            {hints}
            value={word.of(answers).map(|key| AttrValue::from(key.to_owned()))}
            fault={store.error_of(word.key()).map(AttrValue::from)}
            on_choose={act(store, move |key| Action::Choose(word, key))}
        />
    }
}

/// What a number of the state is made of.
#[derive(Clone, PartialEq, Properties)]
struct NumberOfProps {
    store: Store,
    number: Number,
    ask: AttrValue,
    #[prop_or_default]
    why: AttrValue,
    #[prop_or_default]
    hint: AttrValue,
}

/// A number's field, bound to the state.
#[component]
fn NumberOf(props: &NumberOfProps) -> Html {
    let NumberOfProps { store, number, ask, why, hint } = props;
    let (number, key) = (*number, number.key());
    let left = key.clone();
    html! {
        <NumberField
            id={key.clone()}
            ask={ask.clone()}
            why={why.clone()}
            hint={hint.clone()}
            text={store.text(number)}
            units={number.units().to_vec()}
            unit={store.unit(number)}
            fault={store.error_of(&key).map(AttrValue::from)}
            on_type={act(store, move |text| Action::Type(number, text))}
            on_unit={act(store, move |unit| Action::Unit(number, unit))}
            on_leave={leave(store, left)}
        />
    }
}

fn concert(store: &Store) -> Html {
    let text = Question::Concert.text();
    html! {
        <fieldset class="field pair" aria-describedby="concert-why">
            <legend>{ text.ask }</legend>
            <p class="why" id="concert-why">{ text.why }</p>
            <NumberOf store={store.clone()} number={Number::Days} ask={Question::Number(Number::Days).text().ask} />
            <TextField
                id="concert_date"
                ask={say!("date-ask")}
                kind="date"
                text={store.date_text()}
                on_type={act(store, Action::Date)}
                on_leave={leave(store, Number::Days.key())}
            />
        </fieldset>
    }
}

fn wish_field(store: &Store, wish: Wish) -> Html {
    let number = Number::Wish(wish);
    let key = number.key();
    let left = key.clone();
    html! {
        <Scale
            id={key.clone()}
            {wish}
            value={number.of(&store.document.answers).unwrap_or(0.0)}
            text={store.text(number)}
            fault={store.error_of(&key).map(AttrValue::from)}
            on_type={act(store, move |text| Action::Type(number, text))}
            on_leave={leave(store, left)}
        />
    }
}

fn flags_field(store: &Store, flags: &'static [Flag]) -> Html {
    let text = Question::Flags(flags).text();
    let answers = &store.document.answers;
    let tick = |flag: &Flag| Tick {
        key: flag.key(),
        label: questions::flag_label(*flag),
        ticked: flag.of(answers),
    };
    let dispatcher = store.dispatcher();
    let on_tick = Callback::from(move |(key, yes): (&'static str, bool)| {
        if let Some(flag) = Flag::parse(key) {
            dispatcher.dispatch(Action::Tick(flag, yes));
        }
    });
    let ticks: Vec<_> = flags.iter().map(tick).collect();
    html! { <Ticks id="flags" ask={text.ask} why={text.why} {ticks} {on_tick} /> }
}

/// Which strings a complaint is about, where it is not about all.
fn only_on(store: &Store, bother: &Tick) -> Html {
    let answers = &store.document.answers;
    let tuned = fields::tuned(answers);
    let key = bother.key;
    let has = |i: usize| {
        answers.strings.get(i).is_some_and(|string| string.bothers.iter().any(|b| b == key))
    };
    let tick = |(i, note): (usize, &&'static str)| Tick { key: note, label: note, ticked: has(i) };
    let ticks: Vec<_> = tuned.iter().enumerate().map(tick).collect();
    let on_tick = {
        let dispatcher = store.dispatcher();
        Callback::from(move |(note, yes): (&'static str, bool)| {
            if let Some(i) = tuned.iter().position(|tuned| *tuned == note) {
                dispatcher.dispatch(Action::BotherOnlyOn(i, key.to_owned(), yes));
            }
        })
    };
    let ask = say!("bother-only-on", bother = bother.label);
    html! { <Ticks key={key} id={format!("only-on-{key}")} {ask} {ticks} {on_tick} /> }
}

/// A box for everything that can bother.
fn bother_ticks(bothers: &[String]) -> Vec<Tick> {
    let tick = |key: &&'static str| Tick {
        key,
        label: questions::bother_label(key),
        ticked: bothers.iter().any(|bother| bother == key),
    };
    BOTHERS.iter().map(tick).collect()
}

fn also_tuned(store: &Store) -> Html {
    let text = Question::AlsoTuned.text();
    let number = |number: Number| {
        let Text { ask, hint, .. } = Question::Number(number).text();
        html! { <NumberOf store={store.clone()} {number} {ask} {hint} /> }
    };
    html! {
        <fieldset class="field pair" id="also_tuned" aria-describedby="also-why also-hint">
            <legend>{ text.ask }</legend>
            <p class="why" id="also-why">{ text.why }</p>
            { number(Number::AlsoA4) }
            { number(Number::AlsoSemitones) }
            <p class="hint" id="also-hint">{ text.hint }</p>
        </fieldset>
    }
}

/// A list from which one word may be chosen for a string.
fn select(
    store: &Store,
    (i, id, ask, none): (usize, String, &'static str, &'static str),
    options: &[(&'static str, &'static str)],
    value: Option<&String>,
    said: fn(Option<String>) -> StringAction,
) -> Html {
    let choose = act(store, move |event: Event| {
        Action::OfString(i, said(field::text(&event).filter(|key| !key.is_empty())))
    });
    html! {
        <div class="field">
            <label class="ask" for={id.clone()}>{ ask }</label>
            <select {id} onchange={choose}>
                <option value="" selected={value.is_none()}>{ none }</option>
                { for options.iter().map(|(key, label)| html! {
                    <option value={*key} selected={value.is_some_and(|v| v == key)}>{ *label }</option>
                }) }
            </select>
        </div>
    }
}

fn strings_field(store: &Store) -> Html {
    let text = Question::Strings.text();
    let answers = &store.document.answers;
    let errors = store.errors();
    html! {
        <fieldset class="field" id="strings" aria-describedby="strings-why">
            <legend>{ text.ask }</legend>
            <p class="why" id="strings-why">{ text.why }</p>
            <p class="hint">{ say!("string-note-hint") }</p>
            <div class="each-string">
                { for fields::tuned(answers).into_iter().enumerate().map(|(i, tuned)| one_string(store, &errors, i, tuned)) }
            </div>
        </fieldset>
    }
}

fn one_string(store: &Store, errors: &[FieldError], i: usize, tuned: &'static str) -> Html {
    let answer = store.document.answers.strings.get(i).cloned().unwrap_or_default();
    let key = |name: &str| format!("strings.{i}.{name}");
    let (note, family, now) = (key("note"), key("family"), key("today.family"));
    let left = note.clone();
    let fault = store.error_of(&note).or_else(|| store.error_of(&family));
    let unknown = store.error_of(&now);
    let known = answer.today != Today::default()
        || answer.keep
        || !answer.bothers.is_empty()
        || any_in(errors, &key("today."));
    let metals: Vec<_> = material::METALS
        .iter()
        .filter(|m| m.outer)
        .map(|m| (m.key, naming::metal(m.key)))
        .collect();
    let families = Family::ALL.map(Family::key).map(|key| (key, questions::family_label(key)));
    let gauges: Vec<_> =
        GaugeClass::KEYS.iter().map(|key| (*key, questions::gauge_label(key))).collect();
    let unknown_word = say!("unknown");
    let now_on_it = html! {
        <>
            { say!("string-now") }
            <span class="unseen">{ say!("string-now-of", note = tuned) }</span>
        </>
    };
    let keep = vec![Tick { key: "keep", label: say!("string-stays"), ticked: answer.keep }];
    html! {
        <fieldset class="one-string" key={i}>
            <legend>{ say!("string-legend", note = tuned) }</legend>
            <TextField
                id={note}
                ask={say!("string-note")}
                text={store.note_text(i)}
                fault={fault.map(AttrValue::from)}
                on_type={act(store, move |text| Action::Note(i, text))}
                on_leave={leave(store, left)}
            />
            { select(store, (i, family, say!("string-kind"), say!("string-any-kind")), &families, answer.family.as_ref(), StringAction::Family) }
            <NumberOf store={store.clone()} number={Number::MostTension(i)} ask={Question::Number(Number::MostTension(i)).text().ask} />
            <Fold summary={now_on_it} open={known}>
                { select(store, (i, now, say!("string-kind-now"), unknown_word), &families, answer.today.family.as_ref(), StringAction::TodayFamily) }
                if let Some(unknown) = unknown {
                    <p class="fault">{ unknown }</p>
                }
                { select(store, (i, key("today.gauge_class"), say!("string-gauge-now"), unknown_word), &gauges, answer.today.gauge_class.as_ref(), StringAction::TodayGauge) }
                { select(store, (i, key("today.outer_metal"), say!("string-metal-now"), unknown_word), &metals, answer.today.outer_metal.as_ref(), StringAction::TodayMetal) }
                <NumberOf store={store.clone()} number={Number::AgeOf(i)} ask={Question::Number(Number::AgeOf(i)).text().ask} />
                <Ticks
                    id={key("keep")}
                    ask={say!("string-stays-ask")}
                    ticks={keep}
                    on_tick={act(store, move |(_, yes)| Action::OfString(i, StringAction::Keep(yes)))}
                />
                <Ticks
                    id={key("bothers")}
                    ask={say!("string-bothers")}
                    ticks={bother_ticks(&answer.bothers)}
                    fault={store.error_of(&key("bothers")).map(AttrValue::from)}
                    on_tick={act(store, move |(bother, yes): (&'static str, bool)| {
                        Action::OfString(i, StringAction::Bother(bother.to_owned(), yes))
                    })}
                />
            </Fold>
        </fieldset>
    }
}

/// Whether a fault lies in a field whose name begins so.
fn any_in(errors: &[FieldError], begins: &str) -> bool {
    errors.iter().any(|error| error.field.starts_with(begins))
}

fn weights_field(store: &Store) -> Html {
    let text = Question::Weights.text();
    let weight = |i: usize| {
        let usual = Number::Weight(i).unit(None).typed(questions::base_weight(i));
        html! {
            <NumberOf
                key={i}
                store={store.clone()}
                number={Number::Weight(i)}
                ask={naming::capital(questions::weight_name(i))}
                hint={say!("weight-usual", number = usual)}
            />
        }
    };
    let any = !store.document.answers.weights.is_empty() || any_in(&store.errors(), "weights.");
    html! {
        <fieldset class="field" id="weights" aria-describedby="weights-why">
            <legend>{ text.ask }</legend>
            <p class="why" id="weights-why">{ text.why }</p>
            <Fold summary={say!("weights-summary", count = desirability::COUNT)} open={any}>
                <div class="weights">{ for (0..desirability::COUNT).map(weight) }</div>
            </Fold>
        </fieldset>
    }
}
