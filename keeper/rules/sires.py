"""Who may have sired a clutch: odds over the males that were with her, never a certainty.

A female keeps sperm for months, so every male that shared her tub or was paired with her counts.
How much a lock, a pairing and a shared tub weigh, and how fast they fade, is common practice:
the odds order what was written down and prove nothing. A male that nobody wrote down has none.
"""

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Literal

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.profile import ClutchFigures, practice
from keeper.husbandry.reasons import Reason, because

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("lock seen before laying", ("on", "days")),
    ("paired before laying", ("on", "days")),
    ("shared a tub before laying", ("first", "last", "days")),
    ("after so long from kept sperm", ("days",)),
    ("no male is written of her", ("months",)),
    ("odds order what was written", ()),
)
"""Every reason of this module with the figures it carries."""

LOCK_WEIGHS, PAIRED_WEIGHS, TUB_WEIGHS = practice(8), practice(3), practice(1)
HALF_DAYS = practice(60)
"""Days before the latest useful meeting after which what was seen weighs half."""

LONG_DAYS = practice(120)
"""From so many days on a clutch is told to be from kept sperm."""

MONTH_DAYS = 30.44

Meeting = Literal["lock", "paired", "tub"]
_WEIGHS = {"lock": LOCK_WEIGHS, "paired": PAIRED_WEIGHS, "tub": TUB_WEIGHS}

ODDS_ALONE = because("odds order what was written")


@dataclass(frozen=True, slots=True, kw_only=True)
class Exposure:
    """A male was with her from *first* to *last*: a lock, a pairing, or a shared tub."""

    male: AnimalId
    first: date
    last: date
    how: Meeting


@dataclass(frozen=True, slots=True, kw_only=True)
class SireOdds:
    """One candidate. odds: 0 to 1, of all that were written together; because: newest first."""

    male: AnimalId
    odds: float
    because: tuple[Reason, ...]


def candidate_sires(
    exposures: Iterable[Exposure],
    laid_on: date,
    figures: ClutchFigures,
    mature_on: date | None = None,
) -> tuple[SireOdds, ...]:
    """The males that may have sired eggs laid on *laid_on*, likeliest first; none: cannot tell.

    mature_on: the day from which she could be mated at all, where her age is known.
    """
    latest = laid_on - timedelta(days=round(figures.sire_days_least.value))
    earliest = laid_on - timedelta(days=round(figures.sire_months_most.value * MONTH_DAYS))
    since = max(earliest, mature_on) if mature_on else earliest
    counted = [met for met in exposures if met.first <= latest and met.last >= since]
    weights: dict[AnimalId, float] = defaultdict(float)
    for met in counted:
        weights[met.male] += _weight(met, latest)
    whole = sum(weights.values())
    found = [
        SireOdds(male=male, odds=weight / whole, because=_told(male, counted, laid_on, latest))
        for male, weight in weights.items()
    ]
    return tuple(sorted(found, key=lambda each: (-each.odds, each.male)))


def cannot_tell(figures: ClutchFigures) -> Reason:
    """Why no odds can be given where no male was written of her."""
    return because("no male is written of her", months=figures.sire_months_most.value)


def _weight(met: Exposure, latest: date) -> float:
    days_before = max(0, (latest - met.last).days)
    return float(_WEIGHS[met.how].value * 0.5 ** (days_before / HALF_DAYS.value))


def _told(
    male: AnimalId, counted: Sequence[Exposure], laid_on: date, latest: date
) -> tuple[Reason, ...]:
    own = sorted((met for met in counted if met.male == male), key=lambda met: met.last)
    told = [_seen(met, laid_on, latest) for met in reversed(own)]
    days = (laid_on - min(own[-1].last, latest)).days
    if days >= LONG_DAYS.value:
        told.append(because("after so long from kept sperm", days=days))
    return tuple(told)


def _seen(met: Exposure, laid_on: date, latest: date) -> Reason:
    last = min(met.last, latest)
    days = (laid_on - last).days
    if met.how == "tub":
        return because("shared a tub before laying", first=met.first, last=last, days=days)
    word = "lock seen before laying" if met.how == "lock" else "paired before laying"
    return because(word, on=met.first, days=days)
