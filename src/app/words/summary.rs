//! A set in a few words, for the list of kept fittings and for file names.

use std::rc::Rc;

use protocol::document::KeptString;
use protocol::reply::{Fit, FittedString};

use super::questions::{family_listed, gauge_listed};
use super::say;
use crate::letters;
use crate::units;

/// What is kept of the strings of a set, whatever language is spoken later.
#[must_use]
pub fn strings(fit: &Fit) -> Vec<KeptString> {
    let kept = |string: &Rc<FittedString>| KeptString {
        note: string.note.clone(),
        standing: string.standing.clone(),
        family: string.shopping.family.clone(),
        gauge_class: string.shopping.gauge_class.clone(),
        tension_n: string.shopping.tension_n,
    };
    fit.set.iter().flat_map(|set| &set.strings).map(kept).collect()
}

/// The set in the language that is spoken now, one line a string.
#[must_use]
pub fn lines(strings: &[KeptString]) -> Vec<String> {
    let line = |string: &KeptString| {
        if let Some(word) = super::verdict::standing(&string.standing) {
            return format!("{}: {word}", string.note);
        }
        let (low, high) = string.tension_n;
        say!(
            "summary-line",
            note = &string.note,
            family = family_listed(&string.family),
            gauge = gauge_listed(&string.gauge_class),
            force = units::force_range(low, high),
        )
    };
    strings.iter().map(line).collect()
}

/// A name for the file of a fitting: letters and digits of its label, and ours.
#[must_use]
pub fn file_name(label: &str) -> String {
    let mut name = String::from("ropewalk-");
    for letter in label.chars().map(letters::small).take(60) {
        // Other alphabets lie before the signs that belong to none.
        if letter.is_ascii_alphanumeric() || ('À'..'\u{2000}').contains(&letter) {
            name.push(letter);
        } else if !name.ends_with('-') {
            name.push('-');
        }
    }
    format!("{}.json", name.trim_end_matches('-'))
}

#[cfg(test)]
mod tests {
    use super::*;
    use protocol::reply::Reply;
    use protocol::request::{FitRequest, Request};

    #[test]
    fn a_set_has_a_line_for_each_string() {
        let request = Request::Fit(Box::new(FitRequest { answers: Default::default() }));
        let Reply::Fit(fit) = protocol::handle(&request) else { panic!("a set should come") };
        let lines = lines(&strings(&fit));
        assert_eq!(lines.len(), 4, "{lines:?}");
        assert!(lines[0].starts_with("E5: plain steel, "), "{lines:?}");
    }

    #[test]
    fn a_file_name_is_plain() {
        assert_eq!(file_name("Desk 3 viola, 15 in"), "ropewalk-desk-3-viola-15-in.json");
        assert_eq!(file_name("Violin 4/4"), "ropewalk-violin-4-4.json");
        assert_eq!(file_name("../…"), "ropewalk.json");
        assert_eq!(file_name(""), "ropewalk.json");
    }
}
