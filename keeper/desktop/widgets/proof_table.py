"""What proving out costs: each possible het, its mate, what normal-looking young leave of it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QLineF, QPointF
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.kept_picture import KeptPicture
from keeper.desktop.widgets.lettering import LEAST_PT, RIGHT, narrowed, set_line
from keeper.language import tr

_NAMES = 2
_SHARES = (0.28, 0.2, 0.1, 0.09, 0.09, 0.09, 0.15)
"""Names from the left, figures flush right."""
MOST_ROWS = 5


@dataclass(frozen=True, slots=True, kw_only=True)
class ProofFace:
    """heads and rows of cells, one for each share; over: what the heads of figures count."""

    over: str
    heads: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    said: tuple[str, ...]


class ProofTable(Drawn):
    """As high as its rows; those that have no room are counted. Hidden without rows."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._face: ProofFace | None = None
        self._kept = KeptPicture()
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self.hide()

    def show_face(self, face: ProofFace) -> None:
        self._face = face
        self.setVisible(bool(face.rows))
        self.tell(f"{face.over}: {'; '.join(face.said)}")

    def natural_size(self) -> tuple[float, float]:
        rows = min(len(self._face.rows), self._most()) if self._face else 0
        return self.look.u(90, 70), (rows + 2) * self._step() + self.look.u(2.4, 1.4)

    def paint(self, painter: QPainter) -> None:
        self._kept.lay(painter, self.size(), self.look, self._face, self._draw)

    def _most(self) -> int:
        return MOST_ROWS - 2 if self.look.small else MOST_ROWS

    def _step(self) -> float:
        return self.look.u(5.2, 4.3)

    def _draw(self, painter: QPainter) -> None:
        look, face = self.look, self._face
        if face is None:
            return
        base = look.u(4.2, 3.5)
        strong, width = look.font(Use.TABLE_STRONG), float(self.width())
        set_line(painter, QPointF(0, base), face.over, strong, look.colour("ink2"), room=width)
        base += self._step()
        self._row(painter, base, face.heads, "ink2")
        y = base + look.u(1.2, 0.9)
        painter.setPen(QPen(look.colour("line"), 1.0))
        painter.drawLine(QLineF(0, y, width, y))
        for cells in self._shown(face.rows):
            base += self._step()
            self._row(painter, base + look.u(0.4), cells, "ink")

    def _shown(self, rows: Sequence[tuple[str, ...]]) -> Iterator[tuple[str, ...]]:
        """As many as have room; the last place counts the rest."""
        most = self._most()
        if len(rows) <= most:
            yield from rows
            return
        yield from rows[: most - 1]
        yield (tr("and {count} more", count=len(rows) - most + 1),)

    def _row(self, painter: QPainter, base: float, cells: Sequence[str], ink: str) -> None:
        look, width = self.look, float(self.width())
        plain, colour, left = look.font(Use.TABLE), look.colour(ink), 0.0
        for number, (text, share) in enumerate(zip(cells, _SHARES, strict=False)):
            room = share * width
            font = narrowed(plain, text, room - look.u(1, 0.7), LEAST_PT)
            if number < _NAMES:
                place = QPointF(left, base)
                set_line(painter, place, text, font, colour, room=room - look.u(1, 0.7))
            else:
                set_line(painter, QPointF(left + room, base), text, font, colour, align=RIGHT)
            left += room
