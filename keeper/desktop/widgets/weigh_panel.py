"""What lies in the pulled-out drawer of the weigh-in: the typed weight, largest, and what of it.

The typed figure is not written until it stands beside its range; a question is asked reversed.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QFont, QPainter
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.kept_picture import KeptPicture
from keeper.desktop.widgets.lettering import (
    RIGHT,
    advance,
    font_to_fit,
    middle_baseline,
    set_line,
)
from keeper.desktop.widgets.weight_gauge import GaugeMarks, paint_gauge

LEAST_PT = 30.0
LEAST_LINE_PT = 10.0
_WHO_BASE, _WEIGHT_BASE, _ASK_TOP, _ASK_HIGH, _GAUGE_TOP = 0.135, 0.425, 0.515, 0.145, 0.68
_LINES_AT = (0.235, 0.335, 0.425)
_WEIGHT_SHARE = 0.43  # of the panel's width, so that the words beside it never move


@dataclass(frozen=True, slots=True, kw_only=True)
class WeighWords:
    """All in words: place, name, who; the weight typed; its state, range and how far outside.

    ``question`` and ``answer`` stand reversed while the weight is asked for again.
    """

    place: str
    name: str
    who: tuple[str, ...] = ()
    typed: str = ""
    state: str = ""
    expected: str = ""
    outside: str = ""
    question: str = ""
    answer: str = ""
    gauge: GaugeMarks = field(default_factory=GaugeMarks)


class WeighPanel(Drawn):
    """Paints ``WeighWords`` over the whole drawer."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._words = WeighWords(place="", name="")
        self._kept = KeptPicture()
        self.lie_on("sheet")

    def show_words(self, words: WeighWords) -> None:
        """Show *words*."""
        if words == self._words:
            return
        self._words = words
        said = (words.place, words.name, *words.who, words.typed, words.state, words.expected)
        asked = (words.outside, words.question, words.answer)
        self.tell(", ".join(part for part in (*said, *asked) if part))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(226, 166), self.look.u(114, 78)

    def paint(self, painter: QPainter) -> None:
        self._kept.lay(painter, self.size(), self.look, self._words, self._draw, "sheet")

    def _draw(self, painter: QPainter) -> None:
        pad = self.look.u(7.5, 4.6)
        inside = QRectF(self.rect()).adjusted(pad, 0, -pad + self.look.u(1), 0)
        self._paint_who(painter, inside)
        self._paint_weight(painter, inside)
        if self._words.question:
            self._paint_question(painter, inside)
        top = self.height() * _GAUGE_TOP
        rect = QRectF(inside.left(), top, inside.width(), self.height() - top - self.look.u(1))
        paint_gauge(painter, rect.adjusted(self.look.u(2), 0, 0, 0), self._words.gauge, self.look)

    def _paint_who(self, painter: QPainter, inside: QRectF) -> None:
        look, words, base = self.look, self._words, _WHO_BASE * self.height()
        place, name = QFont(look.font(Use.PAGE_NAME)), QFont(look.font(Use.PAGE_NAME))
        name.setWeight(look.font(Use.NAME).weight())
        aside = look.font(Use.BODY)
        who = max((advance(aside, line) for line in words.who), default=0.0)
        for above, line in enumerate(reversed(words.who)):
            at = QPointF(inside.right(), base - above * look.u(6.4, 5))
            set_line(painter, at, line, aside, look.colour("ink2"), align=RIGHT)
        left = QPointF(inside.left(), base)
        used = set_line(painter, left, words.place, place, look.colour("ink"), flush=True)
        used += look.u(9, 6)
        room = inside.width() - used - who - look.u(5, 4)
        name = font_to_fit(name, words.name, room, 16.0)
        start = QPointF(inside.left() + used, base)
        set_line(painter, start, words.name, name, look.colour("ink"), room=room)

    def _paint_weight(self, painter: QPainter, inside: QRectF) -> None:
        look, words = self.look, self._words
        room = _WEIGHT_SHARE * inside.width()
        font = font_to_fit(look.font(Use.WEIGHT_TYPED), words.typed, room, LEAST_PT)
        base = QPointF(inside.left(), _WEIGHT_BASE * self.height())
        ink = look.colour("ink")
        set_line(painter, base, words.typed, font, ink, room=room, flush=True)
        left = inside.left() + room + look.u(6, 4)
        lines = (
            (words.state, Use.ASIDE, "ink2"),
            (words.expected, Use.TUB_VALUE, "ink"),
            (words.outside, Use.ASIDE, "ink2"),
        )
        for (text, use, colour), share in zip(lines, _LINES_AT, strict=True):
            wide = inside.right() - left
            fitted = font_to_fit(look.font(use), text, wide, LEAST_LINE_PT)
            place = QPointF(left, share * self.height())
            set_line(painter, place, text, fitted, look.colour(colour), room=wide)

    def _paint_question(self, painter: QPainter, inside: QRectF) -> None:
        look, words, high = self.look, self._words, self.height()
        block = QRectF(inside.left(), _ASK_TOP * high, inside.width(), _ASK_HIGH * high)
        painter.fillRect(block, look.colour("ink"))
        pad, ground = look.u(5.6, 4), look.colour("ground")
        answer = look.font(Use.ASIDE)
        answer.setWeight(look.font(Use.NAME).weight())
        wide = advance(answer, words.answer)
        room = block.width() - 3 * pad - wide
        question = font_to_fit(look.font(Use.PAGE_NAME), words.question, room, 16.0)
        start = QPointF(block.left() + pad, middle_baseline(block, question))
        set_line(painter, start, words.question, question, ground, room=room)
        end = QPointF(block.right() - pad, middle_baseline(block, answer))
        set_line(painter, end, words.answer, answer, ground, align=RIGHT)
