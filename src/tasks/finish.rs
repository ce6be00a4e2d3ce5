//! The last step of a build, run by Trunk when it has written everything else.
//!
//! Trunk leaves four things undone that the page needs:
//! - its start script stands inside the page, which the page's policy forbids: a file of our own takes its place;
//! - its style sheets become one file, which weighs a seventh less and is asked for once;
//! - the worker's files bear no hash in their names, so that an old one could meet a new page: they get one;
//! - the service worker does not know the files it is to keep: they are listed in it (see [`scripts`]).
//!
//! And it publishes the JSON Schema of the door beside the page, and the messages of every language; the page itself
//! carries the English ones of its first screens.

use std::fs;
use std::hash::{DefaultHasher, Hash, Hasher};
use std::io;
use std::path::Path;

use catalogue::Language;

use crate::scripts;

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
    let page = with_one_style_sheet(&fs::read_to_string(&page_file)?, folder)?;
    let page = scripts::with_start_script(&page)?;

    // The loader names the other two, so it is read and renamed last.
    let worker = ["worker_bg.wasm", "worker.js", "worker_loader.js"];
    let mut texts = vec![page];
    let id = hash(
        worker.iter().map(|name| fs::read(folder.join(name))).collect::<io::Result<Vec<_>>>()?,
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
        fs::write(&glue, scripts::without_remarks(&text))?;
    }
    scripts::fill(folder)
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
    let name = format!("style-{}.css", hash([&styles]));
    let integrity = scripts::integrity(styles.as_bytes());
    fs::write(folder.join(&name), styles)?;
    let link = format!("<link href=./{name} rel=stylesheet integrity=\"{integrity}\">");
    joined.insert_str(first, &link);
    Ok(joined)
}

/// Sixteen characters that change when any of the parts does.
pub(crate) fn hash(parts: impl IntoIterator<Item = impl AsRef<[u8]>>) -> String {
    // The standard library's hasher starts from fixed keys: the same files give the same name on every machine
    // with the pinned compiler, and nobody gains by forging a name.
    let mut hasher = DefaultHasher::new();
    for part in parts {
        part.as_ref().hash(&mut hasher);
    }
    format!("{:016x}", hasher.finish())
}

/// The files in a folder and the folders in it, by their paths from the first.
pub(crate) fn list(folder: &Path, prefix: &str, names: &mut Vec<String>) -> io::Result<()> {
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
    use std::collections::BTreeMap;

    use super::*;
    use crate::place;

    const PAGE: &str = "<meta name=\"worker\" content=\"./worker_loader.js\"><script src=\"./a.js\"></script>\
        <link href=./one.css rel=stylesheet>\n<link rel=\"stylesheet\" href=\"./two.css\">\
        <script type=\"module\">start()</script><p>{de start-stalled}<p>end";

    fn built(name: &str, icon: &str) -> std::path::PathBuf {
        let folder = place::target().join("tmp").join(name);
        drop(fs::remove_dir_all(&folder));
        fs::create_dir_all(folder.join("icons")).unwrap();
        for (file, text) in [
            ("index.html", PAGE),
            ("worker.js", "new URL('worker_bg.wasm', import.meta.url)"),
            ("worker_bg.wasm", "wasm"),
            ("worker_loader.js", "import init from './worker.js'"),
            ("ropewalk-1.js", "/** Asks. */\nexport { ask }"),
            ("ropewalk-1_bg.wasm", "wasm"),
            ("icons/icon.svg", icon),
            ("one.css", "a{b:c}"),
            ("two.css", "d{e:f}"),
        ] {
            fs::write(folder.join(file), text).unwrap();
        }
        for script in ["start.js", "sw.js"] {
            fs::copy(place::root().join("www").join(script), folder.join(script)).unwrap();
        }
        finish(&folder).unwrap();
        folder
    }

    fn constant<T: serde::de::DeserializeOwned>(script: &str, name: &str) -> T {
        let (_, value) = script.split_once(&format!("const {name} = ")).unwrap();
        serde_json::from_str(value.split_once(";\n").unwrap().0).unwrap()
    }

    #[test]
    fn no_script_stays_in_the_page_its_styles_are_one_and_every_file_is_listed_with_its_hash() {
        let folder = built("finish", "<svg/>");
        let read = |name: &str| fs::read_to_string(folder.join(name)).unwrap();
        let page = read("index.html");
        assert!(!page.contains("start()") && page.ends_with("<p>end"), "{page}");
        let files: BTreeMap<String, String> = constant(&read("sw.js"), "FILES");
        assert_eq!(files.len(), 12, "{files:?}");
        for (file, hash) in &files {
            let name = if file == "./" { "index.html" } else { file };
            assert_eq!(*hash, scripts::integrity(read(name).as_bytes()), "{file}");
        }
        let find = |start: &str, end: &str| {
            files.keys().find(|file| file.starts_with(start) && file.ends_with(end)).unwrap()
        };
        let style = find("style-", ".css");
        assert_eq!(read(style), "a{b:c}d{e:f}");
        assert_eq!(page.matches("stylesheet").count(), 1, "{page}");
        assert!(page.contains(style.as_str()) && !page.contains("two.css"), "{page}");
        assert!(page.contains(&files[style]), "the browser can tell a damaged style: {page}");
        let loader = find("worker_loader-", ".js");
        assert!(page.contains(loader.as_str()));
        let names_another = |file: &str, extension: &str| {
            let text = read(file);
            let mut others = files.keys().filter(|other| other.ends_with(extension));
            others.find(|other| text.contains(other.as_str())).unwrap()
        };
        names_another(names_another(loader, ".js"), ".wasm");
    }

    #[test]
    fn the_start_script_knows_the_module_the_build_and_what_to_say() {
        let folder = built("finish-start", "<svg/>");
        let read = |name: &str| fs::read_to_string(folder.join(name)).unwrap();
        let build: String = constant(&read("sw.js"), "BUILD");
        let name = format!("start-{build}.js");
        let script = read(&name);
        assert_eq!(constant::<String>(&script, "BUILD"), build);
        assert_eq!(constant::<String>(&script, "GLUE"), "./ropewalk-1.js");
        assert_eq!(constant::<String>(&script, "MODULE"), "./ropewalk-1_bg.wasm");
        let words: BTreeMap<String, BTreeMap<String, String>> = constant(&script, "WORDS");
        assert_eq!(words.keys().collect::<Vec<_>>(), ["de", "en"]);
        for said in words.values() {
            assert!(said["start-missing"].contains("FILE"), "{said:?}");
            assert!(said.values().all(|text| !text.is_empty()), "{said:?}");
            // The script asks for no message that it does not have.
            let asked = script.split("tell(\"").skip(1).map(|rest| rest.split('"').next().unwrap());
            assert!(
                asked.clone().count() >= 2 && asked.clone().all(|name| said.contains_key(name))
            );
        }
        let page = read("index.html");
        assert!(page.contains(&format!("<script type=\"module\" src=\"./{name}\">")), "{page}");
        assert!(page.contains("<p>Ropewalk ist noch nicht gestartet."), "{page}");
        assert!(!folder.join("start.js").exists());
    }

    #[test]
    fn remarks_go_and_code_stays() {
        let script = "/**\n * Asks.\n */\nfunction a() {\n    // No.\n    return 1; // one\n}\n\n/** B. */\nlet b = '/*';\n";
        assert_eq!(
            scripts::without_remarks(script),
            "function a() {\nreturn 1; // one\n}\nlet b = '/*';\n"
        );
    }

    #[test]
    fn the_build_changes_with_any_file_and_only_then() {
        let build = |icon| fs::read_to_string(built("finish-twice", icon).join("sw.js")).unwrap();
        let first = build("<svg/>");
        assert_eq!(first, build("<svg/>"));
        assert_ne!(first, build("<svg></svg>"));
    }
}
