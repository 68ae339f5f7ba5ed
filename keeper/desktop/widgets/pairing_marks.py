"""What stands on the pairing calendar: bars by letter, lightness and pattern, and single marks."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from enum import Enum, auto

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.lettering import CENTRE, advance, middle_baseline, set_line
from keeper.desktop.widgets.patterns import FINE, Pattern, falling_lines, paint_pattern
from keeper.language import tr


class Kind(Enum):
    """What a bar says."""

    TOGETHER = auto()
    COOLED = auto()
    MAY_LAY = auto()
    LIES = auto()
    MAY_PIP = auto()
    RECOVERING = auto()
    AWAY = auto()


@dataclass(frozen=True, slots=True, kw_only=True)
class BarLook:
    """letter, what it stands for, and how it is filled: roles of a palette."""

    letter: str
    words: str
    paper: str
    mark: str
    pattern: Pattern
    edge: str = "line"
    thick: float = 1.1


LOOKS: Mapping[Kind, BarLook] = {
    Kind.TOGETHER: BarLook(
        letter="T", words=tr("in one tub"), paper="sheet", mark="fill2", pattern=Pattern.SOLID
    ),
    Kind.COOLED: BarLook(
        letter="R", words=tr("cooled"), paper="band2", mark="ink3", pattern=Pattern.PLAIN
    ),
    Kind.MAY_LAY: BarLook(
        letter="N",
        words=tr("eggs may come"),
        paper="sheet",
        mark="point",
        pattern=Pattern.PLAIN,
        edge="point",
        thick=2.2,
    ),
    Kind.LIES: BarLook(
        letter="I",
        words=tr("in the incubator"),
        paper="sheet",
        mark="fill3",
        pattern=Pattern.LEVEL_BARS,
    ),
    Kind.MAY_PIP: BarLook(
        letter="F",
        words=tr("first slit"),
        paper="sheet",
        mark="ink",
        pattern=Pattern.BOLD_HATCH,
        edge="ink",
        thick=1.6,
    ),
    Kind.RECOVERING: BarLook(
        letter="E",
        words=tr("recovering"),
        paper="sheet",
        mark="fill3",
        pattern=Pattern.DOTS,
    ),
    Kind.AWAY: BarLook(
        letter="", words=tr("keeper away"), paper="fill1", mark="ink", pattern=Pattern.PLAIN
    ),
}
"""Each letter means one thing here and is none of those of the gates."""

GRAVID, PRE_LAY = "G", "P"
SIGNS: Mapping[str, str] = {GRAVID: tr("held as gravid"), PRE_LAY: tr("pre-lay shed")}


@dataclass(frozen=True, slots=True, kw_only=True)
class Bar:
    """Days *first* to *last*, both included; None: it may go on to the end of what is in view.

    rank: so many signs older; lasting: it was so until *last*, and no end of it is known.
    """

    kind: Kind
    first: date
    last: date | None
    rank: int = 0
    lasting: bool = False


def paint_bar(
    painter: QPainter,
    rect: QRectF,
    kind: Kind,
    look: Look,
    *,
    open_end: bool = False,
    asked: bool = False,
) -> None:
    """A bar of *kind* in *rect*. open_end: its right end stays open; asked: with a ? before it."""
    face = LOOKS[kind]
    painter.fillRect(rect, look.colour(face.paper))
    if kind is Kind.COOLED:
        _paint_falling(painter, rect, look)
    else:
        paint_pattern(painter, rect, face.pattern, look.colour(face.mark), FINE)
    painter.setPen(QPen(look.colour(face.edge), face.thick))
    _paint_edges(painter, rect, open_end=open_end)
    _paint_letter(painter, rect, face.letter, face.paper, look)
    if asked:
        _paint_letter(painter, rect, "?", face.paper, look, at_end=True)


def paint_lasting(painter: QPainter, rect: QRectF, look: Look) -> None:
    """The question mark behind a bar of which no end is known, in the middle of *rect*."""
    font = look.font(Use.TABLE_STRONG)
    at = QPointF(rect.center().x(), middle_baseline(rect, font))
    set_line(painter, at, "?", font, look.colour("ink"), align=CENTRE)


def paint_earlier(
    painter: QPainter, rect: QRectF, rank: int, look: Look, *, open_end: bool
) -> None:
    """The window of a sign that a later one has replaced: dashes alone, round those within it."""
    grown = rect.adjusted(0, -_step(look) * rank, 0, _step(look) * rank)
    pen = QPen(look.colour("line"), 1.1, Qt.PenStyle.CustomDashLine, Qt.PenCapStyle.FlatCap)
    pen.setDashPattern([3.0, 2.0])
    painter.setPen(pen)
    _paint_edges(painter, grown, open_end=open_end)


def paint_away(painter: QPainter, rect: QRectF, look: Look) -> None:
    """A band through all rows, with dashes down both of its sides."""
    painter.fillRect(rect, look.colour(LOOKS[Kind.AWAY].paper))
    pen = QPen(look.colour("ink"), 1.4, Qt.PenStyle.CustomDashLine, Qt.PenCapStyle.FlatCap)
    pen.setDashPattern([2.0, 2.0])
    painter.setPen(pen)
    for x in (rect.left(), rect.right()):
        painter.drawLine(QLineF(x, rect.top(), x, rect.bottom()))


def paint_out(painter: QPainter, middle: QPointF, look: Look) -> None:
    """The first young out: the triangle of a clutch, upside down and open."""
    wide, high = look.u(1.6, 1.3), look.u(1.6, 1.3)
    painter.setPen(QPen(look.colour("ink"), 1.6))
    painter.setBrush(look.colour("sheet"))
    corners = ((0.0, high), (wide, -high), (-wide, -high))
    painter.drawPolygon([QPointF(middle.x() + x, middle.y() + y) for x, y in corners])
    painter.setBrush(Qt.BrushStyle.NoBrush)


def _step(look: Look) -> float:
    return look.u(0.9, 0.75)


def _paint_falling(painter: QPainter, rect: QRectF, look: Look) -> None:
    painter.save()
    painter.setClipRect(rect, Qt.ClipOperation.IntersectClip)
    painter.setPen(QPen(look.colour(LOOKS[Kind.COOLED].mark), 1.1))
    painter.drawLines(list(falling_lines(rect, look.u(2.4, 2))))
    painter.restore()


def _paint_edges(painter: QPainter, rect: QRectF, *, open_end: bool) -> None:
    painter.setBrush(Qt.BrushStyle.NoBrush)
    lines = [
        QLineF(rect.topLeft(), rect.topRight()),
        QLineF(rect.bottomLeft(), rect.bottomRight()),
        QLineF(rect.topLeft(), rect.bottomLeft()),
    ]
    if not open_end:
        lines.append(QLineF(rect.topRight(), rect.bottomRight()))
    painter.drawLines(lines)


def _paint_letter(
    painter: QPainter, rect: QRectF, letter: str, paper: str, look: Look, *, at_end: bool = False
) -> None:
    """Knocked out of the pattern in the middle, or at the right end, where it has room."""
    font = look.font(Use.TABLE_STRONG)
    wide = advance(font, letter) + look.u(1.2, 0.9)
    if not letter or rect.width() < (2.2 if at_end else 1) * wide + 3:
        return
    high = min(rect.height() - 2, look.u(4.6, 3.8))
    left = rect.right() - wide - 1 if at_end else rect.center().x() - wide / 2
    box = QRectF(left, rect.center().y() - high / 2, wide, high)
    painter.fillRect(box, look.colour(paper))
    at = QPointF(box.center().x(), middle_baseline(box, font))
    set_line(painter, at, letter, font, look.colour("ink"), align=CENTRE)
