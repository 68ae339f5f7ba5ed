"""The stock register: each change of the stock as a line, in the order in which it was written.

A line says only what was known when it was written, and none is ever changed: what is taken
back, put right or written late is a line of its own. So the lines as at a day are the same
whenever they are asked for.
"""

from collections import Counter, defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import date
from typing import Any

from keeper.husbandry.animal import AnimalId, Sex, Status
from keeper.husbandry.care import EggFate, Eggs, Permit
from keeper.husbandry.events import Clutch, Described, Sexed, Stock
from keeper.husbandry.stock_lines import Change, Key, Line, Step, Told

_OF_STATUS = {
    Status.SOLD: Change.SOLD,
    Status.ON_LOAN: Change.LOAN,
    Status.DIED: Change.DIED,
    Status.MISSING: Change.MISSING,
}
_BACK = {Status.SOLD: Change.RETURNED, Status.ON_LOAN: Change.RETURNED}
_AT_THE_DOOR = frozenset({Change.ENTERED, Change.CAME, Change.SOLD, Change.LOAN, Change.RETURNED})


def register_lines(steps: Iterable[Step]) -> list[Line]:
    """The whole register."""
    fold = _Register()
    for step in steps:
        fold.take(step)
    return fold.lines


Brood = tuple[AnimalId, str | None]
"""A dam and the code of a clutch."""


@dataclass(slots=True)
class _Animal:
    """What was written of one animal and stands, by kind and entry.

    last: its newest description, kept when none stands any more. counted: as which species it is
    counted now. of: the brood among whose numbered young it is counted.
    """

    told: dict[type[Any], dict[Key, Any]] = field(default_factory=lambda: defaultdict(dict))
    last: Described | None = None
    counted: str | None = None
    of: Brood | None = None
    bought: bool = False

    def turn(self, key: Key, event: Any, *, stands: bool) -> None:
        if stands:
            self.told[type(event)][key] = event
        else:
            self.told[type(event)].pop(key, None)
        if self.told[Described]:
            self.last = self.newest(Described)

    def newest(self, kind: type[Any]) -> Any:
        """The entry of *kind* that happened last; None where none stands."""
        found = self.told[kind].items()
        return max(found, key=lambda each: (each[1].happened, each[0]), default=(None, None))[1]

    @property
    def status(self) -> Status:
        newest = self.newest(Stock)
        return newest.status if newest else Status.KEPT

    @property
    def sex(self) -> Sex:
        newest = self.newest(Sexed)
        return newest.sex if newest else Sex.UNKNOWN

    @property
    def species_here(self) -> str | None:
        """Its species while it is here."""
        described = self.newest(Described)
        return described.species if described and self.status is Status.KEPT else None

    @property
    def brood(self) -> Brood | None:
        described = self.newest(Described)
        return (described.dam, described.clutch) if described and described.dam else None

    def permits(self, on: date) -> tuple[str, ...]:
        """Kind and number of those that held on that day."""
        held = (each for each in self.told[Permit].values() if each.expires >= on)
        return tuple(f"{each.kind} {each.number}" for each in held)


@dataclass(slots=True)
class _Register:
    """The fold: what stands so far, and the lines so far.

    first: the line of an entry. numbered: described young of a brood. young: those of it that
    live without a number. turned: lines that this step has spoken of already.
    """

    lines: list[Line] = field(default_factory=list)
    animals: dict[AnimalId, _Animal] = field(default_factory=lambda: defaultdict(_Animal))
    events: dict[Key, Any] = field(default_factory=dict)
    first: dict[Key, int] = field(default_factory=dict)
    total: Counter[str] = field(default_factory=Counter)
    numbered: Counter[Brood] = field(default_factory=Counter)
    young: Counter[Brood] = field(default_factory=Counter)
    turned: set[int] = field(default_factory=set)
    written_on: date = date.min
    reason: str | None = None

    def take(self, step: Step) -> None:
        self.written_on, self.reason = step.written_on, step.reason
        self.turned = set()
        for keys, what in ((step.ceased, Change.GONE), (step.again, Change.AGAIN)):
            for key in sorted(keys, key=lambda key: (not _is_silent(self.events[key]), key)):
                self._turn(key, what)
        self.events |= {told.key: told.event for told in step.told}
        for told in sorted(step.told, key=_order):
            self._enter(told, step)

    # --- entries -----------------------------------------------------------------------------

    def _enter(self, told: Told, step: Step) -> None:
        event = told.event
        one = self.animals[event.animal]
        before, old = one.status, one.last
        one.turn(told.key, event, stands=True)
        if isinstance(event, Described) and old is None:
            self._first(told, step)
        elif isinstance(event, Described):
            self._described_anew(told, old)
        elif isinstance(event, Stock) and told.key not in self.first:
            back = Change.FOUND if before is Status.MISSING else _BACK.get(before, Change.HERE)
            self._write(told.key, event, _OF_STATUS.get(event.status, back), self._settled(event))
        elif isinstance(event, Permit):
            self._write(told.key, event, Change.PERMIT, {})
        elif isinstance(event, Eggs):
            self._eggs(told.key, event)

    def _first(self, told: Told, step: Step) -> None:
        """An animal comes into the book: from outside, born of a clutch, or simply written."""
        event: Described = told.event
        came = [each.key for each in step.told if _is_coming(each.event, event.animal)]
        self.animals[event.animal].bought = bool(came)
        changes = self._settled(event)
        what = Change.CAME if came else Change.ENTERED
        if not came and (event.dam is not None or event.clutch is not None):
            what = Change.BORN if any(changes.values()) else Change.NUMBERED
        self._write(told.key, event, what, changes)
        self.first |= dict.fromkeys(came, self.lines[-1].number)

    def _described_anew(self, told: Told, old: Described | None) -> None:
        """Only another species or another number is told: the rest is no matter of stock."""
        one, changes = self.animals[told.event.animal], self._settled(told.event)
        assert old is not None and one.last is not None
        if changes or one.last.species != old.species:
            self._write(told.key, told.event, Change.SPECIES, changes)
        elif one.last.code != old.code:
            self._write(told.key, told.event, Change.CODE, changes)

    def _eggs(self, key: Key, event: Eggs) -> None:
        """Young that are born, or die, before they have a number."""
        if event.fate not in (EggFate.HATCHED, EggFate.DIED):
            return
        species, more = self._settled_brood(self._brood(event))
        dead = event.count if event.fate is EggFate.DIED else 0
        born = more + dead
        if born:
            self._write(key, event, Change.BORN, {species: born}, count=born)
        if dead:
            self._write(key, event, Change.DIED, {species: -dead}, count=dead)

    def _turn(self, key: Key, what: Change) -> None:
        """An entry that no longer stands, or stands again."""
        event = self.events[key]
        self.animals[event.animal].turn(key, event, stands=what is Change.AGAIN)
        if isinstance(event, Eggs):
            species, more = self._settled_brood(self._brood(event))
            changes: Mapping[str, int] = {species: more}
        else:
            changes = self._settled(event)
        line = self.first.get(key)
        is_news = line is not None and line not in self.turned
        if is_news or any(changes.values()):
            count = event.count if isinstance(event, Eggs) else 1
            self._write(key, event, what, changes, count=count)
            self.turned |= {line} if line is not None else set()

    # --- counting ----------------------------------------------------------------------------

    def _settled(self, event: Any) -> Mapping[str, int]:
        """By how many of each species more are here since the animal was last counted."""
        one, changes = self.animals[event.animal], Counter[str]()
        here, brood = one.species_here, one.brood
        if here != one.counted:
            changes.update({here: 1} if here else {})
            changes.subtract({one.counted: 1} if one.counted else {})
            one.counted = here
        if brood != one.of:
            self.numbered.update({brood: 1} if brood else {})
            self.numbered.subtract({one.of: 1} if one.of else {})
            for each in filter(None, (one.of, brood)):
                changes.update(dict([self._settled_brood(each)]))
            one.of = brood
        return {species: more for species, more in changes.items() if more}

    def _settled_brood(self, brood: Brood) -> tuple[str, int]:
        """The species of *brood*, and how many more of its young live without a number."""
        dam = self.animals[brood[0]]
        told = [each for each in dam.told[Eggs].values() if self._brood(each) == brood]
        hatched = sum(each.count for each in told if each.fate is EggFate.HATCHED)
        died = sum(each.count for each in told if each.fate is EggFate.DIED)
        before = self.young[brood]
        self.young[brood] = max(hatched - died - self.numbered[brood], 0)
        return dam.last.species if dam.last else "", self.young[brood] - before

    def _brood(self, event: Eggs) -> Brood:
        """Dam and clutch; where no clutch is named, her latest by that day."""
        if event.clutch is not None:
            return event.animal, event.clutch
        laid = self.animals[event.animal].told[Clutch].values()
        by_then = [each for each in laid if each.happened.day <= event.happened.day]
        latest = max(by_then, key=lambda each: each.happened, default=None)
        return event.animal, latest.code if latest else None

    # --- lines -------------------------------------------------------------------------------

    def _write(
        self, key: Key, event: Any, what: Change, changes: Mapping[str, int], count: int = 1
    ) -> None:
        """A line for each species of which more or fewer are here, one where none are."""
        one = self.animals[event.animal]
        refers = self.first.get(key) if what in (Change.GONE, Change.AGAIN) else None
        species = one.last.species if one.last else ""
        for kind, change in changes.items() or ((species, 0),):
            self.total[kind] += change
            line = self._line(one, event, what)
            number = len(self.lines) + 1
            self.lines.append(
                Line(
                    **line,
                    number=number,
                    species=kind,
                    change=change,
                    total=self.total[kind],
                    count=count,
                    refers=refers,
                )
            )
            self.first.setdefault(key, number)

    def _line(self, one: _Animal, event: Any, what: Change) -> dict[str, Any]:
        """What a line says of its animal, or of young without a number."""
        about = {
            "written_on": self.written_on,
            "happened_on": event.happened.day,
            "what": what,
            "note": _note(event),
            "reason": self.reason,
        }
        if isinstance(event, Eggs):
            return about | self._unnumbered(one, event)
        last = one.last
        return about | {
            "code": last.code if last else "",
            "sex": one.sex,
            "hatched": _span(last),
            "clutch": last.clutch if last else None,
            "dam": self._called(last.dam) if last else None,
            "bought": one.bought,
            "permits": one.permits(event.happened.day) if what in _AT_THE_DOOR else (),
        }

    def _unnumbered(self, dam: _Animal, event: Eggs) -> dict[str, Any]:
        clutch = self._brood(event)[1]
        code = dam.last.code if dam.last else ""
        day = event.happened.day
        return {
            "code": clutch or code,
            "sex": Sex.UNKNOWN,
            "unnumbered": True,
            "hatched": (day, day) if event.fate is EggFate.HATCHED else None,
            "clutch": clutch,
            "dam": code,
        }

    def _called(self, animal: AnimalId | None) -> str | None:
        last = self.animals[animal].last if animal in self.animals else None
        return last.code if last else None


def _order(told: Told) -> tuple[bool, Any, Key]:
    """Sexes and clutches first, then by what happened first."""
    return not _is_silent(told.event), told.event.happened, told.key


def _is_silent(event: Any) -> bool:
    """It changes what a line says, and makes none."""
    return isinstance(event, (Sexed, Clutch))


def _is_coming(event: Any, animal: AnimalId) -> bool:
    is_hers = isinstance(event, Stock) and event.animal == animal
    return is_hers and event.status is Status.KEPT


def _note(event: Any) -> str | None:
    if isinstance(event, Permit):
        told = f"{event.kind} {event.number}, {event.expires.isoformat()}"
        return f"{told}; {event.note}" if event.note else told
    note: str | None = event.note
    return note


def _span(described: Described | None) -> tuple[date, date] | None:
    if described is None or described.hatched_first is None:
        return None
    return described.hatched_first, described.hatched_last or described.hatched_first
