"""The last weights of an animal in a line: a solid dot is empty, a hollow one holds a meal."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.kept_picture import KeptPicture
from keeper.desktop.widgets.lettering import advance, cap_height, font_to_fit, set_line
from keeper.language import tr

MOST_WEIGHTS = 5


@dataclass(frozen=True, slots=True, kw_only=True)
class PastWeight:
    """``grams`` "409 g", ``day`` "28 Oct" with what is to be known of it, and whether empty."""

    grams: str
    day: str
    empty: bool


class LastWeights(Drawn):
    """Up to five weights, oldest at the left, and one line on what the keys do now."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._head, self._hint = "", ""
        self._weights: tuple[PastWeight, ...] = ()
        self._kept = KeptPicture()
        self.lie_on("ground")

    def show_weights(self, head: str, weights: Sequence[PastWeight], hint: str) -> None:
        """Show the last of *weights* under *head*, with *hint* beneath; no head: nobody's."""
        shown = (head, tuple(weights[-MOST_WEIGHTS:]), hint)
        if shown == (self._head, self._weights, self._hint):
            return
        self._head, self._weights, self._hint = shown
        said = "; ".join(_said(weight) for weight in self._weights) or tr("none")
        self.tell(f"{head}: {said}. {hint}" if head else "")

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(160, 120), self.look.u(28, 20)

    def paint(self, painter: QPainter) -> None:
        about = (self._head, self._weights, self._hint)
        self._kept.lay(painter, self.size(), self.look, about, self._draw, "ground")

    def _draw(self, painter: QPainter) -> None:
        look = self.look
        head, grams = look.font(Use.BODY_STRONG), look.font(Use.LINE_TITLE)
        grams.setWeight(look.font(Use.BODY_STRONG).weight())
        base = look.u(1) + cap_height(head)
        set_line(painter, QPointF(0, base), self._head, head, look.colour("ink2"))
        row = base + look.u(9.2, 6.4)
        wide = self.width() / MOST_WEIGHTS
        for number, weight in enumerate(self._weights):
            self._paint_weight(painter, QPointF(number * wide, row), wide, weight)
        if self._head and not self._weights:
            body = look.font(Use.BODY)
            none = tr("no weight in the book")
            set_line(painter, QPointF(0, row), none, body, look.colour("ink"))
        hint = font_to_fit(look.font(Use.TABLE), self._hint, self.width(), 8.0)
        place = QPointF(0, self.height() - look.u(2, 1.4))
        set_line(painter, place, self._hint, hint, look.colour("ink2"), room=self.width())

    def _paint_weight(
        self, painter: QPainter, place: QPointF, wide: float, weight: PastWeight
    ) -> None:
        look = self.look
        font, small = look.font(Use.LINE_TITLE), look.font(Use.TABLE)
        font.setWeight(look.font(Use.BODY_STRONG).weight())
        used = set_line(painter, place, weight.grams, font, look.colour("ink"))
        radius = look.u(1.4, 1.1)
        painter.setPen(QPen(look.colour("ink"), 1.8))
        painter.setBrush(look.colour("ink" if weight.empty else "ground"))
        middle = QPointF(place.x() + used + look.u(3.4, 2.6), place.y() - cap_height(font) / 2)
        painter.drawEllipse(middle, radius, radius)
        under = QPointF(place.x(), place.y() + look.u(6, 4.4))
        room = wide - advance(small, " ")
        fitted = font_to_fit(small, weight.day, room, 8.0)
        set_line(painter, under, weight.day, fitted, look.colour("ink2"), room=room)


def _said(weight: PastWeight) -> str:
    if weight.empty:
        return tr("{grams} empty, {day}", grams=weight.grams, day=weight.day)
    return tr("{grams} with a meal inside, {day}", grams=weight.grams, day=weight.day)
