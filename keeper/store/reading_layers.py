"""What each logger file put into the readings, so that it can be taken back and put back.

A batch that took a file in lies as a *layer* over the days of its probes: which slots are its
own, and for each of them one value. While the batch stands the value is of what lay beneath it,
and its own lies above: in the next standing layer there, or in ``reading_day``. While it does
not stand it keeps its own. Taking back and putting back are one exchange, of which nothing is
lost, in whatever order batches are taken back.

Layers lie as their batches were written. A live reading lies where it came: beneath all files,
or, where files own its slot already, directly *over* the last of them, in a layer that is no
batch's and stays. Two stations that join so order their readings alike. What a join brought of
another book's live readings is a layer of the join, in the place that they have in that book.

Slots are exchanged as long numbers, so that years of readings take no loop.
"""

import sqlite3
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from typing import NamedTuple

from keeper.store.many import AMONG, keys_told
from keeper.store.packing import EMPTY_DAY, SLOTS, packed, rolled_up

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
_IS_JOINED = f"""EXISTS (SELECT 1 FROM readings_taken t
    WHERE t.batch = l.batch AND t.read_as = '{AS_JOINED}')"""
_LAYERS = f"""
    SELECT l.probe, l.day, l.batch, CASE WHEN {_IS_JOINED} THEN 0 ELSE l.batch END AS over,
        l.owned, l.held, l.stands FROM reading_layer l
    UNION ALL SELECT probe, day, batch, over, owned, held, stands FROM reading_over"""
_UNSETTLED = f"""
    SELECT DISTINCT l.batch FROM ({_LAYERS}) l
    WHERE l.stands <> coalesce(({_TAKEN.replace("?", "l.batch")}), l.stands)"""
_LAYER = """
    INSERT INTO reading_layer (probe, day, batch, owned, held, stands)
    VALUES (?, ?, ?, ?, ?, ?)"""
_PUT = f"""{_LAYER}
    ON CONFLICT (probe, day, batch) DO UPDATE SET
    owned = excluded.owned, held = excluded.held, stands = excluded.stands"""
_PUT_OVER = """
    INSERT INTO reading_over (probe, day, batch, owned, held, stands, over)
    VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT (probe, day, batch, over) DO UPDATE SET
    owned = excluded.owned, held = excluded.held, stands = excluded.stands"""
NOBODY = 0
"""In place of a batch: what is no file's and came by no join."""


class Whose(NamedTuple):
    """Whose the slots of a piece are, and where they lie.

    batch: whose file, or whose join, brought them; NOBODY: they were heard here. over: the file
    that they were heard after, 0 for none; of a file's own slots the file.
    """

    batch: int
    over: int


HEARD = Whose(NOBODY, 0)


@dataclass(frozen=True, slots=True)
class Layer:
    """One owner's slots of a day. owned: a bit for each slot; held: a day's slots."""

    whose: Whose
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
            f"SELECT probe, day, over FROM ({_LAYERS}) WHERE batch = ? AND stands <> ?",
            (batch, stands),
        ).fetchall()
        for probe, day, over in wrong:
            _exchange(connection, Whose(batch, over), probe, day)


def settle_all(connection: sqlite3.Connection) -> None:
    """``settle`` for every batch that took readings in."""
    batches = connection.execute(f"SELECT DISTINCT batch FROM ({_LAYERS})").fetchall()
    settle(connection, [batch for (batch,) in batches])


def unsettled(connection: sqlite3.Connection) -> list[int]:
    """Batches whose readings do not lie as their entry stands; empty when all do."""
    rows = connection.execute(_UNSETTLED)
    return [batch for (batch,) in rows]


def put_live(
    connection: sqlite3.Connection, probe: str, day: int, values: Mapping[int, int]
) -> bool:
    """Readings heard now, by slot, over all that is there; False where no layer is."""
    layers = list(_layers(connection, probe, day))
    if not layers:
        return False
    slots = packed(dict(values))
    left = _mask(owned_by(slots))
    for over in sorted({0, *(layer.whose.over for layer in layers)}, reverse=True):
        there = [layer for layer in layers if layer.whose.over == over]
        where = left & _mask(_together(there)) if over else left
        if where:
            _hear(
                connection, probe, day, over, _overlaid(_number(EMPTY_DAY), _number(slots), where)
            )
            left &= ~where
    return True


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


def place_of(connection: sqlite3.Connection, batch: int) -> int:
    """Over which file the own slots of *batch* lie: a file's on its own place, a join's on 0."""
    joined = f"SELECT 1 FROM readings_taken WHERE batch = ? AND read_as = '{AS_JOINED}'"
    return 0 if connection.execute(joined, (batch,)).fetchone() else batch


def pieces_of(connection: sqlite3.Connection, probe: str, day: int) -> dict[Whose, bytes]:
    """Whose the slots of a day are, each owner's slots by themselves, the lowest first."""
    found: dict[Whose, bytes] = {}
    seen = _number(_slots(connection, probe, day))
    for layer in reversed(list(_layers(connection, probe, day))):
        mask, held = _mask(layer.owned), _number(layer.held)
        own, beneath = (seen, _overlaid(seen, held, mask)) if layer.stands else (held, seen)
        found[layer.whose] = _number_bytes(_overlaid(_number(EMPTY_DAY), own, mask))
        seen = beneath
    return {HEARD: _number_bytes(seen), **dict(reversed(found.items()))}


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
    connection: sqlite3.Connection, whose: Whose, probe: str, day: int, slots: bytes
) -> None:
    """Slots that somebody put over a day, in their place among the layers there.

    Where the owner has a layer already, what it lacks is added to it.
    """
    before = _lifted(connection, probe, day, whose)
    held = slots if before is None else _both(slots, before.held)
    _put(connection, probe, day, Layer(whose, owned_by(held), held, False))
    row = connection.execute(_TAKEN, (whose.batch,)).fetchone()
    if whose.batch == NOBODY or (row is not None and row[0]):
        _exchange(connection, whose, probe, day)


def _lifted(connection: sqlite3.Connection, probe: str, day: int, whose: Whose) -> Layer | None:
    """The owner's layer, which does not stand from now on and holds its own values."""
    layer = _layer_of(connection, probe, day, whose)
    if layer is None or not layer.stands:
        return layer
    _exchange(connection, whose, probe, day)
    return _layer_of(connection, probe, day, whose)


def _both(slots: bytes, over: bytes) -> bytes:
    return _number_bytes(_overlaid(_number(slots), _number(over), _mask(owned_by(over))))


def _hear(connection: sqlite3.Connection, probe: str, day: int, over: int, slots: int) -> None:
    """Put *slots*, which nothing higher owns, in nobody's place over the file *over*."""
    heard = _number_bytes(slots)
    where = _mask(owned_by(heard))
    for layer in list(_layers(connection, probe, day)):
        is_joined = layer.whose.over == over and layer.whose.batch not in (over, NOBODY)
        if is_joined and where & _mask(layer.owned):
            _give_up(connection, probe, day, layer.whose, where)
    if over:
        _give_up(connection, probe, day, Whose(NOBODY, over), where)
        add_layer(connection, Whose(NOBODY, over), probe, day, heard)
    else:
        now = _overlaid(_number(_slots(connection, probe, day)), slots, where)
        _write_day(connection, probe, day, _number_bytes(now))


def _give_up(
    connection: sqlite3.Connection, probe: str, day: int, whose: Whose, where: int
) -> None:
    """These slots are the owner's no more."""
    before = _layer_of(connection, probe, day, whose)
    layer = _lifted(connection, probe, day, whose)
    if before is None or layer is None:
        return
    held = _number_bytes(_overlaid(_number(layer.held), _number(EMPTY_DAY), where))
    _put(connection, probe, day, Layer(whose, owned_by(held), held, False))
    if before.stands:
        _exchange(connection, whose, probe, day)


def _exchange(connection: sqlite3.Connection, whose: Whose, probe: str, day: int) -> None:
    """Exchange the layer's value of each of its slots with that of what lies on it."""
    layers = {layer.whose: layer for layer in _layers(connection, probe, day)}
    own = layers[whose]
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
    """The layers of a day, the lowest first; what was heard after a file lies on it."""
    rows = connection.execute(
        f"""SELECT batch, over, owned, held, stands FROM ({_LAYERS})
           WHERE probe = ? AND day = ? ORDER BY over, batch <> over, batch""",
        (probe, day),
    )
    for batch, over, owned, held, stands in rows.fetchall():
        yield Layer(Whose(batch, over), owned, held or EMPTY_DAY, bool(stands))


def _layer_of(connection: sqlite3.Connection, probe: str, day: int, whose: Whose) -> Layer | None:
    layers = (each for each in _layers(connection, probe, day) if each.whose == whose)
    return next(layers, None)


def _put(connection: sqlite3.Connection, probe: str, day: int, layer: Layer) -> None:
    """A layer with nothing beneath keeps no bytes of it."""
    held = b"" if layer.held == EMPTY_DAY else layer.held
    batch, over = layer.whose
    cells = (probe, day, batch, layer.owned, held, layer.stands)
    if over in (0, batch):
        connection.execute(_PUT, cells)
    else:
        connection.execute(_PUT_OVER, (*cells, over))


def _together(layers: Iterable[Layer]) -> bytes:
    """The slots that any of *layers* owns."""
    owned = 0
    for layer in layers:
        owned |= int.from_bytes(layer.owned, "little")
    return owned.to_bytes(OWNED_BYTES, "little")


def _mask(owned: bytes) -> int:
    return _number(b"".join([_WIDE[byte] for byte in owned]))


def _number(slots: bytes) -> int:
    return int.from_bytes(slots, "little")


def _number_bytes(number: int) -> bytes:
    return number.to_bytes(2 * SLOTS, "little")


def _overlaid(under: int, over: int, where: int) -> int:
    return under ^ ((under ^ over) & where)
