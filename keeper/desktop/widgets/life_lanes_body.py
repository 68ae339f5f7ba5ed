"""The lanes of skin and breeding: shed cycles with the window of the next, gates and clutches."""

from __future__ import annotations

from datetime import date, timedelta

from PySide6.QtCore import QPointF, QRectF, Qt

from keeper.actions.entry_words import clutch_words
from keeper.actions.life_lanes import ShedCycle
from keeper.desktop.widgets.lettering import RIGHT
from keeper.desktop.widgets.life_canvas import Canvas, Free
from keeper.desktop.widgets.patterns import FINE, Pattern, falling_lines, paint_pattern
from keeper.husbandry.events import Clutch, ShedStage
from keeper.language import tr, tr_table
from keeper.reports.figures import counted, day, days
from keeper.reports.words import word

_FILLS = {
    ShedStage.DULL: Pattern.DOTS,
    ShedStage.OPAQUE: Pattern.SOLID,
    ShedStage.CLEARED: Pattern.PLAIN,
}
_EGGS = counted("egg", "eggs")
_LATE = tr_table(
    {
        "opaque too long": "opaque too long",
        "cleared too long": "cleared too long",
        "overdue": "overdue",
    }
)


def paint_shed(canvas: Canvas) -> None:
    """Bars from dull to shed, a tall tick where she shed, dashes where the next is expected."""
    lane = canvas.layout.shed
    canvas.lane(lane, tr("shed"))
    free = Free(lane.left(), lane.right())
    for cycle in canvas.page.lanes.sheds:
        last = cycle.shed or canvas.page.today
        if canvas.axis.shows(cycle.first, last):
            _paint_cycle(canvas, lane, cycle, free)
    if not canvas.page.lanes.sheds:
        canvas.words(
            lane.left() + canvas.look.u(3, 2),
            canvas.middle(lane),
            tr("no sign in the book"),
            ink="ink3",
        )
    _paint_expected(canvas, lane, free)
    _paint_key(canvas, lane, free)


def paint_breeding(canvas: Canvas, weight_on: date | None) -> None:
    """The age gate as a bracket with what comes before it hatched at rest; clutches as ticks,
    pairings as rings that are filled where a lock was seen.

    weight_on: the day a forecast has her at breeding weight.
    """
    lane, opens = canvas.layout.breeding, canvas.page.gate_age_on
    canvas.lane(lane, tr("breeding"))
    free = Free(lane.left(), lane.right())
    _paint_pairings(canvas, lane, free)
    if opens is None:
        words = tr("no gate without an age")
        if canvas.page.gate is None:
            words = tr("no gate without a sex")
        canvas.words(lane.left() + canvas.look.u(3, 2), canvas.middle(lane), words, ink="ink3")
        return
    laid = [c for c in canvas.page.life.clutches if canvas.axis.shows(c.happened.day)]
    for clutch in laid:
        x = canvas.axis.x(clutch.happened.day)
        free.take(x - canvas.look.u(1), x + canvas.look.u(0.6))
    _paint_gate(canvas, lane, opens)
    _name_gate(canvas, lane, _gate_words(canvas, opens, weight_on), canvas.axis.x(opens), free)
    for clutch in reversed(laid):
        _paint_clutch(canvas, lane, clutch, free)


def _paint_cycle(canvas: Canvas, lane: QRectF, cycle: ShedCycle, free: Free) -> None:
    axis, high = canvas.axis, 0.46 * lane.height()
    stages = [(s, at) for s in _FILLS if (at := getattr(cycle, s.value)) is not None]
    ends = [at for _, at in stages[1:]] + [cycle.shed or canvas.page.today]
    for (stage, since), until in zip(stages, ends, strict=False):  # a shed alone has no stage
        left, right = max(axis.left, axis.x(since)), min(axis.right, axis.x(until))
        if right - left >= 0.8:
            _paint_bar(canvas, QRectF(left, lane.bottom() - high, right - left, high), stage)
            free.take(left, right)
    if cycle.shed is not None and axis.shows(cycle.shed):
        x = axis.x(cycle.shed)
        canvas.line("ink", 2.0, x, lane.bottom(), x, lane.top() + 0.16 * lane.height())
        free.take(x - 2, x + 2)


def _paint_bar(canvas: Canvas, rect: QRectF, stage: ShedStage) -> None:
    """Dots dull, solid opaque, outline cleared."""
    painter, look = canvas.painter, canvas.look
    painter.fillRect(rect, look.colour("sheet"))
    ink = "fill3" if stage is ShedStage.OPAQUE else "ink2"
    paint_pattern(painter, rect, _FILLS[stage], look.colour(ink), FINE)
    painter.setPen(canvas.pen("ink2", 1.0))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(rect)


def _paint_expected(canvas: Canvas, lane: QRectF, free: Free) -> None:
    """The window of the next shed, or how late it is."""
    clock, axis, look = canvas.page.clock, canvas.axis, canvas.look
    left = canvas.today_x + look.u(2, 1.5)
    words = ""
    if clock.next_low is not None and clock.next_high is not None and clock.next_mid is not None:
        if not axis.shows(clock.next_low, clock.next_high):
            return
        high = 0.46 * lane.height()
        x1, x2 = max(axis.left, axis.x(clock.next_low)), min(axis.right, axis.x(clock.next_high))
        canvas.painter.setPen(canvas.pen("ink2", 1.1, Qt.PenStyle.CustomDashLine))
        canvas.painter.drawRect(QRectF(x1, lane.bottom() - high, max(4.0, x2 - x1), high))
        free.take(x1, x2)
        left = x2 + look.u(2, 1.5)
        middle = clock.next_mid
        told = day(middle, on=canvas.page.today)
        words = tr("next about {day}", day=told) if not clock.overdue_days else ""
    if clock.overdue_days:
        words = late_words(clock.verdict, clock.overdue_days)
    if words and free.claim(left, left + canvas.wide(words)):
        canvas.words(left, canvas.middle(lane), words)


def late_words(verdict: str, late_days: int) -> str:
    """How late a shed is, in short."""
    return tr("{verdict}, {days}\u00a0d past", verdict=_LATE.get(verdict, verdict), days=late_days)


def _paint_key(canvas: Canvas, lane: QRectF, free: Free) -> None:
    stages, look = tuple(ShedStage), canvas.look
    mark, gap = look.u(4.6, 3.6), look.u(4, 2.6)
    wide = sum(mark + canvas.wide(word(stage)) + gap for stage in stages) - gap
    x = lane.right() - wide
    if x < canvas.today_x or not free.claim(x - gap, lane.right()):
        return
    high, base = 0.4 * lane.height(), canvas.middle(lane)
    for stage in stages:
        if stage in _FILLS:
            rect = QRectF(x, lane.center().y() - high / 2, look.u(3.2, 2.6), high)
            _paint_bar(canvas, rect, stage)
        else:
            middle = x + look.u(1.6, 1.3)
            canvas.line("ink", 2.0, middle, lane.bottom(), middle, lane.top() + look.u(1))
        canvas.words(x + mark, base, word(stage))
        x += mark + canvas.wide(word(stage)) + gap


def _paint_gate(canvas: Canvas, lane: QRectF, opens: date) -> None:
    axis, look = canvas.axis, canvas.look
    right = min(axis.right, axis.x(opens))
    if right > axis.left:
        before = QRectF(lane.left(), lane.top() + 2, right - lane.left(), lane.height() - 3)
        canvas.painter.save()
        canvas.painter.setClipRect(before)
        canvas.painter.setPen(canvas.pen("hair", 1.1))
        canvas.painter.drawLines(list(falling_lines(before, look.u(2))))
        canvas.painter.restore()
    if axis.shows(opens):
        x, arm = axis.x(opens), look.u(1.4, 1.1)
        top, bottom = lane.top() + look.u(0.8, 0.4), lane.bottom() - 1
        canvas.line("ink", 2.0, x, top, x, bottom)
        canvas.line("ink", 2.0, x - arm, top, x, top)


def _name_gate(
    canvas: Canvas, lane: QRectF, words: tuple[str, ...], opens_x: float, free: Free
) -> None:
    """The longest of *words* that has room before the bracket, or else after it."""
    gap, base = canvas.look.u(2.2, 1.7), canvas.middle(lane)
    right = min(opens_x, canvas.axis.right) - gap
    left = max(opens_x, canvas.axis.left) + gap
    for told in words:
        wide = canvas.wide(told)
        if free.claim(right - wide, right):
            canvas.words(right, base, told, align=RIGHT, paper="ground")
            return
        if free.claim(left, left + wide):
            canvas.words(left, base, told, paper="ground")
            return


def _gate_words(canvas: Canvas, opens: date, weight_on: date | None) -> tuple[str, ...]:
    """The age gate, and first whether the weight comes before it."""
    gate = canvas.page.gate
    told = days(gate.age_days.value) if gate else ""
    words = tr("{age} on {day}", age=told, day=day(opens))
    if weight_on is None or opens <= canvas.page.today:
        return (words, day(opens))
    if abs(weight_on - opens) <= timedelta(days=3):
        longer = tr("{gate}: age gate and weight together", gate=words)
    elif opens < weight_on:
        longer = tr("{gate}: the age gate comes before the weight", gate=words)
    else:
        longer = tr("{gate}: the age gate comes after the weight", gate=words)
    return (longer, words, day(opens))


def _paint_pairings(canvas: Canvas, lane: QRectF, free: Free) -> None:
    radius = 0.22 * lane.height()
    for paired in canvas.page.life.pairings:
        day = paired.happened.day
        if canvas.axis.shows(day):
            canvas.painter.setPen(canvas.pen("ink", 1.4))
            ink = canvas.look.colour("ink" if paired.locked else "ground")
            canvas.painter.setBrush(ink)
            at = QPointF(canvas.axis.x(day), lane.center().y())
            free.take(at.x() - 2 * radius, at.x() + 2 * radius)
            canvas.painter.drawEllipse(at, radius, radius)


def _paint_clutch(canvas: Canvas, lane: QRectF, clutch: Clutch, free: Free) -> None:
    """A tick where she laid, with as much beside it as has room."""
    look, x = canvas.look, canvas.axis.x(clutch.happened.day)
    canvas.line("ink", 2.6, x, lane.top() + look.u(0.6, 0.4), x, lane.bottom())
    left = x + look.u(1.2, 1)
    for words in (clutch_words(clutch), _EGGS(clutch.good)):
        if free.claim(left, left + canvas.wide(words)):
            canvas.words(left, canvas.middle(lane), words, ink="ink", paper="ground")
            return
