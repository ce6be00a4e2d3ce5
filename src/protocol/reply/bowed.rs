//! What is told of the bowed string: where it speaks, and how it sounds.

use crate::wire::wire;

wire! {
    /// Where a string speaks.
    pub struct BowMap {
        /// `place`, `attack` or `window`.
        pub map: String,
        /// The forces of the columns, N; none for a window.
        pub forces_n: Vec<f64>,
        /// What the rows stand for: places of the bow as shares of the length from the bridge, or accelerations, m/s².
        pub at: Vec<f64>,
        /// The rows that were asked for.
        pub rows: Vec<BowRow>,
        /// The window, if that was asked for and there is one.
        pub window: Option<BowWindow>,
    }

    /// One row of a map.
    pub struct BowRow {
        /// Which row, from 0.
        pub row: usize,
        /// Least force by formula, N.
        pub least_n: f64,
        /// Greatest force by formula, N.
        pub greatest_n: f64,
        /// The notes, one a column.
        pub cells: Vec<BowCell>,
    }

    /// What is said of one note.
    pub struct BowCell {
        /// `helmholtz` (clean), `double-slip`, `raucous`, `anomalous-low`, `multiple-flyback` or `not-settled`.
        pub regime: String,
        /// Periods until it was clean; none if it never was.
        pub periods: Option<f64>,
        /// How far it lies above the free string, cents.
        pub cents: f64,
    }

    /// Between which forces a string keeps a clean note.
    pub struct BowWindow {
        /// Least force, N.
        pub least_n: f64,
        /// Greatest force, N.
        pub greatest_n: f64,
        /// Their ratio, dB.
        pub width_db: f64,
    }

    /// What one would hear.
    pub struct Sound {
        /// Samples a second.
        pub rate_hz: u32,
        /// One channel, full scale 1. The page gets them apart from the text, and then this is empty.
        pub samples: Vec<f32>,
        /// Loudness, LUFS.
        pub loudness_lufs: f64,
        /// Loudness before it was brought to the one asked for, LUFS; by the difference of two, strings differ.
        pub natural_lufs: f64,
        /// Largest sample, of full scale.
        pub peak: f64,
        /// Every bowed note became a clean one.
        pub clean: bool,
    }
}
