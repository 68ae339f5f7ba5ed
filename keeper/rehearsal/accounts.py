"""What the keeper of the invented house keeps account of beside feeding: a course of medicine,
looks for mites, prey in the freezer, faecal tests, and the papers of animals and house."""

from collections import Counter
from collections.abc import Iterator
from datetime import date, time, timedelta

from keeper.husbandry.care import Dose, DoseTold, FaecalResult, FaecalTest, Medicine, Permit
from keeper.husbandry.events import AboutAnimal, Cleaned, Remark, RemarkKind
from keeper.husbandry.house import Cleaning, HousePermit, MiteStep, MitesTold, PreyCounted
from keeper.husbandry.when import Happened
from keeper.rehearsal.planted import ARRIVED, LOSING
from keeper.rehearsal.resident import Resident
from keeper.rehearsal.room import Room

TREATED, PAPERS, APART = LOSING, "PY-06", "Q"
MEDICINE, MEDICINE_DAYS = "Tarsin", 10
BEGAN, MISSED = 6, 2
"""Days before the last on which the course began, and of the dose that nobody ticked."""

MITES_SEEN, LOOKS = 41, (34, 27, 20, 13)
WASHED, WASHED_ROW = 36, "B2·"
"""Days before the last on which a row was washed, and two of it were put back wrongly."""

COUNTED, FAECALS, PERMITTED, ENDS_IN = 40, (55, 25), 300, 16
MEALS_KEPT, MEALS_SHORT = 24, 10
"""Meals for each eater that lie in the freezer when it is counted; of one grade there are less."""

_LOOKED, _EVENING = time(18, 10), time(18, 40)


def kept_account(room: Room, day: date, last: date) -> None:
    """Everything of these that is written on *day*; *last* is the last day that is lived."""
    back, happened = (last - day).days, room.happened(day, _LOOKED)
    for code, verb, events in (
        (TREATED, "medicine", _course),
        (ARRIVED, "faecal test", _faecals),
        (ARRIVED, "daily round", _mites_on),
        (PAPERS, "permit", _transferred),
    ):
        resident = room.residents.get(code)
        told = list(events(resident, back, happened)) if resident and resident.present else []
        if resident is not None and told:
            room.tell(resident, verb, told)
    if back == WASHED:
        for resident in room.present():
            if (resident.place or "").startswith(WASHED_ROW):
                room.tell(resident, "cleaned", [_washed(resident, happened)])
    if back == MITES_SEEN or back in LOOKS:
        room.diary.keep("mites", _mites(back, happened))
    if back == COUNTED:
        room.diary.keep("prey counted", *_prey(room, room.happened(day, _EVENING)))
    if back == PERMITTED:
        room.diary.keep("permit", _licence(last, happened))


def _course(resident: Resident, back: int, happened: Happened) -> Iterator[AboutAnimal]:
    """Written on its first day, then a tick each day but one."""
    animal, day = resident.animal, happened.day
    if back == BEGAN:
        yield Medicine(
            animal=animal,
            happened=happened,
            medicine=MEDICINE,
            amount="as written by the vet",
            route="by mouth",
            first_on=day,
            last_on=day + timedelta(days=MEDICINE_DAYS - 1),
            lot="7-B",
        )
    if back <= BEGAN and back != MISSED:
        yield Dose(animal=animal, happened=happened, medicine=MEDICINE, told=DoseTold.GIVEN)


def _faecals(resident: Resident, back: int, happened: Happened) -> Iterator[AboutAnimal]:
    if back in FAECALS:
        yield FaecalTest(animal=resident.animal, happened=happened, result=FaecalResult.CLEAR)


def _transferred(resident: Resident, back: int, happened: Happened) -> Iterator[AboutAnimal]:
    if back == FAECALS[0]:
        expires = happened.day + timedelta(days=365)
        yield Permit(
            animal=resident.animal,
            happened=happened,
            kind="transfer permit",
            number="26-118",
            expires=expires,
        )


def _mites_on(resident: Resident, back: int, happened: Happened) -> Iterator[AboutAnimal]:
    if back == MITES_SEEN:
        mites = RemarkKind.MITES
        yield Remark(animal=resident.animal, happened=happened, kind=mites, text="under the chin")


def _washed(resident: Resident, happened: Happened) -> AboutAnimal:
    return Cleaned(animal=resident.animal, happened=happened, extent=Cleaning.WHOLE)


def _mites(back: int, happened: Happened) -> MiteStep:
    begun = back == MITES_SEEN
    return MiteStep(
        happened=happened,
        place=APART,
        told=MitesTold.BEGUN if begun else MitesTold.CLEAR,
        treatment="spray, as the label says" if begun else None,
    )


def _prey(room: Room, happened: Happened) -> Iterator[PreyCounted]:
    """A bag of every grade that is eaten here; of what most eat it is nearly used up."""
    eaters = Counter(
        eaten for each in room.present() if (eaten := each.mirror.now.eaten_prey) is not None
    )
    most = max(sorted(eaters), key=lambda prey: eaters[prey], default="")
    for number, (prey, count) in enumerate(sorted(eaters.items()), start=1):
        meals = MEALS_SHORT if prey == most else MEALS_KEPT
        yield PreyCounted(happened=happened, prey=prey, bag=f"F{number}", items=count * meals)


def _licence(last: date, happened: Happened) -> HousePermit:
    expires = last + timedelta(days=ENDS_IN)
    return HousePermit(happened=happened, kind="keeping licence", number="24-7", expires=expires)
