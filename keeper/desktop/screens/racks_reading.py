"""What the racks read off the main thread; an answer that came too late is dropped."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import TypeVar

from keeper.actions.keeping import Keeping
from keeper.actions.rack_layers import Layer, LayerShown
from keeper.actions.racks import Room
from keeper.actions.racks_desk import PlaceCause, RacksDesk
from keeper.actions.refusal_strip import Strip
from keeper.actions.troubles import REFUSALS
from keeper.desktop.background import Worker
from keeper.desktop.notices import Notices

T = TypeVar("T")


class RacksReading:
    """Asks the desk in the worker's thread. ``begin`` makes every answer still out too late."""

    def __init__(self, keeping: Keeping, notices: Notices, worker: Worker) -> None:
        self._keeping, self._notices, self._worker = keeping, notices, worker
        self._desk = RacksDesk(keeping)
        self._turn = 0

    def begin(self) -> None:
        """The book has changed, or the layer."""
        self._turn += 1

    def room(self, layer: Layer, done: Callable[[tuple[Room, LayerShown]], object]) -> None:
        """The room with one layer of it."""
        on, desk = self._keeping.today, self._desk

        def job() -> tuple[Room, LayerShown]:
            found = desk.room(on)
            return found, desk.layer(found, layer)

        self._run(job, done)

    def layer(self, room: Room, layer: Layer, done: Callable[[LayerShown], object]) -> None:
        """Another layer of a room that was read."""
        desk = self._desk
        self._run(lambda: desk.layer(room, layer), done)

    def causes(self, done: Callable[[Mapping[str, PlaceCause]], object]) -> None:
        """What the watch says of places."""
        on, desk = self._keeping.today, self._desk
        self._run(lambda: desk.causes(on), done)

    def strip(self, done: Callable[[Strip], object]) -> None:
        """The last feed nights."""
        on, desk = self._keeping.today, self._desk
        self._run(lambda: desk.strip(on), done)

    def close(self) -> None:
        """Let go of the book in the worker's thread."""
        self._worker.stop(self._desk.close)

    def _run(self, job: Callable[[], T], done: Callable[[T], object]) -> None:
        turn = self._turn

        def back(found: T) -> None:
            if turn == self._turn:
                done(found)

        self._worker.run(job, back, self._tell)

    def _tell(self, error: Exception) -> None:
        """A refusal of the book is the keeper's to know; anything else is a fault of ours."""
        if not isinstance(error, REFUSALS):
            raise error
        self._notices.refused.emit(str(error))
