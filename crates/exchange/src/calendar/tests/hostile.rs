//! Texts that nobody means well with.

use jiff::civil::date;
use proptest::prelude::*;

use super::*;
use crate::calendar::{NotOurs, previous};

fn titled(title: &str, description: &str) -> String {
    let mut hostile = all_day("wound", date(2026, 3, 12));
    (hostile.title, hostile.description) = (title, description);
    written(&calendar(vec![hostile]))
}

/// What holds of every text of ours, whatever was put in.
fn holds(text: &str) -> Result<(), TestCaseError> {
    for line in text.split_terminator("\r\n") {
        prop_assert!(line.len() <= 75, "{} octets: {line:?}", line.len());
        prop_assert!(!line.contains(['\r', '\n']), "a bare line end in {line:?}");
        let property = line.starts_with(' ') || line.contains(':');
        prop_assert!(property, "neither a property nor the rest of one: {line:?}");
    }
    let unfolded = lines(text);
    let begun = unfolded.iter().filter(|line| line.starts_with("BEGIN:")).count();
    prop_assert_eq!(begun, 3, "calendar, visit and alarm: {}", text);
    prop_assert_eq!(unfolded.iter().filter(|line| line.starts_with("UID:")).count(), 1);
    Ok(())
}

#[test]
fn a_title_stays_in_its_property() {
    let hostile = [
        "Visit\r\nEND:VEVENT\r\nBEGIN:VEVENT",
        "Visit\nUID:evil",
        "Visit\rUID:evil",
        "Visit\u{2028}UID:evil\u{85}UID:evil\u{b}UID:evil",
        "Visit\u{0}\u{7f}\u{1b}[31m",
        "\\n\\;\\,\\\\",
        ",;:\"'",
        " leading and trailing ",
        "\u{202e}tisiV",
        "",
    ];
    for title in hostile {
        let text = titled(title, title);
        holds(&text).expect(title);
        let known = previous(&text).expect("ours");
        assert_eq!(known[0].title, known[0].description);
        assert!(!known[0].title.contains(|c: char| c.is_control() && c != '\n'), "{:?}", known[0].title);
    }
    assert_eq!(values(&titled("a, b; c\\d\r\ne\rf", ""), "SUMMARY"), ["a\\, b\\; c\\\\d\\ne\\nf"]);
}

#[test]
fn the_calendars_name_and_id_are_as_harmless() {
    let mut hostile = all_day("wound", date(2026, 3, 12));
    hostile.uid = "x\r\nATTENDEE:mailto:a".into();
    let calendar = Calendar { name: "Visits\r\nBEGIN:VEVENT", ..calendar(vec![hostile]) };
    let text = written(&calendar);
    holds(&text).expect("harmless");
    assert_eq!(previous(&text).expect("ours")[0].uid, "x\nATTENDEE:mailto:a");
}

#[test]
fn a_fold_is_never_inside_a_letter() {
    // Letters of one to four octets at every place of the line.
    for letter in ["a", "é", "肩", "💪"] {
        for before in 0..80 {
            let title = "x".repeat(before) + &letter.repeat(80);
            let text = titled(&title, "");
            holds(&text).expect("well folded");
            assert_eq!(previous(&text).expect("ours")[0].title, title);
        }
    }
}

#[test]
fn what_another_program_wrote_is_left_alone() {
    let ours = titled("Visit", "");
    let change = |from: &str, to: &str| {
        assert!(ours.contains(from), "nothing to change: {from}");
        previous(&ours.replacen(from, to, 1))
    };
    let lacks = |what| Err(NotOurs::Visit { number: 1, what });
    assert_eq!(change("//mendarc//", "//another//"), Err(NotOurs::AnotherProgram));
    assert_eq!(change("PRODID:", "X-PRODID:"), Err(NotOurs::AnotherProgram));
    assert_eq!(change("UID:", "X-UID:"), lacks("UID"));
    assert_eq!(change("SEQUENCE:0", "SEQUENCE:-1"), lacks("SEQUENCE"));
    assert_eq!(change("SEQUENCE:0", "SEQUENCE:4294967296"), lacks("SEQUENCE"));
    assert_eq!(change("SEQUENCE:0", "X-SEQUENCE:0"), lacks("SEQUENCE"));
    assert_eq!(change("STATUS:CONFIRMED", "STATUS:MAYBE"), lacks("STATUS"));
    assert_eq!(change("DTSTART;VALUE=DATE:20260312", "DTSTART;VALUE=DATE:20260231"), lacks("DTSTART"));
    assert_eq!(change("DTSTART;VALUE=DATE:20260312", "DTSTART:20260312T090000Z"), lacks("DTSTART"));
    assert_eq!(change("SUMMARY:", "X-SUMMARY:"), lacks("SUMMARY"));
    let not = |text: &str| matches!(previous(text), Err(NotOurs::NotACalendar(_)));
    assert!(not("") && not("hello") && not("BEGIN:VCALENDAR") && not("\u{0}\u{1}"));
    assert!(not(&format!("{ours}{ours}")));
    assert_eq!(previous(&"x".repeat(1024 * 1024 + 1)), Err(NotOurs::TooLarge));
    assert!(not(&"BEGIN:A\n".repeat(100_000)), "too deep to go down");
    assert!(not(&format!("BEGIN:VCALENDAR\r\n{}", "\r".repeat(70_000))), "a line longer than 65,535 letters");
    // The same visit twice, as a careless merge makes it.
    let event = ours.split("BEGIN:VEVENT").nth(1).and_then(|rest| rest.split("END:VCALENDAR").next());
    let event = format!("BEGIN:VEVENT{}", event.expect("a visit"));
    let twice = ours.replace("END:VCALENDAR", &format!("{event}END:VCALENDAR"));
    assert!(matches!(previous(&twice), Err(NotOurs::RepeatedUid(_))));
}

#[test]
fn a_file_that_a_mail_program_rewrote_is_still_ours() {
    let ours = titled("Visit, with a long title that has to be folded because it is over seventy-five octets", "");
    let known = previous(&ours);
    assert!(known.is_ok());
    assert_eq!(previous(&ours.replace("\r\n", "\n")), known);
    // One line end lost in the middle.
    assert_eq!(previous(&ours.replacen("\r\nSEQUENCE", "\nSEQUENCE", 1)), known);
}

proptest! {
    #[test]
    fn any_text_comes_back_as_it_reads(title in "[^\\p{C}\\p{Zl}\\p{Zp}]{0,200}", description in any::<String>()) {
        let text = titled(&title, &description);
        holds(&text)?;
        let known = previous(&text).expect("ours");
        prop_assert_eq!(&known[0].title, &title);
        prop_assert!(!known[0].description.contains('\r'));
        // Whatever was put in, the same again is no change.
        let mut same = all_day("wound", date(2026, 3, 12));
        (same.title, same.description) = (&title, &description);
        prop_assert_eq!(calendar(vec![same]).following(&known).visits[0].sequence, 0);
    }

    #[test]
    fn reading_never_panics(text in any::<String>()) {
        prop_assert!(previous(&text).is_err());
    }

    #[test]
    fn a_damaged_file_is_read_or_refused(at in 0_usize..400, cut in 0_usize..40, put in any::<String>()) {
        let ours = titled("Visit", "by day: 555-0100");
        let (from, until) = (at.min(ours.len()), (at + cut).min(ours.len()));
        let damaged = format!("{}{put}{}", &ours[..from], &ours[until..]);
        if let Ok(known) = previous(&damaged) {
            prop_assert!(known.len() <= 1);
        }
    }
}
