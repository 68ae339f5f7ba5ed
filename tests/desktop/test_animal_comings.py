"""Who comes and goes is written on an animal's page with one line each, by real keys."""

from contextlib import closing

import pytest
from animal_window import CONTROL, Desk, K, desk, keeping
from trouble_sample import empty_book

from keeper.store.reading import board

__all__ = ["desk", "keeping"]


def hint(desk):
    return desk.page.line._hint.text().replace("\u00a0", " ")


def test_a_new_animal_is_told_back_before_enter_writes_it_and_opens_its_page(desk):
    desk.press(K.Key_A)
    desk.type("26-101, corn snake, f, 3 Sep 2026, B4-2, Thora", enter=False)
    assert "writes: 26-101, Thora, corn snake, female, hatched 3 Sep 2026, into B4·2" in hint(desk)

    desk.type("")

    assert "26-101, Thora, corn snake" in desk.foot
    assert desk.page.page.animal.name == "Thora"


def test_a_line_that_cannot_be_taken_stays_to_be_mended(desk):
    desk.press(K.Key_A)
    desk.type("26-101, dragon")

    assert "no profile is called 'dragon'" in desk.foot
    assert desk.page.line.field.text() == "26-101, dragon"


def test_a_hatch_opens_the_page_of_the_first_and_one_step_takes_all_back(desk):
    desk.press(K.Key_Y)
    desk.type("3, 26-9, C9-1")
    assert "3 hatched, 26-9 a to 26-9 c, into C9·1 to C9·3" in desk.foot
    assert desk.page.page.animal.code == "26-9 a"

    desk.press(K.Key_Z, CONTROL)

    codes = {row.code for row in board(desk.house.keeping.book)}
    assert not any(code.startswith("26-9 ") for code in codes)


@pytest.mark.parametrize(
    ("key", "text", "foot"),
    [
        (K.Key_L, "8, 2 slugs, 61 g, 26-9", "laid 8 eggs, 2 slugs, clutch 26-9"),
        (K.Key_G, "on loan, to a friend", "on loan"),
        (K.Key_D, "line Sandpaper", "line Sandpaper"),
    ],
)
def test_eggs_a_standing_and_a_line_are_written_with_one_key(desk, key, text, foot):
    desk.press(key)
    desk.type(text)

    assert foot in desk.foot


def test_an_empty_book_says_how_its_first_animal_is_written(qtbot, tmp_path):
    with closing(empty_book(tmp_path / "empty.book")) as made:
        desk = Desk(qtbot, made)
        assert "A writes one in" in desk.page.nobody.text()

        desk.press(K.Key_A)

        assert desk.page.line.height() < desk.page.height() / 8  # a line, not half the page
        assert desk.page.nobody.contentsMargins().left() > 0
        desk.type("26-1, house snake, m, 2026, A1-1")

        assert desk.page.page.animal.code == "26-1"
        assert not desk.page.nobody.isVisible()
        assert desk.page.head._identity.name == "26-1"  # who has no name is called by its code
        assert desk.page.head._identity.code == ""
