//! Prescriptions for tests of clinicians' pages, made by the real engine.

use diagnostic::{FileId, Sink};
use exercise::Catalogue;
use jiff::civil::Date;
use operative::Record;
use plan::Prescription;
use prescription::{Case, May, Openings, Settings};
use protocol::Library;
use wording::Messages;

use crate::desk::{Desk, issued_on};
use crate::parts::parts;

/// Records with what they are called, and settings and openings for each.
const CASES: &[(&str, &str, &str, &str)] = &[
    ("small", include_str!("../../../examples/small-cuff.toml"), PRACTICE, ""),
    ("small opened", include_str!("../../../examples/small-cuff.toml"), PRACTICE, OPENED),
    ("early", include_str!("../../../examples/small-cuff.toml"), EARLY, ""),
    ("tenodesis", include_str!("../../../examples/cuff-with-tenodesis.toml"), "", ""),
    ("large", include_str!("../../../examples/large-cuff.toml"), THERAPY, ""),
    ("revision", include_str!("../../../examples/left-revision.toml"), PRACTICE, ""),
    ("subscapularis", include_str!("../../../examples/subscapularis.toml"), HOLD, ""),
    ("sparse", include_str!("../../../examples/sparse.toml"), "", ""),
    ("release", include_str!("../../../examples/capsular-release.toml"), PRACTICE, ""),
    ("arcs", ARCS, LOOSENED, ""),
];

/// The record of a small tear, for cases of a test's own.
pub(crate) const SMALL: &str = include_str!("../../../examples/small-cuff.toml");
/// The example's settings and a go-back.
pub(crate) const BACK: &str = concat!(
    include_str!("../../../examples/practice.toml"),
    "\n[[back]]\nstage = \"passive\"\nday = 50\nreason = \"fall\"\n"
);
/// The example's settings and a hold.
pub(crate) const HELD: &str = concat!(
    include_str!("../../../examples/practice.toml"),
    "\n[[hold]]\nfrom_day = 40\ndays = 14\nreason = \"wound\"\n"
);
/// The gates of a staged plan up to active motion, opened on their days.
pub(crate) const OPENED_TO_ACTIVE: &str = "[[opened]]\nstage = \"passive\"\non = 2026-03-16\nby = \"Dr. Imke Falk\"\n[[opened]]\nstage = \"assisted\"\non = 2026-03-30\nby = \"Dr. Imke Falk\"\n[[opened]]\nstage = \"active\"\non = 2026-04-13\nby = \"Dr. Imke Falk\"\n";
pub(crate) const PRACTICE: &str = include_str!("../../../examples/practice.toml");
const OPENED: &str = include_str!("../../../examples/opened.toml");
const EARLY: &str = include_str!("../../../examples/practice-early-passive.toml");
const THERAPY: &str = "[contact]\nday = \"555-0100\"\nnight = \"555-0101\"\n[therapy]\ntimes_a_week = 2\nweeks = 12\nmanual_therapy = \"no\"\npool = \"day 56\"\n[paper]\nsize = \"letter\"\n";
const HOLD: &str = "[[hold]]\nfrom_day = 40\ndays = 14\nreason = \"wound\"\n[[back]]\nstage = \"passive\"\nday = 90\nreason = \"fall\"\n";
const LOOSENED: &str = "[[loosening]]\njoint = \"shoulder\"\nmovement = \"external rotation\"\nmode = \"passive\"\nfrom_day = 20\nuntil_day = 33\nup_to = \"10 deg\"\nreason = \"stiff before surgery\"\n";
const ARCS: &str = r#"
[patient]
birth_date = 1970-06-11
[operation]
date = 2026-11-30
side = "left"
approach = "mini-open"
revision = false
[operation.tear]
anteroposterior = "18 mm"
mediolateral = "12 mm"
retraction = "8 mm"
[[operation.tendon]]
name = "subscapularis"
thickness = "full"
part = "upper part"
repair = "double row"
tissue = "good"
tension = "low"
[operation.also]
biceps = "tenotomy"
labrum = "anterior repair"
distal_clavicle_excision = true
capsular_release = false
subacromial_decompression = false
other = []
[[operation.safe_arc]]
movement = "forward elevation"
up_to = "70 deg"
until = "day 61"
[[operation.safe_arc]]
movement = "external rotation"
position = "at side"
up_to = "-10 deg"
until = "day 17"
[other_arm]
shoulder = "sound"
[surgeon]
slower = false
"#;

/// One prescription with all that a desk needs.
#[derive(Clone)]
pub(crate) struct Made {
    pub name: String,
    pub record: Record,
    pub settings: Settings,
    pub openings: Openings,
    pub prescription: Prescription,
    pub issued_on: Date,
    pub answers: Vec<Vec<May>>,
}

/// What is shipped.
pub(crate) struct World {
    pub library: Library,
    pub catalogue: Catalogue,
    pub messages: Messages,
}

/// What is shipped and every case, made once for all tests.
pub(crate) fn world() -> &'static (World, Vec<Made>) {
    static MADE: std::sync::LazyLock<(World, Vec<Made>)> = std::sync::LazyLock::new(|| {
        let world = World::new();
        let all = world.all();
        (world, all)
    });
    &MADE
}

impl World {
    fn new() -> Self {
        let mut sink = Sink::new();
        Self {
            library: Library::shipped(|_, _| FileId(0), &mut sink),
            catalogue: exercise::shipped(&mut sink, |_, _| FileId(0)),
            messages: Messages::english(),
        }
    }

    /// Every case of the list, each on the day of its last opening and with each further stage opened at its gate.
    fn all(&self) -> Vec<Made> {
        let mut all = Vec::new();
        for (name, record, settings, openings) in CASES {
            let first = self.made(name, record, settings, openings, None);
            let gates: Vec<(String, Date)> =
                first.prescription.stages.iter().skip(1).map(|stage| (stage.id.clone(), stage.from)).collect();
            all.push(first);
            if openings.is_empty() {
                for many in [1, 3, gates.len()] {
                    let opened: String = gates
                        .iter()
                        .take(many)
                        .map(|(stage, on)| {
                            format!("[[opened]]\nstage = \"{stage}\"\non = {on}\nby = \"Dr. Imke Falk\"\n")
                        })
                        .collect();
                    all.push(self.made(&format!("{name}, {many} opened"), record, settings, &opened, None));
                }
                // A gate that has passed unopened.
                let late = gates[0].1.tomorrow().expect("a day");
                all.push(self.made(&format!("{name}, waiting"), record, settings, "", Some(late)));
            } else {
                let on = jiff::civil::date(2026, 4, 20);
                all.push(self.made(&format!("{name}, waiting"), record, settings, openings, Some(on)));
            }
        }
        all
    }

    /// One case, on a day.
    pub fn made(&self, name: &str, record: &str, settings: &str, openings: &str, on: Option<Date>) -> Made {
        let mut sink = Sink::new();
        let record = operative::read(FileId(0), record, &mut sink);
        let settings = prescription::read_settings(FileId(0), settings, &mut sink);
        let openings = prescription::read_opened(FileId(0), openings, &mut sink);
        let (Some(record), Some(settings), Some(openings)) = (record, settings, openings) else {
            panic!("{name}: {:?}", sink.into_sorted())
        };
        let issued_on = issued_on(on, &openings, record.operation_date());
        let mut case = Case::new(&self.library, &self.catalogue, &record, &settings);
        let title_of = |id: &str| match self.catalogue.get(id) {
            Some(entry) => self.messages.text(&entry.message_id(), &[]),
            None => id.to_owned(),
        };
        case.title_of = &title_of;
        case.openings = &openings;
        case.on = Some(issued_on);
        let prescription = prescription::prescribe(&case, &mut sink);
        let days: Vec<Date> = prescription
            .iter()
            .flat_map(|of| {
                parts(of, issued_on)
                    .into_iter()
                    .flat_map(|part| part.periods)
                    .map(|period| period.from.max(issued_on))
                    .collect::<Vec<_>>()
            })
            .collect();
        let answers = prescription::may_all(&case, &days, &mut sink);
        let (Some(prescription), Some(answers)) = (prescription, answers) else {
            panic!("{name}: {:?}", sink.into_sorted())
        };
        Made { name: name.to_owned(), record, settings, openings, prescription, issued_on, answers }
    }

    pub fn desk<'a>(&'a self, made: &'a Made) -> Desk<'a> {
        Desk {
            prescription: &made.prescription,
            record: &made.record,
            settings: &made.settings,
            catalogue: &self.catalogue,
            messages: &self.messages,
            openings: &made.openings,
            issued_on: made.issued_on,
            answers: &made.answers,
        }
    }
}

/// Every date written as "2 Mar 2026" in some texts, as text.
pub(crate) fn dates_in(texts: &[&str]) -> Vec<String> {
    const MONTHS: [&str; 12] = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
    let mut dates = Vec::new();
    for text in texts {
        let words: Vec<&str> = text.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty()).collect();
        for three in words.windows(3) {
            let is_number = |word: &str, least: usize| word.len() >= least && word.chars().all(|c| c.is_ascii_digit());
            if is_number(three[0], 1) && MONTHS.contains(&three[1]) && is_number(three[2], 4) {
                dates.push(three.join(" "));
            }
        }
    }
    dates
}

/// Every date of a prescription, of what is opened, and of the settings' permissions, as it is printed.
pub(crate) fn dates_of(made: &Made) -> Vec<String> {
    let of = &made.prescription;
    let mut dates: Vec<Date> = vec![of.operated_on, made.issued_on];
    dates.extend(of.stages.iter().map(|stage| stage.from));
    dates.extend(of.today.iter().flat_map(|today| &today.not_before).map(|next| next.date));
    dates.extend(of.spans.iter().flat_map(|span| [span.from, span.until]));
    dates.extend(of.spans.iter().flat_map(|span| &span.goals).map(|goal| goal.due.date(of.operated_on)));
    dates.extend(of.visits.iter().map(|visit| visit.date));
    dates.extend(of.returns.iter().filter_map(|line| line.date));
    let (desk, returns) = (world().0.desk(made), &of.returns);
    let stay = returns.iter().filter_map(|line| crate::limits_for_good::of_return(&desk, line));
    dates.extend(stay.map(|day| day.date(of.operated_on)));
    let holds = made.settings.holds.iter().map(|hold| quantity::PostoperativeDay::new(hold.from_day + hold.days));
    dates.extend(holds.map(|day| day.date(of.operated_on)));
    // A letter ends on the day before a go-back.
    dates.extend(of.go_backs.iter().flat_map(|back| [Some(back.date), back.date.yesterday().ok()]).flatten());
    dates.extend(made.record.other_arm_operated_on());
    dates.extend(made.openings.0.iter().map(|opening| opening.on.value));
    let therapy = &made.settings.therapy;
    for permission in [therapy.manual_therapy, therapy.pool, therapy.traction].into_iter().flatten() {
        if let prescription::Permission::From(day) = permission {
            dates.push(day.date(of.operated_on));
        }
    }
    dates.into_iter().map(crate::limits_words::short).collect()
}
