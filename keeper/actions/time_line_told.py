"""What the time-line of a rack says of one tub on one day, in whole sentences."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import groupby

from keeper.actions.time_line import RackTime, Suspected, TubTime
from keeper.husbandry.animal import IN_THE_ROOM, AnimalId, Sex, Status
from keeper.husbandry.house import MiteStep, MitesTold
from keeper.husbandry.place import place_of
from keeper.language import tr
from keeper.reports import stay_sentences as say
from keeper.reports.figures import day as day_words
from keeper.reports.words import because_text
from keeper.rules.neighbours import NEAR_DAYS, MitesFound, near_a_find, near_of, tub_exposure
from keeper.rules.quarantine import rack_of
from keeper.rules.stays import Shared, Stay, place_name, shared_with, touching

WASHES_MOST = 3
"""So many of the latest days of washing are told of a stay."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Para:
    """A few sentences under a head; the head may be empty."""

    head: str
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """What stands beside the picture. head: the tub; aside: the day."""

    head: str
    aside: str
    paras: tuple[Para, ...]

    @property
    def words(self) -> str:
        """All of it as text."""
        parts = (f"{para.head}: {para.text}" if para.head else para.text for para in self.paras)
        return "\n".join((f"{self.head}, {self.aside}", *parts))

    @property
    def first_words(self) -> str:
        """Where and when, and who: what is said at each step."""
        first = self.paras[0].text if self.paras else ""
        return f"{self.head}, {self.aside}. {first}".strip()


def told_at(told: RackTime, tub: TubTime, stay: Stay | None, on: date) -> Told:
    """Of the animal of *stay* where one is chosen, else of the tub with nobody in it."""
    paras = _of_nobody(told, tub, on) if stay is None else _of_stay(told, stay, on)
    kept = tuple(Para(head=head, text=" ".join(texts)) for head, texts in paras if texts)
    return Told(head=tub.name, aside=day_words(on), paras=kept)


def mates_of(told: RackTime, animal: AnimalId | None) -> frozenset[AnimalId]:
    """Everyone who ever shared a tub of this rack with *animal*."""
    own = [stay for stay in told.stays if stay.animal == animal]
    return frozenset(each.other for stay in own for each in shared_with(stay, told.stays, told.on))


_Paras = Iterator[tuple[str, Sequence[str]]]


def _of_stay(told: RackTime, stay: Stay, on: date) -> _Paras:
    name = _name(told, stay.animal)
    stood = say.stood(say.who_words(name, _sex(told, stay.animal)), stay, told.on)
    grown = told.grown.get(stay.animal)
    went = say.came_and_went(name, stay, grown.hatched_on if grown else None)
    yield "", (stood, *went, *_missing(told, stay.animal, name))
    yield tr("Swap"), list(_swaps(told, stay))
    yield tr("Washing up"), list(_washed(told, stay, on))
    yield tr("Mites"), list(_mites(told, stay, name))
    yield tr("Together"), list(_together(told, stay, name))
    yield tr("Pairings"), list(_paired(told, stay, name))
    yield tr("Beside it"), _beside(told, stay.place, on)
    yield tr("Quarantine"), list(_apart(told, stay, name))


def _of_nobody(told: RackTime, tub: TubTime, on: date) -> _Paras:
    if tub.known_from is None or on < tub.known_from:
        yield "", (say.not_known(tub.name, tub.known_from),)
    else:
        yield "", (say.nobody(tub.name, on), *_last_and_next(told, tub, on))
    yield tr("Mites"), list(_mites_of_nobody(told, tub, on))
    yield tr("Beside it"), _beside(told, tub.name, on)


def _last_and_next(told: RackTime, tub: TubTime, on: date) -> Iterator[str]:
    gone = [bar.stay for bar in tub.bars if bar.stay.until is not None and bar.stay.until <= on]
    if gone:
        last = max(gone, key=lambda stay: stay.until or on)
        yield say.last_here(_name(told, last.animal), last.until or on)
    come = [bar.stay for bar in tub.bars if bar.stay.since > on]
    if come:
        yield say.next_here(_name(told, come[0].animal), come[0].since)


def _together(told: RackTime, stay: Stay, name: str) -> Iterator[str]:
    met = shared_with(stay, told.stays, told.on)
    if not met:
        yield say.alone(name)
    for each in met:
        who = say.who_words(_name(told, each.other), _sex(told, each.other))
        yield say.shared(who, each, lasts=_lasts(told, stay, each))
        yield from _exposure(told, stay.animal, each)


def _lasts(told: RackTime, stay: Stay, shared: Shared) -> bool:
    """Whether both are there still."""
    stays = (s for s in told.stays if s.animal == shared.other and s.place == stay.place)
    return stay.until is None and any(each.until is None for each in stays)


def _exposure(told: RackTime, animal: AnimalId, shared: Shared) -> Iterator[str]:
    one, other = told.grown.get(animal), told.grown.get(shared.other)
    if one is None or other is None:
        return
    met = tub_exposure(one, other, shared)
    if met is not None:
        yield say.exposed(met, _name(told, met.female), _name(told, met.male))
        return
    for each in (one, other):
        old = shared.last >= max(one.mature_on, other.mature_on)
        if each.sex is Sex.UNKNOWN and one.species == other.species and old:
            yield say.sex_unknown(_name(told, each.animal))


def _beside(told: RackTime, place: str, on: date) -> list[str]:
    """The tubs that touch and stand in the rack, with who is in them on the day."""
    here = place_of(place)
    if here is None:
        return []
    found = []
    for side, each in touching(here).items():
        tub = told.tub(str(each))
        if tub is not None:
            found.append(say.beside(side, tub.name, _who_in(told, tub, on)))
    return [say.all_beside(on, found)] if found else []


def _who_in(told: RackTime, tub: TubTime, on: date) -> str:
    names = [bar.name for bar in tub.at(on)]
    if names:
        return tr(" and ").join(names)
    known = tub.known_from is not None and tub.known_from <= on
    return say.empty_words() if known else say.unknown_words()


def _mites(told: RackTime, stay: Stay, name: str) -> Iterator[str]:
    """Finds on the animal and beside it, and what was done while it stood in the rack."""
    for found in told.finds:
        if found.animal == stay.animal:
            if stay.covers(found.on):
                yield say.mites_here(name, found.on)
                yield _neighbours(told, found)
            continue
        near = near_of(stay, found, told.on)
        if near is not None:
            yield say.near_mites(near, _name(told, found.animal))
    yield from _courses(told, stay.since, stay.last(told.on))


def _mites_of_nobody(told: RackTime, tub: TubTime, on: date) -> Iterator[str]:
    """Finds in an empty tub's neighbours, about the day."""
    for found in told.finds:
        at = Stay(animal=0, place=tub.name, since=on, until=on + timedelta(days=1))
        near = near_of(at, found, told.on)
        if near is not None:
            yield say.near_mites(near, _name(told, found.animal))
    yield from _courses(told, on, on)


def _neighbours(told: RackTime, found: MitesFound) -> str:
    """Everyone to be looked at after a find, wherever it is now."""
    near = near_a_find(found, list(told.stays), told.on)
    latest = {each.stay.animal: each for each in near}  # the last of its stays near it
    if not latest:
        return say.no_neighbours()
    return say.look_at(
        [
            say.neighbour(_name(told, animal), each.stay.place, _place_now(told, animal))
            for animal, each in latest.items()
        ]
    )


def _place_now(told: RackTime, animal: AnimalId) -> str | None:
    row = told.who.get(animal)
    if row is None or row.status not in IN_THE_ROOM or row.place is None:
        return None
    return place_name(row.place)


def _courses(told: RackTime, first: date, last: date) -> Iterator[str]:
    """Steps against mites that fell into a time or shortly before it; each course is one."""
    about = first - timedelta(days=NEAR_DAYS.value)
    met = False
    for place, steps in _by_place(told.steps):
        for course in _parted(steps):
            if about <= course[-1].happened.day and course[0].happened.day <= last:
                where = tr("rack {rack}", rack=rack_of(place) or place) if place else tr("the room")
                yield say.mites_met(course, where)
                met = True
    if met:
        yield say.whole_rack()


def _by_place(steps: Sequence[MiteStep]) -> Iterator[tuple[str | None, list[MiteStep]]]:
    for place, each in groupby(sorted(steps, key=lambda s: s.place or ""), lambda s: s.place):
        yield place, sorted(each, key=lambda step: step.happened)


def _parted(steps: Sequence[MiteStep]) -> list[list[MiteStep]]:
    """Courses one after another: each begins with a treatment after a clear look, or an end."""
    found: list[list[MiteStep]] = []
    for step in steps:
        over = found and found[-1][-1].told in (MitesTold.CLEAR, MitesTold.ENDED)
        anew = step.told in (MitesTold.BEGUN, MitesTold.SEEN)
        if not found or (over and anew):
            found.append([])
        found[-1].append(step)
    return found


def _washed(told: RackTime, stay: Stay, on: date) -> Iterator[str]:
    """The latest days of washing during the stay, and that of the cursor wherever it falls."""
    own = [wash for wash in told.washes if stay.covers(wash.on)]
    latest = own[-WASHES_MOST:]
    for wash in (*(wash for wash in own if wash.on == on and wash not in latest), *latest):
        yield say.washed(wash, among=stay.place in wash.tubs)


def _swaps(told: RackTime, stay: Stay) -> Iterator[str]:
    yield from (because_text(each.because) for each in told.swaps if _in_stay(each, stay))


def _in_stay(suspected: Suspected, stay: Stay) -> bool:
    return suspected.animal == stay.animal and stay.covers(suspected.on)


def _apart(told: RackTime, stay: Stay, name: str) -> Iterator[str]:
    for each in told.apart:
        ends = each.until or date.max
        if each.animal == stay.animal and each.since <= stay.last(told.on) and ends >= stay.since:
            yield say.apart(name, each.since, each.until)


def _missing(told: RackTime, animal: AnimalId, name: str) -> Iterator[str]:
    for away in told.away:
        if away.animal == animal and away.status is Status.MISSING:
            yield say.missed(name, away)


def _paired(told: RackTime, stay: Stay, name: str) -> Iterator[str]:
    for each in told.paired:
        if stay.animal in (each.animal, each.mate) and stay.covers(each.happened.day):
            other = each.mate if each.animal == stay.animal else each.animal
            yield say.paired(name, _name(told, other), each.happened.day, locked=each.locked)


def _name(told: RackTime, animal: AnimalId) -> str:
    row = told.who.get(animal)
    return row.called if row is not None else "?"


def _sex(told: RackTime, animal: AnimalId) -> Sex:
    row = told.who.get(animal)
    return row.sex if row is not None else Sex.UNKNOWN
