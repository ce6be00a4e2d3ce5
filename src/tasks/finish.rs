//! The last step of a build, run by Trunk when it has written everything else.
//!
//! Trunk leaves four things undone that the page needs:
//! - its start script stands inside the page, which the page's policy forbids: it moves to a file;
//! - its style sheets become one file, which weighs a seventh less and is asked for once;
//! - the worker's files bear no hash in their names, so that an old one could meet a new page: they get one;
//! - the service worker does not know the files it is to keep: they are listed in it.
//!
//! And it publishes the JSON Schema of the door beside the page, and the messages of every language; the page itself
//! carries the English ones of its first screens.

use std::fs;
use std::hash::{DefaultHasher, Hash, Hasher};
use std::io;
use std::path::Path;

use catalogue::Language;

/// The JSON Schema of the door, as text.
///
/// # Errors
/// None in practice: a schema holds only what JSON can.
pub fn schema() -> io::Result<String> {
    serde_json::to_string_pretty(&protocol::schema()).map_err(io::Error::other)
}

/// Finishes the page in `folder`.
///
/// # Errors
/// When a file cannot be read or written, or does not look as expected.
pub fn finish(folder: &Path) -> io::Result<()> {
    fs::write(folder.join("door.schema.json"), schema()?)?;
    for language in Language::ALL {
        fs::write(folder.join(language.file()), language.messages())?;
    }
    let page_file = folder.join("index.html");
    let mut page = with_one_style_sheet(&fs::read_to_string(&page_file)?, folder)?;

    while let Some(script) = inline_script(&page) {
        let name = format!("start-{}.js", hash(&[script.body.as_bytes()]));
        fs::write(folder.join(&name), script.body)?;
        page = format!(
            "{}<script type=\"module\" src=\"./{name}\"></script>{}",
            script.before, script.after
        );
    }

    // The loader names the other two, so it is read and renamed last.
    let worker = ["worker_bg.wasm", "worker.js", "worker_loader.js"];
    let mut texts = vec![page];
    let id = hash(
        &worker.iter().map(|name| fs::read(folder.join(name))).collect::<io::Result<Vec<_>>>()?,
    );
    for name in &worker[1..] {
        texts.push(fs::read_to_string(folder.join(name))?);
    }
    for name in worker {
        let (stem, extension) = name.rsplit_once('.').unwrap_or((name, ""));
        let hashed = format!("{stem}-{id}.{extension}");
        fs::rename(folder.join(name), folder.join(&hashed))?;
        for text in &mut texts {
            // With what stands round it, so that no longer name is taken for it; a page that lost its blanks has no quotes.
            for (before, after) in
                [("\"", "\""), ("'", "'"), ("\"./", "\""), ("'./", "'"), ("=./", " "), ("=./", ">")]
            {
                *text = text.replace(
                    &format!("{before}{name}{after}"),
                    &format!("{before}{hashed}{after}"),
                );
            }
        }
    }
    for (text, name) in texts.iter().zip(["worker_loader", "worker_bg", "worker"]) {
        if !text.contains(&format!("{name}-{id}.")) {
            return Err(io::Error::other(format!(
                "nothing names {name}: the page, or Trunk, has changed its words"
            )));
        }
    }
    fs::write(&page_file, &texts[0])?;
    fs::write(folder.join(format!("worker-{id}.js")), &texts[1])?;
    fs::write(folder.join(format!("worker_loader-{id}.js")), &texts[2])?;

    let mut files = Vec::new();
    list(folder, "", &mut files)?;
    for glue in files.iter().filter(|name| name.starts_with("ropewalk-") && name.ends_with(".js")) {
        let glue = folder.join(glue);
        let text = fs::read_to_string(&glue)?;
        fs::write(&glue, without_remarks(&text))?;
    }

    let service_worker = folder.join("sw.js");
    let text = fs::read_to_string(&service_worker)?;
    let mut names = Vec::new();
    list(folder, "", &mut names)?;
    names.retain(|name| name != "sw.js");
    names.sort();
    let mut contents = vec![text.clone().into_bytes()];
    for name in &names {
        contents.push(name.clone().into_bytes());
        contents.push(fs::read(folder.join(name))?);
    }
    // The page itself is asked for by its folder; some hosts answer its file name with a detour, which may not be kept.
    let listed: Vec<_> =
        names.iter().map(|name| if name == "index.html" { "./" } else { name.as_str() }).collect();
    let build = hash(&contents);
    let filled =
        text.replace("const BUILD = \"\";", &format!("const BUILD = \"{build}\";")).replace(
            "const FILES = [];",
            &format!("const FILES = {};", serde_json::to_string(&listed)?),
        );
    if !filled.contains(&build) || filled.contains("const FILES = [];") {
        return Err(io::Error::other("www/sw.js has no place for the build and the list of files"));
    }
    fs::write(service_worker, filled)
}

/// The page with all its style sheets in one file, in their order, where the first of them was asked for.
fn with_one_style_sheet(page: &str, folder: &Path) -> io::Result<String> {
    let (mut joined, mut styles, mut first) = (String::new(), String::new(), None);
    for piece in page.split_inclusive('>') {
        let tag = piece.trim_start();
        let name = tag.split(['=', '"', ' ', '>']).find(|word| word.ends_with(".css"));
        match name.filter(|_| tag.starts_with("<link") && tag.contains("stylesheet")) {
            Some(name) => {
                first.get_or_insert(joined.len());
                styles += &fs::read_to_string(folder.join(name))?;
                fs::remove_file(folder.join(name))?;
            }
            None => joined += piece,
        }
    }
    let first = first.ok_or_else(|| io::Error::other("the page asks for no style sheet"))?;
    let name = format!("style-{}.css", hash(&[&styles]));
    fs::write(folder.join(&name), styles)?;
    joined.insert_str(first, &format!("<link href=./{name} rel=stylesheet>"));
    Ok(joined)
}

/// A script without the remarks and indents that wasm-bindgen writes for people; it writes no text of several lines.
fn without_remarks(script: &str) -> String {
    let mut kept = String::new();
    let mut remark = false;
    for line in script.lines().map(str::trim_start) {
        remark |= line.starts_with("/**");
        if !remark && !line.is_empty() {
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
    body: &'a str,
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
                body: &page[body..end],
                after: &page[end + "</script>".len()..],
            });
        }
        from = end;
    }
}

/// Sixteen characters that change when any of the parts does.
fn hash(parts: &[impl AsRef<[u8]>]) -> String {
    // The standard library's hasher starts from fixed keys: the same files give the same name on every machine
    // with the pinned compiler, and nobody gains by forging a name.
    let mut hasher = DefaultHasher::new();
    for part in parts {
        part.as_ref().hash(&mut hasher);
    }
    format!("{:016x}", hasher.finish())
}

/// The files in a folder and the folders in it, by their paths from the first.
fn list(folder: &Path, prefix: &str, names: &mut Vec<String>) -> io::Result<()> {
    for entry in fs::read_dir(folder)? {
        let entry = entry?;
        let name = format!("{prefix}{}", entry.file_name().to_string_lossy());
        if entry.file_type()?.is_dir() {
            list(&entry.path(), &format!("{name}/"), names)?;
        } else {
            names.push(name);
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::place;

    const PAGE: &str = "<meta name=\"worker\" content=\"./worker_loader.js\"><script src=\"./a.js\"></script>\
        <link href=./one.css rel=stylesheet>\n<link rel=\"stylesheet\" href=\"./two.css\"><script type=\"module\">start()</script><p>end";

    fn built(name: &str, icon: &str) -> std::path::PathBuf {
        let folder = place::target().join("tmp").join(name);
        drop(fs::remove_dir_all(&folder));
        fs::create_dir_all(folder.join("icons")).unwrap();
        for (file, text) in [
            ("index.html", PAGE),
            ("worker.js", "new URL('worker_bg.wasm', import.meta.url)"),
            ("worker_bg.wasm", "wasm"),
            ("worker_loader.js", "import init from './worker.js'"),
            ("sw.js", "const BUILD = \"\";\nconst FILES = [];\n"),
            ("icons/icon.svg", icon),
            ("one.css", "a{b:c}"),
            ("two.css", "d{e:f}"),
        ] {
            fs::write(folder.join(file), text).unwrap();
        }
        finish(&folder).unwrap();
        folder
    }

    #[test]
    fn no_script_stays_in_the_page_its_styles_are_one_and_every_file_is_listed() {
        let folder = built("finish", "<svg/>");
        let page = fs::read_to_string(folder.join("index.html")).unwrap();
        assert!(inline_script(&page).is_none() && page.ends_with("<p>end"), "{page}");
        let service_worker = fs::read_to_string(folder.join("sw.js")).unwrap();
        let list = service_worker.split_once("FILES = ").unwrap().1.trim_end_matches(";\n");
        let files: Vec<String> = serde_json::from_str(list).unwrap();
        assert_eq!(files.len(), 10, "{list}");
        for file in &files {
            assert!(folder.join(file).exists(), "{file}");
        }
        let style = files.iter().find(|file| file.ends_with(".css")).unwrap();
        assert_eq!(fs::read_to_string(folder.join(style)).unwrap(), "a{b:c}d{e:f}");
        assert_eq!(page.matches("stylesheet").count(), 1, "{page}");
        assert!(page.contains(style.as_str()) && !page.contains("two.css"), "{page}");
        let loader = files.iter().find(|file| file.starts_with("worker_loader-")).unwrap();
        assert!(page.contains(loader));
        let names_another = |file: &str, extension: &str| {
            let text = fs::read_to_string(folder.join(file)).unwrap();
            files
                .iter()
                .find(|other| other.ends_with(extension) && text.contains(other.as_str()))
                .cloned()
                .unwrap()
        };
        names_another(&names_another(loader, ".js"), ".wasm");
    }

    #[test]
    fn remarks_go_and_code_stays() {
        let script = "/**\n * Asks.\n */\nfunction a() {\n    return 1; // one\n}\n\n/** B. */\nlet b = '/*';\n";
        assert_eq!(without_remarks(script), "function a() {\nreturn 1; // one\n}\nlet b = '/*';\n");
    }

    #[test]
    fn the_build_changes_with_any_file_and_only_then() {
        let build = |icon| fs::read_to_string(built("finish-twice", icon).join("sw.js")).unwrap();
        let first = build("<svg/>");
        assert_eq!(first, build("<svg/>"));
        assert_ne!(first, build("<svg></svg>"));
    }
}
