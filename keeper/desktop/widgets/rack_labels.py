"""What is written round the tubs of a rack: its heading, the number of a row, its hot end."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.lettering import (
    CENTRE,
    RIGHT,
    advance,
    font_to_fit,
    middle_baseline,
    set_line,
)


def paint_heading(
    painter: QPainter, box: QRectF, look: Look, letter: str, about: str, figures: str
) -> None:
    """Letter, who lives there, and at the right what the figures there are."""
    name, aside, small = (look.font(u) for u in (Use.PAGE_NAME, Use.PAGE_ASIDE, Use.TABLE))
    name.setPointSizeF(min(1.0, box.height() / look.u(9, 7)) * 0.72 * name.pointSizeF())
    base = box.bottom() - min(look.u(2.4, 1.8), 0.27 * box.height())
    used = set_line(painter, QPointF(0, base), letter, name, look.colour("ink"))
    room = box.width() - used - look.u(2.5)
    if advance(small, figures) <= room:
        at, ink3 = QPointF(box.right(), base), look.colour("ink3")
        room -= set_line(painter, at, figures, small, ink3, align=RIGHT) + look.u(3)
    if room > look.u(10):
        start = QPointF(used + look.u(2.5, 1.8), base)
        font = font_to_fit(aside, about, room, small.pointSizeF())
        set_line(painter, start, about, font, look.colour("ink2"), room=room)


def paint_number(painter: QPainter, box: QRectF, look: Look, number: str) -> None:
    """The number of a row on the left upright."""
    font = font_to_fit(look.font(Use.LINE_TITLE), number, box.width() - 3, 6.5)
    at = QPointF(box.center().x(), middle_baseline(box, font))
    set_line(painter, at, number, font, look.colour("ink"), align=CENTRE)


def paint_heat(painter: QPainter, box: QRectF, look: Look, heat: str, out: str) -> None:
    """The hot end of a row; reversed where *out* says that it is out of range."""
    pad = min(look.u(1.6), 0.12 * box.width())
    font = look.font(Use.BODY_STRONG if out else Use.BODY)
    font = font_to_fit(font, heat, box.width() - 2 * pad, 6.5)
    middle = pad + (box.width() - pad) / 2
    if out:
        wide = min(box.width() - 1, advance(font, heat) + look.u(2.4))
        patch = QRectF(0, 0, wide, min(box.height(), look.u(7, 5.6)))
        patch.moveCenter(QPointF(middle, box.center().y()))
        painter.fillRect(patch, look.colour("ink"))
    at = QPointF(middle, middle_baseline(box, font))
    ink = look.colour("ground" if out else "ink2")
    set_line(painter, at, heat, font, ink, align=CENTRE)


PAINTERS: dict[str, Callable[..., None]] = {
    "heading": paint_heading,
    "number": paint_number,
    "heat": paint_heat,
}
"""What paints a label of each kind; after painter, box and look come its own words."""
