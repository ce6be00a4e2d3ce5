//! The lean path of the search gives the numbers of the full report, to the last few bits.

use strings::constant::Which;
use strings::construction::{Build, Form, Layout};
use strings::draw::Draw;
use strings::fit::{self, answers::Answers, problem};
use strings::instrument;
use strings::material::{self, Class, FAST_SLOPE_STRESS, Metal};
use strings::quantity::{Degree, Metre, Ratio};
use strings::report::{self, Four, LANES, LeanCore, LeanKind, Property, Wound};
use support::Seeded;

#[test]
fn the_search_and_the_report_give_the_same_numbers() {
    let mut compared = 0;
    for kind in instrument::ALL {
        let fitting = fit::fit(&Answers { instrument: Some(kind), ..Answers::default() });
        for (string, found) in fitting.problem.strings.iter().zip(&fitting.found) {
            for candidate in found.made.iter().step_by(67) {
                let construction = &candidate.construction;
                let windings: Vec<_> = construction.windings().copied().collect();
                let (core, is_wound) = (&construction.core, construction.is_wound());
                let lean = LeanCore::new(core, is_wound, &string.setting).wound(&windings);
                let full = report::values(construction, &string.setting, &Draw::CENTRAL);
                for (property, value) in [
                    (Property::Tension, lean.tension),
                    (Property::Stretch, lean.stretch),
                    (Property::OuterDiameter, lean.gauge),
                    (Property::WindingShare, lean.winding_share),
                    (Property::BreakingShare, lean.breaking_share),
                    (Property::Impedance, lean.impedance),
                    (Property::SettlingDays, lean.settling),
                    (Property::EveningWarmth, lean.moved.warmth),
                    (Property::EveningDamp, lean.moved.damp()),
                    (Property::Brilliance, lean.brilliance),
                    (Property::Peg, lean.peg),
                    (Property::Ring, lean.ring),
                ] {
                    let expected = full.get(property);
                    assert!(
                        (value - expected).abs() <= 1e-12 * expected.abs(),
                        "{property:?}: {value} against {expected}"
                    );
                    compared += 1;
                }
            }
        }
    }
    assert!(compared > 5_000, "only {compared} numbers compared");
}

/// What a winding metal is in a draw: its modulus; its density stays as designed.
fn modulus(draw: &Draw, metal: &'static Metal) -> f64 {
    draw.metal(metal, Which::Modulus)
}

#[test]
fn every_draw_with_the_mass_as_designed_gives_the_numbers_of_the_report() {
    let mut compared = 0;
    for kind in instrument::ALL {
        let fitting = fit::fit(&Answers { instrument: Some(kind), ..Answers::default() });
        for (string, found) in fitting.problem.strings.iter().zip(&fitting.found) {
            for (n, candidate) in found.made.iter().step_by(211).enumerate() {
                let construction = &candidate.construction;
                let core = construction.core;
                let draw = Draw::weighed(n as u64);
                let lean = LeanKind::new(
                    core.material,
                    core.build,
                    construction.is_wound(),
                    &string.setting,
                    &draw,
                )
                .at(core.diameter);
                let mut wound = lean.bare();
                for w in construction.windings() {
                    let density = w.metal.density.value;
                    wound =
                        wound.under(w.form, density, modulus(&draw, w.metal), w.thickness.get());
                }
                let sound = lean.sounding(&wound, construction.is_wound());
                let pulled = lean.pulled(sound.tension);
                let (twist, bending) = (lean.twisting(), lean.bending());
                let stiffness = twist.stiffness + twist.of_tube * wound.tube;
                let inertia = twist.inertia + wound.inertia;
                let surface = 4.0 * (stiffness * inertia).sqrt() / (wound.gauge * wound.gauge);
                let stress = sound.tension / bending.area;
                let held = stress.clamp(FAST_SLOPE_STRESS.0, FAST_SLOPE_STRESS.1);
                let sloped = held + bending.beyond * (stress - held);
                let fast = bending.fast_modulus + bending.fast_slope * sloped;
                let stiffening = if construction.is_wound() { twist.stiffening } else { 1.0 };
                let stiff = twist.stiff_of_one * stiffening * fast / sound.tension;
                let full = report::values(construction, &string.setting, &draw);
                for (property, value) in [
                    (Property::Tension, sound.tension),
                    (Property::Stretch, pulled.stretch),
                    (Property::BreakingShare, pulled.breaking_share),
                    (Property::TorsionImpedance, surface / pulled.impedance),
                    (Property::Inharmonicity, stiff),
                    (Property::LossPerDecade, pulled.decade),
                    (Property::EveningWarmth, pulled.moved.warmth),
                    (Property::EveningDamp, pulled.moved.damp()),
                    (Property::Brilliance, sound.brilliance),
                    (Property::Ring, sound.ring),
                    (Property::Peg, pulled.peg),
                ] {
                    let expected = full.get(property);
                    assert!(
                        (value - expected).abs() <= 1e-11 * expected.abs(),
                        "{property:?}: {value} against {expected}"
                    );
                    compared += 1;
                }
            }
        }
    }
    assert!(compared > 1_000, "only {compared} numbers compared");
}

#[test]
fn four_side_by_side_get_the_bits_of_one() {
    let problem = problem::pose(&Answers::default());
    let mut seeded = Seeded::new(3);
    for string in &problem.strings {
        for material in [&material::SPRING_STEEL, &material::POLYAMIDE, &material::GUT] {
            let build = match material.class {
                Class::Steel => {
                    Build::Strand { layout: Layout::OneByNineteen, lay: Degree::new(12.0) }
                }
                Class::Gut => Build::Twisted { twist: Degree::new(40.0) },
                Class::Polymer => Build::Multifilament {
                    filament: Metre::new(2.5e-5),
                    fill: Ratio::new(0.7),
                    twist: Degree::new(12.0),
                },
            };
            let kind = LeanKind::new(material, build, true, &string.setting, &Draw::CENTRAL);
            for _ in 0..200 {
                let core = kind.at(Metre::new(seeded.between(0.3e-3, 1.2e-3)));
                let form = *seeded.one_of(&[Form::Flat, Form::Round]);
                let metal = seeded.one_of(material::METALS);
                let (density, modulus) = (metal.density.value, metal.modulus.value);
                let thick: [f64; LANES] = core::array::from_fn(|_| seeded.between(20e-6, 200e-6));
                let lanes = core.bare().in_lanes().under(form, density, modulus, Four::from(thick));
                let side_by_side = core.sounding(&lanes, true);
                for (lane, t) in thick.into_iter().enumerate() {
                    let one: Wound<f64> = core.bare().under(form, density, modulus, t);
                    let alone = core.sounding(&one, true);
                    for (a, b) in [
                        (lanes.gauge.to_array()[lane], one.gauge),
                        (lanes.mass.to_array()[lane], one.mass),
                        (side_by_side.tension.to_array()[lane], alone.tension),
                        (side_by_side.winding_share.to_array()[lane], alone.winding_share),
                        (side_by_side.brilliance.to_array()[lane], alone.brilliance),
                        (side_by_side.ring.to_array()[lane], alone.ring),
                    ] {
                        assert_eq!(a.to_bits(), b.to_bits(), "{a} against {b}");
                    }
                }
            }
        }
    }
}
