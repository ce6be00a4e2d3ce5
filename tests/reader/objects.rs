//! Does the reader object when a page says something else than its reply?

use app::depth::Depth;
use app::hooks::Sureness;
use protocol::reply::Reply;
use protocol::request::{Answers, CompareRequest, FitRequest, Request};
use serde_json::Value;
use std::rc::Rc;

use crate::cases::{fit, reply, sure};
use crate::reader::read_page;
use crate::rendered::Easel;
use crate::vocabulary::PROPERTIES;

/// Pages of two people who said what is on their instrument, and of each two strings side by side.
fn pages() -> Vec<(Value, String)> {
    let easel = Easel::new();
    let mut pages = Vec::new();
    let text = |word: &str| Some(word.to_owned());
    let people = [
        Answers { now: text("gut"), concert_days: Some(9.0), ..Answers::default() },
        Answers {
            instrument: text("cello"),
            now: text("steel"),
            room: text("damp"),
            ..Answers::default()
        },
    ];
    for (answers, depth) in people.into_iter().zip([Depth::Bench, Depth::Words]) {
        let (mut value, set) = fit(FitRequest { answers: answers.clone() });
        let (certainty, known) = sure(FitRequest { answers });
        value["certainty"] = certainty;
        let string = &set.set.as_ref().unwrap().strings[1];
        let request = CompareRequest {
            this: string.report.construction.clone(),
            other: string.rival.as_ref().unwrap().construction.clone(),
            setting: string.report.setting.clone(),
        };
        let (pair, found) = reply(&Request::Compare(Box::new(request)));
        let Reply::Compare(found) = found else { panic!("{pair}") };
        pages.push((value, easel.set(&set, Sureness::Known(known), depth)));
        pages.push((pair, easel.pair(&Rc::new(*found))));
    }
    pages
}

fn objects(reply: &Value, html: &str) -> bool {
    !read_page(reply, html, None).objections.is_empty()
}

#[test]
fn a_page_as_it_is_meets_no_objection() {
    for (reply, html) in pages() {
        let reading = read_page(&reply, &html, None);
        assert!(reading.objections.is_empty(), "{:#?}", reading.objections);
    }
}

#[test]
fn a_swapped_comparative_meets_one() {
    let mut swapped = 0;
    for (reply, html) in pages() {
        for p in &PROPERTIES {
            for (said, instead) in [(p.more, p.less), (p.less, p.more)] {
                // As a cell of a table, and at the beginning of a sentence.
                let big = |word: &str| word[..1].to_uppercase() + &word[1..];
                for (before, after) in [
                    (format!(">{said}<"), format!(">{instead}<")),
                    (format!(" {said}<"), format!(" {instead}<")),
                    (format!(">{}: ", big(said)), format!(">{}: ", big(instead))),
                    (format!(">{}, and ", big(said)), format!(">{}, and ", big(instead))),
                ] {
                    if html.contains(&before) {
                        swapped += 1;
                        assert!(
                            objects(&reply, &html.replacen(&before, &after, 1)),
                            "{before} became {after}"
                        );
                    }
                }
            }
        }
    }
    assert!(swapped > 20, "only {swapped} words were swapped");
}

#[test]
fn a_word_on_another_rung_meets_one() {
    let mut swapped = 0;
    for (reply, html) in pages() {
        for (said, instead) in [
            ("computed, very likely", "computed, likely"),
            (">very likely ", ">likely "),
            ("nearer to what", "further from what"),
            ("made every day, the other", "made every week, the other"),
            ("no difference we can compute", "the same"),
            ("the ranges overlap", "the same"),
            ("unlikely</td>", "likely</td>"),
            ("in the middle of what is usual", "above what is usual"),
            ("in the lower part of what is usual", "in the upper part of what is usual"),
            ("very likely the best", "likely the best"),
            ("It is a close call.", "These kinds of string are likely the best for you."),
            ("ahead nearly every time", "ahead most of the time"),
            ("counted for more", "counted for less"),
            ("counted for less", "counted for more"),
            ("would be of heavy gauge", "would be of light gauge"),
            ("would be of light gauge", "would be of heavy gauge"),
            ("would be of medium gauge", "would be of heavy gauge"),
            ("one step softer", "one step firmer"),
            ("one step firmer", "one step softer"),
            ("Steadier by", "Less steady by"),
            ("Less steady by", "Steadier by"),
        ] {
            if html.contains(said) {
                swapped += 1;
                assert!(
                    objects(&reply, &html.replacen(said, instead, 1)),
                    "{said} became {instead}"
                );
            }
        }
    }
    assert!(swapped > 5, "only {swapped} words were swapped");
}

#[test]
fn new_wording_meets_one_until_the_reader_knows_it() {
    let (reply, html) = pages().remove(0);
    for new in [
        "<p>It sounds warmer than the other.</p>",
        "<p>It costs 12 euros.</p>",
        "<p>That is very likely.</p>",
        "<table><thead><tr><th>A</th><th>B</th></tr></thead><tbody><tr><th>x</th><td>7</td></tr></tbody></table>",
    ] {
        let more = html.replacen("</article>", &format!("{new}</article>"), 1);
        assert_eq!(read_page(&reply, &more, None).objections.len(), 1, "{new}");
    }
    assert!(!objects(&reply, &html.replacen("</article>", "<p>Enjoy it.</p></article>", 1)));
}

/// Where the figures of a page stand, in the text between its tags: the last digit of each.
fn last_digits(html: &str) -> Vec<usize> {
    let mut inside = false;
    let bytes = html.as_bytes();
    let mut found = Vec::new();
    for (i, byte) in bytes.iter().enumerate() {
        match byte {
            b'<' => inside = true,
            b'>' => inside = false,
            _ => {}
        }
        let ends = |next: u8, after: u8| {
            !(next.is_ascii_digit() || (next == b'.' && after.is_ascii_digit()))
        };
        if !inside && byte.is_ascii_digit() && ends(bytes[i + 1], bytes[i + 2]) {
            found.push(i);
        }
    }
    found
}

#[test]
fn a_shifted_figure_meets_one() {
    let (mut shifted, mut missed) = (0, Vec::new());
    for (reply, html) in pages() {
        let digits = last_digits(&html);
        // A thousand figures would take a minute: every thirteenth is shifted, alone.
        for at in digits.into_iter().step_by(13) {
            let before = &html[..at];
            // What a picture shows is not read; see `vocabulary::PICTURES`.
            let picture =
                before.rfind("class=\"axes\"").is_some_and(|open| !before[open..].contains("</g>"))
                    || before
                        .rfind("class=\"scale-bar\"")
                        .is_some_and(|open| !before[open..].contains("</svg>"));
            if picture || before.ends_with("One part in ") {
                continue;
            }
            let digit = html.as_bytes()[at] - b'0';
            let other = format!("{}{}{}", before, (digit + 3) % 10, &html[at + 1..]);
            shifted += 1;
            if !objects(&reply, &other) {
                let from = before.char_indices().rev().nth(60).map_or(0, |(i, _)| i);
                missed.push(format!("{} -> {}", &html[from..=at], (digit + 3) % 10));
            }
        }
    }
    assert!(shifted > 300, "only {shifted} figures were shifted");
    // What may be missed: a row of the table of strings that would do, when it becomes that of another such string;
    // and a figure to whose last digit nobody is bound, when the range is so wide that it may be rounded to tens.
    assert!(missed.len() * 30 <= shifted, "{} of {shifted}: {missed:#?}", missed.len());
    support::tell(&format!("{} of {shifted} shifted figures were seen", shifted - missed.len()));
}
