"""The night as the map shows it: kept from key to key, so that one key changes one cell."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from datetime import datetime, timedelta
from itertools import groupby

from keeper.actions.tubs import Tub
from keeper.desktop.screens.round_faces import gapped, tile_of
from keeper.desktop.widgets.night_map import Night, NightRack, Tally
from keeper.desktop.widgets.tile import TileState
from keeper.husbandry.place import place_of
from keeper.language import tr

S = TileState

TALLIES = (
    (S.TAKEN, tr("taken seen")),
    (S.ASSUMED, tr("assumed")),
    (S.PART, tr("part")),
    (S.REFUSED, tr("refused")),
    (S.LEFT_IN, tr("left in")),
    (S.REGURGITATED, tr("regurg.")),
    (S.ONE_OF, tr("one of these")),
    (S.NOT_OFFERED, tr("not offered")),
    (S.HOLD, tr("hold")),
    (S.NOT_DUE, tr("not due")),
    (S.EMPTY, tr("empty")),
    (S.NOT_REACHED, tr("not reached")),
)
ALWAYS = frozenset({S.TAKEN, S.REFUSED, S.LEFT_IN, S.NOT_REACHED})
PACE_TUBS = 20
"""The pace is that of so many tubs written last."""
_PACE_LEAST = 5

Cell = tuple[int, int, int]
"""Rack, row and tub by index."""


class NightBoard:
    """The states of a night's tubs as columns of racks, brought up to date tub by tub."""

    def __init__(self, tubs: Sequence[Tub]) -> None:
        self._tubs: tuple[Tub, ...] = ()
        self._cells: dict[int, Cell] = {}
        self._letters: list[str] = []
        self._rows: list[list[list[TileState]]] = []
        self._frozen: list[NightRack] = []
        self._counts: Counter[TileState] = Counter()
        self._lay_out(tubs)

    def update(self, tubs: Sequence[Tub]) -> None:
        """Take over the tubs that changed; the night's plan is the same."""
        pairs = zip(self._tubs, tubs, strict=True)
        for old, new in [(old, new) for old, new in pairs if old is not new]:
            self._set(new.line, tile_of(new), was=tile_of(old))
        self._tubs = tuple(tubs)

    def night(self, cursor: int | None, *, aside: str = "", pace: tuple[str, str]) -> Night:
        """The map with the tub at *cursor* as the current one."""
        racks = list(self._frozen)
        current = None
        if cursor is not None:
            rack, row, tub = self._cells[cursor]
            rows = list(racks[rack].rows)
            rows[row] = (*rows[row][:tub], S.CURRENT, *rows[row][tub + 1 :])
            racks[rack] = NightRack(letter=racks[rack].letter, rows=tuple(rows))
            current = (rack, row)
        return Night(
            racks=tuple(racks),
            current=current,
            tallies=self._tallies(),
            aside=aside,
            pace=pace,
        )

    def count(self, state: TileState) -> int:
        """How many tubs stand in *state*."""
        return self._counts[state]

    def _lay_out(self, tubs: Sequence[Tub]) -> None:
        self._tubs = tuple(tubs)
        for letter, in_rack in groupby(tubs, key=_rack):
            self._letters.append(letter)
            self._rows.append([])
            for _, row in groupby(in_rack, key=lambda tub: tub.row):
                self._add_row(gapped(list(row)))
        self._frozen = [self._freeze(n) for n in range(len(self._rows))]

    def _add_row(self, row: Sequence[tuple[int, Tub | None]]) -> None:
        rack, column = len(self._rows) - 1, len(self._rows[-1])
        states = [S.EMPTY if tub is None else tile_of(tub) for _, tub in row]
        self._rows[-1].append(states)
        self._counts.update(states)
        for n, (_, tub) in enumerate(row):
            if tub is not None:
                self._cells[tub.line] = (rack, column, n)

    def _set(self, line: int, state: TileState, *, was: TileState) -> None:
        rack, row, tub = self._cells[line]
        self._counts[was] -= 1
        self._counts[state] += 1
        self._rows[rack][row][tub] = state
        self._frozen[rack] = self._freeze(rack)

    def _freeze(self, rack: int) -> NightRack:
        rows = tuple(tuple(states) for states in self._rows[rack])
        return NightRack(letter=self._letters[rack], rows=rows)

    def _tallies(self) -> tuple[Tally, ...]:
        return tuple(
            Tally(state=state, count=self._counts[state], words=words)
            for state, words in TALLIES
            if state in ALWAYS or self._counts[state]
        )


def pace_words(
    written: Sequence[datetime], waiting: int, now: datetime
) -> tuple[tuple[str, str], str]:
    """Seconds a tub and when the pass is done, as two lines and as one; empty when too few.

    written: when each result was written, in any order.
    """
    last = sorted(written)[-PACE_TUBS:]
    if len(last) < _PACE_LEAST or not waiting:
        return ("", ""), ""
    seconds = (last[-1] - last[0]).total_seconds() / (len(last) - 1)
    done = now + timedelta(seconds=seconds * waiting)
    ends = tr("done about {done:%H:%M}", done=done)
    return (tr("{seconds:.0f}\u00a0s a tub", seconds=seconds), ends), ends


def _rack(tub: Tub) -> str:
    place = place_of(tub.plan.place or "")
    return place.rack if place else tr("other", sense="places")
