//! How long does the lean path take in the browser? A number for the console, no gate: machines differ and are noisy.

use strings::construction::{Construction, Winding};
use strings::fit::answers::Answers;
use strings::fit::{candidates, problem};
use strings::report::LeanCore;
use wasm_bindgen_test::{console_log, wasm_bindgen_test};

#[wasm_bindgen_test]
fn the_lean_path_is_timed() {
    let posed = problem::pose(&Answers::default());
    let string = &posed.strings[1];
    let found = candidates::search(&posed, string);
    let mut blocks: Vec<(LeanCore, Vec<Vec<Winding>>)> = Vec::new();
    let mut last = None;
    for candidate in &found.candidates {
        let core = candidate.construction.core;
        if last != Some(core) {
            blocks.push((LeanCore::new(&Construction::of(core, &[]), &string.setting), Vec::new()));
            last = Some(core);
        }
        if let Some((_, stacks)) = blocks.last_mut() {
            stacks.push(candidate.construction.windings().copied().collect());
        }
    }
    let now = || js_sys::Date::now();
    let (start, mut sum) = (now(), 0.0);
    let rounds = 200;
    for _ in 0..rounds {
        for (core, stacks) in &blocks {
            for windings in stacks {
                sum += core.wound(windings).tension;
            }
        }
    }
    let each = (now() - start) * 1e3 / f64::from(rounds) / found.candidates.len() as f64;
    assert!(sum.is_finite() && sum > 0.0);
    let start = now();
    let examined: usize =
        posed.strings.iter().map(|s| candidates::search(&posed, s).examined).sum();
    let search = now() - start;
    console_log!(
        "lean path {each:.3} us a construction; a violin's search {search:.0} ms for {examined} constructions"
    );
}
