//! Can everything be read? The contrast of every pair of colour tokens that meet on the page, in every scheme.
//!
//! Source: WCAG 2.2, definitions of "contrast ratio" and "relative luminance"; success criteria 1.4.3 (4.5 to 1 for
//! text), 1.4.6 (7 to 1 for text that wants to be read long) and 1.4.11 (3 to 1 for parts that carry a meaning).

use std::collections::BTreeMap;
use std::fs;

use super::{root, text};

/// Tokens of text, and what they may stand on.
const TEXTS: [&str; 4] = ["ink", "ink-2", "accent", "warn"];
const GROUNDS: [&str; 2] = ["paper", "surface"];

/// Colour tokens by name, each as red, green and blue of 255.
type Tokens = BTreeMap<String, [u8; 3]>;

/// The tokens of one `:root` block; those that name a colour of the person's own system are left to it.
fn tokens_of(block: &str) -> Tokens {
    let mut found = Tokens::new();
    for line in block.lines() {
        let Some((name, value)) =
            line.trim().strip_prefix("--").and_then(|line| line.split_once(": #"))
        else {
            continue;
        };
        let value = value.trim_end_matches(';');
        let wide: String = match value.len() {
            3 => value.chars().flat_map(|c| [c, c]).collect(),
            _ => value.to_owned(),
        };
        let part = |i: usize| u8::from_str_radix(&wide[2 * i..2 * i + 2], 16).unwrap();
        found.insert(name.to_owned(), [part(0), part(1), part(2)]);
    }
    found
}

/// The schemes, each with all of its tokens.
fn schemes() -> Vec<(&'static str, Tokens)> {
    let css = text("www/style/tokens.css");
    let block = |from: &str| {
        let start = css.find(from).unwrap_or_else(|| panic!("tokens.css has no {from}"));
        let body = start + css[start..].find("{\n").unwrap();
        &css[body..body + css[body..].find("\n}\n").unwrap()]
    };
    let light = tokens_of(block(":root {"));
    assert!(light.len() > 20, "the tokens were not read: {light:?}");
    let over = |other: Tokens| {
        assert_ne!(other["paper"], light["paper"], "a scheme was not read");
        light.clone().into_iter().chain(other).collect::<Tokens>()
    };
    vec![
        ("dark", over(tokens_of(block("@media (prefers-color-scheme: dark)")))),
        ("print", over(tokens_of(block("@media print")))),
        ("light", light),
    ]
}

/// Relative luminance, 0 to 1. Source: WCAG 2.2.
fn luminance(colour: [u8; 3]) -> f64 {
    let [r, g, b] = colour.map(|part| {
        let c = f64::from(part) / 255.0;
        if c <= 0.04045 { c / 12.92 } else { pow((c + 0.055) / 1.055, 2.4) }
    });
    0.2126 * r + 0.7152 * g + 0.0722 * b
}

#[allow(clippy::disallowed_methods, reason = "a test's own power may differ in the last bit")]
fn pow(x: f64, y: f64) -> f64 {
    x.powf(y)
}

/// Contrast ratio, 1 to 21. Source: WCAG 2.2.
fn contrast(a: [u8; 3], b: [u8; 3]) -> f64 {
    let (a, b) = (luminance(a), luminance(b));
    (a.max(b) + 0.05) / (a.min(b) + 0.05)
}

#[test]
fn the_formula_gives_the_published_ends() {
    // WCAG 2.2: black on white is 21 to 1, a colour on itself 1 to 1; #767676 on white is the lightest grey that
    // passes 4.5 to 1 (WebAIM and others; from memory).
    let white = [255; 3];
    assert!((contrast([0; 3], white) - 21.0).abs() < 1e-9);
    assert!((contrast(white, white) - 1.0).abs() < 1e-9);
    assert!(contrast([0x76; 3], white) >= 4.5 && contrast([0x77; 3], white) < 4.5);
}

#[test]
fn every_pair_that_meets_can_be_read() {
    for (scheme, tokens) in schemes() {
        let of = |a: &str, b: &str| contrast(tokens[a], tokens[b]);
        let mut faint = Vec::new();
        let mut wants = |a: &str, b: &str, least: f64| {
            let ratio = of(a, b);
            if ratio < least {
                faint.push(format!("{a} on {b}: {ratio:.2}, wanted {least}"));
            }
        };
        for ground in GROUNDS {
            for text in ["ink", "ink-2", "accent", "warn"] {
                wants(text, ground, 7.0);
            }
        }
        wants("accent-ink", "accent", 7.0);
        // A drawn string stands out from the gap between its parts, and its outline from the page.
        wants("section-line", "aluminium", 3.0);
        assert!(faint.is_empty(), "{scheme}: {faint:#?}");
    }
}

/// The style sheets that use tokens; a class's own stands on a ground of its own.
fn sheets() -> Vec<String> {
    let mut sheets: Vec<String> = fs::read_dir(root().join("www/style"))
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .filter(|sheet| !["tokens.css", "class.css"].contains(&sheet.as_str()))
        .collect();
    sheets.sort();
    sheets
}

#[test]
fn text_and_grounds_are_tokens() {
    let mut other = Vec::new();
    for sheet in sheets() {
        for line in text(format!("www/style/{sheet}")).lines() {
            let line = line.trim();
            let token = |value: &str| {
                value
                    .trim_end_matches(';')
                    .strip_prefix("var(--")
                    .map(|v| v.trim_end_matches(')').to_owned())
            };
            if let Some(value) = line.strip_prefix("color: ") {
                let plain = ["inherit;", "currentColor;", "#000;"].contains(&value);
                let known =
                    token(value).is_some_and(|t| TEXTS.contains(&t.as_str()) || t == "accent-ink");
                if !plain && !known {
                    other.push(format!("{sheet}: {line}"));
                }
            }
            if let Some(value) = line.strip_prefix("background: ") {
                let plain = ["none;", "transparent;", "#fff;"].contains(&value)
                    || value.starts_with("linear-gradient(var(--");
                let known =
                    token(value).is_some_and(|t| GROUNDS.contains(&t.as_str()) || t == "accent");
                if !plain && !known && !value.is_empty() {
                    other.push(format!("{sheet}: {line}"));
                }
            }
        }
    }
    assert!(
        other.is_empty(),
        "colours that no token names, whose contrast nobody computes: {other:#?}"
    );
}
