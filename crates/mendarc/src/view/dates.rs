//! Dates as a surgeon reads them on the terminal.

use jiff::civil::Date;
use wording::Language;

/// "16 Mar 2026".
pub fn short(date: Date) -> String {
    wording::dates::short(date, Language::English)
}

/// "Mon 16 Mar 2026".
pub fn with_weekday(date: Date) -> String {
    wording::dates::with_weekday(date, Language::English)
}
