"""When an animal is next due by its meals and refusals, before any hold has its say."""

from collections.abc import Sequence
from datetime import date, timedelta
from functools import lru_cache
from typing import NamedTuple

from keeper.husbandry.animal import Stage
from keeper.husbandry.events import HoldKind, Result
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import FeedingFigures, SpeciesProfile, practice
from keeper.husbandry.reasons import Reason, because
from keeper.rules.holds import Hold
from keeper.rules.nights import next_night, snap
from keeper.rules.stages import YOUNG, figures_of, stage_of

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("no figures", ("stage",)),
    ("stage not known", ("shortest", "longest")),
    ("stage by weight", ("stage", "weight", "weighed")),
    ("nothing known", ()),
    ("no meal known", ("since",)),
    ("record silent", ("last", "days", "interval")),
    ("record runs ahead", ("eaten", "on")),
    ("never eaten", ("shed", "first", "last")),
    ("waiting for first shed", ("hatched", "latest")),
    ("first shed not seen", ("hatched", "days")),
    ("since eaten", ("days", "interval")),
    ("interval stretched", ("score", "times", "scored")),
    ("in season", ("interval",)),
    ("gap after a meal", ("gap",)),
    ("nearest feed night", ("due", "night")),
    ("refused", ("on", "counted", "retry")),
    ("left in", ("on", "retry")),
)
"""Every reason of this module with the figures it carries. Intervals are whole days."""

FIRST_OFFER_DAYS = practice(2)
FIRST_OFFER_DAYS_MOST = practice(5)
"""A hatchling's first offer comes so many days after its first shed."""

SILENT_INTERVALS = practice(3)
"""After so many intervals without any entry the record is silent, and says nothing of fasting."""

SEASON_DAYS = practice(14)
"""A male in season is offered no more often than this."""

FAT_SCORE = practice(4)
FAT_TIMES = practice(1.5)
SCORE_DAYS_MOST = practice(183)
"""From this body score on the interval is stretched; a score older than this is past."""

_PUTS_OFF = frozenset({Result.REFUSED, Result.LEFT_IN})


class When(NamedTuple):
    """The night it falls to; without a night she waits, or, when *tells* is false, we cannot."""

    due_on: date | None
    because: tuple[Reason, ...]
    tells: bool = True


class Pace(NamedTuple):
    """How often this animal is fed just now."""

    figures: FeedingFigures
    interval_days: int
    because: tuple[Reason, ...] = ()
    stage: Stage | None = None


class House(NamedTuple):
    """What is the same for every tub tonight, and her counted refusals."""

    nights: Sequence[date]
    today: date
    last_record_on: date | None = None
    counted: int = 0


def pace_of(
    now: AnimalNow, profile: SpeciesProfile, holds: Sequence[Hold], today: date
) -> Pace | None:
    """Figures and interval of her stage, sex and fatness; None: no stage, or no figures for it."""
    stage = stage_of(now, profile, today)
    figures = figures_of(profile, stage, now.sex) if stage is not None else None
    if stage is None or figures is None:
        return None
    interval_days = figures.interval_days.value
    why: tuple[Reason, ...] = ()
    if now.hatched_first is None:
        why = (_by_weight(now, stage),)
    if is_fat(now, today):
        interval_days *= FAT_TIMES.value
        why += (_stretched(now),)
    if holds and any(hold.kind is HoldKind.SEASON for hold in holds):
        interval_days = max(interval_days, SEASON_DAYS.value)
        why += (because("in season", interval=round(interval_days)),)
    return Pace(figures, round(interval_days), why, stage)


def is_fat(now: AnimalNow, today: date) -> bool:
    """Whether a body score that is still of use says so."""
    if now.body_score is None or now.body_score < FAT_SCORE.value or now.scored_on is None:
        return False
    return 0 <= (today - now.scored_on).days <= SCORE_DAYS_MOST.value


def when_due(now: AnimalNow, profile: SpeciesProfile, pace: Pace, house: House) -> When:
    """The night she is due by what she ate and was offered."""
    if now.eaten_on is None:
        return _never_eaten(now, profile, pace, house)
    days = (house.today - now.eaten_on).days
    if days < 0:
        ahead = because("record runs ahead", eaten=now.eaten_on, on=house.today)
        return When(None, (ahead,), tells=False)
    silent = _silence(now, pace, house)
    if silent is not None:
        return When(None, (silent,), tells=False)
    due_on, moved = _after_meal(now.eaten_on, pace.interval_days, *_room(pace), tuple(house.nights))
    since = _since_eaten(days, pace.interval_days)
    return _retried(now, pace, house, due_on, (since, *pace.because, *moved))


def when_whatever_the_stage(now: AnimalNow, profile: SpeciesProfile, house: House) -> When:
    """Without a stage: certain only where every stage of the species says the same."""
    known = [figures_of(profile, stage, now.sex) for stage in (*YOUNG, Stage.ADULT)]
    paces = [Pace(f, round(f.interval_days.value)) for f in known if f is not None]
    if not paces:
        return When(None, (because("no figures", stage=None),), tells=False)
    intervals = [pace.interval_days for pace in paces]
    why = because("stage not known", shortest=min(intervals), longest=max(intervals))
    whens = [when_due(now, profile, pace, house) for pace in paces]
    nights = [when.due_on for when in whens if when.due_on is not None]
    if len(nights) < len(whens):
        return When(None, (why, *whens[0].because), tells=False)
    if max(nights) <= house.today:
        return When(max(nights), (why, *whens[nights.index(max(nights))].because))
    if min(nights) > house.today:
        return When(min(nights), (why, *whens[nights.index(min(nights))].because))
    return When(None, (why,), tells=False)


def _by_weight(now: AnimalNow, stage: Stage) -> Reason:
    return because(
        "stage by weight", stage=stage.value, weight=now.weight_g, weighed=now.weighed_on
    )


def _stretched(now: AnimalNow) -> Reason:
    return because(
        "interval stretched", score=now.body_score, times=FAT_TIMES.value, scored=now.scored_on
    )


def _room(pace: Pace) -> tuple[int, int, int]:
    """Days by which a meal may be early and late, and those kept free after the last."""
    figures = pace.figures
    gap_days = round(figures.gap_after_meal_days.value)
    return int(figures.early_days.value), int(figures.late_days.value), gap_days


@lru_cache(maxsize=4096)
def _after_meal(
    eaten_on: date,
    interval_days: int,
    early_days: int,
    late_days: int,
    gap_days: int,
    nights: tuple[date, ...],
) -> tuple[date, tuple[Reason, ...]]:
    """Interval after the meal, moved to a feed night, never within the gap after it."""
    due_on = eaten_on + timedelta(days=interval_days)
    night = snap(due_on, nights, early_days, late_days)
    soonest = eaten_on + timedelta(days=gap_days)
    if night < soonest:
        return next_night(soonest, nights), (because("gap after a meal", gap=gap_days),)
    if night != due_on:
        return night, _nearest(due_on, night)
    return night, ()


@lru_cache(maxsize=4096)
def _since_eaten(days: int, interval_days: int) -> Reason:
    """The same for every animal of a room that ate on the same night."""
    return because("since eaten", days=days, interval=interval_days)


@lru_cache(maxsize=4096)
def _nearest(due_on: date, night: date) -> tuple[Reason, ...]:
    return (because("nearest feed night", due=due_on, night=night),)


def _retried(
    now: AnimalNow, pace: Pace, house: House, due_on: date, why: tuple[Reason, ...]
) -> When:
    """After a refusal, or with an item still in the tub, not before the retry night."""
    if now.offered_on is None or now.offered_result not in _PUTS_OFF:
        return When(due_on, why)
    retry_days = round(pace.figures.retry_days.value)
    retry_on = next_night(now.offered_on + timedelta(days=retry_days), house.nights)
    if now.offered_result is Result.LEFT_IN:
        offered = because("left in", on=now.offered_on, retry=retry_on)
    else:
        offered = because("refused", on=now.offered_on, counted=house.counted, retry=retry_on)
    return When(max(due_on, retry_on), (*why, offered))


def _silence(now: AnimalNow, pace: Pace, house: House) -> Reason | None:
    """Reason when neither she nor the house has an entry within some intervals."""
    most_days = SILENT_INTERVALS.value * pace.interval_days
    recorded_on = house.last_record_on
    if recorded_on is not None and (house.today - recorded_on).days <= most_days:
        return None
    known = (now.eaten_on, now.last_entry_on, now.offered_on, recorded_on)
    last = max((day for day in known if day is not None), default=None)
    if last is None:
        return because("nothing known")
    days = (house.today - last).days
    if days <= most_days:
        return None
    return because("record silent", last=last, days=days, interval=pace.interval_days)


def _never_eaten(now: AnimalNow, profile: SpeciesProfile, pace: Pace, house: House) -> When:
    """No meal in the record: a new hatchling waits for its first shed, others cannot tell."""
    unfed = because("no meal known", since=now.first_entry_on)
    first = _first_offer(now, profile, house) if _newly_hatched(now, profile, house.today) else None
    if now.offered_on is not None and now.offered_result in _PUTS_OFF:
        if first is not None:
            return _retried(now, pace, house, first.due_on or now.offered_on, first.because)
        if _silence(now, pace, house) is None:
            return _retried(now, pace, house, now.offered_on, (unfed, *pace.because))
    if first is not None:
        return first
    nothing = because("nothing known") if now.first_entry_on is None else unfed
    return When(None, (nothing,), tells=False)


def _newly_hatched(now: AnimalNow, profile: SpeciesProfile, today: date) -> bool:
    """Young enough that not to have eaten yet is in order, or at least possible."""
    age_days = now.age_days(today)
    most_days = profile.weights.first_meal_days_most.value
    return age_days is not None and 0 <= age_days <= most_days


def _first_offer(now: AnimalNow, profile: SpeciesProfile, house: House) -> When:
    hatched_on = now.hatched_last or now.hatched_first
    latest_days = round(profile.sheds.first_shed_days_most.value)
    if now.shed_on is not None:
        first = now.shed_on + timedelta(days=int(FIRST_OFFER_DAYS.value))
        last = now.shed_on + timedelta(days=int(FIRST_OFFER_DAYS_MOST.value))
        never = because("never eaten", shed=now.shed_on, first=first, last=last)
        return When(next_night(first, house.nights), (never,))
    latest = hatched_on + timedelta(days=latest_days) if hatched_on else None
    if latest is None or house.today <= latest:
        return When(None, (because("waiting for first shed", hatched=hatched_on, latest=latest),))
    unseen = because("first shed not seen", hatched=hatched_on, days=latest_days)
    return When(next_night(latest, house.nights), (unseen,))
