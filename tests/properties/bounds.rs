//! What is out of bounds is refused, with the field, the value and what is allowed; a thing just inside is not.

use strings::construction::{Build, Construction, Core, Form, Layout, Winding};
use strings::error::{self, Bound, Fault};
use strings::material::{self, GUT, POLYAMIDE, SPRING_STEEL};
use strings::quantity::{Celsius, Degree, Hertz, KilogramPerSecond, Metre, Ratio};
use strings::setting::{Setting, Swing, Untuned};

/// Numbers that no field takes, whatever its bound.
const ABSURD: [f64; 5] = [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, f64::MAX, f64::MIN];

/// Tries a field with numbers outside its bound, which must be refused in its name, and with the ends, which must not.
#[track_caller]
fn refuses<T>(
    field: &str,
    (min, max, unit): (f64, f64, &str),
    try_it: impl Fn(f64) -> Result<T, Vec<Fault>>,
) {
    let step = 1e-6 * (max - min);
    for value in ABSURD.into_iter().chain([min - step, max + step]) {
        let faults = try_it(value).err().unwrap_or_else(|| panic!("{field} takes {value}"));
        // A number may break more rules than one; the bound of its field must be among them.
        let fault = faults
            .iter()
            .find(|fault| fault.field == field && fault.allowed.contains(" to "))
            .unwrap_or_else(|| panic!("{value} in {field} is refused as {faults:?}"));
        // However large a number is, it is shown in a few digits, and it is the same number.
        assert!(fault.value.len() < 30, "{field}: {}", fault.value);
        let shown = fault.value.parse::<f64>();
        assert!(shown.is_ok_and(|shown| shown.to_bits() == value.to_bits()), "{}", fault.value);
        for part in [min.to_string(), max.to_string(), unit.to_owned()] {
            assert!(
                fault.allowed.contains(&part),
                "{field}: {part} is missing in {:?}",
                fault.allowed
            );
        }
        let message = fault.to_string();
        assert!(message.contains(field) && message.contains(&fault.value), "{message}");
    }
    for value in [min, max] {
        assert!(try_it(value).is_ok(), "{field} refuses {value}");
    }
}

const fn bound(bound: Bound) -> (f64, f64, &'static str) {
    (bound.min, bound.max, bound.unit)
}

fn setting() -> Setting {
    Setting {
        sounding_length: Metre::new(0.328),
        sounding_length_doubt: Metre::new(0.0),
        afterlength: Metre::new(0.055),
        nut_to_peg: Metre::new(0.05),
        pitch: Hertz::new(440.0),
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

#[test]
fn every_field_of_a_setting() {
    type Put = fn(&mut Setting, f64);
    let fields: [(&str, (f64, f64, &str), Put); 20] = [
        ("sounding_length_m", bound(error::SOUNDING_LENGTH), |s, x| {
            s.sounding_length = Metre::new(x);
        }),
        ("sounding_length_doubt_m", (0.0, 0.1, "m"), |s, x| {
            s.sounding_length_doubt = Metre::new(x);
        }),
        ("afterlength_m", bound(error::AFTERLENGTH), |s, x| s.afterlength = Metre::new(x)),
        ("nut_to_peg_m", bound(error::NUT_TO_PEG), |s, x| s.nut_to_peg = Metre::new(x)),
        ("pitch_hz", bound(error::PITCH), |s, x| s.pitch = Hertz::new(x)),
        ("angle_over_bridge_deg", (120.0, 180.0, "°"), |s, x| {
            s.angle_over_bridge = Degree::new(x);
        }),
        ("peg_diameter_m", bound(error::PEG_DIAMETER), |s, x| s.peg_diameter = Metre::new(x)),
        ("gear_ratio", bound(error::GEAR_RATIO), |s, x| s.gear_ratio = Ratio::new(x)),
        ("string_height_m", bound(error::STRING_HEIGHT), |s, x| s.string_height = Metre::new(x)),
        ("nut_radius_m", bound(error::NUT_RADIUS), |s, x| s.nut_radius = Metre::new(x)),
        ("bridge_resistance_kg_s", bound(error::RESISTANCE), |s, x| {
            s.bridge_resistance = KilogramPerSecond::new(x);
        }),
        ("peak_resistance_kg_s", bound(error::RESISTANCE), |s, x| {
            s.peak_resistance = KilogramPerSecond::new(x);
        }),
        ("temperature_c", bound(error::TEMPERATURE), |s, x| s.temperature = Celsius::new(x)),
        ("humidity", bound(error::HUMIDITY), |s, x| s.humidity = Ratio::new(x)),
        ("evening_temperature_swing_k", (0.0, 30.0, "K"), |s, x| s.swings[0].temperature = x),
        ("evening_humidity_swing", (0.0, 0.8, "1"), |s, x| {
            s.swings[0].humidity = Ratio::new(x);
        }),
        ("week_temperature_swing_k", (0.0, 30.0, "K"), |s, x| s.swings[1].temperature = x),
        ("week_humidity_swing", (0.0, 0.8, "1"), |s, x| s.swings[1].humidity = Ratio::new(x)),
        ("temperature_swing_k", (0.0, 30.0, "K"), |s, x| s.swings[2].temperature = x),
        ("humidity_swing", (0.0, 0.8, "1"), |s, x| s.swings[2].humidity = Ratio::new(x)),
    ];
    for (name, bound, put) in fields {
        refuses(&format!("here.{name}"), bound, |x| {
            let mut setting = setting();
            put(&mut setting, x);
            setting.checked("here")
        });
    }
}

#[test]
fn every_fault_of_a_setting_is_told_at_once() {
    let setting = Setting {
        pitch: Hertz::new(f64::NAN),
        humidity: Ratio::new(2.0),
        temperature: Celsius::new(100.0),
        ..setting()
    };
    let faults = setting.checked("s").expect_err("three fields are out of bounds");
    let fields: Vec<_> = faults.iter().map(|fault| fault.field.as_str()).collect();
    assert_eq!(fields, ["s.pitch_hz", "s.temperature_c", "s.humidity"]);
}

fn winding(thickness: f64, bedding: f64, gap: f64) -> Winding {
    let metal = material::metal_of("silver").expect("the model has silver");
    Winding {
        metal,
        form: Form::Flat,
        thickness: Metre::new(thickness),
        bedding: Ratio::new(bedding),
        gap: Ratio::new(gap),
    }
}

#[test]
fn every_field_of_a_construction() {
    let steel = |build, diameter: f64| Core {
        material: &SPRING_STEEL,
        build,
        diameter: Metre::new(diameter),
    };
    let new = |core, windings: &[Winding]| Construction::new(core, windings, "string");
    refuses("string.core.diameter_m", bound(error::CORE_DIAMETER), |x| {
        new(steel(Build::Solid, x), &[])
    });
    refuses("string.core.lay_deg", bound(error::LAY_ANGLE), |x| {
        new(steel(Build::Strand { layout: Layout::OneBySeven, lay: Degree::new(x) }, 5e-4), &[])
    });
    let bundle = |filament: f64, fill: f64, twist: f64| {
        let build = Build::Multifilament {
            filament: Metre::new(filament),
            fill: Ratio::new(fill),
            twist: Degree::new(twist),
        };
        new(Core { material: &POLYAMIDE, build, diameter: Metre::new(1e-3) }, &[])
    };
    refuses("string.core.filament_m", bound(error::FILAMENT_DIAMETER), |x| bundle(x, 0.7, 10.0));
    refuses("string.core.fill", bound(error::FILL), |x| bundle(3e-5, x, 10.0));
    refuses("string.core.twist_deg", bound(error::TWIST_ANGLE), |x| bundle(3e-5, 0.7, x));
    refuses("string.core.twist_deg", bound(error::TWIST_ANGLE), |x| {
        new(
            Core {
                material: &GUT,
                build: Build::Twisted { twist: Degree::new(x) },
                diameter: Metre::new(8e-4),
            },
            &[],
        )
    });
    for i in 0..3 {
        let at = |odd: Winding| {
            let mut windings = [winding(1e-4, 0.1, 0.0); 3];
            windings[i] = odd;
            new(steel(Build::Solid, 4e-4), &windings)
        };
        refuses(
            &format!("string.windings[{i}].thickness_m"),
            bound(error::WINDING_THICKNESS),
            |x| at(winding(x, 0.1, 0.0)),
        );
        refuses(&format!("string.windings[{i}].bedding"), bound(error::BEDDING), |x| {
            at(winding(1e-4, x, 0.0))
        });
        refuses(&format!("string.windings[{i}].gap"), bound(error::GAP), |x| {
            at(winding(1e-4, 0.1, x))
        });
    }
}

#[test]
fn what_cannot_be_made_is_refused_by_name() {
    let solid = Build::Solid;
    let strand = Build::Strand { layout: Layout::OneBySeven, lay: Degree::new(10.0) };
    let twisted = Build::Twisted { twist: Degree::new(30.0) };
    let bundle = Build::Multifilament {
        filament: Metre::new(3e-5),
        fill: Ratio::new(0.7),
        twist: Degree::new(10.0),
    };
    for (material, allowed) in [
        (&GUT, [false, false, true, false]),
        (&SPRING_STEEL, [true, true, false, false]),
        (&POLYAMIDE, [true, false, false, true]),
    ] {
        for (build, allowed) in [solid, strand, twisted, bundle].into_iter().zip(allowed) {
            let core = Core { material, build, diameter: Metre::new(6e-4) };
            let made = Construction::new(core, &[], "s");
            assert_eq!(made.is_ok(), allowed, "{} as {build:?}", material.name);
            let fields: Vec<_> =
                made.err().into_iter().flatten().map(|fault| fault.field).collect();
            assert!(allowed || fields == ["s.core.build"], "{fields:?}");
        }
    }
    let thick = Build::Multifilament {
        filament: Metre::new(2.5e-4),
        fill: Ratio::new(0.7),
        twist: Degree::new(10.0),
    };
    let faults = Construction::new(
        Core { material: &POLYAMIDE, build: thick, diameter: Metre::new(6e-4) },
        &[],
        "s",
    )
    .expect_err("a filament of more than a third of its bundle");
    assert_eq!(faults[0].field, "s.core.filament_m");
    let core = Core { material: &SPRING_STEEL, build: solid, diameter: Metre::new(4e-4) };
    let faults =
        Construction::new(core, &[winding(1e-4, 0.0, 0.0); 4], "s").expect_err("four windings");
    assert_eq!((faults[0].field.as_str(), faults[0].value.as_str()), ("s.windings", "4"));
}
