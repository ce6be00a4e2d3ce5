//! Strings as they are made: five hundred of every family, on every instrument, near the tensions that are usual.

use strings::construction::{Build, Construction, Core, Form, Layout, Winding};
use strings::draw::Draw;
use strings::material::{self, Class, CoreMaterial};
use strings::physics::mass;
use strings::quantity::{
    Celsius, Degree, Hertz, KilogramPerCubicMetre, KilogramPerMetre, KilogramPerSecond, Metre,
    Ratio,
};
use strings::report::{self, Property};
use strings::setting::{Setting, Swing, Untuned};
use support::Seeded;

/// Length in metres, pitches from high to low, least and greatest tension, resistances, angle, height at the octave.
type Instrument = (f64, [f64; 4], (f64, f64), (f64, f64), f64, f64);

const INSTRUMENTS: [Instrument; 4] = [
    (0.328, [659.255, 440.0, 293.665, 195.998], (35.0, 85.0), (30.0, 10.0), 158.0, 0.004),
    (0.375, [440.0, 293.665, 195.998, 130.813], (40.0, 90.0), (30.0, 10.0), 157.0, 0.005),
    (0.690, [220.0, 146.832, 97.999, 65.406], (90.0, 180.0), (50.0, 15.0), 152.0, 0.007),
    (1.060, [97.999, 73.416, 55.0, 41.203], (180.0, 320.0), (120.0, 40.0), 152.0, 0.010),
];

/// That many strings that hold their pitch, each in its setting.
pub(crate) fn made(seed: u64, count: usize) -> Vec<(Construction, Setting)> {
    let mut seeded = Seeded::new(seed);
    let mut all = Vec::new();
    while all.len() < count {
        let (length, pitches, tensions, resistances, angle, height) = *seeded.one_of(&INSTRUMENTS);
        let setting = Setting {
            sounding_length: Metre::new(length),
            sounding_length_doubt: Metre::new(seeded.between(0.0, 0.01) * length),
            afterlength: Metre::new(length / 6.0),
            nut_to_peg: Metre::new(0.05),
            pitch: Hertz::new(*seeded.one_of(&pitches)),
            angle_over_bridge: Degree::new(angle),
            peg_diameter: Metre::new(0.007),
            gear_ratio: Ratio::new(1.0),
            string_height: Metre::new(height),
            nut_radius: Metre::new(seeded.between(0.001, 0.004)),
            body: strings::body::skeleton("violin"),
            bridge_resistance: KilogramPerSecond::new(resistances.0),
            peak_resistance: KilogramPerSecond::new(resistances.1),
            temperature: Celsius::new(seeded.between(16.0, 26.0)),
            humidity: Ratio::new(seeded.between(0.35, 0.65)),
            // In an evening and a week a part of what the seasons do.
            swings: {
                let (warmth, damp) = (seeded.between(3.0, 8.0), seeded.between(0.1, 0.3));
                [(0.6, 0.3), (0.8, 0.5), (1.0, 1.0)].map(|(of_warmth, of_damp)| Swing {
                    temperature: of_warmth * warmth,
                    humidity: Ratio::new(of_damp * damp),
                })
            },
            untuned: Untuned::Season,
        };
        let tension = seeded.between(tensions.0, tensions.1);
        if let Some(string) = string(&mut seeded, &setting, tension) {
            all.push((string, setting));
        }
    }
    all
}

fn build(seeded: &mut Seeded, material: &CoreMaterial) -> Build {
    let other = seeded.bits().is_multiple_of(2);
    match material.class {
        Class::Gut => Build::Twisted { twist: Degree::new(seeded.between(20.0, 45.0)) },
        Class::Steel if other => Build::Strand {
            layout: *seeded.one_of(&Layout::ALL),
            lay: Degree::new(seeded.between(6.0, 14.0)),
        },
        Class::Polymer if other => Build::Multifilament {
            filament: Metre::new(seeded.between(2e-5, 5e-5)),
            fill: Ratio::new(seeded.between(0.62, 0.78)),
            twist: Degree::new(seeded.between(5.0, 20.0)),
        },
        Class::Steel | Class::Polymer => Build::Solid,
    }
}

/// A string of some material near that tension, plain or wound; nothing if it would break or cannot be made.
fn string(seeded: &mut Seeded, setting: &Setting, tension: f64) -> Option<Construction> {
    let material = *seeded.one_of(material::CORES);
    let build = build(seeded, material);
    let lf = setting.sounding_length.get() * setting.pitch.get();
    let mass = tension / (4.0 * lf * lf);
    let plain = seeded.share() < 0.25;
    let share = if plain { 1.0 } else { seeded.between(0.12, 0.6) };
    let filled = match build {
        Build::Multifilament { fill, .. } => fill.get(),
        Build::Strand { layout, .. } => {
            f64::from(layout.wires().0) / layout.diameter_in_wires().powi(2)
        }
        Build::Solid | Build::Twisted { .. } => 1.0,
    };
    let area = share * mass / (material.density.value * filled);
    let d = (area * 4.0 / std::f64::consts::PI).sqrt();
    let core = Core { material, build, diameter: Metre::new(d) };
    let mut windings = Vec::new();
    if !plain {
        let metal = seeded.one_of(material::METALS);
        let form = *seeded.one_of(&[Form::Flat, Form::Flat, Form::Round]);
        let bedding = Ratio::new(seeded.between(0.0, 0.2));
        let thickness = mass::winding_thickness(
            KilogramPerCubicMetre::new(metal.density.value),
            form,
            bedding,
            core.diameter,
            KilogramPerMetre::new((1.0 - share) * mass),
        )?;
        windings.push(Winding { metal, form, thickness, bedding, gap: Ratio::new(0.0) });
    }
    let string = Construction::new(core, &windings, "string").ok()?;
    let values = report::values(&string, setting, &Draw::CENTRAL);
    (values.get(Property::BreakingShare) < 0.8).then_some(string)
}
