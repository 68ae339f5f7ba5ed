"""What the bars, letters and marks of the pairing calendar mean, in as many lines as they need."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.calendar_strip import (
    Window,
    paint_bracket,
    paint_laid,
    paint_letter,
    paint_ring,
    paint_window,
)
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.kept_picture import KeptPicture
from keeper.desktop.widgets.lettering import advance, middle_baseline, set_line, wrapped
from keeper.desktop.widgets.life_axis import TimeAxis
from keeper.desktop.widgets.pairing_marks import (
    LOOKS,
    SIGNS,
    Kind,
    paint_away,
    paint_bar,
    paint_earlier,
    paint_out,
)
from keeper.language import tr

_EARLIER = tr("earlier sign")
_OPEN = tr("no latest day")

Swatch = Callable[[QPainter, QRectF, Look], None]


def _bar(kind: Kind) -> Swatch:
    def paint(painter: QPainter, rect: QRectF, look: Look) -> None:
        if kind is Kind.AWAY:
            paint_away(painter, rect, look)
        else:
            paint_bar(painter, rect, kind, look)

    return paint


def _earlier(painter: QPainter, rect: QRectF, look: Look) -> None:
    inset = look.u(0.9, 0.75)
    paint_earlier(painter, rect.adjusted(0, inset, 0, -inset), 1, look, open_end=False)


def _open(painter: QPainter, rect: QRectF, look: Look) -> None:
    paint_bar(painter, rect, Kind.MAY_LAY, look, open_end=True, asked=True)


def _ring(filled: bool) -> Swatch:
    return lambda painter, rect, look: paint_ring(painter, rect.center(), look, filled=filled)


def _letter(letter: str) -> Swatch:
    return lambda painter, rect, look: paint_letter(painter, rect.center(), letter, look)


def _window(painter: QPainter, rect: QRectF, look: Look) -> None:
    days = [date(2026, 1, n) for n in (1, 3, 6, 9, 11)]
    axis = TimeAxis(first=days[0], last=days[-1], left=rect.left(), right=rect.right())
    window = Window(low=days[0], half_low=days[1], on=days[2], half_high=days[3], high=days[4])
    paint_window(painter, rect, axis, window, look)


_WIDE, _SQUARE = (9.4, 7.2), (4.4, 3.4)

_MARKS: tuple[tuple[Swatch, tuple[float, float], str], ...] = (
    (_earlier, _WIDE, _EARLIER),
    (_open, _WIDE, _OPEN),
    *((_bar(kind), _WIDE, LOOKS[kind].words) for kind in Kind),
    (_ring(False), _SQUARE, tr("paired")),
    (_ring(True), _SQUARE, tr("lock")),
    *((_letter(letter), _SQUARE, words) for letter, words in SIGNS.items()),
    (lambda p, rect, look: paint_laid(p, rect.center(), look), _SQUARE, tr("laid")),
    (lambda p, rect, look: paint_out(p, rect.center(), look), _SQUARE, tr("first out")),
    (lambda p, rect, look: paint_bracket(p, rect.center(), look), _SQUARE, tr("old enough")),
    (_window, _WIDE, tr("heavy enough")),
)


class CalendarLegend(Drawn):
    """Flows into lines; its own height follows its width. A caution stands beneath."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._caution = ""
        self._kept = KeptPicture()
        self.lie_on("ground")

    def show_caution(self, caution: str) -> None:
        """Stand *caution* beneath the legend."""
        self._caution = caution
        self.tell(tr("legend: {letters}. {caution}", letters=legend_told(), caution=caution))

    def natural_size(self) -> tuple[float, float]:
        look = self.look
        width = self.width() if self.width() > 1 else look.u(300, 220)
        margin = look.u(7, 3.5)
        lines = sum(1 for _ in wrapped(self._caution, look.font(Use.TABLE), width - 2 * margin))
        return look.u(200, 150), legend_height(look, width - 2 * margin) + lines * _leading(look)

    def paint(self, painter: QPainter) -> None:
        about = self._caution
        self._kept.lay(painter, self.size(), self.look, about, self._draw, "ground")

    def _draw(self, painter: QPainter) -> None:
        look, margin = self.look, self.look.u(7, 3.5)
        room = self.width() - 2 * margin
        paint_legend(painter, QRectF(margin, 0, room, self.height()), look)
        base = legend_height(look, room) + 0.7 * _leading(look)
        font = look.font(Use.TABLE)
        for number, line in enumerate(wrapped(self._caution, font, room)):
            at = QPointF(margin, base + number * _leading(look))
            set_line(painter, at, line, font, look.colour("ink2"), room=room)


def legend_told() -> str:
    """Every letter and mark with its meaning."""
    letters = [f"{face.letter} {face.words}".strip() for face in LOOKS.values()]
    return ", ".join((*letters, *(f"{letter} {words}" for letter, words in SIGNS.items())))


def legend_height(look: Look, room: float) -> float:
    """How high the legend stands when its lines are *room* px wide."""
    rows = [row for row, *_ in _places(look, room)]
    return (max(rows, default=0) + 1) * _every(look) + look.u(1.4, 1)


def paint_legend(painter: QPainter, rect: QRectF, look: Look) -> None:
    """From the top left corner of *rect* on, as wide as it is."""
    font = look.font(Use.TABLE)
    for row, left, (swatch, (large, small), words) in _places(look, rect.width()):
        top = rect.top() + look.u(1.4, 1) + row * _every(look)
        wide, high = look.u(large, small), look.u(4.4, 3.6)
        box = QRectF(rect.left() + left, top, wide, high)
        swatch(painter, box, look)
        at = QPointF(box.right() + look.u(1.2, 0.7), middle_baseline(box, font))
        set_line(painter, at, words, font, look.colour("ink2"))


_Mark = tuple[Swatch, tuple[float, float], str]


def _places(look: Look, room: float) -> Iterator[tuple[int, float, _Mark]]:
    """Line and left end of each mark."""
    font, row, left = look.font(Use.TABLE), 0, 0.0
    for mark in _MARKS:
        wide = look.u(*mark[1]) + look.u(1.2, 0.7) + advance(font, mark[2])
        if left and left + wide > room:
            row, left = row + 1, 0.0
        yield row, left, mark
        left += wide + look.u(3, 1.3)


def _every(look: Look) -> float:
    return look.u(5.6, 4.5)


def _leading(look: Look) -> float:
    return look.u(4.8, 4.1)
