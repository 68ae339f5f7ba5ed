"""A round killed again and again between its keys: it goes on at that tub, nothing is lost.

A real window off screen in a process of its own, real key events, a real book on disk and
SIGKILL. What the book must hold is told by the acknowledged keys alone.
"""

import random
import signal
import sys
from collections import Counter
from contextlib import closing
from datetime import timedelta
from pathlib import Path

import pytest

from keeper.husbandry.events import Offer, Remark
from keeper.store import reading
from keeper.store.database import open_book
from keeper.store.state import differing
from tests.feeding_room import STATION, Clock, make_book, room
from tests.journeys.killed_round import ROW, ROWS, Night, State, Window

LONG_KILLS, SHORT_KILLS = 200, 5
LEAST_IN_FLIGHT = 0.25
"""So large a share of the kills falls while a key is on its way, the rest between two keys."""


def in_the_book(path: Path) -> tuple[State, int]:
    """What the book says, without where the keeper stands; and lines that have two results."""
    with closing(open_book(path, station=STATION, read_only=True)) as book:
        offers = [e.event for e in reading.all_of(book, Offer, "e.round IS NOT NULL")]
        marks = [e.event.animal for e in reading.all_of(book, Remark)]
        count = book.connection.execute
        (offer_rows,) = count("SELECT count(*) FROM offer WHERE round IS NOT NULL").fetchone()
        (mark_rows,) = count("SELECT count(*) FROM remark").fetchone()
        lines = {o.animal: o.line for o in offers}
        lines |= dict(count("SELECT animal, line FROM plan_line").fetchall())
    told = {o.line: (o.result.value, o.evidence.value, o.prey) for o in offers}
    state = State(
        offers=told,
        offer_rows=offer_rows,
        marks=[lines[animal] for animal in marks],
        mark_rows=mark_rows,
    )
    return state, len(offers) - len(told)


def same(found: State, wanted: State) -> bool:
    """Whether the book holds what it must: no line more, none less, none twice."""
    told = (found.offers, found.offer_rows, Counter(found.marks), found.mark_rows)
    return told == (wanted.offers, wanted.offer_rows, Counter(wanted.marks), wanted.mark_rows)


def standing(night: Night, state: State) -> str:
    kind = "check" if state.checking else "offer"
    return f"{kind} {state.cursor or 0} {night.place(state.cursor)}"


class Campaign:
    """One night, killed *kills* times. ``between`` and ``in_flight`` count the kills."""

    def __init__(self, path: Path, tubs: int, seed: int, most_keys: int) -> None:
        self.path, self.night = path, Night(tubs, seed)
        self.between = self.in_flight = self.keys = self.lives = 0
        self._dice, self._most = random.Random(seed + 1), most_keys
        self._window = self._begun()

    def kill(self) -> None:
        """Press some keys, kill the window, open the book again and look."""
        before, keys = self.night.state, self._dice.randint(1, self._most)
        while True:
            for key, after in self.night.done(self.night.next_deed()):
                keys -= 1
                if keys < 0:
                    self._cut(key, before, after)
                    return
                self._window.press(key)
                self.keys += 1
                assert self._window.standing == standing(self.night, after)
                before = after

    def walk_on(self) -> None:
        """To the end of both passes and past the closing, with nobody in the way."""
        while not self.night.over:
            for key, _ in self.night.done(self.night.next_deed()):
                self._window.press(key)
        assert same(in_the_book(self.path)[0], self.night.state)
        self._window.press("Enter")
        assert self._window.standing == "quiet"

    def end(self) -> None:
        self._window.kill()

    def _begun(self) -> Window:
        window = Window(self.path, self.lives)
        assert window.standing == "quiet"
        window.press("Enter")
        assert window.standing == standing(self.night, self.night.state)
        return window

    def _cut(self, key: str, before: State, after: State) -> None:
        """Killed before *key*, or while it was on its way."""
        in_flight = self._dice.random() < LEAST_IN_FLIGHT
        if in_flight:
            self._window.send(key)
        assert self._window.kill() == -signal.SIGKILL
        self.lives += 1
        self._window = Window(self.path, self.lives)
        found, doubled = in_the_book(self.path)
        assert doubled == 0
        if in_flight:
            self.in_flight += 1
            self._found_in_flight(found, before, after)
        else:
            self.between += 1
            assert same(found, before)
            assert self._window.standing == standing(self.night, before)
            self.night.goes_on_from(before)

    def _found_in_flight(self, found: State, before: State, after: State) -> None:
        """All of the key or none of it is in the book; nobody was told where it left off."""
        kept = after if same(found, after) else before
        assert same(found, kept)
        kind, line, _ = self._window.standing.split()
        kept.checking, kept.cursor = kind == "check", int(line) or None
        self.night.goes_on_from(kept)


@pytest.fixture
def campaign(tmp_path):
    """Make a campaign on a room of so many racks; its window is gone when the test ends."""
    made = []

    def make(racks, rows, *, seed, most_keys):
        path = tmp_path / "night.book"
        make_book(path, room(racks=racks, rows=rows), Clock(timedelta(seconds=1))).close()
        made.append(Campaign(path, racks * rows * ROW, seed, most_keys))
        return made[0]

    yield make
    for each in made:
        each.end()


def whole(path: Path) -> bool:
    with closing(open_book(path, station=STATION, read_only=True)) as book:
        return differing(book.connection) == []


def test_a_round_killed_between_its_keys_goes_on_at_that_tub_and_loses_and_doubles_nothing(
    campaign,
):
    night = campaign(1, 2, seed=5, most_keys=6)

    for _ in range(SHORT_KILLS):
        night.kill()
    night.walk_on()

    assert night.between + night.in_flight == SHORT_KILLS
    assert whole(night.path)


def test_a_jump_a_step_back_and_the_check_pass_outlive_a_kill(tmp_path):
    path = tmp_path / "night.book"
    make_book(path, room(racks=1, rows=1), Clock(timedelta(seconds=1))).close()
    window = Window(path, 0)
    told = [
        ("Enter Enter 9 7 Enter", "offer 7 A1·7"),
        ("9 5 Enter 5 -", "offer 5 A1·5"),
        ("9 2 Enter + 9 5 Enter Enter Enter 9 9 Enter", "check 9 A1·9"),
    ]

    for life, (keys, standing_at) in enumerate(told, start=1):
        for key in keys.split():
            window.press(key)
        stood = window.standing
        window.kill()
        window = Window(path, life)

        assert (stood, window.standing) == (standing_at, standing_at)
    window.kill()


@pytest.mark.long
def test_a_night_of_300_killed_200_times_goes_on_at_that_tub_and_loses_and_doubles_nothing(
    campaign,
):
    night = campaign(3, ROWS, seed=200, most_keys=3)

    for _ in range(LONG_KILLS):
        night.kill()
    night.walk_on()

    assert night.between + night.in_flight == LONG_KILLS
    assert whole(night.path)
    told = f"{night.between} kills between two keys, {night.in_flight} with a key on its way"
    sys.stdout.write(f"{told}, {night.keys} keys acknowledged\n")
