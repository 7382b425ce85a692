//! What stands on each sheet of paper, as data: the patient's handout, the
//! sheet for the first days, the therapist's letter, the surgeon's page and the
//! work note.
//!
//! A sheet is a [`Document`] of [`Block`]s with texts in them. How it looks is
//! decided elsewhere; nothing here knows fonts, colors or page breaks beyond
//! "a new page starts here". Every clinical value comes from the prescription.
#![deny(missing_docs)]

mod activities;
mod calls;
mod desk;
mod document;
mod exercises;
mod first_days;
mod fridge;
mod handout;
mod household;
mod letter;
mod letter_arcs;
mod letter_done;
mod letter_gates;
mod letter_orders;
mod letter_safety;
mod letter_strip;
mod letter_text;
mod letter_words;
mod limits_columns;
mod limits_for_good;
mod limits_table;
mod limits_words;
mod parts;
mod pictures;
mod points;
mod reasons_list;
mod sling;
mod sling_words;
mod surgeon;
mod surgeon_evidence;
mod surgeon_exercises;
mod surgeon_line;
mod surgeon_lists;
mod surgeon_questions;
mod surgeon_record;
mod surgeon_settings;
mod texts;
mod visits;
mod work;
mod work_lifting;
mod work_sling;

pub use activities::{Told, told as activities};
pub use calls::{NoNumber, Numbers};
pub use desk::{Desk, issued_on};
pub use document::{
    Band, Block, Captioned, Cell, Column, Document, Drawing, Fact, Field, ListMark, Print, Reader, Shade, Side, Size,
    SlingRun, StageRun, TickRow, Tone,
};
pub use first_days::{SectionText, first_days, first_days_sections, is_untranslated};
pub use handout::handout;
pub use letter::letter;
pub use parts::{Begins, Lost, OnPaper, Part, Period, on_paper, parts};
pub use pictures::{Angle, Drawn, moving_picture, picture};
pub use points::{OtherArm, Point, Points};
pub use surgeon::surgeon_page;
pub use surgeon_exercises::{counted, exercise_line};
pub use surgeon_questions::{completions, question_effect};
pub use visits::of_patient as visits_of_patient;
pub use work::work_note;

#[cfg(test)]
mod handout_again_tests;
#[cfg(test)]
mod handout_tests;
#[cfg(test)]
mod letter_standing_tests;
#[cfg(test)]
mod letter_tests;
#[cfg(test)]
mod letter_world;
#[cfg(test)]
mod surgeon_tests;
#[cfg(test)]
mod work_tests;
