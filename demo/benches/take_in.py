"""Many entries in one batch, and a diary of dates taken in from a file."""

import csv
import sqlite3
from collections.abc import Callable, Iterator, Sequence
from contextlib import closing, contextmanager
from datetime import date, timedelta
from pathlib import Path
from tempfile import TemporaryDirectory

from benches.books import FOLDER, STATION, evening_clock
from benches.measuring import Row, in_turns, ratio_row, timed
from keeper.actions.keeping import Keeping, new_keeping
from keeper.actions.taking_in import take_in
from keeper.husbandry.events import Described, Evidence, Offer, Result
from keeper.husbandry.when import on_day
from keeper.store.journal import batch
from keeper.store.rows import insert_sql, to_row

BATCH_MOST, DIARY_MOST = 4.0, 35.0
FIRST_DAY = date(2025, 6, 1)


def rows(animals: int, each: int, rounds: int) -> list[Row]:
    """*animals* with *each* feeds: as events in one batch, and as a diary file."""
    size = f"{animals * each:,} entries"
    FOLDER.mkdir(parents=True, exist_ok=True)
    with TemporaryDirectory(dir=FOLDER) as name:
        folder = Path(name)
        batches = in_turns(rounds, _batches(folder, animals, each))
        diaries = in_turns(rounds, _diaries(folder, animals, each))
    return [
        ratio_row(
            "events written in one batch, state and indexes with them",
            size,
            batches,
            most=BATCH_MOST,
            floor="executemany of ready rows into the same table",
        ),
        ratio_row(
            "diary file taken in, looked through and backed up",
            size,
            diaries,
            most=DIARY_MOST,
            floor="csv.reader and executemany",
        ),
    ]


def _batches(folder: Path, animals: int, each: int) -> dict[str, Callable[[], object]]:
    return {
        "floor": lambda: _on_a_peopled_book(folder, animals, each, _raw_rows),
        "program": lambda: _on_a_peopled_book(folder, animals, each, _one_batch),
    }


def _diaries(folder: Path, animals: int, each: int) -> dict[str, Callable[[], object]]:
    listed, diary = folder / "animals.csv", folder / "diary.csv"
    _write_csv(
        listed,
        "animal,species,sex,hatched,place",
        [(f"h{n}", "house snake", "female", FIRST_DAY, f"A-{n}") for n in range(animals)],
    )
    told = [(f"h{n // each}", _day(n % each), "fed", 5, "") for n in range(animals * each)]
    _write_csv(diary, "animal,date,what,grams,note", told)
    return {
        "floor": lambda: _raw_diary(folder, diary),
        "program": lambda: _taken(folder, listed, diary),
    }


def _day(number: int) -> date:
    return FIRST_DAY + timedelta(days=number)


def _feed(animal: int, number: int) -> Offer:
    return Offer(
        animal=animal,
        happened=on_day(_day(number)),
        result=Result.TAKEN,
        evidence=Evidence.REPORTED,
        mass_g=5.0,
    )


def _write_csv(path: Path, head: str, lines: Sequence[Sequence[object]]) -> None:
    with path.open("w", newline="", encoding="utf-8") as file:
        csv.writer(file).writerows([head.split(","), *lines])


@contextmanager
def _new_book(folder: Path) -> Iterator[Keeping]:
    """An empty book; with its backups gone afterwards."""
    with TemporaryDirectory(dir=folder) as name:
        path = Path(name) / "fresh.book"
        with closing(new_keeping(path, station=STATION, now=evening_clock())) as keeping:
            yield keeping


def _on_a_peopled_book(
    folder: Path, animals: int, each: int, write: Callable[[Keeping, Sequence[Offer]], float]
) -> float:
    """Seconds that *write* takes for the feeds of a book with that many animals."""
    with _new_book(folder) as keeping:
        at = keeping.now()
        with batch(keeping.book, verb="bench", keeper="", written=at) as writer:
            keys = [writer.new_animal() for _ in range(animals)]
            born = on_day(FIRST_DAY)
            writer.add(
                *(Described(animal=key, happened=born, code=f"h{key}", species="x") for key in keys)
            )
        return write(keeping, [_feed(key, n) for key in keys for n in range(each)])


def _one_batch(keeping: Keeping, events: Sequence[Offer]) -> float:
    def write() -> None:
        with batch(keeping.book, verb="bench", keeper="", written=keeping.now()) as writer:
            writer.add(*events)

    return timed(write)


def _raw_rows(keeping: Keeping, events: Sequence[Offer]) -> float:
    connection = keeping.book.connection
    connection.execute("PRAGMA foreign_keys = OFF")
    ready = [to_row(event, 1, seq) for seq, event in enumerate(events)]

    def write() -> None:
        connection.execute("BEGIN IMMEDIATE")
        connection.executemany(insert_sql(Offer), ready)
        connection.execute("COMMIT")

    return timed(write)


def _taken(folder: Path, listed: Path, diary: Path) -> float:
    with _new_book(folder) as keeping:

        def take() -> None:
            found = take_in(keeping, animals=listed, diary=diary)
            if found.faults:
                raise ValueError(found.faults[0].message)

        return timed(take)


def _raw_diary(folder: Path, diary: Path) -> float:
    """A naive program's way: every cell as it was written, no day checked, no animal known."""
    insert = "INSERT INTO diary VALUES (?, ?, ?, ?, ?)"
    with (
        TemporaryDirectory(dir=folder) as name,
        closing(sqlite3.connect(Path(name) / "naive.db")) as connection,
    ):
        connection.execute("CREATE TABLE diary (animal, date, what, grams, note)")

        def take() -> None:
            with connection, diary.open(newline="", encoding="utf-8") as file:
                connection.executemany(insert, csv.reader(file))

        return timed(take)
