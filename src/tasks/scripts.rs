//! Fills in what the page's own scripts cannot know before everything else is built: names, hashes and messages.
//!
//! `start.js` takes the place of Trunk's start script, which stands inside the page, where the page's policy forbids
//! it. `sw.js` is to keep every file, and to know a file that is cut or damaged by its hash.

use std::collections::BTreeMap;
use std::fs;
use std::io;
use std::path::Path;

use base64::Engine;
use base64::prelude::BASE64_STANDARD;
use catalogue::{Catalogue, Language};
use serde::Serialize;
use sha2::{Digest, Sha256};

use crate::finish::{hash, list};

/// The messages of the start script.
const SAID: [&str; 3] = ["start-missing", "start-broke", "start-again"];

/// What stands in a message of the start script for the name of a file.
const FILE: &str = "FILE";

/// Where the page names its start script until that has its name.
const START: &str = "./start.js";

/// The page with our start script in place of Trunk's, and with its messages.
pub(crate) fn with_start_script(page: &str) -> io::Result<String> {
    let script =
        inline_script(page).ok_or_else(|| io::Error::other("Trunk wrote no start script"))?;
    let mut page = format!(
        "{}<script type=\"module\" src=\"{START}\"></script>{}",
        script.before, script.after
    );
    if inline_script(&page).is_some() {
        return Err(io::Error::other("the page's policy forbids a second script inside it"));
    }
    for language in Language::ALL {
        let messages = Catalogue::of(language.messages());
        for name in ["start-stalled", "start-no-script"] {
            let place = format!("{{{} {name}}}", language.tag());
            page = page.replace(&place, messages.pattern(name).unwrap_or_default());
        }
    }
    Ok(page)
}

/// Fills in the start script and the service worker of the page in `folder`, where everything else is finished.
///
/// # Errors
/// When a file cannot be read or written, or does not look as expected.
pub fn fill(folder: &Path) -> io::Result<()> {
    let mut names = Vec::new();
    list(folder, "", &mut names)?;
    names.sort();
    let contents: Vec<_> =
        names.iter().map(|name| fs::read(folder.join(name))).collect::<io::Result<_>>()?;
    let build =
        hash(names.iter().map(|name| name.as_bytes()).chain(contents.iter().map(Vec::as_slice)));

    let start = format!("start-{build}.js");
    let glue = |end: &str| {
        let name = names.iter().find(|name| name.starts_with("ropewalk-") && name.ends_with(end));
        name.map(|name| format!("./{name}"))
            .ok_or_else(|| io::Error::other("the page has no module"))
    };
    let mut script = fs::read_to_string(folder.join(START))?;
    put(&mut script, "BUILD", &build)?;
    put(&mut script, "GLUE", &glue(".js")?)?;
    put(&mut script, "MODULE", &glue(".wasm")?)?;
    put(&mut script, "WORDS", &said())?;
    fs::write(folder.join(&start), without_remarks(&script))?;
    fs::remove_file(folder.join(START))?;
    let page_file = folder.join("index.html");
    let page = fs::read_to_string(&page_file)?.replace(START, &format!("./{start}"));
    fs::write(page_file, page)?;

    let mut files = BTreeMap::new();
    names.push(start);
    names.retain(|name| name != "sw.js" && name != "start.js");
    for name in names {
        let integrity = integrity(&fs::read(folder.join(&name))?);
        // The page itself is asked for by its folder; some hosts answer its file name with a detour, which may not be kept.
        files.insert(if name == "index.html" { "./".to_owned() } else { name }, integrity);
    }
    let service_worker = folder.join("sw.js");
    let mut script = fs::read_to_string(&service_worker)?;
    put(&mut script, "BUILD", &build)?;
    put(&mut script, "FILES", &files)?;
    fs::write(service_worker, script)
}

/// The hash by which a browser knows a file.
#[must_use]
pub fn integrity(bytes: &[u8]) -> String {
    format!("sha256-{}", BASE64_STANDARD.encode(Sha256::digest(bytes)))
}

/// The messages of the start script in every language.
fn said() -> BTreeMap<&'static str, BTreeMap<&'static str, String>> {
    let of = |language: Language| {
        let messages = Catalogue::of(language.messages());
        let said = |name| {
            let pattern = messages.pattern(name).unwrap_or_default();
            (name, catalogue::fill(pattern, &[("file", FILE.into())]))
        };
        (language.tag(), SAID.map(said).into())
    };
    Language::ALL.map(of).into()
}

/// Gives a constant at the head of a script its value.
fn put(script: &mut String, name: &str, value: &impl Serialize) -> io::Result<()> {
    for empty in ["\"\"", "{}"] {
        let place = format!("const {name} = {empty};");
        if script.contains(&place) {
            let value = serde_json::to_string(value)?;
            *script = script.replace(&place, &format!("const {name} = {value};"));
            return Ok(());
        }
    }
    Err(io::Error::other(format!("a script in www has no place for {name}")))
}

/// A script without the remarks and indents that are written for people; it has no text of several lines.
pub(crate) fn without_remarks(script: &str) -> String {
    let mut kept = String::new();
    let mut remark = false;
    for line in script.lines().map(str::trim_start) {
        remark |= line.starts_with("/**");
        if !remark && !line.is_empty() && !line.starts_with("//") {
            kept += line;
            kept.push('\n');
        }
        remark &= !line.ends_with("*/");
    }
    kept
}

/// A script whose text stands in the page.
struct Script<'a> {
    before: &'a str,
    after: &'a str,
}

fn inline_script(page: &str) -> Option<Script<'_>> {
    let mut from = 0;
    loop {
        let start = from + page[from..].find("<script")?;
        let body = start + page[start..].find('>')? + 1;
        let end = body + page[body..].find("</script>")?;
        if !page[start..body].contains("src=") {
            return Some(Script {
                before: &page[..start],
                after: &page[end + "</script>".len()..],
            });
        }
        from = end;
    }
}
