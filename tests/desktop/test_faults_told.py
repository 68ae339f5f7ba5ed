"""What goes wrong is told: the world's troubles with a way out, the program's own with a report."""

import os
import sqlite3
import stat
import subprocess
import sys
from contextlib import closing
from datetime import timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.exceptions import capture_exceptions
from trouble_sample import TODAY, a_room, heat

from keeper import app, clock
from keeper.actions.safe_keeping import back_up_now
from keeper.actions.troubles import BookError
from keeper.desktop.faults import Faults, report_of
from keeper.desktop.widgets.words_line import Words
from keeper.rehearsal.collection import make_collection

ROOT = Path(__file__).resolve().parents[2]
ANIMAL = "Thora"


pytestmark = pytest.mark.usefixtures("home")


@pytest.fixture
def book(tmp_path):
    """A room's book with one backup and one line written after it."""
    keeping = a_room(tmp_path / "room.book")
    back_up_now(keeping)
    heat(keeping, "A1", TODAY, 31.0)
    keeping.close()
    return keeping.book.path


def on_page(front):
    return "\n".join(label.text() for label in front.page.findChildren(Words))


def press(front, words):
    """Do the action of the first page that says *words*."""
    (action,) = [a for a in front.page.actions() if a.text() == words]
    action.trigger()


def damage(path):
    content = bytearray(path.read_bytes())
    content[4096:8192] = bytes(4096)
    path.write_bytes(content)
    return bytes(content)


def test_a_damaged_book_is_told_with_its_newest_good_backup(front, book):
    damage(book)

    said = on_page(front(book))

    assert "The book could not be opened" in said
    assert "B   put the newest good backup in its place" in said
    assert "000001-by-hand.book, whose last line is of" in said
    assert "the damaged file is kept" in said


def test_b_puts_the_backup_in_its_place_and_keeps_the_damaged_file(front, book):
    damaged = damage(book)
    made = front(book)

    press(made, "put the newest good backup in its place")

    assert made.house is not None
    assert made.house.keeping.book.path == book
    assert "is kept beside it as room.book.aside-1" in made.window.foot.text()
    assert book.with_name("room.book.aside-1").read_bytes() == damaged


def test_m_writes_a_mended_copy_and_leaves_the_damaged_file(front, book):
    damaged = damage(book)
    made = front(book)

    press(made, "write a mended copy")

    assert "room.book.mended-1 is a mended copy" in on_page(made)
    assert book.read_bytes() == damaged
    assert front(book.with_name("room.book.mended-1")).house is not None


def test_a_book_that_is_gone_comes_back_from_its_backup(front, book):
    book.unlink()
    made = front(book)

    press(made, "put the newest good backup in its place")

    assert made.house is not None
    assert book.is_file()


def test_another_programs_file_is_offered_no_way_back(front, book):
    book.write_bytes(Path(sys.executable).resolve().read_bytes()[:8192])
    book.with_name("room.book.backups").rename(book.with_name("elsewhere"))

    assert "newest good backup" not in on_page(front(book))


def test_the_agreed_copy_takes_the_book_s_place_in_the_open_window(qtbot, front, book):
    from keeper.actions.checking import mend

    made = front(book)
    copy = mend(book)
    before = made.window

    made.house.notices.copy_agreed.emit(copy.path)
    qtbot.waitUntil(lambda: made.window is not before)

    assert made.window.isVisible()
    assert "The mended copy is open" in made.window.foot.text()
    assert book.with_name("room.book.aside-1").is_file()
    assert made.house.keeping.book.writable


def test_what_was_typed_is_kept_when_the_disk_is_full_and_written_with_room(qtbot, front, book):
    made = front(book)
    made.window.go_to(list(app.PLACES).index("Records"))
    page, connection = made.window.page("Records"), made.house.keeping.book.connection
    (pages,) = connection.execute("PRAGMA page_count").fetchone()
    connection.execute(f"PRAGMA max_page_count = {pages}")
    page._asking.ask("Feed on", page._set_nights, "tue fri")
    filled = fill(made.house.keeping)

    page._asking._answer()

    assert filled
    assert "Make room on its disk" in made.window.foot.text()
    assert page._asking.field.text().startswith("tue fri")
    connection.execute("PRAGMA max_page_count = 100000")
    page._asking._answer()
    assert not page._asking.isVisible()
    assert "feed nights" in page._head.text()


def test_a_closed_window_asks_nothing_of_its_closed_book(front, tmp_path):
    make_collection(
        tmp_path / "due.book", ends_on=clock.today() - timedelta(days=9), animals=12, years=1
    ).close()
    made = front(tmp_path / "due.book")
    QTest.keyClick(made.window.windowHandle(), Qt.Key.Key_Return)
    walking = made.window.page("Round")._stand.here
    assert walking is not None
    assert walking.walk.current is not None
    made.window.close()

    with capture_exceptions() as faults:
        made._look.changed.emit()

    assert faults == []


def fill(keeping):
    """Write until the book has no room for more; True once it was told so."""
    for _ in range(5000):
        try:
            heat(keeping, "A1", TODAY, 30.0)
        except BookError:
            return True
    return False


def a_fault(words):
    try:
        try:
            {}[words]
        except KeyError as first:
            raise ValueError(f"the animal {words} weighs nothing") from first
    except ValueError as fault:
        return fault


def test_a_report_names_places_and_kinds_and_no_animal():
    report = report_of(a_fault(ANIMAL))

    assert ANIMAL not in report
    assert "ValueError" in report
    assert "KeyError" in report
    assert "test_faults_told.py, line" in report
    assert str(ROOT) not in report


def test_a_full_report_says_what_the_error_said():
    assert f"the animal {ANIMAL} weighs nothing" in report_of(a_fault(ANIMAL), full=True)


def test_a_keeper_may_ask_for_full_reports_and_is_told_what_they_hold(home, monkeypatch, capsys):
    told = []
    monkeypatch.setenv("KEEPER_REPORTS", "full")

    Faults(home, told.append).meet(a_fault(ANIMAL))

    (report,) = (home / "faults").iterdir()
    assert ANIMAL in report.read_text(encoding="utf-8")
    assert "which may hold animal data" in told[0]


def test_a_reading_that_the_disk_refuses_is_told_as_such_and_leaves_no_report(home, book):
    damage(book)
    told = []
    try:
        with closing(sqlite3.connect(book)) as raw:
            raw.execute("SELECT * FROM sqlite_master").fetchall()
            for (table,) in raw.execute("SELECT name FROM sqlite_master WHERE type = 'table'"):
                raw.execute(f"SELECT * FROM {table}").fetchall()
    except sqlite3.DatabaseError as error:
        Faults(home, told.append).meet(error)

    assert told == [
        "The book could not be read: database disk image is malformed. Nothing was lost."
        " Check the book, and mend a copy of it."
    ]
    assert not (home / "faults").exists()


def test_the_same_fault_is_told_again_but_reported_once(home, capsys):
    told = []
    faults = Faults(home, told.append)
    fault = a_fault(ANIMAL)

    for _ in range(3):
        faults.meet(fault)

    assert len(told) == 3
    assert len(list((home / "faults").iterdir())) == 1


def test_no_more_than_fifty_reports_are_kept(home, capsys):
    faults = Faults(home, lambda _: None)
    (home / "faults").mkdir(parents=True)
    for n in range(70):
        (home / "faults" / f"fault-20200101-000000-{n:02}.txt").touch()

    faults.meet(a_fault(ANIMAL))

    kept = sorted(file.name for file in (home / "faults").iterdir())
    assert len(kept) == 50
    assert kept[-1] > "fault-2026"


def test_a_report_that_cannot_be_written_is_told_too(home, capsys):
    home.write_text("in the way")
    told = []

    Faults(home, told.append).meet(a_fault(ANIMAL))

    assert "no report" in told[0]


SLOT = """
import sys, threading
from pathlib import Path
from PySide6.QtCore import QTimer
from PySide6.QtGui import QAction
from keeper import app
from keeper.actions import undoing
from keeper.desktop.look import Look
qt = app.application()
front = app.Front(Look())
app.log_faults(front.tell)
front.open(Path(sys.argv[1]))
action = QAction("fails", front.window)
action.triggered.connect(lambda: {}["Thora"])
action.trigger()
qt.processEvents()
print(front.window.isVisible(), front.window.foot.text()[:33])
thread = threading.Thread(target=lambda: {}["Thora"])
thread.start(); thread.join()
front.window.foot.show_note("")
qt.processEvents()
print(front.window.foot.text()[:33])
front.window.undo_asked.emit()
qt.processEvents()
print(front.window.foot.text()[:10])
QTimer.singleShot(0, front.window.close)
sys.exit(qt.exec())
"""


def test_a_slot_that_raises_leaves_the_window_usable_and_the_home_private(book, home):
    done = subprocess.run(
        [sys.executable, "-c", SLOT, str(book)],
        cwd=ROOT,
        env=os.environ | {"QT_QPA_PLATFORM": "offscreen"},
        capture_output=True,
        text=True,
        timeout=120,
        check=False,
    )

    assert done.returncode == 0, done.stderr
    slot, thread, undo = done.stdout.splitlines()
    assert slot.startswith("True The program failed at this")
    assert thread.startswith("The program failed at this")
    assert undo == "not writte"  # of this station there is nothing to take back
    written = [path for path in home.rglob("*") if path.suffix in (".log", ".txt")]
    assert len(written) == 3
    assert all(ANIMAL not in path.read_text(encoding="utf-8") for path in written)
    assert {stat.S_IMODE(path.stat().st_mode) for path in written} == {0o600}
    assert stat.S_IMODE(home.stat().st_mode) == 0o700
