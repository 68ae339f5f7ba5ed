"""The two pictures of a shed clock on one line: days since the last shed, and the cycle."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import QLineF, QPointF, QRectF
from PySide6.QtGui import QPainter, QPen

from keeper.actions.life_lanes import ShedCycle
from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.lettering import LEFT, RIGHT, advance, set_line
from keeper.desktop.widgets.patterns import FINE, Pattern, paint_pattern

STAGE_LOOKS = {
    "dull": (Pattern.DOTS, "ground", "fill3"),
    "opaque": (Pattern.SOLID, "fill3", "fill3"),
    "cleared": (Pattern.PLAIN, "sheet", "line"),
}
_MOST_PAST = 4
_STAGES = ("dull", "opaque", "cleared")


@dataclass(frozen=True, slots=True, kw_only=True)
class Strip:
    """Days since the last shed. low, mid, late: of her own interval; gaps: her past ones."""

    days: int | None
    low: float | None
    mid: float | None
    late: float | None
    gaps: tuple[int, ...]


def paint_strip(painter: QPainter, strip: Strip, rect: QRectF, most: float, look: Look) -> None:
    """Her usual span, her past intervals as ticks, and where she is today; *most* days wide."""
    high = look.u(3.6, 3)
    bar = QRectF(rect.left(), rect.center().y() - high / 2, rect.width(), high)

    def x(days: float) -> float:
        return bar.left() + min(days, most) / most * bar.width()

    painter.setPen(QPen(look.colour("hair"), 1.0))
    painter.drawLine(QLineF(bar.left(), bar.bottom(), bar.right(), bar.bottom()))
    if strip.low is not None and strip.late is not None and strip.mid is not None:
        usual = QRectF(x(strip.low), bar.top(), x(strip.late) - x(strip.low), high)
        painter.fillRect(usual, look.colour("band2"))
        painter.setPen(QPen(look.colour("line"), 1.0))
        ends = (usual.left(), usual.right())
        painter.drawLines([QLineF(end, bar.top(), end, bar.bottom()) for end in ends])
        painter.setPen(QPen(look.colour("ink3"), 1.6))
        painter.drawLine(QLineF(x(strip.mid), bar.top(), x(strip.mid), bar.bottom()))
    painter.setPen(QPen(look.colour("ink2"), 1.1))
    tick = bar.bottom() + look.u(1.2, 1)
    painter.drawLines([QLineF(x(gap), bar.bottom(), x(gap), tick) for gap in strip.gaps])
    if strip.days is not None:
        _paint_now(painter, strip, bar, x(strip.days), x(strip.late or strip.days), look)


def paint_cycles(
    painter: QPainter, cycles: Sequence[ShedCycle], rect: QRectF, scale: float, look: Look
) -> None:
    """Past cycles as thin lines from their first sign to their shed; *scale* px a day."""
    past = [(c.first, c.shed) for c in cycles if c.shed is not None and c.first != c.shed]
    step = look.u(1.3, 1.05)
    top = rect.top() + look.u(1.4, 1.1)
    spans, ends = [], []
    for n, (first, shed) in enumerate(past[-_MOST_PAST:]):
        y = top + n * step
        end = rect.left() + (shed - first).days * scale
        spans.append(QLineF(rect.left(), y, end, y))
        ends.append(QLineF(end, y - step / 2, end, y + step / 2))
    for lines, ink, width in ((spans, "line", 1.0), (ends, "ink2", 1.6)):
        painter.setPen(QPen(look.colour(ink), width))
        painter.drawLines(lines)


def paint_open(
    painter: QPainter, cycle: ShedCycle, rect: QRectF, scale: float, today: date, look: Look
) -> None:
    """The present cycle, thick, with its stages and today."""
    high = look.u(3, 2.5)
    bar = QRectF(rect.left(), rect.bottom() - high - look.u(1.2, 1), 0, high)
    begins = [(name, getattr(cycle, name)) for name in _STAGES if getattr(cycle, name)]
    ends = [day for _, day in begins[1:]] + [today]
    for (name, since), until in zip(begins, ends, strict=True):
        left = bar.left() + (since - cycle.first).days * scale
        wide = max(4.0, (until - since).days * scale)
        patch = QRectF(left, bar.top(), wide, bar.height())
        pattern, paper, mark = STAGE_LOOKS[name]
        painter.fillRect(patch, look.colour(paper))
        paint_pattern(painter, patch, pattern, look.colour(mark), FINE)
        painter.setPen(QPen(look.colour("line"), 1.0))
        painter.drawRect(patch)
    days = (today - cycle.first).days
    x = bar.left() + max(4.0, days * scale)
    painter.setPen(QPen(look.colour("ink"), 2.6))
    painter.drawLine(QLineF(x, bar.top() - 3, x, bar.bottom() + 3))
    font = look.font(Use.TABLE_STRONG)
    base = bar.center().y() + look.u(1.5, 1.2)
    set_line(painter, QPointF(x + look.u(1.2), base), str(days), font, look.colour("ink"))


def _paint_now(
    painter: QPainter, strip: Strip, bar: QRectF, now: float, late: float, look: Look
) -> None:
    thick = look.u(1.5, 1.2)
    line = QRectF(bar.left(), bar.center().y() - thick / 2, now - bar.left(), thick)
    painter.fillRect(line, look.colour("ink2"))
    if strip.late is not None and (strip.days or 0) > strip.late:
        over = QRectF(late, bar.top(), max(3.0, now - late), bar.height())
        painter.fillRect(over, look.colour("sheet"))
        paint_pattern(painter, over, Pattern.BOLD_HATCH, look.colour("ink"), FINE)
    painter.setPen(QPen(look.colour("ink"), 2.6))
    painter.drawLine(QLineF(now, bar.top() - 3, now, bar.bottom() + 3))
    words, font = str(strip.days), look.font(Use.TABLE_STRONG)
    at_end = now + advance(font, words) + look.u(2) > bar.right()
    place = QPointF(now + look.u(-1.2 if at_end else 1.2), bar.top() - look.u(0.6))
    align = RIGHT if at_end else LEFT
    set_line(painter, place, words, font, look.colour("ink"), align=align)
