"""What the window remembers outside any book: the last book, the light."""

from pathlib import Path

from PySide6.QtCore import QSettings

from keeper.actions.station import home_dir

_BOOK = "book"
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


def was_red_lamp() -> bool:
    return bool(_settings().value(_RED_LAMP, False, bool))


def remember_light(red_lamp: bool) -> None:
    _settings().setValue(_RED_LAMP, red_lamp)
