//! How far does the bridge give way? A generic body: a few resonances of its family, and no instrument in particular.
//!
//! The bridge's speed for a force on it is a sum of resonances, each of which takes energy at every frequency and
//! gives none. Signature modes stand where they were published for one instrument of the family; how much each gives,
//! and how sharp it is, is a judgement. A very wide resonance stands for the many modes between, and one of low Q
//! for the hill of the bridge. All are scaled by the two resistances of the setting.

/// One resonance of the bridge's admittance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mode {
    /// Where it stands, Hz.
    pub frequency: f64,
    /// How sharp it is.
    pub q: f64,
    /// Speed for a force at its top, s/kg.
    pub conductance: f64,
}

/// What the string finds at the bridge.
#[derive(Clone, Debug, PartialEq)]
pub struct Body {
    /// Its resonances; none for a bridge that does not give.
    pub modes: Vec<Mode>,
}

/// A family's skeleton: where its body gives way, whatever the instrument.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Skeleton {
    /// The key of its instrument.
    pub key: &'static str,
    /// Its signature modes: Hz, Q, share of the strongest.
    pub signature: [(f64, f64, f64); 4],
    /// Middle of the many modes between, Hz.
    pub between: f64,
    /// Middle of the bridge hill, Hz.
    pub hill: f64,
}

/// Q of the resonance that stands for the many modes between: flat over three octaves.
const BETWEEN_Q: f64 = 0.3;
/// Q of the bridge hill: common practice, no source.
const HILL_Q: f64 = 1.5;
/// How much more the bridge gives on its hill than between strong notes: from memory, some 8 dB.
const HILL_RISE: f64 = 2.5;

/// Frequencies of the violin's and the cello's modes: [`crate::source::EUPHONICS`], 5.3, and
/// [`crate::source::ZHANG_2016`]. Those of viola and bass, every Q and every share: from memory.
pub const SKELETONS: &[Skeleton] = &[
    Skeleton {
        key: "violin",
        signature: [
            (272.0, 18.0, 0.25),
            (407.0, 30.0, 0.15),
            (462.0, 35.0, 0.8),
            (551.0, 35.0, 1.0),
        ],
        between: 900.0,
        hill: 2_300.0,
    },
    Skeleton {
        key: "viola",
        signature: [
            (220.0, 18.0, 0.25),
            (310.0, 30.0, 0.15),
            (355.0, 35.0, 0.8),
            (440.0, 35.0, 1.0),
        ],
        between: 700.0,
        hill: 1_900.0,
    },
    Skeleton {
        key: "cello",
        signature: [(97.0, 18.0, 0.25), (173.0, 30.0, 1.0), (209.0, 30.0, 0.5), (281.0, 30.0, 0.4)],
        between: 450.0,
        hill: 1_350.0,
    },
    Skeleton {
        key: "double-bass",
        signature: [(60.0, 15.0, 0.25), (98.0, 25.0, 1.0), (116.0, 25.0, 0.5), (170.0, 25.0, 0.4)],
        between: 280.0,
        hill: 800.0,
    },
];

/// The skeleton of an instrument's family by its key; a violin's for a key that is none.
#[must_use]
pub fn skeleton(key: &str) -> &'static Skeleton {
    SKELETONS.iter().find(|s| s.key == key).unwrap_or(&SKELETONS[0])
}

impl Body {
    /// A bridge that does not give at all.
    #[must_use]
    pub const fn rigid() -> Self {
        Self { modes: Vec::new() }
    }

    /// A bridge that is a plain resistance, kg/s, at every frequency that is heard and none at rest.
    ///
    /// One resonance so wide that it is level from 20 Hz to 20 kHz within a hundredth.
    #[must_use]
    pub fn resistive(resistance: f64) -> Self {
        Self { modes: vec![Mode { frequency: 632.0, q: 0.004, conductance: 1.0 / resistance }] }
    }

    /// The body of a skeleton, scaled to a resistance between strong notes and at the strongest, kg/s.
    #[must_use]
    pub fn on(skeleton: &Skeleton, resistance: f64, at_strongest: f64) -> Self {
        let between = 1.0 / resistance;
        let strongest = (1.0 / at_strongest - between).max(0.0);
        let mut modes: Vec<Mode> = skeleton
            .signature
            .iter()
            .map(|&(frequency, q, share)| Mode { frequency, q, conductance: share * strongest })
            .collect();
        modes.push(Mode { frequency: skeleton.between, q: BETWEEN_Q, conductance: between });
        let hill = (HILL_RISE - 1.0) * between;
        modes.push(Mode { frequency: skeleton.hill, q: HILL_Q, conductance: hill });
        Self { modes }
    }

    /// Speed of the bridge for a force on it at a frequency, Hz: real and imaginary part, s/kg.
    #[must_use]
    pub fn admittance_at(&self, frequency: f64) -> (f64, f64) {
        self.modes.iter().fold((0.0, 0.0), |sum, mode| {
            let x = mode.q * (frequency / mode.frequency - mode.frequency / frequency);
            let share = mode.conductance / (1.0 + x * x);
            (sum.0 + share, sum.1 - share * x)
        })
    }
}
