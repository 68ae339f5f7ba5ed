"""What tonight asks while no round is open: counted once until something changes, or in parts."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from functools import partial

from keeper.actions import rounds
from keeper.actions.due_board import DueRow, judged_rows
from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.past_nights import missing_nights
from keeper.actions.rounds import Walk, night_of
from keeper.desktop.screens.round_learning import ASK, held_to_learn_of
from keeper.desktop.screens.round_quiet import left_in, quiet_counts
from keeper.desktop.widgets.night_counts import NightCounts
from keeper.language import tr

RACKS = "+"
"""While no round is open: only some racks are walked."""


class Tonight:
    """What the quiet page says and what its pad does."""

    def __init__(self, keeping: Keeping) -> None:
        self._keeping = keeping
        self._counts: NightCounts | None = None
        self._counted: date | None = None
        self._held: tuple[DueRow, ...] = ()

    @property
    def was_counted(self) -> bool:
        """Whether this night was counted before, as it then stood."""
        return self._counted == night_of(self._keeping.now())

    def forget(self) -> None:
        """Count anew when next asked: the book or the night has changed."""
        self._counts = None

    def counts(self) -> NightCounts:
        """What the quiet page says of tonight; read once until something changes."""
        if self._counts is None:
            night = self._counted = night_of(self._keeping.now())
            rows, missing = judged_rows(self._keeping, night), missing_nights(self._keeping, night)
            self._held = held_to_learn_of(rows)
            self._counts = quiet_counts(rows, night, self.last(), len(missing))
        return self._counts

    def counting(self) -> Iterator[None]:
        """The parts of ``counts``, each read in a moment of its own; what is read is kept."""
        night = night_of(self._keeping.now())
        animals_on(self._keeping, night)
        yield
        judged_rows(self._keeping, night)
        yield
        self.last()
        yield
        self.counts()

    def held(self) -> tuple[DueRow, ...]:
        """Animals held tonight under what they may eat through."""
        self.counts()
        return self._held

    def last(self) -> Walk | None:
        """The round that was closed last, read once until anything is written."""
        read = partial(rounds.last_night, self._keeping)
        return self._keeping.once(("last round", self._keeping.today), read)

    def legend(self) -> dict[str, str]:
        """What the pad does while no round is open."""
        racks, last = self.counts().rows, self.last()
        legend = {"Enter": tr("begin the round")} if racks else {}
        if len(racks) > 1:
            legend[RACKS] = tr("some racks")
        if last is not None and left_in(last):
            legend["5"] = tr("look again")
        return legend | ({ASK: tr("eaten through?")} if self._held else {})
