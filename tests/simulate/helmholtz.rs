//! The ideal motion of Helmholtz: what it must be on a string that loses next to nothing.

use strings::simulate::judge::Watch;
use strings::simulate::{Body, Bowed, Gesture, Hyperbolic, Regime, Strung};
use support::{Authority, Grade, Within, check, row};

const IDEAL: Authority = Authority {
    source: "Euphonics 9.3.1 eq. 2, and identities of the ideal motion",
    grade: Grade::Identity,
};

#[test]
fn the_ideal_motion_has_its_numbers() {
    // A violin G, the bow at a tenth with 0.1 m/s: force jump 0.700 N, slip −0.900 m/s, 0.6378 mm at mid-string and
    // 0.4592 mm from peak to peak under the bow.
    let (z, v, beta, pitch) = (0.35, 0.1, 0.1, 196.0);
    let string = super::plain(pitch, z, 1e-6);
    let strung = Strung::new(&string, &Body::rigid(), 192_000.0);
    let mut bowed = Bowed::new(&strung, beta, Hyperbolic::rosin());
    bowed.set_moving(v);
    let period = bowed.period();
    let mut watch = Watch::new(period, 12.0);
    let (mut bridge, mut speed, mut slip, mut waves) = (vec![], vec![], vec![], vec![]);
    // A bow that goes along and does not press: what presses puts ripples on the motion, of a twelfth of the jump here.
    bowed.play(&[Gesture::steady(v, 0.0, beta)], (12.0 * period) as usize, |_, m| {
        watch.see(0, m);
        bridge.push(m.bridge_force);
        speed.push(m.speed);
        slip.push(m.slip);
        waves.push((m.leaving[0], m.arriving[0]));
    });
    let note = watch.judge(beta);
    assert_eq!(note.regime, Regime::Helmholtz);
    let from = bridge.len() - (4.0 * period) as usize;
    // The saw rises in a straight line; read off where it is smooth, a fifth of a period to either side of the jump.
    let jump_at = (from + period as usize..bridge.len() - period as usize)
        .max_by(|a, b| {
            let fall = |i: usize| (bridge[i] - bridge[i + 2]).abs();
            fall(*a).total_cmp(&fall(*b))
        })
        .unwrap();
    let part = (0.2 * period) as usize;
    let mean = |from: usize, to: usize| {
        let points: Vec<(f64, f64)> = (from..to).map(|i| (i as f64, bridge[i])).collect();
        let middle = points.iter().map(|p| p.1).sum::<f64>() / points.len() as f64;
        (middle, super::slope(&points))
    };
    let (before, rise) = mean(jump_at - 2 * part, jump_at - part / 4);
    let (after, fall) = mean(jump_at + part / 4, jump_at + 2 * part);
    let to_jump = (2.0 + 0.25) / 2.0 * part as f64;
    let jump = (before + rise * to_jump) - (after - fall * to_jump);
    // Half-way down the corner.
    let share = (from..speed.len()).filter(|i| speed[*i] < -0.4).count() as f64
        / (speed.len() - from) as f64;
    let sliding: Vec<f64> =
        (from..slip.len()).filter(|i| slip[*i] < -0.3).map(|i| speed[i]).collect();
    let sliding = sliding.iter().sum::<f64>() / sliding.len() as f64;
    let swing = |speeds: &[f64]| {
        let mean = speeds.iter().sum::<f64>() / speeds.len() as f64;
        let (mut place, mut low, mut high) = (0.0_f64, 0.0_f64, 0.0_f64);
        for s in speeds {
            place += (s - mean) / 192_000.0;
            low = low.min(place);
            high = high.max(place);
        }
        high - low
    };
    let whole = (3.0 * period).round() as usize;
    let under_bow = swing(&speed[speed.len() - whole..]);
    // Mid-string lies 0.4 of the length from the bow, 0.2 of a period each way.
    let way = (0.2 * period).round() as usize;
    let middle: Vec<f64> =
        (from..bridge.len() - way).map(|i| waves[i - way].0 + waves[i + way].1).collect();
    let at_middle = swing(&middle[..whole]) / 2.0;
    check(
        &IDEAL,
        [
            row("share of slipping", share, beta, Within::Share(0.02), "corner over a few steps"),
            row(
                "speed in slipping, m/s",
                sliding,
                -v * (1.0 - beta) / beta,
                Within::Share(0.02),
                "corner over a few steps",
            ),
            row(
                "jump of the bridge's force, N",
                jump,
                2.0 * z * v / beta,
                Within::Share(0.02),
                "ripples of the bow's force",
            ),
            row("swing under the bow, m", under_bow, 0.4591837e-3, Within::Share(0.02), "the same"),
            row(
                "amplitude at mid-string, m",
                at_middle,
                v / pitch / (8.0 * beta),
                Within::Share(0.02),
                "the same",
            ),
            row("cents", note.cents, 0.0, Within::Amount(1.0), "no loss, no flattening"),
        ],
    );
}

#[test]
fn the_note_falls_as_the_bow_presses() {
    // McIntyre, Schumacher and Woodhouse 1983: flattening grows with force and with the width of the corner.
    let with = |force: f64, steep: f64| {
        let string = strings::simulate::Sounding {
            losses: (1..60).map(|n| 1e-3 * (1.0 + steep * f64::from(n * n))).collect(),
            ..super::plain(293.66, 0.25, 0.0)
        };
        let strung = Strung::new(&string, &Body::rigid(), 96_000.0);
        let mut bowed = Bowed::new(&strung, 0.113, Hyperbolic::rosin());
        bowed.set_moving(0.1);
        let period = bowed.period();
        let mut watch = Watch::new(period, 80.0);
        bowed.play(&[Gesture::steady(0.1, force, 0.113)], (80.0 * period) as usize, |_, m| {
            watch.see(0, m);
        });
        watch.judge(0.113)
    };
    let mut cents = vec![];
    for force in [0.2, 0.3, 0.4, 0.5, 0.6, 0.7] {
        let note = with(force, 0.1);
        assert_eq!(note.regime, Regime::Helmholtz, "{force} N: {note:?}");
        cents.push(note.cents);
    }
    println!("cents at growing force: {cents:.1?}");
    assert!(cents.windows(2).all(|c| c[1] <= c[0] + 0.3), "{cents:?}");
    assert!(cents[5] < cents[0] - 10.0, "{cents:?}");
    assert!(with(0.6, 0.3).cents < with(0.6, 0.02).cents, "a wider corner is flatter");
}
