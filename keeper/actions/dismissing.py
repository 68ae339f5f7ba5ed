"""What the keeper did with lines of the watch, and the looser limits that follow from it."""

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from datetime import date, timedelta
from typing import TypeVar

from keeper.actions.keeping import Keeping, Written
from keeper.actions.put_aside import asides_until
from keeper.actions.settings import set_own_figure
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import (
    AnimalEvent,
    Cleaned,
    HoldEnded,
    HoldSet,
    Measured,
    Moved,
    Remark,
    RemarkKind,
    Snooze,
    StartStep,
    Weighing,
)
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import practice
from keeper.reports.book_notes import dismissed_reason
from keeper.rules.dismissals import FIGURE_OF, Answer, loosening
from keeper.rules.dismissals import Loosening as Loosening
from keeper.rules.stages import stage_of
from keeper.store import reading
from keeper.store.profile_figures import every_figure

REMEMBERED_DAYS = practice(180)
"""Answers older than this say nothing of today's habit."""

_ACTS: tuple[type[AnimalEvent], ...] = (
    Remark,
    HoldSet,
    HoldEnded,
    StartStep,
    Measured,
    Moved,
    Cleaned,
)
"""Entries that count as something done about an animal; a feed night and a weigh-in do not."""

_WEIGHED_AGAIN = ("weight loss", "under expectation")
"""Lines to which weighing again is an answer."""

_MOST = 40
E = TypeVar("E", bound=AnimalEvent)
Answers = Mapping[tuple[str, str], Sequence[Answer]]
"""By kind of line and species."""


def answers_to(keeping: Keeping, animals: Mapping[AnimalId, AnimalNow], on: date) -> Answers:
    """Every answer of the last half year to lines about *animals*, by kind and species."""
    first = on - timedelta(days=REMEMBERED_DAYS.value)
    found: dict[tuple[str, str], list[Answer]] = defaultdict(list)
    for answer in (*_put_aside(keeping, animals, first, on), *_looked(keeping, animals, first, on)):
        found[answer.kind, answer.species].append(answer)
    return found


def looser_for(
    keeping: Keeping, animal: AnimalNow, kind: str, answers: Answers, on: date
) -> Loosening | None:
    """A looser limit for lines of *kind* about animals like this one; None where none is due."""
    profile = keeping.profile(animal)
    told = answers.get((kind, profile.slug), ())
    if kind not in FIGURE_OF or not told:
        return None
    return loosening(kind, stage_of(animal, profile, on), told, dict(every_figure(profile)))


def loosen(keeping: Keeping, animal: AnimalNow, found: Loosening) -> Written:
    """Put the looser figure in place of the profile's, with the reason beside it.

    Raises:
        ValueError: the figure is refused; nothing is written.
    """
    figures = found.because.figures
    reason = dismissed_reason(figures["times"], figures["answers"])
    slug = keeping.profile(animal).slug
    return set_own_figure(keeping, slug, found.key, found.looser, reason)


def _put_aside(
    keeping: Keeping, animals: Mapping[AnimalId, AnimalNow], first: date, on: date
) -> Iterator[Answer]:
    snoozes = [s for s in reading.on_days(keeping.book, Snooze, first, on) if s.animal in animals]
    until = [snooze for _, snooze in asides_until(keeping, animals, on)]
    snoozes += [snooze for snooze in until if snooze.happened.day >= first]
    acts = _acts(keeping, {snooze.animal for snooze in snoozes}, on)
    for snooze in snoozes:
        acted = any(
            snooze.happened.at < act.happened.at
            and act.happened.day <= min(snooze.until, on)
            and (snooze.watch_kind in _WEIGHED_AGAIN or not isinstance(act, Weighing))
            for act in acts[snooze.animal]
        )
        if acted or snooze.until <= on:  # one that still runs may yet be acted on
            yield Answer(snooze.watch_kind, _species(keeping, animals[snooze.animal]), acted)


def _looked(
    keeping: Keeping, animals: Mapping[AnimalId, AnimalNow], first: date, on: date
) -> Iterator[Answer]:
    """What was found at a line; the remark bears the line's kind as its note."""
    for remark in reading.on_days(keeping.book, Remark, first, on):
        if remark.kind is RemarkKind.NOTE and remark.animal in animals and remark.note:
            yield Answer(remark.note, _species(keeping, animals[remark.animal]), acted=True)


def _acts(keeping: Keeping, animals: set[AnimalId], on: date) -> dict[AnimalId, list[AnimalEvent]]:
    found: dict[AnimalId, list[AnimalEvent]] = {animal: [] for animal in animals}

    def add(kind: type[E]) -> None:
        for animal, events in reading.recent(keeping.book, kind, animals, _MOST, until=on).items():
            found[animal] += events

    for kind in (*_ACTS, Weighing):
        add(kind)
    return found


def _species(keeping: Keeping, animal: AnimalNow) -> str:
    return keeping.profile(animal).slug
