//! Hundreds of pages: sets for random people on every instrument, each read in three renderings, and random pairs.
//!
//! A case is one string of one reply in one rendering (its card on the page with what stands over the cards, its row
//! on the sheet, its printed report), one reply in which nothing fits, or one pair of strings on the compare page.
//! Half of them are read in English, half in German.

use std::env;
use std::rc::Rc;
use std::thread;

use app::detail_level::DetailLevel;
use app::hooks::Sureness;
use catalogue::Language;
use protocol::reply::{Certainty, Fit, Reply, Set};
use protocol::request::{Answers, CompareRequest, Construction, FitRequest, Request, Setting};
use serde_json::Value;
use support::Seeded;

use crate::anybody::{anybody, tables};
use crate::heard::Tally;
use crate::marks::sign;
use crate::reader::{Reading, read_page};
use crate::rendered::Easel;

/// How many cases are read when nobody asks for more: what a proof has time for.
const CASES: usize = 2_400;
/// The variable that asks for more.
const MORE: &str = "ROPEWALK_CASES";
/// Of a hundred cases, how many are pairs.
const PAIRS: usize = 40;

/// Of so many sets, of one it is read how sure it is.
const SURE_EACH: usize = 12;

/// The reply as JSON, and as what the page draws.
pub(crate) fn reply(request: &Request) -> (Value, Reply) {
    let reply = protocol::handle(request);
    (serde_json::to_value(&reply).unwrap(), reply)
}

/// A set for somebody.
pub(crate) fn fit(request: FitRequest) -> (Value, Rc<Fit>) {
    match reply(&Request::Fit(Box::new(request))) {
        (value, Reply::Fit(fit)) => (value, Rc::new(*fit)),
        (value, _) => panic!("{value}"),
    }
}

/// How sure the set for somebody is.
pub(crate) fn sure(request: FitRequest) -> (Value, Rc<Certainty>) {
    match reply(&Request::Certainty(Box::new(request))) {
        (value, Reply::Certainty(certainty)) => (value, Rc::new(*certainty)),
        (value, _) => panic!("{value}"),
    }
}

/// A string and where it works, for pairs.
type Placed = (Construction, Setting);

/// Strings met so far: chosen, rivals, today's and runners-up.
fn met(fit: &Fit, pool: &mut Vec<Placed>) {
    let Some(set) = &fit.set else { return };
    for string in &set.strings {
        for report in [Some(&*string.report), string.rival.as_ref(), string.today.as_ref()]
            .into_iter()
            .flatten()
        {
            pool.push((report.construction.clone(), report.setting.clone()));
        }
    }
}

/// A string like another, but as thick as chance has it.
fn like(seeded: &mut Seeded, construction: &Construction) -> Construction {
    let mut new = construction.clone();
    let grow = seeded.between(0.7, 1.4);
    new.core.diameter_m *= grow;
    for winding in &mut new.windings {
        winding.thickness_m *= seeded.between(0.7, 1.4);
    }
    new
}

/// Two strings at the place of one of them: from neighbouring places or far apart, as made or distorted, now and then alike.
fn pair(seeded: &mut Seeded, pool: &[Placed]) -> CompareRequest {
    let one = seeded.below(pool.len());
    let near = (one + seeded.below(12)).min(pool.len() - 1);
    let far = seeded.below(pool.len());
    let ((this, setting), (other, _)) =
        (&pool[one], &pool[*seeded.one_of(&[one, near, near, near, far])]);
    let mut side = |construction: &Construction| {
        if seeded.bits().is_multiple_of(2) {
            construction.clone()
        } else {
            like(seeded, construction)
        }
    };
    let (this, other) = (side(this), side(other));
    CompareRequest { this, other, setting: setting.clone() }
}

/// What was read, and to what the reader objected.
#[derive(Default)]
struct Found {
    cases: usize,
    sets: usize,
    sure: usize,
    pairs: usize,
    tally: Tally,
    objections: Vec<String>,
}

impl Found {
    fn take(&mut self, cases: usize, reading: Reading, request: &Request) {
        self.cases += cases;
        self.tally.add(reading.tally);
        if let [first, rest @ ..] = reading.objections.as_slice() {
            let request = serde_json::to_string(request).unwrap();
            self.objections.push(format!("{first}\n    and {} more in {request}", rest.len()));
        }
    }

    fn read_fit(&mut self, easel: &Easel, answers: Answers) -> Rc<Fit> {
        let asked = FitRequest { answers };
        let (mut value, fit) = fit(asked.clone());
        // How sure a set is takes as long as several sets to find out.
        let sureness = if self.sets.is_multiple_of(SURE_EACH) && fit.set.is_some() {
            let (sure, known) = sure(asked.clone());
            value["certainty"] = sure;
            self.sure += 1;
            Sureness::Known(known)
        } else {
            Sureness::Asked
        };
        let depth = DetailLevel::ALL[self.sets / SURE_EACH % DetailLevel::ALL.len()];
        let strings = fit.set.as_ref().map_or(0, |set| set.strings.len());
        let request = &Request::Fit(Box::new(asked));
        // Every string has its card on the page and its row on the sheet.
        let page = easel.set(&fit, sureness, depth);
        self.take((2 * strings).max(1), read_page(&value, &page, None), request);
        for i in 0..strings {
            self.take(1, read_page(&value, &easel.report(&fit, i), Some(i)), request);
        }
        self.sets += 1;
        fit
    }

    fn read_pair(&mut self, easel: &Easel, request: CompareRequest) {
        let request = Request::Compare(Box::new(request));
        // A distorted string may be one that cannot be.
        if let (value, Reply::Compare(found)) = reply(&request) {
            self.take(1, read_page(&value, &easel.pair(&Rc::new(*found)), None), &request);
            self.pairs += 1;
        }
    }

    /// Reads so many cases in a language; the same ones in every run.
    fn read(language: Language, wanted: usize) -> Self {
        let (tables, easel) = (tables(), Easel::new(language));
        let mut seeded = Seeded::new(31_000 + u64::from(language == Language::German));
        let (mut found, mut pool) = (Self::default(), Vec::new());
        while found.cases < wanted && found.objections.len() < 50 {
            if pool.is_empty() || found.pairs * 100 >= PAIRS * found.cases {
                let answers = anybody(&mut seeded, &tables);
                met(&found.read_fit(&easel, answers), &mut pool);
            } else {
                found.read_pair(&easel, pair(&mut seeded, &pool));
            }
        }
        found
    }
}

#[test]
fn the_text_never_contradicts_its_numbers() {
    let wanted = env::var(MORE).ok().map_or(CASES, |text| text.parse().unwrap()).div_ceil(2);
    let threads =
        Language::ALL.map(|language| thread::spawn(move || Found::read(language, wanted)));
    for (language, thread) in Language::ALL.iter().zip(threads) {
        let Found { cases, sets, sure, pairs, tally, objections } = thread.join().unwrap();
        let first = objections[..objections.len().min(10)].join("\n");
        assert!(
            objections.is_empty(),
            "{language:?}: {} objections; the first:\n{first}",
            objections.len()
        );
        support::tell(&format!(
            "{language:?}: {cases} cases read, from {sets} answers ({sure} of them with how sure the set is) and {pairs} pairs: {} figures and {} words agree",
            tally.figures, tally.words
        ));
        // A reader that finds nothing to read would object to nothing.
        assert!(tally.figures > 200 * cases && tally.words > 2 * cases, "{tally:?}");
    }
}

/// Whatever the search comes to: that a set is not proven, and by how much it may be beaten, as the reply says it.
#[test]
fn a_set_that_is_not_proven_says_how_far_from_the_best_it_can_be() {
    let easel = Easel::new(Language::English);
    let (mut value, found) = fit(FitRequest { answers: Answers::default() });
    let set = found.set.clone().unwrap();
    let page = |proven: bool, optimality_gap: f64| {
        let set = Some(Rc::new(Set { proven, optimality_gap, ..(*set).clone() }));
        easel.set(&Rc::new(Fit { set, ..(*found).clone() }), Sureness::Asked, DetailLevel::ALL[0])
    };
    let says = |page: &str| ["unproven", "unproven-by"].map(|id| page.contains(sign(id)));
    assert_eq!(says(&page(true, 0.0)), [false, false]);
    value["set"]["proven"] = false.into();
    for gap in [0.0213, 0.8, 1e-6] {
        let page = page(false, gap);
        assert_eq!(says(&page), [gap >= 0.5, gap < 0.5], "a gap of {gap}");
        value["set"]["optimality_gap"] = gap.into();
        assert_eq!(read_page(&value, &page, None).objections, Vec::<String>::new());
        // Another gap would be objected to.
        value["set"]["optimality_gap"] = 0.3.into();
        assert!(!read_page(&value, &page, None).objections.is_empty(), "read with any gap");
    }
}
