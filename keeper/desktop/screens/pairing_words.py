"""The pairing calendar in words: what comes next, the chosen week read out, weeks and figures."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date, timedelta
from typing import TYPE_CHECKING

from keeper.actions.pairing_calendar import (
    Absence,
    CalendarRow,
    LayingWindow,
    PairingCalendar,
)
from keeper.actions.pairing_told import Told, told_of
from keeper.desktop.screens.clutch_words import step_words
from keeper.desktop.screens.female_words import gate_marks
from keeper.desktop.widgets.calendar_strip import Marks
from keeper.desktop.widgets.clutch_panel import Paragraph
from keeper.husbandry.animal import Sex
from keeper.language import tr
from keeper.reports.figures import counted, day
from keeper.reports.words import because_text

if TYPE_CHECKING:
    from keeper.actions.forecasting import WeightForecast

_DAY = timedelta(days=1)
_weeks = counted("week", "weeks")


def next_words(row: CalendarRow, forecast: WeightForecast | None, on: date) -> str:
    """What comes next of her, short enough for her row."""
    waiting = [each for each in row.clutches if each.window is not None and each.is_open]
    if waiting:
        return step_words(waiting[0], on)
    if row.season is not None and row.season.expected is not None:
        return _eggs(row.season.expected, on)
    cooled = [(first, last) for first, last in row.cooled if last is None or last >= on]
    if cooled:
        first, last = cooled[0]
        if last is not None:
            return tr("cooled rest until {day}", day=day(last, on=on))
        return tr("cooled rest since {day}", day=day(first, on=on))
    if row.recovering:
        return tr("recovering from eggs")
    return _gate_words(row, forecast, on)


def gates_told(row: CalendarRow, forecast: WeightForecast | None, on: date) -> Paragraph:
    """Her gates: the day they are expected, what is missing, and why."""
    marks = gate_marks(row.female, forecast, on)
    shut = [gate.missing for gate in row.female.gates if gate.state != "met"]
    if not shut:
        met = tr("Every gate is met: leave to consider a pairing, no advice to make one.")
        return Paragraph(head=tr("Gates"), words=met)
    days = [told.words for told in _gate_days(marks, on)]
    told = " ".join(days) or tr("{day}.", day=_begun(marks.told))
    missing = tr("{missing}.", missing=_begun(marks.beneath))
    why = because_text(shut, Sex.FEMALE)
    return Paragraph(head=tr("Gates"), words=f"{told} {missing} {why}")


def _begun(words: str) -> str:
    """As a sentence begins."""
    return words[:1].upper() + words[1:]


def _gate_days(marks: Marks, on: date) -> Iterator[Told]:
    """The days on which her weight and her age are expected."""
    head = tr("Gates")
    window, old = marks.window, marks.from_on
    if window is not None and window.on is not None:
        middle, low = day(window.on, on=on), day(window.low, on=on)
        words = tr(
            "Heavy enough about {day}, 8 in 10 from {low} on, no latest day.", day=middle, low=low
        )
        if window.high is not None:
            words = tr(
                "Heavy enough about {day}, 8 in 10 from {low} to {high}.",
                day=middle,
                low=low,
                high=day(window.high, on=on),
            )
        yield Told(head=head, words=words, first=window.low, last=window.high)
    if old is not None:
        yield Told(
            head=head, words=tr("Old enough on {day}.", day=day(old, on=on)), first=old, last=old
        )


def read_out(
    row: CalendarRow,
    forecast: WeightForecast | None,
    calendar: PairingCalendar,
    monday: date,
) -> tuple[Paragraph, ...]:
    """The week of *monday* of one female: who and when, what falls into it, and her gates."""
    last = monday + 6 * _DAY
    animal = row.female.animal
    here = [told for told in told_of(row, calendar) if told.meets(monday, last)]
    here.sort(key=lambda told: told.replaced)
    parts = [Paragraph(head=told.head, words=told.words) for told in _as_one(here)]
    gates = _gate_days(gate_marks(row.female, forecast, calendar.on), calendar.on)
    if not parts and not any(told.meets(monday, last) for told in gates):
        nothing = tr("Nothing is written of it, and nothing is expected in it.")
        parts = [Paragraph(head=tr("Chosen week"), words=nothing)]
    away = [each for each in calendar.absences if each.first <= last and each.last >= monday]
    parts += [Paragraph(head=tr("Absence"), words=away_words(each)) for each in away]
    parts.append(Paragraph(head=tr("Incubator"), words=incubator_words(calendar, monday)))
    parts.append(gates_told(row, forecast, calendar.on))
    comes = tr(
        "{week}. Next: {what}.",
        week=week_words(monday, calendar.on),
        what=next_words(row, forecast, calendar.on),
    )
    return (Paragraph(head=animal.place_and_name, words=comes), *parts)


def week_words(monday: date, on: date) -> str:
    """Its first day, and how far it is from this week."""
    apart = (monday - (on - timedelta(days=on.weekday()))).days // 7
    told = day(monday, on=on)
    if apart == 0:
        return tr("Week of {day}, this week", day=told)
    if apart > 0:
        return tr("Week of {day}, in {weeks}", day=told, weeks=_weeks(apart))
    return tr("Week of {day}, {weeks} ago", day=told, weeks=_weeks(-apart))


def in_view_words(calendar: PairingCalendar, first: date, last: date, chosen: date) -> str:
    """Which weeks are in view, the one that is chosen, and the absences that lie over them."""
    told = tr(
        "Weeks of {first} to {last} are in view. {week}.",
        first=day(first, on=calendar.on),
        last=day(last, on=calendar.on),
        week=week_words(chosen, calendar.on),
    )
    return " ".join((told, *(away_words(each) for each in calendar.absences)))


def away_words(absence: Absence) -> str:
    first, last = day(absence.first, on=absence.last), day(absence.last)
    if absence.who:
        return tr(
            "The keeper is away from {first} to {last}, covered by {who}.",
            first=first,
            last=last,
            who=absence.who,
        )
    return tr(
        "The keeper is away from {first} to {last}; nobody is named who covers.",
        first=first,
        last=last,
    )


def incubator_words(calendar: PairingCalendar, monday: date) -> str:
    """Clutches in it in one week, and those of which it is not written where they lie."""
    week = next(each for each in calendar.weeks if each.monday == monday)
    told = tr(
        "Clutches in the incubator: {sure} for sure, {may} more may be.",
        sure=week.sure,
        may=week.may,
    )
    if not calendar.unplaced:
        return told
    names = ", ".join(calendar.unplaced)
    return f"{told} {tr('Where these lie is not written: {clutches}.', clutches=names)}"


def weeks_told(calendar: PairingCalendar) -> str:
    """The figures of every week in which eggs lie or may lie."""
    told = [
        tr(
            "{day}: {sure} and {may}",
            day=day(week.monday, on=calendar.on),
            sure=week.sure,
            may=week.may,
        )
        for week in calendar.weeks
        if week.sure or week.may
    ]
    if not told:
        return tr("No clutch lies or is expected in the incubator.")
    weeks = ", ".join(told)
    return tr(
        "Clutches in the incubator by week, for sure and further ones that may be: {weeks}.",
        weeks=weeks,
    )


def _as_one(told: Sequence[Told]) -> Iterator[Told]:
    """What stands under one heading, together; the order is that of the headings' first."""
    heads: dict[str, list[Told]] = {}
    for each in told:
        heads.setdefault(each.head, []).append(each)
    for head, each_of in heads.items():
        words = " ".join(dict.fromkeys(each.words for each in each_of))
        yield Told(head=head, words=words, first=each_of[0].first, last=each_of[-1].last)


def _eggs(window: LayingWindow, on: date) -> str:
    """The window that counts, in a few words."""
    if window.last is not None:
        last = day(window.last, on=on)
        if window.last < on:
            return tr("no eggs by {day}: reptile vet", day=last)
        return tr("eggs by {day}", day=last)
    if window.sign == "meeting":
        return tr("eggs from {day} on, if any", day=day(window.first, on=on))
    return tr("eggs to come, latest day not known")


def _gate_words(row: CalendarRow, forecast: WeightForecast | None, on: date) -> str:
    """The day that her weight is expected, and that of her age where it comes after it."""
    marks = gate_marks(row.female, forecast, on)
    if marks.window is None or marks.window.on is None:
        return marks.told
    heavy = day(marks.window.on, on=on)
    if marks.from_on is None:
        return tr("heavy enough about {day}", day=heavy)
    old = day(marks.from_on, on=on)
    return tr("old enough on {day}, heavy enough about {heavy}", day=old, heavy=heavy)
