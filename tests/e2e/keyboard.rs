//! A whole fitting by keyboard alone, on a wide screen and on a narrow one: whatever has the focus can be seen, shows that
//! it has it, and lies under nothing else.

use std::time::Duration;

use fantoccini::actions::{InputSource, KeyAction, KeyActions};
use serde_json::{Value, json};

use crate::support::{Page, drive};

const TAB: char = '\u{e004}';
const ENTER: char = '\u{e007}';
const SHIFT: char = '\u{e008}';
const CONTROL: char = '\u{e009}';
const LEFT: char = '\u{e012}';
const RIGHT: char = '\u{e014}';
const DOWN: char = '\u{e015}';

/// What has the focus, and what is wrong with how it is seen.
const LOOK: &str = "for (const _ of [1, 2]) await new Promise(requestAnimationFrame);
    const it = document.activeElement;
    if (!it || it === document.body) return { name: 'the page', faults: ['nothing has the focus'] };
    const labels = [...(it.labels ?? [])];
    const words = it.getAttribute('aria-label') ?? labels[0]?.textContent ?? it.textContent;
    const name = `${it.tagName.toLowerCase()}${it.id ? '#' + it.id : ''} “${words.trim().slice(0, 50)}”`;
    const faults = [];
    const style = getComputedStyle(it);
    if (style.visibility !== 'visible') faults.push('is not visible');
    // A field may lie unseen over its words, which are then what one looks at.
    const seen = Number(style.opacity) === 0 ? (it.closest('label') ?? it) : it;
    const inWindow = (r) => r.width > 0 && r.height > 0 && r.bottom > 0 && r.right > 0 && r.top < innerHeight && r.left < innerWidth;
    const rect = [...seen.getClientRects()].find(inWindow);
    if (!rect) {
      faults.push('lies outside the window');
    } else {
      const x = (Math.max(rect.left, 0) + Math.min(rect.right, innerWidth)) / 2;
      const y = (Math.max(rect.top, 0) + Math.min(rect.bottom, innerHeight)) / 2;
      const top = document.elementFromPoint(x, y);
      const own = top && (seen.contains(top) || top.contains(seen) || labels.some((label) => label.contains(top)));
      if (!own) faults.push(`is covered by ${top?.outerHTML.slice(0, 80)}`);
    }
    // Headings and summaries are where one arrives, not what one presses.
    if (it.getAttribute('tabindex') !== '-1') {
      const outlined = (e) => { const s = getComputedStyle(e); return s.outlineStyle !== 'none' && parseFloat(s.outlineWidth) >= 2 && !/, 0\\)$/.test(s.outlineColor) };
      const shadowed = style.boxShadow !== 'none';
      if (!shadowed && ![it, ...labels, it.parentElement].some(outlined)) faults.push('does not show that it has the focus');
    }
    return { name, faults }";

impl Page {
    /// Presses keys together, as fingers do, and looks at what has the focus then. Returns its name.
    async fn tap(&self, keys: &[char]) -> String {
        let found = self.tap_and_see(keys).await;
        assert_eq!(found["faults"], json!([]), "{}", found["name"]);
        found["name"].as_str().unwrap_or_default().to_owned()
    }

    async fn tap_and_see(&self, keys: &[char]) -> Value {
        self.fingers(keys.iter().copied()).await;
        self.script_async(LOOK, Vec::new()).await.unwrap()
    }

    async fn fingers(&self, keys: impl DoubleEndedIterator<Item = char> + Clone) {
        let down = keys.clone().map(|value| KeyAction::Down { value });
        let up = keys.rev().map(|value| KeyAction::Up { value });
        let hand = KeyActions::new("hand".to_owned());
        let hand = down.chain(up).fold(hand, |hand, action| hand.then(action));
        self.client.perform_actions(hand).await.unwrap();
    }

    /// Types a text where the focus is.
    async fn typed(&self, text: &str) {
        for letter in text.chars() {
            self.fingers(std::iter::once(letter)).await;
        }
    }

    /// Whether what has the focus, `it`, is so.
    async fn focus_is(&self, so: &str) -> bool {
        self.script(&format!("const it = document.activeElement; return Boolean({so})")).await
            == Value::Bool(true)
    }

    /// Goes on with these keys until what has the focus is so.
    async fn go_to(&self, keys: &[char], so: &str) -> String {
        let mut names = Vec::new();
        for _ in 0..120 {
            names.push(self.tap(keys).await);
            if self.focus_is(so).await {
                return names.pop().unwrap_or_default();
            }
        }
        panic!("{so} was not met on the way {names:#?}");
    }

    async fn tab_to(&self, so: &str) -> String {
        self.go_to(&[TAB], so).await
    }

    async fn go_on_from_screen(&self) {
        self.tab_to("it.matches('button[type=submit]')").await;
        self.tap(&[ENTER]).await;
    }
}

async fn a_fitting(page: &Page) {
    // The way past the head of the page is the first stop, and is seen.
    let skip = page.tap(&[TAB]).await;
    assert!(skip.contains("Skip to the page"), "{skip}");
    page.tab_to("it.matches('a.door') && it.textContent.startsWith('Answer a few')").await;
    page.tap(&[ENTER]).await;
    page.at("The instrument").await;
    page.tab_to("it.name === 'instrument'").await;
    page.go_to(&[DOWN], "it.value === 'viola' && it.checked").await;
    page.tab_to("it.name === 'size'").await;
    page.go_to(&[DOWN], "it.value === '15 in' && it.checked").await;
    page.go_on_from_screen().await;

    page.at("Its strings now").await;
    page.tab_to("it.name === 'now'").await;
    page.go_to(&[DOWN], "it.value === 'synthetic' && it.checked").await;
    let here = page.tab_to("it.id === 'age_months'").await;
    page.typed("old").await;
    // Back and forth is the same way.
    page.tap(&[SHIFT, TAB]).await;
    assert_eq!(page.tap(&[TAB]).await, here);
    // A fault stops it, and the way from its summary leads to the field.
    page.tap(&[ENTER]).await;
    page.until("the faults have the focus", "return document.activeElement.id === 'faults'").await;
    page.tab_to("it.matches('#faults a')").await;
    page.tap(&[ENTER]).await;
    assert!(page.focus_is("it.id === 'age_months'").await);
    page.tap(&[CONTROL, 'a']).await;
    page.typed("8").await;
    page.tap(&[ENTER]).await;

    page.at("Complaints").await;
    page.tab_to("it.type === 'checkbox'").await;
    page.tap(&[' ']).await;
    page.tab_to("it.type === 'range'").await;
    page.tap(&[RIGHT]).await;
    page.tap(&[RIGHT]).await;
    page.go_on_from_screen().await;
    for heading in ["Music and player", "Tuning it", "Where it is kept"] {
        page.at(heading).await;
        page.tab_to("it.type === 'radio'").await;
        page.tap(&[' ']).await;
        page.go_on_from_screen().await;
    }
    page.at("The next concert").await;
    page.tab_to("it.id === 'concert_days'").await;
    page.typed("30").await;
    page.go_on_from_screen().await;
    page.at("Budget and skin").await;
    page.go_on_from_screen().await;

    page.at("Check your answers").await;
    page.tab_to("it.matches('button') && it.textContent === 'Find strings'").await;
    page.tap(&[ENTER]).await;
    page.until("the set is drawn", "return !!document.querySelector('.sheet')").await;
    let document = page.document().await;
    let answers = &document["answers"];
    let said = json!({
        "instrument": "viola", "size": "15 in", "now": "synthetic", "age_months": 8.0,
        "bothers": ["too-bright"],
    });
    for (name, value) in said.as_object().unwrap() {
        assert_eq!(answers[name], *value, "{name}");
    }
    assert_eq!(answers["wishes"]["colour"], 1.0);
    // The days are kept as the date that they mean.
    let in_30_days = "const day = new Date(); day.setDate(day.getDate() + 30);
        return [day.getFullYear(), day.getMonth() + 1, day.getDate()].map((part) => String(part).padStart(2, '0')).join('-')";
    let date = json!({ "text": page.script(in_30_days).await, "unit": "date" });
    assert_eq!(document["typed"]["concert_days"], date);

    // Along the balance the set follows, and the focus stays.
    page.tab_to("it.matches('button') && /Print/.test(it.textContent)").await;
    page.tab_to("it.matches('.along input[type=range]')").await;
    page.tap(&[LEFT]).await;
    page.tap(&[LEFT]).await;
    page.tap(&[LEFT]).await;
    assert_eq!(page.document().await["answers"]["wishes"]["colour"], -0.5);
    assert!(page.focus_is("it.matches('.along input[type=range]')").await);
    // Down to the bench.
    page.tab_to("it.matches('.depths input')").await;
    page.go_to(&[DOWN], "it.value === 'bench' && it.checked").await;
    page.until("all of it is drawn", "return !!document.querySelector('.sheet')").await;

    // On to the end, unfolding what is folded on the way; what is wrong is told together.
    let (mut stops, mut wrong) = (0, Vec::new());
    for _ in 0..600 {
        let found = page.tap_and_see(&[TAB]).await;
        if found["name"] == "the page" || page.focus_is("it.matches('.skip')").await {
            break;
        }
        stops += 1;
        if found["faults"] != json!([]) {
            wrong.push(found);
        }
        // One string stands for all of them, or the walk would take minutes.
        if page.focus_is("it.matches('summary') && !it.parentElement.open && !it.closest('.string ~ .string')").await {
            let opened = page.tap_and_see(&[ENTER]).await;
            if opened["faults"] != json!([]) {
                wrong.push(opened);
            }
            tokio::time::sleep(Duration::from_millis(50)).await;
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
    assert!(
        page.script("return !!document.querySelector('.case .formula')").await == true,
        "no bench"
    );
    assert!(stops > 80, "only {stops} stops: the walk ended early");
}

#[test]
fn a_fitting_by_keyboard_alone_on_a_wide_screen() {
    drive(async |page| {
        page.appear(1280, 900, "light").await;
        a_fitting(page).await;
    });
}

#[test]
fn a_fitting_by_keyboard_alone_on_a_narrow_screen() {
    drive(async |page| {
        page.appear(360, 740, "dark").await;
        a_fitting(page).await;
    });
}
