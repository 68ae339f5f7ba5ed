"""What the young of one pair may look like: a bar a look, its share, its words, sums beneath."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.kept_picture import KeptPicture
from keeper.desktop.widgets.lettering import (
    LEAST_PT,
    RIGHT,
    narrowed,
    set_line,
    wrapped,
)
from keeper.language import tr

_BAR = 0.3
"""Of the width, what all the young together take."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LookBar:
    """One look of the young: its share from 0 to 1, the share in words, what is seen, what is not.

    shows: whether a gene is seen in it; the bar of a normal-looking one is drawn hollow.
    """

    share: float
    figure: str
    words: str
    carries: str = ""
    shows: bool = True


@dataclass(frozen=True, slots=True, kw_only=True)
class PairFace:
    """The pair in words, its looks, and sentences beneath them."""

    head: str
    aside: str = ""
    bars: tuple[LookBar, ...] = ()
    sentences: tuple[str, ...] = ()


class PairSheet(Drawn):
    """Takes whatever room there is; looks that have none are counted."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self.face = PairFace(head="")
        self._kept = KeptPicture()
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Expanding)

    def show_face(self, face: PairFace) -> None:
        self.face = face
        bars = (f"{each.figure} {each.words} {each.carries}".strip() for each in face.bars)
        said = (f"{face.head} {face.aside}".strip(), "; ".join(bars), *face.sentences)
        self.tell(". ".join(filter(None, said)))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(80, 60), self.look.u(30, 24)

    def paint(self, painter: QPainter) -> None:
        self._kept.lay(painter, self.size(), self.look, self.face, self._draw)

    def _draw(self, painter: QPainter) -> None:
        look, face, width = self.look, self.face, float(self.width())
        strong, plain = look.font(Use.TABLE_STRONG), look.font(Use.TABLE)
        step, base = look.u(5, 4.3), look.u(4.4, 3.8)
        used = set_line(
            painter, QPointF(0, base), face.head, strong, look.colour("ink"), room=width
        )
        aside = QPointF(used + look.u(2, 1.2), base)
        room = width - aside.x()
        set_line(painter, aside, face.aside, plain, look.colour("ink2"), room=room)
        told = [line for each in face.sentences for line in wrapped(each, plain, width)]
        gap = look.u(0.8, 0.5)
        room = self.height() - base - gap - len(told) * step - look.u(1.2, 1)
        most = max(1, int(room / step))
        for bar in _that_fit(face.bars, most):
            base += step
            self._paint_bar(painter, bar, base)
        base += gap
        for line in told:
            base += step
            if base > self.height() - look.u(0.4):
                return
            set_line(painter, QPointF(0, base), line, plain, look.colour("ink"), room=width)

    def _paint_bar(self, painter: QPainter, bar: LookBar, base: float) -> None:
        look, width = self.look, float(self.width())
        full, high = _BAR * width, look.u(2.8, 2.4)
        painter.setPen(QPen(look.colour("hair"), 1.0))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(QRectF(0.6, base - high, full, high))
        rect = QRectF(0.6, base - high, max(1.0, bar.share * full), high)
        painter.setPen(QPen(look.colour("line"), 1.0))
        painter.setBrush(look.colour("fill2" if bar.shows else "sheet"))
        painter.drawRect(rect)
        strong, plain = look.font(Use.TABLE_STRONG), look.font(Use.TABLE)
        end = full + look.u(10.4, 8.8)
        set_line(painter, QPointF(end, base), bar.figure, strong, look.colour("ink"), align=RIGHT)
        left = end + look.u(2, 1.4)
        ink = look.colour("ink")
        left += set_line(painter, QPointF(left, base), bar.words, strong, ink, room=width - left)
        left += look.u(1.6, 1)
        font = narrowed(plain, bar.carries, width - left, LEAST_PT)
        place, room = QPointF(left, base), width - left
        set_line(painter, place, bar.carries, font, look.colour("ink2"), room=room)


def _that_fit(bars: Sequence[LookBar], most: int) -> tuple[LookBar, ...]:
    """The first *most*; the last place counts what has no room."""
    if len(bars) <= most:
        return tuple(bars)
    left = len(bars) - most + 1
    rest = sum(bar.share for bar in bars[most - 1 :])
    more = LookBar(share=rest, figure="", words=tr("and {count} more looks", count=left))
    return (*bars[: most - 1], more)
