"""The night as a map: a column a row in walking order, tubs downward, and the tallies."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import QPainter, QPixmap, QPolygonF
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
from keeper.desktop.widgets.stamps import stamp_small, stamp_tile
from keeper.desktop.widgets.tile import FACES, TileState, paint_small
from keeper.language import tr


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
    return tr("the night: {told}", told=", ".join(part for part in parts if part))


def columns(racks: Sequence[NightRack], rect: QRectF, most: float, air: float) -> Iterator[QRectF]:
    """The rectangle of each row's column over all racks, *air* px between racks.

    Columns stand on whole pixels and are as wide as there is room for, at most *most* px; with
    many racks the air takes up to a quarter of the width.
    """
    count = sum(len(rack.rows) for rack in racks)
    gaps = max(1, len(racks) - 1)
    air = min(air, 0.25 * rect.width() / gaps)
    wide = min(most, (rect.width() - air * (len(racks) - 1)) / max(1, count))
    left = rect.left()
    for rack in racks:
        for _ in rack.rows:
            edges = (round(left), int(left + wide + 1e-6))
            yield QRectF(edges[0], rect.top(), max(1, edges[1] - edges[0]), rect.height())
            left += wide
        left += air


class NightMap(Drawn):
    """Paints a ``Night``: heading, map with a marker under the current row, tallies, pace.

    The picture is kept, and a new night of the same racks changes only what differs.
    """

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._night = Night(racks=(), current=None, tallies=())
        self._picture = QPixmap()
        self._drawn: Night | None = None
        self._drawn_for: tuple[object, ...] = ()
        self._columns: list[QRectF] = []
        self._tallied: dict[float, object] = {}

    def show_night(self, night: Night) -> None:
        """Show *night*."""
        self._night = night
        self.tell(night_words(night))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(160), self.look.u(60, 42)

    def paint(self, painter: QPainter) -> None:
        self._bring_up_to_date()
        painter.drawPixmap(0, 0, self._picture)

    def _bring_up_to_date(self) -> None:
        look, dots = self.look, self.devicePixelRatioF()
        drawn_for = (self.size(), dots, look.palette, look.font(Use.TABLE))
        if drawn_for != self._drawn_for or not _same_shape(self._drawn, self._night):
            self._picture = QPixmap(self.size() * dots)
            self._picture.setDevicePixelRatio(dots)
            self._picture.fill(Qt.GlobalColor.transparent)
            self._drawn = None
        if self._drawn is not self._night and not self._picture.isNull():
            painter = QPainter(self._picture)
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            self._paint_changes(painter)
            painter.end()
        self._drawn, self._drawn_for = self._night, drawn_for

    def _paint_changes(self, painter: QPainter) -> None:
        look, old, new = self.look, self._drawn, self._night
        head = look.u(1.5) + cap_height(look.font(Use.BODY_STRONG))
        letters, bottom = head + look.u(9.3, 5), self.height() - look.u(23, 14.2)
        if old is None or old.aside != new.aside:
            _clear(painter, QRectF(0, 0, self.width(), head + look.u(2)))
            self._paint_heading(painter, head)
        self._paint_map(painter, QRectF(0, letters, self.width(), bottom - letters))
        if old is None or (old.tallies, old.pace) != (new.tallies, new.pace):
            self._paint_tallies(painter, self.height() - look.u(16, 10.4))

    def _paint_heading(self, painter: QPainter, base: float) -> None:
        look = self.look
        head, aside = look.font(Use.BODY_STRONG), look.font(Use.TABLE)
        head.setWeight(look.font(Use.LINE_TITLE).weight())
        runs = [
            Run(text=tr("The night"), font=head, colour=look.colour("ink2")),
            Run(text=self._night.aside, font=aside, colour=look.colour("ink3"), gap=look.u(3, 2)),
        ]
        set_runs(painter, QPointF(0, base), runs, self.width())

    def _paint_map(self, painter: QPainter, rect: QRectF) -> None:
        """Letters, cells and marker; of a night drawn before only the rows that changed."""
        look, old, new = self.look, self._drawn, self._night
        cells = QRectF(rect)
        cells.setTop(round(rect.top() + look.u(2.3, 2)))
        cells.setBottom(round(rect.bottom()))
        if old is None:  # else the night has kept its shape, and the picture its size
            self._columns = list(columns(new.racks, cells, look.u(9), look.u(5.5, 3.6)))
        moved = old is None or old.current != new.current
        if moved:
            _clear(painter, QRectF(0, cells.bottom() + 1, self.width(), look.u(3.4, 2.6)))
            _clear(painter, QRectF(0, rect.top() - look.u(5, 4), self.width(), look.u(5.8, 4.6)))
        first = 0
        for number, rack in enumerate(new.racks):
            before = old.racks[number] if old is not None else None
            here = self._columns[first : first + len(rack.rows)]
            first += len(here)
            if moved and here:
                self._paint_letter(painter, QPointF(here[0].left(), rect.top()), number)
            if before is not rack:
                self._paint_rack(painter, here, rack, before)
            if moved and new.current is not None and new.current[0] == number:
                _paint_marker(painter, look, here[new.current[1]])

    def _paint_rack(
        self, painter: QPainter, here: Sequence[QRectF], rack: NightRack, before: NightRack | None
    ) -> None:
        """The columns of *rack* that are not as they were *before*."""
        rows = before.rows if before is not None else ((),) * len(rack.rows)
        for column, row, was in zip(here, rack.rows, rows, strict=True):
            if was is not row:
                self._paint_column(painter, column, row, was)

    def _paint_letter(self, painter: QPainter, place: QPointF, number: int) -> None:
        look, night = self.look, self._night
        font = look.font(Use.TABLE_STRONG)
        font.setWeight(look.font(Use.LINE_TITLE).weight())
        here = night.current is not None and night.current[0] == number
        set_line(painter, place, night.racks[number].letter, font, look.colour(_INK[here]))

    def _paint_column(
        self,
        painter: QPainter,
        rect: QRectF,
        row: tuple[TileState, ...],
        was: tuple[TileState, ...],
    ) -> None:
        """The cells of *row* that are not as they were; the current one spreads by a pixel."""
        gap = 2 if rect.width() > 9 else 1
        high = rect.height() / max(1, len(row))
        changed = [n for n, state in enumerate(row) if not was or was[n] is not state]
        for last in (False, True):
            for index in changed:
                if (row[index] is TileState.CURRENT) is not last:
                    continue
                top, end = round(index * high), round((index + 1) * high)
                tall = max(1, end - top - gap)
                cell = QRectF(rect.left(), rect.top() + top, max(1, rect.width() - gap), tall)
                if last:
                    spread = cell.adjusted(-1, -1, 1, 1)
                    _clear(painter, spread)
                    paint_small(painter, spread, row[index], self.look.palette)
                else:
                    self._paint_cell(painter, cell, row[index])

    def _paint_cell(self, painter: QPainter, cell: QRectF, state: TileState) -> None:
        """A stamp where a px is so many whole dots; thousands of cells are laid at once."""
        dots = self.devicePixelRatioF()
        if self._drawn is not None:
            _clear(painter, cell.adjusted(-1, -1, 1, 1))
        if dots.is_integer():
            stamp_small(painter, cell, state, self.look.palette, dots)
        else:
            paint_small(painter, cell, state, self.look.palette)

    def _paint_tallies(self, painter: QPainter, top: float) -> None:
        """The tallies and the pace that changed; all of them where their places did."""
        spots, pace = self._spots()
        before, self._tallied = self._tallied, {**spots, pace: self._night.pace}
        if self._drawn is None or set(before) != set(self._tallied):
            _clear(painter, QRectF(0, top - 1, self.width(), self.height()))
            before = {}
        for left, tally in spots.items():
            if before.get(left) != tally:
                self._paint_tally(painter, QPointF(left, top), tally)
        if before.get(pace) != self._night.pace:
            self._paint_pace(painter, QPointF(pace, top))

    def _spots(self) -> tuple[dict[float, Tally], float]:
        """Where each tally begins, and the pace after them."""
        look, night = self.look, self._night
        widths = [self._tally_width(tally) for tally in night.tallies]
        lines = zip((Use.BODY_STRONG, Use.TABLE), night.pace, strict=True)
        pace = max(advance(look.font(use), words) for use, words in lines)
        pieces = len(widths) + bool(pace)
        spare = self.width() - sum(widths) - pace
        air = max(look.u(1), min(look.u(16), spare / max(1, pieces - 1)))
        spots, left = {}, 0.0
        for tally, width in zip(night.tallies, widths, strict=True):
            spots[round(left, 1)] = tally
            left += width + air
        return spots, round(left, 1)

    def _tile_size(self) -> QSizeF:
        return QSizeF(self.look.u(7.6, 5.8), self.look.u(6.2, 4.6))

    def _tally_width(self, tally: Tally) -> float:
        count = advance(self.look.font(Use.LINE_TITLE), str(tally.count))
        words = advance(self.look.font(Use.TABLE), tally.words)
        return max(words, self._tile_size().width() + self.look.u(2) + count)

    def _paint_tally(self, painter: QPainter, place: QPointF, tally: Tally) -> None:
        look, tile = self.look, QRectF(place, self._tile_size())
        room = self._tally_width(tally)
        _clear(painter, QRectF(place.x() - 0.5, place.y() - 1, room + 1, self.height()))
        text = "" if tally.state is TileState.CURRENT else None
        stamp_tile(painter, tile, tally.state, look.palette, text)
        count = look.font(Use.LINE_TITLE)
        base = tile.center().y() + cap_height(count) / 2
        beside = QPointF(tile.right() + look.u(2, 1.6), base)
        set_line(painter, beside, str(tally.count), count, look.colour("ink"))
        under = QPointF(tile.left(), tile.bottom() + look.u(5.6, 4.1))
        font = look.font(Use.TABLE)
        set_line(painter, under, tally.words, font, look.colour("ink2"), room=room + 1)

    def _paint_pace(self, painter: QPainter, place: QPointF) -> None:
        look, (first, second) = self.look, self._night.pace
        room = self.width() - place.x() + 1
        _clear(painter, QRectF(place.x() - 0.5, place.y() - 1, room, self.height()))
        base = place.y() + self._tile_size().height()
        above, under = base - look.u(1.2, 0.8), base + look.u(5.6, 4.1)
        fitted = font_to_fit(look.font(Use.BODY_STRONG), first, room, 8.0)
        left = place.x()
        set_line(painter, QPointF(left, above), first, fitted, look.colour("ink"), room=room)
        font = look.font(Use.TABLE)
        set_line(painter, QPointF(left, under), second, font, look.colour("ink2"), room=room)


_INK = {True: "ink", False: "ink2"}


def _same_shape(old: Night | None, new: Night) -> bool:
    """Whether both nights have the same racks with as many tubs in each row."""
    if old is None or len(old.racks) != len(new.racks):
        return False
    return all(
        one is other
        or (one.letter == other.letter and list(map(len, one.rows)) == list(map(len, other.rows)))
        for one, other in zip(old.racks, new.racks, strict=True)
    )


def _paint_marker(painter: QPainter, look: Look, column: QRectF) -> None:
    """A tip beneath the column in which the keeper stands."""
    top, half = column.bottom() + look.u(0.9, 0.7), look.u(2.8, 2.2)
    high, middle = look.u(2, 1.6), column.center().x() - 1
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(look.colour("ink"))
    corners = [
        QPointF(middle - half, top + high),
        QPointF(middle, top),
        QPointF(middle + half, top + high),
    ]
    painter.drawPolygon(QPolygonF(corners))


def _clear(painter: QPainter, rect: QRectF) -> None:
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    painter.setCompositionMode(QPainter.CompositionMode.CompositionMode_Clear)
    painter.fillRect(rect, Qt.GlobalColor.transparent)
    painter.restore()
