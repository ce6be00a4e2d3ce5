//! What does elasticity cost: in days to settle, in cents by warmth, in cents by damp? Each from the strings that would do.

use catalogue::Word;
use protocol::reply::Point;
use strings::fit::compare::steps;
use strings::report::Property;

use super::naming::{capital, family, list};
use super::{say, speech};
use crate::units;

/// What a picture shows against stretch.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Aspect {
    /// Days until it has settled.
    Settling,
    /// Cents by which warmth moves it.
    Warmth,
    /// Cents by which damp moves it.
    Damp,
}

impl Aspect {
    /// Every one, in the order in which they stand.
    pub const ALL: [Self; 3] = [Self::Settling, Self::Warmth, Self::Damp];

    /// The key by which messages choose.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Settling => "settling",
            Self::Warmth => "warmth",
            Self::Damp => "damp",
        }
    }

    /// What it is at a point.
    #[must_use]
    pub const fn of(self, p: &Point) -> f64 {
        match self {
            Self::Settling => p.settling_d,
            Self::Warmth => p.warmth_cent,
            Self::Damp => p.damp_cent,
        }
    }

    /// It in words.
    #[must_use]
    pub fn said(self, p: &Point) -> String {
        match self {
            Self::Settling => units::days(self.of(p)),
            Self::Warmth | Self::Damp => units::cents(self.of(p)),
        }
    }

    /// Whether one has noticeably more of it than the other.
    fn is_more(self, one: &Point, other: &Point) -> bool {
        let (more, less) = (self.of(one), self.of(other));
        match self {
            // Below a day nobody counts.
            Self::Settling => {
                steps(Property::SettlingDays, more, less) > 1.0
                    && self.said(one) != self.said(other)
            }
            Self::Warmth | Self::Damp => steps(Property::EveningWarmth, more, less) > 1.0,
        }
    }
}

/// A stretch in words.
#[must_use]
pub fn stretch(p: &Point) -> String {
    units::with_unit(&units::significant(p.stretch * 100.0, 2), "%")
}

/// The share of the way from the least stretch to the most, in its logarithm, that counts as an end.
const AN_END: f64 = 0.25;
/// Under this ratio of the most stretch to the least all strings stretch alike.
const ALL_ALIKE: f64 = 1.5;

/// The takeaway of a picture: what more stretch costs at best, if it costs anything.
///
/// At either end of the stretches the best string speaks for all, and the best of all where it is better than both.
#[must_use]
pub fn title(aspect: Aspect, points: &[Point]) -> String {
    let ends = points
        .iter()
        .fold((f64::MAX, 0.0_f64), |(least, most), p| (least.min(p.stretch), most.max(p.stretch)));
    let by = aspect.key();
    if points.len() < 4 || ends.1 < ALL_ALIKE * ends.0 {
        return say!("picture-few", aspect = by);
    }
    let place = |p: &Point| libm::log(p.stretch / ends.0) / libm::log(ends.1 / ends.0);
    let best = |is_there: &dyn Fn(f64) -> bool| {
        points
            .iter()
            .filter(|p| is_there(place(p)))
            .min_by(|a, b| aspect.of(a).total_cmp(&aspect.of(b)))
    };
    let all = (best(&|x| x <= AN_END), best(&|x| x >= 1.0 - AN_END), best(&|_| true));
    let (Some(stiff), Some(elastic), Some(least)) = all else {
        return say!("picture-few", aspect = by);
    };
    if aspect.is_more(stiff, least) && aspect.is_more(elastic, least) {
        return say!(
            "picture-between",
            aspect = by,
            least = aspect.said(least),
            at = stretch(least),
            stiff = aspect.said(stiff),
            from = stretch(stiff),
            elastic = aspect.said(elastic),
            to = stretch(elastic),
        );
    }
    let way = if aspect.is_more(elastic, stiff) {
        "costs"
    } else if aspect.is_more(stiff, elastic) {
        "gains"
    } else {
        "level"
    };
    let words = [
        ("aspect", by.to_owned()),
        ("stiff", aspect.said(stiff)),
        ("from", stretch(stiff)),
        ("elastic", aspect.said(elastic)),
        ("to", stretch(elastic)),
    ];
    speech::of_filled("picture", way, &words.map(|(place, word)| (place, Word::from(word))))
        .unwrap_or_default()
}

/// Which families lie over each other, as a sentence; none if none do.
#[must_use]
pub fn overlap(aspect: Aspect, points: &[Point]) -> Option<String> {
    let mut spans: Vec<(&str, f64, f64, usize)> = Vec::new();
    for p in points {
        let x = aspect.of(p);
        match spans.iter_mut().find(|s| s.0 == p.family) {
            Some(s) => *s = (s.0, s.1.min(x), s.2.max(x), s.3 + 1),
            None => spans.push((&p.family, x, x, 1)),
        }
    }
    let spans: Vec<_> = spans.into_iter().filter(|s| s.3 >= 3).collect();
    let over: Vec<&str> = spans
        .iter()
        .filter(|one| {
            spans.iter().any(|other| other.0 != one.0 && one.1 < other.2 && other.1 < one.2)
        })
        .map(|s| family(s.0))
        .collect();
    if over.len() < 2 { None } else { Some(say!("picture-overlap", kinds = capital(&list(&over)))) }
}
