"""From the command to the painted first place, beside an empty window of the same toolkit."""

import json
import os
import subprocess
import sys
import time
from pathlib import Path
from tempfile import TemporaryDirectory

from benches.books import FOLDER, Size, book_of, copied
from benches.measuring import Row, in_turns, ratio_row

CHILD = Path(__file__).with_name("one_start.py")
MOST = 1.3
NOT_BEFORE_PAINT = ("numpy", "sqlite_utils", "scipy", "pandas")


def rows(size: Size, rounds: int) -> list[Row]:
    """Whole processes in turns; and which of the slow modules were loaded too early.

    The book was closed by the window once before, as on any day but the first.
    """
    early: set[str] = set()
    with TemporaryDirectory(dir=FOLDER) as home, copied(book_of(size)) as book:
        start(str(book), home, "close")

        def program() -> float:
            seconds, modules = start(str(book), home)
            early.update(set(NOT_BEFORE_PAINT) & modules)
            return seconds

        took = in_turns(rounds, {"floor": lambda: start("empty", home)[0], "program": program})
    floor = "an empty QMainWindow"
    return [
        ratio_row("start to painted first place", str(size), took, most=MOST, floor=floor),
        Row(
            subject=f"of {', '.join(NOT_BEFORE_PAINT)} loaded before the first paint",
            size=str(size),
            measured=len(early),
            most=0,
            unit="modules",
            note=", ".join(sorted(early)),
        ),
    ]


def start(what: str, home: str, *further: str) -> tuple[float, set[str]]:
    """Seconds until the window is painted, interpreter and all, and the modules loaded then.

    Raises:
        RuntimeError: the process ended without painting.
    """
    environ = {**os.environ, "QT_QPA_PLATFORM": "offscreen", "KEEPER_HOME": home}
    begun = time.perf_counter()
    with subprocess.Popen(
        [sys.executable, str(CHILD), what, *further], stdout=subprocess.PIPE, env=environ, text=True
    ) as child:
        assert child.stdout is not None
        told = child.stdout.readline().strip()
        seconds = time.perf_counter() - begun
        modules = child.stdout.readline()
    if told != "painted":
        raise RuntimeError(f"the start of {what} painted nothing")
    return seconds, set(json.loads(modules))
