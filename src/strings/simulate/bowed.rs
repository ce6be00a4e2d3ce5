//! One step of the bowed string after the other: `L` notes of one string side by side, each as if alone.

#![allow(
    clippy::needless_range_loop,
    reason = "a note is named by its number in many arrays at once"
)]

use super::dispersion;
use super::friction::Friction;
use super::gesture::Gesture;
use super::loss_filter::SHELVES;
use super::section::{Section, all_pass_for, delay, times};
use super::strung::{SHORTEST, Strung};

/// Steps between two looks at the gesture: at 48 kHz a third of a millisecond, in which no arm does anything; between, straight lines.
const BLOCK: usize = 16;
/// What happened in one step, in each of `L` notes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moment<const L: usize> {
    /// Force of the string on the bridge, N.
    pub bridge_force: [f64; L],
    /// Speed of the bridge, m/s.
    pub bridge_speed: [f64; L],
    /// Force of the bow on the string, N.
    pub friction: [f64; L],
    /// Speed of the string's surface over that of the bow, m/s: zero while it sticks.
    pub slip: [f64; L],
    /// Speed of the bow, m/s.
    pub bow: [f64; L],
    /// Speed of the string's centre at the bow, m/s.
    pub speed: [f64; L],
    /// Speed of the string's surface at the bow by twist alone, m/s.
    pub twist: [f64; L],
    /// Waves of speed that arrive at the bow from nut and bridge, m/s.
    pub arriving: [[f64; L]; 2],
    /// Waves of speed that leave the bow for nut and bridge, m/s.
    pub leaving: [[f64; L]; 2],
}

/// A delay line of whole steps: what was written comes back after as many steps as its reader asks.
#[derive(Clone, Debug)]
struct Ring<const L: usize> {
    kept: Vec<[f64; L]>,
}

impl<const L: usize> Ring<L> {
    fn new(steps: f64) -> Self {
        Self { kept: vec![[0.0; L]; ((steps as usize) + 4).next_power_of_two()] }
    }

    #[inline(always)]
    fn read(&self, now: usize, late: &[usize; L]) -> [f64; L] {
        let mask = self.kept.len() - 1;
        let mut out = [0.0; L];
        for l in 0..L {
            out[l] = self.kept[now.wrapping_sub(late[l]) & mask][l];
        }
        out
    }

    #[inline(always)]
    fn write(&mut self, now: usize, x: [f64; L]) {
        let mask = self.kept.len() - 1;
        self.kept[now & mask] = x;
    }
}

/// A path from the bow to an end and back: whole steps, and the rest by an all-pass.
#[derive(Clone, Debug)]
struct Path<const L: usize> {
    ring: Ring<L>,
    late: [usize; L],
    fraction: [f64; L],
    kept: [f64; L],
}

impl<const L: usize> Path<L> {
    fn new(longest: f64) -> Self {
        Self { ring: Ring::new(longest), late: [1; L], fraction: [0.0; L], kept: [0.0; L] }
    }

    /// Sets how late lane `l` is, in steps, for a wave of `omega` radians a step.
    fn set(&mut self, l: usize, steps: f64, omega: f64) {
        let steps = steps.max(SHORTEST);
        let whole = (libm::floor(steps - 0.5)).max(1.0);
        self.late[l] = (whole as usize).min(self.ring.kept.len() - 1);
        self.fraction[l] = all_pass_for(steps - whole, omega);
    }

    #[inline(always)]
    fn arrives(&self, now: usize) -> [f64; L] {
        self.ring.read(now, &self.late)
    }

    #[inline(always)]
    fn leaves(&mut self, now: usize, x: &[f64; L]) {
        let mut out = [0.0; L];
        for l in 0..L {
            let y = self.fraction[l] * x[l] + self.kept[l];
            self.kept[l] = x[l] - self.fraction[l] * y;
            out[l] = y;
        }
        self.ring.write(now, out);
    }
}

/// A section of first order with what it remembers.
#[inline(always)]
fn first_order<const L: usize>(section: &Section, kept: &mut [f64; L], x: &mut [f64; L]) {
    for l in 0..L {
        let y = section.b[0] * x[l] + kept[l];
        kept[l] = section.b[1] * x[l] - section.a[0] * y;
        x[l] = y;
    }
}

/// A string under a bow, `L` notes of it side by side.
#[derive(Clone, Debug)]
pub struct Bowed<const L: usize, F> {
    now: usize,
    strung: Strung,
    nut: Path<L>,
    bridge: Path<L>,
    twist_nut: Path<L>,
    twist_bridge: Path<L>,
    loss_kept: [[f64; L]; SHELVES],
    poles_kept: [[f64; L]; 2],
    links_kept: [[f64; L]; dispersion::LINKS],
    twist_loss_kept: [[f64; L]; 2],
    body_kept: Vec<[[f64; L]; 2]>,
    places: [f64; L],
    /// The law of friction, with what it remembers.
    pub friction: F,
}

/// What reaches the bow in a step.
struct Arriving<const L: usize> {
    nut: [f64; L],
    bridge: [f64; L],
    twist_nut: [f64; L],
    twist_bridge: [f64; L],
    bridge_force: [f64; L],
    bridge_speed: [f64; L],
}

impl<const L: usize, F: Friction<L>> Bowed<L, F> {
    /// A string at rest, the bow of each note at its place (share of the length from the bridge).
    #[must_use]
    pub fn new(strung: &Strung, places: [f64; L], friction: F) -> Self {
        let mut bowed = Self {
            now: 0,
            nut: Path::new(strung.period),
            bridge: Path::new(strung.period),
            twist_nut: Path::new(strung.twist_period),
            twist_bridge: Path::new(strung.twist_period),
            loss_kept: [[0.0; L]; SHELVES],
            poles_kept: [[0.0; L]; 2],
            links_kept: [[0.0; L]; dispersion::LINKS],
            twist_loss_kept: [[0.0; L]; 2],
            body_kept: vec![[[0.0; L]; 2]; strung.body.len()],
            places,
            friction,
            strung: strung.clone(),
        };
        for (l, place) in places.into_iter().enumerate() {
            bowed.move_bow(l, place);
        }
        bowed
    }

    /// Steps a second.
    #[must_use]
    pub const fn rate(&self) -> f64 {
        self.strung.rate
    }

    /// Steps in a period of the free string.
    #[must_use]
    pub const fn period(&self) -> f64 {
        self.strung.period
    }

    /// Moves the bow of note `l` to `place`, a share of the length from the bridge.
    pub fn move_bow(&mut self, l: usize, place: f64) {
        let place = place.clamp(0.001, 0.999);
        self.places[l] = place;
        let whole = self.strung.period - self.strung.taken;
        // What does not fit on one side is made up on the other, so that the pitch stays.
        let bridge = (place * self.strung.period).clamp(SHORTEST, (whole - SHORTEST).max(SHORTEST));
        self.bridge.set(l, bridge, self.strung.omega);
        self.nut.set(l, whole - bridge, self.strung.omega);
        let whole = self.strung.twist_period - self.strung.twist_taken;
        let bridge =
            (place * self.strung.twist_period).clamp(SHORTEST, (whole - SHORTEST).max(SHORTEST));
        self.twist_bridge.set(l, bridge, self.strung.twist_omega);
        self.twist_nut.set(l, whole - bridge, self.strung.twist_omega);
    }

    #[inline(always)]
    fn arriving(&mut self) -> Arriving<L> {
        let mut nut = self.nut.arrives(self.now);
        let at_bridge = self.bridge.arrives(self.now);
        let mut twist_nut = self.twist_nut.arrives(self.now);
        let mut twist_bridge = self.twist_bridge.arrives(self.now);
        // The bridge moves at Σ modes; its force is 2 Z₀ (what arrives) − Z₀ (its speed), solved for both at once.
        let mut remembered = [0.0; L];
        for ((_, g), kept) in self.strung.body.iter().zip(&self.body_kept) {
            for l in 0..L {
                remembered[l] += g * kept[0][l];
            }
        }
        let z = self.strung.impedance;
        let share = 1.0 / (1.0 + z * self.strung.body_at_once);
        let (mut bridge_speed, mut bridge_force, mut bridge) = ([0.0; L], [0.0; L], [0.0; L]);
        for l in 0..L {
            bridge_speed[l] =
                (2.0 * z * self.strung.body_at_once * at_bridge[l] + remembered[l]) * share;
            bridge_force[l] = z * (2.0 * at_bridge[l] - bridge_speed[l]);
            bridge[l] = bridge_speed[l] - at_bridge[l];
            nut[l] = -nut[l];
            twist_nut[l] = -twist_nut[l];
            twist_bridge[l] = -twist_bridge[l];
        }
        for ((section, _), kept) in self.strung.body.iter().zip(&mut self.body_kept) {
            for l in 0..L {
                let x = bridge_force[l];
                let y = section.b[0] * x + kept[0][l];
                kept[0][l] = kept[1][l] - section.a[0] * y;
                kept[1][l] = section.b[2] * x - section.a[1] * y;
            }
        }
        Arriving { nut, bridge, twist_nut, twist_bridge, bridge_force, bridge_speed }
    }

    #[inline(always)]
    fn leaving(
        &mut self,
        to_nut: &[f64; L],
        to_bridge: &[f64; L],
        twist_to_nut: &[f64; L],
        twist_to_bridge: &[f64; L],
    ) {
        let mut x = *to_nut;
        for l in 0..L {
            x[l] *= self.strung.end;
        }
        for k in 0..SHELVES {
            first_order(&self.strung.loss.shelves[k], &mut self.loss_kept[k], &mut x);
        }
        let poles = &self.strung.loss.poles;
        for l in 0..L {
            let y = poles.b[0] * x[l] + self.poles_kept[0][l];
            self.poles_kept[0][l] = poles.b[1] * x[l] - poles.a[0] * y + self.poles_kept[1][l];
            self.poles_kept[1][l] = poles.b[2] * x[l] - poles.a[1] * y;
            x[l] = y;
        }
        for kept in &mut self.links_kept {
            first_order(&self.strung.link, kept, &mut x);
        }
        self.nut.leaves(self.now, &x);
        self.bridge.leaves(self.now, to_bridge);
        let mut x = *twist_to_nut;
        for (section, kept) in self.strung.twist_loss.iter().zip(&mut self.twist_loss_kept) {
            first_order(section, kept, &mut x);
        }
        self.twist_nut.leaves(self.now, &x);
        self.twist_bridge.leaves(self.now, twist_to_bridge);
        self.now = self.now.wrapping_add(1);
    }

    /// Hands on the waves that a known force at the bow, N, makes of what arrives.
    #[inline(always)]
    fn pass_on(
        &mut self,
        arriving: &Arriving<L>,
        force: &[f64; L],
        twisting: f64,
        slip: [f64; L],
        bow: [f64; L],
    ) -> Moment<L> {
        let (mut to_nut, mut to_bridge) = ([0.0; L], [0.0; L]);
        let (mut twist_to_nut, mut twist_to_bridge) = ([0.0; L], [0.0; L]);
        let (mut speed, mut twist) = ([0.0; L], [0.0; L]);
        for l in 0..L {
            let across = self.strung.across * force[l];
            let twisting = twisting * force[l];
            to_nut[l] = arriving.bridge[l] + across;
            to_bridge[l] = arriving.nut[l] + across;
            twist_to_nut[l] = arriving.twist_bridge[l] + twisting;
            twist_to_bridge[l] = arriving.twist_nut[l] + twisting;
            speed[l] = arriving.nut[l] + to_nut[l];
            twist[l] = arriving.twist_nut[l] + twist_to_nut[l];
        }
        self.leaving(&to_nut, &to_bridge, &twist_to_nut, &twist_to_bridge);
        Moment {
            bridge_force: arriving.bridge_force,
            bridge_speed: arriving.bridge_speed,
            friction: *force,
            slip,
            bow,
            speed,
            twist,
            arriving: [arriving.nut, arriving.bridge],
            leaving: [to_nut, to_bridge],
        }
    }

    /// One step under bows of these speeds, m/s, and forces, N.
    #[inline(always)]
    pub fn step(&mut self, speed: &[f64; L], press: &[f64; L]) -> Moment<L> {
        let arriving = self.arriving();
        let mut free = [0.0; L];
        for l in 0..L {
            free[l] = arriving.nut[l]
                + arriving.bridge[l]
                + (arriving.twist_nut[l] + arriving.twist_bridge[l])
                - speed[l];
        }
        let contact = self.friction.meet(&free, self.strung.yields, press);
        self.pass_on(&arriving, &contact.force, self.strung.twisting, contact.slip, *speed)
    }

    /// One step in which a finger, not a bow, pulls at the bow's place with these forces, N; it does not twist.
    pub fn pulled(&mut self, force: &[f64; L]) -> Moment<L> {
        let arriving = self.arriving();
        self.pass_on(&arriving, force, 0.0, [0.0; L], [0.0; L])
    }

    /// Puts the string into the ideal motion of Helmholtz for bows of these speeds, half-way through sticking.
    pub fn set_moving(&mut self, speeds: &[f64; L]) {
        let steps = libm::ceil(3.0 * self.strung.period) as usize;
        for k in 0..steps {
            let t = (k as f64 - steps as f64) / self.strung.period;
            let (mut to_nut, mut to_bridge) = ([0.0; L], [0.0; L]);
            for l in 0..L {
                let beta = self.places[l];
                // One saw of the height v/β runs round the string.
                let saw = |t: f64| {
                    let turn = t + 0.5;
                    speeds[l] / beta * (0.5 - (turn - libm::floor(turn)))
                };
                to_nut[l] = saw(t - beta / 2.0);
                to_bridge[l] = -saw(t + beta / 2.0);
            }
            self.arriving();
            self.leaving(&to_nut, &to_bridge, &[0.0; L], &[0.0; L]);
        }
    }

    /// Plays `steps` steps of the gestures, one a note, and shows each step to `see`; a note without one has no bow.
    pub fn play(
        &mut self,
        gestures: &[Gesture],
        steps: usize,
        mut see: impl FnMut(usize, &Moment<L>),
    ) {
        let (mut speed, mut press) = ([0.0; L], [0.0; L]);
        let (mut faster, mut harder) = ([0.0; L], [0.0; L]);
        for k in 0..steps {
            if k % BLOCK == 0 {
                let (t, later) =
                    (k as f64 / self.strung.rate, (k + BLOCK) as f64 / self.strung.rate);
                for (l, gesture) in gestures.iter().enumerate().take(L) {
                    speed[l] = gesture.speed.at(t);
                    press[l] = gesture.force.at(t);
                    faster[l] = (gesture.speed.at(later) - speed[l]) / BLOCK as f64;
                    harder[l] = (gesture.force.at(later) - press[l]) / BLOCK as f64;
                    let place = gesture.place.at(t);
                    if (place - self.places[l]).abs() > 1e-9 {
                        self.move_bow(l, place);
                    }
                }
            }
            let moment = self.step(&speed, &press);
            see(k, &moment);
            for l in 0..L {
                speed[l] += faster[l];
                press[l] += harder[l];
            }
        }
    }

    /// What one round of the string of note `l` does to a wave of `omega` radians a step: real and imaginary part.
    ///
    /// The free partials are where it comes to a whole turn.
    #[must_use]
    pub fn round(&self, l: usize, omega: f64) -> (f64, f64) {
        let mut all = self.strung.filters(omega);
        for path in [&self.nut, &self.bridge] {
            all = times(all, Section::all_pass(path.fraction[l]).response(omega));
            all = times(all, delay(omega * path.late[l] as f64));
        }
        all
    }
}
