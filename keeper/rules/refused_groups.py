"""Offers of a night or two in groups that may share a cause: row, rack, bag, hands, new prey."""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Literal, NamedTuple

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.place import place_of

GroupKind = Literal["row", "rack", "bag", "keeper", "cleaning", "prey", "room", "humidity"]


@dataclass(frozen=True, slots=True, kw_only=True)
class RefusalInRow:
    """One counted offer of a feed night, taken or refused, with the animal's own refusal rate.

    cleaned: the day on which its tub was cleaned whole shortly before. changed: the kind of prey
    eaten before and the new one, where it was offered straight after a change. Excused offers
    are left out by the caller.
    """

    animal: AnimalId
    place: str | None
    night: date
    refused: bool
    own_rate: float
    bag: str | None = None
    keeper: str | None = None
    cleaned: date | None = None
    changed: tuple[str, str] | None = None

    def __post_init__(self) -> None:
        if not 0 < self.own_rate < 1:
            raise ValueError(f"a refusal rate lies between 0 and 1, got {self.own_rate!r}")


class Group(NamedTuple):
    """Offers that share something.

    name: of a cleaning its day as ISO text, of a change of prey both kinds, of the room none.
    """

    kind: GroupKind
    name: str
    nights: tuple[date, ...]
    offers: tuple[RefusalInRow, ...]


def groups(refusals: Sequence[RefusalInRow]) -> list[Group]:
    """Every group over the last night and over the last two.

    Two groups of the same offers are one: with one keeper in the house whoever fed is the room.
    """
    nights = sorted({offer.night for offer in refusals})
    windows = [nights[-1:], nights[-2:]] if len(nights) > 1 else [nights]
    return [group for window in windows for group in _of_window(refusals, window)]


def _of_window(refusals: Sequence[RefusalInRow], nights: Sequence[date]) -> list[Group]:
    found: dict[tuple[GroupKind, str], list[int]] = defaultdict(list)
    for number, offer in enumerate(refusals):
        if offer.night in nights:
            for key in _keys(offer):
                found[key].append(number)
    told: dict[tuple[int, ...], tuple[GroupKind, str]] = {}
    for key in sorted(found, key=_plainest):
        told.setdefault(tuple(found[key]), key)
    return [
        Group(*key, tuple(nights), tuple(refusals[number] for number in numbers))
        for numbers, key in told.items()
    ]


_PLAINEST = ("room", "row", "rack", "cleaning", "prey", "bag", "keeper")


def _plainest(key: tuple[GroupKind, str]) -> tuple[int, str]:
    return _PLAINEST.index(key[0]), key[1]


def _keys(offer: RefusalInRow) -> list[tuple[GroupKind, str]]:
    """A new kind of prey is refused for itself: it says nothing of row, bag, hands or cleaning."""
    if offer.changed:
        return [("prey", " to ".join(offer.changed))]
    keys: list[tuple[GroupKind, str]] = [("room", "")]
    place = place_of(offer.place or "")
    if place is not None:
        keys += [("row", f"{place.rack}{place.row}"), ("rack", place.rack)]
    if offer.bag:
        keys.append(("bag", offer.bag))
    if offer.keeper:
        keys.append(("keeper", offer.keeper))
    if offer.cleaned:
        keys.append(("cleaning", offer.cleaned.isoformat()))
    return keys
