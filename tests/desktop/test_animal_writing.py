"""One line at the foot of an animal's page writes, finds and puts right; nothing typed is lost."""

from contextlib import closing
from datetime import date

import pytest
from animal_window import CONTROL, NONE, SECOND, Desk, K, desk, keeping
from life_sample import NOW, WREN, key_of
from PySide6.QtTest import QTest

from keeper.actions.keeping import open_keeping
from keeper.actions.noting import note
from keeper.desktop.widgets.key_sheet import KeySheet
from keeper.husbandry.events import Remark, RemarkKind
from keeper.husbandry.when import on_day

__all__ = ["desk", "keeping"]


def test_a_line_opens_with_the_keyboard_in_it_and_escape_leaves_it(desk):
    desk.press(K.Key_S)
    assert desk.page.line.field.hasFocus()

    QTest.keyClick(desk.page.line.field, K.Key_Escape)

    assert not desk.page.line.isVisible()
    assert desk.page.hasFocus()
    desk.press(K.Key_Left)
    assert desk.cursor == date(2026, 11, 24)


def test_keys_of_the_page_are_letters_while_a_line_is_open(desk):
    desk.press(K.Key_N)
    desk.type("shy, no hands", enter=False)
    desk.press(K.Key_PageDown)

    assert desk.page.line.field.text() == "shy, no hands"
    assert desk.page.page.animal.name == "Wren"


@pytest.mark.parametrize(
    ("key", "text", "foot", "told"),
    [
        (K.Key_S, "opaque", "opaque", "shed: opaque, since 25 Nov"),
        (K.Key_N, "mites: under the chin", "under the chin", "that day: mites: under the chin"),
        (K.Key_H, "vet, 12 Dec, swelling", "hold vet until 12 Dec 2026", "hold: vet"),
        (K.Key_B, "61.5, score 3", "61.5 cm snout to vent, body score 3", "61.5 cm, body score 3"),
        (K.Key_M, "a2 7", "to A2·7, with Fen", "place: A2·7, with Fen"),
        (K.Key_X, "male sired", "male, sired", "that day: male, has sired"),
    ],
)
def test_one_line_and_enter_write_it(desk, key, text, foot, told):
    desk.press(key)
    desk.type(text)

    assert foot in desk.foot
    assert told in desk.told
    assert not desk.page.line.isVisible()


def test_an_entry_is_of_the_day_of_the_cursor(desk):
    desk.to(date(2026, 10, 5))
    desk.press(K.Key_N)
    desk.type("calm on the scale")

    assert "that day: calm on the scale" in desk.told
    desk.press(K.Key_Right)
    assert "calm on the scale" not in desk.told


def test_what_is_refused_stays_in_the_field_with_its_sentence(desk):
    desk.press(K.Key_H)
    desk.type("vet, soon, swelling")

    assert desk.page.line.isVisible()
    assert desk.page.line.field.text() == "vet, soon, swelling"
    assert "'soon' is no day" in desk.foot
    assert desk.foot.startswith("not written")


def test_what_enter_would_do_is_told_while_typing(desk):
    desk.press(K.Key_S)
    desk.type("op", enter=False)

    assert desk.page.line._hint.text() == "writes: opaque"
    assert desk.page.line.field.accessibleName().startswith("shed sign")


def test_nothing_can_be_written_of_a_day_to_come(desk):
    desk.press(K.Key_Right)
    desk.press(K.Key_S)
    desk.type("opaque")

    assert "is a day to come" in desk.foot


def test_a_weight_is_put_right_with_its_reason_and_the_old_one_struck_through(desk):
    desk.to(SECOND)
    desk.press(K.Key_E)
    desk.type("41.2, read the wrong tub")

    assert "weight: 41.2 g" in desk.told
    assert "put right: 46 g, read the wrong tub, J. (put right since)" in desk.told
    assert "46 g put right to weight 41.2 g: read the wrong tub" in desk.foot


def test_another_entry_of_the_day_is_chosen_with_down(desk):
    desk.to(date(2026, 8, 21))
    desk.press(K.Key_E)
    assert "weight" in desk.page.line.field.accessibleName()

    QTest.keyClick(desk.page.line.field, K.Key_Down)
    desk.type("taken, gone next morning")

    assert "refused: 1 counted, 14 Aug" not in desk.told
    assert "last eaten: 21 Aug, that day" in desk.told


def test_a_day_with_nothing_to_put_right_says_so(desk):
    desk.to(date(2026, 9, 3))
    desk.press(K.Key_E)

    assert not desk.page.line.isVisible()
    assert "No weight and no offer is written of 3 Sep 2026." in desk.foot


def test_what_was_written_can_be_taken_back(desk):
    desk.press(K.Key_S)
    desk.type("opaque")

    desk.press(K.Key_Z, CONTROL)

    assert "shed: opaque" not in desk.told


@pytest.mark.parametrize("key", [K.Key_Slash, K.Key_F])
def test_find_opens_an_animal_by_name(desk, key):
    desk.press(key, CONTROL if key == K.Key_F else NONE)
    desk.type("ingr", enter=False)
    assert desk.page.line._hint.text() == "Enter opens C1·1 Ingrid 24-002"

    desk.type("")

    assert desk.page.page.animal.name == "Ingrid"
    assert not desk.page.line.isVisible()


def test_down_chooses_the_next_of_several(desk):
    desk.press(K.Key_Slash)
    desk.type("24-0", enter=False)
    QTest.keyClick(desk.page.line.field, K.Key_Down)
    desk.type("")

    assert desk.page.page.animal.name == "Alder"


def test_a_scanned_label_opens_its_animal(desk):
    desk.page.scanned("26-030")
    assert desk.page.page.animal.name == "Fen"

    desk.page.scanned("99-999")
    assert "No animal in this book has the code 99-999." in desk.foot


def test_a_change_elsewhere_is_shown_and_the_cursor_stays(desk, keeping):
    desk.to(SECOND)
    remark = Remark(
        animal=key_of(keeping, WREN),
        happened=on_day(SECOND),
        kind=RemarkKind.NOTE,
        text="shy today",
    )

    desk.house.notices.tell_written(note(keeping, "note", remark))

    assert "shy today" in desk.told
    assert desk.cursor == SECOND


def test_a_book_open_for_reading_refuses_and_keeps_the_text(qtbot, keeping):
    path = keeping.book.path
    with closing(open_keeping(path, station="other", now=lambda: NOW, read_only=True)) as read_only:
        desk = Desk(qtbot, read_only)
        desk.show(WREN)
        desk.press(K.Key_S)
        desk.type("opaque")

        assert "open for reading only" in desk.foot
        assert desk.page.line.field.text() == "opaque"


# --- keys in menu and sheet ------------------------------------------------------------------


def test_every_key_of_the_place_is_named_on_the_sheet(desk):
    sheet = desk.window.findChild(KeySheet)

    desk.press(K.Key_F1)

    assert sheet.isVisible()
    for line in ("S: shed sign", "E: put right", "PgDown: the next animal", "Home: to hatching"):
        assert line in sheet.text()


def test_no_two_keys_of_the_page_are_the_same(desk):
    shortcuts = [key.toString() for action in desk.page.actions() for key in action.shortcuts()]
    window = [key.toString() for action in desk.window.actions() for key in action.shortcuts()]

    assert len(shortcuts) == len(set(shortcuts)) > 15
    assert not set(shortcuts) & set(window)
