"""Typed about the house: prey counted in or anew, steps against mites, permits of the keeper."""

import re
from collections.abc import Iterable

from keeper.actions.care_words import care_words
from keeper.actions.keeping import Keeping, Written, animals_on
from keeper.actions.noting import note
from keeper.actions.typed_care import PERMIT, permit_parts
from keeper.actions.typed_entries import chosen
from keeper.actions.typed_names import TYPED, keyword
from keeper.husbandry.house import HousePermit, MiteStep, MitesTold, PreyCounted
from keeper.husbandry.place import place_of
from keeper.husbandry.when import at_instant
from keeper.language import tr
from keeper.reports.prey_words import prey_words
from keeper.rules.prey import prey_name

PREY = tr("grade, bag and number: mouse fuzzy: 14: 200")
MITES = tr("B begun, spray as vet or label say; B clear, seen or ended")
_ROOM = (*keyword("room"), *keyword("all"))
_NUMBER = re.compile(r"\d{1,5}")
_TOLD = {told.value: told for told in MitesTold}


def count_prey(keeping: Keeping, text: str) -> Written:
    """Write how many items of a grade lie in a bag: ``mouse fuzzy: 14: 200``; 0 when it is empty.

    Raises:
        ValueError: a grade that no profile of the room knows, no bag, or no number.
    """
    parts = [part.strip() for part in text.split(":")]
    if len(parts) != 3 or not all(parts) or not _NUMBER.fullmatch(parts[2]):
        raise ValueError(tr("{typed!r} counts no bag; {right}.", typed=text.strip(), right=PREY))
    event = PreyCounted(
        happened=at_instant(keeping.now()),
        prey=grade_named(keeping, parts[0]),
        bag=parts[1],
        items=int(parts[2]),
    )
    return note(keeping, "prey counted", event, what=care_words(event))


def mite_step(keeping: Keeping, text: str) -> Written:
    """Write a step against mites: ``B begun, spray as the vet wrote``, ``B clear``, ``room seen``.

    Raises:
        ValueError: no rack that animals live in, or no such step.
    """
    head, _, rest = text.strip().partition(",")
    words = head.split() or [""]
    last = 2 if " ".join(words[-2:]).casefold() == TYPED["clear"].casefold() else 1
    where, told = words[:-last], " ".join(words[-last:])
    found = chosen(told, _TOLD, tr("step against mites"))
    place = _rack(keeping, " ".join(where))
    event = MiteStep(
        happened=at_instant(keeping.now()), place=place, told=found, treatment=rest.strip() or None
    )
    return note(keeping, "mites", event, where=place or tr("the room"), what=care_words(event))


def house_permit(keeping: Keeping, text: str) -> Written:
    """Write a permit of the keeper, not of one animal: ``keeping licence / 24-7 / 30 Jun 2027``.

    Raises:
        ValueError: kind, number or last day is missing, or more than these was typed.
    """
    kind, number, expires, *rest = permit_parts(text, keeping.today)
    if rest:
        raise ValueError(
            tr("{typed!r} is more than a permit has; {right}.", typed=rest[0], right=PERMIT)
        )
    event = HousePermit(
        happened=at_instant(keeping.now()), kind=kind, number=number, expires=expires
    )
    return note(keeping, "permit", event, what=care_words(event))


def grade_named(keeping: Keeping, text: str) -> str:
    """The grade of prey that *text* names, as plans write it; said the other way round as well.

    Raises:
        ValueError: no profile of the room knows it.
    """
    grades = {prey_name(grade) for profile in keeping.profiles.values() for grade in profile.prey}
    wanted = text.strip().casefold()
    found = next((g for g in grades if wanted in (g.casefold(), prey_words(g).casefold())), None)
    if found is None:
        known = ", ".join(sorted(prey_words(grade) for grade in grades))
        raise ValueError(
            tr("{typed!r} is no grade of prey here; {known} are.", typed=text.strip(), known=known)
        )
    return found


def _rack(keeping: Keeping, text: str) -> str | None:
    """A rack in which animals live, as its tubs name it; None for the room."""
    if text.casefold() in _ROOM:
        return None
    racks = set(_racks(row.place for row in animals_on(keeping, keeping.today) if row.in_the_room))
    rack = next((name for name in racks if name.casefold() == text.casefold()), None)
    if rack is None:
        known = ", ".join(sorted(racks))
        raise ValueError(
            tr("{typed!r} is no rack; {known} or room are right.", typed=text, known=known)
        )
    return rack


def _racks(places: Iterable[str | None]) -> Iterable[str]:
    for written in places:
        place = place_of(written or "")
        if written:
            yield written if place is None else place.rack
