//! How numbers are written: digits by uncertainty, units of the workshop, never "NaN".

use app::units;
use app::words::drift;
use protocol::reply::Quantity;
use wasm_bindgen_test::wasm_bindgen_test;

fn quantity(value: f64, low: f64, high: f64) -> Quantity {
    Quantity { value, low, high, evidence: "computed".to_owned(), source: String::new() }
}

#[wasm_bindgen_test]
fn digits_follow_half_the_range() {
    for (half, figures, places) in [
        (2.5, 2, 1),
        (0.0248, 2, 3),
        (0.0996, 2, 2),
        (0.95, 1, 0),
        (0.94, 1, 1),
        (7.4, 1, 0),
        (293.0, 2, -1),
    ] {
        assert_eq!(units::decimals(half, figures), Some(places), "{half} to {figures}");
    }
    for nothing in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        assert_eq!(units::decimals(nothing, 2), None);
    }
}

#[wasm_bindgen_test]
fn numbers_are_written_as_one_reads_them() {
    assert_eq!(units::fixed(22820.0, 0), "22\u{202f}820");
    assert_eq!(units::fixed(1381.4, 0), "1381");
    assert_eq!(units::fixed(-0.04, 1), "0.0");
    assert_eq!(units::fixed(-12.34, 1), "−12.3");
    assert_eq!(units::fixed(293.0, -1), "290");
    for odd in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        assert_eq!(units::fixed(odd, 2), units::not_known());
    }
}

#[wasm_bindgen_test]
fn a_quantity_has_its_unit_and_its_range() {
    let w = units::written("tension_n", &quantity(55.81, 53.9, 57.7), 2);
    assert_eq!((w.plain().as_str(), w.range().as_str()), ("55.8\u{a0}N", "53.9 to 57.7"));
    let w = units::written("stretch", &quantity(0.0287, 0.0191, 0.0433), 1);
    assert_eq!(w.plain(), "3\u{a0}%");
    let w = units::written("season_cent", &quantity(36.1, -12.5, 95.1), 2);
    assert_eq!(w.within(), "36\u{a0}cents (−12 to 95)");
    // A low end is nought only if it is none.
    let w = units::written("season_cent", &quantity(9.1, 0.34, 230.0), 2);
    assert_eq!(w.within(), "10\u{a0}cents (0.3 to 230)");
    let w = units::written("bending_stiffness_n_m2", &quantity(4e-4, 33.8e-6, 2344e-6), 2);
    assert_eq!(w.range(), "30 to 2300");
    let w = units::written("season_cent", &quantity(9.1, 0.0, 30.0), 2);
    assert_eq!(w.within(), "9\u{a0}cents (0 to 30)");
    let w = units::written("outer_diameter_m", &quantity(0.000265, 0.000265, 0.000265), 2);
    assert_eq!((w.plain().as_str(), w.exact), ("0.265\u{a0}mm", true));
    let w = units::written("season_moisture_cent", &quantity(0.0, 0.0, 0.0), 2);
    assert_eq!(w.plain(), "0\u{a0}cents");
    let w = units::written("tension_n", &quantity(f64::NAN, 1.0, 2.0), 2);
    assert_eq!(w.plain(), units::not_known());
}

#[wasm_bindgen_test]
fn plain_words_agree_with_comparisons() {
    let plainly = |key: &str, value, low, high| units::plainly(key, &quantity(value, low, high));
    // As the reasons write them, so that no sentence seems to contradict the next.
    assert_eq!(plainly("breaking_share", 0.283, 0.19, 0.40), "28\u{a0}%");
    assert_eq!(plainly("stretch", 0.0287, 0.0191, 0.0433), "2.9\u{a0}%");
    assert_eq!(plainly("peg_cent_deg", 16.89, 16.04, 17.78), "17\u{a0}cents/degree");
    // A wide range stands behind its value.
    assert_eq!(plainly("ratchet_cent", 36.1, 12.5, 95.1), "about 36\u{a0}cents (12 to 95)");
    assert_eq!(plainly("settling_d", 2.1, 1.1, 4.3), "about 2\u{a0}days (1 to 4)");
    assert_eq!(plainly("settling_d", 1.2, 0.5, 2.4), "about 1 day (0.5 to 2)");
    assert_eq!(plainly("settling_d", 0.1, 0.05, 0.3), "about 0.1\u{a0}days (0.05 to 0.3)");
    assert_eq!(plainly("ratchet_cent", 9.1, 0.34, 230.0), "about 9\u{a0}cents (0.3 to 230)");
    assert_eq!(plainly("stretch", f64::NAN, 0.0, 0.0), units::not_known());
}

#[wasm_bindgen_test]
fn a_move_of_the_pitch_has_its_direction() {
    let moves = |value, low, high| drift::moves("evening_warmth_cent", &quantity(value, low, high));
    assert_eq!(moves(-4.2, -5.0, -3.4), "falls 4.2\u{a0}cents");
    assert_eq!(moves(12.3, 6.0, 30.0), "rises about 12\u{a0}cents (6 to 30)");
    assert_eq!(moves(-4.2, -12.4, 3.1), "falls about 4\u{a0}cents (−12 to +3)");
    assert_eq!(moves(0.4, 0.1, 0.9), "hardly moves");
    assert_eq!(moves(-0.4, -6.2, 0.03), "hardly moves (−6 to +0.03\u{a0}cents)");
    assert_eq!(drift::plainly("settling_d", &quantity(2.0, 1.5, 2.5)), "2.0\u{a0}days");
    let size = drift::sized("week_damp_cent", &quantity(-4.0, -9.0, 2.0));
    assert_eq!((size.value, size.low, size.high), (4.0, 0.0, 9.0));
}

#[wasm_bindgen_test]
fn forces_and_gauges_come_in_the_units_of_packets() {
    assert_eq!(
        units::forces((52.0, 57.0)),
        "52 to 57\u{a0}N (5.3 to 5.8\u{a0}kg, 11.7 to 12.8\u{a0}lb)"
    );
    assert_eq!(units::gauge(0.000_254), "0.254\u{a0}mm (10\u{a0}thousandths of an inch)");
}

#[wasm_bindgen_test]
fn two_values_keep_the_digits_that_tell_them_apart() {
    let (one, other) = units::pair("attack_m_s2_n", 28.59, 28.76);
    assert_ne!(one, other);
    let (one, other) = units::pair("peg_cent_deg", 4.38, 19.78);
    assert_eq!((one.as_str(), other.as_str()), ("4.4\u{a0}cents/degree", "20\u{a0}cents/degree"));
}

#[wasm_bindgen_test]
fn days_are_said_in_words() {
    for (days, plain, safe) in [
        (0.1, "less than a day", "1 day"),
        (1.06, "a day", "2\u{a0}days"),
        (3.5, "4\u{a0}days", "4\u{a0}days"),
    ] {
        assert_eq!(units::days(days), plain);
        assert_eq!(units::days_to_be_safe(days), safe);
    }
    assert_eq!(units::days(f64::NAN), units::not_known());
}

/// The page as a person with these preferences reads it, and as anybody again afterwards.
fn with_habits<T>(words: &str, read: impl Fn() -> T) -> T {
    app::preferences::take(app::preferences::Preferences::read(words));
    let read = read();
    app::preferences::take(app::preferences::Preferences::default());
    read
}

#[wasm_bindgen_test]
fn units_are_those_of_the_person() {
    // 1 lbf = 4.4482216152605 N, 1 kgf = 9.80665 N, 1 in = 25.4 mm: exact by definition (NIST SP 811, appendix B.8).
    assert_eq!(with_habits("kg", || units::one_force(98.0665)), "10.0\u{a0}kg");
    assert_eq!(with_habits("lb", || units::one_force(44.482_216)), "10.0\u{a0}lb");
    let lead = with_habits("lb", || units::force(44.482_216));
    assert!(lead.starts_with("10.0\u{a0}lb (44\u{a0}N, 4.5\u{a0}kg"), "{lead}");
    assert_eq!(with_habits("in", || units::mm(0.3302, 0)), "13.0\u{a0}in");
    assert_eq!(
        with_habits("in", || units::gauge(0.000_254)),
        "10\u{a0}thousandths of an inch (0.254\u{a0}mm)"
    );
    assert_eq!(with_habits("F", || units::warmth(20.0)), "68\u{a0}°F");
    assert_eq!(with_habits("F", || units::warmer(5.0)), "9\u{a0}°F");
    assert_eq!(units::one_force(98.0665), "98\u{a0}N");
    assert_eq!((units::warmth(20.0), units::warmer(5.0)), ("20\u{a0}°C".into(), "5\u{a0}K".into()));
}

#[wasm_bindgen_test]
fn german_has_a_comma_and_reads_a_point_too() {
    app::words::speech::learn(catalogue::Language::German, catalogue::GERMAN);
    app::words::speech::speak(catalogue::Language::German);
    let written = units::fixed(12_345.678, 2);
    let gauge = units::gauge(0.000_68);
    let number = app::fields::Number::Length;
    let answers = protocol::request::Answers::default();
    let typed = |text: &str| {
        number.read(text, number.unit(None), number.bound(&answers), "Mensur").unwrap().unwrap()
    };
    let (comma, point) = (typed("328,5"), typed("328.5"));
    let zoll = typed("12 7/8 Zoll");
    let shown = number.unit(None).typed(comma);
    app::words::speech::speak(catalogue::Language::English);
    assert_eq!(written, "12\u{202f}345,68");
    assert_eq!(gauge, "0,680\u{a0}mm (27\u{a0}Tausendstel Zoll)");
    assert!((comma - 0.3285).abs() < 1e-12 && (comma - point).abs() < 1e-12);
    assert!((zoll - 12.875 * 0.0254).abs() < 1e-12);
    assert_eq!(shown, "328,5");
}
