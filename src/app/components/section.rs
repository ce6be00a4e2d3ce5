//! What does one see where a string is cut through? The geometry of a portrait, in millimetres.
//!
//! Everything stands where the construction puts it: wires of a strand touch, filaments fill the share of the circle
//! that they fill, a winding is as thick as its ribbon. Only two things are pictures rather than measures, and the
//! portrait says so: how many ribbons of gut are seen, and that round winding wire is cut squarely across.

use core::f64::consts::PI;

use protocol::request::{Construction, Core, Winding};

use crate::order;

/// A circle in the section.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Disc {
    /// Centre, from the middle of the string.
    pub x: f64,
    /// Centre, from the middle of the string.
    pub y: f64,
    /// Radius.
    pub r: f64,
}

impl Disc {
    /// How far its outer edge lies from the middle of the string.
    #[must_use]
    pub fn reach(&self) -> f64 {
        (self.x * self.x + self.y * self.y).sqrt() + self.r
    }
}

/// What a core looks like.
#[derive(Clone, Debug, PartialEq)]
pub enum CoreSection {
    /// One wire or one filament.
    Solid,
    /// The wires of a strand.
    Wires(Vec<Disc>),
    /// Filaments.
    Filaments {
        /// How many the bundle has.
        count: usize,
        /// Those that are drawn.
        drawn: Vec<Disc>,
        /// They stand for one part in so many of the circle.
        parts: usize,
    },
    /// Ribbons of gut: the number drawn is a picture.
    Gut {
        /// How many are drawn.
        ribbons: usize,
    },
}

/// One winding.
#[derive(Clone, Debug, PartialEq)]
pub struct Ring {
    /// Inner radius.
    pub inner: f64,
    /// Outer radius.
    pub outer: f64,
    /// Key of its metal.
    pub metal: String,
    /// Round wire, as circles; none for a ribbon, which closes the ring.
    pub wires: Option<Vec<Disc>>,
}

/// A string cut through.
#[derive(Clone, Debug, PartialEq)]
pub struct Section {
    /// Outer radius.
    pub radius: f64,
    /// Radius of the core.
    pub core_radius: f64,
    /// Key of the core's material.
    pub material: String,
    /// The core.
    pub core: CoreSection,
    /// The windings, innermost first.
    pub rings: Vec<Ring>,
}

/// The most filaments drawn. More would be a grey cloud and slow to draw; then a sector stands for the whole.
pub const MOST_FILAMENTS: usize = 700;

/// Distance of two rows of a lattice of triangles of side 1: half the root of 3.
const ROW: f64 = 0.866_025_403_784_438_6;

/// The section of a construction.
#[must_use]
pub fn section(construction: &Construction) -> Section {
    let core_radius = construction.core.diameter_m * 500.0;
    let mut under = core_radius;
    let rings = construction
        .windings
        .iter()
        .map(|winding| {
            let ring = ring(winding, under);
            under = ring.outer;
            ring
        })
        .collect();
    Section {
        radius: under,
        core_radius,
        material: construction.core.material.clone(),
        core: core(&construction.core, core_radius),
        rings,
    }
}

/// Outer diameter in millimetres.
#[must_use]
pub fn outer_mm(construction: &Construction) -> f64 {
    2.0 * construction.windings.iter().fold(construction.core.diameter_m * 500.0, |under, w| {
        under + w.thickness_m * 1000.0 * (1.0 - w.bedding)
    })
}

fn ring(winding: &Winding, under: f64) -> Ring {
    let thickness = winding.thickness_m * 1000.0;
    let inner = (under - winding.bedding * thickness).max(0.0);
    let outer = inner + thickness;
    let wires = (winding.form == "round").then(|| {
        let (middle, r) = (inner + thickness / 2.0, thickness / 2.0);
        // Neighbours touch when the chord between their centres is one diameter.
        let count = libm::floor(PI / libm::asin((r / middle).min(1.0))).max(1.0);
        round(middle, r, count as usize, 0.0).collect()
    });
    Ring { inner, outer, metal: winding.metal.clone(), wires }
}

/// So many circles of radius `r` evenly on a circle of radius `middle`, the first at `start` radians.
fn round(middle: f64, r: f64, count: usize, start: f64) -> impl Iterator<Item = Disc> {
    (0..count).map(move |i| {
        let angle = start + 2.0 * PI * i as f64 / count as f64;
        Disc { x: middle * libm::cos(angle), y: middle * libm::sin(angle), r }
    })
}

fn core(core: &Core, radius: f64) -> CoreSection {
    match core.build.as_str() {
        "strand" => CoreSection::Wires(strand(core.layout.as_deref().unwrap_or_default(), radius)),
        "multifilament" => bundle(core),
        // A ribbon a quarter of a millimetre of diameter is near what gut is twisted from.
        "twisted" => {
            CoreSection::Gut { ribbons: libm::round(radius * 8.0).clamp(4.0, 14.0) as usize }
        }
        _ => CoreSection::Solid,
    }
}

/// One wire and rounds of wires about it, or seven such strands.
fn strand(layout: &str, radius: f64) -> Vec<Disc> {
    let seven = |x: f64, y: f64, r: f64, start: f64| {
        let middle = Disc { x, y, r };
        core::iter::once(middle).chain(round(2.0 * r, r, 6, start).map(move |disc| Disc {
            x: x + disc.x,
            y: y + disc.y,
            ..disc
        }))
    };
    match layout {
        "1x19" => {
            let r = radius / 5.0;
            // The second round lies over the gaps of the first.
            seven(0.0, 0.0, r, 0.0).chain(round(4.0 * r, r, 12, PI / 12.0)).collect()
        }
        "7x7" => {
            let r = radius / 9.0;
            seven(0.0, 0.0, r, 0.0)
                .chain(
                    round(6.0 * r, 3.0 * r, 6, 0.0)
                        .flat_map(move |strand| seven(strand.x, strand.y, r, 0.0)),
                )
                .collect()
        }
        _ => seven(0.0, 0.0, radius / 3.0, 0.0).collect(),
    }
}

/// How many filaments a core of them has, and for one part in how many of the circle they are drawn.
#[must_use]
pub fn filaments(core: &Core) -> (usize, usize) {
    let (radius, filament, fill) = bundled(core);
    let ratio = radius / filament;
    let count = libm::round(fill * ratio * ratio).max(1.0) as usize;
    // A third of the circle at most, so that the sector reads as one.
    let parts =
        if count <= MOST_FILAMENTS { 1 } else { (2 * count).div_ceil(MOST_FILAMENTS).max(3) };
    (count, parts)
}

/// Radius of a bundle and of its filaments in millimetres, and the share of the circle that they fill.
fn bundled(core: &Core) -> (f64, f64, f64) {
    (core.diameter_m * 500.0, core.filament_m.unwrap_or(2.5e-5) * 500.0, core.fill.unwrap_or(0.7))
}

/// As many filaments as fill that share of the circle, on a lattice of triangles spread to the edge.
fn bundle(core: &Core) -> CoreSection {
    let (radius, filament, _) = bundled(core);
    let (count, parts) = filaments(core);
    // So many of the lattice's triangles are this large together; a point lies at most 1/√3 from any place.
    let within = (count as f64 * ROW / PI).sqrt() + 1.0 / 3.0_f64.sqrt();
    let reach = libm::ceil(within / ROW) as i32;
    let far = |(x, y): &(f64, f64)| x * x + y * y;
    let mut lattice: Vec<(f64, f64)> = Vec::new();
    for row in -reach..=reach {
        for column in -reach..=reach {
            let point = (f64::from(column) + 0.5 * f64::from(row), f64::from(row) * ROW);
            if far(&point) <= within * within {
                lattice.push(point);
            }
        }
    }
    let mut lattice = order::sorted(&lattice, |a, b| far(a).total_cmp(&far(b)));
    lattice.truncate(count);
    let last = lattice.last().map_or(0.0, |point| far(point).sqrt());
    // Spread so that the outermost filaments touch the edge, but no two overlap.
    let step =
        if last > 0.0 { ((radius - filament) / last).max(2.0 * filament) } else { 2.0 * filament };
    let drawn = lattice
        .into_iter()
        .map(|(x, y)| Disc { x: x * step, y: y * step, r: filament })
        .filter(|disc| disc.reach() <= radius * 1.001)
        .filter(|disc| parts == 1 || in_sector(disc, parts))
        .collect();
    CoreSection::Filaments { count, drawn, parts }
}

/// Whether a filament lies in the upright sector that is one part in so many.
fn in_sector(disc: &Disc, parts: usize) -> bool {
    // Measured from straight up, so that the sector stands like a slice.
    let angle = libm::atan2(disc.x, -disc.y).abs();
    angle <= PI / parts as f64
}
