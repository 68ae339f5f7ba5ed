"""A process that does one thing to a book and says what is acknowledged; it is recorded.

deeds.py SCENE FOLDER   with one of the scenes below; the book is FOLDER/shed.book
"""

import sys
from collections.abc import Callable
from datetime import UTC, date, datetime
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from keeper.husbandry.events import (  # noqa: E402
    Described,
    Offer,
    Remark,
    RemarkKind,
    Result,
    Weighing,
)
from keeper.husbandry.when import at_instant, on_day  # noqa: E402
from keeper.store.backups import back_up, latest_good, restore  # noqa: E402
from keeper.store.database import Book, open_book  # noqa: E402
from keeper.store.journal import EntryKey, batch, withdraw_batch  # noqa: E402
from keeper.store.reading import board  # noqa: E402

BOOK = "shed.book"
BATCHES = 90
WRITTEN = datetime(2026, 3, 1, 20, tzinfo=UTC)
_LONG = "stood in the doorway with the tongs " * 12


def a_book(book: Book, animals: int = 6) -> None:
    """Some animals, so that there is a state to refresh."""
    with batch(book, verb="take in", keeper="Ro", written=WRITTEN) as writer:
        for number in range(animals):
            writer.add(
                Described(
                    animal=writer.new_animal(),
                    happened=on_day(date(2026, 3, 1)),
                    code=f"A-{number}",
                    species="house_snake",
                )
            )


def entries(folder: Path) -> None:
    """Batches, takings back and corrections, and a backup now and then."""
    book = open_book(folder / BOOK, station="shed")
    _write(book)
    book.close()


def _write(book: Book) -> None:
    animals = [row.animal for row in board(book)]
    for number in range(BATCHES):
        key = _batch(book, animals[number % len(animals)], number)
        say(f"batch {key}")
        if number % 7 == 3:
            say(f"batch {_take_back(book, key)}")
        if number % 30 == 29:
            say(f"backup {back_up(book, 'by hand').path.name}")


def _batch(book: Book, animal: int, number: int) -> int:
    when = at_instant(WRITTEN)
    text = _LONG if number % 11 == 5 else "x"
    with batch(book, verb="note", keeper="Ro", written=WRITTEN) as writer:
        if number % 9 == 8:
            writer.withdraw(EntryKey(_last(book), 0))
        writer.add(
            Weighing(animal=animal, happened=when, weight_g=41.2 + number),
            Offer(animal=animal, happened=when, result=Result.TAKEN),
            Remark(animal=animal, happened=when, kind=RemarkKind.NOTE, text=text),
        )
    return writer.id


def _last(book: Book) -> int:
    """The newest batch of which everything stands."""
    standing = "SELECT max(batch) FROM weighing WHERE batch NOT IN (SELECT batch FROM withdrawn)"
    return int(book.connection.execute(standing).fetchone()[0])


def _take_back(book: Book, key: int) -> int:
    return withdraw_batch(book, key, verb="take back", keeper="Ro", written=WRITTEN)


def without_sync(folder: Path) -> None:
    """A control that must fail: the disk is never asked to keep anything."""
    book = open_book(folder / BOOK, station="shed")
    book.connection.execute("PRAGMA synchronous = OFF")
    _write(book)


def journal_deleted(folder: Path) -> None:
    """A control that must fail: what sqlite does unless told otherwise forgets what it said."""
    book = open_book(folder / BOOK, station="shed")
    book.connection.execute("PRAGMA journal_mode = DELETE")
    book.connection.execute("PRAGMA synchronous = FULL")
    _write(book)


def said_too_soon(folder: Path) -> None:
    """A control that must fail: a batch is acknowledged before it is written."""
    book = open_book(folder / BOOK, station="shed")
    animal = board(book)[0].animal
    for _ in range(BATCHES):
        with batch(book, verb="note", keeper="Ro", written=WRITTEN) as writer:
            writer.add(Weighing(animal=animal, happened=at_instant(WRITTEN), weight_g=41.2))
            say(f"batch {writer.id}")


def bring_up(folder: Path) -> None:
    """Open a book of an older version."""
    open_book(folder / BOOK, station="shed").close()
    say("brought up")


def go_back(folder: Path) -> None:
    """Restore the newest backup over the book."""
    backup = latest_good(folder / BOOK)
    assert backup is not None
    restore(backup, folder / BOOK)
    say("restored")


SCENES: dict[str, Callable[[Path], None]] = {
    "entries": entries,
    "without sync": without_sync,
    "journal deleted": journal_deleted,
    "said too soon": said_too_soon,
    "bring up": bring_up,
    "go back": go_back,
}


def say(line: str) -> None:
    sys.stdout.write(f"{line}\n")
    sys.stdout.flush()


if __name__ == "__main__":
    SCENES[sys.argv[1]](Path(sys.argv[2]))
