//! Counts what passed and failed, from the closing lines of Rust's test harness and from whole stages.

use std::fmt;

/// How many checks passed, failed and were skipped.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Tally {
    /// Checks that passed.
    pub passed: u32,
    /// Checks that failed.
    pub failed: u32,
    /// Checks that were not run.
    pub skipped: u32,
}

impl Tally {
    /// One check that passed.
    pub const PASS: Self = Self { passed: 1, failed: 0, skipped: 0 };
    /// One check that failed.
    pub const FAIL: Self = Self { passed: 0, failed: 1, skipped: 0 };

    /// Reads a harness's closing line: `test result: ok. 5 passed; 0 failed; 1 ignored; ...`.
    #[must_use]
    pub fn of_line(line: &str) -> Option<Self> {
        let counts = line.trim_start().strip_prefix("test result:")?;
        let count = |word: &str| {
            let before = counts.split(';').find_map(|part| part.trim().strip_suffix(word))?;
            before.split_whitespace().next_back()?.parse().ok()
        };
        Some(Self {
            passed: count("passed")?,
            failed: count("failed")?,
            skipped: count("ignored")?,
        })
    }

    /// The sum of both.
    #[must_use]
    pub fn and(self, other: Self) -> Self {
        Self {
            passed: self.passed + other.passed,
            failed: self.failed + other.failed,
            skipped: self.skipped + other.skipped,
        }
    }

    /// What a stage of tests counts for, given whether its command succeeded.
    ///
    /// A command that fails although no test did (it would not compile, say) is one failure;
    /// and so is one that succeeds without having run a test, for then nothing was shown.
    #[must_use]
    pub fn of_stage(self, succeeded: bool) -> Self {
        if self.failed == 0 && (!succeeded || self.passed == 0) {
            self.and(Self::FAIL)
        } else {
            self
        }
    }
}

impl fmt::Display for Tally {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} passed, {} failed", self.passed, self.failed)?;
        if self.skipped > 0 { write!(f, ", {} skipped", self.skipped) } else { Ok(()) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const OUTPUT: &str = "running 3 tests
test a ... ok
test result: ok. 12 passed; 0 failed; 1 ignored; 0 measured; 0 filtered out; finished in 0.00s

test result: FAILED. 3 passed; 2 failed; 0 ignored; 0 measured; 7 filtered out; finished in 1.20s
test result: ok. 4 passed; 0 failed; 0 ignored; 0 filtered out; finished in 0.01s
the test result: ok. 100 passed; 100 failed; 0 ignored
test result: who knows";

    fn sum(output: &str) -> Tally {
        output.lines().filter_map(Tally::of_line).fold(Tally::default(), Tally::and)
    }

    #[test]
    fn closing_lines_are_summed() {
        assert_eq!(sum(OUTPUT), Tally { passed: 19, failed: 2, skipped: 1 });
    }

    #[test]
    fn colours_do_not_hide_a_count() {
        let line = "test result: \u{1b}[31mFAILED\u{1b}(B\u{1b}[m. 1 passed; 2 failed; 3 ignored; 0 measured; 0 filtered out";
        assert_eq!(Tally::of_line(line), Some(Tally { passed: 1, failed: 2, skipped: 3 }));
    }

    #[test]
    fn a_stage_that_fails_without_a_failed_test_is_one_failure() {
        assert_eq!(Tally::default().of_stage(false), Tally::FAIL);
        assert_eq!(
            Tally { passed: 5, failed: 0, skipped: 0 }.of_stage(false),
            Tally { passed: 5, failed: 1, skipped: 0 }
        );
        assert_eq!(
            Tally { passed: 5, failed: 2, skipped: 0 }.of_stage(false),
            Tally { passed: 5, failed: 2, skipped: 0 }
        );
    }

    #[test]
    fn a_stage_that_runs_no_test_is_one_failure() {
        assert_eq!(Tally::default().of_stage(true), Tally::FAIL);
        assert_eq!(
            Tally { passed: 0, failed: 0, skipped: 4 }.of_stage(true),
            Tally { passed: 0, failed: 1, skipped: 4 }
        );
    }

    #[test]
    fn the_last_line_names_skipped_tests_only_when_there_are_any() {
        assert_eq!(
            Tally { passed: 19, failed: 2, skipped: 1 }.to_string(),
            "19 passed, 2 failed, 1 skipped"
        );
        assert_eq!(Tally::PASS.to_string(), "1 passed, 0 failed");
    }
}
