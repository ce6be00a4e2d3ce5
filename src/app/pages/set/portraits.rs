//! The strings of a set as portraits to one scale: one set in a row, or two beside each other.

use protocol::reply::{Report, Set};
use protocol::request::Construction;
use yew::prelude::*;

use crate::components::portrait::{Portrait, ScaleBar, magnification};
use crate::words::naming::{portrait, short, the_string};
use crate::words::{kinds, say, set as words, verdict};

/// How wide the thickest string is drawn where two sets stand beside each other, in pixels.
const WIDEST_OF_TWO_PX: f64 = 80.0;

/// The set as a row of portraits.
pub(super) fn row(set: &Set, names: &[String], px_per_mm: f64) -> Html {
    html! {
        <figure class="line-up">
            <ol class="portraits">
                { for set.strings.iter().zip(names).map(|(s, name)| html! {
                    // Another string is another element, which turns into its place.
                    <li key={key(name, &s.report.construction)}>
                        { likeness(&s.report.construction, name, &s.report.family, px_per_mm) }
                        if let Some(word) = verdict::standing(&s.standing) {
                            <span class="standing">{ word }</span>
                        }
                    </li>
                }) }
            </ol>
            <ScaleBar px_per_mm={px_per_mm} />
        </figure>
    }
}

fn key(name: &str, construction: &Construction) -> String {
    let core = &construction.core;
    format!("{name} {} {} {:?}", core.material, core.diameter_m, construction.windings)
}

fn likeness(construction: &Construction, name: &str, family_key: &str, px_per_mm: f64) -> Html {
    html! {
        <>
            <span class="likeness-room">
                <Portrait construction={construction.clone()} px_per_mm={px_per_mm}
                    label={portrait(&the_string(name), construction)} />
            </span>
            <span class="note-name">{ name }</span>
            <span class="kind">{ short(family_key, construction) }</span>
        </>
    }
}

/// What a string is drawn and named by.
fn drawn(report: &Report) -> (&Construction, &str) {
    (&report.construction, &report.family)
}

/// Two sets as equals.
pub(super) fn level(set: &Set, names: &[String], on_compare: &Callback<usize>) -> Html {
    let second = set.second();
    let both = set.strings.iter().map(|s| &*s.report).chain(second.iter().copied());
    let both = both.map(|report| &report.construction);
    let px_per_mm = magnification(both, WIDEST_OF_TWO_PX);
    let chosen = words::chosen_families(set);
    let other = words::other_families(set);
    let differ = words::differing(&chosen, &other);
    let metal = |c: &Construction| c.windings.last().map(|w| w.metal.clone());
    let other_metal = |i: usize| {
        let first = set.strings.get(i);
        first.zip(second.get(i)).is_some_and(|(first, second)| {
            metal(&first.report.construction) != metal(&second.construction)
        })
    };
    let one = |title: &str, kind: Option<String>, strings: Vec<(&Construction, &str)>| {
        let many = (strings.len() > 4).then_some("of-five");
        html! {
            <section class="equal">
                <h3>{ title }</h3>
                <p>{ kind }</p>
                <ol class={classes!("portraits", many)}>
                    { for strings.into_iter().enumerate().map(|(i, (construction, key))| html! {
                        <li class={classes!(differ.contains(&i).then_some("differs"))}>
                            { likeness(construction, &names[i], key, px_per_mm) }
                            if let Some(word) = set.strings.get(i).and_then(|s| verdict::standing(&s.standing)) {
                                <span class="standing">{ word }</span>
                            }
                            if differ.contains(&i) {
                                <span class="differs-mark">{ say!("set-differs") }</span>
                            } else if other_metal(i) {
                                <span class="kind">{ say!("set-metal") }</span>
                            }
                        </li>
                    }) }
                </ol>
            </section>
        }
    };
    let first = set.strings.iter().map(|s| drawn(&s.report)).collect();
    let second = second.iter().copied().map(drawn).collect();
    html! {
        <section class="level" aria-label={words::lead(set)}>
            <div class="equals">
                { one(say!("set-first"), Some(kinds::chosen(set, names)), first) }
                { one(say!("set-second"), kinds::second(set, names), second) }
            </div>
            <ScaleBar px_per_mm={px_per_mm} />
            <p class="actions">
                { for differ.iter().map(|i| {
                    let i = *i;
                    let onclick = on_compare.reform(move |_: MouseEvent| i);
                    html! {
                        <button type="button" class="button quiet" onclick={onclick}>
                            { say!("set-compare-two", name = &names[i]) }
                        </button>
                    }
                }) }
            </p>
        </section>
    }
}
