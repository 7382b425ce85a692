"""Dates and degrees in the text of a page."""

import re
import unicodedata
from dataclasses import dataclass

MONTHS = {
    name: number
    for names in (
        "jan feb mar apr may jun jul aug sep oct nov dec",
        "january february march april may june july august september october november december",
        "ene feb mar abr may jun jul ago sep oct nov dic",
        "enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre",
    )
    for number, name in enumerate(names.split(), 1)
}
WEEKDAYS = {
    name: number
    for names in (
        "mon tue wed thu fri sat sun",
        "monday tuesday wednesday thursday friday saturday sunday",
        "lun mar mié jue vie sáb dom",
        "lunes martes miércoles jueves viernes sábado domingo",
    )
    for number, name in enumerate(names.split())
}

_WEEKDAY = "(?:(?P<weekday>" + "|".join(sorted(WEEKDAYS, key=len, reverse=True)) + r")\.?,?\s+)?"
_MONTH = "(?P<month>" + "|".join(sorted(MONTHS, key=len, reverse=True)) + ")"
_DATE = re.compile(
    r"(?<![\w.])" + _WEEKDAY + r"(?P<day>\d{1,2})\s+(?:de\s+)?" + _MONTH + r"\b\.?(?:\s+(?:de\s+)?(?P<year>\d{4})\b)?",
    re.IGNORECASE,
)
_ISO = re.compile(r"(?<!\d)(?P<year>\d{4})-(?P<month>\d\d)-(?P<day>\d\d)(?!\d)")
# "Mar 2, 2026", and "3/2/2026" or "2.3.2026": nothing here writes them, so each one is a fault.
_FOREIGN = re.compile(
    r"(?<!\d )\b(?:" + "|".join(sorted(MONTHS, key=len, reverse=True)) + r")\s+\d{1,2},\s+\d{4}"
    r"|(?<![\d/.])\d{1,2}[/.]\d{1,2}[/.]\d{2,4}(?![\d/.])",
    re.IGNORECASE,
)
_NUMBER = r"[-−–]?\d+(?:[.,]\d+)?"
_DEGREES = re.compile(
    r"(?:(?P<first>" + _NUMBER + r")\s*(?:°\s*)?(?:to|a|and|y|up to|–|-)\s*)?"
    # In small letters: "Degrees" begins a sentence, whatever number ended the line above it.
    r"(?P<last>" + _NUMBER + r")\s*(?:°(?!\s*[CF]\b)|degrees?\b|grados?\b|deg\b)",
)


@dataclass(frozen=True)
class Written:
    """A date as it is written."""

    day: int
    month: int
    year: int | None
    weekday: int | None
    text: str
    at: int


def plain(text: str) -> str:
    """The text with every run of white space as one space and without typographic variants."""
    return re.sub(r"\s+", " ", unicodedata.normalize("NFKC", text))


def dates(text: str) -> list[Written]:
    """Every date of a text, in its order."""
    found = []
    for match in _DATE.finditer(text):
        weekday = match["weekday"]
        found.append(
            Written(
                int(match["day"]),
                MONTHS[match["month"].lower()],
                int(match["year"]) if match["year"] else None,
                WEEKDAYS[weekday.lower()] if weekday else None,
                match[0],
                match.start(),
            )
        )
    for match in _ISO.finditer(text):
        day, month, year = int(match["day"]), int(match["month"]), int(match["year"])
        found.append(Written(day, month, year, None, match[0], match.start()))
    return sorted(found, key=lambda written: written.at)


def foreign_dates(text: str) -> list[str]:
    """Dates in forms that no sheet uses."""
    return [match[0] for match in _FOREIGN.finditer(text)]


def degrees(text: str) -> list[tuple[float, str]]:
    """Every number of degrees in a text, both ends of a range, with the words around it."""
    found = []
    for match in _DEGREES.finditer(text):
        around = text[max(0, match.start() - 40) : match.end() + 20]
        for number in (match["first"], match["last"]):
            if number:
                found.append((_value(number), around))
    return found


def _value(number: str) -> float:
    text = number.replace(",", ".").replace("−", "-")
    # A dash right before a number is a range's or a list's as often as a sign: the amount is what is compared.
    return abs(float(text.replace("–", "-")))
