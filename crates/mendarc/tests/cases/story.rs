//! Taking a story apart: blocks of TOML, changes to them, a command, and expectations.

/// The files of a step as they stand after every block so far.
#[derive(Debug, Clone, Default)]
pub struct State {
    pub record: Option<String>,
    pub settings: Option<String>,
    pub opened: Option<String>,
    pub other: Option<String>,
    pub command: Option<String>,
}

/// One block of expectations, and the files it is about.
#[derive(Debug)]
pub struct Step {
    pub line: usize,
    pub state: State,
    pub expectations: Vec<(usize, String)>,
}

/// Something in a story that cannot be read.
#[derive(Debug)]
pub struct Fault {
    pub line: usize,
    pub message: String,
}

impl State {
    fn file(&mut self, name: &str) -> Option<&mut Option<String>> {
        match name {
            "record" => Some(&mut self.record),
            "settings" => Some(&mut self.settings),
            "opened" => Some(&mut self.opened),
            "other" => Some(&mut self.other),
            _ => None,
        }
    }
}

/// Reads a story into its steps, one for each block of expectations.
pub fn read(text: &str) -> Result<Vec<Step>, Fault> {
    let mut steps = Vec::new();
    let mut state = State::default();
    let mut lines = (1..).zip(text.lines());
    while let Some((line, opening)) = lines.next() {
        let Some(kind) = opening.strip_prefix("```") else { continue };
        let mut block: Vec<(usize, &str)> = Vec::new();
        loop {
            match lines.next() {
                Some((_, "```")) => break,
                Some(inside) => block.push(inside),
                None => return Err(Fault { line, message: "the block does not end".into() }),
            }
        }
        let body = || block.iter().map(|(_, text)| format!("{text}\n")).collect::<String>();
        let unknown = || Fault { line, message: format!("`{kind}` is no block of a case") };
        match kind.split_once(' ') {
            Some(("toml", name)) => *state.file(name).ok_or_else(unknown)? = Some(body()),
            Some(("diff", name)) => {
                let file = state.file(name).ok_or_else(unknown)?;
                let before = file.clone().unwrap_or_default();
                *file = Some(changed(&before, &block)?);
            }
            None if kind == "sh" => state.command = Some(body()),
            None if kind == "expect" => {
                let said = block.iter().filter(|(_, text)| !text.trim().is_empty() && !text.starts_with('#'));
                let expectations = said.map(|(line, text)| (*line, text.trim().to_owned())).collect();
                steps.push(Step { line, state: state.clone(), expectations });
            }
            _ => return Err(unknown()),
        }
    }
    if steps.is_empty() {
        return Err(Fault { line: 1, message: "nothing is expected of this story".into() });
    }
    Ok(steps)
}

/// Applies a change: a `-` line stands in the text once and gives way to the `+` lines after it;
/// `+` lines without one before them go to the end.
fn changed(before: &str, block: &[(usize, &str)]) -> Result<String, Fault> {
    let mut lines: Vec<String> = before.lines().map(str::to_owned).collect();
    let mut place = None;
    for (line, text) in block {
        let fault = |message: String| Fault { line: *line, message };
        if let Some(gone) = text.strip_prefix('-') {
            let found: Vec<usize> =
                lines.iter().enumerate().filter(|(_, old)| old.trim() == gone.trim()).map(|(at, _)| at).collect();
            let [at] = found[..] else {
                return Err(fault(format!("`{}` stands {} times in the file", gone.trim(), found.len())));
            };
            lines.remove(at);
            place = Some(at);
        } else if let Some(new) = text.strip_prefix('+') {
            let at = place.unwrap_or(lines.len());
            lines.insert(at, new.strip_prefix(' ').unwrap_or(new).to_owned());
            place = place.map(|at| at + 1);
        } else {
            return Err(fault("a line of a change starts with - or +".into()));
        }
    }
    Ok(lines.iter().map(|line| format!("{line}\n")).collect())
}
