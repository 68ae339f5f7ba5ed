"""Dates ahead: faecal tests of a quarantine, papers of an animal or of the house that end."""

from collections.abc import Iterable, Iterator, Sequence
from datetime import date, timedelta
from typing import TypeVar

from keeper.husbandry.care import FaecalResult, FaecalTest, Permit
from keeper.husbandry.events import HoldKind
from keeper.husbandry.house import HousePermit
from keeper.husbandry.profile import practice
from keeper.husbandry.reasons import Reason, because
from keeper.rules.watch_facts import Severity, Signal, WatchFacts, WatchLine

P = TypeVar("P", Permit, HousePermit)

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("faecal test due", ("on", "clear", "wanted")),
    ("faecal test overdue", ("on", "clear", "wanted")),
    ("result awaited", ("on", "days")),
    ("found in the faeces", ("on", "text")),
    ("ask a reptile vet", ()),
    ("permit ends", ("permit", "number", "on", "days")),
    ("permit has ended", ("permit", "number", "on", "days")),
    ("check local law", ()),
    ("ends with a faecal test", ()),
    ("ends with a new permit", ()),
)
"""Every reason of this module with the figures it carries."""


FAECALS_WANTED, APART_DAYS, APART_LEAST_DAYS = practice(3), practice(30), practice(21)
"""A quarantine wants three clear tests about thirty days apart; two sooner than three weeks
after each other tell of the same time."""

FAECAL_AHEAD_DAYS, RESULT_DAYS = practice(7), practice(14)
PERMIT_AHEAD_DAYS = practice(30)


def date_signals(facts: WatchFacts, today: date) -> Iterator[Signal]:
    """What was found in the faeces, a test that is due, a result awaited, a permit that ends."""
    faecal = _faecal(facts, today)
    if faecal is not None:
        yield faecal
    for permit in latest_permits(facts.permits):
        ending = _ending(permit, today)
        if ending is not None:
            yield ending


def permit_lines(permits: Iterable[HousePermit], today: date) -> tuple[WatchLine, ...]:
    """Permits of the house that end soon or have ended, one line for each kind."""
    found = ((permit, _ending(permit, today)) for permit in latest_permits(permits))
    return tuple(
        WatchLine(
            animal=None,
            place=permit.kind,
            kind=signal.kind,
            severity=signal.severity,
            since=signal.since,
            ends=signal.ends,
            because=signal.because,
        )
        for permit, signal in found
        if signal is not None
    )


def latest_permits(permits: Iterable[P]) -> list[P]:
    """Of each kind the one that holds longest; a new one takes the place of the old."""
    found: dict[str, P] = {}
    for permit in permits:
        kind = permit.kind.casefold()
        if kind not in found or permit.expires >= found[kind].expires:
            found[kind] = permit
    return list(found.values())


def clear_faecals(tests: Sequence[FaecalTest], since: date) -> list[date]:
    """Days of the clear tests since *since* that count: in a row, and far enough apart."""
    days: list[date] = []
    for test in tests:
        on = test.happened.day
        if test.result is FaecalResult.FOUND:
            days = []
        elif test.result is FaecalResult.CLEAR and on >= _next_day(days, since):
            days.append(on)
    return days


def _next_day(clear: Sequence[date], since: date) -> date:
    """The first day on which a clear test counts beside those before it."""
    return clear[-1] + timedelta(days=APART_LEAST_DAYS.value) if clear else since


def _faecal(facts: WatchFacts, today: date) -> Signal | None:
    tests = sorted(facts.faecals, key=lambda test: test.happened)
    told = [test for test in tests if test.result is not FaecalResult.SENT]
    if told and told[-1].result is FaecalResult.FOUND:
        on, text = told[-1].happened.day, told[-1].note or "?"
        found = because("found in the faeces", on=on, text=text)
        return _signal("faecal test", (found, because("ask a reptile vet")), on)
    last = tests[-1] if tests else None
    if last is not None and last.result is FaecalResult.SENT:
        days = (today - last.happened.day).days
        if days < RESULT_DAYS.value:
            return None
        awaited = because("result awaited", on=last.happened.day, days=days)
        return _signal("faecal test", (awaited,), last.happened.day)
    quarantine = next((h for h in facts.holds if h.kind is HoldKind.QUARANTINE), None)
    return None if quarantine is None else _due(tests, quarantine.since, facts.anew, today)


def _due(
    tests: Sequence[FaecalTest], since: date, anew: Reason | None, today: date
) -> Signal | None:
    """The next test of a quarantine, from a week ahead; None once enough were clear.

    anew: why its days are counted anew.
    """
    clear, wanted = clear_faecals(tests, since), int(FAECALS_WANTED.value)
    if len(clear) >= wanted:
        return None
    told = [test.happened.day for test in tests if test.happened.day >= since]
    on = max([since, *told]) + timedelta(days=APART_DAYS.value)
    if (on - today).days > FAECAL_AHEAD_DAYS.value:
        return None
    why = "faecal test due" if on >= today else "faecal test overdue"
    due = because(why, on=on, clear=len(clear), wanted=wanted)
    return _signal("faecal test", (due, anew) if anew else (due,), None)


def _ending(permit: Permit | HousePermit, today: date) -> Signal | None:
    days = (permit.expires - today).days
    if days > PERMIT_AHEAD_DAYS.value:
        return None
    why = "permit ends" if days >= 0 else "permit has ended"
    told = because(why, permit=permit.kind, number=permit.number, on=permit.expires, days=abs(days))
    return _signal("permit", (told, because("check local law")), None)


def _signal(kind: str, reasons: tuple[Reason, ...], since: date | None) -> Signal:
    end = "a faecal test" if kind == "faecal test" else "a new permit"
    return Signal(
        kind=kind,
        severity=Severity.THIS_WEEK,
        because=reasons,
        since=since,
        ends=because(f"ends with {end}"),
    )
