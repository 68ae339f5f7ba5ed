"""What the watch is made from and made of: facts of animal and house, signals, lines."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date, timedelta
from enum import StrEnum
from typing import Literal

from keeper.husbandry.animal import AnimalId, Stage
from keeper.husbandry.care import FaecalTest, Medicine, Permit
from keeper.husbandry.events import HoldKind, Measured, Remark, ShedSign, Snooze
from keeper.husbandry.house import PlaceAside
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile
from keeper.husbandry.reasons import Reason
from keeper.rules.causes import Cause
from keeper.rules.growth.expectation import Expectation
from keeper.rules.heat import ColdAfterFeeding, HeatVerdict
from keeper.rules.holds import Hold
from keeper.rules.learned_late import Late
from keeper.rules.refusals import CountedRefusals
from keeper.rules.sensors import SensorFault
from keeper.rules.sheds import ShedClock
from keeper.rules.swaps import Swap
from keeper.rules.weights import Empty, Meal


class Severity(StrEnum):
    """How soon to look, most urgent first."""

    NOW = "now"
    TODAY = "today"
    THIS_WEEK = "this week"
    NOTED = "noted"


URGENCY = {severity: rank for rank, severity in enumerate(Severity)}
"""Rank of each severity, 0 most urgent."""

Family = Literal["weight", "appetite", "gut", "breath", "other"]
"""What a signal speaks of. Two of different families agree, two of one repeat each other."""


@dataclass(frozen=True, slots=True, kw_only=True)
class WatchLine:
    """One line of the watch. members: the animals that a cause or a place stands for."""

    animal: AnimalId | None
    place: str | None
    kind: str
    severity: Severity
    since: date | None
    ends: Reason | None
    because: tuple[Reason, ...]
    members: tuple[AnimalId, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Signal:
    """One thing that one animal shows, before lines are made."""

    kind: str
    severity: Severity
    because: tuple[Reason, ...]
    family: Family = "other"
    since: date | None = None
    ends: Reason | None = None
    always: bool = False  # no snooze and no cause silences it


@dataclass(frozen=True, slots=True, kw_only=True)
class Course:
    """One medicine on one day: the day whose dose is due, if any, and those that were missed.

    number: which dose of how many *doses* the due one is, 0 where none is; told: how many were
    told of on its day, where there are more than one a day. A day stands in *missed* once for
    each of its doses.
    """

    medicine: Medicine
    due_on: date | None
    number: int
    doses: int
    missed: tuple[date, ...]
    told: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class WatchFacts:
    """What the rules may ask of one animal; what is left out is not judged.

    empties: empty weights of at least ``weights.baseline_days``, oldest first; None: not
    looked up, and only the age of the last weight is judged.
    meals: kept meals over the same time.
    expected: for the day of the last weighing, not for today.
    refusals: None while nobody counted; the state row then says whether there are any.
    snoozes: all of the animal's, also those that are over. remarks: of the last fortnight.
    measures: every length and body score, oldest first. condition: her weight for her length,
    where one was measured. swap: whose curve her weights go on along, where not her own.
    late: refusals since the last meal that were learned of on a later day.
    courses: of medicine, those that ask for something. faecals, permits: all that were written.
    anew: why the days of its quarantine are counted anew. longer: why it lasts beyond them.
    mites_met_on: last day on which a step against mites was written for its rack or the room.
    """

    now: AnimalNow
    profile: SpeciesProfile
    stage: Stage | None = None
    holds: Sequence[Hold] = ()
    empties: Sequence[Empty] | None = None
    meals: Sequence[Meal] = ()
    refusals: CountedRefusals | None = None
    clock: ShedClock | None = None
    expected: Expectation | None = None
    clutch_median_g: float | None = None
    own_hatch_g: float | None = None
    signs: Sequence[ShedSign] = ()
    remarks: Sequence[Remark] = ()
    aftercare: Sequence[Remark] = ()
    snoozes: Sequence[Snooze] = ()
    measures: Sequence[Measured] = ()
    condition: Reason | None = None
    swap: Swap | None = None
    cleaned: frozenset[date] = frozenset()
    late: Sequence[Late] = ()
    courses: Sequence[Course] = ()
    faecals: Sequence[FaecalTest] = ()
    permits: Sequence[Permit] = ()
    anew: Reason | None = None
    longer: Reason | None = None
    mites_met_on: date | None = None

    def held(self, *kinds: HoldKind) -> bool:
        """Whether a hold of one of *kinds* is in force."""
        return any(hold.kind in kinds for hold in self.holds)


@dataclass(frozen=True, slots=True, kw_only=True)
class Unseen:
    """Animals of a rack, or of the room, seen last on *since*; or daily rounds that ended then."""

    place: str | None
    animals: tuple[AnimalId, ...]
    since: date
    is_kept: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Lying:
    """A clutch that lies in an incubator, as it is called there; dam: None where she is gone."""

    called: str
    dam: AnimalId | None


@dataclass(frozen=True, slots=True, kw_only=True)
class HouseFacts:
    """What is known of rows, racks and rooms, as the rules for heat and causes say it.

    cut_off: places of faults after which nothing is heard of the room any more. shared: lines
    about tubs in which a female and a male live. kept: lines about clutches, prey and mites.
    asides: lines about places that the keeper put aside. lying: the clutches in each incubator.
    """

    causes: Sequence[Cause] = ()
    heat: Sequence[HeatVerdict] = ()
    cold_after_feeding: Sequence[ColdAfterFeeding] = ()
    faults: Sequence[SensorFault] = ()
    cut_off: frozenset[str] = frozenset()
    unseen: Sequence[Unseen] = ()
    shared: Sequence[WatchLine] = ()
    kept: Sequence[WatchLine] = ()
    asides: Sequence[PlaceAside] = ()
    lying: Mapping[str, Sequence[Lying]] = field(default_factory=dict)


def days_since(day: date | None, today: date) -> int | None:
    """Whole days since *day*; None when it is not known or yet to come."""
    if day is None or day > today:
        return None
    return (today - day).days


def within_days(day: date, today: date, days: float) -> bool:
    """Whether *day* lies in the last *days*, today included."""
    return timedelta(0) <= today - day <= timedelta(days=days)
