//! What time it is for the person.

use js_sys::{Date, Math};
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;

/// Milliseconds in a minute and in a day.
const MINUTE_MS: f64 = 60_000.0;
const DAY_MS: f64 = 86_400_000.0;

/// Milliseconds since 1970.
#[must_use]
pub fn now_ms() -> f64 {
    Date::now()
}

/// Milliseconds since 1970 as the clock on the wall shows them.
fn local_ms() -> f64 {
    let now = Date::new_0();
    now.get_time() - now.get_timezone_offset() * MINUTE_MS
}

/// Today as a number of days since 1970-01-01, by the clock on the wall.
#[must_use]
pub fn today() -> i64 {
    // Days since 1970 fit easily.
    #[expect(clippy::cast_possible_truncation, reason = "a count of days is far from the limits")]
    let day = (local_ms() / DAY_MS).floor() as i64;
    day
}

/// Now by the clock on the wall, as an ISO 8601 date and time with its distance from UTC.
#[must_use]
pub fn now_iso() -> String {
    let east = -Date::new_0().get_timezone_offset();
    let text = String::from(Date::new(&local_ms().into()).to_iso_string());
    let (sign, distance) = if east < 0.0 { ('-', -east) } else { ('+', east) };
    let (hours, minutes) = ((distance / 60.0).floor(), distance % 60.0);
    format!("{}{sign}{hours:02}:{minutes:02}", text.trim_end_matches('Z'))
}

/// Does something once after so many milliseconds, and cannot be stopped. A `Timeout` that is forgotten does the same
/// but keeps its closure in memory for ever.
pub fn after(ms: u32, then: impl FnOnce() + 'static) {
    let ms = i32::try_from(ms).unwrap_or(i32::MAX);
    let then = Closure::once_into_js(then);
    let window = gloo::utils::window();
    let timer =
        window.set_timeout_with_callback_and_timeout_and_arguments_0(then.unchecked_ref(), ms);
    debug_assert!(timer.is_ok(), "every window has timers");
}

/// A name that nothing else has, on this machine or another.
#[must_use]
pub fn unique() -> String {
    // A time and a random part: two tabs may start in one millisecond.
    let random = (Math::random() * f64::from(u32::MAX)).floor();
    format!("{:.0}-{random:.0}", now_ms())
}
