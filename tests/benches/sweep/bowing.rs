//! Notes and pieces that are timed natively and in a JavaScript engine alike.

use strings::construction::Construction;
use strings::fit::answers::Answers;
use strings::fit::{self, choose};
use strings::instrument::{self, Kind};
use strings::setting::Setting;
use strings::simulate::level;
use strings::simulate::map::{AttackMap, PlaceMap, Row};
use strings::simulate::sound::{self, Piece};
use strings::simulate::{Body, Gesture, Law, Sounding, Strung, note};

/// Seconds of the one note.
pub(crate) const SECONDS: f64 = 2.0;
/// Notes that stand for a map: as many as a row has.
pub(crate) const NOTES: u32 = 24;
/// Where the bow stands, a share of the length from the bridge.
const PLACE: f64 = 0.1;

/// The set that is chosen for an instrument of which nothing is known, and one string of it under the bow.
pub(crate) struct Bowing {
    kind: &'static Kind,
    strings: Vec<(Construction, Setting)>,
    law: Law,
    gestures: Vec<Gesture>,
    places: PlaceMap,
    attacks: AttackMap,
    /// The string at the steps that the law of friction wants.
    pub(crate) strung: Strung,
}

impl Bowing {
    /// The A of a violin or the E of a double bass, under the law of temperature or that of speed.
    ///
    /// # Panics
    /// If no set was found, which a default fit never says.
    #[must_use]
    pub(crate) fn new(bass: bool, warm: bool) -> Self {
        let (kind, position) =
            if bass { (&instrument::DOUBLE_BASS, 3) } else { (&instrument::VIOLIN, 1) };
        let fitting = fit::fit(&Answers { instrument: Some(kind), ..Answers::default() });
        let choose::Outcome::Set { best, .. } = &fitting.outcome else {
            panic!("there is no set for a {}", kind.key)
        };
        let strings: Vec<(Construction, Setting)> = best
            .strings
            .iter()
            .zip(&fitting.problem.strings)
            .map(|(choice, string)| (choice.construction, string.setting))
            .collect();
        let (construction, setting) = &strings[position];
        let string = Sounding::of(construction, setting);
        let body = Body::generic(kind, setting);
        let law = if warm { Law::Thermal } else { Law::Hyperbolic };
        let strung = Strung::new(&string, &body, string.rate(PLACE, law));
        let (resistance, count) = (setting.bridge_resistance.get(), NOTES as usize);
        let places = PlaceMap::usual(string.clone(), body.clone(), resistance, 0.1, count);
        let attacks = AttackMap::usual(string, body, PLACE, count);
        let gestures =
            places.forces.iter().map(|force| Gesture::steady(0.1, *force, PLACE)).collect();
        Self { kind, strings, law, gestures, places, attacks, strung }
    }

    /// One note of [`SECONDS`]: the last force on the bridge, N.
    #[must_use]
    pub(crate) fn one(&self) -> f64 {
        let gesture = &self.gestures[NOTES as usize / 2];
        let note = note::bowed(&self.strung, self.law, gesture, SECONDS);
        note.bridge_force.last().copied().unwrap_or_default()
    }

    /// A row of [`NOTES`] notes, side by side or one after the other: the sum of the shares of slipping.
    #[must_use]
    pub(crate) fn row(&self, lanes: bool) -> f64 {
        let judged = if lanes { note::judged } else { note::judged_alone };
        let notes = judged(&self.strung, self.law, &self.gestures, Some(0.1));
        notes.iter().map(|note| note.slip_share).sum()
    }

    /// A whole map of [`NOTES`] by [`NOTES`] notes, of starts or of places: the sum of the shares of slipping.
    #[must_use]
    pub(crate) fn map(&self, of_starts: bool) -> f64 {
        let sum = |row: Row| row.cells.iter().map(|note| note.slip_share).sum::<f64>();
        if of_starts {
            self.attacks.rows().map(sum).sum()
        } else {
            self.places.rows().map(sum).sum()
        }
    }

    /// A piece on the whole set: seconds that it lasts.
    #[must_use]
    pub(crate) fn piece(&self, piece: Piece) -> f64 {
        let sound = sound::play(self.kind, &self.strings, piece, sound::LOUDNESS);
        sound.samples.len() as f64 / level::RATE as f64
    }
}
