"""Look a book over without changing it, and mend it on a copy."""

from contextlib import closing
from pathlib import Path

from keeper.husbandry.reasons import because
from keeper.reports.words import sentence
from keeper.store import backups, mending
from keeper.store.checking import check
from keeper.store.database import open_book
from keeper.store.errors import BookError, DamagedBook, NewerBook, NotABook
from keeper.store.mending import Mended as Mended


def flaws_of(path: Path) -> tuple[str, ...]:
    """Each thing that is wrong with the book at *path*, in a sentence; empty when all holds.

    A file that cannot be opened as a book is such a thing too.

    Raises:
        BookError: nothing is there to look at.
    """
    try:
        book = open_book(path, station="")  # SQLite checks less of one that is read only
    except BookError as error:
        if not path.exists():
            raise
        return (str(error),)
    with closing(book.connection):
        return tuple(finding.sentence for finding in check(book))


def mend(path: Path) -> Mended:
    """Write a mended copy of the book at *path* beside it; the book stays as it is.

    Raises:
        NotABook: it is another program's file, or not there. NewerBook: a newer keeper's.
        BookError: neither it nor a backup of it can be read, or the disk refused.
    """
    try:
        open_book(path, station="").close()
    except DamagedBook:
        pass
    except (NotABook, NewerBook):
        raise
    except BookError:
        pass  # an older book that cannot be brought up, or a disk that refuses: tried below
    return mending.mend(path)


def mended_sentences(mended: Mended) -> tuple[str, ...]:
    """What the copy holds and what it lacks, the most important first."""
    told = [because("mended", path=mended.path.name, kept=mended.kept)]
    if mended.backup is not None:
        name = mended.backup.path.name
        told.append(because("brought from the backup", brought=mended.brought, backup=name))
    sound = "the copy is sound" if is_sound(mended) else "the copy is not sound"
    return (
        *(sentence(each) for each in told),
        *mended.left_out,
        *(finding.sentence for finding in mended.findings),
        sentence(because(sound)),
    )


def is_sound(mended: Mended) -> bool:
    """Nothing is wrong with the copy itself; it may still lack what could not be read."""
    return not mended.findings


def put_in_place(mended: Path, book: Path) -> Path | None:
    """Put the copy in the place of *book*, which keeps a name that is returned.

    Raises:
        BookError: a window writes in the book, or the disk refused.
    """
    return backups.put_in_place(mended, book)
