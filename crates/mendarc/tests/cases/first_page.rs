//! The therapist's letter of every step of every story is signed on its first page, on both papers.

use std::collections::BTreeMap;

use jiff::ToSpan as _;
use sheets::{Block, Document, Size};
use wording::Messages;

use crate::judged;
use crate::story;
use crate::world::World;

/// The letters of all stories as far as their signature, each once, with where it comes from.
fn signed_parts() -> Vec<(String, Document)> {
    let (english, shelf) = (Messages::english(), crate::shelf());
    let mut found: BTreeMap<String, (String, Document)> = BTreeMap::new();
    let mut look = |name: &str, desk: &sheets::Desk<'_>| {
        let letter = sheets::letter(desk);
        let place = letter.blocks.iter().position(|block| matches!(block, Block::Signature { .. }));
        let until = place.unwrap_or_else(|| panic!("{name}: no signature"));
        for size in [Size::A4, Size::Letter] {
            let mut part = Document { size, blocks: letter.blocks[..=until].to_vec(), ..letter.clone() };
            if let Some(id) = &desk.prescription.patient {
                // What the story is called takes a line whatever it is.
                part.running_head = part.running_head.replace(id, "");
            }
            found.entry(format!("{size:?} {:?}", part.blocks)).or_insert_with(|| (format!("{name}, {size:?}"), part));
        }
    };
    for path in judged::stories() {
        let text = std::fs::read_to_string(&path).expect("a case is text");
        let file = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
        for step in story::read(&text).unwrap_or_default() {
            let Ok(world) = World::new(&step, &shelf) else { continue };
            let name = format!("{file}:{}", step.line);
            let gate = world.with_desk(&english, None, |_, desk| {
                look(&name, desk);
                desk.prescription.stages.iter().find(|stage| !stage.opened).map(|stage| stage.from)
            });
            // And a week after the gate that nobody has opened.
            if let Some(late) = gate.flatten().and_then(|gate| gate.checked_add(7.days()).ok()) {
                world.with_desk(&english, Some(late), |_, desk| look(&format!("{name}, late"), desk));
            }
        }
    }
    found.into_values().collect()
}

#[test]
fn every_letter_is_signed_on_its_first_page() {
    let parts = signed_parts();
    assert!(parts.len() > 400, "only {}", parts.len());
    let half = parts.len() / 2;
    let count = |parts: &[(String, Document)]| {
        for (name, part) in parts {
            assert_eq!(::paper::page_count(part).expect("it is laid out"), 1, "{name}");
        }
    };
    std::thread::scope(|scope| {
        scope.spawn(|| count(&parts[..half]));
        count(&parts[half..]);
    });
    // What comes after a first page that is full is on the second.
    let mut long = parts[0].1.clone();
    let filler = long.blocks[0].clone();
    long.blocks.splice(0..0, std::iter::repeat_n(filler, 40));
    assert!(::paper::page_count(&long).expect("it is laid out") > 1);
}
