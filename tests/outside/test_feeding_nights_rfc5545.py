"""Feed nights against the worked examples of RFC 5545, section 3.8.5.3 (September 2009).

The RFC gives times of day as well; feed nights are days, so only the days are compared. Its
examples that repeat within a day are refused by the house and left out.
"""

from datetime import date

import pytest

from keeper.rules.nights import feed_nights

EXAMPLES = [
    ("daily for 10 occurrences", "19970902", "FREQ=DAILY;COUNT=10",
     [(1997, 9, [2, 3, 4, 5, 6, 7, 8, 9, 10, 11])]),
    ("every 10 days, 5 occurrences", "19970902", "FREQ=DAILY;INTERVAL=10;COUNT=5",
     [(1997, 9, [2, 12, 22]), (1997, 10, [2, 12])]),
    ("weekly for 10 occurrences", "19970902", "FREQ=WEEKLY;COUNT=10",
     [(1997, 9, [2, 9, 16, 23, 30]), (1997, 10, [7, 14, 21, 28]), (1997, 11, [4])]),
    ("weekly until December 24", "19970902", "FREQ=WEEKLY;UNTIL=19971224T000000Z",
     [(1997, 9, [2, 9, 16, 23, 30]), (1997, 10, [7, 14, 21, 28]), (1997, 11, [4, 11, 18, 25]),
      (1997, 12, [2, 9, 16, 23])]),
    ("every other week, forever", "19970902", "FREQ=WEEKLY;INTERVAL=2;WKST=SU",
     [(1997, 9, [2, 16, 30]), (1997, 10, [14, 28]), (1997, 11, [11, 25]), (1997, 12, [9, 23]),
      (1998, 1, [6, 20]), (1998, 2, [3, 17])]),
    ("Tuesday and Thursday for five weeks", "19970902",
     "FREQ=WEEKLY;UNTIL=19971007T000000Z;WKST=SU;BYDAY=TU,TH",
     [(1997, 9, [2, 4, 9, 11, 16, 18, 23, 25, 30]), (1997, 10, [2])]),
    ("every other week on three days", "19970901",
     "FREQ=WEEKLY;INTERVAL=2;UNTIL=19971224T000000Z;WKST=SU;BYDAY=MO,WE,FR",
     [(1997, 9, [1, 3, 5, 15, 17, 19, 29]), (1997, 10, [1, 3, 13, 15, 17, 27, 29, 31]),
      (1997, 11, [10, 12, 14, 24, 26, 28]), (1997, 12, [8, 10, 12, 22])]),
    ("every other week on Tuesday and Thursday", "19970902",
     "FREQ=WEEKLY;INTERVAL=2;COUNT=8;WKST=SU;BYDAY=TU,TH",
     [(1997, 9, [2, 4, 16, 18, 30]), (1997, 10, [2, 14, 16])]),
    ("monthly on the first Friday", "19970905", "FREQ=MONTHLY;COUNT=10;BYDAY=1FR",
     [(1997, 9, [5]), (1997, 10, [3]), (1997, 11, [7]), (1997, 12, [5]), (1998, 1, [2]),
      (1998, 2, [6]), (1998, 3, [6]), (1998, 4, [3]), (1998, 5, [1]), (1998, 6, [5])]),
    ("the week starts on Monday", "19970805",
     "FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=MO", [(1997, 8, [5, 10, 19, 24])]),
    ("the week starts on Sunday", "19970805",
     "FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=SU", [(1997, 8, [5, 17, 19, 31])]),
    ("February 30 is left out", "20070115", "FREQ=MONTHLY;BYMONTHDAY=15,30;COUNT=5",
     [(2007, 1, [15, 30]), (2007, 2, [15]), (2007, 3, [15, 30])]),
]  # fmt: skip


@pytest.mark.parametrize(
    ("start", "rule", "days"), [e[1:] for e in EXAMPLES], ids=[e[0] for e in EXAMPLES]
)
def test_the_nights_are_those_the_rfc_prints(
    start: str, rule: str, days: list[tuple[int, int, list[int]]]
) -> None:
    printed = [date(year, month, day) for year, month, all_days in days for day in all_days]

    nights = feed_nights(
        [f"DTSTART;TZID=America/New_York:{start}T090000\nRRULE:{rule}"],
        date(1997, 8, 1),
        date(2008, 1, 1),
    )

    assert list(nights[: len(printed)]) == printed
    assert len(nights) == len(printed) or ("COUNT" not in rule and "UNTIL" not in rule)


def test_an_excluded_day_is_no_feed_night() -> None:
    # RFC 5545, section 3.8.5.1: exception dates are taken out of the recurrence set
    rule = "DTSTART:19970902\nRRULE:FREQ=WEEKLY;COUNT=3\nEXDATE:19970909"

    nights = feed_nights([rule], date(1997, 8, 1), date(1998, 1, 1))

    assert nights == (date(1997, 9, 2), date(1997, 9, 16))
