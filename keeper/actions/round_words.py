"""What a walk of the round says: of what was written, and of what cannot be."""

from keeper.language import tr

NO_ANIMAL = tr("No animal stands in a tub; take in your records first.")
NOTHING_PLANNED = tr("Nothing is planned in the rest of this row; walk it tub by tub.")
NO_ITEM = tr("Nothing was offered in this tub, so there is no item to pass on.")
NOTHING_LEFT = tr("Nothing of this round is left to take back.")
NO_TUB = tr("No tub waits; 9 and a line number goes to one.")
REGURGITATED = tr("regurgitation found")


def no_line(line: int, last: int) -> str:
    return tr("There is no line {line} tonight; lines run 1 to {last}.", line=line, last=last)


def not_in_row(line: int) -> str:
    return tr("Line {line} is not in the rest of this row.", line=line)


def swept_words(count: int, others: int, *, checking: bool) -> str:
    """How many of a row were settled alike, and how many were not.

    >>> swept_words(3, 1, checking=False)
    '3 as planned, 1 not'
    """
    if checking:
        return tr("{count} gone, {others} not", count=count, others=others)
    return tr("{count} as planned, {others} not", count=count, others=others)


def found_words(*, gone: bool) -> str:
    return tr("gone", sense="prey") if gone else tr("still there, removed")


def closed_words(count: int) -> str:
    return tr("round closed, {count} not reached", count=count)
