"""How stays and marks of the time-line look: a lightness, a pattern and a letter, never a hue."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum, auto

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFont, QPainter, QPen

from keeper.actions.time_line import MarkKind
from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.lettering import CENTRE, font_to_fit, middle_baseline, set_line
from keeper.desktop.widgets.patterns import FINE, Pattern, paint_pattern
from keeper.language import tr, tr_table


class StayState(Enum):
    """What a stretch of a tub's time shows."""

    CHOSEN = auto()
    SHARED = auto()
    OTHER = auto()
    APART = auto()
    EMPTY = auto()
    UNKNOWN = auto()


@dataclass(frozen=True, slots=True, kw_only=True)
class StayFace:
    """Paper and pattern of a stretch, the ink of its name, and its words in the legend."""

    words: str
    paper: str
    pattern: Pattern = Pattern.PLAIN
    mark: str = "line"
    ink: str = "ink2"
    edge: str = "line"


FACES = {
    StayState.CHOSEN: StayFace(
        words=tr("the chosen animal"), paper="ink", ink="ground", edge="ink"
    ),
    StayState.SHARED: StayFace(
        words=tr("shared a tub with it"),
        paper="sheet",
        pattern=Pattern.LEVEL_BARS,
        mark="fill2",
        ink="ink",
        edge="ink",
    ),
    StayState.OTHER: StayFace(words=tr("another animal"), paper="sheet"),
    StayState.APART: StayFace(
        words=tr("in quarantine"), paper="sheet", pattern=Pattern.UPRIGHT_BARS, mark="ink2"
    ),
    StayState.EMPTY: StayFace(words=tr("empty", sense="a tub"), paper="ground"),
    StayState.UNKNOWN: StayFace(
        words=tr("cannot tell"), paper="ground", pattern=Pattern.DOTTED_RING, mark="fill3"
    ),
}

_ENGLISH_MARKS = {
    MarkKind.MITES: "mites seen",
    MarkKind.TREATED: "treated against mites",
    MarkKind.CLEAR: "looked, clear",
    MarkKind.ENDED: "ended by the vet’s word",
    MarkKind.WASHED: "tubs washed together",
    MarkKind.QUARANTINE: "quarantine begun",
    MarkKind.RELEASED: "quarantine over",
    MarkKind.PAIRED: "paired",
    MarkKind.LOCK: "lock seen",
    MarkKind.SWAP: "may have been swapped",
    MarkKind.MISSING: "missing",
    MarkKind.FOUND: "found, or back",
    MarkKind.GONE: "left the room",
}
MARK_WORDS = tr_table(_ENGLISH_MARKS)
LOUD = frozenset({MarkKind.MITES, MarkKind.SWAP, MarkKind.MISSING})
"""What asks for a look is as dark as ink."""

APART_SHARE = 0.38
"""Of the height of a bar, so much at its foot is barred while its animal is in quarantine."""


def paint_stretch(painter: QPainter, rect: QRectF, state: StayState, look: Look) -> None:
    """A stretch of a tub's time without its name."""
    face = FACES[state]
    if state is StayState.EMPTY:
        _paint_empty(painter, rect, look)
        return
    painter.fillRect(rect, look.colour(face.paper))
    if state is StayState.APART:
        _outline(painter, rect, look, face.edge)
        paint_apart(painter, rect, look, face.mark)
        return
    paint_pattern(painter, rect, face.pattern, look.colour(face.mark), FINE)
    if state is not StayState.UNKNOWN:
        _outline(painter, rect, look, face.edge)


def paint_apart(painter: QPainter, rect: QRectF, look: Look, ink: str) -> None:
    """The bars of a quarantine along the foot of a bar."""
    high = APART_SHARE * rect.height()
    foot = QRectF(rect.left(), rect.bottom() - high, rect.width(), high)
    paint_pattern(painter, foot, Pattern.UPRIGHT_BARS, look.colour(ink), FINE)


def paint_mark(painter: QPainter, box: QRectF, kind: MarkKind, look: Look) -> None:
    """A letter in a box; black where it asks for a look."""
    loud = kind in LOUD
    painter.fillRect(box, look.colour("ink" if loud else "sheet"))
    _outline(painter, box, look, "sheet" if loud else "ink2")
    font = mark_font(look, box)
    base = QPointF(box.center().x(), middle_baseline(box, font))
    ink = look.colour("ground" if loud else "ink")
    set_line(painter, base, kind.value, font, ink, align=CENTRE)


def mark_font(look: Look, box: QRectF) -> QFont:
    """The letter's font: as large as the box holds."""
    return font_to_fit(look.font(Use.TABLE_STRONG), "W", 0.86 * box.width(), 1.0)


def _paint_empty(painter: QPainter, rect: QRectF, look: Look) -> None:
    """A dashed line along the middle."""
    pen = QPen(look.colour("line"), 1.2, Qt.PenStyle.CustomDashLine, Qt.PenCapStyle.FlatCap)
    pen.setDashPattern([3.0, 4.0])
    painter.setPen(pen)
    middle = rect.center().y()
    painter.drawLine(QPointF(rect.left(), middle), QPointF(rect.right(), middle))


def _outline(painter: QPainter, rect: QRectF, look: Look, ink: str) -> None:
    painter.setPen(QPen(look.colour(ink), 1.0))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(rect.adjusted(0.5, 0.5, -0.5, -0.5))
