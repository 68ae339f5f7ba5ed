"""What this machine is called in the books it writes; kept outside every book."""

import os
from pathlib import Path

HOME_VARIABLE = "KEEPER_HOME"
_FILE = "station"


def home_dir() -> Path:
    """The folder of what belongs to this machine and no book; KEEPER_HOME puts it elsewhere."""
    elsewhere = os.environ.get(HOME_VARIABLE)
    if elsewhere:
        return Path(elsewhere)
    import platformdirs  # not loaded where it is not asked

    return Path(platformdirs.user_data_dir("keeper", False))


def station_name() -> str:
    """This machine's name, made at the first asking and the same ever after.

    Raises:
        OSError: the folder can be neither read nor written.
    """
    path = home_dir() / _FILE
    return _read(path) or _make(path)


def _read(path: Path) -> str:
    try:
        return path.read_text(encoding="utf-8").strip()
    except FileNotFoundError:
        return ""


def _make(path: Path) -> str:
    """Of two programs that start at once the first one's name stands for both."""
    import secrets  # once in the life of a machine

    path.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
    fresh = path.with_name(f"{_FILE}.{secrets.token_hex(4)}")
    fresh.touch(mode=0o600)
    fresh.write_text(f"station-{secrets.token_hex(4)}\n", encoding="utf-8")
    try:
        path.hardlink_to(fresh)
        fresh.unlink()
    except OSError:
        # it is there already, or this disk knows no links; an empty one was cut off by a crash
        if _read(path):
            fresh.unlink()
        else:
            fresh.replace(path)
    return _read(path)
