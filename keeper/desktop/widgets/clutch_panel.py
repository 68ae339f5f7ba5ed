"""What stands beside the young of a clutch: headed paragraphs, as many as have room."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF
from PySide6.QtGui import QFont, QFontMetricsF, QPainter
from PySide6.QtWidgets import QSizePolicy, QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import set_line, wrapped

_SHARES = (1.0, 0.93, 0.86)
_TAIL = 0.25  # of a line, for letters that reach beneath it

Line = tuple[str, QFont, str, float]
"""Words, font, ink by role, and px from the line before."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Paragraph:
    """A heading, and beneath it whole sentences."""

    head: str
    words: str


class ClutchPanel(Drawn):
    """It takes whatever room is left; a long text is set smaller, then cut at the end."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._paragraphs: tuple[Paragraph, ...] = ()
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Expanding)

    def show_paragraphs(self, paragraphs: Sequence[Paragraph]) -> None:
        self._paragraphs = tuple(paragraphs)
        self.tell(" ".join(f"{each.head}: {each.words}" for each in paragraphs))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(100, 70), self.look.u(20, 14)

    def paint(self, painter: QPainter) -> None:
        look, room = self.look, float(self.width())
        base = 0.0
        for text, font, ink, step in self._that_fit():
            base += step
            set_line(painter, QPointF(0, base), text, font, look.colour(ink), room=room)

    def _that_fit(self) -> list[Line]:
        for share in _SHARES:
            lines = list(self._lines(share))
            room = self.height() - max((step for *_, step in lines), default=0.0) * _TAIL
            if sum(step for *_, step in lines) <= room:
                return lines
        kept, used = [], 0.0
        for line in lines:
            used += line[3]
            if used > room:
                break
            kept.append(line)
        return [*kept[:-1], *(_going_on(line) for line in kept[-1:])]

    def _lines(self, share: float) -> Iterator[Line]:
        strong, plain = _sized(self.look.font(Use.TABLE_STRONG), share), self.look.font(Use.TABLE)
        plain = _sized(plain, share)
        leading = QFontMetricsF(plain).height() * 0.98
        gap = 0.0
        for each in self._paragraphs:
            yield each.head, strong, "ink2", leading + gap
            for line in wrapped(each.words, plain, float(self.width())):
                yield line, plain, "ink", leading
            gap = 0.35 * leading


def _going_on(line: Line) -> Line:
    """The last line that has room, where more follows."""
    text, font, ink, step = line
    return f"{text} …", font, ink, step


def _sized(font: QFont, share: float) -> QFont:
    made = QFont(font)
    made.setPointSizeF(share * font.pointSizeF())
    return made
