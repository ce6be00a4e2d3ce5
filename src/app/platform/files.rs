//! Texts to and from files that the person names.

use js_sys::{Array, Uint8Array};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, BlobPropertyBag, Event, File, HtmlAnchorElement, HtmlInputElement, Url};

use crate::words::say;

/// The largest file that is opened. A ledger of thousands of fittings is a few megabytes.
const SIZE_MAX: f64 = 32.0 * 1024.0 * 1024.0;

/// How long a download may take to begin before its source is let go.
const RELEASE_MS: u32 = 60_000;

/// A file that was opened.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Opened {
    /// Its name, without its folder, which a browser does not tell.
    pub name: String,
    /// What is in it.
    pub text: String,
}

/// Hands a text to the person as a file.
///
/// # Errors
/// When the browser refuses, with its reason in words.
pub fn save(name: &str, media_type: &str, text: &str) -> Result<(), String> {
    offer(name, media_type, &text.into()).ok_or_else(|| say!("file-no-download", name = name))
}

/// Hands bytes to the person as a file.
///
/// # Errors
/// When the browser refuses, with its reason in words.
pub fn save_bytes(name: &str, media_type: &str, bytes: &[u8]) -> Result<(), String> {
    offer(name, media_type, &Uint8Array::from(bytes).into())
        .ok_or_else(|| say!("file-no-download", name = name))
}

fn offer(name: &str, media_type: &str, content: &JsValue) -> Option<()> {
    let kind = BlobPropertyBag::new();
    kind.set_type(media_type);
    // A part may be a text or an array of bytes; the browser tells them apart.
    let parts = Array::of1(content);
    let blob = Blob::new_with_str_sequence_and_options(&parts, &kind).ok()?;
    let url = Url::create_object_url_with_blob(&blob).ok()?;
    let link: HtmlAnchorElement =
        gloo::utils::document().create_element("a").ok()?.dyn_into().ok()?;
    link.set_href(&url);
    link.set_download(name);
    link.click();
    // The download reads the text after this returns, so it is let go of later.
    super::clock::after(RELEASE_MS, move || drop(Url::revoke_object_url(&url)));
    Some(())
}

/// Opens the file that was chosen in the `<input type="file">` this event comes from; none if the person chose none.
///
/// The field is emptied, so that choosing the same file again is an event again.
///
/// # Errors
/// When the file cannot be read as text, with the reason in words.
pub async fn open(event: Event) -> Result<Option<Opened>, String> {
    let field = event.target().and_then(|target| target.dyn_into::<HtmlInputElement>().ok());
    let Some(field) = field else { return Ok(None) };
    let file = field.files().and_then(|files| files.get(0));
    field.set_value("");
    match file {
        Some(file) => read(&file).await.map(Some),
        None => Ok(None),
    }
}

async fn read(file: &File) -> Result<Opened, String> {
    let name = file.name();
    if file.size() > SIZE_MAX {
        return Err(say!(
            "file-too-large",
            name = name,
            size = format!("{:.0}", file.size() / 1_048_576.0),
            most = format!("{:.0}", SIZE_MAX / 1_048_576.0),
        ));
    }
    let buffer = JsFuture::from(file.array_buffer())
        .await
        .map_err(|_| say!("file-unreadable", name = &name))?;
    // The browser's own reading as text would put a mark in place of what is no text, and lose it.
    let text = String::from_utf8(Uint8Array::new(&buffer).to_vec())
        .map_err(|_| say!("file-no-text", name = &name))?;
    let text = text.strip_prefix('\u{feff}').map(str::to_owned).unwrap_or(text);
    Ok(Opened { name, text })
}
