"""What a key of a round asks for, and what may still be asked before it is known."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import Enum, auto
from typing import Protocol

from keeper.actions.learned import Question
from keeper.actions.past_nights import Correction
from keeper.actions.round_entries import OtherResult
from keeper.actions.tubs import Prey
from keeper.husbandry.events import HoldKind, Result


class Verb(Enum):
    """What the keeper asked for."""

    RECORD = auto()
    FOUND = auto()
    SWEEP = auto()
    GO_TO = auto()
    PASS_ON = auto()
    MARK = auto()
    REGURGITATED = auto()
    STEP_BACK = auto()
    TAKE_BACK = auto()
    PREY = auto()
    ALL_THE_SAME = auto()
    OTHER_TUB = auto()
    TRY_STEP = auto()
    LAWFUL = auto()
    LEARN = auto()
    ONE_OF = auto()
    ASK_LEARNED = auto()
    BEGIN = auto()
    CHECK = auto()
    LOOK_AGAIN = auto()
    ASK_CLOSE = auto()
    CLOSE = auto()
    GIVE_UP = auto()


@dataclass(frozen=True, slots=True, kw_only=True)
class Deed:
    """Something asked for, with what it needs. line 0 is the end of the walk.

    why: the reason, where a night that is over is put right. question: what yes answers. racks:
    where a round begins, none for the whole house.
    """

    verb: Verb
    result: Result | None = None
    withheld: HoldKind | None = None
    gone: bool = False
    line: int = 0
    digit: str = ""
    prey: Prey | None = None
    others: tuple[OtherResult, ...] = ()
    why: Correction | None = None
    question: Question | None = None
    yes: bool = False
    racks: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Refused:
    """A key that cannot be taken, in one sentence; *then* goes on asking."""

    sentence: str
    then: Asking


class Asking(Protocol):
    """Keys being typed. ``word`` and ``advice`` say on the panel what is waited for."""

    @property
    def legend(self) -> Mapping[str, str]: ...

    @property
    def word(self) -> str: ...

    @property
    def advice(self) -> str: ...

    def press(self, key: str) -> Step: ...


Step = Deed | Refused | Asking | None
"""None: a dead key."""

GIVE_UP = Deed(verb=Verb.GIVE_UP)
