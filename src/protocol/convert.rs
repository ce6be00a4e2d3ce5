//! From words and plain numbers to the model's types, and back.

use strings::body;
use strings::construction::{self as model, Build, Construction, Core, Form, Layout, Winding};
use strings::error::{self, Bound, Fault};
use strings::fit::answers::{self as said, Answers};
use strings::fit::desirability::Attribute;
use strings::instrument::{AFTERLENGTH_SHARE, Kind, Temperament};
use strings::material;
use strings::pitch::Note;
use strings::precedent::SetUp;
use strings::quantity::{Celsius, Degree, Hertz, KilogramPerSecond, Metre, Ratio};
use strings::setting::Setting;

use crate::reply::ONE_OF;
use crate::request;

/// A list of words, as a fault shows it.
fn one_of<'a>(words: impl IntoIterator<Item = &'a str>) -> String {
    format!("{ONE_OF}{}", words.into_iter().collect::<Vec<_>>().join(", "))
}

/// Collects faults while values are read.
struct Reader(Vec<Fault>);

impl Reader {
    fn word<T>(
        &mut self,
        field: &str,
        text: Option<&String>,
        parse: impl Fn(&str) -> Option<T>,
        allowed: impl Fn() -> String,
    ) -> Option<T> {
        let text = text?;
        let read = parse(text);
        if read.is_none() {
            self.0.push(Fault::new(field, format!("\"{text}\""), allowed()));
        }
        read
    }

    fn number(&mut self, field: &str, value: f64, bound: Bound) -> f64 {
        if let Err(fault) = bound.check(field, value) {
            self.0.push(fault);
        }
        value
    }

    fn optional(&mut self, field: &str, value: Option<f64>, bound: Bound) -> Option<f64> {
        value.map(|v| self.number(field, v, bound))
    }

    /// The first entries of a list, as many as it may have; more are a fault.
    fn list<'a, T>(&mut self, field: &str, entries: &'a [T], most: usize, of: &str) -> &'a [T] {
        if entries.len() > most {
            let allowed = format!("at most {most} {of}");
            self.0.push(Fault::new(field, format!("{} entries", entries.len()), allowed));
        }
        &entries[..entries.len().min(most)]
    }

    fn needed(&mut self, field: &str, value: Option<f64>, bound: Bound) -> f64 {
        if value.is_none() {
            self.0.push(Fault::outside(field, "nothing", bound));
        }
        value.unwrap_or(bound.min)
    }
}

/// Reads a construction.
pub(crate) fn construction(
    wire: &request::Construction,
    field: &str,
) -> Result<Construction, Vec<Fault>> {
    let mut r = Reader(Vec::new());
    let at = |name: &str| format!("{field}.{name}");
    let c = &wire.core;
    let material = r.word(&at("core.material"), Some(&c.material), material::core, || {
        one_of(material::CORES.iter().map(|m| m.key))
    });
    let build = build(&mut r, c, &at);
    let mut windings = Vec::new();
    let given = r.list(&at("windings"), &wire.windings, model::MOST_WINDINGS, "windings");
    for (i, w) in given.iter().enumerate() {
        let metal = r.word(
            &at(&format!("windings[{i}].metal")),
            Some(&w.metal),
            material::metal_of,
            || one_of(material::METALS.iter().map(|m| m.key)),
        );
        let form = r.word(&at(&format!("windings[{i}].form")), Some(&w.form), form_of, || {
            one_of(["round", "flat"])
        });
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

/// How a core can be built.
pub(crate) const BUILDS: [&str; 4] = ["solid", "strand", "multifilament", "twisted"];
/// The builds that each optional member of a core belongs to.
pub(crate) const BUILDS_WITH: [(&str, &[&str]); 5] = [
    ("layout", &["strand"]),
    ("lay_deg", &["strand"]),
    ("filament_m", &["multifilament"]),
    ("fill", &["multifilament"]),
    ("twist_deg", &["multifilament", "twisted"]),
];

/// Reads how a core is built. A member of another build is a fault, for nothing would come of it.
fn build(r: &mut Reader, c: &request::Core, at: &dyn Fn(&str) -> String) -> Option<Build> {
    if !BUILDS.contains(&c.build.as_str()) {
        let value = format!("\"{}\"", c.build);
        r.0.push(Fault::new(at("core.build"), value, one_of(BUILDS)));
        return None;
    }
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
                let allowed = one_of(Layout::ALL.iter().map(|l| l.key()));
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
        let keys: Vec<&str> = body::SKELETONS.iter().map(|s| s.key).collect();
        let allowed = one_of(keys);
        return Err(vec![Fault::new(
            format!("{field}.body"),
            format!("\"{}\"", wire.body),
            allowed,
        )]);
    }
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
        temperature_swing: wire.temperature_swing_k,
        humidity_swing: Ratio::new(wire.humidity_swing),
    }
    .checked(field)
}

/// Writes a setting.
pub(crate) fn setting_back(s: &Setting) -> request::Setting {
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
        temperature_swing_k: s.temperature_swing,
        humidity_swing: s.humidity_swing.get(),
    }
}

const TEMPERAMENTS: [(&str, Temperament); 2] =
    [("equal", Temperament::Equal), ("pure-fifths", Temperament::PureFifths)];
const SET_UPS: [(&str, SetUp); 3] =
    [("modern", SetUp::Modern), ("historical", SetUp::Historical), ("light", SetUp::Light)];

fn of_pairs<T: Copy>(pairs: &'static [(&'static str, T)]) -> impl Fn(&str) -> Option<T> {
    move |key| pairs.iter().find(|(k, _)| *k == key).map(|(_, value)| *value)
}

/// The word for a set-up.
pub(crate) fn set_up_key(set_up: SetUp) -> &'static str {
    SET_UPS.iter().find(|(_, s)| *s == set_up).map_or("modern", |(key, _)| key)
}

/// The word for a temperament.
pub(crate) fn temperament_key(temperament: Temperament) -> &'static str {
    TEMPERAMENTS.iter().find(|(_, t)| *t == temperament).map_or("equal", |(key, _)| key)
}

macro_rules! word {
    ($reader:ident, $wire:ident, $field:ident, $type:ty) => {
        $reader.word(
            concat!("answers.", stringify!($field)),
            $wire.$field.as_ref(),
            <$type>::parse,
            || one_of(<$type>::ALL.iter().map(|word| word.key())),
        )
    };
}

/// The words of every question, for the tables.
pub(crate) fn words() -> Vec<(&'static str, Vec<&'static str>)> {
    macro_rules! all {
        ($type:ty) => {
            <$type>::ALL.iter().map(|word| word.key()).collect()
        };
    }
    vec![
        ("aim", all!(said::Aim)),
        ("gauge_class", all!(said::GaugeClass)),
        ("now", all!(said::Now)),
        ("bothers", all!(said::Bother)),
        ("music", all!(said::Music)),
        ("level", all!(said::Level)),
        ("pegs", all!(said::Pegs)),
        ("tuners", all!(said::Tuners)),
        ("who_tunes", all!(said::WhoTunes)),
        ("room", all!(said::Room)),
        ("budget", all!(said::Budget)),
        ("temperament", TEMPERAMENTS.iter().map(|(k, _)| *k).collect()),
        ("set_up", SET_UPS.iter().map(|(k, _)| *k).collect()),
        ("family", model::Family::ALL.iter().map(|f| f.key()).collect()),
        ("attribute", Attribute::ALL.iter().map(|a| a.key()).collect()),
    ]
}

/// Reads the answers.
pub(crate) fn answers(wire: &request::Answers) -> Result<Answers, Vec<Fault>> {
    let mut r = Reader(Vec::new());
    let instrument = r.word("answers.instrument", wire.instrument.as_ref(), Kind::of, || {
        one_of(strings::instrument::ALL.iter().map(|k| k.key))
    });
    // Sizes and tunings belong to an instrument: the one that is assumed when none is named.
    let kind = instrument.unwrap_or(&strings::instrument::VIOLIN);
    let size = r.word(
        "answers.size",
        wire.size.as_ref(),
        |key| kind.size(key),
        || one_of(kind.sizes.iter().map(|s| s.key)),
    );
    let tuning = r.word(
        "answers.tuning",
        wire.tuning.as_ref(),
        |key| kind.tuning(key),
        || one_of(kind.tunings.iter().map(|t| t.key)),
    );
    let bothers = bothers(&mut r, "answers.bothers", &wire.bothers);
    let now = word!(r, wire, now, said::Now);
    let most = tuning.unwrap_or(&kind.tunings[0]).strings.len();
    let given = r.list("answers.strings", &wire.strings, most, "strings in this tuning");
    let mut strings = Vec::new();
    for (i, s) in given.iter().enumerate() {
        let note =
            r.word(&format!("answers.strings[{i}].note"), s.note.as_ref(), Note::parse, || {
                "a note in scientific pitch: A4, F#1, Bb3".to_owned()
            });
        if let Some(note) = note {
            let a4 = Hertz::new(wire.a4_hz.unwrap_or(440.0));
            r.number(&format!("answers.strings[{i}].note"), note.frequency(a4).get(), error::PITCH);
        }
        let family = r.word(
            &format!("answers.strings[{i}].family"),
            s.family.as_ref(),
            model::Family::parse,
            || one_of(model::Family::ALL.iter().map(|f| f.key())),
        );
        let field = format!("answers.strings[{i}]");
        let today = today(&mut r, &format!("{field}.today"), &s.today);
        if s.keep && today.family.is_none() && now.is_none() {
            r.0.push(Fault::new(
                format!("{field}.today.family"),
                "nothing",
                "a family, or answers.now for the whole set: what is to stay must be known",
            ));
        }
        let bothers = self::bothers(&mut r, &format!("{field}.bothers"), &s.bothers);
        strings.push(said::StringAnswer { note, family, today, bothers, keep: s.keep });
    }
    let also_tuned = also_tuned(&mut r, wire);
    let mut weights = Vec::new();
    for (key, value) in &wire.weights {
        let field = format!("answers.weights.{key}");
        let value = r.number(&field, *value, error::WEIGHT);
        match Attribute::parse(key) {
            Some(attribute) => weights.push((attribute, value)),
            None => r.0.push(Fault::new(
                "answers.weights",
                format!("\"{key}\""),
                one_of(Attribute::ALL.iter().map(|a| a.key())),
            )),
        }
    }
    let mut wish =
        |name: &str, value: f64| r.number(&format!("answers.wishes.{name}"), value, error::WISH);
    let wishes = said::Wishes {
        colour: wish("colour", wire.wishes.colour),
        brightness: wish("brightness", wire.wishes.brightness),
        power: wish("power", wire.wishes.power),
        feel: wish("feel", wire.wishes.feel),
        response: wish("response", wire.wishes.response),
    };
    let answers = Answers {
        aim: word!(r, wire, aim, said::Aim),
        instrument,
        size,
        sounding_length: r
            .optional("answers.sounding_length_m", wire.sounding_length_m, length_bound(kind))
            .map(Metre::new),
        tuning,
        a4: r.optional("answers.a4_hz", wire.a4_hz, error::A4).map(Hertz::new),
        also_tuned,
        temperament: r.word(
            "answers.temperament",
            wire.temperament.as_ref(),
            of_pairs(&TEMPERAMENTS),
            || one_of(TEMPERAMENTS.iter().map(|(k, _)| *k)),
        ),
        strings,
        set_up: r.word("answers.set_up", wire.set_up.as_ref(), of_pairs(&SET_UPS), || {
            one_of(SET_UPS.iter().map(|(k, _)| *k))
        }),
        now,
        age_months: r.optional("answers.age_months", wire.age_months, error::AGE_MONTHS),
        bothers,
        wishes,
        music: word!(r, wire, music, said::Music),
        level: word!(r, wire, level, said::Level),
        pegs: word!(r, wire, pegs, said::Pegs),
        tuners: word!(r, wire, tuners, said::Tuners),
        who_tunes: word!(r, wire, who_tunes, said::WhoTunes),
        room: word!(r, wire, room, said::Room),
        concert_days: r.optional("answers.concert_days", wire.concert_days, error::DAYS),
        must_settle: wire.must_settle,
        budget: word!(r, wire, budget, said::Budget),
        nickel_allergy: wire.nickel_allergy,
        acid_sweat: wire.acid_sweat,
        animal_free: wire.animal_free,
        magnetic_pickup: wire.magnetic_pickup,
        hand_pain: wire.hand_pain,
        gut_to_its_limit: wire.gut_to_its_limit,
        weights,
    };
    if r.0.is_empty() { Ok(answers) } else { Err(r.0) }
}

/// Reads a list of what bothers.
fn bothers(r: &mut Reader, field: &str, words: &[String]) -> Vec<said::Bother> {
    let mut read = Vec::new();
    for (i, word) in r.list(field, words, said::Bother::ALL.len(), "complaints").iter().enumerate()
    {
        let field = format!("{field}[{i}]");
        if words[..i].contains(word) {
            r.0.push(Fault::new(&field, format!("\"{word}\""), "each complaint once"));
        }
        read.extend(r.word(&field, Some(word), said::Bother::parse, || {
            one_of(said::Bother::ALL.iter().map(|b| b.key()))
        }));
    }
    read
}

/// Reads what is known of the string that is there now.
fn today(r: &mut Reader, field: &str, wire: &request::Today) -> said::Today {
    said::Today {
        family: r.word(
            &format!("{field}.family"),
            wire.family.as_ref(),
            model::Family::parse,
            || one_of(model::Family::ALL.iter().map(|f| f.key())),
        ),
        gauge_class: r.word(
            &format!("{field}.gauge_class"),
            wire.gauge_class.as_ref(),
            said::GaugeClass::parse,
            || one_of(said::GaugeClass::ALL.iter().map(|c| c.key())),
        ),
        outer_metal: r.word(
            &format!("{field}.outer_metal"),
            wire.outer_metal.as_ref(),
            material::metal_of,
            || one_of(material::METALS.iter().map(|m| m.key)),
        ),
        age_months: r.optional(&format!("{field}.age_months"), wire.age_months, error::AGE_MONTHS),
    }
}

/// Other tunings of the same strings.
pub(crate) const MOST_TUNINGS: usize = 8;

/// Reads the other pitches at which the same strings are used.
fn also_tuned(r: &mut Reader, wire: &request::Answers) -> Vec<said::AlsoTuned> {
    let mut read = Vec::new();
    let given = r.list("answers.also_tuned", &wire.also_tuned, MOST_TUNINGS, "other tunings");
    for (i, tuned) in given.iter().enumerate() {
        let field = format!("answers.also_tuned[{i}]");
        if tuned.a4_hz.is_none() && tuned.semitones.is_none() {
            r.0.push(Fault::new(&field, "nothing", "a4_hz, semitones or both"));
        }
        let a4 = r.optional(&format!("{field}.a4_hz"), tuned.a4_hz, error::A4);
        let semitones = r.optional(&format!("{field}.semitones"), tuned.semitones, error::RETUNING);
        read.push(said::AlsoTuned { a4: a4.map(Hertz::new), semitones: semitones.unwrap_or(0.0) });
    }
    read
}

/// Sounding lengths of an instrument of that kind: its smallest and largest size, and a tenth beyond.
fn length_bound(kind: &Kind) -> Bound {
    let ends = kind.sizes.iter().fold((f64::INFINITY, 0.0_f64), |(low, high), s| {
        (low.min(s.length_mm.1), high.max(s.length_mm.2))
    });
    Bound {
        min: (ends.0 * 0.9).floor() / 1000.0,
        max: (ends.1 * 1.1).ceil() / 1000.0,
        ..error::SOUNDING_LENGTH
    }
}
