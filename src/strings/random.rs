//! Random numbers that belong to a seed and a name: the same pair gives the same number on every machine.
//!
//! Fowler-Noll-Vo (FNV-1a) over the name, then the finaliser of SplitMix64 for each number.

use core::f64::consts::PI;

/// The increment of SplitMix64, 2^64 over the golden ratio.
const GOLDEN: u64 = 0x9e37_79b9_7f4a_7c15;

/// The bits that a seed and a name start from.
pub(crate) fn hash(seed: u64, name: impl Iterator<Item = u8>) -> u64 {
    name.fold(0xcbf2_9ce4_8422_2325_u64 ^ seed.wrapping_mul(GOLDEN), |hash, byte| {
        (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3)
    })
}

/// One step of SplitMix64 from these bits.
pub(crate) const fn mix(bits: u64) -> u64 {
    let mut z = bits.wrapping_add(GOLDEN);
    z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    z ^ (z >> 31)
}

/// The bits of the `n`th number of a series, from 0.
pub(crate) const fn nth(bits: u64, n: u64) -> u64 {
    mix(bits.wrapping_add(n.wrapping_mul(GOLDEN)))
}

/// A number between 0 and 1, exclusive: the upper 53 bits, moved off zero by half a step.
pub(crate) fn uniform(bits: u64) -> f64 {
    ((bits >> 11) as f64 + 0.5) / 9_007_199_254_740_992.0
}

/// A standard normal number from two uniform ones, by Box and Muller.
pub(crate) fn normal(u: f64, v: f64) -> f64 {
    (-2.0 * libm::log(u)).sqrt() * libm::cos(2.0 * PI * v)
}
