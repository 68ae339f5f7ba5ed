"""The system calls by which a real process changed the files of one folder, in their order.

``recorded`` runs a program under strace and reads the trace back. Whatever call could change a
file and is not understood here is an error, so that nothing is left out of a replay unseen.
"""

import itertools
import re
import shutil
import subprocess
import sys
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

STRACE = shutil.which("strace")
_CALLS = (
    "openat,open,creat,close,dup,dup2,dup3,lseek,write,writev,pwrite64,pwritev,pwritev2,"
    "ftruncate,truncate,fsync,fdatasync,sync_file_range,rename,renameat,renameat2,unlink,unlinkat,"
    "link,linkat,symlink,symlinkat,mkdir,mkdirat,rmdir,fallocate,copy_file_range,sendfile,splice"
)
_LINE = re.compile(r"(?:\d+ +)?(\w+)\((.*)\) += (-?\d+)(?:<[^>]*>)?.*")
_STRING = re.compile(r'"((?:\\x[0-9a-f]{2})*)"(\.\.\.)?')
_MOST_BYTES = 1 << 20


@dataclass(frozen=True, slots=True)
class Call:
    """One change. path, other: the names it was about; at, data: where in the file and what.

    name: one of create, write, truncate, sync, link, unlink, rename, mkdir, say. file: the
    file's number, whatever it is called by then; -1 for a folder.
    """

    name: str
    path: str = ""
    other: str = ""
    file: int = -1
    at: int = 0
    data: bytes = b""


def recorded(program: Sequence[str], folder: Path, trace: Path) -> list[Call]:
    """What *program* did to the files in *folder*, and each line it said on stdout."""
    assert STRACE is not None
    reading = _Reading(folder)
    watching = [STRACE, "-f", "-xx", "-s", str(_MOST_BYTES), "-e", f"trace={_CALLS}"]
    done = subprocess.run(
        [*watching, "-o", str(trace), sys.executable, *program],
        check=False,
        capture_output=True,
        text=True,
    )
    if done.returncode:
        raise RuntimeError(f"{program} failed under strace: {done.stderr}")
    with trace.open(encoding="ascii") as lines:
        return list(reading.calls(lines))


def numbered(folder: Path) -> dict[str, int]:
    """A number for each file in *folder*, by its path."""
    files = sorted(path for path in folder.rglob("*") if path.is_file())
    return {str(path): number for number, path in enumerate(files)}


class _Reading:
    """Follows descriptors, so that each write is of a file and not of a number."""

    def __init__(self, folder: Path) -> None:
        self._folder = str(folder)
        self._files = numbered(folder)
        self._numbers = itertools.count(len(self._files))
        self._open: dict[int, tuple[str, int]] = {}
        self._at: dict[int, int] = {}

    def calls(self, lines: Iterator[str]) -> Iterator[Call]:
        for line in lines:
            if "<unfinished" in line or " resumed>" in line:
                raise ValueError(f"two threads at once cannot be replayed: {line[:80]}")
            found = _LINE.fullmatch(line.rstrip("\n"))
            if found is None or int(found[3]) < 0:
                continue
            yield from self._call(found[1], found[2], int(found[3]))

    def _call(self, name: str, text: str, result: int) -> Iterator[Call]:
        strings = [_bytes(match) for match in _STRING.finditer(text)]
        numbers = [int(n) for n in re.findall(r"-?\b\d+\b", _STRING.sub("", text))]
        on_file = not strings or name.startswith(("write", "pwrite"))
        if name in ("open", "openat", "creat"):
            yield from self._opened(strings[0].decode(), text, result)
        elif name == "close":
            self._open.pop(numbers[0], None)
        elif name in ("rename", "renameat", "renameat2", "link", "linkat"):
            yield from self._named(name, *(s.decode() for s in strings))
        elif name in ("unlink", "unlinkat", "mkdir", "mkdirat"):
            yield from self._unnamed(name, strings[0].decode())
        elif name == "write" and numbers[0] == 1:
            yield Call("say", data=strings[0])
        elif on_file and numbers[0] in self._open:
            yield from self._changed(name, numbers, strings, result)
        elif not on_file and self._is_ours(strings[0].decode()):
            raise ValueError(f"{name} cannot be replayed")

    def _is_ours(self, path: str) -> bool:
        return path == self._folder or path.startswith(f"{self._folder}/")

    def _opened(self, path: str, text: str, descriptor: int) -> Iterator[Call]:
        self._open.pop(descriptor, None)
        if not self._is_ours(path):
            return
        if "O_CREAT" in text and path not in self._files:
            self._files[path] = next(self._numbers)
            yield Call("create", path, file=self._files[path])
        file = self._files.get(path, -1)
        self._open[descriptor], self._at[descriptor] = (path, file), 0
        if "O_TRUNC" in text:
            yield Call("truncate", path, file=file)

    def _named(self, name: str, source: str, target: str) -> Iterator[Call]:
        if not self._is_ours(source):
            return
        file = self._files[target] = self._files[source]
        if name.startswith("rename"):
            del self._files[source]
        yield Call("rename" if name.startswith("rename") else "link", source, target, file)

    def _unnamed(self, name: str, path: str) -> Iterator[Call]:
        if self._is_ours(path):
            yield Call(name.removesuffix("at"), path, file=self._files.pop(path, -1))

    def _changed(
        self, name: str, numbers: list[int], strings: list[bytes], result: int
    ) -> Iterator[Call]:
        descriptor = numbers[0]
        path, file = self._open[descriptor]
        if name == "lseek":
            self._at[descriptor] = result
        elif name == "write":
            yield Call("write", path, file=file, at=self._at[descriptor], data=strings[0][:result])
            self._at[descriptor] += result
        elif name == "pwrite64":
            yield Call("write", path, file=file, at=numbers[-1], data=strings[0][:result])
        elif name == "ftruncate":
            yield Call("truncate", path, file=file, at=numbers[-1])
        elif name in ("fsync", "fdatasync"):
            yield Call("sync", path, file=file)
        else:
            raise ValueError(f"{name} on {path} cannot be replayed")


def _bytes(match: re.Match[str]) -> bytes:
    if match[2]:
        raise ValueError("a write was longer than the trace holds")
    return bytes.fromhex(match[1].replace("\\x", ""))
