"""What a window and the process that writes books out and joins them say to each other.

A line of JSON each. The window's lines end with the work: when they end earlier, it is called off.
"""

from datetime import datetime

import msgspec

from keeper.actions.bundle_files import Bundled
from keeper.actions.joining import Joining
from keeper.actions.keeping import Written
from keeper.reports.writing import Writing
from keeper.store.ticking import Step


class Order(msgspec.Struct, kw_only=True):
    """The first line: whose book, in whose words.

    animals: keys of those that are passed on; None for the whole book. join: read *folder* and
    compare it, instead of writing to it. take_back, put_back: the key of a join that is taken
    back or put back, and nothing else is done.
    """

    path: str
    station: str
    keeper: str
    writable: bool
    now: datetime
    writing: Writing
    folder: str
    animals: list[int] | None = None
    join: bool = False
    take_back: int | None = None
    put_back: int | None = None


class JoinNow(msgspec.Struct, kw_only=True):
    """A later line: the keeper agreed to what was looked at, at this instant."""

    now: datetime


class Told(msgspec.Struct, tag=True):
    """How far it is."""

    step: Step
    done: int
    of: int


class Looked(msgspec.Struct, tag=True):
    """What a join would do, or did."""

    joining: Joining


class WrittenOut(msgspec.Struct, tag=True):
    """How much was written out."""

    bundled: Bundled


class Turned(msgspec.Struct, tag=True):
    """A join was taken back or put back."""

    written: Written


class Refused(msgspec.Struct, tag=True):
    """One sentence for the keeper; nothing was written."""

    told: str


class Faulty(msgspec.Struct, tag=True):
    """A fault of the program, as Python tells it; nothing was written."""

    told: str


class Left(msgspec.Struct, tag=True):
    """It was called off; nothing was written."""


Answer = Told | Looked | WrittenOut | Turned | Refused | Faulty | Left


def written_line(words: object) -> bytes:
    """One line."""
    return msgspec.json.encode(words, enc_hook=str) + b"\n"  # paths alone are unknown to it


def read_line(line: bytes) -> Answer:
    """One line of the other process.

    Raises:
        msgspec.MsgspecError: it is none.
    """
    answer: Answer = msgspec.json.decode(line, type=Answer, dec_hook=lambda kind, told: kind(told))
    return answer
