"""What the window remembers outside any book: the last book, how it was left, the light."""

from pathlib import Path

from PySide6.QtCore import QSettings

from keeper.actions.station import home_dir

_BOOK = "book"
_LEFT_WHOLE = "left whole"
_RED_LAMP = "red lamp"


def _settings() -> QSettings:
    return QSettings(str(home_dir() / "window.ini"), QSettings.Format.IniFormat)


def last_book() -> Path | None:
    """The book that was open last, if its file is still there."""
    written = _settings().value(_BOOK, "", str)
    path = Path(str(written))
    return path if written and path.is_file() else None


def remember_book(path: Path) -> None:
    _settings().setValue(_BOOK, str(path.absolute()))


def left_whole(path: Path) -> bool:
    """The book at *path* is the very file that was last closed whole, unchanged since."""
    return path.is_file() and str(_settings().value(_LEFT_WHOLE, "", str)) == _print_of(path)


def remember_whole(path: Path) -> None:
    """The book at *path* was closed with a backup that was proved."""
    _settings().setValue(_LEFT_WHOLE, _print_of(path))


def _print_of(path: Path) -> str:
    found = path.stat()
    told = (found.st_dev, found.st_ino, found.st_size, found.st_mtime_ns, found.st_ctime_ns)
    return " ".join(map(str, told))


def was_red_lamp() -> bool:
    return bool(_settings().value(_RED_LAMP, False, bool))


def remember_light(red_lamp: bool) -> None:
    if red_lamp != was_red_lamp():
        _settings().setValue(_RED_LAMP, red_lamp)
