"""Make an invented collection in a book of its own: for the demo, for tests, for measuring."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime, time, timedelta, tzinfo
from pathlib import Path
from random import Random

from keeper import clock
from keeper.actions.keeping import Keeping, new_keeping
from keeper.actions.settings import set_feed_nights
from keeper.rehearsal import house, planted
from keeper.rehearsal.crowd import crowd
from keeper.rehearsal.diary import Clock
from keeper.rehearsal.household import Household, Plot
from keeper.rehearsal.seen import Planted, all_planted
from keeper.rules.nights import feed_nights
from keeper.store.database import unsynced

STATION, KEEPER = "rehearsal", "Ansa"
HOUSE_ANIMALS, HOUSE_YEARS = 80, 3
HOUSE_DAYS = 365 * HOUSE_YEARS
WEDNESDAY_SATURDAY = "FREQ=WEEKLY;BYDAY=WE,SA"
_USUAL = (2, 5)
_DAYS = ("MO", "TU", "WE", "TH", "FR", "SA", "SU")
DAILY_DAYS, WALKED_NIGHTS = 28, 4
_AHEAD = timedelta(days=120)
_MORNING = time(8, 0)


@dataclass(frozen=True, slots=True, kw_only=True)
class Rehearsal:
    """A collection with the household behind it; lived once *household* has lived."""

    keeping: Keeping
    household: Household
    plot: Plot
    clock: Clock

    def finish(self) -> None:
        """Live what is left to live; the clock then stands at the next morning."""
        with unsynced(self.keeping.book):
            self.household.live()
        self.clock.set(self.plot.last + timedelta(days=1), _MORNING)

    def planted(self) -> tuple[Planted, ...]:
        """What was planted and from which day it can be seen, once all is lived."""
        return all_planted(self.keeping, self.plot) if self.plot.spells else ()


def make_collection(
    path: Path,
    *,
    animals: int = HOUSE_ANIMALS,
    years: int = HOUSE_YEARS,
    seed: int = 1,
    ends_on: date,
    nights: str = WEDNESDAY_SATURDAY,
) -> Keeping:
    """An invented collection in a new book at *path*; its clock stands at the next morning.

    The same arguments give the same book. From 80 animals and 3 years on it holds the
    invented house with all that is planted; what is over is a crowd without a story.

    Raises:
        NotABook: something is at *path* already.
        ValueError: fewer than one animal or one year, or nights that are no rule.
    """
    made = rehearsal(path, animals=animals, years=years, seed=seed, ends_on=ends_on, nights=nights)
    made.finish()
    return made.keeping


def rehearsal(
    path: Path,
    *,
    animals: int = HOUSE_ANIMALS,
    years: int = HOUSE_YEARS,
    seed: int = 1,
    ends_on: date,
    nights: str = WEDNESDAY_SATURDAY,
    zone: tzinfo = UTC,
) -> Rehearsal:
    """As ``make_collection``, but nothing of it is lived yet."""
    if animals < 1 or years < 1:
        raise ValueError(
            f"a collection has 1 animal and 1 year or more, got {animals!r} and {years!r}"
        )
    first = ends_on - timedelta(days=365 * years)
    hand = Clock(datetime.combine(first, _MORNING, zone))
    keeping = _new(path, hand, seed)
    set_feed_nights(keeping, nights)
    feeding = feed_nights(nights.split(), first, ends_on + _AHEAD)
    plot = _plot(animals, first, ends_on, seed, feeding)
    household = Household(keeping, hand, plot, seed)
    return Rehearsal(keeping=keeping, household=household, plot=plot, clock=hand)


def demo_book(path: Path, now: Callable[[], datetime] = clock.now) -> Path:
    """The invented house ending yesterday, tonight being one of its feed nights.

    Raises:
        NotABook: something is at *path* already.
    """
    at = now()
    made = rehearsal(
        path,
        ends_on=at.date() - timedelta(days=1),
        nights=_nights_with(at.date()),
        zone=at.tzinfo or UTC,
    )
    made.finish()
    made.keeping.close()
    return path


def _nights_with(today: date) -> str:
    """Two feed nights a week, *today* one of them; Wednesday and Saturday where that can be."""
    days = {today.weekday(), (today.weekday() + 3) % 7}
    if today.weekday() in _USUAL:
        days = set(_USUAL)
    return "FREQ=WEEKLY;BYDAY=" + ",".join(_DAYS[day] for day in sorted(days))


def _new(path: Path, clock: Clock, seed: int) -> Keeping:
    """A new book whose keys come from *seed*, so that it can be made again letter for letter."""
    keeping = new_keeping(path, station=STATION, now=clock, keeper=KEEPER)
    tails = Random(f"{seed}/keys")
    return replace(keeping, book=replace(keeping.book, tail=lambda: tails.getrandbits(22)))


def _is_house(animals: int, first: date, last: date) -> bool:
    return animals >= HOUSE_ANIMALS and (last - first).days >= HOUSE_DAYS


def _plot(animals: int, first: date, last: date, seed: int, nights: tuple[date, ...]) -> Plot:
    if not _is_house(animals, first, last):
        return Plot(
            characters=tuple(crowd(animals, first, last, seed)),
            first=first,
            last=last,
            nights=nights,
            daily_from=last + timedelta(days=1),
        )
    begins = last - timedelta(days=HOUSE_DAYS)
    lived = [night for night in nights if night <= last]
    return Plot(
        characters=(
            *house.cast(last, begins, planted.scripts(last)),
            *crowd(animals - HOUSE_ANIMALS, first, last, seed),
        ),
        first=first,
        last=last,
        nights=nights,
        daily_from=last - timedelta(days=DAILY_DAYS),
        spells=planted.cold_spells(nights, last),
        unrecorded=frozenset({planted.night_unrecorded(nights, last)}),
        is_house=True,
        walked=frozenset(lived[-WALKED_NIGHTS:]) if animals == HOUSE_ANIMALS else frozenset(),
    )
