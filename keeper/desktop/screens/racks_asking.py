"""What the racks ask for in one line: where to move, what to exchange, how large a rack is."""

from __future__ import annotations

from collections.abc import Callable

from keeper.actions.due_board import DueRow
from keeper.actions.keeping import Keeping, Written
from keeper.actions.rack_moves import (
    Change,
    declare_rack,
    exchange_with,
    make_change,
    move_to,
    rack_typed,
)
from keeper.actions.racks import Rack, RackTub, Room
from keeper.actions.troubles import REFUSALS
from keeper.desktop.notices import Notices
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.language import tr

_AGAIN = tr("Enter again writes it, Ctrl+Z would take it back.")


class RacksAsking:
    """Asks, says who is there before it writes, and writes.

    Who would share a tub is named first; the same line with Enter once more writes it.
    """

    def __init__(self, keeping: Keeping, notices: Notices, line: AskingLine) -> None:
        self._keeping, self._notices, self._line = keeping, notices, line
        self._named: str | None = None

    def move(self, room: Room, tub: RackTub, living: DueRow | None) -> None:
        """Ask where the animal that is chosen goes."""
        if living is None:
            told = tr("{tub} is empty: nobody here to move.", tub=tub.name)
            self._notices.refused.emit(told)
            return
        animal = living.animal
        self._ask(
            tr("Move {name} from {tub} to", name=animal.called, tub=tub.name),
            lambda text: self._change(text, move_to(room, animal, text)),
        )

    def exchange(self, room: Room, tub: RackTub, living: DueRow | None) -> None:
        """Ask which tub, or which animal, changes places with this one."""
        animal = living.animal if living else None
        who = f"{tub.name} {animal.called}" if animal else tub.name
        self._ask(
            tr("Exchange {who} with tub (B3·2) or animal (by name)", who=who),
            lambda text: self._change(text, exchange_with(room, tub, animal, text)),
        )

    def declare(self, rack: Rack | None) -> None:
        """Ask how many rows of how many tubs a rack has."""
        here = rack.letter if rack else ""
        declared = rack.declared if rack else None
        now = f"{declared[0]}x{declared[1]}" if declared else ""
        asked = tr("A new rack, its rows x tubs (A 7x10)")
        if here:
            asked = tr("Rows x tubs of rack {rack}, empty: as the animals stand", rack=here)
        self._ask(asked, lambda t: self._declared(t, here), now)

    def _ask(self, question: str, write: Callable[[str], bool], written: str = "") -> None:
        self._named = None
        self._line.ask(question, lambda text: self._try(text, write), written)

    def _try(self, text: str, write: Callable[[str], bool]) -> bool:
        try:
            return write(text)
        except REFUSALS as refusal:
            self._notices.refused.emit(str(refusal))
            return False

    def _change(self, text: str, change: Change) -> bool:
        if change.sharing and self._named != text:
            self._named = text
            self._notices.noted.emit(" ".join((*change.sharing, _AGAIN)))
            return False
        return self._tell(make_change(self._keeping, change))

    def _declared(self, text: str, here: str) -> bool:
        letter, size = rack_typed(text, here)
        if not letter:
            told = tr("Which rack? A letter before its size, such as A 7x10, is right.")
            raise ValueError(told)
        return self._tell(declare_rack(self._keeping, letter, size))

    def _tell(self, written: Written) -> bool:
        self._notices.tell_written(written)
        return True
