//! The limits of bow force come out of the simulation as Schelleng has them, and as they were measured.

use strings::simulate::map::{self, PlaceMap};
use strings::simulate::{Body, Law, Regime, Sounding};
use support::{Authority, Grade, Within, check, row};

/// A violin D of steel, Z₀ = 0.25 kg/s: the string of Schoonderwaldt and others.
fn steel_d() -> Sounding {
    Sounding {
        losses: (1..40).map(|n| 5e-4 * (1.0 + 0.003 * f64::from(n * n))).collect(),
        ..super::plain(293.66, 0.25, 0.0)
    }
}

const PLACES: [f64; 8] = [0.027, 0.034, 0.043, 0.057, 0.072, 0.09, 0.113, 0.137];

#[test]
fn the_limits_fall_with_the_first_and_second_power_of_the_place() {
    // Schelleng 1973: greatest force as 1/β, least as 1/β², for a bridge that is a plain resistance; with friction that
    // falls with speed both times (v + β v₀) (Schoonderwaldt and others 2008, eqs. 4 and 5), which is divided out here.
    let (string, body, resistance, speed) = (steel_d(), Body::resistive(30.0), 30.0, 0.1);
    let (mut greatest, mut least) = (vec![], vec![]);
    for place in PLACES {
        let window = map::window(&string, &body, Law::Hyperbolic, speed, place).expect("a window");
        let (most, few) = map::closed_limits(&string, resistance, speed, place);
        println!(
            "place {place}: {:.4} to {:.4} N, {:.1} dB; over the formulas {:.2}, {:.2}",
            window.least,
            window.greatest,
            window.decibels(),
            window.least / few,
            window.greatest / most
        );
        let falling = (speed + 0.2 * place) / speed;
        greatest.push((place.ln(), (window.greatest / falling).ln()));
        least.push((place.ln(), (window.least / falling).ln()));
        // Near half to twice the formulas at every place.
        assert!((0.4..1.6).contains(&(window.greatest / most)), "{place}: {window:?}, {most}");
        assert!((0.5..2.0).contains(&(window.least / few)), "{place}: {window:?}, {few}");
    }
    let authority = Authority {
        source: "Schelleng 1973, the slopes of his diagram, as restated in Euphonics 9.3.1",
        grade: Grade::Printed,
    };
    let (first, second) = (super::slope(&greatest), super::slope(&least));
    println!("slopes {first:.2} and {second:.2}");
    check(
        &authority,
        [
            row(
                "slope of the greatest force",
                first,
                -1.0,
                Within::Amount(0.35),
                "eight places, chance of regime near integer 1/β",
            ),
            row("slope of the least force", second, -2.0, Within::Amount(0.45), "the same"),
        ],
    );
}

#[test]
fn the_measured_coefficients_are_met() {
    // Schoonderwaldt, Guettler and Askenfelt 2008, as cited in secondary texts: F_max = c_u v/β, F_min = c_l v/β².
    // At 10 cm/s c_u = 0.73 ± 0.05 kg/s and c_l = 4.2 ± 0.4 g/s. The upper one needs no body; ours with the friction of
    // the model (drop 0.6, theirs 0.69) lies within their four speeds' values 0.73 to 1.0, and a tenth below.
    // The lower one hangs on the bridge: between 60 and 10 kg/s it covers theirs; measured least force did not grow with
    // speed, a simulated one does, which Schelleng's formula shares.
    let speed = 0.1;
    let middle = |body: &Body| {
        let (mut upper, mut lower) = (0.0, 0.0);
        for place in PLACES {
            let window =
                map::window(&steel_d(), body, Law::Hyperbolic, speed, place).expect("a window");
            upper += (window.greatest * place / speed).ln() / PLACES.len() as f64;
            lower += (window.least * place * place / speed).ln() / PLACES.len() as f64;
        }
        (upper.exp(), lower.exp() * 1e3)
    };
    let (upper, stiff) = middle(&Body::resistive(30.0));
    let (_, soft) = middle(&Body::resistive(10.0));
    println!("c_u {upper:.2} kg/s; c_l {stiff:.1} g/s at 30 kg/s, {soft:.1} at 10");
    assert!((0.66..1.24).contains(&upper), "{upper}");
    assert!(stiff < 4.2 && soft > 4.2, "{stiff} to {soft} does not hold 4.2 g/s");
}

#[test]
fn the_map_has_its_regions_where_they_belong() {
    for trade in super::trade() {
        let body = Body::generic(trade.kind, &trade.setting);
        let resistance = trade.setting.bridge_resistance.get();
        let map = PlaceMap::usual(trade.sounding(), body, resistance, 0.1, 12);
        let rows: Vec<_> = map.rows().collect();
        assert_eq!(rows.len(), 12);
        // A row is a function of its number alone.
        assert_eq!(rows[5], map.row(5).unwrap());
        assert!(map.row(12).is_none());
        let clean =
            |row: &map::Row| row.cells.iter().filter(|c| c.regime == Regime::Helmholtz).count();
        let all: usize = rows.iter().map(clean).sum();
        assert!((15..110).contains(&all), "{}: {all} clean of 144", trade.name);
        for row in &rows {
            // Pressed far above the limit nothing is clean.
            let pressed =
                row.cells.iter().zip(&map.forces).filter(|(_, f)| **f > 3.0 * row.limits.0);
            assert!(
                pressed.clone().all(|(c, _)| c.regime != Regime::Helmholtz),
                "{}: {row:?}",
                trade.name
            );
        }
        // Nearer to the bridge the window stands at greater force.
        let lowest = |row: &map::Row| {
            row.cells
                .iter()
                .zip(&map.forces)
                .find(|(c, _)| c.regime == Regime::Helmholtz)
                .map(|(_, f)| *f)
        };
        let ends = (lowest(&rows[2]), lowest(&rows[9]));
        assert!(ends.0 > ends.1, "{}: {ends:?}", trade.name);
    }
}
