"""Where the keeper stands in an open round, kept beside the book for a power cut.

The book holds what was written; a jump, a step back or the beginning of the check pass writes
nothing in it. They are kept in a small file of this machine's own, so that a key that writes
a result has nothing more to do.
"""

import json
import os
from collections.abc import Sequence
from dataclasses import asdict, dataclass
from pathlib import Path

from keeper.actions.keeping import Keeping
from keeper.actions.rounds import Walk, open_night
from keeper.actions.tubs import Prey, Tub, last_written


@dataclass(frozen=True, slots=True, kw_only=True)
class RoundPlace:
    """line: where the keeper stood, None at the end of a pass, as long as nothing is written.

    since: the newest entry of the round when it was kept. looked: tubs that the check pass
    had to look at when it began. prey: what was chosen there in place of the plan. Digits of a
    choice that is not made yet, and the exceptions of a sweep, are not kept: nothing of them
    counts before Enter, and the tubs still say what became of them.
    """

    round: int
    checking: bool
    line: int | None
    since: int
    looked: int = 0
    prey: list[str | int | float | None] | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class TakenUp:
    """An open round as it was left, and what was chosen for the tub at its cursor."""

    walk: Walk
    looked: int = 0
    prey: Prey | None = None


def keep_place(keeping: Keeping, walk: Walk, looked: int, prey: Prey | None = None) -> None:
    """Keep where *walk* stands; a window that only reads keeps nothing.

    On a disk that takes no such file the round itself goes on.
    """
    if not keeping.book.writable:
        return
    place = RoundPlace(
        round=walk.round,
        checking=walk.checking,
        line=walk.cursor,
        since=_newest(walk.tubs),
        looked=looked,
        prey=None if prey is None else list(prey),
    )
    try:
        _write(_file_of(keeping), json.dumps(asdict(place)))
    except OSError:
        return


def forget_place(keeping: Keeping) -> None:
    """The round is over; nothing is left beside the book."""
    try:
        _file_of(keeping).unlink(missing_ok=True)
    except OSError:
        return


def taken_up(keeping: Keeping) -> TakenUp | None:
    """The open round at the tub where the keeper stood, with what was chosen for it."""
    walk = open_night(keeping)
    if walk is None:
        return None
    place = _read(_file_of(keeping))
    if place is None or place.round != walk.round:
        return TakenUp(walk=walk)
    if place.checking:
        walk.begin_check()
        walk.cursor = next_waiting(walk, last_written(walk.tubs))
    if place.since == _newest(walk.tubs) and (place.line is None or _is_line(place.line, walk)):
        walk.cursor = place.line
        return TakenUp(walk=walk, looked=place.looked, prey=_prey_of(place))
    return TakenUp(walk=walk, looked=place.looked)


def _prey_of(place: RoundPlace) -> Prey | None:
    """None for anything that this program did not write."""
    match place.prey:
        case [str(name), int(count), int(mass_g) | float(mass_g)]:
            return name, count, mass_g
    return None


def _is_line(line: int, walk: Walk) -> bool:
    return 1 <= line <= len(walk.tubs)


def next_waiting(walk: Walk, after: int) -> int | None:
    """The next tub that this pass has to look at, beyond *after* first, then from the start."""
    onward = (*walk.tubs[after:], *walk.tubs[:after])
    return next((tub.line for tub in onward if walk.waits(tub)), None)


def _newest(tubs: Sequence[Tub]) -> int:
    return max((tub.offer.key.batch for tub in tubs if tub.offer), default=0)


def _file_of(keeping: Keeping) -> Path:
    book = keeping.book.path
    return book.with_name(f"{book.name}.round")


def _write(path: Path, text: str) -> None:
    """The old file or the new one is there, never half of it."""
    fresh = path.with_name(f".{path.name}.part")
    with fresh.open("w", encoding="utf-8") as file:
        file.write(text)
        file.flush()
        os.fsync(file.fileno())
    fresh.replace(path)


def _read(path: Path) -> RoundPlace | None:
    """None where there is no such file, or one that this program did not write."""
    try:
        place = RoundPlace(**json.loads(path.read_text(encoding="utf-8")))
    except (OSError, ValueError, TypeError):
        return None
    numbers = (place.round, place.since, place.looked, place.line or 0)
    return place if all(isinstance(number, int) for number in numbers) else None
