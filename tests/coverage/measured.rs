//! Strings that were measured: how many of the measurements lie in the ranges.
//!
//! Where a constant of the model was drawn from the same source, that source cannot speak for it: such rows are counted apart,
//! and the total is that of the others. What a source does not tell of a construction is common practice, no source.

use strings::construction::{Build, Construction, Core, Form, Layout, Winding};
use strings::draw::Draw;
use strings::material::{self, CoreMaterial, POLYAMIDE, SPRING_STEEL};
use strings::physics::mass;
use strings::quantity::{
    Celsius, Degree, Hertz, KilogramPerCubicMetre, KilogramPerMetre, KilogramPerSecond, Metre,
    Ratio,
};
use strings::report::{self, Property};
use strings::setting::{Setting, Swing, Untuned};

const ROPE: Build = Build::Strand { layout: Layout::OneByNineteen, lay: Degree::new(10.0) };
const CABLE: Build = Build::Strand { layout: Layout::SevenBySeven, lay: Degree::new(10.0) };
const BUNDLE: Build = Build::Multifilament {
    filament: Metre::new(3e-5),
    fill: Ratio::new(0.70),
    twist: Degree::new(8.0),
};

fn setting(length: f64, pitch: f64, resistance: f64) -> Setting {
    Setting {
        sounding_length: Metre::new(length),
        sounding_length_doubt: Metre::new(0.0),
        afterlength: Metre::new(length / 6.0),
        nut_to_peg: Metre::new(0.05),
        pitch: Hertz::new(pitch),
        angle_over_bridge: Degree::new(158.0),
        peg_diameter: Metre::new(0.007),
        gear_ratio: Ratio::new(1.0),
        string_height: Metre::new(0.004),
        nut_radius: Metre::new(0.002),
        body: strings::body::skeleton("violin"),
        bridge_resistance: KilogramPerSecond::new(resistance),
        peak_resistance: KilogramPerSecond::new(resistance / 3.0),
        temperature: Celsius::new(20.0),
        humidity: Ratio::new(0.5),
        swings: [(4.0, 0.08), (5.0, 0.12), (6.0, 0.25)]
            .map(|(temperature, humidity)| Swing { temperature, humidity: Ratio::new(humidity) }),
        untuned: Untuned::Season,
    }
}

/// A core of that diameter in millimetres under one winding of `metal`, as thick as brings the printed mass at pitch in g/m.
fn wound(
    core: (&'static CoreMaterial, Build, f64),
    (metal, form): (&str, Form),
    setting: &Setting,
    grams: f64,
) -> Construction {
    let (material, build, mm) = core;
    let core = Core { material, build, diameter: Metre::from_mm(mm) };
    let metal = material::metal_of(metal).unwrap();
    let density = KilogramPerCubicMetre::new(material.density.value);
    let own = match build {
        Build::Strand { layout, lay } => mass::strand(density, core.diameter, layout, lay),
        Build::Multifilament { fill, .. } => mass::bundle(density, core.diameter, fill),
        Build::Solid | Build::Twisted { .. } => mass::solid(density, core.diameter),
    };
    let (none, density) = (Ratio::new(0.0), KilogramPerCubicMetre::new(metal.density.value));
    let mut unstretched = grams * 1e-3;
    loop {
        let wanted = KilogramPerMetre::new(unstretched - own.get());
        let thickness =
            mass::winding_thickness(density, form, none, core.diameter, wanted).unwrap();
        let winding = Winding { metal, form, thickness, bedding: none, gap: none };
        let string = Construction::new(core, &[winding], "string").unwrap();
        let off = at_pitch(&string, setting) / (grams * 1e-3);
        if (off - 1.0).abs() < 1e-4 {
            return string;
        }
        unstretched /= off;
    }
}

fn at_pitch(string: &Construction, setting: &Setting) -> f64 {
    report::values(string, setting, &Draw::CENTRAL).get(Property::MassAtPitch)
}

/// A plain string whose diameter brings the printed mass at pitch in g/m.
fn plain_of_mass(material: &'static CoreMaterial, setting: &Setting, grams: f64) -> Construction {
    let mut mm = 0.5;
    loop {
        let string = plain(material, mm);
        let off = at_pitch(&string, setting) / (grams * 1e-3);
        if (off - 1.0).abs() < 1e-6 {
            return string;
        }
        mm /= off.sqrt();
    }
}

fn plain(material: &'static CoreMaterial, mm: f64) -> Construction {
    let core = Core { material, build: Build::Solid, diameter: Metre::from_mm(mm) };
    Construction::new(core, &[], "string").unwrap()
}

struct Measured {
    /// Who measured, and what of the string is not told.
    source: &'static str,
    string: Construction,
    setting: Setting,
    property: Property,
    value: f64,
    /// Whether a constant on which this property rests was drawn from this source.
    own: bool,
}

/// Woodhouse 2004, Table I, as cited: name, mm of the cores of basses (common practice, no source), pitch,
/// N, g/m, EI in 1e-6 N m2, losses in pull (1e-5), air (1/s), bending (1e-2).
type Guitar = (&'static str, f64, f64, f64, f64, f64, (f64, f64, f64));
const GUITAR: [Guitar; 6] = [
    ("guitar E4", f64::NAN, 329.63, 70.3, 0.38, 130.0, (40.0, 1.5, 2.4)),
    ("guitar B3", f64::NAN, 246.94, 53.4, 0.52, 160.0, (40.0, 1.2, 2.0)),
    ("guitar G3", f64::NAN, 196.00, 58.3, 0.90, 310.0, (14.0, 1.7, 2.0)),
    ("guitar D3", 0.45, 146.83, 71.2, 1.95, 51.0, (5.0, 1.2, 2.0)),
    ("guitar A2", 0.50, 110.00, 73.9, 3.61, 40.0, (7.0, 0.9, 2.5)),
    ("guitar E2", 0.60, 82.41, 71.6, 6.24, 57.0, (2.0, 1.2, 2.0)),
];

fn guitar() -> Vec<Measured> {
    let mut all = Vec::new();
    for (source, mm, pitch, tension, grams, bending, (pull, air, bend)) in GUITAR {
        let bass = pitch < 190.0;
        let setting = setting(0.65, pitch, 30.0);
        let string = if bass {
            wound((&POLYAMIDE, BUNDLE, mm), ("copper", Form::Round), &setting, grams)
        } else {
            plain_of_mass(&POLYAMIDE, &setting, grams)
        };
        let k2 = (std::f64::consts::PI / 0.65_f64).powi(2);
        let ei = bending * 1e-6;
        let in_pull = pull * 1e-5 + air / (2.0 * std::f64::consts::PI * pitch);
        let loss = (tension * in_pull + ei * bend * 1e-2 * k2) / (tension + ei * k2);
        for (property, value, own) in [
            // Tension follows from the mass that was put in. That bundles bend up to twice as stiffly as bonded ones was drawn from these basses.
            (Property::BendingStiffness, ei, bass),
            // The loss of a string in its pull was drawn from these strings.
            (Property::Loss, loss, true),
        ] {
            all.push(Measured { source, string, setting, property, value, own });
        }
    }
    all
}

fn bowed() -> Vec<Measured> {
    let on_rig = setting(0.70, 98.0, 50.0);
    let (at_mores, at_bass) = (setting(0.68, 98.0, 50.0), setting(1.06, 41.2, 120.0));
    let (at_e, at_d) = (setting(0.320, 659.26, 30.0), setting(0.325, 293.66, 30.0));
    let rope = (&SPRING_STEEL, ROPE, 0.65);
    let cello = wound(rope, ("tungsten", Form::Flat), &on_rig, 7.721);
    let mores = wound(rope, ("tungsten", Form::Flat), &at_mores, 7.0);
    let cable = (&SPRING_STEEL, CABLE, 1.25);
    let bass = wound(cable, ("chrome-steel", Form::Flat), &at_bass, 36.0);
    let e = plain(&SPRING_STEEL, 0.26);
    // An impedance of 0.25 kg/s at 293.66 Hz and 0.325 m is 1.31 g/m.
    let thin = (&SPRING_STEEL, ROPE, 0.40);
    let d = wound(thin, ("aluminium", Form::Flat), &at_d, 1.31);
    [
        ("Lampis and others 2025, G", cello, on_rig, Property::BendingStiffness, 3.03e-4, false),
        // Twice the damping ratio of 2.8 to 3.5e-4.
        ("Lampis and others 2025, G", cello, on_rig, Property::Loss, 6.3e-4, true),
        ("Mores 2019, cello G", mores, at_mores, Property::TorsionSpeed, 738.0, false),
        ("Mores 2019, cello G", mores, at_mores, Property::TorsionRatio, 5.5, false),
        ("Serafin, cello", mores, at_mores, Property::TorsionRatio, 5.2, false),
        ("Woodhouse and Loach 1999, cello", mores, at_mores, Property::TorsionSpeed, 831.0, true),
        ("Bavu, Smith and Wolfe 2005, E", bass, at_bass, Property::TorsionRatio, 5.6, false),
        ("Bavu, Smith and Wolfe 2005, E", bass, at_bass, Property::Loss, 1.0 / 900.0, false),
        // Steel of 0.26 mm is common practice.
        ("Pickering 1985, violin E", e, at_e, Property::Tension, 73.0, false),
        ("Pickering 1985, violin E", e, at_e, Property::MassAtPitch, 4.1e-4, false),
        ("Pickering 1985, violin E", e, at_e, Property::Impedance, 0.173, false),
        ("Schoonderwaldt and others 2008, D", d, at_d, Property::GreatestForce, 0.73, false),
        ("Schoonderwaldt and others 2008, D", d, at_d, Property::LeastForce, 0.042, false),
        ("Schoonderwaldt and others 2008, D", d, at_d, Property::LeastForceMeasured, 0.037, true),
    ]
    .map(|(source, string, setting, property, value, own)| Measured {
        source,
        string,
        setting,
        property,
        value,
        own,
    })
    .into()
}

/// Half a unit of the second digit: 0.5 for 51, 5 for 130.
fn half_of_second_digit(value: f64) -> f64 {
    0.5 * 10_f64.powf(value.log10().floor() - 1.0)
}

#[test]
fn ranges_hold_what_others_measured() {
    let (mut held, mut all, mut held_own, mut all_own) = (0, 0, 0, 0);
    let mut widths = Vec::new();
    for m in guitar().into_iter().chain(bowed()) {
        let range = report::report(&m.string, &m.setting).get(m.property);
        // What the guitar's table prints has two digits.
        let half = if m.source.starts_with("guitar") { half_of_second_digit(m.value) } else { 0.0 };
        let hit = range.low <= m.value + half && m.value - half <= range.high;
        println!(
            "{} {}: measured {:.4e}, {:.4e} ({:.4e} to {:.4e}){}{}",
            m.source,
            m.property.key(),
            m.value,
            range.value,
            range.low,
            range.high,
            if hit { "" } else { ": missed" },
            if m.own { ", its own source" } else { "" }
        );
        if m.own {
            held_own += usize::from(hit);
            all_own += 1;
        } else {
            held += usize::from(hit);
            all += 1;
            widths.push((range.high - range.low) / range.value);
        }
    }
    widths.sort_by(f64::total_cmp);
    support::tell(&format!(
        "held {held} of {all} measurements of other sources, median width {:.2} of the value; {held_own} of {all_own} of their own",
        widths[widths.len() / 2]
    ));
    assert!(all >= 12 && 10 * held >= 7 * all, "{held} of {all}");
}
