"""An invented room of racks in a real book, for the round and the weigh-in.

Figures are made to be due, held or unknown on purpose; they are not husbandry advice.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

from keeper.actions.keeping import Keeping, new_keeping, open_keeping
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import (
    Described,
    Event,
    Evidence,
    HoldKind,
    HoldSet,
    Moved,
    Offer,
    Regurgitation,
    Remark,
    RemarkKind,
    Result,
    Sexed,
    ShedSign,
    ShedStage,
    StartStep,
    Weighing,
)
from keeper.husbandry.when import on_day
from keeper.rules.ladder import LadderStep
from keeper.store.journal import batch

NIGHT = date(2026, 11, 25)
NAMES = tuple(
    """Tansy Bracken Orrin Quill Merrow Sorrel Hob Reed Linnet Wick Campion Ash Fern Sedge Ingrid
    Thora Hesper Maud Alder Bryony Clove Dill Elder Flax Gorse Hazel Iris Juniper Kale
    Larch""".split()  # noqa: SIM905 - a list of names reads better as words
)
STATION = "trolley"


class Clock:
    """Time that goes on by *step* with each look, from the evening of the night."""

    def __init__(self, step: timedelta = timedelta(seconds=1)) -> None:
        self.at = datetime(2026, 11, 25, 20, 40, tzinfo=UTC)
        self.step = step

    def __call__(self) -> datetime:
        self.at += self.step
        return self.at


@dataclass(frozen=True, kw_only=True)
class Tub:
    """One animal of the room. fed_days: days before the night on which it ate; None: never."""

    place: str
    name: str
    fed_days: int | None = 12
    weight_g: float | None = 120.0
    sex: Sex = Sex.FEMALE
    more: Callable[[int], Sequence[Event]] = lambda animal: ()


def row(rack: str, number: int, count: int = 10, first: int = 0) -> list[Tub]:
    """A row of *count* tubs that are all due."""
    return [
        Tub(place=f"{rack}{number}·{n + 1}", name=f"{NAMES[(first + n) % len(NAMES)]}")
        for n in range(count)
    ]


def room(racks: int = 3, rows: int = 10, count: int = 10) -> list[Tub]:
    """So many racks of rows of tubs, all due."""
    letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"
    return [
        tub
        for rack in letters[:racks]
        for number in range(1, rows + 1)
        for tub in row(rack, number, count, first=7 * number)
    ]


def make_book(
    path: Path, tubs: Sequence[Tub], now: Callable[[], datetime] | None = None
) -> Keeping:
    """A new book at *path* with *tubs* in it; close it when done."""
    keeping = new_keeping(path, station=STATION, now=now or Clock(), keeper="Ro")
    at = datetime(2026, 11, 20, 12, tzinfo=UTC)
    with batch(keeping.book, verb="take in", keeper="Ro", written=at) as writer:
        for number, tub in enumerate(tubs, start=1):
            writer.add(*_life(writer.new_animal(), number, tub))
    return keeping


def reopened(keeping: Keeping, now: Callable[[], datetime] | None = None) -> Keeping:
    """The same book closed and opened again."""
    keeping.close()
    return open_keeping(
        keeping.book.path, station=STATION, now=now or keeping.now, keeper=keeping.keeper
    )


def ago(days: int) -> date:
    return NIGHT - timedelta(days=days)


def opaque(animal: int) -> Sequence[Event]:
    return [ShedSign(animal=animal, happened=on_day(ago(2)), stage=ShedStage.OPAQUE)]


def quarantined(animal: int) -> Sequence[Event]:
    return [HoldSet(animal=animal, happened=on_day(ago(20)), kind=HoldKind.QUARANTINE)]


def held_by_vet(animal: int) -> Sequence[Event]:
    until = NIGHT + timedelta(days=7)
    return [HoldSet(animal=animal, happened=on_day(ago(3)), kind=HoldKind.VET, until=until)]


def came_back(animal: int) -> Sequence[Event]:
    return [Regurgitation(animal=animal, happened=on_day(ago(30)))]


def bites(animal: int) -> Sequence[Event]:
    return [Remark(animal=animal, happened=on_day(ago(90)), kind=RemarkKind.CAUTION, text="BITES")]


def refused_twice(animal: int) -> Sequence[Event]:
    return [
        Offer(
            animal=animal,
            happened=on_day(ago(days)),
            result=Result.REFUSED,
            prey="mouse adult",
            count=1,
            mass_g=23.0,
        )
        for days in (11, 6)
    ]


def ate_while_opaque(
    refused: int, count: int, evidence: Evidence = Evidence.SEEN
) -> Callable[[int], Sequence[Event]]:
    """*count* past shed cycles, offered once while opaque in each, the first *refused* in vain;
    and opaque again now."""

    def more(animal: int) -> Sequence[Event]:
        told: list[Event] = []
        for n in range(count):
            begun = 40 * (n + 1)
            told += [
                ShedSign(animal=animal, happened=on_day(ago(begun)), stage=ShedStage.OPAQUE),
                ShedSign(animal=animal, happened=on_day(ago(begun - 8)), stage=ShedStage.SHED),
                Offer(
                    animal=animal,
                    happened=on_day(ago(begun - 3)),
                    result=Result.REFUSED if n < refused else Result.TAKEN,
                    evidence=evidence,
                    prey="mouse fuzzy",
                    count=1,
                    mass_g=5.0,
                ),
            ]
        return [*told, *opaque(animal)]

    return more


def hatchling(animal: int, *more: Event, name: str = "Wee") -> Sequence[Event]:
    """A young one of the copper line in place of the grown animal: shed once, refused once."""
    hatched = ago(30)
    return [
        Described(
            animal=animal,
            code=f"26-{animal % 1000:03}",
            species="house_snake",
            hatched_first=hatched,
            hatched_last=hatched,
            line="copper",
            name=name,
            happened=on_day(hatched),
        ),
        ShedSign(animal=animal, happened=on_day(ago(22)), stage=ShedStage.SHED),
        _young_offer(animal, 9, Result.REFUSED),
        _weight(animal, 8, 3.5),
        *more,
    ]


def began_with_the_cup(animal: int) -> Sequence[Event]:
    """A young one of the same line that took its first meal from the cup."""
    cup = StartStep(animal=animal, happened=on_day(ago(5)), step=LadderStep.CUP.value)
    return hatchling(animal, cup, _young_offer(animal, 5, Result.TAKEN), name="Mite")


def _young_offer(animal: int, days: int, result: Result) -> Offer:
    return Offer(
        animal=animal,
        happened=on_day(ago(days)),
        result=result,
        prey="mouse pinky",
        count=1,
        mass_g=1.0,
    )


def _life(animal: int, number: int, tub: Tub) -> Sequence[Event]:
    hatched = ago(800)
    told: list[Event] = [
        Described(
            animal=animal,
            code=f"HS-{number:03}",
            species="house_snake",
            name=tub.name,
            hatched_first=hatched,
            hatched_last=hatched,
            happened=on_day(hatched),
        ),
        Sexed(animal=animal, sex=tub.sex, happened=on_day(hatched)),
        Moved(animal=animal, place=tub.place, happened=on_day(hatched)),
    ]
    if tub.fed_days is not None:
        told += [_meal(animal, tub.fed_days + 10 * n) for n in range(6, -1, -1)]
    if tub.weight_g is not None:
        told += [_weight(animal, 9 + 30 * n, tub.weight_g - 2 * n) for n in range(4, -1, -1)]
    return [*told, *tub.more(animal)]


def _meal(animal: int, days: int) -> Offer:
    return Offer(
        animal=animal,
        happened=on_day(ago(days)),
        result=Result.TAKEN,
        prey="mouse weaner",
        count=1,
        mass_g=15.0,
    )


def _weight(animal: int, days: int, weight_g: float) -> Weighing:
    return Weighing(animal=animal, happened=on_day(ago(days)), weight_g=weight_g)
