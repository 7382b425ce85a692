"""`main.py look|self-test ROOT WORK LIST`: every file of every folder in the list, by every check."""

import sys
import tempfile
from dataclasses import dataclass
from pathlib import Path

import calendars
import pages
import sheets
from faults import Report
from prescription import Prescription

# Sheets in the patient's language; the others are in English.
_FOR_PATIENTS = ("patient.pdf", "first-days.pdf")

# Sheets that list visits.
_WITH_VISITS = ("patient.pdf",)


@dataclass
class Folder:
    """A folder the program wrote, and what it was made from."""

    path: Path
    language: str
    record: Path | None
    openings: Path | None

    def prescription(self, root: Path) -> Prescription | None:
        path = self.path / "prescription.json"
        return Prescription(path, root, self.openings, self.record) if path.exists() else None


def folders(listed: Path, root: Path) -> list[Folder]:
    """The folders of a list: path, language, record and openings, with tabs between and `-` for none."""
    rows = [line.split("\t") for line in listed.read_text(encoding="utf-8").splitlines() if line]
    some = lambda text: None if text == "-" else root / text
    return [Folder(Path(path), language, some(record), some(openings)) for path, language, record, openings in rows]


def look(folder: Folder, root: Path, report: Report) -> None:
    """All that is checked of one folder, but for what is compared with other readers."""
    prescription = folder.prescription(root)
    expected = {"first-days.pdf", "first-days.json"}
    if folder.record:
        expected = {"surgeon.pdf", "patient.pdf", "therapist.pdf", "work.pdf", "visits.ics", "prescription.json"}
    report.looked("files", len(expected))
    for name in sorted(expected):
        if not (folder.path / name).exists():
            report.fault("files", f"{folder.path.name}: no {name}")
    for path in sorted(folder.path.glob("*.pdf")):
        language = folder.language if path.name in _FOR_PATIENTS else "en"
        pages.check(path, language, report)
        if prescription:
            read(path, pages.text(path), prescription, report)
    told = folder.path / "first-days.json"
    if told.exists():
        path = folder.path / "first-days.pdf"
        sheets.as_told(f"{folder.path.name}/{path.name}", pages.text(path), told.read_text(encoding="utf-8"), report)
    calendar = folder.path / "visits.ics"
    if calendar.exists():
        calendars.form(calendar, report)
        if prescription:
            calendars.visits(calendar, prescription, report)


def read(path: Path, text: str, prescription: Prescription, report: Report) -> None:
    """All that is checked of what one sheet says."""
    name = f"{path.parent.name}/{path.name}"
    sheets.check(name, text, prescription, report)
    if path.name == "patient.pdf":
        sheets.frozen(name, text, prescription, report)
    if path.name == "therapist.pdf":
        sheets.signed_first(name, text, report)
    if path.name in _WITH_VISITS:
        sheets.visits_in_order(name, text, prescription, report)


def look_at_calendars(files: list[Path], clock: list[Path], node: Path, report: Report) -> None:
    """What takes several readers."""
    calendars.readers([*files, *clock], node, report)
    for path in clock:
        calendars.form(path, report)
    with tempfile.TemporaryDirectory() as folder:
        calendars.clock_changes(clock, node, Path(folder), report)


def main() -> int:
    mode, root, work, listed = sys.argv[1], *map(Path, sys.argv[2:5])
    all_folders = folders(listed, root)
    report = Report()
    for folder in all_folders:
        look(folder, root, report)
    files = [path for folder in all_folders if (path := folder.path / "visits.ics").exists()]
    clock = sorted((work / "clock").glob("*.ics"))
    look_at_calendars(files, clock, work / "node", report)
    made = listed.parent
    if (made / "again-first.ics").exists():
        calendars.issued_again(made / "again-first.ics", made / "again-same.ics", made / "again" / "visits.ics", report)
    print(f"{len(all_folders)} folders, {len(files)} calendars of theirs, {len(clock)} around changes of the clock")
    report.print()
    sheets_told = [path for folder in all_folders for path in folder.path.glob("*.pdf")]
    claiming = [path for path in sheets_told if pages.claims_ua(path)]
    print(f"  {len(claiming)} of {len(sheets_told)} PDF files say that they are PDF/UA; nothing here verifies that")
    if mode == "self-test":
        import self_test

        return self_test.run(all_folders, clock, root, work) or bool(report.faults)
    return int(bool(report.faults))


if __name__ == "__main__":
    sys.exit(main())
