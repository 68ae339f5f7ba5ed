"""What the window remembers outside any book: the last book, the light, and the machine's ways."""

from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QSettings

from keeper.actions.station import home_dir

_BOOK = "book"
_LEFT_WHOLE = "left whole"
_RED_LAMP = "red lamp"
_LARGE_TEXT = "large text"
_OUNCES = "ounces"
_FAHRENHEIT = "fahrenheit"
_HOUSE_MARKS = "house marks"
_SECOND_PLACE = "second place"
_CHANGES_SEEN = "changes seen"
_PAPER = "paper"
_LANGUAGE = "language"
_TONES = "tones"


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
    return path.is_file() and str(_settings().value(_LEFT_WHOLE, "", str)) == print_of(path)


def remember_whole(path: Path) -> None:
    """The book at *path* was closed with a backup that was proved."""
    _settings().setValue(_LEFT_WHOLE, print_of(path))


def print_of(path: Path) -> str:
    """What tells this very file as it now is from any other. Raises OSError."""
    found = path.stat()
    told = (found.st_dev, found.st_ino, found.st_size, found.st_mtime_ns, found.st_ctime_ns)
    return " ".join(map(str, told))


def was_red_lamp() -> bool:
    return bool(_settings().value(_RED_LAMP, False, bool))


def remember_light(red_lamp: bool) -> None:
    if red_lamp != was_red_lamp():
        _settings().setValue(_RED_LAMP, red_lamp)


def was_large_text() -> bool:
    return bool(_settings().value(_LARGE_TEXT, False, bool))


def remember_large_text(large: bool) -> None:
    _settings().setValue(_LARGE_TEXT, large)


@dataclass(frozen=True, slots=True, kw_only=True)
class FigureWays:
    """How this machine writes figures. house_marks: as the program does, whatever the locale."""

    ounces: bool = False
    fahrenheit: bool = False
    house_marks: bool = False


def figure_ways() -> FigureWays:
    kept = _settings()
    return FigureWays(
        ounces=bool(kept.value(_OUNCES, False, bool)),
        fahrenheit=bool(kept.value(_FAHRENHEIT, False, bool)),
        house_marks=bool(kept.value(_HOUSE_MARKS, False, bool)),
    )


def remember_figure_ways(ways: FigureWays) -> None:
    kept = _settings()
    kept.setValue(_OUNCES, ways.ounces)
    kept.setValue(_FAHRENHEIT, ways.fahrenheit)
    kept.setValue(_HOUSE_MARKS, ways.house_marks)


def wanted_paper() -> str:
    """The name of the paper that was chosen here; empty: as the locale has it."""
    return str(_settings().value(_PAPER, "", str))


def remember_paper(name: str) -> None:
    _settings().setValue(_PAPER, name)


def second_place(book: Path) -> Path | None:
    """The folder in which each backup of *book* is laid down once more; None: nowhere."""
    written = str(_settings().value(_second_key(book), "", str))
    return Path(written) if written else None


def remember_second_place(book: Path, folder: Path | None) -> None:
    _settings().setValue(_second_key(book), str(folder) if folder is not None else "")


def _second_key(book: Path) -> str:
    """A book is told by where it lies; its path itself may hold what a key may not."""
    import hashlib  # not loaded at a start

    told = hashlib.sha256(str(book.resolve()).encode()).hexdigest()[:16]
    return f"{_SECOND_PLACE}/{told}"


def changes_seen() -> str:
    """The latest version whose changes this machine was told of; empty before the first start."""
    return str(_settings().value(_CHANGES_SEEN, "", str))


def remember_changes_seen(version: str) -> None:
    _settings().setValue(_CHANGES_SEEN, version)


def wanted_language() -> str:
    """The code of the language that was chosen here; empty: as the system speaks."""
    return str(_settings().value(_LANGUAGE, "", str))


def remember_language(code: str) -> None:
    _settings().setValue(_LANGUAGE, code)


def wants_tones() -> bool:
    """Whether results and alarms are heard on this machine."""
    return bool(_settings().value(_TONES, False, bool))


def remember_tones(wanted: bool) -> None:
    _settings().setValue(_TONES, wanted)
