"""A process that takes a file of readings in and back, again and again, until it is killed."""

import sys
from datetime import UTC, datetime
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from keeper.husbandry.house import ReadingsTaken  # noqa: E402
from keeper.husbandry.when import at_instant  # noqa: E402
from keeper.store.database import Book, open_book  # noqa: E402
from keeper.store.journal import batch, withdraw_batch  # noqa: E402
from keeper.store.packing import packed, rolled_up  # noqa: E402
from keeper.store.readings import PackedDay, merge_days  # noqa: E402

TAKEN = datetime(2026, 3, 1, 12, tzinfo=UTC)


def took_in(book: Book, days: list[PackedDay]) -> int:
    told = {"name": "x.csv", "sha256": "ab", "read_as": "C", "readings": 2, "aside": 0}
    with batch(book, verb="take in readings", keeper="Ro", written=TAKEN) as writer:
        writer.add(ReadingsTaken(happened=at_instant(TAKEN), **told))
        merge_days(writer, days)
    return writer.id


def main() -> None:
    book = open_book(Path(sys.argv[1]), station="worker")
    slots = packed({n: 2000 + n for n in range(288)})
    hours = rolled_up(slots)
    days = [PackedDay(probe="K1", day=20_000 + n, slots=slots, hours=hours) for n in range(60)]
    for (key,) in book.connection.execute(
        """SELECT batch FROM readings_taken e WHERE NOT EXISTS
           (SELECT 1 FROM withdrawn w WHERE w.batch = e.batch)"""
    ).fetchall():
        withdraw_batch(book, key, verb="take back", keeper="Ro", written=TAKEN)
    while True:
        key = took_in(book, days)
        sys.stdout.write("in\n")
        sys.stdout.flush()
        withdraw_batch(book, key, verb="take back", keeper="Ro", written=TAKEN)
        sys.stdout.write("back\n")
        sys.stdout.flush()


if __name__ == "__main__":
    main()
