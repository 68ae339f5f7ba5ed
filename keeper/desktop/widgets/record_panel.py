"""The chosen line of the records in full: what was written, entry by entry."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import set_line
from keeper.language import tr


class EntryFace(NamedTuple):
    """One entry: its words, and whether it is struck because it no longer stands."""

    words: str
    struck: bool


class RecordPanel(Drawn):
    """A head line, an aside, and the entries in columns; what does not fit is counted."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._head = self._aside = ""
        self._entries: tuple[EntryFace, ...] = ()
        self._count = 0

    def show_entries(self, head: str, aside: str, entries: Sequence[EntryFace], count: int) -> None:
        """Show *entries* of a batch that wrote *count*."""
        self._head, self._aside = head, aside
        self._entries, self._count = tuple(entries), count
        struck = (_struck(e.words) if e.struck else e.words for e in entries)
        self.tell("; ".join(filter(None, (head, aside, *struck))))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(200, 150), self.look.u(31, 26)

    def paint(self, painter: QPainter) -> None:
        look = self.look
        left, right = look.u(7, 3.5), self.width() - look.u(7, 3.5)
        painter.fillRect(QRectF(self.rect()), look.colour("sheet"))
        painter.setPen(QPen(look.colour("ink"), 1.6))
        painter.drawLine(0, 1, self.width(), 1)
        base = look.u(6.6, 5.4)
        used = set_line(
            painter, QPointF(left, base), self._head, look.font(Use.PAGE_HEAD), look.colour("ink")
        )
        aside = QPointF(left + used + look.u(4), base)
        set_line(
            painter,
            aside,
            self._aside,
            look.font(Use.BODY),
            look.colour("ink2"),
            room=right - aside.x(),
        )
        self._paint_entries(painter, QRectF(left, base, right - left, self.height() - base))

    def _paint_entries(self, painter: QPainter, box: QRectF) -> None:
        look = self.look
        font, struck = look.font(Use.BODY), look.font(Use.BODY)
        struck.setStrikeOut(True)
        for face, at, wide in self._placed(box):
            ink = look.colour("ink3" if face.struck else "ink")
            set_line(painter, at, face.words, struck if face.struck else font, ink, room=wide)

    def _placed(self, box: QRectF) -> Iterator[tuple[EntryFace, QPointF, float]]:
        """Each entry with its place, column by column; the last place tells how many are left."""
        step, columns = self.look.u(6, 5), 2 if box.width() > self.look.u(160) else 1
        lines = max(1, int((box.height() - self.look.u(1)) / step))
        places, wide = lines * columns, box.width() / columns - self.look.u(3)
        shown = list(self._entries[:places])
        if self._count > len(shown):
            shown[places - 1 :] = [EntryFace(_more(self._count - places + 1), False)]
        for n, face in enumerate(shown):
            x = box.left() + (n // lines) * box.width() / columns
            yield face, QPointF(x, box.top() + step * (n % lines + 1)), wide


def _struck(words: str) -> str:
    return tr("{entry}, no longer standing", entry=words)


def _more(count: int) -> str:
    return tr("and {count} more", count=count)
