"""The first place as it was when the window was closed: shown at once, and only while right."""

import os
from dataclasses import replace
from datetime import timedelta
from itertools import pairwise

import pytest
from PySide6.QtCore import Qt
from trouble_sample import a_room

from keeper import app
from keeper.actions.due_board import due_rows
from keeper.actions.keeping import open_keeping
from keeper.actions.rounds import begin_night, night_of
from keeper.desktop.background import AtOnce
from keeper.desktop.first_sight import keep_sights, sight_of
from keeper.desktop.look import Look
from keeper.desktop.sights_ahead import sights_ahead
from keeper.desktop.widgets.night_counts import CountsTable

pytestmark = pytest.mark.usefixtures("home")


@pytest.fixture
def keeping(tmp_path):
    made = a_room(tmp_path / "room.book")
    yield made
    made.close()


@pytest.fixture
def left(keeping, monkeypatch):
    """A book that the window was closed on, the clock standing still."""
    path, now = keeping.book.path, keeping.now()
    monkeypatch.setattr("keeper.clock.now", lambda: now)
    keeping.close()
    front = app.Front(Look(), worker=AtOnce())
    front.open(path)
    front.window.close()
    return path


def table_of(window):
    return next(table for table in window.findChildren(CountsTable) if table.isVisible())


def begun(path):
    front = app.Front(Look(), worker=AtOnce())
    front.begin(path)
    return front


def test_a_start_shows_at_first_sight_what_the_place_then_shows(qtbot, left):
    front = begun(left)
    window = front.window
    assert window.at_first_sight
    assert front.house is None
    first = table_of(window).text()

    qtbot.waitUntil(lambda: front.house is not None)

    assert front.window is window
    assert not window.at_first_sight
    assert table_of(window).text() == first
    assert "due" in first
    window.close()


def test_a_place_asked_for_at_first_sight_is_gone_to_when_it_can_be(qtbot, left):
    front = begun(left)
    front.window.go_to(1)
    front.window.show_keys()

    qtbot.waitUntil(lambda: front.house is not None)

    assert front.window.place.name == "Weigh-in"
    front.window.close()


def test_a_window_closed_at_first_sight_opens_no_book(qtbot, left):
    front = begun(left)
    front.window.close()
    qtbot.wait(50)

    assert front.house is None
    open_keeping(left, station="other", now=app.clock.now).close()


def test_a_key_pressed_after_the_sight_reaches_the_place(qtbot, left):
    front = begun(left)
    qtbot.waitUntil(lambda: front.house is not None)

    page = front.window.page("Round")
    assert front.window.focusWidget() is page
    qtbot.keyClick(page, Qt.Key.Key_Enter)
    assert rounds_opened(front.house.keeping)
    front.window.close()


def rounds_opened(keeping):
    (count,) = keeping.book.connection.execute("SELECT count(*) FROM round_opened").fetchone()
    return count


@pytest.mark.parametrize("touched", ["file", "hour", "words"])
def test_what_may_be_wrong_is_not_shown(left, tmp_path, touched):
    at = app.clock.now()
    assert sight_of(left, at) is not None
    if touched == "file":
        os.utime(left)
    elif touched == "hour":
        at += timedelta(days=30)
    else:
        (tmp_path / "home" / "first sight").write_text('{"of": 1}')

    assert sight_of(left, at) is None


def test_the_days_ahead_are_what_the_board_says_on_those_days(keeping):
    ahead = sights_ahead(keeping, seconds=60)

    assert len(ahead) > 1
    for sight in ahead:
        for hour in (sight.begins, sight.ends - timedelta(seconds=1)):
            then = hour.replace(tzinfo=keeping.now().tzinfo)
            rows = due_rows(replace(keeping, now=lambda then=then: then), night_of(then))
            due = sum(row.plan.state.value == "due" for row in rows)
            assert sight.counts.total.counts[0] == due


def test_the_hours_ahead_do_not_overlap_and_hold_this_one(keeping):
    spans = sorted((s.begins, s.ends) for s in sights_ahead(keeping, seconds=60))
    here = keeping.now().replace(tzinfo=None)

    assert len(spans) > 1
    assert spans[0][0] <= here < spans[0][1]
    assert all(one[1] <= next_[0] for one, next_ in pairwise(spans))


def test_in_an_open_round_nothing_is_kept(keeping):
    begin_night(keeping, keeping.today)

    assert sights_ahead(keeping) == []


def test_what_is_kept_is_the_owner_s_alone(left, tmp_path):
    assert (tmp_path / "home" / "first sight").stat().st_mode & 0o077 == 0


def test_nothing_kept_takes_the_old_away(left):
    keep_sights(left, [])

    assert sight_of(left, app.clock.now()) is None
