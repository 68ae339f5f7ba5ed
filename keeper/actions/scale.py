"""How finely the scale of this station reads, kept in the book, and where that is too coarse.

A step of 1 g is half a gram either way: at a neonate of 3.5 g that is 14 % of it.
"""

import re

from keeper.actions.keeping import Keeping, Written
from keeper.actions.noting import note
from keeper.husbandry.events import Setting
from keeper.husbandry.reasons import Reason
from keeper.husbandry.when import at_instant
from keeper.language import tr
from keeper.reports.figures import grams
from keeper.reports.words import because_text
from keeper.store import reading

VERB = "set scale"
COARSE = "scale too coarse"
_STEP = re.compile(r"\d{0,3}([.,]\d{1,3})?")
_LEAST_G, _MOST_G = 0.001, 100.0


class Scale:
    """The scale of this station. step_g: the grams it reads in steps of; None: nobody said."""

    def __init__(self, keeping: Keeping) -> None:
        self._keeping = keeping
        self._was_told = False
        self.step_g = scale_step_g(keeping)

    def set(self, text: str) -> Written:
        """From now on it reads in steps of *text* grams.

        Raises:
            ValueError: no step that a scale has, in one sentence; nothing is written.
        """
        step_g = scale_step_typed(text)
        key, now = _key(self._keeping), at_instant(self._keeping.now())
        what = tr("the scale reads in steps of {step}", step=grams(step_g))
        setting = Setting(happened=now, key=key, value=f"{step_g:g}")
        written = note(self._keeping, VERB, setting, what=what)
        self.step_g, self._was_told = step_g, False
        return written

    def told(self, what: str, because: tuple[Reason, ...]) -> str:
        """*what*, and once that the scale is too coarse where a verdict's reasons say so."""
        coarse = because_text(reason for reason in because if reason.why == COARSE)
        if not coarse or self._was_told:
            return what
        self._was_told = True
        return f"{what}. {coarse}"


def scale_step_g(keeping: Keeping) -> float | None:
    """The step in grams that this station's scale reads in; None: nobody said."""
    told = reading.settings(keeping.book).get(_key(keeping), "")
    return float(told) if told else None


def scale_step_typed(text: str) -> float:
    """Grams of a scale's step, such as 0.1. Raises ValueError."""
    told = text.strip()
    step_g = float(told.replace(",", ".")) if told.strip(".,") and _STEP.fullmatch(told) else 0.0
    if not _LEAST_G <= step_g <= _MOST_G:
        raise ValueError(
            tr("{text!r} is no step of a scale; grams such as 0.1 or 1 are right.", text=text)
        )
    return step_g


def _key(keeping: Keeping) -> str:
    return f"scale step, {keeping.book.station}"
