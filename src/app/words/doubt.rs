//! Where do the numbers of a report stand on ground that was not measured, and what would make them surer?

use protocol::reply::Doubt;

use super::naming::{capital, list, metal};
use super::{say, speech};
use crate::units;

/// Shares of a doubt under this are not worth naming.
const WORTH_NAMING: f64 = 0.05;

/// A caveat as a sentence.
#[must_use]
pub fn caveat(key: &str) -> &str {
    speech::of_or_key("caveat", key)
}

/// What a doubt comes from: `the density of silver`, `the sounding length`.
#[must_use]
pub fn cause(doubt: &Doubt) -> String {
    let of = match doubt.owner.as_str() {
        "" => return general(&doubt.which).to_owned(),
        owner => speech::of("material", &format!("{owner}.of")).unwrap_or_else(|| metal(owner)),
    };
    speech::of_filled("doubt", &doubt.which, &[("material", of.into())])
        .unwrap_or_else(|| format!("{} {of}", doubt.which))
}

fn general(which: &str) -> &str {
    speech::of_or_key("general", which)
}

/// How a person could know it better, if a person can.
#[must_use]
pub fn remedy(which: &str) -> Option<&'static str> {
    speech::of("remedy", which)
}

/// What a property is called in the middle of a sentence about its doubt.
fn about(property: &str) -> &str {
    speech::of("about", property).unwrap_or_else(|| super::property::name(property))
}

/// What most of the doubt about a property comes from, in a short sentence; none if there is no doubt.
#[must_use]
pub fn in_short(property: &str, doubts: &[Doubt]) -> Option<String> {
    let first = doubts.first().filter(|d| d.share >= WORTH_NAMING)?;
    let cause = cause(first);
    Some(say!(
        "doubt-in-short",
        Cause = capital(&cause),
        cause = &cause,
        share = share(first),
        about = about(property),
    ))
}

/// A share of a doubt.
fn share(d: &Doubt) -> String {
    if d.share >= 0.995 {
        say!("nearly-all").to_owned()
    } else {
        units::with_unit(&units::fixed(d.share * 100.0, 0), "%")
    }
}

/// What the doubt about a property comes from, as a sentence; none if there is no doubt.
#[must_use]
pub fn sentence(property: &str, doubts: &[Doubt]) -> Option<String> {
    let named: Vec<&Doubt> = doubts.iter().filter(|d| d.share >= WORTH_NAMING).collect();
    let (first, rest) = named.split_first()?;
    let more: Vec<String> =
        rest.iter().map(|d| say!("doubt-share", cause = cause(d), share = share(d))).collect();
    let more = if more.is_empty() { String::new() } else { format!(", {}", list(&more)) };
    let remedy = remedy(&first.which).map(|r| format!(" {r}")).unwrap_or_default();
    let cause = cause(first);
    Some(say!(
        "doubt-sentence",
        Cause = capital(&cause),
        cause = &cause,
        share = share(first),
        about = about(property),
        more = more,
        remedy = remedy,
    ))
}
