"""Animals passed on to another keeper: their own lines alone, as a book that can be joined.

Nothing of other animals goes along: a parent is named in the note of the description, pairings
and the plans of nights stay here. The animals get keys of their own, so that the two books share
nothing but the telling.
"""

import tempfile
from collections.abc import Iterable, Iterator, Mapping
from contextlib import closing
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

from keeper.actions.bundle_files import Bundled, write_bundle
from keeper.actions.keeping import Keeping
from keeper.actions.photos import photo_of, put_photo
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import Described, Offer, Paired, Remark
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.reasons import because
from keeper.reports.words import sentence
from keeper.store import reading
from keeper.store.copies import private_copy
from keeper.store.database import create_book
from keeper.store.journal import batch
from keeper.store.rows import TABLES
from keeper.store.schema import ANIMAL_COLUMNS
from keeper.store.ticking import Tick, silent

VERB = "pass on"
_OWN = tuple(kind for kind, table in TABLES.items() if table in ANIMAL_COLUMNS)


@dataclass(frozen=True, slots=True, kw_only=True)
class PassedOn:
    """What was written out, and how many pairings stayed here because the mate does."""

    bundled: Bundled
    pairings_left: int


def pass_on(
    keeping: Keeping, animals: Iterable[AnimalNow], folder: Path, tick: Tick = silent
) -> PassedOn:
    """Write what stands of *animals* to the new folder *folder*; this book is not changed.

    Raises:
        BookError: something of that name is there, or the disk refuses it.
    """
    chosen = list(animals)
    with tempfile.TemporaryDirectory() as place:
        passing = create_book(Path(place) / "passing.book", station=keeping.book.station)
        with closing(passing):
            there = replace(keeping, book=passing, lock=None, told=None, _kept={})
            with private_copy(keeping.book) as still:
                left = _write(replace(keeping, book=still), there, chosen)
            return PassedOn(bundled=write_bundle(there, folder, tick), pairings_left=left)


def _write(here: Keeping, there: Keeping, chosen: list[AnimalNow]) -> int:
    left = 0
    at = here.now()
    with batch(there.book, verb=VERB, keeper=here.keeper, written=at) as writer:
        keys = {row.animal: writer.new_animal() for row in chosen}
        for row in chosen:
            for event in _entries(here, row.animal):
                own = _own(here, event, keys)
                left += own is None
                if own is not None:
                    writer.add(own)
                    _take_photo_along(here, there, own)
    return left


def _entries(keeping: Keeping, animal: AnimalId) -> Iterator[Any]:
    """All that stands of one animal, kind by kind, oldest first."""
    for kind in _OWN:
        yield from (entry.event for entry in reading.history(keeping.book, kind, animal))


def _own(keeping: Keeping, event: Any, keys: Mapping[AnimalId, AnimalId]) -> Any:
    """*event* told of the animal's key in the other book; None where it cannot be told there."""
    said: dict[str, Any] = {"animal": keys[event.animal]}
    match event:
        case Paired():
            if event.mate not in keys:
                return None
            said["mate"] = keys[event.mate]
        case Offer():
            said |= {"round": None, "line": None}
        case Described():
            said |= {
                "dam": keys.get(event.dam or 0),
                "sire": keys.get(event.sire or 0),
                "note": _parents(keeping, event),
            }
        case _:
            pass
    return replace(event, **said)


def _parents(keeping: Keeping, event: Described) -> str | None:
    """The note, with the codes of the parents that stay here."""
    dam, sire = (_code(keeping, key) for key in (event.dam, event.sire))
    told = because("parents of one passed on", dam=dam, sire=sire)
    parents = sentence(told) if dam or sire else ""
    return " ".join(part for part in (event.note, parents) if part) or None


def _code(keeping: Keeping, animal: AnimalId | None) -> str | None:
    row = reading.animal_now(keeping.book, animal) if animal is not None else None
    return row.code if row is not None else None


def _take_photo_along(here: Keeping, there: Keeping, event: Any) -> None:
    path = photo_of(here, event) if isinstance(event, Remark) else None
    if path is not None and event.note is not None:
        put_photo(there, event.note, path.read_bytes())
