"""The number pad as it lies under the hand, with today's meaning of each key."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import Enum, auto

from PySide6.QtCore import QPointF, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFont, QKeyEvent, QPainter, QPen, QResizeEvent
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import DrawnKey
from keeper.desktop.widgets.kept_picture import KeptRows, seen
from keeper.desktop.widgets.lettering import (
    CENTRE,
    cap_height,
    font_to_fit,
    middle_baseline,
    set_line,
    wrapped,
)
from keeper.language import tr, tr_table

LAYOUT = {
    "Num": (0, 0, 1, 1),
    "/": (0, 1, 1, 1),
    "*": (0, 2, 1, 1),
    "-": (0, 3, 1, 1),
    "7": (1, 0, 1, 1),
    "8": (1, 1, 1, 1),
    "9": (1, 2, 1, 1),
    "+": (1, 3, 2, 1),
    "4": (2, 0, 1, 1),
    "5": (2, 1, 1, 1),
    "6": (2, 2, 1, 1),
    "1": (3, 0, 1, 1),
    "2": (3, 1, 1, 1),
    "3": (3, 2, 1, 1),
    "Enter": (3, 3, 2, 1),
    "0": (4, 0, 1, 2),
    ".": (4, 2, 1, 1),
}
"""Each key as row, column, rows, columns."""

SHOWN = {"-": "−", ".": tr(".", sense="on the pad")}
"""What stands on the key; the decimal mark is another on another language's keyboard."""
_LEAST_PT = 8.0
SPOKEN = tr_table(
    {
        "/": "slash",
        "*": "star",
        "-": "minus",
        "+": "plus",
        ".": "point",
        "Num": "num lock",
    }
)

_KEYS = {
    Qt.Key.Key_Slash: "/",
    Qt.Key.Key_Asterisk: "*",
    Qt.Key.Key_Minus: "-",
    Qt.Key.Key_Plus: "+",
    Qt.Key.Key_Enter: "Enter",
    Qt.Key.Key_Return: "Enter",
    Qt.Key.Key_Period: ".",
    Qt.Key.Key_Comma: ".",
    **{Qt.Key(Qt.Key.Key_0.value + digit): str(digit) for digit in range(10)},
}
_WITHOUT_NUM_LOCK = {
    Qt.Key.Key_Insert: "0",
    Qt.Key.Key_End: "1",
    Qt.Key.Key_Down: "2",
    Qt.Key.Key_PageDown: "3",
    Qt.Key.Key_Left: "4",
    Qt.Key.Key_Clear: "5",
    Qt.Key.Key_Right: "6",
    Qt.Key.Key_Home: "7",
    Qt.Key.Key_Up: "8",
    Qt.Key.Key_PageUp: "9",
    Qt.Key.Key_Delete: ".",
}


class KeyFace(Enum):
    """How a live key is drawn."""

    PLAIN = auto()
    RAISED = auto()
    SOLID = auto()


@dataclass(frozen=True, slots=True, kw_only=True)
class KeyMeaning:
    """What a key does now; without words it is a bare digit."""

    words: str = ""
    face: KeyFace = KeyFace.PLAIN


def pad_key(event: QKeyEvent) -> str | None:
    """The pad key an event means, from the pad (with or without Num Lock) or the main keys."""
    modifiers = event.modifiers() & ~Qt.KeyboardModifier.ShiftModifier
    on_pad = bool(modifiers & Qt.KeyboardModifier.KeypadModifier)
    if modifiers & ~Qt.KeyboardModifier.KeypadModifier:
        return None
    key = Qt.Key(event.key())
    if on_pad and key in _WITHOUT_NUM_LOCK:
        return _WITHOUT_NUM_LOCK[key]
    return _KEYS.get(key)


def meanings(legend: Mapping[str, str], raised: frozenset[str]) -> dict[str, KeyMeaning]:
    """The pad's keys with Enter solid, and *raised* ones raised."""
    faces = dict.fromkeys(raised, KeyFace.RAISED) | {"Enter": KeyFace.SOLID}
    return {
        key: KeyMeaning(words=words, face=faces.get(key, KeyFace.PLAIN))
        for key, words in legend.items()
    }


class PadLegend(QWidget):
    """The legend of the pad. ``key_asked(key)`` comes from the keyboard and the mouse alike.

    A page hands its key events to ``take``; a key without a meaning is dead and does nothing.
    """

    key_asked = Signal(str)

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.look = look
        self._meanings: dict[str, KeyMeaning] = {}
        kept = KeptRows(2 * len(LAYOUT))
        self._caps = {key: _KeyCap(look, key, self, kept) for key in LAYOUT}
        for key, cap in self._caps.items():
            cap.clicked.connect(lambda _=False, key=key: self.key_asked.emit(key))
        self.setAccessibleName(tr("number pad"))
        look.changed.connect(self._lay_out)
        self.show_meanings({})

    def show_meanings(self, meanings: Mapping[str, KeyMeaning]) -> None:
        """Give each live key its meaning; the rest are dead. KeyError for an unknown key."""
        for key in meanings:
            LAYOUT[key]
        self._meanings = dict(meanings)
        for key, cap in self._caps.items():
            cap.show_meaning(self._meanings.get(key))

    def live_keys(self) -> dict[str, str]:
        """The keys that do something now, with their words; a bare digit has none."""
        return {key: meaning.words for key, meaning in self._meanings.items()}

    def take(self, event: QKeyEvent) -> bool:
        """Emit ``key_asked`` if the event is a live key of the pad; say whether it was."""
        key = pad_key(event)
        if key is None or key not in self._meanings:
            return False
        self.key_asked.emit(key)
        return True

    def sizeHint(self) -> QSize:
        return QSize(round(self.look.u(102.5, 78)), round(self.look.u(70, 60)))

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._lay_out()

    def _lay_out(self) -> None:
        gap = self.look.u(1.7, 1.4)
        wide, high = (self.width() + gap) / 4, (self.height() + gap) / 5
        for key, (row, column, rows, columns) in LAYOUT.items():
            size = (columns * wide - gap, rows * high - gap)
            rect = QRectF(column * wide, row * high, *size)
            self._caps[key].setGeometry(rect.toRect())


class _KeyCap(DrawnKey):
    def __init__(self, look: Look, key: str, parent: QWidget, kept: KeptRows) -> None:
        super().__init__(look, parent)
        self._key, self._meaning, self._kept = key, KeyMeaning(), kept

    def show_meaning(self, meaning: KeyMeaning | None) -> None:
        if self.isEnabled() == (meaning is not None) and self._meaning == (meaning or KeyMeaning()):
            return
        self.setEnabled(meaning is not None)
        self._meaning = meaning or KeyMeaning()
        spoken = SPOKEN.get(self._key, self._key)
        words = self._meaning.words or (tr("digit") if meaning else tr("no meaning now"))
        self.setAccessibleName(f"{spoken}: {words}")
        self.update()

    def paint(self, painter: QPainter) -> None:
        about = (self._key, self._meaning, self.isEnabled())
        ground = self.look.colour("ground")
        self._kept.lay(painter, self.rect(), about, seen(self.look), self._draw, ground)

    def _draw(self, painter: QPainter, area: QRect) -> None:
        rect = QRectF(area).adjusted(0.6, 0.6, -0.6, -0.6)
        shown = SHOWN.get(self._key, self._key)
        if not self.isEnabled():
            _paint_dead(painter, rect, shown, self.look)
        elif self._meaning.words:
            _paint_live(painter, rect, shown, self._meaning, self.look)
        else:
            _paint_digit(painter, rect, shown, self.look)


def _paint_cap(painter: QPainter, rect: QRectF, paper: str, edge: str, look: Look) -> None:
    painter.setPen(QPen(look.colour(edge), 1.2))
    painter.setBrush(look.colour(paper))
    painter.drawRoundedRect(rect, 3, 3)


def _paint_dead(painter: QPainter, rect: QRectF, shown: str, look: Look) -> None:
    _paint_cap(painter, rect, "ground", "hair", look)
    font = look.font(Use.KEY_HINT)
    place = QPointF(rect.left() + look.u(1.8, 1.5), rect.top() + look.u(2, 1.6) + cap_height(font))
    set_line(painter, place, shown, font, look.colour("line"))


def _paint_digit(painter: QPainter, rect: QRectF, shown: str, look: Look) -> None:
    _paint_cap(painter, rect, "sheet", "line", look)
    font = look.font(Use.PAD_DIGIT)
    place = QPointF(rect.center().x(), middle_baseline(rect, font))
    set_line(painter, place, shown, font, look.colour("ink"), align=CENTRE)


def _paint_live(
    painter: QPainter, rect: QRectF, shown: str, meaning: KeyMeaning, look: Look
) -> None:
    paper, ink, words_ink = _COLOURS[meaning.face]
    edge = paper if meaning.face is KeyFace.SOLID else "line"
    _paint_cap(painter, rect, paper, edge, look)
    label = look.font(Use.PAD_KEY)
    pad = look.u(1.8, 1.5)
    if len(shown) > 1:
        label.setPointSizeF(0.88 * label.pointSizeF())
    top = rect.top() + look.u(1.7, 1.25) + cap_height(label)
    set_line(painter, QPointF(rect.left() + pad, top), shown, label, look.colour(ink))
    strong = meaning.face is not KeyFace.PLAIN
    font = look.font(Use.TABLE_STRONG if strong else Use.TABLE)
    below = rect.adjusted(pad, top - rect.top(), -look.u(0.8), -look.u(1.9, 1.5))
    _paint_words(painter, below, meaning.words, font, look.colour(words_ink), look.u(4.0, 3.6))


def _paint_words(
    painter: QPainter, rect: QRectF, words: str, font: QFont, colour: QColor, leading: float
) -> None:
    """Set *words* at the foot of *rect*, on as many lines as there is height for."""
    most = max(1, int((rect.height() - 0.2 * leading) / leading))
    lines = list(wrapped(words, font, rect.width())) if most > 1 else [words]
    if len(lines) > most:
        lines[most - 1 :] = [" ".join(lines[most - 1 :])]
    for above, line in enumerate(reversed(lines)):
        place = QPointF(rect.left(), rect.bottom() - above * leading)
        fitted = font_to_fit(font, line, rect.width(), _LEAST_PT)
        set_line(painter, place, line, fitted, colour, room=rect.width())


_COLOURS = {
    KeyFace.PLAIN: ("sheet", "ink", "ink2"),
    KeyFace.RAISED: ("fill1", "ink", "ink"),
    KeyFace.SOLID: ("ink", "ground", "ground"),
}
