//! Puts lists in order, with one sort for the whole page.
//!
//! The standard library's is compiled anew for every type and every way of comparing, some kilobytes each.

use std::cmp::Ordering;

/// The list in order; what compares alike stays in the order it had.
#[must_use]
pub fn sorted<T: Clone>(list: &[T], compare: impl Fn(&T, &T) -> Ordering) -> Vec<T> {
    let places = places(list.len(), &|a, b| compare(&list[a], &list[b]));
    places.into_iter().map(|place| list[place].clone()).collect()
}

/// The places of a list, in order.
fn places(count: usize, compare: &dyn Fn(usize, usize) -> Ordering) -> Vec<usize> {
    let mut places: Vec<usize> = (0..count).collect();
    places.sort_by(|a, b| compare(*a, *b));
    places
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn alike_stay_as_they_were() {
        let list = [(2, 'a'), (1, 'b'), (2, 'c'), (1, 'd'), (0, 'e')];
        let by_number = sorted(&list, |a, b| a.0.cmp(&b.0));
        assert_eq!(by_number, [(0, 'e'), (1, 'b'), (1, 'd'), (2, 'a'), (2, 'c')]);
        assert!(sorted::<u8>(&[], Ord::cmp).is_empty());
    }
}
