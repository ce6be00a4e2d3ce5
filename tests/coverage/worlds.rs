//! Five hundred strings in worlds of other laws (`truths.py`): how many truths the ranges of 90 % hold.

use std::io::Write as _;
use std::path::Path;
use std::process::{Command, Stdio};
use std::{env, thread};

use serde_json::{Map, Value, json};
use strings::constant::{self, Constant};
use strings::construction::{Build, Construction, Form};
use strings::draw;
use strings::material::Class;
use strings::report::{self, Property};
use strings::setting::Setting;

use crate::strings_of_the_trade::made;

const STRINGS: usize = 500;

/// What a property misses, and why; said beside its count.
const KNOWN: &[(Property, &str)] = &[
    (
        Property::Constructional,
        "the logarithm is steep near slack, where the range is made from its two ends",
    ),
    (Property::GreatestForce, "measured forces scatter by 7 % besides what friction does"),
    (
        Property::Stopping,
        "ranges of steel are narrow, and the formula is of first order in the rise",
    ),
    (
        Property::SeasonMoisture,
        "the truth takes water from the table and curves it for polymers; the law has no range",
    ),
    (
        Property::LossPerDecade,
        "wire creeps by another power of its load, and places let go by chance",
    ),
];

fn constant(c: &Constant) -> Value {
    json!([c.value, c.low, c.high])
}

fn described(string: &Construction, setting: &Setting) -> Value {
    let core = &string.core;
    let m = core.material;
    let (angle, layout, fill, filament) = match core.build {
        Build::Solid => (0.0, "", 1.0, 0.0),
        Build::Twisted { twist } => (twist.get(), "", 1.0, 0.0),
        Build::Strand { layout, lay } => (lay.get(), layout.key(), 1.0, 0.0),
        Build::Multifilament { filament, fill, twist } => {
            (twist.get(), "", fill.get(), filament.get())
        }
    };
    let material: Map<String, Value> = draw::OF_CORE
        .iter()
        .filter_map(|which| Some((which.key().to_owned(), constant(m.constant(*which)?))))
        .collect();
    let windings: Vec<Value> = string
        .windings()
        .map(|w| {
            json!({
                "density": constant(&w.metal.density), "modulus": constant(&w.metal.modulus),
                "form": if w.form == Form::Round { "round" } else { "flat" },
                "thickness_m": w.thickness.get(), "bedding": w.bedding.get(), "gap": w.gap.get(),
            })
        })
        .collect();
    json!({
        "core": {
            "key": m.key,
            "class": match m.class { Class::Gut => "gut", Class::Steel => "steel", Class::Polymer => "polymer" },
            "material": material, "build": core.build.key(), "layout": layout, "diameter_m": core.diameter.get(),
            "angle_deg": angle, "fill": fill, "filament_m": filament,
        },
        "windings": windings,
        "setting": {
            "length_m": setting.sounding_length.get(), "doubt_m": setting.sounding_length_doubt.get(),
            "afterlength_m": setting.afterlength.get(), "nut_to_peg_m": setting.nut_to_peg.get(),
            "pitch_hz": setting.pitch.get(), "angle_deg": setting.angle_over_bridge.get(),
            "peg_m": setting.peg_diameter.get(), "height_m": setting.string_height.get(),
            "nut_radius_m": setting.nut_radius.get(), "resistance": setting.bridge_resistance.get(),
            "peak": setting.peak_resistance.get(), "body": setting.body.key, "temperature_c": setting.temperature.get(),
            "humidity": setting.humidity.get(),
            "swings": setting.swings.iter().map(|s| json!([s.temperature, s.humidity.get()])).collect::<Vec<_>>(),
        },
    })
}

fn truths(strings: &[(Construction, Setting)]) -> Vec<Value> {
    let general: Map<String, Value> =
        constant::ALL.iter().map(|(key, c)| ((*key).to_owned(), constant(c))).collect();
    let told = json!({
        "seed": 7,
        "general": general,
        "strings": strings.iter().map(|(string, setting)| described(string, setting)).collect::<Vec<_>>(),
    });
    let python = env::var("ROPEWALK_PYTHON").unwrap_or_else(|_| "python3".to_owned());
    let mut child = Command::new(python)
        .arg(Path::new(env!("CARGO_MANIFEST_DIR")).join("coverage/truths.py"))
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .expect("Python 3 with numpy and scipy, which `cargo proof` installs");
    let mut stdin = child.stdin.take().unwrap();
    let text = told.to_string();
    // Written beside the reading, so that neither waits for the other for ever.
    let writer = thread::spawn(move || stdin.write_all(text.as_bytes()));
    let output = child.wait_with_output().unwrap();
    writer.join().unwrap().unwrap();
    assert!(output.status.success(), "truths.py fails; what it says stands above");
    serde_json::from_slice(&output.stdout).unwrap()
}

#[test]
fn ranges_hold_the_truths_of_other_worlds() {
    let strings = made(41, STRINGS);
    let truths = truths(&strings);
    let reports: Vec<_> = strings.iter().map(|(s, at)| report::report(s, at)).collect();
    let (mut all, mut held, mut widths) = (0_usize, 0_usize, Vec::new());
    let mut lowest = (1.0_f64, Property::Tension);
    for property in Property::ALL {
        let (mut n, mut hits, mut own) = (0_usize, 0_usize, Vec::new());
        for (report, truth) in reports.iter().zip(&truths) {
            let range = report.get(*property);
            let truth = truth[property.key()].as_f64().unwrap();
            // What is nothing for this string says nothing.
            if range.value == 0.0 && range.low == 0.0 && range.high == 0.0 {
                continue;
            }
            n += 1;
            // A hair more, for numbers that are the same but for rounding.
            let hair = 1e-9 * range.value.abs();
            hits += usize::from(range.low - hair <= truth && truth <= range.high + hair);
            if range.value != 0.0 {
                own.push((range.high - range.low) / range.value.abs());
            }
        }
        own.sort_by(f64::total_cmp);
        let width = own.get(own.len() / 2).copied().unwrap_or_default();
        #[allow(clippy::cast_precision_loss, reason = "counts of hundreds")]
        let share = hits as f64 / n as f64;
        let why = KNOWN.iter().find(|(p, _)| p == property).map_or("", |(_, why)| why);
        println!("{:>28}: {hits:3} of {n:3}, median width {width:6.3}  {why}", property.key());
        if share < lowest.0 {
            lowest = (share, *property);
        }
        all += n;
        held += hits;
        widths.extend(own);
    }
    widths.sort_by(f64::total_cmp);
    #[allow(clippy::cast_precision_loss, reason = "counts of thousands")]
    let share = held as f64 / all as f64;
    support::tell(&format!(
        "held {held} of {all} truths, {:.1} %; median width {:.3} of the value; fewest: {:?}",
        100.0 * share,
        widths[widths.len() / 2],
        lowest.1
    ));
    assert!((0.82..=0.985).contains(&share), "ranges of 90 % hold {share} of the truths");
    // And no property by itself falls far behind the others.
    assert!(lowest.0 >= 0.70, "{:?}: ranges of 90 % hold {} of the truths", lowest.1, lowest.0);
}
