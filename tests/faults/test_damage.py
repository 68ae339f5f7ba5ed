"""Bytes of a book go bad: never a crash, what changed is told, and a mended copy is sound."""

import random
import re
import sqlite3
from collections import Counter
from contextlib import closing
from pathlib import Path

import pytest

from keeper.actions.ways_back import way_back
from keeper.store.backups import back_up
from keeper.store.checking import Concern, check
from keeper.store.database import Book, create_book, open_book
from keeper.store.errors import BookError, DamagedBook
from keeper.store.mending import mend
from tests.faults.deeds import a_book
from tests.faults.figures import keep
from tests.store.books import a_weight, an_offer, write

Counts = Counter[str]


@pytest.fixture
def book(room: Path) -> Path:
    """A closed book of some fifty pages, all of it in a backup."""
    room.mkdir()
    made = create_book(room / "shed.book", station="shed")
    a_book(made)
    animals = [key for (key,) in made.connection.execute("SELECT animal FROM animal_now")]
    for n in range(60):
        write(made, a_weight(animals[n % 6], 40 + n), an_offer(animals[n % 6]))
    back_up(made, "close")
    made.close()
    return made.path


def rows(connection: sqlite3.Connection) -> dict[str, set[tuple[object, ...]]]:
    names = connection.execute("SELECT name FROM sqlite_master WHERE type = 'table'").fetchall()
    return {name: set(connection.execute(f"SELECT * FROM {name}")) for (name,) in names}


def seen(path: Path, right: dict[str, set[tuple[object, ...]]]) -> str:
    """How the damage of *path* is met: refused, found, harmless, or neither seen nor harmless."""
    try:
        book = open_book(path, station="look")
    except DamagedBook:
        return "refused"
    except BookError:
        return "refused otherwise"
    with closing(book.connection):
        if check(book):
            return "found"
        return "harmless" if rows(book.connection) == right else "unseen"


def flipped(whole: bytes, draw: random.Random) -> bytes:
    content = bytearray(whole)
    for _ in range(draw.choice((1, 1, 4, 64))):
        content[draw.randrange(len(content))] ^= 1 << draw.randrange(8)
    return bytes(content)


def flips(book: Path, count: int, *, mended_every: int) -> Counts:
    draw, whole = random.Random(7), book.read_bytes()
    with closing(open_book(book, station="look").connection) as connection:
        right = rows(connection)
    counts: Counts = Counter()
    for number in range(count):
        book.write_bytes(flipped(whole, draw))
        kind = seen(book, right)
        counts[kind] += 1
        if kind == "refused":
            counts["offered a backup"] += way_back(book) is not None
        if number % mended_every == 0:
            counts["mended"] += 1
            counts["mended and sound"] += is_mended(book)
    return counts


def is_mended(book: Path) -> bool:
    mended = mend(book)
    mended.path.unlink()
    return mended.findings == ()


def test_flipped_bits_are_seen_or_harmless_and_a_backup_is_offered(book: Path) -> None:
    counts = flips(book, 40, mended_every=10)

    assert counts["unseen"] == counts["refused otherwise"] == 0
    assert counts["refused"] + counts["found"] > 5
    assert counts["offered a backup"] == counts["refused"]
    assert counts["mended and sound"] == counts["mended"]


def without_backups(book: Path) -> Path:
    for file in book.with_name("shed.book.backups").iterdir():
        file.unlink()
    return book


def test_a_flipped_letter_is_seen_without_a_backup(book: Path) -> None:
    without_backups(book)
    whole = bytearray(book.read_bytes())
    whole[whole.index(b"note")] ^= 1
    book.write_bytes(whole)

    with closing(open_book(book, station="look").connection) as connection:
        (finding,) = check(Book(book, connection, "look", writable=False))

    assert finding.concern is Concern.CHECKSUMS
    assert re.fullmatch(
        r"Batch \d+ \(.ote, 2026-03-01\) is not as it was written: .*", finding.sentence
    )


def test_a_letter_of_the_schema_that_went_bad_is_damage_and_a_backup_is_offered(book: Path) -> None:
    whole = bytearray(book.read_bytes())
    whole[whole.index(b"length(") + 3] ^= 4  # it calls a function that nobody has
    book.write_bytes(whole)

    with pytest.raises(DamagedBook, match="cannot be read as a book"):
        open_book(book, station="look")
    assert way_back(book) is not None


def test_flipped_bits_are_seen_or_harmless_without_a_backup_too(book: Path) -> None:
    counts = flips(without_backups(book), 60, mended_every=100)

    assert counts["unseen"] == counts["refused otherwise"] == 0
    assert counts["refused"] + counts["found"] > 5


def lengths(book: Path, count: int) -> Counts:
    draw, whole = random.Random(8), book.read_bytes()
    counts: Counts = Counter()
    for _ in range(count):
        book.write_bytes(whole[: draw.randrange(len(whole))])
        counts[seen(book, {})] += 1
        counts["offered a backup"] += way_back(book) is not None
    return counts


@pytest.mark.long
def test_a_thousand_books_with_flipped_bits(book: Path) -> None:
    whole = book.read_bytes()
    counts = flips(book, 1000, mended_every=10)
    book.write_bytes(whole)
    cut = lengths(book, 100)
    book.write_bytes(whole)
    alone = flips(without_backups(book), 1000, mended_every=1001)

    keep("F7", flips=dict(counts), cut=dict(cut), alone=dict(alone))
    assert alone["unseen"] == alone["refused otherwise"] == 0
    assert counts["unseen"] == counts["refused otherwise"] == 0
    assert counts["offered a backup"] == counts["refused"]
    assert counts["mended and sound"] == counts["mended"]
    assert cut["refused"] == cut["offered a backup"] == 100
