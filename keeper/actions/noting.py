"""Write down one thing seen: a shed sign, a hold, a move, a remark, a heat reading."""

from keeper.actions.keeping import Keeping, Written
from keeper.husbandry.events import Event
from keeper.store.journal import batch


def note(keeping: Keeping, verb: str, *events: Event, where: str = "", what: str = "") -> Written:
    """Write *events* as one batch; *where* and *what* are for the foot line."""
    at = keeping.now()
    with batch(keeping.book, verb=verb, keeper=keeping.keeper, written=at) as writer:
        writer.add(*events)
    return Written(batch=writer.id, at=at, verb=verb, where=where, what=what)
