"""Which prey, how many: the fewest items that make the meal, one grade up at a time."""

from collections.abc import Container, Sequence
from dataclasses import dataclass
from functools import lru_cache
from operator import attrgetter
from typing import NamedTuple

from keeper.husbandry.events import Offer, Result
from keeper.husbandry.profile import FeedingFigures, PreyGrade, practice
from keeper.husbandry.reasons import Reason, because

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("meal share", ("grams", "percent", "empty", "target")),
    ("grade kept", ("prey",)),
    ("grade fits better", ("prey", "offered")),
    ("grade not in stock", ("prey", "offered")),
    ("grade up", ("prey", "meals", "percent")),
    ("grade down", ("prey", "after")),
    ("grade refused", ("prey", "times")),
    ("grade not known", ()),
    ("other kind", ("kind", "before")),
    ("under target", ("percent",)),
    ("over target", ("percent",)),
    ("pick small", ("prey", "grams")),
    ("no prey fits", ("target", "most_g")),
    ("no prey in stock", ("kind",)),
)
"""Every reason of this module with the figures it carries (grams, per cent of empty weight)."""

NEAR_LOW = practice(0.8)
NEAR_HIGH = practice(1.2)
"""A meal between these shares of its target is the meal."""

ITEMS_MOST = practice(3)
_COUNTS = range(1, int(ITEMS_MOST.value) + 1)
UP_BELOW = practice(0.75)
UP_MEALS = practice(2)
"""After so many meals in a row below that share of the target she goes one grade up."""

REFUSALS_OF_NEW = practice(2)
"""So many refusals of a larger grade send her back to her own."""

ATE = frozenset({Result.TAKEN, Result.PART})


@dataclass(frozen=True, slots=True, kw_only=True)
class PreyOffer:
    """What to offer: *grams* is all items together."""

    prey: str
    count: int
    grams: float


@dataclass(frozen=True, slots=True, kw_only=True)
class PreyChoice:
    """The meal, its share of empty weight in per cent, and why. No offer: nothing is right."""

    offer: tuple[PreyOffer, ...]
    percent: float | None
    because: tuple[Reason, ...]


def prey_name(grade: PreyGrade) -> str:
    """The one way a prey is written.

    >>> from keeper.husbandry.profile import Sourced
    >>> g = practice(4.5)
    >>> prey_name(PreyGrade(name="fuzzy", kind="mouse", low_g=g, high_g=g, mean_g=g, kcal_per_g=g))
    'mouse fuzzy'
    """
    return f"{grade.kind} {grade.name}"


@lru_cache(maxsize=4096)
def _plain(prey: str) -> str:
    """A written prey without regard to capitals and spaces."""
    return " ".join(prey.split()).casefold()


class _Shelf:
    """Grades in their order with where each name stands first and last; *kinds* are those told."""

    __slots__ = ("_rungs", "first", "grades", "last", "names", "of")

    def __init__(self, grades: Sequence[PreyGrade]) -> None:
        self.of = grades
        self.grades = tuple(grades)
        self.names = tuple(map(prey_name, grades))
        plain = [_plain(name) for name in self.names]
        self.last = {name: at for at, name in enumerate(plain)}
        self.first = {name: plain.index(name) for name in self.last}
        self._rungs: dict[str, _Shelf] = {}

    def at(self, prey: str | None) -> int | None:
        """Where the grade stands that a written prey names; None: no such grade."""
        return None if prey is None else self.first.get(_plain(prey))

    def rungs(self, kind: str) -> "_Shelf":
        """The grades of one kind by their mean mass."""
        if kind not in self._rungs:
            mine = [grade for grade in self.grades if grade.kind == kind]
            self._rungs[kind] = _Shelf(sorted(mine, key=lambda g: g.mean_g.value))
        return self._rungs[kind]


_SHELVES: dict[int, _Shelf] = {}
_SHELVES_MOST = 64


def _shelf(grades: Sequence[PreyGrade]) -> _Shelf:
    """The shelf of *grades*, kept for those that cannot change; a room asks thousands of times."""
    kept = _SHELVES.get(id(grades))
    if kept is not None and kept.of is grades:
        return kept
    made = _Shelf(grades)
    if isinstance(grades, tuple):
        if len(_SHELVES) >= _SHELVES_MOST:
            _SHELVES.clear()
        _SHELVES[id(grades)] = made
    return made


def choose_prey(
    empty_g: float,
    figures: FeedingFigures,
    grades: Sequence[PreyGrade],
    last_meals: Sequence[Offer],
    share: float = 1.0,
    in_stock: Container[str] | None = None,
    *,
    kind: str | None = None,
    step_down: str | None = None,
    rising: bool | None = None,
) -> PreyChoice:
    """The fewest items of one grade whose total is near the target meal.

    Args:
        empty_g: weight without meals and eggs.
        grades: prey with the mean mass of the keeper's own bags, or the profile's.
        last_meals: her recent offers in any order, refusals among them.
        share: of the usual meal, below 1 while she grows back or is too fat.
        in_stock: written prey that can be had; None: all.
        kind: prey kind to offer; None: the kind she last ate.
        step_down: why this one meal is a grade below the last; None: it is not.
        rising: whether her weight rises; only a known fall keeps her from going up.

    Raises:
        ValueError: an empty weight or a share that is not above 0.
    """
    if not 0 < empty_g < float("inf") or not 0 < share <= 1:
        raise ValueError(
            f"a meal needs an empty weight above 0 g and a share up to 1, "
            f"got {empty_g!r} and {share!r}"
        )
    meal = _Meal.of(empty_g, figures, share)
    offers = sorted(last_meals, key=_in_order)
    shelf = _shelf(grades)
    at = _eaten(offers, shelf)
    eaten = None if at is None else shelf.grades[at].kind
    chosen = _kind(kind, eaten, grades)
    rungs = shelf.rungs(chosen)
    reach, why = _reach(rungs, offers, meal, step_down, rising)
    open_to_her = zip(rungs.grades[:reach], rungs.names, strict=False)
    had = [g for g, name in open_to_her if in_stock is None or name in in_stock]
    if not had:
        none = because("no prey in stock", kind=chosen)
        return PreyChoice(offer=(), percent=None, because=(none,))
    found, how = _fewest(had, meal)
    if found is None:
        return PreyChoice(offer=(), percent=None, because=(*how, *why))
    percent = 100 * found.grams / empty_g
    sum_of_it = because(
        "meal share", grams=found.grams, percent=percent, empty=empty_g, target=meal.target_g
    )
    other = () if eaten in (None, chosen) else (because("other kind", kind=chosen, before=eaten),)
    return PreyChoice(
        offer=(found,),
        percent=percent,
        because=(sum_of_it, *how, *_told(why, found, in_stock), *other),
    )


_in_order = attrgetter("happened.day", "happened.at")


class _Meal(NamedTuple):
    target_g: float
    low_g: float  # the stage's own band, wider than what is near the target
    high_g: float
    item_most_g: float

    @classmethod
    def of(cls, empty_g: float, figures: FeedingFigures, share: float) -> "_Meal":
        gram = empty_g / 100
        return cls(
            target_g=figures.meal_percent.value * share * gram,
            low_g=figures.meal_percent_low.value * share * gram,
            high_g=figures.meal_percent_high.value * share * gram,
            item_most_g=figures.item_percent_most.value * gram,
        )


def _eaten(offers: Sequence[Offer], shelf: _Shelf) -> int | None:
    """Where the grade stands that she last ate and that is known."""
    for offer in reversed(offers):
        at = shelf.at(offer.prey) if offer.result in ATE else None
        if at is not None:
            return at
    return None


def _kind(told: str | None, eaten: str | None, grades: Sequence[PreyGrade]) -> str:
    """The one kind to choose from: told, else eaten, else the first of the list."""
    if told is not None:
        return told
    return eaten or (grades[0].kind if grades else "")


def _reach(
    rungs: _Shelf,
    offers: Sequence[Offer],
    meal: _Meal,
    step_down: str | None,
    rising: bool | None,
) -> tuple[int, tuple[Reason, ...]]:
    """How many grades from the smallest are open to her, and why."""
    at, names = _eaten(offers, rungs), rungs.names
    if at is None:
        return len(names), (because("grade not known"),)
    if step_down is not None:
        lower = max(0, at - 1)
        return lower + 1, (because("grade down", prey=names[lower], after=step_down),)
    refused = _refused_larger(rungs, offers, at)
    if refused >= REFUSALS_OF_NEW.value:
        return at + 1, (because("grade refused", prey=names[at], times=refused),)
    if at + 1 < len(names) and rising is not False and _meals_small(offers, rungs, meal):
        small = 100 * UP_BELOW.value
        up = because("grade up", prey=names[at + 1], meals=UP_MEALS.value, percent=small)
        return at + 2, (up,)
    return at + 1, _kept(names[at])


def _told(
    why: tuple[Reason, ...], found: PreyOffer, in_stock: Container[str] | None
) -> tuple[Reason, ...]:
    """*why*; where she was left her grade and is offered another, that this is so."""
    if why[0].why != "grade kept" or why[0].figures["prey"] == found.prey:
        return why
    last = str(why[0].figures["prey"])
    if in_stock is not None and last not in in_stock:
        return (because("grade not in stock", prey=last, offered=found.prey),)
    return (because("grade fits better", prey=last, offered=found.prey),)


@lru_cache(maxsize=256)
def _kept(prey: str) -> tuple[Reason, ...]:
    return (because("grade kept", prey=prey),)


def _refused_larger(rungs: _Shelf, offers: Sequence[Offer], at: int) -> int:
    """Refusals of a larger grade since the meal before her last *UP_MEALS*."""
    refused = meals = 0
    for offer in reversed(offers):
        meals += offer.result in ATE
        if meals >= UP_MEALS.value:
            break
        if offer.result is Result.REFUSED and offer.prey is not None:
            refused += rungs.last.get(_plain(offer.prey), at) > at
    return refused


def _meals_small(offers: Sequence[Offer], rungs: _Shelf, meal: _Meal) -> bool:
    """Whether the last meals all lay well below what she should have now."""
    eaten = [offer for offer in offers if offer.result in ATE][-int(UP_MEALS.value) :]
    grams = [_grams(offer, rungs) for offer in eaten]
    small_g = UP_BELOW.value * meal.target_g
    return len(grams) == UP_MEALS.value and all(g is not None and g < small_g for g in grams)


def _grams(offer: Offer, shelf: _Shelf) -> float | None:
    if offer.mass_g is not None:
        return offer.mass_g
    at = shelf.at(offer.prey)
    return None if at is None else shelf.grades[at].mean_g.value * (offer.count or 1)


def _fewest(
    grades: Sequence[PreyGrade], meal: _Meal
) -> tuple[PreyOffer | None, tuple[Reason, ...]]:
    """Near the target, else the nearest to it that the stage's own band does not forbid."""
    target_g = meal.target_g
    most_g = target_g * NEAR_HIGH.value
    choices = [
        (count, grade.mean_g.value * count, grade)
        for grade in grades
        if grade.mean_g.value <= meal.item_most_g
        for count in _COUNTS
    ]
    near = [choice for choice in choices if target_g * NEAR_LOW.value <= choice[1] <= most_g]
    if near:
        return _offer(min(near, key=lambda c: (c[0], abs(c[1] - target_g)))), ()
    fits = [c for c in choices if meal.low_g <= c[1] <= meal.high_g or c[1] <= most_g]
    if not fits:
        return _smallest(grades[0], meal)
    best = _offer(min(fits, key=lambda c: (abs(c[1] - target_g), c[0])))
    percent = 100 * best.grams / target_g
    if percent < 100:
        return best, (because("under target", percent=percent),)
    return best, (because("over target", percent=percent),)


def _offer(choice: tuple[int, float, PreyGrade]) -> PreyOffer:
    count, grams, grade = choice
    return PreyOffer(prey=prey_name(grade), count=count, grams=grams)


def _smallest(grade: PreyGrade, meal: _Meal) -> tuple[PreyOffer | None, tuple[Reason, ...]]:
    """One of the light items of the smallest grade, if the lightest is not too large for her."""
    if grade.low_g.value > meal.item_most_g:
        return None, (because("no prey fits", target=meal.target_g, most_g=meal.item_most_g),)
    grams = max(grade.low_g.value, min(meal.target_g, meal.item_most_g, grade.mean_g.value))
    prey = prey_name(grade)
    small = because("pick small", prey=prey, grams=grams)
    return PreyOffer(prey=prey, count=1, grams=grams), (small,)
