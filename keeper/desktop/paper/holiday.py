"""The holiday page, the tubs told as closely as one page allows, and the keeper's own plan."""

from __future__ import annotations

from keeper.actions.absence import Absence
from keeper.actions.holiday import agreed, holiday_facts
from keeper.actions.keeping import Keeping
from keeper.desktop.paper.flow import document_pages
from keeper.desktop.paper.printing import Sheets
from keeper.language import tr
from keeper.reports.holiday_page import Detail, HolidayFacts, absence_plan, holiday_page


def holiday_sheets(keeping: Keeping, absence: Absence) -> Sheets:
    """One page, or where even racks alone take more what they take; after it the plan.

    Raises:
        LookupError: no animal is in the room.
    """
    known = absence if absence.nights else agreed(keeping, absence)
    return sheets_of(holiday_facts(keeping, known))


def sheets_of(facts: HolidayFacts) -> Sheets:
    """The same of facts that are known already."""
    stem = f"away-{facts.first.isoformat()}"
    for detail in Detail:
        pages = document_pages(holiday_page(facts, detail))
        if len(pages) == 1:
            break
    plan = document_pages(absence_plan(facts))
    return Sheets(title=tr("While the keeper is away"), stem=stem, pages=[*pages, *plan])
