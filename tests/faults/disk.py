"""A disk that forgets: what may be on it when the power goes after some of the recorded calls.

What was synced is there. Of what was not, every sector of 512 bytes, every change of length and
every name may be there or not, each by chance. Pessimistic: a journalled file system keeps
some of that in order.
"""

from __future__ import annotations

import random
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from pathlib import Path, PurePath

from tests.faults.system_calls import Call, numbered

SECTOR = 512
CHANCES = (0.0, 0.1, 0.5, 0.9, 1.0)
"""Of a thing not synced to be kept; one of them is drawn for each power cut."""
Names = dict[str, int]
State = dict[str, bytes]
"""What lies on the disk after the cut, by path."""


@dataclass(slots=True)
class File:
    """synced: what is certain. waiting: (at, data) for a write, (length, None) for a cut."""

    synced: bytearray = field(default_factory=bytearray)
    waiting: list[tuple[int, bytes | None]] = field(default_factory=list)

    def sync(self) -> None:
        for at, data in self.waiting:
            _apply(self.synced, at, data)
        self.waiting.clear()

    def after_a_cut(self, draw: random.Random, chance: float) -> bytes:
        content = bytearray(self.synced)
        for at, data in self.waiting:
            for piece_at, piece in _sectors(at, data):
                if draw.random() < chance:
                    _apply(content, piece_at, piece)
        return bytes(content)


class Disk:
    """Files by number, names by folder; ``do`` follows the calls, ``after_a_cut`` draws a state."""

    def __init__(self, folder: Path) -> None:
        self._names = numbered(folder)
        self._files = {
            number: File(bytearray(Path(path).read_bytes())) for path, number in self._names.items()
        }
        self._folders = {str(folder), *(str(p) for p in folder.rglob("*") if p.is_dir())}
        self._waiting: dict[str, list[Call]] = {}

    def do(self, call: Call) -> None:
        match call.name:
            case "write":
                self._files[call.file].waiting.append((call.at, call.data))
            case "truncate":
                self._files[call.file].waiting.append((call.at, None))
            case "sync" if call.file == -1:
                for waiting in self._waiting.pop(call.path, ()):
                    _rename(self._names, waiting)
            case "sync":
                self._files[call.file].sync()
            case "create" | "link" | "rename" | "unlink" | "mkdir":
                self._name(call)

    def after_a_cut(self, draw: random.Random) -> State:
        """One state that the disk may be in if the power goes now."""
        chance = draw.choice(CHANCES)
        names = dict(self._names)
        folders = set(self._folders)
        for waiting in self._waiting.values():
            for call in waiting:
                kept = draw.random() < chance
                if kept:
                    _rename(names, call)
                elif call.name == "mkdir":
                    folders.discard(call.path)
        content = {n: self._files[n].after_a_cut(draw, chance) for n in set(names.values())}
        return {
            path: content[n] for path, n in names.items() if str(PurePath(path).parent) in folders
        }

    def _name(self, call: Call) -> None:
        if call.name == "create":
            self._files[call.file] = File()
        elif call.name == "mkdir":
            self._folders.add(call.path)
        self._waiting.setdefault(str(PurePath(call.path).parent), []).append(call)


def _rename(names: Names, call: Call) -> None:
    match call.name:
        case "create":
            names[call.path] = call.file
        case "link":
            names[call.other] = call.file
        case "rename":
            names.pop(call.path, None)
            names[call.other] = call.file
        case "unlink":
            names.pop(call.path, None)


def _apply(content: bytearray, at: int, data: bytes | None) -> None:
    if data is None:
        del content[at:]
        content.extend(bytes(at - len(content)))
        return
    content.extend(bytes(max(0, at - len(content))))
    content[at : at + len(data)] = data


def _sectors(at: int, data: bytes | None) -> Iterable[tuple[int, bytes | None]]:
    """A write in pieces that a disk writes whole; a truncation is one piece."""
    if data is None:
        yield at, None
        return
    begin = at
    while begin < at + len(data):
        end = min((begin // SECTOR + 1) * SECTOR, at + len(data))
        yield begin, data[begin - at : end - at]
        begin = end


def cuts(
    folder: Path, calls: list[Call], count: int, seed: int
) -> Iterator[tuple[State, tuple[str, ...]]]:
    """*count* states after power cuts at drawn moments, each with the lines said before it.

    folder: as it was before the calls were made.
    """
    draw = random.Random(seed)
    moments = sorted(draw.randrange(len(calls) + 1) for _ in range(count))
    disk, done = Disk(folder), 0
    said: list[str] = []
    for moment in moments:
        for call in calls[done:moment]:
            disk.do(call)
            if call.name == "say":
                said += call.data.decode().splitlines()
        done = moment
        yield disk.after_a_cut(draw), tuple(said)


def lay_down(state: State, folder: Path, there: Path) -> None:
    """Write *state*, drawn of *folder*, into the empty folder *there*."""
    for path, content in state.items():
        place = there / PurePath(path).relative_to(folder)
        place.parent.mkdir(parents=True, exist_ok=True)
        place.write_bytes(content)
