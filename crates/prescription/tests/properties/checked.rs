//! The checker finds nothing in what is issued, and every single step above it.

use exercise::Kind;
use jiff::ToSpan;
use plan::{Allowed, Bound, Cell};
use prescription::Answer;
use proptest::prelude::*;
use quantity::{Degrees, Kilograms, Percent};

use crate::judged::Told;
use crate::plans::{SHIPPED, Texts, may, opened, prescribe};
use crate::records::{choice, record};

/// Holds and a go-back by chance, in the settings.
fn moves() -> impl Strategy<Value = String> {
    let hold = (0..250_u16, 1..60_u16, any::<bool>()).prop_map(|(from, days, elbow)| {
        let joint = if elbow { "joint = \"elbow\"\n" } else { "" };
        format!("[[hold]]\nfrom_day = {from}\ndays = {days}\nreason = \"wound\"\n{joint}")
    });
    let back = prop::option::of(
        (300..400_u16).prop_map(|day| format!("[[back]]\nstage = \"passive\"\nday = {day}\nreason = \"a fall\"\n")),
    );
    (prop::collection::vec(hold, 0..3), back).prop_map(|(holds, back)| holds.concat() + &back.unwrap_or_default())
}

/// Options of the surgeon, each with its reason and its confirmation.
fn prefers() -> impl Strategy<Value = String> {
    let several = |family: &&protocol::Family| family.protocols.len() > 1;
    let family = SHIPPED.0.families.iter().find(several).expect("the family of the cuff");
    let options = family.choices().flat_map(|choice| {
        choice.options.iter().map(|option| {
            format!(
                "[[prefer]]\nchoice = \"{}\"\noption = \"{option}\"\nreason = \"agreed\"\nconfirm = \"{option}\"\n",
                choice.id
            )
        })
    });
    prop::option::of(prop::sample::select(options.collect::<Vec<_>>())).prop_map(Option::unwrap_or_default)
}

/// A loosening and a home margin by chance, confirmed and with their reasons.
fn loosened() -> impl Strategy<Value = String> {
    let of = |words: &'static str, unit: &'static str, most: u16| (Just(words), Just(unit), 0..=most);
    let loosening = prop_oneof![
        of("joint = \"shoulder\"\nmovement = \"external rotation\"\nmode = \"passive\"", "deg", 90),
        of("joint = \"shoulder\"\nmovement = \"forward elevation\"\nmode = \"passive\"", "deg", 170),
        of("joint = \"shoulder\"\nmovement = \"abduction\"\nmode = \"isometric\"\nposition = \"at side\"", "%", 80),
        of("joint = \"whole arm\"\nmovement = \"hand load\"\nmode = \"resisted\"", "kg", 20),
        of("joint = \"whole arm\"\nmovement = \"overhead load\"\nmode = \"resisted\"", "kg", 20),
    ];
    let loosening = (loosening, 0..364_u16, 1..400_u16).prop_map(|((words, unit, value), from, days)| {
        let until = from + days;
        format!(
            "[[loosening]]\n{words}\nfrom_day = {from}\nuntil_day = {until}\nup_to = \"{value} {unit}\"\n\
             confirm = \"{value} {unit}\"\nreason = \"agreed\"\n"
        )
    });
    let margin = (0..=10_u8)
        .prop_map(|margin| format!("home_margin = \"{margin} deg\"\nhome_margin_reason = \"a careful patient\"\n"));
    (prop::option::of(margin), prop::option::of(loosening))
        .prop_map(|(margin, loosening)| margin.unwrap_or_default() + &loosening.unwrap_or_default())
}

/// The next value above one.
fn one_step_up(allowed: Allowed) -> Option<Allowed> {
    match allowed {
        Allowed::Free => None,
        Allowed::No => Some(Allowed::Free),
        Allowed::UpTo(Bound::Angle(a)) => Some(Allowed::UpTo(Bound::Angle(Degrees::from_steps(a.steps() + 1)))),
        Allowed::UpTo(Bound::Load(l)) => Some(Allowed::UpTo(Bound::Load(Kilograms::from_steps(l.steps() + 1)))),
        Allowed::UpTo(Bound::Effort(e)) => Some(Allowed::UpTo(Bound::Effort(Percent::from_steps(e.steps() + 1)))),
    }
}

proptest! {
    #![proptest_config(crate::config())]

    /// `prescribe` itself runs the checker; here it is told everything a second time, by other code.
    #[test]
    fn nothing_is_found_in_what_is_issued(
        written in record(),
        settings in choice(),
        moves in moves(),
        prefers in prefers(),
        loosened in loosened(),
        (count, late, day) in (0..6_usize, -20..20_i64, 0..420_u16),
    ) {
        let record = written.text();
        let settings = format!("{loosened}{settings}{prefers}{moves}");
        let plain = prescribe(Texts { record: &record, settings: &settings, ..Texts::default() });
        let opened = opened(&plain, count, late);
        let on = Some(plain.operated_on.saturating_add(i64::from(day).days()));
        let texts = Texts { record: &record, settings: &settings, opened: &opened, on, ..Texts::default() };
        let p = prescribe(texts);
        prop_assert_eq!(Told::of(texts).faults(&p), vec![], "{}{}{}", record, settings, opened);
    }

    #[test]
    fn every_limit_is_found_one_step_up(
        written in record(),
        settings in choice(),
        span in any::<prop::sample::Index>(),
        row in any::<prop::sample::Index>(),
    ) {
        let record = written.text();
        let texts = Texts { record: &record, settings, ..Texts::default() };
        let mut p = prescribe(texts);
        let place = span.index(p.spans.len());
        let rows = &mut p.spans[place].limits;
        let row = row.index(rows.len());
        let row = &mut rows[row];
        let key = row.key;
        if let Some(more) = one_step_up(row.allowed) {
            row.allowed = more;
            let day = p.spans[place].from_day.count();
            let faults = Told::of(texts).faults(&p);
            let found = faults.iter().any(|fault| {
                fault.kind == "limit-above-rule"
                    && fault.key.is_some_and(|found| found == key || found.in_position(body::Position::Any) == key)
                    && fault.from_day == day
            });
            prop_assert!(found, "{key} {more:?} from day {day}: {faults:?}\n{record}");
        }
    }

    /// The prescription of one record is no prescription for a stricter one, nor the other way round unless they are the same.
    #[test]
    fn a_plan_for_other_facts_is_found(written in record(), other in record()) {
        let (record, other) = (written.text(), other.text());
        let texts = |record| Texts { record, ..Texts::default() };
        let (own, others) = (prescribe(texts(&record)), prescribe(texts(&other)));
        let faults = Told::of(texts(&record)).faults(&others);
        let looser = crate::plans::looser_day(&others, &own);
        prop_assert!(looser.is_none() || !faults.is_empty(), "{looser:?}\n{record}\n{other}");
    }

    /// What `may` answers with yes or ask, held against the same limits.
    #[test]
    fn a_permission_is_inside_the_limits(
        written in record(),
        settings in choice(),
        place in any::<prop::sample::Index>(),
        (count, day) in (0..6_usize, 0..365_u16),
    ) {
        let record = written.text();
        let plain = prescribe(Texts { record: &record, settings, ..Texts::default() });
        let opened = opened(&plain, count, 0);
        let on = Some(plain.operated_on.saturating_add(i64::from(day).days()));
        let texts = Texts { record: &record, settings, opened: &opened, on, ..Texts::default() };
        let activities: Vec<_> = SHIPPED.1.of(Kind::Activity).collect();
        let activity = &place.get(&activities).id;
        let answer = may(texts, activity);
        let faults = Told::of(texts).faults_of_yes(&plain, activity, day);
        match answer.answer {
            Answer::Yes => prop_assert_eq!(faults, vec![], "{} on day {}\n{}{}", activity, day, record, opened),
            Answer::NotBefore => prop_assert!(!faults.is_empty(), "{activity} on day {day}\n{record}{opened}"),
            Answer::Ask => {}
        }
    }
}

/// The order of values that a step is taken in.
#[test]
fn a_step_is_a_step() {
    let up = |allowed| one_step_up(allowed).map(Cell::from);
    let twenty = Allowed::UpTo(Bound::Angle(Degrees::whole(20)));
    assert!(up(twenty) > Some(Cell::from(twenty)));
    assert_eq!(up(Allowed::No), Some(Cell::FREE));
    assert_eq!(up(Allowed::Free), None);
}
