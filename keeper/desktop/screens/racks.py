"""The Racks place: the room as it stands, one layer at a time, worked with keys alone."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from datetime import date
from functools import partial

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QAction, QKeySequence, QShowEvent
from PySide6.QtWidgets import QApplication, QVBoxLayout, QWidget

from keeper.actions.due_board import DueRow
from keeper.actions.keeping import Keeping
from keeper.actions.rack_layers import Layer
from keeper.actions.racks import RackTub, Room
from keeper.actions.racks_desk import PlaceCause
from keeper.actions.refusal_strip import Strip
from keeper.desktop.background import Background, Worker
from keeper.desktop.look import Look
from keeper.desktop.notices import Notices
from keeper.desktop.screens.racks_asking import RacksAsking
from keeper.desktop.screens.racks_choice import RacksChoice, Step
from keeper.desktop.screens.racks_paper import NOT_YET, RacksPaper
from keeper.desktop.screens.racks_reading import RacksReading
from keeper.desktop.screens.racks_time import RacksTime
from keeper.desktop.screens.racks_view import LAYERS, RacksView
from keeper.desktop.screens.racks_walk import (
    aside,
    first_tub,
    rack_on,
    scanned_in,
    to_end,
    tub_counts,
    where_is,
)
from keeper.desktop.screens.racks_words import RoomShown
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.desktop.widgets.rack_reader import read_racks_aloud
from keeper.language import tr
from keeper.reports.words import word

FIRST_LAYER = Layer.RATIO
NOBODY = tr("Nobody stands in a rack yet: there is no time-line.")


class RacksScreen(QWidget):
    """Shows the room. All is read off the main thread, by *reader*, and the watch by *watcher*."""

    def __init__(
        self,
        look: Look,
        keeping: Keeping,
        notices: Notices,
        *,
        reader: Worker | None = None,
        watcher: Worker | None = None,
    ) -> None:
        super().__init__()
        read_racks_aloud()
        self._notices, self._keeping = notices, keeping
        workers = (reader or Background(), watcher or Background())
        self._reading = RacksReading(keeping, notices, *workers)
        self._layer = FIRST_LAYER
        self._stale = True
        self.view, self.line = RacksView(look, self), AskingLine(look, self)
        self.chosen = RacksChoice(self.view)
        self._asking = RacksAsking(keeping, notices, self.line)
        self.time = RacksTime(keeping, notices, self._reading, self.view, self._use_keys)
        self.paper = RacksPaper(
            keeping, notices, self, self.line, lambda: (self.room, self.chosen.at)
        )
        _one_below_another(self, self.view, self.line)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._listen()

    @property
    def room(self) -> Room | None:
        """The room that is shown; None until it is read."""
        return self.chosen.room

    def scanned(self, code: str) -> None:
        """Choose the tub of the animal, or the place, whose label was scanned."""
        at, animal = scanned_in(self.room, code)
        if at is None:
            told = tr("No animal in these racks has the code {code}.", code=code)
            self._notices.refused.emit(told)
        else:
            self.chosen.animal = animal
            self.chosen.choose(at)
            if self.view.time_shown:
                self._open_time()

    def show_stay(self, animal: int, on: date) -> None:
        """Open the time-line at where the animal stood on a day."""
        self.time.open(animal, None, on)

    def close_down(self) -> None:
        """Let go of the book in the reader's thread."""
        self._reading.close()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self._stale:
            self._read()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """While a line is asked no key of the place may take what is typed."""
        if watched is self.line and event.type() in (QEvent.Type.Show, QEvent.Type.Hide):
            for action in self.actions():
                action.setEnabled(event.type() == QEvent.Type.Hide)
        return super().eventFilter(watched, event)

    # --- reading -----------------------------------------------------------------------------

    def _changed(self) -> None:
        self._stale = True
        if self.isVisible():
            self._read()

    def _read(self) -> None:
        self._stale = False
        self._reading.begin()
        self._reading.room(self._layer, self._show)
        if self.view.nights_shown:
            self._reading.strip(self._show_nights)
        if self.view.time_shown:
            self.time.read_again()

    def _show(self, shown: RoomShown) -> None:
        """A room that was read; the animal that was chosen stays chosen, wherever it is now."""
        chosen, first = self.chosen, self.chosen.shown is None
        chosen.shown = shown
        self.view.show_room(shown)
        at = chosen.at if chosen.animal is None else where_is(shown.room, chosen.animal)
        chosen.choose(at or first_tub(tub_counts(shown.room)), told=not first)
        if shown.layer.layer is not self._layer:  # asked for while this room was being read
            self._ask_layer(shown.room)
        self._reading.causes(self._show_causes)

    def _ask_layer(self, room: Room) -> None:
        self._reading.layer(room, self._layer, self._show_layer)

    def _show_layer(self, shown: RoomShown) -> None:
        """Another layer, unless another room or yet another layer was asked for since."""
        if shown.room is self.room and shown.layer.layer is self._layer:
            self.chosen.shown = shown
            self.view.show_room(shown)
            self.chosen.choose(self.chosen.at)

    def _show_causes(self, causes: Mapping[str, PlaceCause]) -> None:
        self.chosen.causes = causes
        self.chosen.show()

    def _show_nights(self, strip: Strip) -> None:
        self.view.show_nights(strip, self.chosen.living)
        self._use_keys()

    # --- keys --------------------------------------------------------------------------------

    def _show_by(self, layer: Layer) -> None:
        self._layer = layer
        if self.chosen.shown is not None:
            self._to_fronts(self.chosen.shown)
            self._ask_layer(self.chosen.shown.room)

    def _turn_over(self) -> None:
        """From the fronts to the nights, and back."""
        shown = self.chosen.shown
        if shown is not None and self.view.nights_shown:
            self._to_fronts(shown)
        elif shown is not None:
            self._reading.strip(self._show_nights)

    def _turn_to_time(self) -> None:
        """From the chosen animal, or tub, to its rack through time, and back to where it is."""
        if self.view.time_shown and self.chosen.shown is not None:
            self._to_fronts(self.chosen.shown)
        else:
            self._open_time()

    def _open_time(self) -> None:
        tub = self.chosen.tub
        if tub is None:
            self._notices.noted.emit(NOT_YET if self.room is None else NOBODY)
        else:
            self.time.open(self.chosen.animal, tub.name, self._keeping.today)

    def _to_fronts(self, shown: RoomShown) -> None:
        """The animal that was looked at stays chosen, wherever it is now."""
        looked_at = self.time.animal if self.view.time_shown else None
        self.view.show_fronts(shown)
        self._use_keys()
        at = None if looked_at is None else where_is(shown.room, looked_at)
        if at is not None:
            self.chosen.animal = looked_at
            self.chosen.choose(at)

    def _use_keys(self) -> None:
        """The keys of the view in sight alone; those of the other mean something else here."""
        time = self.view.time_shown
        for action in self.actions():
            self.removeAction(action)
        self.addActions(self._time_keys if time else self._front_keys)

    def _open(self) -> None:
        living = self.chosen.living
        if self.room is None:
            self._notices.noted.emit(NOT_YET)
        elif living is None:
            self._notices.refused.emit(tr("This tub is empty: there is no animal to open."))
        else:
            self._notices.animal_asked.emit(living.animal.animal)

    def _declare(self) -> None:
        at = self.chosen.at
        self._asking.declare(self.room.racks[at.rack] if self.room and at else None)

    def _ask(self, ask: Callable[[Room, RackTub, DueRow | None], None]) -> None:
        tub = self.chosen.tub
        if self.room is None:
            self._notices.noted.emit(NOT_YET)
        elif tub is not None:
            ask(self.room, tub, self.chosen.living)

    def _listen(self) -> None:
        self._notices.changed.connect(self._changed)
        self.view.front.tub_asked.connect(self.chosen.choose)
        self.line.installEventFilter(self)
        self._front_keys = [_action(self, *key) for key in _keys(self)]
        time_keys = (*self.time.keys(), *_keys_of_time(self))
        self._time_keys = [_action(self, *key) for key in time_keys]
        self._use_keys()
        app = QApplication.instance()
        if app is not None:
            app.aboutToQuit.connect(self.close_down)


def _one_below_another(page: QWidget, first: QWidget, *below: QWidget) -> None:
    column = QVBoxLayout(page)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(0)
    column.addWidget(first, 1)
    for widget in below:
        column.addWidget(widget)


def _action(parent: QWidget, words: str, keys: str, slot: Callable[[], object]) -> QAction:
    action = QAction(words, parent)
    action.setShortcuts([QKeySequence(key) for key in keys.split()])
    action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
    action.triggered.connect(lambda _=False: slot())
    return action


def _layer_keys(screen: RacksScreen) -> Sequence[tuple[str, str, Callable[[], object]]]:
    return [
        (tr("By {layer}", layer=word(layer)), str(number), partial(screen._show_by, layer))
        for number, layer in enumerate(LAYERS, start=1)
    ]


def _keys_of_time(screen: RacksScreen) -> Sequence[tuple[str, str, Callable[[], object]]]:
    """What is the place's own while the time-line is shown."""
    paper = screen.paper
    return (
        (tr("Back to the racks as they stand"), "T", screen._turn_to_time),
        *_layer_keys(screen),
        (tr("Refusals of the last feed nights"), "R", screen._turn_over),
        (tr("The time-line on paper"), "Ctrl+P", lambda: paper.time_line(screen.time.shown)),
        (tr("Carry-out list, for a fire or a power cut"), "Ctrl+O", paper.carry_out),
        (tr("The last PDF on a printer"), "Ctrl+Shift+P", paper.desk.to_printer),
    )


def _keys(screen: RacksScreen) -> Sequence[tuple[str, str, Callable[[], object]]]:
    """Every key of the place with what it does."""

    def stepping(step: Step) -> Callable[[], None]:
        return lambda: screen.chosen.step(step)

    near, paper = screen.view.front.come_near, screen.paper
    return (
        *_layer_keys(screen),
        (tr("The tub before"), "Left", stepping(lambda c, at: aside(c, at, -1))),
        (tr("The next tub"), "Right", stepping(lambda c, at: aside(c, at, 1))),
        (tr("The row above"), "Up", lambda: screen.chosen.row_or_animal(-1)),
        (tr("The row below"), "Down", lambda: screen.chosen.row_or_animal(1)),
        (tr("The rack before"), "PgUp", stepping(lambda c, at: rack_on(c, at, -1))),
        (tr("The next rack"), "PgDown", stepping(lambda c, at: rack_on(c, at, 1))),
        (tr("The first tub of the row"), "Home", stepping(lambda c, at: to_end(c, at, last=False))),
        (tr("The last tub of the row"), "End", stepping(lambda c, at: to_end(c, at, last=True))),
        (tr("The next animal in the tub"), "Space", screen.chosen.next_in_tub),
        (tr("Open the animal"), "Return Enter", screen._open),
        (tr("Move the animal to another tub"), "M", lambda: screen._ask(screen._asking.move)),
        (tr("Exchange two tubs or animals"), "X", lambda: screen._ask(screen._asking.exchange)),
        (tr("Rows and tubs of the rack"), "D", screen._declare),
        (tr("Refusals of the last feed nights"), "R", screen._turn_over),
        (tr("The rack through time"), "T", screen._turn_to_time),
        (tr("This rack alone"), "+ =", lambda: near(True)),
        (tr("The whole room"), "-", lambda: near(False)),
        (tr("Tub labels of this rack"), "Ctrl+L", paper.rack_labels),
        (tr("Tub labels of the room"), "Ctrl+Shift+L", paper.room_labels),
        (tr("Labels of the places of this rack"), "Ctrl+T", paper.rack_places),
        (tr("Labels of the places of the room"), "Ctrl+Shift+T", paper.room_places),
        (tr("The refusals of the nights on paper"), "Ctrl+P", paper.refusals),
        (tr("Carry-out list, for a fire or a power cut"), "Ctrl+O", paper.carry_out),
        (tr("The last PDF on a printer"), "Ctrl+Shift+P", paper.desk.to_printer),
    )
