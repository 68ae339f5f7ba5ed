"""A small invented line in a real book: founders, a clutch of theirs, and a clutch of that."""

from collections.abc import Sequence
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

from keeper.actions.keeping import Keeping, animal_coded, new_keeping
from keeper.actions.noting import note
from keeper.actions.recording import Newcomer, receive
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import Clutch, Paired, ShedSign, ShedStage
from keeper.husbandry.genes import LookScored
from keeper.husbandry.when import on_day

NOW = datetime(2026, 11, 25, 20, tzinfo=UTC)
TODAY = NOW.date()
LINE = "Harrow ochre"
F, M = Sex.FEMALE, Sex.MALE


def ago(days: int) -> date:
    return TODAY - timedelta(days=days)


def a_book(path: Path, now=lambda: NOW) -> Keeping:
    """Two founders, 26-1 of five young of theirs; two of these and their young, 26-2."""
    keeping = new_keeping(path, station="s", now=now)
    add(keeping, "D", "Dam", F, 1500, "C1·1")
    add(keeping, "S", "Sire", M, 1500, "C1·2")
    for n, sex in enumerate((F, M, F, M, F), start=1):
        add(keeping, f"A{n}", f"Ara {n}", sex, 800, f"B1·{n}", "D", "S", "24-1")
    for n, sex in enumerate((M, F, F), start=1):
        add(keeping, f"B{n}", f"Bel {n}", sex, 100, f"A1·{n}", "A1", "A2", "26-2")
    return keeping


def add(keeping, code, name, sex, back, place, dam=None, sire=None, clutch=None, line=LINE):
    newcomer = Newcomer(
        happened=on_day(ago(back if clutch else 900)),
        code=code,
        species="house_snake",
        name=name,
        line=line,
        hatched=ago(back),
        dam=key(keeping, dam),
        sire=key(keeping, sire),
        clutch=clutch,
        sex=sex,
        place=place,
    )
    receive(keeping, [newcomer])


def key(keeping: Keeping, code: str | None) -> int | None:
    found = animal_coded(keeping, code) if code else None
    return found.animal if found else None


def score(keeping, code, value, *, age=None, back=None, trait="red"):
    """At an age in days, or so many days ago."""
    row = animal_coded(keeping, code)
    day = ago(back) if back is not None else row.hatched_first + timedelta(days=age)
    event = LookScored(animal=row.animal, happened=on_day(day), trait=trait, score=value)
    note(keeping, "score colour", event)


def score_all(keeping, values: Sequence[tuple[str, float]], age=66) -> None:
    for code, value in values:
        score(keeping, code, value, age=age)


def scored_book(path: Path) -> Keeping:
    """Founders 7 and 5, their young 4 to 8, the young of the best two 6 to 8."""
    keeping = a_book(path)
    score(keeping, "D", 7, back=600)
    score(keeping, "S", 5, back=600)
    score_all(keeping, [("A1", 8), ("A2", 7), ("A3", 6), ("A4", 5), ("A5", 4)])
    score_all(keeping, [("B1", 8), ("B2", 7), ("B3", 6)])
    return keeping


def dull(keeping, code, back) -> None:
    happened = on_day(ago(back))
    note(
        keeping,
        "shed sign",
        ShedSign(animal=key(keeping, code), happened=happened, stage=ShedStage.OPAQUE),
    )


def pair(keeping, dam, sire, back) -> None:
    event = Paired(animal=key(keeping, dam), happened=on_day(ago(back)), mate=key(keeping, sire))
    note(keeping, "pair", event)


def laid(keeping, dam, back, code) -> None:
    event = Clutch(animal=key(keeping, dam), happened=on_day(ago(back)), good=6, code=code)
    note(keeping, "laid", event)
