//! Loosenings by the surgeon's own decision: applied last, outside every proof, always printed.

use diagnostic::{Diagnostic, Sink};
use plan::LaneId;

use crate::choose;
use crate::dated::{Dated, Loosened};
use crate::settings::Settings;

/// Applies loosenings, last of all; each needs its confirmation where it is large.
pub(crate) fn loosen(dated: &mut Dated<'_>, settings: &Settings, sink: &mut Sink) -> Vec<String> {
    let mut shown = Vec::new();
    for (place, loosening) in settings.loosenings.iter().enumerate() {
        let twice = settings.loosenings[..place].iter().find(|other| {
            other.key == loosening.key && other.from_day < loosening.until_day && loosening.from_day < other.until_day
        });
        if let Some(other) = twice {
            sink.push(
                Diagnostic::error("contradiction", format!("two loosenings of `{}` share days", loosening.key))
                    .at(loosening.written.span)
                    .also(other.written.span, "the other one")
                    .help("give each day one value"),
            );
            continue;
        }
        let grid = dated.plan.grid.clone();
        let lanes: Vec<LaneId> = (0_u8..)
            .map(LaneId)
            .zip(&grid.keys)
            .filter(|(_, key)| {
                **key == loosening.key
                    || (loosening.key.position == body::Position::Any
                        && key.in_position(body::Position::Any) == loosening.key)
            })
            .map(|(lane, _)| lane)
            .collect();
        if lanes.is_empty() {
            sink.push(
                Diagnostic::error("no-such-key", format!("no limit is written for `{}`", loosening.key))
                    .at(loosening.written.span),
            );
            continue;
        }
        let days: Vec<u16> = (loosening.from_day..loosening.until_day.min(dated.horizon())).collect();
        let looser: Vec<u16> = days
            .iter()
            .copied()
            .filter(|&day| lanes.iter().any(|&lane| loosening.up_to > dated.unloosened(lane, day)))
            .collect();
        if looser.is_empty() {
            sink.push(
                Diagnostic::warning("loosens-nothing", format!("the plan already allows `{}` this far", loosening.key))
                    .at(loosening.written.span),
            );
            continue;
        }
        let greatest = looser
            .iter()
            .flat_map(|&day| lanes.iter().map(move |&lane| (lane, day)))
            .filter_map(|(lane, day)| {
                let change = plan::Change {
                    lane,
                    key: loosening.key,
                    from_day: day,
                    until_day: day + 1,
                    a: dated.unloosened(lane, day),
                    b: loosening.up_to,
                };
                change.degrees()
            })
            .max();
        // Entries on the same key count together: a large loosening cut in pieces is a large one.
        let together = settings
            .loosenings
            .iter()
            .filter(|other| other.key == loosening.key)
            .flat_map(|other| other.from_day..other.until_day.min(dated.horizon()))
            .collect::<std::collections::BTreeSet<u16>>();
        // A load or an effort has no degrees: more than the plan ever bounds it by is large.
        let ever = lanes
            .iter()
            .flat_map(|&lane| dated.plan.lane(lane))
            .copied()
            .filter(|cell| *cell != plan::Cell::FREE)
            .max();
        let beyond =
            (loosening.key.is_load() || loosening.key.is_effort()) && ever.is_none_or(|ever| loosening.up_to > ever);
        // What is shut and would be opened counts by how much earlier than the plan it opens.
        let early = lanes.iter().any(|&lane| {
            let shut = looser.iter().copied().find(|&day| !dated.unloosened(lane, day).is_open());
            let opens = (0..dated.horizon()).find(|&day| dated.unloosened(lane, day) >= loosening.up_to);
            shut.is_some_and(|from| {
                let opens = opens.unwrap_or(dated.horizon());
                opens.saturating_sub(from) > evidence::ids::LARGE_LOOSENING_DAYS.days().count()
            })
        });
        let large = beyond
            || early
            || together.len() > usize::from(evidence::ids::LARGE_LOOSENING_DAYS.days().count())
            || greatest.is_some_and(|degrees| degrees > evidence::ids::LARGE_LOOSENING_DEGREES.degrees());
        if large && loosening.confirm.as_ref().map(|confirm| &confirm.value) != Some(&loosening.written.value) {
            sink.push(
                Diagnostic::error("not-confirmed", "a loosening this large is written twice")
                    .at(loosening.confirm.as_ref().map_or(loosening.written.span, |confirm| confirm.span))
                    .help(format!("if it is meant, add `confirm = \"{}\"`", loosening.written.value)),
            );
            continue;
        }
        let ends = settings.backs.iter().map(|back| back.day).filter(|&day| day > loosening.from_day).min();
        let until = loosening.until_day.min(ends.unwrap_or(u16::MAX));
        if until < loosening.until_day {
            sink.push(
                Diagnostic::warning("loosening-ends-early", format!("the go-back on day {until} ends this loosening"))
                    .at(loosening.written.span)
                    .help("write a new one for the days after it, if it is still meant"),
            );
        }
        dated.loosened.push(Loosened {
            key: loosening.key,
            written: loosening.written.span,
            lanes,
            from: loosening.from_day,
            until,
            cell: loosening.up_to,
            reason: loosening.reason.value.clone(),
        });
        shown.push(format!(
            "{} from day {} to day {}: {} ({})",
            loosening.key,
            loosening.from_day,
            until - 1,
            choose::in_words(loosening.up_to, loosening.key),
            loosening.reason.value
        ));
    }
    cascade_kept(dated, sink);
    shown
}

/// A loosened mode may not go further than the mode it rests on.
fn cascade_kept(dated: &Dated<'_>, sink: &mut Sink) {
    for loosened in &dated.loosened {
        let key = loosened.key;
        let Some(below) = key.mode.rests_on().map(|mode| key.in_mode(mode)).filter(|below| below.exists()) else {
            continue;
        };
        let broken = (loosened.from..loosened.until.min(dated.horizon()))
            .find(|&day| dated.value(key, day) > dated.value(below, day));
        if let Some(day) = broken {
            sink.push(
                Diagnostic::error(
                    "loosening-above-its-mode",
                    format!("on day {day} `{key}` would go further than `{below}`"),
                )
                .at(loosened.written)
                .help("loosen the mode it rests on as well, or not this far"),
            );
        }
    }
}
