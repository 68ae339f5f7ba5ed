"""The legend of the time-line: each look of a stay, and each letter that is in the rack."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QFont, QPainter, QResizeEvent
from PySide6.QtWidgets import QWidget

from keeper.actions.time_line import MarkKind
from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import advance, middle_baseline, set_line
from keeper.desktop.widgets.time_line_faces import StayState, paint_mark, paint_stretch
from keeper.language import tr


@dataclass(frozen=True, slots=True, kw_only=True)
class TimeKey:
    """One item. count: how often it is there; 0: not told."""

    look: StayState | MarkKind
    words: str
    count: int = 0

    @property
    def told(self) -> str:
        return f"{self.words} {self.count}" if self.count else self.words


class TimeLegend(Drawn):
    """Stays in one line, marks beneath in as many as they need."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._keys: tuple[TimeKey, ...] = ()

    def show_keys(self, keys: Sequence[TimeKey]) -> None:
        """Show *keys*."""
        if tuple(keys) != self._keys:
            self._keys = tuple(keys)
            told = ", ".join(_read(key) for key in keys)
            self.tell(tr("legend: {told}", told=told))

    def natural_size(self) -> tuple[float, float]:
        rows = len(key_rows(self._keys, self._room(), self.look))
        return self.look.u(200), max(2, rows) * self.look.u(6.6, 5.2) + self.look.u(1.8, 1.2)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.updateGeometry()

    def paint(self, painter: QPainter) -> None:
        look = self.look
        rows = key_rows(self._keys, self._room(), look)
        high = (self.height() - look.u(1.8, 1.2)) / max(2, len(rows))
        for n, row in enumerate(rows):
            top = look.u(0.9, 0.6) + n * high
            _paint_row(painter, QRectF(look.u(7, 3.5), top, self._room(), high), row, look)

    def _room(self) -> float:
        return self.width() - 2 * self.look.u(7, 3.5)


def key_rows(keys: Sequence[TimeKey], room: float, look: Look) -> list[list[TimeKey]]:
    """Lines of items at most *room* px wide: stays first, then marks."""
    font, air = look.font(Use.TABLE), look.u(2.4, 2)
    rows: list[list[TimeKey]] = []
    used = 0.0
    for n, key in enumerate(keys):
        wide = _box_wide(key, look) + look.u(1.6, 1.2) + advance(font, key.told)
        begins = n == 0 or isinstance(key.look, MarkKind) is not isinstance(
            keys[n - 1].look, MarkKind
        )
        if begins or used + wide > room:
            rows.append([])
            used = 0.0
        rows[-1].append(key)
        used += wide + air
    return rows


def paint_key(
    painter: QPainter, rect: QRectF, key: TimeKey, look: Look, font: QFont | None = None
) -> float:
    """One item at the left of *rect*; returns the width that it takes."""
    used = font or look.font(Use.TABLE)
    side, wide = look.u(4.6, 4), _box_wide(key, look)
    side = min(rect.height() - 1, side)
    box = QRectF(rect.left(), rect.center().y() - side / 2, wide, side)
    if isinstance(key.look, StayState):
        paint_stretch(painter, box, key.look, look)
    else:
        paint_mark(painter, box, key.look, look)
    gap = look.u(1.6, 1.2)
    place = QPointF(box.right() + gap, middle_baseline(rect, used))
    return wide + gap + set_line(painter, place, key.told, used, look.colour("ink"))


def _box_wide(key: TimeKey, look: Look) -> float:
    return look.u(9, 7) if isinstance(key.look, StayState) else look.u(4.6, 4)


def _paint_row(painter: QPainter, rect: QRectF, keys: Sequence[TimeKey], look: Look) -> None:
    """Items in a line, as far apart as the widest air and the room allow."""
    font, gap = look.font(Use.TABLE), look.u(1.6, 1.2)
    used = sum(_box_wide(key, look) + gap + advance(font, key.told) for key in keys)
    air = max(2.0, min(look.u(6, 3), (rect.width() - used) / max(1, len(keys) - 1)))
    left = rect.left()
    for key in keys:
        place = QRectF(left, rect.top(), rect.width(), rect.height())
        left += paint_key(painter, place, key, look, font) + air


def _read(key: TimeKey) -> str:
    letter = f"{key.look.value} " if isinstance(key.look, MarkKind) else ""
    return f"{letter}{key.told}"
