"""Files that are on the disk when a call returns, and for their owner alone."""

import hashlib
import os
import shutil
from pathlib import Path

_CHUNK = 1 << 20


def copy_durably(source: Path, target: Path) -> None:
    """Make *target* a copy of *source*, in place of anything of that name."""
    target.unlink(missing_ok=True)
    handle = os.open(target, os.O_CREAT | os.O_EXCL | os.O_WRONLY, 0o600)
    with source.open("rb") as reading, os.fdopen(handle, "wb") as writing:
        shutil.copyfileobj(reading, writing, _CHUNK)
        writing.flush()
        os.fsync(writing.fileno())


def sync(path: Path) -> None:
    """Put what *path* names on the disk; of a folder its names, where the system can."""
    if path.is_dir() and os.name == "nt":
        return
    handle = os.open(path, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)


def make_private_folder(folder: Path) -> None:
    """Make *folder* if it is not there; only its owner can look into it."""
    is_new = not folder.exists()
    folder.mkdir(mode=0o700, exist_ok=True)
    folder.chmod(0o700)
    if is_new:
        sync(folder.parent)


def sha256_of(path: Path) -> str:
    """The file's SHA-256 in hexadecimal digits."""
    with path.open("rb") as file:
        return hashlib.file_digest(file, "sha256").hexdigest()
