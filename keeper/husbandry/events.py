"""What happens to animals: one frozen dataclass for each kind of entry in the book.

Weights are grams of scale weight unless a name says otherwise, lengths centimetres,
temperatures degrees Celsius. None means *not known*, never zero.
"""

from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from keeper.husbandry.about import AnimalEvent as AnimalEvent
from keeper.husbandry.animal import AnimalId, Sex, SexedBy, Status
from keeper.husbandry.care import AboutCare
from keeper.husbandry.genes import AboutGenes, GeneNamed
from keeper.husbandry.house import AboutRoom, Awaited, Cleaning
from keeper.husbandry.house import NightTold as NightTold
from keeper.husbandry.house import RemarkKind as RemarkKind
from keeper.husbandry.impossible import (
    ITEMS,
    PREY_G,
    WEIGHT,
    refuse_unless_positive,
)
from keeper.husbandry.measures import Measured as Measured
from keeper.husbandry.measures import TotalLength as TotalLength
from keeper.husbandry.when import Happened
from keeper.language import tr


class Result(StrEnum):
    """What became of an offer. Five different things, never folded into two."""

    TAKEN = "taken"
    PART = "part taken"
    REFUSED = "refused"
    LEFT_IN = "left in"
    NOT_OFFERED = "not offered"


class Evidence(StrEnum):
    """How a result is known."""

    SEEN = "seen"
    GONE = "gone at check"
    ASSUMED = "assumed"
    REPORTED = "reported"  # stood in records that were taken in, or told by a buyer


class HoldKind(StrEnum):
    """A reason not to feed, or to feed otherwise."""

    OPAQUE = "opaque"
    JUST_SHED = "just shed"
    REGURGITATED = "regurgitated"
    GRAVID = "gravid"
    PRE_LAY = "pre-lay shed"
    SEASON = "in season"
    COOLING = "cooling"
    NEW_ARRIVAL = "new arrival"
    QUARANTINE = "quarantine"
    VET = "vet"
    HEAT = "heat"
    STUCK_SHED = "stuck shed"
    SHOW = "travel or show"
    OTHER = "other"


class ShedStage(StrEnum):
    """The visible stages of a shed cycle, in order."""

    DULL = "dull"
    OPAQUE = "opaque"
    CLEARED = "cleared"
    SHED = "shed"


class ShedQuality(StrEnum):
    WHOLE = "whole"
    PIECES = "pieces"
    CAP_KEPT = "eye cap kept"
    TIP_KEPT = "tail tip kept"


class Zone(StrEnum):
    """Where in an enclosure or room a temperature was taken."""

    HOT = "hot surface"
    COOL = "cool end"
    NIGHT = "night low"
    ROOM = "room"
    INCUBATOR = "incubator"


@dataclass(frozen=True, slots=True, kw_only=True)
class Described(AnimalEvent):
    """Who the animal is, as far as is known; a later description replaces the whole."""

    code: str
    species: str
    name: str | None = None
    line: str | None = None
    hatched_first: date | None = None
    hatched_last: date | None = None
    dam: AnimalId | None = None
    sire: AnimalId | None = None
    clutch: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Sexed(AnimalEvent):
    sex: Sex
    sexed_by: SexedBy = SexedBy.WRITTEN


@dataclass(frozen=True, slots=True, kw_only=True)
class Stock(AnimalEvent):
    """The animal came, went, was lost or died."""

    status: Status


@dataclass(frozen=True, slots=True, kw_only=True)
class Moved(AnimalEvent):
    """Into a tub; the place is kept as the keeper writes it."""

    place: str | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Offer(AnimalEvent):
    """Prey presented, or a night on which it was decided not to offer.

    grams: all items together. round and line say where in which night's walk;
    both None outside a round. withheld is the reason of a *not offered*.
    """

    result: Result
    evidence: Evidence = Evidence.SEEN
    prey: str | None = None
    count: int | None = None
    mass_g: float | None = None
    withheld: HoldKind | None = None
    round: int | None = None
    line: int | None = None

    def __post_init__(self) -> None:
        refuse_unless_positive(PREY_G, self.mass_g)
        refuse_unless_positive(ITEMS, self.count)


@dataclass(frozen=True, slots=True, kw_only=True)
class Regurgitation(AnimalEvent):
    """Undigested prey returned."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Weighing(AnimalEvent):
    """Scale weight, meals and eggs still inside it.

    typed_twice: the keeper insisted on it against expectation.
    """

    weight_g: float
    resolution_g: float | None = None
    typed_twice: bool = False

    def __post_init__(self) -> None:
        refuse_unless_positive(WEIGHT, self.weight_g)


@dataclass(frozen=True, slots=True, kw_only=True)
class ShedSign(AnimalEvent):
    stage: ShedStage
    quality: ShedQuality | None = None
    pre_lay: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class HoldSet(AnimalEvent):
    """Do not feed, for a reason, until a day (or until it is ended)."""

    kind: HoldKind
    until: date | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class HoldEnded(AnimalEvent):
    kind: HoldKind


@dataclass(frozen=True, slots=True, kw_only=True)
class Clutch(AnimalEvent):
    """Eggs laid by this female."""

    good: int
    slugs: int = 0
    mass_g: float | None = None
    code: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Paired(AnimalEvent):
    """A female was put together with a mate. locked: a lock was seen."""

    mate: AnimalId
    locked: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Remark(AnimalEvent):
    kind: RemarkKind
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Snooze(AnimalEvent):
    """A line of the watch put aside, with a reason and an end."""

    watch_kind: str
    until: date
    reason: str


@dataclass(frozen=True, slots=True, kw_only=True)
class AsideUntil(AnimalEvent):
    """The same until something that is awaited has happened to the animal."""

    watch_kind: str
    awaited: Awaited
    reason: str


@dataclass(frozen=True, slots=True, kw_only=True)
class OfferedThrough(AnimalEvent):
    """The keeper's word on whether this animal is offered while that hold lies on it."""

    kind: HoldKind
    yes: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class StartStep(AnimalEvent):
    """One change in how prey is offered to a hatchling that has not started.

    step: the ladder's word for it. Whether it ate is told by the offers that follow.
    """

    step: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Cleaned(AnimalEvent):
    """The tub in which this animal lives was cleaned."""

    extent: Cleaning


@dataclass(frozen=True, slots=True, kw_only=True)
class Heat:
    """A temperature read at a place: a tub as on its label, a row as ``B3``, a rack as ``B``."""

    place: str
    happened: Happened
    zone: Zone
    temp_c: float
    read_with: str | None = None  # gun, probe, logger ...


@dataclass(frozen=True, slots=True, kw_only=True)
class ProbePlaced:
    """From then on the probe of that name reads one zone of one place.

    place: as for ``Heat``; None when the probe was taken out of use.
    """

    happened: Happened
    probe: str
    zone: Zone
    place: str | None

    def __post_init__(self) -> None:
        if not self.probe:
            raise ValueError(tr("a probe needs a name, got nothing"))


@dataclass(frozen=True, slots=True, kw_only=True)
class Setting:
    """A choice of the keeper that belongs to the book, such as the feed nights."""

    happened: Happened
    key: str
    value: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Override:
    """The keeper's own figure in place of a species profile's."""

    happened: Happened
    species: str
    key: str  # dotted path in the profile, such as feeding.hatchling.interval_days
    value: float
    reason: str


@dataclass(frozen=True, slots=True, kw_only=True)
class RoundOpened:
    """A feeding night begun: happened.day is the night-of date."""

    happened: Happened
    round: int
    keeper: str


@dataclass(frozen=True, slots=True, kw_only=True)
class RoundClosed:
    happened: Happened
    round: int


@dataclass(frozen=True, slots=True, kw_only=True)
class NightAnswer:
    """What became of the feed night *happened.day*, on which nothing was written."""

    happened: Happened
    told: NightTold


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanLine:
    """One tub of a night's plan, frozen when the round began.

    state is the plan's word for the tub (due, hold, not due, cannot tell);
    because is the reasons as JSON text, so that the night reads the same for ever.
    """

    happened: Happened
    round: int
    line: int
    animal: AnimalId
    place: str | None
    state: str
    prey: str | None = None
    count: int | None = None
    mass_g: float | None = None
    caution: str | None = None
    because: str = "[]"


AboutAnimal = (
    Described
    | Sexed
    | Stock
    | Moved
    | Offer
    | Regurgitation
    | Weighing
    | Measured
    | TotalLength
    | ShedSign
    | HoldSet
    | HoldEnded
    | Clutch
    | Paired
    | Remark
    | Snooze
    | AsideUntil
    | OfferedThrough
    | StartStep
    | Cleaned
    | AboutCare
    | AboutGenes
)
AboutHouse = (
    Heat
    | ProbePlaced
    | Setting
    | Override
    | RoundOpened
    | RoundClosed
    | NightAnswer
    | PlanLine
    | AboutRoom
    | GeneNamed
)
Event = AboutAnimal | AboutHouse
