"""What is no book, or not this program's to touch, is refused with every byte as it was."""

import random
import sqlite3
import stat
from contextlib import closing

import pytest

from keeper.store.database import SCHEMA_VERSION, create_book, open_book, unsynced, writing
from keeper.store.durable import sha256_of
from keeper.store.errors import BookError, NewerBook, NotABook, ReadOnlyBook
from tests.store.books import a_weight, an_animal, an_offer, tables_of, write


@pytest.fixture
def shut(book, animal):
    """A closed book of some pages; returns its path."""
    write(book, *(a_weight(animal, 40 + n / 10) for n in range(200)), an_offer(animal))
    book.close()
    return book.path


def refusal(path, kind=NotABook):
    """The sentence with which *path* is refused; every byte of it is as it was."""
    before = sha256_of(path)
    with pytest.raises(kind) as refused:
        open_book(path, station="shed")
    assert sha256_of(path) == before
    return str(refused.value)


def test_a_missing_book_is_said_to_be_missing_and_not_made(folder):
    with pytest.raises(NotABook, match="There is no book"):
        open_book(folder / "none.book", station="shed")

    assert list(folder.iterdir()) == []


def test_an_empty_file_is_refused(folder):
    (folder / "empty.book").touch()

    assert "is an empty file" in refusal(folder / "empty.book")


@pytest.mark.parametrize("size", [1, 2, 15, 16, 99, 100, 512, 4096, 5000])
def test_garbage_is_refused(folder, size):
    path = folder / "garbage.book"
    path.write_bytes(random.Random(size).randbytes(size))

    assert "not changed" in refusal(path)


@pytest.mark.parametrize("mode", ["delete", "wal"])
def test_another_programs_database_is_refused(folder, mode):
    path = folder / "other.book"
    with closing(sqlite3.connect(path)) as other:
        other.execute(f"PRAGMA journal_mode = {mode}")
        other.execute("CREATE TABLE animal (id INTEGER PRIMARY KEY)")
        other.commit()

    assert "belongs to another program" in refusal(path)


def test_a_newer_book_is_refused_with_both_versions(shut):
    with closing(sqlite3.connect(shut)) as newer:
        newer.execute(f"PRAGMA user_version = {SCHEMA_VERSION + 1}")

    sentence = refusal(shut, NewerBook)

    assert f"book version {SCHEMA_VERSION + 1}" in sentence
    assert f"reads up to {SCHEMA_VERSION}" in sentence


def test_a_book_cut_short_anywhere_is_refused(shut):
    whole = shut.read_bytes()
    draw = random.Random(7)
    lengths = [draw.randrange(1, len(whole)) for _ in range(98)] + [len(whole) - 1, 4096]
    cut = shut.with_name("cut.book")

    for length in lengths:
        cut.write_bytes(whole[:length])
        assert refusal(cut), length


def test_a_book_with_a_wrecked_page_is_refused(shut):
    whole = bytearray(shut.read_bytes())
    whole[4096 : 4096 + 64] = bytes(64)
    shut.write_bytes(whole)

    assert "was not changed" in refusal(shut)


def test_a_new_book_never_takes_the_place_of_a_file(shut):
    before = sha256_of(shut)

    with pytest.raises(NotABook, match="is there already"):
        create_book(shut, station="shed")

    assert sha256_of(shut) == before


def test_a_new_book_never_takes_the_place_of_a_link_to_nowhere(folder):
    (folder / "link.book").symlink_to(folder / "nowhere")

    with pytest.raises(BookError, match="could not be made"):
        create_book(folder / "link.book", station="shed")

    assert not (folder / "nowhere").exists()


def test_a_new_book_needs_its_folder(folder):
    with pytest.raises(NotABook, match="no folder"):
        create_book(folder / "missing" / "a.book", station="shed")


def test_a_book_read_only_shows_all_and_refuses_to_write_in_one_sentence(shut):
    reading = open_book(shut, station="shed", read_only=True)
    before = tables_of(reading)

    with pytest.raises(ReadOnlyBook, match="open for reading only; nothing was written") as told:
        an_animal(reading, "B2")

    assert str(told.value).count(".") - shut.name.count(".") == 1
    assert tables_of(reading) == before
    reading.close()


def test_a_read_only_connection_cannot_write_even_by_hand(shut):
    reading = open_book(shut, station="shed", read_only=True)

    with pytest.raises(sqlite3.OperationalError, match="readonly"):
        reading.connection.execute("DELETE FROM animal_now")
    reading.close()


def test_a_book_and_its_journal_are_for_their_owner_alone(book, animal):
    modes = {file.name: stat.S_IMODE(file.stat().st_mode) for file in book.path.parent.iterdir()}

    assert modes == {"shed.book": 0o600, "shed.book-journal": 0o600}


def test_a_book_is_kept_in_the_journal_mode_that_lost_nothing(book):
    execute = book.connection.execute

    assert execute("PRAGMA journal_mode").fetchone() == ("persist",)
    assert execute("PRAGMA synchronous").fetchone() == (3,)
    assert execute("PRAGMA foreign_keys").fetchone() == (1,)


def test_a_closed_book_is_one_file(book, animal):
    journal = book.path.with_name("shed.book-journal")
    assert journal.stat().st_size > 0

    book.close()

    assert list(book.path.parent.iterdir()) == [book.path]


def test_the_journal_of_another_window_that_writes_is_left_alone(book, animal):
    other = open_book(book.path, station="other")
    with writing(book) as connection:
        connection.execute("INSERT INTO round (id, batch) SELECT 2, max(id) FROM batch")
        other.close()
        assert book.path.with_name("shed.book-journal").stat().st_size > 0

    assert book.connection.execute("SELECT count(*) FROM round").fetchone() == (1,)


def test_a_large_batch_leaves_no_large_journal(book, animal):
    journal = book.path.with_name("shed.book-journal")
    write(book, *(a_weight(animal, 40) for _ in range(30_000)))
    with writing(book) as connection:
        connection.execute("DROP TRIGGER weighing_no_update")
        connection.execute("UPDATE weighing SET weight_mg = 41000")
        while_writing = journal.stat().st_size

    assert journal.stat().st_size <= 1_000_000 < while_writing


def test_a_book_made_without_waiting_for_the_disk_waits_for_it_in_the_end(book):
    def synchronous():
        return book.connection.execute("PRAGMA synchronous").fetchone()[0]

    with pytest.raises(KeyError), unsynced(book):
        assert synchronous() == 0
        raise KeyError

    assert synchronous() == 3
