//! From Project Fluent's messages to the compact text that the page reads.
//!
//! References to messages and terms are resolved here, with the cases and numbers that are asked of a term, so that the
//! page meets three things only: text, a place for a word, and a choice between texts. Each line is one message: its
//! name, a tab, its pattern. Marks that no text contains stand for the rest; `lib.rs` says which.

use std::collections::BTreeMap;

use fluent_syntax::ast::{
    CallArguments, Entry, Expression, InlineExpression, Pattern, PatternElement, Variant,
    VariantKey,
};
use fluent_syntax::parser;
use fluent_syntax::unicode::unescape_unicode_to_string;

type Patterns<'a> = BTreeMap<String, &'a Pattern<&'a str>>;
type Given<'a> = BTreeMap<&'a str, String>;

/// How the name of a message begins that only stands within others, such as a noun in one of its cases.
const WITHIN: &str = "word-";

/// Deeper than this, messages refer to each other in a circle.
const DEEPEST: usize = 16;

/// Makes the compact text.
///
/// # Errors
/// What cannot be read, is named twice, or refers to nothing.
pub(crate) fn compile(source: &str) -> Result<String, String> {
    let resource = parser::parse(source).map_err(|(_, faults)| {
        let told = faults.iter().map(|fault| {
            let from = source[..fault.pos.start].rfind('\n').map_or(0, |at| at + 1);
            format!("{fault} at: {}", source[from..].lines().next().unwrap_or_default())
        });
        told.collect::<Vec<_>>().join("; ")
    })?;
    let mut patterns = Patterns::new();
    for entry in &resource.body {
        let (id, value, attributes) = match entry {
            Entry::Message(m) => (m.id.name.to_owned(), m.value.as_ref(), &m.attributes),
            Entry::Term(t) => (format!("-{}", t.id.name), Some(&t.value), &t.attributes),
            Entry::Comment(_) | Entry::GroupComment(_) | Entry::ResourceComment(_) => continue,
            Entry::Junk { content } => return Err(format!("not a message: {content}")),
        };
        let of_attributes = attributes.iter().map(|a| (format!("{id}.{}", a.id.name), &a.value));
        let own = value.into_iter().map(|value| (id.clone(), value));
        for (id, pattern) in own.chain(of_attributes) {
            if patterns.insert(id.clone(), pattern).is_some() {
                return Err(format!("{id} is said twice"));
            }
        }
    }
    for id in patterns.keys().filter(|id| id.starts_with(WITHIN)) {
        if !source.contains(&format!("{{ {id} }}")) {
            return Err(format!("{id} stands in no other message"));
        }
    }
    let mut compact = String::new();
    let alone = |id: &String| !id.starts_with('-') && !id.starts_with(WITHIN);
    for (id, pattern) in patterns.iter().filter(|(id, _)| alone(id)) {
        let mut text = String::new();
        let writer = Writer { patterns: &patterns, id };
        writer.pattern(pattern, None, 0, &mut text)?;
        compact.push_str(&format!("{id}\t{text}\n"));
    }
    Ok(compact)
}

/// The lines of a compact text whose messages stand in `source`.
pub(crate) fn only(compact: &str, source: &str) -> String {
    let stands = |line: &&str| {
        let name = line.split(['\t', '.']).next().unwrap_or_default();
        source.lines().any(|said| {
            said.strip_prefix(name).is_some_and(|rest| rest.trim_start().starts_with('='))
        })
    };
    compact.lines().filter(stands).flat_map(|line| [line, "\n"]).collect()
}

struct Writer<'a> {
    patterns: &'a Patterns<'a>,
    id: &'a str,
}

impl<'a> Writer<'a> {
    /// Writes a pattern; `given` is what was handed to the term in which it stands.
    fn pattern(
        &self,
        pattern: &'a Pattern<&'a str>,
        given: Option<&Given<'a>>,
        depth: usize,
        out: &mut String,
    ) -> Result<(), String> {
        if depth > DEEPEST {
            return Err(format!("{} refers to itself", self.id));
        }
        for element in &pattern.elements {
            match element {
                // Where a line ends is a matter of the file.
                PatternElement::TextElement { value } => out.push_str(&value.replace('\n', " ")),
                PatternElement::Placeable { expression } => {
                    self.expression(expression, given, depth, out)?;
                }
            }
        }
        Ok(())
    }

    fn expression(
        &self,
        expression: &'a Expression<&'a str>,
        given: Option<&Given<'a>>,
        depth: usize,
        out: &mut String,
    ) -> Result<(), String> {
        match expression {
            Expression::Inline(inline) => self.inline(inline, given, depth, out),
            Expression::Select { selector, variants } => {
                self.select(selector, variants, given, depth, out)
            }
        }
    }

    fn inline(
        &self,
        inline: &'a InlineExpression<&'a str>,
        given: Option<&Given<'a>>,
        depth: usize,
        out: &mut String,
    ) -> Result<(), String> {
        match inline {
            InlineExpression::StringLiteral { value } => {
                out.push_str(&unescape_unicode_to_string(value));
            }
            InlineExpression::NumberLiteral { value } => out.push_str(value),
            InlineExpression::VariableReference { id } => match given {
                None => out.push_str(&format!("\u{1}{}\u{2}", id.name)),
                Some(given) => out.push_str(given.get(id.name).ok_or_else(|| {
                    format!("{} refers to a term without its ${}", self.id, id.name)
                })?),
            },
            InlineExpression::MessageReference { id, attribute } => {
                let name = full(id.name, attribute.as_ref().map(|a| a.name));
                self.pattern(self.find(&name)?, given, depth + 1, out)?;
            }
            InlineExpression::TermReference { id, attribute, arguments } => {
                let name = full(&format!("-{}", id.name), attribute.as_ref().map(|a| a.name));
                let handed = handed(arguments.as_ref());
                self.pattern(self.find(&name)?, Some(&handed), depth + 1, out)?;
            }
            InlineExpression::Placeable { expression } => {
                self.expression(expression, given, depth, out)?;
            }
            InlineExpression::FunctionReference { id, .. } => {
                return Err(format!("{} calls {}, which the page does not have", self.id, id.name));
            }
        }
        Ok(())
    }

    fn select(
        &self,
        selector: &'a InlineExpression<&'a str>,
        variants: &'a [Variant<&'a str>],
        given: Option<&Given<'a>>,
        depth: usize,
        out: &mut String,
    ) -> Result<(), String> {
        let known = match (selector, given) {
            (InlineExpression::VariableReference { id }, None) => {
                out.push_str(&format!("\u{3}{}", id.name));
                for variant in variants {
                    let default = if variant.default { "*" } else { "" };
                    out.push_str(&format!("\u{4}{default}{}\u{5}", key(variant)));
                    self.pattern(&variant.value, given, depth + 1, out)?;
                }
                out.push('\u{6}');
                return Ok(());
            }
            // Within a term, what it was given is known already.
            (InlineExpression::VariableReference { id }, Some(given)) => {
                given.get(id.name).cloned()
            }
            (other, _) => {
                let mut text = String::new();
                self.inline(other, given, depth + 1, &mut text)?;
                Some(text)
            }
        };
        let chosen = variants
            .iter()
            .find(|variant| Some(key(variant)) == known.as_deref())
            .or_else(|| variants.iter().find(|variant| variant.default));
        match chosen {
            Some(variant) => self.pattern(&variant.value, given, depth + 1, out),
            None => Err(format!("{} has a choice without a default", self.id)),
        }
    }

    fn find(&self, name: &str) -> Result<&'a Pattern<&'a str>, String> {
        let found = self.patterns.get(name).copied();
        found.ok_or_else(|| format!("{} refers to {name}, which is not there", self.id))
    }
}

fn full(name: &str, attribute: Option<&str>) -> String {
    attribute.map_or_else(|| name.to_owned(), |attribute| format!("{name}.{attribute}"))
}

fn key<'a>(variant: &Variant<&'a str>) -> &'a str {
    match &variant.key {
        VariantKey::Identifier { name } => name,
        VariantKey::NumberLiteral { value } => value,
    }
}

/// What a term is handed: only texts and numbers, as Fluent has it.
fn handed<'a>(arguments: Option<&CallArguments<&'a str>>) -> Given<'a> {
    let named = arguments.map(|arguments| arguments.named.as_slice()).unwrap_or_default();
    let texts = named.iter().filter_map(|argument| match &argument.value {
        InlineExpression::StringLiteral { value } | InlineExpression::NumberLiteral { value } => {
            Some((argument.name.name, (*value).to_owned()))
        }
        _ => None,
    });
    texts.collect()
}
