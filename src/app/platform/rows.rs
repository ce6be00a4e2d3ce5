//! The rows of long tables and lists: which of them are seen.

use std::cell::RefCell;
use std::rc::Rc;

use wasm_bindgen::JsCast;
use web_sys::Element;
use yew::NodeRef;

use super::view;
use crate::letters;

/// As many rows as are laid out in a letter's time, and more than a screen shows.
pub const PORTION: usize = 50;

/// Rows that are still to be shown, a portion a frame.
#[derive(Clone, Debug, Default)]
pub struct Coming(Rc<RefCell<Vec<Element>>>);

impl Coming {
    /// Puts these in the place of those that had not come yet.
    fn replace(&self, rows: Vec<Element>) {
        if self.0.replace(rows).is_empty() {
            self.come();
        }
    }

    fn come(&self) {
        if self.0.borrow().is_empty() {
            return;
        }
        let coming = self.clone();
        view::once_seen(0, move || {
            let portion = {
                let mut rows = coming.0.borrow_mut();
                let last = rows.len().min(PORTION);
                rows.drain(..last).collect::<Vec<_>>()
            };
            for row in &portion {
                hide(Some(row), false);
            }
            coming.come();
        });
    }
}

/// Hides the rows of the tables and lists inside an element that lack one of these words, and headings over which no row
/// is left. Tells how many rows are left of how many. Of those that are left, so many are shown at once.
///
/// It reads and marks what stands in the page: to draw a thousand rows anew would take longer than a letter's time, and
/// so would laying them all out at once.
pub fn leave_with(words: &str, inside: &NodeRef, coming: &Coming, at_once: usize) -> (u32, u32) {
    let words: Vec<String> = words.split_whitespace().map(small).collect();
    let (mut left, mut all) = (0, 0);
    let mut rest = Vec::new();
    let Some(inside) = inside.cast::<Element>() else { return (left, all) };
    let Ok(bodies) = inside.query_selector_all("tbody, dl") else { return (left, all) };
    for body in (0..bodies.length()).filter_map(|i| bodies.get(i)?.dyn_into::<Element>().ok()) {
        let mut heading: Option<Element> = None;
        let mut next = body.first_element_child();
        let mut under = 0;
        while let Some(row) = next {
            next = row.next_element_sibling();
            if row.class_name() == "group" {
                hide(heading.replace(row).as_ref(), under == 0);
                under = 0;
                continue;
            }
            let text = small(&row.text_content().unwrap_or_default());
            let stays = words.iter().all(|word| text.contains(word.as_str()));
            let waits = stays && left as usize >= at_once;
            hide(Some(&row), !stays || waits);
            all += 1;
            left += u32::from(stays);
            under += u32::from(stays);
            if waits {
                rest.push(row);
            }
        }
        hide(heading.as_ref(), under == 0);
    }
    coming.replace(rest);
    (left, all)
}

fn small(text: &str) -> String {
    text.chars().map(letters::small).collect()
}

fn hide(row: Option<&Element>, hidden: bool) {
    if let Some(row) = row {
        // Fails for a name that is none, and this is one.
        drop(row.toggle_attribute_with_force("hidden", hidden));
    }
}
