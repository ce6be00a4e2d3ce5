//! The words of the trade: what each means, with a drawing.

use protocol::request::{Construction, Core, Winding};
use yew::prelude::*;

use crate::components::portrait::Portrait;
use crate::words::{say, speech};

/// What is drawn beside a word.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Drawing {
    /// A string cut through: material and build of its core, its diameter in millimetres, its windings.
    Section(&'static str, &'static str, f64, &'static [(&'static str, &'static str, f64)]),
    /// A part of the instrument, seen from the side.
    Part(Part),
    /// A line drawn by its path, in a field of 120 by 64.
    Line(&'static str),
}

/// A part of the instrument that strings have to do with.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Part {
    Peg,
    Nut,
    Sounding,
    Bridge,
    Soundpost,
    Afterlength,
    FineTuner,
    Tailpiece,
}

const POLYAMIDE: &str = "polyamide";
const BUNDLE: &str = "multifilament";
const STEEL: &str = "spring-steel";

/// The words, in the order in which one needs them.
const TERMS: [(&str, Drawing); 28] = [
    ("core", Drawing::Section(POLYAMIDE, BUNDLE, 0.5, &[("aluminium", "flat", 0.1)])),
    ("plain-gut", Drawing::Section("gut", "twisted", 0.78, &[])),
    ("wound-gut", Drawing::Section("gut", "twisted", 0.6, &[("silver", "round", 0.1)])),
    ("solid-steel", Drawing::Section(STEEL, "solid", 0.27, &[])),
    ("stranded-steel", Drawing::Section(STEEL, "strand", 0.5, &[("chrome-steel", "flat", 0.1)])),
    ("synthetic", Drawing::Section(POLYAMIDE, BUNDLE, 0.55, &[])),
    (
        "winding",
        Drawing::Section(
            STEEL,
            "solid",
            0.3,
            &[("tungsten", "flat", 0.12), ("silver", "flat", 0.08)],
        ),
    ),
    ("ribbon", Drawing::Section(STEEL, "solid", 0.35, &[("aluminium", "flat", 0.15)])),
    ("round-wire", Drawing::Section(STEEL, "solid", 0.35, &[("copper", "round", 0.15)])),
    (
        "gauge",
        Drawing::Line(
            "M20 32 a14 14 0 1 0 28 0 a14 14 0 1 0 -28 0 M20 56 H48 M20 52 V60 M48 52 V60 M70 32 a9 9 0 1 0 18 0 a9 9 0 1 0 -18 0 M70 56 H88 M70 52 V60 M88 52 V60",
        ),
    ),
    ("sounding-length", Drawing::Part(Part::Sounding)),
    ("afterlength", Drawing::Part(Part::Afterlength)),
    ("nut", Drawing::Part(Part::Nut)),
    ("peg", Drawing::Part(Part::Peg)),
    ("bridge", Drawing::Part(Part::Bridge)),
    ("soundpost", Drawing::Part(Part::Soundpost)),
    ("tailpiece", Drawing::Part(Part::Tailpiece)),
    ("fine-tuner", Drawing::Part(Part::FineTuner)),
    (
        "tension",
        Drawing::Line("M10 32 H110 M10 32 L20 26 M10 32 L20 38 M110 32 L100 26 M110 32 L100 38"),
    ),
    (
        "stretch",
        Drawing::Line("M10 20 H80 M10 14 V26 M80 14 V26 M10 46 H104 M10 40 V52 M104 40 V52"),
    ),
    (
        "cent",
        Drawing::Line(
            "M10 48 H110 M10 40 V56 M110 40 V56 M60 44 V52 M35 46 V50 M85 46 V50 M14 24 C30 8 40 8 50 24 S76 40 86 24 S104 10 110 20",
        ),
    ),
    ("settling", Drawing::Line("M10 10 V56 H110 M10 14 C20 44 40 50 108 52")),
    ("drift", Drawing::Line("M10 10 V56 H110 M10 34 C26 14 40 14 54 34 S86 54 108 30")),
    (
        "damping",
        Drawing::Line(
            "M10 32 C14 4 20 4 24 32 S34 56 38 32 S48 14 52 32 S62 48 66 32 S76 24 80 32 S90 38 110 32",
        ),
    ),
    (
        "partial",
        Drawing::Line(
            "M10 16 C40 2 80 2 110 16 C80 30 40 30 10 16 M10 48 C26 36 44 36 60 48 S94 60 110 48 C94 36 76 36 60 48 S26 60 10 48",
        ),
    ),
    (
        "response",
        Drawing::Line("M10 52 H40 L44 44 L50 56 L56 34 L62 52 L68 16 L88 52 L92 16 L112 52"),
    ),
    (
        "bow-window",
        Drawing::Line("M10 8 V56 H112 M14 14 C40 18 76 32 108 48 M14 34 C34 46 66 52 108 54"),
    ),
    (
        "wolf",
        Drawing::Line(
            "M10 32 C12 20 15 20 17 32 S22 44 24 32 S29 6 32 32 S38 58 41 32 S46 22 48 32 S53 40 55 32 S60 4 64 32 S70 60 74 32 S80 24 82 32 S87 40 89 32 S94 8 98 32 S104 56 108 32",
        ),
    ),
];

/// Pixels to a millimetre of a section.
const SCALE: f64 = 90.0;

/// The words of the trade.
#[component]
pub fn GlossaryPage() -> Html {
    html! {
        <article class="glossary sources">
            <h1>{ say!("glossary-title") }</h1>
            <p class="lede">{ say!("glossary-lead") }</p>
            <dl class="terms">
                { for TERMS.iter().map(|(key, drawing)| {
                    let name = speech::of_or_key("term", key);
                    html! {
                        <div class="term" id={format!("term-{key}")} key={*key}>
                            <dt>{ name }</dt>
                            <dd>
                                <span class="term-drawing">{ drawn(*drawing, name) }</span>
                                <p>{ speech::of_or_key("meaning", key) }</p>
                            </dd>
                        </div>
                    }
                }) }
            </dl>
        </article>
    }
}

fn drawn(drawing: Drawing, name: &'static str) -> Html {
    match drawing {
        Drawing::Section(material, build, diameter, windings) => {
            let construction = string_of(material, build, diameter, windings);
            html! { <Portrait {construction} px_per_mm={SCALE} label={name} /> }
        }
        Drawing::Part(part) => side_view(part),
        Drawing::Line(path) => html! {
            <svg class="sketch" width="120" height="64" viewBox="0 0 120 64" aria-hidden="true"><path class="drawn" d={path} /></svg>
        },
    }
}

fn string_of(
    material: &str,
    build: &str,
    diameter_mm: f64,
    windings: &[(&str, &str, f64)],
) -> Construction {
    let bundle = build == BUNDLE;
    Construction {
        core: Core {
            material: material.to_owned(),
            build: build.to_owned(),
            diameter_m: diameter_mm / 1e3,
            layout: (build == "strand").then(|| "1x19".to_owned()),
            lay_deg: (build == "strand").then_some(12.0),
            filament_m: bundle.then_some(2.5e-5),
            fill: bundle.then_some(0.7),
            twist_deg: (bundle || build == "twisted").then_some(30.0),
        },
        windings: windings
            .iter()
            .map(|(metal, form, thickness)| Winding {
                metal: (*metal).to_owned(),
                form: (*form).to_owned(),
                thickness_m: thickness / 1e3,
                bedding: 0.0,
                gap: 0.0,
            })
            .collect(),
    }
}

/// The instrument from the side, one part of it drawn strong: scroll and peg to the left, tailpiece to the right.
fn side_view(part: Part) -> Html {
    let of = |which: Part, path: &'static str| {
        let weight = if which == part { "strong" } else { "faint" };
        html! { <path class={classes!("drawn", weight)} d={path} /> }
    };
    html! {
        <svg class="sketch" width="160" height="64" viewBox="0 0 160 64" aria-hidden="true">
            <path class={classes!("drawn", "faint")} d="M6 30 H64 L66 34 H150 V52 H72 L64 36 H6 Z" />
            { of(Part::Peg, "M10 22 V40 M7 22 H13") }
            { of(Part::Nut, "M26 24 V30") }
            { of(Part::Sounding, "M26 24 L108 12") }
            { of(Part::Bridge, "M108 12 V34 M104 34 H112") }
            { of(Part::Soundpost, "M102 34 V52") }
            { of(Part::Afterlength, "M108 12 L126 19") }
            { of(Part::FineTuner, "M126 19 L130 20.5 M129 14 V20") }
            { of(Part::Tailpiece, "M126 19 L148 27 L150 34") }
        </svg>
    }
}
