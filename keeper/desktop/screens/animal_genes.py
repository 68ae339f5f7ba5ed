"""Genes on an animal's page: the line in which they are typed, and what she carries."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date

from PySide6.QtWidgets import QWidget

from keeper.actions.gene_desk import GeneDesk
from keeper.actions.gene_page import GenesOfAnimal
from keeper.actions.gene_typed import GENE, gene_typed, genes_named
from keeper.actions.keeping import Keeping
from keeper.actions.troubles import REFUSALS, said
from keeper.actions.typed_entries import Typed
from keeper.desktop.background import Background, Worker
from keeper.desktop.look import Look
from keeper.desktop.notices import Notices
from keeper.desktop.screens.animal_asking import Noting, hinted
from keeper.desktop.widgets.clutch_panel import Paragraph
from keeper.desktop.widgets.gene_band import GeneBand, GeneSheet, Word
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.when import Happened
from keeper.language import tr
from keeper.reports.figures import day as day_words

NOTHING = tr("Nothing is told of its genes. K writes what it shows, or names a gene.")
INDEPENDENT = tr(
    "Odds are reckoned from all that is written of its kin; only young can prove them."
)


class AnimalGenes:
    """The line beneath the head and the sheet; read aside, shown when they have come."""

    def __init__(
        self,
        keeping: Keeping,
        look: Look,
        page: QWidget,
        read_out: QWidget,
        notices: Notices,
        worker: Worker | None,
    ) -> None:
        self.band, self.sheet = GeneBand(look, page), GeneSheet(look, page)
        self.told: GenesOfAnimal | None = None
        self._waits = False
        self._desk, self._worker = GeneDesk(keeping), worker or Background()
        self._read_out, self._refused = read_out, notices.refused.emit
        self._turn, self._open, self._someone = 0, False, True
        self._show(None)
        page.destroyed.connect(self.stop)

    @property
    def key(self) -> tuple[str, str, Callable[[], object]]:
        """What it does, its shortcut, and how; for the keys of the place."""
        return tr("Its genes with their reasons, and back"), "Shift+K", self.turn_over

    def read(self, row: AnimalNow) -> None:
        """Ask for the genes of *row*; what was shown of another goes at once."""
        if self.told is not None and self.told.animal != row.animal:
            self._show(None)
        self._turn += 1
        self._waits = True
        turn, desk = self._turn, self._desk

        def job() -> GenesOfAnimal | None:
            return desk.of(row.animal) if turn == self._turn else None

        def done(told: GenesOfAnimal | None) -> None:
            if turn == self._turn:
                self._show(told)

        self._worker.run(job, done, self._failed)

    def now(self) -> GenesOfAnimal | None:
        """What is shown; None while it is being read."""
        return None if self._waits else self.told

    def turn_over(self) -> None:
        """The reasons in the place of the read-out, or the read-out again."""
        self._open = not self._open
        self._lay()

    def show_side(self, someone: bool) -> None:
        """Read-out or reasons, as long as there is an animal to tell of."""
        self._someone = someone
        if not someone:
            self._show(None)
        self._lay()

    def stop(self) -> None:
        """Let go of the book."""
        self._turn += 1
        self._worker.stop(self._desk.close)

    def _show(self, told: GenesOfAnimal | None) -> None:
        self.told, self._waits = told, False
        says = told is not None and told.says_something
        self.band.setVisible(says)
        if told is not None and says:
            self.band.show_words(tr("carries"), tuple(words_of(told)), tr("Shift+K: why"))
        else:
            self.band.show_words(tr("carries"), (), NOTHING)
        self.sheet.show_paragraphs(tuple(paragraphs(told)))
        self._lay()

    def _lay(self) -> None:
        self.sheet.setVisible(self._open and self._someone)
        self._read_out.setVisible(self._someone and not self._open)

    def _failed(self, error: Exception) -> None:
        if not isinstance(error, REFUSALS):
            raise error
        self._refused(said(error))


def words_of(told: GenesOfAnimal) -> Iterator[Word]:
    """Each gene in short, then what else is to be known of."""
    if told.contradictions:
        yield tr("cannot all be true:"), told.contradictions[0], True
    for each in told.genes:
        yield each.gene, each.word, each.sure
    if told.is_close:
        yield tr("inbreeding"), told.f_words, True
    if told.parents:
        yield tr("sire or parents"), tr("in doubt"), False


def paragraphs(told: GenesOfAnimal | None) -> Iterator[Paragraph]:
    """The sheet: what cannot be true first, then each gene with its reason, then inbreeding."""
    if told is None or not told.says_something:
        yield Paragraph(head=tr("Genes"), words=NOTHING)
    if told is None:
        return
    if told.contradictions:
        yield Paragraph(head=tr("Cannot all be true"), words=" ".join(told.contradictions))
    for each in told.genes:
        written = tr("Written {day}.", day=each.read) if each.read else ""
        words = " ".join(part for part in (each.because, written) if part)
        yield Paragraph(head=tr("{gene}: {told}", gene=each.gene, told=each.word), words=words)
    if told.parents:
        yield Paragraph(head=tr("Its parents"), words=" ".join(told.parents))
    if told.clear:
        yield Paragraph(head=tr("Not known to carry"), words=", ".join(told.clear))
    yield Paragraph(head=tr("Inbreeding"), words=told.inbreeding)
    when = tr("As of {day}.", day=day_words(told.on))
    yield Paragraph(head=tr("How this is known"), words=f"{when} {INDEPENDENT}")


def gene_asked(keeping: Keeping, row: AnimalNow, day: date) -> Noting:
    """What she shows or is said to carry, or a gene of her species named."""
    named = genes_named(keeping, row.species)

    def reader(animal: AnimalId, happened: Happened, text: str) -> Typed:
        return gene_typed(animal, happened, text, named=named, species=row.species)

    names = ", ".join(gene.gene for gene in named)
    hint = tr("{hint}; named here: {names}", hint=GENE, names=names) if names else GENE
    return Noting(keeping, row, day, tr("gene, {day}", day=day_words(day)), hinted(hint), reader)
