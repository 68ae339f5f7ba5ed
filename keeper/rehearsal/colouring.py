"""Scores of how red the invented house's house snakes are: a look of many genes, selected.

Each young carries half of what its parents carry and a share of its own; what is seen is that and
chance. Of a clutch of which some are sold the reddest stay. Scored about the third shed, those
that stay again at 12 months, and of one clutch the pictures once more by a kinder eye.
"""

import math
from collections.abc import Iterator, Mapping
from datetime import date, time, timedelta
from random import Random

from keeper.husbandry.events import ShedStage
from keeper.husbandry.genes import LookScored
from keeper.husbandry.when import Happened
from keeper.rehearsal.house import HOUSE
from keeper.rehearsal.resident import Resident
from keeper.rehearsal.room import Room, Turn

TRAIT, VERB = "red", "score colour"
MEAN, CARRIED_SD, CHANCE_SD = 5.0, 1.0, 1.1
"""Of unselected animals: a heritability of about 0.45, a standard deviation of about 1.5."""

FOUNDERS: Mapping[str, tuple[float, float]] = {
    "HS-01": (1.2, 7.0),
    "HS-02": (0.4, 5.5),
    "HS-03": (0.9, 6.5),
    "HS-04": (-0.4, 4.5),
    "HS-05": (-0.9, 3.5),
}
"""What each carries above the mean, and its score."""

YOUNG_DAYS, YEAR_DAYS, FOUNDER_DAYS = 66, 366, 9
AGAIN_BACK, AGAIN_DAM, AGAIN_SIRE, KINDER = 70, "HS-04", "HS-01", 0.6
CLEAR_DAYS = 14
_SCORED = time(18, 30)


def kept_scores(room: Room, day: date, last: date) -> None:
    """Everything that is scored on *day*; *last* is the last day that is lived."""
    scored = [each for each in room.present() if each.who.species == HOUSE]
    for resident in scored:
        if _age_days(resident, day) in _scored_at(resident):
            _look(room, resident, day)
    if (last - day).days == AGAIN_BACK:
        for resident in scored:
            if (resident.who.dam, resident.who.sire) == (AGAIN_DAM, AGAIN_SIRE):
                room.tell(resident, VERB, [_again(room, resident)])


def _look(room: Room, resident: Resident, day: date) -> None:
    """Score it, or one that is dull or opaque when it has shed."""
    if resident.mirror.now.stage in (ShedStage.DULL, ShedStage.OPAQUE):
        later = day + timedelta(days=CLEAR_DAYS)
        room.later(later, Turn.LOOK, resident, lambda each, on: _look(room, each, on))
        return
    event = _scored(resident, room.happened(day, _SCORED), _score(room, resident))
    room.tell(resident, VERB, [event])


def _scored_at(resident: Resident) -> tuple[int, ...]:
    """Days after hatching, of a founder after coming."""
    if resident.who.hatched_here:
        return YOUNG_DAYS, YEAR_DAYS
    return (FOUNDER_DAYS,) if resident.who.code in FOUNDERS else ()


def _age_days(resident: Resident, day: date) -> int:
    who = resident.who
    return (day - (who.born if who.hatched_here else who.comes)).days


def _scored(
    resident: Resident, happened: Happened, score: float, note: str | None = None
) -> LookScored:
    return LookScored(
        animal=resident.animal, happened=happened, note=note, trait=TRAIT, score=_halves(score)
    )


def _again(room: Room, resident: Resident) -> LookScored:
    """The picture of the first day scored once more."""
    on = date.fromordinal(resident.who.born.toordinal() + YOUNG_DAYS)
    shift = Random(f"{resident.who.code}/again").choice((KINDER - 0.5, KINDER, KINDER + 0.5))
    happened = room.happened(on, _SCORED)
    return _scored(resident, happened, _score(room, resident) + shift, "from the picture")


def _score(room: Room, resident: Resident) -> float:
    if resident.who.code in FOUNDERS:
        return FOUNDERS[resident.who.code][1]
    return _brood(room, resident)[resident.who.code][1]


def _brood(room: Room, resident: Resident) -> dict[str, tuple[float, float]]:
    """What each of its clutch carries above the mean, and its score."""
    who = resident.who
    young = [r.who for r in room.residents.values() if who.clutch and r.who.clutch == who.clutch]
    carried = (_carried(room, who.dam) + _carried(room, who.sire)) / 2
    drawn = list(_drawn(carried, len(young), Random(f"{young[0].code}/{TRAIT}")))
    if any(each.sold for each in young):
        drawn.sort(key=lambda one: -one[1])
        young.sort(key=lambda each: (each.sold is not None, each.code))
    return {each.code: one for each, one in zip(young, drawn, strict=True)}


def _drawn(carried: float, count: int, rng: Random) -> Iterator[tuple[float, float]]:
    for _ in range(count):
        own = carried + rng.gauss(0, CARRIED_SD * math.sqrt(0.5))
        yield own, MEAN + own + rng.gauss(0, CHANCE_SD)


def _carried(room: Room, code: str | None) -> float:
    if code is None:
        return 0.0
    if code in FOUNDERS:
        return FOUNDERS[code][0]
    return _brood(room, room.residents[code])[code][0]


def _halves(score: float) -> float:
    """The nearest half point from 1 to 10.

    >>> _halves(6.8), _halves(10.4)
    (7.0, 10.0)
    """
    return min(10.0, max(1.0, round(2 * score) / 2))
