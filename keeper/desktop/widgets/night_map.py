"""The night as a map: a column a row in walking order, tubs downward, and the tallies."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPolygonF
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import (
    Run,
    advance,
    cap_height,
    font_to_fit,
    set_line,
    set_runs,
)
from keeper.desktop.widgets.tile import FACES, TileState, paint_small, paint_tile


@dataclass(frozen=True, slots=True, kw_only=True)
class NightRack:
    """One rack: its letter, and the states of each of its rows in walking order."""

    letter: str
    rows: tuple[tuple[TileState, ...], ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Tally:
    """How many tubs stand in a state, with the words beneath ("taken seen")."""

    state: TileState
    count: int
    words: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Night:
    """The whole map. ``current`` is (rack, row) by index; its tub carries the state CURRENT.

    ``aside`` follows the heading; ``pace`` is two lines at the end of the tallies, or none.
    """

    racks: tuple[NightRack, ...]
    current: tuple[int, int] | None
    tallies: tuple[Tally, ...]
    aside: str = ""
    pace: tuple[str, str] = ("", "")


def night_words(night: Night) -> str:
    """The map in words: aside, tallies by their full names, pace."""
    counts = (f"{tally.count} {FACES[tally.state].words}" for tally in night.tallies)
    parts = (night.aside, "; ".join(counts), *night.pace)
    return "the night: " + ", ".join(part for part in parts if part)


def columns(racks: Sequence[NightRack], rect: QRectF, most: float, air: float) -> Iterator[QRectF]:
    """The rectangle of each row's column over all racks, *air* px between racks.

    Columns are as wide as there is room for, at most *most* px.
    """
    count = sum(len(rack.rows) for rack in racks)
    wide = min(most, (rect.width() - air * (len(racks) - 1)) / max(1, count))
    left = rect.left()
    for rack in racks:
        for _ in rack.rows:
            yield QRectF(left, rect.top(), wide, rect.height())
            left += wide
        left += air


class NightMap(Drawn):
    """Paints a ``Night``: heading, map with a marker under the current row, tallies, pace."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._night = Night(racks=(), current=None, tallies=())

    def show_night(self, night: Night) -> None:
        """Show *night*."""
        self._night = night
        self.tell(night_words(night))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(160), self.look.u(60, 42)

    def paint(self, painter: QPainter) -> None:
        look = self.look
        head, aside = look.font(Use.BODY_STRONG), look.font(Use.TABLE)
        head.setWeight(look.font(Use.LINE_TITLE).weight())
        first = look.u(1.5) + cap_height(head)
        runs = [
            Run(text="The night", font=head, colour=look.colour("ink2")),
            Run(text=self._night.aside, font=aside, colour=look.colour("ink3"), gap=look.u(3, 2)),
        ]
        set_runs(painter, QPointF(0, first), runs, self.width())
        letters = first + look.u(9.3, 5)
        bottom = self.height() - look.u(23, 14.2)
        self._paint_map(painter, QRectF(0, letters, self.width(), bottom - letters))
        self._paint_tallies(painter, self.height() - look.u(16, 10.4))

    def _paint_map(self, painter: QPainter, rect: QRectF) -> None:
        look, night = self.look, self._night
        cells = rect.adjusted(0, look.u(2.3, 2), 0, 0)
        every = columns(night.racks, cells, look.u(9), look.u(5.5, 3.6))
        letter = look.font(Use.TABLE_STRONG)
        letter.setWeight(look.font(Use.LINE_TITLE).weight())
        for number, rack in enumerate(night.racks):
            here = night.current is not None and night.current[0] == number
            for index, row in enumerate(rack.rows):
                column = next(every)
                if index == 0:
                    ink = look.colour("ink" if here else "ink2")
                    set_line(painter, QPointF(column.left(), rect.top()), rack.letter, letter, ink)
                self._paint_column(painter, column, row)
                if (number, index) == night.current:
                    self._paint_marker(painter, column)

    def _paint_column(self, painter: QPainter, rect: QRectF, row: tuple[TileState, ...]) -> None:
        gap = min(2.0, 0.15 * rect.width())
        high = rect.height() / max(1, len(row))
        for index, state in enumerate(row):
            cell = QRectF(rect.left(), rect.top() + index * high, rect.width() - gap, high - gap)
            if state is TileState.CURRENT:
                cell = cell.adjusted(-1, -1, 1, 1)
            paint_small(painter, cell, state, self.look.palette)

    def _paint_marker(self, painter: QPainter, column: QRectF) -> None:
        top, half = column.bottom() + self.look.u(0.9, 0.7), self.look.u(2.8, 2.2)
        high, middle = self.look.u(2, 1.6), column.center().x() - 1
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self.look.colour("ink"))
        corners = [
            QPointF(middle - half, top + high),
            QPointF(middle, top),
            QPointF(middle + half, top + high),
        ]
        painter.drawPolygon(QPolygonF(corners))

    def _paint_tallies(self, painter: QPainter, top: float) -> None:
        look, night = self.look, self._night
        size = (look.u(7.6, 5.8), look.u(6.2, 4.6))
        widths = [self._tally_width(tally, size[0]) for tally in night.tallies]
        uses = (Use.BODY_STRONG, Use.TABLE)
        lines = zip(uses, night.pace, strict=True)
        pace = max(advance(look.font(use), words) for use, words in lines)
        pieces = len(widths) + bool(pace)
        spare = self.width() - sum(widths) - pace
        air = max(look.u(1), min(look.u(16), spare / max(1, pieces - 1)))
        left = 0.0
        for tally, width in zip(night.tallies, widths, strict=True):
            self._paint_tally(painter, QRectF(left, top, *size), tally, width)
            left += width + air
        self._paint_pace(painter, QPointF(left, top + size[1]), self.width() - left + 1)

    def _tally_width(self, tally: Tally, tile: float) -> float:
        count = advance(self.look.font(Use.LINE_TITLE), str(tally.count))
        words = advance(self.look.font(Use.TABLE), tally.words)
        return max(words, tile + self.look.u(2) + count)

    def _paint_tally(self, painter: QPainter, tile: QRectF, tally: Tally, room: float) -> None:
        look = self.look
        text = "" if tally.state is TileState.CURRENT else None
        paint_tile(painter, tile, tally.state, look.palette, text)
        count = look.font(Use.LINE_TITLE)
        base = tile.center().y() + cap_height(count) / 2
        place = QPointF(tile.right() + look.u(2, 1.6), base)
        set_line(painter, place, str(tally.count), count, look.colour("ink"))
        under = QPointF(tile.left(), tile.bottom() + look.u(5.6, 4.1))
        font = look.font(Use.TABLE)
        set_line(painter, under, tally.words, font, look.colour("ink2"), room=room + 1)

    def _paint_pace(self, painter: QPainter, place: QPointF, room: float) -> None:
        look, (first, second) = self.look, self._night.pace
        strong = look.font(Use.BODY_STRONG)
        above = QPointF(place.x(), place.y() - look.u(1.2, 0.8))
        under = QPointF(place.x(), place.y() + look.u(5.6, 4.1))
        fitted = font_to_fit(strong, first, room, 8.0)
        set_line(painter, above, first, fitted, look.colour("ink"), room=room)
        font = look.font(Use.TABLE)
        set_line(painter, under, second, font, look.colour("ink2"), room=room)
