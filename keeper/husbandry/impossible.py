"""Figures that no entry can hold, each refused in a sentence of its own."""

from keeper.language import tr, tr_noop

PREY_G = tr_noop("grams of prey must be more than 0 g, got {value!r}")
ITEMS = tr_noop("the number of items must be more than 0 items, got {value!r}")
WEIGHT = tr_noop("a weight must be more than 0 g, got {value!r}")
LENGTH = tr_noop("a length must be more than 0 cm, got {value!r}")
SCORE = tr_noop("a body score lies between 1 and 5, got {value!r}")
DOSE_DAYS = tr_noop("a dose is due each 1 to 365 days, got {value!r}")
DOSES_A_DAY = tr_noop("a medicine is given 1 to 12 times a day, got {value!r}")
EGGS = tr_noop("the number of eggs must be more than 0, got {value!r}")
BAG_ITEMS = tr_noop("a bag holds 0 items or more, got {value!r}")
HET_PERCENT = tr_noop("a possible het is more than 0 % and less than 100 %, got {value!r}")
COLOUR_SCORE = tr_noop("a score of colour lies between 1 and 10, got {value!r}")


def refuse_unless_positive(told: str, value: float | None) -> None:
    """Raises ValueError where *value* is known and is none above 0; told: with what sentence."""
    if value is not None and not 0 < value < float("inf"):
        raise impossible(told, value)


def impossible(told: str, value: object) -> ValueError:
    """The error for *value*, in the sentence *told*.

    >>> impossible(SCORE, 7).args
    ('a body score lies between 1 and 5, got 7',)
    """
    return ValueError(tr(told, value=value))
