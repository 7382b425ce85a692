//! Rows on all cores, written in their order.
//!
//! One thread reads pieces and deals them out in turn; as many as there are cores make text of them; the caller takes the
//! texts in the same turn. Queues hold one piece each, so memory does not grow with the file.

use std::io::{Read, Write};
use std::sync::mpsc::{Receiver, SyncSender, sync_channel};

use body::{Matrix, Reading, Side, read_all};

use super::Shape;
use super::lines::{Lines, PIECE_BYTES, Piece};
use super::rows::{self, RowFault};
use super::tally::Tally;
use crate::json;
use crate::view;

/// More threads than this wait for the one that reads.
const MOST_THREADS: usize = 16;

/// A piece made into text.
struct Made {
    text: Vec<u8>,
    tally: Tally,
}

/// Reads all rows of an arm and writes them in order; gives what came of writing.
pub fn through(
    mut lines: Lines<impl Read + Send>,
    side: Side,
    shape: Shape,
    out: &mut impl Write,
    tally: &mut Tally,
) -> std::io::Result<()> {
    let threads = std::thread::available_parallelism().map_or(1, usize::from).min(MOST_THREADS);
    std::thread::scope(|scope| {
        let mut to_work = Vec::with_capacity(threads);
        let mut from_work = Vec::with_capacity(threads);
        for _ in 0..threads {
            let (pieces, taken) = sync_channel::<std::io::Result<Piece>>(1);
            let (made, texts) = sync_channel::<Made>(1);
            scope.spawn(move || work(&taken, &made, side, shape));
            to_work.push(pieces);
            from_work.push(texts);
        }
        scope.spawn(move || deal(&mut lines, &to_work));
        let mut first = true;
        for texts in from_work.iter().cycle() {
            // The first queue that ends is the one whose turn it would be.
            let Ok(made) = texts.recv() else { break };
            tally.extend(made.tally);
            // Every row of a document starts with the comma that the first one does without.
            let text =
                if first && shape == Shape::Document { made.text.get(1..).unwrap_or_default() } else { &made.text };
            first &= made.text.is_empty();
            out.write_all(text)?;
        }
        Ok(())
    })
}

/// Deals pieces out in turn, until the text ends or nobody takes them.
fn deal(lines: &mut Lines<impl Read>, to_work: &[SyncSender<std::io::Result<Piece>>]) {
    for queue in to_work.iter().cycle() {
        let piece = lines.next().transpose();
        let Some(piece) = piece else { break };
        let failed = piece.is_err();
        if queue.send(piece).is_err() || failed {
            break;
        }
    }
}

fn work(pieces: &Receiver<std::io::Result<Piece>>, made: &SyncSender<Made>, side: Side, shape: Shape) {
    let mut maker = Maker { side, shape, matrices: Vec::new(), lines: Vec::new(), readings: Vec::new() };
    while let Ok(piece) = pieces.recv() {
        let next = match piece {
            Ok(piece) => maker.make(&piece),
            Err(error) => Made { text: Vec::new(), tally: Tally::stopped(error) },
        };
        if made.send(next).is_err() {
            break;
        }
    }
}

/// Makes text of pieces; keeps its lists between them.
struct Maker {
    side: Side,
    shape: Shape,
    matrices: Vec<Matrix>,
    /// Where each line starts and ends in the piece, and what is wrong with it.
    lines: Vec<(usize, usize, Option<RowFault>)>,
    readings: Vec<Reading>,
}

impl Maker {
    fn make(&mut self, piece: &Piece) -> Made {
        let mut tally = Tally::default();
        let mut text = Vec::with_capacity(TEXT_PER_PIECE);
        if piece.cut {
            let fault = RowFault::TooLong;
            tally.summary.refused();
            tally.add_row(fault, &piece.bytes, piece.first_line, None);
            self.write_fault(&mut text, fault, piece.first_line);
            return Made { text, tally };
        }
        self.matrices.clear();
        self.lines.clear();
        let mut rest = &piece.bytes[..];
        while !rest.is_empty() {
            let (row, line, after) = rows::first_of(rest);
            let start = piece.bytes.len() - rest.len();
            self.lines.push((start, start + line.len(), row.err()));
            self.matrices.extend(row.ok());
            rest = &rest[after..];
        }
        read_all(&self.matrices, self.side, &mut self.readings);
        let mut readings = self.readings.iter();
        for ((start, end, fault), number) in self.lines.iter().zip(piece.first_line..) {
            let line = &piece.bytes[*start..*end];
            let reading = if fault.is_none() { readings.next() } else { None };
            let fault = fault.or_else(|| RowFault::of_frame(reading?.frame.frame));
            if let Some(fault) = fault {
                tally.add_row(fault, line, number, reading.map(|reading| &reading.frame));
            }
            match (reading.map(|reading| (reading, reading.angles)), fault) {
                (Some((reading, Some(angles))), fault) => {
                    let clinical = body::ClinicalReading::of(&angles);
                    let defect = fault.map(|_| reading.frame.defect);
                    tally.summary.add(number, &angles, &clinical, reading.frame.defect, fault.is_some());
                    match self.shape {
                        Shape::Document => json::angles::write_row(&mut text, &angles, &clinical, defect),
                        Shape::Table => view::angles::write_row(&mut text, number, &angles, &clinical, defect),
                    }
                }
                (_, fault) => {
                    tally.summary.refused();
                    self.write_fault(&mut text, fault.unwrap_or(RowFault::Flat), number);
                }
            }
        }
        Made { text, tally }
    }

    fn write_fault(&self, text: &mut Vec<u8>, fault: RowFault, number: u64) {
        match self.shape {
            Shape::Document => json::angles::write_fault(text, fault.code(), number),
            Shape::Table => view::angles::write_fault(text, fault.code(), number),
        }
    }
}

/// What a piece usually comes to; it grows where it comes to more.
const TEXT_PER_PIECE: usize = 5 * PIECE_BYTES;
