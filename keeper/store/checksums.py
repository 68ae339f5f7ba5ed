"""A checksum for each batch: a letter that changed by itself is seen, with no backup at hand.

It lies in the batch's own row and is the sum, of 63 bits, of a hash for every row that the batch
wrote and for its own, so that rows may be hashed in any order. A hash is BLAKE2b, eight bytes
little-endian, of the table's name, a blank, and the row's cells as a Python literal in ASCII
without the nulls at its end and the closing bracket: a column that a later version appends
changes nothing for what was written before. A step that changes cells must make the checksums anew.

Batches written before there were checksums have none, and nothing is said of them.
"""

import sqlite3
from collections.abc import Iterable, Mapping, Sequence
from hashlib import blake2b
from typing import Any

from keeper.store.rows import KINDS, cell_names

Rows = Mapping[str, Iterable[tuple[Any, ...]]]
"""Rows by table, with the cells of ``CELLS``."""
_BITS_63 = 2**63 - 1
HEAD = ("id", "station", "keeper", "verb", "written", "utc_offset", "reason")
"""The columns of a batch's own row that its checksum covers."""
CELLS: Mapping[str, tuple[str, ...]] = {
    "animal": ("id", "batch"),
    "round": ("id", "batch"),
    "withdrawal": ("batch", "seq", "target_batch", "target_seq"),
    **{table: cell_names(kind) for table, kind in KINDS.items()},
}
"""The tables of what a batch wrote, with the cells that are hashed, in their order."""


def checksum(head: tuple[Any, ...], rows: Rows) -> int:
    """Of a batch with the cells *head*, and *rows* by table in the order of ``CELLS``."""
    total = row_hash("batch", head)
    for table, cells in rows.items():
        total += sum(row_hash(table, row) for row in cells)
    return total & _BITS_63


def row_hash(table: str, cells: tuple[Any, ...]) -> int:
    """
    >>> row_hash("animal", (7, 6)) == row_hash("animal", (7, 6, None)) != row_hash("animal", (7, 5))
    True
    """
    text = f"{table} {cells!a}"[:-1]
    while text.endswith(", None"):
        text = text[:-6]
    return int.from_bytes(blake2b(text.encode(), digest_size=8).digest(), "little")


def unlike(connection: sqlite3.Connection) -> list[int]:
    """Batches whose rows do not add up to their checksum, in order of writing."""
    names = ", ".join(HEAD)
    heads = connection.execute(f"SELECT checksum, {names} FROM batch WHERE checksum IS NOT NULL")
    told, found = dict[int, int](), dict[int, int]()
    for kept, *head in heads:
        told[head[0]], found[head[0]] = kept, row_hash("batch", tuple(head))
    if not told:
        return []
    for table in CELLS:
        _add(found, table, connection)
    return sorted(batch for batch, kept in told.items() if found[batch] & _BITS_63 != kept)


def insert_batch(connection: sqlite3.Connection, head: tuple[Any, ...], rows: Rows) -> None:
    """Write the batch's own row, with the checksum of it and of what it is about to write."""
    connection.execute(HEAD_INSERT, (*head, checksum(head, rows)))


def _add(found: dict[int, int], table: str, connection: sqlite3.Connection) -> None:
    cells = CELLS[table]
    at = cells.index("batch")
    for row in connection.execute(f"SELECT {', '.join(cells)} FROM {table}"):
        if row[at] in found:
            found[row[at]] += row_hash(table, row)


def _insert(table: str, names: Sequence[str]) -> str:
    return f"INSERT INTO {table} ({', '.join(names)}) VALUES ({', '.join('?' * len(names))})"


HEAD_INSERT = _insert("batch", (*HEAD, "checksum"))
"""Writes a batch's own row: the cells of ``HEAD``, and the checksum."""
INSERTS = {table: _insert(table, names) for table, names in CELLS.items()}
"""The statements that write rows as they are hashed."""
