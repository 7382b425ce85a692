//! Just enough of Rust's lexical structure to tell numbers from words, texts and comments.

/// What a token is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// A name or a keyword.
    Word,
    /// A number with its suffix.
    Number,
    /// A text, a character, or a lifetime.
    Quoted,
    /// One sign.
    Sign,
}

/// A token and the line it stands on, from 1.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Token<'t> {
    /// What it is.
    pub kind: Kind,
    /// Its text.
    pub text: &'t str,
    /// Its line.
    pub line: usize,
}

/// The tokens of a Rust text, without comments and white space.
pub fn tokens(text: &str) -> Vec<Token<'_>> {
    let mut out: Vec<Token<'_>> = Vec::new();
    let (mut at, mut line) = (0, 1);
    while let Some(first) = text[at..].chars().next() {
        let rest = &text[at..];
        let (kind, length) = if first.is_whitespace() {
            (None, first.len_utf8())
        } else if rest.starts_with("//") {
            (None, rest.find('\n').unwrap_or(rest.len()))
        } else if rest.starts_with("/*") {
            (None, block_comment(rest))
        } else if let Some(length) = quoted(rest) {
            (Some(Kind::Quoted), length)
        } else if first.is_ascii_digit() {
            let after_dot = out.last().is_some_and(|token| token.text == ".");
            (Some(Kind::Number), number(rest, after_dot))
        } else if first.is_alphabetic() || first == '_' {
            (Some(Kind::Word), word(rest))
        } else {
            (Some(Kind::Sign), first.len_utf8())
        };
        if let Some(kind) = kind {
            out.push(Token { kind, text: &rest[..length], line });
        }
        line += rest[..length].matches('\n').count();
        at += length;
    }
    out
}

fn word(rest: &str) -> usize {
    rest.find(|c: char| !c.is_alphanumeric() && c != '_').unwrap_or(rest.len())
}

fn number(rest: &str, after_dot: bool) -> usize {
    let mut length = word(rest);
    // After a dot stands the field of a tuple: `a.0.1` holds two of them and no 0.1.
    if after_dot || rest.starts_with("0x") {
        return length;
    }
    // "1.5" goes on; "1..5" and "1.max(2)" do not.
    if let Some(fraction) = rest[length..].strip_prefix('.')
        && !fraction.starts_with(|c: char| c == '.' || c.is_alphabetic() || c == '_')
    {
        length += 1 + word(fraction);
    }
    // "1e-5"
    if rest[..length].ends_with(['e', 'E']) && rest[length..].starts_with(['-', '+']) {
        length += 1 + word(&rest[length + 1..]);
    }
    length
}

fn block_comment(rest: &str) -> usize {
    let (mut at, mut depth) = (0, 0_usize);
    while at < rest.len() {
        let here = &rest[at..];
        if here.starts_with("/*") {
            (at, depth) = (at + 2, depth + 1);
        } else if here.starts_with("*/") {
            (at, depth) = (at + 2, depth - 1);
            if depth == 0 {
                return at;
            }
        } else {
            at += here.chars().next().map_or(1, char::len_utf8);
        }
    }
    rest.len()
}

/// The length of a text, a character or a lifetime that starts here.
fn quoted(rest: &str) -> Option<usize> {
    let body = rest.trim_start_matches(['b', 'c', 'r']);
    let prefix = &rest[..rest.len() - body.len()];
    if !["", "b", "c", "r", "br", "cr"].contains(&prefix) {
        return None;
    }
    if prefix.ends_with('r') {
        let hashes = body.len() - body.trim_start_matches('#').len();
        let inner = body[hashes..].strip_prefix('"')?;
        let close = format!("\"{}", "#".repeat(hashes));
        let end = inner.find(&close).map_or(inner.len(), |end| end + close.len());
        return Some(prefix.len() + hashes + 1 + end);
    }
    if let Some(inner) = body.strip_prefix('"') {
        return Some(prefix.len() + 1 + escaped_until(inner, '"'));
    }
    let inner = body.strip_prefix('\'').filter(|_| matches!(prefix, "" | "b"))?;
    let mut letters = inner.chars();
    let is_character = letters.next() == Some('\\') || letters.next() == Some('\'');
    Some(prefix.len() + 1 + if is_character { escaped_until(inner, '\'') } else { word(inner) })
}

fn escaped_until(inner: &str, close: char) -> usize {
    let mut escaped = false;
    for (at, c) in inner.char_indices() {
        match c {
            _ if escaped => escaped = false,
            '\\' => escaped = true,
            _ if c == close => return at + c.len_utf8(),
            _ => {}
        }
    }
    inner.len()
}
