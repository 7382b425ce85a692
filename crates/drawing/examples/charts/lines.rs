//! Recovery lines. All data is invented.

use drawing::chart::{Event, EventKind, Label, RecoveryLine, SlingSpan, SlingWear, StageSpan, StageState};

use super::Named;

pub fn all() -> Vec<Named> {
    vec![
        ("line-page", page().draw()),
        ("line-telephone", telephone(9).draw()),
        ("line-first-day", telephone(0).draw()),
        ("line-held", held().draw()),
        ("line-narrow-busy", RecoveryLine { width_mm: 80.0, ..held() }.draw()),
        ("line-spanish", spanish().draw()),
    ]
}

fn stage(from: u16, until: u16, name: Label, state: StageState) -> StageSpan {
    StageSpan { days: [from, until], name, state }
}

fn event(day: u16, kind: EventKind, label: Label) -> Event {
    Event { day, kind, label }
}

fn sling() -> Vec<SlingSpan> {
    vec![
        SlingSpan { days: [0, 42], wear: SlingWear::Always, name: Label::with_short("Sling day and night", "Sling") },
        SlingSpan { days: [42, 56], wear: SlingWear::Weaning, name: Label::with_short("Less and less", "Less") },
    ]
}

fn dates() -> Vec<(u16, String)> {
    let words = ["3 Jan", "31 Jan", "14 Feb", "28 Feb", "28 Mar", "25 Apr", "23 May", "20 Jun"];
    [0, 28, 42, 56, 84, 112, 140, 168].into_iter().zip(words.map(str::to_owned)).collect()
}

fn stages() -> Vec<StageSpan> {
    vec![
        stage(0, 42, Label::with_short("Protect the repair", "Protect"), StageState::Opened),
        stage(42, 84, Label::with_short("Move with help", "Help"), StageState::NotOpened),
        stage(84, 126, Label::with_short("Move by yourself", "Alone"), StageState::NotOpened),
        stage(126, 182, Label::with_short("Grow strong", "Strong"), StageState::NotOpened),
    ]
}

/// As on a page of the surgeon's: all stages, gates and visits.
fn page() -> RecoveryLine {
    RecoveryLine {
        sling: sling(),
        stages: stages(),
        dates: dates(),
        events: vec![
            event(12, EventKind::VisitDone, Label::with_short("Stitches out", "Stitches")),
            event(42, EventKind::VisitPlanned, Label::new("Visit")),
            event(42, EventKind::GateWaiting, Label::with_short("Elevation 90°, pain 3 or less", "90°")),
            event(84, EventKind::GateWaiting, Label::with_short("Elevation 120°", "120°")),
            event(84, EventKind::VisitPlanned, Label::new("Visit")),
            event(126, EventKind::GateWaiting, Label::with_short("Elevation 150° without help", "150°")),
            event(168, EventKind::VisitPlanned, Label::with_short("Last visit", "Visit")),
        ],
        today: Some((30, Label::with_short("Today, 2 February", "Today"))),
        ..RecoveryLine::new(
            "Recovery line",
            "Invented: 26 weeks in four stages, the first opened; today is day 30.",
            170.0,
            182,
            "week",
        )
    }
}

/// As on a telephone or the sheet for the fridge: opened stages and one line.
fn telephone(day: u16) -> RecoveryLine {
    RecoveryLine {
        sling: sling(),
        stages: vec![
            stage(0, 42, Label::with_short("Protect the repair", "Protect"), StageState::Opened),
            stage(42, 84, Label::with_short("Next: not before 14 Feb", "Next"), StageState::NotOpened),
        ],
        dates: dates().into_iter().take(5).collect(),
        events: vec![
            event(12, EventKind::VisitPlanned, Label::with_short("Stitches out", "Stitches")),
            event(40, EventKind::VisitPlanned, Label::new("Visit")),
        ],
        today: Some((day, Label::new("Today"))),
        ..RecoveryLine::new("Your recovery", "Invented: twelve weeks; today is marked.", 80.0, 84, "week")
    }
}

/// A course that was held and went a step back.
fn held() -> RecoveryLine {
    RecoveryLine {
        sling: sling(),
        stages: vec![
            stage(0, 56, Label::with_short("Protect the repair", "Protect"), StageState::Opened),
            stage(56, 77, Label::with_short("Move with help", "Help"), StageState::Opened),
            stage(77, 98, Label::with_short("Protect the repair", "Protect"), StageState::Opened),
            stage(98, 126, Label::with_short("Move with help", "Help"), StageState::NotOpened),
            stage(126, 182, Label::with_short("Move by yourself", "Alone"), StageState::NotOpened),
        ],
        dates: dates(),
        events: vec![
            event(12, EventKind::VisitDone, Label::with_short("Stitches out", "Stitches")),
            event(42, EventKind::GateNotMet, Label::with_short("Elevation 62° of 90°", "62°")),
            event(42, EventKind::Hold { until_day: 56 }, Label::with_short("Held for two weeks", "Held")),
            event(56, EventKind::GateMet, Label::with_short("Elevation 91° of 90°", "91°")),
            event(77, EventKind::StepBack, Label::with_short("Back after a fall", "Back")),
            event(98, EventKind::GateWaiting, Label::with_short("Elevation 90°", "90°")),
            event(126, EventKind::GateWaiting, Label::with_short("Elevation 120°", "120°")),
            event(180, EventKind::VisitPlanned, Label::new("Visit")),
        ],
        today: Some((84, Label::with_short("Today, 28 March", "Today"))),
        ..RecoveryLine::new(
            "Recovery line",
            "Invented: held for two weeks, opened, and a step back after a fall.",
            170.0,
            182,
            "week",
        )
    }
}

fn spanish() -> RecoveryLine {
    RecoveryLine {
        sling: vec![
            SlingSpan { days: [0, 42], wear: SlingWear::Always, name: Label::new("Cabestrillo día y noche") },
            SlingSpan { days: [42, 56], wear: SlingWear::Weaning, name: Label::new("Cada vez menos") },
        ],
        stages: vec![
            stage(0, 42, Label::new("Proteger la reparación"), StageState::Opened),
            stage(42, 84, Label::new("Movimiento con ayuda de la otra mano"), StageState::NotOpened),
        ],
        dates: vec![(0, "3 de enero".into()), (28, "31 de enero".into()), (42, "14 de febrero".into())],
        events: vec![event(40, EventKind::VisitPlanned, Label::new("Consulta con la cirujana"))],
        today: Some((38, Label::new("Hoy"))),
        ..RecoveryLine::new("Su recuperación", "Inventado: doce semanas.", 80.0, 84, "semana")
    }
}
