"""A round in the real window in a process of its own, and what ought to be in its book.

The process presses one key for each line it reads and answers when the key is done, so that
who feeds it knows which keys were acknowledged when it is killed. ``Night`` says by itself,
from the keys alone, what the book must hold and at which tub the keeper must stand.
"""

from __future__ import annotations

import os
import random
import subprocess
import sys
from collections.abc import Iterator
from copy import deepcopy
from dataclasses import dataclass, field
from datetime import timedelta
from pathlib import Path

from tests.apart import OUR_TESTS

ROOT = Path(__file__).resolve().parents[2]
ROW, ROWS = 10, 10
"""Tubs in a row, rows in a rack."""
PLANNED, HOPPER = "mouse fuzzy", "mouse hopper"
RESULTS = {"Enter": "taken", "0": "refused", "5": "left in", "2": "part taken"}
UNPROVED = {("left in", "seen"), ("taken", "assumed")}
STARTED = f"""{OUR_TESTS}from tests.journeys.killed_round import walk_by_lines
walk_by_lines(sys.argv[1], int(sys.argv[2]))
"""


# --- the process that is killed --------------------------------------------------------------


def walk_by_lines(path: str, life: int) -> None:
    """Open the window on the book at *path*; press each key read, and say where it stands."""
    from PySide6.QtCore import Qt
    from PySide6.QtTest import QTest

    from keeper.actions.keeping import open_keeping
    from keeper.app import application, build_house
    from keeper.desktop.look import Look
    from tests.feeding_room import STATION, Clock
    from tests.pad_desk import KEYS

    app, clock = application(), Clock()
    clock.at += timedelta(seconds=60 * life)
    keeping = open_keeping(Path(path), station=STATION, now=clock, keeper="Ro")
    house = build_house(keeping, Look(red_lamp=True))
    house.window.resize(1440, 900)
    house.window.show()
    page = house.window.page("Round")
    while True:
        app.processEvents()
        sys.stdout.write(f"{_standing(page)}\n")
        sys.stdout.flush()
        key = sys.stdin.readline().strip()
        QTest.keyClick(page, KEYS[key], Qt.KeyboardModifier.KeypadModifier)


def _standing(page) -> str:
    """What the page shows: the pass and the place on its panel, as a screen reader finds them."""
    from keeper.desktop.widgets.offer_panel import OfferPanel

    here = page._stand.here
    if here is None:
        return "quiet"
    panel = page.findChild(OfferPanel)
    tub = here.walk.current
    assert (panel.text().split(",")[0] == "End") is (tub is None)
    if tub is not None:
        assert f"{tub.animal.name}, " in panel.text()
    kind = "check" if here.walk.checking else "offer"
    return f"{kind} {tub.line if tub else 0} {panel.text().split(',')[0]}"


class Window:
    """The process, key by key. ``standing`` is what it said last."""

    def __init__(self, path: Path, life: int) -> None:
        self._process = subprocess.Popen(
            [sys.executable, "-c", STARTED, str(path), str(life)],
            cwd=ROOT,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
            env=os.environ | {"QT_QPA_PLATFORM": "offscreen"},
        )
        self.standing = self._answer()

    def press(self, key: str) -> None:
        """Press *key* and wait until it is acknowledged."""
        self.send(key)
        self.standing = self._answer()

    def send(self, key: str) -> None:
        """Press *key* and do not wait."""
        self._process.stdin.write(f"{key}\n")
        self._process.stdin.flush()

    def kill(self) -> int:
        """SIGKILL; returns the exit code when the process is gone."""
        self._process.kill()
        self._process.communicate()
        return self._process.returncode

    def _answer(self) -> str:
        line = self._process.stdout.readline()
        if not line:
            raise AssertionError("the window ended by itself")
        return line.strip()


# --- what ought to be ------------------------------------------------------------------------


@dataclass
class State:
    """Standing results by line, and every entry ever written, with where the keeper stands."""

    offers: dict[int, tuple[object, ...]] = field(default_factory=dict)
    offer_rows: int = 0
    marks: list[int] = field(default_factory=list)
    mark_rows: int = 0
    cursor: int | None = 1
    checking: bool = False


class Night:
    """A night of *tubs* tubs in rows of ten, all due, told only by the keys of its deeds."""

    def __init__(self, tubs: int, seed: int) -> None:
        self.tubs = tubs
        self.state = State()
        self._dice = random.Random(seed)
        self._undone: list[State] = []

    @property
    def over(self) -> bool:
        """Both passes are at their end."""
        unproved = any(told[:2] in UNPROVED for told in self.state.offers.values())
        return self.state.cursor is None and not unproved

    def next_deed(self) -> str:
        """The keys of something that can be done now, by lot."""
        if self.state.cursor is None:
            return "Enter"
        kinds = ["Enter"] * 6 + ["0", "* 6", "9"]
        if not self.state.checking:
            kinds = ["Enter"] * 30 + ["0", "5", "2"] * 4 + ["7 1", "7 4", "* 6", "/ 4 1 Enter"]
            kinds += ["- 0", "9", "3", "+"]
        if self._undone and self._undone[-1].checking == self.state.checking:
            kinds.append(".")
        kind = self._dice.choice(kinds)
        made = {"9": self._jump, "3": self._pass_on, "+": self._sweep}.get(kind)
        return made() if made else kind

    def done(self, keys: str) -> Iterator[tuple[str, State]]:
        """Each key of *keys* and how the night stands once it is acknowledged."""
        for key, deed in _split(keys):
            if deed is not None:
                self._do(deed)
            yield key, deepcopy(self.state)

    def goes_on_from(self, state: State) -> None:
        """The keeper was cut off, and finds the night as in *state*."""
        if state.offer_rows + state.mark_rows < self.state.offer_rows + self.state.mark_rows:
            self._undone.pop()
        self.state = deepcopy(state)

    def place(self, line: int | None) -> str:
        """What the panel calls the tub of *line*."""
        if line is None:
            return "End"
        row, tub = divmod(line - 1, ROW)
        return f"{'ABC'[row // ROWS]}{row % ROWS + 1}·{tub + 1}"

    def _do(self, deed: str) -> None:
        state, parts = self.state, deed.split()
        if parts[0] == "9":
            state.cursor = int("".join(parts[1:-1]))
        elif parts[0] == "-":
            state.cursor = max(state.cursor - 1, 1)
        elif parts[0] == ".":
            self._take_back()
        elif parts[0] == "Enter" and state.cursor is None:
            state.checking, state.cursor = True, None
            state.cursor = self._next(0)
        else:
            self._undone.append(deepcopy(state))
            self._write(parts)

    def _write(self, parts: list[str]) -> None:
        state, here = self.state, self.state.cursor
        if parts[0] == "*":
            state.marks.append(here)
            state.mark_rows += 1
        elif state.checking:
            prey = state.offers[here][2]
            found = ("taken", "gone at check") if parts[0] == "Enter" else ("refused", "seen")
            self._put({here: (*found, prey)})
        elif parts[0] == "+":
            self._put(self._swept(parts[1:-1]))
        elif parts[0] == "3":
            taker = int("".join(parts[1:-1]))
            self._put({taker: ("taken", "seen", PLANNED), here: ("refused", "seen", PLANNED)})
            state.cursor = self._next(here)
        elif parts[0] == "7":
            self._put({here: ("not offered", "seen", None)})
        else:
            prey = HOPPER if parts[0] == "/" else PLANNED
            self._put({here: (RESULTS[parts[-1]], "seen", prey)})

    def _put(self, results: dict[int, tuple[object, ...]]) -> None:
        self.state.offers |= results
        self.state.offer_rows += len(results)
        self.state.cursor = self._next(max(results))

    def _swept(self, pairs: list[str]) -> dict[int, tuple[object, ...]]:
        here = self.state.cursor
        first = ROW * ((here - 1) // ROW)
        told = {
            first + (int(place) or ROW): (RESULTS[result], "seen", PLANNED)
            for place, result in zip(pairs[::2], pairs[1::2], strict=True)
        }
        rest = [line for line in self._row() if line not in self.state.offers]
        return dict.fromkeys(rest, ("taken", "assumed", PLANNED)) | told

    def _take_back(self) -> None:
        before, now = self._undone.pop(), self.state
        changed = [n for n in now.offers if now.offers[n] != before.offers.get(n)]
        lines = changed or [before.cursor]
        before.offer_rows, before.mark_rows = now.offer_rows, now.mark_rows
        passed = len(changed) == 2 and before.cursor in changed
        before.cursor = before.cursor if passed or not changed else min(lines)
        before.checking = now.checking
        self.state = before

    def _waiting(self) -> list[int]:
        state = self.state
        if not state.checking:
            return [n for n in range(1, self.tubs + 1) if n not in state.offers]
        return sorted(n for n, told in state.offers.items() if told[:2] in UNPROVED)

    def _next(self, after: int) -> int | None:
        waiting = self._waiting()
        return next((n for n in waiting if n > after), waiting[0] if waiting else None)

    def _row(self) -> range:
        """The rest of the row at which the keeper stands."""
        return range(self.state.cursor, ROW * ((self.state.cursor - 1) // ROW) + ROW + 1)

    def _jump(self) -> str:
        line = self._dice.choice(self._waiting())
        return f"9 {' '.join(str(line))} Enter"

    def _pass_on(self) -> str:
        others = [n for n in self._waiting() if n != self.state.cursor]
        return f"3 {' '.join(str(self._dice.choice(others)))} Enter" if others else "Enter"

    def _sweep(self) -> str:
        waiting = [line for line in self._row() if line not in self.state.offers]
        if self.state.cursor not in waiting:
            return "Enter"
        return f"+ {self._dice.choice(waiting) % ROW} {self._dice.choice('052')} Enter"


def _split(keys: str) -> Iterator[tuple[str, str | None]]:
    """Each key of a deed with what is done by it: all at the last, but for a step back."""
    parts = keys.split()
    if parts[0] == "-":
        yield parts[0], "-"
        parts = parts[1:]
    for key in parts[:-1]:
        yield key, None
    yield parts[-1], " ".join(parts)
