"""One state as a tile: a letter, a lightness and a pattern, never a hue alone.

``FACES`` says how each state looks; ``paint_tile`` paints it. States are grouped in tables
(``RESULTS``, ``LAYER``, ``GATES``, ``SEVERITIES``, ``STOCK``, ``EGGS``, ``LINES``, ``ODDS``):
within a table a letter means one thing, and no two tiles can be taken for each other in either
light or by any eye.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum, auto

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QPainter, QPainterPath, QPen

from keeper.desktop.light import Palette
from keeper.desktop.type import house_face
from keeper.desktop.widgets.patterns import COARSE, FINE, Pattern, paint_pattern
from keeper.language import tr

KNOCK_OUT_EM = 0.40  # wider than the letter by this much; under 0.34 the letter is crowded
_PATTERN_MARGIN_PX = 4.0


class TileState(Enum):
    """Everything a tile can say, over all its tables."""

    TAKEN = auto()
    ASSUMED = auto()
    PART = auto()
    REFUSED = auto()
    LEFT_IN = auto()
    NOT_OFFERED = auto()
    NOT_DUE = auto()
    ONE_OF = auto()
    HOLD = auto()
    REGURGITATED = auto()
    NOT_REACHED = auto()
    EMPTY = auto()
    CURRENT = auto()
    IN_STEP = auto()
    DUE = auto()
    BEHIND = auto()
    FAR_BEHIND = auto()
    HELD = auto()
    CANNOT_TELL = auto()
    GATE_MET = auto()
    GATE_NOT_YET = auto()
    GATE_CANNOT_TELL = auto()
    NOW = auto()
    TODAY = auto()
    THIS_WEEK = auto()
    NOTED = auto()
    ORDER_NOW = auto()
    ORDER_SOON = auto()
    NOT_COUNTED = auto()
    ENOUGH = auto()
    EGG_SLUG = auto()
    EGG_FAILED = auto()
    EGG_IN = auto()
    EGG_HATCHED = auto()
    EGG_ALIVE = auto()
    EGG_WRONG = auto()
    GENE = auto()
    MOVES = auto()
    STANDS = auto()
    SHOWS = auto()
    SUPER = auto()
    CARRIES = auto()
    MAY_CARRY = auto()
    CLEAR = auto()
    CONTRADICTED = auto()


class Edge(Enum):
    """The outline of a tile, with its width in device-independent px."""

    NONE = 0.0
    OUTLINE = 1.1
    DASHED = 1.2
    URGENT = 2.0
    HEAVY = 5.0


@dataclass(frozen=True, slots=True, kw_only=True)
class TileFace:
    """How a state looks: letter, words for a legend, pattern, and colours by role."""

    letter: str
    words: str
    pattern: Pattern = Pattern.PLAIN
    paper: str = "sheet"
    mark: str = "line"
    edge: Edge = Edge.OUTLINE
    edge_ink: str = "line"
    ink: str = "ink"


def _solid_ink(letter: str, words: str) -> TileFace:
    """As dark as ink, the letter in the colour of the ground."""
    return TileFace(
        letter=letter,
        words=words,
        pattern=Pattern.SOLID,
        paper="ink",
        mark="ink",
        edge=Edge.NONE,
        ink="ground",
    )


def _urgent(letter: str, words: str, pattern: Pattern) -> TileFace:
    """A pattern in ink and a strong edge."""
    return TileFace(
        letter=letter,
        words=words,
        pattern=pattern,
        mark="ink",
        edge=Edge.URGENT,
        edge_ink="ink",
    )


_EMPTY = TileFace(letter="E", words=tr("empty tub"), paper="ground", edge=Edge.DASHED, ink="ink3")

FACES = {
    TileState.TAKEN: TileFace(
        letter="T", words=tr("taken, seen"), pattern=Pattern.SOLID, paper="fill2", mark="fill2"
    ),
    TileState.ASSUMED: TileFace(
        letter="A", words=tr("taken as planned, assumed"), pattern=Pattern.DOTS, mark="fill2"
    ),
    TileState.PART: TileFace(
        letter="P", words=tr("part taken"), pattern=Pattern.HALF, mark="fill2"
    ),
    TileState.REFUSED: _urgent("R", tr("refused"), Pattern.BOLD_HATCH),
    TileState.LEFT_IN: TileFace(
        letter="L", words=tr("left in, result open"), edge=Edge.HEAVY, edge_ink="ink"
    ),
    TileState.NOT_OFFERED: TileFace(
        letter="N", words=tr("not offered"), pattern=Pattern.LEVEL_BARS, ink="ink2"
    ),
    TileState.NOT_DUE: TileFace(
        letter="–", words=tr("not due"), pattern=Pattern.DOTTED_RING, paper="ground", mark="ink3"
    ),
    TileState.ONE_OF: TileFace(
        letter="?", words=tr("one of these, not known which"), pattern=Pattern.HATCH, mark="fill3"
    ),
    TileState.HOLD: TileFace(
        letter="H", words=tr("hold"), pattern=Pattern.UPRIGHT_BARS, ink="ink2"
    ),
    TileState.REGURGITATED: _urgent("G", tr("regurgitation found"), Pattern.CROSS_HATCH),
    TileState.NOT_REACHED: TileFace(letter="", words=tr("not reached"), paper="ground"),
    TileState.EMPTY: _EMPTY,
    TileState.CURRENT: _solid_ink(tr("now"), tr("current")),
    TileState.IN_STEP: TileFace(letter="", words=tr("in step")),
    TileState.DUE: TileFace(letter="D", words=tr("due"), pattern=Pattern.DOTS, mark="fill2"),
    TileState.BEHIND: TileFace(
        letter="B", words=tr("behind"), pattern=Pattern.HATCH, mark="fill3", edge_ink="line"
    ),
    TileState.FAR_BEHIND: _solid_ink("F", tr("far behind")),
    TileState.HELD: TileFace(
        letter="H", words=tr("held, excused"), pattern=Pattern.UPRIGHT_BARS, ink="ink2"
    ),
    TileState.CANNOT_TELL: TileFace(
        letter="?",
        words=tr("cannot tell"),
        pattern=Pattern.DOTTED_RING,
        paper="ground",
        mark="fill3",
    ),
    TileState.GATE_MET: TileFace(letter="", words=tr("met"), paper="fill1", ink="ink2"),
    TileState.GATE_NOT_YET: _urgent("", tr("not yet"), Pattern.HATCH),
    TileState.GATE_CANNOT_TELL: TileFace(
        letter="?", words=tr("cannot tell"), paper="ground", edge=Edge.DASHED
    ),
    TileState.NOW: _solid_ink(tr("Now"), tr("now")),
    TileState.TODAY: _urgent(tr("Today"), tr("today"), Pattern.HATCH),
    TileState.THIS_WEEK: TileFace(
        letter=tr("This week"), words=tr("this week"), pattern=Pattern.DOTS, mark="fill2"
    ),
    TileState.NOTED: TileFace(letter=tr("Noted"), words=tr("noted")),
    TileState.ORDER_NOW: _solid_ink("O", tr("order now")),
    TileState.ORDER_SOON: _urgent("W", tr("order within 12 weeks"), Pattern.HATCH),
    TileState.NOT_COUNTED: TileFace(
        letter="?", words=tr("not counted"), paper="ground", edge=Edge.DASHED
    ),
    TileState.ENOUGH: TileFace(letter="E", words=tr("enough"), paper="fill1", ink="ink2"),
    TileState.EGG_SLUG: TileFace(letter="S", words=tr("slugs"), pattern=Pattern.DOTS, mark="fill2"),
    TileState.EGG_FAILED: _urgent("F", tr("failed", sense="eggs"), Pattern.BOLD_HATCH),
    TileState.EGG_IN: TileFace(letter="I", words=tr("still in"), paper="fill1"),
    TileState.EGG_HATCHED: TileFace(
        letter="H", words=tr("hatched, died since"), pattern=Pattern.UPRIGHT_BARS, ink="ink2"
    ),
    TileState.EGG_ALIVE: TileFace(
        letter="A", words=tr("hatched, alive"), pattern=Pattern.SOLID, paper="fill2", mark="fill2"
    ),
    TileState.EGG_WRONG: TileFace(
        letter="?",
        words=tr("does not add up"),
        pattern=Pattern.DOTTED_RING,
        paper="ground",
        mark="ink2",
    ),
    TileState.GENE: TileFace(letter="G", words=tr("gene"), paper="fill1", ink="ink2"),
    TileState.MOVES: TileFace(
        letter="M", words=tr("moves with selection"), pattern=Pattern.UPRIGHT_BARS, mark="fill2"
    ),
    TileState.STANDS: TileFace(letter="N", words=tr("no move seen"), pattern=Pattern.LEVEL_BARS),
    TileState.SHOWS: TileFace(
        letter="V", words=tr("shows it"), pattern=Pattern.SOLID, paper="fill2", mark="fill2"
    ),
    TileState.SUPER: _solid_ink("S", tr("shows two copies")),
    TileState.CARRIES: TileFace(
        letter="H", words=tr("surely carries it"), pattern=Pattern.HALF, mark="fill2"
    ),
    TileState.MAY_CARRY: TileFace(
        letter="%", words=tr("may carry it"), pattern=Pattern.DOTS, mark="fill2"
    ),
    TileState.CLEAR: TileFace(letter="C", words=tr("carries none")),
    TileState.CONTRADICTED: _urgent("X", tr("does not fit"), Pattern.BOLD_HATCH),
}

RESULTS = tuple(TileState)[: list(TileState).index(TileState.IN_STEP)]
LAYER = (
    TileState.IN_STEP,
    TileState.DUE,
    TileState.BEHIND,
    TileState.FAR_BEHIND,
    TileState.HELD,
    TileState.CANNOT_TELL,
    TileState.EMPTY,
)
GATES = (TileState.GATE_MET, TileState.GATE_NOT_YET, TileState.GATE_CANNOT_TELL)
SEVERITIES = (TileState.NOW, TileState.TODAY, TileState.THIS_WEEK, TileState.NOTED)
STOCK = (TileState.ORDER_NOW, TileState.ORDER_SOON, TileState.NOT_COUNTED, TileState.ENOUGH)
_ALL = tuple(TileState)
EGGS = _ALL[_ALL.index(TileState.EGG_SLUG) : _ALL.index(TileState.GENE)]
_LAST = (TileState.CONTRADICTED, TileState.GATE_CANNOT_TELL)
LINES = (TileState.GENE, TileState.MOVES, TileState.STANDS, *_LAST)
ODDS = (*_ALL[_ALL.index(TileState.SHOWS) : -1], *_LAST)


def paint_tile(
    painter: QPainter,
    rect: QRectF,
    state: TileState,
    palette: Palette,
    text: str | None = None,
    *,
    number: str = "",
    letter_font: QFont | None = None,
) -> None:
    """Paint *state* in *rect*: paper, pattern stopping round the letter, edge, letter.

    Args:
        text: stands in for the state's letter; ``""`` paints the pattern alone.
        number: a figure under the letter, or alone where the state has no letter.
        letter_font: the letter's font; by default a bold one in proportion to *rect*.
    """
    face = FACES[state]
    lines = _lettering(rect, face.letter if text is None else text, number, letter_font)
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.fillRect(rect, palette.colour(face.paper))
    _paint_round(painter, rect, _knock_out(rect, lines), face, palette)
    _paint_edge(painter, rect, face, palette)
    painter.setPen(palette.colour(face.ink))
    for line in lines:
        painter.setFont(line.font)
        painter.drawText(line.start, line.text)
    painter.restore()


def paint_small(painter: QPainter, rect: QRectF, state: TileState, palette: Palette) -> None:
    """Paint *state* where no letter has room: fine pattern, and an edge only where it is the sign.

    Solid, dotted and barred patches stand without an outline, so a column reads as one.
    """
    face = FACES[state]
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.fillRect(rect, palette.colour(face.paper))
    paint_pattern(painter, rect, face.pattern, palette.colour(face.mark), FINE)
    edge = face.edge is Edge.HEAVY or face.pattern in (Pattern.PLAIN, Pattern.DOTTED_RING)
    if edge:
        widths = {Edge.HEAVY: 2.0, Edge.URGENT: 1.4}
        _stroke(painter, rect, face, palette, widths.get(face.edge, 0.9))
    painter.restore()


@dataclass(frozen=True, slots=True, kw_only=True)
class _Line:
    text: str
    font: QFont
    box: QRectF
    start: QPointF


def _lettering(rect: QRectF, letter: str, number: str, given: QFont | None) -> tuple[_Line, ...]:
    """The letter and the number as lines on a common middle, centred in *rect*."""
    alone = len(letter) == 1 and not number
    share = (0.72 if rect.height() < 30 else 0.6) if alone else 0.36
    font = _no_wider(given, letter, rect) if given else None
    font = font or _proportional(rect, letter or number, share, 700 if letter else 400)
    fonts = [(letter, font)] if letter else []
    if number:
        below = QFont(font)
        below.setPointSizeF(font.pointSizeF() * (0.8 if letter else 1.0))
        below.setWeight(QFont.Weight.DemiBold if letter else QFont.Weight.Normal)
        fonts.append((number, below))
    heights = [QFontMetricsF(each).capHeight() for _, each in fonts]
    leading = 0.55 * heights[-1] if len(fonts) > 1 else 0.0
    top = rect.center().y() - (sum(heights) + leading) / 2
    lines = []
    for (text, each), height in zip(fonts, heights, strict=True):
        width = QFontMetricsF(each).horizontalAdvance(text)
        box = QRectF(rect.center().x() - width / 2, top, width, height)
        lines.append(_Line(text=text, font=each, box=box, start=box.bottomLeft()))
        top += height + leading
    return tuple(lines)


def _no_wider(font: QFont, text: str, rect: QRectF) -> QFont:
    """*font*, smaller where *text* would reach over the edges of *rect*."""
    wide = QFontMetricsF(font).horizontalAdvance(text)
    room = rect.width() - 2 * _PATTERN_MARGIN_PX
    fitted = QFont(font)
    if wide > room > 0:
        fitted.setPointSizeF(font.pointSizeF() * room / wide)
    return fitted


def _proportional(rect: QRectF, text: str, share: float, weight: int) -> QFont:
    """A font *share* of the tile's height, smaller where the text would be too wide."""
    made = QFont(house_face().family)
    made.setWeight(QFont.Weight(weight))
    made.setStretch(house_face().stretch)
    made.setPointSizeF(100.0)
    metrics = QFontMetricsF(made)
    high = share * rect.height() * 100.0 / metrics.capHeight() * 0.66
    wide = 0.8 * rect.width() * 100.0 / max(1.0, metrics.horizontalAdvance(text))
    made.setPointSizeF(max(1.0, min(high, wide)))
    return made


def _knock_out(rect: QRectF, lines: tuple[_Line, ...]) -> QRectF:
    """The box of the state's own paper round its letter; empty where there is no letter."""
    box = QRectF()
    for line in lines:
        em = line.box.height() / 0.66
        across, down = KNOCK_OUT_EM / 2 * em, 0.14 * em
        box = box.united(line.box.adjusted(-across, -down, across, down))
    margin = _PATTERN_MARGIN_PX
    return box.intersected(rect.adjusted(margin, margin, -margin, -margin))


def _paint_round(
    painter: QPainter, rect: QRectF, box: QRectF, face: TileFace, palette: Palette
) -> None:
    if face.pattern not in (Pattern.SOLID, Pattern.HALF, Pattern.DOTTED_RING) and not box.isEmpty():
        path = QPainterPath()
        path.addRect(rect)
        path.addRect(box)
        painter.save()
        painter.setClipPath(path, Qt.ClipOperation.IntersectClip)
        paint_pattern(painter, rect, face.pattern, palette.colour(face.mark), COARSE)
        painter.restore()
        return
    paint_pattern(painter, rect, face.pattern, palette.colour(face.mark), COARSE)


def _paint_edge(painter: QPainter, rect: QRectF, face: TileFace, palette: Palette) -> None:
    if face.edge is not Edge.NONE:
        _stroke(painter, rect, face, palette, min(face.edge.value, rect.height() / 6))


def _stroke(
    painter: QPainter, rect: QRectF, face: TileFace, palette: Palette, width: float
) -> None:
    pen = QPen(palette.colour(face.edge_ink), width)
    pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    if face.edge is Edge.DASHED:
        dash = min(4.0, rect.height() / 4) / width
        pen.setDashPattern([dash, dash])
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    painter.setPen(pen)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    half = width / 2
    painter.drawRect(rect.adjusted(half, half, -half, -half))
