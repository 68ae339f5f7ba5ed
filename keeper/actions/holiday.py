"""What happens while the keeper is away: the plan bent round it, each night fed in thought."""

from collections import defaultdict
from collections.abc import Container, Mapping, Sequence
from dataclasses import replace
from datetime import date

from keeper.actions.absence import Absence, NightsAround, nights_around
from keeper.actions.due_board import empty_now_g, feed_nights_around
from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.learned import eaten_through
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import HoldKind, HoldSet, Offer, Result, ShedSign
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile
from keeper.language import tr
from keeper.reports.holiday_page import HolidayFacts, HolidayNight, KindWanted, counted
from keeper.reports.prey_words import prey_words
from keeper.reports.words import species_words, word
from keeper.rules.absence import MealWindow, meal_window, night_to_feed
from keeper.rules.feeding import DueState, Plan, plan
from keeper.store import reading

_LAST = 6


class _Ahead:
    """Everyone in the room, fed in thought night after night."""

    def __init__(self, keeping: Keeping, on: date) -> None:
        self.rows = [row for row in animals_on(keeping, on) if row.in_the_room]
        keys = [row.animal for row in self.rows]
        fed_on = max((row.offered_on for row in self.rows if row.offered_on), default=None)
        self._silence = None if fed_on is None else on - fed_on
        self.nights = feed_nights_around(keeping, on)
        self._keeping = keeping
        self._holds: Mapping[AnimalId, Sequence[HoldSet]] = reading.open_holds(keeping.book, on)
        self._offers = reading.recent(keeping.book, Offer, keys, _LAST, until=on)
        self._signs = reading.recent(keeping.book, ShedSign, keys, _LAST, until=on)
        self._learned = eaten_through(keeping, on)

    def plans(self, night: date, only: Container[int] | None = None) -> list[tuple[int, Plan]]:
        """What each row is due on *night*, with its index; only: these are planned to be fed."""
        if only is None:
            return [(n, self._plan(row, night)) for n, row in enumerate(self.rows)]
        asked = ((n, row) for n, row in enumerate(self.rows) if n in only)
        return [(n, self._plan(row, night, early=True)) for n, row in asked]

    def window(self, index: int, told: Plan, night: date) -> MealWindow | None:
        """Between which days its next meal may be given."""
        row = self.rows[index]
        return meal_window(row, told, self._keeping.profile(row), night)

    def free_on(self, index: int, nights: Sequence[date]) -> date:
        """The first of *nights* on which no hold keeps food from it; on the last of them it may."""
        row = self.rows[index]
        free = (n for n in nights if self._plan(row, n).state is not DueState.HOLD)
        return next(free, nights[-1])

    def feed(self, index: int, night: date) -> None:
        """As if it had eaten: the next nights are reckoned from there."""
        row = self.rows[index]
        self.rows[index] = replace(
            row,
            eaten_on=night,
            offered_on=night,
            offered_result=Result.TAKEN,
            refused_since=0,
            meals=row.meals + 1,
        )

    def _recorded_on(self, night: date) -> date | None:
        """The last record as if *night* were today: what is to come is no silence."""
        return None if self._silence is None else night - self._silence

    def _plan(self, row: AnimalNow, night: date, *, early: bool = False) -> Plan:
        """early: with the meal that is due next, as if that were tonight."""
        profile = self._keeping.profile(row)
        if early:
            night = max(night, self._plan(row, night).due_on or night)
        return plan(
            row,
            profile,
            self.nights,
            night,
            self._holds.get(row.animal, ()),
            self._offers[row.animal],
            self._signs[row.animal],
            empty_now_g(row, profile),
            last_record_on=self._recorded_on(night),
            learned=self._learned.get(row.animal, frozenset()),
        )


def holiday_facts(keeping: Keeping, absence: Absence) -> HolidayFacts:
    """What whoever stands in must know, with the plan bent so that as few as can be are fed.

    On the last evening before, those are fed early who may be; who may wait until the keeper
    is back waits; only the others are fed meanwhile, on as few nights as can be.

    Raises:
        LookupError: no animal is in the room.
    """
    nights = nights_around(keeping, absence)
    ahead = _Ahead(keeping, keeping.today)
    if not ahead.rows:
        raise LookupError(tr("No animal is in the room; there is nothing to look after."))
    before = _until_leaving(ahead, nights)
    held, unknown = _not_fed(ahead, max(absence.first, keeping.today))
    fed, waits = _meanwhile(ahead, nights)
    return HolidayFacts(
        first=absence.first,
        last=absence.last,
        back=nights.back,
        printed=keeping.now(),
        before=before,
        nights=fed,
        waits=waits,
        held=held,
        unknown=unknown,
        gravid=_may_lay(keeping, ahead.rows),
        cautions=_cautions(ahead.rows),
        kinds=_kinds(keeping, ahead.rows),
    )


def _until_leaving(ahead: _Ahead, nights: NightsAround) -> HolidayNight | None:
    """Feed in thought until the keeper leaves; who is fed early on the evening before."""
    for night in nights.before:
        _feed(ahead, night, [n for n, told in ahead.plans(night) if told.state is DueState.DUE])
    last = nights.leaving
    if last is None:
        return None
    plans = ahead.plans(last)
    early = [n for n, told in plans if _comes_early(ahead, n, told, last, nights.back)]
    told = _told(ahead, last, early)
    _feed(ahead, last, early)
    return told


def _comes_early(ahead: _Ahead, index: int, told: Plan, night: date, back: date) -> bool:
    """Whether its meal falls into the absence, cannot wait, and may be given on *night*."""
    if told.state is not DueState.NOT_DUE or told.due_on is None or told.due_on >= back:
        return False
    window = ahead.window(index, told, night)
    return window is not None and window.latest < back and window.allows(night)


def _meanwhile(ahead: _Ahead, nights: NightsAround) -> tuple[Sequence[HolidayNight], Sequence[str]]:
    """Nights on which some must be fed, and where those stand who wait until the keeper is back."""
    fed: list[HolidayNight] = []
    left = list(nights.away)
    while left:
        must = _must(ahead, left, nights.back)
        night = night_to_feed(must.values(), left)
        if night is None:
            break
        now = [n for n, window in must.items() if window.earliest <= night]
        fed.append(_told(ahead, night, now))
        _feed(ahead, night, now)
        left = [n for n in left if n > night]
    return fed, _waiting(ahead, nights)


def _must(ahead: _Ahead, left: Sequence[date], back: date) -> Mapping[int, MealWindow]:
    """Those whose meal can wait for none of the nights after the absence."""
    found: dict[int, MealWindow] = {}
    for n, told in ahead.plans(left[-1]):
        window = ahead.window(n, told, left[-1]) if told.state is DueState.DUE else None
        if window is not None and window.latest < back:
            found[n] = window.from_day(ahead.free_on(n, left))
    return found


def _waiting(ahead: _Ahead, nights: NightsAround) -> Sequence[str]:
    """Where those stand who are due before the keeper is back and were not fed."""
    if not nights.away:
        return ()
    plans = ahead.plans(nights.away[-1])
    return tuple(_where(ahead.rows[n]) for n, told in plans if told.state is DueState.DUE)


def _told(ahead: _Ahead, night: date, indexes: Sequence[int]) -> HolidayNight:
    """Who is fed on *night*, with what, and where."""
    asked = set(indexes)
    plans = ahead.plans(night, asked)
    meals: dict[str, list[str]] = defaultdict(list)
    for n, told in plans:
        meals[_meal(told)].append(_where(ahead.rows[n]))
    prey = counted([(offer.prey, offer.count) for _, told in plans for offer in told.offer])
    places = tuple(_where(ahead.rows[n]) for n in sorted(asked))
    return HolidayNight(night=night, places=places, prey=prey, meals=meals)


def _meal(told: Plan) -> str:
    """What one is offered, in words."""
    if not told.offer:
        return tr("no meal can be told, ask the keeper")
    items = (f"{offer.count} × {prey_words(offer.prey)}" for offer in told.offer)
    return " + ".join(items)


def _feed(ahead: _Ahead, night: date, indexes: Sequence[int]) -> None:
    for n in indexes:
        ahead.feed(n, night)


def _may_lay(keeping: Keeping, rows: Sequence[AnimalNow]) -> Sequence[str]:
    """Females held as gravid, and those with a pre-lay shed and no clutch since."""
    on = keeping.today
    holds = reading.open_holds(keeping.book, on)
    sheds = reading.before_laying(keeping.book, on)
    return tuple(
        _where(row)
        for row in rows
        if any(hold.kind is HoldKind.GRAVID for hold in holds.get(row.animal, ()))
        or (row.animal in sheds and _not_laid_since(row))
    )


def _not_laid_since(row: AnimalNow) -> bool:
    return row.clutch_on is None or (row.shed_on is not None and row.clutch_on < row.shed_on)


def _not_fed(ahead: _Ahead, night: date) -> tuple[Mapping[str, Sequence[str]], Sequence[str]]:
    """Those held by the word of the hold, and those of whom nothing can be told."""
    held: dict[str, list[str]] = defaultdict(list)
    unknown: list[str] = []
    for n, told in ahead.plans(night):
        where = _where(ahead.rows[n])
        if told.state is DueState.HOLD and told.hold is not None:
            held[word(told.hold.kind)].append(where)
        elif told.state is DueState.CANNOT_TELL:
            unknown.append(where)
    return held, unknown


def _cautions(rows: Sequence[AnimalNow]) -> Mapping[str, Sequence[str]]:
    found: dict[str, list[str]] = defaultdict(list)
    for row in rows:
        if row.caution:
            found[row.caution].append(_where(row))
    return found


def _kinds(keeping: Keeping, rows: Sequence[AnimalNow]) -> list[KindWanted]:
    kept: dict[str, SpeciesProfile] = {}
    for row in rows:
        profile = keeping.profile(row)
        kept.setdefault(profile.slug, profile)
    return [
        KindWanted(
            name=species_words(profile),
            hot_c=(profile.heat.hot_low_c.value, profile.heat.hot_high_c.value),
            night_c=(profile.heat.night_low_c.value, profile.heat.night_high_c.value),
            act_c=profile.heat.hot_act_c.value,
        )
        for profile in kept.values()
    ]


def _where(row: AnimalNow) -> str:
    return row.place or row.called
