"""A reading being typed: its digits, a doubt asked about, and what is written in the end."""

from __future__ import annotations

from keeper.actions.heat_board import doubt, typed_celsius, write_heat
from keeper.actions.keeping import Keeping, Written
from keeper.husbandry.events import Zone
from keeper.language import tr
from keeper.reports.state_words import WORDS
from keeper.reports.words import token_words

GUN = "gun"
"""What readings are typed from unless something else is named."""

_MOST_DIGITS = 6


def read_with_typed(text: str) -> str:
    """What a reading is taken with, as the book has it; a word of the language is its token."""
    tokens = {word.casefold(): token for token, word in WORDS["read with"].items()}
    return tokens.get(text.casefold(), text) or GUN


class HeatTyping:
    """Digits as they come. asked: the question that stands; read_with: what was read from."""

    def __init__(self) -> None:
        self.typed = self.asked = ""
        self.read_with = GUN
        self._doubted: float | None = None

    @property
    def device(self) -> str:
        """What readings are typed from, in the keeper's language."""
        return token_words("read with", self.read_with)

    def add(self, key: str) -> None:
        """Add a digit or the point; a second point adds nothing."""
        if key != "." or "." not in self.typed:
            self.typed, self.asked = (self.typed + key)[:_MOST_DIGITS], ""

    def rub_out(self) -> None:
        self.typed, self.asked = self.typed[:-1], ""

    def forget(self) -> None:
        """Forget what was typed and what was asked about it."""
        self.typed = self.asked = ""
        self._doubted = None

    def write(self, keeping: Keeping, place: str, zone: Zone) -> Written | None:
        """Write what is typed; None where it is unusual and has to be typed again.

        Raises:
            ValueError: no temperature of a room; what was typed is forgotten.
        """
        typed, doubted = self.typed, self._doubted
        self.forget()
        temp_c = typed_celsius(typed)
        doubts = doubt(temp_c)
        if doubts is not None and temp_c != doubted:
            self._doubted, self.asked = temp_c, tr("{doubt} Type it again.", doubt=doubts)
            return None
        return write_heat(keeping, place, zone, temp_c, self.read_with)
