//! Every property of a string in one draw.

use super::at_pitch::{AtPitch, at_pitch, core_torsion};
use super::over_time::OverTime;
use super::partials::partial;
use super::{COUNT, Property, Values};
use crate::answer_to_bow::{self, BowResponse, BridgeLoad};
use crate::body::Body;
use crate::constant::{self, SETTLED_WITHIN, Which};
use crate::construction::Construction;
use crate::draw::Draw;
use crate::material::{Class, CoreMaterial};
use crate::physics::{
    bowing, load, partials, settling, stiffness, stopping, strength, tension, torsion, tuning,
};
use crate::quantity::{Cent, KilogramPerSecond, Metre, Newton, Ratio};
use crate::setting::{Setting, Swing, Untuned};

/// Every property of a string in a setting, in one draw.
#[must_use]
pub fn values(construction: &Construction, setting: &Setting, draw: &Draw) -> Values {
    values_like(construction, setting, draw, None)
}

/// The same, where the string was worked out in another draw: most draws leave how it rings as it is.
#[must_use]
pub fn values_like(
    construction: &Construction,
    setting: &Setting,
    draw: &Draw,
    like: Option<&Values>,
) -> Values {
    let s = at_pitch(construction, setting, draw);
    let mut out = Values([0.0; COUNT]);
    put_pull(&mut out, construction, setting, draw, &s);
    put_sound(&mut out, construction, setting, draw, &s);
    put_answer(&mut out, setting, draw, &s, like);
    put_time(&mut out, construction, setting, draw, &s);
    out
}

/// Mass, tension, strength, gauge: what holds the string.
fn put_pull(
    out: &mut Values,
    construction: &Construction,
    setting: &Setting,
    draw: &Draw,
    s: &AtPitch,
) {
    let poisson = Ratio::new(draw.core(construction.core.material, Which::Poisson));
    let breaking_force = Newton::new(s.core.strength.get() * s.core.area.get());
    let share = strength::share(s.stress, s.core.strength);
    let amplitude = Ratio::new(constant::AMPLITUDE);
    let endurance = Ratio::new(draw.general(&constant::ENDURANCE));
    let pull = tuning::pull(s.axial, s.tension, s.whole);
    out.put(Property::MassUnstretched, s.unstretched.get());
    out.put(Property::MassAtPitch, s.mass.get());
    out.put(Property::Tension, s.tension.get());
    out.put(Property::CoreStress, s.stress.get());
    out.put(Property::BreakingShare, share.get());
    out.put(
        Property::BreakingPitch,
        strength::breaking_pitch(breaking_force, s.unstretched, s.length).get(),
    );
    out.put(Property::Stretch, s.stretch.get());
    out.put(Property::Pull, pull.get());
    out.put(Property::Peg, tuning::peg(pull, setting.peg_diameter, setting.gear_ratio).get());
    out.put(Property::Feel, tension::lateral_stiffness(s.tension, s.length).get());
    out.put(Property::AxialStiffness, s.axial.get());
    out.put(Property::OuterDiameter, s.windings.outer.get());
    let at_pitch =
        stiffness::diameter_at_pitch(s.windings.outer, s.core.diameter, s.stretch, poisson);
    out.put(Property::OuterDiameterAtPitch, at_pitch.get());
    out.put(Property::WindingShare, s.windings.mass / s.unstretched.get());
    out.put(Property::Downforce, load::downforce(s.tension, setting.angle_over_bridge).get());
    out.put(
        Property::Stopping,
        stopping::at_the_octave(s.axial, s.tension, setting.string_height, s.length, s.whole).get(),
    );
    out.put(Property::Glide, stopping::glide(s.axial, s.tension, amplitude).get());
    out.put(
        Property::OverTheNut,
        strength::over_the_nut(
            s.core.modulus,
            s.core.filament,
            setting.nut_radius,
            s.core.strength,
        )
        .get(),
    );
    let peg = Metre::new(setting.peg_diameter.get() / 2.0);
    out.put(
        Property::OverThePeg,
        strength::over_the_nut(s.core.modulus, s.core.filament, peg, s.core.strength).get(),
    );
    let swing = strength::swing_stress(s.fast, s.core.filament, amplitude, s.tension, s.bending);
    let fatigue = strength::fatigue(share, swing, s.core.strength, endurance);
    out.put(Property::Fatigue, fatigue.get());
}

/// Stiffness, loss, bow, torsion: what it sounds and answers like.
fn put_sound(
    out: &mut Values,
    construction: &Construction,
    setting: &Setting,
    draw: &Draw,
    s: &AtPitch,
) {
    let limit = Ratio::new(draw.general(&constant::BRILLIANCE_LOSS));
    let slide = constant::SLIDING_FRICTION;
    let rest = slide + draw.general(&constant::FRICTION_DROP);
    let (beta, speed) = (constant::BOWING_PLACE, constant::BOW_SPEED);
    let sounding = bowing::sounding_mass(s.mass, s.length);
    out.put(Property::Impedance, s.impedance.get());
    out.put(Property::BendingStiffness, s.bending.get());
    out.put(Property::Inharmonicity, s.inharmonicity.get());
    out.put(
        Property::Brilliance,
        partials::brilliance(s.lossy, s.tension, s.length, setting.pitch, limit).get(),
    );
    out.put(Property::Attack, bowing::attack(sounding, beta, rest, slide));
    out.put(Property::GentlestAttack, bowing::gentlest_attack(sounding, beta, rest, slide));
    let greatest = bowing::greatest_force(s.impedance, speed, beta, rest, slide);
    let least = bowing::least_force(s.impedance, s.resistance, speed, beta, rest, slide);
    let coefficient = draw.general(&constant::LEAST_FORCE);
    let peak = setting.peak_resistance.get() * draw.general(&constant::BRIDGE_RESISTANCE);
    let falling = bowing::effective_speed(speed, beta, constant::FRICTION_SPEED);
    out.put(
        Property::GreatestForceFalling,
        bowing::greatest_force(s.impedance, falling, beta, rest, slide).get(),
    );
    out.put(Property::TorsionQ, draw.general(&constant::TORSION_Q));
    out.put(Property::GreatestForce, greatest.get());
    out.put(Property::LeastForce, least.get());
    out.put(
        Property::LeastForceMeasured,
        bowing::least_force_as_measured(coefficient, s.impedance, beta).get(),
    );
    out.put(Property::BowWindow, bowing::window(greatest, least));
    out.put(Property::Wolf, bowing::wolf(s.impedance, KilogramPerSecond::new(peak), beta).get());
    let first = partial(s, setting, draw, 1);
    out.put(Property::Loss, first.on_rigid_ends.get());
    out.put(Property::Ring, first.ring);
    let windings = s.windings.torsion * draw.general(&constant::WINDING_TORSION);
    let twist = core_torsion(construction, &s.core, draw) + windings;
    let d = s.core.diameter.get();
    let inertia = s.core.mass.get() * d * d / 8.0 + s.windings.inertia;
    let torsional = torsion::speed(twist, inertia);
    let impedance = torsion::impedance(twist, inertia, Metre::new(s.windings.outer.get() / 2.0));
    out.put(Property::TorsionSpeed, torsional);
    out.put(Property::TorsionRatio, torsional / (2.0 * s.length.get() * setting.pitch.get()));
    out.put(Property::TorsionImpedance, impedance.get() / s.impedance.get());
}

/// What the simulation says of it: speech, room for the bow, brightness, ring.
fn put_answer(
    out: &mut Values,
    setting: &Setting,
    draw: &Draw,
    s: &AtPitch,
    like: Option<&Values>,
) {
    let peak = setting.peak_resistance.get() * draw.general(&constant::BRIDGE_RESISTANCE);
    let body = Body::on(setting.body, s.resistance.get(), peak);
    let bridge_load = BridgeLoad::of(&body, setting.body, setting.pitch.get());
    let z = s.impedance.get();
    let twist = out.get(Property::TorsionImpedance);
    let ln_twist = libm::log(twist / (1.0 + twist));
    let ln_stiff = libm::log(s.inharmonicity.get().max(1e-12));
    let answer = BowResponse::new(&bridge_load, (libm::log(z), z), ln_twist, ln_stiff);
    out.put(Property::Speaks, libm::exp(answer.response()));
    out.put(Property::BowRoom, answer.room());
    out.put(Property::Sharpness, libm::exp(answer.sharpness()));
    // What the first partial loses, and to what, changes with everything that changes how the string rings.
    const RINGS_BY: [Property; 4] =
        [Property::Impedance, Property::Inharmonicity, Property::Loss, Property::Ring];
    let same =
        |other: &&Values| RINGS_BY.iter().all(|p| other.get(*p).to_bits() == out.get(*p).to_bits());
    let rings = like.filter(same).map(|other| other.get(Property::RingsOn));
    let rings = rings.unwrap_or_else(|| {
        let partials = (1..=answer_to_bow::RINGING).map(|n| {
            let partial = partial(s, setting, draw, n);
            (partial.frequency.get(), partial.on_rigid_ends.get())
        });
        answer_to_bow::ring(z, partials, &body)
    });
    out.put(Property::RingsOn, rings);
}

/// Settling and drift: what time and the room do to it.
fn put_time(
    out: &mut Values,
    construction: &Construction,
    setting: &Setting,
    draw: &Draw,
    s: &AtPitch,
) {
    let core = &construction.core;
    let time =
        OverTime::new(core, (s.core.fast_modulus, s.whole), construction.is_wound(), setting, draw);
    let pull = s.pull();
    let (creep, gives) = time.settling.a_decade(&pull);
    let loss = Cent::new(creep + gives);
    out.put(Property::LossPerDecade, loss.get());
    out.put(Property::SettlingDays, settling::days(loss, Cent::new(SETTLED_WITHIN)).get());
    out.put(
        Property::Constructional,
        settling::constructional(s.axial, s.tension, Ratio::new(time.constructional)).get(),
    );
    let [evening, week, season] =
        Untuned::ALL.map(|untuned| time.drifts(untuned, s.core.filament).at(&pull));
    for (moved, warmth, damp, all) in [
        (evening, Property::EveningWarmth, Property::EveningDamp, Property::Evening),
        (week, Property::WeekWarmth, Property::WeekDamp, Property::Week),
        (season, Property::SeasonWarmth, Property::SeasonDamp, Property::Season),
    ] {
        out.put(warmth, moved.warmth);
        out.put(damp, moved.damp());
        out.put(all, moved.all());
    }
    out.put(Property::SeasonMoisture, season.moisture);
    out.put(Property::SeasonBody, season.body);
    out.put(Property::Ratchet, ratchet(core.material, setting.swing(Untuned::Season), draw));
}

/// What gut loses for good when it gets damper than ever before, by a swing.
pub(super) fn ratchet(material: &CoreMaterial, swing: Swing, draw: &Draw) -> f64 {
    match material.class {
        Class::Gut => {
            draw.general(&constant::RATCHET) * swing.humidity.get() / constant::RATCHET_SWING
        }
        Class::Steel | Class::Polymer => 0.0,
    }
}
