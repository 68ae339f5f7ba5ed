"""Speed of the racks with 2,000 tubs, against laying down one picture of the same size.

Run in the prepared environment: `python demo/bench_racks.py [ROUNDS]`. Floor and candidate
take turns, a run of each, and medians of processor time are told, because on a busy machine a
clock on the wall counts what others do meanwhile. A blit goes over seven megabytes, more than the
processor keeps at hand: the first change after one waits for memory, and is told by itself.
"""

import os
import sys
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from statistics import median
from time import process_time

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QRect, QSize  # noqa: E402 - after the platform is chosen
from PySide6.QtGui import QPainter, QPixmap  # noqa: E402
from PySide6.QtWidgets import QApplication  # noqa: E402

from keeper.actions.rack_layers import Layer  # noqa: E402
from keeper.desktop.look import Look  # noqa: E402
from keeper.desktop.scan import ScanFilter  # noqa: E402
from keeper.desktop.widgets.rack_faces import FACES, WIDEST  # noqa: E402
from keeper.desktop.widgets.rack_front import RackFront  # noqa: E402
from keeper.desktop.widgets.rack_paint import At, FrontRack, FrontRow, FrontTub  # noqa: E402

RACKS, ROWS, TUBS = 20, 10, 10
SIZE = QSize(1440, 575)
STATES = tuple(state for state in FACES[Layer.RATIO] if state != "empty")
WITH_FIGURE = ("in step", "due", "behind", "far behind")
ONE = At(5, 5, 5)
TOLD = "2,000 tubs"
FIRST = "one tub, straight after a blit"
MOST = {"full redraw": 20.0, "kept picture": 1.5, "one tub": 0.3, FIRST: 0.6}
"""The most that each may take, as a multiple of one blit."""
RUNS = {"full redraw": 4, "kept picture": 20, "one tub": 20, FIRST: 1}
"""How often in a row floor and candidate are done in their turn."""


def main(rounds: int) -> int:
    """Measure and tell; returns 1 where a line is over its most."""
    application = QApplication.instance() or QApplication(sys.argv[:1])
    listening = ScanFilter()  # the program looks at every event for a scanner's keys
    application.installEventFilter(listening)
    front, canvas = RackFront(Look()), QPixmap(SIZE)
    front.resize(SIZE)
    racks = room()
    canvas.fill("white")
    front.show()
    QApplication.processEvents()
    front.show_racks(racks, WIDEST[Layer.RATIO], TOLD)
    cold = timed(lambda turn: front.repaint())
    tub = front.rect_of(ONE) or QRect()
    print(f"{len(front.every):,} tubs of {tub.width()} x {tub.height()} px, {rounds} rounds")
    print(f"first of all, with every stamp painted: {1000 * cold:.1f} ms")
    told = measured(front, racks, canvas, rounds)
    for name, (floor, own) in told.items():
        share = f"{own / floor:6.2f}, at most {MOST[name]}"
        print(f"{name:31}{1000 * own:7.3f} ms by a blit of {1000 * floor:.3f} ms: {share}")
    application.processEvents()
    return int(any(own / floor > MOST[name] for name, (floor, own) in told.items()))


def with_one_changed(racks: tuple[FrontRack, ...]) -> tuple[FrontRack, ...]:
    """The same racks but for the row in which tub ONE stands, whose figure differs."""
    rack = racks[ONE.rack]
    rows = (*rack.rows[: ONE.row], _row(ONE.rack, ONE.row, 1), *rack.rows[ONE.row + 1 :])
    return (*racks[: ONE.rack], replace(rack, rows=rows), *racks[ONE.rack + 1 :])


def room() -> tuple[FrontRack, ...]:
    """An invented room."""
    return tuple(
        FrontRack(
            letter=chr(ord("A") + rack),
            about="adults",
            rows=tuple(_row(rack, row) for row in range(ROWS)),
        )
        for rack in range(RACKS)
    )


def measured(
    front: RackFront, racks: tuple[FrontRack, ...], canvas: QPixmap, rounds: int
) -> dict[str, tuple[float, float]]:
    """Median seconds of a blit and of each job, runs of the two taking turns."""
    picture, both = QPixmap(canvas), (racks, with_one_changed(racks))

    def redrawn() -> None:
        front.show_racks(racks, "", TOLD)  # another layer, and the first again: nothing is kept
        front.show_racks(racks, WIDEST[Layer.RATIO], TOLD)
        front.repaint()

    def one_tub(turn: int) -> None:
        front.show_racks(both[turn % 2], WIDEST[Layer.RATIO], TOLD)
        QApplication.processEvents()

    jobs: dict[str, Callable[[int], object]] = {
        "full redraw": lambda turn: redrawn(),
        "kept picture": lambda turn: front.repaint(),
        "one tub": one_tub,
        FIRST: one_tub,
    }
    found = {}
    for name, job in jobs.items():
        front.repaint()
        run = RUNS[name]
        pairs = [
            (timed(lambda turn: blit(canvas, picture), begin, run), timed(job, begin, run))
            for begin in range(1, run * rounds + 1, run)
        ]
        found[name] = (median(floor for floor, _ in pairs), median(own for _, own in pairs))
    return found


def blit(canvas: QPixmap, picture: QPixmap) -> None:
    """The floor: one picture of the whole size laid down."""
    painter = QPainter(canvas)
    painter.drawPixmap(0, 0, picture)
    painter.end()


def timed(job: Callable[[int], object], begin: int = 0, run: int = 1) -> float:
    """Seconds of processor time that *job* takes, by a *run* of turns counted from *begin*."""
    begun = process_time()
    for turn in range(begin, begin + run):
        job(turn)
    return (process_time() - begun) / run


def _row(rack: int, row: int, changed: int = 0) -> FrontRow:
    tubs = tuple(_tub(At(rack, row, tub), changed) for tub in range(TUBS))
    return FrontRow(number=str(row + 1), tubs=tubs, heat="30.8", out=row == 4)


def _tub(at: At, changed: int) -> FrontTub:
    number = (7 * at.rack + 3 * at.row + at.tub) % 29 + (changed if at == ONE else 0)
    state = STATES[number % len(STATES)]
    figure = f"{number / 10:.1f}" if state in WITH_FIGURE else ""
    return FrontTub(face=FACES[Layer.RATIO][state], figure=figure, words="")


if __name__ == "__main__":
    sys.exit(main(int(sys.argv[1]) if sys.argv[1:] else 100))
