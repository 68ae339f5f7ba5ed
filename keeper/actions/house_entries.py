"""Written about places: tubs cleaned, daily rounds, a bag opened, a line put aside."""

from collections.abc import Sequence
from datetime import date

from keeper.actions.heat_readings import living_at
from keeper.actions.keeping import Keeping, Written, animals_on
from keeper.actions.noting import note
from keeper.actions.typed_names import TYPED, keyword
from keeper.husbandry.events import Cleaned
from keeper.husbandry.house import BagOpened, Cleaning, DailyRound, PlaceAside
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import place_of
from keeper.husbandry.when import at_instant
from keeper.language import tr
from keeper.reports.figures import counted
from keeper.reports.prey_words import prey_words
from keeper.reports.words import word
from keeper.rules.prey import prey_name

EXTENTS = {
    typed.casefold(): extent for extent in Cleaning for typed in (extent.value, TYPED[extent.value])
}
_ANIMALS, _TUBS = counted("animal", "animals"), counted("tub", "tubs")
_ROOM = ("", *keyword("room"), *keyword("all"))


def clean(keeping: Keeping, text: str) -> Written:
    """Write that the tubs of a place were cleaned: ``B3·4``, ``B3``, ``B``, with ``spot`` or not.

    Raises:
        ValueError: no place that animals live in; nothing is written.
    """
    words = text.split()
    extent = EXTENTS.get(words[-1].casefold()) if words else None
    place = _named(" ".join(words[:-1] if extent else words))
    living = _living(keeping, place)
    happened = at_instant(keeping.now())
    events = [
        Cleaned(animal=row.animal, happened=happened, extent=extent or Cleaning.WHOLE)
        for row in living
    ]
    told = word(extent or Cleaning.WHOLE)
    tubs = _TUBS(len({row.place for row in living}))
    return note(keeping, "cleaned", *events, where=place, what=f"{told}, {tubs}")


def daily_round(keeping: Keeping, text: str) -> Written:
    """Write that the tubs of a rack or row were looked into; without a place, of the room.

    Raises:
        ValueError: no place that animals live in; nothing is written.
    """
    place = None if text.strip().casefold() in _ROOM else _named(text)
    seen = len(_living(keeping, place)) if place else len(_in_the_room(keeping))
    event = DailyRound(happened=at_instant(keeping.now()), place=place)
    what = tr("{animals} seen", animals=_ANIMALS(seen))
    return note(keeping, "daily round", event, where=place or tr("the room"), what=what)


def open_bag(keeping: Keeping, text: str) -> Written:
    """Write that a grade of prey comes out of a bag from now on: ``mouse fuzzy: 14``.

    Raises:
        ValueError: no bag, or a grade that no profile of the room knows; nothing is written.
    """
    prey, colon, bag = (part.strip() for part in text.partition(":"))
    if not colon or not prey or not bag:
        raise ValueError(
            tr("{typed!r} names no bag; a grade and a bag, as in pinky: 14.", typed=text.strip())
        )
    grades = {prey_name(grade) for profile in keeping.profiles.values() for grade in profile.prey}
    found = next(
        (g for g in grades if prey.casefold() in (g.casefold(), prey_words(g).casefold())), None
    )
    if found is None:
        raise ValueError(
            tr(
                "{typed!r} is no grade of prey here; {known} are.",
                typed=prey,
                known=", ".join(sorted(grades)),
            )
        )
    event = BagOpened(happened=at_instant(keeping.now()), prey=found, bag=bag)
    return note(
        keeping,
        "bag opened",
        event,
        what=tr("{prey} from bag {bag}", prey=prey_words(event.prey), bag=bag),
    )


def put_place_aside(
    keeping: Keeping, place: str | None, kind: str, until: date, reason: str
) -> Written:
    """Put a line about a place aside until a day, with the reason.

    Raises:
        ValueError: no reason, or a day that is not to come.
    """
    refuse_unreasoned(keeping, until, reason)
    event = PlaceAside(
        happened=at_instant(keeping.now()),
        place=place,
        watch_kind=kind,
        until=until,
        reason=reason.strip(),
    )
    where = place or tr("the room")
    return note(
        keeping,
        "put aside",
        event,
        where=where,
        what=tr("{kind} until {day}", kind=kind, day=until),
    )


def refuse_unreasoned(keeping: Keeping, until: date, reason: str) -> None:
    """Raises ValueError where a reason is missing or the end is not to come."""
    if not reason.strip():
        raise ValueError(tr("A line put aside needs a reason in your own words."))
    if until <= keeping.today:
        raise ValueError(
            tr("{day} is not a day to come; a line is put aside until a later day.", day=until)
        )


def _named(text: str) -> str:
    """A place as the book names it: ``b3-4`` is ``B3·4``, ``b3`` is ``B3``."""
    place = place_of(text)
    return text.strip().upper() if place is None else str(place)


def _living(keeping: Keeping, place: str) -> list[AnimalNow]:
    living = living_at(place, _in_the_room(keeping)) if place else []
    if not living:
        raise ValueError(
            tr(
                "No animal lives at {place!r}; a tub, row or rack is right: B3·4, B3, B.",
                place=place,
            )
        )
    return living


def _in_the_room(keeping: Keeping) -> Sequence[AnimalNow]:
    return [row for row in animals_on(keeping, keeping.today) if row.in_the_room]
