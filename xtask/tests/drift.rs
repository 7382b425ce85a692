//! What is generated and committed must be what its sources give.

use std::path::Path;

#[test]
fn the_table_of_evidence_is_current() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).parent().expect("the workspace");
    let reading = xtask::evidence::read_folder(root).expect("the evidence folder");
    xtask::print(&reading.found, &reading.files);
    assert!(!reading.failed, "the evidence folder has faults");
    for output in xtask::evidence::outputs(&reading.table) {
        assert!(output.is_current(root), "{} has drifted: run `cargo xtask evidence`", output.path);
    }
}
