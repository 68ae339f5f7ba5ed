"""All that stands of one clutch: its young one by one, candidate sires, its heat, its dam."""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from keeper.actions.clutch_heat import LainHeat
from keeper.actions.clutch_rows import ClutchRow, heat_of
from keeper.actions.females import kept_meals
from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.life import Life, empties, life_of
from keeper.husbandry.animal import AnimalId, Sex
from keeper.husbandry.events import Moved, Paired, ShedSign, ShedStage
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import place_of
from keeper.husbandry.reasons import Reason
from keeper.rules.sires import Exposure, Meeting, candidate_sires, cannot_tell
from keeper.rules.weights import baseline
from keeper.store import reading

HATCH_WEIGHT_WITHIN = timedelta(days=7)
PRE_LAY_WITHIN = timedelta(days=60)


@dataclass(frozen=True, slots=True, kw_only=True)
class YoungRow:
    """One young as it stands. ate_on, shed_on: the first; kept: meals not brought up."""

    animal: AnimalNow
    letter: str
    hatch_g: float | None
    now_g: float | None
    shed_on: date | None
    ate_on: date | None
    kept: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Sire:
    """A candidate with his odds, 0 to 1, and what was written of him with her."""

    animal: AnimalNow
    odds: float
    because: tuple[Reason, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class ClutchDetail:
    """What stands beside a row. unknown: why no odds are given, where there are none.

    before_g, after_g: the dam without meals before she laid and after; pre_lay_on: her shed
    before laying; written_sires: whom the young's pages name.
    """

    row: ClutchRow
    young: tuple[YoungRow, ...]
    sires: tuple[Sire, ...]
    unknown: Reason
    heat: LainHeat | None
    pairings: tuple[tuple[Paired, str], ...] = ()
    pre_lay_on: date | None = None
    before_g: float | None = None
    after_g: tuple[date, float] | None = None
    written_sires: tuple[str, ...] = ()


def clutch_detail(keeping: Keeping, row: ClutchRow, on: date) -> ClutchDetail:
    """Everything of the clutch *row* up to the day *on*."""
    everyone = {each.animal: each for each in animals_on(keeping, on)}
    life = life_of(keeping, row.dam.animal, on)
    sires = _sires(keeping, row, everyone)
    named = dict.fromkeys(each.sire for each in row.young if each.sire in everyone)
    return ClutchDetail(
        row=row,
        young=tuple(_young(keeping, each, row, on) for each in row.young),
        sires=sires,
        unknown=cannot_tell(row.profile.clutch),
        heat=row.heat or heat_of(keeping, row.facts, row.stays, on),
        pairings=tuple(_pairings(life, row, everyone)),
        pre_lay_on=_pre_lay(life.signs, row.laid_on),
        before_g=_before_g(life, row),
        after_g=_after_g(life, row),
        written_sires=tuple(everyone[key].called for key in named if key is not None),
    )


def exposures(
    keeping: Keeping, dam: AnimalNow, laid_on: date, everyone: Mapping[AnimalId, AnimalNow]
) -> list[Exposure]:
    """Every male that was paired with *dam* or lived in her tub before *laid_on*."""
    found = []
    for paired in reading.pairings_of(keeping.book, dam.animal):
        mate = paired.mate if paired.animal == dam.animal else paired.animal
        day = paired.happened.day
        if day <= laid_on and may_sire(everyone.get(mate), dam):
            how: Meeting = "lock" if paired.locked else "paired"
            found.append(Exposure(male=mate, first=day, last=day, how=how))
    return found + list(_tub_mates(keeping, dam, laid_on, everyone))


def _sires(
    keeping: Keeping, row: ClutchRow, everyone: Mapping[AnimalId, AnimalNow]
) -> tuple[Sire, ...]:
    figures, hatched = row.profile.clutch, row.dam.hatched_first
    mature_on = hatched + timedelta(days=round(figures.mature_days.value)) if hatched else None
    met = exposures(keeping, row.dam, row.laid_on, everyone)
    odds = candidate_sires(met, row.laid_on, figures, mature_on)
    return tuple(
        Sire(animal=everyone[each.male], odds=each.odds, because=each.because) for each in odds
    )


@dataclass(frozen=True, slots=True)
class TubStay:
    """An animal lived in the tub *place* from a day to another."""

    animal: AnimalId
    place: str
    first: date
    last: date


def _tub_mates(
    keeping: Keeping, dam: AnimalNow, laid_on: date, everyone: Mapping[AnimalId, AnimalNow]
) -> Iterator[Exposure]:
    """Stays of males in a tub while she lived in it, from their own maturity on."""
    stays = tub_stays(keeping, everyone)
    hers: dict[str, list[TubStay]] = defaultdict(list)
    for stay in stays.get(dam.animal, ()):
        if stay.first <= laid_on:
            hers[stay.place].append(stay)
    mature = timedelta(days=round(keeping.profile(dam).clutch.mature_days.value))
    for animal, his in stays.items():
        male = everyone[animal]
        if not hers or male.sex is not Sex.MALE or not may_sire(male, dam):
            continue
        grown_on = male.hatched_first + mature if male.hatched_first else date.min
        for stay in his:
            for own in hers.get(stay.place, ()):
                first = max(stay.first, own.first, grown_on)
                last = min(stay.last, own.last, laid_on)
                if first <= last:
                    yield Exposure(male=animal, first=first, last=last, how="tub")


def tub_stays(
    keeping: Keeping, everyone: Mapping[AnimalId, AnimalNow]
) -> Mapping[AnimalId, Sequence[TubStay]]:
    """Who lived in which tub from when to when; a day of moving counts for both tubs."""
    return keeping.once("stays in tubs", lambda: _stays(keeping, everyone))


def may_sire(male: AnimalNow | None, dam: AnimalNow) -> bool:
    """By what is known now: a male that proved a female is none any more."""
    if male is None or male.animal == dam.animal:
        return False
    return male.sex is not Sex.FEMALE and male.species == dam.species


def _stays(
    keeping: Keeping, everyone: Mapping[AnimalId, AnimalNow]
) -> dict[AnimalId, list[TubStay]]:
    moves: dict[AnimalId, list[Moved]] = defaultdict(list)
    for entry in reading.all_of(keeping.book, Moved):
        if entry.event.animal in everyone:
            moves[entry.event.animal].append(entry.event)
    found: dict[AnimalId, list[TubStay]] = defaultdict(list)
    for animal, told in moves.items():
        told.sort(key=lambda each: each.happened)
        end = _end(everyone[animal])
        ends = [each.happened.day for each in told[1:]]
        for each, last in zip(told, [*ends, end], strict=True):
            if each.place is not None and _is_tub(each.place):
                stay = TubStay(animal, str(place_of(each.place)), each.happened.day, last)
                found[animal].append(stay)
    return found


def _end(row: AnimalNow) -> date:
    """The day on which it left the room, if it did."""
    gone = None if row.in_the_room else row.status_on
    return gone or date.max


def _is_tub(place: str) -> bool:
    return place_of(place) is not None


def _pairings(
    life: Life, row: ClutchRow, everyone: Mapping[AnimalId, AnimalNow]
) -> Iterator[tuple[Paired, str]]:
    """Her pairings within the months for which she may keep sperm, with the mate's name."""
    months = row.profile.clutch.sire_months_most.value
    first = row.laid_on - timedelta(days=round(months * 30.44))
    for paired in life.pairings:
        if first <= paired.happened.day <= row.laid_on:
            mate = paired.mate if paired.animal == row.dam.animal else paired.animal
            yield paired, everyone[mate].called if mate in everyone else ""


def _pre_lay(signs: Iterable[ShedSign], laid_on: date) -> date | None:
    days = [
        sign.happened.day
        for sign in signs
        if sign.pre_lay and laid_on - PRE_LAY_WITHIN <= sign.happened.day <= laid_on
    ]
    return max(days, default=None)


def _before_g(life: Life, row: ClutchRow) -> float | None:
    """Her baseline at laying, eggs and meals not in it where it is old enough."""
    before = [e for e in empties(life.weighings, life.meals, row.profile) if e[0] < row.laid_on]
    return baseline(before, row.laid_on, row.profile)


def _after_g(life: Life, row: ClutchRow) -> tuple[date, float] | None:
    """The first weighing without a meal after she laid."""
    freed = empties(life.weighings, life.meals, row.profile)
    return next(((day, grams) for day, grams, _ in freed if day >= row.laid_on), None)


def _young(keeping: Keeping, young: AnimalNow, row: ClutchRow, on: date) -> YoungRow:
    life = life_of(keeping, young.animal, on)
    return YoungRow(
        animal=young,
        letter=letter_of(young, row.facts.name),
        hatch_g=_hatch_g(young, life),
        now_g=young.weight_g,
        shed_on=_first_shed(life.signs),
        ate_on=min((day for day, _ in life.meals), default=None),
        kept=kept_meals(life, on),
    )


def letter_of(young: AnimalNow, clutch: str) -> str:
    """``c`` of ``26-9 c``, as code or name; nothing where it has neither."""
    for told in (young.code, young.name or ""):
        if told.startswith(f"{clutch} "):
            return told.removeprefix(f"{clutch} ")
    return ""


def _hatch_g(young: AnimalNow, life: Life) -> float | None:
    if young.hatched_last is None or not life.weighings:
        return None
    first = life.weighings[0]
    is_young = first.happened.day - young.hatched_last <= HATCH_WEIGHT_WITHIN
    return first.weight_g if is_young else None


def _first_shed(signs: Sequence[ShedSign]) -> date | None:
    return min((s.happened.day for s in signs if s.stage is ShedStage.SHED), default=None)
