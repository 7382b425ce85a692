"""Writes dates.csv: dates of postoperative days by python-dateutil, an independent library.

    python3 crates/prescription/tests/dates.py > crates/prescription/tests/dates.csv

Needs python-dateutil (Debian: python3-dateutil). Operations stand around leap days, ends of years and
both changes of the clocks (United States and European Union); the days are those of the shipped gates,
and the days around 365.
"""

import csv
import sys
from datetime import date

from dateutil.relativedelta import relativedelta

OPERATIONS = [
    date(1999, 12, 31),  # end of a century
    date(2000, 2, 28),  # a leap year that is a century
    date(2000, 2, 29),
    date(2023, 2, 28),  # no leap year
    date(2024, 2, 28),
    date(2024, 2, 29),
    date(2024, 12, 31),
    date(2026, 3, 2),  # clocks go forward on 8 March (US) and 29 March (EU)
    date(2026, 3, 7),
    date(2026, 3, 8),
    date(2026, 3, 28),
    date(2026, 3, 29),
    date(2026, 10, 24),  # and back on 25 October (EU) and 1 November (US)
    date(2026, 10, 25),
    date(2026, 10, 31),
    date(2026, 11, 1),
    date(2028, 2, 29),
    date(2096, 2, 29),  # the last leap day before a century that has none
    date(2099, 12, 31),
    date(2100, 2, 28),  # 2100 is no leap year
]

DAYS = [0, 1, 2, 10, 13, 14, 27, 28, 34, 35, 41, 42, 48, 49, 55, 56, 69, 70, 83, 84, 91, 97, 98, 111, 112, 125, 126]
DAYS += [139, 140, 153, 154, 181, 182, 209, 210, 273, 274, 363, 364, 365, 366]

# Completed years. A birth on 29 February is asked about in leap years only: in other years dateutil takes
# 28 February, and the healing index here takes 1 March (own choice; see cases/healing-index-borders.md).
BIRTHS = [
    (date(1956, 3, 2), date(2026, 3, 1)),
    (date(1956, 3, 2), date(2026, 3, 2)),
    (date(1955, 3, 3), date(2026, 3, 2)),
    (date(1955, 12, 31), date(2026, 1, 1)),
    (date(1956, 1, 1), date(2026, 12, 31)),
    (date(1956, 2, 29), date(2028, 2, 28)),
    (date(1956, 2, 29), date(2028, 2, 29)),
    (date(1956, 2, 28), date(2027, 2, 28)),
    (date(1956, 3, 1), date(2027, 2, 28)),
]


def main():
    rows = csv.writer(sys.stdout, lineterminator="\n")
    rows.writerow(["kind", "from", "number", "to"])
    for operation in OPERATIONS:
        for day in DAYS:
            rows.writerow(["day", operation, day, operation + relativedelta(days=day)])
    for birth, on in BIRTHS:
        rows.writerow(["age", birth, relativedelta(on, birth).years, on])


if __name__ == "__main__":
    main()
