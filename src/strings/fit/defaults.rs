//! What is taken for granted where a question is not answered.

use crate::instrument::{DOUBLE_BASS, Kind, Size, Temperament};
use crate::precedent::SetUp;
use crate::quantity::Hertz;

use super::answers::{Aim, Budget, Music, Pegs, Room, Tuners};

/// What the person wants to know.
pub const AIM: Aim = Aim::WholeSet;
/// How the strings are tuned to each other.
pub const TEMPERAMENT: Temperament = Temperament::Equal;
/// How the instrument is set up.
pub const SET_UP: SetUp = SetUp::Modern;
/// Where it lives.
pub const ROOM: Room = Room::Seasonal;
/// What a set may cost.
pub const BUDGET: Budget = Budget::Middle;

/// Pitch of a′.
#[must_use]
pub fn a4(set_up: SetUp, music: Option<Music>) -> Hertz {
    let low = set_up == SetUp::Historical || music == Some(Music::Early);
    Hertz::new(if low { 415.0 } else { 440.0 })
}

/// What turns the strings.
#[must_use]
pub fn pegs(kind: &Kind) -> Pegs {
    if kind.key == DOUBLE_BASS.key { Pegs::Machine } else { Pegs::Friction }
}

/// Which fine tuners there are.
#[must_use]
pub fn tuners(kind: &Kind, set_up: SetUp, size: &Size) -> Tuners {
    match (kind.key, set_up, size.fraction) {
        (_, SetUp::Historical, _) | ("double-bass", _, _) => Tuners::None,
        ("cello", _, _) | (_, _, true) => Tuners::All,
        _ => Tuners::Top,
    }
}
