"""A second reader of the book for another thread: the room, its weights, causes and nights.

Everything here is called in one thread, the one that first asks; the connection is its own.
"""

from collections.abc import Mapping, Sequence
from contextlib import ExitStack
from dataclasses import dataclass
from datetime import date

from keeper.actions.keeping import Keeping
from keeper.actions.own_connection import own_connection
from keeper.actions.rack_layers import Layer, LayerShown, Shown, layer_of
from keeper.actions.rack_weights import trends_of
from keeper.actions.racks import Room, read_room
from keeper.actions.refusal_strip import Strip, refusal_strip
from keeper.actions.time_line import RackTime, Suspected, read_time_line
from keeper.actions.time_line_reading import letter_of
from keeper.actions.watching import watch_lines
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.reasons import Reason
from keeper.language import tr
from keeper.rules.watch_facts import WatchLine

SWAPPED = "may have been swapped"
"""The watch's reason for it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PlaceCause:
    """A line of the watch that stands for a tub, a row or a rack."""

    kind: str
    because: tuple[Reason, ...]


class RacksDesk:
    """Reads off to the side; opens the book when first asked."""

    def __init__(self, keeping: Keeping) -> None:
        self._own = keeping
        self._aside: Keeping | None = None
        self._open = ExitStack()
        self._weighed: Room | None = None
        self._trends: dict[int, Shown] = {}

    def room(self, on: date) -> Room:
        """The racks on the day *on*.

        Raises:
            BookError: the book cannot be opened again.
        """
        return read_room(self._keeping(), on)

    def layer(self, room: Room, layer: Layer) -> LayerShown:
        """What *layer* says of every tub of *room*; weights are read once for each room."""
        if layer is Layer.WEIGHT and self._weighed is not room:
            self._trends = trends_of(self._keeping(), list(room.everyone()), room.on)
            self._weighed = room
        return layer_of(room, layer, self._trends if layer is Layer.WEIGHT else None)

    def causes(self, on: date) -> Mapping[str, PlaceCause]:
        """The first line of the watch for each place that has one, by the place's name."""
        found: dict[str, PlaceCause] = {}
        for line in self._watched(on):
            if line.animal is None and line.place is not None:
                cause = PlaceCause(kind=line.kind, because=line.because)
                found.setdefault(line.place, cause)
        return found

    def swaps(self, on: date) -> Sequence[Suspected]:
        """Animals that the watch tells of as swapped perhaps."""
        found = []
        for line in self._watched(on):
            told = tuple(why for why in line.because if why.why == SWAPPED)
            if line.animal is None or not told:
                continue
            after, seen = told[0].figures["after"], told[0].figures["on"]
            if isinstance(after, date) and isinstance(seen, date):
                swap = Suspected(animal=line.animal, after=after, on=seen, because=told)
                found.append(swap)
        return found

    def strip(self, on: date) -> Strip:
        """The last feed nights up to *on*."""
        return refusal_strip(self._keeping(), on)

    def time_line(self, letter: str | None, animal: AnimalId | None, on: date) -> RackTime:
        """The rack *letter* through time; None: that in which *animal* stood on the day *on*.

        Raises:
            LookupError: the animal never stood in a tub.
        """
        keeping = self._keeping()
        if letter is None and animal is not None:
            letter = letter_of(keeping, animal, on)
        if letter is None:
            raise LookupError(tr("No tub of this animal is in the book: there is no time-line."))
        return read_time_line(keeping, letter, keeping.today)

    def close(self) -> None:
        """Let go of the book; in the thread that used it."""
        self._open.close()
        self._aside = self._weighed = None

    def _watched(self, on: date) -> tuple[WatchLine, ...]:
        keeping = self._keeping()
        return keeping.once(("watch of racks", on), lambda: watch_lines(keeping, on))

    def _keeping(self) -> Keeping:
        if self._aside is None:
            self._aside = self._open.enter_context(own_connection(self._own))
        return self._aside
