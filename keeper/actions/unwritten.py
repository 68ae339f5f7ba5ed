"""Nights that were fed and not written: nobody is starving for what was only not recorded."""

from collections.abc import Container, Sequence
from dataclasses import replace
from datetime import date, timedelta

from keeper.actions.keeping import Keeping
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import NightTold, Remark
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile
from keeper.husbandry.reasons import because
from keeper.rules.feeding import DueState, Plan
from keeper.rules.stages import figures_of, stage_of
from keeper.store import reading
from keeper.store.nights import night_answers, offer_days

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("night not written", ("night", "gap")),
    ("may have eaten then", ("night",)),
)
"""Every reason of this module with the figures it carries."""

ONE_OF = "one of these: "
"""Begins the remark of each of two in a tub when a result was seen, and not whose it was."""

FED = frozenset({NightTold.FORGOT, NightTold.UNWRITTEN})
_BACK = timedelta(days=60)


def unwritten_nights(keeping: Keeping, on: date) -> tuple[date, ...]:
    """Nights before *on* that were fed, as the keeper says, and of which nothing is written."""
    answers = night_answers(keeping.book)
    fed = sorted(n for n, told in answers.items() if told in FED and on - _BACK <= n < on)
    if not fed:
        return ()
    written = offer_days(keeping.book, fed[0], fed[-1])
    return tuple(night for night in fed if night not in written)


def of_one_nights(
    keeping: Keeping, animals: Container[AnimalId], on: date, since: date | None = None
) -> dict[AnimalId, list[date]]:
    """Nights before *on* on which one of those in a tub was fed, and nobody knows which.

    since: the first night asked about; None: as far back as a doubt reaches.
    """
    nights: dict[AnimalId, list[date]] = {}
    days = (since or on - _BACK, on - timedelta(days=1))
    for remark in reading.on_days(keeping.book, Remark, *days):
        if remark.animal in animals and remark.text.startswith(ONE_OF):
            nights.setdefault(remark.animal, []).append(remark.happened.day)
    return nights


def doubted(
    plan: Plan, row: AnimalNow, profile: SpeciesProfile, unwritten: Sequence[date], on: date
) -> Plan:
    """*plan* with its doubt where she was due on a night that was fed and not written.

    So soon after it that a second meal could come up again, nobody can tell whether she is due.
    """
    due_on, last_on = plan.due_on, row.offered_on
    if plan.state is not DueState.DUE or due_on is None:
        return plan
    nights = [n for n in unwritten if due_on <= n and (last_on is None or last_on < n)]
    if not nights:
        return plan
    night = max(nights)
    gap_days = _gap_days(row, profile, on)
    if (on - night).days >= gap_days:
        doubt = because("may have eaten then", night=night)
        return replace(plan, because=(*plan.because, doubt))
    why = because("night not written", night=night, gap=gap_days)
    return replace(
        plan,
        state=DueState.CANNOT_TELL,
        offer=(),
        offer_percent=None,
        because=(why, *plan.because),
    )


def _gap_days(row: AnimalNow, profile: SpeciesProfile, on: date) -> int:
    stage = stage_of(row, profile, on)
    figures = figures_of(profile, stage, row.sex) if stage is not None else None
    if figures is not None:
        return round(figures.gap_after_meal_days.value)
    every = [
        f.gap_after_meal_days.value for by_sex in profile.feeding.values() for f in by_sex.values()
    ]
    return round(max(every, default=0))
