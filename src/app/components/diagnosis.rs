//! Why something bothers: each complaint with its causes in order, and the numbers that speak for or against them.

use std::rc::Rc;

use protocol::reply::{Cause, Finding, Fit};
use yew::prelude::*;

use super::fold::Fold;
use crate::words::naming::{list, within};
use crate::words::say;
use crate::words::verdict as words;

/// Properties of [`Diagnosis`].
#[derive(Clone, PartialEq, Properties)]
pub struct DiagnosisProps {
    /// The answer.
    pub fit: Rc<Fit>,
}

/// What may be behind the complaints, and what led to the answer.
#[component]
pub fn Diagnosis(props: &DiagnosisProps) -> Html {
    let fit = &props.fit;
    let reasons = words::reasons(fit);
    html! {
        <>
            if !reasons.is_empty() {
                <p class="lede">{ reasons.join(" ") }</p>
            }
            if !fit.verdict.findings.is_empty() {
                <section class="findings" aria-label={say!("findings-title")}>
                    { for words::first_causes(fit).into_iter().map(|line| html! { <p>{ line }</p> }) }
                    <Fold summary={html! { <h2>{ say!("findings-title") }</h2> }}>
                        <div class="each-finding">
                            { for fit.verdict.findings.iter().map(|finding| one(finding, fit)) }
                        </div>
                    </Fold>
                </section>
            }
        </>
    }
}

fn one(finding: &Finding, fit: &Fit) -> Html {
    let unlikely: Vec<&str> = finding
        .causes
        .iter()
        .filter(|cause| cause.likely == "unlikely")
        .map(|cause| words::cause(&cause.cause).0.trim_end_matches('.'))
        .collect();
    let causes: Vec<String> = unlikely.iter().map(|cause| within(cause)).collect();
    let causes = list(&causes);
    html! {
        <section class="finding">
            <h3>{ words::complaint(finding, fit) }</h3>
            <ol>{ for finding.causes.iter().filter(|c| c.likely != "unlikely").map(|c| cause(c, finding, fit)) }</ol>
            if !unlikely.is_empty() {
                <p class="aside">{ say!("findings-unlikely", causes = causes, sentences = unlikely.join("; ")) }</p>
            }
        </section>
    }
}

fn cause(cause: &Cause, finding: &Finding, fit: &Fit) -> Html {
    let (what, advice) = words::cause(&cause.cause);
    html! {
        <li>
            <strong>{ what }</strong>
            { " " }
            { advice }
            { for cause.numbers.iter().map(|n| html! {
                <>{ " " }{ words::whose(n, finding, fit) }{ words::number(n, &cause.cause) }</>
            }) }
            { " " }
            <span class="rests-on">{ words::likely(&cause.likely, cause.judged) }</span>
        </li>
    }
}
