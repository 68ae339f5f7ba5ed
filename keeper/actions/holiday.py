"""What happens while the keeper is away: who is due on which night, as each night is fed."""

from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import date, timedelta

from keeper.actions.due_board import empty_now_g, feed_nights_around
from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.learned import eaten_through
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import HoldSet, Offer, Result, ShedSign
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile
from keeper.reports.holiday_page import HolidayFacts, HolidayNight, KindWanted, counted
from keeper.reports.words import word
from keeper.rules.feeding import DueState, Plan, plan
from keeper.store import reading

DAYS = 14
_LAST = 6


class _Ahead:
    """Everyone in the room, fed in thought night after night."""

    def __init__(self, keeping: Keeping, on: date) -> None:
        self.rows = [row for row in animals_on(keeping, on) if row.in_the_room]
        keys = [row.animal for row in self.rows]
        self.fed_on = max((row.offered_on for row in self.rows if row.offered_on), default=None)
        self.nights = feed_nights_around(keeping, on)
        self._keeping = keeping
        self._holds: Mapping[AnimalId, Sequence[HoldSet]] = reading.open_holds(keeping.book, on)
        self._offers = reading.recent(keeping.book, Offer, keys, _LAST, until=on)
        self._signs = reading.recent(keeping.book, ShedSign, keys, _LAST, until=on)
        self._learned = eaten_through(keeping, on)

    def plans(self, night: date) -> list[tuple[int, Plan]]:
        """What each row is due on *night*, with its index."""
        return [(n, self._plan(row, night)) for n, row in enumerate(self.rows)]

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
        self.fed_on = night

    def _plan(self, row: AnimalNow, night: date) -> Plan:
        profile = self._keeping.profile(row)
        return plan(
            row,
            profile,
            self.nights,
            night,
            self._holds.get(row.animal, ()),
            self._offers[row.animal],
            self._signs[row.animal],
            empty_now_g(row, profile),
            last_record_on=self.fed_on,
            learned=self._learned.get(row.animal, frozenset()),
        )


def holiday_facts(keeping: Keeping) -> HolidayFacts:
    """What whoever stands in must know for ``DAYS`` days, today the first.

    Raises:
        LookupError: no animal is in the room.
    """
    first = keeping.today
    last = first + timedelta(days=DAYS - 1)
    ahead = _Ahead(keeping, first)
    if not ahead.rows:
        raise LookupError("No animal is in the room; there is nothing to look after.")
    nights = [n for n in ahead.nights if first <= n <= last] or _every(first, DAYS)
    held, unknown = _not_fed(ahead, nights[0])
    fed = [_night(ahead, night) for night in nights]
    return HolidayFacts(
        first=first,
        last=last,
        printed=keeping.now(),
        nights=fed,
        held=held,
        unknown=unknown,
        cautions=_cautions(ahead.rows),
        kinds=_kinds(keeping, ahead.rows),
    )


def _every(first: date, days: int) -> list[date]:
    return [first + timedelta(days=n) for n in range(days)]


def _night(ahead: _Ahead, night: date) -> HolidayNight:
    """Who is due, and then is taken to have eaten."""
    due = [(n, told) for n, told in ahead.plans(night) if told.state is DueState.DUE]
    items = [(offer.prey, offer.count) for _, told in due for offer in told.offer]
    places = tuple(_where(ahead.rows[n]) for n, _ in due)
    for n, _ in due:
        ahead.feed(n, night)
    return HolidayNight(night=night, places=places, prey=counted(items))


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
            name=profile.english,
            hot_c=(profile.heat.hot_low_c.value, profile.heat.hot_high_c.value),
            night_c=(profile.heat.night_low_c.value, profile.heat.night_high_c.value),
            act_c=profile.heat.hot_act_c.value,
        )
        for profile in kept.values()
    ]


def _where(row: AnimalNow) -> str:
    return row.place or row.called
