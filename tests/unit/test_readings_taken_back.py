"""A logger's file is one deed: taken back it was never there, put back it is as it was."""

from contextlib import closing
from datetime import timedelta

import pytest

from keeper.actions.heat_band import band_of
from keeper.actions.heat_board import heat_board, write_heat
from keeper.actions.heat_readings import house_heat
from keeper.actions.keeping import Keeping, animals_on, open_keeping
from keeper.actions.logger_files import preview, take_in
from keeper.actions.undoing import put_back, put_back_batch, take_back, take_back_batch
from keeper.husbandry.events import Heat, Zone
from keeper.store import reading
from keeper.store.readings import put_in, values_of
from tests.desktop.heat_room import NOW, TODAY, a_logger_file, a_room, placed


@pytest.fixture
def keeping(tmp_path):
    with closing(a_room(tmp_path / "a.book")) as made:
        placed(made)
        yield made


@pytest.fixture
def path(tmp_path):
    return a_logger_file(tmp_path / "l.csv")


def meaning(keeping: Keeping) -> list[object]:
    """All that the book says of heat: rows to the byte, bands, the board, verdicts, settings."""
    rows = keeping.book.connection.execute("SELECT * FROM reading_day ORDER BY probe, day")
    return [
        rows.fetchall(),
        band_of(keeping, "A2", Zone.HOT, TODAY),
        heat_board(keeping, TODAY),
        house_heat(keeping, animals_on(keeping, TODAY), lambda row: (), TODAY),
        reading.settings(keeping.book),
    ]


def some_live(keeping: Keeping) -> None:
    day = int(NOW.timestamp()) // 86_400
    put_in(keeping.book, {("K1", day - n): {0: 3110, 140: 3120} for n in range(1, 4)})


@pytest.mark.parametrize("live_before", [False, True])
def test_a_file_taken_back_leaves_everything_as_it_was_and_put_back_as_it_became(
    keeping, path, live_before
):
    if live_before:
        some_live(keeping)
    before = meaning(keeping)
    take_in(keeping, preview(keeping, path))
    after = meaning(keeping)

    take_back(keeping)
    taken_back = meaning(keeping)
    put_back(keeping)

    assert before != after
    assert taken_back == before
    assert meaning(keeping) == after


def test_it_is_one_deed_with_the_way_in_which_the_logger_is_read(keeping, path):
    seen = preview(keeping, path)
    written = take_in(keeping, seen)

    target, _ = take_back(keeping)

    assert (target.id, target.verb) == (written.batch, "take in readings")
    assert seen.shape.key not in reading.settings(keeping.book)


def test_reopened_it_can_still_be_taken_back_and_put_back(keeping, path, tmp_path):
    take_in(keeping, preview(keeping, path))
    after = meaning(keeping)
    keeping.close()

    with closing(open_keeping(tmp_path / "a.book", station="s", now=lambda: NOW)) as again:
        take_back(again)
        none_left = list(values_of(again.book, "K1", NOW - timedelta(days=30), NOW))
    with closing(open_keeping(tmp_path / "a.book", station="s", now=lambda: NOW)) as again:
        put_back(again)
        assert meaning(again) == after

    assert none_left == []


def test_a_file_taken_back_can_be_taken_in_again(keeping, path):
    take_in(keeping, preview(keeping, path))
    after = meaning(keeping)
    take_back(keeping)
    seen = preview(keeping, path)

    take_in(keeping, seen)

    assert seen.known is None
    assert meaning(keeping) == after


def test_of_two_files_the_earlier_can_be_taken_back_by_its_line(keeping, path, tmp_path):
    first = take_in(keeping, preview(keeping, path))
    once = meaning(keeping)
    warmer = tmp_path / "warmer.csv"
    warmer.write_text(path.read_text().replace("24.0", "25.0"))
    take_in(keeping, preview(keeping, warmer))
    both = meaning(keeping)

    take_back_batch(keeping, first.batch)
    without_first = meaning(keeping)
    put_back_batch(keeping, first.batch)

    assert without_first[0] == both[0]
    assert meaning(keeping) == both
    take_back(keeping)  # the putting back and what it wrote are no deeds of their own
    assert meaning(keeping)[0] == once[0]


def test_a_reading_typed_by_hand_is_taken_back_and_put_back(keeping):
    before = meaning(keeping)
    write_heat(keeping, "A1", Zone.HOT, 31.2, "gun")
    after = meaning(keeping)

    take_back(keeping)
    taken_back = meaning(keeping)
    put_back(keeping)

    assert before != after
    assert (taken_back, meaning(keeping)) == (before, after)
    assert [e.temp_c for e in reading.on_days(keeping.book, Heat, TODAY, TODAY)] == [31.2]
