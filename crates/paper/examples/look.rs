//! Writes sample sheets into a folder, to look at: `cargo run -p paper --example look -- DIR`.

use sheets::{Reader, Size};

#[path = "../tests/sample/mod.rs"]
mod sample;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let folder = std::env::args().nth(1).ok_or("give a folder")?;
    let sheets = [
        ("patient", sample::sheet(Reader::Patient, Size::A4, sample::every_kind())),
        ("clinician", sample::sheet(Reader::Clinician, Size::Letter, sample::every_kind())),
        ("handout", sample::handout()),
    ];
    for (name, document) in &sheets {
        let path = std::path::Path::new(&folder).join(name);
        std::fs::write(path.with_extension("json"), serde_json::to_vec(document)?)?;
        std::fs::write(path.with_extension("pdf"), paper::pdf(document)?)?;
    }
    Ok(())
}
