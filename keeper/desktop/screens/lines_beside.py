"""What stands beside the chosen gene: the animals of the room, a pair's young, what proves most."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import QVBoxLayout, QWidget

from keeper.actions.gene_cards import CardOutOfDate
from keeper.actions.lines_desk import GeneAnimal, GeneDetail, GeneLine, Lines, PairTried
from keeper.desktop.look import Look
from keeper.desktop.screens.lines_words import (
    ANIMAL_HEADS,
    CARD_HEADS,
    CARDS_READING,
    NO_CARDS,
    NO_CARRIERS,
    animal_face,
    card_face,
    pair_face,
    paragraphs,
    proof_face,
    seat_words,
)
from keeper.desktop.widgets.clutch_panel import ClutchPanel
from keeper.desktop.widgets.odds_list import OddsFace, OddsHead, OddsList
from keeper.desktop.widgets.pair_sheet import PairFace, PairSheet
from keeper.desktop.widgets.proof_table import ProofTable
from keeper.desktop.widgets.row_list import ROW_ROLE
from keeper.husbandry.animal import AnimalId, Sex
from keeper.husbandry.now import AnimalNow
from keeper.language import tr

LIST_SHARE, LOWER_SHARE = 11, 10
"""Of the height: rows, and what stands beneath them."""


class GeneBeside(QWidget):
    """panel and proofs: paragraphs and a table, laid out by the page. detail: what is shown of the
    chosen gene; None while it is being read. cards: whether the list is of cards.
    """

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look = look
        self.detail: GeneDetail | None = None
        self.cards = False
        self._taken: tuple[AnimalNow, ...] = ()
        self._pair: PairTried | None = None
        self.heads, self.list = OddsHead(look), OddsList(look)
        self.pair, self.proofs, self.panel = PairSheet(look), ProofTable(look), ClutchPanel(look)
        self._lower = lower = QVBoxLayout()
        lower.addWidget(self.pair)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.heads)
        column.addWidget(self.list, LIST_SHARE)
        column.addLayout(lower, LOWER_SHARE)
        look.changed.connect(self.fit)

    def fit(self) -> None:
        """Keep the distances of the look."""
        look = self._look
        self._lower.setContentsMargins(round(look.u(2.2, 1.2)), round(look.u(3, 1.4)), 0, 0)

    @property
    def taken(self) -> tuple[AnimalId, ...]:
        """The animals of the pair that is tried: none, one or two."""
        return tuple(each.animal for each in self._taken)

    @property
    def animal(self) -> AnimalNow | None:
        """The animal that is chosen, or that of the card."""
        row = self.list.currentIndex().data(ROW_ROLE)
        if isinstance(row, GeneAnimal):
            return row.row
        return row.animal if isinstance(row, CardOutOfDate) else None

    def show_under(self, is_gene: bool) -> None:
        """Paragraphs and table stand beneath the genes, and not beside a colour."""
        self.panel.setVisible(is_gene)
        if not is_gene:
            self.proofs.hide()

    def show_reading(self, line: GeneLine) -> None:
        """Nothing of another gene stays while *line* is read; what is old of the same one does."""
        if self.detail is not None and self.detail.line.key == line.key:
            return
        self.detail, self._pair, self._taken = None, None, ()
        if not self.cards:
            self._show_faces((), ANIMAL_HEADS, "", None)
        self.pair.show_face(PairFace(head=tr("looking through the book")))
        self.panel.show_paragraphs(())
        self.proofs.hide()

    def show_detail(self, detail: GeneDetail) -> None:
        self.detail, self._pair, self._taken = detail, None, ()
        if not self.cards:
            self._show_animals()
        self.pair.show_face(pair_face(detail.pair, detail, tried=False))
        self.panel.show_paragraphs(tuple(paragraphs(detail)))
        self.proofs.show_face(proof_face(detail.proofs))

    def show_cards(self, lines: Lines) -> None:
        """The cards out of date in the place of the animals."""
        self.cards = True
        cards = lines.cards or ()
        faces = [(card, card_face(card, lines)) for card in cards]
        self.list.setAccessibleName(tr("cards out of date, the newest change first"))
        none = CARDS_READING if lines.cards is None else NO_CARDS
        self._show_faces(faces, CARD_HEADS, none, None)

    def show_animals(self) -> None:
        """The animals again."""
        self.cards = False
        self.list.setAccessibleName(tr("animals of the room, the surest first"))
        if self.detail is not None:
            self._show_animals()
        else:
            self._show_faces((), ANIMAL_HEADS, "", None)

    def take(self, animal: AnimalNow) -> tuple[AnimalId, ...]:
        """Take *animal* for a pair, or leave it if it is taken; it puts out one of its own sex."""
        others = [each for each in self._taken if each.animal != animal.animal]
        if animal.animal not in self.taken:
            others = [*(each for each in others if _may_pair(each, animal))][-1:]
            others.append(animal)
        self._taken, self._pair = tuple(others), None
        self._show_animals()
        if self.detail is not None:
            self.pair.show_face(pair_face(self.detail.pair, self.detail, tried=False))
        return self.taken

    def show_pair(self, pair: PairTried) -> None:
        """What the young of the two taken may look like."""
        self._pair = pair
        self._show_animals()
        if self.detail is not None:
            self.pair.show_face(pair_face(pair, self.detail, tried=True))

    def _show_animals(self) -> None:
        if self.detail is None or self.cards:
            return
        chosen = self.animal
        faces = [
            (each, animal_face(each, seat_words(each.row, self._pair, self.taken)))
            for each in self.detail.animals
        ]
        none = "" if faces else NO_CARRIERS
        self._show_faces(faces, ANIMAL_HEADS, none, chosen)

    def _show_faces(
        self,
        faces: Sequence[tuple[object, OddsFace]],
        heads: Sequence[str],
        none: str,
        chosen: AnimalNow | None,
    ) -> None:
        self.list.odds.show_rows(faces)
        spare = self.list.verticalScrollBar().sizeHint().width()
        self.heads.show_heads(heads, none if not faces else "", spare)
        rows = [row.row for row, _ in faces if isinstance(row, GeneAnimal)]
        keys = [row.animal for row in rows]
        at = keys.index(chosen.animal) if chosen is not None and chosen.animal in keys else 0
        self.list.choose(at)


def _may_pair(one: AnimalNow, other: AnimalNow) -> bool:
    """Whether they are not known to be of one sex."""
    return one.sex is not other.sex or one.sex is Sex.UNKNOWN
