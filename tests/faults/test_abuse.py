"""Random keys and clicks in every place: no fault, the window closes, the book is whole."""

import os
import subprocess
import sys
from contextlib import closing
from dataclasses import dataclass
from datetime import date
from pathlib import Path

import pytest

from keeper.rehearsal.collection import make_collection
from keeper.store.checking import check
from keeper.store.database import open_book
from keeper.store.exchange import batch_keys
from tests.faults.figures import keep

ABUSE = Path(__file__).with_name("abuse.py")


@dataclass(frozen=True, slots=True)
class Abused:
    """How a window took it. fell: by how much the reference count of None fell.

    written: batches that the events brought about, so that they are known to arrive.
    """

    code: int
    written: int
    fell: int
    reports: tuple[str, ...]
    findings: tuple[str, ...]
    said: str


@pytest.fixture(scope="module")
def collection(tmp_path_factory: pytest.TempPathFactory) -> bytes:
    """The invented collection's book."""
    path = tmp_path_factory.mktemp("room") / "room.book"
    made = make_collection(path, ends_on=date(2026, 11, 24))
    if hasattr(made, "close"):
        made.close()
    return path.read_bytes()


def batches(book: Path) -> int:
    with closing(open_book(book, station="look")) as opened:
        return len(batch_keys(opened))


def abused(folder: Path, content: bytes, *, seed: int, events: int) -> Abused:
    book, home = folder / "room.book", folder / "home"
    book.write_bytes(content)
    before = batches(book)
    own = {"KEEPER_HOME": str(home), "HOME": str(folder), "QT_QPA_PLATFORM": "offscreen"}
    done = subprocess.run(
        [sys.executable, str(ABUSE), str(book), str(seed), str(events)],
        env=os.environ | own,
        capture_output=True,
        text=True,
        timeout=590,
        check=False,
    )
    fell = int(done.stdout.split()[-1]) if done.stdout.strip() else 0
    reports = tuple(f.read_text(encoding="utf-8") for f in home.glob("faults/*.txt"))
    with closing(open_book(book, station="look")) as looked:
        findings = tuple(finding.sentence for finding in check(looked))
    written = batches(book) - before
    return Abused(done.returncode, written, fell, reports, findings, done.stderr[-2000:])


def test_random_events_in_every_place_do_no_harm(tmp_path: Path, collection: bytes) -> None:
    after = abused(tmp_path, collection, seed=1, events=330)

    assert (after.code, after.reports, after.findings) == (0, (), ()), after.said
    assert after.fell > -300
    assert after.written > 0


@pytest.mark.long
def test_thousands_of_random_events_in_every_place(tmp_path: Path, collection: bytes) -> None:
    runs = []
    for seed in range(4):
        folder = tmp_path / str(seed)
        folder.mkdir()
        runs.append(abused(folder, collection, seed=seed, events=2750))

    keep(
        "F22",
        events=4 * 2750,
        exits=[run.code for run in runs],
        faults=sum(len(run.reports) for run in runs),
        written=sum(run.written for run in runs),
        findings=sum(len(run.findings) for run in runs),
        none_fell=[run.fell for run in runs],
    )
    assert all((r.code, r.reports, r.findings) == (0, (), ()) for r in runs), runs
