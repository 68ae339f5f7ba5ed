"""Which entries stand: what a batch wrote, unless something that stands withdrew it.

``withdrawn`` is a cache of the entries that do not stand; WHOLE in place of an entry's
number means the whole batch. A target is always older than what withdraws it, so the
reckoning ends.
"""

import sqlite3
from collections.abc import Callable, Iterable

from keeper.store.reading_layers import settle, settle_all

WHOLE = -1
"""Entry number that stands for a whole batch in ``withdrawal`` and ``withdrawn``."""


def stands(alias: str) -> str:
    """The SQL condition that the entry *alias* stands.

    Two look-ups: of one with ``IN`` SQLite makes a table of its own for each entry asked.
    """
    gone = f"SELECT 1 FROM withdrawn gone WHERE gone.batch = {alias}.batch AND gone.seq ="
    return f"(NOT EXISTS ({gone} {alias}.seq) AND NOT EXISTS ({gone} {WHOLE}))"


def reckon(connection: sqlite3.Connection, batches: Iterable[int]) -> set[int]:
    """Bring ``withdrawn`` up to date for *batches* and all that they withdraw.

    Readings that a file brought go and come with its entry.

    Returns every batch whose entries may have begun or ceased to stand.
    """
    touched = _closure(batches, lambda batch: _targets(connection, batch))
    standing = _standing(_withdrawers_above(connection, touched))
    for batch in touched:
        _reckon_one(connection, batch, standing)
    settle(connection, touched)
    return touched


def reckoned(connection: sqlite3.Connection) -> set[tuple[int, int]]:
    """What ``withdrawn`` should hold, from the withdrawals alone; writes nothing."""
    rows = connection.execute("SELECT batch, target_batch, target_seq FROM withdrawal").fetchall()
    withdrawers: dict[int, list[int]] = {batch: [] for batch, _, _ in rows}
    for batch, target, seq in rows:
        if seq == WHOLE:
            withdrawers.setdefault(target, []).append(batch)
    standing = _standing(withdrawers)
    return {(target, seq) for batch, target, seq in rows if standing[batch]}


def reckon_all(connection: sqlite3.Connection) -> None:
    """Throw ``withdrawn`` away and make it anew."""
    gone = sorted(reckoned(connection))
    connection.execute("DELETE FROM withdrawn")
    connection.executemany("INSERT INTO withdrawn (batch, seq) VALUES (?, ?)", gone)
    settle_all(connection)


def _standing(withdrawers: dict[int, list[int]]) -> dict[int, bool]:
    """Which batches stand, the youngest settled first because only a younger one withdraws."""
    standing: dict[int, bool] = {}
    for batch in sorted(withdrawers, reverse=True):
        standing[batch] = not any(standing[younger] for younger in withdrawers[batch])
    return standing


def _withdrawers_above(
    connection: sqlite3.Connection, batches: Iterable[int]
) -> dict[int, list[int]]:
    """Which batches withdraw something of *batches*, and of those in turn, up to the youngest.

    Withdrawals of single entries are followed too, but only whole ones are listed.
    """
    found = _closure(
        batches,
        lambda batch: _column(
            connection, "SELECT batch FROM withdrawal WHERE target_batch = ?", batch
        ),
    )
    whole = f"SELECT batch FROM withdrawal WHERE target_batch = ? AND target_seq = {WHOLE}"
    return {batch: _column(connection, whole, batch) for batch in found}


def _targets(connection: sqlite3.Connection, batch: int) -> list[int]:
    return _column(connection, "SELECT target_batch FROM withdrawal WHERE batch = ?", batch)


def _column(connection: sqlite3.Connection, sql: str, batch: int) -> list[int]:
    return [number for (number,) in connection.execute(sql, (batch,))]


def _closure(begin: Iterable[int], onward: Callable[[int], list[int]]) -> set[int]:
    waiting = list(begin)
    found: set[int] = set()
    while waiting:
        batch = waiting.pop()
        if batch not in found:
            found.add(batch)
            waiting += onward(batch)
    return found


def _reckon_one(connection: sqlite3.Connection, batch: int, standing: dict[int, bool]) -> None:
    connection.execute("DELETE FROM withdrawn WHERE batch = ?", (batch,))
    rows = connection.execute(
        "SELECT target_seq, batch FROM withdrawal WHERE target_batch = ?", (batch,)
    ).fetchall()
    gone = {seq for seq, withdrawer in rows if standing[withdrawer]}
    connection.executemany(
        "INSERT INTO withdrawn (batch, seq) VALUES (?, ?)", [(batch, seq) for seq in gone]
    )
