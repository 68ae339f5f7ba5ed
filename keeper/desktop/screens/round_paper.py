"""The papers of a night."""

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


def next_feed_night(keeping: Keeping) -> date:
    """The next feed night, tonight among them; tonight where every night is one."""
    tonight = night_of(keeping.now())
    to_come = [night for night in feed_nights_around(keeping, tonight) if night >= tonight]
    return min(to_come, default=tonight)
