//! From one table of a file to one entry.

use diagnostic::{Diagnostic, Sink, Span, Spanned};
use document::{Table, nearest};
use quantity::Degrees;

use crate::check::{self, Number};
use crate::pose_reader;
use crate::reader_demand::{angle, demands};
use crate::reader_dose::dose;
use crate::{
    Entry, Kind, Measured, MuscleActivity, Occasion, OtherArm, Posture, Purpose, Resting, SlingDuring, Supervision,
};

/// Reads one entry; `None` where something it can't do without is missing or wrong.
pub(crate) fn entry(kind: Kind, mut table: Table<'_>, sink: &mut Sink) -> Option<Entry> {
    let span = table.span;
    let before = sink.errors();
    let mut numbers = Vec::new();
    let id = table.require("id", sink).and_then(|value| value.text(sink)).and_then(|id| kebab(id, sink));
    let purpose = match kind {
        Kind::Exercise => table.require("purpose", sink).and_then(|value| value.word(Purpose::WORDS, sink)),
        _ => None,
    };
    let posture = table.require("posture", sink).and_then(|value| value.word(Posture::WORDS, sink));
    let equipment = words_of(&mut table, sink);
    let instead = table.texts("instead", sink).into_iter().map(|text| text.value).collect();
    let other_arm = required_for(kind, Kind::Exercise, &mut table, "other_arm", OtherArm::WORDS, sink);
    let supervision = required_for(kind, Kind::Exercise, &mut table, "supervision", Supervision::WORDS, sink);
    let sling = match kind {
        Kind::Test => table.word("sling", SlingDuring::WORDS, sink),
        _ => table.require("sling", sink).and_then(|value| value.word(SlingDuring::WORDS, sink)),
    };
    let (operated, other) = match kind {
        Kind::Care => (Vec::new(), Vec::new()),
        _ => (
            demands(&mut table, "demands", &mut numbers, sink),
            demands(&mut table, "other_demands", &mut numbers, sink),
        ),
    };
    // An activity of washing, dressing or rest may be a pose of the resting allowance.
    let rests = match kind {
        Kind::Care => true,
        Kind::Activity => table.remaining().iter().any(|key| key.value == "for"),
        Kind::Exercise | Kind::Test => false,
    };
    let resting = if rests { resting(&mut table, &mut numbers, sink) } else { None };
    let given = pose_reader::Given { demands: &operated, resting };
    let positions = pose_reader::positions(kind, &mut table, (sink.errors() == before).then_some(given), sink);
    let dose = if kind == Kind::Exercise { dose(&mut table, sink) } else { None };
    let muscle = if kind == Kind::Care { MuscleActivity::default() } else { muscle(&mut table, sink) };
    let evidence = cited(&mut table, sink);
    table.finish(sink);
    if operated.is_empty() && matches!(kind, Kind::Exercise | Kind::Test) && sink.errors() == before {
        sink.push(
            Diagnostic::error("missing-key", format!("this {kind} demands nothing"))
                .at(span)
                .help("say what it asks of the arm: demands = [{ joint = …, movement = …, mode = … }]"),
        );
    }
    if sink.errors() == before {
        check::numbers(&numbers, &evidence, sink);
    }
    let other_arm = other_arm.map_or(OtherArm::None, |arm| arm.value);
    if sink.errors() == before {
        check::other_arm(kind, other_arm, &other, span, sink);
    }
    if sink.errors() > before {
        return None;
    }
    let supervision = match kind {
        Kind::Test => Supervision::Therapist,
        _ => supervision.map_or(Supervision::Home, |who| who.value),
    };
    Some(Entry {
        id: id?.value,
        kind,
        purpose: purpose.map(|purpose| purpose.value),
        posture: posture?.value,
        equipment,
        instead,
        other_arm,
        supervision,
        sling: sling.map_or(SlingDuring::Off, |sling| sling.value),
        demands: operated,
        other_demands: other,
        dose,
        muscle,
        resting,
        positions,
        evidence,
        span,
    })
}

fn required_for<T: Copy>(
    kind: Kind,
    needed_by: Kind,
    table: &mut Table<'_>,
    key: &'static str,
    words: &[(&str, T)],
    sink: &mut Sink,
) -> Option<Spanned<T>> {
    if kind == needed_by { table.require(key, sink)?.word(words, sink) } else { table.word(key, words, sink) }
}

fn kebab(id: Spanned<String>, sink: &mut Sink) -> Option<Spanned<String>> {
    let fits = id
        .value
        .split('-')
        .all(|part| !part.is_empty() && part.bytes().all(|byte| byte.is_ascii_lowercase() || byte.is_ascii_digit()));
    if fits {
        return Some(id);
    }
    sink.push(
        Diagnostic::error("bad-id", "an id is lower-case words joined by hyphens")
            .at(id.span)
            .help("write it like \"table-slide\""),
    );
    None
}

fn words_of(table: &mut Table<'_>, sink: &mut Sink) -> Vec<crate::Equipment> {
    let Some(value) = table.take("equipment") else { return Vec::new() };
    let items = value.list(sink).unwrap_or_default();
    items.into_iter().filter_map(|item| item.word(crate::Equipment::WORDS, sink)).map(|word| word.value).collect()
}

fn cited(table: &mut Table<'_>, sink: &mut Sink) -> Vec<&'static evidence::Entry> {
    table.texts("evidence", sink).iter().filter_map(|id| known(id, sink)).collect()
}

/// The evidence entry of an id, or a diagnostic that names the nearest.
pub(crate) fn known(id: &Spanned<String>, sink: &mut Sink) -> Option<&'static evidence::Entry> {
    let found = evidence::entry(&id.value);
    if found.is_none() {
        let mut fault = Diagnostic::error("unknown-evidence", "this id is not in the table of evidence").at(id.span);
        if let Some(near) = nearest(&id.value, evidence::ENTRIES.iter().map(|entry| entry.id)) {
            fault = fault.help(format!("did you mean \"{near}\"?"));
        }
        sink.push(fault);
    }
    found
}

fn muscle(table: &mut Table<'_>, sink: &mut Sink) -> MuscleActivity {
    let Some(mut muscles) = table.table("muscle", sink) else { return MuscleActivity::default() };
    let mut one = |key| {
        let id = muscles.text(key, sink)?;
        let measured = Measured::of(known(&id, sink)?);
        if measured.is_none() {
            sink.push(
                Diagnostic::error("not-muscle-activity", "this entry holds no percentage of a maximal effort")
                    .at(id.span)
                    .help("cite an entry in % MVIC, or leave the muscle out: not measured"),
            );
        }
        measured
    };
    let activity = MuscleActivity {
        supraspinatus: one("supraspinatus"),
        infraspinatus: one("infraspinatus"),
        subscapularis: one("subscapularis"),
    };
    muscles.finish(sink);
    activity
}

fn resting(table: &mut Table<'_>, numbers: &mut Vec<Number>, sink: &mut Sink) -> Option<Resting> {
    let mut needed = |key: &'static str| -> Option<(Degrees, Span)> {
        let value = table.require(key, sink)?;
        let degrees = angle(value, sink)?;
        numbers.push(Number::degrees(degrees.value, degrees.span));
        Some((degrees.value, degrees.span))
    };
    let elevation = needed("elevation");
    let internal = needed("rotation_internal");
    let external = needed("rotation_external");
    let occasion = table.require("for", sink)?.word(Occasion::WORDS, sink)?;
    Some(Resting {
        elevation: elevation?.0,
        rotation_internal: internal?.0,
        rotation_external: external?.0,
        occasion: occasion.value,
    })
}
