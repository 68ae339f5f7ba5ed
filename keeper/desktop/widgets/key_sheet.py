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
        head = advance(look.font(Use.PAGE_HEAD), tr("Keys of {place}", place=self._title))
        wide = max(head, sum(keys + words + look.u(6) for keys, words in self._widths()))
        return wide + look.u(10), self._rows() * look.u(8, 6.6) + look.u(21, 17.5)

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
        left = start.x()
        for column, (keys, words) in zip(self._in_columns(), self._widths(), strict=True):
            for row, line in enumerate(column):
                base = start.y() + row * look.u(8, 6.6)
                place = QPointF(left + keys, base)
                set_line(painter, QPointF(left, base), line.key, strong, look.colour("ink"))
                set_line(painter, place, line.words, plain, look.colour("ink2"))
            left += keys + words + look.u(6)

    def _rows(self) -> int:
        return -(-len(self._lines) // self._columns)

    def _in_columns(self) -> list[Sequence[KeyLine]]:
        rows = self._rows()
        return [self._lines[at : at + rows] for at in range(0, len(self._lines), max(1, rows))]

    def _widths(self) -> list[tuple[float, float]]:
        """Of each column its keys with the air beside them, and its words."""
        strong, plain = self.look.font(Use.BODY_STRONG), self.look.font(Use.BODY)
        return [
            (
                max(advance(strong, line.key) for line in column) + self.look.u(4),
                max(advance(plain, line.words) for line in column),
            )
            for column in self._in_columns()
        ]
