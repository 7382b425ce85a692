//! Our counters against the values of independent ones, see `checks/readability/README.md`.

use std::fs;
use std::path::PathBuf;

use serde_json::{Map, Value};
use wording::{Ease, Language, syllables};

fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../checks/readability")
}

fn values(section: &str) -> Map<String, Value> {
    let text = fs::read_to_string(folder().join("values.json")).expect("values.json");
    let values: Value = serde_json::from_str(&text).expect("JSON");
    values[section].as_object().expect("a section of values.json").clone()
}

#[test]
fn probe() {
    for (name, v) in values("documents") {
        let language = if name.starts_with("en-") { Language::English } else { Language::Spanish };
        let text = fs::read_to_string(folder().join("corpus").join(format!("{name}.txt"))).unwrap();
        let lines: Vec<&str> = text.lines().collect();
        let ease = Ease::of(&lines, language);
        let g = |k: &str| v[k].as_f64().unwrap_or(f64::NAN) as f32;
        let cmu = 0.39 * g("words") / g("sentences") + 11.8 * g("syllables_by_dictionary") / g("words") - 15.59;
        let cmu2 =
            0.39 * ease.words as f32 / ease.sentences as f32 + 11.8 * g("syllables_by_dictionary") / g("words") - 15.59;
        if language == Language::English {
            println!(
                "{name:24} {:?} {} {} {} {} | FK {:.2} d {:+.2} cmu {:+.2} cmu+sent {:+.2} | smog {:.2} {:+.2}",
                ease,
                g("words"),
                g("sentences"),
                g("syllables"),
                g("syllables_by_dictionary"),
                ease.kincaid_grade(),
                ease.kincaid_grade() - g("flesch_kincaid_grade"),
                ease.kincaid_grade() - cmu,
                ease.kincaid_grade() - cmu2,
                ease.smog_grade(),
                ease.smog_grade() - g("smog_index")
            );
        } else {
            println!(
                "{name:24} {:?} {} {} {} {} | FH {:.2} d {:+.2}",
                ease,
                g("words"),
                g("sentences"),
                g("syllables"),
                g("syllables_by_dictionary"),
                ease.fernandez_huerta(),
                ease.fernandez_huerta() - g("fernandez_huerta")
            );
        }
    }
    for (s, l) in [("words_en", Language::English), ("words_es", Language::Spanish)] {
        let mut n = 0;
        for (word, counts) in values(s) {
            n += 1;
            let c = syllables(&word, l) as u64;
            if !counts.as_array().unwrap().iter().any(|x| x.as_u64() == Some(c)) {
                print!("{word} {c} {counts}; ");
            }
        }
        println!("\n{s} {n}");
    }
}

#[test]
fn cmu() {
    let t = fs::read_to_string("/tmp/w/cmu.txt").unwrap();
    let (mut n, mut ok, mut sum) = (0, 0, 0i64);
    for l in t.lines() {
        let mut p = l.split(' ');
        let w = p.next().unwrap();
        let cs: Vec<i64> = p.map(|x| x.parse().unwrap()).collect();
        let c = syllables(w, Language::English) as i64;
        n += 1;
        if cs.contains(&c) { ok += 1 } else { sum += c - cs[0] }
    }
    println!("CMU {n} ok {ok} {:.3} bias {sum}", ok as f64 / n as f64);
}
