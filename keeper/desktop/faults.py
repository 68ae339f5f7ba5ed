"""Faults of the program: told in one sentence, kept in a report that holds no animal data.

A report names places in the program's own text and kinds of error. What an error *says* may
hold a name, a weight or a path of the keeper's, so it is left out unless the keeper asks for
full reports by setting KEEPER_REPORTS=full. Values of variables are never in it.
"""

from __future__ import annotations

import logging
import os
import sys
import threading
import traceback
from collections.abc import Callable, Iterator
from io import TextIOWrapper
from logging.handlers import RotatingFileHandler
from pathlib import Path

from PySide6.QtCore import QObject, Qt, Signal, qVersion

from keeper import clock
from keeper.actions.troubles import world_told
from keeper.language import tr

FAULT = tr(
    "The program failed at this; what was written before stands. A report without animal data"
    " is in {path}."
)
FULL_FAULT = tr(
    "The program failed at this; what was written before stands. A full report, which may hold"
    " animal data, is in {path}."
)
ASKED_BY = "KEEPER_REPORTS"
LOG, REPORTS = "keeper.log", "faults"
_LOG_BYTES = 1_000_000
_MOST_REPORTS = 50
_PROGRAM = Path(__file__).resolve().parents[1]


class Faults(QObject):
    """Hears of every error that nobody caught, in any thread; ``install`` once a process.

    tell: says a sentence in the window; always called in the main thread.
    """

    _happened = Signal(str)

    def __init__(self, home: Path, tell: Callable[[str], None]) -> None:
        super().__init__()
        self._home = home
        self._known: set[str] = set()
        self._happened.connect(tell, Qt.ConnectionType.AutoConnection)

    def install(self) -> None:
        """From now on: the log, and a report for each new fault."""
        _make_private(self._home)
        logging.basicConfig(level=logging.WARNING, handlers=[_PrivateLog(self._home / LOG)])
        sys.excepthook = lambda kind, fault, trace: self.meet(fault)
        threading.excepthook = lambda given: self.meet(given.exc_value)

    def meet(self, fault: BaseException | None) -> None:
        """Write *fault* down and tell of it; the same fault again is only counted in the log."""
        if fault is None or isinstance(fault, (KeyboardInterrupt, SystemExit)):
            return
        refused = world_told(fault)
        if refused is not None:  # a disk or a lock, and no fault of the program
            logging.getLogger("keeper").error("%s", refused)
            self._happened.emit(refused)
            return
        text = report_of(fault, full=os.environ.get(ASKED_BY) == "full")
        sys.stderr.write(text)
        try:
            path = self._written(text)
        except OSError as error:
            said = tr("The program failed at this, and no report: {why}.", why=error.strerror)
            self._happened.emit(said)
            return
        logging.getLogger("keeper").critical("fault %s, see %s", type(fault).__name__, path.name)
        told = FULL_FAULT if os.environ.get(ASKED_BY) == "full" else FAULT
        self._happened.emit(told.format(path=path))

    def _written(self, text: str) -> Path:
        folder = self._home / REPORTS
        _make_private(folder)
        there = sorted(folder.glob("fault-*.txt"))
        if text in self._known and there:
            return there[-1]
        self._known.add(text)
        for old in there[: 1 - _MOST_REPORTS]:
            old.unlink(missing_ok=True)
        when = f"{clock.now():%Y%m%d-%H%M%S}"
        names = (folder / f"fault-{when}-{n}.txt" for n in range(1, 10_000))
        path = next(name for name in names if not name.exists())
        with open(path, "x", encoding="utf-8", opener=_private) as file:
            file.write(f"{clock.now():%Y-%m-%d %H:%M:%S}\n{text}")
        return path


def report_of(fault: BaseException, *, full: bool = False) -> str:
    """Where *fault* came about, in the program's own text, and on what it ran.

    full: what the errors say, too.
    """
    told = [_machine()]
    error: traceback.TracebackException | None = traceback.TracebackException.from_exception(fault)
    while error is not None:
        told += _lines_of(error, full=full)
        error = error.__cause__ or (None if error.__suppress_context__ else error.__context__)
    return "\n".join(told) + "\n"


def _lines_of(error: traceback.TracebackException, *, full: bool) -> Iterator[str]:
    says = f": {error}" if full else ""
    yield f"{error.exc_type.__name__ if error.exc_type else 'error'}{says}"
    for frame in error.stack:
        yield f"  {_place(frame.filename)}, line {frame.lineno}, in {frame.name}"
        if frame.line:
            yield f"    {frame.line}"


def _place(filename: str) -> str:
    """A file by its place in the program, or by its own name: a path may name the keeper."""
    path = Path(filename)
    return str(path.relative_to(_PROGRAM)) if path.is_relative_to(_PROGRAM) else path.name


def _machine() -> str:
    import platform  # a start does not wait for these
    from importlib.metadata import PackageNotFoundError, version

    try:
        ours = version("keeper")
    except PackageNotFoundError:
        ours = "not installed"
    return (
        f"keeper {ours}, Python {platform.python_version()}, Qt {qVersion()},"
        f" {platform.system()} {platform.machine()}"
    )


class _PrivateLog(RotatingFileHandler):
    """A log for its owner alone, the kept older ones too."""

    def __init__(self, path: Path) -> None:
        super().__init__(path, maxBytes=_LOG_BYTES, backupCount=2, encoding="utf-8")

    def _open(self) -> TextIOWrapper:
        path, mode, encoding = Path(self.baseFilename), self.mode, self.encoding
        file = open(path, mode, encoding=encoding, opener=_private)  # noqa: SIM115 the handler's
        assert isinstance(file, TextIOWrapper)
        return file


def _private(path: str, flags: int) -> int:
    handle = os.open(path, flags, 0o600)
    Path(path).chmod(0o600)  # one that an earlier program left open to all
    return handle


def _make_private(folder: Path) -> None:
    folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    folder.chmod(0o700)
