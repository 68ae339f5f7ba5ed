"""The females of a season on one calendar: males with them, rest, eggs to come and eggs that lie.

Read off to the side: everything of ``CalendarDesk`` is called in the thread that first asks.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from contextlib import ExitStack
from dataclasses import dataclass
from datetime import date, timedelta
from math import ceil

from keeper.actions.absences import absences
from keeper.actions.clutch_rows import ClutchRow, clutch_rows
from keeper.actions.female_desk import Females
from keeper.actions.females import FemaleRow
from keeper.actions.holds_ever import holds_ever
from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.meetings import Meetings
from keeper.actions.own_connection import own_connection
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import HoldKind, HoldSet, ShedSign
from keeper.husbandry.profile import SpeciesProfile
from keeper.husbandry.reasons import Reason
from keeper.rules.absence import Absence as Absence
from keeper.rules.incubator_weeks import (
    Lain,
    WeekCount,
    lain_by_week,
    mondays_round,
)
from keeper.rules.incubator_weeks import monday_of as monday_of
from keeper.rules.laying import LayingSigns, kept_sperm, laying_seasons, recovering
from keeper.rules.laying import LayingWindow as LayingWindow
from keeper.rules.laying import Season as Season
from keeper.rules.sires import Exposure
from keeper.store import reading

WEEKS_BACK, WEEKS_AHEAD = 26, 26
_DAY = timedelta(days=1)
_SIGNS_MOST = 60


@dataclass(frozen=True, slots=True, kw_only=True)
class Met:
    """A male by name, with her as *exposure* tells."""

    male: str
    exposure: Exposure


@dataclass(frozen=True, slots=True, kw_only=True)
class CalendarRow:
    """One female. cooled: first and last day of each cooled rest, None: it has no end yet.

    clutches: hers, oldest first. recovering: why she is not back from her last clutch. kept_sperm:
    from when to when she may lay without a male, and why.
    """

    female: FemaleRow
    profile: SpeciesProfile
    met: tuple[Met, ...] = ()
    cooled: tuple[tuple[date, date | None], ...] = ()
    seasons: tuple[Season, ...] = ()
    clutches: tuple[ClutchRow, ...] = ()
    recovering: tuple[Reason, ...] = ()
    kept_sperm: tuple[date, date, Reason] | None = None

    @property
    def animal(self) -> AnimalId:
        return self.female.animal.animal

    @property
    def season(self) -> Season | None:
        """The one that no clutch has ended yet."""
        return self.seasons[-1] if self.seasons else None


@dataclass(frozen=True, slots=True, kw_only=True)
class PairingCalendar:
    """Every female in the room on the day *on*, in walking order, and what lies over them all.

    weeks: clutches in the incubator, week by week from the first to the last of the calendar.
    unplaced: clutches with good eggs of which it is not written where they lie.
    """

    on: date
    rows: tuple[CalendarRow, ...]
    absences: tuple[Absence, ...]
    weeks: tuple[WeekCount, ...]
    unplaced: tuple[str, ...]

    @property
    def first(self) -> date:
        return self.weeks[0].monday

    @property
    def last(self) -> date:
        """The last day of the last week."""
        return self.weeks[-1].monday + 6 * _DAY


class CalendarDesk:
    """Reads the book with a connection of its own."""

    def __init__(self, keeping: Keeping) -> None:
        self._own = keeping
        self._open = ExitStack()

    def calendar(self, females: Females) -> PairingCalendar:
        """Of *females* as they were read, with the rest of the book as it is now.

        Raises:
            BookError: the book cannot be opened again.
        """
        self.close()
        aside = self._open.enter_context(own_connection(self._own))
        return pairing_calendar(aside, females)

    def close(self) -> None:
        """Let go of the book; in the thread that used it."""
        self._open.close()


def pairing_calendar(keeping: Keeping, females: Females) -> PairingCalendar:
    """The calendar of *females* as of their day."""
    on = females.on
    keys = [row.animal.animal for row in females.rows]
    meetings = Meetings(keeping, {row.animal: row for row in animals_on(keeping, on)}, on)
    holds, sheds = holds_ever(keeping, keys, on), _pre_lay_days(keeping, keys, on)
    clutches = _by_dam(clutch_rows(keeping, on))
    rows = tuple(
        _row(
            keeping,
            female,
            tuple(Met(male=male, exposure=met) for male, met in meetings.of(female)),
            holds[female.animal.animal],
            sheds.get(female.animal.animal, ()),
            clutches.get(female.animal.animal, ()),
            on,
        )
        for female in females.rows
    )
    mondays = mondays_round(on, WEEKS_BACK, WEEKS_AHEAD)
    every = [clutch for of_dam in clutches.values() for clutch in of_dam]
    lain = [*_lain(every, on), *_to_come(rows, on)]
    return PairingCalendar(
        on=on,
        rows=rows,
        absences=tuple(a for a in absences(keeping, on) if a.last >= mondays[0]),
        weeks=lain_by_week(lain, mondays),
        unplaced=tuple(c.facts.name for c in every if _is_in(c) and c.lies is None),
    )


def _row(
    keeping: Keeping,
    female: FemaleRow,
    met: tuple[Met, ...],
    holds: Sequence[HoldSet],
    pre_lay: Sequence[date],
    clutches: Sequence[ClutchRow],
    on: date,
) -> CalendarRow:
    profile = keeping.profile(female.animal)
    gravid = [(h.happened.day, h.until) for h in holds if h.kind is HoldKind.GRAVID]
    signs = LayingSigns(
        met=[each.exposure for each in met],
        gravid=gravid,
        pre_lay=pre_lay,
        laid=[clutch.happened.day for clutch in female.clutches],
    )
    return CalendarRow(
        female=female,
        profile=profile,
        met=met,
        cooled=tuple(_cooled(holds)),
        seasons=laying_seasons(signs, profile, on),
        clutches=tuple(sorted(clutches, key=lambda clutch: clutch.laid_on)),
        recovering=recovering(female.gates) if female.clutches else (),
        kept_sperm=kept_sperm(signs, profile, on),
    )


def _cooled(holds: Iterable[HoldSet]) -> Iterator[tuple[date, date | None]]:
    """Of those that lasted a day: a hold covers the days up to but not including its end."""
    for hold in holds:
        first = hold.happened.day
        if hold.kind is HoldKind.COOLING and (hold.until is None or hold.until > first):
            yield first, hold.until - _DAY if hold.until else None


def _pre_lay_days(
    keeping: Keeping, animals: Iterable[AnimalId], on: date
) -> Mapping[AnimalId, Sequence[date]]:
    """Days of sheds before laying, of the few females that had one."""
    known = reading.before_laying(keeping.book, on)
    shed = [animal for animal in animals if animal in known]
    signs = reading.recent(keeping.book, ShedSign, shed, _SIGNS_MOST, until=on)
    return {
        animal: [sign.happened.day for sign in told if sign.pre_lay]
        for animal, told in signs.items()
    }


def _by_dam(clutches: Iterable[ClutchRow]) -> dict[AnimalId, list[ClutchRow]]:
    found: dict[AnimalId, list[ClutchRow]] = {}
    for clutch in clutches:
        found.setdefault(clutch.dam.animal, []).append(clutch)
    return found


def stays_shown(clutch: ClutchRow, on: date) -> Iterator[tuple[date, date, str]]:
    """First and last day and place of each stay in an incubator; what is to come goes by heat.

    Eggs that are waited for stay there for sure until the day before they may pip.
    """
    for stay in clutch.stays:
        first = stay.since.date()
        if stay.until is not None:
            last = stay.until.date()
        elif _is_in(clutch) and clutch.window is not None:
            last = max(on, clutch.window.first - _DAY)
        else:
            last = _emptied(clutch, first)
        yield first, last, stay.named


def _is_in(clutch: ClutchRow) -> bool:
    """Whether good eggs of it are waited for."""
    return clutch.balance.still_in > 0 and clutch.is_open


def _emptied(clutch: ClutchRow, first: date) -> date:
    """The day on which the last that is written of came out or failed."""
    told = [*clutch.facts.out_on, *(each.happened.day for each in clutch.facts.told)]
    return max((day for day in told if day >= first), default=first)


def _lain(clutches: Iterable[ClutchRow], on: date) -> Iterator[Lain]:
    for clutch in clutches:
        for first, sure, _ in stays_shown(clutch, on):
            lies = clutch.lies is not None and clutch.lies.since.date() == first
            may_pip = clutch.window if lies and _is_in(clutch) else None
            last = max(sure, may_pip.last) if may_pip else sure
            yield Lain(first=first, sure=sure, last=last)


def _to_come(rows: Iterable[CalendarRow], on: date) -> Iterable[Lain]:
    """Eggs to come whose latest day is known: they may lie from then on until they pip."""
    for row in rows:
        window = row.season.expected if row.season else None
        if window is None or window.last is None or window.last < on:
            continue
        longest = timedelta(days=ceil(row.profile.incubator.pip_days_most.value))
        yield Lain(first=max(on, window.first), sure=None, last=window.last + longest)
