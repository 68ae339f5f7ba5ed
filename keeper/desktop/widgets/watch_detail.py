"""One line of trouble in full: every reason, what was tried, its row as tiles, its heat, the keys.

What has no room is left out from the end; the keys stand at the foot and stay.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QLineF, QPointF, QRectF
from PySide6.QtGui import QFontMetricsF, QPainter, QPen
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.heat_dots import HeatDots, paint_heat
from keeper.desktop.widgets.kept_picture import KeptPicture
from keeper.desktop.widgets.lettering import (
    CENTRE,
    RIGHT,
    font_to_fit,
    middle_baseline,
    set_line,
    wrapped,
)
from keeper.desktop.widgets.tile import FACES, TileState, paint_tile
from keeper.language import tr, tr_table


@dataclass(frozen=True, slots=True, kw_only=True)
class TriedFace:
    """One cause that was tried. strong: it fits, and stands reversed."""

    what: str
    fits: str
    why: str
    strong: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class TubFace:
    """A tub of the row. here: it is meant by the line."""

    number: int
    state: TileState
    here: bool


_STATES = tr_table({TileState.HELD: "held", TileState.EMPTY: "empty"})


@dataclass(frozen=True, slots=True, kw_only=True)
class DetailFace:
    """head, then paragraphs as (text, role); keys as (key, words)."""

    head: str
    paragraphs: tuple[tuple[str, str], ...] = ()
    tried: tuple[TriedFace, ...] = ()
    row_words: str = ""
    tubs: tuple[TubFace, ...] = ()
    legend: str = ""
    heat: HeatDots | None = None
    keys: tuple[tuple[str, str], ...] = ()

    @property
    def said(self) -> str:
        """The same in words."""
        tubs = ", ".join(
            tr("tub {number} {state}", number=t.number, state=_state_words(t.state))
            for t in self.tubs
        )
        parts = [self.head, *(text for text, _ in self.paragraphs)]
        parts += [f"{t.what}: {t.fits}, {t.why}" for t in self.tried]
        parts += [f"{self.row_words}: {tubs}" if tubs else "", self.heat.said if self.heat else ""]
        return "\n".join(part for part in parts if part)


def _state_words(state: TileState) -> str:
    return _STATES.get(state, FACES[state].words)


class WatchDetail(Drawn):
    """Paints a ``DetailFace`` from the top, as far as there is room."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._face = DetailFace(head="")
        self._top = 0.0
        self._kept = KeptPicture()
        self.setObjectName("watch detail")
        self.lie_on("ground")

    def show_face(self, face: DetailFace) -> None:
        """Show *face*."""
        self._face = face
        self.tell(face.said)

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(94, 66), self.look.u(60, 50)

    def paint(self, painter: QPainter) -> None:
        self._kept.lay(painter, self.size(), self.look, self._face, self._draw, "ground")

    def _draw(self, painter: QPainter) -> None:
        look, face = self.look, self._face
        painter.setPen(QPen(look.colour("line"), 1.6))
        painter.drawLine(QLineF(1, 0, 1, self.height() - look.u(4, 1)))
        room = self._room()
        self._top = room.top()
        floor = room.bottom() - self._keys_high()
        head = look.font(Use.PAGE_HEAD)
        for text in wrapped(face.head, head, room.width()):
            self._top += look.u(6.4, 5)
            set_line(painter, QPointF(room.left(), self._top), text, head, look.colour("ink"))
        self._top += look.u(3, 2)
        self._paint_tried(painter, room, floor)
        self._paint_paragraphs(painter, room, floor)
        if not self._heat_alone(room, floor):
            self._paint_tubs(painter, room, floor)
        self._paint_heat(painter, room, floor)
        self._paint_keys(painter, room)

    def _room(self) -> QRectF:
        look = self.look
        whole = QRectF(self.rect())
        return whole.adjusted(look.u(3.6, 2.4), 0, -look.u(7, 3.5), -look.u(2, 1))

    def _paint_tried(self, painter: QPainter, room: QRectF, floor: float) -> None:
        look, high = self.look, self.look.u(7.4, 6)
        for tried in self._face.tried:
            row = QRectF(room.left(), self._top, room.width(), high)
            if row.bottom() > floor:
                return
            self._paint_one_tried(painter, row, tried)
            self._top = row.bottom()
        self._top += look.u(3, 2) if self._face.tried else 0.0

    def _paint_one_tried(self, painter: QPainter, row: QRectF, tried: TriedFace) -> None:
        look = self.look
        if tried.strong:
            painter.fillRect(row, look.colour("ink"))
        ink = look.colour("ground" if tried.strong else "ink")
        plain, strong = look.font(Use.TABLE), look.font(Use.TABLE_STRONG)
        base, pad = middle_baseline(row, strong), look.u(1.6, 1)
        inside = row.adjusted(pad, 0, -pad, 0)
        fits, why = look.u(29, 25), look.u(43, 38)
        what = QPointF(inside.left(), base)
        set_line(painter, what, tried.what, strong if tried.strong else plain, ink, room=fits)
        at = QPointF(inside.left() + fits, base)
        set_line(painter, at, tried.fits, strong, ink, room=why - fits)
        rest = inside.width() - why
        font = font_to_fit(plain, tried.why, rest, 8.0)
        end = QPointF(inside.right(), base)
        set_line(painter, end, tried.why, font, ink, align=RIGHT, room=rest)

    def _paint_paragraphs(self, painter: QPainter, room: QRectF, floor: float) -> None:
        look, font = self.look, self.look.font(Use.BODY)
        leading = QFontMetricsF(font).height() * 0.98
        for text, role in self._face.paragraphs:
            lines = list(wrapped(text, font, room.width()))
            fit = max(0, int((floor - self._top) / leading))
            if len(lines) > fit:
                lines = [*lines[: max(0, fit - 1)], " ".join(lines[max(0, fit - 1) :])][:fit]
            for line in lines:
                self._top += leading
                place = QPointF(room.left(), self._top - 0.28 * leading)
                set_line(painter, place, line, font, look.colour(role), room=room.width())
            self._top += look.u(1.6, 1)
        self._top += look.u(2, 1.4)

    def _paint_tubs(self, painter: QPainter, room: QRectF, floor: float) -> None:
        look, tubs = self.look, self._face.tubs
        small, strong = look.font(Use.TABLE), look.font(Use.TABLE_STRONG)
        legend, high = self._legend(room), self._tubs_high(room)
        if not tubs or self._top + high > floor:
            return
        label = QPointF(room.left(), self._top + look.u(3.6, 3))
        set_line(painter, label, self._face.row_words, strong, look.colour("ink2"))
        every = min(look.u(10.5, 8), room.width() / len(tubs))
        top = self._top + look.u(6, 5)
        for n, tub in enumerate(tubs):
            rect = QRectF(room.left() + n * every, top, every - 3, look.u(10, 7.6))
            paint_tile(painter, rect, tub.state, look.palette)
            if tub.here:
                bar = QRectF(rect.left(), rect.bottom() + 2, rect.width(), 3)
                painter.fillRect(bar, look.colour("point"))
            base = QPointF(rect.center().x(), rect.bottom() + look.u(5.2, 4.2))
            font = strong if tub.here else small
            set_line(painter, base, str(tub.number), font, look.colour("ink2"), align=CENTRE)
        base_y = top + look.u(21, 16.4)
        for n, line in enumerate(legend):
            place = QPointF(room.left(), base_y + n * look.u(5, 4.2))
            set_line(painter, place, line, small, look.colour("ink2"))
        self._top += high + look.u(1, 0.5)

    def _legend(self, room: QRectF) -> list[str]:
        return list(wrapped(self._face.legend, self.look.font(Use.TABLE), room.width()))

    def _tubs_high(self, room: QRectF) -> float:
        return self.look.u(24, 19) + len(self._legend(room)) * self.look.u(5, 4.2)

    def _heat_alone(self, room: QRectF, floor: float) -> bool:
        """Where both have no room, the heat of a cause is drawn: the list names its tubs."""
        both = self._tubs_high(room) + self._heat_least()
        cause = bool(self._face.tried) and self._face.heat is not None
        return cause and floor - self._top < both

    def _heat_least(self) -> float:
        return self.look.u(34, 22)

    def _paint_heat(self, painter: QPainter, room: QRectF, floor: float) -> None:
        heat = self._face.heat
        least, most = self._heat_least(), self.look.u(52, 38)
        if heat is not None and floor - self._top >= least:
            high = min(most, floor - self._top)
            paint_heat(painter, QRectF(room.left(), self._top, room.width(), high), heat, self.look)
            self._top += high

    def _keys_high(self) -> float:
        return len(self._face.keys) * self._key_px() + self.look.u(4, 2)

    def _key_px(self) -> float:
        return self.look.u(6, 4.8)

    def _paint_keys(self, painter: QPainter, room: QRectF) -> None:
        look = self.look
        if not self._face.keys:
            return
        top = room.bottom() - self._keys_high()
        painter.setPen(QPen(look.colour("hair"), 1.0))
        painter.drawLine(QLineF(room.left(), top, room.right(), top))
        base = top + look.u(1, 0.5)
        for key, words in self._face.keys:
            base += self._key_px()
            strong, plain = look.font(Use.TABLE_STRONG), look.font(Use.TABLE)
            set_line(painter, QPointF(room.left(), base), key, strong, look.colour("ink"))
            at = QPointF(room.left() + look.u(14, 10.5), base)
            wide = room.width() - look.u(14, 10.5)
            set_line(painter, at, words, plain, look.colour("ink2"), room=wide)
