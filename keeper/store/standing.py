"""Which entries stand: what a batch wrote, unless something that stands withdrew it.

``withdrawn`` is a cache of the entries that do not stand; WHOLE in place of an entry's
number means the whole batch. A target is always older than what withdraws it, so the
reckoning ends.
"""

import sqlite3
from collections.abc import Callable, Iterable

from keeper.store.many import AMONG, keys_told
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
    touched = _closure(batches, lambda some: _targets(connection, some))
    _reckon_these(connection, touched, _standing(_withdrawers_above(connection, touched)))
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
    found = _closure(batches, lambda some: _withdrawers(connection, some))
    withdrawers: dict[int, list[int]] = {batch: [] for batch in found}
    rows = connection.execute(
        f"""SELECT target_batch, batch FROM withdrawal
            WHERE target_batch {AMONG} AND target_seq = {WHOLE}""",
        (keys_told(found),),
    )
    for target, batch in rows:
        withdrawers[target].append(batch)
    return withdrawers


def _withdrawers(connection: sqlite3.Connection, batches: Iterable[int]) -> set[int]:
    sql = f"SELECT DISTINCT batch FROM withdrawal WHERE target_batch {AMONG}"
    return {batch for (batch,) in connection.execute(sql, (keys_told(batches),))}


def _targets(connection: sqlite3.Connection, batches: Iterable[int]) -> set[int]:
    sql = f"SELECT DISTINCT target_batch FROM withdrawal WHERE batch {AMONG}"
    return {batch for (batch,) in connection.execute(sql, (keys_told(batches),))}


def _closure(begin: Iterable[int], onward: Callable[[set[int]], set[int]]) -> set[int]:
    found, waiting = set[int](), set(begin)
    while waiting:
        found |= waiting
        waiting = onward(waiting) - found
    return found


def _reckon_these(
    connection: sqlite3.Connection, batches: set[int], standing: dict[int, bool]
) -> None:
    told = (keys_told(batches),)
    rows = connection.execute(
        f"SELECT target_batch, target_seq, batch FROM withdrawal WHERE target_batch {AMONG}", told
    )
    gone = {(target, seq) for target, seq, withdrawer in rows if standing[withdrawer]}
    connection.execute(f"DELETE FROM withdrawn WHERE batch {AMONG}", told)
    connection.executemany("INSERT INTO withdrawn (batch, seq) VALUES (?, ?)", sorted(gone))
