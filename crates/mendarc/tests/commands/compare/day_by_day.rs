//! Comparisons against the two prescriptions themselves, day by day.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::LazyLock;

use serde_json::Value;

use super::{LISTS, compared, list, short};
use crate::runs::{Written, example_records, mendarc};

/// Two examples with their prescriptions, and their comparison.
struct Pair {
    records: [String; 2],
    prescriptions: [Value; 2],
    comparison: Value,
}

/// Each example with the next.
static PAIRS: LazyLock<Vec<Pair>> = LazyLock::new(|| {
    let records = example_records();
    let prescriptions: Vec<Value> =
        records.iter().map(|record| mendarc(&["prescribe", record, "--json"]).document()).collect();
    (0..records.len())
        .map(|first| {
            let places = [first, (first + 1) % records.len()];
            let of = places.map(|place| records[place].clone());
            Pair {
                comparison: compared(&[&of[0], &of[1]]),
                records: of,
                prescriptions: places.map(|place| prescriptions[place].clone()),
            }
        })
        .collect()
});

const DAYS: usize = 365;

/// What a prescription says of every key, for every day on which it says something.
fn said(prescription: &Value) -> BTreeMap<String, Vec<Option<String>>> {
    let mut said: BTreeMap<String, Vec<Option<String>>> = BTreeMap::new();
    for span in list(prescription, "spans") {
        let day = |key: &str| span[key].as_u64().expect("a day") as usize;
        for limit in list(span, "limits") {
            let words = ["joint", "movement", "position", "mode"].map(|key| limit[key].as_str().unwrap_or_default());
            let days = said.entry(words.join("/")).or_insert_with(|| vec![None; DAYS]);
            days[day("from_day")..day("until_day")].fill(Some(short(limit)));
        }
    }
    said
}

fn any(key: &str) -> String {
    let mut parts: Vec<&str> = key.split('/').collect();
    parts[2] = "any";
    parts.join("/")
}

/// Its own row, else that of any position, else not allowed.
fn value<'s>(said: &'s BTreeMap<String, Vec<Option<String>>>, key: &str, any: &str, day: usize) -> &'s str {
    let row = |key: &str| said.get(key).and_then(|days| days[day].as_deref());
    row(key).or_else(|| row(any)).unwrap_or("no")
}

#[test]
fn every_day_on_which_two_prescriptions_differ_is_told_and_no_other() {
    for Pair { records, prescriptions, comparison } in PAIRS.iter() {
        let [of_a, of_b] = prescriptions.each_ref().map(said);
        let mut told: BTreeMap<&str, Vec<Option<(String, String)>>> = BTreeMap::new();
        for change in list(comparison, "changes") {
            let key = change["key"].as_str().expect("a key");
            let day = |key: &str| change[key].as_u64().expect("a day") as usize;
            let days = told.entry(key).or_insert_with(|| vec![None; DAYS]);
            for told in &mut days[day("from_day")..day("until_day")] {
                assert_eq!(*told, None, "{records:?}: {key} is told twice");
                *told = Some((short(&change["a"]), short(&change["b"])));
            }
        }
        let on = |key: &str, day: usize| told.get(key).and_then(|days| days[day].as_ref());
        let mut differing = 0;
        for key in of_a.keys().chain(of_b.keys()).collect::<BTreeSet<_>>() {
            let any = any(key);
            for day in 0..DAYS {
                let (a, b) = (value(&of_a, key, &any, day), value(&of_b, key, &any, day));
                let is_pair = |told: &(String, String)| (told.0.as_str(), told.1.as_str()) == (a, b);
                match on(key, day) {
                    Some(told) => assert!(is_pair(told), "{records:?}: {key} on day {day}: {told:?}, not {a}, {b}"),
                    // A named position that changes as any position does is not told again.
                    None => assert!(a == b || on(&any, day).is_some_and(is_pair), "{records:?}: {key} on day {day}"),
                }
                differing += usize::from(a != b);
            }
        }
        assert_eq!(differing == 0, list(comparison, "changes").is_empty(), "{records:?}");
    }
}

/// How far behind the stricter side is: found again by walking the days.
#[test]
fn how_many_days_later_is_counted_from_day_to_day() {
    let rank = |text: &str| match text {
        "no" => f64::NEG_INFINITY,
        "free" => f64::INFINITY,
        bound => bound.split(' ').next().and_then(|number| number.parse().ok()).expect("a bound"),
    };
    let mut counted = 0;
    for Pair { records, prescriptions, comparison } in PAIRS.iter() {
        let [of_a, of_b] = prescriptions.each_ref().map(said);
        for change in list(comparison, "changes") {
            let (looser, stricter) = match change["looser"].as_str() {
                Some("a") => (&of_a, &of_b),
                Some("b") => (&of_b, &of_a),
                _ => continue,
            };
            let key = change["key"].as_str().expect("a key");
            let any = any(key);
            let from = change["from_day"].as_u64().expect("a day") as usize;
            let reached = value(looser, key, &any, from);
            let as_much =
                |text: &str| rank(text) >= rank(reached) && (!text.ends_with("lying") || reached.ends_with("lying"));
            let since = (0..=from).rev().take_while(|&day| as_much(value(looser, key, &any, day))).last();
            let then = (from..DAYS).find(|&day| as_much(value(stricter, key, &any, day)));
            let later = then.zip(since).map(|(then, since)| (then - since) as u64);
            assert_eq!(change["days_later"].as_u64(), later, "{records:?}: {change}");
            counted += usize::from(later.is_some());
        }
    }
    assert!(counted > 100, "{counted}");
}

/// Swapping the two swaps the sides and nothing else.
#[test]
fn the_order_of_the_two_does_not_matter() {
    for Pair { records, comparison, .. } in PAIRS.iter() {
        let back = compared(&[&records[1], &records[0]]);
        for name in LISTS {
            let texts = |lines: &mut dyn Iterator<Item = Value>| {
                lines.map(|line| line.to_string()).collect::<BTreeSet<String>>()
            };
            let there = texts(&mut list(comparison, name).iter().cloned());
            let swapped = texts(&mut list(&back, name).iter().map(swapped));
            let alone: Vec<&String> = there.symmetric_difference(&swapped).take(2).collect();
            assert!(alone.is_empty(), "{records:?}: {name}: {alone:?}");
            assert_eq!(list(comparison, name).len(), list(&back, name).len(), "{records:?}: {name}");
        }
    }
}

fn swapped(line: &Value) -> Value {
    let mut line = line.clone();
    for (a, b) in [("a", "b"), ("only_in_a", "only_in_b")] {
        if line.get(a).is_some() {
            let (of_a, of_b) = (line[a].take(), line[b].take());
            line[a] = of_b;
            line[b] = of_a;
        }
    }
    match line.get("looser").and_then(Value::as_str) {
        Some("a") => line["looser"] = "b".into(),
        Some("b") => line["looser"] = "a".into(),
        _ => {}
    }
    line
}

/// Stored prescriptions say the same as the records they were made from.
#[test]
fn prescriptions_change_as_their_records_do() {
    let files = Written::new();
    for (place, Pair { records, prescriptions, comparison }) in PAIRS.iter().enumerate() {
        let [a, b] = [0, 1].map(|side| files.file(&format!("{place}-{side}.json"), prescriptions[side].to_string()));
        let of_documents = compared(&[&a, &b]);
        assert_eq!(of_documents["kind"], "prescriptions");
        for name in LISTS.into_iter().filter(|name| *name != "beside") {
            assert!(comparison[name] == of_documents[name], "{records:?}: {name}");
        }
        for key in ["protocol", "edition", "date", "side"] {
            assert_eq!(comparison["a"][key], of_documents["a"][key], "{records:?}: {key}");
        }
    }
}
