//! What the tests share: comparing with an authority, numbers drawn from a seed, failures that are known.
//!
//! Knows nothing of strings, so that no expected value can come from the model by way of it.

#![allow(
    clippy::disallowed_methods,
    reason = "inputs of tests may differ in the last bit from machine to machine"
)]

use std::cell::RefCell;
use std::fmt::Write as _;
use std::io::Write as _;
use std::panic::{self, UnwindSafe};
use std::{env, fs};

/// How an expected value is known; the letters are those of DEVELOPERS.md.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Grade {
    /// A: a closed form or an identity.
    Identity,
    /// B: computed by an independent program.
    Independent,
    /// C: printed in a paper, a standard or a data set.
    Printed,
    /// D: measured, with the scatter of measurement.
    Measured,
    /// No grade: printed or measured, but the model's own constants were drawn from these numbers. It shows that they
    /// were taken over rightly, and predicts nothing.
    Fitted,
    /// No grade: a fact of the trade, or a number from memory. It catches blunders and proves nothing.
    Hearsay,
}

/// Who says so: a source, with its page or table, how it was read, and the grade of its numbers.
#[derive(Clone, Copy, Debug)]
pub struct Authority {
    /// Authors, year, page or table; "as cited in ..." where it was read in another text.
    pub source: &'static str,
    /// How its numbers are known.
    pub grade: Grade,
}

/// How near the model must come.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Within {
    /// A share of the expected value.
    Share(f64),
    /// An amount in the unit of the expected value.
    Amount(f64),
}

impl Authority {
    /// The name by which a source is counted: its text up to the first comma, colon or bracket.
    #[must_use]
    pub fn key(&self) -> &'static str {
        self.source.split([',', ':', ';', '(']).next().unwrap_or_default().trim()
    }
}

impl Grade {
    /// Its name in the file of rows.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Identity => "identity",
            Self::Independent => "independent",
            Self::Printed => "printed",
            Self::Measured => "measured",
            Self::Fitted => "fitted",
            Self::Hearsay => "hearsay",
        }
    }
}

impl Within {
    /// The largest distance from `expected` that it allows.
    #[must_use]
    pub fn reach(self, expected: f64) -> f64 {
        match self {
            Self::Share(share) => share * expected.abs(),
            Self::Amount(amount) => amount,
        }
    }
}

/// One comparison: what the model gives, what the authority says, and how near they must be and why.
#[derive(Clone, Debug)]
pub struct Row {
    /// Which quantity of which string, with the unit.
    pub what: String,
    /// What the model gives.
    pub found: f64,
    /// What the authority says.
    pub expected: f64,
    /// How near the two must be.
    pub within: Within,
    /// Why not nearer.
    pub why: &'static str,
    /// Which functions of the model were called for it, as `module::function`.
    pub calls: Vec<&'static str>,
}

thread_local! {
    /// What has been called in this thread since the last row.
    static CALLED: RefCell<Vec<&'static str>> = const { RefCell::new(Vec::new()) };
}

/// Notes that a function of the model is called; the next row of this thread bears its name.
pub fn called(function: &'static str) {
    CALLED.with_borrow_mut(|called| {
        if !called.contains(&function) {
            called.push(function);
        }
    });
}

/// A function of the model's physics, noted as called: `physics!(tension::rigid)(mass, length, pitch)`.
///
/// The name is a path that the compiler follows, so that no check can name a function without calling it.
#[macro_export]
macro_rules! physics {
    ($module:ident::$function:ident) => {{
        $crate::called(concat!(stringify!($module), "::", stringify!($function)));
        strings::physics::$module::$function
    }};
}

/// How many cases a test tries: `usual` in a proof, or as many as the variable says. `cargo campaign` sets them all.
///
/// # Panics
/// The variable does not hold a whole number.
#[must_use]
pub fn cases(variable: &str, usual: usize) -> usize {
    let number = |text: String| text.parse().unwrap_or_else(|_| panic!("{variable}={text}"));
    env::var(variable).map_or(usual, number)
}

/// Names the file to which every row is written; unset, none is.
pub const ROWS: &str = "ROPEWALK_ROWS";

/// Writes the rows of one check to the file of [`ROWS`]: source, grade, what, the functions called for it,
/// the tolerance as a share of what is expected, and whether it holds.
fn record(authority: &Authority, lines: &str) {
    let Some(path) = env::var_os(ROWS) else { return };
    // One write, so that the rows of programs that run at once do not mix.
    let written = fs::OpenOptions::new()
        .create(true)
        .append(true)
        .open(path)
        .and_then(|mut file| file.write_all(lines.as_bytes()));
    assert!(written.is_ok(), "{}: the rows cannot be written: {written:?}", authority.source);
}

/// Compares every row and then fails with all that missed, so that one miss does not hide the next.
///
/// # Panics
/// A row is further off than it may be, or not a number; or there are no rows.
#[track_caller]
pub fn check(authority: &Authority, rows: impl IntoIterator<Item = Row>) {
    let (mut count, mut misses, mut lines) = (0, String::new(), String::new());
    for row in rows {
        count += 1;
        let (key, grade, calls) = (authority.key(), authority.grade.name(), row.calls.join(","));
        let reach = row.within.reach(row.expected);
        // How tight the comparison is, and whether it holds.
        let (tightness, holds) =
            (reach / row.expected.abs(), (row.found - row.expected).abs() <= reach);
        let what = row.what.replace('\t', " ");
        let _ = writeln!(lines, "{key}\t{grade}\t{what}\t{calls}\t{tightness:e}\t{holds}");
        // Written so that a NaN misses.
        if (row.found - row.expected).abs() <= reach {
            continue;
        }
        let _ = write!(
            misses,
            "\n  {}: the model gives {}, expected {} within {reach} ({})",
            row.what, row.found, row.expected, row.why
        );
    }
    CALLED.with_borrow_mut(Vec::clear);
    record(authority, &lines);
    assert!(count > 0, "{}: there is nothing to compare", authority.source);
    assert!(misses.is_empty(), "{} ({:?}):{misses}", authority.source, authority.grade);
}

/// A row from its parts, in the order in which a sentence would name them.
pub fn row(
    what: impl Into<String>,
    found: f64,
    expected: f64,
    within: Within,
    why: &'static str,
) -> Row {
    let calls = CALLED.with_borrow_mut(std::mem::take);
    Row { what: what.into(), found, expected, within, why, calls }
}

/// Half a unit of the last printed digit, as an amount: `half_unit(0.01)` for a number printed as 3.14.
#[must_use]
pub fn half_unit(last_digit: f64) -> Within {
    // A last digit of 5 may have been rounded either way; a hair more lets both pass.
    Within::Amount(0.500_001 * last_digit)
}

/// Runs a test that cannot pass yet: it must fail, and says so when it no longer does.
///
/// # Panics
/// The test passes.
#[track_caller]
pub fn known_failure(why: &str, test: impl FnOnce() + UnwindSafe) {
    assert!(
        panic::catch_unwind(test).is_err(),
        "this now passes, so make it a plain test; it used to fail because {why}"
    );
}

/// Numbers that look random and are the same in every run: `SplitMix64` (Steele, Lea and Flood, OOPSLA 2014).
///
/// Twenty lines of our own, because the tests need uniform numbers from a seed and nothing else, and a failing
/// case is named by its number; shrinking would add little where every input is printed.
#[derive(Clone, Debug)]
pub struct Seeded(u64);

impl Seeded {
    /// A sequence of its own for each seed.
    #[must_use]
    pub const fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// The next 64 bits.
    pub fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// A number from 0 to 1.
    pub fn share(&mut self) -> f64 {
        // 53 bits fill the mantissa; the divisor is 2^53 - 1, so that both ends are reached.
        (self.bits() >> 11) as f64 / 9_007_199_254_740_991.0
    }

    /// A number from `low` to `high`; in one case of sixteen an end itself, where mistakes gather.
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        match self.bits() % 32 {
            0 => low,
            1 => high,
            _ => (low + (high - low) * self.share()).clamp(low, high),
        }
    }

    /// A number from `low` to `high`, each power of ten as likely as the next.
    pub fn in_decades(&mut self, low: f64, high: f64) -> f64 {
        low * (high / low).powf(self.share())
    }

    /// A whole number below `count`.
    pub fn below(&mut self, count: usize) -> usize {
        let count = u64::try_from(count).unwrap_or(u64::MAX);
        usize::try_from(self.bits() % count).unwrap_or_default()
    }

    /// One of `these`.
    pub fn one_of<'a, T>(&mut self, these: &'a [T]) -> &'a T {
        &these[self.below(these.len())]
    }
}

/// Prints a line that a run of the tests shows even when everything passes: a sum that people are to see.
///
/// The test harness swallows what the printing macros print, and nothing that is written to the stream itself.
pub fn tell(line: &str) {
    use std::io::Write as _;
    // A closed stream has no reader, and no test depends on one.
    drop(writeln!(std::io::stdout(), "    {line}"));
}
