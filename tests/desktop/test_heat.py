"""The heat page on a real book: rows walked, digits written, a logger's file looked at first."""

from __future__ import annotations

from contextlib import closing

import pytest
from heat_room import NOW, TODAY, a_logger_file, a_room, placed
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from shots import grab, luminance_of

from keeper.actions.heat_band import band_of
from keeper.actions.heat_board import heat_board, set_incubator_limits, write_heat
from keeper.actions.logger_files import preview, take_in
from keeper.desktop.background import AtOnce
from keeper.desktop.look import Look
from keeper.desktop.main_window import MainWindow
from keeper.desktop.notices import Notices
from keeper.desktop.places import Place
from keeper.desktop.screens.heat import HeatScreen
from keeper.desktop.screens.heat_words import place_face
from keeper.husbandry.events import Heat, Zone
from keeper.store import reading

KEYS = {"Enter": Qt.Key.Key_Enter, "Esc": Qt.Key.Key_Escape, ".": Qt.Key.Key_Period}
KEYS |= {"+": Qt.Key.Key_Plus, "-": Qt.Key.Key_Minus, "/": Qt.Key.Key_Slash}


class HeatDesk:
    """The page in a window: keys in, what was refused and noted out."""

    def __init__(self, qtbot, keeping, size=(1440, 900), red_lamp=False, worker=None):
        self.keeping, self.look, self.notices = keeping, Look(red_lamp=red_lamp), Notices()
        self.refused, self.noted, self.written = [], [], []
        self.notices.refused.connect(self.refused.append)
        self.notices.noted.connect(self.noted.append)
        self.notices.written.connect(self.written.append)

        def made(look):
            return HeatScreen(look, keeping, self.notices, worker=worker or AtOnce())

        self.window = MainWindow(self.look, [Place(key="F5", name="Heat", title="Heat", make=made)])
        qtbot.addWidget(self.window)
        self.window.resize(*size)
        self.window.show()
        with qtbot.waitActive(self.window):
            self.window.activateWindow()
        self.page = self.window.page("Heat")
        self.page.setFocus()

    def press(self, keys: str) -> None:
        for key in keys.split():
            code = KEYS.get(key) or Qt.Key[f"Key_{key}"]
            QTest.keyClick(self.window.focusWidget() or self.page, code)

    def answer(self, text: str) -> None:
        field = self.page.asking.field
        field.setText(text)
        QTest.keyClick(field, Qt.Key.Key_Return)

    def readings(self):
        events = reading.on_days(self.keeping.book, Heat, TODAY, TODAY)
        return [(e.place, e.zone, e.temp_c, e.read_with) for e in events]


@pytest.fixture
def keeping(tmp_path):
    with closing(a_room(tmp_path / "a.book")) as made:
        yield made


@pytest.fixture
def desk(qtbot, keeping):
    return HeatDesk(qtbot, keeping)


def test_a_row_of_readings_is_typed_with_one_hand(desk):
    desk.press("3 0 . 5 Enter 3 1 Enter 2 9 . 5 Enter")

    told = [("A1", Zone.HOT, 30.5, "gun"), ("A2", Zone.HOT, 31.0, "gun")]
    assert desk.readings() == [*told, ("B1", Zone.HOT, 29.5, "gun")]


def test_a_room_is_not_called_room_a_second_time_and_its_other_zones_are_named(keeping):
    write_heat(keeping, "shelf", Zone.ROOM, 23.0, "gun")
    faces = {line.place: place_face(line, TODAY) for line in heat_board(keeping, TODAY).lines}
    own = {place: [cell.zone_words for cell in face.cells] for place, face in faces.items()}

    assert set(own["room"]) == {""}
    assert "room" in own["shelf"]


def test_the_zone_is_chosen_by_a_key_and_a_row_may_be_passed_over(desk):
    desk.press("/ + 2 4 Enter / 2 1 Enter")

    assert [told[:3] for told in desk.readings()] == [
        ("A2", Zone.COOL, 24.0),
        ("B1", Zone.NIGHT, 21.0),
    ]


def test_an_unusual_reading_is_asked_for_again_and_never_changed(desk):
    desk.press("3 1 2 Enter")

    assert desk.readings() == []
    assert "31.2 °C? Type it again." in desk.page.panel.text()


def test_an_unusual_reading_typed_twice_is_written_if_there_can_be_one(desk):
    desk.press("4 Enter 4 Enter")
    desk.press("3 1 2 Enter 3 1 2 Enter")

    assert [told[2] for told in desk.readings()] == [4.0]
    assert "beyond any room" in desk.refused[0]


def test_a_reading_is_written_where_the_keeper_stood_and_taken_back_by_its_batch(desk):
    desk.press("3 1 Enter")

    assert (desk.written[0].verb, desk.written[0].where) == ("read heat", "A1")


def test_escape_forgets_what_was_typed(desk):
    desk.press("3 1 Esc Enter")

    assert desk.readings() == []


def test_a_reading_out_of_its_limits_bears_letter_and_urgency(desk):
    desk.press("2 4 Enter")

    cell = heat_board(desk.keeping, TODAY).lines[0].cells[0]
    assert (cell.standing, cell.letter) == ("today", "C")
    assert "C 24.0" in [face.cells[0].words for face in desk.page.list._faces]


def test_a_logger_s_file_is_looked_at_before_it_goes_in(desk, tmp_path):
    placed(desk.keeping)
    path = a_logger_file(tmp_path / "l.csv")

    desk.press("L")
    desk.answer(str(path))

    assert "4,320 readings would go in" in desk.page.sheet.text().replace("\u00a0", " ")
    assert "1 × failure value" in desk.page.sheet.text()
    assert heat_board(desk.keeping, TODAY).lines[1].cells[0].temp_c is None
    desk.press("Enter")
    assert heat_board(desk.keeping, TODAY).lines[1].cells[0].temp_c == 24.0
    assert "4,320 readings from l.csv, 1 kept aside" in desk.written[-1].what.replace("\u00a0", " ")


def test_a_file_that_is_left_writes_nothing(desk, tmp_path):
    placed(desk.keeping)
    desk.press("L")
    desk.answer(str(a_logger_file(tmp_path / "l.csv")))

    desk.press("Esc Enter")

    assert heat_board(desk.keeping, TODAY).lines[1].cells[0].temp_c is None


def test_a_probe_that_was_never_placed_is_placed_from_the_look_at_its_file(desk, tmp_path):
    desk.press("L")
    desk.answer(str(a_logger_file(tmp_path / "l.csv", probe="K7")))

    desk.press("P")
    desk.answer("B1 hot")
    desk.press("Enter")

    assert heat_board(desk.keeping, TODAY).lines[2].cells[0].read_with == "probe K7"
    assert band_of(desk.keeping, "B1", Zone.HOT, TODAY).days == 14


def test_the_unit_of_a_file_is_changed_by_a_key(desk, tmp_path):
    placed(desk.keeping)
    desk.press("L")
    desk.answer(str(a_logger_file(tmp_path / "l.csv")))

    desk.press("U")

    assert "°F" in desk.page.sheet.text()
    assert desk.page.files.seen.probes[0].highest_c == pytest.approx((85 - 32) / 1.8, abs=0.01)


def test_a_file_that_is_not_there_is_refused_in_one_sentence(desk):
    desk.press("L")
    desk.answer("/nowhere/l.csv")

    assert desk.refused == ["There is no file /nowhere/l.csv; name a logger’s CSV file."]


def test_the_band_is_told_in_words_with_today_and_feed_nights(desk, tmp_path):
    placed(desk.keeping)
    take_in(desk.keeping, preview(desk.keeping, a_logger_file(tmp_path / "l.csv")))
    desk.notices.changed.emit()
    desk.press("+")

    told = desk.page.band.text().replace("\u00a0", " ")

    assert "15:00 usually 30.8 °C" in told
    assert "today last 24 °C" in told
    assert "wanted 30–32 °C" in told


def test_the_band_of_a_day_leaves_out_that_day(keeping, tmp_path):
    placed(keeping)
    take_in(keeping, preview(keeping, a_logger_file(tmp_path / "l.csv")))

    band = band_of(keeping, "A2", Zone.HOT, TODAY)

    assert min(step.low_c if step else 0.0 for step in band.steps) >= 30.4
    assert min(point.temp_c for point in band.today) == 24.0
    assert (band.days, band.by_probe) == (14, True)


def test_the_band_of_an_incubator_has_the_lines_at_which_to_act(desk):
    write_heat(desk.keeping, "incubator", Zone.INCUBATOR, 28.0, "gun")
    desk.notices.changed.emit()

    desk.press("+ + +")

    told = desk.page.band.text().replace("\u00a0", " ")
    assert "wanted 26–29.5 °C" in told
    assert "act 22" in told and "act 30.5" in told


def test_few_typed_readings_make_no_band(desk):
    desk.press("3 1 Enter -")

    told = desk.page.band.text().replace("\u00a0", " ")
    assert not band_of(desk.keeping, "A1", Zone.HOT, TODAY).has_band
    assert "today last 31 °C" in told
    assert "usually" not in told and "not read" not in told


def test_the_incubator_is_judged_by_the_keeper_s_own_limits(keeping):
    write_heat(keeping, "incubator", Zone.INCUBATOR, 29.2, "gun")
    before = heat_board(keeping, TODAY).lines[-2].cells[0]
    set_incubator_limits(keeping, "27-29")
    after = heat_board(keeping, TODAY).lines[-2].cells[0]

    assert (before.standing, after.standing, after.letter) == ("within", "today", "H")


@pytest.mark.parametrize("text", ["27", "30-27", "a-b", "27-99"])
def test_limits_of_an_incubator_that_are_no_range_are_refused(keeping, text):
    with pytest.raises(ValueError, match="range"):
        set_incubator_limits(keeping, text)


@pytest.mark.parametrize("size", [(1440, 900), (1024, 600)])
@pytest.mark.parametrize("red_lamp", [False, True], ids=["day", "red-lamp"])
def test_the_page_fits_and_stays_dim_under_the_red_lamp(qtbot, keeping, tmp_path, size, red_lamp):
    placed(keeping)
    take_in(keeping, preview(keeping, a_logger_file(tmp_path / "l.csv")))
    desk = HeatDesk(qtbot, keeping, size, red_lamp)

    image = grab(desk.window, tmp_path / "heat.png", size)

    assert (image.width(), image.height()) == size
    light = luminance_of(image).mean()
    assert light < 0.08 if red_lamp else light > 0.6


def test_the_clock_of_the_room_is_the_book_s(keeping):
    assert keeping.now() == NOW
