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
from keeper.language import tr

T = TypeVar("T")
Protocol = Literal["3.1.1", "5"]
PLAIN_PORT, TLS_PORT = 1883, 8883
"""As registered with IANA for MQTT."""
RIGHT = tr("192.168.1.20, broker.local:1883 or ro@broker.local is right")

NO_TLS, BY_SYSTEM = "none", "system"
"""What may be typed in place of a file of certificates."""

_PEM = b"-----BEGIN CERTIFICATE-----"
_MOST_PEM_BYTES = 4_000_000
_FILE, _HEARD = "live.json", "live-heard.json"
_ADDRESS = re.compile(
    r"(?:([^@\s:]{1,64})@)?(\[[0-9A-Fa-f:.]+\]|[^\s:@/\[\]]{1,253})(?::(\d{1,5}))?"
)


@dataclass(frozen=True, slots=True, kw_only=True)
class LiveChoice:
    """Where to listen. on: whether it is switched on. user: empty where none is asked for.

    tls: only to a broker whose certificate is vouched for, by the authorities in ca_file or,
    where that is empty, by those of the system.
    """

    host: str = ""
    port: int = PLAIN_PORT
    user: str = ""
    password: str = ""
    protocol: Protocol = "3.1.1"
    on: bool = False
    tls: bool = False
    ca_file: str = ""

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
        raise ValueError(tr("{text!r} is no address of a broker; {right}.", text=text, right=RIGHT))
    made = replace(choice, host=found[2].strip("[]"), port=port, user=found[1] or "")
    return made if made.address == choice.address else replace(made, password="")


def with_certificates(choice: LiveChoice, text: str) -> LiveChoice:
    """*choice* with what vouches for the broker as typed: ``none``, ``system`` or a PEM file.

    The usual port goes along. A password that was meant for a line with TLS is forgotten with it.

    >>> with_certificates(LiveChoice(host="broker.local"), "system").address
    'broker.local:8883'

    Raises:
        ValueError: no file of certificates, in one sentence.
    """
    word = text.strip()
    if word.casefold() in ("", NO_TLS):
        port = PLAIN_PORT if choice.tls and choice.port == TLS_PORT else choice.port
        password = "" if choice.tls else choice.password
        return replace(choice, tls=False, ca_file="", port=port, password=password)
    ca_file = "" if word.casefold() == BY_SYSTEM else str(_certificates(word))
    port = TLS_PORT if not choice.tls and choice.port == PLAIN_PORT else choice.port
    return replace(choice, tls=True, ca_file=ca_file, port=port)


def _certificates(text: str) -> Path:
    """The file typed, if it holds a certificate as far as can be seen without reading it in."""
    path = Path(text).expanduser().absolute()
    try:
        with path.open("rb") as file:
            is_pem = _PEM in file.read(_MOST_PEM_BYTES)
    except OSError as error:
        why = error.strerror or str(error)
        raise ValueError(
            tr("{path} cannot be read: {why}; name a file such as ca.crt.", path=path, why=why)
        ) from error
    if not is_pem:
        raise ValueError(
            tr("{path} holds no certificate in PEM; a file such as ca.crt is right.", path=path)
        )
    return path


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
