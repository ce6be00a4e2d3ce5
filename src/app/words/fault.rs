//! What the model refuses, in the language that is spoken: which field, what it held, what it takes.

use protocol::document::{Note, VERSION};
use protocol::reply::{Bound, Fault, ONE_OF};

use super::questions::name_of_field;
use super::{say, speech};
use crate::records::StoreError;
use crate::{fields, letters, units};

/// A fault of the model, under the name of its question or, where none asks for it, its own.
#[must_use]
pub fn told(fault: &Fault) -> String {
    let own = speech::of("fault-field", last(&fault.field));
    let asked = || name_of_field(&fields::on_page(&fault.field));
    refused(own.or_else(asked).unwrap_or(&fault.field), fault)
}

/// What had to be mended in a file.
#[must_use]
pub fn note(note: &Note) -> String {
    match note {
        Note::NotJson(_) => say!("note-not-json").to_owned(),
        Note::NotOurs => say!("note-not-ours").to_owned(),
        Note::Later(version) => {
            say!("note-later", version = version.to_string(), known = VERSION.to_string())
        }
        Note::Fitting(i, _) => say!("note-fitting", number = (i + 1).to_string()),
        Note::Answer { field, held } => say!("note-answer", name = name(field), held = held),
        Note::Repeated(field) => say!("note-repeated", name = name(field)),
        Note::TooMany { field, count, most } => say!(
            "note-too-many",
            name = name(field),
            count = count.to_string(),
            most = most.to_string()
        ),
        Note::TooLong(field, most) => {
            say!("note-too-long", name = name(field), most = most.to_string())
        }
        Note::More(count) => say!("note-more", count = count.to_string()),
    }
}

/// Why nothing could be written to the store.
#[must_use]
pub fn store(error: &StoreError) -> String {
    match error {
        StoreError::Unavailable => say!("storage-disabled").to_owned(),
        StoreError::Later => say!("storage-later").to_owned(),
        StoreError::Changed => say!("storage-failed", reason = say!("storage-changed")),
        StoreError::Failed(reason) => say!("storage-failed", reason = reason),
    }
}

fn name(field: &str) -> String {
    if field == "fittings" {
        return say!("note-fittings").to_owned();
    }
    let typed = field.strip_prefix("typed.").or_else(|| field.strip_prefix("drafts."));
    let field = fields::on_page(typed.unwrap_or(field));
    name_of_field(&field).map_or(field, str::to_owned)
}

/// The same under the name that the field has on the page.
#[must_use]
pub fn refused(name: &str, fault: &Fault) -> String {
    say!("fault-refused", name = name, typed = typed(fault), allowed = allowed(fault))
}

/// The last step of the way to a field.
fn last(field: &str) -> &str {
    field.rsplit('.').next().unwrap_or(field)
}

fn typed(fault: &Fault) -> String {
    // Of the numbers only lengths are written in another unit than the model's.
    let length = fault.range.as_ref().is_some_and(|range| range.unit == "m")
        || last(&fault.field).ends_with("_m");
    match (fault.value.as_str(), letters::number(&fault.value)) {
        ("nothing", _) => say!("fault-nothing").to_owned(),
        (_, Some(metres)) if length => units::with_unit(&short(metres * 1e3), "mm"),
        (_, Some(number)) => short(number),
        (word, _) => word.to_owned(),
    }
}

fn allowed(fault: &Fault) -> String {
    if let Some(Bound { min, max, unit, .. }) = &fault.range {
        let (factor, unit) = match unit.as_str() {
            "m" => (1e3, "mm"),
            "1" => (1.0, ""),
            "d" => (1.0, say!("unit-days")),
            unit => (1.0, speech::of_or_key("unit-typed", unit)),
        };
        let range = say!("range-of", low = short(min * factor), high = short(max * factor));
        return units::with_unit(&range, unit);
    }
    // A list of words has the door's own, and is not provoked by choosing on the page.
    let words = fault.allowed.strip_prefix(ONE_OF);
    let told = words.or_else(|| speech::of("fault-allowed", last(&fault.field)));
    told.unwrap_or(&fault.allowed).to_owned()
}

/// A number with no more digits than it needs.
fn short(number: f64) -> String {
    let text = units::fixed(number, 4);
    if !text.contains(units::point()) {
        return text;
    }
    text.trim_end_matches('0').trim_end_matches(units::point()).to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;
    use protocol::reply::Reply;
    use protocol::request::{
        Answers, CompareRequest, Construction, Core, FitRequest, Request, Setting, StringAnswer,
    };

    /// What the model says of a request, in German.
    fn in_german(request: &Request) -> Vec<String> {
        let Reply::Refused(refused) = protocol::handle(request) else {
            panic!("it should be refused")
        };
        speech::learn(catalogue::Language::German, catalogue::GERMAN);
        speech::speak(catalogue::Language::German);
        let told = refused.faults.iter().map(told).collect();
        speech::speak(catalogue::Language::English);
        told
    }

    fn strings(strings: Vec<StringAnswer>) -> Request {
        let answers = Answers { strings, ..Answers::default() };
        Request::Fit(Box::new(FitRequest { answers }))
    }

    #[test]
    fn a_note_out_of_reach_is_told_with_its_range() {
        let high = StringAnswer { note: Some("C8".to_owned()), ..StringAnswer::default() };
        assert_eq!(
            in_german(&strings(vec![high])),
            ["Ton: 4186,009 ist nicht erlaubt. Möglich ist 25 bis 1000\u{a0}Hz."]
        );
    }

    #[test]
    fn a_string_that_stays_unknown_is_told_in_words() {
        let stays = StringAnswer { keep: true, ..StringAnswer::default() };
        assert_eq!(
            in_german(&strings(vec![stays])),
            [
                "Art der Saite: nichts ist nicht erlaubt. Möglich ist eine Art, für diese Saite oder für den ganzen Satz: Was bleiben soll, muss bekannt sein."
            ]
        );
    }

    #[test]
    fn a_core_thinner_than_three_filaments_is_told_in_millimetres() {
        let one = Construction {
            core: Core {
                material: "polyamide".to_owned(),
                build: "multifilament".to_owned(),
                diameter_m: 2e-4,
                layout: None,
                lay_deg: None,
                filament_m: Some(1e-4),
                fill: Some(0.7),
                twist_deg: Some(12.0),
            },
            windings: Vec::new(),
        };
        let request = Request::Compare(Box::new(CompareRequest {
            this: one.clone(),
            other: one,
            setting: Setting::of(0.328, 440.0),
        }));
        let told = in_german(&request);
        let expected = "Faserdicke: 0,1\u{a0}mm ist nicht erlaubt. Möglich ist höchstens ein Drittel der Kernstärke.";
        assert_eq!(told, [expected, expected]);
    }
}
