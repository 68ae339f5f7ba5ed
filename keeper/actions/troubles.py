"""What the world may refuse: a file, a disk, a lock. Each carries one sentence for the keeper."""

from keeper.store.errors import BookError as BookError
from keeper.store.errors import CannotWithdraw as CannotWithdraw
from keeper.store.errors import NewerBook as NewerBook
from keeper.store.errors import NotABook as NotABook
from keeper.store.errors import ReadOnlyBook as ReadOnlyBook

REFUSALS = (BookError, LookupError, ValueError)
"""What a verb raises when it writes nothing and says why in one sentence."""
