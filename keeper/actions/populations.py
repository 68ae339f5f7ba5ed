"""Growth fitted once for each kind of a book and kept while the program runs. Imports numpy.

A fit learns of a weighing on the day after it: a weigh-in changes an animal's own record at
once and its kind by nothing that can be seen, so a forecast after it need not wait for a fit.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date
from hashlib import sha256
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
from keeper.store.touched import first_day_touched

Kind = tuple[str, str, Sex]
"""Path of a book, slug of a species, sex."""

AgedWeights = tuple[tuple[float, float], ...]
"""Ages in days and empty weights in grams, oldest first."""

MOST_RECORDS = 300  # of a kind: a fit hears fewer, and reading them takes long
DAILY = ("weighing", "offer")
"""Tables whose entries matter to a fit if they are of a day before it."""

LASTING = ("described", "sexed")
"""Tables whose entries say which animals are of a kind, whatever their day."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Asked:
    """A kind to fit as of a day; known: the prints of the records of fits that are there."""

    slug: str
    sex: Sex
    curve: LmsCurve
    on: date
    known: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Fitted:
    """records: their print. population is None where it is one that was known."""

    records: str
    population: Population | None


Fitter = Callable[[Keeping, Asked], Fitted]
"""Reads the records of a kind and fits them, here or elsewhere."""


@dataclass(frozen=True, slots=True)
class _Kept:
    """A fit, of which records, and the newest batch and the day for which that is known."""

    batch: int
    on: date
    curve: LmsCurve
    records: str
    population: Population


MOST_KNOWN = 8
"""Fits that are kept by their records: what is taken back, or is told of a copy, is known."""

_kept: dict[Kind, _Kept] = {}
_known: dict[str, Population] = {}
"""By the print of curve and records, which say all of a fit; the last asked for comes last."""
_knowing = Lock()
_fitting: dict[Kind, Lock] = {}
"""Of two readers that ask for a kind at once the second waits for the first one's fit."""


def fit_here(keeping: Keeping, asked: Asked) -> Fitted:
    """The fit in this thread: some seconds, unless the records are known."""
    records = _records(keeping, asked)
    told = sha256(repr((asked.curve, records)).encode()).hexdigest()
    if told in asked.known:
        return Fitted(records=told, population=None)
    own = [history(record) for record in records]
    return Fitted(records=told, population=population_for(asked.curve, own))


def population_of(
    keeping: Keeping, row: AnimalNow, on: date, fitter: Fitter = fit_here
) -> Population:
    """What the kind of *row* tells of growth, by all weighings before the day *on*.

    The species must have a growth curve for the sex of *row*.
    """
    profile = keeping.profile(row)
    curve = profile.growth[row.sex]
    kind = (str(keeping.book.path), profile.slug, row.sex)
    newest = reading.latest_batches(keeping.book, 1)
    batch = newest[0].id if newest else 0
    with _fitting.setdefault(kind, Lock()):
        kept = _kept.get(kind)
        if kept is not None and _still_holds(keeping, kept, batch, curve, on):
            records, population = kept.records, kept.population
        else:
            before = dict(_known)
            asked = Asked(slug=profile.slug, sex=row.sex, curve=curve, on=on, known=tuple(before))
            fit = fitter(keeping, asked)
            records, population = fit.records, fit.population or before[fit.records]
            _remember(records, population)
        _kept[kind] = _Kept(batch, on, curve, records, population)
        return population


def _remember(records: str, population: Population) -> None:
    with _knowing:
        _known.pop(records, None)
        _known[records] = population
        if len(_known) > MOST_KNOWN:
            _known.pop(next(iter(_known)))


def _still_holds(keeping: Keeping, kept: _Kept, batch: int, curve: LmsCurve, on: date) -> bool:
    """Whether nothing written since the fit is of a day before it, or changes who is of a kind."""
    if (kept.on, kept.curve) != (on, curve) or batch < kept.batch:
        return False
    if batch == kept.batch:
        return True
    if first_day_touched(keeping.book, kept.batch, LASTING) is not None:
        return False
    first = first_day_touched(keeping.book, kept.batch, DAILY)
    return first is None or first >= on


def aged_weights(keeping: Keeping, row: AnimalNow, until: date) -> AgedWeights:
    """The empty weights of *row* up to and with the day *until*; none without a hatching day."""
    offers = _history(keeping, Offer, row, until)
    meals = [(o.happened.day, o.mass_g) for o in offers if o.result in EATEN]
    weighings = _history(keeping, Weighing, row, until)
    freed = empties(weighings, meals, keeping.profile(row))
    aged = [(row.age_days(day), grams) for day, grams, _ in freed]
    return tuple((float(age), grams) for age, grams in aged if age is not None and age >= 0)


def _records(keeping: Keeping, asked: Asked) -> tuple[AgedWeights, ...]:
    """The records of a kind by the animals' keys, so that a move changes nothing."""
    on = asked.on
    rows = [r for r in animals_on(keeping, on) if r.sex is asked.sex and r.hatched_first]
    own = sorted((r for r in rows if keeping.profile(r).slug == asked.slug), key=_key)
    day_before = date.fromordinal(on.toordinal() - 1)
    found = [aged_weights(keeping, row, day_before) for row in _evenly(own)]
    return tuple(record for record in found if record)


def _key(row: AnimalNow) -> int:
    return row.animal


def _evenly(rows: Sequence[AnimalNow]) -> Sequence[AnimalNow]:
    """Up to ``MOST_RECORDS`` of them, spread over the whole."""
    if len(rows) <= MOST_RECORDS:
        return rows
    return [rows[at * (len(rows) - 1) // (MOST_RECORDS - 1)] for at in range(MOST_RECORDS)]


def _history(keeping: Keeping, kind: type[E], row: AnimalNow, until: date) -> list[E]:
    entries = reading.history(keeping.book, kind, row.animal)
    return [entry.event for entry in entries if entry.event.happened.day <= until]
