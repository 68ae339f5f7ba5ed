"""The paper of the records: the stock register as at a day that is asked for."""

from __future__ import annotations

from datetime import date
from functools import partial

from PySide6.QtWidgets import QWidget

from keeper.actions.keeping import Keeping
from keeper.actions.stock_register import as_at_typed, register_of
from keeper.desktop.notices import Notices
from keeper.desktop.paper.desk import PaperDesk
from keeper.desktop.paper.printing import Sheets
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.language import tr


class RecordsPaper:
    """Asks as at which day, and writes a PDF beside the book."""

    def __init__(
        self, keeping: Keeping, notices: Notices, page: QWidget, asking: AskingLine
    ) -> None:
        self._keeping, self._asking = keeping, asking
        self._refuse = notices.refused.emit
        self.desk = PaperDesk(keeping, page, tell=notices.noted.emit, refuse=notices.refused.emit)

    def ask(self) -> None:
        """Today is proposed; any day before is right."""
        asked = tr("Stock register as at (24 Nov 2026; nothing for today)")
        self._asking.ask(asked, self._make)

    def _make(self, text: str) -> bool:
        try:
            on = as_at_typed(text, self._keeping.today)
        except ValueError as refusal:
            self._refuse(str(refusal))
            return False
        self.desk.make_aside(tr("Stock register"), partial(register_sheets, on=on))
        return True


def register_sheets(keeping: Keeping, *, on: date) -> Sheets:
    """The register as at the day *on*, ready to be drawn."""
    from keeper.desktop.paper.flow import document_pages  # what sets pages, when asked for
    from keeper.reports.stock_register import stock_register

    document = stock_register(register_of(keeping, on))
    stem = f"register-{on.isoformat()}"
    return Sheets(title=document.title, stem=stem, pages=document_pages(document))
