//! Where a string speaks under the bow: maps that are drawn as they are computed, one string or two side by side.

use std::rc::Rc;

use protocol::reply::{BowMap, BowRow};
use protocol::request::Player;
use yew::prelude::*;

use super::table::Scroll;
use crate::hooks::{Maps, use_mapper};
use crate::order;
use crate::units;
use crate::words::{bowed, say};

/// A string whose map is drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct Mapped {
    /// What it is called within a sentence: "today’s string".
    pub name: AttrValue,
    /// What it is, and where it works.
    pub string: Player,
}

/// Properties of [`BowMaps`].
#[derive(Clone, PartialEq, Properties)]
pub struct BowMapsProps {
    /// The instrument, by its key.
    pub instrument: AttrValue,
    /// What the string is called: "A".
    pub name: AttrValue,
    /// One string, or two to be compared; the first is the one that is spoken of.
    pub strings: Rc<Vec<Mapped>>,
}

/// Maps: which, begin, stop, and what came of it.
#[component]
pub fn BowMaps(props: &BowMapsProps) -> Html {
    let mapper = use_mapper();
    let maps = &mapper.maps;
    {
        // Other strings: what is drawn is of none of them.
        let stop = mapper.stop.clone();
        let drawn = use_mut_ref(|| props.strings.clone());
        use_effect_with(props.strings.clone(), move |strings| {
            if *drawn.borrow() != *strings {
                *drawn.borrow_mut() = strings.clone();
                stop.emit(());
            }
        });
    }
    let button = |map: &'static str, words: &str| {
        let (start, strings) = (mapper.start.clone(), props.strings.clone());
        let instrument = props.instrument.clone();
        let onclick = Callback::from(move |_: MouseEvent| {
            let strings = strings.iter().map(|s| s.string.clone()).collect();
            start.emit((AttrValue::from(map), instrument.clone(), strings));
        });
        html! {
            <button type="button" class="button quiet" {onclick} aria-label={say!("map-of", map = words, name = props.name.as_str())}>{ words.to_owned() }</button>
        }
    };
    let (owed, all) = maps.owed;
    let done = all - owed;
    // Both maps on one axis of force, or the eye would compare what is not alike.
    let ends = maps.found.iter().flatten().filter_map(|map| edges(&map.forces_n));
    let forces = ends.reduce(|a, b| (a.0.min(b.0), a.1.max(b.1)));
    html! {
        <div class="bow-maps">
            <p class="how-to-read">{ say!("map-lead") }</p>
            <p class="actions">
                { button("place", say!("map-place")) }
                { button("attack", say!("map-start")) }
                if maps.running() {
                    <button type="button" class="button quiet" onclick={mapper.stop.reform(|_: MouseEvent| ())}>{ say!("stop") }</button>
                }
            </p>
            if maps.running() {
                <progress max={all.to_string()} value={done.to_string()} aria-label={say!("map-progress", name = props.name.as_str())} />
            }
            <div role="status">
                if let Some(broke) = &maps.broke {
                    <p class="amiss">{ say!("map-broke", reason = broke) }</p>
                } else if maps.stopped && owed > 0 {
                    <p>{ say!("map-stopped") }</p>
                } else if all > 0 {
                    <p class="takeaway">{ takeaway(maps, props) }</p>
                }
            </div>
            if all > 0 {
                <p class="how-to-read">{ bowed::how_to_read(&maps.map) }</p>
                <div class="maps">
                    { for props.strings.iter().enumerate().filter_map(|(i, string)| {
                        let map = maps.found.get(i)?.clone()?;
                        Some(html! { <BowMapFigure key={i} {map} forces={forces} name={string.name.clone()} length_m={string.string.setting.sounding_length_m} /> })
                    }) }
                </div>
            }
        </div>
    }
}

/// The sentence over the maps.
fn takeaway(maps: &Maps, props: &BowMapsProps) -> String {
    let name = |i: usize| props.strings.get(i).map(|string| string.name.as_str());
    let first = name(0).unwrap_or_default();
    let unknown = say!("map-looking", name = first);
    if maps.map == "place" {
        let found: Option<Vec<Option<f64>>> = maps.windows.iter().copied().collect();
        found.map_or(unknown, |found| format!("{}.", bowed::windows(first, name(1), &found)))
    } else if maps.running() {
        unknown
    } else {
        let found: Vec<f64> =
            maps.found.iter().flatten().map(|map| bowed::clean_share(map)).collect();
        format!("{}.", bowed::starts(first, name(1), &found))
    }
}

/// Properties of [`BowMapFigure`].
#[derive(Clone, PartialEq, Properties)]
pub struct BowMapFigureProps {
    /// The map, as far as it has come.
    pub map: Rc<BowMap>,
    /// The least and the greatest force on the axis, which several maps share; those of the map if left out.
    #[prop_or_default]
    pub forces: Option<(f64, f64)>,
    /// What the string is called within a sentence.
    pub name: AttrValue,
    /// Its sounding length, for places in millimetres.
    pub length_m: f64,
}

/// The drawing: its sides, and the room for words to the left and below.
const WIDE: f64 = 340.0;
const HIGH: f64 = 300.0;
const LEFT: f64 = 46.0;
const FOOT: f64 = 44.0;
const TOP: f64 = 22.0;
/// A kind of note is named in the drawing where it covers this share of it.
const NAMED: f64 = 0.04;
/// Nearer marks than this would run into each other, in the drawing's own unit.
const APART: (f64, f64) = (36.0, 18.0);

/// Where the lowest field of equal ratios begins and the highest ends.
fn edges(values: &[f64]) -> Option<(f64, f64)> {
    let (first, last) = (values.first()?, values.last()?);
    let half = libm::pow(last / first, 0.5 / (values.len() as f64 - 1.0).max(1.0));
    Some((first / half, last * half))
}

/// Middles of as many fields of equal ratios as `count` between two edges.
fn middles((low, high): (f64, f64), count: usize) -> Vec<f64> {
    let step = libm::log(high / low) / count as f64;
    (0..count).map(|i| low * libm::exp(step * (i as f64 + 0.5))).collect()
}

fn number(x: f64) -> String {
    format!("{x:.1}")
}

/// Where the fields of equal ratios stand along a side: the first begins at `from`, the last ends at `to`.
struct Side<'a> {
    values: &'a [f64],
    from: f64,
    to: f64,
}

impl Side<'_> {
    fn step(&self) -> f64 {
        (self.to - self.from) / self.values.len().max(1) as f64
    }

    /// Where the field `i` begins.
    fn at(&self, i: usize) -> f64 {
        self.from + self.step() * i as f64
    }

    /// Where a value stands, if it is within.
    fn of(&self, value: f64) -> Option<f64> {
        let (first, last) = (self.values.first()?, self.values.last()?);
        let whole = self.values.len() as f64 - 1.0;
        let along = libm::log(value / first) / libm::log(last / first) * whole + 0.5;
        (along >= 0.0 && along <= whole + 1.0).then(|| self.from + self.step() * along)
    }

    /// A value as near to its place as the side allows.
    fn held(&self, value: f64) -> f64 {
        let below = self.values.first().is_some_and(|first| value < *first);
        self.of(value).unwrap_or(if below { self.from } else { self.to })
    }

    /// Round values on the side, in a unit `scale` times smaller, no nearer to each other than `apart`.
    fn marks(&self, scale: f64, apart: f64) -> Vec<(f64, f64)> {
        let mut marks: Vec<(f64, f64)> = Vec::new();
        for decade in -3..6 {
            for digit in [1.0, 2.0, 5.0] {
                let round = digit * libm::pow(10.0, f64::from(decade));
                if let Some(at) = self.of(round / scale)
                    && marks.last().is_none_or(|(_, last)| (at - last).abs() >= apart)
                {
                    marks.push((round, at));
                }
            }
        }
        marks
    }
}

/// One map with its table.
#[component]
pub fn BowMapFigure(props: &BowMapFigureProps) -> Html {
    let map = &props.map;
    let place = map.map == "place";
    let across = Side { values: &map.at, from: LEFT, to: WIDE - 4.0 };
    let own = edges(&map.forces_n).unwrap_or((1.0, 2.0));
    let shared = props.forces.unwrap_or(own);
    let on_axis = middles(shared, map.forces_n.len().max(2));
    let axis = Side { values: &on_axis, from: HIGH - FOOT, to: TOP };
    // The map's own forces, where they lie on the axis.
    let along = |force: f64| {
        let share = libm::log(force / shared.0) / libm::log(shared.1 / shared.0);
        axis.from + (axis.to - axis.from) * share
    };
    let up = Side { values: &map.forces_n, from: along(own.0), to: along(own.1) };
    let (scale, unit) = if place {
        (props.length_m * 1e3, say!("map-across-place"))
    } else {
        (1.0, say!("map-across-start"))
    };
    let line = |force: fn(&BowRow) -> f64| {
        let points = in_order(map).into_iter().map(|row| {
            let x = across.at(row.row) + across.step() / 2.0;
            format!("{},{}", number(x), number(axis.held(force(row))))
        });
        points.collect::<Vec<_>>().join(" ")
    };
    let label = say!("map-picture", name = props.name.as_str());
    html! {
        <figure class="bow-map">
            <figcaption>{ crate::words::naming::capital(&props.name) }</figcaption>
            <svg role="img" aria-label={label} viewBox={format!("0 0 {WIDE} {HIGH}")} width="100%">
                <rect class="unplayed" x={number(LEFT)} y={number(TOP)} width={number(WIDE - 4.0 - LEFT)} height={number(HIGH - FOOT - TOP)} />
                // Fields meet without a seam.
                <g shape-rendering="crispEdges">{ for map.rows.iter().flat_map(|row| fields(row, &across, &up)) }</g>
                <polyline class="limit" points={line(|row| row.greatest_n)} />
                <polyline class="limit" points={line(|row| row.least_n)} />
                <g class="axes" aria-hidden="true">
                    { for across.marks(scale, APART.0).into_iter().map(|(value, x)| html! {
                        <>
                            <line class="tick" x1={number(x)} x2={number(x)} y1={number(HIGH - FOOT)} y2={number(HIGH - FOOT + 4.0)} />
                            <text x={number(x)} y={number(HIGH - FOOT + 17.0)} text-anchor="middle">{ units::significant(value, 1) }</text>
                        </>
                    }) }
                    { for axis.marks(1.0, APART.1).into_iter().map(|(value, y)| html! {
                        <>
                            <line class="tick" x1={number(LEFT - 4.0)} x2={number(LEFT)} y1={number(y)} y2={number(y)} />
                            <text x={number(LEFT - 7.0)} y={number(y + 4.0)} text-anchor="end">{ units::significant(value, 1) }</text>
                        </>
                    }) }
                    <text class="axis-name" x="0" y="13">{ say!("map-up") }</text>
                    <text class="axis-name" x={number(WIDE - 4.0)} y={number(HIGH - 8.0)} text-anchor="end">{ unit }</text>
                    { for names(map, &across, &up) }
                </g>
            </svg>
            <details>
                <summary>{ say!("map-table", name = props.name.as_str()) }</summary>
                { table(map, scale, place, &props.name) }
        <ul class="regimes">
            { for bowed::REGIMES.iter().map(|regime| html! { <li>{ say!("regime-line", label = regime.label(), means = regime.means()) }</li> }) }
        </ul>
            </details>
        </figure>
    }
}

/// The fields of one row, those of one kind that lie together as one.
fn fields(row: &BowRow, across: &Side<'_>, up: &Side<'_>) -> Vec<Html> {
    let mut drawn = Vec::new();
    let mut from = 0;
    for to in 1..=row.cells.len() {
        if row.cells.get(to).is_some_and(|cell| cell.regime == row.cells[from].regime) {
            continue;
        }
        let regime = &row.cells[from].regime;
        drawn.push(html! {
            <rect class={classes!("field", regime.clone())} x={number(across.at(row.row))} width={number(across.step())}
                y={number(up.at(to))} height={number(up.at(from) - up.at(to))} />
        });
        from = to;
    }
    drawn
}

/// The kinds of notes, named in the drawing at the field nearest to the middle of all that are alike.
fn names(map: &BowMap, across: &Side<'_>, up: &Side<'_>) -> Vec<Html> {
    let all = (map.at.len() * map.forces_n.len()) as f64;
    let mut taken: Vec<(f64, f64)> = Vec::new();
    let mut drawn = Vec::new();
    for regime in &bowed::REGIMES {
        let fields: Vec<(f64, f64)> = map
            .rows
            .iter()
            .flat_map(|row| {
                let own = row.cells.iter().enumerate().filter(|(_, c)| c.regime == regime.key);
                own.map(|(column, _)| (row.row as f64, column as f64))
            })
            .collect();
        let count = fields.len() as f64;
        if count < NAMED * all {
            continue;
        }
        let middle = fields.iter().fold((0.0, 0.0), |sum, f| (sum.0 + f.0, sum.1 + f.1));
        let middle = (middle.0 / count, middle.1 / count);
        let off = |f: &(f64, f64)| (f.0 - middle.0).abs() + (f.1 - middle.1).abs();
        let Some(nearest) = fields.iter().min_by(|a, b| off(a).total_cmp(&off(b))) else {
            continue;
        };
        let x = (across.from + across.step() * (nearest.0 + 0.5))
            .clamp(across.from + 30.0, across.to - 30.0);
        let y = up.from + up.step() * (nearest.1 + 0.5) + 4.0;
        if taken.iter().any(|other| (other.1 - y).abs() < 16.0 && (other.0 - x).abs() < 64.0) {
            continue;
        }
        taken.push((x, y));
        drawn.push(html! { <text class="note" x={number(x)} y={number(y)} text-anchor="middle">{ regime.label() }</text> });
    }
    drawn
}

/// The rows in their order; they come as they are computed.
fn in_order(map: &BowMap) -> Vec<&BowRow> {
    let rows: Vec<&BowRow> = map.rows.iter().collect();
    order::sorted(&rows, |a, b| a.row.cmp(&b.row))
}

fn table(map: &BowMap, scale: f64, place: bool, name: &str) -> Html {
    let rows = in_order(map);
    let force = |newtons: f64| units::significant(newtons, 2);
    let label = say!("map-caption", name = name);
    html! {
        <Scroll label={label.clone()}>
            <table>
                <caption>{ label }</caption>
                <thead>
                    <tr>
                        <th scope="col">{ if place { say!("map-column-place") } else { say!("map-column-start") } }</th>
                        <th scope="col">{ say!("map-column-from") }</th>
                        <th scope="col">{ say!("map-column-to") }</th>
                        <th scope="col">{ say!("map-column-formula") }</th>
                        <th scope="col">{ say!("map-column-to") }</th>
                    </tr>
                </thead>
                <tbody>
                    { for rows.into_iter().map(|row| {
                        let run = bowed::clean_run(row);
                        let end = |column: Option<usize>| {
                            let newtons = column.and_then(|column| map.forces_n.get(column));
                            newtons.map_or_else(|| say!("map-never").to_owned(), |newtons| force(*newtons))
                        };
                        html! {
                            <tr>
                                <th scope="row">{ units::significant(map.at.get(row.row).copied().unwrap_or_default() * scale, 2) }</th>
                                <td class="figure">{ end(run.map(|run| run.0)) }</td>
                                <td class="figure">{ end(run.map(|run| run.1)) }</td>
                                <td class="figure">{ force(row.least_n) }</td>
                                <td class="figure">{ force(row.greatest_n) }</td>
                            </tr>
                        }
                    }) }
                </tbody>
            </table>
        </Scroll>
    }
}
