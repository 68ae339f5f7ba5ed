"""Genes on the command line: what each animal carries, and cards that are out of date."""

from collections.abc import Iterable, Iterator
from typing import Any

from keeper.actions.gene_cards import CardOutOfDate, cards_out_of_date
from keeper.actions.gene_odds import HouseGenes, house_genes
from keeper.actions.gene_page import GenesOfAnimal, genes_of
from keeper.actions.keeping import Keeping
from keeper.husbandry.now import AnimalNow
from keeper.language import tr
from keeper.reports.figures import day, plain
from keeper.store import reading

Told = tuple[AnimalNow, GenesOfAnimal]


def genes_document(keeping: Keeping, only: AnimalNow | None) -> dict[str, Any]:
    """Animals that carry something, by code, or the one that is asked about; and their cards."""
    house = house_genes(keeping)
    told = [*_told(keeping, house, only)]
    cards = [
        card
        for card in cards_out_of_date(keeping, house)
        if only is None or card.animal.animal == only.animal
    ]
    return {
        "on": house.on.isoformat(),
        "animals": [_animal(row, genes) for row, genes in told],
        "cards_out_of_date": [_card(card) for card in cards],
    }


def genes_lines(document: dict[str, Any]) -> Iterator[str]:
    """The document as text: an animal and gene a line, then the cards."""
    for animal in document["animals"]:
        for gene in animal["genes"]:
            yield f"{animal['animal']}  {gene['gene']}: {gene['word']}  {gene['because']}".rstrip()
        for words in (*animal["contradictions"], *animal["parents"]):
            yield f"{animal['animal']}  {words}"
        if not animal["genes"]:
            yield f"{animal['animal']}  {animal['inbreeding']}"
    if document["cards_out_of_date"]:
        yield plain(tr("Cards that are out of date:"))
    for card in document["cards_out_of_date"]:
        before = card["before"] or plain(tr("not told"))
        yield f"{card['animal']}  {card['gene']}: {before} → {card['after']}  {card['told']}"


def _told(keeping: Keeping, house: HouseGenes, only: AnimalNow | None) -> Iterator[Told]:
    rows: Iterable[AnimalNow] = [only] if only else reading.board(keeping.book)
    for row in sorted(rows, key=lambda each: each.code):
        genes = genes_of(house, row.animal)
        if genes is not None and (only is not None or genes.says_something):
            yield row, genes


def _animal(row: AnimalNow, told: GenesOfAnimal) -> dict[str, Any]:
    return {
        "animal": row.code,
        "status": row.status.value,
        "genes": [
            {
                "gene": each.gene,
                "word": plain(each.word),
                "none": _odds(each.odds, 0),
                "one": _odds(each.odds, 1),
                "two": _odds(each.odds, 2),
                "because": plain(each.because),
            }
            for each in told.genes
        ],
        "not_carried": list(told.clear),
        "contradictions": [plain(each) for each in told.contradictions],
        "parents": [plain(each) for each in told.parents],
        "f": round(told.f, 6),
        "inbreeding": plain(told.inbreeding),
    }


def _odds(odds: tuple[float, float, float] | None, copies: int) -> float | None:
    return None if odds is None else round(odds[copies], 6)


def _card(card: CardOutOfDate) -> dict[str, Any]:
    told = tr(
        "sold {left}; changed {day} by {entry}",
        left=day(card.left_on),
        day=day(card.changed_on),
        entry=card.changed_by,
    )
    return {
        "animal": card.animal.code,
        "left_on": card.left_on.isoformat(),
        "gene": card.gene,
        "before": plain(card.before) or None,
        "after": plain(card.after),
        "changed_on": card.changed_on.isoformat(),
        "changed_by": plain(card.changed_by),
        "told": plain(told),
    }
