//! A lesson: which cores stand side by side before a class, and how far it has come.
//!
//! It is wholly in the address of the page, so that loading it again, or sending it to a colleague, keeps it.

use std::fmt;

use strings::construction::Family;
use strings::instrument::Kind;

use crate::order;

/// The most cores that stand side by side.
pub const MOST_CORES: usize = 3;
/// The fewest.
pub const LEAST_CORES: usize = 2;

/// What a step of a lesson is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Step {
    /// What is inside.
    Inside,
    /// What a pull does.
    Stretch,
    /// How far it stretches, and how soon it settles.
    Response,
    /// How bright it is and how long it rings.
    Ring,
    /// What the air of the room does.
    Air,
    /// When it has settled.
    Settle,
}

impl Step {
    /// Every one, in the order in which a lesson goes.
    pub const ALL: [Self; 6] =
        [Self::Inside, Self::Stretch, Self::Response, Self::Ring, Self::Air, Self::Settle];
}

/// A lesson and how far it has come.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Lesson {
    /// The instrument, by its key.
    pub instrument: &'static str,
    /// Which string, 0 the highest.
    pub string: usize,
    /// The families that stand side by side.
    pub cores: Vec<Family>,
    /// Which step, from 0.
    pub step: usize,
}

impl Default for Lesson {
    /// A violin's A on the three kinds of core that everybody has heard of.
    fn default() -> Self {
        Self {
            instrument: "violin",
            string: 1,
            cores: vec![Family::PlainGut, Family::Synthetic, Family::WoundSteel],
            step: 0,
        }
    }
}

impl Lesson {
    /// The lesson that the rest of an address names; none if there is no such lesson.
    #[must_use]
    pub fn read<'a>(mut steps: impl Iterator<Item = &'a str>) -> Option<Self> {
        let Some(instrument) = steps.next() else { return Some(Self::default()) };
        let instrument = Kind::of(instrument)?.key;
        let string = steps.next()?.parse().ok().filter(|string| *string < 12)?;
        let families = steps.next()?.split('+').map(Family::parse);
        let cores = families.collect::<Option<Vec<_>>>()?;
        let step = steps.next()?.parse::<usize>().ok()?.checked_sub(1)?;
        let fine = cores.len() <= MOST_CORES && step < Step::ALL.len() && steps.next().is_none();
        fine.then_some(Self { instrument, string, cores, step })
    }

    /// What the step is about.
    #[must_use]
    pub fn about(&self) -> Step {
        Step::ALL[self.step.min(Step::ALL.len() - 1)]
    }

    /// The lesson one step further; none at its end.
    #[must_use]
    pub fn next(&self) -> Option<Self> {
        let step = self.step + 1;
        (step < Step::ALL.len()).then(|| Self { step, ..self.clone() })
    }

    /// The lesson one step back; none at its beginning.
    #[must_use]
    pub fn back(&self) -> Option<Self> {
        self.step.checked_sub(1).map(|step| Self { step, ..self.clone() })
    }

    /// Which of the families that are made stand side by side: the wished ones, and others where those are too few.
    #[must_use]
    pub fn shown(&self, made: &[Family]) -> Vec<usize> {
        let wished = (0..made.len()).filter(|i| self.cores.contains(&made[*i]));
        let mut shown: Vec<usize> = wished.take(MOST_CORES).collect();
        for i in 0..made.len() {
            if shown.len() < LEAST_CORES && !shown.contains(&i) {
                shown.push(i);
            }
        }
        order::sorted(&shown, Ord::cmp)
    }

    /// The lesson with a family more or less; the same where there would be too many or too few.
    #[must_use]
    pub fn toggled(&self, shown: &[Family], family: Family) -> Self {
        let mut cores = shown.to_vec();
        match cores.iter().position(|core| *core == family) {
            Some(at) if cores.len() > LEAST_CORES => drop(cores.remove(at)),
            None if cores.len() < MOST_CORES => cores.push(family),
            _ => {}
        }
        Self { cores: order::sorted(&cores, Ord::cmp), ..self.clone() }
    }
}

impl fmt::Display for Lesson {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let cores: Vec<&str> = self.cores.iter().map(|core| core.key()).collect();
        write!(f, "{}/{}/{}/{}", self.instrument, self.string, cores.join("+"), self.step + 1)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(path: &str) -> Option<Lesson> {
        Lesson::read(path.split('/').filter(|step| !step.is_empty()))
    }

    #[test]
    fn a_lesson_is_found_at_its_address_at_every_step() {
        assert_eq!(read(""), Some(Lesson::default()));
        let mut lesson = Lesson { instrument: "cello", string: 3, ..Lesson::default() };
        let mut steps = 1;
        while let Some(next) = lesson.next() {
            assert_eq!(read(&lesson.to_string()), Some(lesson.clone()));
            assert_eq!(next.back(), Some(lesson));
            lesson = next;
            steps += 1;
        }
        assert_eq!((steps, lesson.about()), (Step::ALL.len(), Step::Settle));
        assert_eq!(Lesson::default().back(), None);
    }

    #[test]
    fn what_is_no_lesson_leads_nowhere() {
        for nowhere in [
            "lute/1/synthetic/1",
            "violin",
            "violin/x/synthetic/1",
            "violin/1/silk/1",
            "violin/1/synthetic/0",
            "violin/1/synthetic/7",
            "violin/1/synthetic/1/1",
            "violin/1/plain-gut+wound-gut+synthetic+plain-steel/1",
        ] {
            assert_eq!(read(nowhere), None, "{nowhere}");
        }
    }

    #[test]
    fn two_to_three_of_what_is_made_stand_side_by_side() {
        use Family::{PlainGut, PlainSteel, Synthetic, WoundGut, WoundSteel};
        let lesson = Lesson::default();
        assert_eq!(lesson.shown(&[PlainGut, WoundGut, WoundSteel, Synthetic]), [0, 2, 3]);
        assert_eq!(lesson.shown(&[PlainSteel, WoundGut, Synthetic]), [0, 2]);
        assert_eq!(lesson.shown(&[PlainSteel]), [0]);
        let two = [PlainGut, Synthetic];
        assert_eq!(lesson.toggled(&two, PlainGut).cores, two);
        assert_eq!(lesson.toggled(&two, WoundSteel).cores, [PlainGut, WoundSteel, Synthetic]);
        let three = [PlainGut, WoundSteel, Synthetic];
        assert_eq!(lesson.toggled(&three, WoundGut).cores, three);
        assert_eq!(lesson.toggled(&three, WoundSteel).cores, two);
    }
}
