//! The whole command from a cold start: process, files, plan, document.

use std::path::Path;
use std::process::{Command, Stdio};

use criterion::{Criterion, criterion_group, criterion_main};

fn cold(criterion: &mut Criterion) {
    let examples = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../examples");
    let mut group = criterion.benchmark_group("prescribe --json, cold");
    for record in ["small-cuff", "large-cuff", "sparse", "subscapularis"] {
        group.bench_function(record, |bench| {
            bench.iter(|| {
                let status = Command::new(env!("CARGO_BIN_EXE_mendarc"))
                    .arg("prescribe")
                    .arg(examples.join(format!("{record}.toml")))
                    .arg("--json")
                    .stdout(Stdio::null())
                    .stderr(Stdio::null())
                    .status()
                    .expect("the binary runs");
                assert!(status.success());
            });
        });
    }
    group.finish();
}

criterion_group!(benches, cold);
criterion_main!(benches);
