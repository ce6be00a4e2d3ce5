//! What does a wave lose in one round of the string? A filter of low order, fitted to the losses of the partials.
//!
//! A partial of loss factor η keeps e^(−π n η) of its amplitude in one period. Three gentle steps carry what falls
//! slowly (air, and the pull), one pair of poles what falls steeply (bending). Each link passes no frequency enlarged,
//! so that no fit, however poor, can make a string that gains.

use core::f64::consts::PI;

use super::section::{Complex, Section, angle, size, times};
use super::sounding::Sounding;

/// Gentle steps in the filter. With two, the first partials of gut miss by a tenth; a fourth gains nothing.
pub(super) const SHELVES: usize = 3;
/// Numbers that are fitted: place and depth of each step, place and sharpness of the pair of poles.
const UNKNOWNS: usize = 2 * SHELVES + 2;
/// Rounds of the fit. It has come to rest after some thirty.
const ROUNDS: usize = 60;
/// Frequencies to which it is fitted: more change the result by less than the fit misses.
const PLACES: usize = 36;

/// A filter that takes from each frequency what one round of the string takes.
#[derive(Clone, Debug, PartialEq)]
pub struct LossFilter {
    pub(super) shelves: [Section; SHELVES],
    pub(super) poles: Section,
}

/// A number between 0 and 1 from any number.
fn share(x: f64) -> f64 {
    1.0 / (1.0 + libm::exp(-x))
}

/// One frequency of the fit: tan² of half its angle, and the loss wanted there.
struct Place {
    tan2: f64,
    loss: f64,
}

/// The filter that numbers of the fit stand for: 1/tan² and squared depth of each step, 1/tan² and shape of the poles.
struct Meant {
    shelves: [(f64, f64); SHELVES],
    poles: (f64, f64),
}

impl Meant {
    fn by(x: &[f64; UNKNOWNS]) -> Self {
        let mut shelves = [(0.0, 0.0); SHELVES];
        for (k, shelf) in shelves.iter_mut().enumerate() {
            let g = share(x[2 * k + 1]);
            *shelf = (libm::exp(-2.0 * x[2 * k]), g * g);
        }
        let q = sharpness(x[2 * SHELVES + 1]);
        Self { shelves, poles: (libm::exp(-2.0 * x[2 * SHELVES]), 1.0 / (q * q) - 2.0) }
    }

    /// −ln of the filter's gain at a place.
    fn loss(&self, tan2: f64) -> f64 {
        let y2 = tan2 * self.poles.0;
        let mut gain2 = 1.0 / (1.0 + self.poles.1 * y2 + y2 * y2);
        for (place, g2) in self.shelves {
            let y2 = tan2 * place;
            gain2 *= (1.0 + g2 * y2) / (1.0 + y2);
        }
        -0.5 * libm::log(gain2)
    }

    /// By how much the filter misses at a place: as a share of the loss where it is small, less where nothing is left anyway.
    fn miss(&self, place: &Place) -> f64 {
        (self.loss(place.tan2) - place.loss) / (place.loss * (1.0 + place.loss))
    }
}

/// Sharpness of the pair of poles, held where no frequency is enlarged: up to 1/√2.
fn sharpness(x: f64) -> f64 {
    0.3 + (core::f64::consts::FRAC_1_SQRT_2 - 0.3) * share(x)
}

fn misses(x: &[f64; UNKNOWNS], places: &[Place]) -> f64 {
    let meant = Meant::by(x);
    places.iter().map(|place| meant.miss(place)).map(|r| r * r).sum()
}

impl LossFilter {
    /// Fits the filter to the string's losses at `rate` steps a second.
    #[must_use]
    pub fn of(string: &Sounding, rate: f64) -> Self {
        let places = places(string, rate);
        if places.is_empty() {
            return Self { shelves: [Section::NONE; SHELVES], poles: Section::NONE };
        }
        let x = fit(start(&places), &places);
        let mut shelves = [Section::NONE; SHELVES];
        for (k, shelf) in shelves.iter_mut().enumerate() {
            *shelf = Section::shelf(libm::exp(x[2 * k]), share(x[2 * k + 1]));
        }
        let poles = Section::low_pass(libm::exp(x[2 * SHELVES]), sharpness(x[2 * SHELVES + 1]));
        Self { shelves, poles }
    }

    /// Its answer at `omega` radians a step.
    pub(super) fn response(&self, omega: f64) -> Complex {
        self.shelves
            .iter()
            .fold(self.poles.response(omega), |all, shelf| times(all, shelf.response(omega)))
    }

    /// What it leaves of an amplitude at `omega` radians a step.
    #[must_use]
    pub fn gain(&self, omega: f64) -> f64 {
        size(self.response(omega))
    }

    /// How many steps it is late at `omega` radians a step.
    #[must_use]
    pub fn steps_late(&self, omega: f64) -> f64 {
        -angle(self.response(omega)) / omega
    }
}

/// The frequencies of the fit, spread evenly in the logarithm of the partial.
fn places(string: &Sounding, rate: f64) -> Vec<Place> {
    let last = string.losses.len() as f64;
    let mut places: Vec<Place> = Vec::with_capacity(PLACES);
    for i in 0..PLACES {
        let n = libm::pow(last, i as f64 / (PLACES - 1) as f64);
        // Between two partials, in a straight line.
        let below = (n as usize).clamp(1, string.losses.len());
        let above = (below + 1).min(string.losses.len());
        let eta = string.losses[below - 1]
            + (n - below as f64) * (string.losses[above - 1] - string.losses[below - 1]);
        let (frequency, loss) = (string.partial(n), PI * n * eta);
        if frequency < 0.45 * rate && loss > 0.0 {
            let tan = libm::tan(PI * frequency / rate);
            places.push(Place { tan2: tan * tan, loss });
        }
    }
    places
}

/// Where the fit begins: steps spread over the range, and the poles where most is lost.
fn start(places: &[Place]) -> [f64; UNKNOWNS] {
    let ends = (0.5 * libm::log(places[0].tan2), 0.5 * libm::log(places[places.len() - 1].tan2));
    let mut x = [0.0; UNKNOWNS];
    for k in 0..SHELVES {
        let t = (k as f64 + 0.5) / SHELVES as f64;
        x[2 * k] = ends.0 + t * (ends.1 - ends.0);
        let wanted = places[((t * (places.len() - 1) as f64) as usize).min(places.len() - 1)].loss;
        let g = libm::exp(-wanted).clamp(0.02, 0.9999);
        x[2 * k + 1] = libm::log(g / (1.0 - g));
    }
    let lost = places
        .iter()
        .find(|place| place.loss > 0.7)
        .map_or(ends.1, |place| 0.5 * libm::log(place.tan2));
    x[2 * SHELVES] = lost;
    x
}

/// Least squares by Levenberg and Marquardt.
fn fit(mut x: [f64; UNKNOWNS], places: &[Place]) -> [f64; UNKNOWNS] {
    let (mut damping, mut best) = (1e-2, misses(&x, places));
    for _ in 0..ROUNDS {
        let mut normal = [[0.0; UNKNOWNS + 1]; UNKNOWNS];
        let meant = Meant::by(&x);
        let moved: [Meant; UNKNOWNS] = core::array::from_fn(|k| {
            let mut moved = x;
            moved[k] += 1e-5;
            Meant::by(&moved)
        });
        for place in places {
            let at = meant.miss(place);
            let slope: [f64; UNKNOWNS] =
                core::array::from_fn(|k| (moved[k].miss(place) - at) / 1e-5);
            for i in 0..UNKNOWNS {
                for j in 0..UNKNOWNS {
                    normal[i][j] += slope[i] * slope[j];
                }
                normal[i][UNKNOWNS] -= slope[i] * at;
            }
        }
        for (i, row) in normal.iter_mut().enumerate() {
            row[i] += damping * (row[i] + 1e-6);
        }
        let step = solved(normal);
        let mut tried = x;
        for (value, step) in tried.iter_mut().zip(step) {
            *value += step.clamp(-2.0, 2.0);
            *value = value.clamp(-30.0, 30.0);
        }
        let found = misses(&tried, places);
        if found < best {
            let gained = best - found;
            (x, best) = (tried, found);
            damping *= 0.3;
            if gained < 1e-9 * best {
                break;
            }
        } else {
            damping *= 4.0;
        }
    }
    x
}

/// Solves a small system by elimination with the largest pivot.
fn solved(mut m: [[f64; UNKNOWNS + 1]; UNKNOWNS]) -> [f64; UNKNOWNS] {
    for i in 0..UNKNOWNS {
        let mut pivot = i;
        for row in i + 1..UNKNOWNS {
            if m[row][i].abs() > m[pivot][i].abs() {
                pivot = row;
            }
        }
        m.swap(i, pivot);
        if m[i][i].abs() < 1e-300 {
            continue;
        }
        let pivot = m[i];
        for (row, values) in m.iter_mut().enumerate() {
            if row != i {
                let factor = values[i] / pivot[i];
                for (value, above) in values.iter_mut().zip(pivot) {
                    *value -= factor * above;
                }
            }
        }
    }
    let mut x = [0.0; UNKNOWNS];
    for (i, value) in x.iter_mut().enumerate() {
        *value = if m[i][i].abs() < 1e-300 { 0.0 } else { m[i][UNKNOWNS] / m[i][i] };
    }
    x
}
