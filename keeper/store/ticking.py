"""How far a long piece of work is, told now and then; whoever hears it may call it off."""

from collections.abc import Callable, Iterable, Iterator
from enum import Enum
from typing import TypeVar

T = TypeVar("T")
_OFTEN = 500
"""Lines between two tellings: a hundredth of a second of work or so."""


class Step(Enum):
    """What is being done."""

    READING = "reading"
    CHECKING = "checking"
    COMPARING = "comparing"
    BACKING_UP = "backing up"
    WRITING = "writing"


Tick = Callable[[Step, int, int], None]
"""Hears the step, how many lines of it are done, and of how many; 0 of 0: they are not counted.

What it raises ends the work, of which nothing stays.
"""


def silent(step: Step, done: int, of: int) -> None:
    """Hears nothing."""


class Counting:
    """Counts the lines of one step and tells of them now and then."""

    def __init__(self, tick: Tick, step: Step, of: int) -> None:
        self._tick, self._step, self._of = tick, step, of
        self._done = self._told = 0
        tick(step, 0, of)

    def more(self, lines: int = 1) -> None:
        """So many more are done."""
        self._done += lines
        if self._done - self._told >= _OFTEN:
            self._told = self._done
            self._tick(self._step, self._done, self._of)

    def each(self, things: Iterable[T]) -> Iterator[T]:
        """The same things, one line each."""
        for thing in things:
            yield thing
            self.more()
