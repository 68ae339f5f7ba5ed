"""What the racks read off the main thread; an answer that came too late is dropped."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from datetime import date
from typing import TypeVar

from keeper.actions.keeping import Keeping
from keeper.actions.rack_layers import Layer
from keeper.actions.racks import Room
from keeper.actions.racks_desk import PlaceCause, RacksDesk
from keeper.actions.refusal_strip import Strip
from keeper.actions.time_line import RackTime, Suspected
from keeper.actions.troubles import REFUSALS
from keeper.desktop.background import Worker
from keeper.desktop.notices import Notices
from keeper.desktop.screens.racks_words import RoomShown, fronts_of
from keeper.desktop.widgets.rack_paint import FrontRack

T = TypeVar("T")


class RacksReading:
    """Asks one desk in the thread of *reader*, and another in that of *watcher*.

    The watch of a large room takes seconds and must hold up no layer. ``begin`` makes every
    answer still out too late, and what waits to be read for it is not read at all.
    """

    def __init__(self, keeping: Keeping, notices: Notices, reader: Worker, watcher: Worker) -> None:
        self._keeping, self._notices = keeping, notices
        self._workers = (reader, watcher)
        self._desks = (RacksDesk(keeping), RacksDesk(keeping))
        self._turn = 0
        self._fronts: tuple[FrontRack, ...] = ()  # as last read, for the thread of *reader* alone

    def begin(self) -> None:
        """The book has changed."""
        self._turn += 1

    def room(self, layer: Layer, done: Callable[[RoomShown], object]) -> None:
        """The room with one layer of it."""
        on, desk = self._keeping.today, self._desks[0]
        self._run(self._workers[0], lambda: self._in_layer(desk.room(on), layer), done)

    def layer(self, room: Room, layer: Layer, done: Callable[[RoomShown], object]) -> None:
        """Another layer of a room that was read."""
        self._run(self._workers[0], lambda: self._in_layer(room, layer), done)

    def causes(self, done: Callable[[Mapping[str, PlaceCause]], object]) -> None:
        """What the watch says of places."""
        on, desk = self._keeping.today, self._desks[1]
        self._run(self._workers[1], lambda: desk.causes(on), done)

    def strip(self, done: Callable[[Strip], object]) -> None:
        """The last feed nights."""
        on, desk = self._keeping.today, self._desks[0]
        self._run(self._workers[0], lambda: desk.strip(on), done)

    def time_line(
        self,
        letter: str | None,
        animal: int | None,
        on: date,
        done: Callable[[RackTime], object],
    ) -> None:
        """A rack through time; letter None: that in which *animal* stood on the day *on*."""
        desk = self._desks[0]
        self._run(self._workers[0], lambda: desk.time_line(letter, animal, on), done)

    def swaps(self, done: Callable[[Sequence[Suspected]], object]) -> None:
        """What the watch suspects to have been swapped."""
        on, desk = self._keeping.today, self._desks[1]
        self._run(self._workers[1], lambda: desk.swaps(on), done)

    def close(self) -> None:
        """Let go of the book in both threads; waits for a watch that is being read."""
        for worker, desk in zip(self._workers, self._desks, strict=True):
            worker.stop(desk.close)

    def _in_layer(self, room: Room, layer: Layer) -> RoomShown:
        told = self._desks[0].layer(room, layer)
        self._fronts = fronts_of(room, told, self._fronts)
        return RoomShown(room=room, layer=told, fronts=self._fronts)

    def _run(self, worker: Worker, job: Callable[[], T], done: Callable[[T], object]) -> None:
        turn = self._turn

        def unless_late() -> T | None:
            return job() if turn == self._turn else None

        def back(found: T | None) -> None:
            if turn == self._turn and found is not None:
                done(found)

        worker.run(unless_late, back, self._tell)

    def _tell(self, error: Exception) -> None:
        """A refusal of the book is the keeper's to know; anything else is a fault of ours."""
        if not isinstance(error, REFUSALS):
            raise error
        self._notices.refused.emit(str(error))
