"""The papers of an animal: its life as it looks, its label, the card, the summary, its kin."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from PySide6.QtWidgets import QWidget

from keeper.actions.animal_page import AnimalPage
from keeper.actions.animal_papers import buyers_card_of, vet_facts_of
from keeper.actions.day_of_life import day_of_life
from keeper.actions.gene_page import GenesOfAnimal
from keeper.actions.keeping import Keeping
from keeper.actions.kin_weights import kin_document, kin_of
from keeper.actions.troubles import REFUSALS, said
from keeper.actions.tub_labels import labels_of
from keeper.desktop.notices import Notices
from keeper.desktop.paper.desk import PaperDesk
from keeper.desktop.paper.flow import Artist, document_pages
from keeper.desktop.paper.life_page import life_artist, life_document, whole_life
from keeper.desktop.paper.printing import Sheets, printed_words
from keeper.desktop.screens.animal_line import AnimalLine
from keeper.desktop.screens.animal_words import figures_of
from keeper.desktop.screens.label_asking import Batch, LabelDesk, asked
from keeper.desktop.widgets.life_paint import Told
from keeper.desktop.widgets.life_strip import LifeStrip
from keeper.language import tr
from keeper.reports.kin_weights import CHART
from keeper.reports.paper_parts import Document
from keeper.reports.vet_summary import LIFE, PAGES, ROOMS, vet_summary

Key = tuple[str, str, Callable[[], object]]
NOBODY = tr("No animal is shown; there is nothing to print.")


class AnimalPaper:
    """Each writes a PDF beside the book of the animal that the strip shows."""

    def __init__(
        self,
        keeping: Keeping,
        notices: Notices,
        page: QWidget,
        strip: LifeStrip,
        line: AnimalLine,
        genes: Callable[[], GenesOfAnimal | None] = lambda: None,
    ) -> None:
        self._keeping, self._strip, self._line, self._genes = keeping, strip, line, genes
        self.desk = PaperDesk(keeping, page, tell=notices.noted.emit, refuse=notices.refused.emit)
        self._refuse = notices.refused.emit
        self._labels = LabelDesk(keeping, self.desk)

    def keys(self) -> Sequence[Key]:
        """What it does, its shortcut, and how; for the keys of the place and its menu."""
        make = self.desk.make
        return (
            (tr("Life strip on paper"), "Ctrl+P", lambda: make(self.life)),
            (tr("Tub label"), "Ctrl+L", self._ask_label),
            (tr("Card for a buyer"), "Ctrl+B", lambda: make(self.card)),
            (tr("Summary for a vet"), "Ctrl+D", lambda: make(self.summary)),
            (tr("Weights of the clutch or line"), "Ctrl+K", lambda: make(self.kin)),
            (tr("Note for an examination after death"), "Ctrl+N", lambda: make(self.death)),
            (tr("The last PDF on a printer"), "Ctrl+Shift+P", self.desk.to_printer),
        )

    def life(self) -> Sheets:
        """The strip as it looks, with the read-out of the day of the cursor."""
        told, view = self._told(), self._strip.view
        figures = figures_of(told.page, day_of_life(told.page, view.cursor))
        document = life_document(told, view, figures, printed_words(self._keeping))
        return _sheets(document, "life", told.page, {LIFE: life_artist(told, view)})

    def _ask_label(self) -> None:
        try:
            self._line.open(_OneLabel(self._labels, self.label()))
        except REFUSALS as refusal:
            self._refuse(said(refusal))

    def label(self) -> Batch:
        """Her label. Raises LookupError where she is not here."""
        row = self._told().page.animal
        title = tr("Tub label, {name}", name=row.called)
        return Batch(title, f"label-{row.code}", labels_of(self._keeping, [row]))

    def card(self) -> Sheets:
        page, genes = self._told().page, self._genes()
        if genes is not None and genes.animal != page.animal.animal:
            genes = None  # those of the animal before: hers are still being read
        return _sheets(buyers_card_of(self._keeping, page, genes), "card", page)

    def summary(self) -> Sheets:
        """Two pages; of a long record so much as they hold."""
        told = self._told()
        facts, pictures = vet_facts_of(self._keeping, told.page), {LIFE: whole_life(told)}
        for room in ROOMS:
            sheets = _sheets(vet_summary(facts, room), "vet", told.page, pictures)
            if len(sheets.pages) <= PAGES:
                break
        return sheets

    def death(self) -> Sheets:
        """For whoever examines the body. Raises LookupError while she is not written as died."""
        from keeper.actions.death_papers import death_facts_of  # what few ever ask for
        from keeper.reports.death_note import death_note

        page = self._told().page
        return _sheets(death_note(death_facts_of(self._keeping, page)), "death", page)

    def kin(self) -> Sheets:
        """Weights of her clutch, or of her line where no clutch is written."""
        from keeper.desktop.paper.kin_chart import kin_artist

        page = self._told().page
        kin = kin_of(self._keeping, page)
        document = kin_document(kin, self._keeping.now())
        return _sheets(document, "weights", page, {CHART: kin_artist(kin)})

    def _told(self) -> Told:
        if self._strip.told is None:
            raise LookupError(NOBODY)
        return self._strip.told


@dataclass(frozen=True, slots=True)
class _OneLabel:
    """Asks at which label of a used sheet hers is printed."""

    labels: LabelDesk
    batch: Batch

    @property
    def prompt(self) -> str:
        return asked()

    @property
    def hint(self) -> str:
        return tr("empty: label {first}; Enter prints, Esc leaves", first=self.labels.proposed)

    def echo(self, text: str) -> str:
        return self.hint

    def step(self, by: int) -> None:
        return None

    def take(self, text: str) -> None:
        """Print it. Raises ValueError, in one sentence."""
        self.labels.print(self.batch, text)


def _sheets(
    document: Document, kind: str, page: AnimalPage, pictures: dict[str, Artist] | None = None
) -> Sheets:
    stem = f"{kind}-{page.animal.code}-{page.today.isoformat()}"
    return Sheets(title=document.title, stem=stem, pages=document_pages(document, pictures))
