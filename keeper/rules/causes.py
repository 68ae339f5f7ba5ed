"""Cause before symptom: refusals that fall together in a row, rack, prey bag or keeper's hands.

Each animal is compared with its own refusal rate; how unlikely so many refusals are is an
exact Poisson-binomial tail. Over all groups of a night together a quiet room raises a false
cause on at most one feed night in a hundred, however many groups it has.
"""

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from math import ceil, sqrt
from typing import Literal, NamedTuple

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import Zone
from keeper.husbandry.place import place_of
from keeper.husbandry.profile import COMMON_PRACTICE, Sourced
from keeper.husbandry.reasons import Reason, because
from keeper.rules.heat import HeatVerdict
from keeper.rules.refusals import poisson_binomial_tail

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("refused together", ("kind", "name", "refused", "offered", "expected", "nights", "chance")),
    ("heat is out of limits there", ("place", "reading")),
    ("heat is within limits there", ("place",)),
    ("heat was not read there", ("place",)),
    ("others refused from the same bag", ("bag", "refused", "offered", "expected")),
    ("others ate from the same bag", ("bag", "refused", "offered", "expected")),
    ("all from one bag", ("bag",)),
    ("others refused from the same hands", ("keeper", "refused", "offered", "expected")),
    ("others ate from the same hands", ("keeper", "refused", "offered", "expected")),
    ("all from the same hands", ("keeper",)),
    ("recent move, cleaning or season", ()),
    ("bad sheds together", ("place", "count", "days")),
    ("humidity before snakes", ()),
)
"""Every reason of this module with the figures it carries."""

FALSE_A_NIGHT = 0.008
"""Most false causes a feed night in a quiet room of any size; the promise is one in a hundred."""

SUSPECT_CHANCE = 0.05
"""For a group whose heat was read out of limits: two unlikely things that agree."""

LEAST_REFUSERS = 3
"""Fewer are individuals, not a group."""

BAD_SHEDS = Sourced(value=3, source=COMMON_PRACTICE)
BAD_SHED_DAYS = Sourced(value=42, source=COMMON_PRACTICE)

GroupKind = Literal["row", "rack", "bag", "keeper", "room", "humidity"]
HeatReading = Literal["too hot", "too cold", "within limits"]


@dataclass(frozen=True, slots=True, kw_only=True)
class RefusalInRow:
    """One counted offer of a feed night, taken or refused, with the animal's own refusal rate.

    Excused offers are left out by the caller.
    """

    animal: AnimalId
    place: str | None
    night: date
    refused: bool
    own_rate: float
    bag: str | None = None
    keeper: str | None = None

    def __post_init__(self) -> None:
        if not 0 < self.own_rate < 1:
            raise ValueError(f"a refusal rate lies between 0 and 1, got {self.own_rate!r}")


@dataclass(frozen=True, slots=True, kw_only=True)
class BadShed:
    animal: AnimalId
    place: str | None
    on: date


@dataclass(frozen=True, slots=True, kw_only=True)
class Cause:
    """A group that refused together; ranked is what to check first, unfit what speaks against."""

    kind: GroupKind
    name: str
    members: tuple[AnimalId, ...]
    refused: int
    offered: int
    expected: float
    chance: float  # of so many or more in a quiet room
    since: date
    ranked: tuple[Reason, ...]
    unfit: tuple[Reason, ...]
    because: tuple[Reason, ...]


class _Group(NamedTuple):
    kind: GroupKind
    name: str
    nights: int
    offers: tuple[RefusalInRow, ...]


class _Test(NamedTuple):
    """A group with the chances of at least 0, 1, 2 ... refusals, and its own number."""

    group: _Group
    tails: tuple[float, ...]
    refused: int

    @property
    def chance(self) -> float:
        return self.tails[min(self.refused, len(self.tails) - 1)]


def causes(
    refusals: Sequence[RefusalInRow], heat: Mapping[str, HeatReading] | None = None
) -> tuple[Cause, ...]:
    """Groups that refused together on the last night or the last two, likeliest first.

    heat: what was read at rows and racks, as ``heat_at_groups`` gives it.
    """
    readings = heat or {}
    tests = [_test(group) for group in _groups(refusals)]
    level = _level(tests)
    raised = [test for test in tests if _is_raised(test, level, readings)]
    chosen = _explaining(raised)
    return tuple(_cause(test, refusals, readings) for test in chosen)


def row_cause(
    refusals: Sequence[RefusalInRow], heat: Mapping[str, HeatReading] | None = None
) -> Cause | None:
    """The likeliest of the causes; None in a quiet room."""
    return next(iter(causes(refusals, heat)), None)


def heat_at_groups(verdicts: Iterable[HeatVerdict]) -> dict[str, HeatReading]:
    """What hot ends say of rows and racks, for ``causes``.

    A hot end that only left its wished band is noted, not suspect: counted as out of limits
    it would let every row a degree off raise a cause on few refusals.
    """
    return {
        verdict.place: "within limits" if verdict.urgency == "noted" else verdict.state
        for verdict in verdicts
        if verdict.zone is Zone.HOT and verdict.state != "cannot tell"
    }


def humidity_causes(sheds: Iterable[BadShed], today: date) -> tuple[Cause, ...]:
    """Rows in which three animals shed badly lately: humidity, not snakes."""
    days = BAD_SHED_DAYS.value
    rows: dict[str, list[BadShed]] = defaultdict(list)
    for shed in sheds:
        place = place_of(shed.place or "")
        if place is not None and 0 <= (today - shed.on).days <= days:
            rows[f"{place.rack}{place.row}"].append(shed)
    return tuple(
        _humidity(row, found, days)
        for row, found in sorted(rows.items())
        if len({shed.animal for shed in found}) >= BAD_SHEDS.value
    )


def refusal_tails(rates: Iterable[float]) -> tuple[float, ...]:
    """Chance of at least 0, 1, 2 ... refusals when each animal refuses at its own rate; exact.

    The list ends where it is past eight standard deviations and thus nought.

    >>> [round(chance, 4) for chance in refusal_tails([0.5, 0.5])]
    [1.0, 0.75, 0.25]
    """
    each = tuple(rates)
    spread = sqrt(sum(rate * (1 - rate) for rate in each))
    most = min(len(each), ceil(sum(each) + 8 * spread) + 8)
    exactly = [1.0]  # the last place holds *most* or more
    for rate in each:
        kept = [share * (1 - rate) for share in exactly]
        more = [share * rate for share in exactly]
        if len(exactly) > most:
            kept[-1] += more.pop()
        else:
            kept.append(0.0)
        exactly = [a + b for a, b in zip(kept, [0.0, *more], strict=True)]
    tails, above = [], 0.0
    for share in reversed(exactly):
        above += share
        tails.append(min(above, 1.0))
    return tuple(reversed(tails))


def _groups(refusals: Sequence[RefusalInRow]) -> list[_Group]:
    """Every row, rack, bag, keeper and the room, over the last night and the last two."""
    nights = sorted({offer.night for offer in refusals})
    windows = [set(nights[-1:]), set(nights[-2:])] if len(nights) > 1 else [set(nights)]
    groups = []
    for window in windows:
        found: dict[tuple[GroupKind, str], list[RefusalInRow]] = defaultdict(list)
        for offer in refusals:
            if offer.night in window:
                for key in _keys(offer):
                    found[key].append(offer)
        groups += [_Group(*key, len(window), tuple(offers)) for key, offers in found.items()]
    return groups


def _keys(offer: RefusalInRow) -> list[tuple[GroupKind, str]]:
    keys: list[tuple[GroupKind, str]] = [("room", "")]
    place = place_of(offer.place or "")
    if place is not None:
        keys += [("row", f"{place.rack}{place.row}"), ("rack", place.rack)]
    if offer.bag:
        keys.append(("bag", offer.bag))
    if offer.keeper:
        keys.append(("keeper", offer.keeper))
    return keys


def _test(group: _Group) -> _Test:
    refused = sum(offer.refused for offer in group.offers)
    return _Test(group, refusal_tails(offer.own_rate for offer in group.offers), refused)


def _level(tests: Sequence[_Test]) -> float:
    """The largest chance at which all groups together stay within the promise.

    A group can only show certain chances, one for each number of refusals; raised at a level
    it errs with the largest of its own below that level. Those are summed over all groups,
    which holds whatever the groups share with each other.
    """
    steps = sorted(
        (tail, number)
        for number, test in enumerate(tests)
        for tail in test.tails[LEAST_REFUSERS:]
        if tail <= FALSE_A_NIGHT
    )
    erring = [0.0] * len(tests)
    total = level = 0.0
    for tail, number in steps:
        total += tail - erring[number]
        erring[number] = tail
        if total > FALSE_A_NIGHT:
            break
        level = tail
    return level


def _is_raised(test: _Test, level: float, heat: Mapping[str, HeatReading]) -> bool:
    refusers = {offer.animal for offer in test.group.offers if offer.refused}
    if len(refusers) < LEAST_REFUSERS:
        return False
    suspect = test.group.kind in ("row", "rack") and _out_of_limits(test.group.name, heat)
    return test.chance <= (max(level, SUSPECT_CHANCE) if suspect else level)


def _out_of_limits(name: str, heat: Mapping[str, HeatReading]) -> bool:
    return heat.get(name) in ("too hot", "too cold")


def _explaining(raised: Sequence[_Test]) -> list[_Test]:
    """Of the groups raised those that the others do not explain, unlikeliest number first.

    One explains another when that other, without the offers they share, is nothing unusual.
    Of a group and a part that explains it the part is chosen: the row before its rack.
    """
    left = sorted(raised, key=lambda test: (test.chance, len(test.group.offers)))
    chosen: list[_Test] = []
    while left:
        best = left[0]
        for other in left[1:]:
            if set(other.group.offers) < set(best.group.offers) and _explains(other, best):
                best = other
        chosen.append(best)
        left = [test for test in left if test is not best and not _explains(best, test)]
    return chosen


def _explains(cause: _Test, other: _Test) -> bool:
    """Whether what remains of *other* without the offers of *cause* is nothing unusual."""
    shared = set(cause.group.offers)
    rest = tuple(offer for offer in other.group.offers if offer not in shared)
    if len(rest) == len(other.group.offers):
        return False
    return _chance(rest) > SUSPECT_CHANCE


def _chance(offers: Sequence[RefusalInRow]) -> float:
    refused = sum(offer.refused for offer in offers)
    return poisson_binomial_tail(refused, [offer.own_rate for offer in offers])


def _cause(test: _Test, refusals: Sequence[RefusalInRow], heat: Mapping[str, HeatReading]) -> Cause:
    group = test.group
    expected = sum(offer.own_rate for offer in group.offers)
    why = because(
        "refused together",
        kind=group.kind,
        name=group.name,
        refused=test.refused,
        offered=len(group.offers),
        expected=round(expected, 1),
        nights=group.nights,
        chance=float(f"{test.chance:.2g}"),
    )
    found = [
        *_heat_says(group, heat),
        *_shared_says(group, refusals, "bag"),
        *_shared_says(group, refusals, "keeper"),
        (1, because("recent move, cleaning or season")),
    ]
    found.sort(key=lambda pair: -pair[0])
    return Cause(
        kind=group.kind,
        name=group.name,
        members=tuple(sorted({offer.animal for offer in group.offers if offer.refused})),
        refused=test.refused,
        offered=len(group.offers),
        expected=expected,
        chance=test.chance,
        since=min(offer.night for offer in group.offers),
        ranked=tuple(reason for rank, reason in found if rank > 0),
        unfit=tuple(reason for rank, reason in found if rank < 0),
        because=(why,),
    )


_Says = tuple[int, Reason]
"""How high to rank a possible cause (below 0: it does not fit), and what speaks so."""


def _heat_says(group: _Group, heat: Mapping[str, HeatReading]) -> list[_Says]:
    """Heat comes first while nothing speaks against it: the commonest cause of refusing."""
    if group.kind not in ("row", "rack"):
        return [(3, because("heat was not read there", place=None))] if not heat else []
    reading = heat.get(group.name)
    if reading is None:
        return [(3, because("heat was not read there", place=group.name))]
    if reading == "within limits":
        return [(-1, because("heat is within limits there", place=group.name))]
    return [(5, because("heat is out of limits there", place=group.name, reading=reading))]


def _shared_says(
    group: _Group, refusals: Sequence[RefusalInRow], field: Literal["bag", "keeper"]
) -> list[_Says]:
    """What those outside the group say of the bag or the hands that most refusers share."""
    refused = [offer for offer in group.offers if offer.refused]
    names = [str(getattr(offer, field)) for offer in refused if getattr(offer, field)]
    if not names or group.kind == field:
        return []
    name = max(sorted(set(names)), key=names.count)
    nights, own = {offer.night for offer in group.offers}, set(group.offers)
    outside = tuple(
        offer
        for offer in refusals
        if offer.night in nights and getattr(offer, field) == name and offer not in own
    )
    return [_outside_says(outside, field, name)]


def _outside_says(
    outside: tuple[RefusalInRow, ...], field: Literal["bag", "keeper"], name: str
) -> _Says:
    word = "bag" if field == "bag" else "hands"
    expected = sum(offer.own_rate for offer in outside)
    if expected < 1:
        only = "all from one bag" if field == "bag" else "all from the same hands"
        return 2, because(only, **{field: name})
    figures: dict[str, str | int | float] = {
        field: name,
        "refused": sum(offer.refused for offer in outside),
        "offered": len(outside),
        "expected": round(expected, 1),
    }
    if _chance(outside) <= SUSPECT_CHANCE:
        return 4, because(f"others refused from the same {word}", **figures)
    return -1, because(f"others ate from the same {word}", **figures)


def _humidity(row: str, sheds: Sequence[BadShed], days: float) -> Cause:
    members = tuple(sorted({shed.animal for shed in sheds}))
    why = because("bad sheds together", place=row, count=len(members), days=days)
    return Cause(
        kind="humidity",
        name=row,
        members=members,
        refused=0,
        offered=0,
        expected=0.0,
        chance=1.0,
        since=min(shed.on for shed in sheds),
        ranked=(because("humidity before snakes"),),
        unfit=(),
        because=(why,),
    )
