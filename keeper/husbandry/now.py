"""An animal's present state, as the book keeps it beside the history."""

from dataclasses import dataclass
from datetime import date

from keeper.husbandry.animal import IN_THE_ROOM, AnimalId, Sex, SexedBy, Status
from keeper.husbandry.events import Result, ShedStage


@dataclass(frozen=True, slots=True, kw_only=True)
class AnimalNow:
    """One row of the board. Days are local days or feed nights; None means no record."""

    animal: AnimalId
    code: str
    species: str
    name: str | None = None
    line: str | None = None
    clutch: str | None = None
    hatched_first: date | None = None
    hatched_last: date | None = None
    dam: AnimalId | None = None
    sire: AnimalId | None = None
    sex: Sex = Sex.UNKNOWN
    sexed_by: SexedBy | None = None
    status: Status = Status.KEPT
    status_on: date | None = None
    place: str | None = None
    place_since: date | None = None
    caution: str | None = None
    first_entry_on: date | None = None  # first feed, refusal or weight in the book
    last_entry_on: date | None = None  # last feed, refusal or weight in the book
    eaten_on: date | None = None
    eaten_prey: str | None = None
    eaten_count: int | None = None
    eaten_g: float | None = None
    offered_on: date | None = None
    offered_result: Result | None = None
    refused_since: int = 0  # refusals since the last meal, excused ones included
    regurgitated_on: date | None = None
    regurgitated_before_on: date | None = None
    meals_since_regurgitation: int = 0  # counted up to 10
    meals: int = 0  # meals taken, counted up to 10
    weight_g: float | None = None
    weighed_on: date | None = None
    meal_before_weighing_g: float | None = None
    meal_before_weighing_on: date | None = None
    weight_before_g: float | None = None
    weighed_before_on: date | None = None
    shed_on: date | None = None
    shed_before_on: date | None = None
    stage: ShedStage | None = None  # sign after the last shed, if any
    stage_since: date | None = None
    clutch_on: date | None = None
    svl_cm: float | None = None
    body_score: float | None = None
    scored_on: date | None = None

    @property
    def called(self) -> str:
        """The name, or the code of one without."""
        return self.name or self.code

    @property
    def place_and_name(self) -> str:
        """As the foot and every list call the animal in its tub."""
        return f"{self.place or ''} {self.called}".strip()

    @property
    def in_the_room(self) -> bool:
        return self.status in IN_THE_ROOM

    def age_days(self, on: date) -> int | None:
        """Whole days since hatching, from the middle of the known span; None when unknown."""
        if self.hatched_first is None:
            return None
        span_days = ((self.hatched_last or self.hatched_first) - self.hatched_first).days
        return (on - self.hatched_first).days - span_days // 2
