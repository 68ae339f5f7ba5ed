"""Where a place's papers are made: a PDF beside the book, then on a printer if that is asked."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path

from PySide6.QtGui import QPagedPaintDevice
from PySide6.QtWidgets import QWidget

from keeper.actions.keeping import Keeping
from keeper.actions.own_connection import own_connection
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.background import AtOnce, Background, Worker
from keeper.desktop.paper.page import page_layout, print_to
from keeper.desktop.paper.printing import Sheets, print_beside
from keeper.language import tr
from keeper.reports.figures import counted

TO_PRINTER = tr("Ctrl+Shift+P puts it on paper.")
NO_PRINTER = tr("No printer is set up on this machine; the PDF is beside the book.")
PAGES_AT_ONCE = 2
"""What is longer is written off the main thread; a page takes some ten milliseconds."""

NOTHING_YET = tr("No paper was made here yet; choose one first, then the printer.")

_pages = counted("page", "pages")

PrinterOf = Callable[[QWidget, Sheets], QPagedPaintDevice | None]


class PaperDesk:
    """One a place. It keeps the sheets made last, which the printer is given.

    tell and refuse say one sentence at the foot.
    """

    def __init__(
        self,
        keeping: Keeping,
        page: QWidget,
        *,
        tell: Callable[[str], object],
        refuse: Callable[[str], object],
        printer: PrinterOf | None = None,
    ) -> None:
        self._keeping, self._page = keeping, page
        self._tell, self._refuse = tell, refuse
        self._printer = printer or chosen_printer
        self._last: Sheets | None = None
        self._away = away = Background()
        page.destroyed.connect(lambda: away.stop())

    def make(self, sheets_of: Callable[[], Sheets]) -> None:
        """Write a PDF beside the book and say where, or why it cannot be done."""
        try:
            sheets = sheets_of()
        except (*REFUSALS, OSError) as refusal:
            self._refuse(said(refusal))
            return
        long = len(sheets.pages) > PAGES_AT_ONCE
        if long:
            self._tell(tr("{sheets}: being written.", sheets=_called(sheets)))
        worker: Worker = self._away if long else AtOnce()
        book = self._keeping
        worker.run(lambda: print_beside(book, sheets), partial(self._written, sheets), self._failed)

    def make_aside(self, title: str, sheets_of: Callable[[Keeping], Sheets]) -> None:
        """As ``make``, of what is long to read and to set: all of it off the main thread."""
        self._tell(tr("{sheets}: being written.", sheets=title))
        book = self._keeping
        self._away.run(
            lambda: _made_aside(book, sheets_of), lambda made: self._written(*made), self._failed
        )

    def _written(self, sheets: Sheets, path: Path) -> None:
        self._last = sheets
        self._tell(f"{_called(sheets)}: {path}. {TO_PRINTER}")

    def _failed(self, error: Exception) -> None:
        """A refusal of the disk is the keeper's to know; anything else is a fault of ours."""
        if not isinstance(error, (*REFUSALS, OSError)):
            raise error
        self._refuse(said(error))

    def to_printer(self) -> None:
        """Draw what was made last on a printer that the keeper chooses."""
        if self._last is None:
            self._refuse(NOTHING_YET)
            return
        try:
            device = self._printer(self._page, self._last)
            if device is None:
                return
            print_to(device, self._last.pages)
        except (*REFUSALS, OSError) as refusal:
            self._refuse(said(refusal))
            return
        self._tell(tr("{sheets}: printed.", sheets=_called(self._last)))


def _made_aside(keeping: Keeping, sheets_of: Callable[[Keeping], Sheets]) -> tuple[Sheets, Path]:
    """The sheets and their PDF, read through a connection of this thread's own."""
    with own_connection(keeping) as own:
        sheets = sheets_of(own)
        return sheets, print_beside(own, sheets)


def _called(sheets: Sheets) -> str:
    return f"{sheets.title}, {_pages(len(sheets.pages))}"


def chosen_printer(page: QWidget, sheets: Sheets) -> QPagedPaintDevice | None:
    """The printer that the keeper chose; None where the choice was left.

    Raises:
        OSError: the machine has none.
    """
    from PySide6.QtPrintSupport import QPrintDialog, QPrinter, QPrinterInfo  # only when asked

    if not QPrinterInfo.availablePrinterNames():
        raise OSError(NO_PRINTER)
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setDocName(sheets.title)
    printer.setPageLayout(page_layout())
    printer.setFullPage(True)
    dialog = QPrintDialog(printer, page)
    return printer if dialog.exec() else None
