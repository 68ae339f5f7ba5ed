"""Labels are printed on sheets that may be half used: where the next sheet begins is asked."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import NamedTuple

from keeper.actions.keeping import Keeping
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.notices import Notices
from keeper.desktop.paper.desk import PaperDesk
from keeper.desktop.paper.printing import Sheets, printed_words
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.language import tr
from keeper.reports.tub_label import Label, first_typed, next_label


class Batch(NamedTuple):
    """Labels that are printed together. stem: what tells their file from others."""

    title: str
    stem: str
    labels: Sequence[Label]


class LabelDesk:
    """Prints labels from a label of the sheet on, and knows which comes after those of last time.

    ``first``: the label that is proposed, counted from 1.
    """

    def __init__(self, keeping: Keeping, desk: PaperDesk) -> None:
        self._keeping, self._desk = keeping, desk
        self.first = 1

    def print(self, batch: Batch, text: str) -> None:
        """Print *batch* from the label that *text* names; nothing: the one proposed.

        Raises:
            ValueError: no label of the sheet, in one sentence; nothing is printed.
        """
        a_page = labels_a_page()
        first = first_typed(text or str(self.proposed), a_page)
        self.first = next_label(len(batch.labels), a_page, first)
        self._desk.make(lambda: label_sheets(self._keeping, batch, first))

    @property
    def proposed(self) -> int:
        """``first``, or 1 where the paper now has fewer labels than that."""
        return self.first if self.first <= labels_a_page() else 1


class LabelAsking:
    """Asks in one line at which label of a sheet to begin."""

    def __init__(
        self, keeping: Keeping, notices: Notices, line: AskingLine, desk: PaperDesk
    ) -> None:
        self._notices, self._line = notices, line
        self._labels = LabelDesk(keeping, desk)

    def ask(self, batch_of: Callable[[], Batch]) -> None:
        """Ask where the sheet begins; what has no label is refused at once."""
        try:
            batch = batch_of()
        except REFUSALS as refusal:
            self._notices.refused.emit(said(refusal))
            return
        self._line.ask(asked(), lambda text: self._print(batch, text), str(self._labels.proposed))

    def _print(self, batch: Batch, text: str) -> bool:
        try:
            self._labels.print(batch, text)
        except ValueError as refusal:
            self._notices.refused.emit(str(refusal))
            return False
        return True


def asked() -> str:
    """The question."""
    return tr("First free label of the sheet, 1 to {last}", last=labels_a_page())


def labels_a_page() -> int:
    """How many labels stand on a sheet."""
    from keeper.desktop.paper import tub_labels  # the code maker, when asked for

    return tub_labels.labels_a_page()


def label_sheets(keeping: Keeping, batch: Batch, first: int = 1) -> Sheets:
    """The labels of *batch*, beginning at label *first* of the first sheet."""
    from keeper.desktop.paper.tub_labels import tub_label_pages  # the code maker, when asked for

    pages = tub_label_pages(batch.labels, printed_words(keeping), first)
    return Sheets(title=batch.title, stem=batch.stem, pages=pages)
