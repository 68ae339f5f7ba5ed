"""The papers of a night, and of the nights while the keeper is away."""

from __future__ import annotations

from datetime import date

from keeper.actions.due_board import feed_nights_around
from keeper.actions.keeping import Keeping
from keeper.actions.rounds import Walk, night_of
from keeper.desktop.paper.printing import Sheets, round_sheets, thaw_sheets


def round_sheet_of_night(keeping: Keeping, walk: Walk | None) -> Sheets:
    """The round sheet of *walk*. Raises ValueError while none is begun."""
    return round_sheets(keeping, walk)


def thaw_list_of_night(keeping: Keeping, walk: Walk | None) -> Sheets:
    """What to thaw for the night of *walk*, or for the next feed night."""
    return thaw_sheets(keeping, walk.night if walk else next_feed_night(keeping))


def holiday_page_of_night(keeping: Keeping, walk: Walk | None) -> Sheets:
    """The page for whoever stands in. Raises LookupError in an empty room."""
    from keeper.desktop.paper.holiday import holiday_sheets  # what sets pages, when asked for

    return holiday_sheets(keeping)


def next_feed_night(keeping: Keeping) -> date:
    """The next feed night, tonight among them; tonight where every night is one."""
    tonight = night_of(keeping.now())
    to_come = [night for night in feed_nights_around(keeping, tonight) if night >= tonight]
    return min(to_come, default=tonight)
