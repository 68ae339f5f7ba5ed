"""What a night needs on paper, made ready to draw, and any sheets as a PDF beside the book."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from pathlib import Path

from keeper.actions.keeping import Keeping
from keeper.actions.rounds import Walk
from keeper.actions.sheets import round_sheet_of, thaw_list_of
from keeper.desktop.paper.page import Drawing, write_pdf
from keeper.desktop.paper.round_sheet import round_sheet_pages
from keeper.desktop.paper.sizes import Paper
from keeper.desktop.paper.thaw_list import thaw_list_pages
from keeper.language import tr
from keeper.reports.figures import moment, plain


@dataclass(frozen=True, slots=True, kw_only=True)
class Sheets:
    """Pages ready to be drawn. stem: what tells their file from others beside the book."""

    title: str
    stem: str
    pages: list[Drawing]


def printed_words(keeping: Keeping) -> str:
    """When a sheet was printed, for its foot."""
    return plain(moment(keeping.now()))


def print_beside(keeping: Keeping, sheets: Sheets, paper: Paper | None = None) -> Path:
    """Write *sheets* as a PDF beside the book, on *paper* or that in use. Raises OSError.

    Nothing of a name leads out of the folder: only letters, digits and ``-`` of the stem stay.
    """
    book = keeping.book.path
    stem = "".join(c if c.isalnum() or c == "-" else "-" for c in sheets.stem)
    path = book.with_name(f"{book.name}.{stem}.pdf")
    write_pdf(path, sheets.title, sheets.pages, paper)
    return path


def round_sheets(keeping: Keeping, walk: Walk | None) -> Sheets:
    """The sheet of the night of *walk*.

    Raises:
        ValueError: no round is begun, so no line is fixed yet.
    """
    if walk is None:
        raise ValueError(tr("No round is begun; begin it first, so that its lines are fixed."))
    sheet = round_sheet_of(keeping, walk)
    stem = f"round-{walk.night.isoformat()}"
    return Sheets(title=sheet.title, stem=stem, pages=round_sheet_pages(sheet))


def thaw_sheets(keeping: Keeping, night: date) -> Sheets:
    """What to thaw for *night*."""
    listed = thaw_list_of(keeping, night)
    stem = f"thaw-{night.isoformat()}"
    return Sheets(title=listed.title, stem=stem, pages=thaw_list_pages(listed))
