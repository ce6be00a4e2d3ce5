//! Numbers with their ranges, where they are no properties of a report.

use super::{Estimate, uncertain};
use crate::construction::Construction;
use crate::draw::Draw;

/// Numbers worked out in a draw, each with its 90 % range: every uncertain constant is moved to either end of its
/// range, one at a time, and what that changes is added as independent. Nothing holds a range above zero.
pub(super) fn moved<const N: usize>(
    construction: &Construction,
    worked_out: impl Fn(&Draw) -> [f64; N],
) -> [Estimate; N] {
    let central = worked_out(&Draw::CENTRAL);
    let (mut down, mut up) = ([0.0_f64; N], [0.0_f64; N]);
    for (owner, which) in uncertain(construction) {
        let ends = [-1.0, 1.0].map(|t| worked_out(&Draw::shifted(owner, which, t)));
        for i in 0..N {
            let deltas = ends.map(|end| end[i] - central[i]);
            let (low, high) =
                (deltas[0].min(deltas[1]).min(0.0), deltas[0].max(deltas[1]).max(0.0));
            down[i] += low * low;
            up[i] += high * high;
        }
    }
    core::array::from_fn(|i| Estimate {
        value: central[i],
        low: central[i] - down[i].sqrt(),
        high: central[i] + up[i].sqrt(),
    })
}
