"""Text set by hand: on a baseline, cut with an ellipsis or set smaller where it has no room."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter

LEFT = Qt.AlignmentFlag.AlignLeft
CENTRE = Qt.AlignmentFlag.AlignHCenter
RIGHT = Qt.AlignmentFlag.AlignRight
LEAST_PT = 9.0
"""A line of a list is set no smaller than this; what still has no room is cut."""

_NARROW = 0.82  # of the usual width of a letter
_ROUNDING_PX = 0.5  # a text measured at exactly its room is not cut


@dataclass(frozen=True, slots=True, kw_only=True)
class Run:
    """A piece of a line in one font and colour; ``gap`` px of air stand before it."""

    text: str
    font: QFont
    colour: QColor
    gap: float = 0.0


def advance(font: QFont, text: str) -> float:
    """Width of *text* in device-independent px."""
    return QFontMetricsF(font).horizontalAdvance(text)


def cap_height(font: QFont) -> float:
    """Height of a capital in device-independent px."""
    return QFontMetricsF(font).capHeight()


def set_line(
    painter: QPainter,
    place: QPointF,
    text: str,
    font: QFont,
    colour: QColor,
    *,
    align: Qt.AlignmentFlag = LEFT,
    room: float | None = None,
    flush: bool = False,
) -> float:
    """Set *text* with its baseline at *place* and return the width used.

    Args:
        align: whether *place* is the left end, the middle or the right end.
        room: the width there is; longer text is cut with an ellipsis.
        flush: put the ink of the first letter, not its side bearing, at the left end.
    """
    if not text:
        return 0.0
    metrics = QFontMetricsF(font)
    width = metrics.horizontalAdvance(text)
    if room is not None and width > room + _ROUNDING_PX:
        text = metrics.elidedText(text, Qt.TextElideMode.ElideRight, max(0.0, room))
        width = metrics.horizontalAdvance(text)
    left = place.x()
    if align is not LEFT:
        left -= width if align is RIGHT else width / 2
    if flush:
        left -= metrics.leftBearing(text[0])
    painter.setFont(font)
    painter.setPen(colour)
    painter.drawText(QPointF(left, place.y()), text)
    return width


def set_runs(
    painter: QPainter, place: QPointF, runs: Sequence[Run], room: float | None = None
) -> float:
    """Set *runs* one after another from *place*; return the width. The last that fits is cut."""
    used = 0.0
    for run in runs:
        left = None if room is None else room - used - run.gap
        if left is not None and left <= 0:
            break
        start = QPointF(place.x() + used + run.gap, place.y())
        used += run.gap + set_line(painter, start, run.text, run.font, run.colour, room=left)
    return used


def runs_width(runs: Sequence[Run]) -> float:
    """Width of *runs* set in full."""
    return sum(run.gap + advance(run.font, run.text) for run in runs)


def font_to_fit(font: QFont, text: str, room: float, least_pt: float) -> QFont:
    """*font*, or a smaller one down to *least_pt*, in which *text* is at most *room* wide."""
    width = advance(font, text)
    if width <= room or width <= 0:
        return font
    fitted = QFont(font)
    points = max(least_pt, font.pointSizeF() * room / width)
    fitted.setPointSizeF(points)
    while points > least_pt and advance(fitted, text) > room:
        points = max(least_pt, points - 0.1)
        fitted.setPointSizeF(points)
    return fitted


def narrowed(font: QFont, text: str, room: float, least_pt: float) -> QFont:
    """*font*, or where *text* has no room a narrow one, and then a smaller one."""
    if advance(font, text) <= room:
        return font
    narrow = QFont(font)
    narrow.setStretch(round(_NARROW * (font.stretch() or 100)))
    return font_to_fit(narrow, text, room, least_pt)


def wrapped(text: str, font: QFont, room: float) -> Iterator[str]:
    """*text* broken into lines at most *room* wide; a longer word keeps its own line.

    It breaks at ordinary spaces alone, so a figure stays with its unit after a no-break space.
    """
    width = QFontMetricsF(font).horizontalAdvance
    line = ""
    for word in text.split(" "):
        longer = f"{line} {word}".strip()
        if line and width(longer) > room:
            yield line
            line = word
        else:
            line = longer
    if line:
        yield line


def middle_baseline(rect: QRectF, font: QFont) -> float:
    """The baseline that centres capitals in *rect*."""
    return rect.center().y() + cap_height(font) / 2
