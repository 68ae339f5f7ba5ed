"""The batches of the book as a list, with the chosen one in full beneath."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date

from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from keeper.actions.keeping import Keeping
from keeper.actions.records import RecordRow, entry_lines, record_rows
from keeper.desktop.aside_reading import AsideReading
from keeper.desktop.background import Worker
from keeper.desktop.look import Look
from keeper.desktop.models.record_rows import Seen
from keeper.desktop.screens import record_words
from keeper.desktop.type import Use
from keeper.desktop.widgets.record_panel import RecordPanel
from keeper.desktop.widgets.record_table import RecordTable
from keeper.husbandry.now import AnimalNow
from keeper.language import tr


class RecordList(QWidget):
    """All that was written, or what was written about one animal, newest first.

    say: gets the sentence where the book cannot be read. Older lines are read as the list is
    scrolled, so that the first one ever written can be reached.
    """

    def __init__(
        self, look: Look, keeping: Keeping, worker: Worker | None, say: Callable[[str], None]
    ) -> None:
        super().__init__()
        self._look, self._keeping = look, keeping
        self.only: AnimalNow | None = None
        self._over = False
        self.table = RecordTable(self, older=self._older)
        self._panel = RecordPanel(look)
        self._reading = AsideReading(
            self,
            keeping,
            worker,
            question=lambda aside, _: record_rows(aside, animal=self._animal),
            take=self._take,
            refused=say,
        )
        self._lay_out()
        self.table.chosen_changed.connect(self._show_chosen)
        look.changed.connect(self._dress)
        self._dress()
        self.setFocusProxy(self.table)
        self.setAccessibleName(tr("records", sense="a list"))

    def chosen(self) -> RecordRow | None:
        return self.table.chosen()

    def keep_to(self, animal: AnimalNow | None) -> None:
        """Show what was written about *animal*, or everything again."""
        self.only = animal
        self._reading.hear()

    def hear(self) -> None:
        self._reading.hear()

    def stop(self) -> None:
        """Wait for a reading that runs; nothing is read any more, nor any older line."""
        self._over = True
        self._reading.stop()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._reading.look()

    def resizeEvent(self, event: object) -> None:
        self._share_width()

    @property
    def _animal(self) -> int | None:
        return self.only.animal if self.only else None

    @property
    def _seen(self) -> Seen:
        today: date = self._keeping.today
        return Seen(today, self._keeping.book.station)

    def _older(self, row: RecordRow) -> Sequence[RecordRow]:
        if self._over:
            return ()
        return record_rows(self._keeping, before=row.batch.id, animal=self._animal)

    def _take(self, rows: list[RecordRow]) -> None:
        self.table.show_rows(rows, self._seen)
        self._show_chosen()

    def _show_chosen(self) -> None:
        row = self.table.chosen()
        if row is None:
            self._panel.show_entries("", "", (), 0)
            return
        lines = entry_lines(self._keeping, row)
        count = max(sum(row.counts.values()), len(lines))
        head, aside = record_words.head(row), record_words.aside(row, self._seen)
        self._panel.show_entries(head, aside, record_words.faces(lines), count)

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        self._frame = QVBoxLayout()
        self._frame.addWidget(self.table)
        column.addLayout(self._frame, 1)
        column.addWidget(self._panel)

    def _dress(self) -> None:
        self.table.dress(self._look.font(Use.TABLE))
        self.table.verticalHeader().setDefaultSectionSize(round(self._look.u(8)))
        self._share_width()

    def _share_width(self) -> None:
        margin = round(self._look.u(7, 3.5))
        room = self.height() - self._panel.sizeHint().height()
        self._frame.setContentsMargins(margin, 0, margin, self.table.over(room))
        self.table.share(self.width() - 2 * margin)
