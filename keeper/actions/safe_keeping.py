"""Backups as the keeper meets them: on close, and by hand; beside the book and elsewhere."""

import hashlib
from pathlib import Path

from keeper.actions.keeping import Keeping
from keeper.language import tr
from keeper.store import backups
from keeper.store.backups import Backup
from keeper.store.errors import BookError


def back_up_now(
    keeping: Keeping, why: str = "by hand", *, second_place: Path | None = None
) -> Backup:
    """Copy the book and prove the copy.

    second_place: a folder that gets the copy too, in a folder of this book's own.

    Raises:
        BookError: no copy could be made; or it stands, and the second place is not there.
    """
    if second_place is None:
        return backups.back_up(keeping.book, why)
    if second_place.is_dir():
        there = second_folder(keeping.book.path, second_place)
        return backups.back_up(keeping.book, why, second_place=there)
    made = backups.back_up(keeping.book, why)
    raise BookError(
        tr(
            "The backup stands at {path}, but {place} is not there.",
            path=made.path,
            place=second_place,
        )
    )


def keeps_every_backup(keeping: Keeping) -> bool:
    """True since the book was restored: the newest backups may be the worse ones, so none goes."""
    return backups.is_rotation_paused(keeping.book.path)


def thin_backups_again(keeping: Keeping) -> None:
    """The keeper is content with what was restored: older backups go again with the next one."""
    backups.resume_rotation(keeping.book.path)


def second_folder(book: Path, second_place: Path) -> Path:
    """Where the copies of *book* lie in the second place: no two books share a folder."""
    told = hashlib.sha256(str(book.resolve()).encode()).hexdigest()[:6]
    return second_place / f"{book.stem}-{told}.backups"


def second_place_typed(keeping: Keeping, text: str) -> Path | None:
    """The folder that *text* names, for copies of the backups; None for no text.

    Raises:
        ValueError: no folder, or the one in which the backups lie already, in one sentence.
    """
    if not text.strip():
        return None
    folder = Path(text.strip()).expanduser().absolute()
    if not folder.is_dir():
        raise ValueError(
            tr(
                "There is no folder {folder}; one on another disk or a stick is right.",
                folder=folder,
            )
        )
    own = backups.backup_folder(keeping.book.path)
    if folder.resolve() in (own, own.parent):
        raise ValueError(
            tr("{folder} is where the book lies; another disk or a stick is right.", folder=folder)
        )
    return folder


def copies_in(keeping: Keeping, second_place: Path) -> int:
    """How many backups of the book lie in the second place."""
    folder = second_folder(keeping.book.path, second_place)
    return len(list(folder.glob("*.book"))) if folder.is_dir() else 0


def close(keeping: Keeping, second_place: Path | None = None) -> Backup | None:
    """Close the book, with a backup first if anything changed since the last one.

    Raises:
        BookError: the backup could not be made; the book is closed all the same.
    """
    try:
        if not keeping.book.writable or backups.is_backed_up(keeping.book):
            return None
        return back_up_now(keeping, "on close", second_place=second_place)
    finally:
        keeping.close()
