//! From words and plain numbers to the model's types, with every fault named, and back.

mod answers;
mod string;

use strings::error::{Bound, Fault};

pub(crate) use self::answers::answers;
pub(crate) use self::string::{
    construction, construction_back, players, setting, setting_back, taken,
};
use crate::allowed::{self, one_of};

/// Collects faults while values are read.
#[derive(Default)]
struct Faults(Vec<Fault>);

impl Faults {
    /// Reads one of the words that a field takes by its name.
    fn word<T>(
        &mut self,
        field: &str,
        word: Option<&String>,
        parse: impl Fn(&str) -> Option<T>,
    ) -> Option<T> {
        let name = field.rsplit('.').next().unwrap_or(field);
        let name = name.split('[').next().unwrap_or(name);
        self.text(field, word, parse, || one_of(&allowed::words(name)))
    }

    /// Reads a text of which more than its field's name decides what it may be.
    fn text<T>(
        &mut self,
        field: &str,
        text: Option<&String>,
        parse: impl Fn(&str) -> Option<T>,
        allowed: impl Fn() -> String,
    ) -> Option<T> {
        let text = text?;
        let read = parse(text);
        if read.is_none() {
            self.0.push(Fault::new(field, format!("\"{text}\""), allowed()));
        }
        read
    }

    fn number(&mut self, field: &str, value: f64, bound: Bound) -> f64 {
        if let Err(fault) = bound.check(field, value) {
            self.0.push(fault);
        }
        value
    }

    fn optional(&mut self, field: &str, value: Option<f64>, bound: Bound) -> Option<f64> {
        value.map(|v| self.number(field, v, bound))
    }

    /// The first entries of a list, as many as it may have; more are a fault.
    fn list<'a, T>(&mut self, field: &str, entries: &'a [T], most: usize, of: &str) -> &'a [T] {
        if entries.len() > most {
            let allowed = format!("at most {most} {of}");
            self.0.push(Fault::new(field, format!("{} entries", entries.len()), allowed));
        }
        &entries[..entries.len().min(most)]
    }

    fn needed(&mut self, field: &str, value: Option<f64>, bound: Bound) -> f64 {
        if value.is_none() {
            self.0.push(Fault::outside(field, "nothing", bound));
        }
        value.unwrap_or(bound.min)
    }
}
