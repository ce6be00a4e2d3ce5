//! Declares a type of the wire once: from its members follow the struct, how it is written, its JSON Schema and how it
//! is read.

/// Declares structs of the wire.
///
/// - `pub struct` is what a reply or a file holds: members that it does not name are passed over.
/// - `pub closed struct` is what a request holds: a member that it does not name is a fault, and what the schema allows
///   in each follows from its name ([`crate::allowed`]).
/// - `pub sparse struct` is closed, every member may be left out, and what says nothing is not written.
///
/// A member with `= value` may be left out, and is this value then; an `Option` may always be left out.
macro_rules! wire {
    () => {};
    ($(#[$about:meta])* pub struct $name:ident $members:tt $($rest:tt)*) => {
        $crate::wire::wire! { @declare [$(#[$about])*] [] $name $members }
        $crate::wire::wire! { $($rest)* }
    };
    (
        $(#[$about:meta])*
        pub closed struct $name:ident {
            $($(#[$note:meta])* pub $member:ident: $type:ty $(= $default:expr)?,)*
        }
        $($rest:tt)*
    ) => {
        $crate::wire::wire! {
            @declare
            [#[schemars(deny_unknown_fields, transform = $crate::allowed::narrow)] $(#[$about])*]
            [closed]
            $name { $($(#[$note])* pub $member: $type $(= $default)?,)* }
        }

        impl Default for $name {
            fn default() -> Self {
                Self { $($member: $crate::wire::wire!(@default $($default)?),)* }
            }
        }

        $crate::wire::wire! { $($rest)* }
    };
    (
        $(#[$about:meta])*
        pub sparse struct $name:ident {
            $($(#[$note:meta])* pub $member:ident: $type:ty,)*
        }
        $($rest:tt)*
    ) => {
        #[derive(Clone, Debug, Default, PartialEq, ::serde::Serialize, ::schemars::JsonSchema)]
        #[schemars(deny_unknown_fields, transform = $crate::allowed::narrow)]
        $(#[$about])*
        pub struct $name {
            $(
                $(#[$note])*
                #[serde(default, skip_serializing_if = "crate::wire::says_nothing")]
                pub $member: $type,
            )*
        }

        impl $name {
            /// The name of every member, in the order in which they are written.
            pub const MEMBERS: &[&str] = &[$(stringify!($member)),*];
        }

        impl $crate::read::Read for $name {
            fn read<'a>(value: &'a ::serde_json::Value, reader: &mut $crate::read::Reader<'a>) -> Self {
                reader.closed(value, Self::MEMBERS);
                Self { $($member: $crate::wire::wire!(@read value reader $member = Default::default()),)* }
            }
        }

        $crate::wire::wire! { $($rest)* }
    };
    (
        @declare [$($attributes:tt)*] [$($closed:ident)?]
        $name:ident {
            $($(#[$note:meta])* pub $member:ident: $type:ty $(= $default:expr)?,)*
        }
    ) => {
        #[derive(Clone, Debug, PartialEq, ::serde::Serialize, ::schemars::JsonSchema)]
        $($attributes)*
        pub struct $name {
            $($(#[$note])* $(#[schemars(default, extend("default" = $default))])? pub $member: $type,)*
        }

        impl $name {
            /// The name of every member, in the order in which they are written.
            pub const MEMBERS: &[&str] = &[$(stringify!($member)),*];
        }

        impl $crate::read::Read for $name {
            fn read<'a>(value: &'a ::serde_json::Value, reader: &mut $crate::read::Reader<'a>) -> Self {
                $(reader.$closed(value, Self::MEMBERS);)?
                Self { $($member: $crate::wire::wire!(@read value reader $member $(= $default)?),)* }
            }
        }
    };
    (@default) => { Default::default() };
    (@default $default:expr) => { $default };
    (@read $value:ident $reader:ident $member:ident) => {
        $crate::read::Read::read($reader.member($value, stringify!($member)), $reader)
    };
    (@read $value:ident $reader:ident $member:ident = $default:expr) => {
        match $reader.optional($value, stringify!($member)) {
            Some(member) => $crate::read::Read::read(member, $reader),
            None => $default,
        }
    };
}

pub(crate) use wire;

/// Declares an enum of the wire whose variants are objects, each with its name in the member `$tag`.
macro_rules! tagged {
    (
        $(#[$about:meta])*
        pub enum $name:ident by $tag:literal {
            $($(#[$note:meta])* $variant:ident($type:ty) = $key:literal,)*
        }
    ) => {
        $(#[$about])*
        #[derive(Clone, Debug, PartialEq, ::serde::Serialize, ::schemars::JsonSchema)]
        #[serde(tag = $tag)]
        pub enum $name {
            $($(#[$note])* #[serde(rename = $key)] $variant($type),)*
        }

        impl $name {
            /// The name of every variant.
            pub const NAMES: &[&str] = &[$($key),*];

            /// Reads the variant of that name; none if there is none.
            pub(crate) fn of_name<'a>(
                name: &str,
                value: &'a ::serde_json::Value,
                reader: &mut $crate::read::Reader<'a>,
            ) -> Option<Self> {
                Some(match name {
                    $($key => Self::$variant($crate::read::Read::read(value, reader)),)*
                    _ => return None,
                })
            }
        }
    };
}

pub(crate) use tagged;

/// Whether an answer says no more than one that was never given.
pub(crate) fn says_nothing<T: Default + PartialEq>(answer: &T) -> bool {
    *answer == T::default()
}
