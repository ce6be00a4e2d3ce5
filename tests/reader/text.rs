//! What a person sees or hears of a page: its elements, read back from HTML, as lines of text and rows of tables.
//!
//! It knows HTML as yew writes it (every tag closed, every value in quotes), and nothing of strings.

use crate::marks::{Part, parts};

/// An element with what stands in it.
#[derive(Clone, Debug, Default)]
struct Element {
    tag: String,
    classes: Vec<String>,
    /// What is said of it to those who do not see it.
    labels: Vec<String>,
    children: Vec<Node>,
}

#[derive(Clone, Debug)]
enum Node {
    Element(Element),
    Text(String),
}

/// Where something stands: the classes of the elements around it, from the outside in.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Place {
    /// Classes.
    pub(crate) classes: Vec<String>,
    /// The heading of the string that it is about, if it stands in the part of one string.
    pub(crate) string: Option<Vec<Part>>,
    /// The heading over it.
    pub(crate) heading: Vec<Part>,
}

/// A piece of what the page says.
#[derive(Clone, Debug)]
pub(crate) struct Passage {
    /// Where it stands.
    pub(crate) place: Place,
    /// What it says.
    pub(crate) says: Says,
}

/// Running text, or a row of a table.
#[derive(Clone, Debug)]
pub(crate) enum Says {
    /// A paragraph, a heading, a label.
    Line(Vec<Part>),
    /// A row: the headings of its table, and its cells.
    Row(Vec<Vec<Part>>, Vec<Cell>),
}

/// The lines of a cell.
pub(crate) type Cell = Vec<Vec<Part>>;

impl Place {
    /// Whether it stands in an element of this class.
    pub(crate) fn within(&self, class: &str) -> bool {
        self.classes.iter().any(|c| c == class)
    }
}

/// Elements that begin a line of their own.
const BLOCKS: &str = "article section header nav div p ol ul li h1 h2 h3 h4 dl dt dd table caption details summary \
    figure figcaption svg text g button td";
/// Elements that head what follows.
const HEADINGS: [&str; 5] = ["h1", "h2", "h3", "h4", "dt"];
/// Classes that make a line of their own of what is else a part of a line.
const APART: [&str; 5] = ["means", "note-name", "kind", "likeness-room", "differs-mark"];
/// Elements that hold nothing.
const EMPTY: [&str; 6] = ["br", "hr", "img", "input", "meta", "link"];

/// Everything that a page says, in order.
pub(crate) fn passages(html: &str) -> Vec<Passage> {
    let mut root = Element::default();
    let mut rest = html;
    read(&mut rest, &mut root);
    assert!(rest.is_empty(), "an end tag too many before {:.60}", rest);
    let mut reading = Reading::default();
    reading.element(&root);
    reading.end_line();
    reading.passages
}

/// Reads what stands in an element, up to its end tag or the end of the text.
fn read(rest: &mut &str, into: &mut Element) {
    while let Some(open) = rest.find('<') {
        if open > 0 {
            into.children.push(Node::Text(plain(&rest[..open])));
        }
        let close = open + rest[open..].find('>').unwrap();
        let tag = &rest[open + 1..close];
        let after = &rest[close + 1..];
        if let Some(name) = tag.strip_prefix('/') {
            if into.tag == name {
                *rest = after;
            }
            return;
        }
        *rest = after;
        if tag.starts_with('!') {
            continue;
        }
        let mut child = start(tag.trim_end_matches('/'));
        if !tag.ends_with('/') && !EMPTY.contains(&child.tag.as_str()) {
            read(rest, &mut child);
        }
        into.children.push(Node::Element(child));
    }
    if !rest.is_empty() {
        into.children.push(Node::Text(plain(rest)));
        *rest = "";
    }
}

/// An element from the words between its brackets.
fn start(tag: &str) -> Element {
    let (name, mut rest) = tag.split_once(char::is_whitespace).unwrap_or((tag, ""));
    let mut element = Element { tag: name.to_owned(), ..Element::default() };
    while let Some((key, value)) = rest.split_once("=\"") {
        let (value, after) = value.split_once('"').unwrap();
        let value = plain(value);
        match key.trim() {
            "class" => element.classes = value.split_whitespace().map(str::to_owned).collect(),
            "aria-label" | "aria-valuetext" | "title" => element.labels.push(value),
            _ => {}
        }
        rest = after;
    }
    element
}

/// Text without HTML's own signs, and with one kind of space; none between thousands.
fn plain(text: &str) -> String {
    let mut out = String::new();
    let mut rest = text;
    while let Some(at) = rest.find('&') {
        out.push_str(&rest[..at]);
        let (name, after) = rest[at + 1..].split_once(';').unwrap();
        out.push(match name {
            "amp" => '&',
            "lt" => '<',
            "gt" => '>',
            "quot" => '"',
            "#x27" | "#39" => '\'',
            "#x2F" | "#47" => '/',
            other => panic!("the reader does not know the sign &{other};"),
        });
        rest = after;
    }
    out.push_str(rest);
    out.replace('\u{202f}', "").replace('\u{a0}', " ")
}

#[derive(Default)]
struct Reading {
    passages: Vec<Passage>,
    place: Place,
    line: String,
}

impl Reading {
    fn end_line(&mut self) {
        let line = std::mem::take(&mut self.line);
        let line = line.split_whitespace().collect::<Vec<_>>().join(" ");
        if !line.is_empty() {
            let says = Says::Line(parts(&line));
            self.passages.push(Passage { place: self.place.clone(), says });
        }
    }

    fn element(&mut self, element: &Element) {
        let block = BLOCKS.split_whitespace().any(|tag| tag == element.tag)
            || element.classes.iter().any(|c| APART.contains(&c.as_str()));
        if block {
            self.end_line();
        }
        let (classes, string) = (self.place.classes.len(), self.place.string.clone());
        self.place.classes.extend(element.classes.iter().cloned());
        // The words of a legend are about the mark that is drawn beside them.
        if element.tag == "li" && self.place.within("legend") {
            self.place
                .classes
                .extend(all(element, "path").into_iter().flat_map(|mark| mark.classes.clone()));
        }
        if element.tag == "section" && element.classes.iter().any(|c| c == "string") {
            self.place.string = first_of_class(element, "note-name").and_then(|e| lines(e).pop());
        }
        // A label that stands within a line, as that of a number's grade, does not break it.
        let broken = std::mem::take(&mut self.line);
        for label in &element.labels {
            self.line.clone_from(label);
            self.end_line();
        }
        self.line = broken;
        let before = self.passages.len();
        if element.tag == "table" {
            self.table(element);
        } else {
            for child in &element.children {
                match child {
                    Node::Text(text) => self.line.push_str(text),
                    Node::Element(inner) => self.element(inner),
                }
            }
        }
        if block {
            self.end_line();
        }
        if HEADINGS.contains(&element.tag.as_str())
            && let Some(Passage { says: Says::Line(line), .. }) = self.passages.get(before)
        {
            self.place.heading = line.clone();
        }
        self.place.classes.truncate(classes);
        self.place.string = string;
    }

    fn table(&mut self, table: &Element) {
        for caption in all(table, "caption") {
            self.element(caption);
        }
        let rows = all(table, "tr");
        let is_head = |row: &Element| {
            row.children.iter().all(|c| matches!(c, Node::Element(e) if e.tag == "th"))
        };
        let mut headings: Vec<Vec<Part>> = Vec::new();
        for row in rows {
            let cells: Vec<Cell> = row
                .children
                .iter()
                .filter_map(|c| if let Node::Element(cell) = c { Some(lines(cell)) } else { None })
                .collect();
            if is_head(row) && cells.len() > 1 && headings.is_empty() {
                headings = cells.into_iter().map(|cell| cell.concat()).collect();
            } else {
                let mut place = self.place.clone();
                place.classes.extend(row.classes.iter().cloned());
                self.passages.push(Passage { place, says: Says::Row(headings.clone(), cells) });
            }
        }
    }
}

/// What stands in a cell, line by line.
fn lines(cell: &Element) -> Cell {
    let mut reading = Reading::default();
    reading.element(cell);
    reading.end_line();
    reading
        .passages
        .into_iter()
        .filter_map(|p| if let Says::Line(line) = p.says { Some(line) } else { None })
        .collect()
}

fn all<'a>(element: &'a Element, tag: &str) -> Vec<&'a Element> {
    let mut found = Vec::new();
    for child in &element.children {
        if let Node::Element(inner) = child {
            if inner.tag == tag {
                found.push(inner);
            } else {
                found.extend(all(inner, tag));
            }
        }
    }
    found
}

fn first_of_class<'a>(element: &'a Element, class: &str) -> Option<&'a Element> {
    element.children.iter().find_map(|child| match child {
        Node::Element(inner) if inner.classes.iter().any(|c| c == class) => Some(inner),
        Node::Element(inner) => first_of_class(inner, class),
        Node::Text(_) => None,
    })
}
