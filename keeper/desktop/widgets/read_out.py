"""The read-out sheet: every lane's figures on the day of the cursor, in the order of the lanes."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QLineF, QPointF, QRectF
from PySide6.QtGui import QFont, QPainter, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import RIGHT, advance, cap_height, set_line, wrapped
from keeper.language import tr

_VALUE_LINES = 4


@dataclass(frozen=True, slots=True, kw_only=True)
class Figure:
    """One line: what it is, its value, and a smaller line beneath. struck: put right since."""

    label: str
    value: str
    beneath: str = ""
    struck: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Figures:
    """A day in groups of figures, ending in a sentence of cause under its own head."""

    head: str
    aside: str
    groups: tuple[tuple[Figure, ...], ...]
    cause_head: str = ""
    cause: str = ""


class ReadOut(Drawn):
    """Shows the figures of one day. It takes the height there is; the cause is cut last."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._figures: Figures | None = None
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)

    def show_figures(self, figures: Figures) -> None:
        """Show one day."""
        self._figures = figures
        self.tell("\n".join(_lines_of(figures)))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(61.5, 52), self.look.u(100, 80)

    def paint(self, painter: QPainter) -> None:
        look, figures = self.look, self._figures
        top = look.u(2.4, 0.8)
        sheet = QRectF(self.rect()).adjusted(0, top, 0, 0)
        painter.fillRect(sheet, look.colour("sheet"))
        painter.setPen(QPen(look.colour("point"), 3))
        painter.drawLine(QLineF(1.5, top, 1.5, self.height()))
        if figures is None:
            return
        page = _Page(painter, look, look.u(4.2, 3), self.width() - look.u(2.4, 1.8))
        page.head(figures.head, figures.aside)
        for number, group in enumerate(figures.groups):
            if number:
                page.rule()
            for figure in group:
                page.figure(figure)
        if figures.cause:
            page.rule()
            page.cause(figures.cause_head, figures.cause, self.height() - look.u(1.5, 1))


class _Page:
    """Sets lines down the sheet, one under another."""

    def __init__(self, painter: QPainter, look: Look, left: float, right: float) -> None:
        self._painter, self._look = painter, look
        self._left, self._right = left, right
        self._y = look.u(3, 1)

    def head(self, words: str, aside: str) -> None:
        font = self._look.font(Use.PAGE_HEAD)
        self._y += cap_height(font) + self._look.u(2.4, 1.4)
        self._set(words, font, "point")
        self._y += self._look.u(5, 4)
        self._set(aside, self._look.font(Use.TABLE), "ink2")
        self._y += self._look.u(2.4, 0.9)

    def rule(self) -> None:
        look = self._look
        self._y += look.u(2, 1.1)
        self._painter.setPen(QPen(look.colour("hair"), 1.0))
        self._painter.drawLine(QLineF(self._left, self._y, self._right, self._y))
        self._y += look.u(0.4, 0)

    def figure(self, figure: Figure) -> None:
        look = self._look
        label, strong = look.font(Use.TABLE), look.font(Use.BODY_STRONG)
        if look.small:
            strong = look.font(Use.TABLE_STRONG)
        strong.setStrikeOut(figure.struck)
        self._y += look.u(5.9, 4.15)
        used = self._set(figure.label, label, "ink2")
        room = self._right - self._left - used - look.u(2)
        lines = _at_most(list(wrapped(figure.value, strong, room)) or [figure.value], _VALUE_LINES)
        for number, line in enumerate(lines):
            self._y += look.u(5.2, 4.1) if number else 0
            self._flush_right(line, strong, "ink", room)
        if figure.beneath:
            self._beneath(figure.beneath, label)

    def cause(self, head: str, words: str, bottom: float) -> None:
        """A heading and as many lines as there is height for."""
        look, body = self._look, self._look.font(Use.BODY)
        strong = look.font(Use.TABLE_STRONG)
        if look.small:
            body = look.font(Use.TABLE)
        self._y += look.u(5.2, 3.9)
        self._set(head, strong, "ink2")
        step = look.u(5.1, 3.9)
        most = int((bottom - self._y) / step)
        for line in _at_most(list(wrapped(words, body, self._right - self._left)), most):
            self._y += step
            self._set(line, body, "ink")

    def _beneath(self, words: str, font: QFont) -> None:
        step = self._look.u(4.7, 3.75)
        for line in _at_most(list(wrapped(words, font, self._right - self._left)), 2):
            self._y += step
            self._flush_right(line, font, "ink2", self._right - self._left)

    def _set(self, words: str, font: QFont, ink: str) -> float:
        place, colour = QPointF(self._left, self._y), self._look.colour(ink)
        room = self._right - self._left
        return set_line(self._painter, place, words, font, colour, room=room)

    def _flush_right(self, words: str, font: QFont, ink: str, room: float) -> None:
        place, colour = QPointF(self._right, self._y), self._look.colour(ink)
        if advance(font, words) > room:
            words_room: float | None = room
        else:
            words_room = None
        set_line(self._painter, place, words, font, colour, align=RIGHT, room=words_room)


def _at_most(lines: Sequence[str], most: int) -> Sequence[str]:
    """The first *most* lines; what is left over joins the last, which is cut as it is drawn."""
    if len(lines) <= most or most < 1:
        return lines[: max(0, most)]
    return [*lines[: most - 1], " ".join(lines[most - 1 :])]


def _lines_of(figures: Figures) -> Iterator[str]:
    """The sheet as text, one figure a line."""
    yield f"{figures.head}, {figures.aside}"
    for group in figures.groups:
        yield from (_line_of(figure) for figure in group)
    if figures.cause:
        yield f"{figures.cause_head}: {figures.cause}"


def _line_of(figure: Figure) -> str:
    parts: Sequence[str] = (figure.value, figure.beneath)
    told = f"{figure.label}: {', '.join(part for part in parts if part)}"
    return tr("{figure} (put right since)", figure=told) if figure.struck else told
