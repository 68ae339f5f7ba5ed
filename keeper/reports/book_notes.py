"""Notes that the program itself writes into the book, and the words in which they are read.

They lie in the book in one form, whatever the keeper's language and units; what a keeper typed
is read as it was typed.
"""

import re

from keeper.husbandry.reasons import Figure
from keeper.language import tr
from keeper.reports.figures import grams

_BAG = re.compile(r"bag of (\d+(?:\.\d+)?(?:e[+-]?\d+)?) g taken off")
_DISMISSED = re.compile(r"put aside without action (\d+) of (\d+) times")


def bag_note(bag_g: float) -> str:
    """The note of a weighing from which a bag was taken off.

    >>> bag_note(12.5), note_words(bag_note(12.5)).replace("\\u00a0", " ")
    ('bag of 12.5 g taken off', 'bag of 12.5 g taken off')
    """
    return f"bag of {bag_g:g} g taken off"


def dismissed_reason(times: Figure, answers: Figure) -> str:
    """The reason of a figure that stands in place of one whose lines were always put aside."""
    return f"put aside without action {times} of {answers} times"


def note_words(written: str) -> str:
    """A note or reason of the book as a keeper reads it."""
    if bag := _BAG.fullmatch(written):
        return tr("bag of {weight} taken off", weight=grams(float(bag[1])))
    return _DISMISSED.sub(_dismissed_words, written)


def _dismissed_words(found: re.Match[str]) -> str:
    """It may stand behind words that say whose figure it is."""
    times, answers = found.groups()
    return tr("put aside without action {times} of {answers} times", times=times, answers=answers)
