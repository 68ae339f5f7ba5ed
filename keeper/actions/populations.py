"""Growth fitted once for each kind of a book and kept while the program runs. Imports numpy.

A fit learns of a weighing on the day after it: a weigh-in changes an animal's own record at
once and its kind by nothing that can be seen, so a forecast after it need not wait for a fit.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from threading import Lock

from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.life import EATEN, E, empties
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import Offer, Weighing
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import LmsCurve
from keeper.rules.growth.population import Population
from keeper.rules.growth.stand_ins import population_for
from keeper.rules.growth.weighings import history
from keeper.store import reading

Kind = tuple[str, str, Sex]
"""Path of a book, slug of a species, sex."""

AgedWeights = tuple[tuple[float, float], ...]
"""Ages in days and empty weights in grams, oldest first."""


@dataclass(frozen=True, slots=True)
class _Kept:
    """A fit, what it was fitted on, and the newest batch and day for which that was read."""

    read_at: tuple[int, date]
    fitted_on: tuple[LmsCurve, tuple[AgedWeights, ...]]
    population: Population


_kept: dict[Kind, _Kept] = {}
_fitting = Lock()  # of two readers that ask at once the second waits for the first one's fit


def population_of(keeping: Keeping, row: AnimalNow, on: date) -> Population:
    """What the kind of *row* tells of growth, by all weighings before the day *on*.

    The species must have a growth curve for the sex of *row*.
    """
    profile = keeping.profile(row)
    kind = (str(keeping.book.path), profile.slug, row.sex)
    newest = reading.latest_batches(keeping.book, 1)
    read_at = (newest[0].id if newest else 0, on)
    with _fitting:
        kept = _kept.get(kind)
        if kept is None or kept.read_at != read_at:
            fitted_on = (profile.growth[row.sex], _records(keeping, kind, on))
            same = kept is not None and kept.fitted_on == fitted_on
            fit = kept.population if kept is not None and same else _fit(*fitted_on)
            kept = _kept[kind] = _Kept(read_at, fitted_on, fit)
        return kept.population


def aged_weights(keeping: Keeping, row: AnimalNow, until: date) -> AgedWeights:
    """The empty weights of *row* up to and with the day *until*; none without a hatching day."""
    offers = _history(keeping, Offer, row, until)
    meals = [(o.happened.day, o.mass_g) for o in offers if o.result in EATEN]
    weighings = _history(keeping, Weighing, row, until)
    freed = empties(weighings, meals, keeping.profile(row))
    aged = [(row.age_days(day), grams) for day, grams, _ in freed]
    return tuple((float(age), grams) for age, grams in aged if age is not None and age >= 0)


def _fit(curve: LmsCurve, records: Sequence[AgedWeights]) -> Population:
    return population_for(curve, [history(record) for record in records])


def _records(keeping: Keeping, kind: Kind, on: date) -> tuple[AgedWeights, ...]:
    """The records of a kind by the animals' keys, so that a move changes nothing."""
    _, slug, sex = kind
    rows = [r for r in animals_on(keeping, on) if r.sex is sex and r.hatched_first is not None]
    own = sorted((r for r in rows if keeping.profile(r).slug == slug), key=lambda r: r.animal)
    day_before = date.fromordinal(on.toordinal() - 1)
    found = [aged_weights(keeping, row, day_before) for row in own]
    return tuple(record for record in found if record)


def _history(keeping: Keeping, kind: type[E], row: AnimalNow, until: date) -> list[E]:
    entries = reading.history(keeping.book, kind, row.animal)
    return [entry.event for entry in entries if entry.event.happened.day <= until]
