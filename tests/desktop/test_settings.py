"""House ways: what is chosen shows what follows at once, and is kept where it belongs."""

from __future__ import annotations

from contextlib import closing
from pathlib import Path

import pypdfium2
import pytest
from PySide6.QtCore import QLocale, Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from shots import grab, luminance_of
from trouble_sample import a_quiet_room

from keeper.actions import undoing
from keeper.actions.due_board import feed_nights_around
from keeper.actions.past_nights import evening_hour
from keeper.actions.safe_keeping import back_up_now, close, second_folder
from keeper.actions.settings import feed_nights_typed, set_feed_nights
from keeper.actions.troubles import BookError
from keeper.actions.weighing import Asks, WeighIn
from keeper.desktop.chosen_language import language_of_choice
from keeper.desktop.locale_marks import writing_of
from keeper.desktop.look import Look
from keeper.desktop.main_window import MainWindow
from keeper.desktop.notices import Notices
from keeper.desktop.paper.page import write_pdf
from keeper.desktop.paper.sizes import Paper, paper_chosen, paper_in_use, put_paper_to_use
from keeper.desktop.places import ASIDE_KEYS, Place
from keeper.desktop.remembered import (
    FigureWays,
    figure_ways,
    remember_figure_ways,
    second_place,
    wanted_paper,
)
from keeper.desktop.screens.settings import SettingsScreen
from keeper.desktop.start_note import say_at_start
from keeper.desktop.type import Use
from keeper.reports.figures import grams, plain
from keeper.reports.writing import Writing, writing_as
from keeper.store import reading


class Desk:
    """The page in a window: keys in, faces and what was said out."""

    def __init__(self, qtbot, keeping, size=(1440, 900), red_lamp=False):
        self.keeping, self.look, self.notices = keeping, Look(red_lamp=red_lamp), Notices()
        self.said, self.refused, self.written = [], [], []
        self.notices.noted.connect(self.said.append)
        self.notices.refused.connect(self.refused.append)
        self.notices.written.connect(self.written.append)
        place = Place(
            key=ASIDE_KEYS["House ways"],
            name="House ways",
            title="House ways",
            make=lambda look: SettingsScreen(look, keeping, self.notices),
        )
        self.window = MainWindow(self.look, [place])
        qtbot.addWidget(self.window)
        self.window.resize(*size)
        self.window.show()
        with qtbot.waitActive(self.window):
            self.window.activateWindow()
        self.page = self.window.page("House ways")

    def press(self, key) -> None:
        QTest.keyClick(self.window.focusWidget(), key)
        QApplication.processEvents()

    def type(self, text: str) -> None:
        self.page._asking.field.selectAll()
        QTest.keyClicks(self.page._asking.field, text)

    def row(self, number: int):
        return self.page.rows[number - 1].face


pytestmark = pytest.mark.usefixtures("home")


@pytest.fixture
def keeping(tmp_path):
    with closing(a_quiet_room(tmp_path / "room.book")) as made, writing_as(Writing()):
        yield made


@pytest.fixture
def desk(qtbot, keeping):
    return Desk(qtbot, keeping)


def test_what_a_feed_night_would_be_is_shown_while_it_is_typed_and_written_on_enter(desk):
    desk.press(Qt.Key.Key_1)
    desk.type("tue fri")
    shown = plain(desk.row(1).effect)
    assert shown == "Next feed nights: Fri 27 Nov, Tue 1 Dec, Fri 4 Dec, Tue 8 Dec."
    assert feed_nights_around(desk.keeping, desk.keeping.today) == ()

    desk.press(Qt.Key.Key_Return)

    nights = feed_nights_around(desk.keeping, desk.keeping.today)
    assert {night.weekday() for night in nights} == {1, 4}
    assert desk.row(1).value == "Tue, Fri"
    undoing.take_back(desk.keeping)
    desk.notices.changed.emit()
    assert desk.row(1).value == "every day"


def test_a_night_that_cannot_be_read_says_so_in_its_row_and_esc_leaves_no_trace(desk):
    desk.press(Qt.Key.Key_1)
    desk.type("moonday")
    assert desk.row(1).refused
    assert desk.row(1).effect.startswith("'moonday' is no feed night")

    desk.press(Qt.Key.Key_Return)
    assert desk.refused and desk.page._asking.isVisible()
    desk.press(Qt.Key.Key_Escape)

    assert not desk.row(1).refused
    assert desk.written == []


@pytest.mark.parametrize(
    ("text", "coming"),
    [
        ("every 4 days from 2026-11-20", ["2026-11-28", "2026-12-02"]),
        ("every 4 days", ["2026-11-25", "2026-11-29"]),
        ("Mo We", ["2026-11-25", "2026-11-30"]),
        ("FREQ=MONTHLY;BYMONTHDAY=1", ["2026-12-01", "2027-01-01"]),
        ("every day", ["2026-11-25", "2026-11-26"]),
    ],
)
def test_feed_nights_are_read_as_a_keeper_types_them_and_are_those_of_the_board(
    keeping, text, coming
):
    today = keeping.today
    assert [n.isoformat() for n in feed_nights_typed(text, today).coming[:2]] == coming

    set_feed_nights(keeping, text)

    board = [n for n in feed_nights_around(keeping, today) if n >= today]
    told = [n.isoformat() for n in board[:2]]
    assert told == (coming if text != "every day" else [])


def test_the_hour_at_which_the_house_feeds_is_the_book_s(desk):
    assert evening_hour(desk.keeping) == 18
    desk.press(Qt.Key.Key_2)
    desk.type("20")
    assert "from 20:00 to 10:00" in desk.row(2).effect

    desk.press(Qt.Key.Key_Return)

    assert evening_hour(desk.keeping) == 20
    undoing.take_back(desk.keeping)
    assert evening_hour(desk.keeping) == 18


def test_ounces_are_in_every_figure_at_once_and_kept_by_the_machine(desk):
    assert plain(desk.row(3).effect).startswith("41.2 g = 1.45 oz.")

    desk.press(Qt.Key.Key_3)

    assert plain(grams(41.2)) == "1.45 oz"
    assert desk.row(3).value == "ounces"
    assert figure_ways().ounces
    desk.press(Qt.Key.Key_3)
    assert plain(grams(41.2)) == "41.2 g"
    assert not figure_ways().ounces


def test_enter_on_the_line_does_what_its_digit_does(desk):
    desk.press(Qt.Key.Key_4)
    assert figure_ways().fahrenheit

    desk.press(Qt.Key.Key_Space)

    assert not figure_ways().fahrenheit
    assert desk.window.focusWidget() is desk.page.rows[3]


def test_tab_walks_the_lines_in_their_order(desk):
    desk.press(Qt.Key.Key_6)
    desk.press(Qt.Key.Key_Tab)

    assert desk.window.focusWidget() is desk.page.rows[6]


def test_the_machine_s_marks_are_those_of_its_locale_until_the_house_s_are_wanted():
    german = QLocale(QLocale.Language.German, QLocale.Country.Germany)

    assert writing_of(FigureWays(), german) == Writing(point=",", group=".")
    assert writing_of(FigureWays(house_marks=True, ounces=True), german) == Writing(ounces=True)
    american = QLocale(QLocale.Language.English, QLocale.Country.UnitedStates)
    assert writing_of(FigureWays(), american) == Writing(day_first=False)


def test_larger_type_is_larger_where_there_is_room_and_says_where_there_is_none(qtbot, keeping):
    wide = Desk(qtbot, keeping)
    before = wide.look.font(Use.BODY).pointSizeF()
    wide.press(Qt.Key.Key_7)
    assert wide.look.font(Use.BODY).pointSizeF() > 1.15 * before
    assert "17.5 pt" in wide.row(7).effect

    small = Desk(qtbot, keeping, size=(1024, 600))
    small.press(Qt.Key.Key_7)

    assert small.row(7).effect.startswith("This window has no room")


def test_the_light_of_the_line_is_the_light_of_the_window(desk):
    desk.press(Qt.Key.Key_6)

    assert desk.look.red_lamp
    assert desk.row(6).value == "Red lamp"


def test_a_second_place_gets_each_backup_in_a_folder_of_this_book_s_own(desk, tmp_path):
    stick = tmp_path / "stick"
    stick.mkdir()
    desk.press(Qt.Key.Key_8)
    desk.type(str(tmp_path / "nowhere"))
    assert desk.row(8).refused and "There is no folder" in desk.row(8).effect
    desk.type(str(stick))
    assert "0 copies lie there." in plain(desk.row(8).effect)
    desk.press(Qt.Key.Key_Return)
    book = desk.keeping.book.path
    assert second_place(book) == stick

    made = back_up_now(desk.keeping, second_place=second_place(book))

    copy = second_folder(book, stick) / made.path.name
    assert copy.read_bytes() == made.path.read_bytes()
    desk.notices.changed.emit()
    assert "1 copy lies there." in plain(desk.row(8).effect)


def test_where_the_book_lies_is_no_second_place(desk, tmp_path):
    desk.press(Qt.Key.Key_8)
    desk.type(str(tmp_path))

    assert "is where the book lies" in desk.row(8).effect


def test_a_second_place_that_is_gone_costs_no_backup_and_is_told(tmp_path):
    keeping = a_quiet_room(tmp_path / "other.book")

    with pytest.raises(BookError, match=r"stands at .*, but .*stick is not there"):
        close(keeping, tmp_path / "stick")

    assert list((tmp_path / "other.book.backups").glob("*on-close.book"))
    assert not (tmp_path / "stick").exists()


def test_a_second_place_that_is_gone_is_said_at_the_next_start(desk, tmp_path):
    stick = tmp_path / "stick"
    stick.mkdir()
    desk.press(Qt.Key.Key_8)
    desk.type(str(stick))
    desk.press(Qt.Key.Key_Return)
    stick.rmdir()
    said = []

    say_at_start(desk.keeping, said.append)

    assert len(said) == 1 and str(stick) in said[0]


def test_each_line_is_a_button_that_says_what_is_chosen_and_what_follows(desk):
    for row in desk.page.rows:
        spoken = QAccessible.queryAccessibleInterface(row)
        assert spoken.role() == QAccessible.Role.Button
        assert row.face.value in spoken.text(QAccessible.Text.Name)
        assert row.face.effect in spoken.text(QAccessible.Text.Description)


@pytest.mark.parametrize("size", [(1440, 900), (1024, 600)])
@pytest.mark.parametrize("red_lamp", [False, True], ids=["day", "red-lamp"])
def test_the_page_has_room_for_every_line_in_both_lights(qtbot, keeping, tmp_path, size, red_lamp):
    desk = Desk(qtbot, keeping, size, red_lamp)

    image = grab(desk.window, Path(tmp_path) / "ways.png", size)

    mean = luminance_of(image).mean()
    assert mean < 0.08 if red_lamp else mean > 0.6
    inside = desk.page._room.viewport()
    last = desk.page.rows[-1]
    assert last.mapTo(inside, last.rect().bottomLeft()).y() <= inside.height()


def test_the_language_of_the_line_is_spoken_from_the_next_start(desk, monkeypatch):
    monkeypatch.delenv("KEEPER_LANGUAGE")
    desk.press(Qt.Key.Key_9)
    assert (desk.row(9).value, language_of_choice()) == ("English", "en")

    desk.press(Qt.Key.Key_9)

    assert (desk.row(9).value, language_of_choice()) == ("Deutsch", "de")
    desk.press(Qt.Key.Key_9)
    assert desk.row(9).value == "as this machine’s"


def test_ways_that_were_chosen_are_there_at_the_next_start():
    remember_figure_ways(FigureWays(ounces=True, house_marks=True))

    assert figure_ways() == FigureWays(ounces=True, house_marks=True)


def test_a_weight_typed_in_ounces_is_judged_and_written_in_grams(keeping):
    with writing_as(Writing(ounces=True)):
        walk = WeighIn(keeping)
        asked = walk.weigh("917")  # the point slipped: 9.17 oz are 260 g, her weight
        assert isinstance(asked, Asks)
        slips = {slip.name: slip.grams for slip in asked.verdict.slips if slip.inside}
        assert slips["point slipped"] == pytest.approx(260, abs=0.1)
        written = walk.weigh("9.17")

    weighed = [e.event for e in reading.entries_of(keeping.book, written.batch)]
    assert [event.weight_g for event in weighed] == [259.965]
    assert plain(written.what) == "9.17 oz"


def test_the_size_of_the_paper_is_chosen_with_its_effect_and_printed_on(desk, tmp_path):
    put_paper_to_use(Paper.A4)
    desk.page._show()
    assert (desk.row(10).key, desk.row(10).value) == ("0", "A4")

    desk.press(Qt.Key.Key_0)

    assert desk.row(10).value == "Letter"
    assert "8½ × 11 in" in desk.row(10).effect
    assert wanted_paper() == "LETTER"
    write_pdf(tmp_path / "one.pdf", "one", [lambda page: None])
    (page,) = pypdfium2.PdfDocument(tmp_path / "one.pdf")
    assert page.get_size() == pytest.approx((612, 792), abs=1.0)
    desk.press(Qt.Key.Key_0)
    assert paper_in_use() is Paper.A4


@pytest.mark.parametrize(
    ("chosen", "locale", "paper"),
    [
        ("", "en_US", Paper.LETTER),
        ("", "fr_CA", Paper.LETTER),
        ("", "de_DE", Paper.A4),
        ("", "en_GB", Paper.A4),
        ("A4", "en_US", Paper.A4),
        ("LETTER", "de_DE", Paper.LETTER),
        ("foolscap", "de_DE", Paper.A4),
    ],
)
def test_where_no_paper_was_chosen_it_is_that_of_the_land(chosen, locale, paper):
    assert paper_chosen(chosen, QLocale(locale)) is paper
