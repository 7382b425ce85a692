//! A text of any length in pieces that end at the end of a line.

use std::io::Read;

/// So much is read at once, and no line may be longer.
pub const PIECE_BYTES: usize = 1 << 18;

/// Some whole lines.
#[derive(Debug, PartialEq, Eq)]
pub struct Piece {
    pub bytes: Vec<u8>,
    /// The number of the first of them, from 1.
    pub first_line: u64,
    /// Whether this is the start of a line that is longer than a piece; the rest of it was passed over.
    pub cut: bool,
}

/// Reads a text piece by piece; empty lines at its end are left out.
#[derive(Debug)]
pub struct Lines<R> {
    from: R,
    buffer: Vec<u8>,
    next_line: u64,
    ended: bool,
}

impl<R: Read> Lines<R> {
    pub fn new(from: R) -> Self {
        Self { from, buffer: Vec::new(), next_line: 1, ended: false }
    }

    /// The first line without its ending; none where the text is empty, and none of a line longer than a piece.
    pub fn first(&mut self) -> std::io::Result<Option<Vec<u8>>> {
        while !self.ended && !self.buffer.contains(&b'\n') && self.buffer.len() < PIECE_BYTES {
            self.fill()?;
        }
        let end = self.buffer.iter().position(|byte| *byte == b'\n');
        if self.buffer.iter().all(u8::is_ascii_whitespace) && self.ended || end.is_none() && !self.ended {
            return Ok(None);
        }
        let after = end.map_or(self.buffer.len(), |end| end + 1);
        let mut line: Vec<u8> = self.buffer.drain(..after).collect();
        while line.last().is_some_and(u8::is_ascii_whitespace) {
            line.pop();
        }
        self.next_line += 1;
        Ok(Some(line))
    }

    /// The next piece; none at the end.
    pub fn next(&mut self) -> std::io::Result<Option<Piece>> {
        loop {
            let full = self.buffer.len() >= PIECE_BYTES;
            if !full && !self.ended {
                self.fill()?;
                continue;
            }
            // Lines with nothing on them wait until something follows, the text ends, or they fill the buffer.
            let last = match self.buffer.iter().rposition(|byte| !byte.is_ascii_whitespace()) {
                None if self.ended => return Ok(None),
                last => last,
            };
            let end = if self.ended {
                self.buffer.len()
            } else {
                let after = last.unwrap_or_default();
                let whole = self.buffer[after..].iter().position(|byte| *byte == b'\n').map(|end| after + end + 1);
                let before = || self.buffer[..after].iter().rposition(|byte| *byte == b'\n').map(|at| at + 1);
                let empty = || self.buffer.iter().rposition(|byte| *byte == b'\n').map(|at| at + 1);
                match if last.is_some() { whole.or_else(before) } else { empty() } {
                    Some(end) => end,
                    None => return self.long_line().map(Some),
                }
            };
            let rest = self.buffer.split_off(end);
            let mut bytes = std::mem::replace(&mut self.buffer, rest);
            if let Some(last) = last.filter(|_| self.ended) {
                bytes.truncate(last + 1);
            }
            let first_line = self.next_line;
            let ends = bytes.iter().filter(|byte| **byte == b'\n').count() as u64;
            self.next_line += ends + u64::from(bytes.last() != Some(&b'\n'));
            return Ok(Some(Piece { bytes, first_line, cut: false }));
        }
    }

    /// Passes over the rest of a line that is too long.
    fn long_line(&mut self) -> std::io::Result<Piece> {
        let first_line = self.next_line;
        let mut bytes = std::mem::take(&mut self.buffer);
        bytes.truncate(SHOWN_OF_LONG);
        self.next_line += 1;
        while !self.ended {
            self.fill()?;
            if let Some(end) = self.buffer.iter().position(|byte| *byte == b'\n') {
                self.buffer.drain(..=end);
                break;
            }
            self.buffer.clear();
        }
        Ok(Piece { bytes, first_line, cut: true })
    }

    fn fill(&mut self) -> std::io::Result<()> {
        self.buffer.reserve(PIECE_BYTES);
        let wanted = (PIECE_BYTES.saturating_sub(self.buffer.len())).max(1) as u64;
        let read = self.from.by_ref().take(wanted).read_to_end(&mut self.buffer)?;
        self.ended = (read as u64) < wanted;
        Ok(())
    }
}

/// Of a line that is too long so much is kept, to be shown.
const SHOWN_OF_LONG: usize = 64;

#[cfg(test)]
mod tests {
    use super::*;

    fn pieces(text: &[u8]) -> Vec<Piece> {
        let mut lines = Lines::new(text);
        std::iter::from_fn(|| lines.next().expect("bytes can be read")).collect()
    }

    #[test]
    fn a_short_text_is_one_piece_without_the_empty_lines_at_its_end() {
        let whole = |bytes: &[u8], first_line| Piece { bytes: bytes.to_vec(), first_line, cut: false };
        assert_eq!(pieces(b""), []);
        assert_eq!(pieces(b"\n\n \r\n"), []);
        assert_eq!(pieces(b"a\n\nb"), [whole(b"a\n\nb", 1)]);
        assert_eq!(pieces(b"a\r\nb\r\n\r\n\n  "), [whole(b"a\r\nb", 1)]);
    }

    #[test]
    fn pieces_end_at_the_end_of_a_line_and_know_its_number() {
        for length in [7_usize, 100, 1000] {
            let line = format!("{}\n", "x".repeat(length));
            let count = 3 * PIECE_BYTES / line.len();
            let text = line.repeat(count);
            let pieces = pieces(text.as_bytes());
            assert!(pieces.len() >= 3, "{}", pieces.len());
            let mut next = 1;
            for piece in &pieces {
                assert_eq!((piece.first_line, piece.cut), (next, false));
                let found = piece.bytes.split(|byte| *byte == b'\n').filter(|found| !found.is_empty());
                next += found.inspect(|found| assert_eq!(found.len(), length)).count() as u64;
            }
            assert_eq!(next, count as u64 + 1);
        }
    }

    #[test]
    fn a_line_longer_than_a_piece_is_passed_over() {
        let text = [b"a\n".to_vec(), vec![b'x'; 3 * PIECE_BYTES], b"\nb\n".to_vec()].concat();
        let pieces = pieces(&text);
        let told: Vec<(u64, bool, usize)> =
            pieces.iter().map(|piece| (piece.first_line, piece.cut, piece.bytes.len())).collect();
        assert_eq!(told, [(1, false, 2), (2, true, SHOWN_OF_LONG), (3, false, 1)]);
    }

    #[test]
    fn empty_lines_between_rows_are_lines_however_many() {
        for count in [3, PIECE_BYTES - 1, PIECE_BYTES, 3 * PIECE_BYTES + 7] {
            let text = format!("a\n{}b\n\n", "\n".repeat(count));
            let pieces = pieces(text.as_bytes());
            let last = pieces.last().expect("there are some");
            let lines = |bytes: &[u8]| bytes.iter().filter(|byte| **byte == b'\n').count() as u64;
            assert!(pieces.iter().all(|piece| !piece.cut));
            assert_eq!(last.first_line + lines(&last.bytes), count as u64 + 2, "the line that b stands in");
            assert!(last.bytes.ends_with(b"b"));
        }
    }

    #[test]
    fn the_first_line_comes_by_itself() {
        let mut lines = Lines::new(&b"head, er\r\n1\n"[..]);
        assert_eq!(lines.first().expect("readable"), Some(b"head, er".to_vec()));
        assert_eq!(
            lines.next().expect("readable").map(|piece| (piece.bytes, piece.first_line)),
            Some((b"1".to_vec(), 2))
        );
        assert_eq!(Lines::new(&b" \n\n"[..]).first().expect("readable"), None);
        assert_eq!(Lines::new(&b"only"[..]).first().expect("readable"), Some(b"only".to_vec()));
    }
}
