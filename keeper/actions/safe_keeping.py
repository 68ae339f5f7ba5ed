"""Backups as the keeper meets them: on close, and by hand."""

from keeper.actions.keeping import Keeping
from keeper.store import backups
from keeper.store.backups import Backup


def back_up_now(keeping: Keeping, why: str = "by hand") -> Backup:
    """Copy the book and prove the copy. Raises BookError with one sentence when it cannot."""
    return backups.back_up(keeping.book, why)


def close(keeping: Keeping) -> Backup | None:
    """Close the book, with a backup first if anything changed since the last one.

    Raises:
        BookError: the backup could not be made; the book is closed all the same.
    """
    try:
        if not keeping.book.writable or backups.is_backed_up(keeping.book):
            return None
        return back_up_now(keeping, "on close")
    finally:
        keeping.close()
