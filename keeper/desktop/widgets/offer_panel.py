"""What lies in the pulled-out drawer of the round: place, name, what to offer, one caution word.

The big type never moves when the tub changes: each line has its own baseline, and a text too
wide for its line is set smaller, never lower than what can be read at 1.5 m.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QFont, QPainter
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import (
    RIGHT,
    advance,
    font_to_fit,
    middle_baseline,
    set_line,
)

LEAST_PT = 30.0
LEAST_ADVICE_PT = 10.0
_PLACE_BASE, _OFFER_BASE, _CAUTION_TOP, _CAUTION_HIGH = 0.335, 0.668, 0.748, 0.19


@dataclass(frozen=True, slots=True, kw_only=True)
class OfferWords:
    """All in words: place "B3·6", who in one or two lines, offer, grams, caution and its advice.

    ``caution`` is one word in capitals or empty; ``advice`` says what to do about it.
    """

    place: str
    name: str
    who: tuple[str, ...] = ()
    offer: str = ""
    grams: str = ""
    caution: str = ""
    advice: str = ""


class OfferPanel(Drawn):
    """Paints ``OfferWords`` over the whole drawer."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._words = OfferWords(place="", name="")

    def show_offer(self, words: OfferWords) -> None:
        """Show *words*."""
        if words == self._words:
            return
        self._words = words
        said = (words.place, words.name, *words.who, words.offer, words.grams)
        self.tell(", ".join(part for part in (*said, words.caution, words.advice) if part))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(226, 166), self.look.u(71, 53)

    def paint(self, painter: QPainter) -> None:
        pad = self.look.u(7.5, 4.6)
        inside = QRectF(self.rect()).adjusted(pad, 0, -pad + self.look.u(1), 0)
        self._paint_who(painter, inside)
        self._paint_offer(painter, inside)
        self._paint_caution(painter, inside)

    def _line(self, share: float) -> float:
        return share * self.height()

    def _paint_who(self, painter: QPainter, inside: QRectF) -> None:
        look, words = self.look, self._words
        aside = look.font(Use.ASIDE)
        base = self._line(_PLACE_BASE)
        taken = max((advance(aside, line) for line in words.who), default=0.0)
        for above, line in enumerate(reversed(words.who)):
            place = QPointF(inside.right(), base - look.u(3.6, 1.4) - above * look.u(7.4, 5.4))
            set_line(painter, place, line, aside, look.colour("ink2"), align=RIGHT)
        room = inside.width() - taken - look.u(5, 4)
        left, font = QPointF(inside.left(), base), look.font(Use.PLACE)
        used = set_line(painter, left, words.place, font, look.colour("ink"), flush=True)
        used += look.u(8, 5)
        name = font_to_fit(look.font(Use.NAME), words.name, room - used, LEAST_PT)
        start = QPointF(inside.left() + used, base)
        set_line(painter, start, words.name, name, look.colour("ink"), room=room - used)

    def _paint_offer(self, painter: QPainter, inside: QRectF) -> None:
        look, words, base = self.look, self._words, self._line(_OFFER_BASE)
        grams = look.font(Use.GRAMS)
        set_line(
            painter,
            QPointF(inside.right(), base),
            words.grams,
            grams,
            look.colour("ink"),
            align=RIGHT,
        )
        air = look.u(6, 4) if words.grams else 0.0
        room = inside.width() - advance(grams, words.grams) - air
        font = font_to_fit(look.font(Use.OFFER), words.offer, room, LEAST_PT)
        set_line(
            painter,
            QPointF(inside.left(), base),
            words.offer,
            font,
            look.colour("ink"),
            room=room,
            flush=True,
        )

    def _paint_caution(self, painter: QPainter, inside: QRectF) -> None:
        look, words = self.look, self._words
        top, high = self._line(_CAUTION_TOP), self._line(_CAUTION_HIGH)
        left = inside.left()
        if words.caution:
            left += self._paint_block(painter, QRectF(left, top, inside.width(), high))
            left += look.u(6, 4)
        room = inside.right() - left
        aside = font_to_fit(look.font(Use.ASIDE), words.advice, room, LEAST_ADVICE_PT)
        base = middle_baseline(QRectF(left, top, 1, high), aside)
        set_line(painter, QPointF(left, base), words.advice, aside, look.colour("ink2"), room=room)

    def _paint_block(self, painter: QPainter, line: QRectF) -> float:
        """The caution word reversed; returns the block's width."""
        look, word = self.look, self._words.caution
        pad = look.u(5.6, 4)
        font: QFont = font_to_fit(look.font(Use.CAUTION), word, line.width() - 2 * pad, LEAST_PT)
        width = min(line.width(), advance(font, word) + 2 * pad)
        block = QRectF(line.left(), line.top(), width, line.height())
        painter.fillRect(block, look.colour("ink"))
        start = QPointF(block.left() + pad, middle_baseline(block, font))
        set_line(painter, start, word, font, look.colour("ground"), room=width - 2 * pad)
        return width
