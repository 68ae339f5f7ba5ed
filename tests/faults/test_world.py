"""The world's troubles at length: killed, full, read-only, two at once; and who may read what."""

import json
import os
import shutil
import stat
import subprocess
import sys
import tempfile
import time
from contextlib import closing
from datetime import date
from pathlib import Path

import pytest

from keeper.rehearsal.collection import make_collection
from keeper.store.backups import back_up, backups_of, restore
from keeper.store.checking import check
from keeper.store.database import create_book, open_book
from keeper.store.errors import BookError
from tests.faults.figures import keep
from tests.store.books import a_weight, an_animal, tables_of, write
from tests.store.test_faults import begun, killed_many_times, started, whole_batches

__all__ = ["begun"]
ROOT = Path(__file__).resolve().parents[2]
NOBODY = 65534


@pytest.mark.long
def test_a_hundred_kills_and_a_thousand_acknowledged_batches(begun) -> None:
    acknowledged = killed_many_times(begun, kills=100, least=1000)
    began = time.perf_counter()
    open_book(begun.path, station="look").close()
    reopened_s = time.perf_counter() - began

    keep("F1", acknowledged=acknowledged, kills=100, reopened_s=round(reopened_s, 3))
    assert reopened_s < 1


@pytest.mark.long
def test_a_full_disk_a_thousand_times(begun) -> None:
    told = written = 0
    for _ in range(10):
        lines = started(begun, "full", "full").communicate()[0].splitlines()
        told += sum(line.startswith("told") for line in lines)
        written += sum(not line.startswith("told") for line in lines)

    keep("F4", tries=told + written - 10, told=told, lost=written - len(whole_batches(begun.path)))
    assert written == len(whole_batches(begun.path))
    assert told > 500


@pytest.mark.long
def test_two_processes_write_three_hundred_batches_each(begun) -> None:
    workers = [started(begun, station, 300) for station in ("rack room", "kitchen")]
    said = {int(key) for worker in workers for key in worker.communicate()[0].split()}

    keep("F6", batches=len(said), lost=len(said - whole_batches(begun.path)))
    assert len(said) == 600
    assert whole_batches(begun.path) == said


FULL = """
import resource, sys
from pathlib import Path
from keeper.store.backups import back_up, restore, latest_good
from keeper.store.database import create_book, open_book
from keeper.store.errors import BookError
from keeper.store.mending import mend
path, room = Path(sys.argv[2]), int(sys.argv[3])
resource.setrlimit(resource.RLIMIT_FSIZE, (room, resource.getrlimit(resource.RLIMIT_FSIZE)[1]))
deeds = {
    "back up": lambda: back_up(open_book(path, station="x"), "by hand"),
    "restore": lambda: restore(latest_good(path), path),
    "bring up": lambda: open_book(path, station="x"),
    "make": lambda: create_book(path.with_name("new.book"), station="x"),
    "mend": lambda: mend(path),
}
try:
    deeds[sys.argv[1]]()
    print("done")
except BookError as error:
    print("told", error)
"""


@pytest.mark.parametrize("deed", ["back up", "restore", "bring up", "make", "mend"])
@pytest.mark.parametrize("part", [0.0, 0.3, 0.8])
def test_a_disk_that_fills_up_half_way_is_told_and_leaves_the_book(room, deed, part) -> None:
    room.mkdir()
    book = create_book(room / "shed.book", station="shed")
    write(book, a_weight(an_animal(book)))
    back_up(book, "first")
    right = {name: rows for name, rows in tables_of(book).items() if rows}
    if deed == "bring up":
        book.connection.executescript("DROP TABLE start_step; PRAGMA user_version = 0;")
    book.close()
    before = sorted(room.iterdir())

    size = int(book.path.stat().st_size * part)
    done = subprocess.run(
        [sys.executable, "-c", FULL, deed, str(book.path), str(size)],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )

    assert (done.returncode, done.stdout[:5]) == (0, "told "), done.stderr
    left = {f.name for f in set(room.iterdir()) - set(before)}
    assert left <= {"shed.book.lock", "shed.book-journal"}
    with closing(open_book(book.path, station="look")) as again:
        assert {name: rows for name, rows in tables_of(again).items() if rows} == right
        assert check(again) == ()


def test_a_book_on_a_disk_that_may_only_be_read_is_read_and_refuses_in_a_sentence(tmp_path) -> None:
    """As another user: the administrator may write where nobody else may."""
    folder = tmp_path / "room"
    folder.mkdir()
    book = create_book(folder / "shed.book", station="shed")
    write(book, a_weight(an_animal(book)))
    book.close()
    book.path.chmod(0o444)
    folder.chmod(0o555)
    code = """if True:
        import sys
        from pathlib import Path
        from keeper.store.locks import open_alone
        from keeper.store.reading import board
        from keeper.store.journal import batch
        from datetime import datetime, UTC
        opened = open_alone(Path(sys.argv[1]), station="x")
        print(len(board(opened.book)), opened.told)
        try:
            with batch(opened.book, verb="n", keeper="", written=datetime.now(UTC)): pass
        except Exception as error:
            print(type(error).__name__, error)
        """
    lowered = ["setpriv", "--reuid", str(NOBODY), "--clear-groups"] if os.geteuid() == 0 else []
    if lowered and shutil.which("setpriv") is None:
        pytest.skip("setpriv is not installed, and the administrator may write anywhere")
    if lowered and any(not parent.stat().st_mode & 0o001 for parent in (ROOT, *ROOT.parents)):
        pytest.skip("this checkout lies where no other user may look, so none can try it")
    temporary = Path(os.environ.get("PYTEST_DEBUG_TEMPROOT", tempfile.gettempdir()))
    for parent in (tmp_path, *tmp_path.parents):
        if temporary in parent.parents:
            parent.chmod(parent.stat().st_mode | 0o011)

    done = subprocess.run(
        [*lowered, sys.executable, "-c", code, str(book.path)],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    folder.chmod(0o755)

    assert done.returncode == 0, done.stderr
    shown, refused = done.stdout.splitlines()
    assert shown.startswith("1 ")
    assert "can be read only" in shown
    assert refused.startswith("ReadOnlyBook")
    assert "nothing was written" in refused


def test_all_that_is_written_is_for_its_owner_alone(tmp_path) -> None:
    """Book, journal, lock, backups, station and settings, under the usual umask."""
    animals = tmp_path / "animals.csv"
    animals.write_text("animal,species,sex,hatched,place\nA-1,corn snake,female,,\n")
    (tmp_path / "room").mkdir()
    book = tmp_path / "room" / "a.book"
    own = os.environ | {"KEEPER_HOME": str(tmp_path / "home"), "QT_QPA_PLATFORM": "offscreen"}
    window = (
        "import sys; from pathlib import Path; from PySide6.QtCore import QTimer;"
        "from keeper import app, start; qt = app.application();"
        "QTimer.singleShot(1500, qt.closeAllWindows); sys.exit(start.run(Path(sys.argv[1])))"
    )
    for line in (
        ["-m", "keeper", "new", str(book)],
        ["-m", "keeper", "take-in", str(book), "--animals", str(animals)],
        ["-c", window, str(book)],
    ):
        subprocess.run(
            [sys.executable, *line], cwd=ROOT, env=own, check=True, umask=0o022, timeout=120
        )

    home = [p for p in (tmp_path / "home").rglob("*") if p.suffix not in (".ini", ".lock")]
    written = [p for p in (tmp_path / "room").rglob("*") if p.is_file()] + [
        p for p in home if p.is_file()
    ]
    folders = [p for p in (tmp_path / "room").iterdir() if p.is_dir()] + [tmp_path / "home"]
    assert len(written) >= 5
    assert {p.name: oct(stat.S_IMODE(p.stat().st_mode)) for p in written} == dict.fromkeys(
        (p.name for p in written), "0o600"
    )
    assert {stat.S_IMODE(p.stat().st_mode) for p in folders} == {0o700}


@pytest.mark.long
def test_a_large_book_is_restored_from_every_backup_it_keeps(tmp_path) -> None:
    made = make_collection(tmp_path / "room.book", ends_on=date(2026, 11, 24), animals=400, years=6)
    said = {}
    for _ in range(14):
        an_animal(made.book, "drill")
        said[back_up(made.book, "drill").number] = tables_of(made.book)["batch"]
    path = made.book.path
    made.close()
    slowest = 0.0
    for backup in backups_of(path):
        began = time.process_time()  # the machine may be busy with other things
        restore(backup, tmp_path / "drill.book")
        slowest = max(slowest, time.process_time() - began)
        with closing(open_book(tmp_path / "drill.book", station="drill")) as drilled:
            assert tables_of(drilled)["batch"] == said[backup.number]
            assert check(drilled) == ()

    keep(
        "F21",
        backups=len(said),
        megabytes=round(path.stat().st_size / 1e6, 1),
        slowest_s=round(slowest, 2),
    )
    assert slowest < 10


def test_a_lock_that_a_killed_process_left_is_no_hindrance(begun) -> None:
    worker = started(begun, "worker", 10_000)
    assert worker.stdout is not None
    worker.stdout.readline()
    worker.kill()
    worker.communicate()

    began = time.perf_counter()
    with closing(open_book(begun.path, station="look")) as book:
        write(book)
    assert time.perf_counter() - began < 5


def test_the_documents_of_a_book_cannot_name_a_place_on_the_disk(book_of_documents) -> None:
    """A batch from elsewhere is values for tables; nothing in it is used as a path."""
    book, folder, documents = book_of_documents
    before = sorted(folder.rglob("*"))

    from keeper.store.exchange import read_in

    for hostile in ("../../outside", "/etc/passwd", "C:\\windows\\x", "a\\..\\b", "con", "…/x"):
        changed = json.loads(json.dumps(documents).replace("A1", hostile.replace("\\", "\\\\")))
        changed[0]["station"] = changed[0]["keeper"] = changed[0]["verb"] = hostile
        with closing(create_book(folder / "other.book", station="b")) as other:
            read_in(other, changed)
            assert back_up(other, hostile).path.parent == folder / "other.book.backups"
        shutil.rmtree(folder / "other.book.backups")
        (folder / "other.book").unlink()

    assert sorted(folder.rglob("*")) == before
    book.close()


@pytest.fixture
def book_of_documents(room):
    from keeper.store.exchange import batch_keys, write_out

    room.mkdir()
    book = create_book(room / "shed.book", station="shed")
    write(book, a_weight(an_animal(book)))
    return book, room, [write_out(book, key) for key in batch_keys(book)]


def test_what_the_world_refuses_is_one_error_with_one_sentence(room) -> None:
    room.mkdir()
    with pytest.raises(BookError) as told:
        create_book(room / "missing" / "a.book", station="x")

    assert str(told.value).endswith("make it first.")
