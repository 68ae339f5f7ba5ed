"""The stock register by its key in Records: asked for as at a day, read back from its PDF."""

from contextlib import closing

import pypdfium2
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from trouble_sample import TODAY, Window, add, at_once, empty_book

from keeper.actions.noting import note
from keeper.desktop.screens.records import RecordsScreen
from keeper.husbandry.animal import Status
from keeper.husbandry.events import Stock
from keeper.husbandry.when import on_day

CTRL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def keeping(tmp_path):
    with closing(empty_book(tmp_path / "house.book")) as made:
        animal = add(made, "A-1", "Ingrid", "A1·1")
        gone = Stock(animal=animal, happened=on_day(TODAY), status=Status.SOLD, note="to a school")
        note(made, "standing", gone)
        for n in range(2, 40):
            add(made, f"A-{n}", f"Young {n}", f"A2·{n}")
        yield made


@pytest.fixture
def records(qtbot, keeping):
    made = Window(qtbot, keeping, {"Records": at_once(RecordsScreen)})
    made.bot = qtbot
    return made


def asked(records, text):
    QTest.keyClick(records.page, Qt.Key.Key_P, CTRL)
    records.page._asking.field.setText(text)
    QTest.keyClick(records.page._asking.field, Qt.Key.Key_Return)


def test_the_register_is_printed_as_at_the_day_that_was_asked_for(records, tmp_path):
    asked(records, "")
    records.bot.waitUntil(
        lambda: bool(list(tmp_path.glob("house.book.register-*.pdf"))), timeout=10_000
    )
    (path,) = tmp_path.glob("house.book.register-*.pdf")
    document = pypdfium2.PdfDocument(path)
    pages = [" ".join(p.get_textpage().get_text_range().split()) for p in document]

    assert path.name == f"house.book.register-{TODAY.isoformat()}.pdf"
    assert len(pages) > 1
    for number, words in enumerate(pages, start=1):
        assert f"page {number} of {len(pages)}" in words
        assert "Printed " in words
    assert all("what happened" in words for words in pages if " (+1)" in words)
    whole = " ".join(pages)
    for part in ("A-1, ", "out", "to a school", "0 (\u22121)", "A-39", "local law"):
        assert part in whole, part


def test_a_day_to_come_is_refused_in_one_sentence_and_asked_for_again(records, tmp_path):
    asked(records, "2031-01-01")

    assert not records.page._asking.isHidden()
    assert not list(tmp_path.glob("*.pdf"))
