//! The positions of all tunings: what is made for each, of which families, within which tensions and gauges.

use super::{Metals, Position, Row};
use crate::construction::Family::{
    self, PlainGut, PlainSteel, StrandedSteel, Synthetic, WoundGut, WoundSteel,
};
use crate::precedent::Grade::{self, Everyday, Nobody, Sometimes};

/// A row; on a historical set-up plain gut is the everyday string, and other gut and synthetics are rare.
const fn row(family: Family, grade: Grade, tension: (f64, f64), gauge: (f64, f64)) -> Row {
    let historical = match family {
        PlainGut => Everyday,
        WoundGut | Synthetic => Sometimes,
        _ => Nobody,
    };
    Row { family, grade, historical, tension, gauge }
}

/// A row whose place on a historical set-up is not the rule's.
const fn with_historical(historical: Grade, row: Row) -> Row {
    Row { historical, ..row }
}

const fn position(
    key: &'static str,
    note: &'static str,
    tension: (f64, f64),
    brilliance: (f64, f64),
    metals: Metals,
    rows: &'static [Row],
) -> Position {
    Position { key, note, tension, brilliance, metals, rows }
}

/// Every position of every tuning.
pub const POSITIONS: &[Position] = &[
    position(
        "violin-e",
        "E5",
        (70.0, 90.0),
        (10.0e3, 200.0e3),
        Metals { soft: &[], steel: &["aluminium"] },
        &[
            row(PlainSteel, Everyday, (70.0, 90.0), (0.25, 0.28)),
            row(WoundSteel, Sometimes, (70.0, 90.0), (0.25, 0.36)),
            row(PlainGut, Sometimes, (58.0, 92.0), (0.56, 0.68)),
        ],
    ),
    position(
        "violin-a",
        "A4",
        (48.0, 63.0),
        (8.0e3, 80.0e3),
        Metals { soft: &["aluminium"], steel: &["chrome-steel", "aluminium"] },
        &[
            row(Synthetic, Everyday, (48.0, 63.0), (0.58, 0.82)),
            row(WoundSteel, Everyday, (48.0, 66.0), (0.40, 0.62)),
            row(StrandedSteel, Everyday, (48.0, 66.0), (0.40, 0.66)),
            row(WoundGut, Sometimes, (42.0, 63.0), (0.60, 0.86)),
            row(PlainGut, Sometimes, (40.0, 65.0), (0.70, 0.86)),
        ],
    ),
    position(
        "violin-d",
        "D4",
        (38.0, 60.0),
        (4.0e3, 40.0e3),
        Metals { soft: &["aluminium", "silver"], steel: &["chrome-steel", "aluminium", "silver"] },
        &[
            row(Synthetic, Everyday, (38.0, 60.0), (0.66, 1.00)),
            row(WoundSteel, Everyday, (38.0, 60.0), (0.48, 0.82)),
            row(StrandedSteel, Everyday, (38.0, 60.0), (0.48, 0.82)),
            row(WoundGut, Sometimes, (34.0, 56.0), (0.70, 1.05)),
            row(PlainGut, Sometimes, (30.0, 56.0), (0.90, 1.20)),
        ],
    ),
    position(
        "violin-g",
        "G3",
        (35.0, 51.0),
        (2.5e3, 25.0e3),
        Metals { soft: &["silver"], steel: &["silver", "tungsten", "chrome-steel"] },
        &[
            row(Synthetic, Everyday, (35.0, 51.0), (0.70, 1.00)),
            row(StrandedSteel, Everyday, (35.0, 51.0), (0.60, 0.90)),
            row(WoundSteel, Sometimes, (35.0, 51.0), (0.58, 0.90)),
            with_historical(Everyday, row(WoundGut, Sometimes, (32.0, 50.0), (0.74, 1.05))),
            with_historical(Sometimes, row(PlainGut, Sometimes, (28.0, 48.0), (1.25, 1.65))),
        ],
    ),
    position(
        "violin-c",
        "C3",
        (36.0, 54.0),
        (1.5e3, 15.0e3),
        Metals { soft: &["silver", "tungsten"], steel: &["tungsten", "silver", "chrome-steel"] },
        &[
            row(Synthetic, Sometimes, (36.0, 54.0), (0.90, 1.40)),
            row(StrandedSteel, Sometimes, (36.0, 54.0), (0.78, 1.25)),
        ],
    ),
    position(
        "viola-a",
        "A4",
        (65.0, 100.0),
        (8.0e3, 80.0e3),
        Metals { soft: &["aluminium"], steel: &["chrome-steel", "aluminium"] },
        &[
            row(WoundSteel, Everyday, (65.0, 100.0), (0.42, 0.72)),
            row(Synthetic, Everyday, (65.0, 90.0), (0.60, 0.92)),
            row(StrandedSteel, Everyday, (65.0, 100.0), (0.42, 0.76)),
            row(WoundGut, Sometimes, (55.0, 85.0), (0.64, 0.95)),
            row(PlainGut, Sometimes, (50.0, 88.0), (0.70, 0.92)),
        ],
    ),
    position(
        "viola-d",
        "D4",
        (45.0, 70.0),
        (4.0e3, 40.0e3),
        Metals { soft: &["aluminium", "silver"], steel: &["chrome-steel", "silver"] },
        &[
            row(Synthetic, Everyday, (45.0, 70.0), (0.68, 1.05)),
            row(WoundSteel, Everyday, (45.0, 70.0), (0.50, 0.86)),
            row(StrandedSteel, Everyday, (45.0, 70.0), (0.52, 0.88)),
            row(WoundGut, Sometimes, (42.0, 66.0), (0.72, 1.15)),
            row(PlainGut, Sometimes, (38.0, 66.0), (0.90, 1.25)),
        ],
    ),
    position(
        "viola-g",
        "G3",
        (45.0, 65.0),
        (2.5e3, 25.0e3),
        Metals { soft: &["silver"], steel: &["silver", "tungsten", "chrome-steel"] },
        &[
            row(Synthetic, Everyday, (45.0, 65.0), (0.74, 1.10)),
            row(StrandedSteel, Everyday, (45.0, 65.0), (0.62, 1.00)),
            row(WoundSteel, Sometimes, (45.0, 65.0), (0.60, 0.98)),
            with_historical(Everyday, row(WoundGut, Sometimes, (40.0, 62.0), (0.78, 1.20))),
        ],
    ),
    position(
        "viola-c",
        "C3",
        (43.0, 65.0),
        (1.5e3, 15.0e3),
        Metals { soft: &["silver", "tungsten"], steel: &["tungsten", "silver"] },
        &[
            row(Synthetic, Everyday, (43.0, 65.0), (0.90, 1.50)),
            row(StrandedSteel, Everyday, (43.0, 65.0), (0.80, 1.35)),
            with_historical(Everyday, row(WoundGut, Sometimes, (40.0, 62.0), (0.92, 1.60))),
        ],
    ),
    position(
        "cello-e",
        "E4",
        (110.0, 160.0),
        (8.0e3, 120.0e3),
        Metals { soft: &[], steel: &["chrome-steel", "aluminium"] },
        &[
            row(PlainSteel, Sometimes, (110.0, 160.0), (0.28, 0.38)),
            row(WoundSteel, Sometimes, (110.0, 160.0), (0.30, 0.55)),
        ],
    ),
    position(
        "cello-a",
        "A3",
        (140.0, 185.0),
        (3.0e3, 30.0e3),
        Metals { soft: &["aluminium"], steel: &["chrome-steel"] },
        &[
            row(WoundSteel, Everyday, (140.0, 185.0), (0.50, 0.90)),
            row(StrandedSteel, Everyday, (140.0, 185.0), (0.54, 0.98)),
            row(Synthetic, Sometimes, (130.0, 180.0), (0.80, 1.35)),
            row(WoundGut, Sometimes, (110.0, 165.0), (0.90, 1.45)),
            row(PlainGut, Sometimes, (90.0, 155.0), (1.00, 1.35)),
        ],
    ),
    position(
        "cello-d",
        "D3",
        (115.0, 155.0),
        (1.8e3, 18.0e3),
        Metals { soft: &["aluminium", "silver"], steel: &["chrome-steel"] },
        &[
            row(WoundSteel, Everyday, (115.0, 155.0), (0.66, 1.15)),
            row(StrandedSteel, Everyday, (115.0, 155.0), (0.70, 1.25)),
            row(Synthetic, Sometimes, (110.0, 150.0), (1.00, 1.60)),
            row(WoundGut, Sometimes, (95.0, 145.0), (1.10, 1.75)),
            row(PlainGut, Sometimes, (80.0, 135.0), (1.40, 1.80)),
        ],
    ),
    position(
        "cello-g",
        "G2",
        (112.0, 155.0),
        (1.2e3, 12.0e3),
        Metals { soft: &["silver"], steel: &["tungsten", "chrome-steel", "silver"] },
        &[
            row(StrandedSteel, Everyday, (112.0, 155.0), (0.85, 1.45)),
            row(WoundSteel, Sometimes, (112.0, 155.0), (0.85, 1.40)),
            row(Synthetic, Sometimes, (108.0, 150.0), (1.15, 1.80)),
            with_historical(Everyday, row(WoundGut, Sometimes, (95.0, 145.0), (1.20, 2.00))),
        ],
    ),
    position(
        "cello-c",
        "C2",
        (112.0, 162.0),
        (0.7e3, 7.0e3),
        Metals { soft: &["silver", "tungsten"], steel: &["tungsten", "silver", "chrome-steel"] },
        &[
            row(StrandedSteel, Everyday, (112.0, 162.0), (1.15, 2.00)),
            row(Synthetic, Sometimes, (108.0, 155.0), (1.45, 2.40)),
            with_historical(Everyday, row(WoundGut, Sometimes, (95.0, 150.0), (1.50, 2.60))),
        ],
    ),
    position(
        "bass-high-c",
        "C3",
        (230.0, 300.0),
        (1.2e3, 12.0e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[row(StrandedSteel, Sometimes, (230.0, 300.0), (0.75, 1.25))],
    ),
    position(
        "bass-g",
        "G2",
        (240.0, 320.0),
        (0.8e3, 8.0e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[
            row(StrandedSteel, Everyday, (240.0, 320.0), (0.95, 1.60)),
            row(WoundSteel, Sometimes, (240.0, 320.0), (0.92, 1.50)),
            row(Synthetic, Sometimes, (190.0, 290.0), (1.40, 2.50)),
            row(WoundGut, Sometimes, (170.0, 280.0), (1.50, 2.60)),
            row(PlainGut, Sometimes, (150.0, 270.0), (1.85, 2.50)),
        ],
    ),
    position(
        "bass-d",
        "D2",
        (240.0, 320.0),
        (0.6e3, 6.0e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[
            row(StrandedSteel, Everyday, (240.0, 320.0), (1.20, 2.10)),
            row(Synthetic, Sometimes, (190.0, 290.0), (1.65, 2.90)),
            with_historical(Everyday, row(WoundGut, Sometimes, (170.0, 280.0), (1.80, 3.20))),
            row(PlainGut, Sometimes, (150.0, 265.0), (2.45, 3.25)),
        ],
    ),
    position(
        "bass-a",
        "A1",
        (240.0, 320.0),
        (0.4e3, 4.0e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[
            row(StrandedSteel, Everyday, (240.0, 320.0), (1.50, 2.70)),
            row(Synthetic, Sometimes, (190.0, 290.0), (2.00, 3.40)),
            with_historical(Everyday, row(WoundGut, Sometimes, (170.0, 280.0), (2.20, 3.80))),
        ],
    ),
    position(
        "bass-e",
        "E1",
        (240.0, 320.0),
        (0.3e3, 3.0e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[
            row(StrandedSteel, Everyday, (240.0, 320.0), (1.90, 3.50)),
            row(Synthetic, Sometimes, (190.0, 290.0), (2.40, 4.20)),
            with_historical(Everyday, row(WoundGut, Sometimes, (170.0, 280.0), (2.60, 4.60))),
        ],
    ),
    position(
        "bass-solo-a",
        "A2",
        (240.0, 320.0),
        (0.9e3, 9.0e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[
            row(StrandedSteel, Everyday, (240.0, 320.0), (0.85, 1.45)),
            row(WoundSteel, Sometimes, (240.0, 320.0), (0.82, 1.40)),
            row(Synthetic, Sometimes, (190.0, 290.0), (1.25, 2.25)),
        ],
    ),
    position(
        "bass-solo-e",
        "E2",
        (240.0, 320.0),
        (0.7e3, 7.0e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[
            row(StrandedSteel, Everyday, (240.0, 320.0), (1.08, 1.90)),
            row(Synthetic, Sometimes, (190.0, 290.0), (1.50, 2.60)),
        ],
    ),
    position(
        "bass-solo-b",
        "B1",
        (240.0, 320.0),
        (0.5e3, 5.0e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[
            row(StrandedSteel, Everyday, (240.0, 320.0), (1.35, 2.45)),
            row(Synthetic, Sometimes, (190.0, 290.0), (1.80, 3.10)),
        ],
    ),
    position(
        "bass-solo-f#",
        "F#1",
        (240.0, 320.0),
        (0.35e3, 3.5e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[
            row(StrandedSteel, Everyday, (240.0, 320.0), (1.70, 3.15)),
            row(Synthetic, Sometimes, (190.0, 290.0), (2.15, 3.80)),
        ],
    ),
    position(
        "bass-low-g",
        "G1",
        (240.0, 320.0),
        (0.35e3, 3.5e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[row(StrandedSteel, Sometimes, (240.0, 320.0), (1.65, 3.00))],
    ),
    position(
        "bass-low-c",
        "C1",
        (240.0, 320.0),
        (0.25e3, 2.5e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[row(StrandedSteel, Sometimes, (240.0, 320.0), (2.30, 4.20))],
    ),
    position(
        "bass-low-b",
        "B0",
        (240.0, 320.0),
        (0.2e3, 2.0e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[row(StrandedSteel, Everyday, (240.0, 320.0), (2.40, 4.40))],
    ),
    position(
        "bass-viennese-a",
        "A2",
        (170.0, 280.0),
        (0.9e3, 9.0e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[
            row(PlainGut, Sometimes, (150.0, 280.0), (1.60, 2.30)),
            row(WoundGut, Sometimes, (170.0, 280.0), (1.40, 2.40)),
            row(Synthetic, Sometimes, (190.0, 290.0), (1.25, 2.25)),
        ],
    ),
    position(
        "bass-viennese-f#",
        "F#2",
        (170.0, 280.0),
        (0.8e3, 8.0e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[
            row(PlainGut, Sometimes, (150.0, 275.0), (1.90, 2.70)),
            row(WoundGut, Sometimes, (170.0, 280.0), (1.60, 2.80)),
            row(Synthetic, Sometimes, (190.0, 290.0), (1.40, 2.50)),
        ],
    ),
];
