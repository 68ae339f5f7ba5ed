"""The racks, a life strip and a million readings, which have benches of their own, as rows."""

from collections.abc import Iterator

import bench_life
import bench_racks
import bench_readings
from PySide6.QtGui import QPixmap
from PySide6.QtWidgets import QApplication

from benches.measuring import Row, skipped
from keeper.desktop.look import Look
from keeper.desktop.scan import ScanFilter
from keeper.desktop.widgets.rack_front import RackFront


def rack_rows(rounds: int) -> Iterator[Row]:
    """The racks redrawn, laid down from the kept picture, and with one tub changed."""
    app = QApplication.instance() or QApplication([])
    listening = ScanFilter()  # the program looks at every event for a scanner's keys
    app.installEventFilter(listening)
    front, canvas = RackFront(Look()), QPixmap(bench_racks.SIZE)
    canvas.fill("white")
    front.resize(bench_racks.SIZE)
    front.show()
    app.processEvents()
    for name, (floor, own) in bench_racks.measured(
        front, bench_racks.room(), canvas, rounds
    ).items():
        yield Row(
            subject=f"racks, {name}",
            size=bench_racks.TOLD,
            measured=own / floor,
            most=bench_racks.MOST[name],
            floor="one picture of the same size",
            floor_ms=1000 * floor,
            ours_ms=1000 * own,
        )
    front.hide()
    front.deleteLater()
    app.removeEventFilter(listening)
    app.processEvents()


def life_rows(rounds: int) -> Iterator[Row]:
    """A life of ten years opened and painted once its data are at hand."""
    opened_ms = bench_life.opened_in(rounds)
    yield Row(
        subject="life strip of ten years opened",
        size="3,644 days",
        measured=opened_ms,
        most=bench_life.MOST_MS,
        unit="ms",
        ours_ms=opened_ms,
        note="processor time",
    )


def reading_rows() -> Iterator[Row]:
    """A million readings taken in, on disk, and a month of them ready to draw."""
    ratio, size_bytes, draw_ms = bench_readings.measured()
    size = f"{bench_readings.READINGS:,} readings"
    yield Row(
        subject="logger file taken in",
        size=size,
        measured=ratio,
        most=bench_readings.MOST_TIMES_LOADTXT,
        floor="numpy.loadtxt",
    )
    yield Row(
        subject="readings on disk, roll-up included",
        size=size,
        measured=size_bytes / 1e6,
        most=bench_readings.MOST_BYTES / 1e6,
        unit="MB",
    )
    yield Row(
        subject="30 days of one probe ready to draw",
        size=size,
        measured=draw_ms,
        most=bench_readings.MOST_DRAW_MS,
        unit="ms",
        ours_ms=draw_ms,
    )


def no_readings() -> Iterator[Row]:
    """Said where a million readings would take longer than all the rest."""
    most = bench_readings.MOST_TIMES_LOADTXT
    yield skipped("logger file taken in", "1,000,000 readings", "not with --quick", most=most)
