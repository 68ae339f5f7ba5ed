"""Moving an animal to another tub, exchanging two, and saying how large a rack is."""

from collections.abc import Sequence
from dataclasses import dataclass

from keeper.actions.keeping import Keeping, Written
from keeper.actions.noting import note
from keeper.actions.racks import (
    RACK_SETTING,
    ROWS_MOST,
    TUBS_MOST,
    RackTub,
    Room,
    size_of,
)
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import Event, Moved, Setting
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import place_of
from keeper.husbandry.when import Happened, at_instant


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """One animal and the tub it goes into."""

    animal: AnimalNow
    place: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """What would be written, and what the keeper should know before it is.

    sharing: each tub in which animals would then be together, in a sentence.
    """

    verb: str
    steps: tuple[Step, ...]
    sharing: tuple[str, ...]
    what: str


def move_to(room: Room, animal: AnimalNow, text: str) -> Change:
    """The move of *animal* into the tub that *text* names.

    Raises:
        ValueError: *text* names no tub, or the one it is in; in a sentence.
    """
    place = _tub_named(room, text)
    if _same(place, animal.place):
        raise ValueError(f"{animal.called} is in {place} already.")
    step = Step(animal=animal, place=place)
    return Change(verb="move", steps=(step,), sharing=_sharing(room, (step,)), what=f"to {place}")


def exchange_with(room: Room, tub: RackTub, animal: AnimalNow | None, text: str) -> Change:
    """The exchange of *tub* with another, or of *animal* in it with one named by name or code.

    Raises:
        ValueError: *text* names neither, or both stand in the same tub; in a sentence.
    """
    named = _animal_named(room, text) if place_of(text) is None else None
    if named is not None:
        return _two_animals(room, animal, named)
    other = room.tub_at(_tub_named(room, text))
    if other is None or other.name == tub.name:
        raise ValueError(f"{text.strip()!r} is no other tub in this room; B3·2 is one way.")
    if not tub.living and not other.living:
        raise ValueError(f"{tub.name} and {other.name} are both empty; nothing changes places.")
    steps = (*_all_into(tub, other.name), *_all_into(other, tub.name))
    what = f"{tub.name} with {other.name}"
    return Change(verb="exchange tubs", steps=steps, sharing=_sharing(room, steps), what=what)


def make_change(keeping: Keeping, change: Change) -> Written:
    """Write *change* as one batch, so that one key takes it back."""
    happened = at_instant(keeping.now())
    moves = [_moved(step, happened) for step in change.steps]
    first = change.steps[0].animal
    where = " ".join(part for part in (first.place, first.called) if part)
    if len(change.steps) > 1:
        where = "racks"
    return note(keeping, change.verb, *moves, where=where, what=change.what)


def declare_rack(keeping: Keeping, letter: str, text: str) -> Written:
    """How many rows of how many tubs rack *letter* has; an empty *text* leaves it to the animals.

    Raises:
        ValueError: *text* is no size, in a sentence.
    """
    wanted = text.strip()
    size = size_of(wanted)
    if wanted and size is None:
        raise ValueError(
            f"{wanted!r} is no size of a rack; rows x tubs, such as 7x10, are right "
            f"(at most {ROWS_MOST}x{TUBS_MOST})."
        )
    value = f"{size[0]}x{size[1]}" if size else ""
    setting = Setting(
        happened=at_instant(keeping.now()), key=f"{RACK_SETTING}{letter}", value=value
    )
    what = f"{size[0]} rows of {size[1]} tubs" if size else "as the animals stand"
    return note(keeping, "declare rack", setting, where=f"rack {letter}", what=what)


def rack_typed(text: str, here: str) -> tuple[str, str]:
    """Letter and size of a line such as ``7x10`` for the rack *here*, or ``D 5x8`` for another.

    >>> rack_typed("7x10", "A"), rack_typed("d 5 x 8", "A"), rack_typed("", "A")
    (('A', '7x10'), ('D', '5 x 8'), ('A', ''))
    """
    head, _, rest = text.strip().partition(" ")
    if head.isalpha() and len(head) <= 3 and head.casefold() != "x":
        return head.upper(), rest
    return here, text.strip()


def _moved(step: Step, happened: Happened) -> Event:
    return Moved(animal=step.animal.animal, happened=happened, place=step.place)


def _two_animals(room: Room, one: AnimalNow | None, other: AnimalNow) -> Change:
    if one is None:
        raise ValueError("The tub here is empty; name a tub to exchange it with.")
    if one.place is None or other.place is None or _same(one.place, other.place):
        raise ValueError(f"{one.called} and {other.called} are not in two tubs.")
    steps = (Step(animal=one, place=other.place), Step(animal=other, place=one.place))
    what = f"{one.called} with {other.called}, {one.place} with {other.place}"
    return Change(verb="exchange animals", steps=steps, sharing=_sharing(room, steps), what=what)


def _all_into(tub: RackTub, place: str) -> list[Step]:
    return [Step(animal=living.animal, place=place) for living in tub.living]


def _sharing(room: Room, steps: Sequence[Step]) -> tuple[str, ...]:
    """A sentence for each tub in which those who arrive would be with others.

    Animals that came together from one tub are not named again.
    """
    going = {step.animal.animal for step in steps}
    sentences = []
    for place in dict.fromkeys(step.place for step in steps):
        tub = room.tub_at(place)
        stay = [
            living.animal
            for living in (tub.living if tub else ())
            if living.animal.animal not in going
        ]
        come = [step.animal for step in steps if step.place == place]
        if stay:
            sentences.append(_together(place, come, stay))
    return tuple(sentences)


def _together(place: str, come: Sequence[AnimalNow], stay: Sequence[AnimalNow]) -> str:
    there = " and ".join(f"{row.called}, {_sex(row)}," for row in stay)
    arrive = " and ".join(row.called for row in come)
    is_there = "is" if len(stay) == 1 else "are"
    sexes = {row.sex for row in (*come, *stay)}
    mixed = " A female and a male would be together." if len(sexes - {Sex.UNKNOWN}) > 1 else ""
    unsure = " One of them is of unknown sex." if Sex.UNKNOWN in sexes else ""
    return f"{there} {is_there} in {place}: {arrive} would share.{mixed or unsure}"


def _tub_named(room: Room, text: str) -> str:
    """The tub as the book writes it, else as a label does."""
    told = text.strip()
    known = room.tub_at(told)
    if known is not None:
        return known.name
    place = place_of(told)
    if place is None:
        raise ValueError(f"{told!r} names no tub; rack, row and tub such as B3·2 or b3-2 do.")
    return str(place)


def _animal_named(room: Room, text: str) -> AnimalNow | None:
    """The one animal of that code or name; None where *text* names a known place."""
    wanted = text.strip().casefold()
    if room.tub_at(text.strip()) is not None:
        return None
    fits = [
        living.animal
        for living in room.everyone()
        if wanted in (living.animal.code.casefold(), (living.animal.name or "").casefold())
    ]
    if not wanted or not fits:
        raise ValueError(f"{text.strip()!r} names no tub and no animal here; B3·2 or a name does.")
    if len(fits) > 1:
        raise ValueError(f"{len(fits)} animals here are called {text.strip()}; its code is one's.")
    return fits[0]


def _same(one: str | None, other: str | None) -> bool:
    return one == other or (
        place_of(one or "") is not None and place_of(one or "") == place_of(other or "")
    )


def _sex(row: AnimalNow) -> str:
    return "sex not known" if row.sex is Sex.UNKNOWN else row.sex.value
