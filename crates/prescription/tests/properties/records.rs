//! Operative records by chance, every fact known or not.

use jiff::ToSpan;
use jiff::civil::{Date, date};
use proptest::option::weighted;
use proptest::prelude::*;
use proptest::sample::select;

/// A tendon as a record writes it.
#[derive(Debug, Clone)]
pub struct Tendon {
    pub name: &'static str,
    pub part: &'static str,
    pub repair: &'static str,
    pub tissue: Option<&'static str>,
    pub tension: Option<&'static str>,
}

/// A safe arc.
#[derive(Debug, Clone)]
pub struct Arc {
    pub movement: &'static str,
    pub up_to: i32,
    pub until: Option<u16>,
}

/// A record; `None` is not recorded.
#[derive(Debug, Clone)]
pub struct Written {
    pub birth: Date,
    pub date: Date,
    pub side: &'static str,
    pub approach: &'static str,
    pub revision: Option<bool>,
    pub anteroposterior: u8,
    pub mediolateral: Option<u8>,
    pub retraction: Option<u8>,
    pub tendons: Vec<Tendon>,
    pub infiltration: Option<u8>,
    pub biceps: Option<&'static str>,
    pub labrum: Option<&'static str>,
    pub clavicle: Option<bool>,
    pub release: Option<bool>,
    pub arcs: Vec<Arc>,
    pub other_arm: Option<&'static str>,
    pub smoking: Option<bool>,
    pub stiffness: Option<bool>,
    pub slower: Option<bool>,
}

impl Written {
    /// The text of the record.
    pub fn text(&self) -> String {
        let mut text = format!(
            "[patient]\nbirth_date = {}\n[operation]\ndate = {}\nside = \"{}\"\napproach = \"{}\"\n",
            self.birth, self.date, self.side, self.approach
        );
        let line = |key: &str, value: Option<String>| value.map_or(String::new(), |value| format!("{key} = {value}\n"));
        let word = |value: Option<&str>| value.map(|word| format!("\"{word}\""));
        let length = |value: Option<u8>| value.map(|length| format!("\"{length} mm\""));
        let flag = |value: Option<bool>| value.map(|flag| flag.to_string());
        text += &line("revision", flag(self.revision));
        text += &format!("[operation.tear]\nanteroposterior = \"{} mm\"\n", self.anteroposterior);
        text += &line("mediolateral", length(self.mediolateral));
        text += &line("retraction", length(self.retraction));
        for tendon in &self.tendons {
            text += &format!("[[operation.tendon]]\nname = \"{}\"\nthickness = \"full\"\n", tendon.name);
            text += &format!("repair = \"{}\"\n", tendon.repair);
            if tendon.name == "subscapularis" {
                text += &format!("part = \"{}\"\n", tendon.part);
            }
            text += &line("tissue", word(tendon.tissue));
            text += &line("tension", word(tendon.tension));
        }
        text += "[operation.fatty_infiltration]\n";
        text += &line("infraspinatus", self.infiltration.map(|grade| grade.to_string()));
        text += "[operation.also]\nsubacromial_decompression = false\nother = []\n";
        text += &line("biceps", word(self.biceps));
        text += &line("labrum", word(self.labrum));
        text += &line("distal_clavicle_excision", flag(self.clavicle));
        text += &line("capsular_release", flag(self.release));
        for arc in &self.arcs {
            text +=
                &format!("[[operation.safe_arc]]\nmovement = \"{}\"\nup_to = \"{} deg\"\n", arc.movement, arc.up_to);
            text += &line("until", arc.until.map(|day| format!("\"day {day}\"")));
        }
        text += "[other_arm]\n";
        text += &line("shoulder", word(self.other_arm));
        text += "[risk]\ndiabetes = false\n";
        text += &line("smoking", flag(self.smoking));
        text += &line("preoperative_stiffness", flag(self.stiffness));
        text += "[surgeon]\n";
        text += &line("slower", flag(self.slower));
        text
    }
}

fn known(chance: f64) -> impl Strategy<Value = Option<bool>> {
    weighted(0.9, prop::bool::weighted(chance))
}

fn tendon(name: &'static str) -> impl Strategy<Value = Tendon> {
    (
        select(&["upper part", "complete"][..]),
        select(&["single row", "double row", "double row", "transosseous equivalent", "partial repair"][..]),
        weighted(0.9, select(&["good", "good", "fair", "poor"][..])),
        weighted(0.9, select(&["low", "low", "moderate", "high"][..])),
    )
        .prop_map(move |(part, repair, tissue, tension)| Tendon { name, part, repair, tissue, tension })
}

fn tendons() -> impl Strategy<Value = Vec<Tendon>> {
    let names: [&'static [&'static str]; 7] = [
        &["supraspinatus"],
        &["supraspinatus"],
        &["infraspinatus"],
        &["subscapularis"],
        &["teres minor"],
        &["supraspinatus", "infraspinatus"],
        &["supraspinatus", "subscapularis"],
    ];
    select(names.to_vec()).prop_flat_map(|names| names.iter().map(|&name| tendon(name)).collect::<Vec<_>>())
}

fn arc() -> impl Strategy<Value = Arc> {
    let of = |movement: &'static str, from: i32, to: i32| (Just(movement), from..=to);
    let angle = prop_oneof![
        of("external rotation", -20, 70),
        of("internal rotation", -10, 70),
        of("forward elevation", 20, 130),
        of("scapular-plane elevation", 20, 130),
        of("abduction", 10, 120),
        of("horizontal adduction", 0, 60),
    ];
    (angle, weighted(0.8, 1..150_u16)).prop_map(|((movement, up_to), until)| Arc { movement, up_to, until })
}

/// Any day of the operation on which nobody here comes to be more than 70.
fn day() -> impl Strategy<Value = Date> {
    (0..9000_i64).prop_map(|days| date(2000, 1, 1).saturating_add(days.days()))
}

/// A record.
pub fn record() -> impl Strategy<Value = Written> {
    let operation = (
        day(),
        select(&["left", "right"][..]),
        select(&["arthroscopic", "arthroscopic", "mini-open", "open"][..]),
        known(0.1),
        4..60_u8,
        weighted(0.8, 4..45_u8),
        weighted(0.8, 0..40_u8),
        tendons(),
    );
    let beside = (
        weighted(0.9, 0..=4_u8),
        weighted(0.9, select(&["none", "none", "tenotomy", "tenodesis"][..])),
        weighted(0.9, select(&["none", "none", "none", "superior repair", "anterior repair"][..])),
        known(0.2),
        known(0.1),
        prop::collection::vec(arc(), 0..3),
    );
    let around = (
        weighted(0.9, select(&["sound", "sound", "sound", "painful"][..])),
        known(0.2),
        known(0.1),
        weighted(0.3, any::<bool>()),
    );
    (operation, beside, around).prop_map(|(operation, beside, around)| {
        let (date, side, approach, revision, anteroposterior, mediolateral, retraction, tendons) = operation;
        let (infiltration, biceps, labrum, clavicle, release, arcs) = beside;
        let (other_arm, smoking, stiffness, slower) = around;
        Written {
            birth: jiff::civil::date(1970, 6, 11),
            date,
            side,
            approach,
            revision,
            anteroposterior,
            mediolateral,
            retraction,
            tendons,
            infiltration,
            biceps,
            labrum,
            clavicle,
            release,
            arcs,
            other_arm,
            smoking,
            stiffness,
            slower,
        }
    })
}

/// Settings: none, or the looser protocol with every confirmation.
pub fn choice() -> impl Strategy<Value = &'static str> {
    select(&["", "", EARLY][..])
}

const EARLY: &str = "[choice]\nprotocol = \"early-passive\"\nreason = \"agreed\"\n\
    confirm = \"early-passive\"\nconfirm_large = \"50 mm\"\n";
