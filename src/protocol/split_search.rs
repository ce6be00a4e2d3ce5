//! A fit shared between two workers: each searches every other place, and one of them tells the answer.
//!
//! What the second found goes over as numbers. It is the same fit to the bit, whoever searched what.

use std::pin::{Pin, pin};
use std::task::Poll;

use strings::construction::CoreType;
use strings::fit::Posed;
use strings::fit::answers::Answers;
use strings::fit::search::{Best, Contender, Counts, Recipe};

use crate::convert;
use crate::encode::fit_of;
use crate::handle::written;
use crate::parse;
use crate::reply::Reply;
use crate::request::Request;

/// What a place begins with: its index, four counts, what is missing at most, the steps of work, and how many strings
/// follow.
const HEAD: usize = 8;
/// What a string is told by: its score, its terms towards strings that stay, tension, brightness, family and three
/// numbers of its recipe.
const MEMBERS: usize = 8;

/// How much longer than the first worker the helper may take before its places are searched here, in milliseconds.
/// Longer would hold up a fit whose helper is gone; shorter would search twice what was about to come.
const GRACE_MS: u32 = 25;

/// The name of a worker that searches without a helper.
pub const ALONE: &str = "alone";

/// Whether the helper searches that place.
fn is_helped(place: usize) -> bool {
    place % 2 == 1
}

/// The answers of a request, if it is one for a set and nothing is wrong with it.
#[must_use]
pub fn asked(request: &str) -> Option<Answers> {
    match parse::request(request) {
        Ok(Request::Fit(fit)) => convert::answers(&fit.answers).ok(),
        _ => None,
    }
}

/// The helper's half of the search.
#[must_use]
pub fn helped(answers: &Answers) -> Vec<f64> {
    let posed = Posed::new(answers);
    let offers = posed.offers();
    let mut numbers = Vec::new();
    for (place, offer) in offers.iter().enumerate().filter(|(place, _)| is_helped(*place)) {
        let Best { contenders, counts, missing, work } = offer.first_look();
        let Counts { space, wound, inside, judged } = counts;
        // None of these counts comes near 2^53.
        let counts = [space, wound, inside, judged].map(|count| count as f64);
        numbers.push(place as f64);
        numbers.extend(counts);
        numbers.extend([missing, work as f64, contenders.len() as f64]);
        for c in contenders {
            let Recipe { core, covering, ribbon } = c.recipe;
            numbers.extend([c.score, c.staying, c.tension, c.brightness]);
            numbers.push(f64::from(c.core_type as u8));
            numbers.extend([core, covering, ribbon].map(f64::from));
        }
    }
    numbers
}

/// The whole answer as JSON text, as [`crate::answer`] gives it. What the helper found is awaited when everything else
/// is searched. A helper that is late is raced: its places are searched here, one after the other, until it answers.
/// `pause` waits for that many milliseconds, and lets messages come in meanwhile.
pub async fn answer(
    answers: &Answers,
    helped: impl Future<Output = Option<Vec<f64>>>,
    pause: impl AsyncFn(u32),
) -> String {
    let posed = Posed::new(answers);
    let offers = posed.offers();
    let mut searched: Vec<Option<Best>> = offers
        .iter()
        .enumerate()
        .map(|(place, offer)| (!is_helped(place)).then(|| offer.first_look()))
        .collect();
    let mut helped = pin!(helped);
    let (mut owed, mut grace_ms) = (true, GRACE_MS);
    for (place, offer) in offers.iter().enumerate() {
        if searched[place].is_some() {
            continue;
        }
        if owed && let Some(half) = within(helped.as_mut(), pause(grace_ms)).await {
            owed = false;
            for (place, best) in half.and_then(|numbers| told(&numbers)).into_iter().flatten() {
                if let Some(missing @ None) = searched.get_mut(place) {
                    *missing = Some(best);
                }
            }
        }
        grace_ms = 0;
        if searched[place].is_none() {
            searched[place] = Some(offer.first_look());
        }
    }
    let chosen = posed.choose(&offers, searched.into_iter().flatten().collect());
    drop(offers);
    written(&Reply::Fit(Box::new(fit_of(answers, &posed.settle(chosen)))))
}

/// What a future gives, if it comes before the pause is over.
async fn within<T>(
    mut future: Pin<&mut impl Future<Output = T>>,
    pause: impl Future<Output = ()>,
) -> Option<T> {
    let mut pause = pin!(pause);
    std::future::poll_fn(|context| match future.as_mut().poll(context) {
        Poll::Ready(value) => Poll::Ready(Some(value)),
        Poll::Pending => pause.as_mut().poll(context).map(|()| None),
    })
    .await
}

/// The places of which a helper told, each with what it found there.
fn told(mut numbers: &[f64]) -> Option<Vec<(usize, Best)>> {
    let mut all = Vec::new();
    while !numbers.is_empty() {
        let (head, rest) = numbers.split_first_chunk::<HEAD>()?;
        let missing = head[5];
        let [place, space, wound, inside, judged, _, work, count] =
            head.map(|number| number as u64);
        let (strings, rest) =
            rest.split_at_checked(usize::try_from(count).ok()?.checked_mul(MEMBERS)?)?;
        let contenders = strings.as_chunks::<MEMBERS>().0.iter().map(contender);
        let contenders = contenders.collect::<Option<Vec<Contender>>>()?;
        let counts = Counts { space, wound, inside, judged };
        let best = Best { contenders, counts, missing, work };
        all.push((usize::try_from(place).ok()?, best));
        numbers = rest;
    }
    Some(all)
}

fn contender(numbers: &[f64; MEMBERS]) -> Option<Contender> {
    let [score, staying, tension, brightness, core_type, core, covering, ribbon] = *numbers;
    let core_type = *CoreType::ALL.get(core_type as usize)?;
    let [core, covering, ribbon] = [core, covering, ribbon].map(|number| number as u32);
    let recipe = Recipe { core, covering, ribbon };
    let ln_tension = libm::log(tension);
    Some(Contender { score, staying, tension, ln_tension, brightness, core_type, recipe })
}
