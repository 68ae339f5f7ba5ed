"""One clutch in a row: code and dam, where it lies, its days, its eggs as a strip, its weeks."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta

from PySide6.QtCore import QLineF, QPointF, QRect, QRectF
from PySide6.QtGui import QPainter, QPen

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.calendar_strip import Marks, paint_grid, paint_marks
from keeper.desktop.widgets.lettering import CENTRE, LEAST_PT, narrowed, set_line
from keeper.desktop.widgets.life_axis import TimeAxis
from keeper.desktop.widgets.stamps import stamp_tile
from keeper.desktop.widgets.tile import FACES, TileState

MONTHS_BACK, MONTHS_SHOWN = 3, 7
_PAPERS = {False: "ground", True: "sheet"}


@dataclass(frozen=True, slots=True, kw_only=True)
class EggPart:
    """So many eggs of one state; state one of the table ``EGGS``."""

    state: TileState
    count: int


@dataclass(frozen=True, slots=True, kw_only=True)
class ClutchFace:
    """Each column has two lines. laid: how many eggs, before the strip of their parts."""

    code: str
    dam: str
    where: str
    box: str
    since: str
    days: str
    laid: str
    parts: tuple[EggPart, ...]
    marks: Marks
    said: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ClutchColumns:
    """Where each column of the list begins, in device-independent px."""

    code: float
    where: float
    since: float
    eggs: float
    strip: float
    strip_end: float
    calendar: TimeAxis

    @classmethod
    def of(cls, look: Look, width: float, today: date) -> ClutchColumns:
        """For a list *width* wide."""
        left = look.u(2.2, 1.2)
        eggs = left + look.u(98, 74)
        strip_end = eggs + look.u(58, 46)
        return cls(
            code=left,
            where=left + look.u(38, 29),
            since=left + look.u(71, 53),
            eggs=eggs,
            strip=eggs + look.u(8, 6.4),
            strip_end=strip_end,
            calendar=weeks_round(today, strip_end + look.u(4, 2.4), width - look.u(2.5, 1.5)),
        )


def weeks_round(today: date, left: float, right: float) -> TimeAxis:
    """The axis of whole months round *today*: eggs lie for two to three of them.

    >>> axis = weeks_round(date(2026, 11, 25), 0.0, 100.0)
    >>> axis.first, axis.last
    (datetime.date(2026, 8, 1), datetime.date(2027, 3, 1))
    """
    first = _month(today, -MONTHS_BACK)
    return TimeAxis(first=first, last=_month(first, MONTHS_SHOWN), left=left, right=right)


def clutch_row_height(look: Look) -> float:
    """Of one row, two lines of words high."""
    return look.u(13.2, 10.6)


def paint_clutch(
    painter: QPainter, rect: QRect, face: ClutchFace, today: date, look: Look, *, here: bool
) -> None:
    """Paint *face* in *rect*; *here* is the chosen one, on a sheet with a pointer before it."""
    columns = ClutchColumns.of(look, rect.width(), today)
    painter.save()
    painter.translate(rect.topLeft())
    row = QRectF(0, 0, rect.width(), rect.height())
    _paint_ground(painter, row, columns, today, look, here=here)
    _paint_words(painter, columns, face, look)
    _paint_strip(painter, columns, face, look)
    paint_marks(painter, row, columns.calendar, today, face.marks, _PAPERS[here], look)
    painter.restore()


def paint_weeks(painter: QPainter, axis: TimeAxis, bottom: float, look: Look) -> None:
    """A short stroke for each Monday, upwards from *bottom*."""
    painter.setPen(QPen(look.colour("line"), 1.0))
    monday = axis.first + timedelta(days=-axis.first.weekday() % 7)
    high = look.u(1.2, 0.9)
    while monday <= axis.last:
        painter.drawLine(QLineF(axis.x(monday), bottom - high, axis.x(monday), bottom))
        monday += timedelta(days=7)


def part_widths(counts: tuple[int, ...], room: float, least: float) -> tuple[float, ...]:
    """Widths in proportion to *counts*, each at least *least*, all of them *room* together.

    >>> part_widths((1, 7), 80.0, 16.0)
    (16.0, 64.0)
    """
    if not counts:
        return ()
    least = min(least, room / len(counts))
    whole, spare = max(1, sum(counts)), room
    narrow = {n for n, count in enumerate(counts) if room * count / whole < least}
    wide = sum(count for n, count in enumerate(counts) if n not in narrow)
    spare -= least * len(narrow)
    return tuple(
        least if n in narrow else spare * count / max(1, wide) for n, count in enumerate(counts)
    )


def _paint_ground(
    painter: QPainter, row: QRectF, columns: ClutchColumns, today: date, look: Look, *, here: bool
) -> None:
    painter.fillRect(row, look.colour(_PAPERS[here]))
    if here:
        painter.fillRect(QRectF(0, 0, look.u(1.2, 0.8), row.height()), look.colour("point"))
    painter.setPen(QPen(look.colour("hair"), 1.0))
    painter.drawLine(QLineF(columns.code, row.bottom() - 0.5, row.right(), row.bottom() - 0.5))
    paint_grid(painter, row, columns.calendar, today, look)
    paint_weeks(painter, columns.calendar, row.bottom(), look)


def _paint_words(painter: QPainter, columns: ClutchColumns, face: ClutchFace, look: Look) -> None:
    strong, plain = look.font(Use.BODY_STRONG), look.font(Use.TABLE)
    first, second, gap = look.u(5.6, 4.5), look.u(10.4, 8.6), look.u(1.6, 1)
    for left, end, upper, lower in (
        (columns.code, columns.where, face.code, face.dam),
        (columns.where, columns.since, face.where, face.box),
        (columns.since, columns.eggs, face.since, face.days),
    ):
        room = end - left - gap
        for text, font, base, ink in (
            (upper, strong, first, "ink"),
            (lower, plain, second, "ink2"),
        ):
            fitted = narrowed(font, text, room, LEAST_PT)
            set_line(painter, QPointF(left, base), text, fitted, look.colour(ink), room=room)


def _paint_strip(painter: QPainter, columns: ClutchColumns, face: ClutchFace, look: Look) -> None:
    """How many were laid, then each state as wide as it has eggs, its figure beneath it."""
    strong, plain = look.font(Use.BODY_STRONG), look.font(Use.TABLE_STRONG)
    first, second = look.u(5.6, 4.5), look.u(10.8, 8.9)
    set_line(painter, QPointF(columns.eggs, first), face.laid, strong, look.colour("ink"))
    high = look.u(5.4, 4.4)
    widths = part_widths(
        tuple(part.count for part in face.parts), columns.strip_end - columns.strip, look.u(5, 4.2)
    )
    left = columns.strip
    for part, wide in zip(face.parts, widths, strict=True):
        tile = QRectF(left, look.u(1.6, 1.2), wide, high)
        stamp_tile(painter, tile, part.state, look.palette, FACES[part.state].letter)
        base = QPointF(tile.center().x(), second)
        set_line(painter, base, str(part.count), plain, look.colour("ink"), align=CENTRE)
        left += wide


def _month(on: date, further: int) -> date:
    months = on.year * 12 + on.month - 1 + further
    return date(months // 12, months % 12 + 1, 1)
