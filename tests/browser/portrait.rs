//! Portraits: as many wires as the construction has, none over another, all within the outline, to scale.

use app::components::portrait::magnification;
use app::components::section::{CoreSection, Disc, MOST_FILAMENTS, outer_mm, section};
use protocol::request::{Construction, Core, Winding};
use wasm_bindgen_test::wasm_bindgen_test;

fn core(build: &str, diameter_mm: f64) -> Core {
    Core {
        material: "spring-steel".to_owned(),
        build: build.to_owned(),
        diameter_m: diameter_mm / 1000.0,
        layout: None,
        lay_deg: None,
        filament_m: None,
        fill: None,
        twist_deg: None,
    }
}

fn winding(form: &str, thickness_mm: f64, bedding: f64) -> Winding {
    Winding {
        metal: "silver".to_owned(),
        form: form.to_owned(),
        thickness_m: thickness_mm / 1000.0,
        bedding,
        gap: 0.0,
    }
}

fn of(core: Core, windings: Vec<Winding>) -> Construction {
    Construction { core, windings }
}

/// No disc may lie over another or reach beyond `radius`.
fn packed(discs: &[Disc], radius: f64) {
    for (i, a) in discs.iter().enumerate() {
        assert!(a.reach() <= radius * 1.002, "disc {i} reaches {} of {radius}", a.reach());
        for b in &discs[..i] {
            let apart = ((a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y)).sqrt();
            assert!(apart >= (a.r + b.r) * 0.999, "two discs {apart} apart overlap");
        }
    }
}

#[wasm_bindgen_test]
fn strands_have_their_wires_and_fill_their_circle() {
    for (layout, count, in_wires) in [("1x7", 7, 3.0), ("1x19", 19, 5.0), ("7x7", 49, 9.0)] {
        let core = Core { layout: Some(layout.to_owned()), ..core("strand", 0.9) };
        let CoreSection::Wires(wires) = section(&of(core, Vec::new())).core else {
            panic!("{layout} should show its wires")
        };
        assert_eq!(wires.len(), count, "{layout}");
        packed(&wires, 0.45);
        let farthest = wires.iter().map(Disc::reach).fold(0.0, f64::max);
        assert!((farthest - 0.45).abs() < 1e-9, "{layout} reaches {farthest}");
        assert!((wires[0].r - 0.45 / in_wires).abs() < 1e-12, "{layout}");
    }
}

#[wasm_bindgen_test]
fn bundles_show_the_filaments_that_fill_them() {
    for (diameter, filament, fill) in
        [(0.41, 0.025, 0.70), (0.58, 0.025, 0.70), (0.58, 0.025, 0.60), (0.5, 0.03, 0.75)]
    {
        let core = Core {
            filament_m: Some(filament / 1000.0),
            fill: Some(fill),
            ..core("multifilament", diameter)
        };
        let CoreSection::Filaments { count, drawn, parts } = section(&of(core, Vec::new())).core
        else {
            panic!("a bundle should show filaments")
        };
        let exact = fill * (diameter / filament) * (diameter / filament);
        assert!((count as f64 - exact).abs() <= 0.5, "{count} filaments, not {exact}");
        assert_eq!(parts, 1);
        // Tight bundles lose a few at the rim, where a lattice does not follow the circle.
        assert!(drawn.len() <= count && drawn.len() as f64 >= 0.95 * count as f64);
        packed(&drawn, diameter / 2.0);
    }
}

#[wasm_bindgen_test]
fn a_bundle_of_thousands_shows_a_stated_sector() {
    let core = Core { filament_m: Some(2.5e-5), fill: Some(0.7), ..core("multifilament", 1.74) };
    let CoreSection::Filaments { count, drawn, parts } = section(&of(core, Vec::new())).core else {
        panic!("a bundle should show filaments")
    };
    assert!(count > 3000 && parts >= 3 && drawn.len() <= MOST_FILAMENTS);
    let share = drawn.len() as f64 / count as f64;
    assert!((share * parts as f64 - 1.0).abs() < 0.1, "{share} of {parts} parts");
}

#[wasm_bindgen_test]
fn windings_lie_on_each_other_and_round_wires_touch() {
    let string =
        of(core("solid", 0.4), vec![winding("round", 0.2, 0.0), winding("flat", 0.05, 0.2)]);
    let section = section(&string);
    let wires = section.rings[0].wires.as_ref().expect("round wire is shown as wires");
    packed(wires, 0.4);
    // Circles of 0.2 on a circle of 0.6: ⌊π / asin(1/3)⌋.
    assert_eq!(wires.len(), 9);
    assert!(section.rings[1].wires.is_none());
    assert!((section.rings[1].inner - 0.39).abs() < 1e-12);
    assert!((section.radius - 0.44).abs() < 1e-12);
    assert!((outer_mm(&string) - 0.88).abs() < 1e-12);
}

#[wasm_bindgen_test]
fn strings_of_a_set_share_the_scale_of_the_thickest() {
    let (thin, thick) = (of(core("solid", 0.25), Vec::new()), of(core("solid", 0.8), Vec::new()));
    assert!((magnification([&thin, &thick].into_iter(), 120.0) - 150.0).abs() < 1e-9);
    assert!(magnification(core::iter::empty(), 120.0).is_finite());
}
