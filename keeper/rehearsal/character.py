"""Who an invented animal is and what is to happen to it; nothing here knows a book."""

from dataclasses import dataclass
from datetime import date

from keeper.husbandry.animal import Sex


@dataclass(frozen=True, slots=True, kw_only=True)
class Laying:
    """A clutch of an invented female, with the signs that go before it."""

    laid: date
    code: str
    good: int
    slugs: int = 0
    swollen: date | None = None  # held as gravid from that day
    pre_lay: date | None = None  # her shed before the eggs
    pending: bool = False  # the eggs are not there yet


@dataclass(frozen=True, slots=True, kw_only=True)
class Script:
    """What is planted in one animal's life; the defaults plant nothing.

    z: where it stands on the curve of its kind; None: drawn.
    worn: days and shares of the usual weight, straight between them.
    """

    z: float | None = None
    worn: tuple[tuple[date, float], ...] = ()
    never_eats: bool = False
    never_refuses: bool = False
    weigh_days: int | None = None
    measured: bool = True
    last_shed: date | None = None  # sheds on that day, and shows no sign afterwards
    shed_on: date | None = None  # sheds on that day, whatever its own clock
    steady_sheds: bool = False
    opaque_from: date | None = None  # opaque since then, and nothing has followed
    regurgitates: date | None = None
    swapped: tuple[str, date] | None = None  # since that day it lies in another's tub


NOTHING = Script()


@dataclass(frozen=True, slots=True, kw_only=True)
class Character:
    """One invented animal. stays: from which day it lies in which tub, in order.

    born is the truth; the book is told of it only where the age is known.
    """

    code: str
    species: str
    sex: Sex
    born: date
    stays: tuple[tuple[date, str], ...]
    name: str | None = None
    line: str | None = None
    clutch: str | None = None
    dam: str | None = None
    sire: str | None = None
    bought: bool = False
    age_known: bool = True
    caution: str | None = None
    quarantined: bool = False
    sold: date | None = None
    layings: tuple[Laying, ...] = ()
    script: Script = NOTHING

    @property
    def comes(self) -> date:
        return self.stays[0][0]

    @property
    def hatched_here(self) -> bool:
        return self.clutch is not None
