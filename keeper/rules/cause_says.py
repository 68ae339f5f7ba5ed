"""What speaks for and against each possible cause of refusals that fall together."""

from collections.abc import Mapping, Sequence
from datetime import date
from typing import Literal

from keeper.husbandry.reasons import Reason, because
from keeper.rules.group_chances import SUSPECT_CHANCE, GroupChances
from keeper.rules.refusals import poisson_binomial_tail
from keeper.rules.refused_groups import Group, RefusalInRow

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("refused together", ("kind", "name", "refused", "offered", "expected", "nights", "chance")),
    ("refused after a cleaning", ("on", "refused", "offered", "expected", "nights", "chance")),
    (
        "refused after a change of prey",
        ("before", "now", "refused", "offered", "expected", "nights", "chance"),
    ),
    ("new prey is refused at first", ("before", "now")),
    ("cooler than it was", ("place", "on", "temp_c", "usual_c", "chance")),
    ("heat is out of limits there", ("place", "reading")),
    ("heat is within limits there", ("place",)),
    ("heat was not read there", ("place",)),
    ("others refused from the same bag", ("bag", "refused", "offered", "expected")),
    ("others ate from the same bag", ("bag", "refused", "offered", "expected")),
    ("all from one bag", ("bag",)),
    ("others refused from the same hands", ("keeper", "refused", "offered", "expected")),
    ("others ate from the same hands", ("keeper", "refused", "offered", "expected")),
    ("all from the same hands", ("keeper",)),
    ("others refused after the same cleaning", ("on", "refused", "offered", "expected")),
    ("others ate after the same cleaning", ("on", "refused", "offered", "expected")),
    ("all cleaned on one day", ("on",)),
    ("recent move or season", ()),
    ("recent move, cleaning or season", ()),
)
"""Every reason of this module with the figures it carries."""

HeatReading = Literal["too hot", "too cold", "within limits"]
SUSPECT = ("too hot", "too cold")

_Shared = Literal["bag", "keeper", "cleaned"]
_OF_SHARED: Mapping[str, tuple[str, str, str, str]] = {
    "bag": (
        "bag",
        "others refused from the same bag",
        "others ate from the same bag",
        "all from one bag",
    ),
    "keeper": (
        "keeper",
        "others refused from the same hands",
        "others ate from the same hands",
        "all from the same hands",
    ),
    "cleaned": (
        "on",
        "others refused after the same cleaning",
        "others ate after the same cleaning",
        "all cleaned on one day",
    ),
}
"""How a reason names what is shared, and what is said where others refused, where they ate, and
where there are no others."""

Says = tuple[int, Reason]
"""How high to rank a possible cause (below 0: it does not fit), and what speaks so."""


def together(test: GroupChances) -> Reason:
    """How many refused, and how unlikely that is."""
    group = test.group
    figures: dict[str, str | int | float | date] = {
        "refused": test.refused,
        "offered": len(group.offers),
        "expected": round(sum(offer.own_rate for offer in group.offers), 1),
        "nights": len(group.nights),
        "chance": float(f"{test.chance:.2g}"),
    }
    if changed := group.offers[0].changed:
        before, now = changed
        return because("refused after a change of prey", before=before, now=now, **figures)
    if group.kind == "cleaning":
        return because("refused after a cleaning", on=date.fromisoformat(group.name), **figures)
    return because("refused together", kind=group.kind, name=group.name, **figures)


def says(
    test: GroupChances, refusals: Sequence[RefusalInRow], heat: Mapping[str, HeatReading]
) -> list[Says]:
    """Every possible cause of a group's refusals, what to check first at the head."""
    if changed := test.group.offers[0].changed:
        before, now = changed
        return [(1, because("new prey is refused at first", before=before, now=now))]
    cleaned = _shared_says(test.group, refusals, "cleaned")
    rest = "recent move or season" if cleaned else "recent move, cleaning or season"
    found = [
        *_heat_says(test, heat),
        *_shared_says(test.group, refusals, "bag"),
        *_shared_says(test.group, refusals, "keeper"),
        *cleaned,
        (1, because(rest)),
    ]
    return sorted(found, key=lambda pair: -pair[0])


def unlikely(offers: Sequence[RefusalInRow]) -> float:
    """Chance of so many refusals among *offers* in a quiet room."""
    refused = sum(offer.refused for offer in offers)
    return poisson_binomial_tail(refused, [offer.own_rate for offer in offers])


def _heat_says(test: GroupChances, heat: Mapping[str, HeatReading]) -> list[Says]:
    """Heat comes first while nothing speaks against it: the commonest cause of refusing."""
    group = test.group
    if group.kind not in ("row", "rack"):
        return [(3, because("heat was not read there", place=None))] if not heat else []
    cooler = _cooler_says(test)
    reading = heat.get(group.name)
    if reading is None:
        unread = because("heat was not read there", place=group.name)
        return cooler or [(3, unread)]
    if reading == "within limits":
        return cooler or [(-1, because("heat is within limits there", place=group.name))]
    out = because("heat is out of limits there", place=group.name, reading=reading)
    return [(6, out), *cooler]


def _cooler_says(test: GroupChances) -> list[Says]:
    """The coolest of the nights, where the row read cooler than it used to."""
    if not test.is_cooler:
        return []
    coolest = min(test.cooler, key=lambda cooler: cooler.chance)
    why = because(
        "cooler than it was",
        place=coolest.place,
        on=coolest.read_on,
        temp_c=coolest.temp_c,
        usual_c=coolest.usual_c,
        chance=float(f"{coolest.chance:.2g}"),
    )
    return [(5, why)]


def _shared_says(group: Group, refusals: Sequence[RefusalInRow], field: _Shared) -> list[Says]:
    """What those outside the group say of what most of its refusers share."""
    refused = [offer for offer in group.offers if offer.refused]
    shared = [getattr(offer, field) for offer in refused if getattr(offer, field)]
    if not shared or group.kind == ("cleaning" if field == "cleaned" else field):
        return []
    most = max(sorted(set(shared)), key=shared.count)
    if field == "cleaned" and shared.count(most) <= len(refused) / 2:
        return []
    nights, own = {offer.night for offer in group.offers}, set(group.offers)
    outside = tuple(
        offer
        for offer in refusals
        if offer.night in nights
        and getattr(offer, field) == most
        and offer not in own
        and not offer.changed
    )
    return [_outside_says(outside, field, most)]


def _outside_says(outside: tuple[RefusalInRow, ...], field: _Shared, shared: str | date) -> Says:
    figure, refused_too, ate, only = _OF_SHARED[field]
    expected = sum(offer.own_rate for offer in outside)
    if expected < 1:
        return 2, because(only, **{figure: shared})
    figures: dict[str, str | int | float | date] = {
        figure: shared,
        "refused": sum(offer.refused for offer in outside),
        "offered": len(outside),
        "expected": round(expected, 1),
    }
    if unlikely(outside) <= SUSPECT_CHANCE:
        return 4, because(refused_too, **figures)
    return -1, because(ate, **figures)
