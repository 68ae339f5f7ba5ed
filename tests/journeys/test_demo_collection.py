"""The invented house lived through three years, looked at evening by evening as its keeper does."""

import os
import subprocess
import sys
from collections.abc import Iterator
from dataclasses import dataclass, field, fields
from datetime import date, timedelta
from pathlib import Path
from typing import Any

import pytest

from keeper.actions.checking import flaws_of
from keeper.actions.due_board import due_rows
from keeper.actions.females import female_rows
from keeper.actions.keeping import animals_on
from keeper.actions.watching import watch_lines
from keeper.husbandry.events import Offer, RoundClosed, RoundOpened
from keeper.husbandry.now import AnimalNow
from keeper.rehearsal.accounts import APART, TREATED
from keeper.rehearsal.collection import Rehearsal, rehearsal
from keeper.rehearsal.planted import FAR, NEAR, READY, UNTOLD
from keeper.rehearsal.seen import Planted
from keeper.rules.feeding import DueState
from keeper.rules.watch_facts import Severity, WatchLine
from keeper.store import reading
from keeper.store.rows import day_number

ROOT = Path(__file__).resolve().parents[2]
LAST = date(2026, 11, 24)
PRESSING = (Severity.NOW, Severity.TODAY)
TODAY_MOST = 5


@dataclass
class Lived:
    """A rehearsal, the watch of each evening that was looked at, and the codes of animals."""

    made: Rehearsal
    evenings: dict[date, tuple[WatchLine, ...]] = field(default_factory=dict)
    codes: dict[int, str] = field(default_factory=dict)
    planted: tuple[Planted, ...] = ()

    def who(self, line: WatchLine) -> str:
        return line.place or "" if line.animal is None else self.codes[line.animal]

    def shows(self, each: Planted, day: date) -> bool:
        kinds = {each.what, each.or_as}
        return any(
            self.who(line) == each.code and line.kind in kinds for line in self.evenings[day]
        )

    def unplanted(self, day: date) -> list[str]:
        """Pressing lines of a day that nothing planted explains."""
        explained = {each.code for each in self.planted if each.on <= day}
        lines = [line for line in self.evenings[day] if line.severity in PRESSING]
        told = [(self.who(line), line.kind) for line in lines]
        return [f"{who} {kind}" for who, kind in told if who not in explained]


def live(path: Path, last: date, *, every: int, closely_days: int) -> Lived:
    """Live the house, looking at the watch every so many days and each evening at the end."""
    lived = Lived(rehearsal(path, ends_on=last))
    plot = lived.made.plot
    spells = {day for spell in plot.spells for day in (spell.first, spell.last)}
    for day in lived.made.household.days():
        back = (last - day).days
        if back % every == 0 or back <= closely_days or day in spells:
            lived.made.household.enter(day)
            lived.evenings[day] = watch_lines(lived.made.keeping, day)
    lived.made.finish()
    board = reading.board(lived.made.keeping.book)
    lived.codes = {now.animal: now.code for now in board}
    lived.planted = lived.made.planted()
    return lived


@pytest.fixture(scope="module")
def lived(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Lived]:
    found = live(tmp_path_factory.mktemp("demo") / "demo.book", LAST, every=60, closely_days=20)
    yield found
    found.made.keeping.close()


def on_watch(lived: Lived) -> list[Planted]:
    return [each for each in lived.planted if each.shown_by == "watch"]


def test_eighty_animals_stand_in_three_racks_and_a_quarantine_tub(lived: Lived) -> None:
    room = [row for row in animals_on(lived.made.keeping, LAST) if row.in_the_room]

    assert len(room) == 80
    assert {(row.place or "")[0] for row in room} == set("ABCQ")


def test_the_lived_book_passes_the_check(lived: Lived) -> None:
    assert flaws_of(lived.made.keeping.book.path) == ()


def differing(one: AnimalNow, other: AnimalNow) -> list[tuple[str, Any, Any]]:
    """Fields that differ; grams agree to the milligram, which is what a book keeps."""
    pairs = [(f.name, getattr(one, f.name), getattr(other, f.name)) for f in fields(one)]
    return [pair for pair in pairs if pair[1] != pytest.approx(pair[2], abs=5e-4)]


def test_the_state_of_every_animal_is_what_a_second_reckoning_says(lived: Lived) -> None:
    mirrored = lived.made.household.room.by_animal
    board = reading.board(lived.made.keeping.book)
    wrong = {now.code: differing(now, mirrored[now.animal].mirror.now) for now in board}

    assert len(board) > 80
    assert {code: pairs for code, pairs in wrong.items() if pairs} == {}


def test_a_third_to_a_half_of_the_room_is_due_on_the_next_feed_night(lived: Lived) -> None:
    rows = due_rows(lived.made.keeping, LAST + timedelta(days=1))

    assert 1 / 3 <= sum(row.plan.state is DueState.DUE for row in rows) / len(rows) <= 1 / 2


def test_whoever_is_due_is_offered_something(lived: Lived) -> None:
    rows = due_rows(lived.made.keeping, LAST + timedelta(days=1))

    due = [row for row in rows if row.plan.state is DueState.DUE]
    assert [row.animal.code for row in due if not row.plan.offer] == []


def test_a_day_has_at_most_five_pressing_lines_beside_what_is_planted(lived: Lived) -> None:
    crowded = {day: lived.unplanted(day) for day in lived.evenings}

    assert {day: lines for day, lines in crowded.items() if len(lines) > TODAY_MOST} == {}


def test_everything_planted_is_on_the_watch_on_the_first_day_that_allows_it(lived: Lived) -> None:
    looked_for = on_watch(lived)

    assert len(looked_for) == 10
    assert [each for each in looked_for if not lived.shows(each, each.on)] == []


def test_what_the_keeper_keeps_account_of_asks_on_the_next_morning(lived: Lived) -> None:
    lines = watch_lines(lived.made.keeping, LAST + timedelta(days=1))
    told = {(lived.who(line), line.kind) for line in lines}
    treated = next(line for line in lines if lived.who(line) == TREATED)
    whys = [why.why for why in treated.because]

    assert {("26-9", "due to pip"), (APART, "mite step"), ("keeping licence", "permit")} <= told
    assert [line.kind for line in lines].count("prey low") == 1
    assert "dose due" in whys
    assert "dose missed, never doubled, ask a reptile vet" in whys
    assert sum(line.severity in PRESSING for line in lines) <= TODAY_MOST


def test_nothing_planted_by_a_count_of_days_is_on_the_watch_a_day_too_soon(lived: Lived) -> None:
    counted = {"not started", "opaque too long", "regurgitated", "quarantine"}
    exact = [each for each in on_watch(lived) if each.what in counted]

    assert len(exact) == 4
    assert [each for each in exact if lived.shows(each, each.on - timedelta(days=1))] == []


def test_the_cold_row_is_told_by_its_cause_within_two_feed_nights(lived: Lived) -> None:
    spell = lived.made.plot.spells[-1]
    second = [n for n in lived.made.plot.nights if spell.first <= n <= spell.last][1]

    lines = [line for line in lived.evenings[second] if lived.who(line) == spell.row]

    assert any(line.kind == "cold row" and len(line.members) >= 3 for line in lines)


def test_a_night_that_nobody_wrote_down_is_not_read_as_a_fast(lived: Lived) -> None:
    (night,) = lived.made.plot.unrecorded
    offers = reading.all_of(lived.made.keeping.book, Offer, "e.day = ?", day_number(night))
    after = [line for day in lived.evenings if day >= night for line in lived.evenings[day]]

    assert offers == []
    assert [line for line in after if line.kind == "not eaten for long"] == []


def test_females_stand_at_every_distance_from_being_bred(lived: Lived) -> None:
    rows = {row.animal.code: row for row in female_rows(lived.made.keeping, LAST)}

    assert rows[READY].ready == "met"
    assert 0 < (rows[NEAR].short_g or 0) < 40
    assert (rows[FAR].short_g or 0) > 80
    assert rows[UNTOLD].ready == "cannot tell"


def test_the_last_nights_were_walked_and_closed(lived: Lived) -> None:
    book = lived.made.keeping.book
    opened = [entry.event.happened.day for entry in reading.all_of(book, RoundOpened)]
    closed = [entry.event.round for entry in reading.all_of(book, RoundClosed)]

    assert sorted(opened) == sorted(lived.made.plot.walked)
    assert len(closed) == len(opened)


def test_the_demo_tells_the_evening_and_takes_its_pictures_without_a_display(
    tmp_path: Path,
) -> None:
    off_screen = {"QT_QPA_PLATFORM": "offscreen", "KEEPER_HOME": str(tmp_path / "home")}
    kept = {name: value for name, value in os.environ.items() if name != "KEEPER_PICTURES"}

    done = subprocess.run(
        [sys.executable, ROOT / "demo" / "journey.py", tmp_path],
        env={**kept, **off_screen},
        capture_output=True,
        encoding="utf-8",
    )

    assert (done.returncode, done.stderr) == (0, "")
    assert "structure, foreign keys, state and backups hold" in done.stdout
    assert "Losing while eating" in done.stdout
    assert done.stdout.endswith(f"{len(list(tmp_path.glob('*.png')))} pictures.\n")
    assert [*tmp_path.glob("*-taken-back-after-a-restart.png")] != []


@pytest.mark.long
@pytest.mark.parametrize("weekday", range(7))
def test_any_day_of_three_years_is_quiet_and_whatever_is_planted_is_found(
    tmp_path: Path, weekday: int
) -> None:
    last = LAST + timedelta(days=weekday)
    found = live(tmp_path / "demo.book", last, every=1 if weekday == 0 else 30, closely_days=40)
    crowded = [day for day in found.evenings if len(found.unplanted(day)) > TODAY_MOST]
    unseen = [each for each in on_watch(found) if not found.shows(each, each.on)]
    found.made.keeping.close()

    assert (crowded, unseen) == ([], [])
