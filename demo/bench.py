"""What the program costs, as ratios to a floor measured in the same run.

    python demo/bench.py [--quick | --all | --sizes 80x3 ...] [--only SUBJECT ...]
                         [--json FILE] [--markdown [PAGE]]

Floor and program take turns, round by round; a figure is the median of the rounds, and a ratio
the median of the rounds' ratios. What only reckons is told in the processor's own time, so that
a busy machine does not make it slow; what waits for a disk or paints is told by the clock. The
table says what was measured, the goal, and what misses it; the exit code is 1 when something
does. The invented books are made once and kept in demo/out/books: with --all, the largest takes
long to make.

Goals that the program set itself: whole board, plan, batch, diary and profiles as ratios. They
guard against a fall, and lie about twice above what was measured when they were set.

--quick          small books and few rounds, to see that it runs
--all            also 10,000 animals and 10 years, the same as --sizes 80x3 2000x5 10000x10
--sizes          these sizes instead: animals x years
--markdown       write the table into DEVELOPERS.md too, between its two bench lines
--polars-python  a Python that has polars, if this one has not
--soffice        LibreOffice's soffice, if it is not on the path
"""

import argparse
import os
import shutil
import sys
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path[:0] = [str(ROOT), str(ROOT / "demo")]
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from benches import table  # noqa: E402 - found by the line above
from benches.books import Size  # noqa: E402
from benches.measuring import Row  # noqa: E402

SIZES = (Size(80, 3), Size(2_000, 5), Size(10_000, 10))


@dataclass(frozen=True, slots=True, kw_only=True)
class Scale:
    """How large and how often. sizes: the books, smallest first."""

    sizes: tuple[Size, ...]
    rounds: int
    keys: int
    history_animals: int
    take_in: tuple[int, int]
    fits: int
    polars_python: str
    soffice: str | None
    readings: bool


def main(arguments: Sequence[str] | None = None) -> int:
    """Measure, print the table, and say by the exit code whether every goal was met."""
    given = _parser().parse_args(arguments)
    scale = _scale(given)
    print(table.machine(), table.heading(), sep="\n", flush=True)
    made: list[Row] = []
    for subject in given.only or _MEASURES:
        for row in measured(subject, scale):
            made.append(row)
            print(table.told(row), flush=True)
    print(f"{table.summary(made)}. {table.machine()} at the end.")
    if given.json:
        table.write_json(given.json, made)
    if given.markdown:
        table.write_block(given.markdown, made, _command(given))
    return int(any(row.misses for row in made))


def _command(given: argparse.Namespace) -> str:
    """What to type to have the same table again; where a rival lies is this machine's matter."""
    said = ["--quick"] * given.quick + ["--all"] * given.all
    said += ["--sizes", *(f"{s.animals}x{s.years}" for s in given.sizes)] if given.sizes else []
    said += ["--only", *given.only] if given.only else []
    return " ".join(["python demo/bench.py", *said, "--markdown"])


def measured(subject: str, scale: Scale) -> Iterator[Row]:
    """The lines of one subject. Modules are loaded when asked for: some bring numpy or Qt."""
    yield from _MEASURES[subject](scale)


def _start(scale: Scale) -> Iterator[Row]:
    from benches import start_up

    for size in scale.sizes:
        yield from start_up.rows(size, scale.rounds)


def _board(scale: Scale) -> Iterator[Row]:
    from benches import board

    for size in scale.sizes:
        yield from board.rows(size, scale.rounds)
        yield from board.open_rows(size, scale.rounds)


def _history(scale: Scale) -> Iterator[Row]:
    from benches import board

    yield from board.history_rows(scale.history_animals, scale.rounds)


def _rebuild(scale: Scale) -> Iterator[Row]:
    from benches import rebuild

    for size in scale.sizes:
        yield from rebuild.rows(size, min(5, scale.rounds))


def _entry(scale: Scale) -> Iterator[Row]:
    from benches import entries

    for size in scale.sizes:
        yield from entries.rows(size, scale.rounds)


def _keys(scale: Scale) -> Iterator[Row]:
    from benches import keys

    for size in scale.sizes:
        yield from keys.rows(size, min(scale.keys, size.animals // 8))


def _take_in(scale: Scale) -> Iterator[Row]:
    from benches import take_in

    yield from take_in.rows(*scale.take_in, min(5, scale.rounds))


def _repaint(scale: Scale) -> Iterator[Row]:
    from benches import repaint

    for size in scale.sizes:
        yield from repaint.rows(size, scale.rounds)


def _fits(scale: Scale) -> Iterator[Row]:
    from benches import growth

    yield from growth.fit_rows(scale.fits, scale.rounds)


def _forecast(scale: Scale) -> Iterator[Row]:
    from benches import growth

    for size in scale.sizes:
        yield from growth.forecast_rows(size, scale.rounds)


def _profiles(scale: Scale) -> Iterator[Row]:
    from benches import profiles

    yield from profiles.rows(scale.rounds)


def _rivals(scale: Scale) -> Iterator[Row]:
    from benches import rivals

    size = scale.sizes[min(1, len(scale.sizes) - 1)]
    yield from rivals.rows(size, scale.rounds, scale.polars_python, scale.soffice)


def _racks(scale: Scale) -> Iterator[Row]:
    from benches import further

    yield from further.rack_rows(10 * scale.rounds)


def _life(scale: Scale) -> Iterator[Row]:
    from benches import further

    yield from further.life_rows(scale.rounds)


def _readings(scale: Scale) -> Iterator[Row]:
    from benches import further

    yield from further.reading_rows() if scale.readings else further.no_readings()


_MEASURES: dict[str, Callable[[Scale], Iterator[Row]]] = {
    "racks": _racks,  # before other rows leave windows behind, which hear of every event too
    "fits": _fits,
    "start": _start,
    "board": _board,
    "history": _history,
    "rebuild": _rebuild,
    "entry": _entry,
    "keys": _keys,
    "take-in": _take_in,
    "repaint": _repaint,
    "forecast": _forecast,
    "profiles": _profiles,
    "life": _life,
    "readings": _readings,
    "rivals": _rivals,
}


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(description="What the program costs, beside a floor.")
    parser.add_argument("--quick", action="store_true", help="small books, few rounds")
    parser.add_argument("--all", action="store_true", help="also 10,000 animals")
    parser.add_argument("--sizes", nargs="+", type=_size, metavar="80x3", help="these instead")
    parser.add_argument("--only", nargs="+", choices=list(_MEASURES), help="these subjects alone")
    parser.add_argument("--json", type=Path, metavar="FILE", help="write the figures there too")
    parser.add_argument(
        "--markdown", nargs="?", type=Path, const=ROOT / "DEVELOPERS.md", metavar="PAGE"
    )
    parser.add_argument("--polars-python", default=sys.executable, metavar="PYTHON")
    parser.add_argument("--soffice", default=shutil.which("soffice"), metavar="PROGRAM")
    return parser


def _size(written: str) -> Size:
    animals, _, years = written.partition("x")
    return Size(int(animals), int(years))


def _scale(given: argparse.Namespace) -> Scale:
    quick = bool(given.quick)
    usual = SIZES[:1] if quick else SIZES if given.all else SIZES[:2]
    return Scale(
        sizes=tuple(sorted(given.sizes or usual)),
        rounds=5 if quick else 15,
        keys=10 if quick else 150,
        history_animals=40 if quick else 2_000,
        take_in=(100, 20) if quick else (1_000, 50),
        fits=500 if quick else 10_000,
        polars_python=given.polars_python,
        soffice=given.soffice,
        readings=not quick,
    )


if __name__ == "__main__":
    sys.exit(main())
