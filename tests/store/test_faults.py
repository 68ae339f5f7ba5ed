"""Killed, out of room, two at once: what was acknowledged is there, nothing is there by half."""

import os
import random
import shutil
import signal
import sqlite3
import subprocess
import sys
import time
from pathlib import Path

import pytest

from keeper.store.backups import back_up, restore
from keeper.store.checking import check
from keeper.store.database import create_book, open_book, writing
from keeper.store.errors import BookError
from keeper.store.exchange import batch_keys
from keeper.store.journal import batch
from keeper.store.reading import entries_of
from tests.store.books import WRITTEN, a_weight, an_animal, tables_of, write

WORKER = Path(__file__).with_name("worker.py")


def started(book, station, how):
    return subprocess.Popen(
        [sys.executable, str(WORKER), str(book.path), station, str(how)],
        stdout=subprocess.PIPE,
        text=True,
    )


def whole_batches(path):
    """Keys of the batches of the workers, each found with all its entries."""
    book = open_book(path, station="look")
    assert check(book) == ()
    keys = {key for key in batch_keys(book) if len(entries_of(book, key)) == 3}
    half = set(batch_keys(book)[1:]) - keys
    book.close()
    assert half == set()
    return keys


def acknowledged_until_killed(book, seconds):
    """Keys that a worker said were written before it was killed, *seconds* after the first."""
    worker = started(book, "worker", 10_000)
    assert worker.stdout is not None
    first = worker.stdout.readline()
    time.sleep(seconds)
    os.kill(worker.pid, signal.SIGKILL)
    rest, _ = worker.communicate()
    lines = (first + rest).splitlines(keepends=True)
    return {int(line) for line in lines if line.endswith("\n")}


def killed_many_times(book, kills, least):
    """Kill workers at random moments; no acknowledged batch is missing and none is half there."""
    draw = random.Random(20260301)
    acknowledged: set[int] = set()
    for done in range(10 * kills):
        if done >= kills and len(acknowledged) >= least:
            break
        acknowledged |= acknowledged_until_killed(book, draw.uniform(0, 2 * least / kills / 200))
        assert acknowledged <= whole_batches(book.path)
    assert len(acknowledged) >= least
    return len(acknowledged)


@pytest.fixture
def begun(tmp_path):
    """A book on the real disk with one animal, closed."""
    book = create_book(tmp_path / "shed.book", station="shed")
    an_animal(book)
    book.close()
    return book


def test_no_acknowledged_batch_is_lost_when_the_program_is_killed(begun):
    killed_many_times(begun, kills=10, least=100)


@pytest.mark.long
def test_no_acknowledged_batch_is_lost_in_a_hundred_kills(begun):
    killed_many_times(begun, kills=100, least=1000)


def test_two_processes_that_write_at_once_lose_nothing(begun):
    workers = [started(begun, station, 100) for station in ("rack room", "kitchen")]
    said = [worker.communicate()[0].split() for worker in workers]

    assert [worker.returncode for worker in workers] == [0, 0]
    assert len({*said[0], *said[1]}) == 200
    assert whole_batches(begun.path) == {int(key) for keys in said for key in keys}


def test_a_second_writer_waits_before_it_reads_what_it_builds_on(begun):
    first, second = (open_book(begun.path, station=name) for name in ("rack room", "kitchen"))
    second.connection.execute("PRAGMA busy_timeout = 50")
    entered = []
    note = batch(first, verb="note", keeper="Ro", written=WRITTEN)
    with note, pytest.raises(BookError, match="locked"), writing(second):
        entered.append("too early")

    assert entered == []
    first.close()
    second.close()


def test_a_full_disk_is_told_each_time_and_costs_nothing_that_was_written(begun):
    worker = started(begun, "full", "full")
    lines = worker.communicate()[0].splitlines()
    told = [line for line in lines if line.startswith("told")]

    assert worker.returncode == 0
    assert len(lines) == 101
    assert len(told) > 50
    assert all("could not be written" in line and "Nothing was lost." in line for line in told)
    assert not lines[-1].startswith("told")
    assert whole_batches(begun.path) == {int(line) for line in lines if not line.startswith("told")}


def test_a_full_disk_is_told_with_what_to_do(book, animal):
    (pages,) = book.connection.execute("PRAGMA page_count").fetchone()
    book.connection.execute(f"PRAGMA max_page_count = {pages}")

    with pytest.raises(BookError, match=r"full\. Nothing was lost\. Make room on its disk"):
        write(book, *(a_weight(animal, 40 + n) for n in range(500)))

    book.connection.execute("PRAGMA max_page_count = 100000")
    assert write(book, a_weight(animal)) in batch_keys(book)


def test_a_book_that_another_program_holds_is_told_and_works_again_after(begun):
    book = open_book(begun.path, station="shed")
    book.connection.execute("PRAGMA busy_timeout = 50")
    other = sqlite3.connect(begun.path)
    other.execute("BEGIN IMMEDIATE")
    with pytest.raises(BookError, match=r"locked.*Nothing was lost. Another program holds it"):
        write(book)
    other.close()

    assert write(book) in batch_keys(book)
    book.close()


@pytest.fixture
def crashed(book, animal, folder):
    """Book and journal as a power cut leaves them when half a batch is in the file already."""
    write(book, a_weight(animal))
    before = tables_of(book)
    book.connection.execute("PRAGMA cache_size = 1")
    with pytest.raises(KeyError), writing(book) as connection:
        connection.executemany(
            "INSERT INTO round (id, batch) SELECT ?, max(id) FROM batch",
            [(2**61 + n,) for n in range(5000)],
        )
        for name in ("", "-journal"):
            shutil.copyfile(f"{book.path}{name}", folder / f"crashed.book{name}")
        raise KeyError
    return folder / "crashed.book", before


def test_a_half_written_batch_is_rolled_back_when_the_book_is_opened(crashed):
    path, before = crashed
    assert path.with_name("crashed.book-journal").stat().st_size > 4096

    reopened = open_book(path, station="shed")

    assert tables_of(reopened) == before
    assert check(reopened) == ()
    reopened.close()


def test_a_half_written_batch_is_never_shown_to_one_who_can_only_read(crashed):
    path, _ = crashed

    with pytest.raises(BookError, match="cannot be opened"):
        open_book(path, station="shed", read_only=True)


def test_restoring_over_a_half_written_book_does_not_play_its_journal(crashed, book, folder):
    path, before = crashed
    copy = back_up(book, "close")

    aside = restore(copy, path)

    restored, recovered = (open_book(name, station="shed") for name in (path, aside))
    assert tables_of(restored) == tables_of(recovered) == before
    restored.close()
    recovered.close()
