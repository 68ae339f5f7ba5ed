"""What plays a WAV file on this machine, if anything does. Loaded with the first tone only."""

from __future__ import annotations

import sys
from collections.abc import Callable
from importlib import import_module
from pathlib import Path

from PySide6.QtCore import QProcess, QStandardPaths, QUrl

Play = Callable[[Path], object]

COMMANDS = ("pw-play", "paplay", "aplay", "afplay")
"""What desktops bring along that plays a file named to it."""


def player() -> Play | None:
    """The first of Qt's own sound, Windows' own and a command of the desktop; None: silence."""
    return _of_qt() or _of_windows() or _of_a_command()


def _of_qt() -> Play | None:
    """Qt's sound effects, where that module is installed and hears of a device."""
    try:
        media = import_module("PySide6.QtMultimedia")
        if not media.QMediaDevices.audioOutputs():
            return None
    except (ImportError, RuntimeError, AttributeError):
        return None
    kept: dict[Path, object] = {}

    def play(path: Path) -> None:
        effect = kept.get(path)
        if effect is None:
            effect = kept[path] = media.QSoundEffect()
            effect.setSource(QUrl.fromLocalFile(str(path)))
        effect.play()  # type: ignore[attr-defined]

    return play


def _of_windows() -> Play | None:
    if sys.platform != "win32":
        return None
    import winsound

    flags = winsound.SND_FILENAME | winsound.SND_ASYNC | winsound.SND_NODEFAULT
    return lambda path: winsound.PlaySound(str(path), flags)


def _of_a_command() -> Play | None:
    found = next(filter(None, map(QStandardPaths.findExecutable, COMMANDS)), "")
    return (lambda path: _detached(found, path)) if found else None


def _detached(command: str, path: Path) -> None:
    """It ends by itself; what it says is nobody's."""
    process = QProcess()
    process.setProgram(command)
    process.setArguments([str(path)])
    process.setStandardOutputFile(QProcess.nullDevice())
    process.setStandardErrorFile(QProcess.nullDevice())
    process.startDetached()
