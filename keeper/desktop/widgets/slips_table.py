"""Which slip would explain a weight: each tried, with the weight it stands for and its outcome."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QLineF, QPointF, QRectF
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import (
    RIGHT,
    advance,
    cap_height,
    font_to_fit,
    middle_baseline,
    set_line,
    wrapped,
)
from keeper.language import tr

MOST_SLIPS = 4
_FEW = 3  # in a small window


@dataclass(frozen=True, slots=True, kw_only=True)
class SlipLine:
    """A slip in words, its weight in words, and whether that lies inside the range."""

    name: str
    grams: str
    inside: bool


class SlipsTable(Drawn):
    """Up to four slips; while none is asked for, a sentence stands in their place."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._lines: tuple[SlipLine, ...] = ()
        self._quiet = ""

    def show_slips(self, lines: Sequence[SlipLine], quiet: str = "") -> None:
        """Show the first of *lines*, or the sentence *quiet* where there are none."""
        if (tuple(lines[:MOST_SLIPS]), quiet) == (self._lines, self._quiet):
            return
        self._lines, self._quiet = tuple(lines[:MOST_SLIPS]), quiet
        said = "; ".join(f"{line.name}, {line.grams}, {_outcome(line)}" for line in self._lines)
        self.tell(tr("slips tried: {slips}", slips=said) if said else quiet)

    def natural_size(self) -> tuple[float, float]:
        high = 29.0 if self._lines else 7.0
        return self.look.u(102.5, 78), self.look.u(49, high)

    def paint(self, painter: QPainter) -> None:
        look = self.look
        head = look.font(Use.BODY_STRONG)
        base = look.u(1) + cap_height(head)
        if not self._lines:
            self._paint_quiet(painter, base)
            return
        asked = tr("Which slip would explain it")
        set_line(painter, QPointF(0, base), asked, head, look.colour("ink2"))
        top, high = base + look.u(3, 2), look.u(10, 7)
        for number, line in enumerate(self._lines[: _FEW if look.small else MOST_SLIPS]):
            rect = QRectF(0, top + number * high, self.width(), high)
            self._paint_slip(painter, rect, line, best=number == 0 and line.inside)

    def _paint_quiet(self, painter: QPainter, base: float) -> None:
        look, font = self.look, self.look.font(Use.BODY)
        for number, text in enumerate(wrapped(self._quiet, font, self.width())):
            place = QPointF(0, base + number * look.u(6.6, 5.2))
            set_line(painter, place, text, font, look.colour("ink2"))

    def _paint_slip(self, painter: QPainter, rect: QRectF, line: SlipLine, *, best: bool) -> None:
        look, pad = self.look, self.look.u(2.8, 2)
        font = look.font(Use.BODY_STRONG if best else Use.BODY)
        ink = look.colour("ink" if best else "ink2")
        if best:
            painter.setPen(QPen(look.colour("ink"), 2.0))
            painter.setBrush(look.colour("band1" if not look.red_lamp else "fill1"))
            painter.drawRect(rect.adjusted(1, 1, -1, -1))
        else:
            painter.setPen(QPen(look.colour("hair"), 1.0))
            painter.drawLine(QLineF(rect.left(), rect.bottom(), rect.right(), rect.bottom()))
        base = middle_baseline(rect, font)
        outcome, middle = rect.right() - pad, rect.left() + 0.66 * rect.width()
        set_line(painter, QPointF(outcome, base), _outcome(line), font, ink, align=RIGHT)
        set_line(painter, QPointF(middle, base), line.grams, font, ink, align=RIGHT)
        room = middle - advance(font, line.grams) - rect.left() - 2 * pad
        fitted = font_to_fit(font, line.name, room, 8.0)
        set_line(painter, QPointF(rect.left() + pad, base), line.name, fitted, ink, room=room)


def _outcome(line: SlipLine) -> str:
    return tr("inside") if line.inside else tr("outside")
