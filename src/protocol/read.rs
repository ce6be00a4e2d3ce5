//! Reads replies and saved files out of one tree of JSON.
//!
//! The page reads what the model says, and waits for its own bytes. A reader that serde derives is compiled anew for
//! every type, and each of its steps may end it, so that each carries the undoing of all before it: a fifth of the page.
//! Here a type is a list of its members, which the compiler holds to the type, and a step is a call. What cannot be
//! read leaves nothing in its place, the first such place is kept, and a reply is handed over only if there is none.

use std::collections::BTreeMap;
use std::error::Error;
use std::fmt;
use std::ptr;
use std::rc::Rc;

use serde_json::Value;

use crate::document::{Document, Fitting, KeptString, Typed};
#[allow(
    clippy::wildcard_imports,
    reason = "the types of a reply, every one of which is listed"
)]
use crate::reply::*;
use crate::request::{
    AlsoTuned, Answers, Construction, Core, Setting, StringAnswer, Today, Winding, Wishes,
};

/// Why a text could not be read: the place, and what is wrong with it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unread(String);

impl fmt::Display for Unread {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl Error for Unread {}

/// Reads a tree.
pub(crate) fn tree<T: Read>(value: &Value) -> Result<T, Unread> {
    let mut reader = Reader::of(value);
    let read = T::read(value, &mut reader);
    reader.end().map(|()| read)
}

/// Parses a text of JSON.
pub(crate) fn parsed(text: &str) -> Result<Value, Unread> {
    serde_json::from_str(text).map_err(|e| Unread(e.to_string()))
}

/// Stands where a member is left out.
static NOTHING: Value = Value::Null;

/// Goes through a tree and keeps the first fault.
pub(crate) struct Reader<'a> {
    whole: &'a Value,
    /// The member that was taken last, and of what.
    taken: (&'a Value, &'static str),
    fault: Option<Unread>,
}

impl<'a> Reader<'a> {
    fn of(whole: &'a Value) -> Self {
        Self { whole, taken: (whole, ""), fault: None }
    }

    fn end(self) -> Result<(), Unread> {
        self.fault.map_or(Ok(()), Err)
    }

    /// A member that must be there.
    fn member(&mut self, of: &'a Value, name: &'static str) -> &'a Value {
        match of {
            Value::Object(members) => {
                self.taken = (of, name);
                members.get(name).unwrap_or(&NOTHING)
            }
            _ => {
                self.not(of, "an object");
                &NOTHING
            }
        }
    }

    /// A member that may be left out.
    fn optional(&mut self, of: &'a Value, name: &'static str) -> Option<&'a Value> {
        let member = self.member(of, name);
        (!ptr::eq(member, &raw const NOTHING)).then_some(member)
    }

    /// Nothing else stands here than members of these names.
    fn closed(&mut self, of: &'a Value, names: &[&str]) {
        let Value::Object(members) = of else { return };
        if let Some(name) = members.keys().find(|name| !names.contains(&name.as_str())) {
            self.fault(of, &format!(".{name}"), "is not known");
        }
    }

    /// Keeps that a value is not what it should be.
    fn not(&mut self, value: &'a Value, wanted: &str) {
        if ptr::eq(value, &raw const NOTHING) {
            let (of, name) = self.taken;
            self.fault(of, &format!(".{name}"), "is missing");
        } else {
            self.fault(value, "", &format!("is not {wanted}"));
        }
    }

    /// Keeps a fault, if it is the first. Only then is its place sought, so that nobody counts steps on the way.
    fn fault(&mut self, value: &'a Value, within: &str, what: &str) {
        if self.fault.is_none() {
            let mut place = String::new();
            find(self.whole, value, &mut place);
            place += within;
            self.fault = Some(Unread(format!("{} {what}", place.trim_start_matches('.'))));
        }
    }

    fn text(&mut self, value: &'a Value) -> &'a str {
        value.as_str().unwrap_or_else(|| {
            self.not(value, "a text");
            ""
        })
    }

    fn number(&mut self, value: &'a Value) -> f64 {
        value.as_f64().unwrap_or_else(|| {
            self.not(value, "a number");
            0.0
        })
    }

    fn count(&mut self, value: &'a Value) -> u64 {
        value.as_u64().unwrap_or_else(|| {
            self.not(value, "a count");
            0
        })
    }

    fn list(&mut self, value: &'a Value) -> &'a [Value] {
        value.as_array().map(Vec::as_slice).unwrap_or_else(|| {
            self.not(value, "a list");
            &[]
        })
    }
}

/// Writes where a value stands in a tree, and says whether it does.
fn find(tree: &Value, value: &Value, place: &mut String) -> bool {
    let length = place.len();
    let mut within = |step: &str, part| {
        *place += step;
        let found = find(part, value, place);
        if !found {
            place.truncate(length);
        }
        found
    };
    ptr::eq(tree, value)
        || match tree {
            Value::Object(members) => {
                members.iter().any(|(name, member)| within(&format!(".{name}"), member))
            }
            Value::Array(list) => {
                list.iter().enumerate().any(|(i, entry)| within(&format!("[{i}]"), entry))
            }
            _ => false,
        }
}

/// A type that is read out of a tree.
pub(crate) trait Read: Sized {
    /// What stands in `value`; where it is something else, the reader keeps the fault, and this is of no use.
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self;
}

impl Read for String {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        reader.text(value).to_owned()
    }
}

impl Read for f64 {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        reader.number(value)
    }
}

impl Read for f32 {
    #[expect(clippy::cast_possible_truncation, reason = "a sample was written from one")]
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        reader.number(value) as Self
    }
}

impl Read for u64 {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        reader.count(value)
    }
}

macro_rules! read_counts {
    ($($count:ty),+) => {$(
        impl Read for $count {
            fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
                Self::try_from(reader.count(value)).unwrap_or_else(|_| {
                    reader.not(value, "so small a count");
                    0
                })
            }
        }
    )+};
}

read_counts!(u32, usize);

impl Read for bool {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        value.as_bool().unwrap_or_else(|| {
            reader.not(value, "true or false");
            false
        })
    }
}

impl<T: Read> Read for Option<T> {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        (!value.is_null()).then(|| T::read(value, reader))
    }
}

impl<T: Read> Read for Box<T> {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        Self::new(T::read(value, reader))
    }
}

impl<T: Read> Read for Rc<T> {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        Self::new(T::read(value, reader))
    }
}

impl<T: Read> Read for Vec<T> {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        reader.list(value).iter().map(|entry| T::read(entry, reader)).collect()
    }
}

impl Read for (f64, f64) {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        if let [first, second] = reader.list(value) {
            return (reader.number(first), reader.number(second));
        }
        reader.not(value, "a pair");
        (0.0, 0.0)
    }
}

impl<T: Read> Read for BTreeMap<String, T> {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        let Value::Object(members) = value else {
            reader.not(value, "an object");
            return Self::new();
        };
        // One by one: to collect them would sort them first, by a sort compiled for each type.
        let mut table = Self::new();
        for (name, member) in members {
            table.insert(name.clone(), T::read(member, reader));
        }
        table
    }
}

impl Read for AnswerValue {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        match value {
            Value::Bool(flag) => Self::Flag(*flag),
            Value::Number(_) => Self::Number(reader.number(value)),
            Value::String(word) => Self::Word(word.clone()),
            Value::Null if !ptr::eq(value, &raw const NOTHING) => Self::Nothing,
            _ => {
                reader.not(value, "a number, a word, true, false or null");
                Self::Nothing
            }
        }
    }
}

impl Reply {
    /// Reads a reply from its text.
    ///
    /// # Errors
    /// When the text is no reply of this build; the error names the place.
    pub fn read(text: &str) -> Result<Self, Unread> {
        let tree = parsed(text)?;
        let mut reader = Reader::of(&tree);
        let name = reader.member(&tree, "reply");
        let r = &mut reader;
        let reply = match r.text(name) {
            "report" => Self::Report(Read::read(&tree, r)),
            "compare" => Self::Compare(Read::read(&tree, r)),
            "stretch" => Self::Stretch(Read::read(&tree, r)),
            "year" => Self::Year(Read::read(&tree, r)),
            "place" => Self::Place(Read::read(&tree, r)),
            "fit" => Self::Fit(Read::read(&tree, r)),
            "certainty" => Self::Certainty(Read::read(&tree, r)),
            "tables" => Self::Tables(Read::read(&tree, r)),
            "bow-map" => Self::BowMap(Read::read(&tree, r)),
            "sound" => Self::Sound(Read::read(&tree, r)),
            "refused" => Self::Refused(Read::read(&tree, r)),
            _ => {
                r.not(name, "the name of a reply");
                Self::Refused(Refused { faults: Vec::new() })
            }
        };
        reader.end().map(|()| reply)
    }
}

/// Types that are objects, by their members: those that must be there, and after a semicolon those that may be left out.
/// A type marked `closed` takes no other members.
macro_rules! read_members {
    () => {};
    (closed $name:ident { $($optional:ident),* } $($rest:tt)*) => {
        impl Read for $name {
            fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
                reader.closed(value, &[$(stringify!($optional)),*]);
                Self {
                    $($optional: reader
                        .optional(value, stringify!($optional))
                        .map(|member| Read::read(member, reader))
                        .unwrap_or_default(),)*
                }
            }
        }
        read_members!($($rest)*);
    };
    ($name:ident { $($member:ident),* $(; $($optional:ident),*)? } $($rest:tt)*) => {
        impl Read for $name {
            fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
                Self {
                    $($member: Read::read(reader.member(value, stringify!($member)), reader),)*
                    $($($optional: reader
                        .optional(value, stringify!($optional))
                        .map(|member| Read::read(member, reader))
                        .unwrap_or_default(),)*)?
                }
            }
        }
        read_members!($($rest)*);
    };
}

// What the model says.
read_members! {
    Refused { faults }
    Fault { field, value, allowed, range, message }
    Quantity { value, low, high, evidence, source, unknown }
    Report { construction, setting, family, numbers, partials, nights, doubts, caveats }
    Partial {
        n, frequency_hz, sharpness_cent, loss_air, loss_string, loss_bending, loss_bridge, q,
        ring_s, most
    }
    Night { day, lost_cent, chance }
    Doubt { owner, which, share }
    Compare { this, other, comparisons }
    Fit { problem, set, obstacles, verdict }
    Verdict { answer, string, because, findings }
    Finding { bother, string, causes }
    Cause { cause, likely, judged, numbers, look }
    CauseNumber { property, string, value, low, high, limit }
    Problem {
        instrument, instrument_name, size, tuning, tuning_name, set_up, a4_hz, temperament,
        usual_load_n, most_load_n, assumed, weights, brightness_shift, concert_days, highest_ratio,
        now
    }
    Assumed { field, value }
    Weight { attribute, base, weight, steps }
    WeightStep { factor, because }
    Obstacle { string, note, limits, lightest_n, most_n, relax }
    LimitCount { limit, count }
    Set {
        strings, total_tension_n, downforce_n, steps, worth, runner_up, lead, close_call, searched,
        proven, optimality_gap, plan
    }
    Range { value, low, high }
    Searched { space, wound, inside, judged }
    Step { tension_ratio, usual_ratio, impedance_ratio, term }
    RunnerUp { strings, shopping, worth }
    FittedString {
        standing, note, position, report, grade, bands, usual_tension_n, brightness,
        usual_brightness, brightness_target, score, attributes, rival, reasons, costs, changes,
        today, shopping, picture, chosen_point, today_point, fine_tuner
    }
    Bands { tension_n, gauge_m, stretch, winding_mass_share, breaking_share }
    AttributeWorth { attribute, desirability, weight, property }
    Reason { attribute, judged, gain, comparison, worth, rival_worth }
    Comparison { property, this, other, verdict, chance_above, chance_below }
    Shopping {
        family, core_material, outer_metal, gauge_class, tension_n, pitch_hz, sounding_length_m,
        end, extension
    }
    Point { family, stretch, steadiness, settling_d, drift_cent, fitters_judgement }
    Plan { fit_before_d, settled_d, checks, cautions }
    Caution { caution, string }
    Tables {
        instruments, core_materials, winding_metals, constants, answer_spreads, precedents, words,
        bounds, base_weights, sources, properties, unverified
    }
    FittedTo { ranks, ranks_at_one_place, misses, misses_at_one_place }
    Unverified { formula, why }
    Instrument {
        key, name, full_length_m, angle_over_bridge_deg, nut_to_peg_m, peg_diameter_m,
        string_height_m, nut_radius_m, bridge_resistance_kg_s, usual_load_n, sizes, tunings
    }
    Size { key, sounding_length_m, range_m, fraction }
    Tuning { key, name, notes, positions, extension }
    Constant { value, low, high, unit, at, evidence, source }
    CoreMaterial { key, name, class, constants, fast_slope, climate_judgement, animal }
    WindingMetal { key, name, density, modulus, nickel_free, outer }
    Precedent {
        position, note, usual_tension_n, brilliance_hz, family, grade, tension_n, gauge_m, stretch,
        winding_mass_share, breaking_share
    }
    Bound { what, min, max, unit }
    Source { key, authors, title, place, remark }
    PropertyEntry { key, evidence, source, fitted }
    Stretch { pull_m, strings }
    Stretched {
        whole_length_m, slack_m, stretch, tension_n, above_cent, pitch_hz, core_diameter_m,
        outer_diameter_m, breaking_share
    }
    Year { strings }
    Drifting { months }
    MonthDrift { month, temperature_c, humidity, above_cent }
    Place { notes, string, setting, families }
    FamilyAtPlace { grade, report }
    Certainty { worlds, chosen, second, next, strings, turning_points, tried, turned }
    SureShare { share, error, word }
    NextFamilies { families, share }
    SureString { family, gauge_class, families, gauge_classes }
    KeyShare { key, share, error }
    TurningPointTold { answer, from, holds_at, turns_at, strings }
    TurnedString { string, family, family_then, gauge_class, gauge_class_then }
    BowMap { map, forces_n, at, rows, window }
    BowRow { row, least_n, greatest_n, cells }
    BowCell { regime, periods, cents }
    BowWindow { least_n, greatest_n, width_db }
    Sound { rate_hz, samples, loudness_lufs, natural_lufs, peak, clean }
    Construction { core, windings }
    Core { material, build, diameter_m, layout, lay_deg, filament_m, fill, twist_deg }
    Winding { metal, form, thickness_m, bedding, gap }
    Setting {
        sounding_length_m, pitch_hz, sounding_length_doubt_m, afterlength_m, nut_to_peg_m,
        angle_over_bridge_deg, peg_diameter_m, gear_ratio, string_height_m, nut_radius_m,
        bridge_resistance_kg_s, peak_resistance_kg_s, body, temperature_c, humidity,
        temperature_swing_k, humidity_swing
    }
}

// What a person answered, as it is kept.
read_members! {
    Document { format, version; label, answers, typed, fittings }
    Fitting { at, answers; label, summary, strings, typed, invented }
    Typed { text; unit }
    KeptString { note, standing, family, gauge_class, tension_n }
    closed Answers {
        aim, instrument, size, sounding_length_m, tuning, a4_hz, also_tuned, temperament, strings,
        set_up, now, age_months, bothers, wishes, music, level, pegs, tuners, who_tunes, room,
        concert_days, must_settle, budget, nickel_allergy, acid_sweat, animal_free, magnetic_pickup,
        hand_pain, gut_to_its_limit, weights
    }
    closed StringAnswer { note, family, today, bothers, keep }
    closed Today { family, gauge_class, outer_metal, age_months }
    closed AlsoTuned { a4_hz, semitones }
    closed Wishes { colour, brightness, power, feel, response }
}
