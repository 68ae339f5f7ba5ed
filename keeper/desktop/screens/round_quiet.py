"""The round while none is open: what tonight asks, rack by rack, and what the last one left."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import date

from keeper.actions.due_board import DueRow
from keeper.actions.rounds import Walk
from keeper.actions.tubs import Tub, tub_name
from keeper.desktop.screens.round_deeds import Asking
from keeper.desktop.widgets.night_counts import CountRow, NightCounts
from keeper.husbandry.events import Result
from keeper.husbandry.place import place_of
from keeper.reports.figures import counted, day

STATES = ("due", "hold", "not due", "cannot tell")
_DAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
OTHER_RACK = "other"
RACKLESS = {OTHER_RACK: ""}
"""How a place that names no rack is counted here, and what a round knows it by."""
_NAMED_MOST = 8
_tubs = counted("tub", "tubs")
_nights = counted("feed night", "feed nights")


def night_words(night: date) -> str:
    r"""The night as the keeper calls it.

    >>> night_words(date(2026, 11, 25)).replace("\u00a0", " ")
    'Wed 25 Nov'
    """
    return f"{_DAYS[night.weekday()]} {day(night, night)}"


def quiet_counts(
    rows: Sequence[DueRow], night: date, last: Walk | None, missing: int = 0
) -> NightCounts:
    """What the quiet page says of tonight, of the last round and of nights without a record."""
    by_rack: dict[str, Counter[str]] = {}
    for row in rows:
        by_rack.setdefault(_rack(row.animal.place), Counter())[row.plan.state.value] += 1
    total: Counter[str] = sum(by_rack.values(), Counter())
    call = f"Enter begins the round of {night_words(night)}"
    return NightCounts(
        call=call if rows else "No animal stands in a tub: take in your records first",
        columns=STATES,
        rows=tuple(_counted(name, counts) for name, counts in by_rack.items()),
        total=_counted("all", total),
        notes=(*(last_words(last) if last else ()), *missing_words(missing)),
    )


def asked_of(
    counts: NightCounts, legend: Mapping[str, str], asking: Asking | None
) -> tuple[NightCounts, Mapping[str, str]]:
    """*counts* and *legend*, or what is asked in their place and how the pad answers it."""
    if asking is None:
        return counts, legend
    because = getattr(asking, "because", asking.advice)
    call = getattr(asking, "name", asking.word)
    return replace(counts, call=call, notes=(because,)), asking.legend


def missing_words(missing: int) -> tuple[str, ...]:
    """How many feed nights have no record, and where they are answered."""
    return (f"{_nights(missing)} without a record; Ctrl+Y.",) if missing else ()


def begun_words(night: date, stops: int) -> str:
    r"""Said when the round of *night* has begun.

    >>> begun_words(date(2026, 11, 25), 1).replace("\u00a0", " ")
    'The round of Wed 25 Nov is begun: 1 tub to walk.'
    """
    return f"The round of {night_words(night)} is begun: {_tubs(stops)} to walk."


def again_words(night: date) -> str:
    """Asked where the round of *night* was closed already."""
    return f"The round of {night_words(night)} is closed. Enter again begins another of that night."


def left_in(walk: Walk) -> list[Tub]:
    """Tubs of a round whose prey nobody has looked for."""
    return [t for t in walk.tubs if t.offer and t.offer.event.result is Result.LEFT_IN]


def last_words(last: Walk) -> tuple[str, ...]:
    """What the last round left open, in one or two sentences."""
    missed = [tub for tub in last.tubs if tub.open]
    waiting = left_in(last)
    told = f"Last round, {night_words(last.night)}:"
    if not missed and not waiting:
        return (f"{told} every tub was reached and looked at.",)
    said = []
    if missed:
        said.append(f"{told} {_tubs(len(missed))} not reached, still due: {_named(missed)}.")
    if waiting:
        said.append(f"{told} {_tubs(len(waiting))} left in, result open: {_named(waiting)}.")
        said.append("5 goes through the tubs left in and says gone or still there.")
    return tuple(said)


def _counted(name: str, counts: Mapping[str, int]) -> CountRow:
    return CountRow(name=name, counts=tuple(counts.get(state, 0) for state in STATES))


def _named(tubs: Sequence[Tub]) -> str:
    names = ", ".join(tub_name(tub) for tub in tubs[:_NAMED_MOST])
    more = len(tubs) - _NAMED_MOST
    return f"{names} and {more} more" if more > 0 else names


def _rack(place: str | None) -> str:
    found = place_of(place or "")
    return found.rack if found else OTHER_RACK
