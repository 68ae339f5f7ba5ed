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
from keeper.language import tr
from keeper.reports.words import word


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
        raise ValueError(tr("{called} is in {place} already.", called=animal.called, place=place))
    step = Step(animal=animal, place=place)
    return Change(
        verb="move",
        steps=(step,),
        sharing=_sharing(room, (step,)),
        what=tr("to {place}", place=place),
    )


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
        raise ValueError(
            tr("{text!r} is no other tub in this room; B3·2 is one way.", text=text.strip())
        )
    if not tub.living and not other.living:
        raise ValueError(
            tr(
                "{name} and {name_2} are both empty; nothing changes places.",
                name=tub.name,
                name_2=other.name,
            )
        )
    steps = (*_all_into(tub, other.name), *_all_into(other, tub.name))
    what = tr("{one} with {other}", one=tub.name, other=other.name)
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
            tr(
                "{wanted!r} is no size of a rack; rows x tubs, such as 7x10, are right (at"
                " most {rows_most}x{tubs_most}).",
                wanted=wanted,
                rows_most=ROWS_MOST,
                tubs_most=TUBS_MOST,
            )
        )
    value = f"{size[0]}x{size[1]}" if size else ""
    setting = Setting(
        happened=at_instant(keeping.now()), key=f"{RACK_SETTING}{letter}", value=value
    )
    what = tr("as the animals stand")
    if size:
        what = tr("{rows} rows of {tubs} tubs", rows=size[0], tubs=size[1])
    where = tr("rack {letter}", letter=letter)
    return note(keeping, "declare rack", setting, where=where, what=what)


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
        raise ValueError(tr("The tub here is empty; name a tub to exchange it with."))
    if one.place is None or other.place is None or _same(one.place, other.place):
        raise ValueError(
            tr(
                "{called} and {called_2} are not in two tubs.",
                called=one.called,
                called_2=other.called,
            )
        )
    steps = (Step(animal=one, place=other.place), Step(animal=other, place=one.place))
    what = tr(
        "{one} with {other}, {place} with {other_place}",
        one=one.called,
        other=other.called,
        place=one.place,
        other_place=other.place,
    )
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
    both = tr(" and ")
    there = both.join(f"{row.called}, {_sex(row)}," for row in stay)
    about = {"there": there, "place": place, "arrive": both.join(row.called for row in come)}
    told = tr("{there} are in {place}: {arrive} would share.", **about)
    if len(stay) == 1:
        told = tr("{there} is in {place}: {arrive} would share.", **about)
    sexes = {row.sex for row in (*come, *stay)}
    if len(sexes - {Sex.UNKNOWN}) > 1:
        return f"{told} {tr('A female and a male would be together.')}"
    return f"{told} {tr('One of them is of unknown sex.')}" if Sex.UNKNOWN in sexes else told


def _tub_named(room: Room, text: str) -> str:
    """The tub as the book writes it, else as a label does."""
    told = text.strip()
    known = room.tub_at(told)
    if known is not None:
        return known.name
    place = place_of(told)
    if place is None:
        raise ValueError(
            tr("{told!r} names no tub; rack, row and tub such as B3·2 or b3-2 do.", told=told)
        )
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
        raise ValueError(
            tr("{text!r} names no tub and no animal here; B3·2 or a name does.", text=text.strip())
        )
    if len(fits) > 1:
        raise ValueError(
            tr(
                "{count} animals here are called {text}; its code is one’s.",
                count=len(fits),
                text=text.strip(),
            )
        )
    return fits[0]


def _same(one: str | None, other: str | None) -> bool:
    return one == other or (
        place_of(one or "") is not None and place_of(one or "") == place_of(other or "")
    )


def _sex(row: AnimalNow) -> str:
    return tr("sex not known") if row.sex is Sex.UNKNOWN else word(row.sex)
