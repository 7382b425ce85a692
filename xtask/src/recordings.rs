//! `cargo xtask recordings`: invented recordings of a phone's sensors, each with its truth beside it.

use std::fs;
use std::path::{Path, PathBuf};

use anyhow::{Context, bail};
use recorder::{Scenario, Subject, record};

/// What was asked for.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Order {
    /// The folder to write to.
    pub out: PathBuf,
    /// The first seed; the others follow it.
    pub seed: u64,
    /// How many.
    pub count: usize,
    /// The exercise, or the id of something that is none; `None` takes them in turn.
    pub subject: Option<Subject>,
}

impl Order {
    /// From the words after `recordings`.
    pub fn read(words: &[&str]) -> anyhow::Result<Self> {
        let (mut out, mut seed, mut count, mut subject) = (None, None, None, None);
        for pair in words.chunks(2) {
            let [option, value] = pair else { bail!("{} needs a value", pair[0]) };
            match *option {
                "--out" => out = Some(PathBuf::from(value)),
                "--seed" => seed = Some(value.parse().context("--seed takes a whole number")?),
                "--count" => count = Some(value.parse().context("--count takes a whole number")?),
                "--exercise" => {
                    let ids = || Subject::all().into_iter().map(Subject::word).collect::<Vec<_>>().join(", ");
                    let found = Subject::from_word(value);
                    subject = Some(found.with_context(|| format!("`{value}` is none of {}", ids()))?);
                }
                other => bail!("`{other}` is not known: --out DIR --seed N --count K [--exercise ID]"),
            }
        }
        Ok(Self {
            out: out.context("--out DIR says where to write")?,
            seed: seed.context("--seed N says which")?,
            count: count.context("--count K says how many")?,
            subject,
        })
    }
}

/// Writes for each recording `NAME.csv`, `NAME.json` (the truth) and `NAME.known.csv` (what is true at each row).
pub fn run(order: &Order) -> anyhow::Result<bool> {
    fs::create_dir_all(&order.out).with_context(|| format!("folder {}", order.out.display()))?;
    for number in 0..order.count {
        let subject = order.subject.unwrap_or_else(|| Scenario::subject_in_turn(number));
        let recording = record(&Scenario::draw(order.seed + number as u64, subject));
        let name = format!("{:04}-{}", number + 1, subject.word());
        let write = |ending: &str, text: String| write(&order.out.join(format!("{name}.{ending}")), text);
        write("csv", recording.csv())?;
        write("known.csv", recording.known_csv())?;
        write("json", serde_json::to_string_pretty(&recording.truth_json())? + "\n")?;
    }
    eprintln!("wrote {} invented recordings to {}", order.count, order.out.display());
    Ok(true)
}

fn write(path: &Path, text: String) -> anyhow::Result<()> {
    fs::write(path, text).with_context(|| format!("writing {}", path.display()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_order_says_where_which_and_how_many() {
        let read = |line: &str| Order::read(&line.split(' ').collect::<Vec<_>>());
        let order = read("--out a --seed 3 --count 2 --exercise pendulum").expect("a whole order");
        assert_eq!((order.seed, order.count, order.subject), (3, 2, Subject::from_word("pendulum")));
        for wrong in [
            "--out a --seed 3",
            "--out a --seed x --count 2",
            "--out a --seed 3 --count",
            "--out a --seed 3 --count 1 --exercise pendulums",
            "--in a --seed 3 --count 1",
        ] {
            assert!(read(wrong).is_err(), "{wrong}");
        }
    }
}
