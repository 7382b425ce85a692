//! The command line.

use std::path::PathBuf;

use body::{Build, Hair, Side};
use clap::{Args, Parser, Subcommand, ValueEnum};

const CAUTIONS: &str = "Only under the care of the operating surgeon, who decides and signs. Local codes and licensed \
practice decide. Not an emergency service; not for time-critical use.";

/// From the operative record of a shoulder repair to a dated rehabilitation prescription.
#[derive(Debug, Parser)]
#[command(
    name = "mendarc",
    version,
    about = "From the operative record of a shoulder repair to a dated prescription, every line with its reason",
    before_help = "Examples:\n  mendarc prescribe examples/small-cuff.toml --settings examples/practice.toml --out small-cuff\n  mendarc prescribe examples/small-cuff.toml --why\n  mendarc may drive examples/small-cuff.toml --on 2026-04-20\n  mendarc explain staged-passive-start",
    after_help = CAUTIONS,
    max_term_width = 100
)]
pub struct Cli {
    #[command(subcommand)]
    pub command: Command,
}

#[derive(Debug, Subcommand)]
pub enum Command {
    /// Make the dated prescription of an operative record
    #[command(
        before_help = "Examples:\n  mendarc prescribe record.toml\n  mendarc prescribe record.toml --settings practice.toml --out folder\n  mendarc prescribe record.toml --settings practice.toml --why\n  mendarc prescribe record.toml --opened opened.toml --on 2026-04-20 --json",
        after_help = CAUTIONS
    )]
    Prescribe(Prescribe),
    /// Print the sheet for going home, from date and side alone
    #[command(
        name = "first-days",
        before_help = "Example:\n  mendarc first-days --date 2026-03-02 --side right --settings practice.toml --out folder",
        after_help = CAUTIONS
    )]
    FirstDays(FirstDays),
    /// Say whether an activity is allowed on a day
    #[command(
        before_help = "Examples:\n  mendarc may --list\n  mendarc may drive record.toml --on 2026-04-20",
        after_help = CAUTIONS
    )]
    May(May),
    /// Read joint angles of the shoulder, by the standard and in a therapist's words, from a file of matrices
    #[command(
        before_help = "Examples:\n  mendarc angles examples/matrices.csv --side right\n  mendarc angles matrices.csv --side left --json\n\nThe first line is r11,r12,r13,r21,r22,r23,r31,r32,r33; each line after it is one matrix: the\nhumerus's axes (forward, up, right) in the thorax's, row by row.",
        after_help = CAUTIONS
    )]
    Angles(Angles),
    /// Measure an exercise from the sensors of a phone on the arm: repetitions, angles, direction, and whether it can be told
    #[command(
        before_help = "Examples:\n  mendarc measure set.csv --exercise supine-elevation --side right\n  mendarc measure set.csv --exercise pendulum --side left --arm-length-cm 66 --json\n  mendarc measure set.csv --exercise stick-external-rotation --side right --limit-deg 30 --plot set.svg\n\nThe first line is t_s,ax_m_s2,ay_m_s2,az_m_s2,wx_rad_s,wy_rad_s,wz_rad_s; each line after it is one\nreading: seconds, specific force (at rest the axis that points up reads +9.81), angular rate.",
        after_help = CAUTIONS
    )]
    Measure(Measure),
    /// Say where up is at every row of a recording, in the axes of the phone
    #[command(
        before_help = "Examples:\n  mendarc tilt set.csv\n  mendarc tilt set.csv --offline --json",
        after_help = CAUTIONS
    )]
    Tilt(Tilt),
    /// Put the exercises in the order of what they ask the shoulder to hold against gravity
    #[command(
        before_help = "Examples:\n  mendarc ladder record.toml\n  mendarc ladder --stature-cm 175 --mass-kg 80 --sex male",
        after_help = CAUTIONS
    )]
    Ladder(Ladder),
    /// Draw an exercise at an angle, or the whole catalogue on one sheet
    #[command(
        before_help = "Examples:\n  mendarc draw stick-external-rotation --angle 25 --side left --out turn-out.svg\n  mendarc draw pendulum --animated --out pendulum.svg\n  mendarc draw --all --out sheet.png",
        after_help = CAUTIONS
    )]
    Draw(Draw),
    /// Say what changes for the patient between two records, protocols or prescriptions
    #[command(
        before_help = "Examples:\n  mendarc compare before.toml after.toml\n  mendarc compare protocols/cuff/staged.toml protocols/cuff/delayed.toml\n  mendarc compare protocols/cuff edited/cuff\n  mendarc compare old/prescription.json new/prescription.json\n  mendarc compare record.toml --questions",
        after_help = CAUTIONS
    )]
    Compare(Compare),
    /// Check protocol files, and prove a family over every record it accepts
    #[command(
        before_help = "Examples:\n  mendarc check protocols\n  mendarc check protocols --every-record\n  mendarc check protocols/cuff --every-record --singly --json",
        after_help = CAUTIONS
    )]
    Check(Check),
    /// Explain a diagnostic code, a rule, or a value of the table of evidence
    #[command(
        before_help = "Examples:\n  mendarc explain length-without-unit\n  mendarc explain staged-passive-start\n  mendarc explain staged/passive-elevation",
        after_help = CAUTIONS
    )]
    Explain(Explain),
}

#[derive(Debug, Args)]
pub struct Prescribe {
    /// The operative record
    pub record: PathBuf,
    /// Another protocol than the default; a looser one also needs its reason in the settings
    #[arg(long, value_name = "ID")]
    pub protocol: Option<String>,
    /// The surgeon's settings
    #[arg(long, value_name = "FILE")]
    pub settings: Option<PathBuf>,
    /// Which stages the surgeon has opened
    #[arg(long, value_name = "FILE")]
    pub opened: Option<PathBuf>,
    /// Show the effective limits of this day as well
    #[arg(long, value_name = "DATE")]
    pub on: Option<String>,
    /// The record of the other shoulder's live prescription
    #[arg(long, value_name = "RECORD")]
    pub other: Option<PathBuf>,
    /// The settings of the other shoulder's prescription
    #[arg(long, value_name = "FILE", requires = "other")]
    pub other_settings: Option<PathBuf>,
    /// Print the reason of every line
    #[arg(long)]
    pub why: bool,
    /// Print one JSON document
    #[arg(long)]
    pub json: bool,
    /// Write handout, letters, work note, calendar and prescription.json into this folder
    #[arg(long, value_name = "DIR")]
    pub out: Option<PathBuf>,
    /// The language of what patients read
    #[arg(long, value_name = "LANGUAGE", default_value = "en")]
    pub language: String,
}

#[derive(Debug, Args)]
pub struct FirstDays {
    /// The day of surgery
    #[arg(long, value_name = "DATE")]
    pub date: String,
    /// The operated side
    #[arg(long)]
    pub side: SideWord,
    /// The surgeon's settings: whom to call by day and by night
    #[arg(long, value_name = "FILE")]
    pub settings: Option<PathBuf>,
    /// Write first-days.pdf and first-days.txt into this folder
    #[arg(long, value_name = "DIR")]
    pub out: Option<PathBuf>,
    /// Print one JSON document
    #[arg(long)]
    pub json: bool,
    /// The language of the sheet
    #[arg(long, value_name = "LANGUAGE", default_value = "en")]
    pub language: String,
}

#[derive(Debug, Clone, Copy, ValueEnum)]
pub enum SideWord {
    Left,
    Right,
}

impl From<SideWord> for Side {
    fn from(word: SideWord) -> Self {
        match word {
            SideWord::Left => Self::Left,
            SideWord::Right => Self::Right,
        }
    }
}

#[derive(Debug, Args)]
pub struct May {
    /// The activity, by its id
    #[arg(required_unless_present = "list")]
    pub activity: Option<String>,
    /// The operative record
    #[arg(required_unless_present = "list")]
    pub record: Option<PathBuf>,
    /// The day asked about
    #[arg(long, value_name = "DATE", required_unless_present = "list")]
    pub on: Option<String>,
    /// Which stages the surgeon has opened
    #[arg(long, value_name = "FILE")]
    pub opened: Option<PathBuf>,
    /// The surgeon's settings
    #[arg(long, value_name = "FILE")]
    pub settings: Option<PathBuf>,
    /// Another protocol than the default
    #[arg(long, value_name = "ID")]
    pub protocol: Option<String>,
    /// Name every activity
    #[arg(long)]
    pub list: bool,
    /// Print one JSON document
    #[arg(long)]
    pub json: bool,
}

#[derive(Debug, Args)]
pub struct Angles {
    /// The file of matrices, of any size
    #[arg(value_name = "MATRICES")]
    pub matrices: PathBuf,
    /// Whose arm; a left arm's raw data are mirrored
    #[arg(long)]
    pub side: Option<SideWord>,
    /// Print one JSON document
    #[arg(long)]
    pub json: bool,
}

#[derive(Debug, Args)]
pub struct Measure {
    /// The recording
    #[arg(value_name = "RECORDING")]
    pub recording: PathBuf,
    /// The exercise, by its id
    #[arg(long, value_name = "ID")]
    pub exercise: String,
    /// Whose arm
    #[arg(long)]
    pub side: SideWord,
    /// Where the phone is: wrist, forearm, upper-arm or hand
    #[arg(long, value_name = "PLACE")]
    pub worn: Option<String>,
    /// The axis of the sensor along the limb: x, y or z
    #[arg(long, value_name = "AXIS", default_value = "y")]
    pub axis: String,
    /// From the shoulder to the middle of the hand, in centimeters
    #[arg(long, value_name = "N", allow_hyphen_values = true)]
    pub arm_length_cm: Option<String>,
    /// The angle that must not be passed, in degrees
    #[arg(long, value_name = "N", allow_hyphen_values = true)]
    pub limit_deg: Option<String>,
    /// The operative record: whether the exercise is allowed on the day is looked up
    #[arg(long, value_name = "RECORD", requires = "on")]
    pub record: Option<PathBuf>,
    /// The day of the recording
    #[arg(long, value_name = "DATE", requires = "record")]
    pub on: Option<String>,
    /// The surgeon's settings
    #[arg(long, value_name = "FILE", requires = "record")]
    pub settings: Option<PathBuf>,
    /// Which stages the surgeon has opened
    #[arg(long, value_name = "FILE", requires = "record")]
    pub opened: Option<PathBuf>,
    /// Print one JSON document
    #[arg(long)]
    pub json: bool,
    /// Draw the angle with the repetitions marked, as SVG
    #[arg(long, value_name = "FILE")]
    pub plot: Option<PathBuf>,
}

#[derive(Debug, Args)]
pub struct Tilt {
    /// The recording
    #[arg(value_name = "RECORDING")]
    pub recording: PathBuf,
    /// With what came later, instead of as it was known at the time
    #[arg(long)]
    pub offline: bool,
    /// Print one JSON document
    #[arg(long)]
    pub json: bool,
}

#[derive(Debug, Args)]
pub struct Ladder {
    /// The operative record: the exercises this patient will meet, stage by stage
    #[arg(required_unless_present_all = ["stature_cm", "mass_kg"])]
    pub record: Option<PathBuf>,
    /// Height in centimeters, where the record has none
    #[arg(long, value_name = "N", allow_hyphen_values = true)]
    pub stature_cm: Option<String>,
    /// Body mass in kilograms, where the record has none
    #[arg(long, value_name = "N", allow_hyphen_values = true)]
    pub mass_kg: Option<String>,
    /// Whose table of segments; without it both are used and the range is told
    #[arg(long)]
    pub sex: Option<SexWord>,
    /// The surgeon's settings
    #[arg(long, value_name = "FILE")]
    pub settings: Option<PathBuf>,
    /// Another protocol than the default
    #[arg(long, value_name = "ID")]
    pub protocol: Option<String>,
    /// Print one JSON document
    #[arg(long)]
    pub json: bool,
}

#[derive(Debug, Clone, Copy, ValueEnum)]
pub enum SexWord {
    Male,
    Female,
}

#[derive(Debug, Args)]
pub struct Draw {
    /// An exercise, activity, care pose or visit test, by its id
    #[arg(required_unless_present = "all", conflicts_with = "all")]
    pub exercise: Option<String>,
    /// Draw everything in the catalogue on one sheet
    #[arg(long)]
    pub all: bool,
    /// How far the movement goes, in degrees; without it as far as the exercise ever goes
    #[arg(long, value_name = "N", allow_hyphen_values = true, conflicts_with = "all")]
    pub angle: Option<String>,
    /// Where it must stop, in degrees: drawn as a bar
    #[arg(long, value_name = "N", allow_hyphen_values = true, conflicts_with = "all")]
    pub limit: Option<String>,
    /// The operated side
    #[arg(long, default_value = "right")]
    pub side: SideWord,
    /// How the figure is built: medium, slim, broad, round or curved
    #[arg(long, value_name = "WORD", default_value = "medium", value_parser = build)]
    pub build: Build,
    /// What is on its head: short, bald, bob, tied or scarf
    #[arg(long, value_name = "WORD", default_value = "short", value_parser = hair)]
    pub hair: Hair,
    /// Let it move, at the tempo of the dose; it stands still for readers who asked for less motion
    #[arg(long)]
    pub animated: bool,
    /// The language of the words in it
    #[arg(long, value_name = "LANGUAGE", default_value = "en")]
    pub language: String,
    /// The file: .svg, or .png
    #[arg(long, value_name = "FILE")]
    pub out: PathBuf,
}

fn build(written: &str) -> Result<Build, String> {
    one_of(written, Build::WORDS)
}

fn hair(written: &str) -> Result<Hair, String> {
    one_of(written, Hair::WORDS)
}

fn one_of<T: Copy>(written: &str, words: &[(&str, T)]) -> Result<T, String> {
    let known = words.iter().find(|(word, _)| *word == written);
    known.map(|(_, value)| *value).ok_or_else(|| {
        let all: Vec<&str> = words.iter().map(|(word, _)| *word).collect();
        format!("it is one of {}", all.join(", "))
    })
}

#[derive(Debug, Args)]
pub struct Compare {
    /// An operative record, a protocol file, the folder of a family, or a prescription as JSON
    pub a: PathBuf,
    /// Another one of the same kind
    #[arg(required_unless_present = "questions", conflicts_with = "questions")]
    pub b: Option<PathBuf>,
    /// List what each answer to an open question of the record would change
    #[arg(long)]
    pub questions: bool,
    /// The surgeon's settings, for both records
    #[arg(long, value_name = "FILE")]
    pub settings: Option<PathBuf>,
    /// Another protocol than the default, for both records; or the one to compare of two folders
    #[arg(long, value_name = "ID")]
    pub protocol: Option<String>,
    /// Print one JSON document
    #[arg(long)]
    pub json: bool,
}

#[derive(Debug, Args)]
pub struct Check {
    /// A folder of families, the folder of one family, or a file in it
    #[arg(required = true)]
    pub paths: Vec<PathBuf>,
    /// Go through every record the families accept
    #[arg(long)]
    pub every_record: bool,
    /// Compose every record by itself, also where the rules cannot tell records apart; takes minutes
    #[arg(long, requires = "every_record")]
    pub singly: bool,
    /// Issue and check a whole prescription for each distinct plan as well; takes a minute
    #[arg(long, requires = "every_record")]
    pub whole: bool,
    /// Print one JSON document
    #[arg(long)]
    pub json: bool,
}

#[derive(Debug, Args)]
pub struct Explain {
    /// A diagnostic code, an evidence id, a rule, or an exercise
    pub topic: String,
    /// Print one JSON document
    #[arg(long)]
    pub json: bool,
}
