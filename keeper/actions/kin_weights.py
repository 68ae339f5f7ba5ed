"""Weights of a whole clutch, or of a whole line, side by side by age."""

from dataclasses import dataclass
from datetime import date, datetime
from operator import attrgetter

from keeper.actions.animal_page import AnimalPage
from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.life import EATEN, E, empties, expected_on
from keeper.husbandry.animal import AnimalId, Sex
from keeper.husbandry.events import Offer, Weighing
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile
from keeper.language import tr
from keeper.reports.kin_weights import Kinsman, kin_weights
from keeper.reports.paper_parts import Document
from keeper.rules.growth.expectation import standing
from keeper.store import reading

MONTH_DAYS = 30


@dataclass(frozen=True, slots=True, kw_only=True)
class Course:
    """One animal's weights: age in days, grams without meals where that can be told."""

    label: str
    sex: Sex
    points: tuple[tuple[int, float], ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Kin:
    """of: what they share, in words. rows are in walking order, as are their courses."""

    of: str
    on: date
    rows: tuple[Kinsman, ...]
    courses: tuple[Course, ...]


def kin_of(keeping: Keeping, page: AnimalPage) -> Kin:
    """Everyone in the book of her clutch, else of her line; held against the page's own curves.

    Raises:
        LookupError: neither clutch nor line is written, or none of them was weighed.
    """
    row, profile = page.animal, page.profile
    if not row.clutch and not row.line:
        raise LookupError(
            tr("{called} has neither clutch nor line in the book.", called=row.called)
        )
    shared = attrgetter("clutch" if row.clutch else "line")
    everyone = animals_on(keeping, keeping.today)
    rows = [r for r in everyone if r.species == row.species and shared(r) == shared(row)]
    weighed = [(one, _freed(keeping, one, profile)) for one in rows]
    if not any(freed for _, freed in weighed):
        raise LookupError(tr("None of them has a weight in the book yet."))
    return Kin(
        of=tr("clutch {clutch}", clutch=row.clutch) if row.clutch else f"{row.line}",
        on=keeping.today,
        rows=tuple(_kinsman(one, freed, profile, keeping.today) for one, freed in weighed),
        courses=tuple(_course(one, freed) for one, freed in weighed if freed),
    )


def kin_document(kin: Kin, printed: datetime) -> Document:
    """The sheet in words."""
    return kin_weights(kin.of, kin.rows, printed)


def _freed(keeping: Keeping, row: AnimalNow, profile: SpeciesProfile) -> list[tuple[date, float]]:
    """Days and grams without meals, oldest first."""
    meals = [
        (o.happened.day, o.mass_g) for o in _all(keeping, Offer, row.animal) if o.result in EATEN
    ]
    weighings = _all(keeping, Weighing, row.animal)
    return [(day, g) for day, g, _ in empties(weighings, meals, profile)]


def _all(keeping: Keeping, kind: type[E], animal: AnimalId) -> list[E]:
    return [entry.event for entry in reading.history(keeping.book, kind, animal)]


def _course(row: AnimalNow, freed: list[tuple[date, float]]) -> Course:
    aged = ((row.age_days(day), grams) for day, grams in freed)
    points = tuple((age, grams) for age, grams in aged if age is not None and age >= 0)
    return Course(label=row.called, sex=row.sex, points=points)


def _kinsman(
    row: AnimalNow, freed: list[tuple[date, float]], profile: SpeciesProfile, on: date
) -> Kinsman:
    last = freed[-1] if freed else None
    before = [g for day, g in freed if last and (last[0] - day).days >= MONTH_DAYS]
    expected = expected_on(row, profile, last[0]) if last else None
    stands = standing(expected, last[1]) if expected and last else None
    return Kinsman(
        place=row.place or "",
        code=row.code,
        name=row.name or "",
        sex=row.sex,
        age_days=row.age_days(on),
        weighed_on=last[0] if last else None,
        weight_g=last[1] if last else None,
        month_percent=100 * (last[1] / before[-1] - 1) if last and before else None,
        z=stands.z if stands else None,
        centile=stands.centile if stands else None,
        eaten_on=row.eaten_on,
        refused=row.refused_since,
    )
