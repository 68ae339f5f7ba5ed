"""Where everything stands on a walking page: the rack row, the pulled-out tub, the panel.

Pure geometry. The pulled-out tub and the panel beneath it are one outline: the drawer's frame
runs down past the shelf and on into the panel.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import Enum

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPolygonF

MOST_TUBS = 14

Units = Callable[[float, float], float]
"""A length in px from units in the large and in the small column."""


class FrontStyle(Enum):
    """What the fronts show: a state as a patch, or a value in figures. Heights in units."""

    PATCH = (36.0, 25.5)
    VALUE = (27.5, 20.0)


@dataclass(frozen=True, slots=True, kw_only=True)
class DrawerShape:
    """Rectangles in px: tub fronts, the two uprights, the shelf, and the three areas below."""

    fronts: tuple[QRectF, ...]
    uprights: tuple[QRectF, QRectF]
    shelf_y: float
    panel: QRectF
    side: QRectF
    below: QRectF
    outline: QPolygonF


def drawer_shape(
    width: float,
    height: float,
    count: int,
    current: int | None,
    units: Units,
    style: FrontStyle,
    panel_share: float,
) -> DrawerShape:
    """Lay out a page of *width* x *height* px with *count* tubs (1 to 14), *current* pulled out.

    Args:
        current: index of the pulled-out tub, or None when the walk is not in this row.
        panel_share: how much of the height under the shelf the panel has; the rest is below.

    Raises:
        ValueError: *count* or *current* out of range.
    """
    if not 1 <= count <= MOST_TUBS:
        raise ValueError(f"a row holds 1 to {MOST_TUBS} tubs, not {count}")
    if current is not None and not 0 <= current < count:
        raise ValueError(f"tub index {current} is not in a row of {count}")
    margin, post = units(7, 3.5), units(2.5, 1.5)
    top = units(2.25, 2.75)
    bottom = top + units(*style.value)
    shelf = bottom + units(1.25, 1.25)
    row = QRectF(margin + post, top, width - 2 * (margin + post), bottom - top)
    fronts = _fronts(row, count, current, units)
    panel, side, below = _areas(width, height, shelf, panel_share, units)
    posts = (margin, width - margin - post)
    tall = shelf + units(1.5, 1.25) - units(0.75, 1.25)
    left, right = (QRectF(x, units(0.75, 1.25), post, tall) for x in posts)
    outline = _outline(panel, fronts[current] if current is not None else None, shelf)
    return DrawerShape(
        fronts=fronts,
        uprights=(left, right),
        shelf_y=shelf,
        panel=panel,
        side=side,
        below=below,
        outline=outline,
    )


def _fronts(row: QRectF, count: int, current: int | None, units: Units) -> tuple[QRectF, ...]:
    gap = units(1.25, 1.1)
    free = row.width() - (count + 1) * gap
    extra = 0.0 if current is None else min(units(12, 9.5), 0.5 * free / count)
    each = (free - extra) / count
    rects, left = [], row.left() + gap
    for index in range(count):
        pulled = index == current
        wide = each + extra if pulled else each
        rise = units(1.5, 1.5) if pulled else 0.0
        rects.append(QRectF(left, row.top() - rise, wide, row.height() + rise))
        left += wide + gap
    return tuple(rects)


def _areas(
    width: float, height: float, shelf: float, panel_share: float, units: Units
) -> tuple[QRectF, QRectF, QRectF]:
    margin, gutter = units(7, 3.5), units(8.5, 4)
    side_width = units(102.5, 78)
    side_left = width - margin - side_width
    top, bottom = shelf + units(6.25, 4), height - units(3, 2)
    split = top + panel_share * (bottom - top)
    panel = QRectF(margin, top, side_left - gutter - margin, split - top)
    side = QRectF(side_left, top, side_width, bottom - top)
    below_top = split + units(4, 2)
    return panel, side, QRectF(margin, below_top, panel.width(), bottom - below_top)


def _outline(panel: QRectF, pulled: QRectF | None, shelf: float) -> QPolygonF:
    corners = [panel.topRight(), panel.bottomRight(), panel.bottomLeft(), panel.topLeft()]
    if pulled is not None:
        corners += [
            QPointF(pulled.left(), shelf),
            pulled.topLeft(),
            pulled.topRight(),
            QPointF(pulled.right(), shelf),
        ]
    return QPolygonF(corners)
