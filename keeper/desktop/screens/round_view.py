"""The walking page composed: head line, row, panel, past offers, reason, pad, the night."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from keeper.desktop.look import Look
from keeper.desktop.screens.round_faces import Row
from keeper.desktop.widgets.drawer_row import DrawerRow
from keeper.desktop.widgets.night_head import NightHead
from keeper.desktop.widgets.night_map import Night, NightMap
from keeper.desktop.widgets.offer_panel import OfferPanel, OfferWords
from keeper.desktop.widgets.offers_strip import OffersStrip, PastOffer
from keeper.desktop.widgets.pad import PadLegend, meanings
from keeper.desktop.widgets.words_line import Reason


@dataclass(frozen=True, slots=True, kw_only=True)
class WalkFace:
    """Everything a walking page shows. raised: pad keys drawn as struck most.

    banner: what is said in reversed words while a night that is over is entered.
    """

    head: str
    where: tuple[tuple[str, bool], ...]
    right: tuple[str, ...]
    row: Row
    words: OfferWords
    past: tuple[PastOffer, ...]
    none_yet: str
    because: str
    night: Night
    legend: Mapping[str, str]
    raised: frozenset[str] = frozenset()
    banner: str = ""


class WalkView(QWidget):
    """Shows a ``WalkFace``; a key or a click on the pad comes from ``pad.key_asked``.

    ``line_asked`` carries the line of a front that is pressed with the mouse.
    """

    line_asked = Signal(int)

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.look = look
        self.row = DrawerRow(look)
        self.pad = PadLegend(look)
        self._head = NightHead(look)
        self._panel = OfferPanel(look)
        self._map = NightMap(look)
        self._strip = OffersStrip(look)
        self._because = Reason(look)
        self._lines: tuple[int | None, ...] = ()
        self.row.tub_asked.connect(self._ask_for_front)
        self._compose()
        look.changed.connect(self._fit)
        self._fit()

    def show_face(self, face: WalkFace) -> None:
        """Show *face*; what is the same as before is not drawn again."""
        self._lines = face.row.lines
        self._head.banner = face.banner
        self._head.show_words(face.head, face.where, face.right)
        self._panel.show_offer(face.words)
        self.row.show_row(face.row.fronts, face.row.current, face.row.words)
        self._strip.show_offers(face.past, face.none_yet)
        self._because.show_reason(face.because)
        self._map.show_night(face.night)
        self.pad.show_meanings(meanings(face.legend, face.raised))
        self._fit()

    def _ask_for_front(self, index: int) -> None:
        line = self._lines[index] if index < len(self._lines) else None
        if line is not None:
            self.line_asked.emit(line)

    def _compose(self) -> None:
        column = _column(self)
        column.addWidget(self._head)
        column.addWidget(self.row, 1)
        side = QWidget()
        beside = _column(side)
        beside.addWidget(self._strip)
        beside.addWidget(self._because, 1)
        beside.addWidget(self.pad)
        for piece in (self._head, self._strip, self._because, self._map):
            piece.lie_on("ground")
        self._panel.lie_on("sheet")
        self.row.set_panel(self._panel)
        self.row.set_below(self._map)
        self.row.set_side(side)

    def _fit(self) -> None:
        self._head.setVisible(not self.look.small or bool(self._head.banner))


def _column(of: QWidget) -> QVBoxLayout:
    column = QVBoxLayout(of)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(0)
    return column
