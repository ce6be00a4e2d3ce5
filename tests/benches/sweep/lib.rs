//! The lean path and the bowed string as a module for a JavaScript engine, to be timed beside native code and other languages.

mod bowing;

use strings::fit::answers::Answers;
use strings::fit::problem;
use strings::report;
use strings::simulate::sound::Piece;
use wasm_bindgen::prelude::wasm_bindgen;

/// Runs the sweep so many times and gives the sum of all of them.
#[wasm_bindgen]
#[must_use]
pub fn sweep(lanes: bool, times: u32) -> f64 {
    let posed = problem::pose(&Answers::default());
    let setting = &posed.strings[1].setting;
    (0..times).map(|_| report::sweep(std::hint::black_box(setting), lanes).0).sum()
}

/// A string under the bow.
#[wasm_bindgen]
pub struct Bowing(bowing::Bowing);

#[wasm_bindgen]
impl Bowing {
    /// The A of a violin or the E of a double bass, under the law of temperature or that of speed.
    #[wasm_bindgen(constructor)]
    #[must_use]
    pub fn new(bass: bool, warm: bool) -> Self {
        Self(bowing::Bowing::new(bass, warm))
    }

    /// One note: its last force on the bridge, N.
    #[must_use]
    pub fn one(&self) -> f64 {
        self.0.one()
    }

    /// A row of a map, its notes side by side or one after the other: the sum of their shares of slipping.
    #[must_use]
    pub fn row(&self, lanes: bool) -> f64 {
        self.0.row(lanes)
    }

    /// A whole map, of starts or of places: the sum of the shares of slipping.
    #[must_use]
    pub fn map(&self, of_starts: bool) -> f64 {
        self.0.map(of_starts)
    }

    /// A piece of that number on the whole set: seconds that it lasts.
    #[must_use]
    pub fn piece(&self, piece: usize) -> f64 {
        self.0.piece(Piece::ALL[piece])
    }
}
