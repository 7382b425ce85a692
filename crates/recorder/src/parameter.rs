//! Parameters: what is drawn for a person, a phone or a set, each with its unit and its source.

use serde_json::{Value, json};

use crate::random::Random;

/// Something that differs between people, phones or sets.
#[derive(Debug, Clone, Copy)]
pub struct Parameter {
    /// Its name in the truth file.
    pub name: &'static str,
    /// Its unit.
    pub unit: &'static str,
    /// How it is spread.
    pub spread: Spread,
    /// Where the spread comes from: a source, "memory", or "own choice".
    pub source: &'static str,
}

/// How a parameter is spread.
#[derive(Debug, Clone, Copy)]
pub enum Spread {
    /// Evenly between two values.
    Even(f64, f64),
    /// A bell curve by mean and standard deviation, cut off at three of them.
    Bell(f64, f64),
}

/// Source of a spread that this project chose.
pub const OWN_CHOICE: &str = "own choice";

/// A parameter that this project chose, evenly spread.
pub const fn own(name: &'static str, unit: &'static str, low: f64, high: f64) -> Parameter {
    Parameter { name, unit, spread: Spread::Even(low, high), source: OWN_CHOICE }
}

/// What was drawn, in order, for the truth file.
#[derive(Debug, Clone)]
pub struct Draws {
    random: Random,
    drawn: Vec<(Parameter, f64)>,
}

impl Draws {
    /// Draws from the stream of this name.
    pub fn new(seed: u64, stream: &str) -> Self {
        Self { random: Random::new(seed, stream), drawn: Vec::new() }
    }

    /// A value of the parameter, and a line in the truth file.
    pub fn draw(&mut self, parameter: &Parameter) -> f64 {
        let value = match parameter.spread {
            Spread::Even(low, high) => self.random.uniform(low, high),
            Spread::Bell(mean, deviation) => mean + deviation * self.random.normal().clamp(-3.0, 3.0),
        };
        self.drawn.push((*parameter, value));
        value
    }

    /// Three values of the parameter, one for each axis.
    pub fn draw_axes(&mut self, parameter: &Parameter) -> glam::DVec3 {
        glam::DVec3::new(self.draw(parameter), self.draw(parameter), self.draw(parameter))
    }

    /// The random numbers themselves, for what is no single value.
    pub const fn random(&mut self) -> &mut Random {
        &mut self.random
    }

    /// The lines of the truth file.
    pub fn to_json(&self) -> Value {
        let line = |(parameter, value): &(Parameter, f64)| {
            json!({
                "name": parameter.name, "value": value, "unit": parameter.unit, "source": parameter.source,
            })
        };
        Value::Array(self.drawn.iter().map(line).collect())
    }
}
