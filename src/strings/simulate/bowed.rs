//! One step of the bowed string after the other: one note, or several of one string side by side, each as if alone.

use super::dispersion;
use super::friction::Friction;
use super::gesture::{Gesture, Track};
use super::loss_filter::SHELVES;
use super::section::{Section, all_pass_for, delay, times};
use super::strung::{SHORTEST, Strung};
use crate::lanes::Lanes;

/// Steps between two looks at the gesture: at 48 kHz a third of a millisecond, in which no arm does anything; between, straight lines.
const BLOCK: usize = 16;

/// What happened in one step, in each note.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moment<N> {
    /// Force of the string on the bridge, N.
    pub bridge_force: N,
    /// Speed of the bridge, m/s.
    pub bridge_speed: N,
    /// Force of the bow on the string, N.
    pub friction: N,
    /// Speed of the string's surface over that of the bow, m/s: zero while it sticks.
    pub slip: N,
    /// Speed of the bow, m/s.
    pub bow: N,
    /// Speed of the string's centre at the bow, m/s.
    pub speed: N,
    /// Speed of the string's surface at the bow by twist alone, m/s.
    pub twist: N,
    /// Waves of speed that arrive at the bow from nut and bridge, m/s.
    pub arriving: [N; 2],
    /// Waves of speed that leave the bow for nut and bridge, m/s.
    pub leaving: [N; 2],
}

/// A path from the bow to an end and back: a delay of whole steps, and the rest by an all-pass.
#[derive(Clone, Debug)]
struct Path<N> {
    /// What was sent, the last in place of the oldest.
    sent: Vec<N>,
    /// Whole steps that each note is late.
    late: Vec<usize>,
    /// The same, if it is the same for all: then nothing is gathered.
    alike: Option<usize>,
    fraction: N,
    kept: N,
}

impl<N: Lanes> Path<N> {
    fn new(longest: f64) -> Self {
        Self {
            sent: vec![N::all(0.0); ((longest as usize) + 4).next_power_of_two()],
            late: vec![1; N::COUNT],
            alike: Some(1),
            fraction: N::all(0.0),
            kept: N::all(0.0),
        }
    }

    /// Sets how late lane `l` is, in steps, for a wave of `omega` radians a step.
    fn set(&mut self, l: usize, steps: f64, omega: f64) {
        let steps = steps.max(SHORTEST);
        let whole = (libm::floor(steps - 0.5)).max(1.0);
        self.late[l] = (whole as usize).min(self.sent.len() - 1);
        self.alike = Some(self.late[0]).filter(|one| self.late.iter().all(|late| late == one));
        let own = all_pass_for(steps - whole, omega);
        let before = self.fraction;
        self.fraction = N::each(|other| if other == l { own } else { before.lane(other) });
    }

    #[inline(always)]
    fn arrives(&self, now: usize) -> N {
        let mask = self.sent.len() - 1;
        match self.alike {
            Some(late) => self.sent[now.wrapping_sub(late) & mask],
            None => N::each(|l| self.sent[now.wrapping_sub(self.late[l]) & mask].lane(l)),
        }
    }

    #[inline(always)]
    fn leaves(&mut self, now: usize, x: N) {
        let mask = self.sent.len() - 1;
        self.sent[now & mask] = all_pass(self.fraction, &mut self.kept, x);
    }
}

/// A section of first order with what it remembers.
#[inline(always)]
fn first_order<N: Lanes>(section: &Section<N>, kept: &mut N, x: N) -> N {
    let y = section.b[0] * x + *kept;
    *kept = section.b[1] * x - section.a[0] * y;
    y
}

/// An all-pass of first order, whose number is `a`, with what it remembers.
#[inline(always)]
fn all_pass<N: Lanes>(a: N, kept: &mut N, x: N) -> N {
    let y = a * x + *kept;
    *kept = x - a * y;
    y
}

/// The sections of a string, every number once for each note, so that none is spread anew in each step.
#[derive(Clone, Debug)]
struct Sections<N> {
    shelves: [Section<N>; SHELVES],
    poles: Section<N>,
    link: N,
    twist_loss: [Section<N>; 2],
    /// The body's modes, and how much of each the bridge has.
    body: Vec<(Section<N>, N)>,
}

/// A string under a bow: one note, or several side by side.
#[derive(Clone, Debug)]
pub struct Bowed<N, F> {
    now: usize,
    strung: Strung,
    sections: Sections<N>,
    nut: Path<N>,
    bridge: Path<N>,
    twist_nut: Path<N>,
    twist_bridge: Path<N>,
    loss_kept: [N; SHELVES],
    poles_kept: [N; 2],
    links_kept: [N; dispersion::LINKS],
    twist_loss_kept: [N; 2],
    body_kept: Vec<[N; 2]>,
    places: Vec<f64>,
    /// The law of friction, with what it remembers.
    pub friction: F,
}

/// What reaches the bow in a step.
struct Arriving<N> {
    nut: N,
    bridge: N,
    twist_nut: N,
    twist_bridge: N,
    bridge_force: N,
    bridge_speed: N,
}

impl<N: Lanes, F: Friction<N>> Bowed<N, F> {
    /// A string at rest, the bow of each note at its place (share of the length from the bridge).
    #[must_use]
    pub fn new(strung: &Strung, places: N, friction: F) -> Self {
        let none = N::all(0.0);
        let mut bowed = Self {
            now: 0,
            nut: Path::new(strung.period),
            bridge: Path::new(strung.period),
            twist_nut: Path::new(strung.twist_period),
            twist_bridge: Path::new(strung.twist_period),
            loss_kept: [none; SHELVES],
            poles_kept: [none; 2],
            links_kept: [none; dispersion::LINKS],
            twist_loss_kept: [none; 2],
            body_kept: vec![[none; 2]; strung.body.len()],
            places: vec![0.0; N::COUNT],
            friction,
            sections: Sections {
                shelves: strung.loss.shelves.each_ref().map(Section::abreast),
                poles: strung.loss.poles.abreast(),
                link: N::all(strung.link.a[0]),
                twist_loss: strung.twist_loss.each_ref().map(Section::abreast),
                body: strung.body.iter().map(|(mode, g)| (mode.abreast(), N::all(*g))).collect(),
            },
            strung: strung.clone(),
        };
        for l in 0..N::COUNT {
            bowed.move_bow(l, places.lane(l));
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
    fn arriving(&mut self) -> Arriving<N> {
        let all = N::all;
        let nut = -self.nut.arrives(self.now);
        let at_bridge = self.bridge.arrives(self.now);
        let twist_nut = -self.twist_nut.arrives(self.now);
        let twist_bridge = -self.twist_bridge.arrives(self.now);
        // The bridge moves at Σ modes; its force is 2 Z₀ (what arrives) − Z₀ (its speed), solved for both at once.
        let mut remembered = all(0.0);
        for ((_, g), kept) in self.sections.body.iter().zip(&self.body_kept) {
            remembered = remembered + *g * kept[0];
        }
        let z = self.strung.impedance;
        let at_once = 2.0 * z * self.strung.body_at_once;
        let share = 1.0 / (1.0 + z * self.strung.body_at_once);
        let bridge_speed = (all(at_once) * at_bridge + remembered) * all(share);
        let bridge_force = all(z) * (all(2.0) * at_bridge - bridge_speed);
        let bridge = bridge_speed - at_bridge;
        for ((mode, _), kept) in self.sections.body.iter().zip(&mut self.body_kept) {
            let y = mode.b[0] * bridge_force + kept[0];
            kept[0] = kept[1] - mode.a[0] * y;
            kept[1] = mode.b[2] * bridge_force - mode.a[1] * y;
        }
        Arriving { nut, bridge, twist_nut, twist_bridge, bridge_force, bridge_speed }
    }

    #[inline(always)]
    fn leaving(&mut self, to_nut: N, to_bridge: N, twist_to_nut: N, twist_to_bridge: N) {
        let mut x = to_nut * N::all(self.strung.end);
        for (shelf, kept) in self.sections.shelves.iter().zip(&mut self.loss_kept) {
            x = first_order(shelf, kept, x);
        }
        let (poles, kept) = (&self.sections.poles, &mut self.poles_kept);
        let y = poles.b[0] * x + kept[0];
        kept[0] = poles.b[1] * x - poles.a[0] * y + kept[1];
        kept[1] = poles.b[2] * x - poles.a[1] * y;
        x = y;
        for kept in &mut self.links_kept {
            x = all_pass(self.sections.link, kept, x);
        }
        self.nut.leaves(self.now, x);
        self.bridge.leaves(self.now, to_bridge);
        let mut x = twist_to_nut;
        for (section, kept) in self.sections.twist_loss.iter().zip(&mut self.twist_loss_kept) {
            x = first_order(section, kept, x);
        }
        self.twist_nut.leaves(self.now, x);
        self.twist_bridge.leaves(self.now, twist_to_bridge);
        self.now = self.now.wrapping_add(1);
    }

    /// Hands on the waves that a known force at the bow, N, makes of what arrives.
    #[inline(always)]
    fn pass_on(
        &mut self,
        arriving: &Arriving<N>,
        force: N,
        twisting: f64,
        slip: N,
        bow: N,
    ) -> Moment<N> {
        let across = N::all(self.strung.across) * force;
        let twisting = N::all(twisting) * force;
        let to_nut = arriving.bridge + across;
        let to_bridge = arriving.nut + across;
        let twist_to_nut = arriving.twist_bridge + twisting;
        let twist_to_bridge = arriving.twist_nut + twisting;
        self.leaving(to_nut, to_bridge, twist_to_nut, twist_to_bridge);
        Moment {
            bridge_force: arriving.bridge_force,
            bridge_speed: arriving.bridge_speed,
            friction: force,
            slip,
            bow,
            speed: arriving.nut + to_nut,
            twist: arriving.twist_nut + twist_to_nut,
            arriving: [arriving.nut, arriving.bridge],
            leaving: [to_nut, to_bridge],
        }
    }

    /// One step under bows of these speeds, m/s, and forces, N.
    #[inline(always)]
    pub fn step(&mut self, speed: N, press: N) -> Moment<N> {
        let arriving = self.arriving();
        let free =
            arriving.nut + arriving.bridge + (arriving.twist_nut + arriving.twist_bridge) - speed;
        let contact = self.friction.meet(free, self.strung.yields, press);
        self.pass_on(&arriving, contact.force, self.strung.twisting, contact.slip, speed)
    }

    /// One step in which a finger, not a bow, pulls at the bow's place with these forces, N; it does not twist.
    pub fn pulled(&mut self, force: N) -> Moment<N> {
        let arriving = self.arriving();
        self.pass_on(&arriving, force, 0.0, N::all(0.0), N::all(0.0))
    }

    /// Puts the string into the ideal motion of Helmholtz for bows of these speeds, half-way through sticking.
    pub fn set_moving(&mut self, speeds: N) {
        let steps = libm::ceil(3.0 * self.strung.period) as usize;
        for k in 0..steps {
            let t = (k as f64 - steps as f64) / self.strung.period;
            // One saw of the height v/β runs round the string.
            let saw = |l: usize, t: f64| {
                let turn = t + 0.5;
                speeds.lane(l) / self.places[l] * (0.5 - (turn - libm::floor(turn)))
            };
            let to_nut = N::each(|l| saw(l, t - self.places[l] / 2.0));
            let to_bridge = N::each(|l| -saw(l, t + self.places[l] / 2.0));
            self.arriving();
            self.leaving(to_nut, to_bridge, N::all(0.0), N::all(0.0));
        }
    }

    /// Plays `steps` steps of the gestures, one a note, and shows each step to `see`; a note without one has no bow.
    pub fn play(
        &mut self,
        gestures: &[Gesture],
        steps: usize,
        mut see: impl FnMut(usize, &Moment<N>),
    ) {
        self.play_while(gestures, steps, |k, moment| {
            see(k, moment);
            true
        });
    }

    /// As [`Self::play`], for as long as `see` says so.
    pub fn play_while(
        &mut self,
        gestures: &[Gesture],
        steps: usize,
        mut see: impl FnMut(usize, &Moment<N>) -> bool,
    ) {
        let rate = self.strung.rate;
        let of = |track: fn(&Gesture) -> &Track, k: usize| {
            let t = k as f64 / rate;
            N::each(|l| gestures.get(l).map_or(0.0, |gesture| track(gesture).at(t)))
        };
        let arm = |k: usize| [of(|gesture| &gesture.speed, k), of(|gesture| &gesture.force, k)];
        let [mut speed, mut press] = arm(0);
        let (mut faster, mut harder) = (N::all(0.0), N::all(0.0));
        let mut ahead = [speed, press];
        for k in 0..steps {
            if k % BLOCK == 0 {
                [speed, press] = ahead;
                ahead = arm(k + BLOCK);
                let share = N::all(1.0 / BLOCK as f64);
                (faster, harder) = ((ahead[0] - speed) * share, (ahead[1] - press) * share);
                for (l, gesture) in gestures.iter().enumerate().take(N::COUNT) {
                    let place = gesture.place.at(k as f64 / rate);
                    if (place - self.places[l]).abs() > 1e-9 {
                        self.move_bow(l, place);
                    }
                }
            }
            let moment = self.step(speed, press);
            if !see(k, &moment) {
                return;
            }
            speed = speed + faster;
            press = press + harder;
        }
    }

    /// What one round of the string of note `l` does to a wave of `omega` radians a step: real and imaginary part.
    ///
    /// The free partials are where it comes to a whole turn.
    #[must_use]
    pub fn round(&self, l: usize, omega: f64) -> (f64, f64) {
        let mut all = self.strung.filters(omega);
        for path in [&self.nut, &self.bridge] {
            all = times(all, Section::all_pass(path.fraction.lane(l)).response(omega));
            all = times(all, delay(omega * path.late[l] as f64));
        }
        all
    }
}
