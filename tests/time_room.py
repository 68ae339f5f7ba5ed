"""A rack with a story for the time-line: a pair, mites, a swap that may be, one that was missed."""

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

from keeper.actions.keeping import Keeping, new_keeping
from keeper.husbandry.animal import Sex, Status
from keeper.husbandry.events import (
    Cleaned,
    Described,
    Event,
    HoldKind,
    HoldSet,
    Moved,
    Paired,
    Remark,
    RemarkKind,
    Sexed,
    Stock,
)
from keeper.husbandry.house import Cleaning, MiteStep, MitesTold
from keeper.husbandry.when import on_day
from keeper.store.journal import batch

NOW = datetime(2026, 11, 25, 20, tzinfo=UTC)
TODAY = NOW.date()
CODES = {"Maud": "F1", "Alder": "M1", "Wren": "F2", "Sage": "F3", "Pell": "M2", "Dill": "U1"}
SEXES = {"F": Sex.FEMALE, "M": Sex.MALE, "U": Sex.UNKNOWN}


def ago(days: int) -> date:
    return TODAY - timedelta(days=days)


def make_room(path: Path) -> Keeping:
    """Rack B and a little of rack Q; close it when done.

    Maud lives in B1·2, with Alder for ten days that ended forty days ago; Wren in B1·3, where
    mites were seen on her twenty days ago; Sage was in B2·3 beneath it and is in Q1·1 now; Pell
    went to B1·4 from Q1·1, in quarantine; Dill was missed from B2·4 and found in B2·5.
    """
    keeping = new_keeping(path, station="s", now=lambda: NOW, keeper="Ro")
    with batch(keeping.book, verb="take in", keeper="Ro", written=NOW) as writer:
        keys = {name: writer.new_animal() for name in CODES}
        for name, code in CODES.items():
            writer.add(*_who(keys[name], name, code))
        writer.add(*_story(keys))
    return keeping


@contextmanager
def room(path: Path) -> Iterator[Keeping]:
    keeping = make_room(path)
    try:
        yield keeping
    finally:
        keeping.close()


def _who(animal: int, name: str, code: str) -> Iterator[Event]:
    came = on_day(ago(200))
    yield Described(
        animal=animal,
        happened=came,
        code=code,
        species="house_snake",
        name=name,
        hatched_first=ago(900),
        hatched_last=ago(900),
    )
    yield Sexed(animal=animal, happened=came, sex=SEXES[code[0]])


def _story(keys: dict[str, int]) -> Iterator[Event]:
    for name, days, place in (
        ("Maud", 200, "B1·2"),
        ("Alder", 200, "B1·1"),
        ("Alder", 50, "B1·2"),
        ("Alder", 40, "b1-1"),
        ("Wren", 200, "B1·3"),
        ("Sage", 200, "B2·3"),
        ("Sage", 30, "Q1·1"),
        ("Pell", 120, "Q1·2"),
        ("Pell", 60, "B1·4"),
        ("Dill", 200, "B2·4"),
        ("Dill", 10, "B2·5"),
    ):
        yield Moved(animal=keys[name], happened=on_day(ago(days)), place=place)
    yield Paired(animal=keys["Maud"], happened=on_day(ago(45)), mate=keys["Alder"], locked=True)
    yield Remark(
        animal=keys["Wren"],
        happened=on_day(ago(20)),
        kind=RemarkKind.MITES,
        text="under the chin",
    )
    begun, clear = MitesTold.BEGUN, MitesTold.CLEAR
    yield MiteStep(happened=on_day(ago(19)), place="B", told=begun, treatment="as the vet wrote")
    yield MiteStep(happened=on_day(ago(12)), place="B", told=clear)
    yield HoldSet(
        animal=keys["Pell"],
        happened=on_day(ago(120)),
        kind=HoldKind.QUARANTINE,
        until=ago(30),
    )
    for name in ("Maud", "Wren"):
        yield Cleaned(animal=keys[name], happened=on_day(ago(35)), extent=Cleaning.WHOLE)
    yield Cleaned(animal=keys["Alder"], happened=on_day(ago(34)), extent=Cleaning.WHOLE)
    for days, status in ((15, Status.MISSING), (10, Status.KEPT)):
        yield Stock(animal=keys["Dill"], happened=on_day(ago(days)), status=status)
