"""Medicine as a vet wrote it, faecal tests, papers with an end, where eggs lie and what became."""

from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from keeper.husbandry.about import AnimalEvent
from keeper.husbandry.impossible import DOSE_DAYS, DOSES_A_DAY, EGGS, impossible


class DoseTold(StrEnum):
    """What became of a dose. A missed one is never made up for by a double one."""

    GIVEN = "given"
    MISSED = "missed"
    STOPPED = "stopped"  # the course, by the vet's word


class FaecalResult(StrEnum):
    SENT = "sent"  # the sample is away, its result awaited
    CLEAR = "clear"
    FOUND = "found"  # something was found; the note says what


class EggFate(StrEnum):
    """What became of good eggs of a clutch."""

    VEINED = "veined"  # candled: veins were seen, and the egg goes on
    PIPPED = "pipped"  # slit, the young still inside: it leaves the egg in only when hatched
    HATCHED = "hatched"
    FAILED = "failed"
    DIED = "died"  # hatched, and dead before it was numbered


@dataclass(frozen=True, slots=True, kw_only=True)
class Medicine(AnimalEvent):
    """A course as the vet wrote it; happened is when it was written into the book.

    amount, route and lot are the vet's and the label's own words, never reckoned with.
    first_on and last_on: the first and last day of a dose, both included. times_a_day: None is
    once; more doses lie on each of its days.
    """

    medicine: str
    amount: str
    route: str
    first_on: date
    last_on: date
    every_days: int = 1
    lot: str | None = None
    times_a_day: int | None = None

    def __post_init__(self) -> None:
        if not 0 < self.every_days <= 365:
            raise impossible(DOSE_DAYS, self.every_days)
        if self.times_a_day is not None and not 0 < self.times_a_day <= 12:
            raise impossible(DOSES_A_DAY, self.times_a_day)

    @property
    def doses_a_day(self) -> int:
        return self.times_a_day or 1


@dataclass(frozen=True, slots=True, kw_only=True)
class Dose(AnimalEvent):
    """A tick for one dose of a course, or why there is none. given_by: who gave it."""

    medicine: str
    told: DoseTold
    given_by: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class FaecalTest(AnimalEvent):
    result: FaecalResult


@dataclass(frozen=True, slots=True, kw_only=True)
class Permit(AnimalEvent):
    """A paper that the animal needs. expires: the last day on which it holds."""

    kind: str
    number: str
    expires: date


@dataclass(frozen=True, slots=True, kw_only=True)
class Eggs(AnimalEvent):
    """What became of *count* good eggs of this female. clutch: its code; None is her latest."""

    fate: EggFate
    count: int
    clutch: str | None = None

    def __post_init__(self) -> None:
        if self.count <= 0:
            raise impossible(EGGS, self.count)


@dataclass(frozen=True, slots=True, kw_only=True)
class EggsPlaced(AnimalEvent):
    """From then on a clutch of this female lies in that incubator, in that box of it.

    place: named as the probes there are placed; None when the eggs were taken out of it.
    box: a word of the keeper's own. clutch: its code; None is her latest.
    """

    place: str | None
    box: str | None = None
    clutch: str | None = None


AboutCare = Medicine | Dose | FaecalTest | Permit | Eggs | EggsPlaced
