"""The legend of the time-line: each look of a stay, and each letter that is in the rack."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QFont, QPainter
from PySide6.QtWidgets import QWidget

from keeper.actions.time_line import MarkKind
from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import advance, font_to_fit, middle_baseline, set_line
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
    """Two lines: stays above, marks below; each is set closer where it has no room."""

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
        return self.look.u(200), self.look.u(15, 11.6)

    def paint(self, painter: QPainter) -> None:
        size = QRectF(self.rect())
        margin = self.look.u(7, 3.5)
        rect = size.adjusted(margin, self.look.u(1, 0.6), -margin, -self.look.u(1, 0.6))
        paint_keys(painter, rect, self._keys, self.look)


def paint_keys(painter: QPainter, rect: QRectF, keys: Sequence[TimeKey], look: Look) -> None:
    """Stays on the upper half of *rect*, marks on the lower."""
    half = rect.height() / 2
    stays = [key for key in keys if isinstance(key.look, StayState)]
    marks = [key for key in keys if isinstance(key.look, MarkKind)]
    for n, own in enumerate((stays, marks)):
        line = QRectF(rect.left(), rect.top() + n * half, rect.width(), half)
        _paint_line(painter, line, own, look)


def paint_key(
    painter: QPainter, rect: QRectF, key: TimeKey, look: Look, font: QFont | None = None
) -> float:
    """One item at the left of *rect*; returns the width that it takes."""
    used = font or look.font(Use.TABLE)
    side = min(rect.height() - 2, look.u(4.6, 4))
    wide = look.u(9, 7) if isinstance(key.look, StayState) else side
    box = QRectF(rect.left(), rect.center().y() - side / 2, wide, side)
    if isinstance(key.look, StayState):
        paint_stretch(painter, box, key.look, look)
    else:
        paint_mark(painter, box, key.look, look)
    gap = look.u(1.6, 1.2)
    place = QPointF(box.right() + gap, middle_baseline(rect, used))
    return wide + gap + set_line(painter, place, key.told, used, look.colour("ink"))


def _paint_line(painter: QPainter, rect: QRectF, keys: Sequence[TimeKey], look: Look) -> None:
    font = look.font(Use.TABLE)
    gap, pad = look.u(1.6, 1.2), look.u(6, 3)
    wide, side = look.u(9, 7), min(rect.height() - 2, look.u(4.6, 4))
    boxes = sum(wide if isinstance(key.look, StayState) else side for key in keys)
    fixed = boxes + len(keys) * gap
    words = "".join(key.told for key in keys)
    room = rect.width() - fixed - max(0, len(keys) - 1) * look.u(2, 1.6)
    font = font_to_fit(font, words, max(1.0, room), 7.0)
    used = fixed + sum(advance(font, key.told) for key in keys)
    air = max(2.0, min(pad, (rect.width() - used) / max(1, len(keys) - 1)))
    left = rect.left()
    for key in keys:
        place = QRectF(left, rect.top(), rect.width(), rect.height())
        left += paint_key(painter, place, key, look, font) + air


def _read(key: TimeKey) -> str:
    letter = f"{key.look.value} " if isinstance(key.look, MarkKind) else ""
    return f"{letter}{key.told}"
