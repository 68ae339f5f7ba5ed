"""What the world may refuse, by name, for those who may not know the store."""

from keeper.store.database import world_told as world_told
from keeper.store.errors import BookError as BookError

REFUSALS = (BookError, LookupError, ValueError)
"""What a verb raises with one sentence for the keeper; anything else is a fault of the program."""


def said(error: Exception) -> str:
    """The sentence of *error*; a LookupError of a dictionary puts its own in quotes."""
    return str(error.args[0]) if error.args else type(error).__name__
