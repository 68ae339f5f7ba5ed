"""Look a book over without changing it."""

from contextlib import closing
from pathlib import Path

from keeper.store.checking import check
from keeper.store.database import open_book
from keeper.store.errors import BookError


def flaws_of(path: Path) -> tuple[str, ...]:
    """Each thing that is wrong with the book at *path*, in a sentence; empty when all holds.

    A file that cannot be opened as a book is such a thing too.

    Raises:
        BookError: nothing is there to look at.
    """
    try:
        book = open_book(path, station="")
    except BookError as error:
        if not path.exists():
            raise
        return (str(error),)
    with closing(book.connection):
        return tuple(finding.sentence for finding in check(book))
