"""What came with a join: named by the join itself, so that all of it can be taken back at once."""

from keeper.actions.keeping import Keeping
from keeper.husbandry.events import Setting
from keeper.store import reading
from keeper.store.journal import BatchId

VERB = "join"
JOINED = "joined batches"
"""The setting that names what came with a join, some hundred keys an entry."""


def came_with(keeping: Keeping, target: BatchId) -> tuple[BatchId, ...]:
    """The batches that came with the standing join *target*; none for any other batch."""
    row = reading.batch_row(keeping.book, target)
    if row is None or row.verb != VERB or not row.stands:
        return ()
    entries = (entry.event for entry in reading.entries_of(keeping.book, target))
    named = [e.value for e in entries if isinstance(e, Setting) and e.key == JOINED]
    keys = (int(word) for text in named for word in text.split() if _is_key(word))
    return tuple(key for key in keys if reading.batch_row(keeping.book, key) is not None)


def _is_key(word: str) -> bool:
    return word.isascii() and word.isdecimal() and len(word) < 20
