"""What temperatures say of the house: typed readings and packed ones of probes, judged together.

A source is one hand or one probe at one place and zone. Of several sources there the one read
last speaks, with those read within the hour before it; of what they say the worst is kept.
A probe that cannot be believed is a fault of its own and says nothing of heat.
"""

from collections import defaultdict
from collections.abc import Callable, Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, time, timedelta, tzinfo
from functools import lru_cache

from keeper.actions.keeping import Keeping
from keeper.actions.kept_lines import placed_clutches
from keeper.actions.live_choice import heard_probes
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import Heat, ProbePlaced, Zone
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import place_of
from keeper.husbandry.profile import IncubatorFigures, SpeciesProfile
from keeper.husbandry.when import Happened, at_instant
from keeper.rules.heat import ColdAfterFeeding, HeatVerdict, cold_after_feeding, heat_verdicts
from keeper.rules.heat_limits import EggLimits, egg_limits
from keeper.rules.sensors import (
    CLOSE_MINUTES,
    STUCK_HOURS,
    SensorFault,
    blinded,
    hours_between,
    sensor_fault,
    unchanged_since,
)
from keeper.store import reading, readings
from keeper.store.readings import HourRange

WATCHED = timedelta(days=2)

ALL_PROBES = "all live probes"
MANY_PROBES = 3

REMEMBERED = timedelta(days=30)
"""So far back a probe's own steadiness is looked at before it is called stuck."""

_AN_HOUR = timedelta(hours=1)

INCUBATOR_LIMITS = "incubator limits"
"""Setting: the lowest and the highest degrees of the incubator, as ``27,30.5``."""

_URGENCY = {"now": 0, "today": 1, "noted": 2}
_ROOMY = (Zone.ROOM, Zone.INCUBATOR)


@dataclass(frozen=True, slots=True, kw_only=True)
class Source:
    """Readings of one hand or one probe at one place and zone, oldest first, at least one."""

    place: str
    zone: Zone
    probe: str | None
    readings: tuple[Heat, ...]

    @property
    def last_at(self) -> datetime:
        return self.readings[-1].happened.at


@dataclass(frozen=True, slots=True, kw_only=True)
class HouseHeat:
    """One verdict for each place and zone, animals in danger, probes that cannot be believed."""

    verdicts: tuple[HeatVerdict, ...]
    cold: tuple[ColdAfterFeeding, ...]
    faults: tuple[SensorFault, ...]


Fed = Callable[[AnimalNow], Iterable[datetime]]
"""When an animal was fed of late."""


def house_heat(
    keeping: Keeping,
    rows: Sequence[AnimalNow],
    fed: Fed,
    on: date,
    live: Collection[str] | None = None,
) -> HouseHeat:
    """What the last two days of readings say on *on*.

    live: probes that are heard as they read, so that silence is a fault; a logger whose file
    is taken in now and then is silent in between. None: those that this machine listens to.
    """
    if live is None:
        live = heard_probes(keeping.book.path) if on == keeping.today else ()
    now_at = min(keeping.now(), _end_of(on, keeping))
    sources = readings_for_watch(keeping, on)
    found = [(source, _fault(keeping, source, now_at, live)) for source in sources]
    faults = [fault for _, fault in found if fault is not None]
    sound = [source for source, fault in found if fault is None or fault.kind == "silent"]
    fresh = [each for each, fault in found if fault is None and now_at - each.last_at <= _AN_HOUR]
    told = list(speaking(sound))
    return HouseHeat(
        verdicts=tuple(_verdicts(keeping, rows, told, now_at, lying_eggs(keeping, rows, on))),
        cold=tuple(_cold(keeping, rows, told, fed, now_at)),
        faults=tuple(_told_once(list(_blinded(faults, fresh, rows)), sources, live)),
    )


def readings_for_watch(keeping: Keeping, on: date) -> tuple[Source, ...]:
    """Every source of the time ``WATCHED`` up to the end of *on*, in order of place and zone."""
    end = min(keeping.now(), _end_of(on, keeping))
    begin = end - WATCHED
    typed = reading.on_days(keeping.book, Heat, begin.date(), on)
    groups: dict[tuple[str, Zone], list[Heat]] = defaultdict(list)
    for each in typed:
        if begin <= each.happened.at <= end:
            groups[each.place, each.zone].append(each)
    found = [
        Source(
            place=place,
            zone=zone,
            probe=None,
            readings=tuple(sorted(group, key=lambda each: each.happened.at)),
        )
        for (place, zone), group in groups.items()
    ]
    found += _probed(keeping, begin, end)
    return tuple(sorted(found, key=lambda s: (s.place, s.zone, s.probe or "")))


def speaking(sources: Iterable[Source]) -> Iterator[Source]:
    """Of each place and zone the source read last, and those read within the hour before it."""
    groups: dict[tuple[str, Zone], list[Source]] = defaultdict(list)
    for source in sources:
        groups[source.place, source.zone].append(source)
    for group in groups.values():
        last = max(source.last_at for source in group)
        yield from (s for s in group if last - s.last_at <= timedelta(minutes=CLOSE_MINUTES))


def living_at(place: str, rows: Iterable[AnimalNow]) -> list[AnimalNow]:
    """Animals of the tub, row (``B3``) or rack (``B``) that *place* names."""
    return [row for row in rows if place in _names_of(row.place)]


def incubator_limits(keeping: Keeping) -> tuple[float, float] | None:
    """The keeper's own low and high of the incubator, None while they are not set."""
    told = reading.settings(keeping.book).get(INCUBATOR_LIMITS)
    if told is None:
        return None
    low, _, high = told.partition(",")
    return float(low), float(high)


@dataclass(frozen=True, slots=True, kw_only=True)
class LyingEggs:
    """What eggs bear: of each incubator those that were placed there, elsewhere of any that may
    lie anywhere."""

    at: Mapping[str, EggLimits]
    anywhere: EggLimits | None

    def of(self, place: str) -> EggLimits | None:
        """The limits of the incubator *place*."""
        return self.at.get(place, self.anywhere)


def lying_eggs(keeping: Keeping, rows: Sequence[AnimalNow], on: date) -> LyingEggs:
    """The limits of every incubator on the day *on*."""
    lying: dict[str, list[IncubatorFigures]] = defaultdict(list)
    for clutch in placed_clutches(keeping, on):
        there = clutch.lies_in
        if there is not None and there.place is not None and clutch.figures is not None:
            lying[there.place].append(clutch.figures)
    own_c, at = incubator_limits(keeping), {}
    for place, figures in lying.items():
        if (limits := egg_limits(figures, own_c)) is not None:
            at[place] = limits
    return LyingEggs(at=at, anywhere=eggs_here(keeping, rows, on))


def eggs_here(keeping: Keeping, rows: Sequence[AnimalNow], on: date) -> EggLimits | None:
    """What the eggs of those who laid of late bear; where nobody laid, those of all in *rows*."""
    species = {row.species: keeping.profile(row) for row in rows}
    laid = {row.species for row in rows if _may_lie(row, species[row.species], on)}
    eggs = [profile.incubator for name, profile in species.items() if name in laid or not laid]
    return egg_limits(eggs, incubator_limits(keeping))


def _may_lie(row: AnimalNow, profile: SpeciesProfile, on: date) -> bool:
    """Whether the last clutch of *row* may still be in the incubator."""
    return (
        row.clutch_on is not None
        and (on - row.clutch_on).days <= profile.incubator.lie_days_most.value
    )


def _verdicts(
    keeping: Keeping,
    rows: Sequence[AnimalNow],
    sources: Sequence[Source],
    now_at: datetime,
    eggs: LyingEggs,
) -> Iterator[HeatVerdict]:
    """The worst that is said of each place and zone, by the profile of those who live there."""
    worst: dict[tuple[str, Zone], HeatVerdict] = {}
    for source in sources:
        living = living_at(source.place, rows) or (rows if source.zone in _ROOMY else [])
        if not living:
            continue
        profile = keeping.profile(living[0])
        limits = eggs.of(source.place)
        for verdict in heat_verdicts(source.readings, profile, now_at, eggs=limits):
            before = worst.get((verdict.place, verdict.zone))
            if before is None or _graver(verdict) < _graver(before):
                worst[verdict.place, verdict.zone] = verdict
    yield from worst.values()


def _graver(verdict: HeatVerdict) -> tuple[int, int]:
    states = ("too hot", "too cold", "within limits", "cannot tell")
    return _URGENCY[verdict.urgency], states.index(verdict.state)


def _cold(
    keeping: Keeping,
    rows: Sequence[AnimalNow],
    sources: Sequence[Source],
    fed: Fed,
    now_at: datetime,
) -> Iterator[ColdAfterFeeding]:
    """One line for each place, by the source that was cold the longest."""
    worst: dict[str, ColdAfterFeeding] = {}
    for source in sources:
        living = living_at(source.place, rows)
        meals: list[tuple[AnimalId, datetime]] = [(r.animal, at) for r in living for at in fed(r)]
        if source.zone is not Zone.HOT or not meals:
            continue
        cold = cold_after_feeding(source.readings, meals, keeping.profile(living[0]), now_at)
        if cold is None:
            continue
        before = worst.get(cold.place)
        if before is None or (cold.hours or 0) > (before.hours or 0):
            worst[cold.place] = cold
    yield from worst.values()


def _blinded(
    faults: Iterable[SensorFault], fresh: Iterable[Source], rows: Sequence[AnimalNow]
) -> Iterator[SensorFault]:
    """Faults, those marked that leave animals or eggs with a heater and no reading of it.

    fresh: what was read within the hour and can be believed, typed by hand too. A probe of a
    row tells of its tubs, and one of a tub of its row: they share a heater.
    """
    told = {(name, source.zone) for source in fresh for name in _names_of(source.place)}
    for fault in faults:
        is_told = any((name, fault.zone) in told for name in _names_of(fault.place))
        at_stake = fault.zone in _ROOMY or living_at(fault.place, rows)
        yield fault if is_told or not at_stake else blinded(fault)


def _told_once(
    faults: Sequence[SensorFault], sources: Iterable[Source], live: Collection[str]
) -> Iterator[SensorFault]:
    """Every live probe silent at once is the line that is cut: one fault, not one for each."""
    heard = {source.probe for source in sources} & {*live}
    silent = [fault for fault in faults if fault.kind == "silent"]
    is_cut = len(heard) >= MANY_PROBES and len(silent) == len(heard)
    yield from (fault for fault in faults if not (is_cut and fault.kind == "silent"))
    if is_cut:
        yield replace(silent[0], place=ALL_PROBES)


def _fault(
    keeping: Keeping, source: Source, now_at: datetime, live: Collection[str]
) -> SensorFault | None:
    if source.probe is None:
        return sensor_fault(source.readings, source.last_at)
    asked_at = now_at if source.probe in live else source.last_at
    since, steady_hours = unchanged_since(source.readings), None
    if hours_between(since, source.last_at) >= STUCK_HOURS.value:
        steady_hours = _steady_hours(keeping, source.probe, since)
    return sensor_fault(source.readings, asked_at, steady_hours=steady_hours)


def _steady_hours(keeping: Keeping, probe: str, until: datetime) -> float | None:
    """The longest that *probe* read the same in the month before; None where it read nothing."""
    longest = run = 0
    before: HourRange | None = None
    for hour in readings.hours_of(keeping.book, probe, until - REMEMBERED, until):
        same = before is not None and hour.at - before.at == _AN_HOUR
        same = same and before is not None and before.low_c == hour.low_c == hour.high_c
        run = run + 1 if same else int(hour.low_c == hour.high_c)
        longest, before = max(longest, run), hour
    return float(longest) if before is not None else None


def _probed(keeping: Keeping, begin: datetime, end: datetime) -> Iterator[Source]:
    moments: dict[int, Happened] = {}
    for probe, placings in readings.placings(keeping.book).items():
        for placed, first, last in _hung(placings, begin, end):
            values = readings.values_of(keeping.book, probe, first, last)
            found = tuple(_heat(probe, placed, values, moments, first.tzinfo))
            if found and placed.place is not None:
                yield Source(place=placed.place, zone=placed.zone, probe=probe, readings=found)


def _hung(
    placings: Sequence[ProbePlaced], begin: datetime, end: datetime
) -> Iterator[tuple[ProbePlaced, datetime, datetime]]:
    """Where a probe hung from *begin* to *end*, and when."""
    ends = [placed.happened.at for placed in placings[1:]]
    for placed, until in zip(placings, [*ends, end], strict=True):
        first, last = max(begin, placed.happened.at), min(end, until)
        if placed.place is not None and first < last:
            yield placed, first, last


def _heat(
    probe: str,
    placed: ProbePlaced,
    values: Iterable[tuple[int, int]],
    moments: dict[int, Happened],
    zone: tzinfo | None,
) -> Iterator[Heat]:
    """Readings as entries would be; probes of a room share their *moments*, made once."""
    place, told = placed.place or "", f"probe {probe}"
    for at, hundredths in values:
        happened = moments.get(at)
        if happened is None:
            happened = moments[at] = at_instant(datetime.fromtimestamp(at, zone))
        yield Heat(
            place=place,
            happened=happened,
            zone=placed.zone,
            temp_c=hundredths / 100,
            read_with=told,
        )


@lru_cache(maxsize=5_000)
def _names_of(written: str | None) -> tuple[str, ...]:
    place = place_of(written or "")
    if place is None:
        return (written,) if written else ()
    return (written or "", str(place), f"{place.rack}{place.row}", place.rack)


def _end_of(day: date, keeping: Keeping) -> datetime:
    return datetime.combine(day, time.max, keeping.now().tzinfo)
