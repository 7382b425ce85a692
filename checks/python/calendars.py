"""Calendars as three readers take them, and against the prescription."""

import json
import re
import subprocess
from datetime import date, datetime, timedelta, timezone
from pathlib import Path
from zoneinfo import ZoneInfo

import icalendar
import recurring_ical_events

from prescription import Prescription


def events(text: str) -> list[dict]:
    """The events as `icalendar` and `recurring-ical-events` read them."""
    calendar = icalendar.Calendar.from_ical(text)
    found = []
    for event in recurring_ical_events.of(calendar, keep_recurrence_attributes=False).all():
        found.append(
            {
                "uid": str(event["UID"]),
                "start": _when(event["DTSTART"].dt),
                "end": _when(event["DTEND"].dt),
                "summary": str(event["SUMMARY"]),
                "description": str(event.get("DESCRIPTION", "")),
                "status": str(event["STATUS"]),
                "sequence": int(event["SEQUENCE"]),
                "reminders": [int(alarm["TRIGGER"].dt.total_seconds()) for alarm in event.walk("VALARM")],
            }
        )
    return _sorted(found)


def events_of_ical_js(files: list[Path], node: Path) -> dict[Path, list[dict]]:
    """The events as `ical.js` reads them, in one run for all files."""
    command = ["node", str(node / "events.mjs"), *map(str, files)]
    result = subprocess.run(command, capture_output=True, text=True, check=False, cwd=node)
    if result.returncode != 0:
        raise ValueError(result.stderr.strip().splitlines()[-1] if result.stderr.strip() else "ical.js failed")
    return {Path(file): _sorted(told) for file, told in json.loads(result.stdout).items()}


def form(path: Path, report) -> None:
    """The text itself: RFC 5545 (3.1) for its lines, RFC 5546 for what is published."""
    name = f"{path.parent.name}/{path.name}"
    octets = path.read_bytes()
    report.looked("calendar-form")
    lines = octets.split(b"\r\n")
    if lines.pop() != b"" or any(b"\n" in line or b"\r" in line for line in lines):
        report.fault("calendar-form", f"{name}: a line does not end with CRLF")
    for line in lines:
        if len(line) > 75:
            report.fault("calendar-form", f"{name}: {len(line)} octets in '{line[:40].decode(errors='replace')}…'")
        try:
            line.decode("utf-8")
        except UnicodeDecodeError:
            report.fault("calendar-form", f"{name}: a fold inside a letter")
    if b"METHOD:PUBLISH" not in lines:
        report.fault("calendar-form", f"{name}: not published")
    unfolded = octets.replace(b"\r\n ", b"").split(b"\r\n")
    for line in unfolded:
        if line.startswith(b"DTSTART;TZID="):
            zone = line.split(b"=")[1].split(b":")[0]
            if b"TZID:" + zone not in unfolded:
                report.fault("calendar-form", f"{name}: {zone.decode()} is used and not described")
    uids = [line for line in unfolded if line.startswith(b"UID:")]
    if len(set(uids)) != len(uids):
        report.fault("calendar-form", f"{name}: an id is used twice")


def readers(files: list[Path], node: Path, report) -> None:
    """All readers find the same events in each file."""
    try:
        theirs = events_of_ical_js(files, node)
    except ValueError as error:
        report.fault("calendar-readers", f"ical.js: {error}")
        return
    for path in files:
        name = f"{path.parent.name}/{path.name}"
        try:
            ours = events(path.read_text(encoding="utf-8"))
        except (ValueError, KeyError) as error:
            report.fault("calendar-readers", f"{name}: icalendar: {error!r}")
            continue
        report.looked("calendar-readers", len(ours))
        if not ours:
            report.fault("calendar-readers", f"{name}: no event")
        _same(name, ours, theirs[path], report)


def _same(name: str, ours: list[dict], theirs: list[dict], report) -> None:
    if len(ours) != len(theirs):
        report.fault("calendar-readers", f"{name}: {len(ours)} events for one reader, {len(theirs)} for the other")
    for one, other in zip(ours, theirs):
        for key in one:
            if one[key] != other.get(key):
                report.fault("calendar-readers", f"{name}: {key} of {one['uid'][:8]}: {one[key]!r} and {other.get(key)!r}")


def clock_changes(files: list[Path], node: Path, folder: Path, report) -> None:
    """Timed visits around changes of the clock: each reader gives the instant that Python's zoneinfo
    gives from the local time, with the zone's own name and with a name nobody knows."""
    renamed = {}
    for path in files:
        text = path.read_bytes().decode("utf-8")
        copy = folder / f"renamed-{path.name}"
        # A name that no tz database has makes a reader use the description in the file, and one of its own
        # for each file keeps it from what it remembers of another.
        unknown = f"Described-in-{path.stem}"
        copy.write_bytes(re.sub(r"(?<=TZID[=:])[A-Za-z]+/[A-Za-z_]+", unknown, text).encode())
        renamed[copy] = path
    try:
        by_ical_js = events_of_ical_js([*files, *renamed], node)
    except ValueError as error:
        report.fault("calendar-clock", f"ical.js: {error}")
        return
    for path in [*files, *renamed]:
        text = path.read_bytes().decode("utf-8")
        expected = _expected(renamed.get(path, path).read_bytes().decode("utf-8"))
        for reader, told in (("icalendar", events(text)), ("ical.js", by_ical_js[path])):
            found = {event["uid"]: event["start"] for event in told}
            if found.keys() != expected.keys():
                report.fault("calendar-clock", f"{path.name}: {reader} finds other visits")
            for uid, (start, local) in expected.items():
                report.looked("calendar-clock")
                if found.get(uid) != start:
                    fault = f"{path.name}: {reader} takes {local} as {found.get(uid)}, zoneinfo as {start}"
                    report.fault("calendar-clock", fault)


def _expected(text: str) -> dict[str, tuple[str, str]]:
    """Each visit's start by zoneinfo alone: no iCalendar library reads here."""
    expected = {}
    for part in text.replace("\r\n ", "").split("BEGIN:VEVENT")[1:]:
        uid = re.search(r"^UID:(.*)\r$", part, re.MULTILINE)[1]
        if match := re.search(r"^DTSTART;TZID=([^:]+):(\d{8}T\d{6})\r$", part, re.MULTILINE):
            zone, local = ZoneInfo(match[1]), datetime.strptime(match[2], "%Y%m%dT%H%M%S")
            expected[uid] = (_when(local.replace(tzinfo=zone)), match[2])
        else:
            day = re.search(r"^DTSTART;VALUE=DATE:(\d{8})\r$", part, re.MULTILINE)[1]
            expected[uid] = (f"{day[:4]}-{day[4:6]}-{day[6:]}", day)
    return expected


def visits(path: Path, prescription: Prescription, report) -> None:
    """Each event is a visit of the prescription, and each visit before the first unopened gate an event.

    The visit at that gate may be in it or not: it is where the stage is opened. None after it is.
    """
    name = f"{path.parent.name}/{path.name}"
    told = [event for event in events(path.read_text(encoding="utf-8")) if event["status"] != "CANCELLED"]
    days = [date.fromisoformat(event["start"][:10]) for event in told]
    report.looked("calendar-visits", len(days))
    due = prescription.unopened_day()
    must = [on for due_day, on, _ in prescription.visits if due is None or due_day < due]
    may = [on for due_day, on, _ in prescription.visits if due is not None and due_day == due]
    for day in days:
        if day not in must and day not in may:
            report.fault("calendar-visits", f"{name}: {day} is no visit before the unopened gate")
    for day in sorted(set(must)):
        # Two visits on one day are two events, or one that stands for both.
        if day not in days:
            report.fault("calendar-visits", f"{name}: the visit on {day} is missing")
    medical = {word for _, _, purpose in prescription.visits for word in re.findall(r"[a-z]{4,}", purpose.lower())}
    medical |= {"shoulder", "cuff", "surgery", "sling", "rehab", "hombro", "cirugía", "left", "right"}
    for event in told:
        said = medical & set(re.findall(r"\w{4,}", event["summary"].lower()))
        if said:
            report.fault("calendar-visits", f"{name}: a lock screen would show {', '.join(sorted(said))}")


def _when(value: date | datetime) -> str:
    if isinstance(value, datetime):
        return value.astimezone(timezone.utc).strftime("%Y-%m-%dT%H:%M:%SZ")
    return value.isoformat()


def _sorted(found: list[dict]) -> list[dict]:
    return sorted(found, key=lambda event: event["uid"])


def issued_again(first: Path, same: Path, moved: Path, report) -> None:
    """A calendar issued again as it was is the same; one with a hold raises what moved, and only that."""
    report.looked("calendar-again", 2)
    if first.read_bytes() != same.read_bytes():
        report.fault("calendar-again", "issued again as it was, the calendar is another text")
    before = {event["uid"]: event for event in events(first.read_text(encoding="utf-8"))}
    after = {event["uid"]: event for event in events(moved.read_text(encoding="utf-8"))}
    raised = 0
    for uid, event in before.items():
        later = after.get(uid)
        if later is None:
            report.fault("calendar-again", f"the visit on {event['start']} is neither there nor cancelled")
            continue
        changed = any(event[key] != later[key] for key in ("start", "end", "summary", "description", "status"))
        step = later["sequence"] - event["sequence"]
        raised += changed
        if step != int(changed):
            report.fault("calendar-again", f"the visit on {event['start']}: changed {changed}, sequence {step:+}")
    if raised in (0, len(before)):
        report.fault("calendar-again", f"a hold of 14 days from day 40 moved {raised} of {len(before)} visits")
