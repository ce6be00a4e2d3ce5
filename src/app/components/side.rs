//! A string from the side: a piece of it as long and as thick as the pull makes it.
//!
//! Along and across stand to one scale; what the pull changes is drawn several times as large, and the text says so.

use core::f64::consts::PI;

use protocol::reply::Stretched;
use protocol::request::{Construction, Core, Winding};
use yew::prelude::*;

use super::chart::px;
use super::section::outer_mm;

/// How long the piece is drawn that has not been stretched, in the units of the drawing.
pub const NATURAL: f64 = 440.0;
/// How thick the thickest string is drawn.
pub const THICKEST: f64 = 84.0;
/// The whole drawing: what has grown by six tenths still ends in it.
const WIDTH: f64 = 720.0;
const EDGE: f64 = 6.0;
const HEIGHT: f64 = THICKEST + 2.0 * EDGE;

/// How many times as large a change may be drawn, the largest first.
const TIMES: [f64; 4] = [10.0, 5.0, 2.0, 1.0];

/// How many times as large the changes of strings are drawn that stretch so far, that all of them find room.
#[must_use]
pub fn times(most_stretch: f64) -> f64 {
    let room = (WIDTH - NATURAL - 2.0 * EDGE) / NATURAL;
    TIMES.into_iter().find(|times| times * most_stretch <= room).unwrap_or(1.0)
}

/// How wide a ribbon is drawn, in its thicknesses: its true width is the maker's secret.
const RIBBON: f64 = 5.0;
/// Where windings end and the bare core is seen, as shares of the piece: one layer, two, three.
const CUTS: [f64; 3] = [0.62, 0.52, 0.42];

/// A piece of a string from the side, `scale` units of the drawing to a millimetre, its changes `times` as large.
pub fn side(
    id: &str,
    string: &Construction,
    now: &Stretched,
    (scale, times): (f64, f64),
    label: String,
) -> Html {
    let grown = 1.0 + times * now.stretch.value;
    let long = NATURAL * grown;
    let middle = HEIGHT / 2.0;
    let natural_mm = string.core.diameter_m * 1e3;
    // Windings follow the core inward.
    let thinned = times * (natural_mm - now.core_diameter_m.value * 1e3);
    let core_mm = natural_mm - thinned;
    let snapped = now.breaking_share.value >= 1.0;
    let body = |key: String, class: String, width: f64, to: f64| {
        html! {
            <g>
                <clipPath id={key}><rect x={px(EDGE)} y={px(middle - width / 2.0)} width={px(to)} height={px(width)} /></clipPath>
                <rect {class} x={px(EDGE)} y={px(middle - width / 2.0)} width={px(to)} height={px(width)} />
            </g>
        }
    };
    let core_wide = core_mm * scale;
    let core_key = format!("{id}-core");
    // From the outside in, each thinner and reaching further.
    let mut layers: Vec<(f64, &Winding)> = Vec::new();
    let mut across = outer_mm(string) - thinned;
    for winding in string.windings.iter().rev() {
        layers.push((across, winding));
        across -= 2.0 * winding.thickness_m * 1e3 * (1.0 - winding.bedding);
    }
    // The outermost ends first.
    let cut = |i: usize| CUTS[(layers.len() - 1 - i).min(2)] * long;
    html! {
        <svg class="side" role="img" aria-label={label} viewBox={format!("0 0 {WIDTH} {HEIGHT}")}>
            { body(core_key.clone(), format!("core core-{}", string.core.material), core_wide, long) }
            <path class="seam" clip-path={format!("url(#{core_key})")} d={fibres(&string.core, core_wide, scale, long, middle, grown)} />
            { for layers.iter().enumerate().rev().map(|(i, (across, winding))| {
                let key = format!("{id}-winding-{i}");
                let width = across * scale;
                html! {
                    <>
                        { body(key.clone(), format!("ring metal-{}", winding.metal), width, cut(i)) }
                        <path class="turn" clip-path={format!("url(#{key})")} d={turns(winding, width, scale, cut(i), middle, grown)} />
                    </>
                }
            }) }
            if snapped {
                <path class="gap" d={torn(long * 0.72, middle)} />
            }
            <line class="held" x1={px(EDGE)} x2={px(EDGE)} y1="0" y2={px(HEIGHT)} />
            <line class="slack" x1={px(EDGE + NATURAL)} x2={px(EDGE + NATURAL)} y1="0" y2={px(HEIGHT)} />
        </svg>
    }
}

/// What one sees on a bare core: fibres that run round it, or wires beside one another; nothing on a single wire.
fn fibres(core: &Core, wide: f64, scale: f64, long: f64, middle: f64, grown: f64) -> String {
    let (angle, apart) = match core.build.as_str() {
        "strand" => {
            let wires = match core.layout.as_deref() {
                Some("1x19") => 5.0,
                Some("7x7") => 9.0,
                _ => 3.0,
            };
            (core.lay_deg.unwrap_or(0.0), wide / wires)
        }
        // Every third filament: all of them would be a grey band.
        "multifilament" => {
            (core.twist_deg.unwrap_or(0.0), 3e3 * core.filament_m.unwrap_or(2.5e-5) * scale)
        }
        "twisted" => (core.twist_deg.unwrap_or(0.0), wide / 4.0),
        _ => return String::new(),
    };
    // A fibre crosses the visible half of the core on its way along, and the pull draws it out.
    let slope = libm::tan(angle.max(1.0) * PI / 180.0) / grown;
    let along = wide * PI / 2.0 / slope;
    let step = (apart / slope).max(2.0);
    let mut path = String::new();
    let mut x = EDGE - along;
    while x < EDGE + long {
        path.push_str(&format!(
            "M{} {}C{} {1} {2} {} {} {3}",
            px(x),
            px(middle + wide / 2.0),
            px(x + along / 2.0),
            px(middle - wide / 2.0),
            px(x + along),
        ));
        x += step;
    }
    path
}

/// The turns of a winding, as far apart as the pull makes them.
fn turns(winding: &Winding, wide: f64, scale: f64, to: f64, middle: f64, grown: f64) -> String {
    let thick = winding.thickness_m * 1e3 * scale;
    let own = if winding.form == "round" { thick } else { RIBBON * thick };
    let step = (own * (1.0 + winding.gap) * grown).max(1.5);
    let mut path = String::new();
    let mut x = EDGE;
    while x < EDGE + to {
        // A turn leans by half its own step from one edge to the other.
        path.push_str(&format!(
            "M{} {}L{} {}",
            px(x),
            px(middle - wide / 2.0),
            px(x + step / 2.0),
            px(middle + wide / 2.0)
        ));
        x += step;
    }
    path
}

/// Where a string has snapped.
fn torn(x: f64, middle: f64) -> String {
    let (top, foot) = (middle - THICKEST / 2.0 - EDGE, middle + THICKEST / 2.0 + EDGE);
    let teeth = |from: f64, to: f64, x: f64| {
        (0..=6).map(move |i| {
            let y = from + (to - from) * f64::from(i) / 6.0;
            format!("{} {}", px(x + if i % 2 == 0 { 0.0 } else { 14.0 }), px(y))
        })
    };
    let line: Vec<String> = teeth(top, foot, x).chain(teeth(foot, top, x + 46.0)).collect();
    format!("M{}Z", line.join("L"))
}
