"""What the sheds page reads off the main thread: every shed clock, and the line it is shown as."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date

from keeper.actions.keeping import Keeping
from keeper.actions.shed_board import ShedRow
from keeper.actions.shed_desk import ShedDesk
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.background import Worker
from keeper.desktop.screens.shed_words import shed_face
from keeper.desktop.widgets.shed_list import ShedFace


@dataclass(frozen=True, slots=True, kw_only=True)
class Clocks:
    """All shed clocks as of a day, those that need a look first, each with its face."""

    on: date
    rows: tuple[ShedRow, ...]
    faces: tuple[ShedFace, ...]

    def in_order_of(self, before: dict[int, int]) -> Clocks:
        """The same, each animal on the line it had *before*, new ones after all others."""
        last = len(before)
        pairs = zip(self.rows, self.faces, strict=True)
        kept = sorted(pairs, key=lambda pair: before.get(pair[0].animal.animal, last))
        rows, faces = tuple(row for row, _ in kept), tuple(face for _, face in kept)
        return Clocks(on=self.on, rows=rows, faces=faces)

    def with_row(self, line: int, row: ShedRow) -> Clocks:
        """The same with another *row* on *line*."""
        face = shed_face(row, self.on)
        rows = (*self.rows[:line], row, *self.rows[line + 1 :])
        faces = (*self.faces[:line], face, *self.faces[line + 1 :])
        return Clocks(on=self.on, rows=rows, faces=faces)


class ShedsReading:
    """One reading at a time in the thread of *worker*; an answer that the book outran is dropped.

    take: gets an answer on the main thread. outran: is told that one was dropped. refused: gets
    the sentence where the book cannot be read.
    """

    def __init__(
        self,
        keeping: Keeping,
        worker: Worker,
        *,
        take: Callable[[Clocks], None],
        outran: Callable[[], None],
        refused: Callable[[str], None],
    ) -> None:
        self._keeping, self._worker = keeping, worker
        self._desk = ShedDesk(keeping)
        self._take, self._outran, self._refused = take, outran, refused
        self._turn = self._asked = 0  # of the book, and of the reading that is under way
        self._on: date | None = None
        self.under_way = self._over = False

    @property
    def is_old(self) -> bool:
        """Whether what was read last is not how the book stands today."""
        return self._asked != self._turn or self._on != self._keeping.today

    def changed(self) -> None:
        """The book changed: a reading that is under way comes too late."""
        self._turn += 1

    def begin(self) -> None:
        """Read; while a reading is under way nothing, for it tells when it came too late."""
        if self.under_way or self._over:
            return
        self.under_way = True
        self._asked, on, desk = self._turn, self._keeping.today, self._desk
        self._on = on
        self._worker.run(lambda: _clocks(desk, on), self._answered, self._failed)

    def stop(self) -> None:
        """Let go of the book; nothing is read or told any more."""
        self._over = True
        self._worker.stop(self._desk.close)

    def _answered(self, clocks: Clocks) -> None:
        self.under_way = False
        if self._over:
            return
        if self.is_old:
            self._outran()
        else:
            self._take(clocks)

    def _failed(self, error: Exception) -> None:
        """What could not be read is asked for again when the page is next come to."""
        self.under_way, self._on = False, None
        if not isinstance(error, REFUSALS):
            raise error
        if not self._over:
            self._refused(said(error))


def _clocks(desk: ShedDesk, on: date) -> Clocks:
    rows = desk.rows(on)
    return Clocks(on=on, rows=rows, faces=tuple(shed_face(row, on) for row in rows))
