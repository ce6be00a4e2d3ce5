//! How does a string answer the bow? What the simulation says of it, in few numbers fitted to it.
//!
//! How soon it speaks, the two forces between which it sounds clean, and how bright it is are linear in a few
//! logarithms of what physics names, so that millions of strings can be compared and bounded; ring time is a sum with
//! nothing fitted. They were fitted by least squares to strings simulated at the usual places of every instrument, on
//! the generic body of its family ([`crate::body`]); [`crate::simulate::surrogate`] sets them beside the simulation.
//! The simulation itself takes a second a string.
//! How far they are from it on strings to which they were not fitted stands in [`Error`], and enters every range.

use core::f64::consts::PI;

use crate::body::{Body, Skeleton};
use crate::lanes::Lanes;
use crate::setting::Setting;

/// Place of the bow, of the length from the bridge.
pub const PLACE: f64 = 0.108;
/// Speed of the bow for the forces, m/s.
pub const SPEED: f64 = 0.1;
/// Place of the pluck.
pub const PLUCKED_AT: f64 = 0.23;
/// Shares of the energy still to come between which ring time is read: −5 and −15 dB.
pub const RING_ENDS: (f64, f64) = (0.316_227_766_016_837_94, 0.031_622_776_601_683_79);
/// Partials that ring; what those above have is under a thousandth of the whole.
pub const RINGING: u32 = 12;

/// ln seconds of response: constant, and for pitch, impedance and twist.
const RESPONSE: [f64; 4] = [-1.9739, -0.9912, 0.4645, -0.7884];
/// ln least force, N, of what [`BowResponse::of_forces`] lists.
const LEAST: [f64; FORCES] =
    [1.6177, 1.0335, 0.9144, -2.0938, -0.4269, 0.0045, 0.0449, 0.0487, -0.1495, -0.8110];
/// ln greatest force, N.
const GREATEST: [f64; FORCES] =
    [1.2478, 1.0344, -0.0553, 0.8085, 3.5703, 0.0942, 0.0104, -0.1090, 2.5267, 0.1884];
/// ln acum of sharpness: constant, and for pitch, the middle of the bridge hill, stiffness and twist.
const SHARPNESS: [f64; 5] = [0.2919, 0.1793, 0.3537, -0.0421, 0.0895];
/// Of how many numbers the forces are made.
const FORCES: usize = 10;
/// The least logarithm of what twist leaves, for the squares in the forces: where they would turn, it is held.
const LEAST_TWIST: f64 = -0.70;
/// The same for the time to speak: on 240 strings that twist still more easily it gets no longer below that.
pub const LEAST_TWIST_IN_SPEAKING: f64 = -0.95;
/// Below the first of these the greatest force falls by so many nepers a neper; below the second nothing was simulated.
/// Fitted to the same 240.
const SLACK_IN_TWIST: (f64, f64) = (-0.85, -1.70);
const GREATEST_BY_SLACK: f64 = 1.2;
/// Decibels of a neper.
pub const DECIBELS: f64 = 20.0 * core::f64::consts::LOG10_E;

/// Strings that the fit never saw, on which [`Error`] is measured.
pub const HELD_OUT: usize = 300;

/// By how much the fitted numbers miss the simulation on strings to which they were not fitted, root mean square, and
/// how well they rank them, cut after two places so that nothing is said better than it is.
///
/// Nepers, or decibels for the room between the forces.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Error {
    /// Correlation of ranks with the simulation, over all strings, and in the median over those of one place.
    pub ranks: (f64, f64),
    /// Over all strings of all instruments: the doubt about one number.
    pub anywhere: f64,
    /// Over strings of one place, what they miss together left aside: the doubt about which of two has more.
    pub at_one_place: f64,
}

/// Of how soon a string speaks.
pub const RESPONSE_ERROR: Error = Error { ranks: (0.99, 0.84), anywhere: 0.20, at_one_place: 0.16 };
/// Of the room between the forces, dB.
pub const ROOM_ERROR: Error = Error { ranks: (0.92, 0.85), anywhere: 1.7, at_one_place: 1.6 };
/// Of sharpness.
pub const SHARPNESS_ERROR: Error =
    Error { ranks: (0.98, 0.82), anywhere: 0.056, at_one_place: 0.048 };
/// Of the ring.
pub const RING_ERROR: Error = Error { ranks: (0.99, 0.99), anywhere: 0.14, at_one_place: 0.011 };

/// What a place gives to its strings: a pitch, and a bridge that gives way.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BridgeLoad<N> {
    /// ln pitch over 220 Hz.
    pitch: f64,
    /// ln of the middle of the bridge hill over 1500 Hz.
    hill: f64,
    /// ln of what the bridge takes at the first partial, s/kg.
    takes: N,
    /// ln of what it takes at nine partials, each over its number.
    takes_in_all: N,
    /// What it springs at the first partial, s/kg.
    springs: N,
}

/// What the place of a setting gives, all constants central.
#[must_use]
pub fn bridge_load(setting: &Setting) -> BridgeLoad<f64> {
    let (r, peak) = (setting.bridge_resistance.get(), setting.peak_resistance.get());
    BridgeLoad::of(&Body::on(setting.body, r, peak), setting.body, setting.pitch.get())
}

impl BridgeLoad<f64> {
    /// Of a body under a string of that pitch, Hz.
    #[must_use]
    pub fn of(body: &Body, skeleton: &Skeleton, pitch: f64) -> Self {
        let (re, im) = body.admittance_at(pitch);
        let all: f64 =
            (1..=9).map(|n| body.admittance_at(pitch * f64::from(n)).0 / f64::from(n)).sum();
        Self {
            pitch: libm::log(pitch / 220.0),
            hill: libm::log(skeleton.hill / 1_500.0),
            takes: libm::log(re.max(1e-12)),
            takes_in_all: libm::log(all.max(1e-12)),
            springs: im,
        }
    }

    /// The same where the whole bridge resists that many times as much in each lane.
    #[must_use]
    pub fn resisting<N: Lanes>(&self, ln_times: N, times: N) -> BridgeLoad<N> {
        BridgeLoad {
            pitch: self.pitch,
            hill: self.hill,
            takes: N::all(self.takes) - ln_times,
            takes_in_all: N::all(self.takes_in_all) - ln_times,
            springs: N::all(self.springs) / times,
        }
    }
}

/// What the fitted answers rest on, each held within what was seen when they were fitted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BowResponse<N> {
    pitch: f64,
    hill: f64,
    /// ln impedance, kg/s.
    impedance: N,
    /// ln of impedance times what the bridge takes at the first partial.
    taken: N,
    /// The same over nine partials, each over its number.
    taken_in_all: N,
    /// Hundred times the impedance times what the bridge springs at the first partial.
    springs: N,
    /// ln of the share of its resistance that twist leaves, Zₜ/(Z₀ + Zₜ): for the forces, for speaking, and by how much it
    /// lies below [`SLACK_IN_TWIST`].
    twist: N,
    twist_in_speaking: N,
    slack_in_twist: N,
    /// ln inharmonicity over 6e-5.
    stiff: N,
}

/// ln of the inharmonicity that counts as none.
const LN_UNSTIFF: f64 = -9.721_165_995_742_174;

/// Decibels of room for each of the numbers that forces are made of.
fn of_room() -> [f64; FORCES] {
    core::array::from_fn(|i| DECIBELS * (GREATEST[i] - LEAST[i]))
}

fn sum<N: Lanes>(numbers: &[f64], of: &[N]) -> N {
    numbers.iter().zip(of).fold(N::all(0.0), |all, (a, b)| all + N::all(*a) * *b)
}

impl<N: Lanes> BowResponse<N> {
    /// Of a string of that impedance (its logarithm, and as it is, kg/s), that share left by twist and that
    /// inharmonicity (their logarithms).
    #[must_use]
    pub fn new(bridge_load: &BridgeLoad<N>, (ln_z, z): (N, N), ln_twist: N, ln_stiff: N) -> Self {
        let slack = SLACK_IN_TWIST;
        Self {
            pitch: bridge_load.pitch,
            hill: bridge_load.hill,
            impedance: ln_z,
            taken: (ln_z + bridge_load.takes).held(-6.0, -3.0),
            taken_in_all: (ln_z + bridge_load.takes_in_all).held(-6.0, -2.0),
            springs: (N::all(100.0) * z * bridge_load.springs).held(-0.5, 2.5),
            twist: ln_twist.held(LEAST_TWIST, 0.0),
            twist_in_speaking: ln_twist.held(LEAST_TWIST_IN_SPEAKING, 0.0),
            slack_in_twist: ln_twist.held(slack.1, slack.0) - N::all(slack.0),
            stiff: (ln_stiff - N::all(LN_UNSTIFF)).held(-2.7, 3.0),
        }
    }

    /// ln seconds until it speaks, in the mean over a player's strokes ([`crate::simulate::player`]).
    #[must_use]
    pub fn response(&self) -> N {
        let of = [N::all(1.0), N::all(self.pitch), self.impedance, self.twist_in_speaking];
        sum(&RESPONSE, &of)
    }

    fn of_forces(&self) -> [N; FORCES] {
        [
            N::all(1.0),
            self.impedance,
            self.taken,
            self.springs,
            self.twist,
            self.stiff,
            self.stiff * self.stiff,
            self.springs * self.springs,
            self.twist * self.twist,
            self.springs * self.taken_in_all,
        ]
    }

    /// ln of the least and the greatest force of the bow, N.
    #[must_use]
    pub fn forces(&self) -> (N, N) {
        let of = self.of_forces();
        (sum(&LEAST, &of), sum(&GREATEST, &of) + N::all(GREATEST_BY_SLACK) * self.slack_in_twist)
    }

    /// Room between the two forces, dB.
    #[must_use]
    pub fn room(&self) -> N {
        sum(&of_room(), &self.of_forces()) + self.lost_by_slack()
    }

    fn lost_by_slack(&self) -> N {
        N::all(DECIBELS * GREATEST_BY_SLACK) * self.slack_in_twist
    }

    /// The most room, dB, of any string between two tensions of which these answers hold, whatever its stiffness: both
    /// with the most that twist may leave.
    ///
    /// Every feature goes one way with tension, and the room one way with twist; what is a
    /// product or a square is bounded by its ends or its top.
    #[must_use]
    pub fn most_room(slack: &Self, taut: &Self) -> N {
        let of = of_room();
        let by = |i: usize| N::all(of[i]);
        let linear = |i: usize, a: N, b: N| (by(i) * a).most(by(i) * b);
        let (s, g) = ((slack.springs, taut.springs), (slack.taken_in_all, taut.taken_in_all));
        let product = |s: N, g: N| s * (by(3) + by(9) * g);
        let products = product(s.0, g.0).most(product(s.0, g.1));
        let products = products.most(product(s.1, g.0)).most(product(s.1, g.1));
        let zero = N::all(0.0);
        let smallest = s.0.least(s.1).most(zero - s.0.most(s.1)).most(zero);
        // The square of stiffness has its top within what is held.
        let stiff = N::all(-0.25 * of[5] * of[5] / of[6]);
        let w = slack.twist.most(taut.twist);
        by(0)
            + linear(1, slack.impedance, taut.impedance)
            + linear(2, slack.taken, taut.taken)
            + products
            + by(7) * smallest * smallest
            + by(4) * w
            + by(8) * w * w
            + slack.lost_by_slack().most(taut.lost_by_slack())
            + stiff
    }

    /// ln of the sharpness of its steady sound at 70 dB, acum.
    #[must_use]
    pub fn sharpness(&self) -> N {
        let one = N::all(1.0);
        sum(&SHARPNESS, &[one, N::all(self.pitch), N::all(self.hill), self.stiff, self.twist])
    }
}

/// Seconds in which a plucked string falls by 60 dB, from the frequency and the loss factor of each partial on ends
/// that do not give: nothing fitted.
///
/// Each partial of the bridge's speed starts as abs(Y) sin(nπx)/n and loses η plus 2 Z₀ Re Y/(π n)
/// ([`crate::source::EUPHONICS`], 5.1.1 eq. 8); six times what the energy to come takes from −5 to −15 dB.
#[must_use]
pub fn ring(impedance: f64, partials: impl Iterator<Item = (f64, f64)>, body: &Body) -> f64 {
    let (mut energy, mut rate, mut count) = ([0.0; RINGING as usize], [0.0; RINGING as usize], 0);
    for (i, (frequency, eta)) in partials.take(RINGING as usize).enumerate() {
        let n = (i + 1) as f64;
        let (re, im) = body.admittance_at(frequency);
        let pulled = libm::sin(n * PI * PLUCKED_AT) / n;
        rate[i] = 2.0 * PI * frequency * (eta + 2.0 * impedance * re / (PI * n));
        energy[i] = pulled * pulled * (re * re + im * im) / rate[i];
        count = i + 1;
    }
    let whole: f64 = energy[..count].iter().sum();
    // The logarithm of what is still to come falls ever more slowly, so steps along its slope never pass the time
    // that is sought; where they become short they are right.
    let from = |start: f64, share: f64| {
        let mut t = start;
        for _ in 0..60 {
            let (mut left, mut leaving) = (0.0, 0.0);
            for (e, r) in energy[..count].iter().zip(&rate[..count]) {
                let now = e * libm::exp(-r * t);
                left += now;
                leaving += r * now;
            }
            let step = libm::log(left / (whole * share)) * left / leaving;
            t += step;
            if step <= 1e-10 * t {
                break;
            }
        }
        t
    };
    let early = from(0.0, RING_ENDS.0);
    6.0 * (from(early, RING_ENDS.1) - early)
}
