"""The book as a list of what was done, newest first."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any

from keeper.actions.entry_words import (
    counts_words,
    entry_words,
    note_of,
    paired_words,
    results_words,
)
from keeper.actions.keeping import Keeping
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import Paired
from keeper.language import tr
from keeper.reports.words import verb_words
from keeper.store import listing, reading
from keeper.store.journal import BatchId, EntryKey
from keeper.store.reading import Batch
from keeper.store.standing import WHOLE

MOST = 300
FEW = 4
"""A batch of so many entries or fewer is told entry by entry in its own line."""
LINES = 40


@dataclass(frozen=True, slots=True, kw_only=True)
class RecordRow:
    """One batch: its entries by kind, whom they are about (a few by name), and what they say."""

    batch: Batch
    counts: dict[str, int]
    animals: tuple[str, ...]
    more_animals: bool
    told: str


@dataclass(frozen=True, slots=True, kw_only=True)
class EntryLine:
    """One entry of a batch. stands: it was neither taken back nor put right since."""

    who: str
    told: str
    note: str
    stands: bool


@dataclass(slots=True)
class _Names:
    """Animals by name, each asked for once."""

    keeping: Keeping
    known: dict[AnimalId, str] = field(default_factory=dict)

    def of(self, animal: AnimalId) -> str:
        if animal not in self.known:
            row = reading.animal_now(self.keeping.book, animal)
            self.known[animal] = row.called if row else "?"
        return self.known[animal]


def record_rows(
    keeping: Keeping,
    *,
    before: BatchId | None = None,
    animal: AnimalId | None = None,
) -> list[RecordRow]:
    """The newest ``MOST`` batches older than *before*, newest first, withdrawals among them.

    animal: only what was written about it.
    """
    batches = listing.batches_before(keeping.book, MOST, before=before, animal=animal)
    if not batches:
        return []
    counts = listing.counts_between(keeping.book, batches[-1].id, batches[0].id)
    names = _Names(keeping)
    return [_row(keeping, names, batch, counts.get(batch.id, {})) for batch in batches]


def entry_lines(keeping: Keeping, row: RecordRow) -> list[EntryLine]:
    """What the batch of *row* wrote, in its order, after what it took back; at most ``LINES``."""
    book, names = keeping.book, _Names(keeping)
    lines = [
        EntryLine(who="", told=told, note="", stands=row.batch.stands)
        for told in _undone(keeping, row.batch.id, LINES)
    ]
    for entry in listing.entries_in(book, row.batch.id, tuple(row.counts), LINES):
        lines.append(
            EntryLine(
                who=_who(names, entry.event),
                told=_words(names, entry.event),
                note=note_of(entry.event),
                stands=entry.stands,
            )
        )
    return lines[:LINES]


def _row(keeping: Keeping, names: _Names, batch: Batch, counts: Mapping[str, int]) -> RecordRow:
    animals = reading.animals_of(keeping.book, batch.id, FEW)
    return RecordRow(
        batch=batch,
        counts=dict(counts),
        animals=tuple(names.of(animal) for animal in animals[: FEW - 1]),
        more_animals=len(animals) == FEW,
        told=_told(keeping, names, batch.id, counts),
    )


def _told(keeping: Keeping, names: _Names, batch: BatchId, counts: Mapping[str, int]) -> str:
    if set(counts) == {"offer"} and FEW < counts["offer"] <= LINES:
        offers = listing.entries_in(keeping.book, batch, ("offer",), LINES)
        return results_words([entry.event for entry in offers])
    if sum(counts.values()) > FEW:
        return counts_words(counts)
    entries = listing.entries_in(keeping.book, batch, tuple(counts), FEW)
    said = [_words(names, entry.event) for entry in entries]
    return "; ".join(dict.fromkeys([*_undone(keeping, batch, 1), *said]))


def _undone(keeping: Keeping, batch: BatchId, most: int) -> Iterator[str]:
    """What *batch* took out of the book: a whole batch by its verb, an entry by its words."""
    for key in listing.withdrawn_by(keeping.book, batch, most):
        yield tr("no longer: {entry}", entry=_of(keeping, key))


def _of(keeping: Keeping, key: EntryKey) -> str:
    if key.seq == WHOLE:
        target = reading.batch_row(keeping.book, key.batch)
        return f"{verb_words(target.verb)}, {target.written:%H:%M:%S}" if target else "?"
    entry = listing.entry_at(keeping.book, key)
    return entry_words(entry.event) if entry else "?"


def _words(names: _Names, event: Any) -> str:
    """The entry in words; of a pairing also with whom."""
    if isinstance(event, Paired):
        return paired_words(event, names.of(event.mate))
    return entry_words(event)


def _who(names: _Names, event: Any) -> str:
    animal = getattr(event, "animal", None)
    return names.of(animal) if animal is not None else ""
