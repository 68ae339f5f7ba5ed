"""A process that writes and says what is on the disk; the tests of faults start and kill it.

worker.py BOOK STATION MOST  -> one batch key a line, each after its batch is written
worker.py BOOK STATION full  -> fills a disk of BYTES, says what it was told, goes on
"""

import resource
import sys
from datetime import UTC, datetime
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from keeper.husbandry.events import Offer, Remark, RemarkKind, Result, Weighing  # noqa: E402
from keeper.husbandry.when import at_instant  # noqa: E402
from keeper.store.database import Book, open_book  # noqa: E402
from keeper.store.errors import BookError  # noqa: E402
from keeper.store.journal import batch  # noqa: E402
from keeper.store.reading import board  # noqa: E402

WRITTEN = datetime(2026, 3, 1, 20, tzinfo=UTC)


def write_one(book: Book, animal: int, text: str = "x") -> int:
    """A batch of three entries in three tables, so that half of one would show."""
    when = at_instant(WRITTEN)
    with batch(book, verb="note", keeper="Ro", written=WRITTEN) as writer:
        writer.add(
            Weighing(animal=animal, happened=when, weight_g=41.2),
            Offer(animal=animal, happened=when, result=Result.TAKEN),
            Remark(animal=animal, happened=when, kind=RemarkKind.NOTE, text=text),
        )
    return writer.id


def say(line: str) -> None:
    sys.stdout.write(f"{line}\n")
    sys.stdout.flush()


def write_many(path: Path, station: str, most: int) -> None:
    book = open_book(path, station=station)
    animal = board(book)[0].animal
    for _ in range(most):
        say(str(write_at_last(book, animal)))


def write_at_last(book: Book, animal: int) -> int:
    """Again and again while the other process is quicker to the lock, as a keeper would."""
    while True:
        try:
            return write_one(book, animal)
        except BookError as error:
            if "locked" not in str(error):
                raise


def fill(path: Path, room_bytes: int) -> None:
    """Write until a file may grow no further, then with room again."""
    book = open_book(path, station="full")
    animal = board(book)[0].animal
    _, hard = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (path.stat().st_size + room_bytes, hard))
    for _ in range(100):
        try:
            say(str(write_one(book, animal, "x" * 3000)))
        except BookError as error:
            say(f"told: {error}")
    resource.setrlimit(resource.RLIMIT_FSIZE, (hard, hard))
    say(str(write_one(book, animal)))


if __name__ == "__main__":
    where, who, how = Path(sys.argv[1]), sys.argv[2], sys.argv[3]
    if how == "full":
        fill(where, 100_000)
    else:
        write_many(where, who, int(how))
