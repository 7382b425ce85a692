//! Stages, their gates and criteria, and the visits at them.

use body::Key;
use exercise::{Amount, Entry, Kind};
use plan::words::of_key;
use plan::{StageLine, VisitLine};

use super::Judge;
use super::fitting::{NO_MARGIN, asks_too_much};
use super::found::{Found, Wrong};
use super::today::is_signed;
use crate::file::Stage;

/// Judges stages and visits.
pub(super) fn judge(judge: &Judge<'_>, found: &mut Found) {
    let lines = &judge.issued.prescription.stages;
    for (id, gate) in &judge.stages {
        let opens = judge.lived.reaches(*gate);
        match lines.iter().find(|line| line.id == *id) {
            Some(line) => stage(judge, line, opens, found),
            None => found.on(opens, Wrong::overload("stage-left-out", format!("the stage `{id}` is left out"))),
        }
    }
    for line in lines.iter().filter(|line| judge.gate(&line.id).is_none()) {
        let message = format!("no protocol in force has the stage `{}`", line.id);
        found.on(line.from_day.count(), Wrong::overload("stage-unknown", message));
    }
    for pair in lines.windows(2) {
        let day = pair[1].from_day.count();
        let place = |line: &StageLine| judge.stages.iter().position(|(id, _)| *id == line.id);
        if pair[0].from_day >= pair[1].from_day || place(&pair[0]) > place(&pair[1]) {
            let message = format!(
                "the stage `{}` opens on day {day}, and `{}` before it on day {}",
                pair[1].id,
                pair[0].id,
                pair[0].from_day.count()
            );
            found.on(day, Wrong::overload("gates-out-of-order", message));
        }
    }
    days_of_stages(judge, found);
    judge.issued.prescription.visits.iter().for_each(|line| visit(judge, line, found));
}

fn stage(judge: &Judge<'_>, line: &StageLine, opens: u16, found: &mut Found) {
    let day = line.from_day.count();
    if day < opens {
        let message = format!("the stage `{}` opens {} days before day {opens}", line.id, opens - day);
        found.on(day, Wrong::overload("gate-too-early", message));
    }
    if line.from_day.date(judge.issued.prescription.operated_on) != line.from {
        found.on(day, Wrong::overload("date-not-counted", format!("{} is not day {day} after surgery", line.from)));
    }
    opened(judge, line, found);
    let written = strictest(judge, &line.id);
    let complete = written
        .iter()
        .any(|stage| stage.criteria.iter().all(|criterion| line.criteria.iter().any(|shown| shown.id == criterion.id)));
    if !complete {
        let message = format!("not every criterion of the stage `{}` stands beside its gate", line.id);
        found.on(day, Wrong::overload("criterion-left-out", message));
    }
    let shown = |id: &str| line.criteria.iter().any(|shown| shown.id == id);
    let measured = written.iter().flat_map(|stage| &stage.criteria).filter(|criterion| shown(&criterion.id));
    for (key, criterion) in measured.filter_map(|criterion| Some((criterion.measure?.0, criterion))) {
        if let Some(before) = day.checked_sub(1).filter(|before| !can_be_measured(judge, key, *before)) {
            let message = format!(
                "\"{}\" is looked at before the stage `{}`, and no test of {} is allowed on day {before}",
                criterion.text,
                line.id,
                of_key(key)
            );
            found.on(day, Wrong::stiffness("criterion-cannot-be-met", message).about(key));
        }
    }
}

/// No stage is called open that nothing signed opens, or beyond the go-back that closes it.
fn opened(judge: &Judge<'_>, line: &StageLine, found: &mut Found) {
    let asked = judge.issued.prescription.today.as_ref().map_or(u16::MAX, |today| today.day.count());
    let is_first = judge.stages.first().is_some_and(|(id, _)| *id == line.id);
    let last_open = match line.closes_again {
        _ if line.opened => u16::MAX,
        Some((closes, _)) => closes.count().saturating_sub(1),
        None => return,
    };
    if !is_first && !is_signed(judge, &line.id, asked, last_open) {
        let message = format!("the stage `{}` is called open, and nothing signed opens it for that long", line.id);
        found.on(line.from_day.count(), Wrong::overload("stage-not-opened", message));
    }
}

/// The stage as each protocol in force writes it that opens it last.
fn strictest<'c>(judge: &Judge<'c>, id: &str) -> Vec<&'c Stage> {
    let of_protocols = judge.in_force.protocols.iter().flat_map(|(_, protocol)| &protocol.stages);
    let written: Vec<&Stage> = of_protocols.filter(|stage| stage.id == id).collect();
    let last = written.iter().map(|stage| stage.gate).max();
    written.into_iter().filter(|stage| Some(stage.gate) == last).collect()
}

/// Whether some visit test of a movement is allowed; being stopped at the limit is a measurement.
pub(super) fn can_be_measured(judge: &Judge<'_>, key: Key, day: u16) -> bool {
    let fits = |test: &Entry| {
        test.demands.iter().all(|demand| {
            let limit = judge.value(demand.key, day);
            match demand.amount {
                // The test goes as far as the day allows, and no further.
                Amount::AngleToLimit { .. } => limit.is_open(),
                _ => asks_too_much(demand, limit, NO_MARGIN).is_none(),
            }
        })
    };
    let of_key = |test: &&Entry| test.target().is_some_and(|target| target.key == key);
    judge.issued.catalogue.of(Kind::Test).filter(of_key).any(fits)
}

/// No day belongs to a stage whose gate it has not reached.
fn days_of_stages(judge: &Judge<'_>, found: &mut Found) {
    for span in &judge.issued.prescription.spans {
        let gate = judge.gate(&span.stage);
        for day in span.from_day.count()..span.until_day.count() {
            if gate.is_none_or(|gate| judge.lived.arm(day) < gate) {
                let message = format!("the day is counted to the stage `{}`, which has not opened", span.stage);
                found.on(day, Wrong::overload("stage-too-early", message));
            }
        }
    }
}

/// What a visit at a gate is called.
const AT_GATE: &str = "gate: ";

fn visit(judge: &Judge<'_>, line: &VisitLine, found: &mut Found) {
    let (due, day) = (line.due_day.count(), line.day.count());
    let mut wrong = |message: String| found.on(day, Wrong::overload("visit-too-early", message));
    if day < due {
        wrong(format!("the visit \"{}\" is {} days before it is due", line.purpose, due - day));
    }
    if line.day.date(judge.issued.prescription.operated_on) != line.date {
        wrong(format!("the visit \"{}\" is dated {}, which is not day {day}", line.purpose, line.date));
    }
    let earliest = match line.purpose.strip_prefix(AT_GATE) {
        Some(stage) => judge.gate(stage).map(|gate| judge.lived.reaches(gate)),
        None => {
            let visits = judge.in_force.protocols.iter().flat_map(|(_, protocol)| &protocol.visits);
            visits.filter(|visit| visit.purpose == line.purpose).map(|visit| visit.due.count()).min()
        }
    };
    match earliest {
        Some(earliest) if due >= earliest => {}
        Some(earliest) => {
            wrong(format!("the visit \"{}\" is due {} days before day {earliest}", line.purpose, earliest - due));
        }
        None => wrong(format!("no protocol in force asks for the visit \"{}\"", line.purpose)),
    }
}
