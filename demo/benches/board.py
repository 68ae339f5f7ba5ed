"""The board and the plan for tonight, and that neither grows with the years behind them."""

from contextlib import ExitStack
from dataclasses import replace
from functools import partial
from pathlib import Path
from statistics import median

from benches.books import NIGHT, Size, book_of, copied, opened, shorten
from benches.measuring import Row, Timed, in_turns, ratio_row, time_row
from keeper.actions.due_board import due_rows
from keeper.actions.keeping import Keeping
from keeper.husbandry.now import AnimalNow
from keeper.store import reading
from keeper.store.database import open_book
from keeper.store.rows import columns_of

PLAN_MS_AT_MOST = {10_000: 500.0}
BOARD_MOST, PLAN_MOST, YEARS_MOST = 15.0, 120.0, 1.2
HISTORY = (1, 3, 10)
OPEN_MS, READ_MS = 10.0, 6.0
LEAST_OF = 3
_COLUMNS = [column.name for column in columns_of(AnimalNow, skip=())]
INSIDE = f"SELECT {', '.join(f'max({name})' for name in _COLUMNS)} FROM animal_now"
"""Every cell of the state read without leaving SQLite: the floor of a board."""


def rows(size: Size, rounds: int) -> list[Row]:
    """Board and plan as ratios to the same read inside SQLite; the plan in seconds too."""
    with opened(book_of(size)) as keeping:
        took = in_turns(
            rounds,
            {
                "floor": lambda: inside(keeping),
                "board": lambda: reading.board(keeping.book),
                "plan": lambda: plan_anew(keeping),
            },
            least_of=LEAST_OF,
            reckoning=True,
        )
    floor = "the state read inside SQLite"
    made = [
        ratio_row(
            "whole board, as objects", str(size), took, most=BOARD_MOST, floor=floor, ours="board"
        ),
        ratio_row("plan for tonight", str(size), took, most=PLAN_MOST, floor=floor, ours="plan"),
    ]
    if size.animals in PLAN_MS_AT_MOST:
        most_ms = PLAN_MS_AT_MOST[size.animals]
        told = time_row("plan for tonight", str(size), took["plan"], most_ms=most_ms)
        made.append(replace(told, note="processor time"))
    return made


def open_rows(size: Size, rounds: int) -> list[Row]:
    """The book opened as it was closed, which must not grow with it, and read through first."""
    path = book_of(size)
    megabytes = path.stat().st_size / 1e6
    took = in_turns(
        min(rounds, 5),
        {"known": lambda: _opened(path, known=True), "read": lambda: _opened(path, known=False)},
        reckoning=True,
    )
    known = time_row("book opened, closed whole", str(size), took["known"], most_ms=OPEN_MS)
    each = [seconds / megabytes for seconds in took["read"]]
    read = time_row("book opened, read through, a megabyte", str(size), each, most_ms=READ_MS)
    note = f"{megabytes:,.0f} MB in {1000 * median(took['read']):,.0f} ms of processor time"
    return [known, replace(read, note=note)]


def _opened(path: Path, *, known: bool) -> None:
    open_book(path, station="bench", read_only=True, known_whole=known).close()


def plan_anew(keeping: Keeping) -> object:
    """Tonight's plan with nothing kept from the last time it was asked for."""
    keeping.forget_kept()
    return due_rows(keeping, NIGHT)


def inside(keeping: Keeping) -> object:
    """One row of the largest cells: everything is read, next to nothing handed out."""
    return keeping.book.connection.execute(INSIDE).fetchall()


def history_rows(animals: int, rounds: int) -> list[Row]:
    """The same animals with 1, 3 and 10 years behind them: dearest by cheapest of the three."""
    longest = Size(animals, max(HISTORY))
    whole = book_of(longest)
    with ExitStack() as stack:
        books = {years: stack.enter_context(opened(_cut(stack, whole, years))) for years in HISTORY}
        asked = (
            {str(years): partial(reading.board, k.book) for years, k in books.items()},
            {str(years): partial(plan_anew, k) for years, k in books.items()},
        )
        took = [
            in_turns(rounds, candidates, least_of=LEAST_OF, reckoning=True) for candidates in asked
        ]
    size = f"{animals:,} × {'/'.join(map(str, HISTORY))}"
    return [_spread(what, size, seen) for what, seen in zip(("board", "plan"), took, strict=True)]


def _cut(stack: ExitStack, whole: Path, years: int) -> Path:
    copy = stack.enter_context(copied(whole))
    shorten(copy, years)
    return copy


def _spread(what: str, size: str, took: Timed) -> Row:
    """How much the medians of one run lie apart."""
    middles = {years: 1000 * median(seconds) for years, seconds in took.items()}
    least, most = min(middles.values()), max(middles.values())
    return Row(
        subject=f"{what} after 1, 3 and 10 years, dearest by cheapest",
        size=size,
        measured=most / least,
        most=YEARS_MOST,
        floor="the cheapest of the three",
        floor_ms=least,
        ours_ms=most,
        note=", ".join(f"{years} y {ms:.1f} ms" for years, ms in middles.items()),
    )
