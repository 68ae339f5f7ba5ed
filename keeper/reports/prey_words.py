"""A prey as it is said at the tub: written "mouse small pinky", said "small pinky mouse"."""

from functools import reduce

from keeper.language import tr
from keeper.reports.state_words import WORDS

KINDS = ("mouse", "rat")
"""Kinds of prey whose grades the profiles list. Other prey is said as the keeper wrote it."""

AND = " and "
"""Between the kinds of a meal of several, as a plan writes it."""


def prey_words(written: str) -> str:
    """Grade before kind, the one order in which prey is shown anywhere.

    >>> prey_words("mouse small pinky"), prey_words("mouse"), prey_words("day-old chick")
    ('small pinky mouse', 'mouse', 'day-old chick')
    >>> prey_words("rat fuzzy and mouse hopper")
    'fuzzy rat and hopper mouse'
    """
    said = [_one(part) for part in written.split(AND)]
    return reduce(lambda one, other: tr("{one} and {other}", one=one, other=other), said)


def grade_words(grade: str) -> str:
    """A grade of prey alone."""
    return WORDS["grade"].get(grade, grade)


def kind_words(kind: str) -> str:
    """A kind of prey alone."""
    return WORDS["prey kind"].get(kind, kind)


def _one(written: str) -> str:
    kind, _, grade = written.partition(" ")
    if kind in KINDS and not grade:
        return WORDS["prey kind"][kind]
    if kind not in KINDS or not grade.replace(" ", "").replace("-", "").isalpha():
        return written
    return tr(
        "{grade} {kind}",
        sense="prey",
        grade=grade_words(grade),
        kind=WORDS["prey kind"][kind],
    )
