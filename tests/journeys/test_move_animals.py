"""Animals and tubs moved in the Racks place by keys alone, in the whole window, and taken back."""

from contextlib import closing

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from keeper.desktop.background import AtOnce
from keeper.desktop.house import House
from keeper.desktop.look import Look
from keeper.desktop.screens.racks import RacksScreen
from keeper.desktop.screens.records import RecordsScreen
from keeper.husbandry.animal import Sex
from keeper.store import reading
from tests.feeding_room import Tub, make_book, reopened

CONTROL = Qt.KeyboardModifier.ControlModifier
TUBS = (
    Tub(place="A1·1", name="Tansy"),
    Tub(place="A1·2", name="Bracken", sex=Sex.MALE),
    Tub(place="A1·4", name="Orrin", sex=Sex.MALE),
    Tub(place="B1·1", name="Quill"),
)


@pytest.fixture
def keeping(tmp_path):
    with closing(make_book(tmp_path / "racks.book", TUBS)) as book:
        yield book


@pytest.fixture
def desk(qtbot, keeping):
    made = Hands(keeping)
    yield made
    made.leave()


class Hands:
    """The window on the Racks place, and what its foot says."""

    def __init__(self, keeping):
        self.keeping = keeping
        makers = {
            "Racks": lambda *its: RacksScreen(*its, reader=AtOnce(), watcher=AtOnce()),
            "Records": RecordsScreen,
        }
        self.house = House(keeping, Look(), makers)
        self.window = self.house.window
        self.asked = []
        self.house.notices.animal_asked.connect(self.asked.append)
        self.window.resize(1440, 900)
        self.window.show()
        self.window.activateWindow()
        assert QTest.qWaitForWindowActive(self.window)
        self.press("F6")

    @property
    def page(self):
        return self.window.page("Racks")

    @property
    def foot(self):
        return self.window.foot.text()

    @property
    def chosen(self):
        return self.page.view.lines.text().split(";")[0]

    def press(self, keys):
        """Keys by name with spaces between."""
        for name in keys.split():
            QTest.keyClick(self.window.focusWidget() or self.window, Qt.Key[f"Key_{name}"])
            QApplication.processEvents()

    def type(self, text):
        """Type *text* into the line that is asked, and Enter."""
        QTest.keyClicks(self.window.focusWidget(), text)
        self.press("Return")

    def take_back(self):
        QTest.keyClick(self.window, Qt.Key.Key_Z, CONTROL)
        QApplication.processEvents()

    def leave(self):
        self.page.close_down()
        self.window.close()
        self.window.deleteLater()


def places(keeping):
    """Who stands where, read afresh."""
    return {row.name: row.place for row in reading.board(keeping.book)}


def test_an_animal_is_moved_into_an_empty_tub_and_put_back_where_it_was(desk, keeping):
    before = places(keeping)

    desk.press("M")
    desk.type("a1-3")

    assert places(keeping) == before | {"Tansy": "A1·3"}
    assert desk.chosen.startswith("A1·3 Tansy")
    assert "to A1·3" in desk.foot
    desk.take_back()
    assert places(keeping) == before
    assert desk.chosen.startswith("A1·1 Tansy")


def test_a_move_into_an_occupied_tub_says_who_is_there_and_writes_at_the_second_enter(
    desk, keeping
):
    before = places(keeping)

    desk.press("M")
    desk.type("A1-2")

    assert "Bracken, male" in desk.foot
    assert "Tansy would share" in desk.foot
    assert "A female and a male would be together" in desk.foot
    assert places(keeping) == before
    desk.press("Return")
    assert places(keeping) == before | {"Tansy": "A1·2"}
    desk.press("6")
    assert "together 1" in desk.page.view.legend.text()


def test_another_tub_after_the_warning_is_a_new_question(desk, keeping):
    desk.press("M")
    desk.type("A1-2")
    field = desk.window.focusWidget()
    field.clear()
    desk.type("A1-4")

    assert "Orrin, male" in desk.foot
    assert places(keeping)["Tansy"] == "A1·1"


def test_escape_leaves_the_line_and_nothing_is_written(desk, keeping):
    before = places(keeping)
    desk.press("M")
    QTest.keyClicks(desk.window.focusWidget(), "A1-3")

    desk.press("Escape Right")

    assert places(keeping) == before
    assert desk.chosen.startswith("A1·2 Bracken")


def test_letters_and_digits_typed_into_the_line_do_nothing_else(desk):
    desk.press("M")

    QTest.keyClicks(desk.window.focusWidget(), "rx3m5d")

    assert desk.window.focusWidget().text() == "rx3m5d"
    assert not desk.page.view.nights_shown


def test_what_names_no_tub_is_refused_and_stays_in_the_line(desk, keeping):
    before = places(keeping)
    desk.press("M")

    desk.type("the shelf")

    assert "'the shelf' names no tub" in desk.foot
    assert desk.window.focusWidget().text() == "the shelf"
    assert places(keeping) == before


def test_two_animals_change_places_by_name_and_back(desk, keeping):
    before = places(keeping)

    desk.press("X")
    desk.type("quill")

    assert places(keeping) == before | {"Tansy": "B1·1", "Quill": "A1·1"}
    desk.take_back()
    assert places(keeping) == before


def test_a_tub_is_moved_by_exchanging_it_with_an_empty_one(desk, keeping):
    desk.press("Right Right")
    assert desk.chosen.startswith("A1·3")

    desk.press("X")
    desk.type("B1-1")

    assert places(keeping)["Quill"] == "A1·3"


def test_an_empty_tub_has_nobody_to_move_or_to_open(desk):
    desk.press("Right Right M")
    assert "A1·3 is empty" in desk.foot

    desk.press("Return")
    assert "there is no animal to open" in desk.foot
    assert desk.asked == []


def test_enter_asks_for_the_page_of_the_animal_that_is_chosen(desk, keeping):
    desk.press("PageDown Return")

    quill = next(row for row in reading.board(keeping.book) if row.name == "Quill")
    assert desk.asked == [quill.animal]


def test_a_rack_gets_its_rows_and_tubs_and_loses_them_again(desk, keeping):
    desk.press("D")
    desk.type("2x5")

    assert "; 11 tubs " in desk.page.view.head.text()
    assert "2 rows of 5 tubs" in desk.foot
    desk.take_back()
    assert "; 5 tubs " in desk.page.view.head.text()


def test_a_new_rack_is_declared_by_its_letter(desk):
    desk.press("D")
    desk.type("D 1x3")

    assert [rack.letter for rack in desk.page.room.racks] == ["A", "B", "D"]
    assert [len(row.tubs) for row in desk.page.room.racks[2].rows] == [3]


def test_what_was_moved_is_still_there_after_a_restart(qtbot, keeping):
    desk = Hands(keeping)
    desk.press("M")
    desk.type("A2-1")
    desk.leave()
    again = reopened(keeping)

    assert places(again)["Tansy"] == "A2·1"
    again.close()
