//! The kinds of set that come into question for a person, and the tradition by which they are usual.

use crate::construction::CoreTypes;
use crate::instrument::{Size, VIOLA, VIOLIN};
use crate::precedent::SetUp;
use crate::precedent::kinds::{SetKind, Tradition};

use super::answers::{Amplified, Answers, BelongsTo, Music, Played, Ring, Tuners};

/// A kind of set that comes into question.
#[derive(Clone, Debug, PartialEq)]
pub struct KindHere {
    /// Which.
    pub kind: &'static SetKind,
    /// Which cores may stand at each position, the highest first.
    pub cores: Vec<CoreTypes>,
    /// How many of a hundred players of this tradition have it.
    pub usual: f64,
    /// Whether what is on the instrument belongs to it.
    pub is_now: bool,
    /// What speaks against it before any string is known, in units of ln desirability of the set: never positive.
    pub term: f64,
}

/// The tradition of a player.
#[must_use]
pub fn tradition(answers: &Answers, set_up: SetUp, size: &Size) -> Tradition {
    let is_amplified = matches!(answers.amplified, Some(Amplified::Magnet | Amplified::Bridge));
    let is_lent = matches!(answers.belongs_to, Some(BelongsTo::School | BelongsTo::Loan));
    let is_short = answers.played == Some(Played::Plucked) && answers.ring == Some(Ring::Short);
    // Four fine tuners stand on a violin or viola for which steel is meant.
    let is_set_up_for_steel = answers.tuners == Some(Tuners::All)
        && [VIOLIN.key, VIOLA.key]
            .contains(&answers.instrument.map_or(VIOLIN.key, |kind| kind.key));
    match answers.music {
        _ if set_up == SetUp::Historical => Tradition::Early,
        Some(Music::Early) => Tradition::Early,
        _ if is_amplified => Tradition::Amplified,
        Some(Music::Folk) if is_short => Tradition::Slap,
        _ if is_short => Tradition::Thump,
        _ if size.fraction || is_lent || is_set_up_for_steel => Tradition::School,
        Some(Music::Folk) => Tradition::Folk,
        Some(Music::Jazz) => Tradition::Jazz,
        Some(Music::Classical) | None if answers.played == Some(Played::Plucked) => Tradition::Jazz,
        Some(Music::Classical) | None => Tradition::Classical,
    }
}
