"""The sheds page on a real book: what needs a look first, signs noted, cautions told."""

from __future__ import annotations

from contextlib import closing
from datetime import timedelta

import pytest
from heat_room import TODAY, a_room, a_sign
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from shots import grab, luminance_of

from keeper.actions.aftercare import LOOKS, note_look
from keeper.actions.recording import write_up
from keeper.actions.shed_board import NOTES, shed_rows
from keeper.actions.undoing import take_back
from keeper.actions.watching import watch_lines
from keeper.desktop.background import AtOnce
from keeper.desktop.look import Look
from keeper.desktop.main_window import MainWindow
from keeper.desktop.notices import Notices
from keeper.desktop.places import Place
from keeper.desktop.screens.shed_words import caution
from keeper.desktop.screens.sheds import ShedsScreen
from keeper.desktop.widgets.shed_list import ShedList
from keeper.desktop.widgets.walked import first_shown
from keeper.husbandry.events import Remark, RemarkKind, ShedQuality, ShedSign, ShedStage
from keeper.husbandry.when import on_day
from keeper.store import reading

SHED, OPAQUE, DULL = ShedStage.SHED, ShedStage.OPAQUE, ShedStage.DULL


@pytest.fixture
def keeping(tmp_path):
    """Ash overdue, Bryony opaque too long, Cress opaque, Dock resting, the others untold."""
    with closing(a_room(tmp_path / "a.book")) as made:
        signs = [
            each
            for name, last in (("Ash", 110), ("Bryony", 60), ("Cress", 50), ("Dock", 20))
            for back in range(last, 290, 55)
            for each in (
                a_sign(made, name, OPAQUE, back + 5),
                a_sign(made, name, SHED, back, quality=ShedQuality.WHOLE),
            )
        ]
        signs += [a_sign(made, "Bryony", OPAQUE, 14), a_sign(made, "Cress", OPAQUE, 2)]
        write_up(made, signs)
        yield made


class ShedDesk:
    def __init__(self, qtbot, keeping, size=(1440, 900), red_lamp=False, worker=None):
        self.notices, self.keeping = Notices(), keeping
        self.noted, self.asked = [], []
        self.notices.noted.connect(self.noted.append)
        self.notices.animal_asked.connect(self.asked.append)

        def made(look):
            return ShedsScreen(look, keeping, self.notices, worker=worker or AtOnce())

        place = Place(key="F4", name="Sheds", title="Sheds", make=made)
        self.window = MainWindow(Look(red_lamp=red_lamp), [place])
        qtbot.addWidget(self.window)
        self.window.resize(*size)
        self.window.show()
        with qtbot.waitActive(self.window):
            self.window.activateWindow()
        self.page = self.window.page("Sheds")
        self.page.setFocus()

    def press(self, *keys: str) -> None:
        for key in keys:
            QTest.keyClick(self.page, Qt.Key[f"Key_{key}"])

    def signs(self, name: str):
        animal = next(r.animal.animal for r in self.page._rows if r.animal.name == name)
        return [e.event for e in reading.history(self.keeping.book, ShedSign, animal)]


@pytest.fixture
def desk(qtbot, keeping):
    return ShedDesk(qtbot, keeping)


def names(keeping) -> list[str | None]:
    return [row.animal.name for row in shed_rows(keeping, TODAY)]


def test_what_is_late_stands_first_then_cycles_then_rest_then_the_untold(keeping):
    assert names(keeping) == ["Ash", "Bryony", "Cress", "Dock", "Elder", "Fern"]


def test_a_kept_tail_tip_is_more_urgent_than_any_late_shed(keeping):
    write_up(keeping, [a_sign(keeping, "Dock", SHED, 1, quality=ShedQuality.TIP_KEPT)])

    first = shed_rows(keeping, TODAY)[0]

    assert (first.animal.name, first.severity) == ("Dock", "today")
    assert first.again_on == TODAY + timedelta(days=1)


def test_a_digit_notes_what_is_seen_as_the_round_marks_it(desk):
    desk.press("Down", "Down", "3")

    last = desk.signs("Cress")[-1]
    assert (last.stage, last.happened.day) == (ShedStage.CLEARED, TODAY)


def test_a_walked_list_looks_as_one_that_was_walked_there_at_once(qtbot, keeping):
    """What is kept of the lines is the same wherever the walk stands, and goes with a note."""
    walked, at_once = ShedDesk(qtbot, keeping), ShedDesk(qtbot, keeping)
    pictures = []
    for desk, way in ((walked, ("Down", "Down", "Up")), (at_once, ("Down",))):
        for key in way:
            desk.press(key)
            pictures.append(desk.page.findChild(ShedList).grab().toImage())

    assert pictures[2] == pictures[3] == pictures[0] != pictures[1]

    at_once.press("3")
    assert at_once.page.findChild(ShedList).grab().toImage() not in pictures


@pytest.mark.parametrize("key", sorted(NOTES))
def test_every_key_writes_its_stage_and_quality(desk, key):
    desk.press("Down", "Down", "Down", key)

    last = desk.signs("Dock")[-1]
    assert (last.stage, last.quality) == (NOTES[key].stage, NOTES[key].quality)


def test_a_walk_down_the_list_goes_on_after_the_animal_that_was_noted(desk):
    names = [row.animal.name for row in desk.page._rows]
    desk.press("Down", "Down", "Down", "7")

    assert desk.page._chosen().animal.name == "Dock"
    assert [row.animal.name for row in desk.page._rows] == names

    desk.press("Down")

    assert desk.page._chosen().animal.name == names[names.index("Dock") + 1]


def test_the_animal_that_was_noted_stands_first_when_the_page_is_come_back_to(desk):
    desk.press("Down", "Down", "Down", "7")
    desk.page.hide()
    desk.page.show()

    assert desk.page._chosen().animal.name == "Dock"
    assert desk.page._line == 0


def test_with_an_eye_cap_comes_the_caution_never_to_pick_at_it(desk):
    desk.press("Down", "Down", "6")

    assert "Never pick at an eye cap." in desk.noted[-1]
    assert "vet" not in desk.noted[-1]
    assert "Ctrl+Z takes it back" in desk.noted[-1]


def test_a_ring_that_was_removed_closes_the_follow_up_and_taken_back_opens_it_again(desk):
    desk.press("Down", "Down", "Down", "7")
    assert desk.page._chosen().left == "tail tip kept"

    desk.press("8")

    dock = desk.page._chosen()
    assert (dock.animal.name, dock.severity, dock.left) == ("Dock", None, "")
    assert not [line for line in watch_lines(desk.keeping, TODAY) if line.kind == "stuck shed"]

    take_back(desk.keeping)
    desk.notices.changed.emit()

    assert desk.page._chosen().left == "tail tip kept"
    assert [x.place for x in watch_lines(desk.keeping, TODAY) if x.kind == "stuck shed"]


def test_a_ring_still_there_is_looked_at_again_two_days_after_the_look(keeping):
    ring = a_sign(keeping, "Dock", SHED, 3, quality=ShedQuality.TIP_KEPT)
    write_up(keeping, [ring])
    dock = shed_rows(keeping, TODAY)[0]
    assert dock.again_on == TODAY

    note_look(keeping, dock.animal, LOOKS["9"], dock.left)

    (after,) = [row for row in shed_rows(keeping, TODAY) if row.animal.name == "Dock"]
    assert (after.left, after.severity) == ("tail tip kept", "today")
    assert after.again_on == TODAY + timedelta(days=2)


def test_a_look_at_an_animal_whose_shed_left_nothing_is_refused(desk):
    told = []
    desk.notices.refused.connect(told.append)

    desk.press("Down", "Down", "Down", "8")

    assert "Dock left nothing behind" in told[-1]
    assert not reading.all_of(desk.keeping.book, Remark)


def test_a_cap_that_was_gone_between_is_no_second_cap(desk):
    first = a_sign(desk.keeping, "Cress", SHED, 40, quality=ShedQuality.CAP_KEPT)
    animal = first.animal
    gone = Remark(
        animal=animal,
        happened=on_day(TODAY - timedelta(days=30)),
        kind=RemarkKind.SHED_GONE,
        text="eye cap kept",
    )
    write_up(desk.keeping, [first, gone])
    desk.notices.changed.emit()
    desk.page._choose([row.animal.name for row in desk.page._rows].index("Cress"))

    desk.press("6")

    assert "Never pick at an eye cap." in desk.noted[-1]
    assert "vet" not in desk.noted[-1]


def test_an_eye_cap_kept_at_two_sheds_is_the_vet_s(desk):
    cap = a_sign(desk.keeping, "Cress", SHED, 40, quality=ShedQuality.CAP_KEPT)
    write_up(desk.keeping, [cap])
    desk.notices.changed.emit()
    chosen = [row.animal.name for row in desk.page._rows].index("Cress")
    desk.page._choose(chosen)

    desk.press("6")

    assert "Ask a reptile vet" in desk.noted[-1]


def test_with_a_tail_tip_comes_that_a_ring_cuts_it_off_within_days(desk):
    desk.press("Down", "Down", "7")

    assert "cuts it off within days" in desk.noted[-1]


def test_pieces_ask_for_a_look_after_a_day(desk):
    desk.press("Down", "Down", "5")

    row = desk.page._chosen()
    assert row.again_on == TODAY + timedelta(days=1)
    assert "look again after a day" in desk.noted[-1]


def test_after_a_whole_shed_there_is_nothing_to_follow(desk):
    desk.press("Down", "Down", "4")

    assert desk.noted == []
    assert desk.page._chosen().again_on is None


def test_what_cannot_be_told_says_why(desk):
    told = desk.page.list.text().splitlines()

    assert "cannot tell. No shed in the book." in next(line for line in told if "Fern" in line)


def test_enter_opens_her_page(desk):
    desk.press("Down", "Return")

    assert desk.asked == [desk.page._rows[1].animal.animal]


def test_the_chosen_line_is_always_among_those_shown():
    for room in (1, 2, 5, 9):
        first = 0
        for line in (*range(30), *range(29, -1, -1)):
            first = first_shown(line, 30, room, first)
            assert first <= line < first + room
            assert 0 <= first <= 30 - room


@pytest.mark.parametrize("size", [(1440, 900), (1024, 600)])
@pytest.mark.parametrize("red_lamp", [False, True], ids=["day", "red-lamp"])
def test_the_page_fits_and_stays_dim_under_the_red_lamp(qtbot, keeping, tmp_path, size, red_lamp):
    desk = ShedDesk(qtbot, keeping, size, red_lamp)

    image = grab(desk.window, tmp_path / "sheds.png", size)

    assert (image.width(), image.height()) == size
    light = luminance_of(image).mean()
    assert light < 0.08 if red_lamp else light > 0.6


def test_what_a_ring_does_within_days_stands_on_the_cautions_own_ground(keeping):
    write_up(keeping, [a_sign(keeping, "Dock", SHED, 1, quality=ShedQuality.TIP_KEPT)])

    told = caution(shed_rows(keeping, TODAY)[0])

    assert "cuts it off within days" in told
    assert "Ask a reptile vet" in told
