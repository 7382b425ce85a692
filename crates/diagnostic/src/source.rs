//! Files that were read, and places in them.

use std::sync::OnceLock;

/// A file among the [`Sources`] of one run.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct FileId(pub u16);

/// A half-open run of bytes in a file.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Span {
    /// The file.
    pub file: FileId,
    /// First byte.
    pub start: u32,
    /// First byte after.
    pub end: u32,
}

/// A value and the place it was written at.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Spanned<T> {
    /// What was written.
    pub value: T,
    /// Where.
    pub span: Span,
}

impl<T> Spanned<T> {
    /// A value with its place.
    pub const fn new(value: T, span: Span) -> Self {
        Self { value, span }
    }

    /// The same place, another value.
    pub fn map<U>(self, f: impl FnOnce(T) -> U) -> Spanned<U> {
        Spanned { value: f(self.value), span: self.span }
    }
}

/// A place as people count: line and column from 1, in characters.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Position {
    /// Line, from 1.
    pub line: usize,
    /// Column, from 1, in characters.
    pub column: usize,
}

/// One file's name and text.
#[derive(Debug, Clone)]
pub struct Source {
    /// The name as the user gave it.
    pub name: String,
    /// The text.
    pub text: String,
    /// Where each line starts, counted once it is asked for: every reason of a prescription asks.
    lines: OnceLock<Vec<usize>>,
}

impl Source {
    /// A file with its text.
    pub fn new(name: impl Into<String>, text: impl Into<String>) -> Self {
        Self { name: name.into(), text: text.into(), lines: OnceLock::new() }
    }

    /// Line and column of a byte offset; an offset inside a character counts as its start.
    pub fn position(&self, offset: u32) -> Position {
        let mut offset = (offset as usize).min(self.text.len());
        while !self.text.is_char_boundary(offset) {
            offset -= 1;
        }
        let lines = self.lines.get_or_init(|| {
            let ends = self.text.bytes().enumerate().filter(|(_, byte)| *byte == b'\n');
            std::iter::once(0).chain(ends.map(|(at, _)| at + 1)).collect()
        });
        let line = lines.partition_point(|&start| start <= offset);
        let start = lines[line - 1];
        Position { line, column: self.text[start..offset].chars().count() + 1 }
    }
}

/// All files of one run.
#[derive(Debug, Clone, Default)]
pub struct Sources {
    files: Vec<Source>,
}

impl Sources {
    /// No files yet.
    pub fn new() -> Self {
        Self::default()
    }

    /// Adds a file.
    pub fn add(&mut self, name: impl Into<String>, text: impl Into<String>) -> FileId {
        let id = FileId(u16::try_from(self.files.len()).unwrap_or(u16::MAX));
        self.files.push(Source::new(name, text));
        id
    }

    /// The file with this id, if it was added here.
    pub fn get(&self, file: FileId) -> Option<&Source> {
        self.files.get(usize::from(file.0))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_count_characters_not_bytes() {
        let source = Source::new("a", "é = 1\nab = 2");
        assert_eq!(source.position(5), Position { line: 1, column: 5 });
        assert_eq!(source.position(1), Position { line: 1, column: 1 });
        assert_eq!(source.position(7), Position { line: 2, column: 1 });
        assert_eq!(source.position(9999), Position { line: 2, column: 7 });
    }
}
