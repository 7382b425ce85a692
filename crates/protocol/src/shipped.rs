//! The protocol files that come with the program.

macro_rules! files {
    ($($name:literal,)+) => {
        /// Name and text of every shipped protocol file, as `folder/file.toml`.
        pub static SHIPPED: &[(&str, &str)] =
            &[$(($name, include_str!(concat!("../../../protocols/", $name))),)+];
    };
}

files! {
    "cuff/family.toml",
    "cuff/arm.toml",
    "cuff/staged.toml",
    "cuff/delayed.toml",
    "cuff/early-passive.toml",
    "cuff/rules.toml",
    "capsular-release/family.toml",
    "capsular-release/release.toml",
    "capsular-release/rules.toml",
}
