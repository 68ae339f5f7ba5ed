"""A kind fitted in a process of its own, so that a window of this process never waits for it.

A fit is some seconds of small steps of Python; in a thread it would take the interpreter from
the window again and again. The other process gets the question on its standard input, reads
the book for itself, and writes the fit to its standard output, both as MessagePack of plain
figures: ``python -m keeper.actions.fitting_aside``.
"""

import os
import sys
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

import msgspec

from keeper.actions.keeping import Keeping, open_keeping
from keeper.actions.other_process import ask_process
from keeper.actions.populations import Asked, Fitted, fit_here
from keeper.rules.growth.plain_figures import array_of, listed

NICE = 5  # it gives way to the window


@dataclass(frozen=True, slots=True, kw_only=True)
class _Request:
    book: str
    now: datetime
    asked: Asked


def fit_aside(keeping: Keeping, asked: Asked) -> Fitted:
    """The fit by another process; by this one where the other cannot be had or fails.

    Raises:
        CalledOff: it was called off meanwhile.
    """
    request = _Request(book=str(keeping.book.path), now=keeping.now(), asked=asked)
    try:
        answer = ask_process("keeper.actions.fitting_aside", msgspec.msgpack.encode(request))
        return decoded(answer)
    except (OSError, msgspec.MsgspecError):
        return fit_here(keeping, asked)


def encoded(fit: Fitted) -> bytes:
    """A fit as MessagePack; arrays become lists."""
    return msgspec.msgpack.encode(fit, enc_hook=listed)


def decoded(told: bytes) -> Fitted:
    """The fit that was encoded.

    Raises:
        msgspec.MsgspecError: it is none.
    """
    return msgspec.msgpack.decode(told, type=Fitted, dec_hook=array_of)


def main() -> int:
    """Answer one question."""
    if hasattr(os, "nice"):
        os.nice(NICE)
    request = msgspec.msgpack.decode(sys.stdin.buffer.read(), type=_Request)
    keeping = open_keeping(Path(request.book), station="", now=lambda: request.now, read_only=True)
    sys.stdout.buffer.write(encoded(fit_here(keeping, request.asked)))
    keeping.close()
    return 0


if __name__ == "__main__":
    sys.exit(main())
