"""What happens to an animal by itself or by plan: moves, sheds, eggs, a sale, a regurgitation."""

from collections.abc import Callable, Iterator
from datetime import date, time, timedelta

from keeper.husbandry.animal import SexedBy, Status
from keeper.husbandry.events import (
    AboutAnimal,
    Clutch,
    HoldKind,
    HoldSet,
    Moved,
    Regurgitation,
    Remark,
    RemarkKind,
    Sexed,
    ShedQuality,
    ShedSign,
    ShedStage,
    Stock,
)
from keeper.husbandry.when import Happened
from keeper.rehearsal.character import Laying
from keeper.rehearsal.resident import Resident, Sign
from keeper.rehearsal.room import Room, Turn

MORNING, LOOKED = time(8, 40), time(18, 10)
GRAVID_DAYS = 28
SEXED_DAYS = 5

Told = Callable[[Resident, Happened], list[AboutAnimal]]


def expect_all(room: Room, resident: Resident) -> None:
    """Everything that can be foreseen when *resident* comes into the room."""
    who = resident.who
    for day, place in who.stays[1:]:
        _expect(room, resident, day, Turn.MOVE, "move", _moved_to(place))
    if who.sold is not None:
        room.later(who.sold, Turn.LEAVE, resident, lambda each, day: _leaves(room, each, day))
    if who.hatched_here:
        _expect(room, resident, who.born + timedelta(days=SEXED_DAYS), Turn.LOOK, "sex", _popped)
        expect_signs(room, resident, [resident.first_shed()])
    if who.script.regurgitates is not None:
        day = who.script.regurgitates
        _expect(room, resident, day, Turn.LOOK, "daily round", _regurgitated)
    for laying in who.layings:
        _expect_eggs(room, resident, laying)


def settling(resident: Resident, happened: Happened) -> Iterator[AboutAnimal]:
    """What is written of an animal on the day it comes, beside who it is."""
    who, animal = resident.who, resident.animal
    if who.caution is not None:
        yield Remark(animal=animal, happened=happened, kind=RemarkKind.CAUTION, text=who.caution)
    if who.quarantined:
        days = resident.profile.holds[HoldKind.QUARANTINE].days
        until = happened.day + timedelta(days=round(days.value)) if days else None
        yield HoldSet(animal=animal, happened=happened, kind=HoldKind.QUARANTINE, until=until)


def expect_signs(room: Room, resident: Resident, signs: list[Sign]) -> None:
    """The signs of one shed cycle; the shed brings the next."""
    for sign in signs:
        if sign.day >= resident.who.comes or sign.stage is ShedStage.SHED:
            day = max(sign.day, resident.who.comes)
            room.later(day, Turn.LOOK, resident, _shows(room, sign))


def _expect(room: Room, resident: Resident, day: date, turn: Turn, verb: str, told: Told) -> None:
    """On *day* the keeper sees what *told* says and writes it with *verb*."""
    at = MORNING if turn is Turn.MOVE else LOOKED

    def happening(each: Resident, on: date) -> None:
        room.tell(each, verb, told(each, room.happened(on, at)))

    room.later(day, turn, resident, happening)


def _shows(room: Room, sign: Sign) -> Callable[[Resident, date], None]:
    def show(resident: Resident, day: date) -> None:
        happened = room.happened(day, LOOKED)
        room.tell(resident, "daily round", [shed_sign(resident, happened, sign)])
        if sign.stage is ShedStage.SHED:
            expect_signs(room, resident, resident.cycle_after(day))

    return show


def shed_sign(resident: Resident, happened: Happened, sign: Sign) -> ShedSign:
    return ShedSign(
        animal=resident.animal, happened=happened, stage=sign.stage, quality=sign.quality
    )


def _moved_to(place: str) -> Told:
    def moved(resident: Resident, happened: Happened) -> list[AboutAnimal]:
        resident.place = place
        return [Moved(animal=resident.animal, happened=happened, place=place)]

    return moved


def _leaves(room: Room, resident: Resident, day: date) -> None:
    animal, happened = resident.animal, room.happened(day, MORNING)
    gone = Stock(animal=animal, happened=happened, status=Status.SOLD)
    room.tell(resident, "sell", [gone, Moved(animal=animal, happened=happened, place=None)])
    resident.present = False


def _popped(resident: Resident, happened: Happened) -> list[AboutAnimal]:
    sex = resident.who.sex
    return [Sexed(animal=resident.animal, happened=happened, sex=sex, sexed_by=SexedBy.POPPED)]


def _regurgitated(resident: Resident, happened: Happened) -> list[AboutAnimal]:
    resident.meals.clear()
    return [Regurgitation(animal=resident.animal, happened=happened)]


def _expect_eggs(room: Room, resident: Resident, laying: Laying) -> None:
    """Swelling, the shed before the eggs, the eggs; the first eggs prove her sex."""
    if laying.swollen is not None:
        _expect(room, resident, laying.swollen, Turn.LOOK, "hold", _swollen)
    if laying.pre_lay is not None:
        _expect(room, resident, laying.pre_lay, Turn.LOOK, "daily round", _shed_before_eggs)
    if not laying.pending:
        _expect(room, resident, laying.laid, Turn.LOOK, "clutch", _laid(laying))


def _swollen(resident: Resident, happened: Happened) -> list[AboutAnimal]:
    until = happened.day + timedelta(days=GRAVID_DAYS)
    gravid = HoldKind.GRAVID
    return [HoldSet(animal=resident.animal, happened=happened, kind=gravid, until=until)]


def _shed_before_eggs(resident: Resident, happened: Happened) -> list[AboutAnimal]:
    return [
        ShedSign(
            animal=resident.animal,
            happened=happened,
            stage=ShedStage.SHED,
            quality=ShedQuality.WHOLE,
            pre_lay=True,
        )
    ]


def _laid(laying: Laying) -> Told:
    def laid(resident: Resident, happened: Happened) -> list[AboutAnimal]:
        eggs = Clutch(
            animal=resident.animal,
            happened=happened,
            good=laying.good,
            slugs=laying.slugs,
            code=laying.code,
        )
        sex = resident.who.sex
        proved = Sexed(animal=resident.animal, happened=happened, sex=sex, sexed_by=SexedBy.LAID)
        first = resident.mirror.now.clutch_on is None
        return [eggs, proved] if first else [eggs]

    return laid
