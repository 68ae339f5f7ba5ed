"""Where the keeper stands is kept beside the book, and only as long as it is true."""

from contextlib import closing

import pytest

from keeper.actions.keeping import open_keeping
from keeper.actions.round_place import forget_place, keep_place, next_waiting, taken_up
from keeper.actions.rounds import begin_night, open_night
from keeper.husbandry.events import Result
from tests.feeding_room import NIGHT, STATION, Clock, make_book, reopened, row


@pytest.fixture
def keeping(tmp_path):
    with closing(make_book(tmp_path / "night.book", row("A", 1, 6))) as book:
        yield book


@pytest.fixture
def walk(keeping):
    return begin_night(keeping, NIGHT)


def file_of(keeping):
    return keeping.book.path.with_name(f"{keeping.book.path.name}.round")


def stands(keeping):
    found = taken_up(keeping)
    walk, looked = found.walk, found.looked
    return walk.cursor, walk.checking, looked


def test_a_jump_outlives_the_program(keeping, walk):
    walk.go_to(5)
    keep_place(keeping, walk, 0)

    with closing(reopened(keeping)) as again:
        assert stands(again) == (5, False, 0)


def test_what_is_written_after_it_counts_for_more(keeping, walk):
    walk.go_to(5)
    keep_place(keeping, walk, 0)
    walk.record(Result.TAKEN)

    assert stands(keeping) == (6, False, 0)


def test_the_end_of_the_walk_is_a_place_too(keeping, walk):
    walk.cursor = None
    keep_place(keeping, walk, 0)

    assert stands(keeping) == (None, False, 0)


def test_the_check_pass_goes_on_behind_the_tub_looked_at_last(keeping, walk):
    for _ in range(6):
        walk.record(Result.LEFT_IN)
    walk.begin_check()
    keep_place(keeping, walk, 6)
    walk.go_to(3)
    walk.found(gone=True)

    assert stands(keeping) == (4, True, 6)


@pytest.mark.parametrize(
    "text",
    ["", "{", "[]", "7", '{"round": 1}', '{"round": "x", "checking": 1, "line": "y", "since": 0}'],
)
def test_a_file_of_another_hand_is_passed_over(keeping, walk, text):
    file_of(keeping).write_text(text, encoding="utf-8")

    assert stands(keeping) == (1, False, 0)


def test_a_line_that_the_night_has_not_is_passed_over(keeping, walk):
    walk.go_to(5)
    keep_place(keeping, walk, 0)
    file = file_of(keeping)
    file.write_text(file.read_text(encoding="utf-8").replace('"line": 5', '"line": 99'))

    assert stands(keeping) == (1, False, 0)


def test_the_place_of_another_round_is_passed_over(keeping, walk):
    walk.go_to(5)
    keep_place(keeping, walk, 0)
    walk.close()
    begin_night(keeping, NIGHT)

    assert stands(keeping) == (1, False, 0)


def test_a_window_that_only_reads_keeps_nothing(keeping, walk):
    keeping.close()
    with closing(
        open_keeping(keeping.book.path, station=STATION, now=Clock(), read_only=True)
    ) as reading:
        seen = open_night(reading)
        seen.go_to(4)
        keep_place(reading, seen, 0)

    assert not file_of(keeping).exists()


def test_a_disk_that_takes_no_file_does_not_stop_the_round(keeping, walk):
    file_of(keeping).mkdir()
    walk.go_to(4)

    keep_place(keeping, walk, 0)
    forget_place(keeping)

    assert walk.cursor == 4


def test_with_the_round_over_nothing_is_left_beside_the_book(keeping, walk):
    walk.go_to(4)
    keep_place(keeping, walk, 0)
    assert file_of(keeping).exists()

    forget_place(keeping)

    assert not file_of(keeping).exists()


def test_without_a_round_there_is_nowhere_to_stand(keeping):
    assert taken_up(keeping) is None


def test_what_waits_is_sought_onward_and_then_from_the_start(keeping, walk):
    walk.record(Result.TAKEN)

    assert [next_waiting(walk, after) for after in (0, 2, 6)] == [2, 3, 2]
