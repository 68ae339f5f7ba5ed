"""What each logger file put into the readings, so that it can be taken back and put back.

A batch that took a file in lies as a *layer* over the days of its probes: which slots are its
own, and for each of them one value. While the batch stands the value is of what lay beneath it,
and its own lies above: in the next standing layer there, or in ``reading_day``. While it does
not stand it keeps its own. Taking back and putting back are one exchange, of which nothing is
lost, in whatever order batches are taken back. A live reading that comes into a slot later is
nobody's layer: the slot then belongs to no file any more.

Layers lie as their batches were written. What a join brought of another book's live readings is
a layer too, beneath those of all files, as the live readings of this book are.

Slots are exchanged as long numbers, so that years of readings take no loop.
"""

import sqlite3
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace

from keeper.store.many import AMONG, keys_told
from keeper.store.packing import EMPTY_DAY, SLOTS, rolled_up

AS_JOINED = "join"
"""How live readings of another book were read; anything else is how a file's lines were."""

OWNED_BYTES = SLOTS // 8
_ALL = b"\xff" * OWNED_BYTES
_EMPTY_CELL = EMPTY_DAY[:2]
_WIDE = tuple(
    b"".join(b"\xff\xff" if byte >> bit & 1 else b"\x00\x00" for bit in range(8))
    for byte in range(256)
)
"""For eight slots, one bit each, the same as cells of 16 bits."""

_AS_FIGURES = b"0" + b"1" * 255
"""Bytes to figures of a binary number."""

_STANDS = "NOT EXISTS (SELECT 1 FROM withdrawn w WHERE w.batch = e.batch AND w.seq IN (e.seq, -1))"
_TAKEN = f"SELECT {_STANDS} FROM readings_taken e WHERE e.batch = ?"
_UNSETTLED = f"""
    SELECT DISTINCT l.batch FROM reading_layer l
    WHERE l.stands <> coalesce(({_TAKEN.replace("?", "l.batch")}), l.stands)"""
_IS_JOINED = f"""EXISTS (SELECT 1 FROM readings_taken t
    WHERE t.batch = l.batch AND t.read_as = '{AS_JOINED}')"""
_LAYER = """
    INSERT INTO reading_layer (probe, day, batch, owned, held, stands)
    VALUES (?, ?, ?, ?, ?, ?)"""
_PUT = f"""{_LAYER}
    ON CONFLICT (probe, day, batch) DO UPDATE SET
    owned = excluded.owned, held = excluded.held, stands = excluded.stands"""


@dataclass(frozen=True, slots=True)
class Layer:
    """One batch's slots of a day. owned: a bit for each slot; held: a day's slots."""

    batch: int
    owned: bytes
    held: bytes
    stands: bool


def lay_over(
    connection: sqlite3.Connection, batch: int, days: Iterable[tuple[str, int, bytes, bytes]]
) -> None:
    """Note that *batch* put slots over days: probe, day, its slots, those that were there."""
    rows = []
    for probe, day, slots, before in days:
        owned, held = owned_by(slots), before
        if before != EMPTY_DAY:
            empty, _ = _exchanged(_number(EMPTY_DAY), _number(before), _mask(owned))
            held = _number_bytes(empty)
        rows.append((probe, day, batch, owned, b"" if held == EMPTY_DAY else held, True))
    connection.executemany(_LAYER, rows)


def settle(connection: sqlite3.Connection, batches: Iterable[int]) -> None:
    """Exchange the readings of those *batches* whose layers do not lie as their entry stands."""
    rows = connection.execute(
        f"SELECT e.batch, {_STANDS} FROM readings_taken e WHERE e.batch {AMONG} ORDER BY e.batch",
        (keys_told(batches),),
    ).fetchall()
    for batch, stands in rows:
        wrong = connection.execute(
            "SELECT probe, day FROM reading_layer WHERE batch = ? AND stands <> ?", (batch, stands)
        ).fetchall()
        for probe, day in wrong:
            _exchange(connection, batch, probe, day)


def settle_all(connection: sqlite3.Connection) -> None:
    """``settle`` for every batch that took readings in."""
    batches = connection.execute("SELECT DISTINCT batch FROM reading_layer").fetchall()
    settle(connection, [batch for (batch,) in batches])


def unsettled(connection: sqlite3.Connection) -> list[int]:
    """Batches whose readings do not lie as their entry stands; empty when all do."""
    rows = connection.execute(_UNSETTLED)
    return [batch for (batch,) in rows]


def give_up(connection: sqlite3.Connection, probe: str, day: int, numbers: Iterable[int]) -> None:
    """These slots of a day belong to no layer any more: something came into them by itself."""
    layers = list(_layers(connection, probe, day))
    if not layers:
        return
    given_up = sum(1 << number for number in numbers)
    for layer in layers:
        owned = int.from_bytes(layer.owned, "little") & ~given_up
        kept = replace(layer, owned=owned.to_bytes(OWNED_BYTES, "little"))
        _put(connection, probe, day, kept)


def owned_by(slots: bytes) -> bytes:
    """A bit for each filled slot, the first one lowest.

    >>> owned_by(EMPTY_DAY[:4] + bytes((1, 0)) + EMPTY_DAY[6:])[:2]
    b'\\x04\\x00'
    """
    if _EMPTY_CELL not in slots:
        return _ALL
    apart = _number(slots) ^ _number(EMPTY_DAY)
    each = _number_bytes(apart | apart >> 8)[::2]  # of every slot one byte, 0 where it is empty
    return int(each.translate(_AS_FIGURES)[::-1], 2).to_bytes(OWNED_BYTES, "little")


def joined_batches(connection: sqlite3.Connection, probe: str, day: int) -> set[int]:
    """The joins, taken back or not, that brought live readings of another book to a day."""
    rows = connection.execute(
        f"SELECT batch FROM reading_layer l WHERE probe = ? AND day = ? AND {_IS_JOINED}",
        (probe, day),
    )
    return {batch for (batch,) in rows}


def pieces_of(connection: sqlite3.Connection, probe: str, day: int) -> dict[int | None, bytes]:
    """Whose the slots of a day are: by batch what its file put there, by None what is no file's."""
    found: dict[int | None, bytes] = {}
    seen = _number(_slots(connection, probe, day))
    for layer in reversed(list(_layers(connection, probe, day))):
        mask, held = _mask(layer.owned), _number(layer.held)
        own, beneath = (seen, _overlaid(seen, held, mask)) if layer.stands else (held, seen)
        found[layer.batch] = _number_bytes(_overlaid(_number(EMPTY_DAY), own, mask))
        seen = beneath
    return {None: _number_bytes(seen), **found}


def put_beneath(connection: sqlite3.Connection, probe: str, day: int, slots: bytes) -> None:
    """The filled *slots* as no file's: beneath every layer that stands there."""
    values, left = _number(slots), _mask(owned_by(slots))
    for layer in _layers(connection, probe, day):
        common = left & _mask(layer.owned) if layer.stands else 0
        if common:
            held = _number_bytes(_overlaid(_number(layer.held), values, common))
            _put(connection, probe, day, replace(layer, held=held))
            left &= ~common
    if left:
        now = _overlaid(_number(_slots(connection, probe, day)), values, left)
        _write_day(connection, probe, day, _number_bytes(now))


def add_layer(
    connection: sqlite3.Connection, batch: int, probe: str, day: int, slots: bytes
) -> None:
    """What *batch* put over a day, in its place among the layers there."""
    _put(connection, probe, day, Layer(batch, owned_by(slots), slots, False))
    row = connection.execute(_TAKEN, (batch,)).fetchone()
    if row is not None and row[0]:
        _exchange(connection, batch, probe, day)


def _exchange(connection: sqlite3.Connection, batch: int, probe: str, day: int) -> None:
    """Exchange the layer's value of each of its slots with that of what lies on it."""
    layers = {layer.batch: layer for layer in _layers(connection, probe, day)}
    own = layers[batch]
    left, held = _mask(own.owned), _number(own.held)
    in_order = list(layers.values())
    above = in_order[in_order.index(own) + 1 :]
    for layer in (each for each in above if each.stands):
        common = left & _mask(layer.owned)
        if common:
            held, theirs = _exchanged(held, _number(layer.held), common)
            _put(connection, probe, day, replace(layer, held=_number_bytes(theirs)))
            left &= ~common
    if left:
        held, slots = _exchanged(held, _number(_slots(connection, probe, day)), left)
        _write_day(connection, probe, day, _number_bytes(slots))
    changed = replace(own, held=_number_bytes(held), stands=not own.stands)
    _put(connection, probe, day, changed)


def _exchanged(one: int, other: int, where: int) -> tuple[int, int]:
    difference = (one ^ other) & where
    return one ^ difference, other ^ difference


def _slots(connection: sqlite3.Connection, probe: str, day: int) -> bytes:
    row = connection.execute(
        "SELECT slots FROM reading_day WHERE probe = ? AND day = ?", (probe, day)
    ).fetchone()
    return row[0] if row else EMPTY_DAY


def _write_day(connection: sqlite3.Connection, probe: str, day: int, slots: bytes) -> None:
    """The day as it is now; a day without any reading has no row."""
    if slots == EMPTY_DAY:
        connection.execute("DELETE FROM reading_day WHERE probe = ? AND day = ?", (probe, day))
        return
    connection.execute(
        """INSERT INTO reading_day (probe, day, slots, hours) VALUES (?, ?, ?, ?)
           ON CONFLICT (probe, day) DO UPDATE SET slots = excluded.slots, hours = excluded.hours""",
        (probe, day, slots, rolled_up(slots)),
    )


def _layers(connection: sqlite3.Connection, probe: str, day: int) -> Iterator[Layer]:
    """The layers of a day, the lowest first."""
    rows = connection.execute(
        f"""SELECT batch, owned, held, stands FROM reading_layer l
           WHERE probe = ? AND day = ? ORDER BY NOT {_IS_JOINED}, batch""",
        (probe, day),
    )
    for batch, owned, held, stands in rows.fetchall():
        yield Layer(batch, owned, held or EMPTY_DAY, bool(stands))


def _put(connection: sqlite3.Connection, probe: str, day: int, layer: Layer) -> None:
    """A layer with nothing beneath keeps no bytes of it."""
    held = b"" if layer.held == EMPTY_DAY else layer.held
    connection.execute(_PUT, (probe, day, layer.batch, layer.owned, held, layer.stands))


def _mask(owned: bytes) -> int:
    return _number(b"".join([_WIDE[byte] for byte in owned]))


def _number(slots: bytes) -> int:
    return int.from_bytes(slots, "little")


def _number_bytes(number: int) -> bytes:
    return number.to_bytes(2 * SLOTS, "little")


def _overlaid(under: int, over: int, where: int) -> int:
    return under ^ ((under ^ over) & where)
