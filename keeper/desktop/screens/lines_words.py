"""Genes put into faces: rows, animals, pairs, paragraphs. Nothing is decided here."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from math import floor
from typing import Any

from keeper.actions.gene_cards import CardOutOfDate
from keeper.actions.lines_desk import (
    LEFT_AFTER,
    GeneAnimal,
    GeneDetail,
    GeneLine,
    Lines,
    LookAlike,
    PairTried,
    Proof,
    Standing,
)
from keeper.desktop.widgets.clutch_panel import Paragraph
from keeper.desktop.widgets.line_list import LineFace
from keeper.desktop.widgets.odds_list import OddsFace
from keeper.desktop.widgets.pair_sheet import LookBar, PairFace
from keeper.desktop.widgets.proof_table import ProofFace
from keeper.desktop.widgets.tile import FACES, TileState
from keeper.husbandry.genes import Inheritance
from keeper.husbandry.now import AnimalNow
from keeper.language import tr, tr_noop, tr_table
from keeper.reports.figures import GAP, UNKNOWN, counted, day, number, percent
from keeper.reports.gene_figures import chance_words
from keeper.reports.words import word

TILES = {
    Standing.SUPER: TileState.SUPER,
    Standing.SHOWS: TileState.SHOWS,
    Standing.CARRIES: TileState.CARRIES,
    Standing.MAY: TileState.MAY_CARRY,
    Standing.CONTRADICTED: TileState.CONTRADICTED,
    Standing.UNTOLD: TileState.GATE_CANNOT_TELL,
    Standing.CLEAR: TileState.CLEAR,
}
NO_LINES = tr(
    "Nothing is bred for in this book yet. Name the first gene with N, such as chalk recessive, or"
    " score a look of an animal on its page, and it will stand here."
)
NO_CARRIERS = tr("No animal in the room shows it or may carry it; K says what one shows.")
CARDS_READING = tr("The cards given out are still being read.")
NO_CARDS = tr("Every card given out still says what would be said today.")
ANIMAL_HEADS = (tr("place"), tr("animal"), tr("sex"), tr("what may be told of it"))
CARD_HEADS = (tr("gone", sense="a day"), tr("animal"), tr("gene"), tr("told then, told now"))
NOTE = tr(
    "Odds over the whole pedigree as it is written, never a promise: a card says them with their"
    " day. A founder of which nothing is said counts as clear. Colour is scored, and never het."
)

_genes, _lines = counted("gene", "genes"), counted("line scored", "lines scored")
_cards = counted("card out of date", "cards out of date")
_contradictions = counted("contradiction", "contradictions")
_young = counted("normal-looking young", "normal-looking young")
_generations = counted("generation", "generations")

_SEXES = tr_table({"female": "female", "male": "male", "unknown": UNKNOWN})
_HOW = {
    Inheritance.INCOMPLETE: tr(
        "One copy shows, and two show otherwise: the super form. An animal that looks normal"
        " carries none; there is no het."
    ),
    Inheritance.DOMINANT: tr(
        "One copy shows as two do. Whether a visual carries one or two only its young tell; an"
        " animal that looks normal carries none."
    ),
}
_FIGURE = re.compile(r"\d+")
_SLACK = 1e-9  # two in three are told as 66 per cent, and never as 65


def line_face(line: GeneLine) -> LineFace:
    """A gene as a row of the list."""
    named, counts = line.named, line.counts
    how = tr("{species}, {how}", species=line.species, how=word(named.inheritance))
    shown = counts[Standing.SHOWS] + counts[Standing.SUPER]
    figures = (
        (str(shown), tr("show it")),
        (str(counts[Standing.CARRIES]), tr("surely carry")),
        (_may(counts), tr("may carry")),
    )
    clashing = line.contradictions
    state = TileState.CONTRADICTED if clashing else TileState.GENE
    under = how
    if clashing:
        told = {"species": line.species, "contradictions": _contradictions(clashing)}
        under = tr("{species}; {contradictions}", **told)
    said = "; ".join(f"{value} {what}" for value, what in figures)
    told = {"name": named.gene, "how": under, "figures": said}
    return LineFace(
        state=state,
        name=named.gene,
        under=under,
        figures=figures,
        said=tr("{name}, {how}: {figures}", **told),
    )


def _may(counts: Mapping[Standing, int]) -> str:
    """How many may carry it; those that cannot be told beside them."""
    untold = counts[Standing.UNTOLD] + counts[Standing.CONTRADICTED]
    may = counts[Standing.MAY]
    return tr("{count}, {untold} ?", count=may, untold=untold) if untold else str(may)


def head_words(lines: Lines) -> tuple[list[tuple[str, bool]], list[str]]:
    """How much is bred for, and how many cards are out of date."""
    genes = sum(isinstance(row, GeneLine) for row in lines.rows)
    parts = [(_genes(genes), True), (_lines(len(lines.rows) - genes), False)]
    return parts, [_cards(len(lines.cards))] if lines.cards else []


def animal_face(animal: GeneAnimal, seat: str = "") -> OddsFace:
    """An animal of the room; *seat*: what it is in the pair that is tried."""
    row, state = animal.row, TILES[animal.standing]
    told = animal.word or FACES[state].words
    cells = (row.place or UNKNOWN, row.called, _SEXES[row.sex.value], told)
    said = ", ".join(filter(None, (*cells, seat)))
    return OddsFace(
        state=state,
        text=_tile_text(animal),
        cells=cells,
        reason=animal.reason,
        said=f"{said}. {animal.reason}".strip(),
        seat=seat,
    )


def _tile_text(animal: GeneAnimal) -> str | None:
    """How likely it carries at least one copy stands in the tile, where that is in doubt."""
    if animal.standing is not Standing.MAY or animal.odds is None:
        return None
    return str(floor(100 * animal.odds.carries + _SLACK)) if animal.odds.carries >= 0.01 else "<1"


def card_face(card: CardOutOfDate, lines: Lines) -> OddsFace:
    """A card that says something else by now."""
    gone = day(card.left_on, on=lines.on)
    before = card.before or tr("nothing told")
    told = tr("{before} → {after}", before=before, after=card.after)
    cells = (gone, card.animal.called, card.gene, told)
    because = tr("{day}: {entry}", day=day(card.changed_on, on=lines.on), entry=card.changed_by)
    found = _FIGURE.search(card.after)
    return OddsFace(
        state=TileState.MAY_CARRY,
        text=found.group() if found else "→",
        cells=cells,
        reason=because,
        said=f"{', '.join(cells)}. {because}",
    )


def pair_face(pair: PairTried | None, detail: GeneDetail, *, tried: bool) -> PairFace:
    """What the young may look like; *tried*: the keeper chose the two."""
    if pair is None:
        return PairFace(head=tr("a pair, tried"), sentences=(tr("Space takes two animals."),))
    aside = tr("tried with Space") if tried else tr("tells most; Space tries others")
    return PairFace(
        head=tr("{dam} × {sire}", dam=pair.dam.called, sire=pair.sire.called),
        aside=aside,
        bars=tuple(_bars(pair)),
        sentences=(_at_least(pair, detail.line), _inbred(pair), *_by_whom(pair)),
    )


def _bars(pair: PairTried) -> Iterator[LookBar]:
    for look in pair.expected.looks:
        yield LookBar(
            share=look.share,
            figure=_share(look.share),
            words=look.words,
            carries=", ".join(look.carries),
            shows=bool(look.shows),
        )


def _at_least(pair: PairTried, line: GeneLine) -> str:
    gene = line.named.gene
    if not any(odds for _, odds in pair.at_least):
        return tr("None of their young would show {gene}.", gene=gene)
    told = ", ".join(
        tr("{share} with {eggs} eggs", eggs=eggs, share=_share(odds))
        for eggs, odds in pair.at_least
    )
    return tr("One at least that shows {gene}: {told}.", gene=gene, told=told)


def _share(odds: float) -> str:
    """A likelihood of a gene as the house writes it, the sure ones too."""
    return percent(100 * odds) if odds in (0.0, 1.0) else chance_words(odds)


def _inbred(pair: PairTried) -> str:
    f, depth = pair.expected.f, pair.expected.depth
    told = {"f": f"{number(100 * f, 2)}{GAP}%", "known": _known(depth.full)}
    match pair.expected.advice:
        case "reason":
            return tr(
                "Inbreeding of the young {f}, {known}: a quarter or more wants a reason; the keeper"
                " decides.",
                **told,
            )
        case "look":
            return tr(
                "Inbreeding of the young {f}, {known}: an eighth or more wants a second look; the"
                " keeper decides.",
                **told,
            )
    return tr("Inbreeding of the young {f}, {known}.", **told)


def _by_whom(pair: PairTried) -> Iterator[str]:
    """Through whom they are kin."""
    if pair.shared:
        names = ", ".join(pair.shared)
        told = {"dam": pair.dam.called, "sire": pair.sire.called, "names": names}
        yield tr("{dam} and {sire} are kin through {names}.", **told)


def _known(full: int) -> str:
    if full < 1:
        return tr("ancestors not known, which is not unrelated")
    return tr("{generations} of ancestors known in full", generations=_generations(full))


def paragraphs(detail: GeneDetail) -> Iterator[Paragraph]:
    """What does not fit, look-alikes, what proves most, cards; the table has the proving too."""
    if detail.contradictions:
        yield Paragraph(head=tr("does not fit"), words=" ".join(detail.contradictions))
    if detail.tried:
        told = " ".join(alike_words(each, detail) for each in detail.tried)
        yield Paragraph(head=tr("tried against other recessives"), words=told)
    how = detail.line.named.inheritance
    if how is Inheritance.RECESSIVE:
        yield Paragraph(head=tr("proves most"), words=_proved(detail.proofs))
    else:
        yield Paragraph(head=word(how), words=_HOW[how])
    if detail.cards:
        told = tr("{cards}; C lists them.", cards=_cards(len(detail.cards)))
        yield Paragraph(head=tr("cards given out"), words=told)


def proof_face(proofs: Sequence[Proof]) -> ProofFace:
    """What proving out costs, each possible het with the mate that tells most of it."""
    after = tuple(str(young) for young in LEFT_AFTER)
    return ProofFace(
        over=tr("what so many normal-looking young leave"),
        heads=(tr("possible het"), tr("with", sense="a mate"), *after, tr("under 5 %")),
        rows=tuple(_proof_cells(each) for each in proofs),
        said=tuple(_left_words(each) for each in proofs),
    )


def _proof_cells(proof: Proof) -> tuple[str, ...]:
    tested = tr("{animal} {word}", animal=proof.tested.called, word=proof.word)
    left = tuple(_share(left) for _, left in proof.left)
    needed = UNKNOWN if proof.needed is None else str(proof.needed)
    return (tested, proof.mate.called, *left, needed)


def _proved(proofs: Sequence[Proof]) -> str:
    if not proofs:
        return tr("Nothing to prove here: no possible het in the room has a mate that would tell.")
    return proof_words(proofs[0])


def proof_words(proof: Proof) -> str:
    """The pairing that tells most, and what one young that shows it would prove."""
    told = {"animal": proof.tested.called, "word": proof.word, "mate": proof.mate.called}
    if proof.pair.mate_is == "visual":
        return tr(
            "{animal}, {word}, with {mate}, who shows it: one young that shows it proves {animal}.",
            **told,
        )
    return tr(
        "{animal}, {word}, with {mate}, who surely carries it: one young that shows it proves"
        " {animal}.",
        **told,
    )


def _left_words(proof: Proof) -> str:
    """A row of the table in words."""
    told: dict[str, Any] = {
        "animal": proof.tested.called,
        "word": proof.word,
        "mate": proof.mate.called,
        "left": ", ".join(
            tr("{left} after {young}", left=_share(left), young=n) for n, left in proof.left
        ),
    }
    first = tr("{animal}, {word}, with {mate}: {left}", **told)
    if proof.needed is None:
        return first
    enough = tr("{young} take it under 5 %.", young=_young(proof.needed))
    return f"{first}; {enough}"


def alike_words(alike: LookAlike, detail: GeneDetail) -> str:
    """Whether the other gene of *alike* was tried against this one, and what came of it."""
    genes, gene = detail.line.genes, detail.line.named.gene
    other = alike.second if alike.first == gene else alike.first
    if not alike.crossed:
        return tr(
            "{other}: not tried; no pairing of one that shows each stands in the book.", other=other
        )
    chief = max(alike.crossed, key=lambda each: (each.sire_sure, each.normal, each.showing))
    told: dict[str, Any] = {
        "other": other,
        "dam": genes.called(chief.dam),
        "sire": genes.called(chief.sire),
        "normal": chief.normal,
        "showing": chief.showing,
    }
    return tr(_FOUND[alike.found], **told)


_FOUND = {
    "young not told": tr_noop(
        "{other}: {dam} and {sire} were paired, and nothing is told of how their young look."
    ),
    "sire in doubt": tr_noop(
        "{other}: normal-looking young of {dam}: {normal}; but {sire} may not be their sire, so"
        " nothing is settled."
    ),
    "may be one place": tr_noop(
        "{other}: every young told of {dam} and {sire} shows it ({showing}): one gene, or a parent"
        " carries both; nothing is settled."
    ),
    "two places": tr_noop(
        "{other}: {normal} young of {dam} and {sire} look normal and carry both: two genes."
    ),
}


def seat_words(animal: AnimalNow, pair: PairTried | None, taken: Sequence[int]) -> str:
    """What *animal* is in the pair that is tried."""
    if animal.animal not in taken:
        return ""
    if pair is None or len(taken) < 2:
        return tr("first of a pair", sense="of two animals")
    return tr("dam") if animal.animal == pair.dam.animal else tr("sire")
