"""Which tub of the racks is chosen and who in it, from key to key."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from keeper.actions.due_board import DueRow
from keeper.actions.racks import RackTub, Room
from keeper.actions.racks_desk import PlaceCause
from keeper.desktop.screens.racks_view import RacksView
from keeper.desktop.screens.racks_walk import (
    Counts,
    along,
    next_lived,
    tub_at,
    tub_counts,
)
from keeper.desktop.screens.racks_words import RoomShown
from keeper.desktop.widgets.drawn import announce
from keeper.desktop.widgets.rack_paint import At

Step = Callable[[Counts, At], At]


class RacksChoice:
    """Shows in *view* what is chosen. shown: the room as it is drawn; None until it is read.

    causes: what the watch says of places. animal: that is chosen, where the tub is not empty.
    """

    def __init__(self, view: RacksView) -> None:
        self._view = view
        self.shown: RoomShown | None = None
        self.causes: Mapping[str, PlaceCause] = {}
        self.animal: int | None = None

    @property
    def room(self) -> Room | None:
        return self.shown.room if self.shown else None

    @property
    def at(self) -> At | None:
        return self._view.front.at

    @property
    def tub(self) -> RackTub | None:
        return tub_at(self.room, self.at) if self.room and self.at else None

    @property
    def living(self) -> DueRow | None:
        """The animal that is chosen, else the first of the tub."""
        tub = self.tub
        here = tub.living if tub else ()
        first = here[0] if here else None
        return next((row for row in here if row.animal.animal == self.animal), first)

    def choose(self, at: At | None, *, told: bool = True) -> None:
        """The tub *at*, and the chosen animal if it is in it; *told* to assistive technology."""
        self._view.front.choose(at)
        living = self.living
        self.animal = living.animal.animal if living else None
        self.show()
        if told and at is not None:
            announce(self._view.front, self._view.front.words_at(at))

    def show(self) -> None:
        """The chosen tub in words."""
        if self.shown is not None:
            self._view.show_tub(self.shown, self.at, self.living, self.causes)

    def step(self, step: Step) -> None:
        """To another tub."""
        if self.at is not None and self.room is not None:
            self.choose(step(tub_counts(self.room), self.at))

    def row_or_animal(self, by: int) -> None:
        """A row up or down; in the strip, which has a line for each, the next animal."""
        room = self.room
        if self._view.nights_shown and room is not None:
            self.step(lambda _, at: next_lived(room, at, by))
        else:
            self.step(lambda counts, at: along(counts, at, by))

    def next_in_tub(self) -> None:
        """Those who share a tub, one after another."""
        tub, living = self.tub, self.living
        if tub is not None and living is not None:
            after = tub.living[(tub.living.index(living) + 1) % len(tub.living)]
            self.animal = after.animal.animal
            self.show()
