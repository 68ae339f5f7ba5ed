"""Print what a night needs: the round sheet and the thaw list, as a PDF or on a printer."""

from __future__ import annotations

from datetime import date
from pathlib import Path

from PySide6.QtGui import QPagedPaintDevice

from keeper.actions.keeping import Keeping
from keeper.actions.rounds import Walk
from keeper.actions.sheets import round_sheet_of, thaw_list_of
from keeper.desktop.paper.page import Paper, print_to, write_pdf
from keeper.desktop.paper.round_sheet import round_sheet_pages
from keeper.desktop.paper.thaw_list import thaw_list_pages


def print_round_sheet(
    keeping: Keeping, walk: Walk | None, path: Path, paper: Paper = Paper.A4
) -> int:
    """Write the sheet of the night of *walk* to *path*; returns how many pages.

    Raises:
        ValueError: no round is begun, so no line is fixed yet.
        OSError: it cannot be written there.
    """
    if walk is None:
        raise ValueError("No round is begun; begin it first, so that its lines are fixed.")
    sheet = round_sheet_of(keeping, walk)
    pages = round_sheet_pages(sheet)
    write_pdf(path, sheet.title, pages, paper)
    return len(pages)


def print_thaw_list(keeping: Keeping, night: date, path: Path, paper: Paper = Paper.A4) -> int:
    """Write what to thaw for *night* to *path*; returns how many pages. Raises OSError."""
    listed = thaw_list_of(keeping, night)
    pages = thaw_list_pages(listed)
    write_pdf(path, listed.title, pages, paper)
    return len(pages)


def print_night_on(device: QPagedPaintDevice, keeping: Keeping, walk: Walk) -> None:
    """Draw the round sheet on a printer that the keeper chose. Raises OSError."""
    print_to(device, round_sheet_pages(round_sheet_of(keeping, walk)))
