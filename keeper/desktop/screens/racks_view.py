"""The page of the racks: head line, the fronts or the refusal strip, legend, the chosen tub."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtWidgets import QStackedWidget, QVBoxLayout, QWidget

from keeper.actions.due_board import DueRow
from keeper.actions.rack_layers import Layer
from keeper.actions.racks import Room
from keeper.actions.racks_desk import PlaceCause
from keeper.actions.refusal_strip import Strip
from keeper.actions.time_line_told import Told
from keeper.desktop.look import Look
from keeper.desktop.screens.racks_strip import head_words, picture_of, strip_legend
from keeper.desktop.screens.racks_time_page import TimePage
from keeper.desktop.screens.racks_time_words import rack_called, span_words
from keeper.desktop.screens.racks_words import (
    RoomShown,
    how_many,
    legend_of,
    lines_of,
    room_told,
)
from keeper.desktop.widgets.layer_line import LayerKey, LayerLine
from keeper.desktop.widgets.rack_faces import FACES, WIDEST
from keeper.desktop.widgets.rack_front import RackFront
from keeper.desktop.widgets.rack_legend import RackLegend
from keeper.desktop.widgets.rack_paint import At
from keeper.desktop.widgets.refusal_strip import RefusalStrip
from keeper.desktop.widgets.time_line_sheet import Shown
from keeper.desktop.widgets.tub_lines import NOTHING, TubLines, TubWords
from keeper.language import tr
from keeper.reports.words import word

LAYERS = tuple(Layer)
READING = TubWords(place="", name="", who="", verdict=tr("Reading the racks"), reason="")
NO_TUB = TubWords(
    place="",
    name="",
    who="",
    verdict=tr("No animal stands in a rack yet."),
    reason=tr("D says how many rows and tubs a rack has; Records takes your records in."),
)


class RacksView(QWidget):
    """Shows what it is given."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._strip_of: Strip | None = None
        self.head, self.front = LayerLine(look, self), RackFront(look, self)
        self.strip = RefusalStrip(look, self)
        self.time = TimePage(look, self)
        self.legend, self.lines = RackLegend(look, self), TubLines(look, self)
        self._stack = QStackedWidget(self)
        self._stack.addWidget(self.front)
        self._stack.addWidget(self.strip)
        self._stack.addWidget(self.time)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.head)
        column.addWidget(self._stack, 1)
        column.addWidget(self.legend)
        column.addWidget(self.lines)
        self.lines.show_words(READING)

    @property
    def nights_shown(self) -> bool:
        """Whether the refusal strip lies over the fronts."""
        return self._stack.currentWidget() is self.strip

    @property
    def time_shown(self) -> bool:
        """Whether the time-line lies over the fronts."""
        return self._stack.currentWidget() is self.time

    def show_room(self, shown: RoomShown) -> None:
        """The fronts in one layer, its legend, and the head line."""
        layer = shown.layer.layer
        self.front.show_racks(shown.fronts, WIDEST[layer], room_told(shown.room, layer))
        if self._stack.currentWidget() is self.front:
            self._show_layers(shown.room, layer)
            self.legend.show_items(legend_of(shown.layer))
        if not self.front.every:
            self.lines.show_words(NO_TUB)

    def show_tub(
        self,
        shown: RoomShown,
        at: At | None,
        chosen: DueRow | None,
        causes: Mapping[str, PlaceCause],
    ) -> None:
        """The frame round the tub *at*, and its three lines."""
        self.front.choose(at)
        if at is None:
            self.lines.show_words(NO_TUB if not self.front.every else NOTHING)
            return
        room, layer = shown.room, shown.layer
        row = room.racks[at.rack].rows[at.row]
        tub, told = row.tubs[at.tub], layer.racks[at.rack][at.row][at.tub]
        face = FACES[layer.layer][told.state]
        self.lines.show_words(lines_of(room, row, tub, told, face, chosen, causes))
        self._mark(chosen)

    def show_nights(self, strip: Strip, chosen: DueRow | None) -> None:
        """The refusal strip in place of the fronts."""
        self._strip_of = strip
        self.strip.show_picture(picture_of(strip))
        self._turn_to(self.strip)
        self.head.show_layers(tr("Refusals"), (), head_words(strip))
        self.legend.show_items(strip_legend(strip))
        self._mark(chosen)

    def show_fronts(self, shown: RoomShown) -> None:
        """Back from the nights to the fronts."""
        self._turn_to(self.front)
        self.show_room(shown)

    def show_time(self, shown: Shown, told: Told) -> None:
        """The time-line in place of the fronts, with what is told of the chosen tub."""
        self._turn_to(self.time)
        self.head.show_layers(rack_called(shown.told), (), span_words(shown.view))
        self.time.show_time(shown, told)

    def _turn_to(self, page: QWidget) -> None:
        """The time-line has its own legend and its own sheet of words."""
        if self._stack.currentWidget() is page:
            return
        self._stack.setCurrentWidget(page)
        for beneath in (self.legend, self.lines):
            beneath.setVisible(page is not self.time)

    def _show_layers(self, room: Room, shown: Layer) -> None:
        keys = [
            LayerKey(key=str(number), name=word(layer), shown=layer is shown)
            for number, layer in enumerate(LAYERS, start=1)
        ]
        self.head.show_layers(tr("Racks"), keys, how_many(room))

    def _mark(self, chosen: DueRow | None) -> None:
        """The same animal in the strip."""
        if self._strip_of is None or not self.nights_shown:
            return
        wanted = chosen.animal.animal if chosen else None
        found = (
            (block, line)
            for block, row in enumerate(self._strip_of.rows)
            for line, each in enumerate(row.animals)
            if each.animal.animal == wanted
        )
        self.strip.choose(next(found, None))
