//! How deep the page goes: in plain words, with numbers, or down to formula and source.

/// A depth of the page.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub enum DetailLevel {
    /// For whoever plays: words on a stated scale.
    #[default]
    Words,
    /// For whoever teaches: numbers, with what makes them stick.
    Numbers,
    /// For the bench: formulas, parts and sources too.
    Bench,
}

impl DetailLevel {
    /// Every one, the shallowest first.
    pub const ALL: [Self; 3] = [Self::Words, Self::Numbers, Self::Bench];

    /// The word by which it is kept and named.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Words => "words",
            Self::Numbers => "numbers",
            Self::Bench => "bench",
        }
    }
}
