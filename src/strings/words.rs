//! Enums whose variants are words of requests and replies.

/// Names whose words stand in requests and replies.
macro_rules! words {
    ($($(#[$doc:meta])* $name:ident { $($(#[$vdoc:meta])* $variant:ident = $key:literal,)* })*) => {$(
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
        pub enum $name { $($(#[$vdoc])* $variant,)* }

        impl $name {
            /// Every one, in the order of showing.
            pub const ALL: &[Self] = &[$(Self::$variant),*];

            /// Their words, in the same order.
            pub const KEYS: &[&str] = &[$($key),*];

            /// The word by which requests and replies name it.
            #[must_use]
            pub const fn key(self) -> &'static str {
                match self { $(Self::$variant => $key),* }
            }

            /// The one of that word.
            #[must_use]
            pub fn parse(key: &str) -> Option<Self> {
                Self::ALL.iter().copied().find(|word| word.key() == key)
            }
        }
    )*};
}
