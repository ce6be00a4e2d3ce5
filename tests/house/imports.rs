//! Do imports go one way? No circles between files, and no module that uses one further up its package's ladder.
//!
//! The ladder of a package is the order in which its `lib.rs` declares modules: blank lines separate the rungs, and
//! a module uses only what stands on rungs before its own. A module and what it is made of count as one.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

use syn::visit::{self, Visit};

use crate::{modules, text};

/// Where a module stands in its package, from the root.
type ModulePath = Vec<String>;
/// The files of a package with the modules that each of them uses.
type Imports = BTreeMap<ModulePath, BTreeSet<ModulePath>>;

/// The packages without circles, and those with a ladder.
const WITHOUT_CIRCLES: [&str; 3] = ["src/app", "src/protocol", "src/strings"];
const WITH_LADDER: [&str; 2] = ["src/strings", "src/protocol"];

/// The paths that a file names, from `crate`, `self` or `super` on.
#[derive(Default)]
struct Named(Vec<Vec<String>>);

impl Named {
    fn tree(&mut self, before: &[String], tree: &syn::UseTree) {
        let with = |ident: &syn::Ident| [before, &[ident.to_string()]].concat();
        match tree {
            syn::UseTree::Path(path) => self.tree(&with(&path.ident), &path.tree),
            syn::UseTree::Name(name) => self.0.push(with(&name.ident)),
            syn::UseTree::Rename(rename) => self.0.push(with(&rename.ident)),
            syn::UseTree::Glob(_) => self.0.push(before.to_vec()),
            syn::UseTree::Group(group) => {
                group.items.iter().for_each(|tree| self.tree(before, tree));
            }
        }
    }
}

impl<'a> Visit<'a> for Named {
    fn visit_item_mod(&mut self, item: &'a syn::ItemMod) {
        // Tests inside a file may use what they like.
        if !item.attrs.iter().any(|attribute| attribute.path().is_ident("cfg")) {
            visit::visit_item_mod(self, item);
        }
    }

    fn visit_item_use(&mut self, item: &'a syn::ItemUse) {
        self.tree(&[], &item.tree);
    }

    fn visit_path(&mut self, path: &'a syn::Path) {
        self.0.push(path.segments.iter().map(|segment| segment.ident.to_string()).collect());
        visit::visit_path(self, path);
    }
}

/// The module of a file, by its path inside the package.
fn module(file: &Path) -> ModulePath {
    let mut path: ModulePath =
        file.with_extension("").iter().map(|part| part.to_string_lossy().into_owned()).collect();
    if path.last().is_some_and(|last| ["lib", "main", "mod"].contains(&last.as_str())) {
        path.pop();
    }
    path
}

/// What the files of a package use of each other.
fn imports(package: &str) -> Imports {
    let files: BTreeMap<ModulePath, String> = modules()
        .iter()
        .filter_map(|path| Some((module(path.strip_prefix(package).ok()?), text(path))))
        .filter(|(module, _)| !module.is_empty())
        .collect();
    let used_by = |of: &ModulePath, text: &String| {
        let mut named = Named::default();
        named.visit_file(&syn::parse_file(text).unwrap());
        let used = named.0.iter().filter_map(|path| {
            let mut from = match path.first()?.as_str() {
                "crate" => Vec::new(),
                "self" => of.clone(),
                "super" => of[..of.len() - 1].to_vec(),
                _ => return None,
            };
            for name in &path[1..] {
                match name.as_str() {
                    "super" => drop(from.pop()),
                    name => from.push(name.to_owned()),
                }
            }
            // The path of an item is that of its module and more.
            while !from.is_empty() && !files.contains_key(&from) {
                from.pop();
            }
            let is_kin = from.starts_with(of) || of.starts_with(&from);
            (!is_kin).then_some(from)
        });
        used.collect()
    };
    files.iter().map(|(module, text)| (module.clone(), used_by(module, text))).collect()
}

/// What is left when every file that uses nothing is taken away, again and again: circles, and what uses them.
fn circles(mut imports: Imports) -> Imports {
    loop {
        let free: Vec<ModulePath> = imports
            .iter()
            .filter(|(_, used)| used.iter().all(|module| !imports.contains_key(module)))
            .map(|(module, _)| module.clone())
            .collect();
        if free.is_empty() {
            break;
        }
        free.iter().for_each(|module| drop(imports.remove(module)));
    }
    // Nor is a file that nobody uses part of a circle.
    loop {
        let used: BTreeSet<ModulePath> = imports.values().flatten().cloned().collect();
        let before = imports.len();
        imports.retain(|module, _| used.contains(module));
        if imports.len() == before {
            return imports;
        }
    }
}

/// The rung of each top module of a package, from 0.
fn ladder(package: &str) -> BTreeMap<String, usize> {
    let mut rungs = BTreeMap::new();
    let mut rung = 0;
    for line in text(format!("{package}/lib.rs")).lines() {
        let declared = line.trim_start_matches("pub ").strip_prefix("mod ");
        match declared.and_then(|rest| rest.strip_suffix(';')) {
            Some(name) => drop(rungs.insert(name.to_owned(), rung)),
            None if line.is_empty() => rung += 1,
            None => {}
        }
    }
    assert!(rungs.len() > 3, "{package}/lib.rs declares {rungs:?}");
    rungs
}

#[test]
fn no_files_import_each_other_in_a_circle() {
    for package in WITHOUT_CIRCLES {
        let imports = imports(package);
        let count: usize = imports.values().map(BTreeSet::len).sum();
        assert!(count > 5, "{package}: the search found {count} imports");
        let circles = circles(imports);
        assert!(
            circles.is_empty(),
            "{package}: move what two files need of each other into a third: {circles:#?}"
        );
    }
}

#[test]
fn modules_use_only_what_stands_before_them_on_the_ladder() {
    for package in WITH_LADDER {
        let rungs = ladder(package);
        for (module, used) in imports(package) {
            for other in used {
                let (Some(own), Some(rung)) = (rungs.get(&module[0]), rungs.get(&other[0])) else {
                    continue;
                };
                assert!(
                    module[0] == other[0] || rung < own,
                    "{package}: {} uses {}, which does not stand before it in lib.rs",
                    module.join("::"),
                    other.join("::")
                );
            }
        }
    }
}
