"""A mended copy holds what can be read of the book and of its backup; the book stays as it is."""

import random
import sqlite3
from contextlib import closing

import pytest

from keeper.store.backups import back_up, put_in_place
from keeper.store.checking import Concern, check
from keeper.store.database import open_book
from keeper.store.durable import sha256_of
from keeper.store.errors import BookError, NotABook
from keeper.store.journal import withdraw_batch
from keeper.store.mending import FOUND_AGAIN, mend
from keeper.store.schema import CACHES
from tests.store.books import WRITTEN, a_weight, an_animal, an_offer, write
from tests.store.test_checking import SPOILT, by_hand, unguarded


@pytest.fixture
def lived(book):
    """A book of many pages, all of it backed up but the last three batches; closed."""
    animals = [an_animal(book, f"A-{n}") for n in range(20)]
    for n in range(40):
        a = animals[n % 20]
        key = write(book, a_weight(a, 40 + n), an_offer(a))
        if n % 9 == 4:
            withdraw_batch(book, key, verb="take back", keeper="Ro", written=WRITTEN)
        if n == 36:
            back_up(book, "close")
    book.close()
    return book.path


def said_in(path):
    with closing(open_book(path, station="look", read_only=True).connection) as connection:
        names = connection.execute("SELECT name FROM sqlite_master WHERE type = 'table'").fetchall()
        return {name: set(connection.execute(f"SELECT * FROM {name}")) for (name,) in names}


def findings_of(path):
    with closing(open_book(path, station="look", read_only=True).connection) as connection:
        book = type("Book", (), {"connection": connection, "path": path})
        return [f for f in check(book) if f.concern is not Concern.BACKUPS]


def flip(path, *places):
    content = bytearray(path.read_bytes())
    for at in places:
        content[at] ^= 0x55
    path.write_bytes(content)


def test_a_sound_book_mends_to_the_same_book(lived):
    before = sha256_of(lived)

    mended = mend(lived)

    assert (mended.left_out, mended.findings, mended.brought) == ((), (), mended.brought)
    assert said_in(mended.path) == said_in(lived)
    assert sha256_of(lived) == before


@pytest.mark.parametrize(("concern", "statements", "told"), SPOILT)
def test_whatever_a_check_finds_is_gone_from_the_mended_copy(book, concern, statements, told):
    animal = an_animal(book)
    key = write(book, a_weight(animal, 412), an_offer(animal))
    withdraw_batch(book, key, verb="take back", keeper="Ro", written=WRITTEN)
    write(book, a_weight(animal), an_offer(animal))
    by_hand(book, *statements)
    book.close()

    mended = mend(book.path)

    assert mended.findings == ()
    assert findings_of(mended.path) == []


def test_entries_whose_batch_is_lost_are_kept_under_a_line_that_says_so(book, animal):
    key = write(book, a_weight(animal, 55))
    by_hand(book, *unguarded("batch", f"DELETE FROM batch WHERE id = {key}"))
    book.close()

    mended = mend(book.path)

    said = said_in(mended.path)
    assert [row[0] for row in said["batch"] if row[3] == FOUND_AGAIN] == [key]
    assert len(said["weighing"]) == 1
    assert (
        abs(next(row[4] for row in said["batch"] if row[0] == key) / 1000 - WRITTEN.timestamp()) < 1
    )


def test_an_entry_that_says_nothing_possible_is_left_out_and_told(book, animal):
    write(book, a_weight(animal))
    by_hand(book, *unguarded("weighing", "UPDATE weighing SET weight_mg = -1"))
    book.close()

    mended = mend(book.path)

    assert len(mended.left_out) == 2
    assert mended.left_out[0].startswith("1 row of weighing left out")
    assert mended.left_out[1].startswith("1 batch is not as it was written")


def test_what_the_backup_says_wins_over_a_flipped_letter(lived):
    at = lived.read_bytes().index(b"house_snake")
    flip(lived, at)

    mended = mend(lived)

    assert b"house_snake" in mended.path.read_bytes()
    assert any("the backup, which was proved" in told for told in mended.left_out)
    assert {row[9] for row in said_in(mended.path)["described"]} == {"house_snake"}


def test_a_wrecked_page_costs_nothing_that_the_backup_holds(lived):
    right = said_in(lived)
    pages = lived.stat().st_size // 4096
    lost = []
    for page in range(2, pages, 7):
        wrecked = lived.with_name(f"wrecked-{page}.book")
        content = bytearray(lived.read_bytes())
        content[page * 4096 : page * 4096 + 200] = bytes(200)
        wrecked.write_bytes(content)
        wrecked.with_name(f"{wrecked.name}.backups").symlink_to(f"{lived.name}.backups")

        mended = mend(wrecked)

        assert mended.findings == ()
        there = said_in(mended.path)
        stands = sum(len(right[name] - there[name]) for name in right if name not in CACHES)
        lost.append(stands)
    assert max(lost) <= 20, lost
    assert min(lost) == 0


def test_a_book_whose_head_is_gone_comes_back_from_its_backup(lived):
    lived.write_bytes(bytes(4096) + lived.read_bytes()[4096:])

    mended = mend(lived)

    assert (mended.kept, mended.findings) == (0, ())
    assert mended.brought > 100
    assert mended.backup is not None


def test_what_no_backup_and_no_page_tells_cannot_be_mended(folder):
    path = folder / "wet.book"
    path.write_bytes(b"damaged by a wet evening" * 400)

    with pytest.raises(BookError, match="cannot be read at all, and no good backup"):
        mend(path)

    assert sorted(folder.iterdir()) == [path]


def test_a_newer_backup_brings_back_nothing_that_the_keeper_went_back_from(book, animal):
    back_up(book, "first")
    gone = write(book, a_weight(animal, 99))
    newer = back_up(book, "second")
    book.close()
    first = newer.path.with_name("000001-first.book")
    put_in_place(first, book.path)

    mended = mend(book.path)

    assert gone not in {row[0] for row in said_in(mended.path)["batch"]}


def test_bytes_flipped_anywhere_are_mended_or_told_and_never_crash(lived):
    draw = random.Random(22)
    whole = lived.read_bytes()
    for _ in range(12):
        lived.write_bytes(whole)
        flip(lived, *(draw.randrange(len(whole)) for _ in range(draw.choice((1, 8, 200)))))

        mended = mend(lived)

        assert mended.findings == ()
        mended.path.unlink()


def test_the_mended_copy_takes_the_place_and_the_old_book_is_kept(lived):
    flip(lived, 3 * 4096 + 3)
    damaged = lived.read_bytes()
    mended = mend(lived)

    aside = put_in_place(mended.path, lived)

    assert aside is not None
    assert aside.read_bytes() == damaged
    assert said_in(lived) == said_in(mended.path)


def test_a_copy_is_for_its_owner_alone_and_nothing_else_is_left(lived):
    mended = mend(lived)

    assert mended.path.name == "shed.book.mended-1"
    assert mended.path.stat().st_mode & 0o777 == 0o600
    assert not [f for f in lived.parent.iterdir() if f.name.startswith(".")]
    assert mend(lived).path.name == "shed.book.mended-2"


def test_a_book_that_is_held_by_another_program_is_told(lived):
    with closing(sqlite3.connect(lived)) as other:
        other.execute("BEGIN EXCLUSIVE")
        with pytest.raises(BookError, match="cannot be copied just now"):
            mend(lived)


def test_a_damaged_book_is_still_refused_when_it_is_opened(lived):
    flip(lived, *range(4096, 4200))

    with pytest.raises(NotABook):
        open_book(lived, station="shed")
