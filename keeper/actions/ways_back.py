"""What may take the place of a book that is damaged or gone: its newest good backup."""

from contextlib import closing
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from keeper.store import backups
from keeper.store.backups import Backup
from keeper.store.database import open_book
from keeper.store.errors import BookError, DamagedBook
from keeper.store.reading import latest_batches


@dataclass(frozen=True, slots=True, kw_only=True)
class WayBack:
    """The newest backup of a book that can be proved. last: when its newest line was written."""

    backup: Backup
    last: datetime | None


def way_back(path: Path) -> WayBack | None:
    """What may take the place of a book that is damaged or gone; None where there is none.

    Another program's file and a newer keeper's are left alone: nothing is wrong with those.
    """
    if path.exists() and not _is_damaged(path):
        return None
    found = backups.latest_good(path)
    return None if found is None else WayBack(backup=found, last=_last_written(found))


def go_back(path: Path, way: WayBack) -> Path | None:
    """Put the backup in the place of the book; returns the name that the damaged file keeps.

    Raises:
        BookError: the backup cannot be proved any more, or the disk refused.
    """
    return backups.restore(way.backup, path)


def _last_written(backup: Backup) -> datetime | None:
    with closing(open_book(backup.path, station="", read_only=True)) as copy:
        newest = latest_batches(copy, most=1)
    return newest[0].written if newest else None


def _is_damaged(path: Path) -> bool:
    """As ``open_book`` found it; of a book that may only be read SQLite checks less."""
    try:
        open_book(path, station="").close()
    except DamagedBook:
        return True
    except BookError:
        return False
    return False
