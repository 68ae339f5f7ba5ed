"""The history of the stock as it came to be known: batch by batch, in the order of arrival.

What was joined from another book arrived with its join, however old its own key is; entries
that no longer stand are told too, with the batch that withdrew them. So what was known on a
past day is told the same for ever.
"""

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from keeper.husbandry.care import Eggs, Permit
from keeper.husbandry.events import Clutch, Described, Sexed, Stock
from keeper.husbandry.stock_lines import Step, Told
from keeper.store.database import Book
from keeper.store.journal import BatchId, EntryKey
from keeper.store.reading import Batch, batch_of_row
from keeper.store.rows import TABLES, from_rows, select_columns
from keeper.store.standing import WHOLE

_KINDS: tuple[type[Any], ...] = (Described, Sexed, Stock, Clutch, Eggs, Permit)


def stock_steps(book: Book, joined: str) -> list[Step]:
    """Every batch that changed what is known of the stock, oldest arrival first.

    joined: the key of the setting in which a join names what came with it.
    """
    entries = _entries(book)
    links = _Links(book.connection.execute(_WITHDRAWALS).fetchall(), set(entries))
    batches = _batches(book, {*entries, *links.of})
    arrived = arrivals(book, joined)
    order = sorted(batches, key=lambda batch: (arrived.get(batch, batch), batch))
    standing = _Standing(links)
    steps = []
    for batch in order:
        came = batches[arrived[batch]] if arrived.get(batch) in batches else batches[batch]
        ceased, again = standing.arrive(batch, entries)
        told = [Told(key=(batch, seq), event=event) for seq, event in entries.get(batch, ())]
        steps.append(
            Step(
                written_on=came.written.date(),
                reason=batches[batch].reason,
                ceased=ceased,
                again=again,
                told=told,
            )
        )
    return steps


_WITHDRAWALS = "SELECT batch, target_batch, target_seq FROM withdrawal ORDER BY batch, seq"


def _entries(book: Book) -> dict[BatchId, list[tuple[int, Any]]]:
    """Every entry about stock by its batch, whether it stands or not, in its batch's order."""
    found: dict[BatchId, list[tuple[int, Any]]] = defaultdict(list)
    for kind in _KINDS:
        sql = f"SELECT {select_columns(kind)} FROM {TABLES[kind]} e ORDER BY e.batch, e.seq"
        rows = book.connection.execute(sql).fetchall()
        for row, event in zip(rows, from_rows(kind, rows), strict=True):
            found[row[4]].append((row[5], event))
    return {batch: sorted(told, key=lambda each: each[0]) for batch, told in found.items()}


def _batches(book: Book, wanted: Iterable[BatchId]) -> dict[BatchId, Batch]:
    """The heads of *wanted* and of every join."""
    asked = set(wanted)
    rows = book.connection.execute(
        "SELECT id, station, keeper, verb, written, utc_offset, reason, 1 FROM batch"
    )
    return {row[0]: batch_of_row(row) for row in rows if row[0] in asked or row[3] == "join"}


def arrivals(book: Book, joined: str) -> dict[BatchId, BatchId]:
    """With which join a batch came, for those that came with one.

    A join that itself came with a join says when its batches came to that other book; it is
    not counted. The youngest are looked at first: a join is younger than all that it brought.
    """
    rows = book.connection.execute(
        "SELECT batch, value FROM setting WHERE key = ? ORDER BY batch DESC", (joined,)
    )
    named: dict[BatchId, set[BatchId]] = defaultdict(set)
    for batch, value in rows:
        named[batch] |= {int(word) for word in value.split() if word.isdecimal()}
    came: dict[BatchId, BatchId] = {}
    for join in sorted(named, reverse=True):
        if join not in came:
            came |= dict.fromkeys(named[join], join)
    return came


class _Links:
    """Which batch withdraws what, as far as it touches the stock.

    of: what each batch withdraws. on: who withdraws something of each batch.
    """

    def __init__(self, rows: Sequence[tuple[int, int, int]], told: set[BatchId]) -> None:
        every: dict[BatchId, list[tuple[int, EntryKey]]] = defaultdict(list)
        for batch, target, seq in rows:
            every[target].append((batch, EntryKey(target, seq)))
        self.of: dict[BatchId, list[EntryKey]] = defaultdict(list)
        self.on: dict[BatchId, list[tuple[BatchId, int]]] = defaultdict(list)
        waiting, seen = list(told), set(told)
        while waiting:
            target = waiting.pop()
            for batch, key in every.get(target, ()):
                self.of[batch].append(key)
                self.on[target].append((batch, key.seq))
                if batch not in seen:
                    seen.add(batch)
                    waiting.append(batch)


@dataclass(slots=True)
class _Standing:
    """What stands of all that has arrived so far."""

    links: _Links
    _here: set[BatchId] = field(default_factory=set)
    _gone: set[tuple[int, int]] = field(default_factory=set)

    def arrive(
        self, batch: BatchId, entries: Mapping[BatchId, Sequence[tuple[int, Any]]]
    ) -> tuple[list[tuple[int, int]], list[tuple[int, int]]]:
        """Entries that cease to stand with *batch*, and those that stand again."""
        self._here.add(batch)
        below = self._below(batch)
        touched = [
            (each, seq) for each in sorted(below) if each in self._here
            for seq, _ in entries.get(each, ()) if each != batch
        ]  # fmt: skip
        gone = self._whole_gone(below)
        now = {key for key in touched if self._is_gone(key, gone)}
        ceased = [key for key in touched if key in now and key not in self._gone]
        again = [key for key in touched if key not in now and key in self._gone]
        self._gone.difference_update(again)
        self._gone.update(ceased)
        return ceased, again

    def _below(self, batch: BatchId) -> set[BatchId]:
        """*batch*, what it withdraws something of, and so on down."""
        found, waiting = {batch}, [batch]
        while waiting:
            for key in self.links.of.get(waiting.pop(), ()):
                if key.batch not in found:
                    found.add(key.batch)
                    waiting.append(key.batch)
        return found

    def _whole_gone(self, batches: Iterable[BatchId]) -> dict[BatchId, bool]:
        """Whether the whole of each batch is withdrawn by one that has arrived and stands."""
        above, waiting = set(batches), list(batches)
        while waiting:
            for batch, _ in self.links.on.get(waiting.pop(), ()):
                if batch not in above:
                    above.add(batch)
                    waiting.append(batch)
        gone: dict[BatchId, bool] = {}
        for batch in sorted(above, reverse=True):
            gone[batch] = any(
                seq == WHOLE and by in self._here and not gone[by]
                for by, seq in self.links.on.get(batch, ())
            )
        return gone

    def _is_gone(self, key: tuple[int, int], gone: Mapping[BatchId, bool]) -> bool:
        batch, number = key
        return gone[batch] or any(
            seq == number and by in self._here and not gone[by]
            for by, seq in self.links.on.get(batch, ())
        )
