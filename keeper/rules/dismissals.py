"""Lines of the watch that are put aside again and again, nothing done: the limit is too tight.

Where more than seven in ten of the answers to a kind of line were a putting aside that nothing
followed, a looser limit is proposed, as the keeper's own figure. It is never loosened past half
as much again as the shipped one, and never for what only a vet may judge.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from keeper.husbandry.animal import Stage
from keeper.husbandry.profile import Sourced, practice
from keeper.husbandry.reasons import Reason, because

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("put aside without action", ("times", "answers", "value", "looser")),
)
"""Every reason of this module with the figures it carries."""

DISMISSED_PERCENT = practice(70)
ANSWERS_LEAST = practice(5)
"""Fewer answers are no habit."""

STEP = practice(1.25)
MOST = practice(1.5)
"""One loosening, and the most of the shipped figure that is ever proposed."""

FIGURE_OF: Mapping[str, str] = {
    "refusals": "refusals.husbandry_step.{stage}",
    "not eaten for long": "refusals.review_days.{stage}",
    "opaque too long": "sheds.opaque_days_most",
    "cleared too long": "sheds.cleared_days_most",
    "first shed overdue": "sheds.first_shed_days_most",
    "shed overdue": "sheds.spread_log",
    "under expectation": "weights.under_z",
    "weight loss": "weights.loss_watch_percent.{stage}",
}
"""The figure of the profile that raises each kind of line; other kinds have none to loosen."""

_WHOLE = ("refusals.", "days_most", "review_days")
_BELOW: Mapping[str, str] = {
    "refusals.husbandry_step.": "refusals.vet_step.",
    "weights.loss_watch_percent.": "weights.loss_act_percent.",
}
"""A figure that has to stay below a graver one."""


@dataclass(frozen=True, slots=True)
class Answer:
    """What the keeper did with a line of one kind and species: put aside or looked at.

    acted: something was done about the animal, at the look or before the line came back.
    """

    kind: str
    species: str
    acted: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Loosening:
    """A looser limit to be proposed. key: the figure's dotted key in the profile."""

    key: str
    value: float
    looser: float
    because: Reason


def loosening(
    kind: str,
    stage: Stage | None,
    answers: Iterable[Answer],
    figures: Mapping[str, Sourced],
) -> Loosening | None:
    """A looser limit for *kind*, where its lines are dismissed too often; None where not.

    answers: all of that kind and species; figures: those of the profile, by dotted key.
    """
    told = list(answers)
    idle = sum(not answer.acted for answer in told)
    if len(told) < ANSWERS_LEAST.value or 100 * idle <= DISMISSED_PERCENT.value * len(told):
        return None
    key = FIGURE_OF.get(kind, "").format(stage=(stage or Stage.ADULT).value)
    if key not in figures:
        return None
    value = figures[key].value
    looser = _looser(key, figures)
    if abs(looser) <= abs(value):
        return None
    why = because(
        "put aside without action", times=idle, answers=len(told), value=value, looser=looser
    )
    return Loosening(key=key, value=value, looser=looser, because=why)


def _looser(key: str, figures: Mapping[str, Sourced]) -> float:
    """One step looser, within the most and below the graver figure."""
    figure = figures[key]
    shipped = figure.value if figure.shipped is None else figure.shipped
    wanted = figure.value * STEP.value
    if any(part in key for part in _WHOLE):
        wanted = float(max(round(wanted), figure.value + 1))
    most = abs(shipped) * MOST.value
    for part, graver in _BELOW.items():
        if key.startswith(part):
            most = min(most, figures[key.replace(part, graver)].value - 1)
    return round(max(-most, min(most, wanted)), 3)
