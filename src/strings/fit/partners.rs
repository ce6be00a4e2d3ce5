//! Which string below goes best with one above? A tree over the plane of [`Point`], so that not every pair is tried.
//!
//! A branch knows the box its strings lie in and the most that one of them is worth: what it is worth at best to an
//! upper string is that and the term towards the nearest point of the box.

use super::neighbours::Point;
use super::search::ROUNDING;
use super::work::Work;

/// Strings in a leaf; fewer make more branches to visit, more make longer lists.
const LEAF: usize = 16;

/// A lower string: where it lies for its upper neighbours, and what it and all below it are worth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Partner {
    /// Where it lies, the usual step added.
    pub(super) point: Point,
    /// What it and all below it are worth.
    pub(super) worth: f64,
}

/// The box of some partners, and the most that one of them is worth.
#[derive(Clone, Copy, Debug)]
struct Branch {
    low: Point,
    high: Point,
    most: f64,
}

/// Lower strings, arranged so that the best one for an upper string is found soon.
#[derive(Clone, Debug)]
pub(super) struct Partners {
    all: Vec<Partner>,
    /// As a heap: those under branch `n` are `2 n + 1` and `2 n + 2`, each with half of its partners.
    branches: Vec<Branch>,
}

impl Partners {
    /// Arranges them.
    #[must_use]
    pub(super) fn new(all: Vec<Partner>, work: &mut Work) -> Self {
        let mut leaves = 1;
        while leaves * LEAF < all.len() {
            leaves *= 2;
        }
        let none =
            Branch { low: Point::default(), high: Point::default(), most: f64::NEG_INFINITY };
        let mut partners = Self { all, branches: vec![none; 2 * leaves - 1] };
        partners.arrange(0, 0, partners.all.len(), work);
        partners
    }

    fn arrange(&mut self, branch: usize, from: usize, to: usize, work: &mut Work) {
        let within = &mut self.all[from..to];
        work.take(within.len() as u64);
        self.branches[branch] = around(within);
        if 2 * branch + 2 >= self.branches.len() {
            return;
        }
        let Branch { low, high, .. } = self.branches[branch];
        let middle = within.len() / 2;
        // Across the longer side of the box.
        if high.tension - low.tension > high.brightness - low.brightness {
            within
                .select_nth_unstable_by(middle, |a, b| a.point.tension.total_cmp(&b.point.tension));
        } else {
            within.select_nth_unstable_by(middle, |a, b| {
                a.point.brightness.total_cmp(&b.point.brightness)
            });
        }
        self.arrange(2 * branch + 1, from, from + middle, work);
        self.arrange(2 * branch + 2, from + middle, to, work);
    }

    /// The most that a partner's worth and its term towards `upper` make, or `least` if that is more.
    #[must_use]
    pub(super) fn best(&self, upper: Point, least: f64, work: &mut Work) -> f64 {
        let mut best = least;
        self.visit(0, 0, self.all.len(), upper, &mut best, work);
        best
    }

    fn visit(
        &self,
        branch: usize,
        from: usize,
        to: usize,
        upper: Point,
        best: &mut f64,
        work: &mut Work,
    ) {
        work.take(1);
        if from == to || self.bound(branch, upper) <= *best {
            return;
        }
        let (left, right) = (2 * branch + 1, 2 * branch + 2);
        if right >= self.branches.len() {
            work.take((to - from) as u64 / 4);
            for partner in &self.all[from..to] {
                *best = best.max(partner.worth + upper.term(partner.point));
            }
            return;
        }
        let middle = from + (to - from) / 2;
        if self.bound(left, upper) >= self.bound(right, upper) {
            self.visit(left, from, middle, upper, best, work);
            self.visit(right, middle, to, upper, best, work);
        } else {
            self.visit(right, middle, to, upper, best, work);
            self.visit(left, from, middle, upper, best, work);
        }
    }

    /// The most that a partner of a branch can make with `upper`.
    fn bound(&self, branch: usize, upper: Point) -> f64 {
        let Branch { low, high, most } = self.branches[branch];
        let nearest = Point {
            tension: upper.tension.clamp(low.tension, high.tension),
            brightness: upper.brightness.clamp(low.brightness, high.brightness),
        };
        most + upper.term(nearest) + ROUNDING
    }
}

fn around(partners: &[Partner]) -> Branch {
    let none = Point { tension: f64::INFINITY, brightness: f64::INFINITY };
    let less = Point { tension: f64::NEG_INFINITY, brightness: f64::NEG_INFINITY };
    let empty = Branch { low: none, high: less, most: f64::NEG_INFINITY };
    partners.iter().fold(empty, |branch, Partner { point, worth }| Branch {
        low: Point {
            tension: branch.low.tension.min(point.tension),
            brightness: branch.low.brightness.min(point.brightness),
        },
        high: Point {
            tension: branch.high.tension.max(point.tension),
            brightness: branch.high.brightness.max(point.brightness),
        },
        most: branch.most.max(*worth),
    })
}
