//! From a record, the composed plan and the surgeon's settings to a dated
//! prescription, every line with its reason.
//!
//! [`prescribe`] is the product's main job; [`may`] answers whether an activity
//! is allowed on a day. Nothing here reads a clock: the day that is asked for
//! is always an argument.
#![deny(missing_docs)]

pub mod compare;
pub mod ladder;

mod answers;
mod cautions;
mod checked;
mod choose;
mod dated;
mod fits;
mod goals;
mod issue;
mod lines;
mod loosen;
mod may;
mod moves;
mod opened;
mod questions;
mod reach;
mod reasons;
mod resting;
mod returns;
mod rows;
mod session;
mod settings;
mod settings_read;
mod stiffness;
mod today;
mod visits;

pub use answers::{Answer as QuestionAnswer, OpenQuestion, Together, questions_of};
pub use issue::{Case, LineOf, TitleOf, prescribe};
pub use may::{Answer, May, may, may_all};
pub use opened::{Opening, Openings, read as read_opened};
pub use reach::{allowed, reach};
pub use settings::{
    Back, Clinic, Contact, FeverLimit, Hold, Loosening, Paper, PaperSize, Permission, Practice, Prefer, ProtocolChoice,
    Settings, Therapy,
};
pub use settings_read::read as read_settings;
