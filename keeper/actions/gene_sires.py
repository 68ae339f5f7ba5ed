"""Who sired whom, as far as the book tells: the kin that odds of genes are reckoned over.

A sire that the keeper wrote is taken as sure, unless the book itself shows another male with the
dam in the months for which she may have kept his sperm. Then the keeper's word counts as one
lock seen on the last useful day, beside what is written of each male; a male that is left with
less than one in twenty does not unsettle it. Where no sire is written the candidates are
weighed as the place Clutches weighs them. A "male" that turned out a female sires nobody.
"""

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from keeper.actions.clutch_detail import TubStay
from keeper.actions.gene_world import World
from keeper.husbandry.animal import AnimalId, Sex
from keeper.husbandry.events import Clutch, Described, Moved
from keeper.husbandry.place import place_of
from keeper.husbandry.profile import SpeciesProfile, practice
from keeper.rules.genetics.pedigree import Kin
from keeper.rules.sires import Exposure, Meeting, SireOdds, candidate_sires

UNSETTLES_FROM = practice(0.05)
"""The share from which another male puts a written sire in doubt."""

_HATCHES_WITHIN = timedelta(days=200)


@dataclass(frozen=True, slots=True, kw_only=True)
class Brood:
    """Young of one clutch, or one young of which no clutch is known.

    written: the sire on their pages. candidates: what the book shows of males with the dam, the
    written sire's own word among it; empty where he is sure or nobody is known.
    """

    key: str
    dam: AnimalId | None
    laid_on: date | None
    young: tuple[AnimalId, ...]
    written: AnimalId | None = None
    candidates: tuple[SireOdds, ...] = ()

    @property
    def sires(self) -> tuple[tuple[AnimalId, float], ...]:
        """Each with his weight; one alone is sure."""
        if self.candidates:
            return tuple((each.male, each.odds) for each in self.candidates)
        return () if self.written is None else ((self.written, 1.0),)

    @property
    def in_doubt(self) -> bool:
        return len(self.sires) > 1


class SireBook:
    """Asked brood by brood; the stays of males are looked through once."""

    def __init__(self, world: World, profiles: Mapping[str, SpeciesProfile]) -> None:
        self._world, self._profiles = world, profiles
        self._stays = _stays(world)
        self._males: dict[str, list[TubStay]] = defaultdict(list)
        for animal, stays in self._stays.items():
            if world.sex(animal) is Sex.MALE:
                for stay in stays:
                    self._males[stay.place].append(stay)

    def candidates(
        self, dam: AnimalId, laid_on: date, written: AnimalId | None = None
    ) -> tuple[SireOdds, ...]:
        """Who may have sired eggs that *dam* laid on that day; none where *written* is sure."""
        profile = self._profiles.get(self._world.species(dam) or "")
        if profile is None:
            return ()
        hatched, figures = self._world.described[dam].hatched_first, profile.clutch
        mature = timedelta(days=round(figures.mature_days.value))
        met = [*self._paired(dam, laid_on), *self._shared(dam, laid_on, mature)]
        if written is not None:
            latest = laid_on - timedelta(days=round(figures.sire_days_least.value))
            met.append(Exposure(male=written, first=latest, last=latest, how="lock"))
        found = candidate_sires(met, laid_on, figures, hatched + mature if hatched else None)
        if written is None:
            return found
        others = sum(each.odds for each in found if each.male != written)
        return found if others >= UNSETTLES_FROM.value else ()

    def _paired(self, dam: AnimalId, until: date) -> Iterator[Exposure]:
        for paired in self._world.pairings.get(dam, ()):
            mate = paired.mate if paired.animal == dam else paired.animal
            day = paired.happened.day
            if day <= until and self._may_sire(mate, dam):
                how: Meeting = "lock" if paired.locked else "paired"
                yield Exposure(male=mate, first=day, last=day, how=how)

    def _shared(self, dam: AnimalId, until: date, mature: timedelta) -> Iterator[Exposure]:
        for own in self._stays.get(dam, ()):
            for his in self._males.get(own.place, ()):
                if not self._may_sire(his.animal, dam):
                    continue
                hatched = self._world.described[his.animal].hatched_first
                first = max(his.first, own.first, hatched + mature if hatched else date.min)
                last = min(his.last, own.last, until)
                if first <= last:
                    yield Exposure(male=his.animal, first=first, last=last, how="tub")

    def _may_sire(self, male: AnimalId, dam: AnimalId) -> bool:
        world = self._world
        alike = world.species(male) == world.species(dam) and male in world.described
        return male != dam and alike and world.sex(male) is not Sex.FEMALE


def broods_of(world: World, sires: SireBook, animals: Sequence[AnimalId]) -> list[Brood]:
    """*animals* with a parent or a clutch, clutch by clutch, each clutch with its sires."""
    together: dict[str, list[AnimalId]] = defaultdict(list)
    for animal in animals:
        key = _brood_key(world, world.described[animal])
        if key is not None:
            together[key].append(animal)
    return [brood for key, young in together.items() for brood in _broods(world, sires, key, young)]


def kin_of(broods: Sequence[Brood], animals: Sequence[AnimalId]) -> dict[AnimalId, Kin]:
    """Every one of *animals*; those of no brood have no parents."""
    kin = {animal: Kin(animal=animal) for animal in animals}
    for brood in broods:
        for animal in brood.young:
            sires = tuple(each for each in brood.sires if each[0] != animal)
            dam = None if brood.dam == animal else brood.dam
            kin[animal] = Kin(animal=animal, dam=dam, sires=sires, brood=brood.key)
    return kin


def laid_day(world: World, dam: AnimalId, code: str | None, hatched: date | None) -> date | None:
    """When the eggs of a young were laid: by the clutch's code, else the last clutch before."""
    laid = world.clutches.get(dam, ())
    coded = [each for each in laid if code and _same(each.code, code)]
    if coded:
        return coded[-1].happened.day
    if hatched is None:
        return None
    return max((day for day in _days(laid) if day < hatched <= day + _HATCHES_WITHIN), default=None)


def _days(laid: Sequence[Clutch]) -> list[date]:
    return [each.happened.day for each in laid]


def _same(one: str | None, other: str) -> bool:
    return one is not None and one.casefold() == other.casefold()


def _brood_key(world: World, told: Described) -> str | None:
    """Of dam and clutch, or dam and day of hatching; what comes of nobody known has none."""
    dam = _dam(world, told)
    if told.clutch:
        return f"{dam or ''}/{told.clutch.casefold()}"
    if dam is not None:
        return f"{dam}@{told.hatched_first or told.animal}"
    return None if told.sire is None else f"@{told.animal}"


def _broods(world: World, sires: SireBook, key: str, young: Sequence[AnimalId]) -> Iterator[Brood]:
    """One, or one for each sire where the pages of clutch-mates name several."""
    fathers = {animal: _sire(world, world.described[animal]) for animal in young}
    named = list(dict.fromkeys(sire for sire in fathers.values() if sire is not None))
    if len(named) <= 1:
        yield _brood(world, sires, key, young, named[0] if named else None)
        return
    for sire in (None, *named):
        own = [animal for animal in young if fathers[animal] == sire]
        if own:
            yield _brood(world, sires, f"{key}*{sire}", own, sire)


def _brood(
    world: World, sires: SireBook, key: str, young: Sequence[AnimalId], written: AnimalId | None
) -> Brood:
    first = world.described[young[0]]
    dam = _dam(world, first)
    laid_on = _laid_on(world, first, dam)
    candidates: tuple[SireOdds, ...] = ()
    if dam is not None and laid_on is not None:
        candidates = sires.candidates(dam, laid_on, written)
    return Brood(
        key=key,
        dam=dam,
        laid_on=laid_on,
        young=tuple(young),
        written=written,
        candidates=tuple(each for each in candidates if each.male not in young),
    )


def _laid_on(world: World, young: Described, dam: AnimalId | None) -> date | None:
    if dam is None:
        return None
    return laid_day(world, dam, young.clutch, young.hatched_last or young.hatched_first)


def _dam(world: World, told: Described) -> AnimalId | None:
    """The dam that is written, unless she turned out a male."""
    is_male = told.dam is not None and world.sex(told.dam) is Sex.MALE
    return None if is_male or told.dam == told.animal else told.dam


def _sire(world: World, told: Described) -> AnimalId | None:
    """The sire that is written, unless he turned out a female."""
    is_female = told.sire is not None and world.sex(told.sire) is Sex.FEMALE
    return None if is_female or told.sire in (told.animal, told.dam) else told.sire


def _stays(world: World) -> dict[AnimalId, list[TubStay]]:
    found: dict[AnimalId, list[TubStay]] = defaultdict(list)
    for animal, moves in world.moves.items():
        if animal not in world.described:
            continue
        ends = [*(each.happened.day for each in moves[1:]), world.left.get(animal, date.max)]
        for each, last in zip(moves, ends, strict=True):
            place = _tub(each)
            if place is not None:
                found[animal].append(TubStay(animal, place, each.happened.day, last))
    return found


def _tub(moved: Moved) -> str | None:
    place = place_of(moved.place) if moved.place is not None else None
    return None if place is None else str(place)
