"""From the command to the painted first place, beside an empty window of the same toolkit."""

import json
import os
import subprocess
import sys
import time
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from tempfile import TemporaryDirectory

from benches.books import FOLDER, OUT, Size, book_of, copied
from benches.measuring import Row, in_turns, ratio_row

CHILD = Path(__file__).with_name("one_start.py")
MOST, ALIVE_MOST, UNKNOWN_MOST = 1.3, 8.0, 20.0
NOT_BEFORE_PAINT = ("numpy", "sqlite_utils", "scipy", "pandas")


@dataclass(frozen=True, slots=True)
class Start:
    """Seconds from the command on: until the first place is painted with what it has to say, and
    until it is the place itself, which takes keys; and the modules loaded at the first."""

    painted: float
    alive: float
    modules: frozenset[str]


def rows(size: Size, rounds: int) -> list[Row]:
    """Whole processes in turns; and which of the slow modules were loaded too early.

    The book was closed by the window once before, as on any day but the first. It is started as
    it was left, and once a round as if something else had touched it since.
    """
    early: set[str] = set()
    begun: list[Start] = []
    with TemporaryDirectory(dir=FOLDER) as home, copied(book_of(size)) as book:

        def program() -> float:
            begun.append(start("open", str(book), home=home))
            early.update(set(NOT_BEFORE_PAINT) & begun[-1].modules)
            return begun[-1].painted

        def touched() -> float:
            os.utime(book)
            seconds = start("open", str(book), home=home).painted
            start("open", str(book), "close", home=home)
            return seconds

        start("open", str(book), "close", home=home)
        took = in_turns(
            rounds, {"floor": lambda: start("empty", home=home).painted, "program": program}
        )
        unknown = in_turns(
            min(5, rounds),
            {"floor": lambda: start("empty", home=home).painted, "program": touched},
        )
    alive = {"floor": took["floor"], "program": [one.alive for one in begun[-rounds:]]}
    return [*_ratios(str(size), took, alive, unknown), _too_early(str(size), early)]


Took = Mapping[str, Sequence[float]]
"""Seconds of each round, of the floor and of the program."""


def _ratios(size: str, painted: Took, alive: Took, unknown: Took) -> list[Row]:
    floor = "an empty QMainWindow"
    return [
        ratio_row("start to painted first place", size, painted, most=MOST, floor=floor),
        ratio_row("start to a place that takes keys", size, alive, most=ALIVE_MOST, floor=floor),
        ratio_row(
            "start to painted first place, the book changed elsewhere since",
            size,
            unknown,
            most=UNKNOWN_MOST,
            floor=floor,
        ),
    ]


def _too_early(size: str, modules: set[str]) -> Row:
    return Row(
        subject=f"of {', '.join(NOT_BEFORE_PAINT)} loaded before the first paint",
        size=size,
        measured=len(modules),
        most=0,
        unit="modules",
        note=", ".join(sorted(modules)),
    )


def start(*what: str, home: str) -> Start:
    """One process, interpreter and all, its modules compiled before as an installed program's are.

    Raises:
        RuntimeError: it ended without painting, or without a place that takes keys.
    """
    environ = {
        **{name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"},
        "PYTHONPYCACHEPREFIX": str(OUT / "compiled"),
        "QT_QPA_PLATFORM": "offscreen",
        "KEEPER_HOME": home,
    }
    begun = time.perf_counter()
    with subprocess.Popen(
        [sys.executable, str(CHILD), *what], stdout=subprocess.PIPE, env=environ, text=True
    ) as child:
        assert child.stdout is not None
        told = child.stdout.readline().strip()
        painted = time.perf_counter() - begun
        modules = child.stdout.readline()
        lives = child.stdout.readline().strip()
        alive = time.perf_counter() - begun
    if told != "painted" or (what[0] == "open" and lives != "alive"):
        raise RuntimeError(f"the start of {what[0]} showed no first place")
    return Start(painted, alive, frozenset(json.loads(modules)))
