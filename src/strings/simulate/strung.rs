//! A string on a body at so many steps a second: everything that is fitted once, before the first step.

use core::f64::consts::PI;

use super::body::Body;
use super::dispersion;
use super::loss_filter::LossFilter;
use super::section::{Complex, Section, angle, over, times};
use super::sounding::Sounding;

/// The shortest whole delay with its fraction, in steps. Below, the fraction's all-pass would ring.
pub(super) const SHORTEST: f64 = 1.2;

/// A string on a body, ready to be stepped.
#[derive(Clone, Debug, PartialEq)]
pub struct Strung {
    pub(super) rate: f64,
    pub(super) impedance: f64,
    pub(super) yields: f64,
    /// Speed for a newton, m/s, of the string's centre and of its surface by twist.
    pub(super) across: f64,
    pub(super) twisting: f64,
    pub(super) period: f64,
    pub(super) omega: f64,
    /// Steps that the filters at the nut and the bridge's give take out of a round.
    pub(super) taken: f64,
    /// Steps of a round of twist, radians a step of its first mode, and steps its filters take.
    pub(super) twist_period: f64,
    pub(super) twist_omega: f64,
    pub(super) twist_taken: f64,
    pub(super) end: f64,
    pub(super) loss: LossFilter,
    pub(super) link: Section,
    pub(super) twist_loss: [Section; 2],
    pub(super) body: Vec<(Section, f64)>,
    pub(super) body_at_once: f64,
}

impl Strung {
    /// Fits the filters of a string on a body at `rate` steps a second.
    #[must_use]
    pub fn new(string: &Sounding, body: &Body, rate: f64) -> Self {
        let period = rate / string.pitch;
        let omega = 2.0 * PI / period;
        let loss = LossFilter::of(string, rate);
        let link = Section::all_pass(dispersion::coefficient(string, &loss, rate));
        let body: Vec<(Section, f64)> = body
            .sections(rate)
            .into_iter()
            .zip(body.modes.iter().map(|mode| mode.conductance))
            .collect();
        let twist_period = (period / string.torsion_ratio).max(2.0 * SHORTEST);
        let twist_omega = 2.0 * PI / twist_period.max(4.0);
        let twist_loss = twist_loss(string.torsion_q, twist_period);
        let mut strung = Self {
            rate,
            impedance: string.impedance,
            yields: string.yields(),
            across: 0.5 / string.impedance,
            twisting: 0.5 / string.torsion_impedance,
            period,
            omega,
            taken: 0.0,
            twist_period,
            twist_omega,
            twist_taken: twist_loss.iter().map(|section| section.steps_late(twist_omega)).sum(),
            end: string.end,
            loss,
            link,
            twist_loss,
            body_at_once: body.iter().map(|(section, g)| g * section.b[0]).sum(),
            body,
        };
        // So that the first free partial stands at the pitch, whatever the bridge gives.
        strung.taken = -angle(strung.filters(omega)) / omega;
        strung
    }

    /// Steps in a period of the free string.
    #[must_use]
    pub const fn period(&self) -> f64 {
        self.period
    }

    /// Steps a second.
    #[must_use]
    pub const fn rate(&self) -> f64 {
        self.rate
    }

    /// What one round does to a wave besides making it late: loss, stiffness, and what the bridge sends back.
    pub(super) fn filters(&self, omega: f64) -> Complex {
        let mut all = times(self.loss.response(omega), (self.end, 0.0));
        for _ in 0..dispersion::LINKS {
            all = times(all, self.link.response(omega));
        }
        let mut y = (0.0, 0.0);
        for (section, g) in &self.body {
            let part = section.response(omega);
            y = (y.0 + g * part.0, y.1 + g * part.1);
        }
        // The bridge sends back −(1 − Z₀Y)/(1 + Z₀Y).
        let zy = (self.impedance * y.0, self.impedance * y.1);
        times(all, over((1.0 - zy.0, -zy.1), (1.0 + zy.0, zy.1)))
    }
}

/// Two gentle steps that take from the first and the fifth mode of twist what Q takes, and nothing from rest.
fn twist_loss(q: f64, period: f64) -> [Section; 2] {
    let tan = |mode: f64| libm::tan(PI * (mode / period).min(0.4));
    let (low, high) = (tan(0.6), tan(3.0));
    let wanted = |mode: f64| libm::exp(-2.0 * PI * mode / q);
    let (first, fifth) = (tan(1.0), tan(5.0));
    let part = |t: f64, g2: f64, at: f64| {
        let y2 = at * at / (t * t);
        (1.0 + g2 * y2) / (1.0 + y2)
    };
    let solved = |t: f64, at: f64, gain2: f64| {
        let y2 = at * at / (t * t);
        ((gain2 * (1.0 + y2) - 1.0) / y2).clamp(1e-4, 1.0)
    };
    let (mut a, mut b) = (1.0, 1.0);
    // Each in turn; ten rounds bring both right to a thousandth.
    for _ in 0..10 {
        a = solved(low, first, wanted(1.0) / part(high, b, first));
        b = solved(high, fifth, wanted(5.0) / part(low, a, fifth));
    }
    [Section::shelf(low, a.sqrt()), Section::shelf(high, b.sqrt())]
}
