"""The papers of a night written beside the book, and what the foot says of them."""

from __future__ import annotations

from datetime import date
from pathlib import Path

from keeper.actions.due_board import feed_nights_around
from keeper.actions.keeping import Keeping
from keeper.actions.rounds import Walk, night_of
from keeper.actions.troubles import REFUSALS
from keeper.desktop.paper.holiday import holiday_sheets
from keeper.desktop.paper.printing import print_beside, print_round_sheet, print_thaw_list
from keeper.reports.figures import counted

REFUSALS_TO_PRINT = (*REFUSALS, OSError)

_pages = counted("page", "pages")


def round_sheet_beside(keeping: Keeping, walk: Walk | None) -> str:
    """Write the round sheet of *walk*. Raises ValueError while none is begun, and OSError."""
    path = _beside(keeping, "round", walk.night) if walk else keeping.book.path
    return _said("Round sheet", print_round_sheet(keeping, walk, path), path)


def thaw_list_beside(keeping: Keeping, walk: Walk | None) -> str:
    """Write what to thaw for the night of *walk*, or for the next feed night. Raises OSError."""
    night = walk.night if walk else next_feed_night(keeping)
    path = _beside(keeping, "thaw", night)
    return _said("Thaw list", print_thaw_list(keeping, night, path), path)


def holiday_page_beside(keeping: Keeping, walk: Walk | None) -> str:
    """Write the page for whoever stands in. Raises LookupError in an empty room, and OSError."""
    sheets = holiday_sheets(keeping)
    return _said(sheets.title, len(sheets.pages), print_beside(keeping, sheets))


def next_feed_night(keeping: Keeping) -> date:
    """The next feed night, tonight among them; tonight where every night is one."""
    tonight = night_of(keeping.now())
    to_come = [night for night in feed_nights_around(keeping, tonight) if night >= tonight]
    return min(to_come, default=tonight)


def _beside(keeping: Keeping, what: str, night: date) -> Path:
    book = keeping.book.path
    return book.with_name(f"{book.name}.{what}-{night.isoformat()}.pdf")


def _said(what: str, pages: int, path: Path) -> str:
    return f"{what}, {_pages(pages)}: {path}"
