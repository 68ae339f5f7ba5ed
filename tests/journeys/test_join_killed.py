"""A join killed at any moment, or called off: all of the other book is in the book, or nothing."""

import shutil
import signal
from contextlib import closing
from datetime import UTC, date, datetime
from pathlib import Path

import pytest

from keeper.actions.bundle_files import write_bundle
from keeper.actions.keeping import Keeping, open_keeping
from keeper.actions.other_process import CalledOff
from keeper.actions.recording import Newcomer, receive
from keeper.actions.sharing_aside import Aside
from keeper.husbandry.when import on_day
from keeper.rehearsal.collection import make_collection
from keeper.store.checking import check
from keeper.store.errors import BookError
from keeper.store.readings import put_in
from tests.store.books import tables_of

NOW = datetime(2026, 11, 24, 20, tzinfo=UTC)
KILLS, LONG_KILLS = 12, 100


@pytest.fixture(scope="module")
def other(tmp_path_factory) -> Path:
    """What another house wrote out: animals of a year, and live readings of a probe."""
    folder = tmp_path_factory.mktemp("other")
    with closing(
        make_collection(folder / "other.book", animals=12, years=1, ends_on=NOW.date())
    ) as there:
        put_in(there.book, {("K1", 20_000 + n): {0: 2950, 287: 3000} for n in range(30)})
        write_bundle(there, folder / "out")
    return folder / "out"


@pytest.fixture
def begun(tmp_path) -> Path:
    path = tmp_path / "house.book"
    with closing(make_collection(path, animals=4, years=1, seed=2, ends_on=date(2026, 11, 24))):
        return path


def opened(path: Path) -> Keeping:
    return open_keeping(path, station="house", now=lambda: NOW)


def tables(path: Path) -> dict:
    with closing(opened(path)) as keeping:
        assert check(keeping.book) == ()
        return tables_of(keeping.book)


def joined_until(path: Path, other: Path, sentence: int, *, kill: bool) -> list[str]:
    """Join *other*, and end the process at its so many-eth sentence; the sentences heard."""
    heard: list[str] = []

    def told(text: str) -> None:
        heard.append(text)
        if len(heard) == sentence:
            if kill:
                aside._process.send_signal(signal.SIGKILL)
            else:
                aside.call_off()

    with closing(opened(path)) as keeping:
        aside = Aside(keeping, told)
        try:
            aside.look(other)
            aside.join(NOW)
        finally:
            aside.call_off()
    return heard


@pytest.mark.parametrize("kills", [KILLS, pytest.param(LONG_KILLS, marks=pytest.mark.long)])
def test_killed_at_any_sentence_all_came_or_nothing(begun, other, tmp_path, kills):
    shutil.copy(begun, tmp_path / "whole.book")
    sentences = joined_until(tmp_path / "whole.book", other, 0, kill=True)
    before, after = tables(begun), tables(tmp_path / "whole.book")
    assert len(after["batch"]) > len(before["batch"])
    nothing = 0

    for number in range(kills):
        path = tmp_path / f"{number}.book"
        shutil.copy(begun, path)
        at = 1 + number * len(sentences) // kills
        try:
            joined_until(path, other, at, kill=True)
        except BookError as error:
            assert "ended by itself" in str(error)
        found = tables(path)
        nothing += found == before
        assert found == before or _same_but_for_the_key(found, after)

    assert nothing >= kills // 2


def _same_but_for_the_key(found: dict, whole: dict) -> bool:
    """The join's own key has random bits; all else is alike."""
    counts = {name: len(rows) for name, rows in found.items()}
    return counts == {name: len(rows) for name, rows in whole.items()} and all(
        found[name] == whole[name] for name in ("offer", "weighing", "reading_day")
    )


def test_called_off_at_any_step_nothing_came(begun, other, tmp_path):
    shutil.copy(begun, tmp_path / "whole.book")
    sentences = joined_until(tmp_path / "whole.book", other, 0, kill=False)
    steps: dict[str, int] = {}
    for number, text in enumerate(sentences, start=1):
        steps.setdefault(text.split(":")[0], number)
    before, after = tables(begun), tables(tmp_path / "whole.book")
    assert {"Reading", "Checking", "Comparing", "Writing"} <= steps.keys()

    for step, number in steps.items():
        path = tmp_path / f"{number}.book"
        shutil.copy(begun, path)
        try:
            joined_until(path, other, number, kill=False)
        except CalledOff:
            assert tables(path) == before
        else:  # it was done before it heard
            assert step == "Writing"
            assert _same_but_for_the_key(tables(path), after)


def test_a_writing_out_that_is_called_off_leaves_no_folder(begun, tmp_path):
    with closing(opened(begun)) as keeping:
        aside = Aside(keeping, lambda _: aside.call_off())
        with pytest.raises(CalledOff):
            aside.write_out(tmp_path / "out")
        aside = Aside(keeping, lambda _: None)
        aside.write_out(tmp_path / "again")

    assert sorted(path.name for path in tmp_path.iterdir() if path.is_dir()) == ["again"]


def test_the_next_join_says_that_nothing_came_of_one_that_was_killed(begun, other):
    with pytest.raises(BookError):
        joined_until(begun, other, 1, kill=True)

    with closing(opened(begun)) as keeping:
        aside = Aside(keeping, lambda _: None)
        looked = aside.look(other)
        newcomer = Newcomer(happened=on_day(NOW.date()), code="N-1", species="house_snake")
        receive(keeping, [newcomer])
        done = aside.join(NOW)

    assert looked.is_new
    assert done.written is not None
    assert (looked.batches, looked.entries) == (done.batches, done.entries)
