"""Entries of genes and of colour in a few words."""

from typing import Any

from keeper.husbandry.genes import GeneNamed, GeneRead, GeneTold, LookScored
from keeper.language import tr
from keeper.reports.figures import number
from keeper.reports.gene_figures import percent_down
from keeper.reports.words import word


def gene_words(event: Any) -> str:
    """*event* without its note; nothing where it is of another kind."""
    match event:
        case GeneRead():
            return tr("{gene}: {told}", gene=event.gene, told=told_words(event))
        case LookScored():
            return tr("{trait} {score} of 10", trait=event.trait, score=_score(event.score))
        case GeneNamed():
            return _named(event)
    return ""


def told_words(event: GeneRead) -> str:
    """What was seen or said of the gene.

    >>> from keeper.husbandry.when import on_day
    >>> from datetime import date
    >>> told = GeneRead(animal=1, happened=on_day(date(2026, 3, 1)), gene="chalk",
    ...                 told=GeneTold.POSSIBLE, percent=66)
    >>> told_words(told).replace("\u00a0", " ")
    '66 % het'
    """
    if event.told is GeneTold.POSSIBLE and event.percent is not None:
        return tr("{share} het", share=percent_down(event.percent))
    return word(event.told)


def _score(score: float) -> str:
    return number(score, 0 if score == int(score) else 1)


def _named(event: GeneNamed) -> str:
    how = word(event.inheritance)
    if event.hidden_by:
        told = {"gene": event.gene, "how": how, "other": event.hidden_by}
        return tr("gene {gene}, {how}, hidden by {other}", **told)
    return tr("gene {gene}, {how}", gene=event.gene, how=how)
