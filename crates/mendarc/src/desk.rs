//! From a case to the desk its sheets are made on.

use diagnostic::Sink;
use jiff::civil::Date;
use prescription::Case;
use sheets::Desk;
use wording::Messages;

/// Makes the prescription of a case as it stands on the day of issue, and hands the desk on.
///
/// # Errors
/// `None` where the case gives no prescription; the faults are in the sink.
pub fn with_desk<T>(
    case: &Case<'_>,
    messages: &Messages,
    sink: &mut Sink,
    then: impl FnOnce(&Desk<'_>) -> T,
) -> Option<T> {
    let issued_on = sheets::issued_on(case.on, case.openings, case.record.operation_date());
    let case = Case { on: Some(issued_on), ..*case };
    let prescription = prescription::prescribe(&case, sink)?;
    let begins: Vec<Date> = sheets::parts(&prescription, issued_on)
        .iter()
        .flat_map(|part| part.periods.iter().map(|period| period.from))
        .collect();
    let answers = prescription::may_all(&case, &begins, sink)?;
    Some(then(&Desk {
        prescription: &prescription,
        record: case.record,
        settings: case.settings,
        catalogue: case.catalogue,
        messages,
        openings: case.openings,
        issued_on,
        answers: &answers,
    }))
}
