"""The carry-out list by its key in Racks, read back from its PDF."""

from contextlib import closing
from dataclasses import replace

import pypdfium2
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from keeper.desktop.background import AtOnce
from keeper.desktop.screens.racks import RacksScreen
from tests.feeding_room import make_book, room
from tests.pad_desk import Desk

CTRL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def desk(qtbot, tmp_path):
    tubs = room(1, 8)
    tubs[3] = replace(tubs[3], fed_days=1)
    with closing(make_book(tmp_path / "room.book", tubs)) as keeping:
        made = Desk(lambda *its: RacksScreen(*its, reader=AtOnce(), watcher=AtOnce()), keeping)
        made.window.activateWindow()
        assert QTest.qWaitForWindowActive(made.window)
        made.page.setFocus()
        made.bot = qtbot
        yield made
        made.page.close_down()
        made.close()


def test_eighty_animals_are_two_pages_with_everyone_and_the_order(desk, tmp_path):
    QTest.keyClick(desk.window, Qt.Key.Key_O, CTRL)
    desk.bot.waitUntil(lambda: "room.book." in (desk.noted or [""])[-1], timeout=10_000)
    (path,) = tmp_path.glob("room.book.carry-out-*.pdf")
    document = pypdfium2.PdfDocument(path)
    pages = [" ".join(p.get_textpage().get_text_range().split()) for p in document]

    assert len(pages) == 2
    for number, words in enumerate(pages, start=1):
        assert f"page {number} of 2" in words and "Printed " in words
    whole = " ".join(pages)
    for living in desk.page.room.everyone():
        assert f"{living.animal.place} {living.animal.name} 120 g" in whole
    for part in ("people first", "fed lately, in their tubs 1 A1: 4", "ask a reptile vet"):
        assert part in whole, part
