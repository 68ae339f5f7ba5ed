"""A book closed whole is not proved again at the next start; one touched since is."""

import shutil
import sqlite3
from contextlib import closing

import pytest
from trouble_sample import a_room

from keeper import app
from keeper.desktop.background import AtOnce
from keeper.desktop.look import Look
from keeper.desktop.remembered import left_whole, remember_whole
from keeper.store.database import open_book
from keeper.store.errors import NotABook

pytestmark = pytest.mark.usefixtures("home")


@pytest.fixture
def book(tmp_path):
    keeping = a_room(tmp_path / "room.book")
    keeping.close()
    return keeping.book.path


def opened_and_closed(qtbot, path):
    front = app.Front(Look(), worker=AtOnce())
    front.open(path)
    qtbot.waitUntil(front.window.isVisible)
    told = front.house is not None
    front.window.close()
    return told


def damage(path):
    with closing(sqlite3.connect(path)) as connection:
        (page_bytes,) = connection.execute("PRAGMA page_size").fetchone()
        (root,) = connection.execute(
            "SELECT rootpage FROM sqlite_master WHERE name = 'reading_file'"
        ).fetchone()
    with path.open("r+b") as file:
        file.seek((root - 1) * page_bytes)
        file.write(b"\xff" * 64)


def test_a_book_closed_by_the_window_is_known_to_be_whole(qtbot, book):
    assert not left_whole(book)

    assert opened_and_closed(qtbot, book)

    assert left_whole(book)


def test_a_book_damaged_after_it_was_closed_is_refused_at_the_next_start(qtbot, book):
    opened_and_closed(qtbot, book)
    damage(book)

    assert not left_whole(book)
    assert not opened_and_closed(qtbot, book)


def test_another_file_put_in_its_place_is_not_known(qtbot, book, tmp_path):
    opened_and_closed(qtbot, book)
    shutil.copy(book, tmp_path / "other.book")
    book.unlink()
    shutil.copy(tmp_path / "other.book", book)

    assert not left_whole(book)


def test_only_a_book_known_to_be_whole_is_opened_without_reading_it_all(book):
    remember_whole(book)
    damage(book)

    with pytest.raises(NotABook, match="damaged"):
        open_book(book, station="desk")
    open_book(book, station="desk", known_whole=True).close()
