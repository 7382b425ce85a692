"""What the sheets say, against the prescription in the same folder."""

import re
from datetime import date

import words
from prescription import Prescription, evidence

# Headings under which a sheet lists its visits, in each language.
_VISITS = re.compile(r"^\s*(?:your |next |tus |sus |próximas )*(?:visits?|visitas?|citas?)\b.*$", re.IGNORECASE)


def check(name: str, text: str, prescription: Prescription, report) -> None:
    """Every date and every degree of a sheet is in the prescription."""
    said = words.plain(text)
    allowed = prescription.dates
    for written in words.dates(said):
        report.looked("sheet-dates")
        if not _is_one_of(written, allowed):
            report.fault("sheet-dates", f"{name}: '{written.text}' is not in the prescription (…{_around(said, written.at)}…)")
        elif written.weekday is not None and not _weekday_is_right(written, allowed):
            report.fault("sheet-dates", f"{name}: '{written.text}' is another day of the week")
    for foreign in words.foreign_dates(said):
        report.fault("sheet-dates", f"{name}: a date in another form: '{foreign}'")
    degrees = prescription.degrees
    if name.endswith("/surgeon.pdf"):
        # The surgeon's page lists entries of evidence that no line of the prescription rests on, each by its id.
        letters = re.sub(r"[\s\u200b\u00ad]", "", text)
        named = [numbers for entry, numbers in evidence(prescription.root).items() if entry in letters]
        degrees = degrees.union(*named)
    for number, around in words.degrees(said):
        report.looked("sheet-degrees")
        if number not in degrees:
            report.fault("sheet-degrees", f"{name}: {number:g}° is not in the prescription (…{around}…)")


def as_told(name: str, text: str, document: str, report) -> None:
    """Every date and every degree of a sheet without a prescription is in the document of the same command."""
    told = words.plain(document)
    days = {(written.year, written.month, written.day) for written in words.dates(told)}
    degrees = {number for number, _ in words.degrees(told)}
    said = words.plain(text)
    for written in words.dates(said):
        report.looked("sheet-dates")
        if (written.year, written.month, written.day) not in days:
            report.fault("sheet-dates", f"{name}: '{written.text}' is not in the document")
    for number, around in words.degrees(said):
        report.looked("sheet-degrees")
        if number not in degrees:
            report.fault("sheet-degrees", f"{name}: {number:g}° is not in the document (…{around}…)")


def frozen(name: str, text: str, prescription: Prescription, report) -> None:
    """A patient's sheet ends before the first stage that nobody has opened.

    Its gate itself may stand there, in the line about what comes next, and so may the visit
    that is due at that gate, which the clinic's days can move past it.
    """
    gate = prescription.unopened()
    report.looked("patient-frozen")
    if gate is None:
        return
    due = prescription.unopened_day()
    excused = {gate} | {on for due_day, on, _ in prescription.visits if due_day == due}
    allowed = prescription.dates
    said = words.plain(text)
    for written in words.dates(said):
        meant = _meant(written, allowed)
        if meant and all(day >= gate and day not in excused for day in meant):
            report.fault(
                "patient-frozen",
                f"{name}: '{written.text}' is not before the unopened gate {gate} (…{_around(said, written.at)}…)",
            )


def signed_first(name: str, text: str, report) -> None:
    """The therapist's letter says on its first page until when it is valid, and is signed there."""
    report.looked("letter-signed-first")
    first = text.split("\f")[0]
    for needed in ("Surgeon's signature", "Not valid unsigned", "alid until"):
        if needed not in words.plain(first) and needed not in first:
            report.fault("letter-signed-first", f"{name}: '{needed}' is not on the first page")


def visits_in_order(name: str, text: str, prescription: Prescription, report) -> None:
    """Where a sheet lists its visits, each is later than the one above it."""
    listed = listed_visits(text, {on for _, on, _ in prescription.visits})
    report.looked("visits-in-order", len(listed))
    if not listed:
        report.fault("visits-in-order", f"{name}: no list of visits was found")
    if listed != sorted(listed):
        report.fault("visits-in-order", f"{name}: visits stand as {', '.join(map(str, listed))}")


def listed_visits(text: str, known: set[date]) -> list[date]:
    """The dates under the heading of visits, up to the first date that is no visit's."""
    lines = text.splitlines()
    headings = [at for at, line in enumerate(lines) if _VISITS.match(line)]
    for at in headings:
        found = []
        for written in words.dates(words.plain("\n".join(lines[at + 1 :]))):
            days = [day for day in _meant(written, known)]
            if not days:
                break
            found.append(days[0])
        if found:
            return found
    return []


def _is_one_of(written: words.Written, allowed: set[date]) -> bool:
    return bool(_meant(written, allowed))


def _meant(written: words.Written, allowed: set[date]) -> list[date]:
    """The dates that are written so; without a year, each of that day and month."""
    return sorted(
        day
        for day in allowed
        if (day.day, day.month) == (written.day, written.month) and written.year in (None, day.year)
    )


def _weekday_is_right(written: words.Written, allowed: set[date]) -> bool:
    return any(day.weekday() == written.weekday for day in _meant(written, allowed))


def _around(text: str, at: int) -> str:
    return text[max(0, at - 40) : at + 40]
