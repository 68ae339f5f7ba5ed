"""The program in one piece: opening, a second window, faults, closing, and what is loaded when."""

import os
import subprocess
import sys
from datetime import datetime
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from trouble_sample import a_room, empty_book

from keeper import app
from keeper.actions.keeping import Written, open_keeping
from keeper.actions.rounds import begin_night
from keeper.desktop.faults import LOG
from keeper.desktop.places import ASIDE_KEYS, PLACE_KEYS
from keeper.desktop.remembered import last_book, was_red_lamp
from keeper.desktop.widgets.words_line import Words

ROOT = Path(__file__).resolve().parents[2]
HEAVY = ("numpy", "sqlite_utils", "keeper.rehearsal.collection", "keeper.actions.forecasting")


pytestmark = pytest.mark.usefixtures("home")


@pytest.fixture
def book(tmp_path):
    keeping = a_room(tmp_path / "room.book")
    keeping.close()
    return keeping.book.path


def _in_front(qtbot, window):
    with qtbot.waitActive(window):
        window.activateWindow()
    return window


def test_the_places_stand_in_the_keeper_s_order(front, book):
    window = front(book).window
    names = [place.name for place in window._places]

    assert {"Round", "Weigh-in", "Watch", "Females", "Animal", "Records"} <= set(names)
    assert names == [name for name in (*PLACE_KEYS, *ASIDE_KEYS) if name in names]
    assert window.place.name == "Round"


def test_every_place_shows_a_page_of_a_real_book(qtbot, front, book):
    window = front(book).window

    for number in range(len(app.PLACES)):
        window.go_to(number)
        QApplication.processEvents()
        assert window.page(window.place.name).isVisible()


def test_a_book_opened_is_the_book_of_the_next_start(front, book):
    front(book)

    assert last_book() == book


def test_ctrl_q_closes_the_window_and_backs_the_book_up(qtbot, front, book):
    window = _in_front(qtbot, front(book).window)

    qtbot.keyClick(window, Qt.Key.Key_Q, Qt.KeyboardModifier.ControlModifier)

    qtbot.waitUntil(lambda: not window.isVisible())
    assert list(book.parent.glob("room.book.backups/*"))


def test_the_light_is_remembered_when_it_changes_and_not_only_on_closing(qtbot, front, book):
    window = _in_front(qtbot, front(book).window)
    assert not was_red_lamp()

    qtbot.keyClick(window, Qt.Key.Key_F12)

    assert was_red_lamp()


def test_a_second_window_on_one_book_is_told_and_reads_only(front, book):
    first, second = front(book), front(book)

    assert first.house.keeping.told is None
    assert not second.house.keeping.book.writable
    assert "it can be read only" in second.window.foot.text()
    second.window.undo_asked.emit()
    assert second.window.foot.text().startswith("not written")


def test_a_book_that_cannot_be_opened_leads_to_a_page_that_says_what_is_wrong(front, tmp_path):
    path = tmp_path / "empty.book"
    path.touch()

    made = front(path)

    said = [label.text() for label in made.page.findChildren(Words)]
    assert "The book could not be opened" in said
    assert any(str(path) in sentence for sentence in said)
    assert path.stat().st_size == 0


def test_an_empty_book_leads_to_the_first_page_and_its_lock_is_let_go(front, tmp_path):
    keeping = empty_book(tmp_path / "new.book")
    keeping.close()
    made = front(keeping.book.path)
    assert made.page is not None

    made.window.close()

    again = open_keeping(keeping.book.path, station="x", now=keeping.now)
    assert again.told is None
    again.close()


def test_closing_backs_up_a_changed_book_once(front, book):
    made = front(book)
    made.window.close()
    first = list(book.parent.rglob("*on-close*.book"))
    again = front(book)
    again.window.close()

    assert len(first) == 1
    assert list(book.parent.rglob("*on-close*.book")) == first


def test_a_closed_window_leaves_the_book_to_the_next(front, book):
    front(book).window.close()

    assert front(book).house.keeping.told is None


def run_alone(code, home, *args):
    env = os.environ | {"KEEPER_HOME": str(home), "QT_QPA_PLATFORM": "offscreen"}
    return subprocess.run(
        [sys.executable, "-c", code, *args],
        cwd=ROOT,
        env=env,
        capture_output=True,
        text=True,
        timeout=120,
        check=False,
    )


PAINTED = """
import sys
from pathlib import Path
from keeper import app
from keeper.desktop.look import Look
qt = app.application()
front = app.Front(Look())
front.open(Path(sys.argv[1]))
qt.processEvents()
image = front.window.grab().toImage()
assert len({image.pixelColor(x, y).name() for x in range(0, image.width(), 9)
            for y in range(0, image.height(), 9)}) > 1
print(*[name for name in sys.argv[2:] if name in sys.modules])
front.window.close()
"""


def test_nothing_heavy_is_loaded_before_the_window_is_painted(book, tmp_path):
    done = run_alone(PAINTED, tmp_path / "home", str(book), *HEAVY, "json")

    assert done.returncode == 0, done.stderr
    assert set(done.stdout.split()) <= {"json"}


FAULT = """
import sys
from pathlib import Path
from PySide6.QtCore import QTimer
from keeper import app
from keeper.desktop.look import Look
qt = app.application()
front = app.Front(Look())
app.log_faults(front.tell)
front.open(Path(sys.argv[1]))
QTimer.singleShot(0, lambda: {}["of the program"])
for _ in range(5):
    qt.processEvents()
print(front.window.isVisible(), front.window.foot.text())
front.window.go_to(list(app.PLACES).index("Watch"))
qt.processEvents()
print(front.window.place.name)
front.window.close()
"""


def test_a_fault_of_the_program_is_told_and_logged_and_the_window_stays(book, tmp_path):
    done = run_alone(FAULT, tmp_path / "home", str(book))

    told, place = done.stdout.splitlines()
    assert told.startswith("True The program failed at this; what was written before stands.")
    assert place == "Watch"
    log = (tmp_path / "home" / LOG).read_text(encoding="utf-8")
    assert "fault KeyError" in log


def test_the_foot_says_the_way_back_of_the_place_in_sight(qtbot, front, book):
    made = front(book)
    window, round_page = made.window, made.window.page("Round")
    begin_night(made.house.keeping, made.house.keeping.today)
    made.house.notices.changed.emit()
    written = Written(batch=1, at=datetime(2026, 11, 25, 20, 40), verb="offer", what="taken")
    made.house.notices.written.emit(written)
    assert round_page.takes_back.startswith(".")
    assert window.foot._written.take_back == round_page.takes_back

    window.go_to(list(app.PLACES).index("Watch"))
    assert window.foot._written.take_back == "Ctrl+Z takes it back"

    window.go_to(0)
    assert window.foot._written.take_back == round_page.takes_back
