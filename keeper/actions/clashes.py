"""What two books that were joined tell differently: weights, results, codes, tubs."""

from collections.abc import Callable, Iterable, Iterator, Sequence, Set
from dataclasses import dataclass
from enum import Enum
from itertools import groupby
from typing import Any

from keeper.actions.entry_words import entry_words
from keeper.husbandry.animal import AnimalId, Status
from keeper.husbandry.events import Offer, Weighing
from keeper.husbandry.now import AnimalNow
from keeper.language import tr
from keeper.reports.figures import day
from keeper.store import reading
from keeper.store.database import Book
from keeper.store.journal import BatchId
from keeper.store.rows import TABLES
from keeper.store.tabled import Tabled, animals_in, days_by_animal


class ClashKind(Enum):
    """What two books tell differently."""

    WEIGHT = "weight"
    OFFER = "offer"
    CODE = "code"
    TUB = "tub"


@dataclass(frozen=True, slots=True, kw_only=True)
class Clash:
    """One thing told twice. about: the animal, code or tub; told: each telling in words."""

    kind: ClashKind
    about: str
    told: tuple[str, ...]


def clashes(book: Book, new: Tabled) -> Iterator[Clash]:
    """What the joined *book* tells twice, one telling of it from *new* at least."""
    brought: set[Any] = {row[0] for row in new.rows.get("animal", ())}
    rows = {row.animal: row for row in reading.board(book)}
    touched = animals_in(new)
    weighed, offered = (days_by_animal(new, TABLES[kind]) for kind in (Weighing, Offer))
    called = {animal: rows[animal].called for animal in touched & rows.keys()}
    for animal in sorted(called.keys() - brought, key=lambda each: called[each]):
        weights = reading.on_days_of(book, Weighing, animal, weighed.get(animal, ()))
        about = (called[animal], new.heads.keys())
        yield from _differing(ClashKind.WEIGHT, *about, weights, _time, lambda each: each.weight_g)
        offers = reading.on_days_of(book, Offer, animal, offered.get(animal, ()))
        yield from _differing(ClashKind.OFFER, *about, offers, _night, _meal)
    come = [row for row in rows.values() if row.animal in touched]
    yield from _shared(rows.values(), come, ClashKind.CODE, lambda row: row.code, brought)
    here = [row for row in rows.values() if row.status is Status.KEPT]
    yield from _shared(here, come, ClashKind.TUB, lambda row: row.place, brought)


def _time(event: Any) -> Any:
    """Entries of one minute, or of one day where no time is known, are of one time."""
    happened = event.happened
    return (happened.day, None if happened.span else happened.at.timestamp() // 60)


def _meal(offer: Offer) -> tuple[object, ...]:
    return (offer.result, offer.prey, offer.count, offer.mass_g)


def _night(event: Any) -> Any:
    return event.happened.day


def _differing(
    kind: ClashKind,
    called: str,
    new: Set[BatchId],
    entries: Sequence[reading.Entry[Any]],
    when: Callable[[Any], Any],
    told: Callable[[Any], Any],
) -> Iterator[Clash]:
    ordered = sorted(entries, key=lambda entry: (str(when(entry.event)), entry.key.batch))
    for _, group in groupby(ordered, key=lambda entry: when(entry.event)):
        same = list(group)
        both = len({entry.key.batch in new for entry in same}) == 2
        if both and len({told(entry.event) for entry in same}) > 1:
            words = tuple(_telling(entry, new) for entry in same)
            yield Clash(kind=kind, about=called, told=words)


def _telling(entry: reading.Entry[Any], new: Set[BatchId]) -> str:
    """What one of the two books says."""
    told = {"day": day(entry.event.happened.day), "words": entry_words(entry.event)}
    if entry.key.batch in new:
        return tr("{day}, there {words}", **told)
    return tr("{day}, here {words}", **told)


def _shared(
    rows: Iterable[AnimalNow],
    come: Iterable[AnimalNow],
    kind: ClashKind,
    told: Callable[[AnimalNow], str | None],
    brought: set[AnimalId],
) -> Iterator[Clash]:
    """Codes borne by two, tubs lived in by two, where one of the two came or was told of anew."""
    by: dict[str, list[AnimalNow]] = {}
    for row in rows:
        if told(row):
            by.setdefault(str(told(row)), []).append(row)
    for name in sorted({str(told(row)) for row in come if told(row)}):
        sharing = by.get(name, [])
        if len(sharing) > 1:
            ours_first = sorted(sharing, key=lambda row: row.animal in brought)
            words = tuple(_who(row, brought) for row in ours_first)
            yield Clash(kind=kind, about=name, told=words)


def _who(row: AnimalNow, brought: set[AnimalId]) -> str:
    """Which animal, and whose book it is in."""
    if row.animal in brought:
        return tr("there {animal}", animal=row.place_and_name)
    return tr("here {animal}", animal=row.place_and_name)
