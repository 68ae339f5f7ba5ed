"""The picture of what the first place will show at the next start, kept when the window closes.

A start shows this picture at once, before any page, rule or word is loaded, and reads the book
after it. It is shown only while it is known to be right: the book's file is the very one that was
closed; program, screen, light, size of type and language are the same; and the hour is one that
the picture was drawn for. Nothing here loads what a picture does without.
"""

from __future__ import annotations

import os
from collections.abc import Sequence
from datetime import datetime
from pathlib import Path
from typing import NamedTuple

from PySide6.QtCore import QTimer, Signal
from PySide6.QtGui import QPaintEvent, QPixmap, QScreen
from PySide6.QtWidgets import QApplication, QLabel

import keeper
from keeper.actions.station import home_dir
from keeper.desktop.remembered import print_of, wanted_language, was_large_text, was_red_lamp

_FILE = "first sight"
_SPOKEN_BY = (
    "KEEPER_LANGUAGE",
    "LANGUAGE",
    "LC_ALL",
    "LC_MESSAGES",
    "LC_NUMERIC",
    "LC_TIME",
    "LANG",
)


class Sight(NamedTuple):
    """The first place from the local time *begins* up to *ends*, under the window's *title*."""

    begins: datetime
    ends: datetime
    title: str
    picture: QPixmap


class SightLabel(QLabel):
    """A sight on the window. ``painted`` is emitted once, when it is on the screen.

    In a window of another size than it was drawn for it is drawn out to fit.
    """

    painted = Signal()

    def __init__(self, sight: Sight) -> None:
        super().__init__()
        self._told = False
        self.setPixmap(sight.picture)
        self.setScaledContents(True)
        self.setMinimumSize(1, 1)

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if not self._told:
            self._told = True
            QTimer.singleShot(0, self, self.painted.emit)


def keep_sights(book: Path, sights: Sequence[Sight]) -> None:
    """Keep *sights* of the *book* just closed; none: nothing is shown before it is read.

    On a disk that takes no such file the next start only waits longer.
    """
    index = home_dir() / _FILE
    try:
        for old in (index, *index.parent.glob(f"{_FILE} *.png")):
            old.unlink(missing_ok=True)
        lines = [_print(book)]
        for number, sight in enumerate(sights):
            path = _picture_path(number)
            path.touch(mode=0o600)
            if not sight.picture.save(str(path), "PNG"):
                return
            lines.append("\t".join((*(t.isoformat() for t in sight[:2]), sight.title)))
        if sights:
            index.touch(mode=0o600)
            index.write_text("\n".join(lines), encoding="utf-8")
    except OSError:
        return


def sight_of(book: Path, at: datetime) -> Sight | None:
    """What the first place of *book* shows *at* this local time, where that is known."""
    try:
        told, *lines = (home_dir() / _FILE).read_text(encoding="utf-8").split("\n")
        if told != _print(book):
            return None
        return _read(lines, at.replace(tzinfo=None))
    except (OSError, ValueError):
        return None


def _read(lines: Sequence[str], here: datetime) -> Sight | None:
    """Raises ValueError where a line tells no sight."""
    for number, line in enumerate(lines):
        first, last, title = line.split("\t")
        begins, ends = datetime.fromisoformat(first), datetime.fromisoformat(last)
        if begins <= here < ends:
            picture = QPixmap(str(_picture_path(number)))
            picture.setDevicePixelRatio(_screen().devicePixelRatio())
            return None if picture.isNull() else Sight(begins, ends, title, picture)
    return None


def _picture_path(number: int) -> Path:
    return home_dir() / f"{_FILE} {number}.png"


def _print(book: Path) -> str:
    """Of all that the picture depends on; a new release replaces the program's own file."""
    screen, room = _screen(), _screen().availableSize()
    seen = (room.width(), room.height(), screen.devicePixelRatio(), screen.logicalDotsPerInchY())
    spoken = (wanted_language(), *(os.environ.get(name, "") for name in _SPOKEN_BY))
    program = (keeper.__version__, Path(__file__).stat().st_mtime_ns)
    told = (*program, print_of(book), *seen, was_red_lamp(), was_large_text(), *spoken)
    return " ".join(map(str, told))


def _screen() -> QScreen:
    return QApplication.primaryScreen()
