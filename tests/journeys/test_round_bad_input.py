"""What cannot be: one sentence at the foot of the window, nothing written, the cursor stays.

Real key events in the real window, a scanner that types like a keyboard, a real book on disk.
"""

from contextlib import closing
from datetime import timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from keeper.actions.rounds import begin_night, open_night
from keeper.actions.sheets import round_code
from keeper.app import build_house
from keeper.desktop.look import Look
from keeper.desktop.widgets.offer_panel import OfferPanel
from keeper.reports.figures import plain
from tests.feeding_room import NIGHT, Clock, make_book, row
from tests.pad_desk import KEYS


@pytest.fixture
def clock():
    return Clock()


@pytest.fixture
def keeping(tmp_path, clock):
    tubs = [*row("A", 1, 4), *row("B", 1, 3, first=10)]
    with closing(make_book(tmp_path / "night.book", tubs, clock)) as book:
        yield book


class Room:
    """The window over a book, with what is on its foot and where its cursor stands."""

    def __init__(self, keeping, qtbot):
        self.keeping = keeping
        self.house = build_house(keeping, Look(red_lamp=True))
        qtbot.addWidget(self.house.window)
        self.house.window.show()
        self.page = self.house.window.page("Round")

    def press(self, keys):
        for key in keys.split():
            QTest.keyClick(self.page, KEYS[key], Qt.KeyboardModifier.KeypadModifier)

    def scan(self, code):
        """As the filter of the window hands over what a scanner typed."""
        self.house.window.scanned.emit(code)

    @property
    def foot(self):
        return plain(self.house.window.foot.text())

    @property
    def place(self):
        return self.page.findChild(OfferPanel).text().split(",")[0]

    @property
    def batches(self):
        return self.keeping.book.connection.execute("SELECT count(*) FROM batch").fetchone()[0]


@pytest.fixture
def room(qtbot, keeping):
    made = Room(keeping, qtbot)
    made.press("Enter Enter")  # the round is begun, and one tub fed
    return made


def stays(room, sentence, do):
    """Nothing is written by *do*, the cursor stays, and the foot says *sentence*."""
    before, foot = room.batches, room.foot
    assert foot != sentence
    do()
    assert room.batches == before
    assert room.place == "A1·2"
    assert room.foot == sentence


@pytest.mark.parametrize("keys", ["1", "4", "6", "1 4 6 1 4 6"])
def test_dead_keys_do_nothing_and_say_nothing(room, keys):
    before, foot = room.batches, room.foot
    assert foot.startswith("written")
    room.press(keys)

    assert (room.batches, room.place, room.foot) == (before, "A1·2", foot)


@pytest.mark.parametrize(
    ("keys", "sentence"),
    [
        ("9 9 9 Enter", "There is no line 99 tonight; lines run 1 to 7."),
        ("9 9 9 9 9 9 9 9 Enter", "There is no line 99999 tonight; lines run 1 to 7."),
        ("9 Enter", "No line was typed; give its number, then Enter."),
        ("3 9 9 Enter", "There is no line 99 tonight; lines run 1 to 7."),
        ("3 2 Enter", "Line 2 is this tub; give the line that took the item."),
        ("/ 4 4", "4 items are more than the 3 of a usual meal; 4 again takes them."),
        ("/ 4 0", "0 items is no offer; 1 to 9 are right."),
    ],
)
def test_a_line_a_count_or_a_taker_that_cannot_be_is_one_sentence(room, keys, sentence):
    stays(room, f"not written: {sentence}", lambda: room.press(keys))


def test_a_count_of_forty_items_cannot_be_typed_and_its_first_digit_is_doubted(room):
    room.press("/ 4")
    stays(
        room,
        "not written: 4 items are more than the 3 of a usual meal; 4 again takes them.",
        lambda: room.press("4"),
    )
    stays(room, "not written: 0 items is no offer; 1 to 9 are right.", lambda: room.press("0"))
    room.press(". Enter")
    assert room.foot.split(", ")[3:6] == ["taken", "2 fuzzy mouse", "10 g"]


@pytest.mark.parametrize("code", ["HS-999", "B9·9", "nothing at all"])
def test_a_scan_of_an_unknown_code_is_one_sentence(room, code):
    sentence = f"not written: No tub of tonight’s round bears {code!r}."
    stays(room, sentence, lambda: room.scan(code))


def test_a_sheet_code_from_another_night_is_one_sentence(qtbot, keeping, clock):
    old = begin_night(keeping, NIGHT - timedelta(days=4))
    old.close()
    room = Room(keeping, qtbot)
    room.press("Enter Enter")
    code = round_code(old.round)

    stays(
        room,
        f"not written: Code {code} is of the night of 21 Nov 2026, not of 25 Nov 2026.",
        lambda: room.scan(code),
    )


def test_a_sheet_code_of_no_night_or_with_a_slip_is_one_sentence(room):
    right = round_code(open_night(room.keeping).round)
    slipped = f"{right[:-1]}{(int(right[-1]) + 1) % 10}"
    unknown = round_code(open_night(room.keeping).round + 12345)

    stays(
        room,
        f"not written: {slipped} holds a slip: its check digit does not fit.",
        lambda: room.scan(slipped),
    )
    stays(
        room,
        f"not written: Code {unknown} is not of a night in this book; look whose sheet it is.",
        lambda: room.scan(unknown),
    )


def test_the_sheet_of_tonight_is_begun_by_its_code(room):
    room.scan(round_code(open_night(room.keeping).round))

    assert room.page.over.page is room.page.over.all_but


def test_the_code_of_another_sheet_is_no_exception_of_this_one(qtbot, keeping):
    old = begin_night(keeping, NIGHT - timedelta(days=4))
    old.close()
    room = Room(keeping, qtbot)
    room.press("Enter Enter")
    before = room.batches
    room.scan(round_code(open_night(keeping).round))
    room.scan(round_code(old.round))

    assert "is of the night of 21 Nov 2026, not of 25 Nov 2026." in room.foot
    room.scan(round_code(open_night(keeping).round))
    assert "Lines of this night are being typed" in room.foot
    assert room.batches == before


def test_what_fails_between_the_key_and_the_disk_leaves_the_cursor(room):
    before = room.batches
    room.keeping.book.connection.execute("PRAGMA query_only = ON")
    room.press("0")
    room.keeping.book.connection.execute("PRAGMA query_only = OFF")

    assert room.foot.startswith("not written: ")
    assert (room.place, room.batches) == ("A1·2", before)
    room.press("0")
    assert (room.place, room.batches) == ("A1·3", before + 1)
