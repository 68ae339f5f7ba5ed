"""The refusal strip set in columns like a newspaper: blocks of rows, each with its nights."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QRectF


@dataclass(frozen=True, slots=True, kw_only=True)
class StripSizes:
    """Lengths in px: the label before and the total behind an animal's nights, the widest and
    tallest a night is drawn, the least height that can be told apart, and air."""

    label: float
    total: float
    widest: float
    tallest: float
    least: float
    head: float
    air: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """A line of a column: an animal of a row, or the head of a row (animal is None)."""

    column: int
    top: float
    row: int
    animal: int | None


@dataclass(frozen=True, slots=True, kw_only=True)
class StripShape:
    """The rows from *first* up to, not including, *last* are shown."""

    columns: tuple[QRectF, ...]
    lines: tuple[Line, ...]
    high: float
    wide: float
    first: int
    last: int


def strip_shape(
    rows: Sequence[int], nights: int, area: QRectF, sizes: StripSizes, at_row: int = 0
) -> StripShape:
    """Rows of so many animals each: all of them where they can be read, else in pages.

    The page is the one that holds *at_row*.
    """
    most = max(1, int((area.width() + sizes.air) / (_narrowest(nights, sizes) + sizes.air)))
    for high in _heights(sizes):
        for columns in range(1, most + 1):
            found = _placed(rows, nights, area, sizes, (0, columns, high))
            if found.last == len(rows):
                return found
    page = _placed(rows, nights, area, sizes, (0, most, sizes.least))
    while page.last <= at_row and page.last > page.first:
        page = _placed(rows, nights, area, sizes, (page.last, most, sizes.least))
    return page


def _heights(sizes: StripSizes) -> list[float]:
    """Heights of a line to try, tallest first, a px apart."""
    count = int(sizes.tallest - sizes.least) + 1
    return [max(sizes.least, sizes.tallest - n) for n in range(count)] + [sizes.least]


def _narrowest(nights: int, sizes: StripSizes) -> float:
    return sizes.label + sizes.total + nights * 0.5 * sizes.widest


def _placed(
    rows: Sequence[int],
    nights: int,
    area: QRectF,
    sizes: StripSizes,
    chosen: tuple[int, int, float],
) -> StripShape:
    """Fill column after column; a row is never cut, a longer one than a column is left short."""
    first, columns, high = chosen
    width = (area.width() - (columns - 1) * sizes.air) / columns
    wide = max(1.0, min(sizes.widest, (width - sizes.label - sizes.total) / max(1, nights)))
    used = sizes.label + nights * wide + sizes.total
    top = begin = area.top() + sizes.head
    lines: list[Line] = []
    column, row = 0, first
    while row < len(rows):
        need = (rows[row] + 1) * high
        if top + need > area.bottom() + 0.5 and top > begin:
            column, top = column + 1, begin
        if column >= columns or (top + need > area.bottom() + 0.5 and row > first):
            break
        lines += _lines(column, top, row, rows[row], high)
        top += need
        row += 1
    boxes = tuple(
        QRectF(area.left() + n * (used + sizes.air), area.top(), used, area.height())
        for n in range(min(columns, column + 1))
    )
    return StripShape(
        columns=boxes, lines=tuple(lines), high=high, wide=wide, first=first, last=row
    )


def _lines(column: int, top: float, row: int, animals: int, high: float) -> list[Line]:
    head = Line(column=column, top=top, row=row, animal=None)
    return [head] + [
        Line(column=column, top=top + (n + 1) * high, row=row, animal=n) for n in range(animals)
    ]
