//! How a person likes to read: in which language and units, and how deep. It changes what is shown, never what is kept.

use std::cell::Cell;

use catalogue::Language;

use crate::detail_level::DetailLevel;

/// In which unit lengths are shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Length {
    /// Millimetres.
    #[default]
    Millimetre,
    /// Inches.
    Inch,
}

/// In which unit forces are shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Force {
    /// Newtons.
    #[default]
    Newton,
    /// Kilograms, as packets have it: the weight of one.
    Kilogram,
    /// Pounds, likewise.
    Pound,
}

/// In which unit warmth is shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Warmth {
    /// Degrees Celsius.
    #[default]
    Celsius,
    /// Degrees Fahrenheit.
    Fahrenheit,
}

/// Language, units and depth.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Preferences {
    /// The language; none was chosen until now: the browser's own.
    pub language: Option<Language>,
    /// Lengths.
    pub length: Length,
    /// Forces.
    pub force: Force,
    /// Warmth.
    pub warmth: Warmth,
    /// How deep the page goes.
    pub depth: DetailLevel,
}

impl Length {
    /// Every one.
    pub const ALL: [Self; 2] = [Self::Millimetre, Self::Inch];

    /// The word by which it is kept and named.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Millimetre => "mm",
            Self::Inch => "in",
        }
    }
}

impl Force {
    /// Every one.
    pub const ALL: [Self; 3] = [Self::Newton, Self::Kilogram, Self::Pound];

    /// The word by which it is kept and named.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Newton => "N",
            Self::Kilogram => "kg",
            Self::Pound => "lb",
        }
    }
}

impl Warmth {
    /// Every one.
    pub const ALL: [Self; 2] = [Self::Celsius, Self::Fahrenheit];

    /// The word by which it is kept and named.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Celsius => "C",
            Self::Fahrenheit => "F",
        }
    }
}

impl Preferences {
    /// As a text to be kept.
    #[must_use]
    pub fn written(self) -> String {
        let language = self.language.map_or("-", Language::tag);
        let Self { length, force, warmth, depth, .. } = self;
        [language, length.key(), force.key(), warmth.key(), depth.key()].join(" ")
    }

    /// What was kept; what cannot be read of it is as for anybody.
    #[must_use]
    pub fn read(text: &str) -> Self {
        let mut preferences = Self::default();
        for word in text.split_whitespace() {
            preferences = preferences.with(word);
        }
        preferences
    }

    /// The same with one word changed.
    #[must_use]
    pub fn with(mut self, word: &str) -> Self {
        if let Some(language) = Language::ALL.into_iter().find(|one| one.tag() == word) {
            self.language = Some(language);
        }
        if let Some(length) = Length::ALL.into_iter().find(|one| one.key() == word) {
            self.length = length;
        }
        if let Some(force) = Force::ALL.into_iter().find(|one| one.key() == word) {
            self.force = force;
        }
        if let Some(warmth) = Warmth::ALL.into_iter().find(|one| one.key() == word) {
            self.warmth = warmth;
        }
        if let Some(depth) = DetailLevel::ALL.into_iter().find(|one| one.key() == word) {
            self.depth = depth;
        }
        self
    }
}

thread_local! {
    static NOW: Cell<Preferences> = const {
        Cell::new(Preferences {
            language: None,
            length: Length::Millimetre,
            force: Force::Newton,
            warmth: Warmth::Celsius,
            depth: DetailLevel::Numbers,
        })
    };
}

/// The preferences by which the page is drawn.
#[must_use]
pub fn now() -> Preferences {
    NOW.get()
}

/// Draws the page by these preferences from now on. The language needs its messages too: [`crate::words::speech::speak`].
pub fn take(preferences: Preferences) {
    NOW.set(preferences);
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn habits_come_back_and_nonsense_changes_nothing() {
        let preferences = Preferences {
            language: Some(Language::German),
            length: Length::Inch,
            force: Force::Pound,
            warmth: Warmth::Fahrenheit,
            depth: DetailLevel::Bench,
        };
        assert_eq!(Preferences::read(&preferences.written()), preferences);
        assert_eq!(Preferences::read(&Preferences::default().written()), Preferences::default());
        assert_eq!(Preferences::read("{} fr ell"), Preferences::default());
    }
}
