//! What does the string do under the bow? A string stepped through time, and what is read off its motion.
//!
//! Travelling waves: the string is two loops that meet at the bow, one by way of the nut and one by way of the
//! bridge, for motion across the string and for twist. What a whole round loses and how stiffness spreads it is put
//! together in low-order filters at the nut, fitted once; the bridge gives way as a generic body of its family.
//! Friction joins the four waves that reach the bow (Friedlander's construction with hysteresis, or a law of
//! temperature). Same input, same bits: no transcendental function runs in the loop of samples, and several notes
//! stepped side by side give the bits that each gives alone.
//!
//! Left out: the second plane of motion, the width and the spring of the bow's hair, the other strings.
//! Theory: McIntyre, Schumacher and Woodhouse 1983 ([`crate::source::MSW_1983`]).

pub mod body;
pub mod bowed;
pub mod dispersion;
pub mod friction;
pub mod gesture;
pub mod judge;
pub mod level;
pub mod loss_filter;
pub mod map;
pub mod note;
pub mod player;
pub mod sharpness;
pub mod sound;
pub mod sounding;
pub mod spectrum;
pub mod strung;
pub mod surrogate;
pub mod thermal;

mod section;

pub use body::Body;
pub use bowed::{Bowed, Moment};
pub use friction::{Friction, Hyperbolic, Law};
pub use gesture::{Gesture, Track};
pub use judge::{Judgement, Regime};
pub use sounding::Sounding;
pub use strung::Strung;
pub use thermal::Thermal;
