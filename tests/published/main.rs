//! The model against what others have printed: one file a source, one row a value.
//!
//! Every expected value comes from its source or by arithmetic shown beside it, never from the model.
//! A source read in another text says "as cited in"; a fact of the trade says "common practice, no source"; what was
//! remembered and not looked up says "from memory".
#![allow(
    clippy::disallowed_methods,
    reason = "an expected value is not computed with the functions that the model computes with"
)]

mod abbott_segerman_1974;
mod astm_a228;
mod costello_1997;
mod derivations;
mod en_10270;
mod en_1992;
mod euphonics;
mod fletcher_1964;
mod french_savart;
mod graham_1998;
mod groves_kemp_2019;
mod guettler;
mod hart;
mod hearle_1969;
mod heritage_2013;
mod iso_16;
mod lampis_2025;
mod lasting;
mod lynch_aird;
mod morton_hearle;
mod periodictable;
mod piano_handout_2000;
mod piano_wire;
mod pickering_desvages;
mod practice;
mod schoonderwaldt_2008;
mod torsion_measured;
mod trade_units;
mod walton_1983;
mod whole_string;
mod woodhouse_2004;
mod woodhouse_lynch_aird_2019;
mod young_1952;

use strings::construction::{Build, Construction, Core, Winding};
use strings::draw::Draw;
use strings::material::CoreMaterial;
use strings::quantity::{Celsius, Degree, Hertz, KilogramPerSecond, Metre, Ratio};
use strings::report::{self, Property};
use strings::setting::{Setting, Swing, Untuned};

/// A string at pitch in a room of 20 degrees and 50 % humidity, the conditions of the model's tables.
fn setting(length_m: f64, pitch_hz: f64) -> Setting {
    Setting {
        sounding_length: Metre::new(length_m),
        sounding_length_doubt: Metre::new(0.0),
        afterlength: Metre::new(length_m / 6.0),
        nut_to_peg: Metre::new(0.05),
        pitch: Hertz::new(pitch_hz),
        angle_over_bridge: Degree::new(158.0),
        peg_diameter: Metre::new(0.007),
        gear_ratio: Ratio::new(1.0),
        string_height: Metre::new(0.004),
        nut_radius: Metre::new(0.002),
        body: strings::body::skeleton("violin"),
        bridge_resistance: KilogramPerSecond::new(30.0),
        peak_resistance: KilogramPerSecond::new(10.0),
        temperature: Celsius::new(20.0),
        humidity: Ratio::new(0.5),
        swings: [(4.0, 0.08), (5.0, 0.12), (5.0, 0.2)]
            .map(|(temperature, humidity)| Swing { temperature, humidity: Ratio::new(humidity) }),
        untuned: Untuned::Season,
    }
}

/// What the model says of a string, all constants central.
fn value(
    (material, build): (&'static CoreMaterial, Build),
    diameter_mm: f64,
    windings: &[Winding],
    setting: &Setting,
    property: Property,
) -> f64 {
    let diameter = Metre::from_mm(diameter_mm);
    let core = Core { material, build, diameter };
    let construction = Construction::new(core, windings, "string")
        .expect("a string of the literature is in bounds");
    support::called("report::values");
    report::values(&construction, setting, &Draw::CENTRAL).get(property)
}
