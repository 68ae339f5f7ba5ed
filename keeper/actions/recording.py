"""Write up many entries at once: animals that come into the room, nights kept on paper."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date

from keeper.actions.keeping import Keeping, Written
from keeper.husbandry.animal import AnimalId, Sex, SexedBy, Status
from keeper.husbandry.events import Described, Event, Moved, Sexed, Stock
from keeper.husbandry.when import Happened
from keeper.language import tr
from keeper.store.journal import batch

RECEIVE = "receive"
WRITE_UP = "write up"


@dataclass(frozen=True, slots=True, kw_only=True)
class Newcomer:
    """An animal that the book does not hold yet.

    bought: it came from elsewhere on that day and settles in; otherwise it hatched here or
    was here before the book. happened: when it came into the room, or into the book.
    hatched_last: the last day on which it may have hatched, where the day is not known.
    """

    happened: Happened
    code: str
    species: str
    name: str | None = None
    line: str | None = None
    hatched: date | None = None
    hatched_last: date | None = None
    dam: AnimalId | None = None
    sire: AnimalId | None = None
    clutch: str | None = None
    sex: Sex = Sex.UNKNOWN
    sexed_by: SexedBy = SexedBy.WRITTEN
    place: str | None = None
    bought: bool = False


def receive(
    keeping: Keeping, newcomers: Sequence[Newcomer], *, verb: str = RECEIVE, what: str = ""
) -> tuple[Written, list[AnimalId]]:
    """Enter *newcomers* as one batch; their keys come in the same order. what: for the foot.

    Raises:
        ValueError: a newcomer of a day to come; nothing is written.
    """
    _refuse_future(keeping, [newcomer.happened for newcomer in newcomers])
    at = keeping.now()
    with batch(keeping.book, verb=verb, keeper=keeping.keeper, written=at) as writer:
        animals = [writer.new_animal() for _ in newcomers]
        for animal, newcomer in zip(animals, newcomers, strict=True):
            writer.add(*_told_of(animal, newcomer))
    many = tr("{count} animals", count=len(animals))
    told = many if len(animals) != 1 else newcomers[0].code
    return Written(batch=writer.id, at=at, verb=verb, what=what or told), animals


def write_up(keeping: Keeping, events: Sequence[Event], *, verb: str = WRITE_UP) -> Written:
    """Enter what was kept elsewhere, a night or many, as one batch.

    Raises:
        ValueError: an entry of a day to come; nothing is written.
    """
    _refuse_future(keeping, [event.happened for event in events])
    at = keeping.now()
    with batch(keeping.book, verb=verb, keeper=keeping.keeper, written=at) as writer:
        writer.add(*events)
    return Written(batch=writer.id, at=at, verb=verb, what=tr("{count} entries", count=len(events)))


def _refuse_future(keeping: Keeping, when: Sequence[Happened]) -> None:
    latest = max((happened.day for happened in when), default=keeping.today)
    if latest > keeping.today:
        raise ValueError(
            tr(
                "{day} is a day to come; an entry is of {today} or a day before.",
                day=latest,
                today=keeping.today,
            )
        )


def _told_of(animal: AnimalId, newcomer: Newcomer) -> Iterator[Event]:
    happened = newcomer.happened
    yield Described(
        animal=animal,
        happened=happened,
        code=newcomer.code,
        species=newcomer.species,
        name=newcomer.name,
        line=newcomer.line,
        hatched_first=newcomer.hatched,
        hatched_last=newcomer.hatched_last or newcomer.hatched,
        dam=newcomer.dam,
        sire=newcomer.sire,
        clutch=newcomer.clutch,
    )
    if newcomer.bought:
        yield Stock(animal=animal, happened=happened, status=Status.KEPT)
    if newcomer.sex is not Sex.UNKNOWN:
        yield Sexed(animal=animal, happened=happened, sex=newcomer.sex, sexed_by=newcomer.sexed_by)
    if newcomer.place is not None:
        yield Moved(animal=animal, happened=happened, place=newcomer.place)
