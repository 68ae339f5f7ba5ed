"""Say that an entry was otherwise: the old one stays, struck through, with the reason."""

from collections.abc import Sequence

from keeper.actions.keeping import Keeping, Written
from keeper.husbandry.events import Event
from keeper.store.journal import EntryKey, batch

VERB = "correct"


def correct(keeping: Keeping, entry: EntryKey, instead: Sequence[Event], reason: str) -> Written:
    """Withdraw *entry* and write *instead*, in one batch.

    reason: why, in the keeper's words; it stands beside the struck-through entry.
    """
    at = keeping.now()
    with batch(keeping.book, verb=VERB, keeper=keeping.keeper, written=at, reason=reason) as writer:
        writer.withdraw(entry)
        writer.add(*instead)
    return Written(batch=writer.id, at=at, verb=VERB, what=reason)
