"""The foot line: what was written last and how to take it back, or why nothing was written."""

from __future__ import annotations

from dataclasses import dataclass, replace

from PySide6.QtCore import QLineF, QPointF, QRectF
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn, announce
from keeper.desktop.widgets.lettering import (
    RIGHT,
    Run,
    advance,
    font_to_fit,
    middle_baseline,
    set_line,
    set_runs,
)
from keeper.language import tr


@dataclass(frozen=True, slots=True, kw_only=True)
class Written:
    """What was written: ``clock`` "22:40:51", ``place`` "B3·5 Merrow", ``what`` in words.

    ``take_back`` says how ("Ctrl+Z takes it back"), ``reach`` how far ("95 steps can be").
    """

    clock: str
    place: str
    what: str
    take_back: str
    reach: str = ""


class Foot(Drawn):
    """One line at the foot of the window. It speaks what it shows."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._written: Written | None = None
        self._sentence = ""
        self._refused = False

    def show_written(self, written: Written) -> None:
        """Say what was written, when, where, and how to take it back."""
        self._written, self._sentence = written, ""
        parts = (tr("written"), written.clock, written.place, written.what)
        told = (*parts, written.take_back, written.reach)
        self.tell(", ".join(part for part in told if part))
        announce(self, tr("written: {place}, {what}", place=written.place, what=written.what))

    def show_way_back(self, take_back: str, reach: str) -> None:
        """The page in sight takes back otherwise than the one where it was written."""
        if self._written is not None:
            self._written = replace(self._written, take_back=take_back, reach=reach)
            self.update()

    def show_refusal(self, sentence: str) -> None:
        """Say in one sentence why nothing was written; the last written line comes back later."""
        self._say(sentence, refused=True)

    def show_note(self, sentence: str) -> None:
        """Say something that was neither written nor refused."""
        self._say(sentence, refused=False)

    def clear(self) -> None:
        """Go back to what was written last, or to an empty line."""
        self._sentence = ""
        if self._written is not None:
            clock, place = self._written.clock, self._written.place
            self.setText(tr("written {clock} {place}", clock=clock, place=place))
        else:
            self.setText("")
        self.update()

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(200), self.look.u(9.5, 7.5)

    def paint(self, painter: QPainter) -> None:
        look = self.look
        painter.fillRect(self.rect(), look.colour("ground"))
        painter.setPen(QPen(look.colour("line"), 1.1))
        painter.drawLine(QLineF(0, 0.6, self.width(), 0.6))
        margin = look.u(7, 3.5)
        inside = QRectF(self.rect()).adjusted(margin, 0, -margin, 0)
        if self._sentence:
            self._paint_sentence(painter, inside)
        elif self._written is not None:
            self._paint_written(painter, inside, self._written)

    def _say(self, sentence: str, *, refused: bool) -> None:
        self._sentence, self._refused = sentence, refused
        self.tell(tr("not written: {why}", why=sentence) if refused else sentence)
        announce(self, self.text(), urgent=refused)

    def _paint_written(self, painter: QPainter, inside: QRectF, written: Written) -> None:
        look = self.look
        plain, strong = look.font(Use.TABLE), look.font(Use.TABLE_STRONG)
        base = middle_baseline(inside, plain)
        reach = "" if look.small else written.reach
        right = "    ".join(part for part in (written.take_back, reach) if part)
        place = QPointF(inside.right(), base)
        taken = set_line(painter, place, right, plain, look.colour("ink2"), align=RIGHT)
        ink, gap = look.colour("ink"), look.u(2.6, 2)
        runs = [
            Run(text=tr("Written"), font=plain, colour=look.colour("ink3")),
            Run(text=written.clock, font=strong, colour=ink, gap=look.u(1.8, 1.4)),
            Run(text=written.place, font=strong, colour=ink, gap=gap),
            Run(text=written.what, font=strong, colour=ink, gap=gap),
        ]
        set_runs(painter, QPointF(inside.left(), base), runs, inside.width() - taken - look.u(4))

    def _paint_sentence(self, painter: QPainter, inside: QRectF) -> None:
        look, strong = self.look, self.look.font(Use.TABLE_STRONG)
        base, left = middle_baseline(inside, strong), inside.left()
        if self._refused:
            words, pad = tr("Not written"), look.u(2, 1.5)
            block = inside.adjusted(0, look.u(1.6, 1.2), 0, -look.u(1.4, 1))
            block.setWidth(advance(strong, words) + 2 * pad)
            painter.fillRect(block, look.colour("ink"))
            set_line(painter, QPointF(left + pad, base), words, strong, look.colour("ground"))
            left = block.right() + look.u(2.6, 2)
        room = inside.right() - left
        font = font_to_fit(strong, self._sentence, room, 8.0)
        set_line(painter, QPointF(left, base), self._sentence, font, look.colour("ink"), room=room)
