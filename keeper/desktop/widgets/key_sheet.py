"""The keys of the present place, laid over it until F1 or Esc; it never takes the keyboard."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QKeySequence, QPainter, QPen, QShortcut
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.places import KeyLine
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn, announce
from keeper.desktop.widgets.lettering import advance, cap_height, set_line
from keeper.language import tr

_ONE_COLUMN, _MOST_COLUMNS = 9, 4


class KeySheet(Drawn):
    """A framed sheet of keys in as many columns as it needs; hidden until ``show_keys``."""

    def __init__(self, look: Look, parent: QWidget) -> None:
        super().__init__(look, parent)
        self._title = ""
        self._lines: tuple[KeyLine, ...] = ()
        self._columns, self._share = 1, 1.0
        self._escape = QShortcut(QKeySequence(Qt.Key.Key_Escape), self.window(), self.hide)
        self._escape.setEnabled(False)
        self.hide()

    def show_keys(self, title: str, lines: Sequence[KeyLine]) -> None:
        """Show *lines* under *title* over the parent and read them out."""
        self._title, self._lines = title, tuple(lines)
        said = "; ".join(f"{line.key}: {line.words}" for line in lines)
        self.tell(tr("keys of {place}: {keys}", place=title, keys=said))
        self.fit_parent()
        self.show()
        self.raise_()
        announce(self, self.text())

    def setVisible(self, visible: bool) -> None:
        self._escape.setEnabled(visible)
        super().setVisible(visible)

    def fit_parent(self) -> None:
        """Lie in the middle of the parent, as large as the keys need; smaller where they must be.

        Columns are added while the sheet is higher than its parent; what is then too wide or
        still too high is drawn smaller, and nothing is cut.
        """
        parent = self.parentWidget()
        if parent is None:
            return
        self._columns = 1 if len(self._lines) <= _ONE_COLUMN else 2
        while self.natural_size()[1] > parent.height() and self._columns < _MOST_COLUMNS:
            self._columns += 1
        width, height = self.natural_size()
        self._share = min(1.0, parent.width() / width, parent.height() / height)
        width, height = width * self._share, height * self._share
        left, top = (parent.width() - width) / 2, (parent.height() - height) / 2
        self.setGeometry(QRectF(left, top, width, height).toAlignedRect() & parent.rect())

    def natural_size(self) -> tuple[float, float]:
        look = self.look
        wide = sum(self._widths()) + look.u(6)
        rows = -(-len(self._lines) // self._columns)
        return self._columns * wide + look.u(10), rows * look.u(8, 6.6) + look.u(21, 17.5)

    def paint(self, painter: QPainter) -> None:
        look, frame = self.look, 3.0
        painter.scale(self._share, self._share)
        whole = QRectF(0, 0, self.width() / self._share, self.height() / self._share)
        inside = whole.adjusted(frame / 2, frame / 2, -frame / 2, -frame / 2)
        pen = QPen(look.colour("ink"), frame)
        pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        painter.setPen(pen)
        painter.setBrush(look.colour("sheet"))
        painter.drawRect(inside)
        left = look.u(8)
        head = look.font(Use.PAGE_HEAD)
        first = look.u(7, 5.5) + cap_height(head)
        title = tr("Keys of {place}", place=self._title)
        set_line(painter, QPointF(left, first), title, head, look.colour("ink"))
        self._paint_lines(painter, QPointF(left, first + look.u(10, 8)))

    def _paint_lines(self, painter: QPainter, start: QPointF) -> None:
        look = self.look
        strong, plain = look.font(Use.BODY_STRONG), look.font(Use.BODY)
        keys, words = self._widths()
        rows = -(-len(self._lines) // self._columns)
        for number, line in enumerate(self._lines):
            left = start.x() + (number // rows) * (keys + words + look.u(6))
            base = start.y() + (number % rows) * look.u(8, 6.6)
            set_line(painter, QPointF(left, base), line.key, strong, look.colour("ink"))
            set_line(painter, QPointF(left + keys, base), line.words, plain, look.colour("ink2"))

    def _widths(self) -> tuple[float, float]:
        look = self.look
        keys = (advance(look.font(Use.BODY_STRONG), line.key) for line in self._lines)
        words = (advance(look.font(Use.BODY), line.words) for line in self._lines)
        return max(keys, default=0.0) + look.u(4), max(words, default=0.0)
