//! The kinds of set as they are asked for, and how usual each is.
//!
//! A shop sells sets, not four strings chosen one by one: steel over synthetics, gut throughout, all stranded. A kind says
//! which cores stand where; within it the wound strings are of one core material. How many players of a tradition
//! have it is common practice, no source, estimated in round numbers.

use crate::construction::CoreType::{
    self, MiddleSynthetic, PlainGut, PlainSteel, SoftSynthetic, StiffSynthetic, StrandedSteel,
    WoundGut, WoundSteel,
};
use crate::construction::CoreTypes;
use crate::instrument::Kind;
use crate::material::Class::{self, Gut, Polymer, Steel};

use super::Position;

words! {
    /// What a player plays, by what is usual in it.
    Tradition {
        /// Orchestra, chamber music, recitals.
        Classical = "classical",
        /// Early music, on a historical set-up or at its pitch.
        Early = "early",
        /// Fiddle and dance.
        Folk = "folk",
        /// Jazz, and whatever is mostly plucked.
        Jazz = "jazz",
        /// School and loan instruments, and small sizes.
        School = "school",
        /// Amplified by a magnet or at the bridge.
        Amplified = "amplified",
        /// Jazz plucked on the bass with a short note.
        Thump = "thump",
        /// The bass slapped, in dance and country music.
        Slap = "slap",
    }
}

/// Cores at some positions.
type At = (&'static [&'static str], &'static [CoreType]);

/// A kind of set.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SetKind {
    /// The key by which replies name it; with the instrument it is unique.
    pub key: &'static str,
    /// Key of the instrument.
    pub instrument: &'static str,
    /// What most of its cores are.
    pub class: Class,
    /// Which cores stand where.
    at: &'static [At],
    /// How many of a hundred players have it, in the order of [`Tradition::ALL`].
    pub usual: [f64; Tradition::ALL.len()],
}

impl SetKind {
    /// The kinds of an instrument.
    pub fn all_of(kind: &Kind) -> impl Iterator<Item = &'static Self> {
        KINDS.iter().filter(|set| set.instrument == kind.key)
    }

    /// Which cores it has at a position. Where none of them is made for any instrument, those of its class that are made
    /// there, or else whatever is: a set of synthetics has a steel top string.
    #[must_use]
    pub fn cores_at(&self, position: &Position) -> CoreTypes {
        let made = |core: CoreType| position.rows.iter().any(|row| row.family == core.family());
        let listed = self.at.iter().find(|(keys, _)| keys.contains(&position.key));
        let listed = listed.map_or(&[] as &[CoreType], |(_, cores)| cores);
        let own = CoreTypes::that(|core| made(core) && listed.contains(&core));
        let of_class = CoreTypes::that(|core| made(core) && core.family().class() == self.class);
        [own, of_class].into_iter().find(|cores| !cores.is_empty()).unwrap_or(CoreTypes::ALL)
    }

    /// How many of a hundred players of a tradition have it.
    #[must_use]
    pub const fn usual_in(&self, tradition: Tradition) -> f64 {
        self.usual[tradition as usize]
    }
}

const VIOLIN_E: &[&str] = &["violin-e"];
const VIOLIN_A_D: &[&str] = &["violin-a", "violin-d"];
const VIOLIN_LOW: &[&str] = &["violin-g", "violin-c"];
const VIOLIN_UNDER_E: &[&str] = &["violin-a", "violin-d", "violin-g", "violin-c"];
const VIOLA: &[&str] = &["viola-a", "viola-d", "viola-g", "viola-c"];
const VIOLA_A: &[&str] = &["viola-a"];
const VIOLA_A_D: &[&str] = &["viola-a", "viola-d"];
const VIOLA_D_G: &[&str] = &["viola-d", "viola-g"];
const VIOLA_UNDER_A: &[&str] = &["viola-d", "viola-g", "viola-c"];
const VIOLA_G_C: &[&str] = &["viola-g", "viola-c"];
const VIOLA_C: &[&str] = &["viola-c"];
const CELLO: &[&str] = &["cello-a", "cello-d", "cello-g", "cello-c"];
const CELLO_A_D: &[&str] = &["cello-a", "cello-d"];
const CELLO_G_C: &[&str] = &["cello-g", "cello-c"];
const BASS: &[&str] = &[
    "bass-high-c",
    "bass-g",
    "bass-d",
    "bass-a",
    "bass-e",
    "bass-solo-a",
    "bass-solo-e",
    "bass-solo-b",
    "bass-solo-f#",
    "bass-low-g",
    "bass-low-c",
    "bass-low-b",
    "bass-viennese-a",
    "bass-viennese-f#",
];
const BASS_UPPER: &[&str] = &[
    "bass-high-c",
    "bass-g",
    "bass-d",
    "bass-solo-a",
    "bass-solo-e",
    "bass-viennese-a",
    "bass-viennese-f#",
];
const BASS_LOWER: &[&str] =
    &["bass-a", "bass-e", "bass-solo-b", "bass-solo-f#", "bass-low-g", "bass-low-c", "bass-low-b"];

const STEEL_TOP: &[CoreType] = &[PlainSteel, WoundSteel];
const STEEL_A: &[CoreType] = &[WoundSteel, StrandedSteel];

const fn kind(
    instrument: &'static str,
    key: &'static str,
    class: Class,
    usual: [f64; 6],
    at: &'static [At],
) -> SetKind {
    let [classical, early, folk, jazz, school, amplified] = usual;
    let usual = [classical, early, folk, jazz, school, amplified, jazz, folk];
    SetKind { key, instrument, class, at, usual }
}

/// A kind of the double bass, where the two ways to pluck a short note have shares of their own.
const fn bass(
    key: &'static str,
    class: Class,
    usual: [f64; Tradition::ALL.len()],
    at: &'static [At],
) -> SetKind {
    SetKind { key, instrument: "double-bass", class, at, usual }
}

/// Every kind of set. The shares: classical, early, folk, jazz, school, amplified; on the bass also thump and slap.
#[rustfmt::skip]
pub const KINDS: &[SetKind] = &[
    kind("violin", "soft-synthetic", Polymer, [45.0, 1.0, 20.0, 30.0, 12.0, 25.0],
        &[(VIOLIN_E, STEEL_TOP), (VIOLIN_UNDER_E, &[SoftSynthetic])]),
    kind("violin", "middle-synthetic", Polymer, [15.0, 0.5, 8.0, 12.0, 5.0, 10.0],
        &[(VIOLIN_E, STEEL_TOP), (VIOLIN_UNDER_E, &[MiddleSynthetic])]),
    kind("violin", "stiff-synthetic", Polymer, [28.0, 0.5, 12.0, 16.0, 8.0, 15.0],
        &[(VIOLIN_E, STEEL_TOP), (VIOLIN_UNDER_E, &[StiffSynthetic])]),
    kind("violin", "wound-gut", Gut, [6.0, 1.5, 1.0, 2.0, 0.1, 0.1],
        &[(VIOLIN_E, STEEL_TOP), (VIOLIN_UNDER_E, &[WoundGut])]),
    kind("violin", "steel-over-gut", Gut, [0.7, 1.5, 0.2, 0.2, 0.02, 0.02],
        &[(VIOLIN_E, STEEL_TOP), (VIOLIN_A_D, &[PlainGut]), (VIOLIN_LOW, &[WoundGut])]),
    kind("violin", "gut", Gut, [0.3, 95.0, 0.3, 0.1, 0.02, 0.02],
        &[(VIOLIN_E, &[PlainGut]), (VIOLIN_A_D, &[PlainGut]), (VIOLIN_LOW, &[WoundGut, PlainGut])]),
    kind("violin", "stranded-steel", Steel, [3.0, 0.02, 36.0, 25.0, 52.0, 38.0],
        &[(VIOLIN_E, STEEL_TOP), (VIOLIN_UNDER_E, &[StrandedSteel])]),
    kind("violin", "solid-steel", Steel, [1.0, 0.02, 22.0, 15.0, 22.0, 12.0],
        &[(VIOLIN_E, STEEL_TOP), (VIOLIN_A_D, &[WoundSteel]), (VIOLIN_LOW, &[WoundSteel, StrandedSteel])]),

    kind("viola", "steel-over-soft-synthetic", Polymer, [24.0, 0.5, 12.0, 15.0, 8.0, 15.0],
        &[(VIOLIN_E, STEEL_TOP), (VIOLA_A, STEEL_A), (VIOLA_UNDER_A, &[SoftSynthetic])]),
    kind("viola", "steel-over-middle-synthetic", Polymer, [7.0, 0.2, 4.0, 5.0, 3.0, 5.0],
        &[(VIOLIN_E, STEEL_TOP), (VIOLA_A, STEEL_A), (VIOLA_UNDER_A, &[MiddleSynthetic])]),
    kind("viola", "steel-over-stiff-synthetic", Polymer, [12.0, 0.3, 8.0, 10.0, 6.0, 10.0],
        &[(VIOLIN_E, STEEL_TOP), (VIOLA_A, STEEL_A), (VIOLA_UNDER_A, &[StiffSynthetic])]),
    kind("viola", "steel-outside", Polymer, [10.0, 0.1, 6.0, 5.0, 4.0, 6.0],
        &[(VIOLIN_E, STEEL_TOP), (VIOLA_A, STEEL_A), (VIOLA_D_G, &[SoftSynthetic]), (VIOLA_C, &[StrandedSteel])]),
    kind("viola", "soft-synthetic", Polymer, [18.0, 0.5, 8.0, 10.0, 8.0, 8.0],
        &[(VIOLIN_E, STEEL_TOP), (VIOLA, &[SoftSynthetic])]),
    kind("viola", "middle-synthetic", Polymer, [6.0, 0.2, 3.0, 4.0, 3.0, 3.0],
        &[(VIOLIN_E, STEEL_TOP), (VIOLA, &[MiddleSynthetic])]),
    kind("viola", "stiff-synthetic", Polymer, [10.0, 0.3, 6.0, 6.0, 5.0, 6.0],
        &[(VIOLIN_E, STEEL_TOP), (VIOLA, &[StiffSynthetic])]),
    kind("viola", "wound-gut", Gut, [3.0, 8.0, 1.0, 1.0, 0.1, 0.1],
        &[(VIOLIN_E, STEEL_TOP), (VIOLA, &[WoundGut])]),
    kind("viola", "gut", Gut, [0.3, 88.0, 0.2, 0.1, 0.02, 0.02],
        &[(VIOLIN_E, &[PlainGut]), (VIOLA_A_D, &[PlainGut]), (VIOLA_G_C, &[WoundGut])]),
    kind("viola", "stranded-steel", Steel, [4.0, 0.02, 28.0, 24.0, 42.0, 30.0],
        &[(VIOLIN_E, STEEL_TOP), (VIOLA, &[StrandedSteel])]),
    kind("viola", "solid-steel", Steel, [3.0, 0.02, 22.0, 18.0, 20.0, 16.0],
        &[(VIOLIN_E, STEEL_TOP), (VIOLA_A_D, &[WoundSteel]), (VIOLA_G_C, &[WoundSteel, StrandedSteel])]),

    kind("cello", "solid-over-stranded-steel", Steel, [66.0, 0.1, 50.0, 50.0, 46.0, 58.0],
        &[(CELLO_A_D, &[WoundSteel]), (CELLO_G_C, &[StrandedSteel])]),
    kind("cello", "stranded-steel", Steel, [26.0, 0.1, 44.0, 42.0, 50.0, 36.0],
        &[(CELLO, &[StrandedSteel])]),
    kind("cello", "steel-over-synthetic", Polymer, [1.0, 0.05, 0.5, 0.5, 0.5, 0.5],
        &[(CELLO_A_D, &[WoundSteel]), (CELLO_G_C, &[SoftSynthetic])]),
    kind("cello", "soft-synthetic", Polymer, [1.5, 0.3, 2.0, 2.5, 1.0, 1.0],
        &[(CELLO, &[SoftSynthetic])]),
    kind("cello", "middle-synthetic", Polymer, [0.4, 0.1, 0.6, 0.8, 0.3, 0.3],
        &[(CELLO, &[MiddleSynthetic])]),
    kind("cello", "stiff-synthetic", Polymer, [0.8, 0.1, 1.0, 1.2, 0.5, 0.5],
        &[(CELLO, &[StiffSynthetic])]),
    kind("cello", "wound-gut", Gut, [1.5, 5.0, 0.5, 0.5, 0.05, 0.05],
        &[(CELLO, &[WoundGut])]),
    kind("cello", "gut", Gut, [0.3, 94.0, 0.1, 0.1, 0.02, 0.02],
        &[(CELLO_A_D, &[PlainGut]), (CELLO_G_C, &[WoundGut])]),

    bass("stranded-steel", Steel, [94.0, 0.5, 58.0, 75.0, 94.0, 85.0, 18.0, 16.0],
        &[(BASS, &[StrandedSteel])]),
    bass("solid-over-stranded-steel", Steel, [2.0, 0.05, 2.0, 3.0, 2.0, 4.0, 0.5, 0.5],
        &[(BASS_UPPER, &[WoundSteel]), (BASS_LOWER, &[StrandedSteel])]),
    bass("soft-synthetic", Polymer, [1.5, 0.7, 16.0, 7.0, 1.5, 3.0, 20.0, 40.0],
        &[(BASS, &[SoftSynthetic])]),
    bass("middle-synthetic", Polymer, [0.5, 0.3, 5.0, 2.0, 0.5, 1.0, 6.0, 12.0],
        &[(BASS, &[MiddleSynthetic])]),
    bass("stiff-synthetic", Polymer, [0.8, 0.3, 6.0, 3.0, 0.8, 1.5, 6.0, 12.0],
        &[(BASS, &[StiffSynthetic])]),
    bass("gut-over-steel", Gut, [0.2, 0.3, 3.0, 2.5, 0.05, 0.1, 8.0, 2.0],
        &[(BASS_UPPER, &[PlainGut]), (BASS_LOWER, &[StrandedSteel])]),
    bass("gut", Gut, [0.6, 88.0, 6.0, 5.0, 0.05, 0.1, 34.0, 14.0],
        &[(BASS_UPPER, &[PlainGut]), (BASS_LOWER, &[WoundGut])]),
    bass("wound-gut", Gut, [0.4, 10.0, 2.0, 2.0, 0.05, 0.1, 8.0, 3.0],
        &[(BASS, &[WoundGut])]),
];
