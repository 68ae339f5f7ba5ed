"""An absence as it is typed, and how it is kept in the book."""

import re
from collections.abc import Sequence
from dataclasses import replace
from datetime import date, timedelta

from keeper.actions.absences import absence_of, coming_absences
from keeper.actions.care_words import care_words
from keeper.actions.keeping import Keeping, Written
from keeper.actions.typed_entries import day_typed
from keeper.actions.typed_names import either, keyword
from keeper.husbandry.house import KeeperAway
from keeper.husbandry.when import at_instant
from keeper.language import tr
from keeper.rules.absence import Absence as Absence
from keeper.store.journal import EntryKey, batch
from keeper.store.reading import Entry

MOST_DAYS = 42
"""A longer absence is refused: feed nights are known for 90 days, and a plan so far ahead says
little of animals that grow and shed meanwhile. A choice of planning, not of husbandry."""

FURTHEST_DAYS = 30
"""An absence begins within so many days; one further ahead is planned when it is nearer."""

_DAYS = re.compile(rf"(\d{{1,3}})\s*{either('d', 'day', 'days')}")
_BETWEEN = re.compile(
    rf"\s+{either('to', 'until', 'till')}\s+|\s*[,;–]\s*|\s+-\s+|(?<=\d{{4}}-\d\d-\d\d)\s+",
    re.IGNORECASE,
)
_NEAR = {
    way: days
    for name, days in (("today", 0), ("tonight", 0), ("tomorrow", 1))
    for way in keyword(name)
}


def away_typed(text: str, today: date) -> Absence:
    """The absence that *text* gives: two days, a day and how many days, or days from tomorrow.

    Who covers may follow after a comma.

    >>> away_typed("5 Dec to 14 Dec", date(2026, 11, 25)).days
    10
    >>> away_typed("9 days", date(2026, 11, 25)).first.isoformat()
    '2026-11-26'
    >>> away_typed("9 days, Wren", date(2026, 11, 25)).who
    'Wren'

    Raises:
        ValueError: it cannot be read, lies in the past, ends before it begins or is too long.
    """
    parts = text.split(",")
    for n in range(1, len(parts)):
        who = " ".join(",".join(parts[n:]).split())
        if _is_name(who):
            return replace(_span(",".join(parts[:n]), today), who=who)
    return _span(text, today)


def keep_absence(keeping: Keeping, absence: Absence) -> Written | None:
    """Write *absence*, with its nights, into the book; None: it stands there as it is.

    One that overlaps it, and is not over, is withdrawn with it: its days were changed.
    """
    told = KeeperAway(
        happened=at_instant(keeping.now()),
        first_on=absence.first,
        last_on=absence.last,
        covered_by=absence.who or None,
        fed_on=" ".join(night.isoformat() for night in absence.nights) or None,
    )
    before = [
        entry
        for entry in coming_absences(keeping, keeping.today)
        if entry.event.first_on <= absence.last and absence.first <= entry.event.last_on
    ]
    if [absence_of(entry.event) for entry in before] == [absence]:
        return None
    return _written(keeping, [entry.key for entry in before], told)


def is_kept(keeping: Keeping, absence: Absence) -> bool:
    """Whether just this stands in the book."""
    kept = (absence_of(entry.event) for entry in coming_absences(keeping, keeping.today))
    return absence in kept


def next_absence(keeping: Keeping) -> Absence | None:
    """The next one that has not begun; None: there is none."""
    told = (entry.event for entry in coming_absences(keeping, keeping.today))
    return next((absence_of(each) for each in told if each.first_on >= keeping.today), None)


def absence_words(absence: Absence) -> str:
    """*absence* as it is typed.

    >>> absence_words(Absence(date(2026, 12, 3), date(2026, 12, 12), who="Wren"))
    '2026-12-03 – 2026-12-12, Wren'
    """
    span = f"{absence.first.isoformat()} – {absence.last.isoformat()}"
    return f"{span}, {absence.who}" if absence.who else span


def end_absence(keeping: Keeping, entry: Entry[KeeperAway]) -> Written:
    """The keeper is back, or will not be away: from today on nights are planned as ever.

    One that has begun stands until yesterday; one to come is withdrawn whole.
    """
    told, today = entry.event, keeping.today
    if told.first_on >= today:
        return _written(keeping, [entry.key], None)
    nights = [night for night in absence_of(told).nights if night < today]
    ended = replace(
        told,
        last_on=today - timedelta(days=1),
        fed_on=" ".join(night.isoformat() for night in nights) or None,
    )
    return _written(keeping, [entry.key], ended)


def _written(keeping: Keeping, instead_of: Sequence[EntryKey], told: KeeperAway | None) -> Written:
    """One batch that withdraws what stood and says *told*."""
    at = keeping.now()
    with batch(keeping.book, verb="away", keeper=keeping.keeper, written=at) as writer:
        for key in instead_of:
            writer.withdraw(key)
        if told is not None:
            writer.add(told)
    what = tr("not away") if told is None else care_words(told)
    return Written(batch=writer.id, at=at, verb="away", what=what)


def _is_name(text: str) -> bool:
    """Whether what follows a comma is who covers: no figure, and no word for a day."""
    plain = text.strip().casefold()
    return bool(plain) and plain not in _NEAR and not any(sign.isdigit() for sign in plain)


def _span(text: str, today: date) -> Absence:
    parts = _BETWEEN.split(text.strip())
    if len(parts) == 1 and _DAYS.fullmatch(parts[0].casefold()):
        parts = ["tomorrow", parts[0]]
    if len(parts) != 2:
        raise ValueError(
            tr(
                "{typed} names no absence; 5 Dec to 14 Dec, 2026-12-05 to 2026-12-14 or 9 days is"
                " right.",
                typed=repr(text.strip()),
            )
        )
    first = _day(parts[0], today)
    counted = _DAYS.fullmatch(parts[1].casefold())
    last = first + timedelta(days=int(counted[1]) - 1) if counted else _day(parts[1], first)
    return _possible(Absence(first, last), today)


def _day(text: str, since: date) -> date:
    near = _NEAR.get(text.strip().casefold())
    if near is not None:
        return since + timedelta(days=near)
    return day_typed(text, since - timedelta(days=1))  # the day itself may be meant


def _possible(absence: Absence, today: date) -> Absence:
    if absence.last < absence.first:
        raise ValueError(
            tr(
                "The absence ends on {last}, before it begins on {first}; the first day comes"
                " first.",
                last=absence.last.isoformat(),
                first=absence.first.isoformat(),
            )
        )
    if absence.first < today:
        raise ValueError(
            tr(
                "The absence begins on {first}, which is past; from {today} on is right.",
                first=absence.first.isoformat(),
                today=today.isoformat(),
            )
        )
    if absence.days > MOST_DAYS:
        raise ValueError(
            tr(
                "{days} days are more than can be planned; up to {most} are right.",
                days=absence.days,
                most=MOST_DAYS,
            )
        )
    if (absence.first - today).days > FURTHEST_DAYS:
        raise ValueError(
            tr(
                "The absence begins in {days} days; it can be planned from {most} days before on.",
                days=(absence.first - today).days,
                most=FURTHEST_DAYS,
            )
        )
    return absence
