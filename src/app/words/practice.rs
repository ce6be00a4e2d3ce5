//! Where the answers agree with common practice, and where not: situations that the trade is sure of, one by one.

use super::naming::{family, list};
use super::{say, speech};
use crate::order;

/// What was expected and what is told. Written and held by `common_practice_is_met` in `tests/expert/practice.rs`.
const ROWS: &str = include_str!("practice.tsv");

/// Some strings of a situation.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// Who plays what; in English, as the trade's table has it.
    pub situation: &'static str,
    /// Which strings, by their letters.
    pub strings: &'static str,
    /// What is fitted in common practice, the most usual first.
    pub practice: String,
    /// What is told here.
    pub told: String,
    /// Whether that is what practice names first or second.
    pub agrees: bool,
}

/// Every row, those that do not agree first.
#[must_use]
pub fn rows() -> Vec<Row> {
    let rows: Vec<Row> =
        ROWS.lines().filter(|line| !line.starts_with('#')).filter_map(row).collect();
    order::sorted(&rows, |a, b| a.agrees.cmp(&b.agrees))
}

fn row(line: &'static str) -> Option<Row> {
    let mut cells = line.split('\t');
    let (situation, strings, practice) = (cells.next()?, cells.next()?, cells.next()?);
    let (told, met) = (cells.next()?, cells.next()?);
    let practised: Vec<&str> =
        practice.split(' ').map(|key| speech::of_or_key("practised", key)).collect();
    let told: Vec<&str> = told.split(' ').filter(|key| !key.is_empty()).map(family).collect();
    let told = if told.is_empty() { say!("practice-nothing").to_owned() } else { list(&told) };
    Some(Row {
        situation,
        strings,
        practice: practised.join(say!("practice-or")),
        told,
        agrees: matches!(met, "first" | "second"),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_row_has_its_words() {
        let rows = rows();
        assert!(rows.len() > 100);
        let lines = ROWS.lines().filter(|line| !line.starts_with('#')).count();
        assert_eq!(rows.len(), lines);
        for row in &rows {
            assert!(!row.practice.contains('_') && !row.told.contains('-'), "{row:?}");
        }
        assert!(rows.iter().filter(|row| row.agrees).count() * 2 > rows.len());
    }
}
