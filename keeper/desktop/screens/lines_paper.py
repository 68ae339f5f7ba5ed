"""The papers of the place of lines: a gene's sheet, the list of cards, a colour's sheet."""

from __future__ import annotations

from collections.abc import Sequence

from keeper.actions.gene_cards import CardOutOfDate
from keeper.actions.keeping import Keeping
from keeper.actions.lines_desk import ColourLine, GeneAnimal, GeneDetail, Line
from keeper.desktop.paper.flow import document_pages
from keeper.desktop.paper.printing import Sheets, printed_words
from keeper.desktop.screens.lines_words import animal_face, line_face, paragraphs, proof_face
from keeper.language import tr
from keeper.reports.figures import day
from keeper.reports.lines_sheet import CardTold, CarrierTold, GeneTold, cards_sheet, gene_sheet


def paper_of(
    keeping: Keeping,
    row: Line | None,
    detail: GeneDetail | None,
    cards: Sequence[CardOutOfDate] | None = None,
) -> Sheets:
    """The sheet of *row*, or the list of *cards*; asks no widget, so that any thread may make it.

    Raises:
        LookupError: nothing is read yet.
    """
    if isinstance(row, ColourLine):
        return _colour(keeping, row)
    if cards is not None:
        return _cards(keeping, cards)
    if detail is None:
        raise LookupError(tr("Nothing is read yet that could be printed; a moment."))
    return _gene(keeping, detail)


def _gene(keeping: Keeping, detail: GeneDetail) -> Sheets:
    face, proofs = line_face(detail.line), proof_face(detail.proofs)
    told = GeneTold(
        gene=face.name,
        kind=face.under,
        animals=[_carrier(each) for each in detail.animals],
        clear=detail.clear,
        sections=[(each.head, each.words) for each in paragraphs(detail)],
        proof_over=proofs.over,
        proof_heads=proofs.heads,
        proof_rows=proofs.rows,
    )
    document = gene_sheet(told, printed_words(keeping))
    stem = f"gene-{face.name}-{keeping.today.isoformat()}"
    return Sheets(title=document.title, stem=stem, pages=document_pages(document))


def _carrier(animal: GeneAnimal) -> CarrierTold:
    place, name, sex, word = animal_face(animal).cells
    return CarrierTold(place=place, name=name, sex=sex, word=word, reason=animal.reason)


def _cards(keeping: Keeping, cards: Sequence[CardOutOfDate]) -> Sheets:
    document = cards_sheet([_card(each) for each in cards], printed_words(keeping))
    stem = f"cards-{keeping.today.isoformat()}"
    return Sheets(title=document.title, stem=stem, pages=document_pages(document))


def _card(card: CardOutOfDate) -> CardTold:
    changed = tr("{day}: {entry}", day=day(card.changed_on), entry=card.changed_by)
    return CardTold(
        left_on=card.left_on,
        name=card.animal.called,
        gene=card.gene,
        before=card.before or tr("nothing told"),
        after=card.after,
        changed=changed,
    )


def _colour(keeping: Keeping, line: ColourLine) -> Sheets:
    from keeper.desktop.paper.colour_chart import colour_artist
    from keeper.reports.colour_sheet import GENERATIONS, colour_sheet

    document = colour_sheet(line.facts, printed_words(keeping))
    pages = document_pages(document, {GENERATIONS: colour_artist(line.facts)})
    stem = f"colour-{line.choice.trait}-{keeping.today.isoformat()}"
    return Sheets(title=document.title, stem=stem, pages=pages)
