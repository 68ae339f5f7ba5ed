"""Every row and room with its last readings against what is wanted there, and readings typed."""

import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from typing import Literal

from keeper.actions.heat_readings import LyingEggs, house_heat, living_at, lying_eggs
from keeper.actions.keeping import Keeping, Written, animals_on
from keeper.actions.noting import note
from keeper.husbandry.events import Heat, Setting, Zone
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import place_of, walking_key
from keeper.husbandry.profile import SpeciesProfile
from keeper.husbandry.reasons import Reason
from keeper.husbandry.when import at_instant
from keeper.language import tr
from keeper.reports.figures import as_typed, degrees, heat_unit
from keeper.reports.words import token_words
from keeper.reports.writing import in_use
from keeper.rules.heat import HeatVerdict
from keeper.store import reading, readings

SHOWN = timedelta(days=14)
TUB_ZONES = (Zone.HOT, Zone.COOL, Zone.NIGHT)
ROOM = "room"

LEAST_C, MOST_C = -20.0, 70.0
"""A reading beyond these is refused: common practice, no source."""

USUAL_C = (5.0, 45.0)
"""A reading outside these is asked for again: common practice, no source."""

_NUMBER = re.compile(r"\d{1,4}(?:[.,]\d{0,2})?")
Standing = Literal["never read", "cannot tell", "within", "noted", "today", "now"]


@dataclass(frozen=True, slots=True, kw_only=True)
class HeatCell:
    """The last reading of one zone at one place. letter: H above, C below, else none.

    low_c and high_c: what is wanted there, None where nothing is known to be. act_c: how cold
    and how hot the eggs of an incubator may be before one must act at once.
    """

    zone: Zone
    low_c: float | None
    high_c: float | None
    act_c: tuple[float, float] | None = None
    standing: Standing = "never read"
    letter: str = ""
    temp_c: float | None = None
    at: datetime | None = None
    read_with: str | None = None
    because: tuple[Reason, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class HeatLine:
    """One place with its zones, in the order of walking. animals: how many live there."""

    place: str
    animals: int
    cells: tuple[HeatCell, ...]
    profile: SpeciesProfile | None


@dataclass(frozen=True, slots=True, kw_only=True)
class HeatBoard:
    lines: tuple[HeatLine, ...]
    faults: tuple[Reason, ...]  # probes that cannot be believed
    fault_places: tuple[str, ...]


def heat_board(keeping: Keeping, on: date) -> HeatBoard:
    """Rows in which animals live, the room, and every place that was read in two weeks."""
    rows = [row for row in animals_on(keeping, on) if row.in_the_room]
    last = _last_readings(keeping, on)
    heat = house_heat(keeping, rows, lambda row: (), on)
    verdicts = {(v.place, v.zone): v for v in heat.verdicts}
    places = {*map(_row_of, rows), *(place for place, _ in last), ROOM} - {""}
    seen = _Seen(
        last=last,
        verdicts=verdicts,
        faults={(fault.place, fault.zone): fault.because for fault in heat.faults},
        eggs=lying_eggs(keeping, rows, on),
    )
    lines = (_line(keeping, place, rows, seen) for place in sorted(places, key=_walking))
    return HeatBoard(
        lines=tuple(lines),
        faults=tuple(fault.because[0] for fault in heat.faults),
        fault_places=tuple(fault.place for fault in heat.faults),
    )


def typed_celsius(text: str) -> float:
    """Degrees as typed, with a point or a comma.

    Raises:
        ValueError: no number, or beyond any room, with what would be right.
    """
    if not _NUMBER.fullmatch(text):
        raise ValueError(tr("{text!r} is no temperature; 31 or 31.2 is right.", text=text))
    temp_c = in_use().typed_degrees(float(text.replace(",", ".")))
    if not LEAST_C <= temp_c <= MOST_C and doubt(temp_c) is None:
        raise ValueError(_beyond(temp_c))
    return temp_c


def _beyond(temp_c: float) -> str:
    return tr(
        "{heat} is beyond any room; {least} to {most} is right.",
        heat=_told(temp_c),
        least=degrees(LEAST_C),
        most=degrees(MOST_C),
    )


def _told(temp_c: float) -> str:
    return f"{_degrees(temp_c)} {heat_unit()}"


def _degrees(temp_c: float) -> str:
    """As fine as it was typed: of Fahrenheit a hundredth would tell the rounding to Celsius."""
    return degrees(temp_c, 1 if in_use().fahrenheit else 2)


def doubt(temp_c: float) -> str | None:
    """What an unusual reading may have been meant to be; None where it is usual.

    >>> doubt(31.0) is None, doubt(312), doubt(86)
    (True, '312 °C is unusual; 31.2 °C?', '86 °C is unusual; 86 °F would be 30 °C?')
    """
    low, high = USUAL_C
    if low <= temp_c <= high:
        return None
    if in_use().fahrenheit:
        return tr("{heat} is unusual for a tub.", heat=_told(temp_c))
    read = as_typed(temp_c)
    if low <= temp_c / 10 <= high and temp_c >= 100:
        return tr("{read} °C is unusual; {meant} °C?", read=read, meant=as_typed(temp_c / 10))
    fahrenheit = round((temp_c - 32) / 1.8, 1)
    if low <= fahrenheit <= high:
        return tr(
            "{read} °C is unusual; {read} °F would be {meant} °C?",
            read=read,
            meant=as_typed(fahrenheit),
        )
    return tr("{heat} is unusual for a tub.", heat=f"{read} °C")


def write_heat(
    keeping: Keeping, place: str, zone: Zone, temp_c: float, read_with: str | None
) -> Written:
    """Write one reading typed by hand.

    Raises:
        ValueError: no degrees of any room.
    """
    if not LEAST_C <= temp_c <= MOST_C:
        raise ValueError(_beyond(temp_c))
    happened = at_instant(keeping.now())
    event = Heat(place=place, happened=happened, zone=zone, temp_c=temp_c, read_with=read_with)
    return note(
        keeping,
        "read heat",
        event,
        where=place,
        what=f"{token_words('Zone', zone.value)} {_told(temp_c)}",
    )


def _range_right() -> str:
    return f"{degrees(27)}-{degrees(29.5)}"


def set_incubator_limits(keeping: Keeping, text: str) -> Written:
    """Keep the lowest and highest degrees of the incubator, typed as ``27-29.5``.

    Raises:
        ValueError: not two degrees in order.
    """
    parts = [part for part in re.split(r"\s*(?:–|-|to|;)\s*", text.strip()) if part]
    if len(parts) != 2 or not all(_NUMBER.fullmatch(part) for part in parts):
        raise ValueError(
            tr("{text!r} is no range; {right} is right.", text=text, right=_range_right())
        )
    low, high = (in_use().typed_degrees(float(part.replace(",", "."))) for part in parts)
    told = tr("{low} to {high}", low=_degrees(low), high=_told(high))
    if not USUAL_C[0] <= low < high <= USUAL_C[1]:
        raise ValueError(
            tr(
                "{told} is no range of an incubator; {right} is right.",
                told=told,
                right=_range_right(),
            )
        )
    happened = at_instant(keeping.now())
    event = Setting(happened=happened, key="incubator limits", value=f"{low:g},{high:g}")
    return note(keeping, "set incubator limits", event, what=told)


def wanted(zone: Zone, profile: SpeciesProfile) -> tuple[float | None, float | None]:
    """The range that *profile* wants in a zone of a tub; None and None elsewhere."""
    heat = profile.heat
    ranges = {
        Zone.HOT: (heat.hot_low_c.value, heat.hot_high_c.value),
        Zone.COOL: (heat.cool_low_c.value, heat.cool_high_c.value),
        Zone.NIGHT: (heat.night_low_c.value, heat.night_high_c.value),
    }
    return ranges.get(zone, (None, None))


Last = Mapping[tuple[str, Zone], tuple[datetime, float, str | None]]


@dataclass(frozen=True, slots=True, kw_only=True)
class _Seen:
    """What was read and what it says. eggs: what those in an incubator bear.

    faults: why the probe of a place and zone is not believed.
    """

    last: Last
    verdicts: Mapping[tuple[str, Zone], HeatVerdict]
    faults: Mapping[tuple[str, Zone], tuple[Reason, ...]]
    eggs: LyingEggs


def _last_readings(keeping: Keeping, on: date) -> Last:
    """The newest reading of each place and zone in two weeks, typed or of a probe."""
    end = min(keeping.now(), datetime.combine(on, time.max, keeping.now().tzinfo))
    found = {
        (each.place, each.zone): (each.happened.at, each.temp_c, each.read_with)
        for each in sorted(
            reading.on_days(keeping.book, Heat, on - SHOWN, on), key=lambda each: each.happened.at
        )
        if each.happened.at <= end
    }
    for probe, events in readings.placings(keeping.book).items():
        placed = events[-1]
        told = readings.last_reading(keeping.book, probe, end)
        if placed.place is None or told is None or told[0] < placed.happened.at:
            continue
        before = found.get((placed.place, placed.zone))
        if end - told[0] <= SHOWN and (before is None or told[0] > before[0]):
            at = told[0].astimezone(end.tzinfo)
            found[placed.place, placed.zone] = (at, told[1], f"probe {probe}")
    return found


def _line(keeping: Keeping, place: str, rows: Sequence[AnimalNow], seen: _Seen) -> HeatLine:
    living = living_at(place, rows)
    profile = keeping.profile(living[0]) if living else None
    read = [zone for name, zone in seen.last if name == place]
    zones: Iterable[Zone] = TUB_ZONES if living else dict.fromkeys(read or [Zone.ROOM])
    cells = (_cell(place, zone, profile, seen) for zone in zones)
    return HeatLine(place=place, animals=len(living), cells=tuple(cells), profile=profile)


def _cell(place: str, zone: Zone, profile: SpeciesProfile | None, seen: _Seen) -> HeatCell:
    low_c, high_c = wanted(zone, profile) if profile else (None, None)
    act_c = None
    if zone is Zone.INCUBATOR and (eggs := seen.eggs.of(place)) is not None:
        low_c, high_c = eggs.low_c, eggs.high_c
        act_c = (eggs.cold_c, eggs.hot_c)
    told = seen.last.get((place, zone))
    if told is None:
        return HeatCell(zone=zone, low_c=low_c, high_c=high_c, act_c=act_c)
    at, temp_c, read_with = told
    verdict = seen.verdicts.get((place, zone))
    standing, letter = _standing(verdict)
    return HeatCell(
        zone=zone,
        low_c=low_c,
        high_c=high_c,
        act_c=act_c,
        standing=standing,
        letter=letter,
        temp_c=temp_c,
        at=at,
        read_with=read_with,
        because=verdict.because if verdict else seen.faults.get((place, zone), ()),
    )


def _standing(verdict: HeatVerdict | None) -> tuple[Standing, str]:
    """Without a verdict (two days gone by, or a probe not believed) nothing can be told."""
    if verdict is None or verdict.state == "cannot tell":
        return "cannot tell", "?"
    if verdict.state == "within limits":
        return "within", ""
    return verdict.urgency, "H" if verdict.state == "too hot" else "C"


def _row_of(row: AnimalNow) -> str:
    place = place_of(row.place or "")
    return f"{place.rack}{place.row}" if place else (row.place or "")


def _walking(name: str) -> tuple[int, str, int, tuple[int, str, int, int, str]]:
    """Rows and tubs in the order of walking, then other places by name."""
    row = re.fullmatch(r"([^\W\d_]{1,3})(\d{1,3})?", name)
    place = place_of(name)
    if row and (row[2] or len(row[1]) == 1):
        return (0, row[1], int(row[2] or 0), walking_key(None))
    if place:
        return (0, place.rack, place.row, walking_key(name))
    return (1, "", 0, walking_key(name))
