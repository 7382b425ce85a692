//! The options of the surgeon under which a family is read.

use crate::Family;

/// The options the surgeon chose where sources disagree; what is not named is the default.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Choices {
    taken: Vec<(String, String)>,
    defaults: Vec<(String, String)>,
}

impl Choices {
    /// The defaults of a family.
    pub fn of(family: &Family) -> Self {
        let defaults = family.choices().filter_map(|c| Some((c.id.clone(), c.options.first()?.clone()))).collect();
        Self { taken: Vec::new(), defaults }
    }

    /// Takes an option.
    pub fn take(&mut self, choice: &str, option: &str) {
        self.taken.push((choice.into(), option.into()));
    }

    /// Whether the choice was made this way.
    pub fn is(&self, choice: &str, option: &str) -> bool {
        let found = |list: &[(String, String)]| {
            list.iter().rev().find(|(id, _)| id == choice).map(|(_, taken)| taken == option)
        };
        found(&self.taken).or_else(|| found(&self.defaults)).unwrap_or(false)
    }
}
