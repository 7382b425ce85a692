//! What holds for every record: shifting, mirroring, holding, freezing and adding never loosen anything,
//! and whatever is issued lies inside the limits of its day.

mod adding;
mod checked;
mod inside;
mod judged;
mod moving;
mod one_day;
mod plans;
mod records;
mod spoiled;
mod still;
mod two_shoulders;

use proptest::prelude::ProptestConfig;

/// Few records for each property, because every one of them composes whole plans; `PROPTEST_CASES` asks for more.
fn config() -> ProptestConfig {
    let asked = ProptestConfig::default();
    let cases = if std::env::var_os("PROPTEST_CASES").is_some() { asked.cases } else { 20 };
    ProptestConfig { cases, failure_persistence: None, ..asked }
}
