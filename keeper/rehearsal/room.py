"""The room: who lives in it, what the keeper wrote of them, and what is yet to happen."""

from collections import defaultdict
from collections.abc import Callable, Iterable
from datetime import date, time
from enum import IntEnum

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import AboutAnimal
from keeper.husbandry.when import Happened
from keeper.rehearsal.diary import Diary
from keeper.rehearsal.resident import Resident

Happening = Callable[[Resident, date], None]


class Turn(IntEnum):
    """Order of things within a day."""

    MOVE = 0
    LEAVE = 1
    LOOK = 2


class Room:
    """residents are known by code, in the order of coming; those who left stay known."""

    def __init__(self, diary: Diary) -> None:
        self.diary = diary
        self.residents: dict[str, Resident] = {}
        self.by_animal: dict[AnimalId, Resident] = {}
        self._turns: dict[date, list[tuple[Turn, str, Happening]]] = defaultdict(list)

    def add(self, resident: Resident) -> None:
        self.residents[resident.who.code] = resident
        self.by_animal[resident.animal] = resident

    def present(self) -> list[Resident]:
        return [resident for resident in self.residents.values() if resident.present]

    def tell(self, resident: Resident, verb: str, events: Iterable[AboutAnimal]) -> None:
        """The keeper sees something of *resident* and keeps it for the book."""
        told = list(events)
        self.diary.keep(verb, *told)
        for event in told:
            resident.mirror.take(event)

    def happened(self, day: date, at: time) -> Happened:
        return self.diary.happened(day, at)

    def later(self, day: date, turn: Turn, resident: Resident, happening: Happening) -> None:
        """*happening* comes on *day*, if the animal is still here then."""
        self._turns[day].append((turn, resident.who.code, happening))

    def live(self, day: date) -> None:
        """Everything that waits for *day*, in a fixed order."""
        for _, code, happening in sorted(self._turns.pop(day, []), key=lambda turn: turn[:2]):
            resident = self.residents[code]
            if resident.present:
                happening(resident, day)
