//! How long does the lean path take in the browser? Numbers for the console, no gate: machines differ and are noisy.

use protocol::request::{FitRequest, Request};
use strings::fit::answers::Answers;
use strings::fit::problem;
use strings::report;
use wasm_bindgen_test::{console_log, wasm_bindgen_test};

#[wasm_bindgen_test]
fn the_lean_path_is_timed() {
    let posed = problem::pose(&Answers::default());
    let setting = &posed.strings[1].setting;
    let now = || js_sys::Date::now();
    let mut each = [0.0; 2];
    for (lanes, each) in [false, true].into_iter().zip(&mut each) {
        let rounds = 300;
        let (start, mut sum, mut count) = (now(), 0.0, 0);
        for _ in 0..rounds {
            let (part, of_it) = report::sweep(setting, lanes);
            sum += part;
            count += of_it;
        }
        *each = (now() - start) * 1e3 / f64::from(count);
        assert!(sum.is_finite() && sum > 0.0);
    }
    console_log!("lean path {:.4} us a construction alone, {:.4} us in lanes", each[0], each[1]);
}

#[wasm_bindgen_test]
fn how_sure_a_set_is_is_timed() {
    let now = || js_sys::Date::now();
    for instrument in ["violin", "viola", "cello", "double-bass"] {
        let answers = protocol::request::Answers {
            instrument: Some(instrument.to_owned()),
            ..Default::default()
        };
        let request = || Box::new(FitRequest { answers: answers.clone() });
        let mut each = [f64::INFINITY; 2];
        for _ in 0..3 {
            for (each, request) in
                each.iter_mut().zip([Request::Fit(request()), Request::Certainty(request())])
            {
                let start = now();
                drop(protocol::handle(&request));
                *each = each.min(now() - start);
            }
        }
        console_log!("{instrument}: a set {:.0} ms, how sure it is {:.0} ms", each[0], each[1]);
    }
}
