"""Photos of the animals: pictures in a folder beside the book, each named by what it holds.

The book holds the entry (day, animal, what it shows, the picture's SHA-256), the folder the
picture. A picture is never written over or taken away, so an entry taken back and written
again finds it. The book's backups hold the entries alone: the folder is copied with the book.
A book written out whole brings its pictures along.
"""

import hashlib
import re
from pathlib import Path

from keeper.actions.keeping import Keeping, Written
from keeper.actions.noting import note
from keeper.husbandry.events import Remark, RemarkKind
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.when import Happened
from keeper.language import tr
from keeper.store.durable import make_private_folder, sha256_of, sync

VERB = "photo"
SUFFIX = ".jpg"
_DIGEST = re.compile(r"[0-9a-f]{64}")


def photos_folder(keeping: Keeping) -> Path:
    """Where the pictures of this book lie; it need not be there yet."""
    book = keeping.book.path
    return book.with_name(f"{book.name}.photos")


def keep_photo(
    keeping: Keeping, row: AnimalNow, happened: Happened, picture: bytes, shows: str
) -> Written:
    """Put *picture*, already re-encoded, into the folder, then write the entry.

    Raises:
        OSError: the folder cannot be written; the book is then as it was.
        BookError: the book cannot be written.
    """
    digest = hashlib.sha256(picture).hexdigest()
    _put(photos_folder(keeping), digest, picture)
    told = shows.strip() or "photo"
    remark = Remark(
        animal=row.animal, happened=happened, kind=RemarkKind.PHOTO, text=told, note=digest
    )
    where = " ".join(part for part in (row.place, row.called) if part)
    return note(keeping, VERB, remark, where=where, what=tr("photo: {words}", words=told))


def put_photo(keeping: Keeping, digest: str, picture: bytes) -> None:
    """Put a picture that came with another book into the folder; *digest* is its own.

    Raises:
        OSError: the folder cannot be written.
    """
    _put(photos_folder(keeping), digest, picture)


def picture_name(remark: Remark) -> str | None:
    """The name of an entry's picture: 64 hexadecimal digits and a suffix, or none at all.

    An entry that came with another book can so lead nowhere but into the folder.
    """
    if remark.kind is not RemarkKind.PHOTO or not _DIGEST.fullmatch(remark.note or ""):
        return None
    return f"{remark.note}{SUFFIX}"


def photo_of(keeping: Keeping, remark: Remark) -> Path | None:
    """The picture of an entry; None where it has none, or it is not there as it was kept."""
    name = picture_name(remark)
    if name is None:
        return None
    path = photos_folder(keeping) / name
    whole = path.is_file() and not path.is_symlink() and sha256_of(path) == remark.note
    return path if whole else None


def _put(folder: Path, digest: str, picture: bytes) -> None:
    """Whole or not at all; a picture that is there already is left as it is."""
    make_private_folder(folder)
    path = folder / f"{digest}{SUFFIX}"
    if path.is_file() and sha256_of(path) == digest:
        return
    part = folder / f".{digest}.part"
    part.write_bytes(picture)
    sync(part)
    part.replace(path)
    sync(folder)
