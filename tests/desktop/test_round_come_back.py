"""Coming back to the round: counts follow, keys act on the book as it is, tubs are read at once."""

from contextlib import closing

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from keeper.actions.recording import Newcomer, receive, write_up
from keeper.actions.rounds import begin_night, open_night, read_again
from keeper.actions.undoing import put_back_batch, take_back_batch
from keeper.desktop.house import House
from keeper.desktop.look import Look
from keeper.desktop.screens.round import RoundScreen
from keeper.husbandry.events import Moved, Regurgitation
from keeper.husbandry.when import at_instant, on_day
from keeper.store import reading
from tests.feeding_room import NIGHT, ago, make_book, row
from tests.pad_desk import KEYS, said_on

ELSEWHERE, HERE = 1, 0


@pytest.fixture
def keeping(tmp_path):
    with closing(make_book(tmp_path / "back.book", row("A", 1, 4))) as made:
        yield made


@pytest.fixture
def window(qtbot, keeping):
    """On a place beside the round, which has been seen and left."""
    makers = {"Round": RoundScreen, "Watch": lambda look, *_: QWidget()}
    house = House(keeping, Look(), makers)
    made = house.window
    made.house = house
    qtbot.addWidget(made)
    made.resize(1440, 900)
    made.show()
    QApplication.processEvents()
    made.go_to(ELSEWHERE)
    return made


def newcomer(window, keeping, place):
    """One comes into *place*, written by another page."""
    come = Newcomer(happened=on_day(ago(1)), code=f"N{place}", species="house_snake")
    written, (animal,) = receive(keeping, [come])
    write_up(keeping, [Moved(animal=animal, happened=on_day(ago(1)), place=place)])
    window.house.notices.changed.emit()
    return written, animal


def press(window, *keys):
    for key in keys:
        QTest.keyClick(window.page("Round"), KEYS[key], Qt.KeyboardModifier.KeypadModifier)


def counted(window):
    """The racks that the quiet page counts."""
    return [rack.name for rack in window.page("Round")._quiet_view._table._counts.rows]


def test_what_was_counted_stays_until_it_is_counted_anew(window, keeping):
    newcomer(window, keeping, "C1·1")

    window.go_to(HERE)
    at_once = counted(window)
    for _ in range(8):
        QApplication.processEvents()

    assert (at_once, counted(window)) == (["A"], ["A", "C"])


def test_a_key_at_once_asks_the_book_as_it_is(window, keeping):
    newcomer(window, keeping, "C1·1")

    window.go_to(HERE)
    press(window, "+")

    assert window.page("Round")._asking.names == ("A", "C")


def test_enter_at_once_begins_the_round_with_all_that_stand_there(window, keeping):
    _, animal = newcomer(window, keeping, "C1·1")

    window.go_to(HERE)
    press(window, "Enter")

    assert animal in {tub.plan.animal for tub in open_night(keeping).tubs}
    assert "A1·1" in said_on(window.page("Round"))


def test_leaving_at_once_leaves_no_count_behind(window, keeping):
    newcomer(window, keeping, "C1·1")

    window.go_to(HERE)
    window.go_to(ELSEWHERE)
    for _ in range(8):
        QApplication.processEvents()

    assert counted(window) == ["A"]
    window.go_to(HERE)
    for _ in range(8):
        QApplication.processEvents()
    assert counted(window) == ["A", "C"]


def test_the_tubs_of_an_open_round_are_read_before_any_key(window, keeping):
    window.go_to(HERE)
    press(window, "Enter")
    window.go_to(ELSEWHERE)
    here = open_night(keeping).current
    found = Regurgitation(animal=here.plan.animal, happened=at_instant(keeping.now(), NIGHT))
    write_up(keeping, [found])
    window.house.notices.changed.emit()

    window.go_to(HERE)
    press(window, "Enter")

    assert open_night(keeping).tub(here.line).offer is None
    assert "regurgitated" in window.foot.text()


def test_a_tub_whose_animal_was_taken_out_of_the_book_and_put_back_is_walked_again(keeping):
    come = Newcomer(happened=on_day(ago(1)), code="N-1", species="house_snake")
    written, (animal,) = receive(keeping, [come])
    moved = write_up(keeping, [Moved(animal=animal, happened=on_day(ago(1)), place="C1·1")])
    walk = begin_night(keeping, NIGHT)
    every = [tub.plan for tub in walk.tubs]

    take_back_batch(keeping, moved.batch)
    take_back_batch(keeping, written.batch)
    without = read_again(walk, keeping)
    put_back_batch(keeping, written.batch)
    again = read_again(without, keeping)

    assert [tub.plan for tub in without.tubs] == every[:-1]
    assert [tub.plan for tub in again.tubs] == every
    assert reading.animal_now(keeping.book, animal) is not None
