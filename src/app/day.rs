//! Days of the calendar: a performance is a date, and the model counts the days until then.

use crate::words::{say, speech};

/// A day as the number of days since 1970-01-01.
pub type Day = i64;

/// Reads a date such as `2031-05-09`, as date fields give it; none if there is no such day.
#[must_use]
pub fn read(text: &str) -> Option<Day> {
    let mut parts = text.trim().split('-');
    let (year, month, day) = (parts.next()?, parts.next()?, parts.next()?);
    let number = |text: &str, length: usize| {
        (text.len() == length && text.bytes().all(|b| b.is_ascii_digit()))
            .then(|| text.parse::<i64>().ok())
            .flatten()
    };
    let (year, month, day) = (number(year, 4)?, number(month, 2)?, number(day, 2)?);
    let found = since_1970(year, month, day);
    // The thirtieth of February becomes a day of March, and is told apart by that.
    (parts.next().is_none() && (1..=12).contains(&month) && written(found) == text.trim())
        .then_some(found)
}

/// Writes a day as `2031-05-09`.
#[must_use]
pub fn written(day: Day) -> String {
    let (year, month, day) = civil(day);
    format!("{year:04}-{month:02}-{day:02}")
}

/// Writes a day as `9 May 2031`.
#[must_use]
pub fn spoken(day: Day) -> String {
    let (year, month, day) = civil(day);
    let month = month.to_string();
    let month = speech::of_or_key("month", &month);
    say!("date", day = day.to_string(), month = month, year = year.to_string())
}

/// Names a day as `Friday 9 May`.
#[must_use]
pub fn named(day: Day) -> String {
    let (_, month, of_month) = civil(day);
    // The first of January 1970 was a Thursday.
    let weekday = speech::of_or_key("weekday", &(day + 3).rem_euclid(7).to_string()).to_owned();
    let month = speech::of_or_key("month", &month.to_string()).to_owned();
    say!("date-named", weekday = weekday, day = of_month.to_string(), month = month)
}

/// Days from 1970-01-01 to a date of the Gregorian calendar, counted in years that begin in March,
/// so that the leap day comes last.
const fn since_1970(year: i64, month: i64, day: i64) -> Day {
    let year = if month <= 2 { year - 1 } else { year };
    let era = year.div_euclid(400);
    let of_era = year.rem_euclid(400);
    let of_year = (153 * ((month + 9) % 12) + 2) / 5 + day - 1;
    era * 146_097 + of_era * 365 + of_era / 4 - of_era / 100 + of_year - 719_468
}

/// Year, month and day of a number of days since 1970-01-01.
const fn civil(day: Day) -> (i64, i64, i64) {
    let day = day + 719_468;
    let era = day.div_euclid(146_097);
    let of_era = day.rem_euclid(146_097);
    let year = (of_era - of_era / 1460 + of_era / 36_524 - of_era / 146_096) / 365;
    let of_year = of_era - (365 * year + year / 4 - year / 100);
    let month = (5 * of_year + 2) / 153;
    let date = of_year - (153 * month + 2) / 5 + 1;
    let month = if month < 10 { month + 3 } else { month - 9 };
    let year = year + era * 400 + if month <= 2 { 1 } else { 0 };
    (year, month, date)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn known_days() {
        assert_eq!(read("1970-01-01"), Some(0));
        assert_eq!(read("2000-03-01"), Some(11_017));
        assert_eq!(read("2026-11-25"), Some(20_782));
        assert_eq!(spoken(11_017), "1 March 2000");
        assert_eq!(named(0), "Thursday 1 January");
        // `date -d 2031-05-09 +%A` of GNU coreutils.
        assert_eq!(read("2031-05-09").map(named).as_deref(), Some("Friday 9 May"));
    }

    #[test]
    fn every_day_comes_back() {
        for day in -200_000..200_000 {
            assert_eq!(read(&written(day)), Some(day));
        }
    }

    #[test]
    fn what_is_no_day_is_none() {
        for text in [
            "",
            "2026",
            "2026-02-30",
            "2026-13-01",
            "2026-00-10",
            "2026-1-1",
            "25.12.2026",
            "2026-12-25-01",
            "-026-12-25",
            "2026-12-２5",
            "2100-02-29",
        ] {
            assert_eq!(read(text), None, "{text}");
        }
    }
}
