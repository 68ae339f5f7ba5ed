"""What a night asks of each rack, as a table of counts under one large line."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QLineF, QPointF, QRectF
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import RIGHT, cap_height, font_to_fit, set_line, wrapped
from keeper.language import tr

LEAST_PT = 22.0


@dataclass(frozen=True, slots=True, kw_only=True)
class CountRow:
    """One rack: its letter and as many counts as there are columns."""

    name: str
    counts: tuple[int, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class NightCounts:
    """``call`` is the large line; ``columns`` head the counts; ``notes`` stand under the table."""

    call: str
    columns: tuple[str, ...]
    rows: tuple[CountRow, ...]
    total: CountRow
    notes: tuple[str, ...] = ()


class CountsTable(Drawn):
    """Paints ``NightCounts``; racks that have no room are told in one line with their sum."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._counts = NightCounts(call="", columns=(), rows=(), total=CountRow(name="", counts=()))

    def show_counts(self, counts: NightCounts) -> None:
        """Show *counts*."""
        self._counts = counts
        rows = (_said(row, counts.columns) for row in (counts.total, *counts.rows))
        told = (counts.call, *rows, *counts.notes)
        self.tell(" ".join(f"{part.removesuffix('.')}." for part in told))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(160, 120), self.look.u(120, 90)

    def paint(self, painter: QPainter) -> None:
        look, counts = self.look, self._counts
        call = font_to_fit(look.font(Use.PAGE_NAME), counts.call, self.width(), LEAST_PT)
        base = look.u(4) + cap_height(call)
        set_line(painter, QPointF(0, base), counts.call, call, look.colour("ink"))
        base += look.u(13, 10)
        self._paint_line(painter, base, (tr("rack"), *counts.columns), Use.TABLE, "ink3")
        notes = [line for note in counts.notes for line in self._wrapped(note)]
        high = look.u(8.4, 6.6)
        room = self.height() - base - look.u(10, 8) - len(notes) * look.u(6.6, 5.4) - high
        for name, cells in self._lines(int(room / high)):
            base += high
            self._paint_line(painter, base, (name, *cells), Use.BODY_STRONG, "ink")
            self._paint_rule(painter, base + 0.32 * high, "hair")
        base += high
        self._paint_rule(painter, base - 0.68 * high, "line")
        total = tuple(str(count) for count in counts.total.counts)
        base += look.u(4, 3)
        self._paint_line(painter, base, (counts.total.name, *total), Use.PAGE_NAME, "ink")
        self._paint_notes(painter, base + look.u(10, 8), notes)

    def _lines(self, most: int) -> list[tuple[str, tuple[str, ...]]]:
        rows = list(self._counts.rows)
        if len(rows) > max(1, most):
            kept, rest = rows[: max(0, most - 1)], rows[max(0, most - 1) :]
            sums = tuple(map(sum, zip(*(row.counts for row in rest), strict=True)))
            rows = [*kept, CountRow(name=tr("{count} more", count=len(rest)), counts=sums)]
        return [(row.name, tuple(str(n) if n else "·" for n in row.counts)) for row in rows]

    def _paint_line(
        self, painter: QPainter, base: float, cells: Sequence[str], use: Use, ink: str
    ) -> None:
        look = self.look
        font, colour = look.font(use), look.colour(ink)
        wide = (self.width() - look.u(24, 18)) / max(1, len(cells) - 1)
        set_line(painter, QPointF(0, base), cells[0], font, colour, room=look.u(24, 18))
        for n, cell in enumerate(cells[1:], start=1):
            place = QPointF(look.u(24, 18) + n * wide, base)
            fitted = font_to_fit(font, cell, wide - look.u(1), 8.0)
            set_line(painter, place, cell, fitted, colour, align=RIGHT)

    def _paint_rule(self, painter: QPainter, y: float, ink: str) -> None:
        painter.setPen(QPen(self.look.colour(ink), 1.0))
        painter.drawLine(QLineF(0, y, self.width(), y))

    def _wrapped(self, note: str) -> list[str]:
        return list(wrapped(note, self.look.font(Use.BODY), QRectF(self.rect()).width()))

    def _paint_notes(self, painter: QPainter, base: float, lines: Sequence[str]) -> None:
        look = self.look
        for n, line in enumerate(lines):
            place = QPointF(0, base + n * look.u(6.6, 5.4))
            font = look.font(Use.BODY)
            set_line(painter, place, line, font, look.colour("ink2"), room=self.width())


def _said(row: CountRow, columns: Sequence[str]) -> str:
    counts = ", ".join(f"{n} {words}" for n, words in zip(row.counts, columns, strict=True))
    return f"{row.name}: {counts}"
