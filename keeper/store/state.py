"""The state row of each animal: one SELECT over the history, kept beside it.

The same SELECT refreshes one animal in the transaction that touched it, rebuilds the
whole table, and proves that the two agree.
"""

import sqlite3
from collections.abc import Iterable
from datetime import date
from typing import Any

from keeper.store.rows import day_number
from keeper.store.standing import reckon_all, stands

_EATEN = "('taken', 'part taken')"
_UNTIL = "/* until */"  # where a day is set in, when the state of a past day is asked for
_COUNTS = f"{stands('e')} {_UNTIL}"
_KEY = "(e.at, e.batch, e.seq)"
_EVER = -(2**62)
"""Seconds before anything that can have happened."""


def _latest(table: str, condition: str = "1") -> str:
    """Key of the latest standing entry of ``a`` in *table* (aliased e) that meets *condition*."""
    return f"""(SELECT e.at, e.batch, e.seq FROM {table} e
        WHERE e.animal = a.id AND {condition} AND {_COUNTS}
        ORDER BY e.at DESC, e.batch DESC, e.seq DESC LIMIT 1)"""


def _join(table: str, alias: str, condition: str = "1") -> str:
    """The plus keeps the planner from the index of batches, whose pages lie far apart."""
    return f"""
    LEFT JOIN {table} {alias} ON {alias}.animal = a.id
        AND ({alias}.at, +{alias}.batch, {alias}.seq) = {_latest(table, condition)}"""


def _before(alias: str) -> str:
    return f"{_KEY} < ({alias}.at, {alias}.batch, {alias}.seq)"


def _after(alias: str) -> str:
    """After the entry *alias*, or ever where there is none; one range of the primary key."""
    return f"{_KEY} > (coalesce({alias}.at, {_EVER}), {alias}.batch, {alias}.seq)"


def _count(table: str, condition: str, most: int) -> str:
    return f"""(SELECT count(*) FROM (SELECT 1 FROM {table} e
        WHERE e.animal = a.id AND {condition} AND {_COUNTS} LIMIT {most}))"""


def _edge_day(order: str) -> str:
    """First or last day on which a feed, a refusal or a weight was written."""
    days = " UNION ALL ".join(
        f"""SELECT * FROM (SELECT e.day FROM {table} e WHERE e.animal = a.id AND {_COUNTS}
            ORDER BY e.at {order}, e.batch {order}, e.seq {order} LIMIT 1)"""
        for table in ("offer", "weighing")
    )
    return f"(SELECT {'min' if order == 'ASC' else 'max'}(day) FROM ({days}))"


_SELECT = f"""
SELECT a.id,
    d.code, d.species, d.name, d.line, d.clutch, d.hatched_first, d.hatched_last, d.dam, d.sire,
    coalesce(x.sex, 'unknown'), x.sexed_by, coalesce(st.status, 'kept'), st.day,
    p.place, p.day, nullif(c.text, ''),
    {_edge_day("ASC")}, {_edge_day("DESC")},
    m.day, m.prey, m.count, m.mass_mg,
    o.day, o.result, {_count("offer", f"e.result = 'refused' AND {_after('m')}", 100)},
    r.day, r2.day,
    CASE WHEN r.at IS NULL THEN 0
        ELSE {_count("offer", f"e.result IN {_EATEN} AND {_KEY} > (r.at, r.batch, r.seq)", 10)} END,
    {_count("offer", f"e.result IN {_EATEN}", 10)},
    w.weight_mg, w.day, wm.mass_mg, wm.day, w2.weight_mg, w2.day,
    s.day, s2.day, sg.stage,
    (SELECT min(e.day) FROM shed_sign e WHERE e.animal = a.id AND e.stage = sg.stage
        AND {_after("s")} AND {_COUNTS}),
    l.day, v.svl_mm, b.body_score, b.day
FROM animal a
    JOIN described d ON d.animal = a.id AND (d.at, d.batch, d.seq) = {_latest("described")}
    {_join("sexed", "x")}
    {_join("stock", "st")}
    {_join("moved", "p")}
    {_join("remark", "c", "e.kind = 'caution'")}
    {_join("offer", "m", f"e.result IN {_EATEN}")}
    {_join("offer", "o", "e.result <> 'not offered'")}
    {_join("regurgitation", "r")}
    {_join("regurgitation", "r2", _before("r"))}
    {_join("weighing", "w")}
    {_join("weighing", "w2", _before("w"))}
    {_join("offer", "wm", f"e.result IN {_EATEN} AND {_before('w')}")}
    {_join("shed_sign", "s", "e.stage = 'shed'")}
    {_join("shed_sign", "s2", f"e.stage = 'shed' AND {_before('s')}")}
    {_join("shed_sign", "sg", f"e.stage <> 'shed' AND {_after('s')}")}
    {_join("clutch", "l")}
    {_join("measured", "v", "e.svl_mm IS NOT NULL")}
    {_join("measured", "b", "e.body_score IS NOT NULL")}
"""


_AS_OF = _SELECT.replace(_UNTIL, "AND e.day <= :until")


def as_of(connection: sqlite3.Connection, day: date) -> list[tuple[Any, ...]]:
    """State rows as they follow from all that is now known to have happened up to *day*."""
    return connection.execute(_AS_OF, {"until": day_number(day)}).fetchall()


_REFRESH = f"INSERT INTO animal_now {_SELECT} WHERE a.id = ?"


def refresh(connection: sqlite3.Connection, animals: Iterable[int]) -> None:
    """Make the state rows of *animals* anew from their history."""
    for animal in animals:
        connection.execute("DELETE FROM animal_now WHERE animal = ?", (animal,))
        connection.execute(_REFRESH, (animal,))


def rebuild(connection: sqlite3.Connection) -> None:
    """Throw every derived row away and make it anew."""
    reckon_all(connection)
    connection.execute("DELETE FROM animal_now")
    connection.execute(f"INSERT INTO animal_now {_SELECT}")


def differing(connection: sqlite3.Connection) -> list[int]:
    """Animals whose state row is not what their history says; empty when all agree."""
    rows = connection.execute(
        f"""SELECT animal FROM (SELECT * FROM animal_now EXCEPT {_SELECT})
            UNION SELECT id FROM ({_SELECT} EXCEPT SELECT * FROM animal_now)"""
    ).fetchall()
    return [animal for (animal,) in rows]
