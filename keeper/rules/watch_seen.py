"""Animals that nobody looked at for two days, where daily rounds are kept."""

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.house import DailyRound
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import place_of
from keeper.husbandry.profile import practice
from keeper.husbandry.reasons import Reason, because
from keeper.rules.watch_facts import Severity, Unseen, WatchLine

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("not seen in the daily round", ("since", "days", "animals")),
    ("daily rounds are no longer written", ("since", "days")),
    ("ends with a daily round", ()),
)
"""Every reason of this module with the figures it carries."""

UNSEEN_DAYS = practice(2)

KEPT_DAYS = practice(14)
"""Without a daily round for so long they are not kept, and their lack says nothing of tubs."""


@dataclass(frozen=True, slots=True)
class _Missed:
    animal: AnimalNow
    seen: date


def unseen(
    animals: Iterable[AnimalNow], rounds: Sequence[DailyRound], today: date
) -> tuple[Unseen, ...]:
    """Racks, or the room, with animals that no round and no entry has seen for two days.

    Where no daily round was ever written nothing is said; where they ended, only that.
    """
    told = [each for each in rounds if each.happened.day <= today]
    last = max((each.happened.day for each in told), default=None)
    if last is None:
        return ()
    if (today - last).days > KEPT_DAYS.value:
        return (Unseen(place=None, animals=(), since=last, is_kept=False),)
    everyone = list(animals)
    missed = [
        _Missed(animal, seen)
        for animal in everyone
        if (seen := _seen(animal, told)) and (today - seen).days >= UNSEEN_DAYS.value
    ]
    if len(missed) == len(everyone) and missed:
        return (_group(None, missed),)
    racks: dict[str | None, list[_Missed]] = defaultdict(list)
    for each in missed:
        racks[_rack(each.animal.place)].append(each)
    return tuple(_group(rack, racks[rack]) for rack in sorted(racks, key=lambda name: name or ""))


def unseen_line(found: Unseen, today: date) -> WatchLine:
    """The line of the watch; that rounds ended is noted, never taken for tubs unseen."""
    days = (today - found.since).days
    return WatchLine(
        animal=None,
        place=found.place,
        kind="not seen",
        severity=Severity.TODAY if found.is_kept else Severity.NOTED,
        since=found.since,
        ends=because("ends with a daily round"),
        because=(_why(found, days),),
        members=found.animals,
    )


def _why(found: Unseen, days: int) -> Reason:
    if not found.is_kept:
        return because("daily rounds are no longer written", since=found.since, days=days)
    return because(
        "not seen in the daily round", since=found.since, days=days, animals=len(found.animals)
    )


def _seen(animal: AnimalNow, rounds: Sequence[DailyRound]) -> date | None:
    """The last day on which its tub was looked into; an entry about it is a look as well."""
    place = place_of(animal.place or "")
    names = {None, animal.place}
    if place is not None:
        names |= {place.rack, f"{place.rack}{place.row}", str(place)}
    days = [each.happened.day for each in rounds if each.place in names]
    if animal.last_entry_on is not None:
        days.append(animal.last_entry_on)
    return max(days, default=None)


def _rack(written: str | None) -> str | None:
    place = place_of(written or "")
    return written if place is None else place.rack


def _group(rack: str | None, missed: Sequence[_Missed]) -> Unseen:
    animals: tuple[AnimalId, ...] = tuple(each.animal.animal for each in missed)
    since = min(each.seen for each in missed)
    return Unseen(place=rack, animals=animals, since=since, is_kept=True)
