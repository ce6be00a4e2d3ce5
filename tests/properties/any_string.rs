//! Strings and settings drawn from a seed, anywhere within the bounds of the model.

use strings::construction::{Build, Construction, Core, Form, Layout, MOST_WINDINGS, Winding};
use strings::error::{self, Bound};
use strings::material::{CORES, Class, METALS};
use strings::quantity::{Celsius, Degree, Hertz, KilogramPerSecond, Metre, Ratio};
use strings::setting::{Setting, Swing, Untuned};
use support::Seeded;

/// A number within the bound.
pub(crate) fn within(seeded: &mut Seeded, bound: Bound) -> f64 {
    seeded.between(bound.min, bound.max)
}

/// A winding within the bounds.
pub(crate) fn winding(seeded: &mut Seeded) -> Winding {
    Winding {
        metal: seeded.one_of(METALS),
        form: *seeded.one_of(&[Form::Round, Form::Flat]),
        thickness: Metre::new(within(seeded, error::WINDING_THICKNESS)),
        bedding: Ratio::new(within(seeded, error::BEDDING)),
        gap: Ratio::new(within(seeded, error::GAP)),
    }
}

/// A core of any material in any arrangement that the material allows.
pub(crate) fn core(seeded: &mut Seeded) -> Core {
    let material = *seeded.one_of(CORES);
    let diameter = within(seeded, error::CORE_DIAMETER);
    let twist = Degree::new(within(seeded, error::TWIST_ANGLE));
    let other = seeded.bits().is_multiple_of(2);
    let build = match material.class {
        Class::Gut => Build::Twisted { twist },
        Class::Steel if other => Build::Strand {
            layout: *seeded.one_of(&Layout::ALL),
            lay: Degree::new(within(seeded, error::LAY_ANGLE)),
        },
        Class::Polymer if other => Build::Multifilament {
            filament: Metre::new(within(seeded, error::FILAMENT_DIAMETER).min(diameter / 3.0)),
            fill: Ratio::new(within(seeded, error::FILL)),
            twist,
        },
        Class::Steel | Class::Polymer => Build::Solid,
    };
    Core { material, build, diameter: Metre::new(diameter) }
}

/// A string of any core under none to three windings.
pub(crate) fn construction(seeded: &mut Seeded) -> Construction {
    let core = core(seeded);
    let windings: Vec<Winding> =
        (0..seeded.below(MOST_WINDINGS + 1)).map(|_| winding(seeded)).collect();
    Construction::new(core, &windings, "string")
        .unwrap_or_else(|faults| panic!("drawn within the bounds, and yet: {faults:?}"))
}

/// A setting within the bounds.
pub(crate) fn setting(seeded: &mut Seeded) -> Setting {
    let setting = Setting {
        sounding_length: Metre::new(within(seeded, error::SOUNDING_LENGTH)),
        sounding_length_doubt: Metre::new(seeded.between(0.0, 0.1)),
        afterlength: Metre::new(within(seeded, error::AFTERLENGTH)),
        nut_to_peg: Metre::new(within(seeded, error::NUT_TO_PEG)),
        pitch: Hertz::new(within(seeded, error::PITCH)),
        angle_over_bridge: Degree::new(seeded.between(120.0, 180.0)),
        peg_diameter: Metre::new(within(seeded, error::PEG_DIAMETER)),
        gear_ratio: Ratio::new(within(seeded, error::GEAR_RATIO)),
        string_height: Metre::new(within(seeded, error::STRING_HEIGHT)),
        nut_radius: Metre::new(within(seeded, error::NUT_RADIUS)),
        body: strings::body::skeleton("violin"),
        bridge_resistance: KilogramPerSecond::new(within(seeded, error::RESISTANCE)),
        peak_resistance: KilogramPerSecond::new(within(seeded, error::RESISTANCE)),
        temperature: Celsius::new(within(seeded, error::TEMPERATURE)),
        humidity: Ratio::new(within(seeded, error::HUMIDITY)),
        swings: core::array::from_fn(|_| Swing {
            temperature: seeded.between(0.0, 30.0),
            humidity: Ratio::new(seeded.between(0.0, 0.8)),
        }),
        untuned: *seeded.one_of(&Untuned::ALL),
    };
    setting
        .checked("setting")
        .unwrap_or_else(|faults| panic!("drawn within the bounds, and yet: {faults:?}"))
}
