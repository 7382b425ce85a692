"""Files and texts are broken one by one, and the check they are broken for has to notice.

A check that cannot fail says nothing. Each control begins from what the program wrote; where that
already fails the check, the control cannot tell and counts as failed.
"""

import re
import shutil
import tempfile
from collections.abc import Callable
from datetime import timedelta
from pathlib import Path

import pikepdf

import calendars
import main
import pages
import words
from faults import Report

Break = Callable[[Path], None]


def run(folders: list, clock: list[Path], root: Path, work: Path) -> int:
    """Runs every control; 0 where all checks noticed."""
    controls = Controls()
    _words(controls)
    whole = next((f for f in folders if f.record and f.openings is None and f.language == "en"), None)
    if whole is None:
        controls.told("a folder to break", False)
    else:
        _files(controls, whole, root)
        _texts(controls, whole, root)
    _calendars(controls, clock, work)
    _again(controls, work / "made")
    print(f"controls: {controls.passed} passed, {controls.failed} failed")
    return int(controls.failed > 0)


class Controls:
    """How many checks noticed."""

    def __init__(self):
        self.passed = self.failed = 0

    def told(self, what: str, noticed: bool) -> None:
        self.passed += noticed
        self.failed += not noticed
        if not noticed:
            print(f"NOT NOTICED: {what}")

    def compare(self, check: str, what: str, before: Report, after: Report) -> None:
        self.told(f"{check}: {what}", not before.failed(check) and after.failed(check))


def _words(controls: Controls) -> None:
    """Dates and degrees are found as they are written, in both languages, and temperatures are none."""

    def dates(text):
        return [(w.year, w.month, w.day, w.weekday) for w in words.dates(words.plain(text))]

    examples = [
        ("Mon 2 Mar\n2026", [(2026, 3, 2, 0)]),
        ("from 2 Mar to 16 Mar", [(None, 3, 2, None), (None, 3, 16, None)]),
        ("Wednesday 2 December 2026", [(2026, 12, 2, 2)]),
        ("mié 16 dic 2026", [(2026, 12, 16, 2)]),
        ("lunes 16 de marzo de 2026", [(2026, 3, 16, 0)]),
        ("2026-03-02", [(2026, 3, 2, None)]),
        ("for 2 marks, 12 May", [(None, 5, 12, None)]),
        ("10 to 15 repetitions", []),
    ]
    for text, expected in examples:
        controls.told(f"dates of '{text}'", dates(text) == expected)
    degrees = [
        ("up to 90°", [90]),
        ("85 degrees", [85]),
        ("80 to 90°", [80, 90]),
        ("de 80 a 90 grados", [80, 90]),
        ("38.0 °C or 38.3°C", []),
        ("from −10° on", [10]),
        ("22.5°", [22.5]),
        ("why 3\nDegrees are the arm against", []),
    ]
    for text, expected in degrees:
        controls.told(f"degrees of '{text}'", [n for n, _ in words.degrees(words.plain(text))] == expected)
    controls.told("a date in another form", words.foreign_dates("by Mar 2, 2026 or 3/2/2026") == ["Mar 2, 2026", "3/2/2026"])
    controls.told("no date in another form", words.foreign_dates("on 2 Mar 2026, 24 hours, day 1.5, 10/15") == [])


def _files(controls: Controls, folder, root: Path) -> None:
    before = Report()
    main.look(folder, root, before)

    def broken(check: str, what: str, breaks: Break) -> None:
        with tempfile.TemporaryDirectory() as temporary:
            copy = Path(temporary) / folder.path.name
            shutil.copytree(folder.path, copy)
            breaks(copy)
            after = Report()
            main.look(type(folder)(copy, folder.language, folder.record, folder.openings), root, after)
            controls.compare(check, what, before, after)

    broken("files", "no work note", lambda at: (at / "work.pdf").unlink())
    broken("pdf-sound", "half a file", lambda at: _halve(at / "patient.pdf"))
    broken("pdf-tagged", "no tags", _pdf(_untag))
    broken("pdf-title", "no title", _pdf(_untitle))
    broken("pdf-language", "no language", _pdf(lambda pdf: pdf.Root.__delitem__("/Lang")))
    broken("pdf-language", "another language", _pdf(lambda pdf: pdf.Root.__setitem__("/Lang", pikepdf.String("de"))))
    broken("pdf-fonts", "fonts left out", _pdf(_without_fonts))
    broken("pdf-fonts", "letters without a meaning", _pdf(_without_unicode))
    broken("pdf-title-first", "another title", _pdf(_retitle))
    calendar = "visits.ics"
    broken("calendar-form", "bare line feeds", _text(calendar, "\r\n", "\n"))
    broken("calendar-form", "a line of 80 octets", _text(calendar, "STATUS:", "X-LONG:" + 73 * "x" + "\r\nSTATUS:"))
    broken("calendar-form", "not published", _text(calendar, "METHOD:PUBLISH", "METHOD:REQUEST"))
    broken("calendar-form", "an event twice", lambda at: _events(at / calendar, lambda events: [*events, events[0]]))
    broken("calendar-visits", "an event lost", lambda at: _events(at / calendar, lambda events: events[1:]))
    broken("calendar-visits", "an event on another day", _text(calendar, r"(DTSTART;VALUE=DATE:)\d{8}", r"\g<1>20260303"))
    broken("calendar-visits", "a word on the lock screen", _text(calendar, "SUMMARY:", "SUMMARY:Shoulder "))


def _texts(controls: Controls, folder, root: Path) -> None:
    prescription = folder.prescription(root)
    path = folder.path / "patient.pdf"
    text = pages.text(path)
    before = Report()
    main.read(path, text, prescription, before)

    def broken(check: str, what: str, changed: str) -> None:
        after = Report()
        main.read(path, changed, prescription, after)
        controls.compare(check, what, before, after)

    allowed = prescription.dates
    stranger = next(day for n in range(1, 400) if (day := prescription.operated_on + timedelta(days=n)) not in allowed)
    says = lambda day, pattern="%d %b %Y": f"\n{day.strftime(pattern)}\n"
    broken("sheet-dates", "a date of nobody's", text + says(stranger))
    broken("sheet-dates", "a date of nobody's without its year", text + says(stranger, "%d %b"))
    wrong = (prescription.operated_on + timedelta(days=1)).strftime("%a")
    broken("sheet-dates", "another day of the week", text + f"\n{wrong} {prescription.operated_on.strftime('%d %b %Y')}\n")
    broken("sheet-dates", "a date in another form", text + prescription.operated_on.strftime("\n%m/%d/%Y\n"))
    degrees = prescription.degrees
    broken("sheet-degrees", "degrees of nobody's", text + f"\n{next(n for n in range(1, 180) if n not in degrees)}°\n")
    gate = prescription.unopened()
    if gate is None:
        controls.told("a folder with an unopened gate", False)
    else:
        beyond = next(day for day in sorted(allowed) if day > gate + timedelta(days=60))
        broken("patient-frozen", "a date after the unopened gate", text + says(beyond))
    visits = sorted({on for _, on, _ in prescription.visits})
    listed = "".join(says(day) for day in visits)
    broken("visits-in-order", "visits backward", "Visits\n" + "".join(says(day) for day in reversed(visits)) + text)
    broken("visits-in-order", "no list of visits", re.sub(r"(?im)^.*(visit|cita).*$", "", text))
    letter = folder.path / "therapist.pdf"
    first, _, rest = pages.text(letter).partition("\f")
    before_letter, after_letter = Report(), Report()
    main.read(letter, first + "\f" + rest, prescription, before_letter)
    unsigned = re.sub(r"Surgeon.s signature", "", first)
    main.read(letter, unsigned + "\fSurgeon's signature" + rest, prescription, after_letter)
    controls.compare("letter-signed-first", "a signature on the second page", before_letter, after_letter)
    after = Report()
    main.read(path, "Visits\n" + listed, prescription, after)
    controls.told("visits in order are no fault", not after.failed("visits-in-order"))


def _calendars(controls: Controls, clock: list[Path], work: Path) -> None:
    node = work / "node"
    berlin = [path for path in clock if path.name == "Europe-Berlin.ics"]
    before = Report()
    main.look_at_calendars([], berlin, node, before)

    def broken(check: str, what: str, pattern: str, instead: str) -> None:
        with tempfile.TemporaryDirectory() as temporary:
            copy = Path(temporary) / "Europe-Berlin.ics"
            shutil.copy(berlin[0], copy)
            _text(copy.name, pattern, instead)(copy.parent)
            after = Report()
            main.look_at_calendars([], [copy], node, after)
            controls.compare(check, what, before, after)

    broken("calendar-readers", "an offset of three hours", r"TZOFFSETTO:\+0200", "TZOFFSETTO:+0300")
    broken("calendar-clock", "an offset of three hours", r"TZOFFSETTO:\+0200", "TZOFFSETTO:+0300")
    broken("calendar-clock", "a change a week early", "DTSTART:20260329T", "DTSTART:20260322T")
    broken("calendar-clock", "a change left out", r"(?s)BEGIN:STANDARD\r\nDTSTART:20261025T.*?END:STANDARD\r\n", "")
    broken("calendar-form", "a zone that is not described", r"(?s)BEGIN:VTIMEZONE.*END:VTIMEZONE\r\n", "")


def _again(controls: Controls, made: Path) -> None:
    first, same, moved = made / "again-first.ics", made / "again-same.ics", made / "again" / "visits.ics"
    if not first.exists():
        controls.told("a calendar that was issued again", False)
        return
    before = Report()
    calendars.issued_again(first, same, moved, before)
    with tempfile.TemporaryDirectory() as temporary:
        copy = Path(temporary) / "visits.ics"
        for what, pattern, instead in [
            ("every sequence raised", r"SEQUENCE:\d+", "SEQUENCE:7"),
            ("no sequence raised", r"SEQUENCE:\d+", "SEQUENCE:0"),
            ("another id", r"UID:..", "UID:zz"),
        ]:
            shutil.copy(moved, copy)
            _text(copy.name, pattern, instead)(copy.parent)
            after = Report()
            calendars.issued_again(first, same, copy, after)
            controls.compare("calendar-again", what, before, after)
        after = Report()
        calendars.issued_again(first, moved, moved, after)
        controls.compare("calendar-again", "issued again as it was, and another text", before, after)


def _text(name: str, pattern: str, instead: str) -> Break:
    def breaks(at: Path) -> None:
        path = at / name
        before = path.read_bytes().decode("utf-8")
        after = re.sub(pattern, instead, before)
        assert after != before, f"nothing to break: {pattern}"
        path.write_bytes(after.encode("utf-8"))

    return breaks


def _events(path: Path, change: Callable[[list[str]], list[str]]) -> None:
    head, *rest = path.read_bytes().decode("utf-8").split("BEGIN:VEVENT\r\n")
    events = [part.removesuffix("END:VCALENDAR\r\n") for part in rest]
    text = head + "".join("BEGIN:VEVENT\r\n" + event for event in change(events)) + "END:VCALENDAR\r\n"
    path.write_bytes(text.encode("utf-8"))


def _halve(path: Path) -> None:
    octets = path.read_bytes()
    path.write_bytes(octets[: len(octets) // 2])


def _pdf(change: Callable[[pikepdf.Pdf], None]) -> Break:
    def breaks(at: Path) -> None:
        path = at / "patient.pdf"
        with pikepdf.open(path, allow_overwriting_input=True) as pdf:
            change(pdf)
            pdf.save(path)

    return breaks


def _untag(pdf: pikepdf.Pdf) -> None:
    for key in ("/MarkInfo", "/StructTreeRoot"):
        if key in pdf.Root:
            del pdf.Root[key]


def _untitle(pdf: pikepdf.Pdf) -> None:
    if "/Title" in pdf.docinfo:
        del pdf.docinfo["/Title"]
    if "/Metadata" in pdf.Root:
        del pdf.Root["/Metadata"]


def _retitle(pdf: pikepdf.Pdf) -> None:
    _untitle(pdf)
    pdf.docinfo["/Title"] = pikepdf.String("Nothing of this kind")


def _without_fonts(pdf: pikepdf.Pdf) -> None:
    for item in pdf.objects:
        if isinstance(item, pikepdf.Dictionary):
            for key in ("/FontFile", "/FontFile2", "/FontFile3"):
                if key in item:
                    del item[key]


def _without_unicode(pdf: pikepdf.Pdf) -> None:
    for item in pdf.objects:
        if isinstance(item, pikepdf.Dictionary) and "/ToUnicode" in item:
            del item["/ToUnicode"]
