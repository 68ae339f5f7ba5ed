"""Looks at what a shed left behind, and how one is written."""

from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date

from keeper.actions.keeping import Keeping, Written
from keeper.actions.noting import note
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import Remark, RemarkKind
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.when import at_instant
from keeper.language import tr
from keeper.store import reading


@dataclass(frozen=True, slots=True)
class Look:
    """What a key says of a look, and its words."""

    kind: RemarkKind
    words: str


LOOKS: Mapping[str, Look] = {
    "8": Look(RemarkKind.SHED_GONE, tr("gone")),
    "9": Look(RemarkKind.SHED_STILL, tr("still there")),
}
"""By key, beside the signs that are noted with 1 to 7."""

_KINDS = tuple(look.kind.value for look in LOOKS.values())


def aftercare_of(keeping: Keeping, on: date) -> dict[AnimalId, list[Remark]]:
    """Every such look up to a day, oldest first."""
    found: dict[AnimalId, list[Remark]] = defaultdict(list)
    for entry in reading.all_of(keeping.book, Remark, "e.kind IN (?, ?)", *_KINDS):
        if entry.event.happened.day <= on:
            found[entry.event.animal].append(entry.event)
    return found


def note_look(keeping: Keeping, animal: AnimalNow, look: Look, left: str) -> Written:
    """Write a look at what the last shed left. left: what it was, as ``eye cap kept``.

    Raises:
        ValueError: the last shed left nothing; nothing is written.
    """
    if not left:
        name = animal.called
        raise ValueError(
            tr("The last shed of {name} left nothing behind that is still followed.", name=name)
        )
    remark = Remark(
        animal=animal.animal,
        happened=at_instant(keeping.now()),
        kind=look.kind,
        text=left,
    )
    where = animal.place_and_name
    return note(
        keeping,
        "shed looked at",
        remark,
        where=where,
        what=tr("{left}: {look}", left=left, look=look.words),
    )
