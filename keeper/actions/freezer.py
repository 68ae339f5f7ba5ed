"""What lies in the freezer by all that was written: bags counted in, opened, and items offered."""

from datetime import date
from typing import TypeVar

from keeper.actions.keeping import Keeping
from keeper.husbandry.house import BagOpened, PreyCounted
from keeper.rules.watch_prey import Bag, bags_left
from keeper.store import reading
from keeper.store.prey_used import prey_used

E = TypeVar("E", BagOpened, PreyCounted)


def bags_on(keeping: Keeping, on: date) -> tuple[Bag, ...]:
    """What lies in the freezer on the day *on*, bag by bag."""
    counted = _until(keeping, PreyCounted, on)
    if not counted:
        return ()
    first = min(each.happened.day for each in counted)
    used = prey_used(keeping.book, first, on)
    return bags_left(counted, _until(keeping, BagOpened, on), used)


def _until(keeping: Keeping, kind: type[E], on: date) -> list[E]:
    events = [entry.event for entry in reading.all_of(keeping.book, kind)]
    return [event for event in events if event.happened.day <= on]
