//! A string and its setting, from words and plain numbers to the model's types, and back.

use strings::body;
use strings::construction::{self as model, Build, Construction, Core, Form, Layout, Winding};
use strings::error::{self, Fault};
use strings::instrument::AFTERLENGTH_SHARE;
use strings::material;
use strings::quantity::{Celsius, Degree, Hertz, KilogramPerSecond, Metre, Ratio};
use strings::setting::{Setting, Swing, Untuned};

use super::Faults;
use crate::allowed::{self, BUILDS, BUILDS_WITH, MOST_STRINGS, one_of};
use crate::request;

/// Reads a construction.
pub(crate) fn construction(
    wire: &request::Construction,
    field: &str,
) -> Result<Construction, Vec<Fault>> {
    let mut r = Faults::default();
    let at = |name: &str| format!("{field}.{name}");
    let c = &wire.core;
    let material = r.word(&at("core.material"), Some(&c.material), material::core);
    let build = build(&mut r, c, &at);
    let mut windings = Vec::new();
    let given = r.list(&at("windings"), &wire.windings, model::MOST_WINDINGS, "windings");
    for (i, w) in given.iter().enumerate() {
        let metal =
            r.word(&at(&format!("windings[{i}].metal")), Some(&w.metal), material::metal_of);
        let form = r.word(&at(&format!("windings[{i}].form")), Some(&w.form), form_of);
        if let (Some(metal), Some(form)) = (metal, form) {
            windings.push(Winding {
                metal,
                form,
                thickness: Metre::new(w.thickness_m),
                bedding: Ratio::new(w.bedding),
                gap: Ratio::new(w.gap),
            });
        }
    }
    let (Some(material), Some(build)) = (material, build) else { return Err(r.0) };
    let core = Core { material, build, diameter: Metre::new(c.diameter_m) };
    match (Construction::new(core, &windings, field), r.0.is_empty()) {
        (Err(faults), _) => Err([faults, r.0].concat()),
        (Ok(_), false) => Err(r.0),
        (Ok(construction), true) => Ok(construction),
    }
}

/// Reads how a core is built. A member of another build is a fault, for nothing would come of it.
fn build(r: &mut Faults, c: &request::Core, at: &dyn Fn(&str) -> String) -> Option<Build> {
    r.word(&at("core.build"), Some(&c.build), |build| BUILDS.contains(&build).then_some(()))?;
    let given = [
        c.layout.as_ref().map(|key| format!("\"{key}\"")),
        c.lay_deg.map(error::shown),
        c.filament_m.map(error::shown),
        c.fill.map(error::shown),
        c.twist_deg.map(error::shown),
    ];
    for ((name, builds), value) in BUILDS_WITH.iter().zip(given) {
        if let (Some(value), false) = (value, builds.contains(&c.build.as_str())) {
            let allowed = format!("nothing: it belongs to the build {}", builds.join(" or "));
            r.0.push(Fault::new(at(&format!("core.{name}")), value, allowed));
        }
    }
    match c.build.as_str() {
        "strand" => {
            let lay = r.needed(&at("core.lay_deg"), c.lay_deg, error::LAY_ANGLE);
            let layout = Layout::ALL.into_iter().find(|l| Some(l.key()) == c.layout.as_deref());
            if layout.is_none() {
                let given = c.layout.as_ref().map(|key| format!("\"{key}\""));
                let given = given.unwrap_or_else(|| "nothing".to_owned());
                let allowed = one_of(&allowed::words("layout"));
                r.0.push(Fault::new(at("core.layout"), given, allowed));
            }
            layout.map(|layout| Build::Strand { layout, lay: Degree::new(lay) })
        }
        "multifilament" => Some(Build::Multifilament {
            filament: Metre::new(r.needed(
                &at("core.filament_m"),
                c.filament_m,
                error::FILAMENT_DIAMETER,
            )),
            fill: Ratio::new(r.needed(&at("core.fill"), c.fill, error::FILL)),
            twist: Degree::new(r.needed(&at("core.twist_deg"), c.twist_deg, error::TWIST_ANGLE)),
        }),
        "twisted" => Some(Build::Twisted {
            twist: Degree::new(r.needed(&at("core.twist_deg"), c.twist_deg, error::TWIST_ANGLE)),
        }),
        _ => Some(Build::Solid),
    }
}

fn form_of(key: &str) -> Option<Form> {
    match key {
        "round" => Some(Form::Round),
        "flat" => Some(Form::Flat),
        _ => None,
    }
}

/// Writes a construction.
pub(crate) fn construction_back(c: &Construction) -> request::Construction {
    let mut core = request::Core {
        material: c.core.material.key.to_owned(),
        build: c.core.build.key().to_owned(),
        diameter_m: c.core.diameter.get(),
        layout: None,
        lay_deg: None,
        filament_m: None,
        fill: None,
        twist_deg: None,
    };
    match c.core.build {
        Build::Solid => {}
        Build::Strand { layout, lay } => {
            core.layout = Some(layout.key().to_owned());
            core.lay_deg = Some(lay.get());
        }
        Build::Multifilament { filament, fill, twist } => {
            core.filament_m = Some(filament.get());
            core.fill = Some(fill.get());
            core.twist_deg = Some(twist.get());
        }
        Build::Twisted { twist } => core.twist_deg = Some(twist.get()),
    }
    let windings = c
        .windings()
        .map(|w| request::Winding {
            metal: w.metal.key.to_owned(),
            form: match w.form {
                Form::Round => "round",
                Form::Flat => "flat",
            }
            .to_owned(),
            thickness_m: w.thickness.get(),
            bedding: w.bedding.get(),
            gap: w.gap.get(),
        })
        .collect();
    request::Construction { core, windings }
}

/// Reads a setting.
pub(crate) fn setting(wire: &request::Setting, field: &str) -> Result<Setting, Vec<Fault>> {
    let body = body::skeleton(&wire.body);
    if body.key != wire.body {
        let value = format!("\"{}\"", wire.body);
        return Err(vec![Fault::new(
            format!("{field}.body"),
            value,
            one_of(&allowed::words("body")),
        )]);
    }
    let Some(untuned) = Untuned::parse(&wire.untuned) else {
        let value = format!("\"{}\"", wire.untuned);
        let allowed = one_of(&allowed::words("untuned"));
        return Err(vec![Fault::new(format!("{field}.untuned"), value, allowed)]);
    };
    Setting {
        sounding_length: Metre::new(wire.sounding_length_m),
        sounding_length_doubt: Metre::new(wire.sounding_length_doubt_m),
        afterlength: Metre::new(
            wire.afterlength_m.unwrap_or(wire.sounding_length_m * AFTERLENGTH_SHARE),
        ),
        nut_to_peg: Metre::new(wire.nut_to_peg_m),
        pitch: Hertz::new(wire.pitch_hz),
        angle_over_bridge: Degree::new(wire.angle_over_bridge_deg),
        peg_diameter: Metre::new(wire.peg_diameter_m),
        gear_ratio: Ratio::new(wire.gear_ratio),
        string_height: Metre::new(wire.string_height_m),
        nut_radius: Metre::new(wire.nut_radius_m),
        bridge_resistance: KilogramPerSecond::new(wire.bridge_resistance_kg_s),
        peak_resistance: KilogramPerSecond::new(wire.peak_resistance_kg_s),
        body,
        temperature: Celsius::new(wire.temperature_c),
        humidity: Ratio::new(wire.humidity),
        swings: [
            (wire.evening_temperature_swing_k, wire.evening_humidity_swing),
            (wire.week_temperature_swing_k, wire.week_humidity_swing),
            (wire.temperature_swing_k, wire.humidity_swing),
        ]
        .map(|(temperature, humidity)| Swing { temperature, humidity: Ratio::new(humidity) }),
        untuned,
    }
    .checked(field)
}

/// Writes a setting.
pub(crate) fn setting_back(s: &Setting) -> request::Setting {
    let [evening, week, season] = s.swings;
    request::Setting {
        sounding_length_m: s.sounding_length.get(),
        pitch_hz: s.pitch.get(),
        sounding_length_doubt_m: s.sounding_length_doubt.get(),
        afterlength_m: Some(s.afterlength.get()),
        nut_to_peg_m: s.nut_to_peg.get(),
        angle_over_bridge_deg: s.angle_over_bridge.get(),
        peg_diameter_m: s.peg_diameter.get(),
        gear_ratio: s.gear_ratio.get(),
        string_height_m: s.string_height.get(),
        nut_radius_m: s.nut_radius.get(),
        bridge_resistance_kg_s: s.bridge_resistance.get(),
        peak_resistance_kg_s: s.peak_resistance.get(),
        body: s.body.key.to_owned(),
        temperature_c: s.temperature.get(),
        humidity: s.humidity.get(),
        temperature_swing_k: season.temperature,
        humidity_swing: season.humidity.get(),
        week_temperature_swing_k: week.temperature,
        week_humidity_swing: week.humidity.get(),
        evening_temperature_swing_k: evening.temperature,
        evening_humidity_swing: evening.humidity.get(),
        untuned: s.untuned.key().to_owned(),
    }
}

/// What is right is taken, what is wrong is told.
pub(crate) fn taken<T>(read: Result<T, Vec<Fault>>, faults: &mut Vec<Fault>) -> Option<T> {
    read.map_err(|wrong| faults.extend(wrong)).ok()
}

/// Reads strings of one instrument, with every fault named.
pub(crate) fn players(
    players: &[request::Player],
    faults: &mut Vec<Fault>,
) -> Vec<(Construction, Setting)> {
    if players.is_empty() || players.len() > MOST_STRINGS {
        let allowed = format!("1 to {MOST_STRINGS} strings");
        faults.push(Fault::new("strings", format!("{} strings", players.len()), allowed));
    }
    let mut strings = Vec::new();
    for (i, player) in players.iter().take(MOST_STRINGS).enumerate() {
        let at = |part: &str| format!("strings[{i}].{part}");
        let construction = construction(&player.construction, &at("construction"));
        let construction = taken(construction, faults);
        let setting = taken(setting(&player.setting, &at("setting")), faults);
        strings.extend(construction.zip(setting));
    }
    strings
}
