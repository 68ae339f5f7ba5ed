"""The papers of the racks by their keys: labels in rack order, and the refusals of the nights."""

from contextlib import closing
from dataclasses import replace

import pypdfium2
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from keeper.actions.tub_labels import label_number
from keeper.desktop.background import AtOnce
from keeper.desktop.screens.racks import RacksScreen
from tests.feeding_room import make_book, refused_twice, room
from tests.pad_desk import Desk

CTRL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier


@pytest.fixture
def desk(qtbot, tmp_path):
    tubs = room(2, 3)
    tubs[3] = replace(tubs[3], more=refused_twice)
    with closing(make_book(tmp_path / "room.book", tubs)) as keeping:
        made = Desk(lambda *its: RacksScreen(*its, reader=AtOnce(), watcher=AtOnce()), keeping)
        made.window.activateWindow()
        assert QTest.qWaitForWindowActive(made.window)
        made.page.setFocus()
        made.bot = qtbot
        yield made
        made.page.close_down()
        made.close()


def printed(desk, folder, key, modifier, stem, first="1"):
    QTest.keyClick(desk.window, key, modifier)
    if not desk.page.line.isHidden():
        field = desk.page.line.field
        field.selectAll()
        QTest.keyClicks(field, first)
        QTest.keyClick(field, Qt.Key.Key_Return)
    desk.bot.waitUntil(lambda: "room.book." in (desk.noted or [""])[-1], timeout=10_000)
    (path,) = folder.glob(f"room.book.{stem}*.pdf")
    document = pypdfium2.PdfDocument(path)
    return [" ".join(p.get_textpage().get_text_range().split()) for p in document]


def numbers_in(words, rows):
    """Where on the pages the number of each of *rows* stands."""
    text = " ".join(words)
    digits = (label_number(row.animal) for row in rows)
    return [text.find(f"{d[:4]} {d[4:8]} {d[8:]}") for d in digits]


def test_the_labels_of_a_rack_are_those_of_its_tubs_in_rack_order(desk, tmp_path):
    QTest.keyClick(desk.window, Qt.Key.Key_PageDown)
    words = printed(desk, tmp_path, Qt.Key.Key_L, CTRL, "labels-B")

    rows = [row.animal for row in desk.page.room.everyone()]
    here = numbers_in(words, [row for row in rows if row.place.startswith("B")])
    assert len(words) == 2
    assert -1 not in here and here == sorted(here)
    assert set(numbers_in(words, [row for row in rows if row.place.startswith("A")])) == {-1}


def test_the_labels_of_the_room_are_everyones(desk, tmp_path):
    words = printed(desk, tmp_path, Qt.Key.Key_L, CTRL | SHIFT, "labels")

    assert desk.noted[0].endswith("being written.")

    here = numbers_in(words, [row.animal for row in desk.page.room.everyone()])
    assert len(here) == 60 and -1 not in here
    assert here == sorted(here)


def test_the_refusals_are_printed_with_their_margins(desk, tmp_path):
    (words,) = printed(desk, tmp_path, Qt.Key.Key_P, CTRL, "refusals")

    for part in ("A1 2 of 72", "A1·1 Reed 0 of 7", "refused 2 ", "1 of 1", "page 1 of 1"):
        assert part in words, part


def test_a_half_used_sheet_is_begun_where_it_is_free_and_the_next_label_is_proposed(desk, tmp_path):
    words = printed(desk, tmp_path, Qt.Key.Key_L, CTRL, "labels-A", first="26")

    rows = [row.animal for row in desk.page.room.everyone() if row.animal.place.startswith("A")]
    (_, *after) = numbers_in(words[:1], rows)
    assert after.count(-1) == len(after) - 1  # two labels stood on the sheet that was half used
    assert -1 not in numbers_in(words, rows)

    QTest.keyClick(desk.window, Qt.Key.Key_L, CTRL)
    assert desk.page.line.field.text() == str((25 + len(rows)) % 27 + 1)


def test_a_label_that_the_sheet_has_not_is_refused_and_asked_for_again(desk, tmp_path):
    QTest.keyClick(desk.window, Qt.Key.Key_L, CTRL)
    field = desk.page.line.field
    field.selectAll()
    QTest.keyClicks(field, "28")
    QTest.keyClick(field, Qt.Key.Key_Return)

    assert desk.refused[-1] == "28 is no label of a sheet; 1 to 27 is right."
    assert not desk.page.line.isHidden() and not list(tmp_path.glob("*.pdf"))


def test_the_labels_of_the_places_name_every_tub_of_the_rack_and_nobody(desk, tmp_path):
    words = " ".join(printed(desk, tmp_path, Qt.Key.Key_T, CTRL, "places-A"))

    assert "A1·1" in words and "rack A, row 3, tub 10" in words
    assert words.count("rack A, row") == 30 and "rack B" not in words
    assert "Reed" not in words


def test_a_scanned_label_of_a_place_chooses_its_tub(desk):
    desk.page.scanned("B2-3")

    at = desk.page.view.front.at
    assert (at.rack, at.row, at.tub) == (1, 1, 2)
