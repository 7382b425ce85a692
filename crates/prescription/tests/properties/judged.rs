//! A prescription put before the checker, told only what was written.

use jiff::civil::Date;
use operative::Facts;
use plan::Prescription;
use protocol::checker::{
    Basis, Fault, Held, Issued, Loosening, Opening, OtherShoulder, WentBack, faults_of_permission,
    faults_of_prescription,
};
use protocol::{Choices, Family, Library, Requested};
use quantity::{Degrees, PostoperativeDay};

use crate::plans::{SHIPPED, Texts};

/// What the checker is told beside the prescription.
pub struct Told {
    pub facts: Facts,
    pub operated_on: Date,
    pub choices: Choices,
    pub requested: Requested,
    pub home_margin: Degrees,
    pub holds: Vec<Held>,
    pub backs: Vec<WentBack>,
    pub loosenings: Vec<Loosening>,
    pub openings: Vec<Opening>,
    pub other: Option<(Facts, Date)>,
}

impl Told {
    /// What the texts of a case say.
    pub fn of(texts: Texts<'_>) -> Self {
        let mut sink = diagnostic::Sink::new();
        let file = diagnostic::FileId(0);
        let record = operative::read(file, texts.record, &mut sink).expect("a record");
        let settings = match texts.settings {
            "" => prescription::Settings::default(),
            text => prescription::read_settings(file, text, &mut sink).expect("settings"),
        };
        let opened = match texts.opened {
            "" => prescription::Openings::default(),
            text => prescription::read_opened(file, text, &mut sink).expect("openings"),
        };
        let facts = operative::facts(&record);
        let family = SHIPPED.0.family(&facts).expect("a family");
        let mut choices = Choices::of(family);
        settings.prefers.iter().for_each(|prefer| choices.take(&prefer.choice.value, &prefer.option.value));
        let asked = settings.choice.as_ref().and_then(|choice| family.protocol(&choice.protocol.value));
        let holds = settings.holds.iter();
        let day = |date: Date| PostoperativeDay::of(date, record.operation_date()).expect("a day").count();
        Self {
            facts,
            operated_on: record.operation_date(),
            choices,
            requested: Requested(asked.map(|place| u8::try_from(place).expect("few protocols"))),
            home_margin: settings.home_margin.map_or(Degrees::whole(5), |margin| margin.value),
            holds: holds.map(|hold| Held { from_day: hold.from_day, days: hold.days, joint: hold.joint }).collect(),
            backs: settings
                .backs
                .iter()
                .map(|back| WentBack { day: back.day, stage: back.stage.value.clone() })
                .collect(),
            loosenings: settings
                .loosenings
                .iter()
                .map(|written| Loosening {
                    key: written.key,
                    from_day: written.from_day,
                    until_day: written.until_day,
                    cell: written.up_to,
                })
                .collect(),
            openings: opened
                .0
                .iter()
                .map(|opening| Opening { stage: opening.stage.value.clone(), day: day(opening.on.value) })
                .collect(),
            other: (!texts.other.is_empty()).then(|| {
                let other = operative::read(file, texts.other, &mut sink).expect("the other record");
                (operative::facts(&other), other.operation_date())
            }),
        }
    }

    /// The faults of a prescription under the shipped files.
    pub fn faults(&self, of: &Prescription) -> Vec<Fault> {
        self.faults_under(of, &SHIPPED.0)
    }

    /// The faults of a prescription under other files.
    pub fn faults_under(&self, of: &Prescription, library: &Library) -> Vec<Fault> {
        self.issued(of, library, faults_of_prescription)
    }

    /// The faults of the answer that an activity is allowed on a day.
    pub fn faults_of_yes(&self, of: &Prescription, activity: &str, day: u16) -> Vec<Fault> {
        self.issued(of, &SHIPPED.0, |issued| faults_of_permission(issued, activity, day))
    }

    fn issued<T>(&self, of: &Prescription, library: &Library, then: impl FnOnce(&Issued<'_>) -> T) -> T {
        let family = |facts: &Facts| -> &Family { library.family(facts).expect("a family") };
        let basis = |facts| Basis { family: family(facts), choices: &self.choices, facts, requested: self.requested };
        let others = self.other.as_ref().map(|(facts, _)| Choices::of(family(facts)));
        let other = self.other.as_ref().zip(others.as_ref()).map(|((facts, operated_on), choices)| {
            let days = self.operated_on.since(*operated_on).expect("near dates").get_days();
            let basis = Basis { family: family(facts), choices, facts, requested: Requested(None) };
            OtherShoulder { basis, days_ahead: days }
        });
        then(&Issued {
            prescription: of,
            basis: basis(&self.facts),
            catalogue: &SHIPPED.1,
            home_margin: self.home_margin,
            holds: &self.holds,
            backs: &self.backs,
            loosenings: &self.loosenings,
            openings: &self.openings,
            other,
        })
    }
}
