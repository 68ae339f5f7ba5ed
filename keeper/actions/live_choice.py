"""Whether this machine listens to a message broker for a book, and to which; kept outside the book.

A book that comes from elsewhere can say which probe speaks under which topic, and no more: it
never makes the program reach out. The password lies in a file that only its owner may read.
"""

import contextlib
import os
import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Literal, TypeVar

import msgspec

from keeper.actions.station import home_dir

T = TypeVar("T")
Protocol = Literal["3.1.1", "5"]
PLAIN_PORT = 1883
RIGHT = "192.168.1.20, broker.local:1883 or ro@broker.local is right"

_FILE, _HEARD = "live.json", "live-heard.json"
_ADDRESS = re.compile(
    r"(?:([^@\s:]{1,64})@)?(\[[0-9A-Fa-f:.]+\]|[^\s:@/\[\]]{1,253})(?::(\d{1,5}))?"
)


@dataclass(frozen=True, slots=True, kw_only=True)
class LiveChoice:
    """Where to listen. on: whether it is switched on. user: empty where none is asked for."""

    host: str = ""
    port: int = PLAIN_PORT
    user: str = ""
    password: str = ""
    protocol: Protocol = "3.1.1"
    on: bool = False

    @property
    def address(self) -> str:
        """The address as it is typed, without the password; empty where there is none."""
        if not self.host:
            return ""
        host = f"[{self.host}]" if ":" in self.host else self.host
        return f"{self.user}@{host}:{self.port}" if self.user else f"{host}:{self.port}"


def choice_for(book: Path) -> LiveChoice:
    """What was chosen on this machine for *book*; off where nothing was."""
    return _all().get(_name(book), LiveChoice())


def choose(book: Path, choice: LiveChoice) -> None:
    """Keep *choice* for *book*.

    Raises:
        OSError: the folder of this machine cannot be written.
    """
    kept = {**_all(), _name(book): choice}
    _write(_FILE, kept)


def heard_probes(book: Path) -> frozenset[str]:
    """Probes that this machine heard live for *book*; none while it is switched off."""
    if not choice_for(book).on:
        return frozenset()
    return frozenset(_read(_HEARD, dict[str, list[str]]).get(_name(book), ()))


def keep_heard(book: Path, probes: Iterable[str]) -> None:
    """Remember that *probes* were heard live: from now on their silence says something.

    Raises:
        OSError: the folder of this machine cannot be written.
    """
    kept = _read(_HEARD, dict[str, list[str]])
    name = _name(book)
    _write(_HEARD, {**kept, name: sorted({*kept.get(name, ()), *probes})})


def with_address(choice: LiveChoice, text: str) -> LiveChoice:
    """*choice* with the address typed as ``user@host:port``; another one has no password yet.

    >>> with_address(LiveChoice(), "ro@broker.local").address
    'ro@broker.local:1883'

    Raises:
        ValueError: it is no address, in one sentence.
    """
    found = _ADDRESS.fullmatch(text.strip())
    port = int(found[3] or PLAIN_PORT) if found else 0
    if found is None or not 0 < port < 65_536:
        raise ValueError(f"{text!r} is no address of a broker; {RIGHT}.")
    made = replace(choice, host=found[2].strip("[]"), port=port, user=found[1] or "")
    return made if made.address == choice.address else replace(made, password="")


def _name(book: Path) -> str:
    return str(book.resolve())


def _all() -> Mapping[str, LiveChoice]:
    return _read(_FILE, dict[str, LiveChoice])


def _read(name: str, kind: type[T]) -> T:
    """What the file *name* of this machine holds; nothing where it is not there or not ours."""
    try:
        return msgspec.json.decode((home_dir() / name).read_bytes(), type=kind)
    except (OSError, msgspec.MsgspecError):
        return kind()


def _write(name: str, kept: object) -> None:
    """Whole or not at all, for its owner only."""
    path = home_dir() / name
    path.parent.mkdir(parents=True, exist_ok=True)
    fresh = path.with_name(f"{name}.{os.getpid()}")
    with contextlib.suppress(FileNotFoundError):
        fresh.unlink()
    handle = os.open(fresh, os.O_CREAT | os.O_EXCL | os.O_WRONLY, 0o600)
    with os.fdopen(handle, "wb") as out:
        out.write(msgspec.json.encode(kept))
    fresh.replace(path)
