//! What a kept fitting is called.

use protocol::document::Fitting;
use protocol::request::Answers;

use super::naming::capital;
use super::questions;
use crate::fields;
use crate::invented;

/// What to call a kept fitting.
#[must_use]
pub fn name(fitting: &Fitting) -> String {
    let example = fitting.invented.as_deref().and_then(invented::name);
    example.map_or_else(|| name_of(&fitting.label, &fitting.answers), str::to_owned)
}

/// What to call answers: their label, or the instrument.
#[must_use]
pub fn name_of(label: &str, answers: &Answers) -> String {
    if !label.trim().is_empty() {
        return label.trim().to_owned();
    }
    let kind = fields::kind(answers);
    let size = answers.size.as_deref().or(kind.sizes.first().map(|size| size.key));
    format!(
        "{} {}",
        capital(questions::instrument_name(kind.key)),
        questions::size_name(size.unwrap_or_default())
    )
}
