"""Prey in the coming weeks: bars of items by who eats them, the stock line, when to order.

Beneath the picture stand the reasons, the bags, and who goes over to the grade and away from it.
What has no room is left out from the end, and its number is told.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.kept_picture import KeptPicture
from keeper.desktop.widgets.lettering import (
    LEAST_PT,
    RIGHT,
    advance,
    cap_height,
    narrowed,
    set_line,
    wrapped,
)
from keeper.desktop.widgets.patterns import FINE, Pattern, paint_pattern
from keeper.language import tr
from keeper.reports.figures import number

GROUPS: Mapping[str, tuple[Pattern, str]] = {
    "hatchlings": (Pattern.DOTS, tr("hatchlings")),
    "growing": (Pattern.HATCH, tr("growing")),
    "adults": (Pattern.SOLID, tr("adults")),
}
"""Who eats it, from the foot of a bar up."""

MARKS = {Pattern.DOTS: "fill3", Pattern.HATCH: "ink", Pattern.SOLID: "fill2"}
"""The colour of each pattern, by role."""

_BAR_SHARE = 0.64
_LABELLED = (0.0, 0.5, 1.0)  # shares of a scale that bear its figures
_LATER_ROWS = 2
"""So many lines of each list are left room for by what stands above it."""

_STEPS = (1.0, 1.5, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0)


@dataclass(frozen=True, slots=True, kw_only=True)
class Section:
    """A head and lines beneath it: what stands at the left, and what follows it."""

    head: str
    rows: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class DemandFace:
    """One grade. days: the first day of each week and the end of the last, in words.

    bars: of each week the items by group, as ``GROUPS`` names them. stock: what is left, by weeks
    from the first day; empty where it was not counted, which *uncounted* then says. order, gone:
    weeks from the first day, with their words.
    """

    head: str
    days: tuple[str, ...] = ()
    bars: tuple[tuple[float, ...], ...] = ()
    stock: tuple[tuple[float, float], ...] = ()
    uncounted: str = ""
    order: tuple[float, str] | None = None
    gone: tuple[float, str] | None = None
    reasons: tuple[str, ...] = ()
    sections: tuple[Section, ...] = ()
    said: str = ""


def paint_patch(painter: QPainter, rect: QRectF, group: str, look: Look) -> None:
    """A patch as the bars of *group* are painted."""
    pattern = GROUPS[group][0]
    painter.fillRect(rect, look.colour("sheet"))
    paint_pattern(painter, rect, pattern, look.colour(MARKS[pattern]), FINE)
    painter.setPen(QPen(look.colour("line"), 1.0))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(rect)


class PreyDemand(Drawn):
    """Paints a ``DemandFace``."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._face = DemandFace(head="")
        self._kept = KeptPicture()
        self._top = 0.0
        self.setObjectName("prey demand")
        self.lie_on("ground")

    def show_face(self, face: DemandFace) -> None:
        """Show *face*."""
        self._face = face
        self.tell(face.said)

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(110, 80), self.look.u(60, 50)

    def paint(self, painter: QPainter) -> None:
        self._kept.lay(painter, self.size(), self.look, self._face, self._draw)

    def _draw(self, painter: QPainter) -> None:
        look, face = self.look, self._face
        painter.setPen(QPen(look.colour("line"), 1.6))
        painter.drawLine(QLineF(1, 0, 1, self.height() - look.u(2, 1)))
        left, right = look.u(3.6, 2.4), self.width() - look.u(7, 3.5)
        self._top = look.u(6.4, 5)
        head = look.font(Use.PAGE_HEAD)
        room = right - left
        set_line(painter, QPointF(left, self._top), face.head, head, look.colour("ink"), room=room)
        if not face.days:
            return
        high = min(look.u(66, 46), 0.42 * self.height())
        _Picture(painter, QRectF(left, self._top + look.u(3, 2.4), room, high), face, look).paint()
        self._top += high + look.u(5, 3.8)
        self._paint_reasons(painter, left, room)
        told = [section for section in face.sections if section.rows]
        for at, section in enumerate(told):
            kept = sum(1 + min(len(later.rows), _LATER_ROWS) for later in told[at + 1 :])
            self._paint_section(painter, left, room, section, kept)

    def _paint_reasons(self, painter: QPainter, left: float, room: float) -> None:
        look, font = self.look, self.look.font(Use.TABLE)
        leading = QFontMetricsF(font).height()
        for number_, reason in enumerate(self._face.reasons):
            ink = look.colour("ink" if number_ == 0 else "ink2")
            for line in wrapped(reason, font, room):
                if self._top + leading > self.height():
                    return
                self._top += leading
                set_line(painter, QPointF(left, self._top), line, font, ink, room=room)
        self._top += look.u(2, 1.2)

    def _paint_section(
        self, painter: QPainter, left: float, room: float, part: Section, kept: int
    ) -> None:
        """As many lines as leave room for *kept* of what follows, but one at least."""
        look, every = self.look, self.look.u(5.6, 4.5)
        fits = int((self.height() - self._top) / every) - 1
        if fits < 1:
            return
        fits = max(min(fits, 2), fits - kept)
        strong, plain = look.font(Use.TABLE_STRONG), look.font(Use.TABLE)
        self._top += every
        set_line(painter, QPointF(left, self._top), part.head, strong, look.colour("ink2"))
        column = left + max(advance(plain, words) for words, _ in part.rows) + look.u(3, 2)
        for first, second in _shown(part.rows, fits):
            self._top += every
            set_line(painter, QPointF(left, self._top), first, plain, look.colour("ink"))
            at = QPointF(column, self._top)
            rest = left + room - column
            fitted = narrowed(plain, second, rest, LEAST_PT)
            set_line(painter, at, second, fitted, look.colour("ink2"), room=rest)
        self._top += look.u(2, 1)


def _shown(rows: Sequence[tuple[str, str]], fits: int) -> Sequence[tuple[str, str]]:
    """As many as fit; where some do not, the last line says how many more there are."""
    if len(rows) <= fits:
        return rows
    more = tr("and {count} more", count=len(rows) - fits + 1)
    return [*rows[: fits - 1], ("", more)]


class _Picture:
    """Bars on the scale at the left, the stock line on the scale at the right."""

    def __init__(self, painter: QPainter, rect: QRectF, face: DemandFace, look: Look) -> None:
        self._painter, self._face, self._look = painter, face, look
        self._plain, self._strong = look.font(Use.TABLE), look.font(Use.TABLE_STRONG)
        self._most = _rounded_up(max((sum(bar) for bar in face.bars), default=0.0))
        self._stocked = _rounded_up(max((left for _, left in face.stock), default=0.0))
        left = self._label_wide(self._most) + look.u(2)
        right = self._label_wide(self._stocked) + look.u(2) if face.stock else 0.0
        self.plot = rect.adjusted(left, look.u(13, 10.4), -right, -look.u(6, 5))
        self.rect = rect

    def paint(self) -> None:
        self._scale()
        self._weeks()
        for at, bar in enumerate(self._face.bars):
            self._bar(at, bar)
        self._stock()
        self._marks()

    def _label_wide(self, most: float) -> float:
        return max(advance(self._plain, number(share * most, 1)) for share in _LABELLED)

    def _x(self, weeks: float) -> float:
        return self.plot.left() + weeks * self.plot.width() / len(self._face.bars)

    def _y(self, items: float, most: float) -> float:
        return self.plot.bottom() - items / most * self.plot.height()

    def _scale(self) -> None:
        look, plot, painter = self._look, self.plot, self._painter
        head = self.rect.top() + look.u(3.6, 3)
        words = QPointF(self.rect.left(), head)
        ink, half = look.colour("ink2"), 0.6 * self.rect.width()
        set_line(painter, words, tr("items a week"), self._strong, ink, room=half)
        told = tr("in stock") if self._face.stock else self._face.uncounted
        end = QPointF(self.rect.right(), head)
        colour = look.colour("point" if self._face.stock else "ink2")
        set_line(painter, end, told, self._strong, colour, align=RIGHT)
        down = cap_height(self._plain) / 2
        for share in _LABELLED:
            y = self._y(share, 1.0)
            painter.setPen(QPen(look.colour("hair"), 1.0))
            painter.drawLine(QLineF(plot.left(), y, plot.right(), y))
            at = QPointF(plot.left() - look.u(1.2), y + down)
            set_line(painter, at, number(share * self._most, 1), self._plain, ink, align=RIGHT)
            if self._face.stock:
                beside = QPointF(plot.right() + look.u(1.2), y + down)
                set_line(painter, beside, number(share * self._stocked, 1), self._plain, colour)

    def _weeks(self) -> None:
        look, plot, painter = self._look, self.plot, self._painter
        painter.setPen(QPen(look.colour("line"), 1.1))
        painter.drawLine(QLineF(plot.left(), plot.bottom(), plot.right(), plot.bottom()))
        wide = max(advance(self._plain, words) for words in self._face.days) + look.u(2)
        every = next((n for n in (1, 2, 3, 4, 6) if n * plot.width() / 12 >= wide), 12)
        for at in range(0, len(self._face.days), every):
            x, words = self._x(at), self._face.days[at]
            painter.drawLine(QLineF(x, plot.bottom(), x, plot.bottom() + 3))
            used = advance(self._plain, words)
            left = min(max(x - used / 2, self.rect.left()), self.rect.right() - used)
            base = QPointF(left, plot.bottom() + look.u(5, 4.2))
            set_line(painter, base, words, self._plain, look.colour("ink2"))
            painter.setPen(QPen(look.colour("line"), 1.1))

    def _bar(self, at: int, bar: Sequence[float]) -> None:
        wide = _BAR_SHARE * (self._x(1) - self._x(0))
        left, foot = (self._x(at) + self._x(at + 1) - wide) / 2, 0.0
        for group, items in zip(GROUPS, bar, strict=True):
            if items > 0:
                top = self._y(foot + items, self._most)
                patch = QRectF(left, top, wide, self._y(foot, self._most) - top)
                paint_patch(self._painter, patch, group, self._look)
                foot += items

    def _stock(self) -> None:
        if not self._face.stock:
            return
        points = [
            QPointF(self._x(at), self._y(left, self._stocked)) for at, left in self._face.stock
        ]
        for colour, width in (("ground", 5.0), ("point", 2.4)):
            pen = QPen(self._look.colour(colour), width)
            pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
            self._painter.setPen(pen)
            self._painter.setBrush(Qt.BrushStyle.NoBrush)
            self._painter.drawPolyline(QPolygonF(points))

    def _marks(self) -> None:
        """The order-by mark as a dotted line, and where the stock is gone as a tick; both named."""
        look, painter, free = self._look, self._painter, self.plot.left()
        base = self.plot.top() - look.u(2, 1.6)
        for mark, strong in ((self._face.order, True), (self._face.gone, False)):
            if mark is None or mark[0] > len(self._face.bars):
                continue
            x = self._x(mark[0])
            pen = QPen(look.colour("ink"), 1.8 if strong else 1.1)
            pen.setStyle(Qt.PenStyle.DotLine if strong else Qt.PenStyle.SolidLine)
            painter.setPen(pen)
            painter.drawLine(QLineF(x, base + 2, x, self.plot.bottom()))
            font = self._strong if strong else self._plain
            used = advance(font, mark[1])
            left = min(max(x - look.u(1), free), self.rect.right() - used)
            set_line(painter, QPointF(left, base), mark[1], font, look.colour("ink"))
            free = left + used + look.u(2.4, 2)


def _rounded_up(most: float) -> float:
    """The end of a scale that holds *most*.

    >>> [_rounded_up(value) for value in (0.0, 0.7, 3.2, 70.3, 192.0)]
    [1.0, 0.8, 4.0, 80.0, 200.0]
    """
    return next(_ends(most)) if most > 0 else 1.0


def _ends(most: float) -> Iterator[float]:
    power = 10.0 ** math.floor(math.log10(most))
    return (step * power for step in _STEPS if step * power >= most)
