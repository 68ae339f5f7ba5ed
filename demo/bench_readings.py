"""A million readings of a logger: taken in against numpy.loadtxt, their disk, and their drawing.

Floor and candidate take turns in one run, and the median of the ratios counts; absolute times
move with the machine. Run in the prepared environment: `python demo/bench_readings.py`.
"""

import sys
import tempfile
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path
from statistics import median
from time import perf_counter

import numpy as np

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from keeper.actions.heat_band import month_of  # noqa: E402 - after the root is on the path
from keeper.actions.keeping import Keeping, new_keeping  # noqa: E402
from keeper.actions.logger_files import place_probe, preview, take_in  # noqa: E402
from keeper.husbandry.events import Zone  # noqa: E402

READINGS, PROBES, ROUNDS = 1_000_000, 10, 7
BEGIN = datetime(2025, 6, 1, tzinfo=UTC)
NOW = datetime(2026, 11, 25, tzinfo=UTC)
MOST_TIMES_LOADTXT, MOST_BYTES, MOST_DRAW_MS = 1.5, 3.5e6, 5.0
COLUMNS = [("probe", "S8"), ("at", "M8[s]"), ("temp_c", "f8")]


def main() -> int:
    """Print the three rows; the exit code is 1 if one misses its goal."""
    return _report(*measured())


def measured() -> tuple[float, int, float]:
    """Times numpy.loadtxt, bytes on disk, and milliseconds for a month of one probe."""
    with tempfile.TemporaryDirectory() as folder:
        file = _made_file(Path(folder) / "logger.csv")
        ratios, bytes_each = [], []
        for turn in range(ROUNDS):
            floor = _seconds(lambda: _loadtxt(file))
            book = Path(folder) / f"{turn}.book"
            keeping, empty = _made_book(book)
            own = _seconds(lambda kept=keeping: take_in(kept, preview(kept, file)))  # type: ignore[misc]
            ratios.append(own / floor)
            bytes_each.append(book.stat().st_size - empty)
            print(f"  loadtxt {floor:.2f} s, taken in {own:.2f} s", file=sys.stderr)
            if turn < ROUNDS - 1:
                keeping.close()
        draw_ms = 1000 * median(
            _seconds(lambda: month_of(keeping, "K3", NOW - timedelta(days=200))) for _ in range(50)
        )
        keeping.close()
    return median(ratios), max(bytes_each), draw_ms


def _report(ratio: float, size: int, draw_ms: float) -> int:
    print(f"1 million readings taken in / numpy.loadtxt   {ratio:.2f}   goal {MOST_TIMES_LOADTXT}")
    print(f"disk, roll-up included                        {size / 1e6:.2f} MB   goal 3.5 MB")
    print(f"30 days of one probe, ready to draw           {draw_ms:.2f} ms   goal 5 ms")
    missed = ratio > MOST_TIMES_LOADTXT or size > MOST_BYTES or draw_ms > MOST_DRAW_MS
    return int(missed)


def _made_file(path: Path) -> Path:
    """Ten probes read each five minutes, in the order of time."""
    each = READINGS // PROBES
    stamps = np.datetime64(BEGIN.replace(tzinfo=None)) + np.arange(each) * np.timedelta64(300, "s")
    celsius = 28 + 3 * np.sin(np.arange(each) / 288 * 2 * np.pi)
    with path.open("w", encoding="utf-8") as out:
        out.write("probe,time,temp C\n")
        for stamp, warmth in zip(stamps.astype(str), celsius, strict=True):
            out.writelines(f"K{n},{stamp[:19]},{warmth + n / 10:.2f}\n" for n in range(PROBES))
    return path


def _made_book(path: Path) -> tuple[Keeping, int]:
    keeping = new_keeping(path, station="bench", now=lambda: NOW)
    for n in range(PROBES):
        place_probe(keeping, f"K{n}", f"B{n + 1}", Zone.HOT, BEGIN)
    return keeping, path.stat().st_size


def _loadtxt(path: Path) -> object:
    return np.loadtxt(path, delimiter=",", skiprows=1, dtype=COLUMNS)


def _seconds(work: Callable[[], object]) -> float:
    begun = perf_counter()
    work()
    return perf_counter() - begun


if __name__ == "__main__":
    sys.exit(main())
