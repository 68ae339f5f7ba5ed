"""The holiday page, the tubs told as closely as one page allows, and the keeper's own plan."""

from __future__ import annotations

from keeper.desktop.paper.flow import document_pages
from keeper.desktop.paper.printing import Sheets
from keeper.language import tr
from keeper.reports.holiday_page import Detail, HolidayFacts, absence_plan, holiday_page


def sheets_of(facts: HolidayFacts) -> Sheets:
    """One page, or where even racks alone take more what they take; after it the plan."""
    stem = f"away-{facts.first.isoformat()}"
    for detail in Detail:
        pages = document_pages(holiday_page(facts, detail))
        if len(pages) == 1:
            break
    plan = document_pages(absence_plan(facts))
    return Sheets(title=tr("While the keeper is away"), stem=stem, pages=[*pages, *plan])
