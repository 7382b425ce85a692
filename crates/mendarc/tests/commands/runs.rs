//! Running the binary in the folder of the workspace.

use std::path::{Path, PathBuf};

use serde_json::Value;

/// What came of a run.
pub struct Run {
    pub status: i32,
    pub stdout: String,
    pub stderr: String,
}

/// The folder of the workspace.
pub fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

/// Runs `mendarc` with arguments.
pub fn mendarc<S: AsRef<std::ffi::OsStr>>(arguments: &[S]) -> Run {
    let output = assert_cmd::cargo::cargo_bin_cmd!("mendarc")
        .current_dir(root())
        .args(arguments)
        .output()
        .expect("the binary runs");
    let text = |bytes: Vec<u8>| String::from_utf8(bytes).expect("what is printed is UTF-8");
    Run {
        status: output.status.code().expect("the run was not stopped by a signal"),
        stdout: text(output.stdout),
        stderr: text(output.stderr),
    }
}

impl Run {
    /// The one JSON document of a run; more or less than one is a failure.
    #[track_caller]
    pub fn document(&self) -> Value {
        let documents: Vec<Value> = serde_json::Deserializer::from_str(&self.stdout)
            .into_iter::<Value>()
            .map(|document| document.unwrap_or_else(|fault| panic!("{fault} in {}", self.stdout)))
            .collect();
        let [document] = &documents[..] else {
            panic!("{} documents on stdout: {}\n{}", documents.len(), self.stdout, self.stderr);
        };
        assert!(document.is_object(), "{document}");
        document.clone()
    }

    /// The codes of the diagnostics of a severity.
    #[track_caller]
    pub fn codes(&self, severity: &str) -> Vec<String> {
        let document = self.document();
        let all = document["diagnostics"].as_array().expect("there is always a list of diagnostics");
        all.iter()
            .filter(|found| found["severity"] == severity)
            .filter_map(|found| found["code"].as_str().map(str::to_owned))
            .collect()
    }
}

/// The records among the examples, by their paths below the workspace.
pub fn example_records() -> Vec<String> {
    let mut records: Vec<String> = std::fs::read_dir(root().join("examples"))
        .expect("the examples can be listed")
        .map(|file| file.expect("a file of the folder").file_name().to_string_lossy().into_owned())
        .filter(|name| name.ends_with(".toml") && !name.starts_with("practice") && !name.starts_with("opened"))
        .map(|name| format!("examples/{name}"))
        .collect();
    records.sort();
    assert!(records.len() >= 7, "{records:?}");
    records
}

/// A file in a folder of its own that goes away with it.
pub struct Written {
    folder: tempfile::TempDir,
}

impl Written {
    pub fn new() -> Self {
        Self { folder: tempfile::tempdir().expect("a folder can be made") }
    }

    /// Writes a file and gives its path.
    pub fn file(&self, name: &str, content: impl AsRef<[u8]>) -> String {
        let path = self.folder.path().join(name);
        std::fs::write(&path, content).expect("a file can be written");
        path.to_string_lossy().into_owned()
    }

    /// A path inside the folder, whether or not anything is there.
    pub fn path(&self, name: &str) -> String {
        self.folder.path().join(name).to_string_lossy().into_owned()
    }
}
