//! Every screen and every error, in light, dark and forced colours, at 320, 768 and 1280 pixels: no fault that the
//! accessibility checker knows, nothing wider than the window, and nothing to press that is smaller than a finger.

use serde_json::{Value, json};

use crate::support::{Page, drive};

const WIDTHS: [u32; 3] = [320, 768, 1280];
const SCHEMES: [&str; 3] = ["light", "dark", "forced"];

/// What one presses, each as large as it is with its label, that is less than 44 pixels wide or high (WCAG 2.2, 2.5.5;
/// to half a pixel, for a browser rounds). A link in running text is excepted there, and so is a point of a chart, which
/// its table repeats.
const SMALL: &str = r#"
    const inText = (e) => {
        const line = e.matches('a, button') && e.closest('p, li, td, th, dd, figcaption, legend');
        return line && line.textContent.trim() !== e.textContent.trim();
    };
    const large = (e) => {
        const { width, height } = e.getBoundingClientRect();
        return width >= 43.5 && height >= 43.5;
    };
    return [...document.querySelectorAll('a, button, input, select, summary, textarea')]
        .filter((e) => e.checkVisibility({ visibilityProperty: true }) && !e.closest('.sheet, svg') && !inText(e))
        .filter((e) => ![e, e.closest('label'), ...(e.labels ?? [])].some((part) => part && large(part)))
        .map((e) => `${e.outerHTML.slice(0, 80)}: ${e.getBoundingClientRect().width} x ${e.getBoundingClientRect().height}`)
        .slice(0, 5);
"#;

impl Page {
    /// Looks at the page as it is now, in every scheme and at every width.
    async fn assert_open_to_all(&self, name: &str) {
        for scheme in SCHEMES {
            for width in WIDTHS {
                self.picture(&format!("{name}-{width}-{scheme}"), width, 900, scheme).await;
                // A scroll bar may stand within the window's width.
                let fits = "return document.documentElement.scrollWidth <= innerWidth";
                let fits = self.script(fits).await;
                assert_eq!(fits, Value::Bool(true), "{name} is too wide at {width}, {scheme}");
                let small = self.script(SMALL).await;
                assert_eq!(small, json!([]), "{name}: too small to press at {width}, {scheme}");
                self.assert_accessible().await;
            }
        }
    }

    /// Begins anew with these answers, at that address.
    async fn begin_with(&self, answers: Value, drafts: Value, path: &str) {
        let document = json!({ "format": "ropewalk-fitting", "version": 1, "label": "Desk 3",
            "answers": answers, "drafts": drafts, "fittings": [] });
        self.seed(&document).await;
        self.open(path).await;
        self.reload().await;
    }
}

#[test]
fn every_question_is_open_to_all() {
    drive(async |page| {
        for (room, name) in [("#/", "home"), ("#/check", "check"), ("#/everything", "everything")] {
            page.open(room).await;
            page.open_everything().await;
            page.assert_open_to_all(name).await;
        }
        for screen in 1..=8 {
            page.open(&format!("#/ask/{screen}")).await;
            page.assert_open_to_all(&format!("ask-{screen}")).await;
        }
    });
}

#[test]
fn every_error_is_open_to_all() {
    drive(async |page| {
        let drafts = json!({ "a4_hz": "quite high", "age_months": "-3" });
        page.begin_with(json!({}), drafts.clone(), "#/everything").await;
        page.script("document.querySelector('form button[type=submit]').click()").await;
        page.until("the faults are listed", "return document.querySelectorAll('.slip').length > 0")
            .await;
        page.open_everything().await;
        page.assert_open_to_all("faults").await;
        page.open("#/check").await;
        page.assert_open_to_all("faults-check").await;
        page.open("#/set").await;
        page.assert_open_to_all("faults-set").await;
        page.begin_with(json!({}), json!({}), "#/nowhere").await;
        page.until("it is told", "return !!document.querySelector('.notice')").await;
        page.assert_open_to_all("lost").await;
    });
}

#[test]
fn every_answer_is_open_to_all() {
    drive(async |page| {
        let whole = "return !!document.querySelector('.sheet')";
        let complaints = json!({ "instrument": "cello", "bothers": ["too-bright", "wolf", "goes-flat"],
            "now": "steel", "age_months": 14.0, "concert_days": 3.0 });
        for (name, answers) in [("set", json!({})), ("set-complaints", complaints)] {
            page.begin_with(answers, json!({}), "#/set").await;
            page.until("all of it is drawn", whole).await;
            page.open_everything().await;
            page.assert_open_to_all(name).await;
        }
        let never = json!({ "instrument": "violin", "animal_free": true, "amplified": "magnet",
            "strings": [{ "family": "synthetic" }] });
        page.begin_with(never, json!({}), "#/set").await;
        page.until(
            "it says why not",
            "return !!document.querySelector('.obstacles, .busy, .slip')",
        )
        .await;
        page.assert_open_to_all("set-nothing").await;
    });
}

#[test]
fn comparing_and_sources_are_open_to_all() {
    drive(async |page| {
        page.open("#/compare").await;
        page.until("both are there", "return document.querySelectorAll('.bow-maps').length > 0")
            .await;
        page.open_everything().await;
        page.assert_open_to_all("compare").await;
        page.open("#/words").await;
        page.assert_open_to_all("words").await;
        page.open("#/specimen").await;
        page.open_everything().await;
        page.assert_open_to_all("specimen").await;
        page.open("#/sources").await;
        page.until(
            "they are listed",
            "return document.querySelectorAll('main li, main dt').length > 20",
        )
        .await;
        page.open_everything().await;
        page.assert_open_to_all("sources").await;
    });
}

#[test]
fn every_step_of_a_lesson_is_open_to_all() {
    drive(async |page| {
        for step in 1..=6 {
            page.open(&format!("#/class/violin/0/plain-gut+plain-steel+synthetic/{step}")).await;
            let drawn = if step == 2 { ".side" } else { ".class-number" };
            page.until("it is drawn", &format!("return !!document.querySelector('{drawn}')")).await;
            if step == 5 {
                page.until("the year is drawn", "return !!document.querySelector('.year svg')")
                    .await;
            }
            page.open_everything().await;
            page.assert_open_to_all(&format!("class-{step}")).await;
        }
    });
}
