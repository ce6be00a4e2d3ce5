//! The portrait of a string: its section, drawn to scale.

use protocol::request::Construction;
use yew::prelude::*;

use super::section::{CoreSection, Disc, Section, outer_mm, section};
use crate::units;

/// Properties of [`Portrait`].
#[derive(Clone, PartialEq, Properties)]
pub struct PortraitProps {
    /// What is cut through.
    pub construction: Construction,
    /// What the picture shows, for those who do not see it.
    pub label: AttrValue,
    /// Magnification: pixels to a millimetre. Strings that are to be compared share it.
    pub px_per_mm: f64,
}

/// Room about the circle for its outline, in pixels.
const MARGIN: f64 = 2.0;

/// The magnification at which the thickest of some strings is so many pixels wide.
#[must_use]
pub fn magnification<'a>(strings: impl Iterator<Item = &'a Construction>, widest_px: f64) -> f64 {
    let widest = strings.map(outer_mm).fold(0.0, f64::max);
    if widest > 0.0 { widest_px / widest } else { widest_px }
}

/// A string cut through.
#[component]
pub fn Portrait(props: &PortraitProps) -> Html {
    let section = section(&props.construction);
    let scale = props.px_per_mm;
    let half = section.radius * scale + MARGIN;
    let side = units_px(2.0 * half);
    let view_box = format!("{0} {0} {1} {1}", units_px(-half), side);
    html! {
        <svg class="portrait" role="img" aria-label={props.label.clone()} width={side.clone()} height={side}
            viewBox={view_box}>
            { rings(&section, scale) }
            { core(&section, scale) }
        </svg>
    }
}

fn rings(section: &Section, scale: f64) -> Html {
    // From the outside in: what lies further in covers the middle of what lies further out.
    section
        .rings
        .iter()
        .rev()
        .map(|ring| match &ring.wires {
            None => html! {
                <circle class={classes!("ring", format!("metal-{}", ring.metal))} r={units_px(ring.outer * scale)} />
            },
            Some(wires) => html! {
                <>
                    <circle class="gap" r={units_px(ring.outer * scale)} />
                    <path class={classes!("ring", format!("metal-{}", ring.metal))} d={discs(wires, scale)} />
                </>
            },
        })
        .collect()
}

fn core(section: &Section, scale: f64) -> Html {
    let r = section.core_radius * scale;
    let material = format!("core-{}", section.material);
    match &section.core {
        CoreSection::Solid => {
            html! { <circle class={classes!("core", material)} r={units_px(r)} /> }
        }
        CoreSection::Wires(wires) => html! {
            <>
                <circle class="gap" r={units_px(r)} />
                <path class={classes!("core", material)} d={discs(wires, scale)} />
            </>
        },
        CoreSection::Filaments { drawn, parts, .. } => html! {
            <>
                <circle class={classes!("gap", (*parts > 1).then_some("rest"))} r={units_px(r)} />
                if *parts > 1 {
                    <path class="slice" d={slice(r, *parts)} />
                }
                <path class={classes!("core", "fine", material)} d={discs(drawn, scale)} />
            </>
        },
        CoreSection::Gut { ribbons } => html! {
            <>
                <circle class={classes!("core", material)} r={units_px(r)} />
                <path class="seam" d={seams(r, *ribbons)} />
            </>
        },
    }
}

/// A number of pixels, to a hundredth.
fn units_px(px: f64) -> String {
    let text = format!("{px:.2}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

/// Many circles as one path, which browsers draw much faster than many elements.
fn discs(discs: &[Disc], scale: f64) -> String {
    let mut path = String::new();
    for disc in discs {
        let r = units_px(disc.r * scale);
        let across = units_px(2.0 * disc.r * scale);
        path.push_str(&format!(
            "M{} {}a{r} {r} 0 1 0 {across} 0a{r} {r} 0 1 0 -{across} 0",
            units_px((disc.x - disc.r) * scale),
            units_px(disc.y * scale),
        ));
    }
    path
}

/// The upright sector in which filaments are drawn.
fn slice(r: f64, parts: usize) -> String {
    let half = core::f64::consts::PI / parts as f64;
    let (x, y) = (r * libm::sin(half), -r * libm::cos(half));
    let large = u8::from(parts < 2);
    format!(
        "M0 0L{} {}A{2} {2} 0 {large} 1 {3} {1}Z",
        units_px(-x),
        units_px(y),
        units_px(r),
        units_px(x)
    )
}

/// The lines between ribbons, curved as the twist lays them.
fn seams(r: f64, ribbons: usize) -> String {
    let mut path = String::new();
    for i in 0..ribbons {
        let angle = 2.0 * core::f64::consts::PI * i as f64 / ribbons as f64;
        // The bend is drawn, not measured: a third of a right angle at half the radius.
        let bend = angle + 0.55;
        path.push_str(&format!(
            "M0 0Q{} {} {} {}",
            units_px(0.62 * r * libm::cos(bend)),
            units_px(0.62 * r * libm::sin(bend)),
            units_px(r * libm::cos(angle)),
            units_px(r * libm::sin(angle)),
        ));
    }
    path
}

/// Properties of [`ScaleBar`].
#[derive(Clone, PartialEq, Properties)]
pub struct ScaleBarProps {
    /// Pixels to a millimetre.
    pub px_per_mm: f64,
    /// The bar is at most so many pixels long.
    #[prop_or(120.0)]
    pub room_px: f64,
}

/// Lengths a bar may have, in millimetres.
const BARS: [f64; 7] = [5.0, 2.0, 1.0, 0.5, 0.2, 0.1, 0.05];

/// A bar of a round length, that says how large a drawing is.
#[component]
pub fn ScaleBar(props: &ScaleBarProps) -> Html {
    let mm = BARS
        .into_iter()
        .find(|mm| mm * props.px_per_mm <= props.room_px)
        .unwrap_or(BARS[BARS.len() - 1]);
    let long = mm * props.px_per_mm;
    let path = format!("M1 2v8M1 6h{0}M{1} 2v8", units_px(long), units_px(long + 1.0));
    html! {
        <p class="scale-bar">
            <svg aria-hidden="true" width={units_px(long + 2.0)} height="12"><path d={path} /></svg>
            { units::mm(mm / 1000.0, if mm < 0.1 { 2 } else { i32::from(mm < 1.0) }) }
        </p>
    }
}
