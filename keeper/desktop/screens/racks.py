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
from keeper.desktop.screens.racks_paper import NOT_YET, RacksPaper
from keeper.desktop.screens.racks_reading import RacksReading
from keeper.desktop.screens.racks_time import RacksTime
from keeper.desktop.screens.racks_view import LAYERS, RacksView
from keeper.desktop.screens.racks_walk import (
    Counts,
    along,
    aside,
    first_tub,
    next_lived,
    rack_on,
    scanned_in,
    to_end,
    tub_at,
    tub_counts,
    where_is,
)
from keeper.desktop.screens.racks_words import RoomShown
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.desktop.widgets.drawn import announce
from keeper.desktop.widgets.rack_paint import At
from keeper.desktop.widgets.rack_reader import read_racks_aloud
from keeper.language import tr
from keeper.reports.words import word

FIRST_LAYER = Layer.RATIO
Step = Callable[[Counts, At], At]


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
        self._shown: RoomShown | None = None
        self._causes: Mapping[str, PlaceCause] = {}
        self._animal: int | None = None  # that is chosen, where the tub is not empty
        self._stale = True
        self.view, self.line = RacksView(look, self), AskingLine(look, self)
        self._asking = RacksAsking(keeping, notices, self.line)
        self.time = RacksTime(keeping, notices, self._reading, self.view, self._use_keys)
        self.paper = RacksPaper(
            keeping, notices, self, self.line, lambda: (self.room, self.view.front.at)
        )
        _one_below_another(self, self.view, self.line)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._listen()

    @property
    def room(self) -> Room | None:
        """The room that is shown; None until it is read."""
        return self._shown.room if self._shown else None

    def scanned(self, code: str) -> None:
        """Choose the tub of the animal, or the place, whose label was scanned."""
        at, animal = scanned_in(self.room, code)
        if at is None:
            told = tr("No animal in these racks has the code {code}.", code=code)
            self._notices.refused.emit(told)
        else:
            self._animal = animal
            self._choose(at)

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
        first = self._shown is None
        self._shown = shown
        self.view.show_room(shown)
        here = self.view.front.at
        at = here if self._animal is None else where_is(shown.room, self._animal)
        self._choose(at or first_tub(tub_counts(shown.room)), told=not first)
        if shown.layer.layer is not self._layer:  # asked for while this room was being read
            self._ask_layer(shown.room)
        self._reading.causes(self._show_causes)

    def _ask_layer(self, room: Room) -> None:
        self._reading.layer(room, self._layer, self._show_layer)

    def _show_layer(self, shown: RoomShown) -> None:
        """Another layer, unless another room or yet another layer was asked for since."""
        if shown.room is self.room and shown.layer.layer is self._layer:
            self._shown = shown
            self.view.show_room(shown)
            self._choose(self.view.front.at)

    def _show_causes(self, causes: Mapping[str, PlaceCause]) -> None:
        self._causes = causes
        self._show_tub()

    def _show_nights(self, strip: Strip) -> None:
        self.view.show_nights(strip, self._living())
        self._use_keys()

    # --- choosing ----------------------------------------------------------------------------

    def _tub(self) -> RackTub | None:
        at = self.view.front.at
        return tub_at(self.room, at) if self.room and at else None

    def _living(self) -> DueRow | None:
        """The animal that is chosen, else the first of the tub."""
        tub = self._tub()
        here = tub.living if tub else ()
        first = here[0] if here else None
        return next((row for row in here if row.animal.animal == self._animal), first)

    def _choose(self, at: At | None, *, told: bool = True) -> None:
        self.view.front.choose(at)
        living = self._living()
        self._animal = living.animal.animal if living else None
        self._show_tub()
        if told and at is not None:
            announce(self.view.front, self.view.front.words_at(at))

    def _show_tub(self) -> None:
        if self._shown is not None:
            at = self.view.front.at
            self.view.show_tub(self._shown, at, self._living(), self._causes)

    def _step(self, step: Step) -> None:
        at = self.view.front.at
        if at is not None and self.room is not None:
            self._choose(step(tub_counts(self.room), at))

    def _row_or_animal(self, by: int) -> None:
        """A row up or down; in the strip, which has a line for each, the next animal."""
        room = self.room
        if self.view.nights_shown and room is not None:
            self._step(lambda _, at: next_lived(room, at, by))
        else:
            self._step(lambda counts, at: along(counts, at, by))

    def _next_in_tub(self) -> None:
        """Those who share a tub, one after another."""
        tub, living = self._tub(), self._living()
        if tub is not None and living is not None:
            after = tub.living[(tub.living.index(living) + 1) % len(tub.living)]
            self._animal = after.animal.animal
            self._show_tub()

    # --- keys --------------------------------------------------------------------------------

    def _show_by(self, layer: Layer) -> None:
        self._layer = layer
        if self._shown is None:
            return
        self._to_fronts(self._shown)
        self._ask_layer(self._shown.room)

    def _turn_over(self) -> None:
        """From the fronts to the nights, and back."""
        if self._shown is None:
            return
        if self.view.nights_shown:
            self._to_fronts(self._shown)
        else:
            self._reading.strip(self._show_nights)

    def _turn_to_time(self) -> None:
        """From the chosen animal, or tub, to its rack through time, and back to where it is."""
        tub = self._tub()
        if self.view.time_shown and self._shown is not None:
            self._to_fronts(self._shown)
        elif tub is not None:
            self.time.open(self._animal, tub.name, self._keeping.today)

    def _to_fronts(self, shown: RoomShown) -> None:
        """The animal that was looked at stays chosen, wherever it is now."""
        looked_at = self.time.animal if self.view.time_shown else None
        self.view.show_fronts(shown)
        self._use_keys()
        at = None if looked_at is None else where_is(shown.room, looked_at)
        if at is not None:
            self._animal = looked_at
            self._choose(at)

    def _use_keys(self) -> None:
        """The keys of the view in sight alone; those of the other mean something else here."""
        time = self.view.time_shown
        for action in self.actions():
            self.removeAction(action)
        self.addActions(self._time_keys if time else self._front_keys)

    def _open(self) -> None:
        living = self._living()
        if self._shown is None:
            self._notices.noted.emit(NOT_YET)
        elif living is None:
            self._notices.refused.emit(tr("This tub is empty: there is no animal to open."))
        else:
            self._notices.animal_asked.emit(living.animal.animal)

    def _declare(self) -> None:
        at = self.view.front.at
        self._asking.declare(self.room.racks[at.rack] if self.room and at else None)

    def _ask(self, ask: Callable[[Room, RackTub, DueRow | None], None]) -> None:
        tub = self._tub()
        if self.room is None:
            self._notices.noted.emit(NOT_YET)
        elif tub is not None:
            ask(self.room, tub, self._living())

    def _listen(self) -> None:
        self._notices.changed.connect(self._changed)
        self.view.front.tub_asked.connect(self._choose)
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
        return lambda: screen._step(step)

    near, paper = screen.view.front.come_near, screen.paper
    return (
        *_layer_keys(screen),
        (tr("The tub before"), "Left", stepping(lambda c, at: aside(c, at, -1))),
        (tr("The next tub"), "Right", stepping(lambda c, at: aside(c, at, 1))),
        (tr("The row above"), "Up", lambda: screen._row_or_animal(-1)),
        (tr("The row below"), "Down", lambda: screen._row_or_animal(1)),
        (tr("The rack before"), "PgUp", stepping(lambda c, at: rack_on(c, at, -1))),
        (tr("The next rack"), "PgDown", stepping(lambda c, at: rack_on(c, at, 1))),
        (tr("The first tub of the row"), "Home", stepping(lambda c, at: to_end(c, at, last=False))),
        (tr("The last tub of the row"), "End", stepping(lambda c, at: to_end(c, at, last=True))),
        (tr("The next animal in the tub"), "Space", screen._next_in_tub),
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
