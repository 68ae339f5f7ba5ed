"""The holiday page, the tubs told as closely as one page allows, and the keeper's own plan."""

from __future__ import annotations

from keeper.actions.absence import Absence
from keeper.actions.holiday import holiday_facts
from keeper.actions.keeping import Keeping
from keeper.desktop.paper.flow import document_pages
from keeper.desktop.paper.printing import Sheets
from keeper.language import tr
from keeper.reports.holiday_page import Detail, absence_plan, holiday_page


def holiday_sheets(keeping: Keeping, absence: Absence) -> Sheets:
    """One page, or where even racks alone take more what they take; after it the plan.

    Raises:
        LookupError: no animal is in the room.
    """
    facts = holiday_facts(keeping, absence)
    stem = f"away-{facts.first.isoformat()}"
    for detail in Detail:
        pages = document_pages(holiday_page(facts, detail))
        if len(pages) == 1:
            break
    plan = document_pages(absence_plan(facts))
    return Sheets(title=tr("While the keeper is away"), stem=stem, pages=[*pages, *plan])
