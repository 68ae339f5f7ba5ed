"""One writer for a book: the second is told who and reads, and a dead process holds nothing."""

import os
import signal
import stat
import subprocess
import sys

import pytest

from keeper.store.errors import NotABook
from keeper.store.locks import BookInUse, claim, lock_path, open_alone
from keeper.store.reading import board

HOLDER = """
import sys, time
from pathlib import Path
from keeper.store.locks import claim
lock = claim(Path(sys.argv[1]), station="rack room")
print("held", flush=True)
time.sleep(60)
"""


@pytest.fixture
def elsewhere(book):
    """Another process that holds the lock of the book; yields it."""
    book.close()
    process = subprocess.Popen(
        [sys.executable, "-c", HOLDER, str(book.path)], stdout=subprocess.PIPE, text=True
    )
    assert process.stdout is not None
    assert process.stdout.readline() == "held\n"
    yield process
    process.kill()
    process.wait()
    process.stdout.close()


def test_the_second_to_open_is_told_who_writes_and_reads_only(book, animal, elsewhere):
    opened = open_alone(book.path, station="kitchen")

    assert f"at rack room (process {elsewhere.pid})" in (opened.told or "")
    assert (opened.lock, opened.book.writable) == (None, False)
    assert [row.animal for row in board(opened.book)] == [animal]
    opened.close()


def test_a_killed_process_leaves_the_book_free(book, elsewhere):
    os.kill(elsewhere.pid, signal.SIGKILL)
    elsewhere.wait()

    opened = open_alone(book.path, station="kitchen")

    assert (opened.told, opened.book.writable) == (None, True)
    opened.close()


def test_a_second_window_of_the_same_process_is_told_too(book):
    with claim(book.path, station="kitchen"), pytest.raises(BookInUse, match="at kitchen"):
        claim(book.path, station="kitchen")


def test_a_released_lock_is_free_and_says_nobody(book):
    claim(book.path, station="kitchen").release()

    assert lock_path(book.path).read_bytes() == b""
    with claim(book.path, station="rack room") as lock:
        assert stat.S_IMODE(lock.path.stat().st_mode) == 0o600


def test_a_book_has_one_lock_by_whatever_name_it_is_opened(book, folder):
    (folder / "link.book").symlink_to(book.path)

    with claim(book.path, station="kitchen"), pytest.raises(BookInUse):
        claim(folder / "link.book", station="rack room")


def test_a_file_that_is_no_book_is_refused_and_its_lock_let_go(folder):
    path = folder / "empty.book"
    path.touch()

    with pytest.raises(NotABook):
        open_alone(path, station="kitchen")

    claim(path, station="rack room").release()


def test_asking_for_a_missing_book_leaves_no_lock_behind(folder):
    with pytest.raises(NotABook):
        open_alone(folder / "none.book", station="kitchen")

    assert list(folder.iterdir()) == []
