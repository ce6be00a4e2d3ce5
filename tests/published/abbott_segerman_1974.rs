//! Abbott and Segerman 1974: how high gut goes before it breaks.

use strings::construction::Build;
use strings::material::{self, GUT};
use strings::pitch::{self, Note};
use strings::quantity::{Degree, Hertz, KilogramPerCubicMetre, Pascal};
use strings::report::Property;
use support::{Authority, Grade, Within, check, physics, row};

const INDEX: Authority = Authority {
    source: "Abbott and Segerman 1974, Galpin Soc. J. 27: 260 Hz m (240 to 280), from memory",
    grade: Grade::Hearsay,
};

#[test]
fn the_index_as_a_stress() {
    // 4 rho (L f)^2 = 4 * 1320 * 260^2 = 356.9 MPa, the stretch at break left out.
    let found = physics!(strength::breaking_index)(
        Pascal::new(356.9e6),
        KilogramPerCubicMetre::new(1320.0),
    );
    check(&INDEX, [row("Hz m", found, 260.0, Within::Share(1e-4), "worked out by hand")]);
}

#[test]
fn gut_of_the_model_breaks_at_the_index() {
    // At break the string is longer by its stretch and lighter a metre by as much.
    let stretched = 1.0 + GUT.strength.value / GUT.modulus.value;
    let of = |pascal: f64| {
        physics!(strength::breaking_index)(
            Pascal::new(pascal),
            KilogramPerCubicMetre::new(GUT.density.value / stretched),
        )
    };
    check(
        &INDEX,
        [row(
            "Hz m",
            of(GUT.strength.value),
            260.0,
            Within::Share(0.08),
            "240 to 280 are met in use",
        )],
    );
    let (low, high) = (of(GUT.strength.low), of(GUT.strength.high));
    check(
        &INDEX,
        [
            row("low end, Hz m", low, 240.0, Within::Share(0.02), "an end of a range, remembered"),
            row(
                "high end, Hz m",
                high,
                280.0,
                Within::Share(0.02),
                "an end of a range, remembered",
            ),
        ],
    );
}

#[test]
fn from_a_violins_e_to_the_index() {
    let e = Note::parse("E5").expect("a note").frequency(Hertz::new(440.0));
    check(
        &INDEX,
        [
            row(
                "L f at 0.328 m, Hz m",
                0.328 * e.get(),
                216.2356,
                Within::Share(1e-5),
                "worked out by hand",
            ),
            row(
                "semitones from e'' to 260 Hz m",
                pitch::cents(e, Hertz::new(260.0 / 0.328)).get() / 100.0,
                3.190_888,
                Within::Amount(1e-5),
                "worked out by hand",
            ),
        ],
    );
}

#[test]
fn the_model_puts_a_plain_gut_e_as_near_to_breaking() {
    // From memory: strings were worked two to four semitones below breaking.
    let twist = Degree::new(material::GUT_TWIST_OF_TABLE);
    let setting = crate::setting(0.328, 659.255);
    let found = crate::value(
        (&GUT, Build::Twisted { twist }),
        0.62,
        &[],
        &setting,
        Property::BreakingPitch,
    );
    let margin = pitch::cents(Hertz::new(659.255), Hertz::new(found)).get() / 100.0;
    assert!((2.0..=4.0).contains(&margin), "{margin} semitones");
}
