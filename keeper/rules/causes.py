"""Cause before symptom: refusals that fall together in a row, rack, prey bag, keeper's hands or
after a change of prey.

Each animal is compared with its own refusal rate; how unlikely so many refusals are is an
exact Poisson-binomial tail, for a row with its heat known also together with that. Over all
groups of a night together a quiet room raises a false cause on at most one feed night in a
hundred, however many groups it has.
"""

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import Zone
from keeper.husbandry.place import place_of
from keeper.husbandry.profile import practice
from keeper.husbandry.reasons import Reason, because
from keeper.rules.cause_says import SUSPECT, HeatReading, says, together, unlikely
from keeper.rules.group_chances import SUSPECT_CHANCE, Coolers, GroupChances, chances_of, raised
from keeper.rules.heat import HeatVerdict
from keeper.rules.refused_groups import GroupKind, RefusalInRow, groups

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("bad sheds together", ("place", "count", "days")),
    ("humidity before snakes", ()),
)
"""Every reason of this module with the figures it carries."""

BAD_SHEDS = practice(3)
BAD_SHED_DAYS = practice(42)


@dataclass(frozen=True, slots=True, kw_only=True)
class BadShed:
    animal: AnimalId
    place: str | None
    on: date


@dataclass(frozen=True, slots=True, kw_only=True)
class Cause:
    """A group that refused together; ranked is what to check first, unfit what speaks against.

    name: a row, a rack, a bag, a keeper, the day of a cleaning as ISO text, two kinds of prey, or
    nothing for the room. cooler: whether the row read cooler than it used to on these nights.
    """

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
    cooler: bool = False


def causes(
    refusals: Sequence[RefusalInRow],
    heat: Mapping[str, HeatReading] | None = None,
    cooler: Coolers | None = None,
) -> tuple[Cause, ...]:
    """Groups that refused together on the last night or the last two, likeliest first.

    heat: what was read at rows and racks, as ``heat_at_groups`` gives it; cooler: how that
    compares with their own past, as ``cooler_rows`` gives it.
    """
    readings = heat or {}
    tests = [chances_of(group, cooler or {}) for group in groups(refusals)]
    suspects = [name for name, reading in readings.items() if reading in SUSPECT]
    chosen = _explaining(raised(tests, suspects))
    return tuple(_cause(test, refusals, readings) for test in chosen)


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


def _explaining(raised: Sequence[GroupChances]) -> list[GroupChances]:
    """Of the groups raised those that the others do not explain, unlikeliest number first.

    One explains another when that other, without the offers they share, is nothing unusual.
    Of a group and a part that explains it the part is chosen: the row before its rack.
    """
    left = sorted(raised, key=lambda test: (test.chance, len(test.group.offers)))
    chosen: list[GroupChances] = []
    while left:
        best = left[0]
        for other in left[1:]:
            if set(other.group.offers) < set(best.group.offers) and _explains(other, best):
                best = other
        chosen.append(best)
        left = [test for test in left if test is not best and not _explains(best, test)]
    return chosen


def _explains(cause: GroupChances, other: GroupChances) -> bool:
    """Whether what remains of *other* without the offers of *cause* is nothing unusual."""
    shared = set(cause.group.offers)
    rest = tuple(offer for offer in other.group.offers if offer not in shared)
    if len(rest) == len(other.group.offers):
        return False
    return unlikely(rest) > SUSPECT_CHANCE


def _cause(
    test: GroupChances, refusals: Sequence[RefusalInRow], heat: Mapping[str, HeatReading]
) -> Cause:
    group = test.group
    found = says(test, refusals, heat)
    return Cause(
        kind=group.kind,
        name=group.name,
        members=tuple(sorted({offer.animal for offer in group.offers if offer.refused})),
        refused=test.refused,
        offered=len(group.offers),
        expected=sum(offer.own_rate for offer in group.offers),
        chance=test.chance,
        since=min(offer.night for offer in group.offers),
        ranked=tuple(reason for rank, reason in found if rank > 0),
        unfit=tuple(reason for rank, reason in found if rank < 0),
        because=(together(test),),
        cooler=test.is_cooler,
    )


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
