"""The book as a list of what was done, newest first."""

from dataclasses import dataclass

from keeper.actions.keeping import Keeping
from keeper.store import reading
from keeper.store.reading import Batch

MOST = 300


@dataclass(frozen=True, slots=True, kw_only=True)
class RecordRow:
    """One batch: its entries by kind, and the animals they are about (a few by name)."""

    batch: Batch
    counts: dict[str, int]
    animals: tuple[str, ...]


def record_rows(keeping: Keeping, most: int = MOST) -> list[RecordRow]:
    """The newest *most* batches, newest first, withdrawals among them."""
    rows = []
    for batch in reading.latest_batches(keeping.book, most):
        counts = reading.entry_counts(keeping.book, batch.id)
        rows.append(RecordRow(batch=batch, counts=counts, animals=_named(keeping, batch.id)))
    return rows


def _named(keeping: Keeping, batch: int) -> tuple[str, ...]:
    found = (
        reading.animal_now(keeping.book, animal)
        for animal in reading.animals_of(keeping.book, batch, most=3)
    )
    return tuple(row.name or row.code for row in found if row is not None)
