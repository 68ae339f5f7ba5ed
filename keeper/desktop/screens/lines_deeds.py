"""What the keys of the place of lines do: pages opened, genes named and told of, cards, paper."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable
from typing import Protocol, TypeVar

from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.lines_desk import GeneLine, Line, Lines, try_pair
from keeper.desktop.notices import Notices
from keeper.desktop.paper.desk import PaperDesk
from keeper.desktop.screens.animal_line import AnimalLine
from keeper.desktop.screens.lines_asking import Naming, Telling
from keeper.desktop.screens.lines_beside import GeneBeside
from keeper.desktop.screens.lines_paper import paper_of
from keeper.desktop.screens.lines_words import NO_LINES
from keeper.language import tr

READING = tr("The book is still being read.")
OF_A_GENE = tr("That is asked of a gene; choose one first.")


Found = TypeVar("Found")


class Aside(Protocol):
    """Does a job off the main thread and shows what it found, if nothing else was asked since."""

    def __call__(self, job: Callable[[], Found], show: Callable[[Found], object], /) -> None: ...


class LinesDeeds:
    """One method for each key. row, lines: what is chosen and shown now."""

    def __init__(
        self,
        keeping: Keeping,
        notices: Notices,
        *,
        line: AnimalLine,
        paper: PaperDesk,
        beside: GeneBeside,
        row: Callable[[], Line | None],
        lines: Callable[[], Lines | None],
        aside: Aside,
    ) -> None:
        self._keeping, self._notices = keeping, notices
        self._line, self._paper, self._beside = line, paper, beside
        self._row, self._lines, self._aside = row, lines, aside

    def open(self) -> None:
        """The page of the animal that is chosen beside the gene."""
        animal = self._beside.animal if isinstance(self._row(), GeneLine) else None
        if animal is not None:
            self._notices.animal_asked.emit(animal.animal)
        else:
            self._refuse(tr("No animal is chosen here; Right goes to the animals of a gene."))

    def tell(self) -> None:
        """What an animal shows of the chosen gene, typed at the foot."""
        row = self._gene()
        if row is not None:
            self._line.open(Telling(self._keeping, row, self._beside.animal))

    def name(self) -> None:
        """A new gene, typed at the foot; of the species that is chosen, else the commonest."""
        row = self._row()
        here = [each for each in animals_on(self._keeping, self._keeping.today) if each.in_the_room]
        kinds = [kind for kind, _ in Counter(each.species for each in here).most_common()]
        first = [row.named.species] if isinstance(row, GeneLine) else []
        kinds = list(dict.fromkeys((*first, *kinds)))
        if kinds:
            self._line.open(Naming(self._keeping, kinds))
        else:
            self._refuse(tr("No animal is in the room yet; a gene is named for a species."))

    def go_to_animals(self) -> None:
        """Where a colour is shown there are none to go to."""
        if self._beside.list.isVisible():
            self._beside.list.setFocus()

    def take_for_pair(self) -> None:
        """The chosen animal into the pair; when there are two, their young are reckoned."""
        row, animal = self._row(), self._beside.animal
        if not isinstance(row, GeneLine) or animal is None or self._beside.cards:
            self._refuse(tr("A pair is tried with two animals of a gene."))
            return
        taken = self._beside.take(animal)
        if len(taken) == 2:
            self._aside(lambda: try_pair(row, *taken), self._beside.show_pair)

    def turn_cards(self) -> None:
        """The cards out of date in the place of the animals, and back."""
        lines = self._lines()
        if lines is None or self._gene() is None:
            return
        if self._beside.cards:
            self._beside.show_animals()
        else:
            self._beside.show_cards(lines)
        self._beside.list.setFocus()

    def print(self) -> None:
        """The cards where they are shown, else the chosen gene or colour."""
        row, lines, beside = self._row(), self._lines(), self._beside
        detail, cards = beside.detail, lines.cards if lines is not None and beside.cards else None
        self._paper.make_aside(tr("Lines"), lambda own: paper_of(own, row, detail, cards))

    def _gene(self) -> GeneLine | None:
        """The chosen gene; else it is said what is missing."""
        row = self._row()
        if isinstance(row, GeneLine):
            return row
        none = NO_LINES if self._lines() is not None else READING
        self._refuse(OF_A_GENE if row is not None else none)
        return None

    def _refuse(self, sentence: str) -> None:
        self._notices.refused.emit(sentence)
