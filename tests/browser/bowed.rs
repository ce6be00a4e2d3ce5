//! The bowed string in the browser: the bits of a native run, and how long it takes. Times are for the console, no gate.

use strings::simulate::map::PlaceMap;
use strings::simulate::{Gesture, Law, Strung, note};
use wasm_bindgen_test::{console_log, wasm_bindgen_test};

#[path = "../simulate/bits.rs"]
mod bits;

#[wasm_bindgen_test]
fn a_bowed_note_has_the_bits_of_a_native_run() {
    assert_eq!(bits::bits(), bits::STORED);
}

#[wasm_bindgen_test]
fn the_bowed_string_is_timed() {
    let (string, body) = bits::string();
    let now = || js_sys::Date::now();
    for law in [Law::Hyperbolic, Law::Thermal] {
        let strung = Strung::new(&string, &body, string.rate(0.1, law));
        let start = now();
        let note = note::bowed(&strung, law, &Gesture::steady(0.1, 0.2, 0.1), 4.0);
        let seconds = (now() - start) / 1e3;
        assert!(note.bridge_force.iter().all(|x| x.is_finite()));
        console_log!(
            "{law:?}: {:.0} times real time at {} steps a second",
            4.0 / seconds,
            note.rate
        );
    }
    let start = now();
    let cells: usize =
        PlaceMap::usual(string, body, 30.0, 0.1, 24).rows().map(|row| row.cells.len()).sum();
    console_log!("{cells} cells in {:.2} s", (now() - start) / 1e3);
}
