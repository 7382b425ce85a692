//! `cargo xtask`: see `cargo xtask help`.

use std::path::{Path, PathBuf};
use std::process::ExitCode;

use xtask::Mode;

const HELP: &str = "\
cargo xtask evidence            write the Rust table and docs/evidence.md from evidence/*.toml
cargo xtask evidence --check    the same without writing; fails where the files on disk differ
cargo xtask schema [--check]    JSON Schemas of the files people write, for editors
cargo xtask recordings --out DIR --seed N --count K [--exercise ID]
                                invented recordings of a phone's sensors, each with its truth
cargo xtask tidy                layers, bare numbers, terms, lengths, and that nothing generated has drifted";

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let outcome = match words.as_slice() {
        ["evidence"] => xtask::evidence::run(&root(), Mode::Write),
        ["evidence", "--check"] => xtask::evidence::run(&root(), Mode::Check),
        ["schema"] => xtask::schema::run(&root(), Mode::Write),
        ["schema", "--check"] => xtask::schema::run(&root(), Mode::Check),
        ["recordings", options @ ..] => {
            xtask::recordings::Order::read(options).and_then(|order| xtask::recordings::run(&order))
        }
        ["tidy"] => xtask::tidy::run(&root()),
        ["help" | "--help" | "-h"] => {
            println!("{HELP}");
            return ExitCode::SUCCESS;
        }
        _ => {
            eprintln!("{HELP}");
            return ExitCode::from(2);
        }
    };
    match outcome {
        Ok(true) => ExitCode::SUCCESS,
        Ok(false) => ExitCode::from(1),
        Err(failure) => {
            eprintln!("error: {failure:#}");
            ExitCode::from(2)
        }
    }
}

/// The folder of the workspace: the parent of this crate's own folder.
fn root() -> PathBuf {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    here.parent().unwrap_or(here).to_path_buf()
}
