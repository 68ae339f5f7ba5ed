"""Records: every batch, the way back from each, files taken in, the book looked after."""

from contextlib import closing
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget
from trouble_sample import TODAY, Window, add, at_once, empty_book, heat

from keeper.actions.records import MOST
from keeper.actions.settings import set_feed_nights, set_own_figure
from keeper.desktop.models.record_rows import Seen, by_whom
from keeper.desktop.screens.records import RecordsScreen
from keeper.desktop.screens.watch import WatchScreen
from keeper.store import reading

PLACES = {"Records": at_once(RecordsScreen), "Watch": at_once(WatchScreen)}
ANIMALS = "animal,species,sex,hatched,place\nN-1,house snake,female,2025-04-01,D1-1\n"
DIARY = "animal,date,what,grams,note\nN-1,2026-11-01,weighed,212,\n"


@pytest.fixture
def keeping(tmp_path):
    with closing(empty_book(tmp_path / "house.book")) as made:
        add(made, "A-1", "Ingrid", "A1·1")
        heat(made, "A1", TODAY, 31.0)
        set_feed_nights(made, "FREQ=WEEKLY;BYDAY=WE,SA")
        yield made


@pytest.fixture
def records(qtbot, keeping):
    return RecordsWindow(qtbot, keeping, PLACES)


class RecordsWindow(Window):
    @property
    def rows(self):
        return [index.data(Qt.ItemDataRole.UserRole) for index in self.indexes]

    @property
    def indexes(self):
        model = self.page._list.table.model()
        return [model.index(number, 0) for number in range(model.rowCount())]

    def answer(self, text):
        self.page._asking.field.setText(text)
        super().press(Qt.Key.Key_Return)

    def struck(self, number):
        font = self.indexes[number].data(Qt.ItemDataRole.FontRole)
        return bool(font and font.strikeOut())


def files(tmp_path, animals=ANIMALS, diary=DIARY):
    (tmp_path / "animals.csv").write_text(animals, encoding="utf-8")
    (tmp_path / "diary.csv").write_text(diary, encoding="utf-8")
    return str(tmp_path / "animals.csv"), str(tmp_path / "diary.csv")


def take_in(records, paths):
    records.press(Qt.Key.Key_I)
    for path in paths:
        records.answer(path)


def test_what_was_done_stands_newest_first_with_its_entries_and_animals(records):
    assert [row.batch.verb for row in records.rows] == ["set feed nights", "read heat", "try"]
    assert records.rows[1].told == "A1 hot surface 31\u00a0°C"
    assert records.rows[2].animals == ("Ingrid",)


def test_the_chosen_line_is_told_entry_by_entry_beneath(records):
    records.press(Qt.Key.Key_Down, Qt.Key.Key_Down)

    told = records.page._list._panel.text()

    assert told.startswith("try; written 14:30:00   J.; Ingrid described as A-1")
    assert "Ingrid moved to A1·1; Ingrid female, as the records say; Ingrid taken, 1 " in told


def test_o_keeps_to_the_lines_of_one_animal_and_nothing_typed_shows_all(records, keeping):
    records.press(Qt.Key.Key_O)
    records.answer("nobody")
    assert "No animal here is called 'nobody'" in records.foot
    assert len(records.rows) == 3

    records.answer("ingrid")
    assert [row.batch.verb for row in records.rows] == ["try"]

    records.press(Qt.Key.Key_O)
    records.answer("")
    assert len(records.rows) == 3


def test_the_first_line_ever_written_is_reached_by_scrolling_on(records, keeping):
    for degrees in range(MOST + 5):
        heat(keeping, "A1", TODAY, 25.0 + degrees / 100)
    records.house.notices.changed.emit()
    assert len(records.rows) == MOST

    records.press(Qt.Key.Key_End, Qt.Key.Key_End)

    assert records.rows[-1].batch.verb == "try"
    assert len(records.rows) == MOST + 8


def test_t_says_what_follows_and_t_again_takes_the_chosen_line_back(records, keeping):
    records.press(Qt.Key.Key_Down)

    records.press(Qt.Key.Key_T)
    assert "read heat: 1\u00a0entry would no longer stand" in records.foot
    assert not records.struck(1)

    records.press(Qt.Key.Key_T)
    assert [records.struck(number) for number in range(4)] == [False, False, True, False]


def test_r_writes_a_line_again_however_much_was_written_since(records, keeping):
    records.press(Qt.Key.Key_Down, Qt.Key.Key_T, Qt.Key.Key_T)
    heat(keeping, "A1", TODAY, 30.0)
    records.house.notices.changed.emit()
    assert records.struck(3)

    records.press(Qt.Key.Key_R)

    assert not any(records.struck(n) for n in (0, 1, 3, 4, 5))
    assert records.rows[4].batch.verb == "read heat"


def test_r_on_a_line_that_stands_writes_nothing(records):
    records.press(Qt.Key.Key_T, Qt.Key.Key_T, Qt.Key.Key_R)
    assert len(records.rows) == 5

    records.press(Qt.Key.Key_R)

    assert "not written: This line stands" in records.foot
    assert len(records.rows) == 5


def test_files_are_counted_first_and_taken_in_on_the_last_enter(records, keeping, tmp_path):
    take_in(records, files(tmp_path))
    assert "1 animal and 1 entry" in records.page.body.text().replace("\u00a0", " ")
    assert len(records.rows) == 3

    records.answer("yes")

    assert records.rows[0].batch.verb == "take in"
    assert [row.code for row in reading.animals_coded(keeping.book, "N-1")] == ["N-1"]


def test_files_taken_in_twice_add_nothing_and_say_so(records, tmp_path):
    take_in(records, files(tmp_path))
    records.answer("yes")
    take_in(records, files(tmp_path))

    told = records.page.body.text().replace("\u00a0", " ")
    assert told == "The files hold nothing new. 2 rows stand in the book already."
    assert len(records.rows) == 4


def test_a_fault_is_named_by_file_line_and_column_and_nothing_is_written(records, tmp_path):
    take_in(records, files(tmp_path, diary=DIARY.replace("212", "41,2")))

    assert "diary.csv, line 2" in records.page.body.text()
    assert len(records.rows) == 3


def test_what_is_not_agreed_to_is_not_taken_in(records, tmp_path):
    take_in(records, files(tmp_path))
    records.answer("no")

    assert len(records.rows) == 3
    assert not records.page.body.isVisible()


def test_a_file_that_is_not_there_is_asked_for_again(records, tmp_path):
    take_in(records, [str(tmp_path / "nothing.csv")])

    assert "There is no file" in records.page.body.text()
    assert records.page._asking.isVisible()


def test_own_figures_stand_beside_the_shipped_ones(records, keeping):
    set_own_figure(keeping, "house_snake", "breeding.female.weight_g", 220.0, "my line is light")

    records.press(Qt.Key.Key_F)

    assert "breeding.female.weight_g: 220, shipped 200" in records.page.body.text()
    assert "my line is light" in records.page.body.text()


def test_without_own_figures_it_says_that_all_are_shipped(records):
    records.press(Qt.Key.Key_F)

    assert records.page.body.text() == "Every figure in use is the one that was shipped."


def test_feed_nights_are_shown_and_a_rule_that_cannot_be_read_changes_nothing(records):
    assert "feed nights Wed 25 Nov" in records.page._head.text().replace("\u00a0", " ")

    records.press(Qt.Key.Key_N)
    records.answer("FREQ=SOMETIMES")

    assert "not written" in records.foot
    assert len(records.rows) == 3


def test_feed_nights_that_are_set_show_at_once(records):
    records.press(Qt.Key.Key_N)
    records.answer("FREQ=WEEKLY;BYDAY=TU")

    assert "feed nights Tue 1 Dec" in records.page._head.text().replace("\u00a0", " ")


def test_a_backup_made_by_hand_is_a_file_that_was_proved(records, keeping):
    records.press(Qt.Key.Key_B)

    assert "Backed up and proved: " in records.foot
    name = records.foot.removeprefix("Backed up and proved: ").rstrip(".")
    assert list(keeping.book.path.parent.rglob(name))


def test_the_book_is_checked_and_said_to_be_whole(records):
    records.press(Qt.Key.Key_C)

    assert records.foot.startswith("The book is whole")


def test_a_flaw_of_the_book_is_said(records, keeping):
    keeping.book.connection.execute("UPDATE animal_now SET weight_mg = 1")
    keeping.book.connection.commit()

    records.press(Qt.Key.Key_C)

    assert "state" in records.foot
    assert "whole" not in records.foot


def test_a_flaw_leads_to_a_mended_copy_that_is_shown_before_it_is_opened(records, keeping):
    keeping.book.connection.execute("DROP TRIGGER offer_no_delete")
    records.press(Qt.Key.Key_C)
    assert "M writes a mended copy" in records.page.body.text()
    agreed = []
    records.house.notices.copy_agreed.connect(agreed.append)

    records.press(Qt.Key.Key_M)

    assert "house.book.mended-1 is a mended copy" in records.page.body.text()
    assert agreed == []
    records.answer("yes")
    assert agreed == [keeping.book.path.with_name("house.book.mended-1")]


def test_a_mended_copy_that_is_not_agreed_to_takes_nobody_s_place(records, keeping):
    agreed = []
    records.house.notices.copy_agreed.connect(agreed.append)
    records.press(Qt.Key.Key_M)

    records.answer("no")

    assert agreed == []
    assert not list(keeping.book.path.parent.glob("*.aside-*"))


def test_nothing_is_read_out_of_view(records):
    page = records.page
    asked = []
    page._list._reading._question = lambda aside, on: asked.append(on) or []
    records.window.go_to(1)

    records.house.notices.changed.emit()
    assert asked == []

    records.window.go_to(0)
    assert asked == [TODAY]


@pytest.mark.parametrize("size", [(1440, 900), (1024, 600)])
def test_no_part_of_the_page_is_clipped(qtbot, keeping, size):
    window = RecordsWindow(qtbot, keeping, {"Records": PLACES["Records"]}, size)
    window.press(Qt.Key.Key_F)
    window.page._asking.ask("Question", lambda _: True)
    qtbot.wait(1)

    inside = window.page._list.table.viewport()
    for child in window.page.findChildren(QWidget):
        if child.isVisible() and not inside.isAncestorOf(child):
            assert child.parentWidget().rect().contains(child.geometry()), child


def test_a_machine_without_a_keeper_is_told_by_the_first_letters_of_its_name(records):
    row = records.rows[0]
    seen = Seen(TODAY, "rack-room")

    def by(keeper, station):
        batch = replace(row.batch, keeper=keeper, station=station)
        return by_whom(replace(row, batch=batch), seen)

    assert by("J.", "station-1a97c75b") == "J."
    assert by(None, "rack-room") == "here"
    assert by(None, "station-1a97c75b") == "machine 1a97"
    assert by(None, "garage") == "garage"


def test_the_bar_of_the_chosen_line_stands_clear_of_its_words(records):
    """The ink of the words begins behind the bar."""
    table = records.page._list.table
    picture = table.viewport().grab().toImage()
    line = table.visualRect(records.indexes[0])
    bar = max(2, line.height() // 10)
    ground = picture.pixelColor(line.right() - 2, line.center().y())

    beside = [
        picture.pixelColor(line.left() + bar + x, line.top() + y)
        for x in range(4)
        for y in range(line.height())
    ]

    assert all(colour == ground for colour in beside)


def test_cells_look_as_in_a_window_that_had_the_light_and_the_words_from_the_first(
    qtbot, records, keeping
):
    """What was painted before a light was changed or a line taken back does not stay."""
    table = records.page._list.table
    before = table.viewport().grab().toImage()
    records.window.look.switch_light()
    by_lamp = table.viewport().grab().toImage()
    records.press(Qt.Key.Key_Down, Qt.Key.Key_T, Qt.Key.Key_T)
    struck = table.viewport().grab().toImage()

    fresh = RecordsWindow(qtbot, keeping, PLACES)
    fresh.window.look.switch_light()
    fresh.press(Qt.Key.Key_Down, Qt.Key.Key_Down)
    assert len({bytes(i.constBits()) for i in (before, by_lamp, struck)}) == 3
    assert struck == fresh.page._list.table.viewport().grab().toImage()


@pytest.mark.parametrize("size", [(1440, 900), (1024, 600), (1200, 707)])
@pytest.mark.parametrize("asked", [False, True])
def test_no_line_is_cut_by_the_lower_edge_of_the_list(qtbot, keeping, size, asked):
    window = RecordsWindow(qtbot, keeping, {"Records": PLACES["Records"]}, size)
    if asked:
        window.page._asking.ask("Question", lambda _: True)
    qtbot.wait(1)

    table = window.page._list.table
    rows = table.verticalHeader().defaultSectionSize()
    assert table.viewport().height() > 3 * rows
    assert table.viewport().height() % rows == 0


def test_the_headings_are_never_larger_than_the_lines_under_them(qtbot, keeping):
    window = RecordsWindow(qtbot, keeping, {"Records": PLACES["Records"]}, (1440, 900))
    table = window.page._list.table
    for size in ((1024, 600), (1440, 900)):
        window.window.resize(*size)
        qtbot.wait(1)
        heads = table.model().headerData(1, Qt.Orientation.Horizontal, Qt.ItemDataRole.FontRole)
        assert heads.pointSizeF() == table.font().pointSizeF()
