"""Where a clutch lies: one typed line that places it, and the stays that such lines make."""

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime

from keeper.actions.care_words import care_words
from keeper.actions.keeping import Keeping
from keeper.actions.typed_entries import Typed
from keeper.actions.typed_names import either, keyword
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.care import EggsPlaced
from keeper.husbandry.events import Clutch, Zone
from keeper.husbandry.when import Happened
from keeper.language import tr
from keeper.store import reading, readings

PLACED = tr("in Incubator 1, box 3; or out")
VERB = "eggs placed"

_IN = re.compile(rf"{either('in')}\s+(\S.*)", re.IGNORECASE)
_BOX = re.compile(rf"{either('box')}\s*(\S.*)", re.IGNORECASE)


@dataclass(frozen=True, slots=True, kw_only=True)
class Stay:
    """Eggs lay at *place* from an instant to another; until None: they lie there still."""

    place: str
    box: str | None
    since: datetime
    until: datetime | None

    @property
    def named(self) -> str:
        """Incubator and box in words."""
        if self.box:
            return tr("{place}, box {box}", place=self.place, box=self.box)
        return self.place


def incubators(keeping: Keeping) -> tuple[str, ...]:
    """Every place that a probe of an incubator or a clutch was ever written at, once each."""
    probed = (
        event.place
        for events in readings.placings(keeping.book).values()
        for event in events
        if event.zone is Zone.INCUBATOR
    )
    placed = (entry.event.place for entry in reading.all_of(keeping.book, EggsPlaced))
    return tuple(dict.fromkeys(place for place in (*probed, *placed) if place))


def is_placing(text: str) -> bool:
    """Whether a line about eggs says where they lie, and not what became of them."""
    told = text.strip()
    return bool(_IN.fullmatch(told)) or _is_out(told)


def placing_typed(
    animal: AnimalId,
    happened: Happened,
    text: str,
    *,
    known: Sequence[str] = (),
    clutch: Clutch | None = None,
) -> Typed:
    """``in Incubator 1, box 3`` or ``out``. known: incubators in the book's own spelling.

    Raises:
        ValueError: nothing that names a place, or a day before the eggs were laid.
    """
    if clutch is not None and happened.day < clutch.happened.day:
        raise ValueError(tr("The eggs cannot lie there before they were laid."))
    place, box = _where(text.strip(), known)
    code = clutch.code if clutch is not None else None
    event = EggsPlaced(animal=animal, happened=happened, place=place, box=box, clutch=code)
    what = care_words(event)
    if place is not None and place not in known:
        what = tr("{eggs}; no probe reads there yet", eggs=what)
    return Typed(verb=VERB, event=event, what=what)


def stays_of(placed: Iterable[EggsPlaced]) -> tuple[Stay, ...]:
    """The stays of one clutch, oldest first; the eggs lie in one place at a time."""
    ordered = sorted(placed, key=lambda each: each.happened)
    ends: list[datetime | None] = [*(each.happened.at for each in ordered[1:]), None]
    return tuple(
        Stay(place=each.place, box=each.box, since=each.happened.at, until=until)
        for each, until in zip(ordered, ends, strict=False)
        if each.place is not None
    )


def _is_out(told: str) -> bool:
    return told.casefold() in keyword("out")


def _where(told: str, known: Sequence[str]) -> tuple[str | None, str | None]:
    if _is_out(told):
        return None, None
    match = _IN.fullmatch(told)
    if match is None:
        raise ValueError(
            tr("{typed!r} is no place for eggs; {right} are right.", typed=told, right=PLACED)
        )
    place, _, box = (part.strip() for part in match[1].partition(","))
    if not place:
        raise ValueError(tr("Eggs lie in an incubator with a name: {right}.", right=PLACED))
    boxed = _BOX.fullmatch(box)
    return _as_known(place, known), (boxed[1] if boxed else box) or None


def _as_known(place: str, known: Sequence[str]) -> str:
    """The book's own spelling of a place that it knows."""
    return next((name for name in known if name.casefold() == place.casefold()), place)
