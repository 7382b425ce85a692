//! What holds for every record: shifting, mirroring, holding, freezing and adding never loosen anything,
//! and whatever is issued lies inside the limits of its day.

mod adding;
mod inside;
mod moving;
mod one_day;
mod plans;
mod records;

use proptest::prelude::ProptestConfig;

/// Few records for each property: every one of them composes whole plans.
fn config() -> ProptestConfig {
    ProptestConfig { cases: 20, failure_persistence: None, ..ProptestConfig::default() }
}
