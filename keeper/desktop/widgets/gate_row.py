"""One female in a row: who, her weight against the gate, her gates as tiles, her calendar."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import QLineF, QPoint, QPointF, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPen

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.calendar_strip import Marks, months_round, paint_grid, paint_marks
from keeper.desktop.widgets.kept_picture import KeptPicture
from keeper.desktop.widgets.lettering import LEAST_PT, RIGHT, narrowed, set_line
from keeper.desktop.widgets.life_axis import TimeAxis
from keeper.desktop.widgets.stamps import stamp_tile
from keeper.desktop.widgets.tile import FACES, TileState

GATE_LETTERS = {
    "age": "A",
    "weight": "W",
    "length": "L",
    "score": "S",
    "shed": "C",
    "meals": "M",
}
"""Each gate has its place in the row; a kind that does not ask for one leaves it free."""

_SLOTS = {name: n for n, name in enumerate(GATE_LETTERS)}
_PAPERS = {False: "ground", True: "sheet"}


@dataclass(frozen=True, slots=True, kw_only=True)
class GateFace:
    """name as in ``GATE_LETTERS``; state one of the three states of a gate."""

    name: str
    state: TileState


@dataclass(frozen=True, slots=True, kw_only=True)
class FemaleFace:
    """share: weight over gate, None where it is not known."""

    place: str
    name: str
    kind: str
    weight: str
    beside: str
    share: float | None
    gates: tuple[GateFace, ...]
    marks: Marks
    said: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Columns:
    """Where each column of the list begins, in device-independent px."""

    place: float
    name: float
    weight: float
    weight_end: float
    gates: float
    gate_every: float
    calendar: TimeAxis

    @classmethod
    def of(cls, look: Look, width: float, today: date) -> Columns:
        """For a list *width* wide."""
        left = look.u(2.2, 1.2)
        gates = left + look.u(119, 88)
        every = look.u(9.8, 7.4)
        start = gates + len(GATE_LETTERS) * every + look.u(4, 2.4)
        return cls(
            place=left,
            name=left + look.u(15, 11.4),
            weight=left + look.u(75, 50),
            weight_end=left + look.u(116, 86),
            gates=gates,
            gate_every=every,
            calendar=months_round(today, start, width - look.u(2.5, 1.5)),
        )


def row_height(look: Look) -> float:
    """Of one row, two lines of words high."""
    return look.u(13.2, 10.6)


class RowPaper:
    """The ground of a row with its pointer, its rule and the months: the same for every female."""

    def __init__(self, look: Look) -> None:
        self._look = look
        self._kept = {here: KeptPicture() for here in (False, True)}
        self._columns: tuple[object, Columns] | None = None

    def columns(self, width: float, today: date) -> Columns:
        """Reckoned once for a list of one width and look."""
        asked = (width, today, self._look.small, self._look.u(1.0))
        if self._columns is None or self._columns[0] != asked:
            self._columns = (asked, Columns.of(self._look, width, today))
        return self._columns[1]

    def lay(self, painter: QPainter, size: QSize, today: date, *, here: bool) -> None:
        """Lay it at the origin."""
        columns = self.columns(size.width(), today)

        def paint(on: QPainter) -> None:
            _paint_ground(on, QRectF(QPoint(0, 0), size), columns, today, self._look, here=here)

        self._kept[here].lay(painter, size, self._look, (today, columns), paint)


def paint_female(
    painter: QPainter,
    rect: QRect,
    face: FemaleFace,
    today: date,
    look: Look,
    paper: RowPaper,
    *,
    here: bool,
) -> None:
    """Paint *face* in *rect*; *here* is the chosen one, on a sheet with a pointer before it."""
    columns = paper.columns(rect.width(), today)
    painter.save()
    painter.translate(rect.topLeft())
    row = QRectF(0, 0, rect.width(), rect.height())
    paper.lay(painter, rect.size(), today, here=here)
    _paint_who(painter, columns, face, look)
    _paint_weight(painter, columns, face, look)
    _paint_gates(painter, row, columns, face, look)
    paint_marks(painter, row, columns.calendar, today, face.marks, _PAPERS[here], look)
    painter.restore()


def _paint_ground(
    painter: QPainter, row: QRectF, columns: Columns, today: date, look: Look, *, here: bool
) -> None:
    painter.fillRect(row, look.colour(_PAPERS[here]))
    if here:
        painter.fillRect(QRectF(0, 0, look.u(1.2, 0.8), row.height()), look.colour("point"))
    painter.setPen(QPen(look.colour("hair"), 1.0))
    painter.drawLine(QLineF(columns.place, row.bottom() - 0.5, row.right(), row.bottom() - 0.5))
    paint_grid(painter, row, columns.calendar, today, look)


def _paint_who(painter: QPainter, columns: Columns, face: FemaleFace, look: Look) -> None:
    strong, plain = look.font(Use.BODY_STRONG), look.font(Use.TABLE)
    first, second = look.u(5.6, 4.5), look.u(10.4, 8.6)
    room = columns.weight - columns.name - look.u(1)
    at = QPointF(columns.place, first)
    wide = columns.name - columns.place
    set_line(painter, at, face.place, look.font(Use.TABLE_STRONG), look.colour("ink"), room=wide)
    name = QPointF(columns.name, first)
    set_line(painter, name, face.name, strong, look.colour("ink"), room=room)
    kind, fitted = QPointF(columns.name, second), narrowed(plain, face.kind, room, LEAST_PT)
    set_line(painter, kind, face.kind, fitted, look.colour("ink2"), room=room)


def _paint_weight(painter: QPainter, columns: Columns, face: FemaleFace, look: Look) -> None:
    """Grams, the gate beside them, and beneath both her share of it."""
    strong, plain = look.font(Use.BODY_STRONG), look.font(Use.TABLE)
    first = look.u(5.6, 4.5)
    middle = columns.weight + 0.43 * (columns.weight_end - columns.weight)
    set_line(painter, QPointF(middle, first), face.weight, strong, look.colour("ink"), align=RIGHT)
    beside = QPointF(middle + look.u(2, 1.4), first)
    room = columns.weight_end - beside.x()
    set_line(painter, beside, face.beside, plain, look.colour("ink2"), room=room)
    bar = QRectF(
        columns.weight, look.u(8, 6.4), columns.weight_end - columns.weight, look.u(2, 1.6)
    )
    pen = QPen(look.colour("line"), 1.1)
    if face.share is None:
        pen.setDashPattern([3.0, 3.0])
    else:
        filled = QRectF(bar)
        filled.setWidth(bar.width() * min(1.0, face.share))
        painter.fillRect(filled, look.colour("fill1" if face.share >= 1 else "fill3"))
    painter.setPen(pen)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(bar)


def _paint_gates(
    painter: QPainter, row: QRectF, columns: Columns, face: FemaleFace, look: Look
) -> None:
    side = min(columns.gate_every - look.u(1.4, 0.9), row.height() - look.u(3, 2))
    top, palette = row.center().y() - side / 2, look.palette
    for gate in face.gates:
        left = columns.gates + _SLOTS[gate.name] * columns.gate_every
        letter = FACES[gate.state].letter or GATE_LETTERS[gate.name]
        stamp_tile(painter, QRectF(left, top, side, side), gate.state, palette, letter)
