//! Cores before a class: gone through by keys, heard on a key, pulled by a slider, with answers folded away.

use fantoccini::Locator;
use fantoccini::key::Key;
use serde_json::{Value, json};

use crate::support::{Page, drive};

impl Page {
    /// Opens a lesson and waits until its cores are there.
    async fn open_class(&self, path: &str) {
        self.open(path).await;
        self.until("the lesson is there", "return !!document.querySelector('.class .class-ear')")
            .await;
    }

    /// Presses a key where the focus is.
    async fn strike(&self, key: Key) {
        let key = String::from(char::from(key));
        self.client.active_element().await.unwrap().send_keys(&key).await.unwrap();
    }

    async fn until_step(&self, step: usize) {
        let there = format!(
            "return location.hash.endsWith('/{step}') && document.querySelector('.class-steps').textContent.includes('{step} of 6')"
        );
        self.until(&format!("step {step} is shown"), &there).await;
    }

    async fn text(&self, css: &str) -> String {
        let text = format!("return document.querySelector('{css}')?.textContent ?? ''");
        self.script(&text).await.as_str().unwrap_or_default().to_owned()
    }
}

#[test]
fn a_lesson_goes_on_and_back_by_keys_and_the_address_keeps_it() {
    drive(async |page| {
        page.open("#/").await;
        page.script("[...document.querySelectorAll('main a')].find((a) => a.textContent.includes('to a class')).click()").await;
        page.until("the lesson is there", "return !!document.querySelector('.class .class-ear')")
            .await;
        assert!(page.text("h1").await.contains("Three ways to make one A string"));
        page.strike(Key::Right).await;
        page.until_step(2).await;
        // A screen reader begins at the new takeaway.
        assert_eq!(page.script("return document.activeElement.tagName").await, "H1");
        page.strike(Key::PageDown).await;
        page.until_step(3).await;
        page.reload().await;
        page.until("it is still there", "return !!document.querySelector('.class .class-ear')")
            .await;
        page.until_step(3).await;
        page.strike(Key::Left).await;
        page.until_step(2).await;
        // In a field keys are the field's own.
        page.client.find(Locator::Id("class-mm")).await.unwrap().click().await.unwrap();
        page.strike(Key::Right).await;
        page.script("document.getElementById('class-pull').focus()").await;
        page.strike(Key::Right).await;
        page.until("the pull grows", "return document.getElementById('class-mm').value === '0.1'")
            .await;
        page.until_step(2).await;
        // Turned off, they do nothing.
        page.client.find(Locator::Id("class-keys-on")).await.unwrap().click().await.unwrap();
        page.script("document.querySelector('h1').focus()").await;
        page.strike(Key::Right).await;
        page.script("document.querySelector('.class-steps a:last-child').click()").await;
        page.until_step(3).await;
        // Other cores and another string are the same step, and the focus stays where it was.
        page.script("document.getElementById('class-string').focus()").await;
        let choose = "const list = document.getElementById('class-string'); list.value = '3'; list.dispatchEvent(new Event('change', { bubbles: true }))";
        page.script(choose).await;
        page.until(
            "it is a G",
            "return document.querySelector('.class .context').textContent.includes('G string')",
        )
        .await;
        page.until_step(3).await;
        assert_eq!(page.script("return document.activeElement.id").await, "class-string");
        // The last step has no further one.
        page.open_class("#/class/cello/0/plain-gut+wound-steel/6").await;
        assert_eq!(
            page.script("return document.querySelectorAll('.class-steps a').length").await,
            1
        );
    });
}

#[test]
fn answers_are_folded_away_and_say_what_the_model_says() {
    drive(async |page| {
        page.open_class("#/class/violin/0/wound-gut+plain-steel+synthetic/2").await;
        let closed = "return [...document.querySelectorAll('.class-questions details')].every((d) => !d.open)";
        assert_eq!(page.script(closed).await, Value::Bool(true));
        let place = page
            .ask(json!({ "ask": "place", "answers": { "instrument": "violin" }, "string": 0 }))
            .await
            .unwrap();
        let value = |family: &str, key: &str| {
            let families = place["families"].as_array().unwrap();
            let report = families.iter().map(|f| &f["report"]).find(|r| r["family"] == family);
            report.map(|report| report["numbers"][key]["value"].as_f64().unwrap())
        };
        // A wire leaps up most, and the answer has its number.
        let steel = value("plain-steel", "peg_cent_deg").unwrap();
        page.script("document.querySelector('.class-questions summary').click()").await;
        let answer = page.text(".class-questions details[open] p").await;
        assert!(answer.starts_with("The plain steel string."), "{answer}");
        assert!(
            answer.contains(&format!("plain steel {steel:.0}"))
                || answer.contains(&format!("plain steel {steel:.1}")),
            "{answer}"
        );
        // Why the top string is rarely gut: by its share of what breaks it.
        let questions = page.text(".class-questions").await;
        assert!(questions.contains("Why is the E string so rarely plain gut?"), "{questions}");
        let gut = 100.0 * value("plain-gut", "breaking_share").unwrap();
        assert!(questions.contains(&format!("gut would hang at {gut:.0}")), "{gut}: {questions}");
    });
}

#[test]
fn a_pull_moves_drawing_pitch_and_words_together() {
    drive(async |page| {
        page.open_class("#/class/violin/1/plain-gut+wound-steel/2").await;
        page.until("both are drawn", "return document.querySelectorAll('.side').length === 2")
            .await;
        let widths = "return [...document.querySelectorAll('.side .core')].map((core) => Number(core.getAttribute('width')))";
        let before = page.script(widths).await;
        page.script("[...document.querySelectorAll('.pull button')].find((b) => b.textContent === 'One millimetre more').click()").await;
        page.until(
            "it is pulled",
            "return document.querySelector('.pieces .now').textContent.includes('higher')",
        )
        .await;
        let after = page.script(widths).await;
        let place = page
            .ask(json!({ "ask": "place", "answers": { "instrument": "violin" }, "string": 1 }))
            .await
            .unwrap();
        for (i, family) in ["plain-gut", "wound-steel"].into_iter().enumerate() {
            assert!(after[i].as_f64() > before[i].as_f64(), "{family} grows: {before} {after}");
            let report = place["families"]
                .as_array()
                .unwrap()
                .iter()
                .map(|f| &f["report"])
                .find(|r| r["family"] == family)
                .unwrap();
            let player =
                json!({ "construction": report["construction"], "setting": report["setting"] });
            let pulled = page
                .ask(json!({ "ask": "stretch", "strings": [player], "pull_m": 0.001 }))
                .await
                .unwrap();
            let cents = pulled["strings"][0]["above_cent"]["value"].as_f64().unwrap().round();
            let told = page
                .script(&format!(
                    "return document.querySelectorAll('.pieces .now')[{i}].textContent"
                ))
                .await;
            let told = told.as_str().unwrap();
            assert!(told.starts_with(&format!("{cents} cents higher")), "{cents}: {told}");
        }
        page.picture("class-pulled", 1280, 900, "light").await;
        page.script("[...document.querySelectorAll('.pull button')].find((b) => b.textContent === 'All slack').click()").await;
        page.until("all are slack", "return [...document.querySelectorAll('.pieces .now')].every((now) => now.textContent === 'slack')").await;
        // A slack string cannot be plucked.
        assert_eq!(
            page.script("return document.querySelectorAll('.plucks button:disabled').length").await,
            2
        );
        let natural = page.script(widths).await;
        assert_eq!(natural[0], natural[1], "slack pieces are equally long");
        page.picture("class-slack", 320, 900, "dark").await;
    });
}

#[test]
fn a_core_is_heard_on_its_key_and_stopped() {
    drive(async |page| {
        page.open_class("#/class/violin/1/plain-gut+wound-steel/4").await;
        page.script(
            "document.querySelector('h1').tabIndex = -1; document.querySelector('h1').focus()",
        )
        .await;
        page.client.active_element().await.unwrap().send_keys("2").await.unwrap();
        page.until("it sounds", "return document.querySelector('.class-ear [role=status]').textContent === 'You hear: wound steel.'").await;
        page.strike(Key::Escape).await;
        page.until(
            "it is still",
            "return document.querySelector('.class-ear [role=status]').textContent === ''",
        )
        .await;
    });
}

#[test]
fn a_year_is_walked_along_month_by_month() {
    drive(async |page| {
        page.open("#/set").await;
        page.until("all of it is drawn", "return !!document.querySelector('.sheet')").await;
        page.open_everything().await;
        page.until("the year is drawn", "return !!document.querySelector('.a-year .year svg')")
            .await;
        assert_eq!(
            page.script("return document.querySelectorAll('.a-year .band').length").await,
            4
        );
        page.script("document.querySelector('.a-year .walk input').focus()").await;
        for _ in 0..7 {
            page.strike(Key::Right).await;
        }
        page.until(
            "July is read",
            "return document.querySelector('.a-year .walk p').textContent.startsWith('July')",
        )
        .await;
        let said = page.script("return document.querySelector('.a-year .walk input').getAttribute('aria-valuetext')").await;
        assert!(said.as_str().unwrap().starts_with("July"), "{said}");
        assert_eq!(
            page.script("return document.querySelectorAll('.a-year .here').length").await,
            1
        );
        assert_eq!(
            page.script("return document.querySelectorAll('.a-year tbody tr').length").await,
            12
        );
    });
}
