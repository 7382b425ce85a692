//! One term per thing: the table of `docs/glossary.md` against everything that is written.

use std::fs;
use std::path::Path;

use super::{Fault, files};

const PAGE: &str = "docs/glossary.md";

/// Where people's words stand. Titles of sources keep their own spelling.
const FOLDERS: &[&str] = &["crates", "protocols", "exercises", "locales", "docs", "evidence", "cases"];
const KEEP_THEIR_SPELLING: &[&str] =
    &[PAGE, "docs/evidence.md", "evidence/sources.toml", "crates/evidence/src/citations.rs"];

/// A row of the glossary.
#[derive(Debug, PartialEq, Eq)]
struct Term {
    line: usize,
    term: String,
    never: Vec<String>,
}

/// Terms that nothing uses, and spellings that the glossary forbids.
pub fn faults(root: &Path) -> anyhow::Result<Vec<Fault>> {
    let Ok(page) = fs::read_to_string(root.join(PAGE)) else {
        let message = "there is no such page".into();
        return Ok(vec![Fault { path: PAGE.into(), line: 0, code: "glossary-missing", message }]);
    };
    let terms = terms(&page);
    let mut texts = Vec::new();
    for folder in FOLDERS {
        texts.extend(files::under(root, folder, &[".rs", ".toml", ".ftl", ".md"])?);
    }
    // Tests of misspelt files misspell on purpose.
    let misspells = |path: &str| path.starts_with("cases/") || path.contains("/tests/");
    texts.retain(|(path, _)| !KEEP_THEIR_SPELLING.contains(&path.as_str()) && !misspells(path));
    Ok(check(&terms, &texts))
}

fn terms(page: &str) -> Vec<Term> {
    let mut terms = Vec::new();
    for (index, line) in page.lines().enumerate() {
        let Some(cells) = files::cells(line, "term") else { continue };
        let [term, _, never, ..] = cells.as_slice() else { continue };
        let never = never
            .split(',')
            .map(|word| word.trim().to_lowercase())
            .filter(|word| !matches!(word.as_str(), "" | "-" | "–"))
            .collect();
        terms.push(Term { line: index + 1, term: term.to_lowercase(), never });
    }
    terms
}

fn check(terms: &[Term], texts: &[(String, String)]) -> Vec<Fault> {
    let mut faults = Vec::new();
    let mut used = vec![false; terms.len()];
    for (path, text) in texts {
        for (index, line) in text.lines().enumerate() {
            let lower = line.to_lowercase();
            for (term, used) in terms.iter().zip(&mut used) {
                *used |= holds(&lower, &term.term) || holds(&lower, &term.term.replace(' ', "_"));
                for wrong in term.never.iter().filter(|wrong| holds(&lower, wrong)) {
                    faults.push(Fault {
                        path: path.clone(),
                        line: index + 1,
                        code: "wrong-term",
                        message: format!("`{wrong}`: the term is `{}`", term.term),
                    });
                }
            }
        }
    }
    for (term, _) in terms.iter().zip(used).filter(|(_, used)| !used) {
        faults.push(Fault {
            path: PAGE.into(),
            line: term.line,
            code: "term-unused",
            message: format!("nothing uses `{}`", term.term),
        });
    }
    faults
}

/// Whether the words stand in the line as whole words.
fn holds(line: &str, words: &str) -> bool {
    let letter = |c: Option<char>| c.is_some_and(char::is_alphanumeric);
    line.match_indices(words)
        .any(|(at, _)| !letter(line[..at].chars().next_back()) && !letter(line[at + words.len()..].chars().next()))
}

#[cfg(test)]
mod tests {
    use super::*;

    const PAGE_TEXT: &str = "| term | means | never |\n|---|---|---|\n| re-tear | a new tear | retear, rerupture |\n\
                             | sling | carries the arm | – |\n";

    fn codes(text: &str) -> Vec<(&'static str, usize)> {
        let faults = check(&terms(PAGE_TEXT), &[("a.md".into(), text.into())]);
        faults.into_iter().map(|fault| (fault.code, fault.line)).collect()
    }

    #[test]
    fn a_wrong_spelling_is_found_as_a_whole_word_only() {
        assert_eq!(codes("re-tear sling"), []);
        assert_eq!(codes("re-tear, sling\nRetear rates"), [("wrong-term", 2)]);
        assert_eq!(codes("re-tear sling retearing"), []);
    }

    #[test]
    fn a_term_that_nothing_uses_is_told() {
        assert_eq!(codes("a re-tear"), [("term-unused", 4)]);
        assert_eq!(codes("the sling"), [("term-unused", 3)]);
    }
}
