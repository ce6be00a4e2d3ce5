//! What is each number of a report called, what does it mean, and by which formula does it come about?

use super::naming::capital;
use super::{say, speech};

/// A number of a report, as the page speaks of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Property {
    /// Its name in a reply.
    pub key: &'static str,
}

impl Property {
    fn said(self, part: &str) -> &'static str {
        speech::of("property", &format!("{}{part}", self.key)).unwrap_or(self.key)
    }

    /// Its name on the page.
    #[must_use]
    pub fn name(self) -> &'static str {
        self.said("")
    }

    /// What it tells a player.
    #[must_use]
    pub fn means(self) -> &'static str {
        self.said(".means")
    }

    /// The formula, in the letters of the model's own page.
    #[must_use]
    pub fn formula(self) -> &'static str {
        self.said(".formula")
    }

    /// The word for a string that has more of it than another.
    #[must_use]
    pub fn more(self) -> &'static str {
        self.said(".more")
    }

    /// The word for one that has less.
    #[must_use]
    pub fn less(self) -> &'static str {
        self.said(".less")
    }
}

/// Properties that answer one kind of question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Group {
    /// Which of them.
    key: &'static str,
    /// The properties, in the order in which a person reads them.
    pub properties: &'static [Property],
}

impl Group {
    /// What they are about.
    #[must_use]
    pub fn name(&self) -> &'static str {
        speech::of("group", self.key).unwrap_or_default()
    }

    /// The question they answer.
    #[must_use]
    pub fn asks(&self) -> &'static str {
        speech::of("group", &format!("{}.asks", self.key)).unwrap_or_default()
    }
}

/// Every property, by what it is about, in the order in which a person reads them.
pub const GROUPS: [Group; 4] = [
    Group { key: "pull", properties: PULL },
    Group { key: "sound", properties: SOUND },
    Group { key: "time", properties: TIME },
    Group { key: "hand", properties: HAND },
];

const PULL: &[Property] = &[
    Property { key: "tension_n" },
    Property { key: "stretch" },
    Property { key: "breaking_share" },
    Property { key: "breaking_pitch_hz" },
    Property { key: "downforce_n" },
    Property { key: "outer_diameter_m" },
    Property { key: "outer_diameter_at_pitch_m" },
    Property { key: "winding_mass_share" },
    Property { key: "mass_unstretched_kg_m" },
    Property { key: "mass_at_pitch_kg_m" },
    Property { key: "core_stress_pa" },
    Property { key: "axial_stiffness_n" },
];

const SOUND: &[Property] = &[
    Property { key: "impedance_kg_s" },
    Property { key: "speaks_s" },
    Property { key: "bow_room_db" },
    Property { key: "sharpness_acum" },
    Property { key: "rings_on_s" },
    Property { key: "attack_m_s2_n" },
    Property { key: "gentlest_attack_m_s2_n" },
    Property { key: "bow_force_greatest_n" },
    Property { key: "bow_force_greatest_falling_n" },
    Property { key: "bow_force_least_n" },
    Property { key: "bow_force_least_measured_n" },
    Property { key: "bow_window_db" },
    Property { key: "wolf" },
    Property { key: "brilliance_hz" },
    Property { key: "ring_s" },
    Property { key: "loss_first" },
    Property { key: "inharmonicity" },
    Property { key: "bending_stiffness_n_m2" },
    Property { key: "torsion_speed_m_s" },
    Property { key: "torsion_ratio" },
    Property { key: "torsion_q" },
    Property { key: "torsion_impedance_ratio" },
];

const TIME: &[Property] = &[
    Property { key: "settling_d" },
    Property { key: "loss_cent_decade" },
    Property { key: "constructional_cent" },
    Property { key: "evening_cent" },
    Property { key: "evening_warmth_cent" },
    Property { key: "evening_damp_cent" },
    Property { key: "week_cent" },
    Property { key: "week_warmth_cent" },
    Property { key: "week_damp_cent" },
    Property { key: "season_cent" },
    Property { key: "season_warmth_cent" },
    Property { key: "season_damp_cent" },
    Property { key: "season_moisture_cent" },
    Property { key: "season_body_cent" },
    Property { key: "ratchet_cent" },
];

const HAND: &[Property] = &[
    Property { key: "lateral_stiffness_n_m" },
    Property { key: "stopping_cent" },
    Property { key: "glide_cent" },
    Property { key: "peg_cent_deg" },
    Property { key: "pull_cent_m" },
    Property { key: "over_the_nut" },
    Property { key: "over_the_peg" },
    Property { key: "fatigue" },
];

/// The parts that a drift is the sum of; they stand under it.
pub const PARTS_OF_DRIFT: [&str; 8] = [
    "evening_warmth_cent",
    "evening_damp_cent",
    "week_warmth_cent",
    "week_damp_cent",
    "season_warmth_cent",
    "season_damp_cent",
    "season_moisture_cent",
    "season_body_cent",
];

/// Every property.
pub fn all() -> impl Iterator<Item = &'static Property> {
    GROUPS.iter().flat_map(|group| group.properties)
}

/// What the page says of the property with that name in a reply.
#[must_use]
pub fn of(key: &str) -> Option<&'static Property> {
    all().find(|p| p.key == key)
}

/// Its name on the page; that in the reply, if the page does not know it yet.
#[must_use]
pub fn name(key: &str) -> &str {
    of(key).map_or(key, |p| p.name())
}

/// What a formula of the model that nothing outside holds is about.
#[must_use]
pub fn formula(key: &str) -> &str {
    speech::of_or_key("unheld", key)
}

/// What an evidence grade means, in a sentence.
#[must_use]
pub fn evidence_means(key: &str) -> &'static str {
    speech::of("evidence", &format!("{key}.means")).unwrap_or(say!("evidence-unknown"))
}

/// The word for an evidence grade.
#[must_use]
pub fn evidence(key: &str) -> &str {
    speech::of_or_key("evidence", key)
}

/// The grades of evidence, the surest first.
pub const EVIDENCE: [&str; 5] = ["measured", "published", "computed", "judged", "guessed"];

/// Names that are written otherwise than by a capital letter each.
const SPELT: [(&str, &str); 4] = [
    ("lynch-aird", "Lynch-Aird"),
    ("van-walstijn", "van\u{a0}Walstijn"),
    ("mcintyre", "McIntyre"),
    ("jnd", "JND"),
];

/// Bodies that make standards, which have a number instead of a year.
const STANDARDS: [&str; 5] = ["astm", "iso", "en", "din", "bs"];

/// A work as one cites it, from its key: who, and the year.
#[must_use]
pub fn cited(key: &str) -> String {
    if let Some((body, number)) = key.split_once('-').filter(|(body, _)| STANDARDS.contains(body)) {
        return format!("{} {}", body.to_ascii_uppercase(), number.to_ascii_uppercase());
    }
    let (names, year) = match key.rsplit_once('-') {
        Some((names, year)) if year.len() == 4 && year.parse::<u16>().is_ok() => (names, year),
        _ => (key, ""),
    };
    let mut cited: Vec<String> = Vec::new();
    let mut rest = names;
    while !rest.is_empty() {
        let first = rest.split('-').next().unwrap_or(rest);
        let (part, name) = SPELT
            .into_iter()
            .find(|(part, _)| rest.starts_with(part))
            .map_or_else(|| (first, capital(first)), |(part, name)| (part, name.to_owned()));
        cited.push(name);
        rest = rest[part.len()..].trim_start_matches('-');
    }
    // People are set apart; a work without a year is named by its title.
    let between = if year.is_empty() { " " } else { ", " };
    format!("{} {year}", cited.join(between)).trim_end().to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_work_is_cited_by_its_authors_and_year() {
        for (key, said) in [
            ("mersenne-1636", "Mersenne 1636"),
            ("woodhouse-lynch-aird-2019", "Woodhouse, Lynch-Aird 2019"),
            ("mcintyre-schumacher-woodhouse-1983", "McIntyre, Schumacher, Woodhouse 1983"),
            ("en-10270-1", "EN 10270-1"),
            ("handbook", "Handbook"),
        ] {
            assert_eq!(cited(key), said);
        }
        for source in strings::source::ALL {
            assert!(
                !cited(source.key).is_empty() && !cited(source.key).contains("  "),
                "{source:?}"
            );
        }
    }
}
