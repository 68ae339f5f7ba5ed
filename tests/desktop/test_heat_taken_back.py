"""In the whole window: a logger's file goes with one key, comes back with another, and is told."""

from contextlib import closing

import pytest
from heat_room import TODAY, a_logger_file, a_room, placed
from PySide6.QtCore import Qt
from trouble_sample import Window, at_once

from keeper.actions.heat_board import heat_board
from keeper.actions.records import record_rows
from keeper.actions.station import HOME_VARIABLE
from keeper.desktop.screens.heat import HeatScreen

CONTROL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier


@pytest.fixture(autouse=True)
def home(tmp_path, monkeypatch):
    monkeypatch.setenv(HOME_VARIABLE, str(tmp_path / "home"))


@pytest.fixture
def keeping(tmp_path):
    with closing(a_room(tmp_path / "a.book")) as made:
        placed(made)
        yield made


def hot_end(keeping) -> float | None:
    return (
        next(line for line in heat_board(keeping, TODAY).lines if line.place == "A2")
        .cells[0]
        .temp_c
    )


def test_a_file_taken_in_is_taken_back_and_put_back_by_the_keys_of_every_deed(
    qtbot, keeping, tmp_path
):
    room = Window(qtbot, keeping, {"Heat": at_once(HeatScreen)}, size=(1024, 600))
    room.press(Qt.Key.Key_L)
    room.answer(str(a_logger_file(tmp_path / "l.csv", days=3)))
    before = hot_end(keeping)

    room.press(Qt.Key.Key_Return)
    taken_in, told = hot_end(keeping), room.foot.replace("\u00a0", " ")
    room.take_back()
    taken_back = hot_end(keeping)
    room.press(Qt.Key.Key_Z, modifier=CONTROL | SHIFT)

    assert (before, taken_in, taken_back, hot_end(keeping)) == (None, 24.0, None, 24.0)
    assert "864 readings from l.csv, 1 kept aside" in told
    assert "take in readings" in [row.batch.verb for row in record_rows(keeping)]
