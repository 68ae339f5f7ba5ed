"""A small invented room of house snakes in every state that the pairing calendar shows."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

from keeper.actions.keeping import Keeping, animal_coded, new_keeping
from keeper.actions.noting import note
from keeper.actions.recording import Newcomer, receive
from keeper.husbandry.animal import AnimalId, Sex
from keeper.husbandry.care import EggsPlaced
from keeper.husbandry.events import (
    AboutAnimal,
    Clutch,
    Heat,
    HoldKind,
    HoldSet,
    Moved,
    Paired,
    ShedQuality,
    ShedSign,
    ShedStage,
    Weighing,
    Zone,
)
from keeper.husbandry.house import KeeperAway
from keeper.husbandry.when import at_instant, on_day

NOW = datetime(2026, 11, 25, 20, tzinfo=UTC)
TODAY = NOW.date()
INCUBATOR = "Incubator 1"
AWAY = (date(2026, 12, 1), date(2026, 12, 9))

_ADULTS = (
    ("F1", "Maud", Sex.FEMALE, "A1·1", 1500),
    ("F2", "Tilda", Sex.FEMALE, "A1·2", 1400),
    ("F3", "Ragna", Sex.FEMALE, "A1·3", 1400),
    ("F4", "Sunna", Sex.FEMALE, "A1·4", 1300),
    ("F5", "Inga", Sex.FEMALE, "A1·5", 470),
    ("F6", "Berit", Sex.FEMALE, "A1·6", 1200),
    ("F7", "Dagny", Sex.FEMALE, "A1·7", 60),
    ("M1", "Alder", Sex.MALE, "A2·1", 1500),
    ("M2", "Bram", Sex.MALE, "A2·2", 1500),
)


def ago(days: int) -> date:
    return TODAY - timedelta(days=days)


def new_room(path: Path) -> Keeping:
    """Adults in their tubs, of whom nothing else is told."""
    keeping = new_keeping(path, station="s", now=lambda: NOW)
    receive(
        keeping,
        [
            Newcomer(
                happened=on_day(ago(min(age, 900))),
                code=code,
                species="house_snake",
                name=name,
                hatched=ago(age),
                sex=sex,
                place=tub,
            )
            for code, name, sex, tub, age in _ADULTS
        ],
    )
    return keeping


def key(keeping: Keeping, code: str) -> AnimalId:
    return animal_coded(keeping, code).animal


def tell(keeping: Keeping, events: Sequence[AboutAnimal]) -> None:
    note(keeping, "tell", *events)


def pre_lay_shed(animal: AnimalId, day: date) -> ShedSign:
    return ShedSign(
        animal=animal,
        happened=on_day(day),
        stage=ShedStage.SHED,
        quality=ShedQuality.WHOLE,
        pre_lay=True,
    )


def make_room(path: Path) -> Keeping:
    """Maud's eggs are in, Tilda's are to come while the keeper is away, Ragna is gravid.

    Sunna shares Alder's tub, Inga comes of age in ten weeks, Berit is cooled, Dagny is a hatchling
    of whom nothing lies within the calendar.
    """
    keeping = new_room(path)
    maud, tilda, ragna, sunna = (key(keeping, code) for code in ("F1", "F2", "F3", "F4"))
    inga, berit, alder, bram = (key(keeping, code) for code in ("F5", "F6", "M1", "M2"))
    told: list[AboutAnimal] = [
        Paired(animal=maud, happened=on_day(ago(110)), mate=bram),
        Paired(animal=maud, happened=on_day(ago(108)), mate=bram, locked=True),
        HoldSet(animal=maud, happened=on_day(ago(72)), kind=HoldKind.GRAVID),
        pre_lay_shed(maud, ago(59)),
        Clutch(animal=maud, happened=on_day(ago(49)), good=7, slugs=1, code="26-9"),
        EggsPlaced(animal=maud, happened=on_day(ago(49)), place=INCUBATOR, box="2", clutch="26-9"),
        Paired(animal=tilda, happened=on_day(ago(45)), mate=alder, locked=True),
        HoldSet(animal=tilda, happened=on_day(ago(15)), kind=HoldKind.GRAVID),
        pre_lay_shed(tilda, ago(3)),
        Paired(animal=ragna, happened=on_day(ago(40)), mate=bram),
        HoldSet(animal=ragna, happened=on_day(ago(6)), kind=HoldKind.GRAVID),
        Moved(animal=sunna, happened=on_day(ago(20)), place="A2·1"),
        Moved(animal=sunna, happened=on_day(ago(6)), place="A1·4"),
        HoldSet(animal=berit, happened=on_day(ago(30)), kind=HoldKind.COOLING),
        Weighing(animal=inga, happened=on_day(ago(3)), weight_g=214.0),
    ]
    tell(keeping, told)
    heats = [
        Heat(
            place=INCUBATOR,
            happened=at_instant(NOW - timedelta(days=d)),
            zone=Zone.INCUBATOR,
            temp_c=28.0,
        )
        for d in range(48, 0, -1)
    ]
    note(keeping, "read heat", *heats)
    away = KeeperAway(happened=on_day(ago(1)), first_on=AWAY[0], last_on=AWAY[1], covered_by="Ada")
    note(keeping, "away", away)
    return keeping
