//! The two strings with which a comparison begins.

use protocol::reply::Fit;
use protocol::request::{Construction, Core, Setting, Winding};

use crate::units;
use crate::words::naming::{capital, letter, letters};
use crate::words::questions::{instrument_name, size_name};
use crate::words::say;

/// Two strings to begin with, and where they work.
#[derive(Clone, PartialEq)]
pub(super) struct Start {
    pub(super) instrument: String,
    pub(super) name: String,
    pub(super) context: String,
    pub(super) setting: Setting,
    pub(super) sides: [Construction; 2],
    pub(super) others: Vec<String>,
}

/// A string of a set and its nearest rival.
pub(super) fn of_fit(fit: &Fit, string: usize) -> Option<Start> {
    let set = fit.set.as_ref()?;
    let i = string.min(set.strings.len().checked_sub(1)?);
    let string = set.strings.get(i)?;
    let names = letters(set.strings.iter().map(|s| s.note.as_str()));
    // The rival is the nearest other kind; where none is made, today's string or the same again.
    let rival = string.rival.as_ref().or(string.today.as_ref()).unwrap_or(&string.report);
    let setting = string.report.setting.clone();
    Some(Start {
        instrument: fit.problem.instrument.clone(),
        context: context(&fit.problem.instrument, &fit.problem.size, &setting),
        name: names.get(i)?.clone(),
        setting,
        sides: [string.report.construction.clone(), rival.construction.clone()],
        others: names,
    })
}

/// Where two strings work, in a line.
fn context(instrument: &str, size: &str, setting: &Setting) -> String {
    say!(
        "compare-place",
        instrument = capital(instrument_name(instrument)),
        size = size_name(size),
        length = units::mm(setting.sounding_length_m, 0),
        pitch = units::hertz(setting.pitch_hz),
    )
}

/// A full-size violin's A: a synthetic string and a steel one.
pub(super) fn of_violin() -> Start {
    let core = |material: &str, build: &str, mm: f64| Core {
        material: material.to_owned(),
        build: build.to_owned(),
        diameter_m: mm / 1000.0,
        layout: None,
        lay_deg: None,
        filament_m: None,
        fill: None,
        twist_deg: None,
    };
    let ribbon = |metal: &str, mm: f64| Winding {
        metal: metal.to_owned(),
        form: "flat".to_owned(),
        thickness_m: mm / 1000.0,
        bedding: 0.0,
        gap: 0.0,
    };
    Start {
        instrument: "violin".to_owned(),
        name: letter("A4"),
        context: context("violin", "4/4", &Setting::of(0.328, 440.0)),
        setting: Setting::of(0.328, 440.0),
        sides: [
            Construction {
                core: Core {
                    filament_m: Some(2.5e-5),
                    fill: Some(0.7),
                    twist_deg: Some(12.0),
                    ..core("polyamide", "multifilament", 0.58)
                },
                windings: vec![ribbon("aluminium", 0.07)],
            },
            Construction {
                core: core("spring-steel", "solid", 0.24),
                windings: vec![ribbon("aluminium", 0.11)],
            },
        ],
        others: Vec::new(),
    }
}
