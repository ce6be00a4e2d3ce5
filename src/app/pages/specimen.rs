//! About the page: its version, model and licences, and the specimen sheet of what it is made of, drawn from the tokens
//! and the parts themselves.
//!
//! Colours, sizes and spaces are read from the style sheet as the browser has it, so the sheet cannot go stale.

use protocol::request::{Construction, Core, Winding};
use yew::prelude::*;

use crate::components::bar::RangeBar;
use crate::components::chart::{Chart, Field, Point, percent, px};
use crate::components::evidence::Evidence;
use crate::components::field::{NumberField, Scale};
use crate::components::portrait::{Portrait, ScaleBar};
use crate::components::table::Scroll;
use crate::fields::{Number, Wish};
use crate::platform::{view, worker};
use crate::units;
use crate::words::say;

/// Tokens that are colours of materials.
const MATERIALS: [&str; 12] = [
    "aluminium",
    "titanium",
    "chrome-steel",
    "nickel",
    "copper",
    "silver",
    "tungsten",
    "gold",
    "steel",
    "gut",
    "polymer",
    "aramid",
];

/// The specimen sheet.
#[component]
pub fn SpecimenPage() -> Html {
    let tokens = use_memo((), |()| view::tokens());
    let named =
        |start: &'static str| tokens.iter().filter(move |(name, _)| name.starts_with(start));
    let is_colour = |name: &str| {
        !["step-", "space-", "serif", "sans", "measure"].iter().any(|other| name.starts_with(other))
    };
    let colours = |materials: bool| {
        tokens
            .iter()
            .filter(|(name, _)| is_colour(name) && MATERIALS.contains(&name.as_str()) == materials)
            .map(swatch)
            .collect::<Html>()
    };
    html! {
        <article class="specimen sources">
            <h1>{ say!("specimen-title") }</h1>
            <p>{ say!("foot-advises") }{ " " }{ say!("foot-private") }</p>
            <p>{ say!("about-version", version = env!("CARGO_PKG_VERSION"), model = worker::MODEL) }</p>
            <p>
                { say!("about-typefaces") }
                { " " }
                <a href="./fonts/OFL.txt">{ say!("about-licence") }</a>
            </p>
            <h2>{ say!("about-made-of") }</h2>
            <p class="lede">{ say!("specimen-lead") }</p>
            <section>
                <h2>{ say!("specimen-colours") }</h2>
                <p>{ say!("specimen-colours-how") }</p>
                <ul class="swatches">{ colours(false) }</ul>
                <h3>{ say!("specimen-materials") }</h3>
                <ul class="swatches">{ colours(true) }</ul>
            </section>
            <section>
                <h2>{ say!("specimen-type") }</h2>
                <p>{ say!("specimen-type-how") }</p>
                { for named("step-").map(|(name, value)| html! {
                    <figure class="type-step">
                        <svg width="100%" height={format!("calc(1.6 * var(--{name}))")} role="img" aria-label={say!("specimen-pangram")}>
                            <text y="1.1em" font-size={format!("var(--{name})")} font-family="var(--serif)">{ say!("specimen-pangram") }</text>
                        </svg>
                        <figcaption><code>{ name }</code>{ " " }{ value }</figcaption>
                    </figure>
                }) }
            </section>
            <section>
                <h2>{ say!("specimen-spaces") }</h2>
                <p>{ say!("specimen-spaces-how") }</p>
                { for named("space-").map(|(name, value)| html! {
                    <figure class="type-step">
                        <svg width="100%" height="16" aria-hidden="true"><rect class="space" y="2" width={format!("var(--{name})")} height="12" /></svg>
                        <figcaption><code>{ name }</code>{ " " }{ value }</figcaption>
                    </figure>
                }) }
            </section>
            <section>
                <h2>{ say!("specimen-parts") }</h2>
                <p>{ say!("specimen-parts-how") }</p>
                { parts() }
            </section>
        </article>
    }
}

/// A colour as the browser shows it, with its name and its value.
fn swatch((name, value): &(String, String)) -> Html {
    html! {
        <li key={name.clone()}>
            <svg width="64" height="44" aria-hidden="true"><rect class="swatch" width="64" height="44" fill={format!("var(--{name})")} /></svg>
            <span><code>{ name }</code><small>{ value }</small></span>
        </li>
    }
}

/// A string of no maker: a bundle of polyamide under aluminium and silver.
fn example() -> Construction {
    Construction {
        core: Core {
            material: "polyamide".to_owned(),
            build: "multifilament".to_owned(),
            diameter_m: 5.2e-4,
            layout: None,
            lay_deg: None,
            filament_m: Some(2.5e-5),
            fill: Some(0.7),
            twist_deg: Some(12.0),
        },
        windings: vec![Winding {
            metal: "silver".to_owned(),
            form: "flat".to_owned(),
            thickness_m: 1.1e-4,
            bedding: 0.0,
            gap: 0.0,
        }],
    }
}

/// What the example of a chart shows: a number, and how far up it lies.
const HEIGHTS: [(&str, f64); 4] = [("1", 0.2), ("2", 0.5), ("3", 0.65), ("4", 0.7)];

/// A chart in its frame.
fn chart() -> Html {
    let field = Field { height: 220.0, top: 14.0, bottom: 44.0, left: 8.0, right: 4.0 };
    let count = HEIGHTS.len() as f64;
    let at = |i: usize, height: f64| (field.across((i as f64 + 0.5) / count), field.down(height));
    let points = HEIGHTS.iter().enumerate().map(|(i, (number, height))| {
        let (x, y) = at(i, *height);
        let said = say!("specimen-point", number = *number, height = units::fixed(*height, 2));
        Point { x, y: Some(y), said: said.into() }
    });
    let drawn = html! {
        <>
            { field.rule(field.down(0.0), "0") }
            { field.rule(field.down(1.0), "1") }
            { for HEIGHTS.iter().enumerate().map(|(i, (number, height))| {
                let (x, y) = at(i, *height);
                html! {
                    <>
                        <circle cx={percent(x)} cy={px(y)} r="6" />
                        { field.under(x, 16.0, number) }
                    </>
                }
            }) }
            { field.names(say!("specimen-upward"), say!("specimen-along")) }
        </>
    };
    let table = html! {
        <Scroll label={say!("specimen-chart-table")}>
            <table>
                <thead><tr><th scope="col">{ say!("specimen-along") }</th><th scope="col">{ say!("specimen-upward") }</th></tr></thead>
                <tbody>
                    { for HEIGHTS.iter().map(|(number, height)| html! {
                        <tr><th scope="row">{ *number }</th><td class="figure">{ units::fixed(*height, 2) }</td></tr>
                    }) }
                </tbody>
            </table>
        </Scroll>
    };
    html! {
        <Chart class="specimen-chart" title={say!("specimen-chart-title")} how={html! { <p>{ say!("specimen-chart-how") }</p> }}
            label={say!("specimen-chart-label")} height={field.height} {drawn} points={points.collect::<Vec<_>>()}
            folded={say!("specimen-chart-table")} {table} />
    }
}

/// Every small part that pages share.
fn parts() -> Html {
    let unit = Number::Length;
    let grades = ["measured", "published", "computed", "judged", "guessed"];
    html! {
        <>
            <h3>{ say!("specimen-buttons") }</h3>
            <p class="actions">
                <button type="button" class="button">{ say!("specimen-chief") }</button>
                <button type="button" class="button quiet">{ say!("specimen-quiet") }</button>
                <button type="button" class="as-link">{ say!("specimen-link") }</button>
            </p>
            <h3>{ say!("specimen-fields") }</h3>
            <NumberField id="specimen-number" ask={say!("specimen-number")} hint={say!("specimen-number-hint")} text="328"
                units={unit.units().to_vec()} unit={Some(unit.unit(None))} on_type={Callback::noop()} />
            <NumberField id="specimen-slip" ask={say!("specimen-number")} text={say!("specimen-typed")} units={unit.units().to_vec()} unit={Some(unit.unit(None))}
                fault={Some(AttrValue::from(say!("specimen-slip")))} on_type={Callback::noop()} />
            <Scale id="specimen-scale" wish={Wish::Brightness} value={0.5} text="0.5" on_type={Callback::noop()} />
            <h3>{ say!("specimen-evidence") }</h3>
            <p class="grades">{ for grades.map(|grade| html! { <><Evidence {grade} />{ " " }</> }) }</p>
            <h3>{ say!("specimen-words") }</h3>
            <p class="caution">{ say!("specimen-caution") }</p>
            <p class="takeaway">{ say!("specimen-takeaway") }</p>
            <p class="how-to-read">{ say!("specimen-how") }</p>
            <h3>{ say!("specimen-drawings") }</h3>
            <figure class="likeness">
                <Portrait construction={example()} px_per_mm={150.0} label={say!("specimen-portrait")} />
                <ScaleBar px_per_mm={150.0} room_px={90.0} />
            </figure>
            <RangeBar label={say!("specimen-bar")} most={100.0} value={60.0} range={(48.0, 72.0)} usual={Some((40.0, 80.0))} limit={Some(90.0)} />
            <h3>{ say!("specimen-chart") }</h3>
            { chart() }
            <h3>{ say!("specimen-table") }</h3>
            <Scroll label={say!("specimen-table")}>
                <table>
                    <thead><tr><th scope="col">{ say!("specimen-column") }</th><th scope="col">{ say!("specimen-figures") }</th></tr></thead>
                    <tbody><tr><th scope="row">{ say!("specimen-row") }</th><td class="figure">{ "0.68" }</td></tr></tbody>
                </table>
            </Scroll>
            <details><summary>{ say!("specimen-more") }</summary><p>{ say!("specimen-depth") }</p></details>
        </>
    }
}
