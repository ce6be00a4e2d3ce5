//! What a string is made of: a core, and none to three windings.
//!
//! Diameters are those of the unstretched string, as the trade gives gauges.

use crate::error::{self, Fault};
use crate::material::{self, Class, CoreMaterial, Metal};
use crate::quantity::{Degree, Metre, Ratio};

/// Wires of a strand: each layout with its count, and its outer diameter in wire diameters.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Layout {
    /// One straight wire and six round it.
    OneBySeven,
    /// One, six, twelve.
    OneByNineteen,
    /// Seven strands of seven.
    SevenBySeven,
}

impl Layout {
    /// Every layout, coarse to fine.
    pub const ALL: [Self; 3] = [Self::OneBySeven, Self::OneByNineteen, Self::SevenBySeven];

    /// The key by which requests name it.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::OneBySeven => "1x7",
            Self::OneByNineteen => "1x19",
            Self::SevenBySeven => "7x7",
        }
    }

    /// How many wires, and how many of them lie straight.
    #[must_use]
    pub const fn wires(self) -> (u32, u32) {
        match self {
            Self::OneBySeven => (7, 1),
            Self::OneByNineteen => (19, 1),
            Self::SevenBySeven => (49, 1),
        }
    }

    /// Outer diameter over wire diameter: hexagonal packing, 3, 5 and 3·3.
    #[must_use]
    pub const fn diameter_in_wires(self) -> f64 {
        match self {
            Self::OneBySeven => 3.0,
            Self::OneByNineteen => 5.0,
            Self::SevenBySeven => 9.0,
        }
    }
}

/// How a core's material is arranged.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Build {
    /// One solid wire or monofilament.
    Solid,
    /// Wires laid into a strand or rope.
    Strand {
        /// How many wires and how laid.
        layout: Layout,
        /// Angle of the outer wires from the string's axis.
        lay: Degree,
    },
    /// A bundle of fine filaments, twisted.
    Multifilament {
        /// Diameter of one filament.
        filament: Metre,
        /// Share of the circle that filaments fill.
        fill: Ratio,
        /// Angle of the outermost filaments from the string's axis.
        twist: Degree,
    },
    /// Ribbons of gut twisted into one round string.
    Twisted {
        /// Angle of the surface fibres from the string's axis.
        twist: Degree,
    },
}

impl Build {
    /// The key by which requests name it.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Solid => "solid",
            Self::Strand { .. } => "strand",
            Self::Multifilament { .. } => "multifilament",
            Self::Twisted { .. } => "twisted",
        }
    }
}

/// A core: its material, its arrangement, its diameter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Core {
    /// What it is made of.
    pub material: &'static CoreMaterial,
    /// How that is arranged.
    pub build: Build,
    /// Outer diameter of the core, unstretched.
    pub diameter: Metre,
}

/// Shape of what is wound.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Form {
    /// Round wire; the turns fill π/4 of their ring.
    Round,
    /// Flat ribbon, edges touching; the turns fill their ring.
    Flat,
}

/// One close winding.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Winding {
    /// Of which metal.
    pub metal: &'static Metal,
    /// Wire or ribbon.
    pub form: Form,
    /// Diameter of the wire or thickness of the ribbon.
    pub thickness: Metre,
    /// How far it sinks into what lies under it, as a share of its thickness.
    pub bedding: Ratio,
    /// Gap between turns, as a share of the wire's diameter or the ribbon's width; zero when close.
    pub gap: Ratio,
}

/// The most windings a string may have.
pub const MOST_WINDINGS: usize = 3;

/// A string as a maker would describe it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Construction {
    /// The core.
    pub core: Core,
    windings: [Option<Winding>; MOST_WINDINGS],
}

/// The trade's families: core kind, and whether it is wound.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Family {
    /// Gut with nothing round it.
    PlainGut,
    /// Gut under metal.
    WoundGut,
    /// One steel wire with nothing round it.
    PlainSteel,
    /// One steel wire under metal.
    WoundSteel,
    /// A strand or rope of steel, wound or not.
    StrandedSteel,
    /// A bundle of polymer filaments, wound or not.
    Synthetic,
    /// One polymer filament, wound or not.
    Monofilament,
}

impl Family {
    /// Every family, in the order the trade met them.
    pub const ALL: [Self; 7] = [
        Self::PlainGut,
        Self::WoundGut,
        Self::PlainSteel,
        Self::WoundSteel,
        Self::StrandedSteel,
        Self::Synthetic,
        Self::Monofilament,
    ];

    /// The key by which replies name it.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::PlainGut => "plain-gut",
            Self::WoundGut => "wound-gut",
            Self::PlainSteel => "plain-steel",
            Self::WoundSteel => "wound-steel",
            Self::StrandedSteel => "stranded-steel",
            Self::Synthetic => "synthetic",
            Self::Monofilament => "monofilament",
        }
    }

    /// The family of that key.
    #[must_use]
    pub fn parse(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|f| f.key() == key)
    }

    /// What its core is made of.
    #[must_use]
    pub const fn class(self) -> Class {
        match self {
            Self::PlainGut | Self::WoundGut => Class::Gut,
            Self::PlainSteel | Self::WoundSteel | Self::StrandedSteel => Class::Steel,
            Self::Synthetic | Self::Monofilament => Class::Polymer,
        }
    }

    /// Whether it has nothing round its core, whatever the string.
    #[must_use]
    pub const fn is_plain(self) -> bool {
        matches!(self, Self::PlainGut | Self::PlainSteel)
    }
}

words! {
    /// What a set of strings is asked for by: the family, and of synthetic cores how stiff they are.
    CoreType {
        /// Gut with nothing round it.
        PlainGut = "plain-gut",
        /// Gut under metal.
        WoundGut = "wound-gut",
        /// One steel wire with nothing round it.
        PlainSteel = "plain-steel",
        /// One steel wire under metal.
        WoundSteel = "wound-steel",
        /// A strand or rope of steel.
        StrandedSteel = "stranded-steel",
        /// A bundle of polyamide.
        SoftSynthetic = "soft-synthetic",
        /// A bundle of polyester.
        MiddleSynthetic = "middle-synthetic",
        /// A bundle of a polymer stiffer than that.
        StiffSynthetic = "stiff-synthetic",
        /// One polymer filament.
        Monofilament = "monofilament",
    }
}

/// How many core types there are.
pub const CORE_TYPES: usize = CoreType::ALL.len();

impl CoreType {
    /// The core type of a family's strings on that material.
    #[must_use]
    pub fn of(family: Family, material: &CoreMaterial) -> Self {
        match family {
            Family::PlainGut => Self::PlainGut,
            Family::WoundGut => Self::WoundGut,
            Family::PlainSteel => Self::PlainSteel,
            Family::WoundSteel => Self::WoundSteel,
            Family::StrandedSteel => Self::StrandedSteel,
            Family::Monofilament => Self::Monofilament,
            Family::Synthetic if material.key == material::POLYAMIDE.key => Self::SoftSynthetic,
            Family::Synthetic if material.key == material::POLYESTER.key => Self::MiddleSynthetic,
            Family::Synthetic => Self::StiffSynthetic,
        }
    }

    /// Its family.
    #[must_use]
    pub const fn family(self) -> Family {
        match self {
            Self::PlainGut => Family::PlainGut,
            Self::WoundGut => Family::WoundGut,
            Self::PlainSteel => Family::PlainSteel,
            Self::WoundSteel => Family::WoundSteel,
            Self::StrandedSteel => Family::StrandedSteel,
            Self::SoftSynthetic | Self::MiddleSynthetic | Self::StiffSynthetic => Family::Synthetic,
            Self::Monofilament => Family::Monofilament,
        }
    }
}

/// A set of core types.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct CoreTypes(u16);

impl CoreTypes {
    /// None.
    pub const NONE: Self = Self(0);
    /// Every one.
    pub const ALL: Self = Self((1 << CORE_TYPES) - 1);

    /// Those for which a test holds.
    #[must_use]
    pub fn that(holds: impl Fn(CoreType) -> bool) -> Self {
        let of = |all: u16, core: &CoreType| all | (u16::from(holds(*core)) << *core as u16);
        Self(CoreType::ALL.iter().fold(0, of))
    }

    /// Those of a family.
    #[must_use]
    pub fn of_family(family: Family) -> Self {
        Self::that(|core| core.family() == family)
    }

    /// Whether it is among them.
    #[must_use]
    pub const fn has(self, core: CoreType) -> bool {
        self.0 & (1 << core as u16) != 0
    }

    /// Those of both.
    #[must_use]
    pub const fn and(self, other: Self) -> Self {
        Self(self.0 & other.0)
    }

    /// Those of either.
    #[must_use]
    pub const fn or(self, other: Self) -> Self {
        Self(self.0 | other.0)
    }

    /// Whether there are none.
    #[must_use]
    pub const fn is_empty(self) -> bool {
        self.0 == 0
    }
}

impl Construction {
    /// A string of `core` under `windings`, innermost first.
    ///
    /// # Errors
    /// A measure outside its bound, an arrangement its material cannot have, or more than three windings;
    /// `field` is put in front of the faults' field names.
    pub fn new(core: Core, windings: &[Winding], field: &str) -> Result<Self, Vec<Fault>> {
        let mut faults = Vec::new();
        let mut check = |bound: error::Bound, name: &str, value: f64| {
            if let Err(fault) = bound.check(&format!("{field}.{name}"), value) {
                faults.push(fault);
            }
        };
        check(error::CORE_DIAMETER, "core.diameter_m", core.diameter.get());
        match core.build {
            Build::Solid => {}
            Build::Strand { lay, .. } => check(error::LAY_ANGLE, "core.lay_deg", lay.get()),
            Build::Multifilament { filament, fill, twist } => {
                check(error::FILAMENT_DIAMETER, "core.filament_m", filament.get());
                check(error::FILL, "core.fill", fill.get());
                check(error::TWIST_ANGLE, "core.twist_deg", twist.get());
            }
            Build::Twisted { twist } => check(error::TWIST_ANGLE, "core.twist_deg", twist.get()),
        }
        for (i, winding) in windings.iter().enumerate() {
            check(
                error::WINDING_THICKNESS,
                &format!("windings[{i}].thickness_m"),
                winding.thickness.get(),
            );
            check(error::GAP, &format!("windings[{i}].gap"), winding.gap.get());
            check(error::BEDDING, &format!("windings[{i}].bedding"), winding.bedding.get());
        }
        if let Build::Multifilament { filament, .. } = core.build
            && filament.get() > core.diameter.get() / 3.0
        {
            faults.push(Fault::new(
                format!("{field}.core.filament_m"),
                filament.get(),
                "at most a third of the core diameter",
            ));
        }
        let fits = matches!(
            (core.material.class, core.build),
            (Class::Gut, Build::Twisted { .. })
                | (Class::Steel, Build::Solid | Build::Strand { .. })
                | (Class::Polymer, Build::Solid | Build::Multifilament { .. })
        );
        if !fits {
            faults.push(Fault::new(
                format!("{field}.core.build"),
                format!("{} for {}", core.build.key(), core.material.name),
                "gut: twisted; steel: solid or strand; polymer: solid or multifilament",
            ));
        }
        if windings.len() > MOST_WINDINGS {
            faults.push(Fault::new(
                format!("{field}.windings"),
                windings.len(),
                "none to three windings",
            ));
        }
        if faults.is_empty() { Ok(Self::of(core, windings)) } else { Err(faults) }
    }

    /// A string whose parts are known to be in bounds; windings beyond the third are left off.
    #[must_use]
    pub fn of(core: Core, windings: &[Winding]) -> Self {
        let mut layers = [None; MOST_WINDINGS];
        for (slot, winding) in layers.iter_mut().zip(windings) {
            *slot = Some(*winding);
        }
        Self { core, windings: layers }
    }

    /// The windings, innermost first.
    pub fn windings(&self) -> impl Iterator<Item = &Winding> {
        self.windings.iter().flatten()
    }

    /// Whether anything is wound round the core.
    #[must_use]
    pub fn is_wound(&self) -> bool {
        self.windings[0].is_some()
    }

    /// The outermost winding.
    #[must_use]
    pub fn outer_winding(&self) -> Option<&Winding> {
        self.windings().last()
    }

    /// The family the trade would put it in.
    #[must_use]
    pub fn family(&self) -> Family {
        match (self.core.material.class, self.core.build, self.is_wound()) {
            (Class::Gut, _, false) => Family::PlainGut,
            (Class::Gut, _, true) => Family::WoundGut,
            (Class::Steel, Build::Strand { .. }, _) => Family::StrandedSteel,
            (Class::Steel, _, false) => Family::PlainSteel,
            (Class::Steel, _, true) => Family::WoundSteel,
            (Class::Polymer, Build::Multifilament { .. }, _) => Family::Synthetic,
            (Class::Polymer, _, _) => Family::Monofilament,
        }
    }

    /// Outer diameter of the unstretched string: the core, and each winding twice less its bedding.
    #[must_use]
    pub fn outer_diameter(&self) -> Metre {
        let mut d = self.core.diameter.get();
        for winding in self.windings() {
            d += 2.0 * winding.thickness.get() * (1.0 - winding.bedding.get());
        }
        Metre::new(d)
    }
}
