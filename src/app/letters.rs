//! Numbers and letters as people type them.
//!
//! The standard library can do more, with tables for every number and every alphabet that weigh on the page before its
//! first screen: 10 kB to read any number, 15 kB for capitals. JSON's own reader is there anyway, and the page writes
//! in the letters of Western Europe.

use serde_json::Value;

/// Reads a number with a decimal point: `5`, `-0.5`, `.5`, `5.`; to the last bit, as JSON is read.
#[must_use]
pub fn number(text: &str) -> Option<f64> {
    let (sign, size) = text.strip_prefix('-').map_or(("", text), |size| ("-", size));
    let (whole, part) = size.split_once('.').unwrap_or((size, ""));
    let digits = |text: &str| text.bytes().all(|byte| byte.is_ascii_digit());
    if !digits(whole) || !digits(part) || (whole.is_empty() && part.is_empty()) {
        return None;
    }
    // JSON wants a digit on either side of the point, and no zero before another digit.
    let whole = whole.trim_start_matches('0');
    let zero = if whole.is_empty() { "0" } else { "" };
    serde_json::from_str::<Value>(&format!("{sign}{zero}{whole}.{part}0")).ok()?.as_f64()
}

/// The capital of a letter; others stay as they are.
#[must_use]
pub fn capital(letter: char) -> char {
    match letter {
        'à'..='ö' | 'ø'..='þ' => char::from_u32(u32::from(letter) - 32).unwrap_or(letter),
        other => other.to_ascii_uppercase(),
    }
}

/// The small letter of a capital; others stay as they are.
#[must_use]
pub fn small(letter: char) -> char {
    match letter {
        'À'..='Ö' | 'Ø'..='Þ' => char::from_u32(u32::from(letter) + 32).unwrap_or(letter),
        other => other.to_ascii_lowercase(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_number_is_read_as_the_standard_library_reads_it() {
        let mut texts: Vec<String> = ["5", "-0.5", ".5", "5.", "007", "0", "-0", "00.10", "442.1"]
            .map(str::to_owned)
            .to_vec();
        texts.extend((0..2000).map(|i| format!("{}", f64::from(i) * 0.001_7 / 3.0)));
        texts.extend(["9".repeat(40), format!("0.{}1", "0".repeat(30))]);
        for text in texts {
            let expected = text.parse::<f64>().ok().map(f64::to_bits);
            assert_eq!(number(&text).map(f64::to_bits), expected, "{text}");
        }
        for wrong in
            ["", ".", "-", "--1", "+1", "1e3", "1 2", "1,5", "1.2.3", "x", "inf", "NaN", "٣"]
        {
            assert_eq!(number(wrong), None, "{wrong}");
        }
    }

    #[test]
    fn letters_of_western_europe_have_their_capitals() {
        for letter in
            (0..0xff).filter_map(char::from_u32).filter(|letter| *letter != 'ß' && *letter != 'µ')
        {
            assert_eq!(capital(letter).to_string(), letter.to_uppercase().to_string());
            assert_eq!(small(letter).to_string(), letter.to_lowercase().to_string());
        }
        assert_eq!((capital('ß'), small('ß'), capital('−')), ('ß', 'ß', '−'));
    }
}
