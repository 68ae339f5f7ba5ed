"""The first evening: from a keeper's own files to a book, looked at before it is made."""

import tempfile
from collections.abc import Callable
from contextlib import closing
from datetime import datetime
from pathlib import Path

from keeper.actions.keeping import Keeping, new_keeping
from keeper.actions.taking_in import TakenIn, take_in

Now = Callable[[], datetime]


def look_at_files(animals: Path | None, diary: Path | None, now: Now) -> TakenIn:
    """What a new book would take from the files, and every fault in them; makes no book."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "look.book"
        with closing(new_keeping(path, station="look", now=now)) as keeping:
            return take_in(keeping, animals=animals, diary=diary, dry_run=True)


def book_from_files(
    path: Path, animals: Path | None, diary: Path | None, *, station: str, now: Now
) -> tuple[Keeping, TakenIn]:
    """Make a book at *path* and take the files in; leaves it open.

    Raises:
        BookError: the book cannot be made there, in one sentence.
    """
    keeping = new_keeping(path, station=station, now=now)
    return keeping, take_in(keeping, animals=animals, diary=diary)
