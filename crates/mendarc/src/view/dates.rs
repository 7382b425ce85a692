//! Dates as a surgeon reads them.

use jiff::civil::Date;

const MONTHS: [&str; 12] = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
const WEEKDAYS: [&str; 7] = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];

/// "16 Mar 2026".
pub fn short(date: Date) -> String {
    format!("{} {} {}", date.day(), MONTHS[usize::from(date.month().unsigned_abs()) - 1], date.year())
}

/// "Mon 16 Mar 2026".
pub fn with_weekday(date: Date) -> String {
    let weekday = WEEKDAYS[date.weekday().to_monday_zero_offset() as usize];
    format!("{weekday} {}", short(date))
}
