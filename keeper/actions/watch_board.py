"""The watch with all that stands beside a line: its animals, its row of tubs, its heat."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta

from keeper.actions.dismissing import answers_to, looser_for
from keeper.actions.due_board import DueRow, due_rows
from keeper.actions.keeping import Keeping, Written
from keeper.actions.noting import note
from keeper.actions.put_aside import asides_until
from keeper.actions.watching import watch_lines
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import Remark, RemarkKind, Snooze, Zone
from keeper.husbandry.house import Awaited, PlaceAside
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import place_of, walking_key
from keeper.husbandry.profile import HeatFigures, practice
from keeper.husbandry.reasons import Reason
from keeper.husbandry.when import at_instant
from keeper.language import tr
from keeper.rules.alerts import may_rest
from keeper.rules.dismissals import Loosening
from keeper.rules.feeding import DueState, Plan
from keeper.rules.watch_facts import WatchLine
from keeper.rules.watch_house import KIND_OF_CAUSE
from keeper.store import reading
from keeper.store.heat_days import readings_at

HEAT_SHOWN = timedelta(days=14)
HEAT_FRESH = timedelta(days=2)
_REMARKS_SHOWN = timedelta(days=14)
_REMARKS, _GAPS_MOST = 6, 12

DUE_SHARE = practice(0.8)
BEHIND_SHARE = practice(1.2)
FAR_SHARE = practice(2.0)
"""Days since eaten as a share of the interval, from which a tub is due, behind, far behind."""

TRIED = {
    "heat is out of limits there": ("heat", "fits"),
    "cooler than it was": ("its own past", "fits"),
    "heat is within limits there": ("heat", "no"),
    "heat was not read there": ("heat", "not read"),
    "others refused from the same bag": ("prey bag", "fits"),
    "others ate from the same bag": ("prey bag", "no"),
    "all from one bag": ("prey bag", "may be"),
    "others refused from the same hands": ("who fed", "fits"),
    "others ate from the same hands": ("who fed", "no"),
    "all from the same hands": ("who fed", "may be"),
    "others refused after the same cleaning": ("cleaning", "fits"),
    "others ate after the same cleaning": ("cleaning", "no"),
    "all cleaned on one day": ("cleaning", "may be"),
    "recent move or season": ("move, season", "may be"),
    "recent move, cleaning or season": ("move, cleaning", "may be"),
    "humidity before snakes": ("humidity", "look first"),
}
"""What was tried of a cause, by its reason, and how far it fits."""

SINCE_A_CLEANING, FROM_ONE_BAG = KIND_OF_CAUSE["cleaning"], KIND_OF_CAUSE["bag"]
"""Kinds of line whose place is the day of a cleaning, as ISO text, and the name of a bag."""

_CAUTION_WORDS = ("vet", "never pick", "by hand", "no handling", "isolate", "experienced hands")
_DOSES = ("dose due", "dose of several a day due")


@dataclass(frozen=True, slots=True, kw_only=True)
class Tried:
    """One possible cause, how far it fits, and why."""

    what: str
    fits: str
    because: Reason


@dataclass(frozen=True, slots=True, kw_only=True)
class RowTub:
    """A tub of a row. state: as ``tub_state`` says, or empty; animal is None where it is."""

    number: int
    state: str
    animal: AnimalId | None


@dataclass(frozen=True, slots=True, kw_only=True)
class HeatShown:
    """Hot end readings of one place, oldest first, and the range that is wanted there."""

    place: str
    first: date
    last: date
    readings: tuple[tuple[date, float], ...]
    low_c: float
    high_c: float


@dataclass(frozen=True, slots=True, kw_only=True)
class RowShown:
    """A row of tubs as it stands, with its hot end if it was ever read there lately."""

    name: str
    tubs: tuple[RowTub, ...]
    heat: HeatShown | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Aside:
    """A line put aside: of whom, by whom, with the keeper's own reason.

    animal is None where the line is about a place. awaited: what brings it back, where that is
    no day.
    """

    animal: AnimalNow | None
    snooze: Snooze | PlaceAside
    keeper: str
    awaited: Awaited | None = None
    looser: Loosening | None = None

    @property
    def place(self) -> str | None:
        """Where it is: the animal's tub, or the place that the line is about."""
        if isinstance(self.snooze, PlaceAside):
            return self.snooze.place
        return self.animal.place if self.animal else None


@dataclass(frozen=True, slots=True, kw_only=True)
class WatchItem:
    """One line. animal is None where a place is meant; members are then its animals.

    stays: put aside by the keeper, but too grave to leave the list.
    looser: a limit to be loosened, where such lines are put aside with nothing done. may_rest:
    whether it can be put aside at all.
    """

    kind: str
    severity: str
    place: str | None
    animal: AnimalNow | None
    members: tuple[AnimalNow, ...]
    since: date | None
    ends: Reason | None
    because: tuple[Reason, ...]
    tried: tuple[Tried, ...]
    remarks: tuple[Remark, ...]
    row: RowShown | None
    stays: Aside | None = None
    looser: Loosening | None = None
    may_rest: bool = True


@dataclass(frozen=True, slots=True, kw_only=True)
class WatchBoard:
    """The day's watch, and how much was looked at: animals, rows of tubs, rows read lately."""

    on: date
    items: tuple[WatchItem, ...]
    aside: tuple[Aside, ...]
    animals: int
    rows: int
    rows_read: int


def watch_board(keeping: Keeping, on: date) -> WatchBoard:
    """What needs a look on the day *on*, worst first."""
    due = due_rows(keeping, on)
    animals = {row.animal.animal: row.animal for row in due}
    rows = _rows(keeping, due, on)
    aside = _aside(keeping, animals, on)
    remarks = _remarks(keeping, animals, on)
    lines = watch_lines(keeping, on)
    looser = _Looser(keeping, animals, on)
    fresh = [row for row in rows.values() if row.heat and _is_fresh(row.heat, on)]
    return WatchBoard(
        on=on,
        items=tuple(looser.of_item(_item(line, animals, rows, aside, remarks)) for line in lines),
        aside=tuple(looser.of_aside(each) for each in aside if not _stands(each, lines)),
        animals=len(animals),
        rows=len(rows),
        rows_read=len(fresh),
    )


def tub_state(plan: Plan) -> str:
    """How far a tub is behind its interval: held, cannot tell, in step, due, behind, far behind.

    >>> tub_state(Plan(animal=1, state=DueState.DUE, lateness=1.3))
    'behind'
    """
    if plan.state is DueState.HOLD:
        return "held"
    if plan.lateness is None:
        return "cannot tell"
    if plan.lateness > FAR_SHARE.value:
        return "far behind"
    if plan.lateness > BEHIND_SHARE.value:
        return "behind"
    return "due" if plan.lateness >= DUE_SHARE.value else "in step"


def is_caution(why: Reason) -> bool:
    """Whether *why* warns of harm to animal or keeper, sends to a vet, or asks for a dose."""
    return why.why in _DOSES or any(words in why.why for words in _CAUTION_WORDS)


def note_found(keeping: Keeping, item: WatchItem, text: str) -> Written:
    """Write down what was found at a line: a remark to its animal, or to each of its members.

    Raises:
        ValueError: no word of what was found, or a line without animals.
    """
    if not text.strip():
        raise ValueError(tr("Say in a word what was found; nothing is written otherwise."))
    animals = (item.animal,) if item.animal is not None else item.members
    if not animals:
        raise ValueError(tr("This line stands for no animal, so there is no page to write it on."))
    happened = at_instant(keeping.now())
    events = [
        Remark(
            animal=row.animal,
            happened=happened,
            kind=RemarkKind.NOTE,
            text=text.strip(),
            note=item.kind,
        )
        for row in animals
    ]
    where = " ".join(part for part in (item.place, item.animal and item.animal.name) if part)
    return note(keeping, "looked at", *events, where=where, what=text.strip())


def _item(
    line: WatchLine,
    animals: Mapping[AnimalId, AnimalNow],
    rows: Mapping[str, RowShown],
    aside: Sequence[Aside],
    remarks: Mapping[AnimalId, Sequence[Remark]],
) -> WatchItem:
    members = [animals[key] for key in line.members if key in animals]
    about = (line.animal,) if line.animal is not None else line.members
    own = {remark.text: remark for key in about for remark in remarks.get(key, ())}
    tried = [Tried(what=TRIED[w.why][0], fits=TRIED[w.why][1], because=w) for w in _causes(line)]
    return WatchItem(
        kind=line.kind,
        severity=line.severity.value,
        place=line.place,
        animal=animals.get(line.animal) if line.animal is not None else None,
        members=tuple(sorted(members, key=lambda row: walking_key(row.place))),
        since=line.since,
        ends=line.ends,
        because=line.because,
        tried=tuple(tried),
        remarks=tuple(own.values()),
        row=rows.get(_row_name(line.place) or line.place or ""),
        may_rest=line.animal is not None or may_rest(line),
        stays=next((e for e in aside if _is_of(e, line)), None),
    )


def _causes(line: WatchLine) -> list[Reason]:
    return [why for why in line.because if why.why in TRIED]


def _is_of(aside: Aside, line: WatchLine) -> bool:
    whose = (aside.animal.animal if aside.animal else None, aside.snooze.watch_kind)
    if whose != (line.animal, line.kind):
        return False
    return line.animal is not None or aside.place == line.place


def _stands(aside: Aside, lines: Iterable[WatchLine]) -> bool:
    return any(_is_of(aside, line) for line in lines)


def _rows(keeping: Keeping, due: Sequence[DueRow], on: date) -> dict[str, RowShown]:
    """Every row of tubs in which an animal lives, by name."""
    living: dict[str, list[DueRow]] = {}
    for each in due:
        name = _row_name(each.animal.place)
        if name is not None:
            living.setdefault(name, []).append(each)
    wanted = {name: keeping.profile(rows[0].animal).heat for name, rows in living.items()}
    heat = _heat(keeping, wanted, on)
    return {
        name: RowShown(name=name, tubs=_tubs(rows), heat=heat.get(name))
        for name, rows in living.items()
    }


def _row_name(written: str | None) -> str | None:
    place = place_of(written or "")
    return None if place is None else f"{place.rack}{place.row}"


def _tubs(rows: Sequence[DueRow]) -> tuple[RowTub, ...]:
    """The tubs by number, empty ones between them; those of one number side by side."""
    found = []
    at = 0
    for each in rows:
        place = place_of(each.animal.place or "")
        number = place.tub if place else at + 1
        if 0 <= number - at - 1 <= _GAPS_MOST:
            found += [RowTub(number=n, state="empty", animal=None) for n in range(at + 1, number)]
        found.append(RowTub(number=number, state=tub_state(each.plan), animal=each.animal.animal))
        at = number
    return tuple(found)


def _heat(keeping: Keeping, wanted: Mapping[str, HeatFigures], on: date) -> dict[str, HeatShown]:
    first = on - HEAT_SHOWN
    found: dict[str, list[tuple[date, float]]] = {}
    for place, _, day, temp_c in readings_at(keeping.book, tuple(wanted), [Zone.HOT], first, on):
        found.setdefault(place, []).append((day, temp_c))
    return {
        place: HeatShown(
            place=place,
            first=first,
            last=on,
            readings=tuple(readings),
            low_c=wanted[place].hot_low_c.value,
            high_c=wanted[place].hot_high_c.value,
        )
        for place, readings in found.items()
    }


def _is_fresh(heat: HeatShown, on: date) -> bool:
    return on - heat.readings[-1][0] <= HEAT_FRESH


def _aside(keeping: Keeping, animals: Mapping[AnimalId, AnimalNow], on: date) -> list[Aside]:
    """The latest putting aside of each kind and animal, or place, that still runs."""
    found: dict[tuple[AnimalId | str | None, str], Aside] = {}
    kept = [e for e in reading.all_of(keeping.book, Snooze) if e.event.animal in animals]
    dated: list[reading.Entry[Snooze] | reading.Entry[PlaceAside]] = [*kept]
    dated += reading.all_of(keeping.book, PlaceAside)
    entries = [(entry.key, entry.event, None) for entry in dated] + [
        (entry.key, snooze, entry.event.awaited)
        for entry, snooze in asides_until(keeping, animals, on)
    ]
    for key, snooze, awaited in entries:
        if not snooze.happened.day <= on < snooze.until:
            continue
        batch = reading.batch_row(keeping.book, key.batch)
        whose = snooze.place if isinstance(snooze, PlaceAside) else snooze.animal
        found[whose, snooze.watch_kind] = Aside(
            animal=None if isinstance(snooze, PlaceAside) else animals[snooze.animal],
            snooze=snooze,
            keeper=batch.keeper if batch else "",
            awaited=awaited,
        )
    return list(found.values())


class _Looser:
    """Adds the looser limits that follow from how such lines were answered."""

    def __init__(self, keeping: Keeping, animals: Mapping[AnimalId, AnimalNow], on: date) -> None:
        self._keeping, self._on = keeping, on
        self._answers = answers_to(keeping, animals, on)

    def of_item(self, item: WatchItem) -> WatchItem:
        return replace(item, looser=self._of(item.animal, item.kind))

    def of_aside(self, aside: Aside) -> Aside:
        return replace(aside, looser=self._of(aside.animal, aside.snooze.watch_kind))

    def _of(self, animal: AnimalNow | None, kind: str) -> Loosening | None:
        if animal is None:
            return None
        return looser_for(self._keeping, animal, kind, self._answers, self._on)


def _remarks(
    keeping: Keeping, animals: Mapping[AnimalId, AnimalNow], on: date
) -> dict[AnimalId, list[Remark]]:
    """What was noted of each animal in the last fortnight, newest first."""
    recent = reading.recent(keeping.book, Remark, animals, _REMARKS)
    return {
        animal: [
            remark
            for remark in reversed(remarks)
            if remark.kind is RemarkKind.NOTE
            and timedelta(0) <= on - remark.happened.day <= _REMARKS_SHOWN
        ]
        for animal, remarks in recent.items()
    }
