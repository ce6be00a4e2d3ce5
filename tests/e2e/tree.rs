//! A whole fitting as a screen reader is given it: read and driven through the tree that the browser makes for such
//! programs, by role and name alone.

use std::collections::BTreeMap;
use std::time::{Duration, Instant};

use serde_json::{Value, json};

use crate::support::{PATIENCE, Page, drive};

/// What a person can work with.
const CONTROLS: [&str; 12] = [
    "button",
    "link",
    "radio",
    "checkbox",
    "slider",
    "spinbutton",
    "textbox",
    "searchbox",
    "combobox",
    "listbox",
    "DisclosureTriangle",
    "Date",
];

/// A node of the tree.
#[derive(Clone, Debug)]
struct Node {
    role: String,
    name: String,
    description: String,
    /// The same node in the document.
    backend: i64,
    /// Its properties by name: level, focusable, focused and so on.
    properties: Value,
    /// Where the nodes below it stand in the tree.
    children: Vec<usize>,
    parent: Option<usize>,
}

impl Node {
    fn is(&self, property: &str) -> bool {
        self.properties[property] == true
    }
}

/// The tree, without what it leaves out itself.
struct Tree(Vec<Node>);

impl Tree {
    fn of(found: &Value) -> Self {
        let text = |value: &Value| value["value"].as_str().unwrap_or_default().trim().to_owned();
        let all = found["nodes"].as_array().unwrap();
        let places =
            all.iter().enumerate().filter_map(|(i, node)| Some((node["nodeId"].as_str()?, i)));
        let places: BTreeMap<&str, usize> = places.collect();
        let place = |id: &Value| places.get(id.as_str()?).copied();
        let node = |node: &Value| {
            let properties = node["properties"].as_array().into_iter().flatten();
            let named =
                |p: &Value| Some((p["name"].as_str()?.to_owned(), p["value"]["value"].clone()));
            Node {
                // What is left out has no role, and its children stand in its place.
                role: if node["ignored"] == true { String::new() } else { text(&node["role"]) },
                name: text(&node["name"]),
                description: text(&node["description"]),
                backend: node["backendDOMNodeId"].as_i64().unwrap_or_default(),
                properties: properties.filter_map(named).collect(),
                children: node["childIds"]
                    .as_array()
                    .into_iter()
                    .flatten()
                    .filter_map(place)
                    .collect(),
                parent: place(&node["parentId"]),
            }
        };
        Self(all.iter().map(node).collect())
    }

    fn all<'a>(&'a self, role: &'a str) -> impl Iterator<Item = &'a Node> {
        self.0.iter().filter(move |node| node.role == role)
    }

    /// Everything under a node, itself left out.
    fn under<'a>(&'a self, node: &'a Node) -> Vec<&'a Node> {
        let mut found = Vec::new();
        for child in node.children.iter().filter_map(|i| self.0.get(*i)) {
            found.push(child);
            found.extend(self.under(child));
        }
        found
    }

    /// What is read of a node: its name, or the words under it.
    fn words(&self, node: &Node) -> String {
        if !node.name.is_empty() {
            return node.name.clone();
        }
        let texts = self.under(node).into_iter().filter(|under| under.role == "StaticText");
        texts.map(|text| text.name.as_str()).collect::<Vec<_>>().join(" ")
    }

    fn is_in(&self, node: &Node, role: &str) -> bool {
        let mut above = node.parent;
        while let Some(node) = above.and_then(|i| self.0.get(i)) {
            if node.role == role {
                return true;
            }
            above = node.parent;
        }
        false
    }

    fn heading(&self) -> String {
        let first: Vec<_> =
            self.all("heading").filter(|node| node.properties["level"] == 1).collect();
        assert_eq!(first.len(), 1, "a screen has one first heading: {first:#?}");
        first[0].name.clone()
    }

    fn statuses(&self) -> Vec<String> {
        let all = self.all("status").map(|status| self.words(status));
        all.filter(|words| !words.is_empty()).collect()
    }

    /// Everything that a screen must have for those who do not see it.
    fn assert_told(&self, screen: &str) {
        assert_ne!(self.heading(), "", "{screen}");
        let mut faults = Vec::new();
        for landmark in ["main", "banner", "contentinfo"] {
            if self.all(landmark).count() != 1 {
                faults.push(format!("there is not one {landmark}"));
            }
        }
        for node in &self.0 {
            let Node { role, name, .. } = node;
            let control = CONTROLS.contains(&role.as_str());
            let stop = node.is("focusable") && role != "RootWebArea";
            if (control || stop) && name.is_empty() {
                faults.push(format!("{node:?} has no name"));
            }
            if stop && ["", "generic", "none", "paragraph"].contains(&role.as_str()) {
                faults.push(format!("{node:?} takes the focus and has no role"));
            }
            if role == "table" {
                let under = self.under(node);
                let has = |role: &str| under.iter().any(|node| node.role == role);
                if !has("columnheader") || !has("rowheader") {
                    faults.push(format!("the table {name} lacks headers"));
                }
                // A table without a name of its own stands in a region that has one.
                if name.is_empty() && !self.is_in(node, "region") {
                    faults.push(format!("{node:?} has no name"));
                }
            }
            if role == "image" && name.is_empty() {
                faults.push(format!("{node:?} has no name"));
            }
            // A figure that one can walk along is a chart.
            if role == "figure" {
                let under = self.under(node);
                let walked = under.iter().any(|node| node.role == "slider");
                let drawn = under.iter().find(|node| node.role == "image");
                if walked && drawn.is_none_or(|drawn| drawn.description.is_empty()) {
                    faults.push(format!("the chart {drawn:?} has no description"));
                }
            }
        }
        assert!(faults.is_empty(), "{screen}: {faults:#?}");
    }
}

impl Page {
    async fn tree(&self) -> Tree {
        Tree::of(&self.devtools("Accessibility.getFullAXTree", json!({})).await)
    }

    /// Waits for a node of this role whose name begins so.
    async fn told(&self, role: &str, name: &str) -> Node {
        let start = Instant::now();
        loop {
            let tree = self.tree().await;
            if let Some(node) = tree.all(role).find(|node| node.name.starts_with(name)) {
                return node.clone();
            }
            let all: Vec<_> = tree.all(role).map(|node| &node.name).collect();
            assert!(start.elapsed() < PATIENCE, "no {role} is called {name}: {all:#?}");
            tokio::time::sleep(Duration::from_millis(50)).await;
        }
    }

    /// Does what a screen reader does when its user presses a control.
    async fn activate(&self, role: &str, name: &str) {
        let node = self.told(role, name).await;
        self.activate_node(&node).await;
    }

    async fn activate_node(&self, node: &Node) {
        let found = json!({ "backendNodeId": node.backend });
        let object = self.devtools("DOM.resolveNode", found).await;
        let press = json!({
            "objectId": object["object"]["objectId"],
            "functionDeclaration": "function () { this.focus(); this.click(); }",
        });
        self.devtools("Runtime.callFunctionOn", press).await;
    }

    /// Puts a text in place of what stands in a field.
    async fn say_in(&self, role: &str, name: &str, text: &str) {
        let field = self.told(role, name).await;
        let found = json!({ "backendNodeId": field.backend });
        self.devtools("DOM.focus", found.clone()).await;
        let object = self.devtools("DOM.resolveNode", found).await;
        let all = json!({
            "objectId": object["object"]["objectId"],
            "functionDeclaration": "function () { this.select(); }",
        });
        self.devtools("Runtime.callFunctionOn", all).await;
        self.devtools("Input.insertText", json!({ "text": text })).await;
    }

    async fn headed_by(&self, heading: &str) -> Tree {
        self.told("heading", heading).await;
        let tree = self.tree().await;
        tree.assert_told(heading);
        tree
    }
}

#[test]
fn a_fitting_through_the_tree_that_screen_readers_read() {
    drive(async |page| {
        page.headed_by("Find strings that suit").await;
        page.activate("link", "Answer a few questions").await;
        page.headed_by("The instrument").await;
        page.activate("radio", "Viola").await;
        page.activate("radio", "15 in").await;
        page.activate("button", "Continue").await;

        // A fault: its summary has the focus, and its links say what is wrong and lead to the field.
        page.headed_by("Its strings now").await;
        page.say_in("textbox", "How old", "old").await;
        page.activate("button", "Continue").await;
        page.told("heading", "One answer cannot be used yet").await;
        let tree = page.tree().await;
        tree.assert_told("faults");
        let focused = tree.0.iter().find(|node| node.is("focused") && node.role != "RootWebArea");
        let summary = focused.unwrap();
        assert_eq!(
            (summary.role.as_str(), summary.name.as_str()),
            ("region", "One answer cannot be used yet")
        );
        let links: Vec<_> =
            tree.under(summary).into_iter().filter(|node| node.role == "link").collect();
        assert_eq!(links.len(), 1, "{links:#?}");
        assert!(links[0].name.contains("“old” is not a number"), "{links:#?}");
        page.activate_node(links[0]).await;
        let tree = page.tree().await;
        let field = tree.all("textbox").find(|node| node.is("focused")).unwrap();
        assert_eq!(field.properties["invalid"], "true", "{field:#?}");
        assert!(field.description.contains("“old” is not a number"), "{field:#?}");
        page.say_in("textbox", "How old", "8").await;
        page.activate("button", "Continue").await;

        page.headed_by("Complaints").await;
        page.activate("checkbox", "Too bright").await;
        for heading in [
            "Music and player",
            "Tuning it",
            "Where it is kept",
            "The next concert",
            "Budget and skin",
            "Check your answers",
        ] {
            page.activate("button", "Continue").await;
            page.headed_by(heading).await;
        }
        let answers = &page.document().await["answers"];
        assert_eq!(
            (&answers["age_months"], &answers["bothers"]),
            (&json!(8.0), &json!(["too-bright"]))
        );
        page.activate("button", "Find strings").await;
        page.until("the set is drawn", "return !!document.querySelector('.sheet')").await;

        // The set is announced, and once more when it follows a wish.
        let tree = page.tree().await;
        tree.assert_told("the set");
        let heading = tree.heading();
        let told =
            |tree: &Tree| tree.statuses().into_iter().find(|status| status.starts_with(&heading));
        let first = told(&tree);
        assert!(first.is_some(), "{heading} is not announced: {:#?}", tree.statuses());
        let announced = "window.heard = []; new MutationObserver(() => window.heard.push(document.querySelector('.finding > [role=status]').textContent))
            .observe(document.querySelector('.finding > [role=status]'), { characterData: true, childList: true, subtree: true })";
        page.script(announced).await;
        page.say_in("textbox", "From steady (−2)", "-2").await;
        page.until("the other set is announced", "return window.heard.some((text) => text !== '')")
            .await;

        // The bench, with everything unfolded.
        page.activate("radio", "At the bench").await;
        page.until("all of it is drawn", "return !!document.querySelector('.sheet')").await;
        for _ in 0..3 {
            let tree = page.tree().await;
            for folded in tree.all("DisclosureTriangle").filter(|node| !node.is("expanded")) {
                page.activate_node(folded).await;
            }
            tokio::time::sleep(Duration::from_millis(300)).await;
        }
        let tree = page.tree().await;
        tree.assert_told("the bench");
        assert_eq!(
            page.script("return !!document.querySelector('.case .formula')").await,
            json!(true)
        );
        assert!(tree.all("table").count() >= 8, "{}", tree.all("table").count());
        assert!(tree.all("image").count() >= 8, "{}", tree.all("image").count());
        // A long table says what its field is for.
        let fields: Vec<_> = tree.all("searchbox").map(|node| node.name.as_str()).collect();
        assert!(fields.iter().any(|name| name.starts_with("Show only rows with (")), "{fields:#?}");
    });
}

#[test]
fn the_other_rooms_through_the_tree() {
    drive(async |page| {
        for (path, drawn) in [
            ("#/everything", "form"),
            ("#/compare", ".bow-maps"),
            ("#/sources", ".works"),
            ("#/words", ".term"),
            ("#/specimen", ".swatches"),
            ("#/class/violin/0/plain-gut+plain-steel+synthetic/1", ".class-number"),
            ("#/class/violin/0/plain-gut+plain-steel+synthetic/5", ".year svg"),
        ] {
            page.open(path).await;
            page.until("it is drawn", &format!("return !!document.querySelector('{drawn}')")).await;
            page.open_everything().await;
            page.tree().await.assert_told(path);
        }
    });
}
