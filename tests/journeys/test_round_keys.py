"""A feeding night of 300 offers on the number pad: keys counted, every tub read back.

Real key events, a real book on disk. 36 of the 300 are not as planned, in rows of ten.
"""

import random
import signal
import subprocess
import sys
from collections import Counter
from contextlib import closing
from datetime import timedelta
from pathlib import Path

import pytest

from keeper.actions.keeping import Keeping
from keeper.actions.rounds import last_night, open_night
from keeper.desktop.screens.round import RoundScreen
from keeper.husbandry.events import Evidence, HoldKind, Offer, Result
from tests.apart import OUR_TESTS
from tests.feeding_room import Clock, make_book, reopened, room
from tests.pad_desk import Desk

ROOT = Path(__file__).resolve().parents[2]
ANIMALS, EXCEPTIONS, ROW = 300, 36, 10
KEY_OF = {Result.REFUSED: "0", Result.LEFT_IN: "5", Result.PART: "2", Result.NOT_OFFERED: "7 1"}
MIX = [Result.REFUSED] * 16 + [Result.LEFT_IN] * 10 + [Result.PART] * 8 + [Result.NOT_OFFERED] * 2
STILL_THERE = 3
MOST_SWEPT, MOST_BOTH_SWEPT, MOST_WALKED = 135, 205, 370

Meant = dict[int, Result]
"""What is not as planned, by line."""


@pytest.fixture
def keeping(tmp_path: Path) -> Keeping:
    with closing(make_book(tmp_path / "night.book", room(), Clock(timedelta(seconds=7)))) as book:
        yield book


@pytest.fixture
def meant() -> Meant:
    """The 36 exceptions of the night, and which left-in prey is still there at the check."""
    lines = random.Random(36).sample(range(1, ANIMALS + 1), EXCEPTIONS)
    return dict(zip(lines, MIX, strict=True))


def still_there(meant: Meant) -> set[int]:
    return set(sorted(line for line, r in meant.items() if r is Result.LEFT_IN)[:STILL_THERE])


def sweep(desk: Desk, first: int, exceptions: dict[int, str]) -> None:
    """Sweep the row that begins at line *first*, with exceptions as line and keys."""
    pairs = " ".join(f"{(line - first + 1) % ROW} {key}" for line, key in exceptions.items())
    desk.press(f"+ {pairs} Enter")


def in_row(first: int, lines: dict[int, str]) -> dict[int, str]:
    return {line: key for line, key in lines.items() if first <= line < first + ROW}


def offers_by_line(keeping: Keeping) -> dict[int, Offer]:
    """What the book says of each line, read afresh."""
    walk = open_night(keeping) or last_night(keeping)
    assert walk is not None
    return {tub.line: tub.offer.event for tub in walk.tubs if tub.offer is not None}


def wanted(meant: Meant, unless: Evidence, *, checked: bool) -> dict[int, tuple[object, ...]]:
    """Result, evidence and reason of every line as they were meant."""
    told: dict[int, tuple[object, ...]] = {}
    for line in range(1, ANIMALS + 1):
        result = meant.get(line, Result.TAKEN)
        evidence = Evidence.SEEN if line in meant else unless
        if checked and (result is Result.LEFT_IN or evidence is Evidence.ASSUMED):
            stays = line in still_there(meant)
            result = Result.REFUSED if stays else Result.TAKEN
            evidence = Evidence.SEEN if stays else Evidence.GONE
        why = HoldKind.OPAQUE if result is Result.NOT_OFFERED else None
        told[line] = (result, evidence, why)
    return told


def read_back(keeping: Keeping) -> dict[int, tuple[object, ...]]:
    offers = offers_by_line(keeping)
    return {line: (o.result, o.evidence, o.withheld) for line, o in offers.items()}


def test_a_night_of_sweeps_takes_fewer_keys_than_animals_in_both_passes(qtbot, keeping, meant):
    desk = Desk(RoundScreen, keeping)
    typed = {line: KEY_OF[result] for line, result in sorted(meant.items())}
    desk.press("Enter")
    for first in range(1, ANIMALS + 1, ROW):
        sweep(desk, first, in_row(first, typed))
    offer_keys = desk.keys

    assert offer_keys <= MOST_SWEPT
    assert read_back(keeping) == wanted(meant, Evidence.ASSUMED, checked=False)

    desk.press("Enter")
    stays = dict.fromkeys(sorted(still_there(meant)), "0")
    for first in range(1, ANIMALS + 1, ROW):
        sweep(desk, first, in_row(first, stays))
    desk.press("Enter")

    assert desk.keys <= MOST_BOTH_SWEPT
    assert desk.refused == []
    again = reopened(keeping)
    assert read_back(again) == wanted(meant, Evidence.ASSUMED, checked=True)
    assert open_night(again) is None
    again.close()


def test_one_key_a_tub_walks_both_passes_and_every_result_was_seen(qtbot, keeping, meant):
    desk = Desk(RoundScreen, keeping)
    desk.press("Enter")
    for line in range(1, ANIMALS + 1):
        desk.press(KEY_OF[meant[line]] if line in meant else "Enter")
    desk.press("Enter")
    for line in sorted(line for line, result in meant.items() if result is Result.LEFT_IN):
        desk.press("0" if line in still_there(meant) else "Enter")
    desk.press("Enter")

    assert desk.keys <= MOST_WALKED
    assert desk.refused == []
    again = reopened(keeping)
    assert read_back(again) == wanted(meant, Evidence.SEEN, checked=True)
    assert open_night(again) is None
    again.close()


def test_after_a_restart_the_point_takes_back_what_was_written_before_it(qtbot, keeping):
    desk = Desk(RoundScreen, keeping)
    desk.press("Enter Enter 0 5")
    desk.close()
    again = reopened(keeping)
    desk = Desk(RoundScreen, again)

    desk.press(". .")

    assert {line: o.result for line, o in offers_by_line(again).items()} == {1: Result.TAKEN}
    assert desk.written[-1].what == "taken back: refused, 2 fuzzy mouse, 10\u00a0g"
    desk.press("5")
    assert offers_by_line(again)[2].result is Result.LEFT_IN
    again.close()


def test_a_power_cut_at_143_of_300_resumes_at_the_next_tub_and_loses_and_doubles_nothing(
    qtbot, keeping
):
    keeping.close()
    cut = subprocess.run(
        [sys.executable, "-c", KILLED, str(keeping.book.path), "143"],
        cwd=ROOT,
        timeout=120,
        check=False,
    )

    again = reopened(keeping)
    desk = Desk(RoundScreen, again)

    assert cut.returncode == -signal.SIGKILL
    assert set(offers_by_line(again)) == set(range(1, 144))
    (times,) = again.book.connection.execute(
        "SELECT max(n) FROM (SELECT count(*) AS n FROM offer WHERE round IS NOT NULL GROUP BY line)"
    ).fetchone()
    assert times == 1
    desk.press("0")
    assert offers_by_line(again)[144].result is Result.REFUSED
    desk.press("9 0 Enter Enter Enter")
    over = last_night(again)
    assert over is not None
    assert Counter(tub.open for tub in over.tubs)[True] == 156
    again.close()


KILLED = f"""{OUR_TESTS}from tests.journeys.test_round_keys import walk_and_die
walk_and_die(sys.argv[1], int(sys.argv[2]))
"""


def walk_and_die(path: str, tubs: int) -> None:
    """Begin the round of the book at *path*, walk *tubs* and be killed between two keys."""
    import os

    from PySide6.QtWidgets import QApplication

    from keeper.actions.keeping import open_keeping
    from tests.feeding_room import STATION

    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    app = QApplication([])
    keeping = open_keeping(Path(path), station=STATION, now=Clock(), keeper="Ro")
    desk = Desk(RoundScreen, keeping)
    desk.press("Enter")
    for _ in range(tubs):
        desk.press("Enter")
    app.processEvents()
    os.kill(os.getpid(), signal.SIGKILL)
