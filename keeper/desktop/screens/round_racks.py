"""Which racks are walked in a night, chosen with the digits of the pad."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from keeper.desktop.screens.round_asking import GIVE_UP_WORDS
from keeper.desktop.screens.round_deeds import GIVE_UP, Deed, Step, Verb
from keeper.language import tr

_RACKS_A_PAGE = 9


@dataclass(frozen=True, slots=True)
class Racks:
    """Which racks are walked tonight, by digit; more than nine lie behind the slash."""

    names: tuple[str, ...]
    chosen: frozenset[str] = frozenset()
    page: int = 0

    @property
    def legend(self) -> Mapping[str, str]:
        words = {
            str(n): tr("{rack} chosen", rack=name) if name in self.chosen else name
            for n, name in enumerate(self._shown(), start=1)
        }
        if len(self.names) > _RACKS_A_PAGE:
            words["/"] = tr("more racks")
        if self.chosen:
            words["Enter"] = tr("begin these")
        return words | {".": GIVE_UP_WORDS}

    @property
    def word(self) -> str:
        return tr("WHICH RACKS")

    @property
    def name(self) -> str:
        """The large line of the quiet page."""
        if not self.chosen:
            return tr("Which racks are walked?")
        named = ", ".join(name for name in self.names if name in self.chosen)
        return tr("Enter begins the round, only {racks}", racks=named)

    @property
    def advice(self) -> str:
        return tr("A digit chooses a rack, again leaves it out. What is not chosen stays due.")

    def press(self, key: str) -> Step:
        if key == ".":
            return GIVE_UP
        if key not in self.legend:
            return None
        if key == "/":
            pages = -(-len(self.names) // _RACKS_A_PAGE)
            return replace(self, page=(self.page + 1) % pages)
        if key == "Enter":
            named = tuple(name for name in self.names if name in self.chosen)
            return Deed(verb=Verb.BEGIN, racks=named)
        return replace(self, chosen=self.chosen ^ {self._shown()[int(key) - 1]})

    def _shown(self) -> Sequence[str]:
        first = self.page * _RACKS_A_PAGE
        return self.names[first : first + _RACKS_A_PAGE]
