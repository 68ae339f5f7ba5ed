"""Painting a rack through time: days across, tubs down, stays as bars, marks as letters."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from datetime import date

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from keeper.actions.time_line import Bar, Mark, MarkKind, TubTime
from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.lettering import (
    RIGHT,
    advance,
    font_to_fit,
    middle_baseline,
    set_line,
)
from keeper.desktop.widgets.life_axis import TimeAxis
from keeper.desktop.widgets.patterns import Pattern
from keeper.desktop.widgets.time_line_faces import (
    FACES,
    StayState,
    paint_apart,
    paint_stretch,
)
from keeper.desktop.widgets.time_line_layout import (
    Line,
)
from keeper.desktop.widgets.time_line_marks import mark_boxes, paint_marks
from keeper.desktop.widgets.time_line_sheet import (
    ONE_DAY,
    Shown,
    TimeSheet,
    rack_words,
    used_by,
)
from keeper.language import tr
from keeper.reports.figures import day as day_words

_LEAST_NAME_PX = 14.0
_LONG_DAYS = tuple(date(2026, month, 28) for month in range(1, 13))


def paint_time(painter: QPainter, look: Look, shown: Shown, sheet: TimeSheet) -> None:
    """All but the cursor."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    _paint_days(painter, look, sheet)
    _paint_rack(painter, look, shown, sheet)
    marks = _by_tub(shown.told.marks)
    for line in sheet.page.lines:
        tub = shown.told.tubs[line.tub]
        _paint_label(painter, look, tub, sheet.line_rect(line), line)
        _paint_tub(painter, look, shown, sheet, line, marks[tub.name])
    _paint_foot(painter, look, shown, sheet)


def _by_tub(marks: Iterable[Mark]) -> dict[str | None, list[Mark]]:
    found: dict[str | None, list[Mark]] = defaultdict(list)
    for mark in marks:
        found[mark.tub].append(mark)
    return found


def _paint_days(painter: QPainter, look: Look, sheet: TimeSheet) -> None:
    """Lines of the days, weeks or months through every tub, named on top."""
    axis, plain, strong = sheet.axis, look.font(Use.TABLE), look.font(Use.TABLE_STRONG)
    base = sheet.dates.bottom() - look.u(1.4, 1)
    above = base - look.u(4.6, 3.8)
    bottom = sheet.tubs.top() + used_by(sheet.page)
    end = -1.0
    widest = max(advance(plain, day_words(each, on=each)) for each in _LONG_DAYS)
    for tick in axis.ticks(widest + look.u(2, 1.6)):
        x = axis.x(tick.day)
        painter.setPen(QPen(look.colour("hair"), 1.0))
        painter.drawLine(QLineF(x, sheet.dates.bottom() - look.u(1), x, bottom))
        for words, font, y, ink in (
            (tick.words, plain, base, "ink2"),
            (tick.year, strong, above, "ink"),
        ):
            fits = x + advance(font, words) <= axis.right
            if words and fits and (ink == "ink2" or x > end):
                set_line(painter, QPointF(x + look.u(0.8, 0.6), y), words, font, look.colour(ink))
                end = x + advance(font, words) + look.u(2) if ink == "ink" else end


def _paint_rack(painter: QPainter, look: Look, shown: Shown, sheet: TimeSheet) -> None:
    """What was done in the rack as a whole."""
    rect = sheet.rack
    painter.fillRect(rect, look.colour("band1"))
    strong = look.font(Use.TABLE_STRONG)
    place = QPointF(look.u(7, 3.5), middle_baseline(rect, strong))
    set_line(painter, place, rack_words(shown.told), strong, look.colour("ink"))
    own = [mark for mark in shown.told.marks if mark.tub is None]
    paint_marks(painter, look, sheet.axis, rect, own)


def _paint_label(painter: QPainter, look: Look, tub: TubTime, rect: QRectF, line: Line) -> None:
    """The tub's name, at its first lane."""
    font = font_to_fit(look.font(Use.TABLE), tub.name, rect.left() - look.u(8, 4.5), 8.0)
    first = QRectF(rect.left(), rect.top(), rect.width(), line.lane_high)
    place = QPointF(rect.left() - look.u(1.6, 1.2), middle_baseline(first, font))
    room = rect.left() - look.u(5, 3)
    set_line(painter, place, tub.name, font, look.colour("ink2"), align=RIGHT, room=room)


def _paint_tub(
    painter: QPainter,
    look: Look,
    shown: Shown,
    sheet: TimeSheet,
    line: Line,
    marks: Sequence[Mark],
) -> None:
    tub, rect = shown.told.tubs[line.tub], sheet.line_rect(line)
    _paint_unknown(painter, look, sheet.axis, tub, rect, shown.told.on)
    for first, last in _empties(tub, shown.told.on):
        _paint_empty(painter, look, sheet.axis, rect, line, (first, last), marks)
    here = _by_lane(tub, marks)
    for bar in tub.bars:
        until = bar.stay.last(shown.told.on)
        if sheet.axis.first <= until and bar.stay.since < sheet.axis.last:
            _paint_bar(painter, look, shown, sheet, line, bar, here[bar.lane])
        _paint_span(painter, look, shown, sheet, line, bar)
    for lane, own in here.items():
        paint_marks(painter, look, sheet.axis, _lane_rect(sheet, line, lane), own)


def _paint_span(
    painter: QPainter, look: Look, shown: Shown, sheet: TimeSheet, line: Line, bar: Bar
) -> None:
    """Under the letter of a possible swap, the days within which it may have happened."""
    for swap in shown.told.swaps:
        if swap.animal == bar.animal and bar.stay.covers(swap.on):
            rect = sheet.bar_rect(line, bar, shown.told.on)
            left = max(rect.left(), sheet.axis.x(swap.after))
            right = min(rect.right(), sheet.axis.x(swap.on))
            ink = "ground" if bar.animal == shown.animal else "ink"
            thick = look.u(0.9, 0.7)
            if right > left:
                span = QRectF(left, rect.bottom() - thick - 1.5, right - left, thick)
                painter.fillRect(span, look.colour(ink))


def boxes_in_view(look: Look, shown: Shown, sheet: TimeSheet) -> Iterator[tuple[QRectF, MarkKind]]:
    """Where every letter of the page stands."""
    marks = _by_tub(shown.told.marks)
    lanes = [(sheet.rack, marks[None])]
    for line in sheet.page.lines:
        tub = shown.told.tubs[line.tub]
        for lane, own in _by_lane(tub, marks[tub.name]).items():
            lanes.append((_lane_rect(sheet, line, lane), own))
    for rect, own in lanes:
        for box, mark in mark_boxes(look, sheet.axis, rect, own):
            yield box, mark.kind


def _by_lane(tub: TubTime, marks: Iterable[Mark]) -> dict[int, list[Mark]]:
    here: dict[int, list[Mark]] = defaultdict(list)
    for mark in marks:
        here[_lane_of(tub, mark)].append(mark)
    return here


def _lane_rect(sheet: TimeSheet, line: Line, lane: int) -> QRectF:
    rect = sheet.line_rect(line)
    top = rect.top() + min(lane, line.lanes - 1) * line.lane_high
    return QRectF(rect.left(), top, rect.width(), line.lane_high)


def _lane_of(tub: TubTime, mark: Mark) -> int:
    """The lane of the stay that a mark belongs to: one that ends it lies behind it."""
    own = [bar for bar in tub.bars if bar.animal == mark.animal and bar.stay.since <= mark.on]
    return own[-1].lane if own else 0


def _paint_unknown(
    painter: QPainter, look: Look, axis: TimeAxis, tub: TubTime, rect: QRectF, on: date
) -> None:
    """Before the first entry of the tub."""
    known = tub.known_from or on + ONE_DAY
    if known <= axis.first:
        return
    right = min(axis.right, axis.x(known))
    stretch = QRectF(axis.left, rect.top(), right - axis.left, rect.height())
    paint_stretch(painter, stretch.adjusted(0, 0.5, -1, -0.5), StayState.UNKNOWN, look)
    font = look.font(Use.TABLE_STRONG)
    if stretch.width() > advance(font, "?") + look.u(4):
        place = QPointF(axis.left + look.u(3.4, 2.6), middle_baseline(stretch, font))
        mark, gap = advance(font, "?"), look.u(1.2)
        words, plain = FACES[StayState.UNKNOWN].words, look.font(Use.TABLE)
        fits = mark + gap + advance(plain, words) < stretch.width() - look.u(8)
        wide = mark + gap + advance(plain, words) if fits else mark
        under = QRectF(place.x() - gap, rect.top(), wide + 2 * gap, rect.height())
        painter.fillRect(under, look.colour("ground"))
        set_line(painter, place, "?", font, look.colour("ink2"))
        if fits:
            beside = QPointF(place.x() + mark + gap, place.y())
            set_line(painter, beside, words, plain, look.colour("ink3"))


def _empties(tub: TubTime, on: date) -> Iterator[tuple[date, date]]:
    """Stretches after its first entry in which nobody is written in the tub."""
    since: date | None = None
    for bar in tub.bars:
        stay = bar.stay
        if since is not None and since < stay.since:
            yield since, stay.since
        until = on + ONE_DAY if stay.until is None else stay.until
        since = until if since is None else max(since, until)
    if since is not None and since <= on:
        yield since, on + ONE_DAY


def _paint_empty(
    painter: QPainter,
    look: Look,
    axis: TimeAxis,
    rect: QRectF,
    line: Line,
    days: tuple[date, date],
    marks: Sequence[Mark],
) -> None:
    """A stretch without anybody; its word stands behind the letter of who left."""
    if not axis.shows(*days):
        return
    left, right = max(axis.left, axis.x(days[0])), min(axis.right, axis.x(days[1]))
    stretch = QRectF(left, rect.top(), right - left, line.lane_high)
    words, font = FACES[StayState.EMPTY].words, look.font(Use.TABLE)
    wide = advance(font, words)
    begin, room = _free(look, axis, stretch, marks, wide)
    if room > wide + look.u(6):
        place = QPointF(begin, middle_baseline(stretch, font))
        set_line(painter, place, words, font, look.colour("ink3"))
        stretch.setLeft(begin + wide + look.u(1.2))
    paint_stretch(painter, stretch, StayState.EMPTY, look)


def _paint_bar(
    painter: QPainter,
    look: Look,
    shown: Shown,
    sheet: TimeSheet,
    line: Line,
    bar: Bar,
    marks: Sequence[Mark],
) -> None:
    rect = sheet.bar_rect(line, bar, shown.told.on)
    state = _state(shown, bar)
    paint_stretch(painter, rect, state, look)
    barred = [apart for apart in shown.told.apart if apart.animal == bar.animal]
    for apart in barred:
        _paint_apart(painter, look, sheet.axis, rect, (apart.since, apart.until), state)
    clear = bool(barred) or FACES[state].pattern is not Pattern.PLAIN
    _paint_name(painter, look, sheet.axis, rect, bar, state, marks, clear=clear)


def _state(shown: Shown, bar: Bar) -> StayState:
    if bar.animal == shown.animal:
        return StayState.CHOSEN
    return StayState.SHARED if bar.animal in shown.mates else StayState.OTHER


def _paint_apart(
    painter: QPainter,
    look: Look,
    axis: TimeAxis,
    bar: QRectF,
    days: tuple[date, date | None],
    state: StayState,
) -> None:
    left = max(bar.left(), axis.x(days[0]))
    right = bar.right() if days[1] is None else min(bar.right(), axis.x(days[1]))
    if right > left:
        ink = "ground" if state is StayState.CHOSEN else FACES[StayState.APART].mark
        stretch = QRectF(left, bar.top(), right - left, bar.height())
        paint_apart(painter, stretch, look, ink)


def _paint_name(
    painter: QPainter,
    look: Look,
    axis: TimeAxis,
    rect: QRectF,
    bar: Bar,
    state: StayState,
    marks: Sequence[Mark],
    *,
    clear: bool,
) -> None:
    """The name behind the marks that begin the bar, where enough of it has room.

    clear: it stands in a clearing of what the bar is filled with.
    """
    face = FACES[state]
    use = Use.TABLE_STRONG if state is StayState.CHOSEN else Use.TABLE
    font = look.font(use)
    left, room = _free(look, axis, rect, marks, advance(font, bar.name))
    if room < min(_LEAST_NAME_PX, advance(font, bar.name)):
        return
    base = middle_baseline(rect, font)
    wide = min(room, advance(font, bar.name))
    if clear:
        under = QRectF(left - 2, rect.top() + 1.5, wide + 4, rect.height() - 3)
        painter.fillRect(under, look.colour(face.paper))
    set_line(painter, QPointF(left, base), bar.name, font, look.colour(face.ink), room=room)


def _free(
    look: Look, axis: TimeAxis, rect: QRectF, marks: Sequence[Mark], wide: float
) -> tuple[float, float]:
    """Where words *wide* begin and how much room they have: the first stretch between letters
    that has room for all of them, else the widest."""
    boxes = sorted((box for box, _ in mark_boxes(look, axis, rect, marks)), key=QRectF.left)
    own = [box for box in boxes if box.right() > rect.left() and box.left() < rect.right()]
    air = look.u(1.2, 1)
    lefts = [rect.left() + air, *(box.right() + look.u(0.8) for box in own)]
    rights = [*(box.left() - 2 for box in own), rect.right() - 2]
    stretches = [(a, b - a) for a, b in zip(lefts, rights, strict=True)]
    fits = (each for each in stretches if each[1] >= wide)
    return next(fits, None) or max(stretches, key=lambda each: each[1])


def _paint_foot(painter: QPainter, look: Look, shown: Shown, sheet: TimeSheet) -> None:
    """What has no room on this page."""
    page, tubs = sheet.page, shown.told.tubs
    if page.last - page.first >= len(tubs) or not page.lines:
        return
    told = tr(
        "{first} to {last} of {count} tubs, ↑↓ go on",
        first=tubs[page.first].name,
        last=tubs[page.last - 1].name,
        count=len(tubs),
    )
    font = look.font(Use.TABLE)
    place = QPointF(sheet.axis.right, sheet.tubs.bottom() + look.u(4.2, 3.4))
    set_line(painter, place, told, font, look.colour("ink2"), align=RIGHT)


def outline_pen(look: Look) -> QPen:
    """The frame round the chosen stay."""
    pen = QPen(look.colour("point"), 2.4)
    pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    return pen
