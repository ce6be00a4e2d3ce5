//! The numbers a draw takes for a constant, against the quantiles of a normal distribution.

use strings::constant::{AIR_DENSITY, WINDING_LOSS};
use strings::draw::Draw;
use support::{Authority, Grade, Within, check, row};

use crate::python::{list, number, output_of};

const DRAWS: u32 = 40_000;

#[test]
fn draws_of_a_constant_lie_as_a_normal_number_does() {
    let printed = output_of("normal");
    let authority =
        Authority { source: "normal.py, quantiles by scipy", grade: Grade::Independent };
    for constant in [AIR_DENSITY, WINDING_LOSS] {
        let mut drawn: Vec<f64> =
            (0..u64::from(DRAWS)).map(|seed| Draw::sampled(seed).general(&constant)).collect();
        drawn.sort_by(f64::total_cmp);
        check(
            &authority,
            list(&printed, "quantiles").iter().map(|quantile| {
                let (share, t) = (number(quantile, "share"), number(quantile, "t"));
                let end = if t < 0.0 { constant.low } else { constant.high };
                let found = drawn[(share * f64::from(DRAWS - 1)).round() as usize];
                row(
                    format!(
                        "{:?}: {share} of the draws lie below, in steps of the range",
                        constant.which
                    ),
                    (found / constant.value).ln(),
                    t.abs() * (end / constant.value).ln(),
                    Within::Amount(0.03 * (constant.high / constant.low).ln()),
                    "forty thousand draws",
                )
            }),
        );
    }
}

#[test]
fn one_seed_draws_the_same_for_every_string_and_another_seed_another() {
    let of = |seed| Draw::sampled(seed).general(&AIR_DENSITY);
    assert_eq!(of(7).to_bits(), of(7).to_bits());
    assert_ne!(of(7).to_bits(), of(8).to_bits());
    // Two quantities of one seed have nothing to do with each other.
    let pairs: Vec<(f64, f64)> = (0..4000)
        .map(|seed| {
            let draw = Draw::sampled(seed);
            (
                (draw.general(&AIR_DENSITY) / AIR_DENSITY.value).ln(),
                (draw.general(&WINDING_LOSS) / WINDING_LOSS.value).ln(),
            )
        })
        .collect();
    let (mut xy, mut xx, mut yy) = (0.0, 0.0, 0.0);
    for (x, y) in pairs {
        xy += x * y;
        xx += x * x;
        yy += y * y;
    }
    let correlation = xy / (xx * yy).sqrt();
    assert!(correlation.abs() < 0.06, "{correlation}");
}
