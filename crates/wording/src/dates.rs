//! Dates as each language writes them.

use jiff::civil::Date;

use crate::Language;

const MONTHS: [[&str; 12]; 2] = [
    ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"],
    ["ene", "feb", "mar", "abr", "may", "jun", "jul", "ago", "sep", "oct", "nov", "dic"],
];
const MONTHS_IN_FULL: [[&str; 12]; 2] = [
    [
        "January",
        "February",
        "March",
        "April",
        "May",
        "June",
        "July",
        "August",
        "September",
        "October",
        "November",
        "December",
    ],
    [
        "enero",
        "febrero",
        "marzo",
        "abril",
        "mayo",
        "junio",
        "julio",
        "agosto",
        "septiembre",
        "octubre",
        "noviembre",
        "diciembre",
    ],
];
const WEEKDAYS: [[&str; 7]; 2] =
    [["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"], ["lun", "mar", "mié", "jue", "vie", "sáb", "dom"]];
const WEEKDAYS_IN_FULL: [[&str; 7]; 2] = [
    ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"],
    ["lunes", "martes", "miércoles", "jueves", "viernes", "sábado", "domingo"],
];

/// "16 Mar".
pub fn day_and_month(date: Date, language: Language) -> String {
    format!("{} {}", date.day(), MONTHS[row(language)][month(date)])
}

/// "16 Mar 2026".
///
/// # Example
/// ```
/// use wording::{Language, dates};
/// let date = jiff::civil::date(2026, 3, 16);
/// assert_eq!(dates::short(date, Language::English), "16 Mar 2026");
/// ```
pub fn short(date: Date, language: Language) -> String {
    format!("{} {}", day_and_month(date, language), date.year())
}

/// "Mon 16 Mar 2026".
pub fn with_weekday(date: Date, language: Language) -> String {
    format!("{} {}", WEEKDAYS[row(language)][weekday(date)], short(date, language))
}

/// "Mon".
pub fn weekday_short(date: Date, language: Language) -> &'static str {
    WEEKDAYS[row(language)][weekday(date)]
}

/// "Monday 16 March 2026", or "lunes 16 de marzo de 2026".
pub fn in_full(date: Date, language: Language) -> String {
    let (weekday, month) = (WEEKDAYS_IN_FULL[row(language)][weekday(date)], MONTHS_IN_FULL[row(language)][month(date)]);
    match language {
        Language::English => format!("{weekday} {} {month} {}", date.day(), date.year()),
        Language::Spanish => format!("{weekday} {} de {month} de {}", date.day(), date.year()),
    }
}

const fn row(language: Language) -> usize {
    match language {
        Language::English => 0,
        Language::Spanish => 1,
    }
}

fn month(date: Date) -> usize {
    usize::from(date.month().unsigned_abs()).saturating_sub(1)
}

fn weekday(date: Date) -> usize {
    usize::try_from(date.weekday().to_monday_zero_offset()).unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use jiff::civil::date;

    #[test]
    fn each_language_writes_its_own() {
        // Weekdays of the proleptic Gregorian calendar; names as in Unicode CLDR for en and es.
        let day = date(2026, 12, 2);
        assert_eq!(with_weekday(day, Language::English), "Wed 2 Dec 2026");
        assert_eq!(in_full(day, Language::English), "Wednesday 2 December 2026");
        assert_eq!(with_weekday(day, Language::Spanish), "mié 2 dic 2026");
        assert_eq!(in_full(day, Language::Spanish), "miércoles 2 de diciembre de 2026");
        assert_eq!(weekday_short(day, Language::English), "Wed");
        assert_eq!(day_and_month(day, Language::Spanish), "2 dic");
    }
}
