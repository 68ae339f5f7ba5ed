"""Genes on paper: who of the room shows or may carry one, and cards that say something else now."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from keeper.language import tr
from keeper.reports.figures import day, plain
from keeper.reports.paper_parts import Document, Heading, Table, Words

ODDS_NOTE = tr(
    "Odds over the whole pedigree as it is written on the day of printing, never a promise. A"
    " founder of which nothing is said counts as clear."
)
CARDS_NOTE = tr(
    "What a card said holds as it was said on its day. These animals left with other odds than"
    " would be told today; it is the keeper’s to tell their buyers."
)
NO_CARDS = tr("Every card given out still says what would be said today.")


PROOF_SHARES = (0.26, 0.2, 0.1, 0.1, 0.1, 0.1, 0.14)


@dataclass(frozen=True, slots=True, kw_only=True)
class CarrierTold:
    """One animal of the room in words."""

    place: str
    name: str
    sex: str
    word: str
    reason: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CardTold:
    """One card that says something else by now, in words. left_on: when the animal left."""

    left_on: date
    name: str
    gene: str
    before: str
    after: str
    changed: str


@dataclass(frozen=True, slots=True, kw_only=True)
class GeneTold:
    """All that the sheet of one gene says. sections: headings, each with whole sentences.

    proof_over, proof_heads, proof_rows: the table of what proving out costs; no rows: none.
    """

    gene: str
    kind: str
    animals: Sequence[CarrierTold]
    clear: int
    sections: Sequence[tuple[str, str]]
    proof_over: str = ""
    proof_heads: tuple[str, ...] = ()
    proof_rows: tuple[tuple[str, ...], ...] = ()


def gene_sheet(told: GeneTold, printed: str) -> Document:
    """The animals of the room by how surely they carry it, and what stands beside them."""
    rows = tuple(
        (each.place, each.name, each.sex, each.word, plain(each.reason)) for each in told.animals
    )
    heads = (
        tr("place"),
        tr("animal"),
        tr("sex"),
        tr("what may be told of it"),
        tr("because", sense="head of a column"),
    )
    none = tr("No animal in the room shows it or may carry it.")
    parts: list[Heading | Words | Table] = [
        Table(
            heads=heads,
            rows=tuple(tuple(plain(cell) for cell in row) for row in rows),
            shares=(0.09, 0.17, 0.1, 0.16, 0.48),
            empty=none,
            again=True,
        ),
        Words(words=tr("Not listed, as none is known to carry it: {count}.", count=told.clear)),
    ]
    if told.proof_rows:
        proofs = tuple(tuple(plain(cell) for cell in row) for row in told.proof_rows)
        table = Table(heads=told.proof_heads, rows=proofs, shares=PROOF_SHARES, again=True)
        parts += [Heading(words=told.proof_over), table]
    for head, words in told.sections:
        parts += [Heading(words=head), Words(words=plain(words))]
    return Document(
        title=tr("Gene {gene}", gene=told.gene),
        aside=told.kind,
        printed=printed,
        parts=(*parts, Words(words=ODDS_NOTE)),
    )


def cards_sheet(cards: Sequence[CardTold], printed: str) -> Document:
    """Cards given out that say something else by now, the newest change first."""
    heads = (
        tr("gone", sense="a day"),
        tr("animal"),
        tr("gene"),
        tr("told then"),
        tr("told now"),
        tr("because", sense="head of a column"),
    )
    rows = tuple(
        tuple(
            plain(cell) for cell in (day(c.left_on), c.name, c.gene, c.before, c.after, c.changed)
        )
        for c in cards
    )
    shares = (0.14, 0.15, 0.12, 0.13, 0.13, 0.33)
    table = Table(heads=heads, rows=rows, shares=shares, empty=NO_CARDS, again=True)
    return Document(
        title=tr("Cards out of date"),
        printed=printed,
        parts=(table, Words(words=CARDS_NOTE)),
    )
