//! The bowed string, simulated: against printed runs and limits, identities, the model's own losses, and laws.
//!
//! Every expected value has its source beside it. Where a test shows that a limit or a law comes out of the simulation,
//! the tolerance says how well.
#![allow(
    clippy::disallowed_methods,
    reason = "an expected value is not computed with the functions that the model computes with"
)]

mod attack;
mod bits;
mod decay;
mod friction_laws;
mod held_out;
mod helmholtz;
mod lanes;
mod mcintyre_1983;
mod schelleng;
mod sharp;
mod sounds;
mod steps;
mod twist;

use strings::construction::{Build, Construction, Core, Form, Layout, Winding};
use strings::instrument::{self, Kind};
use strings::material::{self, CoreMaterial, METALS};
use strings::quantity::{Celsius, Degree, Hertz, KilogramPerSecond, Metre, Ratio};
use strings::setting::{Setting, Swing, Untuned};
use strings::simulate::Sounding;

/// A string of the trade with its instrument and setting.
struct Trade {
    name: &'static str,
    kind: &'static Kind,
    construction: Construction,
    setting: Setting,
}

impl Trade {
    fn sounding(&self) -> Sounding {
        Sounding::of(&self.construction, &self.setting)
    }
}

fn setting(kind: &Kind, pitch_hz: f64) -> Setting {
    Setting {
        sounding_length: Metre::new(kind.full_length),
        sounding_length_doubt: Metre::new(0.0),
        afterlength: Metre::new(kind.full_length / 6.0),
        nut_to_peg: Metre::new(kind.nut_to_peg),
        pitch: Hertz::new(pitch_hz),
        angle_over_bridge: Degree::new(kind.angle),
        peg_diameter: Metre::new(kind.peg),
        gear_ratio: Ratio::new(1.0),
        string_height: Metre::new(kind.height),
        nut_radius: Metre::new(kind.nut_radius),
        body: strings::body::skeleton(kind.key),
        bridge_resistance: KilogramPerSecond::new(kind.resistance.0),
        peak_resistance: KilogramPerSecond::new(kind.resistance.1),
        temperature: Celsius::new(20.0),
        humidity: Ratio::new(0.5),
        swings: [(4.0, 0.08), (5.0, 0.12), (5.0, 0.2)]
            .map(|(temperature, humidity)| Swing { temperature, humidity: Ratio::new(humidity) }),
        untuned: Untuned::Season,
    }
}

fn string(
    (material, build): (&'static CoreMaterial, Build),
    diameter_mm: f64,
    winding_mm: Option<(&str, f64)>,
) -> Construction {
    let core = Core { material, build, diameter: Metre::from_mm(diameter_mm) };
    let windings: Vec<Winding> = winding_mm
        .into_iter()
        .map(|(metal, thickness)| Winding {
            metal: METALS.iter().find(|m| m.key == metal).expect("a metal of the tables"),
            form: Form::Flat,
            thickness: Metre::from_mm(thickness),
            bedding: Ratio::new(0.1),
            gap: Ratio::new(0.0),
        })
        .collect();
    Construction::new(core, &windings, "string").expect("a string of the trade is in bounds")
}

/// Plain and wound strings of every family and size: common practice, no source.
fn trade() -> Vec<Trade> {
    let solid = (&material::SPRING_STEEL, Build::Solid);
    let gut = (&material::GUT, Build::Twisted { twist: Degree::new(30.0) });
    let strand = (
        &material::SPRING_STEEL,
        Build::Strand { layout: Layout::OneByNineteen, lay: Degree::new(12.0) },
    );
    let bundle = (
        &material::POLYAMIDE,
        Build::Multifilament {
            filament: Metre::from_mm(0.03),
            fill: Ratio::new(0.7),
            twist: Degree::new(10.0),
        },
    );
    let of = |name, kind, pitch, construction| Trade {
        name,
        kind,
        construction,
        setting: setting(kind, pitch),
    };
    let (violin, cello, bass) = (&instrument::VIOLIN, &instrument::CELLO, &instrument::DOUBLE_BASS);
    vec![
        of("violin E, plain steel", violin, 659.26, string(solid, 0.26, None)),
        of("violin A, plain gut", violin, 440.0, string(gut, 0.76, None)),
        of(
            "violin D, bundle under aluminium",
            violin,
            293.66,
            string(bundle, 0.65, Some(("aluminium", 0.07))),
        ),
        of(
            "violin G, bundle under silver",
            violin,
            196.0,
            string(bundle, 0.58, Some(("silver", 0.11))),
        ),
        of(
            "cello A, wire under steel",
            cello,
            220.0,
            string(solid, 0.40, Some(("chrome-steel", 0.10))),
        ),
        of(
            "cello G, strand under tungsten",
            cello,
            98.0,
            string(strand, 0.62, Some(("tungsten", 0.16))),
        ),
        of(
            "bass E, strand under steel",
            bass,
            41.2,
            string(strand, 1.20, Some(("chrome-steel", 0.62))),
        ),
    ]
}

/// A string without stiffness, whose partials all lose the same, and twist not at all.
fn plain(pitch: f64, impedance: f64, loss: f64) -> Sounding {
    Sounding {
        pitch,
        length: 0.328,
        impedance,
        inharmonicity: 0.0,
        losses: vec![loss; 60],
        torsion_ratio: 5.0,
        torsion_impedance: f64::INFINITY,
        torsion_q: 30.0,
        end: 1.0,
    }
}

/// The slope of a straight line through points.
fn slope(points: &[(f64, f64)]) -> f64 {
    let n = points.len() as f64;
    let (x, y) = points.iter().fold((0.0, 0.0), |s, p| (s.0 + p.0 / n, s.1 + p.1 / n));
    let over: f64 = points.iter().map(|p| (p.0 - x) * (p.1 - y)).sum();
    let under: f64 = points.iter().map(|p| (p.0 - x) * (p.0 - x)).sum();
    over / under
}
