//! What time it is for the person.

use js_sys::Date;

/// Milliseconds in a day.
const DAY_MS: f64 = 86_400_000.0;

/// Milliseconds since 1970.
#[must_use]
pub fn now_ms() -> f64 {
    Date::now()
}

/// Today as a number of days since 1970-01-01, by the clock of the person's country.
#[must_use]
pub fn today() -> i64 {
    let now = Date::new_0();
    let local = now.get_time() - now.get_timezone_offset() * 60_000.0;
    // Days since 1970 fit easily; a clock that is out of its mind gives the first day.
    #[expect(clippy::cast_possible_truncation, reason = "a count of days is far from the limits")]
    let day = (local / DAY_MS).floor() as i64;
    day
}

/// Now, as an ISO 8601 date and time.
#[must_use]
pub fn now_iso() -> String {
    Date::new_0().to_iso_string().into()
}
