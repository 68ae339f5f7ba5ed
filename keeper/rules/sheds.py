"""The shed clock: where an animal stands in its cycle, when it sheds next, what is late.

What is known is an interval: a sign written on Thursday began between the last look and
Thursday. Lateness is only claimed of what is certain, and silence is never read as calm.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import pairwise
from math import ceil
from typing import Literal, NamedTuple

from keeper.husbandry.animal import Stage
from keeper.husbandry.events import ShedSign, ShedStage
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile
from keeper.husbandry.reasons import Reason, because
from keeper.rules.intervals import Spacing
from keeper.rules.shed_gaps import Seen, own_spacing, seen_in_state, seen_of
from keeper.rules.stages import figures_of

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("nothing written since", ("last_on", "days", "most")),
    ("no entries between", ("first", "last", "days", "most")),
    ("sign never closed", ("sign", "since", "days")),
    ("no shed in the book", ()),
    ("no shed ever written", ("age_days",)),
    ("after laying", ("clutch_on",)),
    ("pre-lay shed was the last", ("shed_on",)),
    ("in a shed cycle", ("sign", "since", "days")),
    ("opaque for", ("days", "most", "since")),
    ("cleared for", ("days", "most", "since")),
    ("cycle begun and no shed", ("days", "most", "since")),
    ("shed before", ("days", "shed_on")),
    ("own clock", ("median_days", "late_days", "learned_from")),
    ("past her clock", ("days", "late_days", "overdue_days")),
    ("first shed not seen", ("age_days", "most", "overdue_days")),
    ("first shed to come", ("age_days", "most")),
    ("a shed may have gone unseen", ()),
    ("gaps left out", ("count",)),
)
"""Every reason of this module with the figures it carries."""

LATE_SHARE = 0.95
"""Overdue is past the day by which this share of her own intervals would have ended."""

Verdict = Literal["in step", "opaque too long", "cleared too long", "overdue", "cannot tell"]


@dataclass(frozen=True, slots=True, kw_only=True)
class ShedClock:
    """Days are whole and certain: at least so many. The next shed is None when untold."""

    stage: ShedStage | None  # the sign since the last shed; None: resting or not known
    since: date | None  # that sign's first entry
    cycle_days: int | None  # since the first sign of this cycle
    shed_days: int | None  # since the last shed
    next_low: date | None
    next_mid: date | None
    next_high: date | None
    overdue_days: int
    verdict: Verdict
    first_shed: bool  # the shed awaited is the first after hatching
    spacing: Spacing | None
    because: tuple[Reason, ...]


class _Cycle(NamedTuple):
    """Signs of the present cycle and the shed before it, as far as written."""

    shed: Seen | None
    signs: tuple[Seen, ...]


def shed_clock(
    now: AnimalNow,
    signs: Sequence[ShedSign],
    profile: SpeciesProfile,
    stage: Stage | None,
    today: date,
    *,
    entries_on: Sequence[date] = (),
) -> ShedClock:
    """Where *now* stands between sheds.

    signs: all that are written; without any the state row's own last two sheds and present
    sign serve. entries_on: days with any entry, by which silences inside the record show.
    """
    written = [seen_of(sign) for sign in signs] or seen_in_state(now)
    seen = sorted(written, key=lambda s: (s.last, s.first, s.stage is ShedStage.SHED))
    seen = [sign for sign in seen if sign.first <= today]
    cycle = _cycle(seen)
    spacing, left_out = own_spacing(now, seen, profile, stage)
    silence = _silence(now, seen, profile, stage, today, entries_on)
    if silence is not None:
        return _clock(cycle, today, "cannot tell", (silence,))
    if cycle.signs:
        return _in_cycle(cycle, profile, spacing, today)
    if cycle.shed is None:
        return _first_shed(now, profile, today)
    return _between_sheds(now, cycle, spacing, left_out, today)


def _cycle(seen: Sequence[Seen]) -> _Cycle:
    last = max((n for n, sign in enumerate(seen) if sign.stage is ShedStage.SHED), default=-1)
    return _Cycle(seen[last] if last >= 0 else None, tuple(seen[last + 1 :]))


def _silence(
    now: AnimalNow,
    seen: Sequence[Seen],
    profile: SpeciesProfile,
    stage: Stage | None,
    today: date,
    entries_on: Sequence[date],
) -> Reason | None:
    """A stretch without entries that could hide a whole cycle; None when there is none.

    So long is a cycle from dull to shed on top of the days between two feeds.
    """
    last = max((sign.last for sign in seen), default=None)
    known = [day for day in (last, now.last_entry_on, *entries_on) if day and day <= today]
    if not known:
        return because("no shed in the book")
    most = _silence_days(now, profile, stage)
    days = (today - max(known)).days
    if days > most:
        return because("nothing written since", last_on=max(known), days=days, most=most)
    inside = sorted({day for day in entries_on if last is None or day >= last} & {*known})
    for first, then in pairwise(inside):
        if (then - first).days > most:
            gap = (then - first).days
            return because("no entries between", first=first, last=then, days=gap, most=most)
    return None


def _silence_days(now: AnimalNow, profile: SpeciesProfile, stage: Stage | None) -> float:
    figures = figures_of(profile, stage or Stage.ADULT, now.sex)
    feed_days = figures.interval_days.value if figures is not None else 0.0
    return profile.sheds.cycle_days_most.value + feed_days


def _in_cycle(cycle: _Cycle, profile: SpeciesProfile, spacing: Spacing, today: date) -> ShedClock:
    """Dull, opaque or cleared: late when the days that are certain pass what is usual."""
    figures = profile.sheds
    sign = _began(cycle)
    days = (today - sign.last).days
    cycle_days = (today - cycle.signs[0].last).days
    cycle_most = figures.cycle_days_most.value
    left = {
        ShedStage.OPAQUE: figures.opaque_days_most.value + figures.cleared_days_most.value,
        ShedStage.CLEARED: figures.cleared_days_most.value,
    }.get(sign.stage, cycle_most)
    if cycle_days > 2 * cycle_most + left:
        why = because("sign never closed", sign=sign.stage.value, since=sign.first, days=days)
        return _clock(cycle, today, "cannot tell", (why,))
    verdict, over, why = _cycle_verdict(sign, days, cycle, profile, today)
    high = max(today, sign.last + timedelta(days=left))
    return _clock(
        cycle,
        today,
        verdict,
        (why,),
        window=(today, today + (high - today) / 2, high),
        overdue_days=over,
        spacing=spacing,
    )


def _began(cycle: _Cycle) -> Seen:
    """The first entry of the sign that the animal shows now."""
    present = cycle.signs[-1].stage
    first = cycle.signs[-1]
    for sign in reversed(cycle.signs):
        if sign.stage is not present:
            break
        first = sign
    return first


def _cycle_verdict(
    sign: Seen, days: int, cycle: _Cycle, profile: SpeciesProfile, today: date
) -> tuple[Verdict, int, Reason]:
    figures = profile.sheds
    since = sign.first
    opaque, cleared = figures.opaque_days_most.value, figures.cleared_days_most.value
    if sign.stage is ShedStage.OPAQUE and days > opaque:
        why = because("opaque for", days=days, most=opaque, since=since)
        return "opaque too long", ceil(days - opaque), why
    if sign.stage is ShedStage.CLEARED and days > cleared:
        why = because("cleared for", days=days, most=cleared, since=since)
        return "cleared too long", ceil(days - cleared), why
    whole, most = (today - cycle.signs[0].last).days, figures.cycle_days_most.value
    if sign.stage is ShedStage.DULL and whole > most:
        began = cycle.signs[0].first
        why = because("cycle begun and no shed", days=whole, most=most, since=began)
        return "overdue", ceil(whole - most), why
    return "in step", 0, because("in a shed cycle", sign=sign.stage.value, since=since, days=days)


def _first_shed(now: AnimalNow, profile: SpeciesProfile, today: date) -> ShedClock:
    """No shed is written: late only for one whose records begin before it was to shed."""
    most = profile.sheds.first_shed_days_most.value
    age = now.age_days(today)
    nothing = _Cycle(None, ())
    began = now.first_entry_on
    if age is None or began is None or (now.age_days(began) or 0) > most:
        return _clock(nothing, today, "cannot tell", (because("no shed in the book"),))
    if age > 2 * most + max(f.value for f in profile.sheds.interval_days_high.values()):
        why = because("no shed ever written", age_days=age)
        return _clock(nothing, today, "cannot tell", (why,))
    over = ceil(age - most)
    if over > 0:
        why = because("first shed not seen", age_days=age, most=most, overdue_days=over)
        return _clock(nothing, today, "overdue", (why,), overdue_days=over, first_shed=True)
    why = because("first shed to come", age_days=age, most=most)
    high = today + timedelta(days=-over)
    window = (today, today + (high - today) / 2, high)
    return _clock(nothing, today, "in step", (why,), window=window, first_shed=True)


def _between_sheds(
    now: AnimalNow, cycle: _Cycle, spacing: Spacing, left_out: int, today: date
) -> ShedClock:
    """Resting: overdue past the 95 % point of her own clock."""
    shed = cycle.shed
    assert shed is not None
    days = (today - shed.last).days
    late = spacing.quantile_days(LATE_SHARE)
    over = ceil(days - late)
    reasons = _why_between(days, late, over, shed, spacing, left_out)
    if over > 0 and (laying := _after_laying(now, shed)) is not None:
        return _clock(cycle, today, "cannot tell", (laying, *reasons), spacing=spacing)
    low, mid, high = (
        shed.last + timedelta(days=spacing.quantile_days(share, max(0.0, days)))
        for share in (0.05, 0.5, 0.95)
    )
    return _clock(
        cycle,
        today,
        "overdue" if over > 0 else "in step",
        reasons,
        window=(max(low, today), max(mid, today), max(high, today)),
        overdue_days=max(0, over),
        spacing=spacing,
    )


def _after_laying(now: AnimalNow, shed: Seen) -> Reason | None:
    """The shed after eggs keeps no clock that this book has learned."""
    if shed.pre_lay:
        return because("pre-lay shed was the last", shed_on=shed.last)
    if now.clutch_on is not None and now.clutch_on >= shed.first:
        return because("after laying", clutch_on=now.clutch_on)
    return None


def _why_between(
    days: int, late: float, over: int, shed: Seen, spacing: Spacing, left_out: int
) -> tuple[Reason, ...]:
    reasons = [
        because("shed before", days=days, shed_on=shed.last),
        because(
            "own clock",
            median_days=round(spacing.median_days),
            late_days=round(late),
            learned_from=spacing.learned_from or None,
        ),
    ]
    if over > 0:
        past = because("past her clock", days=days, late_days=round(late), overdue_days=over)
        reasons = [past, because("a shed may have gone unseen"), *reasons]
    if left_out:
        reasons.append(because("gaps left out", count=left_out))
    return tuple(reasons)


def _clock(
    cycle: _Cycle,
    today: date,
    verdict: Verdict,
    reasons: tuple[Reason, ...],
    *,
    window: tuple[date, date, date] | tuple[None, None, None] = (None, None, None),
    overdue_days: int = 0,
    spacing: Spacing | None = None,
    first_shed: bool = False,
) -> ShedClock:
    began = _began(cycle) if cycle.signs else None
    return ShedClock(
        stage=began.stage if began else None,
        since=began.first if began else None,
        cycle_days=(today - cycle.signs[0].last).days if cycle.signs else None,
        shed_days=(today - cycle.shed.last).days if cycle.shed else None,
        next_low=window[0],
        next_mid=window[1],
        next_high=window[2],
        overdue_days=overdue_days,
        verdict=verdict,
        first_shed=first_shed,
        spacing=spacing,
        because=reasons,
    )
