//! Day by day and key by key, over records read from their text: what is composed is the lowest of everything said.

use diagnostic::{FileId, Sink};
use jiff::civil::date;
use operative::{DIMENSION_COUNT, DIMENSIONS, DimensionId, Facts, MAX_SAFE_ARCS, SafeArc, SafeArcs, dim};
use proof::{Edge, is_believable, witness};
use protocol::checker::Rulebook;
use protocol::{Choices, Compiled, Family, Library, Requested, resolve};
use quantity::{Degrees, PostoperativeDay};

/// A fixed sequence of numbers by chance (a linear congruential generator with the usual 64-bit constants).
struct Chance(u64);

impl Chance {
    fn below(&mut self, end: u64) -> u64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) % end
    }
}

fn arc(chance: &mut Chance, index: u8) -> SafeArc {
    use body::Movement as M;
    let movements = [
        (M::ExternalRotation, -20, 90),
        (M::ForwardElevation, 10, 170),
        (M::ScapularPlaneElevation, 10, 170),
        (M::Abduction, 10, 170),
        (M::InternalRotation, -10, 80),
        (M::HorizontalAdduction, 0, 60),
        (M::Extension, 0, 40),
        (M::AbductionWithExternalRotation, 0, 80),
    ];
    let (movement, least, most) = movements[chance.below(movements.len() as u64) as usize];
    let up_to = Degrees::whole(least + chance.below((most - least) as u64) as i32);
    let until = (chance.below(3) > 0).then(|| PostoperativeDay::new(1 + chance.below(200) as u16));
    SafeArc { movement, up_to, until, index }
}

fn facts(chance: &mut Chance) -> Facts {
    loop {
        let mut facts = Facts { classes: [0; DIMENSION_COUNT], safe_arcs: SafeArcs::default() };
        let milder = chance.below(2) == 0;
        for (place, dimension) in (0_u8..).zip(DIMENSIONS) {
            let class = chance.below(dimension.classes.len() as u64) as u8;
            // Half of the records are mild in most things, so that single findings show.
            let class = if milder && chance.below(3) > 0 { 0 } else { class };
            facts = facts.with(DimensionId(place), class);
        }
        facts = facts.with(dim::PROCEDURE, 0).with(dim::OTHER_PROCEDURE, 0);
        let arcs = chance.below(3).min(MAX_SAFE_ARCS as u64) as u8;
        facts.safe_arcs = (0..arcs).map(|index| arc(chance, index)).collect();
        if is_believable(&facts) {
            return facts;
        }
    }
}

/// The first difference between the composed plan and everything the files say, each day by itself.
fn difference(family: &Family, choices: &Choices, facts: &Facts, requested: Requested) -> Option<String> {
    let days: Vec<u16> = facts.safe_arcs.iter().filter_map(|arc| arc.until).map(|day| day.count()).collect();
    let compiled = Compiled::new(family, choices, &days);
    let plan = resolve(&compiled, facts, requested);
    let in_force = Rulebook::new(family, choices).in_force(facts, requested);
    let horizon = plan.grid.days.last().copied().expect("a horizon");
    for (lane, key) in plan.grid.keys.iter().enumerate() {
        let lines = in_force.lines(*key);
        let cells = &plan.cells[lane * plan.grid.columns()..][..plan.grid.columns()];
        for (column, cell) in cells.iter().enumerate() {
            for day in plan.grid.days[column]..plan.grid.days[column + 1] {
                if lines.most(day) != *cell {
                    return Some(format!("{key} on day {day}: {:?} composed, {:?} said", cell, lines.most(day)));
                }
            }
        }
    }
    for day in 0..horizon {
        let column = plan.grid.column(day);
        if plan.wear[column] != in_force.wear(day) || plan.sling_position[column] != in_force.sling_position(day) {
            return Some(format!("the sling on day {day}"));
        }
    }
    let gates = compiled.stages.iter().zip(&plan.gates).find(|(stage, gate)| in_force.gate(stage) != **gate);
    gates.map(|(stage, gate)| format!("the gate of {stage}: {gate:?} composed, {:?} said", in_force.gate(stage)))
}

#[test]
fn ten_thousand_records_day_by_day() {
    const RECORDS: u64 = 10_000;
    let mut next = 0..;
    let library = Library::shipped(|_, _| FileId(next.next().unwrap_or_default()), &mut Sink::new());
    let family = library.families.iter().find(|family| family.file.id == "cuff").expect("it is shipped");
    let options: Vec<Choices> = std::iter::once(Choices::of(family))
        .chain(family.choices().flat_map(|choice| {
            choice.options.iter().skip(1).map(move |option| {
                let mut choices = Choices::of(family);
                choices.take(&choice.id, option);
                choices
            })
        }))
        .collect();
    let halves: Vec<(u64, u64)> = std::thread::scope(|scope| {
        let threads: Vec<_> = (0..2_u64)
            .map(|half| {
                let options = &options;
                scope.spawn(move || {
                    let mut chance = Chance(20_260_302 + half);
                    let (mut records, mut with_arcs) = (0, 0);
                    for _ in 0..RECORDS / 2 {
                        let drawn = facts(&mut chance);
                        let edge = Edge::ALL[chance.below(Edge::ALL.len() as u64) as usize];
                        let text = witness(&drawn, edge);
                        let mut sink = Sink::new();
                        let record = operative::read(FileId(0), &text, &mut sink).expect("a witness is a record");
                        let read = operative::facts(&record);
                        assert_eq!(read, drawn, "{text}");
                        assert!(record.operation_date() > date(1900, 1, 1));
                        let choices = &options[chance.below(options.len() as u64) as usize];
                        let requested = Requested(chance.below(4).checked_sub(1).map(|place| place as u8));
                        let found = difference(family, choices, &read, requested);
                        assert_eq!(found, None, "under {choices:?} {requested:?}\n{text}");
                        records += 1;
                        with_arcs += u64::from(!read.safe_arcs.is_empty());
                    }
                    (records, with_arcs)
                })
            })
            .collect();
        threads.into_iter().map(|thread| thread.join().expect("a half was judged")).collect()
    });
    let (records, with_arcs) = halves.into_iter().fold((0, 0), |sum, half| (sum.0 + half.0, sum.1 + half.1));
    assert_eq!(records, RECORDS);
    assert!(with_arcs > RECORDS / 2, "{with_arcs} with safe arcs");
}
