"""Reasons not to feed, or to feed otherwise: those set by hand and those the facts imply.

A hold covers the days from *since* up to but not including *until*.
"""

from collections.abc import Container, Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta

from keeper.husbandry.animal import Status
from keeper.husbandry.events import HoldKind, HoldSet, Offer, Result, ShedSign, ShedStage
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import HoldFigures, Sourced, SpeciesProfile, practice
from keeper.husbandry.when import on_day

SECOND_WITHIN_DAYS = practice(56)
"""A regurgitation so soon after another is the second, which is the dangerous one."""

SECOND_TIMES = practice(1.5)
"""The second is held this many times as long: 14-21 days where the first is 10-14."""

MEALS_TO_FULL = practice(3)
"""Kept meals after a regurgitation until meals are whole again."""

WORST_FIRST = (
    HoldKind.REGURGITATED,
    HoldKind.VET,
    HoldKind.HEAT,
    HoldKind.PRE_LAY,
    HoldKind.COOLING,
    HoldKind.SHOW,
    HoldKind.NEW_ARRIVAL,
    HoldKind.OPAQUE,
    HoldKind.OTHER,
    HoldKind.STUCK_SHED,
    HoldKind.GRAVID,
    HoldKind.SEASON,
    HoldKind.QUARANTINE,
    HoldKind.JUST_SHED,
)
HALF_COUNTED = frozenset({HoldKind.SEASON, HoldKind.STUCK_SHED})
"""Refusals under these are shown and lead to no step."""

ENDS_WHEN = {
    HoldKind.OPAQUE: "shed",
    HoldKind.REGURGITATED: "kept meals",
    HoldKind.GRAVID: "laid",
    HoldKind.PRE_LAY: "laid",
    HoldKind.SEASON: "season over",
    HoldKind.COOLING: "warmed up",
    HoldKind.NEW_ARRIVAL: "first meal",
    HoldKind.QUARANTINE: "released",
    HoldKind.VET: "vet says so",
    HoldKind.HEAT: "heat right",
    HoldKind.STUCK_SHED: "shed clear",
}
BY_EVENT = frozenset({HoldKind.OPAQUE, HoldKind.GRAVID, HoldKind.PRE_LAY})
"""Their days run from the ending event, not from the beginning. A quarantine is only ever
released by hand: past its days it asks."""

_RANK = {kind: rank for rank, kind in enumerate(WORST_FIRST)}
_IN_CYCLE = frozenset({ShedStage.OPAQUE, ShedStage.CLEARED})
_UNKNOWN = HoldFigures(skip=True, days=None, refusal_counts=False)
"""A hold the profile does not know is kept until it is ended by hand."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Hold:
    """A hold in force. until: first day free of it, None when an event ends it.

    skip: do not offer. part_percent: offer this share of the usual meal.
    ends_when: the event that ends it, as a key for words.
    """

    kind: HoldKind
    since: date
    until: date | None = None
    ends_when: str | None = None
    skip: bool = True
    refusal_counts: bool = False
    part_percent: float | None = None
    asks_renewal: bool = False


def holds_of(
    now: AnimalNow,
    open_holds: Sequence[HoldSet],
    profile: SpeciesProfile,
    today: date,
    learned: Container[HoldKind] = frozenset(),
    signs: Sequence[ShedSign] = (),
) -> tuple[Hold, ...]:
    """All holds on the animal *today*, worst first; those that forbid feeding lead.

    open_holds: set by hand for this animal and not ended; they replace derived holds of their
    kind. learned: kinds she has shown to eat under, offered all the same. signs: hers, for
    the pre-lay shed, which the present state does not carry.
    """
    by_hand = [_by_hand(held, now, profile, today) for held in open_holds]
    found = [hold for hold in by_hand if hold is not None]
    by_itself = filter(None, _derived(now, profile, today, signs))
    found += [h for h in by_itself if not any(held.kind is h.kind for held in open_holds)]
    if not found:
        return ()
    told = (replace(h, skip=False) if h.skip and h.kind in learned else h for h in found)
    return tuple(sorted(told, key=lambda hold: (not hold.skip, _RANK[hold.kind], hold.since)))


def holds_on(
    day: date, holds: Iterable[HoldSet], signs: Iterable[ShedSign], profile: SpeciesProfile
) -> tuple[Hold, ...]:
    """Holds that lay on an animal on a past *day*, from its history.

    holds: all ever set by hand, one that was ended with that day as its *until*; an opaque one
    ends with the shed in any case.
    """
    found, signs = [], tuple(signs)
    for held in holds:
        figures = profile.holds.get(held.kind, _UNKNOWN)
        until = held.until or _after(held.happened.day, held.kind, figures)
        if until is None and held.kind is HoldKind.OPAQUE:
            until = _shed_after(held.happened.day, signs)
        if held.happened.day <= day and (until is None or day < until):
            found.append(_hold(held.kind, figures, held.happened.day, until=until))
    opaque = _opaque_on(day, signs, profile)
    return (*found, opaque) if opaque else tuple(found)


def implied_holds(now: AnimalNow, profile: SpeciesProfile) -> tuple[HoldSet, ...]:
    """Holds since the last meal that the facts imply, as if set by hand, to count refusals by.

    After a regurgitation its days; of one that came from elsewhere, all days until it eats here.
    """
    found = []
    figures, since = profile.holds.get(HoldKind.REGURGITATED), now.regurgitated_on
    if figures is not None and figures.days is not None and since is not None:
        until = _fed_again_on(now, figures.days, since)
        found.append((HoldKind.REGURGITATED, since, until))
    came_on = _came_on(now)
    if HoldKind.NEW_ARRIVAL in profile.holds and came_on is not None:
        found.append((HoldKind.NEW_ARRIVAL, came_on, date.max))
    return tuple(
        HoldSet(animal=now.animal, happened=on_day(since), kind=kind, until=until)
        for kind, since, until in found
    )


def excused(offer: Offer, holds_at_that_time: Iterable[Hold]) -> bool:
    """Whether a refusal of this offer says nothing about the animal's appetite."""
    return offer.result is Result.REFUSED and any(
        not hold.refusal_counts and hold.kind not in HALF_COUNTED for hold in holds_at_that_time
    )


def half_counted(offer: Offer, holds_at_that_time: Iterable[Hold]) -> bool:
    """Whether a refusal of this offer is shown but leads to no step."""
    return offer.result is Result.REFUSED and any(
        not hold.refusal_counts and hold.kind in HALF_COUNTED for hold in holds_at_that_time
    )


def _by_hand(held: HoldSet, now: AnimalNow, profile: SpeciesProfile, today: date) -> Hold | None:
    since, kind = held.happened.day, held.kind
    figures = profile.holds.get(kind, _UNKNOWN)
    until = held.until or _after(since, kind, figures) or _ended_by_event(held, now, figures)
    if since > today:
        return None
    if until is None or today < until:
        return _hold(kind, figures, since, until=until, today=today)
    return _growing_into(figures, kind, until) if _small_for_now(kind, now, since) else None


def _small_for_now(kind: HoldKind, now: AnimalNow, since: date) -> bool:
    """Whether meals stay small once the days without food are over."""
    if kind is HoldKind.NEW_ARRIVAL:
        return not _met(now.eaten_on, since)
    grown_back = now.meals_since_regurgitation >= MEALS_TO_FULL.value
    return kind is HoldKind.REGURGITATED and not grown_back


def _after(since: date, kind: HoldKind, figures: HoldFigures) -> date | None:
    if figures.days is None or kind in BY_EVENT or kind is HoldKind.QUARANTINE:
        return None
    return since + timedelta(days=round(figures.days.value))


def _shed_after(since: date, signs: Iterable[ShedSign]) -> date | None:
    days = (sign.happened.day for sign in signs if sign.stage is ShedStage.SHED)
    return min((day for day in days if day >= since), default=None)


def _ended_by_event(held: HoldSet, now: AnimalNow, figures: HoldFigures) -> date | None:
    """The first free day after the event that ends the hold, if it has happened."""
    event_on = now.shed_on if held.kind is HoldKind.OPAQUE else now.clutch_on
    if held.kind not in BY_EVENT or event_on is None or event_on < held.happened.day:
        return None
    return event_on + timedelta(days=round(figures.days.value) if figures.days else 0)


def _met(event_on: date | None, since: date) -> bool:
    return event_on is not None and event_on >= since


def _derived(
    now: AnimalNow, profile: SpeciesProfile, today: date, signs: Sequence[ShedSign]
) -> tuple[Hold | None, ...]:
    return (
        _regurgitated(now, profile, today) if now.regurgitated_on else None,
        _arrived(now, profile, today) if now.status_on else None,
        _opaque(now, profile, today) if now.stage in _IN_CYCLE else None,
        _just_shed(now, profile, today) if now.shed_on else None,
        _pre_lay(now, profile, today, signs) if signs else None,
    )


def _regurgitated(now: AnimalNow, profile: SpeciesProfile, today: date) -> Hold | None:
    figures, since = profile.holds.get(HoldKind.REGURGITATED), now.regurgitated_on
    if figures is None or figures.days is None or since is None or since > today:
        return None
    until = _fed_again_on(now, figures.days, since)
    if today < until:
        hold = _hold(HoldKind.REGURGITATED, figures, since, until=until)
        return replace(hold, ends_when="vet has seen her") if _is_second(now, since) else hold
    small = _small_for_now(HoldKind.REGURGITATED, now, since)
    return _growing_into(figures, HoldKind.REGURGITATED, until) if small else None


def _is_second(now: AnimalNow, since: date) -> bool:
    before = now.regurgitated_before_on
    return before is not None and (since - before).days <= SECOND_WITHIN_DAYS.value


def _fed_again_on(now: AnimalNow, days: Sourced, since: date) -> date:
    """The first day of food after a regurgitation; a second one is held longer."""
    times = SECOND_TIMES.value if _is_second(now, since) else 1
    return since + timedelta(days=round(days.value * times))


def _came_on(now: AnimalNow) -> date | None:
    """The day on which one that has not eaten here yet came from elsewhere."""
    since, hatched_on = now.status_on, now.hatched_last or now.hatched_first
    if since is None or now.status is not Status.KEPT or _met(now.eaten_on, since):
        return None
    born_here = now.clutch is not None or now.dam is not None
    first_time = now.first_entry_on is None or now.first_entry_on >= since
    if (born_here and first_time) or (hatched_on is not None and since <= hatched_on):
        return None
    return since


def _arrived(now: AnimalNow, profile: SpeciesProfile, today: date) -> Hold | None:
    """An animal that came from elsewhere and has not eaten here yet."""
    figures, since = profile.holds.get(HoldKind.NEW_ARRIVAL), _came_on(now)
    if figures is None or figures.days is None or since is None or since > today:
        return None
    until = since + timedelta(days=round(figures.days.value))
    if today < until:
        return _hold(HoldKind.NEW_ARRIVAL, figures, since, until=until)
    return _growing_into(figures, HoldKind.NEW_ARRIVAL, until)


def _growing_into(figures: HoldFigures, kind: HoldKind, since: date) -> Hold | None:
    """After the days without food: offered again, but a part of the usual meal."""
    if figures.part_percent is None:
        return None
    return Hold(
        kind=kind,
        since=since,
        ends_when=ENDS_WHEN[kind],
        skip=False,
        refusal_counts=kind is HoldKind.REGURGITATED,
        part_percent=figures.part_percent.value,
    )


def _opaque(now: AnimalNow, profile: SpeciesProfile, today: date) -> Hold | None:
    """From the sign until the shed; a sign older than any shed cycle no longer forbids."""
    figures, since = profile.holds.get(HoldKind.OPAQUE), now.stage_since
    if figures is None or since is None or since > today:
        return None
    hold = _hold(HoldKind.OPAQUE, figures, since)
    stale = (today - since).days > profile.sheds.cycle_days_most.value
    return replace(hold, skip=False, asks_renewal=True) if stale else hold


def _opaque_on(day: date, signs: Iterable[ShedSign], profile: SpeciesProfile) -> Hold | None:
    figures = profile.holds.get(HoldKind.OPAQUE)
    begun: date | None = None
    for sign in sorted(signs, key=lambda sign: sign.happened.at):
        if sign.happened.day > day:
            break
        if sign.stage not in _IN_CYCLE:
            begun = None
        elif begun is None:
            begun = sign.happened.day
    if figures is None or begun is None:
        return None
    within = (day - begun).days <= profile.sheds.cycle_days_most.value
    return _hold(HoldKind.OPAQUE, figures, begun) if within else None


def _just_shed(now: AnimalNow, profile: SpeciesProfile, today: date) -> Hold | None:
    figures, since = profile.holds.get(HoldKind.JUST_SHED), now.shed_on
    if figures is None or figures.days is None or since is None or since > today:
        return None
    days = round(figures.days.value)
    if (today - since).days >= days:
        return None
    return _hold(HoldKind.JUST_SHED, figures, since, until=since + timedelta(days=days))


def _pre_lay(
    now: AnimalNow, profile: SpeciesProfile, today: date, signs: Sequence[ShedSign]
) -> Hold | None:
    figures = profile.holds.get(HoldKind.PRE_LAY)
    seen = [s.happened.day for s in signs if s.pre_lay and s.happened.day <= today]
    if figures is None or not seen:
        return None
    since = max(seen)
    until = None
    if _met(now.clutch_on, since) and now.clutch_on is not None:
        until = now.clutch_on + timedelta(days=round(figures.days.value) if figures.days else 0)
    if until is not None and until <= today:
        return None
    return _hold(HoldKind.PRE_LAY, figures, since, until=until, today=today)


def _hold(
    kind: HoldKind,
    figures: HoldFigures,
    since: date,
    *,
    until: date | None = None,
    today: date | None = None,
) -> Hold:
    renew = figures.days if kind is HoldKind.QUARANTINE else figures.renew_after_days
    old = renew is not None and today is not None and (today - since).days > renew.value
    return Hold(
        kind=kind,
        since=since,
        until=until,
        ends_when=ENDS_WHEN.get(kind),
        skip=figures.skip,
        refusal_counts=figures.refusal_counts,
        part_percent=figures.part_percent.value if figures.part_percent else None,
        asks_renewal=old,
    )
