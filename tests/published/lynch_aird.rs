//! Lynch-Aird and Woodhouse 2017 and 2018: what harp strings of nylon and gut do under stress, humidity and warmth.

use strings::material::{GUT, POLYAMIDE};
use strings::quantity::{KilogramPerMetre, Metre, Ratio};
use support::{Authority, Grade, Within, check, physics, row};

#[test]
fn density_of_stretched_nylon() {
    // 2017, section 4.1, following its eq. 3: bulk density falls to about 97 % on first stretching.
    // From memory: harp strings of nylon stretch by some ten per cent.
    let authority = Authority {
        source: "Lynch-Aird and Woodhouse 2017, Materials 10(5) 497, section 4.1: bulk density about 97 % when stretched",
        grade: Grade::Measured,
    };
    let stretch = Ratio::new(0.10);
    let d = Metre::from_mm(1.0);
    let thinner =
        physics!(stiffness::diameter_at_pitch)(d, d, stretch, Ratio::new(POLYAMIDE.poisson.value));
    let lighter = physics!(mass::stretched)(KilogramPerMetre::new(1.0), stretch).get();
    let found = lighter / (physics!(mass::circle)(thinner).get() / physics!(mass::circle)(d).get());
    check(
        &authority,
        [row(
            "density over the unstretched",
            found,
            0.97,
            Within::Share(0.02),
            "printed as about; the stretch is remembered",
        )],
    );
}

#[test]
fn a_string_that_keeps_its_volume_keeps_its_density() {
    let authority = Authority {
        source: "Poisson's ratio of one half keeps the volume, to first order",
        grade: Grade::Identity,
    };
    let (stretch, d) = (Ratio::new(1e-4), Metre::from_mm(0.8));
    let thinner = physics!(stiffness::diameter_at_pitch)(d, d, stretch, Ratio::new(0.5));
    let found = physics!(mass::circle)(thinner).get() * (1.0 + stretch.get())
        / physics!(mass::circle)(d).get();
    check(
        &authority,
        [row(
            "volume over the unstretched",
            found,
            1.0,
            Within::Amount(2e-8),
            "second order in the stretch",
        )],
    );
}

#[test]
fn gut_nearly_cancels_what_humidity_does() {
    // 2018, abstract: tuning at fixed length is remarkably stable, changes of mass and tension largely cancel.
    let drift = |left: f64| {
        let water = physics!(climate::collagen_water);
        left * physics!(climate::from_water)(water, Ratio::new(0.5), Ratio::new(0.2)).get()
    };
    let (alone, left) = (drift(1.0), drift(GUT.moisture_left.value));
    assert!(0.0 < left && left < alone / 2.0, "{left} cents are left of {alone}");
    // Mass alone: 100 to 200 g/kg of water over 40 to 60 % (15.14 and 21.06 % in the table of Heritage Science 2013, 1:14)
    // is (600/ln 2) * 5.92/117.95 = 43.4 cents.
    let authority = Authority {
        source: "Heritage Science 2013, 1:14, Table 1, differences worked out by hand",
        grade: Grade::Fitted,
    };
    check(
        &authority,
        [row(
            "40 to 60 %, mass alone, cents",
            drift(1.0),
            43.4,
            Within::Share(0.10),
            "the fit misses each end by up to 0.6 points",
        )],
    );
}
