"""What a prescription allows a page to say: its dates and its degrees."""

import json
import re
import tomllib
from datetime import date, timedelta
from functools import cache, cached_property
from pathlib import Path

import words

_ISO = re.compile(r"(?<!\d)\d{4}-\d\d-\d\d(?!\d)")


class Prescription:
    """A prescription.json with the record it was made from."""

    def __init__(self, path: Path, root: Path, openings: Path | None = None, record: Path | None = None):
        self.document = json.loads(path.read_text(encoding="utf-8"))
        self.root = root
        self.operated_on = date.fromisoformat(self.document["operation"]["date"])
        self.visits = [
            (visit["due_day"], date.fromisoformat(visit["date"]), visit["purpose"]) for visit in self.document["visits"]
        ]
        self._others = [path for path in (openings, record) if path]

    def unopened(self) -> date | None:
        """The gate of the first stage that nobody has opened."""
        gates = [date.fromisoformat(stage["from"]) for stage in self.document["stages"] if not stage["opened"]]
        return min(gates) if gates else None

    def unopened_day(self) -> int | None:
        gate = self.unopened()
        return None if gate is None else (gate - self.operated_on).days

    @cached_property
    def dates(self) -> set[date]:
        """Every date the prescription holds, however it holds it.

        - a date written out;
        - a day counted from surgery (any key that is or ends in `day`), as a date;
        - the day before an `until`: ranges are half open, and paper says "to" with the last day.

        Beside these: dates of the record (birth) and of the openings, which a page may repeat.
        """
        found: set[date] = set()
        for key, value in _leaves(self.document):
            if isinstance(value, str):
                for text in _ISO.findall(value):
                    found.add(date.fromisoformat(text))
                    if key == "until":
                        found.add(date.fromisoformat(text) - timedelta(days=1))
            elif isinstance(value, int) and not isinstance(value, bool) and (key == "day" or key.endswith("_day")):
                found.add(self.operated_on + timedelta(days=value))
                if key == "until_day":
                    found.add(self.operated_on + timedelta(days=value - 1))
        for path in self._others:
            for _, value in _leaves(tomllib.loads(path.read_text(encoding="utf-8"))):
                if isinstance(value, date):
                    found.add(value)
        return found

    @cached_property
    def degrees(self) -> set[float]:
        """Every number of degrees the prescription holds, however it holds it.

        - the value of a key that is `degrees` or ends in `_deg`;
        - the number at the head of a position ("90 abduction");
        - a number before "degrees", "deg" or "°" in any of its texts;
        - the value and the bounds of an entry of evidence that a reason names, in degrees.
        """
        found: set[float] = set()
        for key, value in _leaves(self.document):
            if isinstance(value, (int, float)) and not isinstance(value, bool):
                if key == "degrees" or key.endswith("_deg"):
                    found.add(abs(float(value)))
            elif isinstance(value, str):
                found.update(number for number, _ in words.degrees(value))
                if key == "position" and (match := re.match(r"\d+", value)):
                    found.add(float(match[0]))
                found.update(evidence(self.root).get(value, ()))
        return found


@cache
def evidence(root: Path) -> dict[str, tuple[float, ...]]:
    """The entries of evidence in degrees: the value and its bounds."""
    entries = {}
    for path in sorted((root / "evidence").glob("*.toml")):
        for entry in tomllib.loads(path.read_text(encoding="utf-8")).get("entry", ()):
            if entry.get("unit") in ("deg", "degree", "degrees"):
                numbers = [entry.get(key) for key in ("value", "low", "high")]
                entries[entry["id"]] = tuple(abs(float(n)) for n in numbers if isinstance(n, (int, float)))
    return entries


def _leaves(value, key=""):
    """Every value with the key it stands under; a list's values stand under the list's key."""
    if isinstance(value, dict):
        for name, inner in value.items():
            yield from _leaves(inner, name)
    elif isinstance(value, list):
        for inner in value:
            yield from _leaves(inner, key)
    else:
        yield key, value
