"""The power goes: what was acknowledged is there, whole; the controls show that harm is seen."""

import shutil
import sqlite3
from contextlib import closing, suppress
from pathlib import Path
from typing import Any

import pytest

from keeper.store.backups import back_up
from keeper.store.database import open_book, writing
from tests.faults.deeds import BOOK, SCENES, a_book
from tests.faults.figures import keep
from tests.faults.power import (
    Tally,
    begun,
    campaign,
    old_or_restored,
    older_or_newer,
    rows_by_batch,
    whole_batches,
)

pytestmark = pytest.mark.usefixtures("strace")
NO_HARM = (0, 0, 0)
CONTROLS = ("without sync", "journal deleted", "said too soon")


def older(folder: Path) -> Path:
    """A book of a version before the first: without some parts, with a cache of other columns."""
    begun(folder)
    with closing(sqlite3.connect(folder / BOOK)) as book:
        book.executescript("""DROP TABLE start_step; DROP INDEX setting_key;
            DROP TRIGGER offer_no_delete; DROP TABLE withdrawn;
            CREATE TABLE withdrawn (batch INTEGER NOT NULL, seq INTEGER NOT NULL);
            PRAGMA user_version = 0;""")
    return folder


def two_pasts(folder: Path, *, half_written: bool) -> Path:
    """A book with a backup of an earlier day; *half_written*: a batch was cut off in it."""
    begun(folder)
    book = open_book(folder / BOOK, station="shed")
    back_up(book, "by hand")
    a_book(book)
    if half_written:
        book.connection.execute("PRAGMA cache_size = 1")
        with suppress(KeyError), writing(book) as connection:
            rounds = [(2**61 + n,) for n in range(3000)]
            connection.executemany(
                "INSERT INTO round (id, batch) SELECT ?, max(id) FROM batch", rounds
            )
            for name in (BOOK, f"{BOOK}-journal"):
                shutil.copyfile(folder / name, folder.with_name(f"kept-{name}"))
            raise KeyError
    book.close()
    if half_written:
        for name in (BOOK, f"{BOOK}-journal"):
            folder.with_name(f"kept-{name}").replace(folder / name)
    return folder


def gone_back(room: Path, *, half_written: bool, count: int):
    folder = two_pasts(room, half_written=half_written)
    look_first = room.with_name(f"{room.name}-look")
    shutil.copytree(folder, look_first)
    with closing(open_book(look_first / BOOK, station="look").connection) as book:
        old = rows_by_batch(book)
    return campaign("go back", folder, old_or_restored(folder, old), count=count)


def brought_up(room: Path, *, count: int):
    folder = older(room)
    return campaign("bring up", folder, older_or_newer(folder), count=count)


def test_the_power_goes_while_entries_are_written(room: Path) -> None:
    tally = campaign("entries", begun(room), whole_batches, count=150)

    assert tally.harm == NO_HARM, tally.told
    assert tally.different > 60


def test_the_power_goes_while_a_book_is_brought_to_a_newer_version(room: Path) -> None:
    tally = brought_up(room, count=60)

    assert tally.harm == NO_HARM, tally.told
    assert tally.different > 20


@pytest.mark.parametrize("half_written", [False, True])
def test_the_power_goes_while_a_backup_is_restored(room: Path, half_written: bool) -> None:
    tally = gone_back(room, half_written=half_written, count=60)

    assert tally.harm == NO_HARM, tally.told
    assert tally.different > 5


@pytest.mark.parametrize("scene", CONTROLS)
def test_a_way_of_writing_that_loses_is_seen_to_lose(room: Path, scene: str) -> None:
    tally = campaign(scene, begun(room), whole_batches, count=40)

    assert sum(tally.harm) > 3, scene


def told(tally: Tally) -> dict[str, Any]:
    """*tally* as the table wants it."""
    return {"states": tally.states, "different": tally.different, "harm": list(tally.harm)}


@pytest.mark.long
def test_the_power_goes_ten_thousand_times(room: Path) -> None:
    tally = campaign("entries", begun(room), whole_batches, count=10_000)

    keep("F2", **told(tally))
    assert tally.harm == NO_HARM, tally.told


@pytest.mark.long
def test_what_must_lose_is_seen_to_lose_in_a_thousand_power_cuts(room: Path) -> None:
    tallies = {
        scene: campaign(
            scene, begun(room.with_name(f"control-{number}")), whole_batches, count=1000
        )
        for number, scene in enumerate(CONTROLS)
    }

    keep("F2 controls", **{scene: told(tally) for scene, tally in tallies.items()})
    assert all(sum(tally.harm) > 50 for tally in tallies.values())


@pytest.mark.long
def test_the_power_goes_two_thousand_times_in_a_migration_and_in_restores(room: Path) -> None:
    tallies = {
        "migration": brought_up(room, count=2000),
        "restore": gone_back(room.with_name("back"), half_written=False, count=2000),
        "restore over half a batch": gone_back(
            room.with_name("half"), half_written=True, count=2000
        ),
    }

    keep("F3", **{name: told(tally) for name, tally in tallies.items()})
    assert {tally.harm for tally in tallies.values()} == {NO_HARM}


def test_every_scene_is_tried() -> None:
    assert set(SCENES) == {"entries", "bring up", "go back", *CONTROLS}
