"""The weigh-in's page composed: row with weights, panel, slips, reason, pad, last weights."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtWidgets import QVBoxLayout, QWidget

from keeper.actions.keeping import Keeping
from keeper.actions.weighing import Asks, WeighIn
from keeper.desktop.look import Look
from keeper.desktop.screens import weigh_in_faces as faces
from keeper.desktop.widgets.drawer_row import DrawerRow
from keeper.desktop.widgets.drawer_shape import FrontStyle
from keeper.desktop.widgets.last_weights import LastWeights
from keeper.desktop.widgets.pad import KeyFace, KeyMeaning, PadLegend
from keeper.desktop.widgets.slips_table import SlipsTable
from keeper.desktop.widgets.weigh_panel import WeighPanel, WeighWords
from keeper.desktop.widgets.words_line import HeadLine, Reason
from keeper.language import tr
from keeper.reports.words import short_species_words

_QUIET = tr("A weight inside the range is written in silence.")
_PANEL_SHARE = 0.765


class WeighView(QWidget):
    """Shows a walk along the scale; keys come from ``pad.key_asked``."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.look = look
        self.lines: tuple[int | None, ...] = ()
        share = _PANEL_SHARE
        self.row = DrawerRow(
            look, style=FrontStyle.VALUE, panel_share=share, small_panel_share=share
        )
        self.pad = PadLegend(look)
        self._head, self._panel = HeadLine(look), WeighPanel(look)
        self._slips, self._because = SlipsTable(look), Reason(look)
        self._last = LastWeights(look)
        self._compose()
        look.changed.connect(self._fit)
        self._fit()

    def show_walk(
        self,
        keeping: Keeping,
        walk: WeighIn,
        typed: str,
        asks: Asks | None,
        passed: frozenset[int],
        legend: Mapping[str, str],
    ) -> None:
        """Show the animal at the cursor of *walk* with what is *typed* and what was asked."""
        where, right = faces.head_of(walk)
        self._head.show_words(tr("Weigh-in"), where, right)
        self.pad.show_meanings({key: _meaning(key, words) for key, words in legend.items()})
        if not walk.animals:
            self._panel.show_words(WeighWords(place="", name=tr("No animal stands in a tub.")))
            return
        at = min(walk.cursor, len(walk.animals) - 1)
        row = faces.row_shown(walk, at, passed, asks=asks is not None)
        self.lines = row.lines
        self.row.show_row(row.fronts, row.current, row.words)
        if walk.current is None:
            self._show_end(walk)
            return
        scale = walk.on_scale()
        kind = short_species_words(keeping.profile(scale.animal))
        self._panel.show_words(faces.words_of(walk, scale, typed, asks, kind))
        self._slips.show_slips(faces.slips_of(asks), "" if self.look.small else _QUIET)
        self._because.show_reason(faces.because_of(scale, asks))
        head = faces.head_of_last(scale.animal.sex)
        if self.look.small:  # the head line has no room there
            head = f"{head}; {', '.join(right)}"
        self._last.show_weights(head, faces.last_weights(scale, walk.on), faces.hint_of(asks))

    def _show_end(self, walk: WeighIn) -> None:
        left = len(walk.animals) - len(walk.written)
        self._panel.show_words(
            WeighWords(
                place=tr("End"),
                name=tr("of the weigh-in"),
                typed=str(len(walk.written)),
                state=tr("weighed today"),
                expected=tr("{count} without a weight", count=left),
                outside=tr("− steps back"),
            )
        )
        self._slips.show_slips((), "")
        self._because.show_reason(tr("The walk is through; a scan or − goes to an animal again."))
        self._last.show_weights("", (), "")

    def _compose(self) -> None:
        column = _column(self)
        column.addWidget(self._head)
        column.addWidget(self.row, 1)
        side = QWidget()
        beside = _column(side)
        beside.addWidget(self._slips)
        beside.addWidget(self._because, 1)
        beside.addWidget(self.pad)
        self.row.set_panel(self._panel)
        self.row.set_below(self._last)
        self.row.set_side(side)
        for piece in (self._head, self._slips):
            piece.lie_on("ground")

    def _fit(self) -> None:
        self._head.setVisible(not self.look.small)


def _meaning(key: str, words: str) -> KeyMeaning:
    return KeyMeaning(words=words, face=KeyFace.RAISED if key == "Enter" else KeyFace.PLAIN)


def _column(of: QWidget) -> QVBoxLayout:
    column = QVBoxLayout(of)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(0)
    return column
