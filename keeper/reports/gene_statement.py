"""The statement of genes on paper: odds with the day they stand for, and what they rest on."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date

from keeper.language import tr
from keeper.reports.figures import day, plain
from keeper.reports.paper_parts import Heading, Part, Words

UNTESTED = tr(
    "Reckoned from all that is written of its kin. An animal of which nothing is written counts as"
    " not carrying a gene: untested, not proved clear. Genes are those that this house has named."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class GeneStatement:
    """lines: gene, word and reason. clear: names of genes not carried as far as is known.

    doubts: a sire in doubt, words that cannot all be true. inbreeding: empty where it is not close.
    """

    on: date
    lines: Sequence[tuple[str, str, str]] = ()
    clear: Sequence[str] = ()
    doubts: Sequence[str] = ()
    inbreeding: str = ""


def statement_parts(told: GeneStatement) -> Iterator[Part]:
    """Heading and paragraphs."""
    yield Heading(words=plain(tr("Genes, as reckoned on {day}", day=day(told.on))))
    for gene, word, why in told.lines:
        line = tr("{gene}: {word}. {why}", gene=gene, word=word, why=why)
        yield Words(words=plain(line.strip()))
    if told.clear:
        names = ", ".join(told.clear)
        yield Words(words=plain(tr("Not carried, as far as is known: {names}.", names=names)))
    for doubt in told.doubts:
        yield Words(words=plain(doubt), bold=True)
    if told.inbreeding:
        yield Words(words=plain(told.inbreeding))
    yield Words(words=UNTESTED)
