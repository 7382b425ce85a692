//! One line of a file of matrices.

use body::{Frame, FrameCheck, Matrix};
use diagnostic::Diagnostic;

use super::header::COLUMNS;
use super::numbers::{number, short};
use crate::command::found::Found;

/// Why a line gives no angles, or what is told of one that does.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RowFault {
    /// Not nine cells.
    Cells,
    /// A cell that is no number.
    NotANumber { cell: u8 },
    /// A cell that says it is no number, or is infinite.
    NotFinite { cell: u8 },
    /// A number that is no part of any frame.
    OutOfRange { cell: u8 },
    /// A line longer than any row.
    TooLong,
    /// A reflection.
    LeftHanded,
    /// No turn is nearer than others.
    Flat,
    /// Not orthonormal; the row is read all the same.
    Off,
}

impl RowFault {
    /// Every code, in the order of [`RowFault::index`].
    pub const CODES: [&str; 8] = [
        "cells-in-row",
        "cell-not-a-number",
        "cell-not-finite",
        "out-of-range",
        "line-too-long",
        "frame-left-handed",
        "frame-flat",
        "frame-not-orthonormal",
    ];

    pub const fn index(self) -> usize {
        match self {
            Self::Cells => 0,
            Self::NotANumber { .. } => 1,
            Self::NotFinite { .. } => 2,
            Self::OutOfRange { .. } => 3,
            Self::TooLong => 4,
            Self::LeftHanded => 5,
            Self::Flat => 6,
            Self::Off => 7,
        }
    }

    pub const fn code(self) -> &'static str {
        Self::CODES[self.index()]
    }

    /// What is wrong with the frame of a row that was read.
    pub const fn of_frame(frame: Frame) -> Option<Self> {
        match frame {
            Frame::Turn => None,
            Frame::Off => Some(Self::Off),
            Frame::LeftHanded => Some(Self::LeftHanded),
            Frame::Flat | Frame::NotFinite => Some(Self::Flat),
        }
    }

    /// What a person is told.
    pub fn told(self, line: &[u8], number: u64, check: Option<&FrameCheck>) -> Found {
        let cells = || line.split(|byte| *byte == b',');
        let told = |fault: Diagnostic, cell: u8| {
            let before = cells().take(usize::from(cell)).map(|cell| cell.len() + 1).sum::<usize>();
            let column = String::from_utf8_lossy(&line[..before.min(line.len())]).chars().count() + 1;
            Found::at(fault, number, column)
        };
        let shown = |cell: u8| shown(cells().nth(usize::from(cell)).unwrap_or_default());
        let name = |cell: u8| COLUMNS.get(usize::from(cell)).copied().unwrap_or("a cell");
        match self {
            Self::Cells if line.trim_ascii().is_empty() => told(
                Diagnostic::error("cells-in-row", "a row has nine numbers, and this line is empty")
                    .help("leave out lines between rows, or write the row"),
                0,
            ),
            Self::Cells => {
                let fault = Diagnostic::error(
                    "cells-in-row",
                    format!("a row has nine numbers, and this one has {} cells", cells().count()),
                );
                let help = if line.contains(&b';') {
                    "separate columns with commas, and write decimals with a point"
                } else {
                    "write the matrix row by row, nine numbers with commas between"
                };
                told(fault.help(help), 0)
            }
            Self::NotANumber { cell } => {
                let text = shown(cell);
                let fault = if text.trim().is_empty() {
                    format!("{} is empty", name(cell))
                } else {
                    format!("{}: `{text}` is not a number", name(cell))
                };
                told(Diagnostic::error("cell-not-a-number", fault).help("write numbers like -0.556670"), cell)
            }
            Self::NotFinite { cell } => told(
                Diagnostic::error("cell-not-finite", format!("{}: `{}` is no finite number", name(cell), shown(cell)))
                    .help("the marker was lost here, or a division by zero made this; the row gives no angles"),
                cell,
            ),
            Self::OutOfRange { cell } => told(
                Diagnostic::error("out-of-range", format!("{}: `{}` is no part of any frame", name(cell), shown(cell)))
                    .help("entries of a frame lie between -1 and 1"),
                cell,
            ),
            Self::TooLong => told(
                Diagnostic::error("line-too-long", "this line is longer than any row and was passed over")
                    .help("each row is a line of its own; is this the right file?"),
                0,
            ),
            Self::LeftHanded => told(
                Diagnostic::error("frame-left-handed", "the axes are left-handed: this is a reflection, not a turn")
                    .help(
                        "two axes or two columns are swapped, or one of both frames was mirrored and the other was not",
                    )
                    .help("give a left arm as it was measured, with --side left"),
                0,
            ),
            Self::Flat => told(
                Diagnostic::error("frame-flat", "the axes lie in one plane, so no turn is nearer than others")
                    .help("landmarks that lie on one line make such a matrix"),
                0,
            ),
            Self::Off => {
                let defect = check.map_or_else(String::new, |check| format!(" by {:.2e}", check.defect));
                told(
                    Diagnostic::warning(
                        "frame-not-orthonormal",
                        format!("the matrix is off orthonormal{defect}; the nearest turn is read"),
                    )
                    .help("write more decimals, or look whether frames were averaged number by number"),
                    0,
                )
            }
        }
    }
}

/// The line at the start of a text, and what it says; the line without its ending, and where the next one starts.
pub fn first_of(text: &[u8]) -> (Result<Matrix, RowFault>, &[u8], usize) {
    if let Some((matrix, length)) = plain(text) {
        let ending = &text[length..];
        let after = ending.iter().position(|byte| *byte == b'\n').map_or(text.len(), |end| length + end + 1);
        return (Ok(matrix), &text[..length], after);
    }
    let end = text.iter().position(|byte| *byte == b'\n');
    let line = &text[..end.unwrap_or(text.len())];
    let line = line.strip_suffix(b"\r").unwrap_or(line);
    (read(line), line, end.map_or(text.len(), |end| end + 1))
}

/// Nine plain decimals with commas between and nothing else up to the end of the line: the usual row, read in one go.
fn plain(text: &[u8]) -> Option<(Matrix, usize)> {
    let mut entries = [0.0; 9];
    let mut at = 0;
    for (place, entry) in entries.iter_mut().enumerate() {
        if place > 0 {
            (text.get(at) == Some(&b',')).then_some(())?;
            at += 1;
        }
        let (number, used) = short(&text[at..])?;
        (number.abs() <= GREATEST).then_some(())?;
        *entry = number;
        at += used;
    }
    matches!(text[at..], [] | [b'\n', ..] | [b'\r', b'\n', ..] | [b'\r']).then_some((Matrix::from_array(entries), at))
}

/// Reads one line.
fn read(line: &[u8]) -> Result<Matrix, RowFault> {
    let mut entries = [0.0; 9];
    let mut cells = 0_u8;
    let mut fault = None;
    for cell in line.split(|byte| *byte == b',') {
        let Some(entry) = entries.get_mut(usize::from(cells)) else { return Err(RowFault::Cells) };
        match number(cell) {
            Some(number) if !number.is_finite() => {
                fault = fault.or(Some(RowFault::NotFinite { cell: cells }));
            }
            Some(number) if number.abs() > GREATEST => {
                fault = fault.or(Some(RowFault::OutOfRange { cell: cells }));
            }
            Some(number) => *entry = number,
            None => fault = fault.or(Some(RowFault::NotANumber { cell: cells })),
        }
        cells += 1;
    }
    if usize::from(cells) != entries.len() {
        return Err(RowFault::Cells);
    }
    fault.map_or(Ok(Matrix::from_array(entries)), Err)
}

/// Entries of a frame are at most one; what is far larger is another quantity.
const GREATEST: f64 = 1e6;

/// A cell as it may be shown: short, and nothing that steers a terminal.
fn shown(cell: &[u8]) -> String {
    let text = String::from_utf8_lossy(cell);
    let plain: String = text.trim().chars().take(SHOWN).map(|c| if c.is_control() { '\u{fffd}' } else { c }).collect();
    if text.trim().chars().nth(SHOWN).is_some() { plain + "…" } else { plain }
}

const SHOWN: usize = 24;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_fault_of_a_line_is_told() {
        assert!(read(b"1,0,0,0,1,0,0,0,1\r").is_ok());
        assert_eq!(read(b"1,0,0,0,1,0,0,0"), Err(RowFault::Cells));
        assert_eq!(read(b"1,0,0,0,1,0,0,0,1,"), Err(RowFault::Cells));
        assert_eq!(read(b""), Err(RowFault::Cells));
        assert_eq!(read(b"1;0;0;0;1;0;0;0;1"), Err(RowFault::Cells));
        assert_eq!(read(b"1,0,nan,x,1,0,0,0,1"), Err(RowFault::NotFinite { cell: 2 }));
        assert_eq!(read(b"1,0,0,,1,0,0,0,1"), Err(RowFault::NotANumber { cell: 3 }));
        assert_eq!(read(b"1,0,0,0,1,0,0,0,1e7"), Err(RowFault::OutOfRange { cell: 8 }));
        let line = "1,0,é,x".as_bytes();
        let found = RowFault::NotANumber { cell: 3 }.told(line, 7, None);
        assert_eq!((found.diagnostic.message.as_str(), found.place), ("r21: `x` is not a number", Some((7, 7))));
    }

    #[test]
    fn the_usual_row_reads_as_any_row() {
        let plain_line = b"0.5,-0.866025,0,.866025,0.5,0.,0,0,1";
        for ending in [&b""[..], b"\n", b"\r\n", b"\r", b"\nmore", b"\r\nmore"] {
            let text = [&plain_line[..], ending].concat();
            let (matrix, line, after) = first_of(&text);
            assert!(plain(&text).is_some());
            assert_eq!((matrix, line), (read(plain_line), &plain_line[..]), "{ending:?}");
            assert_eq!(&text[after..], ending.strip_suffix(b"more").map_or(&b""[..], |_| b"more"));
        }
        for line in
            ["0.5 ,0,0,0,1,0,0,0,1", "1e0,0,0,0,1,0,0,0,1", "1,0,0,0,1,0,0,0,1,", "1,0,0,0,1,0,0,0,1 ", "1,0", ""]
        {
            let text = format!("{line}\n1,0,0,0,1,0,0,0,1\n");
            let (matrix, first, after) = first_of(text.as_bytes());
            assert!(plain(text.as_bytes()).is_none(), "{line}");
            assert_eq!((matrix, first, after), (read(line.as_bytes()), line.as_bytes(), line.len() + 1));
        }
    }

    #[test]
    fn every_fault_is_told_with_its_own_code() {
        let faults = [
            RowFault::Cells,
            RowFault::NotANumber { cell: 1 },
            RowFault::NotFinite { cell: 1 },
            RowFault::OutOfRange { cell: 1 },
            RowFault::TooLong,
            RowFault::LeftHanded,
            RowFault::Flat,
            RowFault::Off,
        ];
        for (at, fault) in faults.into_iter().enumerate() {
            assert_eq!(fault.index(), at);
            assert_eq!(fault.told(b"1,x", 2, None).diagnostic.code, fault.code());
        }
    }

    #[test]
    fn what_is_shown_of_a_cell_can_steer_nothing() {
        assert_eq!(shown(b"\x1b[31mred"), "\u{fffd}[31mred");
        assert_eq!(shown(&[b'x'; 100]).chars().count(), SHOWN + 1);
    }
}
