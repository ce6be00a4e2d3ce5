//! What can a string on a core be worth at most? Upper bounds of the parts of its score between two tensions.

use core::f64::consts::PI;

use crate::answer_to_bow::BowResponse;
use crate::fit::desirability::Attribute;
use crate::report::Four;

use super::{
    BY_BOW, BY_DRAW, Drawn, HALVES, JudgedCore, OUTSIDE, Row, STILL, all, mean, mean_ln,
    worth_beside, worth_of, worth_of_room,
};

impl JudgedCore<'_> {
    /// The most that [`Self::pull`] can be for any tension between those of two rows.
    ///
    /// Every part is monotone between them but seven, which are bounded by themselves: feel, power and elasticity are 1
    /// where the target lies between, settling and what warmth and damp move are sums of parts that rise and fall, and the penalty is
    /// nothing where the band lies between.
    #[must_use]
    pub fn most(&self, slack: &Row, taut: &Row) -> f64 {
        let judge = self.judge;
        let ends = &judge.string.ends;
        let peak = |target: f64, a: f64, b: f64| {
            if slack.tension <= target && target <= taut.tension { 0.0 } else { a.max(b) }
        };
        let mut sum = judge.weight(Attribute::Feel)
            * peak(ends.tension_target, slack.feel, taut.feel)
            + judge.weight(Attribute::Power) * peak(ends.power_target, slack.power, taut.power);
        for (a, attribute) in BY_DRAW.iter().enumerate() {
            let most = core::array::from_fn(|h| match attribute {
                Attribute::Elasticity => {
                    let target = all(judge.stretch.at);
                    let nearest = target.max(slack.stretch[h]).min(taut.stretch[h]);
                    worth_beside(&judge.stretch, nearest)
                }
                // What creep takes is least where the string is slack, what its ends give where it is taut.
                Attribute::Settling => {
                    worth_of(&judge.settling, (slack.decade[0][h] + taut.decade[1][h]).ln())
                }
                Attribute::Warmth => self.still(h, &slack.warmth, &taut.warmth, all(0.0)),
                Attribute::Damp => self.still(h, &slack.damp, &taut.damp, self.ratchet[h]),
                _ => slack.by_draw[a][h].max(taut.by_draw[a][h]),
            });
            sum += judge.weight(*attribute) * mean_ln(&most);
        }
        let outside = core::array::from_fn(|h| {
            let least = |side: usize| {
                let (a, b) = (slack.outside[side][h], taut.outside[side][h]);
                a.min(b).max(all(0.0)) + (all(0.0) - a.max(b)).max(all(0.0))
            };
            least(0) + least(1)
        });
        sum - OUTSIDE * mean(&outside)
    }

    /// The most that a sum of cents can be worth between two tensions, its parts monotone between them and `for_good` added
    /// to its size.
    fn still(&self, h: usize, slack: &[Drawn], taut: &[Drawn], for_good: Four) -> Four {
        let (mut low, mut high) = (all(0.0), all(0.0));
        for (a, b) in slack.iter().zip(taut) {
            low += a[h].min(b[h]);
            high += a[h].max(b[h]);
        }
        let least = low.max(all(0.0)) + (all(0.0) - high).max(all(0.0));
        worth_of(&self.judge.drift, (least + for_good).max(all(STILL)).ln())
    }

    /// The most that [`Self::bowed`] can be for tensions between two, at a gauge of at least `gauge`, under windings
    /// whose moduli over their densities are at most those in each draw.
    ///
    /// A layer of mass μ and mean diameter m has the inertia μ m²/4 and, for a modulus of one, a tube of at most
    /// μ m²/(2πρ): of wire; of ribbon less. No m is above the gauge D, so the surface's impedance, 4 √(C J)/D², is at
    /// most that of these bounds, which falls with D and rises with mass.
    #[must_use]
    pub fn most_bowed(&self, slack: f64, taut: f64, gauge: f64, stiffest: &Drawn) -> f64 {
        let judge = self.judge;
        let square = 4.0 / (gauge * gauge);
        let whole = taut * judge.mass * (1.0 + taut / self.central.axial.get());
        let winding = (whole - self.central.mass).max(0.0) * (1.0 + 1e-9);
        let inertia = all(self.inertia * square + winding);
        let [z, z_taut] = [slack, taut].map(|tension| {
            let z = tension * judge.impedance;
            (all(libm::log(z)), all(z))
        });
        let mut worth = [[all(0.0); HALVES]; BY_BOW.len()];
        for h in 0..HALVES {
            let tubes = self.torsion_of_tube[h] * stiffest[h] * all(winding * 2.0 / PI);
            let surface = ((self.torsion[h] * all(square) + tubes) * inertia).sqrt();
            let left = (surface / (z.1 + surface)).ln();
            let answer = |z| BowResponse::new(&judge.bridge_load[h], z, left, all(0.0));
            let (a, b) = (answer(z), answer(z_taut));
            worth[0][h] = worth_of(&judge.response, a.response());
            worth[1][h] = worth_of_room(BowResponse::most_room(&a, &b));
        }
        self.weighed_by_bow(&worth)
    }

    /// The most that the worth of brightness can be for tensions between two, under at least such tubes of winding.
    ///
    /// `tubes` gives each winding's metal, and the stiffness it would have as a tube for a modulus of one.
    #[must_use]
    pub fn most_bright(&self, slack: f64, taut: f64, tubes: &[(usize, f64)]) -> f64 {
        let most = mean_ln(&self.brightness(slack, taut, tubes, true));
        self.judge.weight(Attribute::Brightness) * most
    }
}
