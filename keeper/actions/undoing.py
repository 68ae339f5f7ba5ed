"""Take back and put back, across restarts, without ever removing a line."""

from datetime import datetime
from typing import TypedDict

from keeper.actions.joined import VERB, came_with
from keeper.actions.keeping import Keeping, Written
from keeper.language import tr
from keeper.store import listing, reading
from keeper.store.errors import CannotWithdraw
from keeper.store.exchange import take_out
from keeper.store.journal import REDO_VERB, UNDO_VERB, withdraw_batch
from keeper.store.reading import Batch

_LOOK_BACK = 2000


class _Said(TypedDict):
    verb: str
    keeper: str
    written: datetime


def _mine(keeping: Keeping, since: int) -> list[Batch]:
    batches = reading.latest_batches(keeping.book, _LOOK_BACK)
    return [b for b in batches if b.station == keeping.book.station and b.id > since]


def next_to_take_back(keeping: Keeping, since: int = 0) -> Batch | None:
    """The newest batch of this station that stands, later than the batch *since*."""
    ordinary = (b for b in _mine(keeping, since) if b.verb not in (UNDO_VERB, REDO_VERB))
    return next((b for b in ordinary if b.stands), None)


def next_to_put_back(keeping: Keeping) -> Batch | None:
    """The newest taking-back that nothing new was written after."""
    for found in _mine(keeping, 0):
        if found.verb == UNDO_VERB and found.stands:
            return found
        if found.verb not in (UNDO_VERB, REDO_VERB):
            return None
    return None


def take_back(keeping: Keeping, since: int = 0) -> tuple[Batch, Written]:
    """Take back the newest batch; returns it and what was written.

    Raises:
        CannotWithdraw: nothing is left to take back.
    """
    target = next_to_take_back(keeping, since)
    if target is None:
        raise CannotWithdraw(tr("Nothing is left to take back."))
    return target, take_back_batch(keeping, target.id)


def take_back_batch(keeping: Keeping, target: int) -> Written:
    """Take back the batch *target*, whatever was written since; of a join all that came with it."""
    at = keeping.now()
    came = came_with(keeping, target)
    said: _Said = {"verb": UNDO_VERB, "keeper": keeping.keeper, "written": at}
    if came:
        batch = take_out(keeping.book, (target, *came), **said)
    else:
        batch = withdraw_batch(keeping.book, target, **said)
    keeping.forget_figures()
    return Written(batch=batch, at=at, verb=UNDO_VERB)


def is_join(batch: Batch) -> bool:
    """Whether taking it back, or putting it back, may take seconds: all that came goes along."""
    return batch.verb == VERB


def join_to_take_back(keeping: Keeping) -> int | None:
    """The key of the join that ``take_back`` would take back; None where it is no join."""
    found = next_to_take_back(keeping)
    return found.id if found is not None and is_join(found) else None


def join_to_put_back(keeping: Keeping) -> int | None:
    """The key of the join that ``put_back`` would put back; None where it is no join."""
    found = next_to_put_back(keeping)
    first = () if found is None else listing.withdrawn_by(keeping.book, found.id, 1)
    rows = (reading.batch_row(keeping.book, key.batch) for key in first)
    return next((row.id for row in rows if row is not None and is_join(row)), None)


def put_back(keeping: Keeping) -> Written:
    """Undo the newest taking-back.

    Raises:
        CannotWithdraw: nothing was taken back since the last entry.
    """
    target = next_to_put_back(keeping)
    if target is None:
        raise CannotWithdraw(tr("Nothing was taken back since the last entry."))
    return _redone(keeping, target.id)


def put_back_batch(keeping: Keeping, target: int) -> Written:
    """Write the batch *target* again, whatever was written since it was taken back.

    Raises:
        CannotWithdraw: it stands, so there is nothing to write again.
    """
    withdrawer = reading.withdrawer_of(keeping.book, target)
    if withdrawer is None:
        raise CannotWithdraw(tr("This line stands; only what was taken back is written again."))
    return _redone(keeping, withdrawer)


def _redone(keeping: Keeping, taking_back: int) -> Written:
    at = keeping.now()
    batch = withdraw_batch(
        keeping.book, taking_back, verb=REDO_VERB, keeper=keeping.keeper, written=at
    )
    keeping.forget_figures()
    return Written(batch=batch, at=at, verb=REDO_VERB)
