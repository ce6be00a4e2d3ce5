//! Which languages the browser asks for, and how the messages of another language come to the page.

use catalogue::Language;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{RequestInit, Response};

/// The first of the browser's languages that the page speaks.
#[must_use]
pub fn preferred() -> Language {
    let languages = gloo::utils::window().navigator().languages();
    let tags = languages.iter().filter_map(|tag| tag.as_string());
    tags.filter_map(|tag| Language::of(&tag)).next().unwrap_or_default()
}

/// Says in which language the page is written, for those who have it read to them.
pub fn mark(language: Language) {
    if let Some(root) = gloo::utils::document().document_element() {
        // Setting an attribute of the page cannot fail.
        drop(root.set_attribute("lang", language.tag()));
    }
}

/// Fetches the messages of a language. The service worker keeps them, so that they come without a network too.
///
/// # Errors
/// When they cannot be had.
pub async fn fetch(language: Language) -> Result<String, String> {
    let told = |error: JsValue| {
        error.dyn_ref::<js_sys::Error>().map_or_else(String::new, |error| error.message().into())
    };
    // The browser refuses a file that is cut or damaged.
    let whole = RequestInit::new();
    whole.set_integrity(language.integrity());
    let answer = gloo::utils::window().fetch_with_str_and_init(language.file(), &whole);
    let answer = JsFuture::from(answer);
    let answer: Response = answer.await.map_err(told)?.unchecked_into();
    if !answer.ok() {
        return Err(answer.status_text());
    }
    let text = JsFuture::from(answer.text().map_err(told)?).await.map_err(told)?;
    text.as_string().ok_or_else(String::new)
}
