//! The questions as a person meets them: forward, back, half-typed, wrong, saved and opened again; and the fittings kept.

use std::fs;

use fantoccini::Locator;
use serde_json::{Value, json};

use crate::support::{Page, copy, drive, drive_in};

impl Page {
    /// Waits until the heading of the room begins with these words.
    pub(crate) async fn at(&self, heading: &str) {
        let what = format!("the heading is “{heading}”");
        let script = format!(
            "return document.querySelector('main h1')?.textContent.startsWith({}) ?? false",
            json!(heading)
        );
        self.until(&what, &script).await;
    }

    async fn click(&self, css: &str) {
        self.client.find(Locator::Css(css)).await.unwrap().click().await.unwrap();
    }

    /// Clicks the link or button with these words.
    async fn press(&self, words: &str) {
        let path = format!(
            "//main//*[self::a or self::button][starts-with(normalize-space(.), '{words}')]"
        );
        self.client.find(Locator::XPath(&path)).await.unwrap().click().await.unwrap();
    }

    pub(crate) async fn write(&self, css: &str, text: &str) {
        let field = self.client.find(Locator::Css(css)).await.unwrap();
        field.send_keys(text).await.unwrap();
    }

    async fn value(&self, css: &str) -> Value {
        self.script(&format!("return document.querySelector({}).value", json!(css))).await
    }
}

#[test]
fn the_path_leads_to_the_answers_and_back_keeps_them() {
    drive(async |page| {
        page.press("Answer a few questions").await;
        page.at("The instrument").await;
        assert_eq!(page.client.title().await.unwrap(), "The instrument · Ropewalk");
        let focus = page.script("return document.activeElement.textContent").await;
        assert_eq!(focus, "The instrument");
        page.click("input[name=instrument][value=viola]").await;
        page.click("input[name=size][value='15 in']").await;
        page.press("Continue").await;
        page.at("Its strings now").await;
        page.click("input[name=now][value=synthetic]").await;
        page.write("#age_months", "8").await;
        page.press("Continue").await;
        page.at("Complaints").await;
        page.click("input[value=too-bright]").await;
        page.write("[id='wishes.brightness']", "-1,5").await;
        page.until(
            "the number has its word",
            "return [...document.querySelectorAll('output')].some((o) => o.textContent === 'much darker')",
        )
        .await;
        page.assert_accessible().await;

        page.client.back().await.unwrap();
        page.at("Its strings now").await;
        assert_eq!(page.value("#age_months").await, "8");
        page.press("Back").await;
        page.at("The instrument").await;
        let ticked = "return document.querySelector('input[name=size]:checked').value";
        assert_eq!(page.script(ticked).await, "15 in");
        for heading in [
            "Its strings now",
            "Complaints",
            "Music and player",
            "Tuning it",
            "Where it is kept",
            "The next concert",
            "Budget and skin",
            "Check your answers",
        ] {
            page.press("Continue").await;
            page.at(heading).await;
        }
        let rows = page.script("return document.querySelector('.rows').textContent").await;
        for said in ["Viola", "15 in", "Synthetic", "8 months", "Too bright", "darker (−1.5)"] {
            assert!(rows.as_str().unwrap().contains(said), "{said}: {rows}");
        }
        page.assert_accessible().await;

        // A change leads there and back.
        page.press("Change: Size").await;
        page.at("The instrument").await;
        page.click("input[name=size][value='16 in']").await;
        page.press("Continue").await;
        page.at("Check your answers").await;
        let answers = &page.document().await["answers"];
        assert_eq!(answers["size"], "16 in");
        assert_eq!(answers["wishes"]["brightness"], -1.5);
    });
}

#[test]
fn a_set_is_found_without_a_single_answer_and_can_be_kept() {
    drive(async |page| {
        page.press("Just show me a set").await;
        page.until("a set is shown", "return !!document.querySelector('main .answer #strings') && !!document.querySelector('.sheet')")
            .await;
        page.press("Keep").await;
        page.until(
            "it is told",
            "return document.querySelector('.notices').textContent.includes('Kept')",
        )
        .await;
        page.open("#/").await;
        page.until(
            "it is on the first page",
            "return document.querySelectorAll('.kept .lines li').length === 4",
        )
        .await;
        page.assert_accessible().await;
        page.press("Remove").await;
        page.until("it is gone", "return !document.querySelector('.kept li')").await;
        // An empty list says what will stand there, and the keyboard goes on from its heading.
        let told = page.script("return document.querySelector('.kept').textContent").await;
        assert!(told.as_str().unwrap().contains("once you have pressed “Keep”"), "{told}");
        assert_eq!(page.script("return document.activeElement.id").await, "kept");
        page.press("Undo").await;
        page.until("it is back", "return !!document.querySelector('.kept li')").await;
    });
}

#[test]
fn invented_fittings_come_with_a_press_and_go_with_another() {
    drive(async |page| {
        page.press("Show three invented sets").await;
        page.until(
            "three are there, each with its strings",
            "const lists = [...document.querySelectorAll('[aria-labelledby=invented] .lines')];
             return lists.length === 3 && lists.every((list) => list.querySelectorAll('li').length === 4)",
        )
        .await;
        assert_eq!(page.script("return document.activeElement.id").await, "invented");
        page.assert_accessible().await;
        for width in [320, 768, 1280] {
            page.picture(&format!("invented-{width}"), width, 900, "light").await;
        }
        // A fitting of one's own beside them.
        page.press("Just show me a set").await;
        page.until("a set is shown", "return !!document.querySelector('main .answer #strings') && !!document.querySelector('.sheet')")
            .await;
        page.press("Keep").await;
        page.until(
            "it is kept",
            "return document.querySelector('.notices').textContent.includes('Kept')",
        )
        .await;
        page.open("#/ask/2").await;
        page.at("Its strings now").await;
        page.write("#age_months", "a year").await;
        // Half typed, it is put by while an invented one is looked at.
        page.open("#/").await;
        page.press("Open Desk 3 viola, 15\u{a0}in (invented)").await;
        page.until(
            "its set is said to be invented",
            "return document.querySelector('.context')?.textContent.startsWith('Desk 3 viola, 15\u{a0}in (invented): Viola 15 in')",
        )
        .await;
        page.open("#/").await;
        page.press("Remove the invented sets").await;
        page.until("they are gone", "return !document.querySelector('[aria-labelledby=invented]')")
            .await;
        assert_eq!(page.script("return document.activeElement.id").await, "kept");
        assert_eq!(
            page.script(
                "return [...document.querySelectorAll('.kept li h3')].map((h) => h.textContent)"
            )
            .await,
            json!(["Violin 4/4", "Violin 4/4"])
        );
        let document = page.document().await;
        assert_eq!(document["answers"], json!({}), "the invented answers are gone too");
        assert!(document["fittings"].as_array().unwrap().iter().all(|f| f["invented"].is_null()));
        page.press("Open Violin 4/4").await;
        page.at("Not yet").await;
        assert_eq!(page.document().await["typed"]["age_months"]["text"], "a year");
    });
}

#[test]
fn kept_sets_are_told_in_the_language_that_is_spoken() {
    drive(async |page| {
        // As an earlier build kept it: with its words alone.
        let kept = json!({ "format": "ropewalk-fitting", "version": 1, "fittings": [
            { "at": "2026-01-02T03:04:05Z", "label": "Desk 1", "answers": { "instrument": "violin" }, "summary": ["E5: old words"] },
        ] });
        page.seed(&kept).await;
        page.reload().await;
        page.until(
            "the model has told its strings",
            r"return /E5: plain steel, .*\sN$/.test(document.querySelector('.kept .lines li')?.textContent ?? '')",
        )
        .await;
        page.script("const list = document.getElementById('language'); list.value = 'de'; list.dispatchEvent(new Event('change', { bubbles: true }))")
            .await;
        page.until(
            "they are told in German",
            "return /E5: Blanker Stahl|E5: blanker Stahl/.test(document.querySelector('.kept .lines li')?.textContent ?? '')",
        )
        .await;
        assert_eq!(page.document().await["fittings"][0]["summary"], json!(["E5: old words"]));
    });
}

#[test]
fn half_a_number_stays_and_says_what_would_do() {
    drive(async |page| {
        page.open("#/everything").await;
        page.at("Everything").await;
        page.write("#sounding_length_m", "3300").await;
        page.write("#a4_hz", "44o").await;
        page.reload().await;
        assert_eq!(page.value("#sounding_length_m").await, "3300");
        assert_eq!(page.value("#a4_hz").await, "44o");
        page.press("Find strings").await;
        page.until(
            "the summary has the focus",
            "return document.activeElement.id === 'faults' && document.querySelectorAll('#faults li').length === 2",
        )
        .await;
        let told = page.script("return document.querySelector('#faults').textContent").await;
        let told = told.as_str().unwrap();
        assert!(told.contains("Sounding length: 3300 mm is outside 162 to 366 mm."), "{told}");
        assert!(told.contains("“44o” is not a number. It takes 392 to 466.2 Hz."), "{told}");
        page.assert_accessible().await;
        page.picture("faults", 390, 844, "light").await;
        page.click("#faults li:nth-child(2) a").await;
        let focus = page.script("return document.activeElement.id").await;
        assert_eq!(focus, "a4_hz");
        page.write("#a4_hz", "\u{e003}0").await;
        page.until(
            "one fault is left",
            "return document.querySelectorAll('#faults li').length === 1",
        )
        .await;
        assert_eq!(page.document().await["answers"]["a4_hz"], 440.0);

        // A fault that was folded away is unfolded by the way to it.
        page.script("document.querySelector('#weights details').open = true").await;
        page.until("it is drawn", "return !!document.getElementById('weights.feel')").await;
        page.write("[id='weights.feel']", "much").await;
        page.script("document.querySelector('#weights details').open = false").await;
        page.press("Find strings").await;
        page.until("both are told", "return document.querySelectorAll('#faults li').length === 2")
            .await;
        page.click("#faults li:last-child a").await;
        let focus = page.script("return document.activeElement.id").await;
        assert_eq!(focus, "weights.feel");
        page.reload().await;
        page.at("Everything").await;
        assert_eq!(page.value("[id='weights.feel']").await, "much");

        // On the path, too, nothing goes on over a fault.
        page.open("#/ask/2").await;
        page.at("Its strings now").await;
        page.write("#age_months", "old").await;
        page.press("Continue").await;
        page.until("it is told", "return document.activeElement.id === 'faults'").await;
        page.at("Its strings now").await;
    });
}

#[test]
fn a_saved_file_comes_back() {
    drive(async |page| {
        page.open("#/ask/1").await;
        page.at("The instrument").await;
        page.click("input[name=instrument][value=cello]").await;
        page.open("#/ask/2").await;
        page.at("Its strings now").await;
        page.write("#age_months", "a year").await;
        let saved = page.document().await;
        page.open("#/").await;
        page.at("Find strings").await;
        page.press("Start afresh").await;
        page.until("it is empty", "return !document.querySelector('.begun')").await;

        let open = |text: &str| {
            let text = json!(text);
            format!(
                "const files = new DataTransfer(); files.items.add(new File([{text}], 'cello.json'));
                 const field = document.querySelector('input[type=file]'); field.files = files.files;
                 field.dispatchEvent(new Event('change', {{ bubbles: true }}))"
            )
        };
        page.script(&open("half a fi")).await;
        page.until(
            "the refusal is told",
            "return document.querySelector('.notices').textContent.includes('cello.json was not opened')",
        )
        .await;
        page.script(&open(&saved.to_string())).await;
        page.at("Check your answers").await;
        assert_eq!(page.document().await, saved);
        page.open("#/ask/2").await;
        page.at("Its strings now").await;
        assert_eq!(page.value("#age_months").await, "a year");
    });
}

#[test]
fn what_cannot_be_read_is_kept_aside_and_told_of() {
    drive(async |page| {
        page.script("localStorage.setItem('ropewalk/fitting', 'half a fitt')").await;
        page.reload().await;
        page.until(
            "it is told",
            "return document.querySelector('[aria-labelledby=unreadable]')?.textContent.includes('damaged') ?? false",
        )
        .await;
        let records = page.records().await;
        assert!(records.iter().any(|record| record["text"] == "half a fitt"), "{records:?}");
        page.open("#/nowhere").await;
        page.until(
            "a lost address is told of",
            "return document.querySelector('.notices').textContent.includes('no page at that address')",
        )
        .await;
    });
}

#[test]
fn a_broken_worker_is_told_of_and_tried_again() {
    let folder = copy("broken-worker", "");
    let is_loader = |name: &str| name.starts_with("worker_loader");
    let loader = fs::read_dir(&folder)
        .unwrap()
        .map(|entry| entry.unwrap())
        .find(|entry| is_loader(&entry.file_name().to_string_lossy()))
        .unwrap()
        .path();
    let kept = fs::read(&loader).unwrap();
    fs::remove_file(&loader).unwrap();
    drive_in(&folder, "", async |page| {
        page.press("Just show me a set").await;
        page.until(
            "it is told",
            "return !!document.querySelector('[role=alert]')?.textContent.includes('There is no answer')",
        )
        .await;
        page.assert_accessible().await;
        fs::write(&loader, &kept).unwrap();
        page.press("Try again").await;
        page.until("a set is shown", "return !!document.querySelector('main .answer #strings') && !!document.querySelector('.sheet')")
            .await;
        // A browser may complain of the missing file, and rightly.
        drop(page.console().await);
    });
}
