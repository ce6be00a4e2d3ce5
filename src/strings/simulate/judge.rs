//! What sort of note was it? Read off when the string slips.

use super::bowed::Moment;
use crate::lanes::Lanes;

/// How the string moves in the end.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Regime {
    /// One slip a period: a clean note.
    Helmholtz,
    /// Two slips or more a period: a surface sound.
    DoubleSlip,
    /// Slips at irregular times: a crunch.
    Raucous,
    /// Slips at regular times longer than a period: a note below the string's own.
    AnomalousLow,
    /// One slip a period, but far shorter than the bow's place asks: more than one corner flies back.
    MultipleFlyback,
    /// A clean note that began too late to be trusted.
    NotSettled,
}

impl Regime {
    /// Every regime.
    pub const ALL: [Self; 6] = [
        Self::Helmholtz,
        Self::DoubleSlip,
        Self::Raucous,
        Self::AnomalousLow,
        Self::MultipleFlyback,
        Self::NotSettled,
    ];

    /// The key by which replies name it.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Helmholtz => "helmholtz",
            Self::DoubleSlip => "double-slip",
            Self::Raucous => "raucous",
            Self::AnomalousLow => "anomalous-low",
            Self::MultipleFlyback => "multiple-flyback",
            Self::NotSettled => "not-settled",
        }
    }
}

/// What is said of a note.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Judgement {
    /// How the string moves in the end.
    pub regime: Regime,
    /// Periods until each period had one slip to the end; infinite where it never came to that.
    pub periods_to_helmholtz: f64,
    /// How far the note lies above the free string, cents; negative when flat. Zero for a note without a pitch.
    pub cents: f64,
    /// Share of the period in which the string slips, over the last periods.
    pub slip_share: f64,
}

/// A slip counts if it covers this share of what the bow covers in a period.
///
/// Ripples of twist make slips of a few hundredths; the second slip of a true pair a third and more. A tenth or a
/// fifth give the same map but for single cells.
const COUNTS: f64 = 0.12;
/// Sliding slower than this share of the bow's speed is creep, and counts as sticking: a true slip is 1/β − 1 times as fast as the bow.
const CREEP: f64 = 0.5;
/// Two slips that are closer than this share of a period are one.
const SAME: f64 = 0.04;
/// One period is between these shares of the free string's.
const ONE_PERIOD: (f64, f64) = (0.8, 1.25);
/// Neighbouring periods of a clean note differ by no more than this share.
const STEADY: f64 = 0.08;
/// Clean periods at the end that a settled note must have.
const SETTLED: usize = 8;
/// A single slip that is shorter than this share of what the bow's place asks is no Helmholtz motion.
const FLYBACK: f64 = 0.75;
/// Nor is one that is longer than this many times that, and a twentieth of a period: the bow then holds nothing.
const UNHELD: f64 = 2.5;
/// The last periods, in which regime and pitch are read.
const LAST: f64 = 20.0;

/// Writes down the slips of one note as it is played.
#[derive(Clone, Debug)]
pub struct Watch {
    period: f64,
    /// When each slip began, in steps, and how far it went, over what the bow goes in a step.
    slips: Vec<(f64, f64)>,
    slipping: bool,
    began: f64,
    went: f64,
    /// When the last slip that counts began, of those that are over.
    counted: f64,
    /// When the last slip began that came no period after the one before.
    unclean: f64,
    ended: f64,
    steps: usize,
    slid: usize,
    slid_from: usize,
}

impl Watch {
    /// A watch on a note of `periods` periods of `period` steps.
    #[must_use]
    pub fn new(period: f64, periods: f64) -> Self {
        let from = ((periods - LAST).max(0.0) * period) as usize;
        Self {
            period,
            slips: Vec::with_capacity((8.0 * periods) as usize + 8),
            slipping: false,
            began: 0.0,
            went: 0.0,
            counted: f64::NEG_INFINITY,
            unclean: 0.0,
            ended: f64::NEG_INFINITY,
            steps: 0,
            slid: 0,
            slid_from: from,
        }
    }

    /// Looks at lane `l` of a moment.
    #[inline(always)]
    pub fn see<N: Lanes>(&mut self, l: usize, moment: &Moment<N>) {
        self.look(moment.slip.lane(l), moment.bow.lane(l));
    }

    /// Looks at one step's slip under a bow of this speed, m/s.
    #[inline(always)]
    pub fn look(&mut self, slip: f64, bow: f64) {
        let now = self.steps as f64;
        self.steps += 1;
        if slip.abs() > CREEP * bow.abs() {
            if self.steps > self.slid_from {
                self.slid += 1;
            }
            if !self.slipping {
                self.slipping = true;
                // A breath of sticking does not part a slip.
                if now - self.ended > SAME * self.period {
                    self.close();
                    self.began = now;
                }
            }
            // A bow that starts from rest has no speed at first, and what slips under it then is none.
            self.went -= slip / (bow.abs() + 1e-6);
        } else if self.slipping {
            self.slipping = false;
            self.ended = now;
        }
    }

    fn close(&mut self) {
        if self.went != 0.0 {
            self.slips.push((self.began, self.went));
            if self.went.abs() > COUNTS * self.period {
                let gap = (self.began - self.counted) / self.period;
                if !is_one_period(gap) {
                    self.unclean = self.began;
                }
                self.counted = self.began;
            }
            self.went = 0.0;
        }
    }

    /// No clean note that reaches to the end can have begun before this, in periods.
    #[must_use]
    pub fn clean_from(&self) -> f64 {
        let now = self.steps as f64;
        // The slip that is not over may count, and the next is still to come.
        let silent = now - self.began.max(self.counted) > ONE_PERIOD.1 * self.period;
        (if silent { now } else { self.unclean }) / self.period
    }

    /// What is said of the note, the bow having been at `place`, a share of the length from the bridge.
    #[must_use]
    pub fn judge(mut self, place: f64) -> Judgement {
        self.close();
        let whole = self.period;
        let counting: Vec<(f64, f64)> =
            self.slips.iter().copied().filter(|(_, went)| went.abs() > COUNTS * whole).collect();
        let end = self.steps as f64;
        let watched = (self.steps.saturating_sub(self.slid_from)).max(1) as f64;
        let slip_share = self.slid as f64 / watched;
        let gaps: Vec<f64> =
            counting.windows(2).map(|pair| (pair[1].0 - pair[0].0) / self.period).collect();
        // The run of clean periods that reaches to the end.
        let mut clean = 0;
        for (i, gap) in gaps.iter().enumerate().rev() {
            let steady = gaps.get(i + 1).is_none_or(|next| (gap - next).abs() < STEADY);
            if !(is_one_period(*gap) && steady) {
                break;
            }
            clean += 1;
        }
        let reaches = counting.last().is_some_and(|last| end - last.0 < 1.5 * self.period);
        let began = counting.len().checked_sub(clean + 1).map(|i| counting[i].0);
        let late: Vec<f64> = counting
            .iter()
            .zip(&gaps)
            .filter(|(slip, _)| slip.0 >= end - LAST * self.period)
            .map(|(_, gap)| *gap)
            .collect();
        let (regime, periods_to_helmholtz) = match (reaches, began) {
            (true, Some(_)) if clean >= SETTLED && slip_share > UNHELD * place + 0.05 => {
                (Regime::NotSettled, f64::INFINITY)
            }
            (true, Some(_)) if clean >= SETTLED && slip_share < FLYBACK * place => {
                (Regime::MultipleFlyback, f64::INFINITY)
            }
            (true, Some(began)) if clean >= SETTLED => (Regime::Helmholtz, began / self.period),
            (true, _) if clean >= 2 => (Regime::NotSettled, f64::INFINITY),
            _ => (unclean(&late, slip_share), f64::INFINITY),
        };
        let cents = match regime {
            Regime::Helmholtz | Regime::MultipleFlyback => {
                cents(&late[late.len() - clean.min(late.len())..])
            }
            Regime::AnomalousLow => cents(&late),
            _ => 0.0,
        };
        Judgement { regime, periods_to_helmholtz, cents, slip_share }
    }
}

fn is_one_period(gap: f64) -> bool {
    gap > ONE_PERIOD.0 && gap < ONE_PERIOD.1
}

/// How far a mean gap of so many periods lies above one period, cents.
fn cents(gaps: &[f64]) -> f64 {
    if gaps.is_empty() {
        return 0.0;
    }
    let mean = gaps.iter().sum::<f64>() / gaps.len() as f64;
    -crate::pitch::CENTS_PER_NEPER * libm::log(mean)
}

/// Which of the motions that are not clean, from the gaps between slips in periods and the share of slipping.
fn unclean(gaps: &[f64], slip_share: f64) -> Regime {
    if gaps.len() < 2 {
        // It slides all the while, or hardly ever.
        return if slip_share > 0.5 { Regime::DoubleSlip } else { Regime::Raucous };
    }
    let mean = gaps.iter().sum::<f64>() / gaps.len() as f64;
    let spread =
        (gaps.iter().map(|g| (g - mean) * (g - mean)).sum::<f64>() / gaps.len() as f64).sqrt();
    if mean < 0.75 {
        Regime::DoubleSlip
    } else if mean > 1.3 && spread < 0.1 * mean {
        Regime::AnomalousLow
    } else {
        Regime::Raucous
    }
}
