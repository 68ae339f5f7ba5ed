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
from keeper.language import tr
from keeper.reports.figures import counted, day, weekday
from keeper.reports.words import word_of

STATES = ("due", "hold", "not due", "cannot tell")
OTHER_RACK = tr("other", sense="places")
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
    return f"{weekday(night)} {day(night, night)}"


def quiet_counts(
    rows: Sequence[DueRow], night: date, last: Walk | None, missing: int = 0
) -> NightCounts:
    """What the quiet page says of tonight, of the last round and of nights without a record."""
    by_rack: dict[str, Counter[str]] = {}
    for row in rows:
        by_rack.setdefault(_rack(row.animal.place), Counter())[row.plan.state.value] += 1
    total: Counter[str] = sum(by_rack.values(), Counter())
    return NightCounts(
        call=_call(rows, night, total["due"]),
        columns=tuple(word_of("DueState", state) for state in STATES),
        rows=tuple(_counted(name, counts) for name, counts in by_rack.items()),
        total=_counted(tr("all"), total),
        notes=(
            *(() if total["due"] else next_words(rows, night)),
            *(last_words(last) if last else ()),
            *missing_words(missing),
        ),
    )


def _call(rows: Sequence[DueRow], night: date, due: int) -> str:
    if not rows:
        return tr("No animal stands in a tub: take in your records first")
    if not due:
        return tr("Nothing is due on {night}", night=night_words(night))
    return tr("Enter begins the round of {night}", night=night_words(night))


def next_words(rows: Sequence[DueRow], night: date) -> tuple[str, ...]:
    """The next night on which anything is due, by what is written so far, and how much."""
    coming = Counter(row.plan.due_on for row in rows if row.plan.due_on and row.plan.due_on > night)
    if not coming:
        return ()
    first = min(coming)
    return (tr("Next: {night}, {count} due.", night=night_words(first), count=coming[first]),)


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
    return (tr("{nights} without a record; Ctrl+Y.", nights=_nights(missing)),) if missing else ()


def begun_words(night: date, stops: int) -> str:
    r"""Said when the round of *night* has begun.

    >>> begun_words(date(2026, 11, 25), 1).replace("\u00a0", " ")
    'The round of Wed 25 Nov is begun: 1 tub to walk.'
    """
    tubs = _tubs(stops)
    return tr("The round of {night} is begun: {tubs} to walk.", night=night_words(night), tubs=tubs)


def again_words(night: date) -> str:
    """Asked where the round of *night* was closed already."""
    return tr(
        "The round of {night} is closed. Enter again begins another of that night.",
        night=night_words(night),
    )


def left_in(walk: Walk) -> list[Tub]:
    """Tubs of a round whose prey nobody has looked for."""
    return [t for t in walk.tubs if t.offer and t.offer.event.result is Result.LEFT_IN]


def last_words(last: Walk) -> tuple[str, ...]:
    """What the last round left open, in one or two sentences."""
    missed = [tub for tub in last.tubs if tub.open]
    waiting = left_in(last)
    night = night_words(last.night)
    if not missed and not waiting:
        return (tr("Last round, {night}: every tub was reached and looked at.", night=night),)
    said = []
    if missed:
        said.append(
            tr(
                "Last round, {night}: {tubs} not reached, still due: {names}.",
                night=night,
                tubs=_tubs(len(missed)),
                names=_named(missed),
            )
        )
    if waiting:
        said.append(
            tr(
                "Last round, {night}: {tubs} left in, result open: {names}.",
                night=night,
                tubs=_tubs(len(waiting)),
                names=_named(waiting),
            )
        )
        said.append(tr("5 goes through the tubs left in and says gone or still there."))
    return tuple(said)


def _counted(name: str, counts: Mapping[str, int]) -> CountRow:
    return CountRow(name=name, counts=tuple(counts.get(state, 0) for state in STATES))


def _named(tubs: Sequence[Tub]) -> str:
    names = ", ".join(tub_name(tub) for tub in tubs[:_NAMED_MOST])
    more = len(tubs) - _NAMED_MOST
    return tr("{names} and {count} more", names=names, count=more) if more > 0 else names


def _rack(place: str | None) -> str:
    found = place_of(place or "")
    return found.rack if found else OTHER_RACK
