"""Tub fronts as pictures kept for use: each look of a tub is painted once and laid down often."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import Enum, auto

from PySide6.QtCore import QLineF, QRectF, QSize, Qt
from PySide6.QtGui import QFont, QPainter, QPen, QPixmap

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.lettering import advance, cap_height
from keeper.desktop.widgets.rack_faces import RackFace
from keeper.desktop.widgets.rack_labels import PAINTERS
from keeper.desktop.widgets.tile import TileState, paint_small, paint_tile

LEAST_PT = 6.5
_HANDLE_PX = 4.0
_STAMPS_MOST = 3000
_DARK = (TileState.FAR_BEHIND, TileState.CURRENT)


class Detail(Enum):
    """How much of a state a tub has room for."""

    FIGURE = auto()
    LETTER = auto()
    PATTERN = auto()


@dataclass(frozen=True, slots=True, kw_only=True)
class Lettering:
    """What the tubs of a rack can carry: how much, and in which sizes."""

    detail: Detail
    letter: QFont
    alone: QFont


def lettering_for(look: Look, size: QSize, widest: str) -> Lettering:
    """Type for tubs of *size*: the letter over its figure, or a figure alone.

    widest: the widest figure of the layer, empty where it has none.
    """
    letter, alone = look.font(Use.LINE_TITLE), look.font(Use.BODY)
    wide, high = 0.86 * size.width() - 2, size.height() - look.u(2.4)
    figures = advance(alone, widest) if widest else 0.0
    stacked = cap_height(letter) * (2.25 if widest else 1.0)
    both = min(1.0, wide / max(1.0, figures, advance(letter, "D")), high / max(1.0, stacked))
    if both * alone.pointSizeF() >= LEAST_PT:
        single = min(1.0, wide / max(1.0, figures), high / cap_height(alone))
        return _made(Detail.FIGURE, (letter, both), (alone, single))
    single = min(1.0, wide / advance(letter, "D"), high / cap_height(letter))
    if single * letter.pointSizeF() >= LEAST_PT:
        return _made(Detail.LETTER, (letter, single), (alone, single))
    return Lettering(detail=Detail.PATTERN, letter=letter, alone=alone)


class RackStamps:
    """Stamps of one look; they are kept until the look changes, or there are too many."""

    def __init__(self, look: Look) -> None:
        self._look = look
        self._tubs: dict[tuple[int, int, str], TubStamps] = {}
        self._labels: dict[tuple[int, int], LabelStamps] = {}
        self._dots = 1.0
        look.changed.connect(self._forget)

    def set_for(self, dots: float) -> None:
        """From now on for a screen of *dots* a px."""
        kept = sum(len(each) for each in self._tubs.values())
        if dots != self._dots or kept > _STAMPS_MOST:
            self._dots = dots
            self._forget()

    def tubs(self, size: QSize, widest: str) -> TubStamps:
        """The stamps of tubs of one size, for figures as wide as *widest*."""
        key = (size.width(), size.height(), widest)
        if key not in self._tubs:
            self._tubs[key] = TubStamps(self._look, size, self._dots, widest)
        return self._tubs[key]

    def labels(self, size: QSize) -> LabelStamps:
        """The stamps of labels of one size."""
        key = (size.width(), size.height())
        if key not in self._labels:
            self._labels[key] = LabelStamps(self._look, size, self._dots)
        return self._labels[key]

    def _forget(self) -> None:
        self._tubs.clear()
        self._labels.clear()


class LabelStamps(dict[tuple[str, ...], QPixmap]):
    """Labels by kind and words; one is painted when first asked."""

    def __init__(self, look: Look, size: QSize, dots: float) -> None:
        super().__init__()
        self._look, self._size, self._dots = look, size, dots

    def __missing__(self, key: tuple[str, ...]) -> QPixmap:
        kind, *words = key

        def paint(painter: QPainter, rect: QRectF) -> None:
            PAINTERS[kind](painter, rect, self._look, *words)

        made = self[key] = _painted(self._size, self._dots, paint)
        return made


class TubStamps(dict[tuple[RackFace, str, bool], QPixmap]):
    """Fronts by face, figure and whether the tub is shared; one is painted when first asked."""

    def __init__(self, look: Look, size: QSize, dots: float, widest: str) -> None:
        super().__init__()
        self._look, self._size, self._dots = look, size, dots
        self._type = lettering_for(look, size, widest)

    def __missing__(self, key: tuple[RackFace, str, bool]) -> QPixmap:
        face, figure, shared = key

        def paint(painter: QPainter, rect: QRectF) -> None:
            _paint_front(painter, rect, face, figure, self._type, self._look)
            if _has_room_for_handle(rect, face, figure, self._type):
                _paint_handle(painter, rect, face, self._look, shared)

        made = self[key] = _painted(self._size, self._dots, paint)
        return made


def _painted(size: QSize, dots: float, paint: Callable[[QPainter, QRectF], None]) -> QPixmap:
    made = QPixmap(size * dots)
    made.setDevicePixelRatio(dots)
    made.fill(Qt.GlobalColor.transparent)
    painter = QPainter(made)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    paint(painter, QRectF(0, 0, size.width(), size.height()))
    painter.end()
    return made


def _paint_front(
    painter: QPainter, rect: QRectF, face: RackFace, figure: str, type_: Lettering, look: Look
) -> None:
    if type_.detail is Detail.PATTERN:
        paint_small(painter, rect, face.look, look.palette)
        return
    shown = figure if type_.detail is Detail.FIGURE else ""
    font = type_.letter if face.letter else type_.alone
    if face.look is TileState.EMPTY:
        font = type_.alone
    room = 0.9 * rect.width() - 2
    widest = max(advance(font, face.letter), advance(type_.alone, shown))
    if widest > room:
        font = QFont(font)
        font.setPointSizeF(font.pointSizeF() * room / widest)
    paint_tile(painter, rect, face.look, look.palette, face.letter, number=shown, letter_font=font)


def _has_room_for_handle(rect: QRectF, face: RackFace, figure: str, type_: Lettering) -> bool:
    """Whether the handle would stand clear of the letter and its figure."""
    if type_.detail is Detail.PATTERN or rect.width() < 16:
        return False
    both = face.letter and figure and type_.detail is Detail.FIGURE
    text = cap_height(type_.letter) * (2.25 if both else 1.0)
    return rect.height() / 2 - text / 2 >= _HANDLE_PX + 4


def _paint_handle(
    painter: QPainter, rect: QRectF, face: RackFace, look: Look, shared: bool
) -> None:
    """The lip by which a drawer is pulled; two where two live behind it."""
    quiet = "hair" if face.look is TileState.EMPTY else "line"
    painter.setPen(QPen(look.colour("ground" if face.look in _DARK else quiet), 1.6))
    base, half = rect.bottom() - _HANDLE_PX, min(7.0, 0.18 * rect.width())
    middle = rect.center().x()
    for x in (middle - 1.4 * half, middle + 1.4 * half) if shared else (middle,):
        painter.drawLine(QLineF(x - half, base, x + half, base))


def _made(detail: Detail, letter: tuple[QFont, float], alone: tuple[QFont, float]) -> Lettering:
    fonts = []
    for font, share in (letter, alone):
        smaller = QFont(font)
        smaller.setPointSizeF(font.pointSizeF() * share)
        fonts.append(smaller)
    return Lettering(detail=detail, letter=fonts[0], alone=fonts[1])
