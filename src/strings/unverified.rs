//! Which formulas has nobody outside held yet?
//!
//! A formula that no printed, measured or independently computed value stands against is named here, with the reason.
//! The tests call every other one; the list may only become shorter.

/// Functions of [`crate::physics`] by module and name, each with why it is unverified.
pub const UNVERIFIED: &[(&str, &str)] = &[
    (
        "strength::gut_twist_factor",
        "that strength falls with twist is measured, how fast is a guess",
    ),
    (
        "climate::polymer_water",
        "straight proportion from one point; at 95 % humidity polyamide takes half as much again",
    ),
];
