"""The first place as it was when the window was closed: shown at once, and only while right."""

import os
from dataclasses import replace
from datetime import timedelta
from itertools import pairwise

import pytest
from PySide6.QtCore import QRect, QSize, Qt
from trouble_sample import a_room

from keeper import app, language, start
from keeper.actions.due_board import due_rows
from keeper.actions.keeping import open_keeping
from keeper.actions.rounds import begin_night, night_of
from keeper.desktop.background import AtOnce
from keeper.desktop.first_sight import keep_sights, sight_of
from keeper.desktop.look import Look
from keeper.desktop.remembered import remember_language, remember_light
from keeper.desktop.sights_ahead import hours_ahead, sights_ahead

pytestmark = pytest.mark.usefixtures("home")


@pytest.fixture
def keeping(tmp_path):
    made = a_room(tmp_path / "room.book")
    yield made
    made.close()


@pytest.fixture
def left(qtbot, keeping, monkeypatch):
    """A book that the window was closed on, the clock standing still."""
    path, now = keeping.book.path, keeping.now()
    monkeypatch.setattr("keeper.clock.now", lambda: now)
    keeping.close()
    front = app.Front(Look(), worker=AtOnce())
    front.open(path)
    qtbot.wait(50)  # it is as large as it will be
    front.window.close()
    return path


class Begun:
    """A start on the book at *path*: the window with its picture, and what it becomes."""

    def __init__(self, path):
        self.front = None
        self.window = start.begin(path, self._go_on)

    def _go_on(self, path, window):
        self.first = window.grab().toImage()
        self.front = app.Front(Look(), worker=AtOnce(), window=window)
        self.front.open(path)

    @property
    def house(self):
        return self.front and self.front.house


def test_a_start_shows_at_first_sight_what_the_place_then_shows(qtbot, left):
    begun = Begun(left)
    window = begun.window
    assert window.at_first_sight
    assert begun.house is None
    title = window.windowTitle()

    qtbot.waitUntil(lambda: begun.house is not None)

    assert begun.front.window is window
    assert not window.at_first_sight
    assert window.windowTitle() == title == "Round · keeper"
    first, then = begun.first, window.grab().toImage()
    assert first.size() == then.size()
    clock = window.strip.height()  # the picture knows the day's words, not the minute
    below = QRect(0, clock, first.width(), first.height() - clock)
    assert first.copy(below) == then.copy(below)
    tabs = QRect(0, 0, first.width() // 2, clock)
    assert first.copy(tabs) == then.copy(tabs)
    window.close()


def test_a_place_asked_for_at_first_sight_is_gone_to_when_it_can_be(qtbot, left):
    begun = Begun(left)
    begun.window.go_to(1)
    begun.window.show_keys()

    qtbot.waitUntil(lambda: begun.house is not None)

    assert begun.window.place.name == "Weigh-in"
    begun.window.close()


def test_what_is_told_at_first_sight_stands_at_the_foot_when_there_is_one(qtbot, left):
    begun = Begun(left)
    begun.front = app.Front(Look(), worker=AtOnce(), window=begun.window)
    begun.front.tell("The disk is nearly full.")
    begun.front.open(left)

    assert begun.window.foot.text() == "The disk is nearly full."
    begun.window.close()


def test_a_window_closed_at_first_sight_opens_no_book(qtbot, left):
    begun = Begun(left)
    begun.window.close()
    qtbot.wait(50)

    assert begun.front is None
    open_keeping(left, station="other", now=app.clock.now).close()


def test_a_key_pressed_after_the_sight_reaches_the_place(qtbot, left):
    begun = Begun(left)
    qtbot.waitUntil(lambda: begun.house is not None)

    page = begun.window.page("Round")
    assert begun.window.focusWidget() is page
    qtbot.keyClick(page, Qt.Key.Key_Enter)
    assert rounds_opened(begun.house.keeping)
    begun.window.close()


def rounds_opened(keeping):
    (count,) = keeping.book.connection.execute("SELECT count(*) FROM round_opened").fetchone()
    return count


@pytest.mark.parametrize(
    "touched", ["file", "hour", "words", "picture", "light", "language", "environment"]
)
def test_what_may_be_wrong_is_not_shown(left, tmp_path, monkeypatch, touched):
    at = app.clock.now()
    assert sight_of(left, at) is not None
    if touched == "file":
        os.utime(left)
    elif touched == "hour":
        at += timedelta(days=30)
    elif touched == "words":
        (tmp_path / "home" / "first sight").write_text('{"of": 1}')
    elif touched == "picture":
        (tmp_path / "home" / "first sight 0.png").write_bytes(b"cut off")
    elif touched == "light":
        remember_light(red_lamp=True)
    elif touched == "language":
        remember_language("de")
    else:
        monkeypatch.setenv("LC_ALL", "de_DE.UTF-8")

    assert sight_of(left, at) is None


@pytest.mark.parametrize("why", ["language", "size"])
def test_a_window_that_will_look_or_speak_otherwise_leaves_no_picture(left, monkeypatch, why):
    front = app.Front(Look(), worker=AtOnce())
    front.open(left)
    if why == "language":
        monkeypatch.setattr(app, "SPOKEN", "another")
    else:
        front.window.showNormal()
    front.window.close()

    assert sight_of(left, app.clock.now()) is None


def test_the_picture_is_drawn_in_the_light_that_was_left(left):
    day = sight_of(left, app.clock.now())
    remember_light(red_lamp=True)
    front = app.Front(Look(red_lamp=True), worker=AtOnce())
    front.open(left)
    front.window.look.dim()
    front.window.close()

    lamp = sight_of(left, app.clock.now()).picture.toImage().pixelColor(400, 400)
    assert lamp == Look(red_lamp=True).colour("ground")
    assert day.picture.toImage().pixelColor(400, 400) == Look().colour("ground")


def test_the_days_ahead_are_what_the_board_says_on_those_days(keeping):
    ahead = list(hours_ahead(keeping, seconds=60))

    assert len(ahead) > 1
    for sight in ahead:
        for hour in (sight.begins, sight.ends - timedelta(seconds=1)):
            then = hour.replace(tzinfo=keeping.now().tzinfo)
            rows = due_rows(replace(keeping, now=lambda then=then: then), night_of(then))
            due = sum(row.plan.state.value == "due" for row in rows)
            assert sight.counts.total.counts[0] == due


def test_the_hours_ahead_do_not_overlap_and_hold_this_one(keeping):
    spans = sorted((s.begins, s.ends) for s in hours_ahead(keeping, seconds=60))
    here = keeping.now().replace(tzinfo=None)

    assert len(spans) > 1
    assert spans[0][0] <= here < spans[0][1]
    assert all(one[1] <= next_[0] for one, next_ in pairwise(spans))


def test_the_title_of_a_sight_is_in_the_language_of_the_words(keeping, monkeypatch):
    monkeypatch.setattr(language, "_lookup", lambda source, sense: f"⟦{source}⟧")

    sights = sights_ahead(keeping, ["Round"], Look(), QSize(800, 600))

    assert {sight.title for sight in sights} == {"⟦Round⟧ · keeper"}


def test_in_an_open_round_nothing_is_kept(keeping):
    begin_night(keeping, keeping.today)

    assert sights_ahead(keeping, ["Round"], Look(), QSize(800, 600)) == []


def test_what_is_kept_is_the_owner_s_alone(left, tmp_path):
    kept = list((tmp_path / "home").glob("first sight*"))

    assert len(kept) > 2
    assert not any(path.stat().st_mode & 0o077 for path in kept)


def test_nothing_kept_takes_the_old_away(left, tmp_path):
    keep_sights(left, [])

    assert not list((tmp_path / "home").glob("first sight*"))

    assert sight_of(left, app.clock.now()) is None
