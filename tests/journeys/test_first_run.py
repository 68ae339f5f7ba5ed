"""The first evening: no book is known; records are taken in, or the demo collection opened."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from keeper import app
from keeper.actions.keeping import new_keeping
from keeper.actions.watch_board import watch_board
from keeper.clock import now
from keeper.desktop.background import AtOnce
from keeper.desktop.look import Look
from keeper.desktop.remembered import last_book
from keeper.store import reading

ANIMALS = """animal,species,sex,hatched,place
HS-1,house snake,female,2025-04-01,A1-1
HS-2,house snake,male,{hatched},A1-2
"""
DIARY = """animal,date,what,grams,note
HS-1,2026-11-01,weighed,{grams},
HS-1,2026-11-04,fed,12,
HS-2,2026-11-04,refused,,hid
"""


@pytest.fixture
def front(qtbot, tmp_path, monkeypatch):
    monkeypatch.setenv("KEEPER_HOME", str(tmp_path / "home"))
    made = app.Front(Look(), worker=AtOnce())
    yield made
    made.window.close()


def wrote(tmp_path, hatched="2025-05-01", grams="212"):
    """The keeper's two files."""
    animals, diary = tmp_path / "animals.csv", tmp_path / "diary.csv"
    animals.write_text(ANIMALS.format(hatched=hatched), encoding="utf-8")
    diary.write_text(DIARY.format(grams=grams), encoding="utf-8")
    return str(animals), str(diary)


def press(front, key):
    """Press *key* on the first page, once its window is the active one."""
    front.window.activateWindow()
    QTest.qWaitForWindowActive(front.window)
    QTest.keyClick(front.page, key)
    QApplication.processEvents()


def answer(front, text):
    """Put *text* into the line at the foot of the first page, and Enter."""
    page = front.page
    page.asking.field.setText(text)
    QTest.keyClick(page.asking.field, Qt.Key.Key_Return)
    QApplication.processEvents()


def test_records_are_mended_counted_and_taken_in_and_the_book_is_found_again(front, tmp_path):
    front.open(last_book())
    press(front, Qt.Key.Key_1)

    for path in wrote(tmp_path, hatched="2025-02-30", grams="412g"):
        answer(front, path)
    told = front.page.body.text()
    assert "animals.csv, line 3" in told
    assert "diary.csv, line 2" in told
    assert not list(tmp_path.rglob("*.book"))

    press(front, Qt.Key.Key_1)
    for path in wrote(tmp_path):
        answer(front, path)
    assert "2 animals and 3 entries" in front.page.body.text().replace("\u00a0", " ")
    assert not list(tmp_path.rglob("*.book"))

    book = tmp_path / "papers" / "mine.book"
    answer(front, str(book))
    assert front.window.place.name == "Round"
    assert [row.code for row in reading.board(front.house.keeping.book)] == ["HS-1", "HS-2"]
    front.window.close()

    again = app.Front(Look(), worker=AtOnce())
    again.open(last_book())
    assert again.house.keeping.book.path == book
    assert again.house.keeping.book.writable
    again.window.close()


def test_a_place_where_no_book_can_be_made_is_said_and_the_page_stays(front, tmp_path):
    (tmp_path / "papers").write_text("a file, no folder")
    front.open(None)
    press(front, Qt.Key.Key_1)
    for path in wrote(tmp_path):
        answer(front, path)

    answer(front, str(tmp_path / "papers" / "mine.book"))

    assert front.house is None
    assert str(tmp_path / "papers") in front.page.body.text()


def test_an_empty_book_takes_the_files_into_itself(front, tmp_path):
    path = tmp_path / "new.book"
    new_keeping(path, station="x", now=now).close()
    front.open(path)
    press(front, Qt.Key.Key_1)
    for name in wrote(tmp_path):
        answer(front, name)

    answer(front, "yes")

    assert front.house.keeping.book.path == path
    assert len(reading.board(front.house.keeping.book)) == 2


@pytest.mark.parametrize("begun", [False, True], ids=["no book", "an empty book"])
def test_animals_are_written_in_by_hand_from_nothing(qtbot, front, tmp_path, begun):
    path = tmp_path / "papers" / "mine.book"
    if begun:
        path.parent.mkdir()
        new_keeping(path, station="x", now=now).close()
    front.open(path if begun else None)

    press(front, Qt.Key.Key_2)
    if not begun:
        answer(front, str(path))

    assert front.window.place.name == "Animal"
    page = front.window.page("Animal")
    QTest.keyClicks(page.line.field, "26-1, house snake, f, 3 Sep 2026, A1-1, Wren")
    QTest.keyClick(page.line.field, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: page.page is not None)
    assert page.page.animal.name == "Wren"
    assert front.house.keeping.book.path == path


def test_the_demo_collection_is_a_room_with_something_to_look_at(front, tmp_path):
    front.open(None)

    press(front, Qt.Key.Key_3)

    keeping = front.house.keeping
    assert keeping.book.path.is_relative_to(tmp_path / "home")
    assert keeping.book.writable
    board = watch_board(keeping, keeping.today)
    assert board.animals > 70
    assert board.items
