"""Females and males that share a tub: grown up together, or a pair that was not separated."""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from datetime import date
from itertools import product

from keeper.husbandry.animal import AnimalId, Sex
from keeper.husbandry.events import Paired
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import practice
from keeper.husbandry.reasons import Reason, because
from keeper.rules.watch_facts import Severity, WatchLine

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("mixed sexes in a tub", ("animals", "months")),
    ("pair not separated", ("since", "days", "most")),
    ("ends when they are parted", ()),
)
"""Every reason of this module with the figures it carries."""

MIXED_AGE_DAYS = practice(91)
"""House snakes are to be parted by sex at three months."""

PAIRING_DAYS = practice(14)
"""A pair is left together no longer than this."""


def shared_tubs(
    animals: Iterable[AnimalNow], pairings: Iterable[Paired], today: date
) -> tuple[WatchLine, ...]:
    """One line for each tub in which a female and a male live that are not paired just now."""
    tubs: dict[str, list[AnimalNow]] = defaultdict(list)
    for animal in animals:
        if animal.place:
            tubs[animal.place].append(animal)
    paired = _paired_on(pairings, today)
    found = (_line(place, tubs[place], paired, today) for place in sorted(tubs))
    return tuple(line for line in found if line is not None)


Pairs = dict[tuple[AnimalId, AnimalId], date]


def _paired_on(pairings: Iterable[Paired], today: date) -> Pairs:
    """The last day on which each two were put together, either way round."""
    found: Pairs = {}
    for pairing in sorted(pairings, key=lambda each: each.happened):
        if pairing.happened.day <= today:
            for key in ((pairing.animal, pairing.mate), (pairing.mate, pairing.animal)):
                found[key] = pairing.happened.day
    return found


def _line(place: str, living: Sequence[AnimalNow], paired: Pairs, today: date) -> WatchLine | None:
    reasons: list[Reason] = []
    members: dict[AnimalId, None] = {}
    for female, male in _couples(living, today):
        since = paired.get((female.animal, male.animal))
        if since is not None and (today - since).days <= PAIRING_DAYS.value:
            continue
        members |= {female.animal: None, male.animal: None}
        if since is not None:
            days, most = (today - since).days, PAIRING_DAYS.value
            reasons.append(because("pair not separated", since=since, days=days, most=most))
    if not members:
        return None
    mixed = because("mixed sexes in a tub", animals=len(members), months=3)
    return WatchLine(
        animal=None,
        place=place,
        kind="mixed sexes",
        severity=Severity.TODAY,
        since=max((a.place_since for a in living if a.place_since), default=None),
        ends=because("ends when they are parted"),
        because=tuple(reasons) or (mixed,),
        members=tuple(members),
    )


def _couples(living: Sequence[AnimalNow], today: date) -> Iterator[tuple[AnimalNow, AnimalNow]]:
    """Each female with each male of one kind, both old enough; an unknown age counts as old."""
    females = [a for a in living if a.sex is Sex.FEMALE and _is_grown(a, today)]
    males = [a for a in living if a.sex is Sex.MALE and _is_grown(a, today)]
    return ((f, m) for f, m in product(females, males) if f.species == m.species)


def _is_grown(animal: AnimalNow, today: date) -> bool:
    age = animal.age_days(today)
    return age is None or age >= MIXED_AGE_DAYS.value
