"""Which entries stand: what a batch wrote, unless something that stands withdrew it.

``withdrawn`` is a cache of the entries that do not stand; WHOLE in place of an entry's
number means the whole batch. A target is always older than what withdraws it, so the
reckoning ends.
"""

import sqlite3
from collections.abc import Iterable

WHOLE = -1
"""Entry number that stands for a whole batch in ``withdrawal`` and ``withdrawn``."""


def stands(alias: str) -> str:
    """The SQL condition that the entry *alias* stands."""
    return (
        f"NOT EXISTS (SELECT 1 FROM withdrawn w WHERE w.batch = {alias}.batch"
        f" AND w.seq IN ({alias}.seq, {WHOLE}))"
    )


def batch_stands(connection: sqlite3.Connection, batch: int) -> bool:
    """True unless a standing batch withdraws the whole of *batch*."""
    withdrawers = connection.execute(
        "SELECT batch FROM withdrawal WHERE target_batch = ? AND target_seq = ?", (batch, WHOLE)
    ).fetchall()
    return not any(batch_stands(connection, withdrawer) for (withdrawer,) in withdrawers)


def reckon(connection: sqlite3.Connection, batches: Iterable[int]) -> set[int]:
    """Bring ``withdrawn`` up to date for *batches* and all that they withdraw.

    Returns every batch whose entries may have begun or ceased to stand.
    """
    waiting = list(batches)
    seen: set[int] = set()
    while waiting:
        batch = waiting.pop()
        if batch in seen:
            continue
        seen.add(batch)
        _reckon_one(connection, batch)
        waiting += _targets(connection, batch)
    return seen


def reckon_all(connection: sqlite3.Connection) -> None:
    """Throw ``withdrawn`` away and make it anew."""
    connection.execute("DELETE FROM withdrawn")
    for (batch,) in connection.execute("SELECT DISTINCT target_batch FROM withdrawal").fetchall():
        _reckon_one(connection, batch)


def _targets(connection: sqlite3.Connection, batch: int) -> list[int]:
    rows = connection.execute(
        "SELECT DISTINCT target_batch FROM withdrawal WHERE batch = ?", (batch,)
    )
    return [target for (target,) in rows]


def _reckon_one(connection: sqlite3.Connection, batch: int) -> None:
    connection.execute("DELETE FROM withdrawn WHERE batch = ?", (batch,))
    rows = connection.execute(
        "SELECT target_seq, batch FROM withdrawal WHERE target_batch = ?", (batch,)
    ).fetchall()
    gone = {seq for seq, withdrawer in rows if batch_stands(connection, withdrawer)}
    connection.executemany(
        "INSERT INTO withdrawn (batch, seq) VALUES (?, ?)", [(batch, seq) for seq in gone]
    )
