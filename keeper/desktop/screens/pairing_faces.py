"""The pairing calendar put into faces: which females stand on it, in which order, with what."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from datetime import date
from typing import TYPE_CHECKING

from keeper.actions.pairing_calendar import (
    CalendarRow,
    PairingCalendar,
    Season,
    stays_shown,
)
from keeper.actions.pairing_told import told_of
from keeper.desktop.screens.female_words import gate_marks
from keeper.desktop.screens.pairing_words import gates_told, next_words
from keeper.desktop.widgets.pairing_frame import WeekFace
from keeper.desktop.widgets.pairing_marks import GRAVID, PRE_LAY, Bar, Kind
from keeper.desktop.widgets.pairing_row import CalendarFace, Ground
from keeper.husbandry.place import walking_key

if TYPE_CHECKING:
    from keeper.actions.forecasting import WeightForecast

Forecasts = Mapping[int, "WeightForecast"]
Shown = tuple[CalendarRow, CalendarFace]

_SIGNS = {"gravid": GRAVID, "pre-lay shed": PRE_LAY}
_EGGS_KNOWN, _EGGS_OPEN, _RESTING, _READY, _REST = range(5)


def shown_rows(calendar: PairingCalendar, forecasts: Forecasts) -> list[Shown]:
    """Females of whom anything lies within the calendar, those whose eggs end first, first.

    After them those whose eggs have no latest day, that rest, that are ready, and the rest, each
    in walking order.
    """
    found = ((row, shown_face(row, forecasts.get(row.animal), calendar)) for row in calendar.rows)
    shown = [(row, face) for row, face in found if face is not None]
    return sorted(shown, key=lambda each: order_of(each[0], calendar.on))


def shown_face(
    row: CalendarRow, forecast: WeightForecast | None, calendar: PairingCalendar
) -> CalendarFace | None:
    """Her row, None where nothing of hers lies within the calendar."""
    face = calendar_face(row, forecast, calendar)
    return face if _is_shown(row, face, calendar) else None


def calendar_face(
    row: CalendarRow, forecast: WeightForecast | None, calendar: PairingCalendar
) -> CalendarFace:
    """Her row as of the day of *calendar*."""
    on, animal = calendar.on, row.female.animal
    marks = gate_marks(row.female, forecast, on)
    aside = next_words(row, forecast, on)
    told = " ".join(each.words for each in told_of(row, calendar))
    gates = gates_told(row, forecast, on)
    return CalendarFace(
        place=animal.place or "",
        name=animal.called,
        aside=aside,
        bars=tuple(_bars(row, calendar)),
        rings=tuple(
            (met.exposure.first, met.exposure.how == "lock")
            for met in row.met
            if met.exposure.how != "tub"
        ),
        males=tuple((met.exposure.first, met.exposure.last, met.male) for met in row.met),
        signs=tuple(
            (window.seen_on, _SIGNS[window.sign])
            for season in row.seasons
            for window in season.windows
            if window.sign in _SIGNS
        ),
        laid=tuple(clutch.laid_on for clutch in row.clutches),
        out=tuple(clutch.hatched_on for clutch in row.clutches if clutch.hatched_on),
        window=marks.window,
        from_on=marks.from_on,
        said=f"{animal.place_and_name}: {aside}. {told} {gates.head}: {gates.words}",
    )


def ground_of(calendar: PairingCalendar) -> Ground:
    """What lies beneath all rows."""
    away = tuple((absence.first, absence.last) for absence in calendar.absences)
    return Ground(today=calendar.on, away=away)


def week_faces(calendar: PairingCalendar) -> tuple[WeekFace, ...]:
    return tuple(
        WeekFace(monday=week.monday, sure=week.sure, may=week.may) for week in calendar.weeks
    )


def _bars(row: CalendarRow, calendar: PairingCalendar) -> Iterator[Bar]:
    on = calendar.on
    for met in row.met:
        if met.exposure.how == "tub":
            yield Bar(kind=Kind.TOGETHER, first=met.exposure.first, last=met.exposure.last)
    for first, last in row.cooled:
        lasting = last is None
        yield Bar(kind=Kind.COOLED, first=first, last=last or on, lasting=lasting)
    for season in row.seasons:
        yield from _windows(season)
    for clutch in row.clutches:
        for first, last, _ in stays_shown(clutch, on):
            yield Bar(kind=Kind.LIES, first=first, last=last)
        if clutch.window is not None and clutch.is_open:
            last = max(clutch.window.last, on)
            yield Bar(kind=Kind.MAY_PIP, first=clutch.window.first, last=last)
    if row.recovering and row.clutches:
        first = row.clutches[-1].laid_on
        yield Bar(kind=Kind.RECOVERING, first=first, last=on, lasting=True)


def _windows(season: Season) -> Iterator[Bar]:
    """The window that counts, and round it those that it replaced; eggs end them all."""
    newest = len(season.windows) - 1
    for number, window in enumerate(season.windows):
        last, rank = window.last, newest - number
        if season.laid_on is not None:
            last = min(last, season.laid_on) if last is not None else season.laid_on
            rank += 1
        if last is None or window.first <= last:
            yield Bar(kind=Kind.MAY_LAY, first=window.first, last=last, rank=rank)


def _is_shown(row: CalendarRow, face: CalendarFace, calendar: PairingCalendar) -> bool:
    """Whether a male, eggs, a rest or a gate of hers lies within the calendar."""
    first, last = calendar.first, calendar.last
    days: Sequence[date | None] = (
        *(on for on, _ in (*face.rings, *face.signs)),
        *face.laid,
        *face.out,
        face.from_on,
    )
    if row.female.ready == "met" or any(day and first <= day <= last for day in days):
        return True
    spans = [(bar.first, bar.last) for bar in face.bars]
    if face.window is not None:
        spans.append((face.window.low, face.window.high))
    return any(begin <= last and (end is None or end >= first) for begin, end in spans)


def order_of(row: CalendarRow, on: date) -> tuple[int, date, tuple[int, str, int, int, str]]:
    """Where her row stands among the others; no forecast moves it."""
    place = walking_key(row.female.animal.place)
    ends = [each.window.last for each in row.clutches if each.window and each.is_open]
    expected = row.season.expected if row.season else None
    if expected is not None and expected.last is not None:
        ends.append(expected.last)
    if ends:
        return _EGGS_KNOWN, min(ends), place
    if expected is not None:
        return _EGGS_OPEN, expected.first, place
    if row.recovering or any(last is None or last >= on for _, last in row.cooled):
        return _RESTING, on, place
    return (_READY if row.female.ready == "met" else _REST), on, place
