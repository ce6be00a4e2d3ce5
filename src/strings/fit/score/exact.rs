//! What is a string on a core worth? The parts of its score, exactly, in every draw.

use crate::answer_to_bow::BowResponse;
use crate::construction::Construction;
use crate::fit::desirability::{self as d, Attribute, COUNT, Desirabilities};
use crate::material::{self, FAST_SLOPE_STRESS, Metal};
use crate::report::{Four, LANES, Wound};

use super::{
    Arrangement, BY_BOW, BY_DRAW, DRAWS, Drawn, HALVES, JudgedCore, Log, Logs, OUTSIDE, Row, STILL,
    all, drawn, ln, mean, mean_ln, worth_beside, worth_of, worth_of_room,
};

/// By how much values lie outside a band, all in ln: below it negative.
fn beyond(log: Four, (low, high): (f64, f64)) -> Four {
    let zero = all(0.0);
    (log - all(low)).min(zero) + (log - all(high)).max(zero)
}

impl Row {
    /// Distance outside the bands in each draw, ln.
    fn is_outside(&self) -> Drawn {
        core::array::from_fn(|h| self.outside[0][h].abs() + self.outside[1][h])
    }
}

impl JudgedCore<'_> {
    /// What that tension makes of it in every draw.
    #[must_use]
    pub fn row(&self, tension: f64) -> Row {
        let judge = self.judge;
        let ends = &judge.string.ends;
        let Arrangement { ln_stretch, ln_breaking, .. } = *self.arrangement;
        let none = [all(0.0); HALVES];
        let mut row = Row {
            tension,
            feel: ln(d::two_sided(
                tension,
                ends.tension_low,
                ends.tension_target,
                ends.tension_high,
            )),
            power: ln(d::two_sided(
                tension,
                ends.tension_low,
                ends.power_target,
                ends.tension_high,
            )),
            // What does not count here is as good as can be.
            by_draw: [[all(1.0); HALVES]; BY_DRAW.len()],
            stretch: none,
            outside: [none; 2],
            decade: [none; 2],
            warmth: [none; 2],
            damp: [none; 3],
        };
        let pulls = self.draws.map(|core| core.pull(tension));
        let share = drawn(|k| pulls[k].core_share);
        let decades: [_; DRAWS] =
            core::array::from_fn(|k| self.draws[k].settling.a_decade(&pulls[k]));
        row.decade = [drawn(|k| decades[k].0), drawn(|k| decades[k].1)];
        let ln_tension = all(libm::log(tension));
        for h in 0..HALVES {
            let stiff = self.axial[h] / all(tension);
            let warmth = [self.warmth.0[h] * stiff, self.warmth.1[h]];
            let damp = [self.damp.0[h] * stiff, self.damp.1[h] * share[h], self.damp.2[h]];
            let stretch = ln_tension - self.ln_axial[h];
            let breaking = ln_tension - self.ln_breaking[h];
            for (part, value) in row.warmth.iter_mut().zip(warmth) {
                part[h] = value;
            }
            for (part, value) in row.damp.iter_mut().zip(damp) {
                part[h] = value;
            }
            let decade = row.decade[0][h] + row.decade[1][h];
            let warmth = (warmth[0] + warmth[1]).abs();
            let damp = (damp[0] + damp[1] + damp[2]).abs() + self.ratchet[h];
            row.stretch[h] = stretch;
            row.by_draw[0][h] = worth_beside(&judge.stretch, stretch);
            row.by_draw[1][h] = worth_of(&judge.settling, decade.ln());
            row.by_draw[2][h] = worth_of(&judge.drift, warmth.max(all(STILL)).ln());
            row.by_draw[3][h] = worth_of(&judge.drift, damp.max(all(STILL)).ln());
            row.by_draw[4][h] = worth_of(&judge.breaking, breaking);
            if !judge.string.fine_tuner {
                // Cents a degree of peg go with 1 + EA/T.
                let of_one = all(self.central.peg_of_stiffness());
                row.by_draw[5][h] = worth_of(&judge.tuning, (of_one * (stiff + all(1.0))).ln());
            }
            row.outside[0][h] = beyond(stretch, ln_stretch);
            row.outside[1][h] = (breaking - all(ln_breaking)).max(all(0.0));
        }
        row
    }

    /// Weighted worth of what core and tension decide, less the penalty: exact.
    #[must_use]
    pub fn pull(&self, row: &Row) -> f64 {
        let judge = self.judge;
        let by_draw: f64 = BY_DRAW
            .iter()
            .zip(&row.by_draw)
            .map(|(attribute, worth)| judge.weight(*attribute) * mean_ln(worth))
            .sum();
        judge.weight(Attribute::Feel) * row.feel
            + judge.weight(Attribute::Power) * row.power
            + by_draw
            - OUTSIDE * mean(&row.is_outside())
    }

    /// Modulus of sounding at that tension, in every draw.
    pub(super) fn fast(&self, tension: f64) -> Drawn {
        let stress = tension / self.area;
        let held = stress.clamp(FAST_SLOPE_STRESS.0, FAST_SLOPE_STRESS.1);
        core::array::from_fn(|h| {
            let sloped = all(held) + self.beyond[h] * all(stress - held);
            self.fast_modulus[h] + all(self.fast_slope) * sloped
        })
    }

    /// The worth of [`BY_BOW`]; exact.
    pub(super) fn under_the_bow(
        &self,
        tension: f64,
        gauge: f64,
        inertia: f64,
        tubes: &[(usize, f64)],
    ) -> [Drawn; BY_BOW.len()] {
        let judge = self.judge;
        let z = tension * judge.impedance;
        let (ln_z, z) = (all(libm::log(z)), all(z));
        let inertia = all(self.inertia + inertia);
        let square = all(4.0 / (gauge * gauge));
        let fast = self.fast(tension);
        let mut worth = [[all(0.0); HALVES]; BY_BOW.len()];
        for h in 0..HALVES {
            let mut tube = all(0.0);
            for (metal, of_one) in tubes {
                tube += judge.moduli[*metal][h] * all(*of_one);
            }
            let stiffness = self.torsion[h] + self.torsion_of_tube[h] * tube;
            let surface = (stiffness * inertia).sqrt() * square;
            let left = surface / (z + surface);
            let stiff = self.stiff_of_one[h] * fast[h] / all(tension);
            let answer = BowResponse::new(&judge.bridge_load[h], (ln_z, z), left.ln(), stiff.ln());
            worth[0][h] = worth_of(&judge.response, answer.response());
            worth[1][h] = worth_of_room(answer.room());
        }
        worth
    }

    pub(super) fn weighed_by_bow(&self, worth: &[Drawn; BY_BOW.len()]) -> f64 {
        BY_BOW.iter().zip(worth).map(|(a, worth)| self.judge.weight(*a) * mean_ln(worth)).sum()
    }

    /// Weighted worth of how it answers the bow: exact.
    ///
    /// `inertia` is the polar one of the windings; `tubes` gives each winding's metal, and the stiffness it would have
    /// as a tube for a modulus of one.
    #[must_use]
    pub fn bowed(&self, tension: f64, gauge: f64, inertia: f64, tubes: &[(usize, f64)]) -> f64 {
        self.weighed_by_bow(&self.under_the_bow(tension, gauge, inertia, tubes))
    }

    /// The worth of brightness where the brilliance ends at most: at a tension up to `taut` and from `slack` on,
    /// under windings of at least these tubes. Held at the target where `at_most` says that it is a bound.
    pub(super) fn brightness(
        &self,
        slack: f64,
        taut: f64,
        tubes: &[(usize, f64)],
        at_most: bool,
    ) -> Drawn {
        let judge = self.judge;
        let (dark, over) = judge.shade;
        let ln_pitch = libm::log(judge.string.setting.pitch.get());
        let fast = self.fast(slack);
        core::array::from_fn(|h| {
            let fast = fast[h];
            let mut tube = all(0.0);
            for (metal, of_one) in tubes {
                tube += judge.moduli[*metal][h] * all(*of_one);
            }
            let lossy = self.lossy[h] * fast + self.winding_loss[h] * tube;
            let n2 = self.limit[h] * all(taut) / lossy;
            let shade = (all(ln_pitch - dark) + all(0.5) * n2.ln()) * all(over);
            let shade = if at_most { shade.min(all(judge.brightness.at)) } else { shade };
            worth_beside(&judge.brightness, shade)
        })
    }

    /// The worth of the ring; exact.
    fn ring(&self, gauge: f64, mass: f64, tubes: &[(usize, f64)]) -> Drawn {
        let judge = self.judge;
        let pitch = judge.string.setting.pitch.get();
        let swings = drawn(|k| {
            let modulus = |metal: usize| judge.moduli[metal][k / LANES].to_array()[k % LANES];
            let tube = tubes.iter().map(|(metal, of_one)| modulus(*metal) * of_one).sum();
            let wound = Wound { gauge, mass, tube, inertia: 0.0 };
            self.draws[k].sounding(&wound, !tubes.is_empty()).ring * pitch
        });
        swings.map(|swings| worth_of(&judge.ring, swings.ln()))
    }

    /// Weighted worth of its brightness: exact.
    #[must_use]
    pub fn bright(&self, tension: f64, tubes: &[(usize, f64)]) -> f64 {
        let worth = mean_ln(&self.brightness(tension, tension, tubes, false));
        self.judge.weight(Attribute::Brightness) * worth
    }

    /// Weighted worth of its ring: exact.
    #[must_use]
    pub fn rings(&self, gauge: f64, mass: f64, tubes: &[(usize, f64)]) -> f64 {
        self.judge.weight(Attribute::Ring) * mean_ln(&self.ring(gauge, mass, tubes))
    }

    /// Every desirability of the string of these windings, as e to the mean of its logarithm; and the penalty.
    #[must_use]
    pub fn desirabilities(&self, construction: &Construction) -> (Desirabilities, f64) {
        self.logs(construction).expected()
    }

    /// ln of every desirability of the string of these windings, draw by draw.
    #[must_use]
    pub fn logs(&self, construction: &Construction) -> Logs {
        let layers: Vec<&'static Metal> = construction.windings().map(|w| w.metal).collect();
        let (wound, tubes) = self.windings(construction);
        let Wound { gauge, mass, inertia, .. } = wound;
        let row = self.row(self.central.sounding(&wound, !tubes.is_empty()).tension);
        let mut of = [Log::Same(0.0); COUNT];
        let mut put = |attribute: Attribute, log: Log| of[attribute as usize] = log;
        let logs = |worth: Drawn| Log::Drawn(worth.map(Four::ln));
        put(Attribute::Feel, Log::Same(row.feel));
        put(Attribute::Power, Log::Same(row.power));
        for (a, attribute) in BY_DRAW.iter().enumerate() {
            put(*attribute, logs(row.by_draw[a]));
        }
        let bowed = self.under_the_bow(row.tension, gauge, inertia, &tubes);
        for (attribute, worth) in BY_BOW.iter().zip(bowed) {
            put(*attribute, logs(worth));
        }
        let brightness = self.brightness(row.tension, row.tension, &tubes, false);
        put(Attribute::Brightness, logs(brightness));
        put(Attribute::Ring, logs(self.ring(gauge, mass, &tubes)));
        for (attribute, log) in self.judge.of_metals(self.arrangement.family, &layers) {
            put(attribute, Log::Same(log));
        }
        Logs { of, outside: row.is_outside() }
    }

    /// The core under its windings as they are for a modulus of one, and their tubes.
    fn windings(&self, construction: &Construction) -> (Wound<f64>, Vec<(usize, f64)>) {
        let mut wound = self.central.bare();
        let mut tubes = Vec::new();
        for w in construction.windings() {
            let before = wound.tube;
            wound = wound.under(w.form, w.metal.density.value, 1.0, w.thickness.get());
            let metal = material::METALS.iter().position(|m| m.key == w.metal.key).unwrap_or(0);
            tubes.push((metal, wound.tube - before));
        }
        (wound, tubes)
    }
}
