"""One tub of the row as a drawer front: number, name, corner, state or value, lip."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QLineF, QPointF, QRect, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawer_shape import FrontStyle
from keeper.desktop.widgets.drawn import DrawnKey
from keeper.desktop.widgets.kept_picture import KeptRows, seen
from keeper.desktop.widgets.lettering import (
    CENTRE,
    RIGHT,
    advance,
    cap_height,
    font_to_fit,
    set_line,
)
from keeper.desktop.widgets.tile import FACES, TileState, paint_tile
from keeper.language import tr


@dataclass(frozen=True, slots=True, kw_only=True)
class TubFront:
    """What the front of one tub says.

    ``corner`` is a short note at the top right (grams given, the end of a hold); ``caution``
    one word in capitals for a tub not reached yet; ``value`` and ``note`` replace the state
    patch where the row shows figures; ``now`` is the word on the pulled-out front.
    """

    number: int
    name: str
    state: TileState
    corner: str = ""
    caution: str = ""
    value: str = ""
    note: str = ""
    now: str = tr("now")


def front_words(front: TubFront, *, pulled: bool) -> str:
    """The front as a sentence for a screen reader.

    >>> front_words(TubFront(number=3, name="Orrin", state=TileState.REFUSED), pulled=False)
    'tub 3, Orrin, refused'
    """
    state = front.now if pulled else front.note or FACES[front.state].words
    name = "" if front.state is TileState.EMPTY else front.name
    parts = (
        tr("tub {number}", number=front.number),
        name,
        front.value,
        state,
        front.corner,
        front.caution,
    )
    return ", ".join(part for part in parts if part)


class FrontKey(DrawnKey):
    """A drawn front; pressing it with the mouse asks for that tub. kept: those of its row."""

    def __init__(self, look: Look, parent: QWidget, kept: KeptRows) -> None:
        super().__init__(look, parent)
        self._kept = kept
        self._front: TubFront | None = None
        self._pulled = False
        self._style = FrontStyle.PATCH

    def show_front(self, front: TubFront, style: FrontStyle, *, pulled: bool) -> None:
        """Show *front*, pulled out or in its place."""
        if (self._front, self._style, self._pulled) == (front, style, pulled):
            return
        self._front, self._style, self._pulled = front, style, pulled
        self.setAccessibleName(front_words(front, pulled=pulled))
        self.update()

    def paint(self, painter: QPainter) -> None:
        front, style, look = self._front, self._style, self.look
        if front is None:
            return
        if self._pulled:  # on the drawer, which is painted beneath
            _paint_pulled(painter, QRectF(self.rect()), front, look, style)
            return

        def paint(on: QPainter, rect: QRect) -> None:
            _paint_in_place(on, QRectF(rect), front, look, style)

        ground = look.colour("ground")
        self._kept.lay(painter, self.rect(), (front, style), seen(look), paint, ground)


def _paint_pulled(
    painter: QPainter, rect: QRectF, front: TubFront, look: Look, style: FrontStyle
) -> None:
    if style is FrontStyle.VALUE and rect.width() > look.u(44, 36):
        _paint_pulled_level(painter, rect, front, look)
        return
    room, middle = rect.width() - look.u(4), rect.center().x()
    lines = (
        (str(front.number), Use.PULLED_NUMBER, "ink"),
        (front.name, Use.PULLED_NAME, "ink"),
        (front.now, Use.PULLED_WORD, "ink2"),
    )
    at = (0.40, 0.67, 0.86)
    for (text, use, ink), share in zip(lines, at, strict=True):
        font = font_to_fit(look.font(use), text, room, 8.0)
        place = QPointF(middle, rect.top() + share * rect.height())
        set_line(painter, place, text, font, look.colour(ink), align=CENTRE, room=room)


def _paint_pulled_level(painter: QPainter, rect: QRectF, front: TubFront, look: Look) -> None:
    pad, base = look.u(6, 4.5), rect.top() + 0.5 * rect.height()
    left, room = rect.left() + pad, rect.width() - 2 * pad
    number, name, word = (look.font(u) for u in (Use.PULLED_NUMBER, Use.PULLED_NAME, Use.ASIDE))
    used = set_line(painter, QPointF(left, base), str(front.number), number, look.colour("ink"))
    used += look.u(4, 3)
    word.setWeight(look.font(Use.PULLED_WORD).weight())
    name.setPointSizeF(1.25 * name.pointSizeF())
    ends = advance(word, front.now) + look.u(3, 2)
    set_line(
        painter,
        QPointF(left + used, base),
        front.name,
        font_to_fit(name, front.name, room - used - ends, 11.0),
        look.colour("ink"),
        room=room - used - ends,
    )
    set_line(
        painter,
        QPointF(rect.right() - pad, base),
        front.now,
        word,
        look.colour("ink2"),
        align=RIGHT,
    )


def _paint_in_place(
    painter: QPainter, rect: QRectF, front: TubFront, look: Look, style: FrontStyle
) -> None:
    _paint_box(painter, rect, front, look)
    if style is FrontStyle.VALUE:
        _paint_value(painter, rect, front, look)
        return
    pad, ink = look.u(2.2, 1.6), _ink(front)
    number = look.font(Use.TUB_NUMBER)
    first = rect.top() + look.u(2.6, 2.2) + cap_height(number)
    label = str(front.number)
    place = QPointF(rect.left() + pad, first)
    used = set_line(painter, place, label, number, look.colour(ink))
    _paint_corner(painter, rect, front, look, first, rect.width() - 2 * pad - used)
    second = first + look.u(6.1, 4.4)
    _paint_name(painter, QPointF(place.x(), second), front, look, rect.width() - 2 * pad)
    patch = _patch(rect, look)
    if front.caution and front.state is TileState.NOT_REACHED:
        paint_tile(painter, patch, front.state, look.palette, "")
        font = font_to_fit(
            look.font(Use.TUB_CAUTION), front.caution, patch.width() - look.u(2.6, 2), 7.0
        )
        middle = QPointF(patch.center().x(), patch.center().y() + cap_height(font) / 2)
        set_line(painter, middle, front.caution, font, look.colour("ink"), align=CENTRE)
        return
    paint_tile(painter, patch, front.state, look.palette, letter_font=look.font(Use.STATE_LETTER))


def _paint_box(painter: QPainter, rect: QRectF, front: TubFront, look: Look) -> None:
    empty = front.state is TileState.EMPTY
    pen = QPen(look.colour("line"), 1.2)
    if empty:
        pen.setDashPattern([3.4, 3.4])
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    painter.setPen(pen)
    painter.setBrush(look.colour("ground" if empty else "sheet"))
    painter.drawRoundedRect(rect.adjusted(0.6, 0.6, -0.6, -0.6), 2.5, 2.5)
    half = min(look.u(5.4, 4), 0.2 * rect.width())
    lip = rect.bottom() - look.u(1.5, 1.1)
    painter.setPen(QPen(look.colour("hair" if empty else "line"), 2.0))
    painter.drawLine(QLineF(rect.center().x() - half, lip, rect.center().x() + half, lip))


def _paint_corner(
    painter: QPainter, rect: QRectF, front: TubFront, look: Look, base: float, room: float
) -> None:
    """The corner note, only where it can stand beside the number in full."""
    font, pad = look.font(Use.TUB_CORNER), look.u(2.0, 1.5)
    if front.corner and advance(font, front.corner) + look.u(1.5) <= room:
        place = QPointF(rect.right() - pad, base)
        set_line(painter, place, front.corner, font, look.colour("ink2"), align=RIGHT)


def _paint_name(
    painter: QPainter, place: QPointF, front: TubFront, look: Look, room: float
) -> None:
    font = look.font(Use.TUB_NAME)
    empty = front.state is TileState.EMPTY
    if empty:
        font.setWeight(look.font(Use.TABLE).weight())
    name = FACES[TileState.EMPTY].words if empty else front.name
    colour: QColor = look.colour("ink3") if empty else look.colour(_ink(front))
    set_line(painter, place, name, font_to_fit(font, name, room, 8.5), colour, room=room)


def _paint_value(painter: QPainter, rect: QRectF, front: TubFront, look: Look) -> None:
    pad = min(look.u(3, 2.2), 0.09 * rect.width())
    room, left = rect.width() - 2 * pad, rect.left() + pad
    number, ink = look.font(Use.TUB_NUMBER), _ink(front)
    first = rect.top() + look.u(2.6, 2.2) + cap_height(number)
    used = set_line(painter, QPointF(left, first), str(front.number), number, look.colour(ink))
    used += look.u(2.4, 1.8)
    _paint_name(painter, QPointF(left + used, first), front, look, room - used)
    second = first + look.u(10.2, 7.4)
    if not front.value:
        note = front.note or FACES[front.state].words
        ink3 = "ink3" if front.state is TileState.EMPTY else "ink2"
        small = font_to_fit(look.font(Use.TABLE), note, room, 8.5)
        if front.note or advance(small, note) <= room:  # in a long row silence says the same
            set_line(painter, QPointF(left, second), note, small, look.colour(ink3), room=room)
        return
    value = font_to_fit(look.font(Use.TUB_VALUE), front.value, room, 9.0)
    used = set_line(painter, QPointF(left, second), front.value, value, look.colour("ink"))
    note_font = look.font(Use.TABLE)
    if advance(note_font, front.note) + used + look.u(2) <= room:
        place = QPointF(rect.right() - pad, second)
        set_line(painter, place, front.note, note_font, look.colour("ink2"), align=RIGHT)


def _patch(rect: QRectF, look: Look) -> QRectF:
    inset = look.u(1.6, 1.2)
    height = look.u(15.6, 10.4)
    bottom = rect.bottom() - look.u(3.4, 2.5)
    return QRectF(rect.left() + inset, bottom - height, rect.width() - 2 * inset, height)


def _ink(front: TubFront) -> str:
    quiet = (
        TileState.NOT_REACHED,
        TileState.EMPTY,
        TileState.HOLD,
        TileState.NOT_OFFERED,
        TileState.NOT_DUE,
    )
    return "ink2" if front.state in quiet and not front.value else "ink"
