//! Total load, load on the bridge, and the steps between neighbours.

use protocol::reply::{Problem, Range, Set};
use yew::prelude::*;

use crate::components::bar::RangeBar;
use crate::components::table::Scroll;
use crate::units;
use crate::words::{say, set as words};

/// Total load, load on the bridge, and the steps between neighbours.
pub(super) fn load(set: &Set, problem: &Problem, names: &[String]) -> Html {
    let (total, bridge) = (&set.total_tension_n, &set.downforce_n);
    let written = |r: &Range| (units::force(r.value), units::force_range(r.low, r.high));
    let ((total_force, total_range), (bridge_force, bridge_range)) =
        (written(total), written(bridge));
    let usual = units::force_range(problem.usual_load_n.0, problem.usual_load_n.1);
    let most = 1.12 * problem.usual_load_n.1.max(problem.most_load_n).max(total.high);
    html! {
        <>
            <dl class="bars">
                <dt>{ say!("load-all") }</dt>
                <dd>
                    <p>{ say!("load-total", force = &total_force, range = &total_range, usual = &usual) }
                    if problem.most_load_n < problem.usual_load_n.1 {
                        { format!(" {}", say!("load-limit", limit = units::one_force(problem.most_load_n))) }
                    }
                    </p>
                    <RangeBar label={say!("load-total-bar", range = &total_range, usual = &usual)} most={most}
                        value={total.value} range={(total.low, total.high)} usual={problem.usual_load_n}
                        limit={Some(problem.most_load_n)} />
                </dd>
                <dt>{ say!("load-bridge") }</dt>
                <dd>
                    <p>{ say!("load-bridge-force", force = &bridge_force, range = &bridge_range) }</p>
                    <RangeBar label={say!("load-bridge-bar", range = &bridge_range)} most={most}
                        value={bridge.value} range={(bridge.low, bridge.high)} />
                </dd>
            </dl>
            <p class="legend-line">{ say!("load-legend") }</p>
            { steps(set, names) }
        </>
    }
}

fn steps(set: &Set, names: &[String]) -> Html {
    let title = words::steps_title(&set.steps, names);
    html! {
        <>
            <h3>{ title }</h3>
            <Scroll label={say!("steps-table")}>
                <table>
                    <thead>
                        <tr>
                            <th scope="col">{ say!("steps-from") }</th>
                            <th scope="col">{ say!("steps-tension") }</th>
                            <th scope="col">{ say!("steps-column-usual") }</th>
                            <th scope="col">{ say!("column-word") }</th>
                            <th scope="col">{ say!("steps-push") }</th>
                        </tr>
                    </thead>
                    <tbody>
                        { for set.steps.iter().enumerate().map(|(i, s)| html! {
                            <tr>
                                <th scope="row">{ format!("{}, {}", names[i], names[i + 1]) }</th>
                                <td class="figure">{ units::fixed(s.tension_ratio, 2) }</td>
                                <td class="figure">{ units::fixed(s.usual_ratio, 2) }</td>
                                <td>{ words::step(s) }</td>
                                <td class="figure">{ units::fixed(s.impedance_ratio, 2) }</td>
                            </tr>
                        }) }
                    </tbody>
                </table>
            </Scroll>
        </>
    }
}
