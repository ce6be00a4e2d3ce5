//! What a position offers to the choice of a set: everything that can be made for it, or the one string that stays.

use core::cell::OnceCell;

use crate::construction::CoreTypes;
use crate::fit::candidates::Candidate;
use crate::fit::neighbours::Staying;
use crate::fit::problem::{Problem, StringProblem};
use crate::fit::search::{Best, Contender, Floor, Look, Recipe, Space};
use crate::fit::work::Work;

/// How far under the best of its core type a string is kept before a set is known. Too narrow, and the whole search runs a
/// second time; this makes that rare, one person in four to six.
pub const FIRST_GAP: f64 = 0.016;
/// Steps of work that the first look into a position may take: some ten times the usual.
pub(super) const LOOK_STEPS: u64 = 3_000_000;
/// What a position offers: everything that can be made for it, or the one string that stays.
pub struct Offer<'a> {
    problem: &'a Problem,
    string: &'a StringProblem,
    pub(super) fixed: Option<&'a Candidate>,
    /// The strings that stay beside it.
    staying: Staying,
    /// The core types of every kind that comes into question.
    cores: CoreTypes,
    /// What can be made, laid out when it is first asked for.
    space: OnceCell<Box<Space<'a>>>,
}

impl<'a> Offer<'a> {
    /// The first search of it, before a set is known.
    #[must_use]
    pub fn first_look(&self) -> Best {
        self.look(LOOK_STEPS)
    }

    /// The same with so many steps of work.
    #[must_use]
    pub fn look(&self, steps: u64) -> Best {
        self.best(&Look::free(Floor::Under(FIRST_GAP), self.cores), &mut Work::of(steps))
    }

    pub(super) fn best(&self, look: &Look, work: &mut Work) -> Best {
        self.better(&[], look, work)
    }

    pub(super) fn better(&self, known: &[Contender], look: &Look, work: &mut Work) -> Best {
        match self.fixed {
            Some(there) => Best::only(Contender::from(there).beside(&self.staying)),
            None => self.space().better(known, look, work),
        }
    }

    pub(super) fn candidate(&self, recipe: Recipe) -> Option<Candidate> {
        match self.fixed {
            Some(there) => Some(there.clone()),
            None => self.space().candidate(recipe),
        }
    }

    fn space(&self) -> &Space<'a> {
        self.space.get_or_init(|| Box::new(Space::new(self.problem, self.string, self.staying)))
    }
}

/// What each position offers, where some strings stay.
#[must_use]
pub fn offers<'a>(problem: &'a Problem, fixed: &'a [Option<Candidate>]) -> Vec<Offer<'a>> {
    let offer = |(i, (string, there)): (usize, (&'a StringProblem, &'a Option<Candidate>))| Offer {
        problem,
        string,
        fixed: there.as_ref(),
        staying: Staying::beside(problem, fixed, i),
        cores: problem.kinds.iter().fold(CoreTypes::NONE, |all, kind| all.or(kind.cores[i])),
        space: OnceCell::new(),
    };
    problem.strings.iter().zip(fixed).enumerate().map(offer).collect()
}
