"""Too hot, too cold, or cold after feeding: what temperatures say of a place.

A reading typed by hand is one point and is said to be one; only readings close together
carry a duration. Where heaters are at fault the keeper switches them off by hand first:
the program measures nothing and controls nothing.
"""

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from typing import Literal, NamedTuple

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import Heat, Zone
from keeper.husbandry.profile import SpeciesProfile, practice
from keeper.husbandry.reasons import Reason, because
from keeper.rules.heat_limits import EggLimits, Limit, Urgency, inside_c, limits_of
from keeper.rules.sensors import FAILURE_VALUES_C, hours_between, is_series, minutes_between

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("too hot", ("zone", "temp_c", "limit_c")),
    ("too cold", ("zone", "temp_c", "limit_c")),
    ("was too hot", ("zone", "temp_c", "limit_c", "minutes")),
    ("was too cold", ("zone", "temp_c", "limit_c", "minutes")),
    ("within limits", ("zone", "temp_c", "low_c", "high_c")),
    ("read once", ("at", "read_with")),
    ("for so long", ("minutes", "since")),
    ("for so many hours", ("hours", "since")),
    ("not yet for so long", ("minutes", "most_minutes")),
    ("last reading is old", ("hours", "most_hours")),
    ("no limits for the zone", ("zone",)),
    ("check the heater by hand", ()),
    ("widest limits of the eggs", ("kinds",)),
    ("cold after feeding", ("temp_c", "limit_c", "animals", "hours_most")),
)
"""Every reason of this module with the figures it carries."""


RELEASE_MINUTES = practice(15)
OLD_HOURS = practice(24)
_TOLD_IN_HOURS = 120
"""From two hours of minutes on a stretch is told in hours."""

FED_HOURS = practice(48)
COLD_FED_HOURS = practice(6)
State = Literal["within limits", "too hot", "too cold", "cannot tell"]


class _Run(NamedTuple):
    """The present stretch beyond a limit: its readings, first to last."""

    readings: tuple[Heat, ...]
    series: bool

    @property
    def minutes(self) -> float | None:
        """Minutes known; None when the readings are single points."""
        if not self.series or len(self.readings) < 2:
            return None
        return minutes_between(self.readings[0].happened.at, self.readings[-1].happened.at)


@dataclass(frozen=True, slots=True, kw_only=True)
class HeatVerdict:
    """What the latest readings of one zone at one place say."""

    place: str
    zone: Zone
    state: State
    urgency: Urgency
    temp_c: float
    at: datetime
    since_at: datetime | None  # begin of the stretch beyond the limit
    minutes: float | None  # None: single points, no duration known
    read_once: bool
    because: tuple[Reason, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class ColdAfterFeeding:
    """Animals fed within two days at a place whose hot end is too cold to digest."""

    place: str
    animals: tuple[AnimalId, ...]
    since_at: datetime
    hours: float | None  # None: single points
    read_once: bool
    because: tuple[Reason, ...]


def heat_verdicts(
    readings: Iterable[Heat],
    profile: SpeciesProfile,
    now_at: datetime,
    *,
    eggs: EggLimits | None = None,
) -> tuple[HeatVerdict, ...]:
    """One verdict for each place and zone that was read, in order of place and zone.

    eggs: what the eggs in an incubator bear; without it that zone has no limits here.
    """
    verdicts = (
        _verdict(zone, group, limits_of(zone, profile, eggs), now_at)
        for (_, zone), group in sorted(_by_place(readings, now_at).items())
    )
    return tuple(_with_kinds(verdict, eggs) for verdict in verdicts)


def cold_after_feeding(
    readings: Iterable[Heat],
    fed: Sequence[tuple[AnimalId, datetime]],
    profile: SpeciesProfile,
    now_at: datetime,
) -> ColdAfterFeeding | None:
    """Whether the hot end of one place is too cold for those fed there in the last two days.

    Readings of other zones are left aside. Six hours are needed where hours are known; a
    reading typed once stands for itself and says so.
    """
    hot = [r for r in readings if r.zone is Zone.HOT and r.happened.at <= now_at]
    hot.sort(key=lambda r: r.happened.at)
    limit_c = profile.heat.digest_hot_low_c.value
    recent = [(animal, at) for animal, at in fed if hours_between(at, now_at) <= FED_HOURS.value]
    if not hot or not recent:
        return None
    first_fed = min(at for _, at in recent)
    since_fed = [r for r in hot if r.happened.at >= first_fed]
    run = _present_run(since_fed, Limit(False, limit_c, 0, "today"), is_series(since_fed))
    if run is None or _too_short(run, 60 * COLD_FED_HOURS.value):
        return None
    last = run.readings[-1]
    animals = tuple(sorted({animal for animal, at in recent if at <= last.happened.at}))
    why = because(
        "cold after feeding",
        temp_c=last.temp_c,
        limit_c=limit_c,
        animals=len(animals),
        hours_most=FED_HOURS.value,
    )
    return ColdAfterFeeding(
        place=last.place,
        animals=animals,
        since_at=run.readings[0].happened.at,
        hours=None if run.minutes is None else run.minutes / 60,
        read_once=len(run.readings) == 1,
        because=(why, *_how_long(run)),
    )


def _with_kinds(verdict: HeatVerdict, eggs: EggLimits | None) -> HeatVerdict:
    """Limits of an incubator that are the widest of several are said to be so."""
    if verdict.zone is not Zone.INCUBATOR or eggs is None or eggs.kinds < 2:
        return verdict
    why = because("widest limits of the eggs", kinds=eggs.kinds)
    return replace(verdict, because=(*verdict.because, why))


def _by_place(readings: Iterable[Heat], now_at: datetime) -> dict[tuple[str, Zone], list[Heat]]:
    groups: dict[tuple[str, Zone], list[Heat]] = defaultdict(list)
    for reading in sorted(readings, key=lambda r: r.happened.at):
        if reading.happened.at <= now_at and reading.temp_c not in FAILURE_VALUES_C:
            groups[reading.place, reading.zone].append(reading)
    return groups


def _verdict(
    zone: Zone, readings: list[Heat], limits: tuple[Limit, ...], now_at: datetime
) -> HeatVerdict:
    last = readings[-1]
    old_hours = hours_between(last.happened.at, now_at)
    if not limits:
        why = because("no limits for the zone", zone=zone.value)
        return _made(last, "cannot tell", "noted", None, (why,))
    if old_hours > OLD_HOURS.value:
        why = because("last reading is old", hours=round(old_hours), most_hours=OLD_HOURS.value)
        return _made(last, "cannot tell", "noted", None, (why,))
    series = is_series(readings)
    reached = _reached(readings, limits)
    found = [(limit, run) for limit in reached if (run := _present_run(readings, limit, series))]
    lasting = next((pair for pair in found if not _too_short(pair[1], pair[0].minutes)), None)
    if lasting is not None:
        return _beyond(last, *lasting, urgency=lasting[0].urgency)
    if found:
        return _beyond(last, *found[0], urgency="noted")
    return _within(last, zone, limits, series)


def _beyond(last: Heat, limit: Limit, run: _Run, urgency: Urgency) -> HeatVerdict:
    name: State = "too hot" if limit.hot else "too cold"
    reasons = [_beyond_why(last, limit), *_how_long(run)]
    if _too_short(run, limit.minutes):
        minutes = round(run.minutes or 0)
        reasons.append(because("not yet for so long", minutes=minutes, most_minutes=limit.minutes))
    if limit.urgency == "now":
        reasons.append(because("check the heater by hand"))
    return _made(last, name, urgency, run, tuple(reasons))


def _beyond_why(last: Heat, limit: Limit) -> Reason:
    """Beyond the limit now, told to a tenth, or back inside it but not yet for long enough."""
    figures = {"zone": last.zone.value, "temp_c": last.temp_c, "limit_c": limit.limit_c}
    if inside_c(round(last.temp_c, 1), limit) < 0:
        return because("too hot" if limit.hot else "too cold", **figures)
    why = "was too hot" if limit.hot else "was too cold"
    return because(why, **figures, minutes=RELEASE_MINUTES.value)


def _within(last: Heat, zone: Zone, limits: tuple[Limit, ...], series: bool) -> HeatVerdict:
    lows = [limit.limit_c for limit in limits if not limit.hot]
    highs = [limit.limit_c for limit in limits if limit.hot]
    why = because(
        "within limits",
        zone=zone.value,
        temp_c=last.temp_c,
        low_c=max(lows, default=None),
        high_c=min(highs, default=None),
    )
    once = because("read once", at=_clock_text(last.happened.at), read_with=last.read_with)
    return _made(last, "within limits", "noted", None, (why,) if series else (why, once))


def _made(
    last: Heat, state: State, urgency: Urgency, run: _Run | None, reasons: tuple[Reason, ...]
) -> HeatVerdict:
    return HeatVerdict(
        place=last.place,
        zone=last.zone,
        state=state,
        urgency=urgency,
        temp_c=last.temp_c,
        at=last.happened.at,
        since_at=run.readings[0].happened.at if run else None,
        minutes=run.minutes if run else None,
        read_once=run is not None and run.minutes is None,
        because=reasons,
    )


def _reached(readings: Sequence[Heat], limits: Sequence[Limit]) -> list[Limit]:
    """Those of *limits* that any reading is beyond."""
    temps_c = [reading.temp_c for reading in readings]
    low_c, high_c = min(temps_c), max(temps_c)
    return [limit for limit in limits if inside_c(high_c if limit.hot else low_c, limit) < 0]


def _present_run(readings: Sequence[Heat], limit: Limit, series: bool) -> _Run | None:
    """The stretch beyond a limit that still stands at the last reading.

    It ends once the readings have stayed well inside the limit (0.7 °C as a rule) for fifteen
    minutes; a single typed point so far inside ends it at once.
    """
    run: list[Heat] = []
    calm_at: datetime | None = None
    for reading in readings:
        inside = inside_c(reading.temp_c, limit)
        if inside < 0:
            run.append(reading)
            calm_at = None
        elif run and inside >= limit.release_c:
            calm_at = calm_at or reading.happened.at
            if not series or minutes_between(calm_at, reading.happened.at) >= RELEASE_MINUTES.value:
                run, calm_at = [], None
    return _Run(tuple(run), series) if run else None


def _too_short(run: _Run, minutes: float) -> bool:
    """Whether a known duration is still below what counts; points carry none and count."""
    if not run.series:
        return False
    return (run.minutes or 0.0) < minutes


def _how_long(run: _Run) -> tuple[Reason, ...]:
    first, last = run.readings[0], run.readings[-1]
    if run.minutes is None:
        at = _clock_text(last.happened.at)
        return (because("read once", at=at, read_with=last.read_with),)
    since = _clock_text(first.happened.at)
    if run.minutes >= _TOLD_IN_HOURS:
        return (because("for so many hours", hours=round(run.minutes / 60), since=since),)
    return (because("for so long", minutes=round(run.minutes), since=since),)


def _clock_text(at: datetime) -> str:
    return at.isoformat(timespec="minutes")
