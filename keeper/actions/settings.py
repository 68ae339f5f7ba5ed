"""The keeper's choices that belong to the book."""

from dataclasses import dataclass
from datetime import date

from keeper.actions.due_board import FEED_NIGHTS
from keeper.actions.keeping import Keeping, Written
from keeper.actions.noting import note
from keeper.husbandry.events import Override, Setting
from keeper.husbandry.when import at_instant
from keeper.rules.nights import feed_nights
from keeper.store.profile_figures import every_figure
from keeper.store.species_files import with_overrides


def set_feed_nights(keeping: Keeping, rules: str) -> Written:
    """Feed on the nights that *rules* give: recurrence rules of RFC 5545, one a line.

    Raises:
        ValueError: a rule cannot be read, in one sentence; nothing is written.
    """
    feed_nights(rules.split(), date(2026, 1, 1), date(2026, 2, 1))
    setting = Setting(happened=at_instant(keeping.now()), key=FEED_NIGHTS, value=rules)
    return note(keeping, "set feed nights", setting, what=rules or "every day")


@dataclass(frozen=True, slots=True, kw_only=True)
class OwnFigure:
    """A figure that the keeper changed, beside the shipped one. why: the keeper's reason."""

    species: str
    key: str
    value: float
    shipped: float
    why: str


def own_figures(keeping: Keeping) -> list[OwnFigure]:
    """Every figure that is the keeper's own, by species and key."""
    return [
        OwnFigure(
            species=profile.english,
            key=key,
            value=figure.value,
            shipped=figure.shipped,
            why=figure.source,
        )
        for _, profile in sorted(keeping.profiles.items())
        for key, figure in sorted(every_figure(profile), key=lambda pair: pair[0])
        if figure.shipped is not None
    ]


def set_own_figure(keeping: Keeping, species: str, key: str, value: float, reason: str) -> Written:
    """Put the keeper's own figure in place of a profile's.

    Raises:
        ValueError: no such figure, or an impossible value; nothing is written.
    """
    own = Override(
        happened=at_instant(keeping.now()), species=species, key=key, value=value, reason=reason
    )
    with_overrides(keeping.shipped[species], [own])
    written = note(keeping, "set own figure", own, where=species, what=f"{key} {value:g}")
    keeping.forget_figures()
    return written
