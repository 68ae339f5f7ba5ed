"""Walking the racks with the arrow keys: from a tub to the next that stands there."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from keeper.actions.racks import RackTub, Room
from keeper.desktop.widgets.rack_paint import At

Counts = Sequence[Sequence[int]]
"""For each rack the number of tubs in each of its rows."""


def first_tub(counts: Counts) -> At | None:
    """The first tub of the room; None in a room without any.

    >>> first_tub([[0, 3]])
    At(rack=0, row=1, tub=0)
    """
    for rack, rows in enumerate(counts):
        for row, tubs in enumerate(rows):
            if tubs:
                return At(rack, row, 0)
    return None


def aside(counts: Counts, at: At, by: int) -> At:
    """One tub to the left or right; past the end of a row the same row of the next rack.

    >>> aside([[2], [5]], At(0, 0, 1), 1), aside([[2], [5]], At(1, 0, 0), -1)
    (At(rack=1, row=0, tub=0), At(rack=0, row=0, tub=1))
    """
    tub = at.tub + by
    if 0 <= tub < counts[at.rack][at.row]:
        return at._replace(tub=tub)
    return _into(counts, at, at.rack + by, by, last=by < 0)


def along(counts: Counts, at: At, by: int) -> At:
    """One row up or down in the same rack, over rows without tubs.

    >>> along([[3, 0, 2]], At(0, 0, 2), 1)
    At(rack=0, row=2, tub=1)
    """
    rows = counts[at.rack]
    row = at.row + by
    while 0 <= row < len(rows) and rows[row] == 0:
        row += by
    if not 0 <= row < len(rows):
        return at
    return At(at.rack, row, min(at.tub, rows[row] - 1))


def rack_on(counts: Counts, at: At, by: int) -> At:
    """The next rack or the one before, at about the same row and tub."""
    return _into(counts, at, at.rack + by, by)


def to_end(counts: Counts, at: At, *, last: bool) -> At:
    """The last tub of the row, or the first."""
    return at._replace(tub=counts[at.rack][at.row] - 1 if last else 0)


def tub_counts(room: Room) -> Counts:
    """How many tubs stand in each row of each rack."""
    return [[len(row.tubs) for row in rack.rows] for rack in room.racks]


def tub_at(room: Room, at: At) -> RackTub:
    """The tub at a place that is in the room."""
    return room.racks[at.rack].rows[at.row].tubs[at.tub]


def where_is(room: Room, animal: int | None) -> At | None:
    """Where the animal with this key stands."""
    lived = (at for at, keys in _lived(room) if animal in keys)
    return next(lived, None)


def place_at(room: Room, written: str) -> At | None:
    """Where the tub of a written place stands; None where it is in no rack."""
    wanted = room.tub_at(written)
    stands = (
        At(rack, row, number)
        for rack, rows in enumerate(room.racks)
        for row, tubs in enumerate(rows.rows)
        for number, tub in enumerate(tubs.tubs)
        if tub is wanted
    )
    return next(stands, None) if wanted is not None else None


def scanned_in(room: Room | None, code: str) -> tuple[At | None, int | None]:
    """Where the animal or the tub stands whose label was scanned, and the animal if it is one."""
    if room is None:
        return None, None
    found = next((row.animal.animal for row in room.everyone() if row.animal.code == code), None)
    return (place_at(room, code) if found is None else where_is(room, found)), found


def next_lived(room: Room, at: At, by: int) -> At:
    """The next tub with an animal in it, or the one before; *at* itself where there is none."""
    lived = [place for place, _ in _lived(room)]
    onward = [p for p in lived if p > at] if by > 0 else [p for p in lived[::-1] if p < at]
    return onward[0] if onward else at


def _lived(room: Room) -> Iterator[tuple[At, list[int]]]:
    """Every tub that is not empty, with the keys of those in it."""
    for rack, rows in enumerate(room.racks):
        for row, tubs in enumerate(rows.rows):
            for number, tub in enumerate(tubs.tubs):
                if tub.living:
                    yield At(rack, row, number), [each.animal.animal for each in tub.living]


def _into(counts: Counts, at: At, rack: int, by: int, *, last: bool | None = None) -> At:
    """Into another rack; last: at the end of its row, None: at the same number."""
    while 0 <= rack < len(counts) and not any(counts[rack]):
        rack += by
    if not 0 <= rack < len(counts):
        return at
    rows = [row for row, tubs in enumerate(counts[rack]) if tubs]
    row = min(rows, key=lambda row: abs(row - at.row))
    end = counts[rack][row] - 1
    tub = min(at.tub, end) if last is None and abs(by) == 1 else end if last else 0
    return At(rack, row, tub)
