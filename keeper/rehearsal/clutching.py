"""Pairings, a cooled rest, and eggs in the incubator of the invented house: one clutch near its
first slit, one that hatched with an egg that failed, and the heat that was read meanwhile."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, time, timedelta
from random import Random

from keeper.husbandry.care import EggFate, Eggs, EggsPlaced
from keeper.husbandry.events import AboutAnimal, Heat, HoldKind, HoldSet, Paired, Zone
from keeper.husbandry.when import Happened
from keeper.rehearsal.room import Room

INCUBATOR = "Incubator 1"
READ_FOR = 95
"""Days before the last from which the incubator is read."""

WARM_C, WAVERS_C = 28.0, 0.25
_EVENING, _READ = time(19, 10), time(22, 12)


@dataclass(frozen=True, slots=True, kw_only=True)
class Meeting:
    """back: days before the last on which *female* was put together with *male*."""

    back: int
    female: str
    male: str
    locked: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Lain:
    """Eggs of *dam*: days before the last on which they were put into a box, and hatched."""

    dam: str
    box: str
    placed_back: int
    hatched_back: int | None = None
    hatched: int = 0
    failed_back: int | None = None


RESTS = {"CO-07": (24, 63)}
"""Who is cooled: days before the last on which it began, and for how many days."""

MEETINGS = (
    Meeting(back=152, female="HS-04", male="HS-08"),
    Meeting(back=148, female="HS-04", male="HS-08", locked=True),
    Meeting(back=190, female="HS-04", male="HS-02"),
    Meeting(back=107, female="HN-02", male="HN-04"),
    Meeting(back=101, female="HN-02", male="HN-01", locked=True),
    Meeting(back=44, female="HS-03", male="HS-01", locked=True),
)
LAIN = (
    Lain(dam="HS-04", box="1", placed_back=88, hatched_back=26, hatched=8, failed_back=61),
    Lain(dam="HN-02", box="2", placed_back=48),
)


def kept_eggs(room: Room, day: date, last: date, rng: Random) -> None:
    """Everything of these that is written on *day*; *last* is the last day that is lived."""
    back, happened = (last - day).days, room.happened(day, _EVENING)
    for verb, told in (
        ("pair", _meetings(room, back, happened)),
        ("hold", _rests(room, back, happened)),
        *_eggs(room, back, happened),
    ):
        for code, event in told:
            resident = room.residents.get(code)
            if resident is not None and resident.present:
                room.tell(resident, verb, [event])
    if back <= READ_FOR:
        room.diary.keep("read heat", _read(room.happened(day, _READ), rng))


_Told = Iterator[tuple[str, AboutAnimal]]


def _meetings(room: Room, back: int, happened: Happened) -> _Told:
    for each in MEETINGS:
        if each.back == back and each.female in room.residents and each.male in room.residents:
            female, male = room.residents[each.female], room.residents[each.male]
            yield (
                each.female,
                Paired(
                    animal=female.animal,
                    happened=happened,
                    mate=male.animal,
                    locked=each.locked,
                ),
            )


def _rests(room: Room, back: int, happened: Happened) -> _Told:
    for code, (begun, days) in RESTS.items():
        if back == begun and code in room.residents:
            animal, until = room.residents[code].animal, happened.day + timedelta(days=days)
            cooled = HoldKind.COOLING
            yield code, HoldSet(animal=animal, happened=happened, kind=cooled, until=until)


def _eggs(room: Room, back: int, happened: Happened) -> Iterator[tuple[str, _Told]]:
    for lain in LAIN:
        if lain.dam in room.residents:
            yield "eggs placed", _placed(room, lain, back, happened)
            yield "eggs", _became(room, lain, back, happened)


def _placed(room: Room, lain: Lain, back: int, happened: Happened) -> _Told:
    dam = room.residents[lain.dam].animal
    if back == lain.placed_back:
        put = EggsPlaced(animal=dam, happened=happened, place=INCUBATOR, box=lain.box)
        yield lain.dam, put


def _became(room: Room, lain: Lain, back: int, happened: Happened) -> _Told:
    dam = room.residents[lain.dam].animal
    if back == lain.failed_back:
        yield lain.dam, Eggs(animal=dam, happened=happened, fate=EggFate.FAILED, count=1)
    if back == lain.hatched_back:
        hatched = EggFate.HATCHED
        yield lain.dam, Eggs(animal=dam, happened=happened, fate=hatched, count=lain.hatched)


def _read(happened: Happened, rng: Random) -> Heat:
    """Some tenths around what is wanted, as a good thermostat keeps it."""
    off_c = min(3 * WAVERS_C, max(-3 * WAVERS_C, rng.gauss(0, WAVERS_C)))
    return Heat(
        place=INCUBATOR,
        happened=happened,
        zone=Zone.INCUBATOR,
        temp_c=round(WARM_C + off_c, 1),
        read_with="gun",
    )
