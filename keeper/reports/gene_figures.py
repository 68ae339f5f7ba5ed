"""Likelihoods of genes: those of a het as the trade writes them, others to the nearest."""

from math import floor

from keeper.language import tr
from keeper.reports.figures import GAP, number

_SLACK = 1e-9
"""Two thirds of a hundred times three may come out a hair under what they are."""


def share_words(share: float) -> str:
    """A share of 1 that is neither none nor all, rounded down: 2 in 3 are *66 % het*.

    >>> from keeper.reports.figures import plain
    >>> [plain(share_words(each)) for each in (2 / 3, 1 / 3, 0.5, 0.999, 0.004)]
    ['66 %', '33 %', '50 %', '99 %', 'under 1 %']
    """
    whole = floor(100 * share + _SLACK)
    if whole < 1:
        return tr("under {share}", share=percent_down(1))
    return percent_down(whole)


def chance_words(chance: float) -> str:
    """A likelihood that is neither none nor all, to the nearest whole per cent.

    >>> from keeper.reports.figures import plain
    >>> [plain(chance_words(each)) for each in (0.8999, 0.0588, 0.999, 0.004)]
    ['90 %', '6 %', '99 %', 'under 1 %']
    """
    if chance < 0.01:
        return share_words(chance)
    return percent_down(min(99, round(100 * chance)))


def percent_down(value: float) -> str:
    """Whole per cent.

    >>> from keeper.reports.figures import plain
    >>> plain(percent_down(66.7))
    '66 %'
    """
    return f"{number(floor(value + _SLACK))}{GAP}%"
