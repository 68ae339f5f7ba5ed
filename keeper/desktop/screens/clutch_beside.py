"""What stands beneath the list for the chosen clutch: its young, and what is next, heat, sires."""

from __future__ import annotations

from datetime import date

from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from keeper.actions.clutch_detail import ClutchDetail
from keeper.actions.clutch_genes import ClutchGenes
from keeper.actions.clutch_paper import record_of
from keeper.actions.clutch_rows import ClutchRow
from keeper.actions.keeping import Keeping
from keeper.desktop.look import Look
from keeper.desktop.paper.flow import document_pages
from keeper.desktop.paper.printing import Sheets
from keeper.desktop.screens.clutch_words import NO_YOUNG, paragraphs, young_face
from keeper.desktop.widgets.clutch_panel import ClutchPanel
from keeper.desktop.widgets.young_list import YoungHead, YoungList
from keeper.language import tr


class ClutchBeside(QWidget):
    """detail, genes: what is shown of the chosen clutch; None while it is being read."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look = look
        self.detail: ClutchDetail | None = None
        self.genes: ClutchGenes | None = None
        self._genes_first = False
        self.young_head, self.young = YoungHead(look), YoungList(look)
        self.panel = ClutchPanel(look)
        self._row = row = QHBoxLayout(self)
        column = QVBoxLayout()
        column.setSpacing(0)
        column.addWidget(self.young_head)
        column.addWidget(self.young, 1)
        row.addLayout(column, 5)
        row.addWidget(self.panel, 4)
        self.young_head.show_none("")
        look.changed.connect(self.fit)

    def fit(self) -> None:
        """Keep the distances of the look."""
        self._row.setContentsMargins(round(self._look.u(2.2, 1.2)), round(self._look.u(2, 1)), 0, 0)
        self._row.setSpacing(round(self._look.u(6, 3)))

    def show_row(self, row: ClutchRow) -> None:
        """All that the row itself tells, while the rest is being read."""
        self.detail = self.genes = None
        self.young.young.show_faces(())
        self.young_head.show_none(NO_YOUNG if not row.young else "")
        self.panel.show_paragraphs(tuple(paragraphs(row, None)))

    def show_detail(self, detail: ClutchDetail, on: date) -> None:
        self.detail = detail
        self.young.young.show_faces([young_face(each, on) for each in detail.young])
        self.young_head.show_none("" if detail.young else NO_YOUNG)
        self._tell()

    def show_genes(self, genes: ClutchGenes | None) -> None:
        """What it may give, beside the detail that is shown."""
        self.genes = genes
        self._tell()

    def turn_over(self) -> None:
        """What it may give before all else, and back."""
        self._genes_first = not self._genes_first
        self._tell()

    def _tell(self) -> None:
        if self.detail is not None:
            first = self._genes_first
            told = paragraphs(self.detail.row, self.detail, self.genes, genes_first=first)
            self.panel.show_paragraphs(tuple(told))

    def record(self, keeping: Keeping) -> Sheets:
        """The record of the clutch. Raises LookupError while none is read."""
        if self.detail is None:
            raise LookupError(tr("No clutch is read yet; there is nothing to print."))
        document = record_of(self.detail, keeping.now(), self.genes)
        stem = f"clutch-{self.detail.row.facts.name}-{keeping.today.isoformat()}"
        return Sheets(
            title=document.title, stem=stem.replace("/", "-"), pages=document_pages(document)
        )
