//! The rooms of the page and their addresses.
//!
//! An address is the part after `#`, so that the page works from any folder, from a file and without a network.
//! The list is short and the addresses are ours, so a reader and a writer of our own are smaller than a router
//! with its history; [`crate::platform::address`] hears when the address changes.

use std::fmt;

use strings::instrument;

use crate::lesson::Lesson;

/// How many screens the player's path has.
pub const SCREENS: usize = 8;

/// A room of the page.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Route {
    /// The front door.
    Home,
    /// A screen of the player's path, from 1.
    Ask {
        /// Which screen.
        screen: usize,
        /// The person came from the list of answers, and goes back there.
        checking: bool,
    },
    /// Every question on one page, at one of them if it is named.
    Everything {
        /// The question to begin with.
        field: Option<String>,
    },
    /// The list of answers.
    Check,
    /// The set.
    Set,
    /// Two strings side by side: this one of the set, 0 the highest, with its rival.
    Compare {
        /// Which string.
        string: usize,
    },
    /// Two or three cores side by side, for a class.
    Class(Lesson),
    /// Where the numbers come from, at one entry of the bibliography if it is named.
    Sources {
        /// The entry to begin with.
        entry: Option<String>,
    },
    /// The words of the trade.
    Glossary,
    /// What the page is made of.
    Specimen,
}

/// Whether any instrument has a string of that number, 0 the highest.
fn is_a_string(string: usize) -> bool {
    let mut tunings = instrument::ALL.iter().flat_map(|kind| kind.tunings);
    tunings.any(|tuning| string < tuning.strings.len())
}

impl Route {
    /// The room at an address; none if there is no such room.
    #[must_use]
    pub fn read(hash: &str) -> Option<Self> {
        let path = hash.trim_start_matches('#').trim_matches('/');
        let mut steps = path.split('/').filter(|step| !step.is_empty());
        if path == "class" || path.starts_with("class/") {
            return Lesson::read(steps.skip(1)).map(Self::Class);
        }
        let (first, second, third) = (steps.next(), steps.next(), steps.next());
        if steps.next().is_some() {
            return None;
        }
        match (first, second, third) {
            (None, ..) => Some(Self::Home),
            (Some("ask"), Some(screen), rest) => {
                let screen = screen.parse().ok().filter(|s| (1..=SCREENS).contains(s))?;
                let checking = match rest {
                    None => false,
                    Some("check") => true,
                    Some(_) => return None,
                };
                Some(Self::Ask { screen, checking })
            }
            (Some("everything"), field, None) => {
                Some(Self::Everything { field: field.map(str::to_owned) })
            }
            (Some("words"), None, None) => Some(Self::Glossary),
            (Some("specimen"), None, None) => Some(Self::Specimen),
            (Some("check"), None, None) => Some(Self::Check),
            (Some("set"), None, None) => Some(Self::Set),
            (Some("compare"), None, None) => Some(Self::Compare { string: 0 }),
            (Some("compare"), Some(string), None) => {
                let string = string.parse().ok().filter(|string| is_a_string(*string))?;
                Some(Self::Compare { string })
            }
            (Some("sources"), entry, None) => {
                Some(Self::Sources { entry: entry.map(str::to_owned) })
            }
            _ => None,
        }
    }

    /// Whether the page stays where it is when it comes here from there: a lesson about other cores is still that lesson.
    #[must_use]
    pub fn stays(&self, before: &Self) -> bool {
        match (self, before) {
            (Self::Class(now), Self::Class(then)) => now.step == then.step,
            _ => false,
        }
    }

    /// Whether this room is one of those that a person meets first; the page carries what they say.
    #[must_use]
    pub fn is_early(&self) -> bool {
        matches!(self, Self::Home | Self::Ask { .. } | Self::Everything { .. } | Self::Check)
    }

    /// Whether this room belongs to choosing a set.
    #[must_use]
    pub fn is_fit(&self) -> bool {
        !matches!(
            self,
            Self::Compare { .. }
                | Self::Class(_)
                | Self::Sources { .. }
                | Self::Glossary
                | Self::Specimen
        )
    }
}

impl fmt::Display for Route {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Home => write!(f, "#/"),
            Self::Ask { screen, checking: false } => write!(f, "#/ask/{screen}"),
            Self::Ask { screen, checking: true } => write!(f, "#/ask/{screen}/check"),
            Self::Everything { field: None } => write!(f, "#/everything"),
            Self::Everything { field: Some(field) } => write!(f, "#/everything/{field}"),
            Self::Check => write!(f, "#/check"),
            Self::Glossary => write!(f, "#/words"),
            Self::Specimen => write!(f, "#/specimen"),
            Self::Set => write!(f, "#/set"),
            Self::Compare { string: 0 } => write!(f, "#/compare"),
            Self::Compare { string } => write!(f, "#/compare/{string}"),
            Self::Class(lesson) => write!(f, "#/class/{lesson}"),
            Self::Sources { entry: None } => write!(f, "#/sources"),
            Self::Sources { entry: Some(entry) } => write!(f, "#/sources/{entry}"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_room_is_found_at_its_address() {
        let mut rooms = vec![
            Route::Home,
            Route::Everything { field: None },
            Route::Everything { field: Some("a4_hz".to_owned()) },
            Route::Check,
            Route::Glossary,
            Route::Specimen,
            Route::Set,
            Route::Compare { string: 0 },
            Route::Compare { string: 3 },
            Route::Class(Lesson::default()),
            Route::Sources { entry: None },
            Route::Sources { entry: Some("iso-16".to_owned()) },
        ];
        for screen in 1..=SCREENS {
            for checking in [false, true] {
                rooms.push(Route::Ask { screen, checking });
            }
        }
        for room in rooms {
            assert_eq!(Route::read(&room.to_string()), Some(room));
        }
    }

    #[test]
    fn home_has_several_spellings() {
        for home in ["", "#", "#/", "/"] {
            assert_eq!(Route::read(home), Some(Route::Home), "{home}");
        }
    }

    #[test]
    fn a_class_begins_with_the_usual_lesson() {
        assert_eq!(Route::read("#/class"), Some(Route::Class(Lesson::default())));
    }

    #[test]
    fn other_addresses_lead_nowhere() {
        for nowhere in [
            "#/ask",
            "#/ask/0",
            "#/ask/9",
            "#/ask/-1",
            "#/ask/x",
            "#/ask/1/2",
            "#/nowhere",
            "#/set/1",
            "#/compare/x",
            "#/compare/9",
            "#/compare/0/0",
            "#/a/b/c/d",
            "#/class/violin",
            "#/classes",
            "#/é",
        ] {
            assert_eq!(Route::read(nowhere), None, "{nowhere}");
        }
    }
}
