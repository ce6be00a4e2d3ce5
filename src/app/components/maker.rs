//! A construction as a person writes it: which core, how thick, wound with what.

use protocol::request::{Construction, Core, Winding};
use serde_json::{Value, json};
use strings::error::{Bound, CORE_DIAMETER, GAP, WINDING_THICKNESS};
use strings::material::METALS;
use strings::quantity::Metre;
use yew::prelude::*;

use crate::letters;
use crate::platform::field;
use crate::units;
use crate::words::naming::metal;
use crate::words::{say, speech};

/// Cores a person can choose: the message that names them, their material and build, and a strand's layout.
const CORES: [(&str, &str, &str, Option<&str>); 12] = [
    ("gut", "gut", "twisted", None),
    ("spring-wire", "spring-steel", "solid", None),
    ("stainless-wire", "stainless-steel", "solid", None),
    ("strand-7", "spring-steel", "strand", Some("1x7")),
    ("strand-19", "spring-steel", "strand", Some("1x19")),
    ("rope", "spring-steel", "strand", Some("7x7")),
    ("polyamide", "polyamide", "multifilament", None),
    ("polyester", "polyester", "multifilament", None),
    ("composite", "high-modulus-polymer", "multifilament", None),
    ("aramid", "aramid", "multifilament", None),
    ("polyamide-one", "polyamide", "solid", None),
    ("polyester-one", "polyester", "solid", None),
];

/// The most windings a string may have.
const MOST_WINDINGS: usize = 3;

/// A winding as it stands in the form.
#[derive(Clone, Debug, PartialEq)]
struct Layer {
    metal: String,
    form: String,
    thickness_mm: String,
    bedding: f64,
    gap_percent: String,
}

/// A construction as it stands in the form: numbers are texts until they can be read.
#[derive(Clone, Debug, PartialEq)]
pub struct Draft {
    core: Core,
    gauge_mm: String,
    layers: Vec<Layer>,
}

/// Something in a draft that cannot be read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct DraftError {
    /// Where: nought is the core, then the windings.
    pub index: usize,
    /// What to put there.
    pub message: String,
}

fn text(metres: f64) -> String {
    let text = units::fixed(Metre::new(metres).mm(), 4);
    text.trim_end_matches('0').trim_end_matches(units::point()).to_owned()
}

fn read(typed: &str, bound: Bound, index: usize) -> Result<f64, DraftError> {
    // A comma is how half of Europe writes the point.
    let metres =
        letters::number(&typed.trim().replace(',', ".")).map(|mm| Metre::from_mm(mm).get());
    match metres {
        // A hair of rounding must not shut out the end of a range.
        Some(metres) if metres >= bound.min * 0.999_999 && metres <= bound.max * 1.000_001 => {
            Ok(metres.clamp(bound.min, bound.max))
        }
        _ => Err(DraftError {
            index,
            message: say!("maker-fault-mm", low = text(bound.min), high = text(bound.max)),
        }),
    }
}

/// A share in per cent, as it stands in a field.
fn percent_text(share: f64) -> String {
    let text = units::fixed(share * 100.0, 2);
    text.trim_end_matches('0').trim_end_matches(units::point()).to_owned()
}

fn read_gap(text: &str, index: usize) -> Result<f64, DraftError> {
    let share = letters::number(&text.trim().replace(',', ".")).map(|percent| percent / 100.0);
    match share {
        Some(share) if (GAP.min..=GAP.max).contains(&share) => Ok(share),
        _ => Err(DraftError {
            index,
            message: say!(
                "maker-fault-percent",
                low = units::fixed(GAP.min * 100.0, 0),
                high = units::fixed(GAP.max * 100.0, 0),
            ),
        }),
    }
}

impl Draft {
    /// The form as a value that can be put by.
    #[must_use]
    pub fn to_value(&self) -> Value {
        let Core { material, build, diameter_m, layout, lay_deg, filament_m, fill, twist_deg } =
            &self.core;
        let layer = |layer: &Layer| {
            let Layer { metal, form, thickness_mm, bedding, gap_percent } = layer;
            json!([metal, form, thickness_mm, bedding, gap_percent])
        };
        let layers: Vec<Value> = self.layers.iter().map(layer).collect();
        let core =
            json!([material, build, diameter_m, layout, lay_deg, filament_m, fill, twist_deg]);
        json!([core, self.gauge_mm, layers])
    }

    /// The form that was put by as such a value; none where it is another.
    #[must_use]
    pub fn of_value(value: &Value) -> Option<Self> {
        let text = |value: &Value| value.as_str().map(str::to_owned);
        let (core, layers) = (&value[0], value[2].as_array()?);
        let layer = |layer: &Value| {
            Some(Layer {
                metal: text(&layer[0])?,
                form: text(&layer[1])?,
                thickness_mm: text(&layer[2])?,
                bedding: layer[3].as_f64()?,
                gap_percent: text(&layer[4])?,
            })
        };
        Some(Self {
            core: Core {
                material: text(&core[0])?,
                build: text(&core[1])?,
                diameter_m: core[2].as_f64()?,
                layout: text(&core[3]),
                lay_deg: core[4].as_f64(),
                filament_m: core[5].as_f64(),
                fill: core[6].as_f64(),
                twist_deg: core[7].as_f64(),
            },
            gauge_mm: text(&value[1])?,
            layers: layers.iter().map(layer).collect::<Option<_>>()?,
        })
    }

    /// The form for a construction.
    #[must_use]
    pub fn of(construction: &Construction) -> Self {
        Self {
            core: construction.core.clone(),
            gauge_mm: text(construction.core.diameter_m),
            layers: construction
                .windings
                .iter()
                .map(|w| Layer {
                    metal: w.metal.clone(),
                    form: w.form.clone(),
                    thickness_mm: text(w.thickness_m),
                    bedding: w.bedding,
                    gap_percent: percent_text(w.gap),
                })
                .collect(),
        }
    }

    /// The construction that stands in the form.
    ///
    /// # Errors
    /// Numbers that cannot be read.
    pub fn read(&self) -> Result<Construction, Vec<DraftError>> {
        let mut errors = Vec::new();
        let mut take = |result: Result<f64, DraftError>| {
            result.unwrap_or_else(|error| {
                errors.push(error);
                0.0
            })
        };
        let core =
            Core { diameter_m: take(read(&self.gauge_mm, CORE_DIAMETER, 0)), ..self.core.clone() };
        let windings = self
            .layers
            .iter()
            .enumerate()
            .map(|(i, layer)| Winding {
                metal: layer.metal.clone(),
                form: layer.form.clone(),
                thickness_m: take(read(&layer.thickness_mm, WINDING_THICKNESS, i + 1)),
                bedding: layer.bedding,
                gap: take(read_gap(&layer.gap_percent, i + 1)),
            })
            .collect();
        if errors.is_empty() { Ok(Construction { core, windings }) } else { Err(errors) }
    }

    fn with_core(mut self, index: usize) -> Self {
        let Some((_, material, build, layout)) = CORES.get(index) else { return self };
        let old = self.core;
        // What the new kind of core needs and the old one did not have gets its usual value.
        let only =
            |wanted: bool, value: Option<f64>, usual: f64| wanted.then(|| value.unwrap_or(usual));
        let bundle = *build == "multifilament";
        let strand = *build == "strand";
        let twist = if *build == "twisted" { 45.0 } else { 12.0 };
        self.core = Core {
            material: (*material).to_owned(),
            build: (*build).to_owned(),
            diameter_m: old.diameter_m,
            layout: layout.map(str::to_owned),
            lay_deg: only(strand, old.lay_deg, 12.0),
            filament_m: only(bundle, old.filament_m, 2.5e-5),
            fill: only(bundle, old.fill, 0.7),
            twist_deg: only(
                bundle || *build == "twisted",
                old.twist_deg.filter(|_| old.build == *build),
                twist,
            ),
        };
        self
    }

    fn with_layer(mut self, at: usize, change: impl FnOnce(&mut Layer)) -> Self {
        if at == self.layers.len() && at < MOST_WINDINGS {
            self.layers.push(Layer {
                metal: String::new(),
                form: "flat".to_owned(),
                thickness_mm: text(5e-5),
                bedding: 0.0,
                gap_percent: "0".to_owned(),
            });
        }
        if let Some(layer) = self.layers.get_mut(at) {
            change(layer);
        }
        // A winding without a metal is none.
        self.layers.retain(|layer| !layer.metal.is_empty());
        self
    }

    fn core_index(&self) -> Option<usize> {
        CORES.iter().position(|(_, material, build, layout)| {
            self.core.material == *material
                && self.core.build == *build
                && self.core.layout.as_deref() == *layout
        })
    }
}

/// Properties of [`Maker`].
#[derive(Clone, PartialEq, Properties)]
pub struct MakerProps {
    /// A word that tells this form's fields from those of another.
    pub id: AttrValue,
    /// What stands in it.
    pub draft: Draft,
    /// What the model says is wrong with it.
    #[prop_or_default]
    pub faults: Vec<AttrValue>,
    /// It was changed.
    pub on_change: Callback<Draft>,
}

/// The form for one construction.
#[component]
pub fn Maker(props: &MakerProps) -> Html {
    let (draft, id) = (&props.draft, &props.id);
    let errors = draft.read().err().unwrap_or_default();
    let error = |index: usize| errors.iter().find(|s| s.index == index).map(|s| s.message.clone());
    let on_core = {
        let (draft, on_change) = (draft.clone(), props.on_change.clone());
        Callback::from(move |event: Event| {
            if let Some(index) = field::text(&event).and_then(|t| t.parse().ok()) {
                on_change.emit(draft.clone().with_core(index));
            }
        })
    };
    let on_gauge = {
        let (draft, on_change) = (draft.clone(), props.on_change.clone());
        Callback::from(move |event: InputEvent| {
            if let Some(gauge_mm) = field::text(&event) {
                on_change.emit(Draft { gauge_mm, ..draft.clone() });
            }
        })
    };
    let core_index = draft.core_index();
    let rows = (draft.layers.len() + 1).min(MOST_WINDINGS);
    html! {
        <div class="maker">
            <p class="entry">
                <label for={format!("{id}-core")}>{ say!("card-core") }</label>
                <select id={format!("{id}-core")} onchange={on_core}>
                    { for CORES.iter().enumerate().map(|(i, (key, ..))| html! {
                        <option value={i.to_string()} selected={core_index == Some(i)}>{ speech::of_or_key("maker-core", key) }</option>
                    }) }
                </select>
            </p>
            { number(&format!("{id}-gauge"), say!("maker-gauge"), &draft.gauge_mm, error(0), on_gauge) }
            { for (0..rows).map(|i| layer(props, i)) }
            { for props.faults.iter().map(|fault| html! { <p class="amiss" role="alert">{ fault }</p> }) }
        </div>
    }
}

fn number(
    id: &str,
    label: &str,
    value: &str,
    error: Option<String>,
    on_input: Callback<InputEvent>,
) -> Html {
    let wrong = error.is_some();
    html! {
        <p class="entry">
            <label for={id.to_owned()}>{ label.to_owned() }</label>
            <input id={id.to_owned()} type="text" inputmode="decimal" autocomplete="off" value={value.to_owned()}
                oninput={on_input} aria-invalid={wrong.then_some("true")}
                aria-describedby={wrong.then(|| format!("{id}-fault"))} />
            if let Some(error) = error {
                <span class="amiss" id={format!("{id}-fault")}>{ error }</span>
            }
        </p>
    }
}

fn layer(props: &MakerProps, at: usize) -> Html {
    let id = format!("{}-winding-{at}", props.id);
    let layer = props.draft.layers.get(at);
    let changed = |set: fn(&mut Layer, String)| {
        let (draft, on_change) = (props.draft.clone(), props.on_change.clone());
        move |text: Option<String>| {
            if let Some(text) = text {
                on_change.emit(draft.clone().with_layer(at, |layer| set(layer, text)));
            }
        }
    };
    let on_metal = changed(|layer, text| layer.metal = text);
    let on_form = changed(|layer, text| layer.form = text);
    let on_thickness = changed(|layer, text| layer.thickness_mm = text);
    let on_gap = changed(|layer, text| layer.gap_percent = text);
    let gap_slip = layer.and_then(|l| read_gap(&l.gap_percent, at + 1).err()).map(|s| s.message);
    // Each field shows what is wrong with it alone.
    let error = layer
        .and_then(|l| read(&l.thickness_mm, WINDING_THICKNESS, at + 1).err())
        .map(|s| s.message);
    let title = [say!("maker-first"), say!("maker-second"), say!("maker-third")][at.min(2)];
    html! {
        <fieldset class="winding">
            <legend>{ title }</legend>
            <p class="entry">
                <label for={format!("{id}-metal")}>{ say!("maker-metal") }</label>
                <select id={format!("{id}-metal")} onchange={Callback::from(move |e: Event| on_metal(field::text(&e)))}>
                    <option value="" selected={layer.is_none()}>{ say!("maker-none") }</option>
                    { for METALS.iter().map(|m| html! {
                        <option value={m.key} selected={layer.is_some_and(|l| l.metal == m.key)}>{ metal(m.key).to_owned() }</option>
                    }) }
                </select>
            </p>
            if let Some(layer) = layer {
                <p class="entry">
                    <label for={format!("{id}-form")}>{ say!("maker-form") }</label>
                    <select id={format!("{id}-form")} onchange={Callback::from(move |e: Event| on_form(field::text(&e)))}>
                        <option value="flat" selected={layer.form != "round"}>{ say!("maker-flat") }</option>
                        <option value="round" selected={layer.form == "round"}>{ say!("maker-round") }</option>
                    </select>
                </p>
                { number(&format!("{id}-thickness"), say!("maker-thickness"), &layer.thickness_mm, error,
                    Callback::from(move |e: InputEvent| on_thickness(field::text(&e)))) }
                { number(&format!("{id}-gap"), say!("maker-gap"), &layer.gap_percent, gap_slip,
                    Callback::from(move |e: InputEvent| on_gap(field::text(&e)))) }
            }
        </fieldset>
    }
}
