"""The watch: what needs a look on a day, worst first, and the cause before its symptoms."""

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta
from statistics import median
from typing import TypeVar

from keeper.actions.absence_falling import lines_of_absences
from keeper.actions.aftercare import aftercare_of
from keeper.actions.bodies import compared, measures_of
from keeper.actions.due_board import E, empty_now_g
from keeper.actions.heat_readings import ALL_PROBES, house_heat
from keeper.actions.holds_ever import holds_ever
from keeper.actions.house_entries import refuse_unreasoned
from keeper.actions.keeping import Keeping, Written, animals_on
from keeper.actions.kept_lines import CareTold, care_told, kept_lines, lying_at
from keeper.actions.learned_late import learned_late, with_late
from keeper.actions.life import EATEN, empties, expected_on
from keeper.actions.noting import note
from keeper.actions.own_growth import OwnGrowth
from keeper.actions.put_aside import NO_END, asides_until
from keeper.actions.quarantine import open_holds
from keeper.actions.refused_together import counted_offers, refusal_causes
from keeper.husbandry.animal import AnimalId, Sex, Stage
from keeper.husbandry.events import (
    AsideUntil,
    Cleaned,
    HoldSet,
    Measured,
    Offer,
    Paired,
    Remark,
    ShedQuality,
    ShedSign,
    Snooze,
    Weighing,
)
from keeper.husbandry.house import Awaited, Cleaning, DailyRound, PlaceAside
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile
from keeper.husbandry.reasons import Reason
from keeper.husbandry.when import at_instant
from keeper.reports.words import word
from keeper.rules.alerts import watch
from keeper.rules.causes import BadShed, heat_at_groups, humidity_causes
from keeper.rules.holds import holds_of, implied_holds
from keeper.rules.learned_late import Late
from keeper.rules.quarantine import Longer, Restart, longer_reason, restart_reason
from keeper.rules.refusals import counted_refusals
from keeper.rules.sheds import shed_clock
from keeper.rules.stages import stage_of
from keeper.rules.watch_facts import HouseFacts, WatchFacts, WatchLine
from keeper.rules.watch_mites import met_on
from keeper.rules.watch_seen import unseen
from keeper.rules.watch_tubs import shared_tubs
from keeper.store import reading

_OFFERS, _SIGNS, _WEIGHINGS, _FEW = 30, 24, 16, 6
_REMARKS_OF = timedelta(days=14)
_HATCH_WEIGHT_OF = timedelta(days=14)
_HELD_AGAINST_SIBLINGS = frozenset({Stage.HATCHLING, Stage.JUVENILE})


R = TypeVar("R")


@dataclass(frozen=True, slots=True)
class _Pages:
    """The recent entries of every animal in the room, read once."""

    offers: Mapping[AnimalId, Sequence[Offer]]
    signs: Mapping[AnimalId, Sequence[ShedSign]]
    weighings: Mapping[AnimalId, Sequence[Weighing]]
    remarks: Mapping[AnimalId, Sequence[Remark]]
    aftercare: Mapping[AnimalId, Sequence[Remark]]
    snoozes: Mapping[AnimalId, Sequence[Snooze]]
    cleaned: Mapping[AnimalId, Sequence[Cleaned]]
    holds_ever: Mapping[AnimalId, Sequence[HoldSet]]
    holds: Mapping[AnimalId, Sequence[HoldSet]]
    anew: Mapping[AnimalId, Restart]
    longer: Mapping[AnimalId, Longer]
    measures: Mapping[AnimalId, Sequence[Measured]]
    late: Mapping[AnimalId, Sequence[Late]]
    care: CareTold
    called: Mapping[AnimalId, str]

    def anew_of(self, animal: AnimalId) -> Reason | None:
        """Why the quarantine of *animal* began anew, if it did."""
        restart = self.anew.get(animal)
        if restart is None:
            return None
        return restart_reason(restart, self.called.get(restart.arrival.animal, "?"))


def watch_lines(keeping: Keeping, on: date) -> tuple[WatchLine, ...]:
    """Everything that needs a look on the day *on*, worst first."""
    everyone = animals_on(keeping, on)
    rows = [row for row in everyone if row.in_the_room]
    growth = OwnGrowth(keeping, everyone, on)
    pages = _pages(keeping, everyone, on)
    clutches = _clutch_medians(keeping, rows)
    facts = [
        _facts(row, growth.profile(row), pages, clutches.get(_siblings(row)), on) for row in rows
    ]
    facts = compared(facts, on)
    house = replace(
        _house(keeping, rows, pages, on),
        kept=(*kept_lines(keeping, everyone, on), *lines_of_absences(keeping, on)),
        lying=lying_at(keeping, on),
    )
    return watch(facts, house, on)


def put_aside(keeping: Keeping, animal: AnimalId, kind: str, until: date, reason: str) -> Written:
    """Put one kind of line aside for an animal until a day, with the reason.

    Raises:
        ValueError: no reason, or a day that is not to come.
    """
    refuse_unreasoned(keeping, until, reason)
    happened = at_instant(keeping.now())
    event = Snooze(
        animal=animal, happened=happened, watch_kind=kind, until=until, reason=reason.strip()
    )
    return note(keeping, "put aside", event, what=f"{kind} until {until}")


def put_aside_until(
    keeping: Keeping, animal: AnimalId, kind: str, awaited: Awaited, reason: str
) -> Written:
    """Put one kind of line aside for an animal until what is awaited has happened.

    Raises:
        ValueError: no reason.
    """
    refuse_unreasoned(keeping, NO_END, reason)
    event = AsideUntil(
        animal=animal,
        happened=at_instant(keeping.now()),
        watch_kind=kind,
        awaited=awaited,
        reason=reason.strip(),
    )
    return note(keeping, "put aside", event, what=f"{kind} until {word(awaited)}")


def _pages(keeping: Keeping, everyone: Sequence[AnimalNow], on: date) -> _Pages:
    rows = [row for row in everyone if row.in_the_room]
    animals = [row.animal for row in rows]

    def newest(kind: type[E], most: int) -> dict[AnimalId, list[E]]:
        return reading.recent(keeping.book, kind, animals, most, until=on)

    holds = open_holds(keeping, on)
    return _Pages(
        offers=newest(Offer, _OFFERS),
        signs=newest(ShedSign, _SIGNS),
        weighings=newest(Weighing, _WEIGHINGS),
        remarks=newest(Remark, _FEW),
        aftercare=aftercare_of(keeping, on),
        snoozes=_snoozes(keeping, newest(Snooze, _FEW), on),
        cleaned=newest(Cleaned, _WEIGHINGS),
        holds_ever=holds_ever(keeping, animals, on),
        holds=holds.holds,
        anew=holds.anew,
        longer=holds.longer,
        measures=measures_of(keeping, on),
        late=learned_late(keeping, rows, on),
        care=care_told(keeping, on),
        called={row.animal: row.called for row in everyone},
    )


def _snoozes(
    keeping: Keeping, dated: dict[AnimalId, list[Snooze]], on: date
) -> Mapping[AnimalId, Sequence[Snooze]]:
    """Those with a day for their end, and those that end with an event."""
    for _, snooze in asides_until(keeping, dated, on):
        dated[snooze.animal] = [*dated[snooze.animal], snooze]
    return dated


def _facts(
    row: AnimalNow, profile: SpeciesProfile, pages: _Pages, clutch_g: float | None, on: date
) -> WatchFacts:
    key = row.animal
    offers, signs = pages.offers[key], pages.signs[key]
    stage = stage_of(row, profile, on)
    meals = [(o.happened.day, o.mass_g) for o in offers if o.result in EATEN]
    freed = empties(pages.weighings[key], meals, profile)
    entries_on = [e.happened.day for e in (*offers, *pages.weighings[key])]
    return WatchFacts(
        now=row,
        profile=profile,
        stage=stage,
        holds=holds_of(row, pages.holds.get(key, ()), profile, on, signs=signs),
        empties=freed,
        meals=meals,
        refusals=counted_refusals(
            offers, signs, (*pages.holds_ever[key], *implied_holds(row, profile)), profile
        ),
        clock=shed_clock(row, signs, profile, stage, on, entries_on=entries_on),
        expected=expected_on(row, profile, row.weighed_on) if row.weighed_on else None,
        clutch_median_g=clutch_g if stage in _HELD_AGAINST_SIBLINGS else None,
        own_hatch_g=_hatch_weight(row, pages.weighings[key]),
        signs=signs,
        aftercare=pages.aftercare.get(key, ()),
        remarks=[r for r in pages.remarks[key] if on - r.happened.day <= _REMARKS_OF],
        snoozes=pages.snoozes[key],
        cleaned=frozenset(
            each.happened.day for each in pages.cleaned[key] if each.extent is Cleaning.WHOLE
        ),
        measures=pages.measures.get(key, ()),
        late=pages.late.get(key, ()),
        courses=pages.care.courses.get(key, ()),
        faecals=pages.care.faecals.get(key, ()),
        permits=pages.care.permits.get(key, ()),
        anew=pages.anew_of(key),
        longer=longer_reason(pages.longer[key]) if key in pages.longer else None,
        mites_met_on=met_on(pages.care.mites, row.place, on),
    )


def _hatch_weight(row: AnimalNow, weighings: Sequence[Weighing]) -> float | None:
    if row.hatched_last is None or not weighings:
        return None
    first = weighings[0]
    young = first.happened.day - row.hatched_last <= _HATCH_WEIGHT_OF
    return first.weight_g if young else None


def _siblings(row: AnimalNow) -> tuple[str | None, Sex]:
    """Young that may be held against each other: of one clutch and one sex."""
    return row.clutch, row.sex


def _clutch_medians(
    keeping: Keeping, rows: Iterable[AnimalNow]
) -> dict[tuple[str | None, Sex], float]:
    """Median empty weight of every three or more siblings in the room."""
    weights: dict[tuple[str | None, Sex], list[float]] = defaultdict(list)
    for row in rows:
        grams = empty_now_g(row, keeping.profile(row))
        if row.clutch and grams is not None:
            weights[_siblings(row)].append(grams)
    return {key: median(grams) for key, grams in weights.items() if len(grams) >= 3}


def _house(keeping: Keeping, rows: Sequence[AnimalNow], pages: _Pages, on: date) -> HouseFacts:
    def fed(row: AnimalNow) -> list[datetime]:
        return [o.happened.at for o in pages.offers[row.animal][-2:] if o.result in EATEN]

    heat = house_heat(keeping, rows, fed, on)
    offers = counted_offers(keeping, rows, pages.offers, pages.signs, pages.holds_ever, on)
    return HouseFacts(
        causes=(
            *with_late(
                refusal_causes(keeping, offers, heat_at_groups(heat.verdicts), on), pages.late
            ),
            *humidity_causes(_bad_sheds(rows, pages), on),
        ),
        heat=heat.verdicts,
        cold_after_feeding=heat.cold,
        faults=heat.faults,
        cut_off=frozenset({ALL_PROBES}),
        unseen=unseen(rows, _all(keeping, DailyRound), on),
        shared=shared_tubs(rows, _all(keeping, Paired), on),
        asides=_all(keeping, PlaceAside),
    )


def _all(keeping: Keeping, kind: type[R]) -> list[R]:
    return [entry.event for entry in reading.all_of(keeping.book, kind)]


def _bad_sheds(rows: Iterable[AnimalNow], pages: _Pages) -> list[BadShed]:
    return [
        BadShed(animal=row.animal, place=row.place, on=sign.happened.day)
        for row in rows
        for sign in pages.signs[row.animal]
        if sign.quality is not None and sign.quality is not ShedQuality.WHOLE
    ]
