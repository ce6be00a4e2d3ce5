//! A set in a few words, for the list of kept fittings and for file names.

use protocol::reply::Fit;

use super::questions::{family_listed, gauge_listed};
use super::say;

/// The set, one line a string.
#[must_use]
pub fn lines(fit: &Fit) -> Vec<String> {
    let Some(set) = &fit.set else { return Vec::new() };
    let line = |string: &protocol::reply::FittedString| {
        if let Some(word) = super::verdict::standing(&string.standing) {
            return format!("{}: {word}", string.note);
        }
        let shopping = &string.shopping;
        let (low, high) = shopping.tension_n;
        say!(
            "summary-line",
            note = &string.note,
            family = family_listed(&shopping.family),
            gauge = gauge_listed(&shopping.gauge_class),
            low = format!("{low:.0}"),
            high = format!("{high:.0}"),
        )
    };
    set.strings.iter().map(line).collect()
}

/// A name for the file of a fitting: letters and digits of its label, and ours.
#[must_use]
pub fn file_name(label: &str) -> String {
    let mut name = String::from("ropewalk-");
    for letter in label.to_lowercase().chars().take(60) {
        if letter.is_alphanumeric() {
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
        let lines = lines(&fit);
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
