//! The four cores of which strings are made, cut through and drawn to one scale: what the page is about.

use protocol::request::{Construction, Core, Winding};
use yew::prelude::*;

use super::portrait::{Portrait, ScaleBar};
use crate::words::naming::portrait;
use crate::words::{say, speech};

/// Pixels to a millimetre.
const PX_PER_MM: f64 = 132.0;

/// A core of this material, build and diameter in metres; `filament` is the diameter of one of a bundle's.
fn core(material: &str, build: &str, diameter_m: f64) -> Core {
    Core {
        material: material.to_owned(),
        build: build.to_owned(),
        diameter_m,
        layout: (build == "strand").then(|| "1x19".to_owned()),
        lay_deg: (build == "strand").then_some(12.0),
        filament_m: (build == "multifilament").then_some(32e-6),
        fill: (build == "multifilament").then_some(0.75),
        twist_deg: matches!(build, "multifilament" | "twisted").then_some(20.0),
    }
}

fn ribbon(metal: &str, thickness_m: f64) -> Winding {
    let (metal, form) = (metal.to_owned(), "flat".to_owned());
    Winding { metal, form, thickness_m, bedding: 0.0, gap: 0.0 }
}

/// Strings as they are usual for the A and the D of a violin, one for each core: common practice, no source.
fn examples() -> [(&'static str, Construction); 4] {
    let string = |core: Core, windings: Vec<Winding>| Construction { core, windings };
    [
        ("gut", string(core("gut", "twisted", 0.76e-3), Vec::new())),
        (
            "solid",
            string(core("spring-steel", "solid", 0.34e-3), vec![ribbon("chrome-steel", 90e-6)]),
        ),
        (
            "synthetic",
            string(
                core("polyamide", "multifilament", 0.52e-3),
                vec![ribbon("aluminium", 60e-6), ribbon("silver", 55e-6)],
            ),
        ),
        (
            "strand",
            string(
                core("spring-steel", "strand", 0.42e-3),
                vec![ribbon("copper", 60e-6), ribbon("chrome-steel", 55e-6)],
            ),
        ),
    ]
}

/// The four cores with a word for each.
#[component]
pub fn Cores() -> Html {
    html! {
        <figure class="cores" aria-label={say!("cores-title")}>
            <ul>
                { for examples().into_iter().map(|(key, construction)| {
                    let name = speech::of_or_key("cores", key);
                    html! {
                        <li>
                            <span class="likeness-room">
                                <Portrait label={portrait(name, &construction)} {construction} px_per_mm={PX_PER_MM} />
                            </span>
                            <b>{ name }</b>
                            <span>{ speech::of("cores", &format!("{key}.means")).unwrap_or_default() }</span>
                        </li>
                    }
                }) }
            </ul>
            <ScaleBar px_per_mm={PX_PER_MM} />
        </figure>
    }
}
