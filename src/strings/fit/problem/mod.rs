//! What the answers mean in numbers: lengths, pitches, limits, targets and weights, each assumption written down.

mod weights;

use crate::answer_to_bow::{self, BowResponse};
use crate::body;
use crate::construction::Family;
use crate::instrument::{self, Kind, Size, Temperament, Tuning};
use crate::pitch::Note;
use crate::precedent::kinds::Tradition;
use crate::precedent::{self, Conditions, Position, SetUp};
use crate::quantity::{Celsius, Day, Degree, Hertz, KilogramPerSecond, Metre, Ratio};
use crate::setting::{Setting, Swing, Untuned};

use super::answers::{
    Aim, AlsoTuned, Amplified, Answers, Bother, Budget, Level, Now, Pegs, Ring, Room, Today,
    TunedSo, Tuners, WhoTunes, Wishes,
};
use super::defaults;
use super::desirability::{self, Target};
use super::flaw::Flaw;
use super::kinds::{self, KindHere};
use weights::weigh;
pub use weights::{BASE_WEIGHTS, WeightStep};

/// Something taken for granted because it was not answered.
#[derive(Clone, Debug, PartialEq)]
pub struct Assumed {
    /// The question, as the request names it.
    pub field: &'static str,
    /// What was taken.
    pub value: String,
}

/// End points of the desirabilities that belong to one string's position.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ends {
    /// Tension worth nothing, below.
    pub tension_low: f64,
    /// Tension worth everything for feel.
    pub tension_target: f64,
    /// Tension worth everything for power.
    pub power_target: f64,
    /// Tension worth nothing, above.
    pub tension_high: f64,
    /// Wave impedance over tension at this pitch and length, 1/(2 L f).
    pub impedance_per_tension: f64,
    /// Seconds until it speaks worth nothing and everything: those of the tautest string that twists most, and of the
    /// slackest that does not twist.
    pub speaks: (f64, f64),
}

/// One string to be found.
#[derive(Clone, Debug, PartialEq)]
pub struct StringProblem {
    /// Its position in the tuning.
    pub position: &'static Position,
    /// Its note.
    pub note: Note,
    /// Where it works.
    pub setting: Setting,
    /// What its bands depend on.
    pub conditions: Conditions,
    /// The only family allowed, if one is.
    pub family: Option<Family>,
    /// Usual tension here.
    pub usual_tension: (f64, f64),
    /// Where between dark (0) and bright (1) the string lies from which wishes are counted: today's, or the most usual.
    pub usual_brightness: f64,
    /// Its stretch at pitch.
    pub usual_stretch: f64,
    /// Where in the usual tension it lies, 0 to 1.
    pub usual_pull: f64,
    /// End points of its desirabilities.
    pub ends: Ends,
    /// Whether a fine tuner serves it.
    pub fine_tuner: bool,
    /// How far from there towards bright the wish for it lies; negative towards dark.
    pub brightness_shift: f64,
    /// How far from there, ln of a ratio, the wished stretch lies.
    pub stretch_shift: f64,
    /// What is known of the string that is there now.
    pub now: Today,
    /// What bothers about this string alone.
    pub bothers: Vec<Bother>,
    /// What was wrong with today's string, where another is to be better.
    pub flaws: Vec<Flaw>,
    /// Whether it stays, is to be found, or only stands between others.
    pub standing: StringStatus,
    /// The day by which it must have settled, where the person insists.
    pub settled_by: Option<Day>,
}

/// What becomes of the string at a position.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StringStatus {
    /// One is to be found.
    Open,
    /// The one that is there stays.
    Kept,
    /// Something stands there of which nothing is known, and it is not judged.
    NotJudged,
}

impl StringStatus {
    /// The key by which replies name it.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Open => "new",
            Self::Kept => "kept",
            Self::NotJudged => "not-judged",
        }
    }
}

/// The whole question in numbers.
#[derive(Clone, Debug, PartialEq)]
pub struct Problem {
    /// What the person wants to know.
    pub aim: Aim,
    /// Which string it is about, where it is about one and the person said which.
    pub about: Option<usize>,
    /// Whether it is only about the strings that are tuned away from their note.
    pub only_retuned: bool,
    /// Which instrument.
    pub kind: &'static Kind,
    /// Which size.
    pub size: &'static Size,
    /// Which tuning.
    pub tuning: &'static Tuning,
    /// How it is set up.
    pub set_up: SetUp,
    /// Pitch of a′.
    pub a4: Hertz,
    /// How the strings are tuned to each other.
    pub temperament: Temperament,
    /// The strings, highest first.
    pub strings: Vec<StringProblem>,
    /// Usual total tension.
    pub usual_load: (f64, f64),
    /// Largest total tension recommended.
    pub most_load: f64,
    /// Weights, in the order of [`Attribute::ALL`].
    pub weights: [f64; desirability::COUNT],
    /// How the weights came about.
    pub weight_steps: Vec<WeightStep>,
    /// How far from the usual towards bright the wish lies; negative towards dark.
    pub brightness_shift: f64,
    /// Dearest price class that costs no worth.
    pub price_wish: u8,
    /// Nothing from animals.
    pub animal_free: bool,
    /// No nickel outermost.
    pub nickel_free: bool,
    /// Steel cores only.
    pub magnetic: bool,
    /// A plucked note is wished short: the sooner it has faded, the better.
    pub ring_short: bool,
    /// Sweat that eats metal.
    pub acid_sweat: bool,
    /// Days until it matters.
    pub concert_days: Option<f64>,
    /// The highest pitch at which the set is used, over its main one: at least 1.
    pub highest: f64,
    /// Where it lives.
    pub room: Room,
    /// Who tunes between lessons.
    pub who_tunes: Option<WhoTunes>,
    /// How far along the player is.
    pub level: Option<Level>,
    /// Whether the person wishes the sound or the feel to be other than now.
    pub wishes_change: bool,
    /// What is on it now.
    pub now: Option<Now>,
    /// How old that is, in months.
    pub age_months: Option<f64>,
    /// What bothers.
    pub bothers: Vec<Bother>,
    /// What was taken for granted.
    pub assumed: Vec<Assumed>,
    /// A child plays it, by its size or the player's level.
    pub for_a_child: bool,
    /// What the player plays, by what is usual in it.
    pub tradition: Tradition,
    /// The kinds of set that come into question, what is on it now or else the most usual first: none before they are
    /// looked for.
    pub kinds: Vec<KindHere>,
}

/// Humidity of the room, and how far temperature (K) and humidity swing in an evening, in a week and over the seasons.
///
/// An evening is what playing brings: from a quiet room to lamps, hands and the breath of others. Judgements.
#[must_use]
pub const fn room_of(room: Room) -> (f64, [(f64, f64); Untuned::COUNT]) {
    match room {
        Room::Steady => (0.50, [(3.0, 0.05), (3.0, 0.07), (3.0, 0.10)]),
        Room::Seasonal => (0.50, [(4.0, 0.08), (5.0, 0.12), (6.0, 0.25)]),
        Room::Damp => (0.65, [(4.0, 0.08), (5.0, 0.12), (5.0, 0.20)]),
        Room::Dry => (0.35, [(4.0, 0.06), (5.0, 0.10), (5.0, 0.15)]),
        Room::Travelling => (0.50, [(8.0, 0.15), (10.0, 0.25), (10.0, 0.30)]),
    }
}

/// How long a string goes untuned: who tunes at every playing lives with the evening.
#[must_use]
pub const fn untuned(who_tunes: Option<WhoTunes>) -> Untuned {
    match who_tunes {
        Some(WhoTunes::Nobody) => Untuned::Week,
        Some(WhoTunes::Player | WhoTunes::Adult) | None => Untuned::Evening,
    }
}

/// Turns of the button for one of the shaft.
#[must_use]
pub const fn gear_of(pegs: Pegs) -> f64 {
    match pegs {
        Pegs::Friction => 1.0,
        Pegs::Geared => 4.0,
        Pegs::Machine => 20.0,
    }
}

/// By which ratio a whole step of the wish for colour moves the stretch that is looked for. A judgement of scale.
const STRETCH_OF_A_STEP: f64 = 1.5;
/// Where in the usual tension an old or light instrument is aimed, 0 to 1: below the middle. A judgement.
const PULL_OF_LIGHT: f64 = 0.3;
/// How far to either side of the middle of the usual tension a target follows today's string. A judgement.
const PULL_FOLLOWS: f64 = 0.3;

/// How far a whole step of the wish for brightness reaches, from dark (0) to bright (1). A judgement of scale.
const SHADE_OF_A_STEP: f64 = 0.15;

impl StringProblem {
    /// Where between dark (0) and bright (1) the wish lies.
    #[must_use]
    pub fn brightness_target(&self) -> f64 {
        self.usual_brightness + self.brightness_shift
    }

    /// The brightness that is looked for.
    #[must_use]
    pub fn sought_brightness(&self) -> Target {
        Target::wished(self.brightness_target(), 1.0, self.brightness_shift / SHADE_OF_A_STEP)
    }

    /// The stretch at pitch that is looked for, by its logarithm.
    #[must_use]
    pub fn sought_stretch(&self) -> Target {
        let target = libm::log(self.usual_stretch) + self.stretch_shift;
        let steps = self.stretch_shift / libm::log(STRETCH_OF_A_STEP);
        Target::wished(target, 1.0 / libm::log(desirability::STRETCH_REACH), steps)
    }

    /// Counts wishes from a string of that brightness, stretch and tension, newtons.
    pub fn count_from(&mut self, brightness: f64, stretch: f64, tension: f64) {
        let (low, high) = self.usual_tension;
        let pull = (tension - low) / (high - low);
        self.count_from_like(
            brightness,
            stretch,
            pull.clamp(0.5 - PULL_FOLLOWS, 0.5 + PULL_FOLLOWS),
        );
    }

    /// The same where it is known how far up the usual tension the string lies, 0 to 1.
    pub fn count_from_like(&mut self, brightness: f64, stretch: f64, pull: f64) {
        let (low, high) = self.usual_tension;
        let by = (pull - self.usual_pull) * (high - low);
        let ends = &mut self.ends;
        for target in [&mut ends.tension_target, &mut ends.power_target] {
            *target = (*target + by).clamp(low, high);
        }
        (self.usual_brightness, self.usual_stretch, self.usual_pull) = (brightness, stretch, pull);
    }
}

/// Total tension above today's at which an old or light instrument needs a luthier's look.
pub const LIGHT_LOAD_SHARE: f64 = 0.5;

struct Taken(Vec<Assumed>);

impl Taken {
    fn or<T>(
        &mut self,
        field: &'static str,
        answer: Option<T>,
        default: T,
        name: impl FnOnce(&T) -> String,
    ) -> T {
        answer.unwrap_or_else(|| {
            self.0.push(Assumed { field, value: name(&default) });
            default
        })
    }
}

/// What the strings have in common, each answer given or taken for granted.
struct Common {
    kind: &'static Kind,
    size: &'static Size,
    tuning: &'static Tuning,
    set_up: SetUp,
    a4: Hertz,
    temperament: Temperament,
    room: Room,
    untuned: Untuned,
    pegs: Pegs,
    tuners: Tuners,
    length: Metre,
    length_doubt: Metre,
    /// The highest pitch at which the strings are used, over the main one.
    highest: f64,
}

impl Common {
    fn of(answers: &Answers, taken: &mut Taken) -> Self {
        let kind =
            taken.or("instrument", answers.instrument, &instrument::VIOLIN, |k| k.name.to_owned());
        let size = taken.or("size", answers.size, &kind.sizes[0], |s| s.key.to_owned());
        let tuning = taken.or("tuning", answers.tuning, &kind.tunings[0], |t| t.name.to_owned());
        let set_up = taken.or("set_up", answers.set_up, defaults::SET_UP, |s| s.key().to_owned());
        let usual_a4 = defaults::a4(set_up, answers.music);
        let a4 = taken.or("a4_hz", answers.a4, usual_a4, |a| format!("{} Hz", a.get()));
        let room = taken.or("room", answers.room, defaults::ROOM, |r| r.key().to_owned());
        let pegs = taken.or("pegs", answers.pegs, defaults::pegs(kind), |p| p.key().to_owned());
        let usual_tuners = defaults::tuners(kind, set_up, size);
        let tuners = taken.or("tuners", answers.tuners, usual_tuners, |t| t.key().to_owned());
        let length = taken.or("sounding_length_m", answers.sounding_length, size.length(), |l| {
            format!("{:.0} mm", l.mm())
        });
        let measured = Metre::new(0.0005);
        Self {
            kind,
            size,
            tuning,
            set_up,
            a4,
            temperament: answers.temperament.unwrap_or(defaults::TEMPERAMENT),
            room,
            untuned: untuned(answers.who_tunes),
            pegs,
            tuners,
            length,
            length_doubt: answers.sounding_length.map_or(size.length_doubt(), |_| measured),
            highest: highest(&answers.also_tuned, a4),
        }
    }

    /// Where the string of that pitch works; over an extension it is longer.
    fn setting(&self, pitch: Hertz, is_extended: bool) -> Setting {
        let Self { kind, length, .. } = *self;
        let extra = if is_extended { instrument::EXTENSION * length.get() } else { 0.0 };
        let (humidity, swings) = room_of(self.room);
        Setting {
            sounding_length: length,
            sounding_length_doubt: self.length_doubt,
            afterlength: Metre::new(length.get() * instrument::AFTERLENGTH_SHARE),
            nut_to_peg: Metre::new(kind.nut_to_peg + extra),
            pitch,
            angle_over_bridge: Degree::new(kind.angle),
            peg_diameter: Metre::new(kind.peg),
            gear_ratio: Ratio::new(gear_of(self.pegs)),
            string_height: Metre::new(kind.height * length.get() / kind.full_length),
            nut_radius: Metre::new(kind.nut_radius),
            bridge_resistance: KilogramPerSecond::new(kind.resistance.0),
            peak_resistance: KilogramPerSecond::new(kind.resistance.1),
            body: body::skeleton(kind.key),
            temperature: Celsius::new(20.0),
            humidity: Ratio::new(humidity),
            swings: swings.map(|(temperature, humidity)| Swing {
                temperature,
                humidity: Ratio::new(humidity),
            }),
            untuned: self.untuned,
        }
    }

    /// Whether a string is tuned away from the note of its position.
    fn is_retuned(&self, answers: &Answers, i: usize) -> bool {
        let (tuned, position) = self.tuning.strings[i];
        let usual = precedent::position_of(position).map(|position| Note::parse(position.note));
        let note = answers.strings.get(i).and_then(|own| own.note).or_else(|| Note::parse(tuned));
        usual.is_some_and(|usual| usual != note)
    }

    /// Whether it is only about the strings that are tuned away from their note: whoever is content with what is on it, and
    /// retunes some of it sometimes, changes no more than those. Who asks for a whole set gets one.
    ///
    /// Common practice, no source.
    fn is_only_retuned(&self, answers: &Answers) -> bool {
        let is_content = answers.wishes == Wishes::default()
            && answers.bothers.is_empty()
            && answers.strings.iter().all(|own| own.bothers.is_empty() && own.family.is_none());
        let mut strings = 0..self.tuning.strings.len();
        answers.tuned_so == Some(TunedSo::Sometimes)
            && answers.aim.is_none()
            && answers.now.is_some()
            && is_content
            && strings.clone().any(|i| self.is_retuned(answers, i))
            && strings.any(|i| !self.is_retuned(answers, i))
    }

    /// The string that is `i`th in the tuning.
    fn string(&self, answers: &Answers, i: usize) -> Option<StringProblem> {
        let own = answers.strings.get(i).cloned().unwrap_or_default();
        let (note, position) = self.tuning.strings[i];
        let (tuned, position) = (Note::parse(note)?, precedent::position_of(position)?);
        let note = own.note.unwrap_or(tuned);
        let pitch = instrument::frequency(note, self.a4, self.temperament);
        let is_lowest = i + 1 == self.tuning.strings.len();
        let setting = self.setting(pitch, self.tuning.extension && is_lowest);
        let Self { kind, size, length, set_up, highest, .. } = *self;
        let gut_to_its_limit = answers.gut_to_its_limit;
        // A set made for an unusual tuning is lighter or heavier; one that is retuned is pulled up or down with it.
        let usual =
            Note::parse(position.note).filter(|_| answers.tuned_so == Some(TunedSo::ForGood));
        let made_for = usual.map_or(pitch, |usual| usual.frequency(self.a4));
        let conditions = Conditions {
            kind,
            size,
            length,
            set_up,
            pitch: made_for,
            gut_to_its_limit,
            highest,
            most_tension: own.most_tension,
        };
        let stays = self.is_only_retuned(answers) && !self.is_retuned(answers, i);
        let wishes = weights::wishes(answers, Some(i));
        let usual_tension = precedent::usual_tension(position, &conditions);
        let usual_pull = if set_up == SetUp::Light { PULL_OF_LIGHT } else { 0.5 };
        Some(StringProblem {
            position,
            note,
            setting,
            conditions,
            family: own.family,
            usual_tension,
            usual_brightness: 0.5,
            usual_stretch: 0.01,
            usual_pull,
            ends: ends((usual_tension, usual_pull), &setting, &wishes, answers.hand_pain),
            fine_tuner: match self.tuners {
                Tuners::None => false,
                Tuners::Top => i == 0,
                Tuners::All => true,
            },
            brightness_shift: SHADE_OF_A_STEP * wishes.brightness,
            stretch_shift: libm::log(STRETCH_OF_A_STEP) * wishes.colour,
            now: own.today,
            bothers: own.bothers,
            flaws: Vec::new(),
            standing: if own.keep || stays { StringStatus::Kept } else { StringStatus::Open },
            settled_by: answers.concert_days.filter(|_| answers.must_settle).map(Day::new),
        })
    }
}

/// Turns answers into a problem; missing ones get the most usual answer and a wider range.
#[must_use]
pub fn pose(answers: &Answers) -> Problem {
    let mut taken = Taken(Vec::new());
    let common = Common::of(answers, &mut taken);
    let Common { kind, size, tuning, set_up, a4, temperament, room, highest, .. } = common;
    let about = about(answers, tuning.strings.len());
    let wishes = weights::wishes(answers, about.filter(|_| answers.aim == Some(Aim::OneString)));
    let strings: Vec<StringProblem> =
        (0..tuning.strings.len()).filter_map(|i| common.string(answers, i)).collect();
    let usual_load = usual_load(kind, common.length, set_up, &strings);
    let most_load = match set_up {
        SetUp::Light => usual_load.0 + LIGHT_LOAD_SHARE * (usual_load.1 - usual_load.0),
        SetUp::Modern | SetUp::Historical => usual_load.1,
    };
    // Tension goes with the square of pitch, and what must hold is held at the highest.
    let most_load = answers.most_load_n.map_or(most_load, |most| most.min(most_load));
    let most_load = most_load / (highest * highest);
    let (weights, weight_steps) = weigh(answers, &wishes, room, set_up);
    Problem {
        aim: answers.aim.unwrap_or(defaults::AIM),
        about,
        only_retuned: common.is_only_retuned(answers),
        kind,
        size,
        tuning,
        set_up,
        a4,
        temperament,
        strings,
        usual_load,
        most_load,
        weights,
        weight_steps,
        brightness_shift: SHADE_OF_A_STEP * wishes.brightness,
        price_wish: match answers.budget.unwrap_or(defaults::BUDGET) {
            Budget::Modest => 1,
            Budget::Any => 4,
            Budget::Middle => 3,
        },
        animal_free: answers.animal_free,
        nickel_free: answers.nickel_allergy,
        magnetic: answers.amplified == Some(Amplified::Magnet),
        ring_short: answers.ring == Some(Ring::Short),
        acid_sweat: answers.acid_sweat,
        concert_days: answers.concert_days,
        highest,
        room,
        who_tunes: answers.who_tunes,
        level: answers.level,
        wishes_change: answers.wishes != Wishes::default() || answers.ring.is_some(),
        now: answers.now,
        age_months: answers.age_months,
        bothers: answers.bothers.clone(),
        assumed: taken.0,
        for_a_child: size.fraction || answers.level == Some(Level::Beginner),
        tradition: kinds::tradition(answers, set_up, size),
        kinds: Vec::new(),
    }
}

/// Which string the person means: the first that bothers by itself or has to be of some kind, or the only one that
/// does not stay, or the only one of which it is said how old it is.
fn about(answers: &Answers, count: usize) -> Option<usize> {
    let all =
        || answers.strings.iter().enumerate().filter(|(i, string)| *i < count && !string.keep);
    if let Some((i, _)) =
        all().find(|(_, string)| !string.bothers.is_empty() || string.family.is_some())
    {
        return Some(i);
    }
    let only = |mut some: Vec<usize>| if some.len() == 1 { some.pop() } else { None };
    let stays = |i: usize| answers.strings.get(i).is_some_and(|string| string.keep);
    only((0..count).filter(|i| !stays(*i)).collect()).or_else(|| {
        only(all().filter(|(_, s)| s.today.age_months.is_some()).map(|(i, _)| i).collect())
    })
}

/// The highest pitch at which the strings are used, over the main one.
fn highest(also_tuned: &[AlsoTuned], a4: Hertz) -> f64 {
    also_tuned.iter().fold(1.0, |highest: f64, tuned| {
        let standard = tuned.a4.unwrap_or(a4).get() / a4.get();
        highest.max(standard * libm::exp2(tuned.semitones / 12.0))
    })
}

fn ends(
    (usual, pull): ((f64, f64), f64),
    setting: &Setting,
    wishes: &Wishes,
    hand_pain: bool,
) -> Ends {
    let width = usual.1 - usual.0;
    let low = usual.0 - desirability::TARGET_REACH * width;
    let high = usual.1 + desirability::TARGET_REACH * width;
    let lf2 = 2.0 * setting.sounding_length.get() * setting.pitch.get();
    let bridge_load = answer_to_bow::bridge_load(setting);
    let speaks = |tension: f64, twist: f64| {
        let z = tension / lf2;
        libm::exp(BowResponse::new(&bridge_load, (libm::log(z), z), twist, 0.0).response())
    };
    let feel = if hand_pain { wishes.feel.min(-1.0) } else { wishes.feel };
    Ends {
        tension_low: low,
        tension_target: usual.0 + width * (pull + 0.2 * feel),
        power_target: usual.0 + width * (pull + 0.2 * wishes.power),
        tension_high: high,
        impedance_per_tension: 1.0 / lf2,
        speaks: (
            speaks(high, answer_to_bow::LEAST_TWIST_IN_SPEAKING),
            speaks(low.max(0.3 * usual.0), 0.0),
        ),
    }
}

fn usual_load(kind: &Kind, length: Metre, set_up: SetUp, strings: &[StringProblem]) -> (f64, f64) {
    let scale = precedent::length_factor(kind, length) * strings.len() as f64 / 4.0;
    // A pitch standard above or below 440 Hz moves the load as it moves the bands.
    let pitch = strings
        .first()
        .map_or(1.0, |s| precedent::pitch_factor(s.position, s.setting.pitch))
        .max(1.0);
    let (low, high) = match set_up {
        SetUp::Historical => precedent::HISTORICAL_TENSION,
        SetUp::Modern | SetUp::Light => (1.0, 1.0),
    };
    (kind.usual_load.0 * scale * low, kind.usual_load.1 * scale * high * pitch)
}
