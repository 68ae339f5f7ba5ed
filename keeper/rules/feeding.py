"""Who is fed tonight, with what, and why: one plan for one animal.

``due`` says whether and when, cheaply enough to ask it of every tub; ``plan`` adds the prey.
"""

from collections.abc import Callable, Container, Sequence
from dataclasses import dataclass, replace
from datetime import date
from enum import StrEnum
from typing import NamedTuple

from keeper.husbandry.events import HoldKind, HoldSet, Offer, ShedSign
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile, practice
from keeper.husbandry.reasons import Reason, because
from keeper.rules.holds import Hold, holds_of, implied_holds
from keeper.rules.nights import next_night
from keeper.rules.prey import PreyOffer, choose_prey
from keeper.rules.refusals import CountedRefusals, counted_refusals
from keeper.rules.stages import figures_of, stage_of
from keeper.rules.timing import (
    House,
    Pace,
    When,
    is_fat,
    pace_of,
    when_due,
    when_whatever_the_stage,
)

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("not in the room", ("status", "since")),
    ("no profile", ("species",)),
    ("no holds", ()),
    ("hold", ("kind", "since", "until", "ends_when")),
    ("part of a meal", ("kind", "percent")),
    ("hold asks renewal", ("kind", "since")),
    ("meal cut, fat", ("score", "percent", "scored")),
    ("no weight", ()),
    ("as last eaten", ("prey", "on")),
    ("prey changed", ("kind", "before", "times")),
)
"""Every reason of this module with the figures it carries; a plan also hands on those of
``timing`` and ``prey``."""

FAT_PERCENT = practice(77.5)
"""A fat animal's share of the usual meal: cut by 20-25 per cent."""


class DueState(StrEnum):
    DUE = "due"
    HOLD = "hold"
    NOT_DUE = "not due"
    CANNOT_TELL = "cannot tell"


@dataclass(frozen=True, slots=True, kw_only=True)
class Plan:
    """What tonight asks of one tub. due_on: the night it falls or fell to, None: unknown.

    offer_percent: of empty weight. lateness: days since eaten as a share of the interval,
    the order of urgency. hold: the worst one, which may allow feeding.
    """

    animal: int
    state: DueState
    due_on: date | None = None
    days_since_eaten: int | None = None
    interval_days: int | None = None
    hold: Hold | None = None
    offer: tuple[PreyOffer, ...] = ()
    offer_percent: float | None = None
    caution: str | None = None
    lateness: float | None = None
    because: tuple[Reason, ...] = ()


def due(
    now: AnimalNow,
    profile: SpeciesProfile | None,
    nights: Sequence[date],
    today: date,
    open_holds: Sequence[HoldSet] = (),
    counted: int = 0,
    last_record_on: date | None = None,
    *,
    learned: Container[HoldKind] = frozenset(),
    signs: Sequence[ShedSign] = (),
) -> Plan:
    """Whether the animal is due *today*, without the prey.

    Args:
        nights: feed nights in order, from about an interval before *today* to well after it;
            empty where every day is one.
        open_holds: hers, set by hand and not ended.
        counted: her counted refusals since the last meal, for the reason only.
        last_record_on: last day on which the house recorded any feeding at all. Nights
            recorded without her are nights she was not reached, so she stays due; without
            this only her own entries speak, and a long silence cannot tell.
        learned: holds under which she has shown that she eats.
        signs: her shed signs, for a pre-lay shed.
    """
    house = House(nights, today, last_record_on, counted)
    return judged(now, profile, house, open_holds, learned, signs).plan


def plan(
    now: AnimalNow,
    profile: SpeciesProfile | None,
    nights: Sequence[date],
    today: date,
    open_holds: Sequence[HoldSet] = (),
    recent: Sequence[Offer] = (),
    signs: Sequence[ShedSign] = (),
    empty_g: float | None = None,
    *,
    last_record_on: date | None = None,
    learned: Container[HoldKind] = frozenset(),
    past_holds: Sequence[HoldSet] | None = None,
    in_stock: Container[str] | None = None,
    kind: str | None = None,
    bend: Callable[[Plan], Plan] | None = None,
) -> Plan:
    """As ``due``, and with what she is offered when she is due.

    Args:
        recent: her offers since some meals before the last.
        empty_g: weight without meals and eggs; without it she is offered what she last ate,
            unless meals must be small just now.
        past_holds: all that ever lay on her, an ended one with that day as its end: they excuse
            the refusals of their own days. None: only the open ones are known.
        in_stock, kind: as for ``choose_prey``.
        bend: moves the night before a meal is chosen, as ``absence.bent`` does.
    """
    run = CountedRefusals()
    if profile is not None and now.refused_since:
        lay = open_holds if past_holds is None else past_holds
        run = counted_refusals(recent, signs, (*lay, *implied_holds(now, profile)), profile)
    house = House(nights, today, last_record_on, run.counted)
    told = judged(now, profile, house, open_holds, learned, signs)
    if run.switched:
        why = because("prey changed", kind=run.now, before=run.before, times=run.switched)
        after = replace(told.plan, because=(*told.plan.because, why))
        told = told._replace(plan=after)
    if bend is not None:
        told = told._replace(plan=bend(told.plan))
    return with_meal(told, now, profile, Table(today, recent, empty_g, in_stock, kind))


class Judged(NamedTuple):
    """A plan without its meal, every hold that it was judged by, and how often she is fed."""

    plan: Plan
    holds: tuple[Hold, ...]
    pace: Pace | None = None


class Table(NamedTuple):
    """What a meal is chosen from; the fields as the arguments of ``plan``."""

    today: date
    recent: Sequence[Offer] = ()
    empty_g: float | None = None
    in_stock: Container[str] | None = None
    kind: str | None = None


def with_meal(told: Judged, now: AnimalNow, profile: SpeciesProfile | None, table: Table) -> Plan:
    """The plan with what she is offered, if she is due."""
    if told.plan.state is not DueState.DUE or profile is None:
        return told.plan
    return _meal(told.plan, now, profile, told.holds, table)


def judged(
    now: AnimalNow,
    profile: SpeciesProfile | None,
    house: House,
    open_holds: Sequence[HoldSet] = (),
    learned: Container[HoldKind] = frozenset(),
    signs: Sequence[ShedSign] = (),
) -> Judged:
    """As ``due`` for a whole house at once, with what a meal is chosen by."""
    if not now.in_the_room:
        gone = because("not in the room", status=now.status.value, since=now.status_on)
        return Judged(Plan(animal=now.animal, state=DueState.NOT_DUE, because=(gone,)), ())
    if profile is None:
        unknown = because("no profile", species=now.species)
        told = Plan(animal=now.animal, state=DueState.CANNOT_TELL, because=(unknown,))
        return Judged(told, ())
    holds = holds_of(now, open_holds, profile, house.today, learned, signs)
    if holds:
        house = house._replace(last_record_on=_last_known(house.last_record_on, holds))
    pace = pace_of(now, profile, holds, house.today)
    if pace is None:
        when = when_whatever_the_stage(now, profile, house)
    else:
        when = when_due(now, profile, pace, house)
    return Judged(_plan(now, house, when, holds, pace), holds, pace)


def _last_known(recorded_on: date | None, holds: Sequence[Hold]) -> date | None:
    """A hold that kept or keeps food from her explains the silence up to its own day."""
    known = [hold.since for hold in holds if hold.part_percent is not None]
    if recorded_on is not None:
        known.append(recorded_on)
    return max(known, default=None)


def _plan(
    now: AnimalNow, house: House, when: When, holds: Sequence[Hold], pace: Pace | None
) -> Plan:
    held = bool(holds) and holds[0].skip
    days = (house.today - now.eaten_on).days if now.eaten_on else None
    if days is not None and days < 0:
        days = None
    interval_days = pace.interval_days if pace else None
    return Plan(
        animal=now.animal,
        state=DueState.HOLD if held else _state(when, house.today),
        due_on=_free_on(holds, when.due_on, house.nights) if held else when.due_on,
        days_since_eaten=days,
        interval_days=interval_days,
        hold=holds[0] if holds else None,
        caution=now.caution or (holds[0].kind.value if holds else None),
        lateness=days / interval_days if days is not None and interval_days else None,
        because=_reasons(when, holds, held),
    )


def _state(when: When, today: date) -> DueState:
    if not when.tells:
        return DueState.CANNOT_TELL
    if when.due_on is None or when.due_on > today:
        return DueState.NOT_DUE
    return DueState.DUE


_NO_HOLDS = (because("no holds"),)


def _reasons(when: When, holds: Sequence[Hold], held: bool) -> tuple[Reason, ...]:
    """What decides comes first."""
    if not holds:
        return (*when.because, *_NO_HOLDS) if when.tells else when.because
    told = tuple(reason for hold in holds for reason in _told(hold))
    return (*told, *when.because) if held else (*when.because, *told)


def _told(hold: Hold) -> tuple[Reason, ...]:
    kind, since = hold.kind.value, hold.since
    why = [because("hold", kind=kind, since=since, until=hold.until, ends_when=hold.ends_when)]
    if hold.part_percent is not None and not hold.skip:
        why.append(because("part of a meal", kind=kind, percent=hold.part_percent))
    if hold.asks_renewal:
        why.append(because("hold asks renewal", kind=kind, since=since))
    return tuple(why)


def _free_on(holds: Sequence[Hold], due_on: date | None, nights: Sequence[date]) -> date | None:
    """First feed night free of every hold that forbids feeding; None: an event must come first."""
    ends = [hold.until for hold in holds if hold.skip]
    free = [until for until in ends if until is not None]
    if len(free) < len(ends):
        return None
    after = next_night(max(free), nights)
    return after if due_on is None else max(after, due_on)


def _meal(
    told: Plan,
    now: AnimalNow,
    profile: SpeciesProfile,
    holds: Sequence[Hold],
    table: Table,
) -> Plan:
    share, cuts = _share(now, holds, table.today)
    stage = stage_of(now, profile, table.today)
    figures = figures_of(profile, stage, now.sex) if stage is not None else None
    if table.empty_g is None or figures is None:
        return _as_last_eaten(now, told, share)
    choice = choose_prey(
        table.empty_g,
        figures,
        profile.prey,
        table.recent,
        share,
        table.in_stock,
        kind=table.kind,
        step_down=_step_down(now, holds),
        rising=_rising(now, share),
    )
    return replace(
        told,
        offer=choice.offer,
        offer_percent=choice.percent,
        because=(*told.because, *cuts, *choice.because),
    )


def _share(now: AnimalNow, holds: Sequence[Hold], today: date) -> tuple[float, tuple[Reason, ...]]:
    """Share of the usual meal: the smallest that a hold or fatness asks for."""
    shares = [h.part_percent / 100 for h in holds if h.part_percent is not None and not h.skip]
    if not is_fat(now, today):
        return min(shares, default=1.0), ()
    percent = FAT_PERCENT.value
    cut = because("meal cut, fat", score=now.body_score, percent=percent, scored=now.scored_on)
    return min([*shares, percent / 100]), (cut,)


def _step_down(now: AnimalNow, holds: Sequence[Hold]) -> str | None:
    """A grade down for the first meal after the change; later ones follow from the last eaten."""
    for hold in holds:
        first = now.eaten_on is not None and now.eaten_on < hold.since
        if hold.kind is HoldKind.REGURGITATED and now.meals_since_regurgitation == 0:
            return hold.kind.value
        if hold.kind is HoldKind.GRAVID and first:
            return hold.kind.value
    return None


def _rising(now: AnimalNow, share: float) -> bool | None:
    """No grade up while meals are to be small or the weight is known to fall."""
    if share < 1:
        return False
    if now.weight_g is None or now.weight_before_g is None:
        return None
    return now.weight_g > now.weight_before_g


def _as_last_eaten(now: AnimalNow, told: Plan, share: float) -> Plan:
    """Without a weight the meal she last took, unless meals must be small."""
    unweighed = because("no weight")
    if share < 1 or now.eaten_prey is None or now.eaten_g is None:
        return replace(told, because=(*told.because, unweighed))
    meal = PreyOffer(prey=now.eaten_prey, count=now.eaten_count or 1, grams=now.eaten_g)
    again = because("as last eaten", prey=now.eaten_prey, on=now.eaten_on)
    return replace(told, offer=(meal,), because=(*told.because, unweighed, again))
