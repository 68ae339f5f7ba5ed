"""The last six offers as tiles, oldest at the left, with date, prey and grams beneath."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import cap_height, narrowed, set_line
from keeper.desktop.widgets.stamps import stamp_tile
from keeper.desktop.widgets.tile import FACES, TileState
from keeper.language import tr

MOST_OFFERS = 6

_NONE_YET = tr("no offer yet")


@dataclass(frozen=True, slots=True, kw_only=True)
class PastOffer:
    """One offer in words: ``date`` "14 Oct", ``prey`` "2 fuzzy", ``grams`` "8 g" or ``""``."""

    state: TileState
    date: str
    prey: str = ""
    grams: str = ""


def offer_words(offer: PastOffer) -> str:
    """The offer as a sentence part.

    >>> offer_words(PastOffer(state=TileState.REFUSED, date="21 Oct", prey="1 hopper"))
    '21 Oct refused, 1 hopper'
    """
    said = f"{offer.date} {FACES[offer.state].words}"
    return ", ".join(part for part in (said, offer.prey, offer.grams) if part)


class OffersStrip(Drawn):
    """Up to six past offers; an animal with none gets a sentence instead of an empty strip."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._offers: tuple[PastOffer, ...] = ()
        self._none_yet = ""

    def show_offers(self, offers: Sequence[PastOffer], none_yet: str = _NONE_YET) -> None:
        """Show the last six of *offers* (oldest first), or *none_yet* where there are none."""
        if (tuple(offers[-MOST_OFFERS:]), none_yet) == (self._offers, self._none_yet):
            return
        self._offers, self._none_yet = tuple(offers[-MOST_OFFERS:]), none_yet
        said = "; ".join(offer_words(offer) for offer in self._offers)
        self.tell(tr("last offers: {offers}", offers=said or none_yet))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(102.5, 78), self.look.u(38.8, 20.5)

    def paint(self, painter: QPainter) -> None:
        look = self.look
        head = look.font(Use.BODY_STRONG)
        first = look.u(1) + cap_height(head)
        words = tr("Last six") if look.small else tr("Last six offers")
        set_line(painter, QPointF(0, first), words, head, look.colour("ink2"))
        top = first + look.u(3.2, 2)
        if not self._offers:
            line = QPointF(0, top + look.u(5))
            set_line(painter, line, self._none_yet, look.font(Use.BODY), look.colour("ink"))
            return
        gap = look.u(1.5)
        wide = (self.width() + gap) / MOST_OFFERS - gap
        for number, offer in enumerate(self._offers):
            rect = QRectF(number * (wide + gap), top, wide, look.u(13, 9.8))
            self._paint_offer(painter, rect, offer)

    def _paint_offer(self, painter: QPainter, rect: QRectF, offer: PastOffer) -> None:
        look = self.look
        stamp_tile(painter, rect, offer.state, look.palette)
        lines = [(offer.date, Use.TABLE_STRONG, "ink")]
        if not look.small:
            lines += [(text, Use.TABLE, "ink2") for text in (offer.prey, offer.grams) if text]
        base = rect.bottom() + look.u(4.6, 3.4)
        for text, use, ink in lines:
            room = rect.width()
            font = narrowed(look.font(use), text, room, 8.0)
            place = QPointF(rect.left(), base)
            set_line(painter, place, text, font, look.colour(ink), room=room)
            base += look.u(4.8, 3.6)
