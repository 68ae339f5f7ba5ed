"""The holiday page: the tubs told as closely as one page allows."""

from __future__ import annotations

from keeper.actions.holiday import holiday_facts
from keeper.actions.keeping import Keeping
from keeper.desktop.paper.flow import document_pages
from keeper.desktop.paper.printing import Sheets
from keeper.reports.holiday_page import Detail, holiday_page


def holiday_sheets(keeping: Keeping) -> Sheets:
    """One page, or where even racks alone take more, what they take.

    Raises:
        LookupError: no animal is in the room.
    """
    facts = holiday_facts(keeping)
    stem = f"away-{facts.first.isoformat()}"
    title = "While the keeper is away"
    for detail in Detail:
        pages = document_pages(holiday_page(facts, detail))
        if len(pages) == 1:
            break
    return Sheets(title=title, stem=stem, pages=pages)
