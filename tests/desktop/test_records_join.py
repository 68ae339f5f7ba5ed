"""Records: the whole book written out, another's joined to it, and backups thinned out again."""

from contextlib import closing

import pytest
from PySide6.QtCore import Qt
from trouble_sample import NOW, TODAY, Window, add, at_once, empty_book, heat

from keeper.actions.bundle_files import write_bundle
from keeper.actions.keeping import Keeping, open_keeping
from keeper.desktop.screens.records import RecordsScreen
from keeper.store import backups, reading
from keeper.store.backups import back_up, is_rotation_paused, restore

PLACES = {"Records": at_once(RecordsScreen)}


@pytest.fixture
def keeping(tmp_path):
    with closing(empty_book(tmp_path / "house.book")) as made:
        add(made, "A-1", "Ingrid", "A1·1")
        yield made


@pytest.fixture
def records(qtbot, keeping):
    return Records(qtbot, keeping, PLACES)


@pytest.fixture
def other(tmp_path):
    """What the second machine wrote out: an animal and a reading of its own."""
    with closing(empty_book(tmp_path / "other.book")) as there:
        add(there, "B-1", "Oswin", "B1·1")
        heat(there, "B1", TODAY, 30.0)
        write_bundle(there, tmp_path / "other")
    return tmp_path / "other"


class Records(Window):
    def answer(self, text):
        self.page._asking.field.setText(text)
        super().press(Qt.Key.Key_Return)

    @property
    def rows(self):
        model = self.page._list.table.model()
        roles = Qt.ItemDataRole.UserRole
        return [model.index(number, 0).data(roles) for number in range(model.rowCount())]

    @property
    def told(self):
        return self.page.body.text().replace("\u00a0", " ")

    @property
    def question(self):
        return self.page._asking._question.text()


def codes(keeping: Keeping):
    return sorted(row.code for row in reading.board(keeping.book))


def test_another_book_is_looked_at_before_anything_is_written(records, keeping, other):
    records.press(Qt.Key.Key_J)
    records.answer(str(other))

    assert records.told.startswith("New: 1 animal, ")
    assert "The same in both: 0 lines." in records.told
    assert "Join it" in records.question
    assert codes(keeping) == ["A-1"]

    records.answer("no")
    assert codes(keeping) == ["A-1"]


def test_a_join_is_one_line_of_records_and_t_takes_all_of_it_back(records, keeping, other):
    records.press(Qt.Key.Key_J)
    records.answer(str(other))
    records.answer("yes")
    assert codes(keeping) == ["A-1", "B-1"]
    assert records.rows[0].told.replace("\u00a0", " ") == "2 lines of another book"

    records.press(Qt.Key.Key_Home, Qt.Key.Key_T)
    assert "join: 2 lines would no longer stand" in records.foot.replace("\u00a0", " ")
    records.press(Qt.Key.Key_T)

    assert codes(keeping) == ["A-1"]


def test_a_folder_that_is_none_is_asked_for_again(records, tmp_path):
    records.press(Qt.Key.Key_J)
    records.answer(str(tmp_path / "nothing"))

    assert "There is no folder" in records.foot
    assert records.page._asking.isVisible()


def test_a_folder_of_other_things_is_refused_in_one_sentence(records, keeping, tmp_path):
    (tmp_path / "things").mkdir()
    records.press(Qt.Key.Key_J)
    records.answer(str(tmp_path / "things"))

    assert "is no book written out" in records.foot
    assert codes(keeping) == ["A-1"]


def test_the_whole_book_is_written_out_to_a_new_folder(records, keeping, tmp_path):
    records.press(Qt.Key.Key_E)
    records.answer("")
    records.answer(str(tmp_path / "out"))

    assert (tmp_path / "out" / "offer.csv").is_file()
    assert f"{tmp_path / 'out'}: 1" in records.foot.replace("\u00a0", " ")


def test_of_one_animal_only_its_own_lines_are_written(records, keeping, tmp_path):
    add(keeping, "B-9", "Oswin", "B1·1")
    records.press(Qt.Key.Key_E)
    records.answer("nobody")
    assert "No animal here is called 'nobody'" in records.foot
    records.answer("ingrid")
    records.answer(str(tmp_path / "out"))

    told = (tmp_path / "out" / "described.csv").read_text(encoding="utf-8-sig")
    assert "A-1" in told
    assert "B-9" not in told


def test_a_folder_that_is_there_stays_as_it_is(records, tmp_path):
    (tmp_path / "out").mkdir()
    records.press(Qt.Key.Key_E)
    records.answer("")
    records.answer(str(tmp_path / "out"))

    assert "is there already" in records.foot
    assert list((tmp_path / "out").iterdir()) == []


@pytest.fixture
def restored(tmp_path, keeping):
    """The book as it came back from a backup: no backup goes any more."""
    path = keeping.book.path
    copy = back_up(keeping.book, "before")
    keeping.close()
    restore(copy, path)
    with closing(open_keeping(path, station="rack-room", now=lambda: NOW, keeper="J.")) as again:
        yield again


def test_since_a_restore_b_offers_to_thin_backups_out_again(qtbot, restored):
    records = Records(qtbot, restored, PLACES)

    records.press(Qt.Key.Key_B)
    assert "every backup is kept since" in records.told
    records.answer("no")
    assert is_rotation_paused(restored.book.path)

    records.press(Qt.Key.Key_B)
    records.answer("yes")
    assert not is_rotation_paused(restored.book.path)


def test_without_a_restore_b_asks_nothing(records, keeping):
    records.press(Qt.Key.Key_B)

    assert not records.page._asking.isVisible()
    assert len(backups.backups_of(keeping.book.path)) == 1
