"""The freezer and the weeks ahead as their place shows them, and the order list on paper."""

from dataclasses import dataclass, replace
from datetime import date, timedelta

from keeper.actions.bulk import made_at_once
from keeper.actions.due_board import FEED_NIGHTS, DueRow, empty_now_g, judged_rows
from keeper.actions.freezer import bags_on
from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.own_growth import OwnGrowth
from keeper.actions.passing_on import APART
from keeper.actions.sheets import refusal_chance
from keeper.husbandry.events import Offer
from keeper.husbandry.profile import PreyGrade, SpeciesProfile
from keeper.reports.order_list import order_list
from keeper.reports.paper_parts import Document
from keeper.reports.thaw_list import SPARE_HATCHLING_PERCENT, SPARE_PERCENT
from keeper.rules.demand import BEYOND_WEEKS, Demand, Spares, demand
from keeper.rules.demand import WEEKS as WEEKS
from keeper.rules.demand import GradeDemand as GradeDemand
from keeper.rules.demand import Group as Group
from keeper.rules.demand import Step as Step
from keeper.rules.demand import Stock as Stock
from keeper.rules.demand import aged as aged
from keeper.rules.demand import use_by as use_by
from keeper.rules.meals_ahead import Eater
from keeper.rules.nights import feed_nights, rules_in
from keeper.rules.prey import prey_name
from keeper.rules.watch_prey import Bag as Bag
from keeper.store import reading

_LAST_OFFERS = 6
_ASKED_FURTHER = timedelta(weeks=BEYOND_WEEKS + 4)
_SPARES = Spares(hatchling=SPARE_HATCHLING_PERCENT, others=SPARE_PERCENT)


@dataclass(frozen=True, slots=True, kw_only=True)
class Larder:
    """Every grade with what is needed of it; mean_g: grams of one item where a profile knows it."""

    demand: Demand
    mean_g: dict[str, float]

    @property
    def on(self) -> date:
        return self.demand.on

    @property
    def grades(self) -> tuple[GradeDemand, ...]:
        return self.demand.grades


class PreyDesk:
    """Reads the book for the place; growth here is reckoned once a day, as it hardly moves in one.

    Everything is called in one thread.
    """

    def __init__(self) -> None:
        self._day: date | None = None
        self._profiles: dict[str, SpeciesProfile] = {}

    def larder(self, keeping: Keeping, on: date) -> Larder:
        """What lies in the freezer on the day *on*, and what will be eaten from then on."""
        if self._day != on:
            self._day, self._profiles = on, {}
        with made_at_once():
            eaters = self._eaters(keeping, on)
            nights = _nights(keeping, on)
            found = demand(eaters, bags_on(keeping, on), nights, on, _SPARES)
        return Larder(demand=found, mean_g=_mean_g(keeping))

    def _eaters(self, keeping: Keeping, on: date) -> list[Eater]:
        """Every animal in the room as the weeks ahead ask for it."""
        rows = judged_rows(keeping, on)
        animals = [row.animal.animal for row in rows]
        recent = reading.recent(keeping.book, Offer, animals, _LAST_OFFERS, until=on)
        growth = OwnGrowth(keeping, animals_on(keeping, on), on)
        return [_eater(row, recent[row.animal.animal], self._profile(row, growth)) for row in rows]

    def _profile(self, row: DueRow, growth: OwnGrowth) -> SpeciesProfile:
        """The profile of an animal with the growth of its kind, of all lines, as it is here."""
        profile = growth.keeping.profile(row.animal)
        if profile.slug not in self._profiles:
            here = {sex: growth.curve(profile, sex, None).curve for sex in profile.growth}
            self._profiles[profile.slug] = replace(profile, growth=here)
        return self._profiles[profile.slug]


def larder(keeping: Keeping, on: date) -> Larder:
    """As ``PreyDesk.larder``, asked once."""
    return PreyDesk().larder(keeping, on)


def order_document(found: Larder, printed: str) -> Document:
    """The order list on paper; printed: when, in words."""
    return order_list(found.demand, printed)


def _eater(row: DueRow, recent: list[Offer], profile: SpeciesProfile) -> Eater:
    hold = row.plan.hold
    return Eater(
        now=row.animal,
        profile=profile,
        plan=row.plan,
        empty_g=empty_now_g(row.animal, profile),
        recent=recent,
        refusal_chance=refusal_chance(recent),
        apart=hold is not None and hold.kind in APART,
    )


def _nights(keeping: Keeping, on: date) -> tuple[date, ...]:
    """Feed nights for as long as is looked ahead; none where every day is one."""
    rules = rules_in(reading.settings(keeping.book).get(FEED_NIGHTS, ""))
    return feed_nights(rules, on, on + _ASKED_FURTHER) if rules else ()


def _mean_g(keeping: Keeping) -> dict[str, float]:
    """Grams of one item by grade; kinds that share a grade share its figure."""
    grades: list[PreyGrade] = [g for p in keeping.profiles.values() for g in p.prey]
    return {prey_name(grade): grade.mean_g.value for grade in reversed(grades)}
