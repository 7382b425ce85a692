//! From bytes to text, refusing what no person wrote.

use diagnostic::Diagnostic;

/// Files over one mebibyte are refused unread.
pub const MAX_FILE_BYTES: u64 = 1 << 20;

/// The text of a file's bytes.
///
/// # Errors
/// - `file-too-large`: over [`MAX_FILE_BYTES`]
/// - `not-utf-8`: the bytes are not UTF-8 text
/// - `empty-file`: nothing but white space
pub fn text_of(name: &str, bytes: Vec<u8>) -> Result<String, Diagnostic> {
    if bytes.len() as u64 > MAX_FILE_BYTES {
        return Err(too_large(name));
    }
    let text = String::from_utf8(bytes).map_err(|error| {
        let at = error.utf8_error().valid_up_to();
        let line = error.as_bytes()[..at].iter().filter(|&&b| b == b'\n').count() + 1;
        Diagnostic::error("not-utf-8", format!("{name} is not UTF-8 text (first fault in line {line})"))
            .help("save the file as UTF-8")
    })?;
    // An editor on one platform puts an invisible mark in front.
    let text = text.strip_prefix('\u{feff}').map(str::to_owned).unwrap_or(text);
    if text.trim().is_empty() {
        return Err(Diagnostic::error("empty-file", format!("{name} is empty"))
            .help("examples of every file stand in the examples folder"));
    }
    Ok(text)
}

/// The refusal of a file that was not read because of its size.
pub fn too_large(name: &str) -> Diagnostic {
    Diagnostic::error("file-too-large", format!("{name} is larger than 1 MiB and was not read"))
        .help("a record, protocol or settings file is a few kilobytes; is this the right file?")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn refusals_carry_their_code() {
        let code = |bytes: Vec<u8>| text_of("f", bytes).map_err(|d| d.code);
        assert_eq!(code(vec![b' '; 1 << 20]), Err("empty-file"));
        assert_eq!(code(vec![b' '; (1 << 20) + 1]), Err("file-too-large"));
        assert_eq!(code(vec![b'a', 0xff]), Err("not-utf-8"));
        assert_eq!(code("\u{feff}a = 1".into()), Ok("a = 1".to_owned()));
    }
}
