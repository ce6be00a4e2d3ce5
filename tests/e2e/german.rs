//! The page in German: chosen by a person, remembered, there without a network, and without an English word.

use serde_json::json;

use crate::support::{Page, drive};

/// English words that no German text has.
const ENGLISH: &str = "['the', 'and', 'of', 'with', 'string', 'strings', 'it', 'is', 'than', 'to', 'for', 'from', 'but']";

impl Page {
    /// Chooses in one of the lists at the foot.
    async fn choose(&self, list: &str, key: &str) {
        let script = format!(
            "const list = document.getElementById({}); list.value = {}; list.dispatchEvent(new Event('change', {{ bubbles: true }}))",
            json!(list),
            json!(key)
        );
        self.script(&script).await;
    }

    async fn headed(&self, heading: &str) {
        let script = format!(
            "return document.querySelector('main h1')?.textContent.includes({}) ?? false",
            json!(heading)
        );
        self.until(&format!("the heading has “{heading}”"), &script).await;
    }

    /// That nothing which is not marked as English has an English word.
    async fn all_german(&self) {
        let script = format!(
            "const english = {ENGLISH};
             const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
             const found = [];
             while (walk.nextNode()) {{
               const node = walk.currentNode;
               if (node.parentElement.closest('[lang=en], script, style, noscript')) continue;
               if (node.data.split(/[^A-Za-zÄÖÜäöüß]+/).some((word) => english.includes(word))) found.push(node.data);
             }}
             for (const it of document.querySelectorAll('[aria-label], [title]')) {{
               const label = it.getAttribute('aria-label') ?? it.getAttribute('title');
               if (label.split(/[^A-Za-zÄÖÜäöüß]+/).some((word) => english.includes(word))) found.push(label);
             }}
             return found"
        );
        assert_eq!(self.script(&script).await, json!([]));
    }
}

#[test]
fn german_is_chosen_once_and_leads_through_the_whole_path() {
    drive(async |page| {
        page.headed("Find strings").await;
        assert_eq!(page.script("return document.documentElement.lang").await, "en");
        page.choose("language", "de").await;
        page.headed("Finden Sie Saiten").await;
        assert_eq!(page.script("return document.documentElement.lang").await, "de");
        page.until("the list has the focus", "return document.activeElement.id === 'language'")
            .await;
        page.all_german().await;
        page.assert_accessible().await;

        // It is remembered, also where there is no network.
        page.kept().await;
        page.end_server();
        page.reload().await;
        page.headed("Finden Sie Saiten").await;
        for (screen, heading) in [
            "Das Instrument",
            "Seine Saiten jetzt",
            "Beschwerden und Wünsche",
            "Musik und Spiel",
            "Das Stimmen",
            "Wo es aufbewahrt wird",
            "Das nächste Konzert",
            "Preis und Haut",
        ]
        .into_iter()
        .enumerate()
        {
            page.open(&format!("#/ask/{}", screen + 1)).await;
            page.headed(heading).await;
            page.all_german().await;
            page.assert_accessible().await;
        }

        // A comma and a point are both read, and what is kept has no language.
        page.open("#/everything").await;
        page.headed("Alles auf einer Seite").await;
        page.all_german().await;
        for (field, text) in [("sounding_length_m", "328,5"), ("a4_hz", "441.5")] {
            let script = format!(
                "const field = document.getElementById('{field}'); field.value = '{text}'; field.dispatchEvent(new Event('input', {{ bubbles: true }}))"
            );
            page.script(&script).await;
        }
        let answers = &page.document().await["answers"];
        assert_eq!(
            (&answers["sounding_length_m"], &answers["a4_hz"]),
            (&json!(0.3285), &json!(441.5))
        );
        page.open("#/check").await;
        page.headed("Ihre Antworten prüfen").await;
        page.all_german().await;

        page.open("#/set").await;
        page.until("a set is shown", "return !!document.querySelector('main .answer #strings')")
            .await;
        page.headed("Für Ihre Geige empfehlen wir").await;
        page.until("all of it is drawn", "return !!document.querySelector('.sheet')").await;
        page.script("document.querySelector('[name=depth][value=numbers]').click()").await;
        page.open_everything().await;
        page.until("everything is drawn", "return !!document.querySelector('.partials')").await;
        page.all_german().await;
        page.assert_accessible().await;
        page.picture("german-set", 1280, 800, "light").await;
        let comma = "return /\\d,\\d/.test(document.querySelector('.facts').textContent)";
        assert_eq!(page.script(comma).await, true);
        // Forces as packets have them.
        page.choose("unit-force", "kg").await;
        // The page is drawn anew, and folded.
        page.until(
            "the load is in kilograms",
            "for (const folded of document.querySelectorAll('details:not([open])')) folded.open = true;
            return /^\\d+,\\d\\skg/.test(document.querySelector('.load dd p')?.textContent ?? '')",
        )
        .await;
        for (path, heading) in [("#/compare/0", "Saiten nebeneinander"), ("#/sources", "Woher")] {
            page.open(path).await;
            page.headed(heading).await;
            page.until("it is drawn", "return !!document.querySelector('main table')").await;
            page.all_german().await;
        }
        page.choose("language", "en").await;
        page.headed("Where the numbers come from").await;
        assert_eq!(page.script("return document.documentElement.lang").await, "en");
    });
}
