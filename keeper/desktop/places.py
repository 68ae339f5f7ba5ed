"""The places of the window: each a name, a key and a way to make its page."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.language import tr, tr_noop

PLACE_KEYS = {
    tr_noop("Round"): "F2",
    tr_noop("Weigh-in"): "F3",
    tr_noop("Sheds"): "F4",
    tr_noop("Heat"): "F5",
    tr_noop("Racks"): "F6",
    tr_noop("Watch"): "F7",
    tr_noop("Females"): "F8",
    tr_noop("Prey"): "Shift+F2",
    tr_noop("Clutches"): "Shift+F8",
    tr_noop("Lines"): "Shift+F9",
    tr_noop("Animal"): "F9",
    tr_noop("Records"): "F11",
}
"""F1 stays help, F10 the menu and F12 the light, as many hands expect of those keys. A place with
Shift stands by the place of the bare key: the round's larder, what the females laid,
what each animal is bred for."""

SHIFT = "Shift+"
_DIGITS = range(1, 10)

ASIDE_KEYS = {tr_noop("House ways"): "Ctrl+,", tr_noop("What is new"): "Ctrl+F1"}
"""Places that are gone to seldom: in the menu with their keys, and not in the strip."""


def key_of(name: str) -> str:
    """The key of the place called *name*; KeyError where there is no such place."""
    return PLACE_KEYS[name] if name in PLACE_KEYS else ASIDE_KEYS[name]


@dataclass(frozen=True, slots=True, kw_only=True)
class KeyLine:
    """A key of a place and what it does there, for the key sheet."""

    key: str
    words: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Place:
    """One place. ``make`` is called once, when the place is first gone to.

    ``name`` is its key in the program, in every language the same; ``shown`` stands in the strip
    and ``title`` in the window's title; ``keys`` are what F1 lists.
    """

    key: str
    name: str
    title: str
    make: Callable[[Look], QWidget]
    keys: tuple[KeyLine, ...] = ()

    @property
    def shown(self) -> str:
        """Its name in the keeper's language."""
        return tr(self.name)

    @property
    def in_strip(self) -> bool:
        """Whether its name stands at the top of the window."""
        return self.name not in ASIDE_KEYS


def keys_in(place: Place, places: Sequence[Place]) -> tuple[str, ...]:
    """The key of *place*, and with Alt its digit among *places* for keyboards without such keys.

    Places of bare keys are counted; one with Shift has the digit of its bare key, and Shift.
    """
    bare = [each.key for each in places if each.in_strip and not each.key.startswith(SHIFT)]
    own = place.key.removeprefix(SHIFT)
    digit = bare.index(own) + 1 if own in bare else len(_DIGITS) + 1
    if digit > len(_DIGITS):
        return (place.key,)
    shift = SHIFT if own != place.key else ""
    return place.key, f"Alt+{shift}{digit}"
