"""The state row of each animal: one SELECT over the history, kept beside it.

The same SELECT refreshes one animal in the transaction that touched it, rebuilds the
whole table, and proves that the two agree. After an entry only those of its columns are asked
that read the entry's table; the text of each column is the same.
"""

import re
import sqlite3
from collections.abc import Iterable
from datetime import date
from functools import cache, lru_cache
from typing import Any

from keeper.store.rows import day_number
from keeper.store.schema import ANIMAL_COLUMNS
from keeper.store.standing import reckon_all, stands

_EATEN = "('taken', 'part taken')"
_UNTIL = "/* until */"  # where a day is set in, when the state of a past day is asked for
_COUNTS = f"{stands('e')} {_UNTIL}"
_KEY = "(e.at, e.batch, e.seq)"
_ALIAS = re.compile(r"\b(\w+)\.")
_READ = re.compile(r"(?:FROM|JOIN) (\w+) ")
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


_CELLS = {
    "animal": "a.id",
    **{
        name: f"d.{name}"
        for name in (
            *("code", "species", "name", "line", "clutch"),
            *("hatched_first", "hatched_last", "dam", "sire"),
        )
    },
    "sex": "coalesce(x.sex, 'unknown')",
    "sexed_by": "x.sexed_by",
    "status": "coalesce(st.status, 'kept')",
    "status_on": "st.day",
    "place": "p.place",
    "place_since": "p.day",
    "caution": "nullif(c.text, '')",
    "first_entry_on": _edge_day("ASC"),
    "last_entry_on": _edge_day("DESC"),
    "eaten_on": "m.day",
    "eaten_prey": "m.prey",
    "eaten_count": "m.count",
    "eaten_mg": "m.mass_mg",
    "offered_on": "o.day",
    "offered_result": "o.result",
    "refused_since": _count("offer", f"e.result = 'refused' AND {_after('m')}", 100),
    "regurgitated_on": "r.day",
    "regurgitated_before_on": "r2.day",
    "meals_since_regurgitation": f"""CASE WHEN r.at IS NULL THEN 0
        ELSE {_count("offer", f"e.result IN {_EATEN} AND {_KEY} > (r.at, r.batch, r.seq)", 10)}
        END""",
    "meals": _count("offer", f"e.result IN {_EATEN}", 10),
    "weight_mg": "w.weight_mg",
    "weighed_on": "w.day",
    "meal_before_weighing_mg": "wm.mass_mg",
    "meal_before_weighing_on": "wm.day",
    "weight_before_mg": "w2.weight_mg",
    "weighed_before_on": "w2.day",
    "shed_on": "s.day",
    "shed_before_on": "s2.day",
    "stage": "sg.stage",
    "stage_since": f"""(SELECT min(e.day) FROM shed_sign e
        WHERE e.animal = a.id AND e.stage = sg.stage AND {_after("s")} AND {_COUNTS})""",
    "clutch_on": "l.day",
    "svl_mm": "v.svl_mm",
    "body_score": "b.body_score",
    "scored_on": "b.day",
}
"""What each column of ``animal_now`` says, in the order of the table."""

_JOINS = {
    "x": _join("sexed", "x"),
    "st": _join("stock", "st"),
    "p": _join("moved", "p"),
    "c": _join("remark", "c", "e.kind = 'caution'"),
    "m": _join("offer", "m", f"e.result IN {_EATEN}"),
    "o": _join("offer", "o", "e.result <> 'not offered'"),
    "r": _join("regurgitation", "r"),
    "r2": _join("regurgitation", "r2", _before("r")),
    "w": _join("weighing", "w"),
    "w2": _join("weighing", "w2", _before("w")),
    "wm": _join("offer", "wm", f"e.result IN {_EATEN} AND {_before('w')}"),
    "s": _join("shed_sign", "s", "e.stage = 'shed'"),
    "s2": _join("shed_sign", "s2", f"e.stage = 'shed' AND {_before('s')}"),
    "sg": _join("shed_sign", "sg", f"e.stage <> 'shed' AND {_after('s')}"),
    "l": _join("clutch", "l"),
    "v": _join("measured", "v", "e.svl_mm IS NOT NULL"),
    "b": _join("measured", "b", "e.body_score IS NOT NULL"),
}
"""The entries that the columns tell of, by alias; one may stand on those before it."""

_SELECT = f"""
SELECT {", ".join(_CELLS.values())}
FROM animal a
    JOIN described d ON d.animal = a.id AND (d.at, d.batch, d.seq) = {_latest("described")}
    {"".join(_JOINS.values())}
"""


@cache
def _stands_on(alias: str) -> frozenset[str]:
    """Aliases that must be joined for *alias*, itself among them."""
    return _needs(_JOINS[alias].replace(f"{alias}.", "")) | {alias}


def _needs(sql: str) -> frozenset[str]:
    """Aliases that *sql* names, and those that they stand on."""
    named = _ALIAS.findall(sql)
    return frozenset().union(*(_stands_on(alias) for alias in {*named} & _JOINS.keys()))


def _tables_of(sql: str) -> set[str]:
    """Event tables that *sql* reads, through its aliases too."""
    whole = sql + "".join(_JOINS[alias] for alias in _needs(sql))
    return {*_READ.findall(whole)} & {*ANIMAL_COLUMNS}


@cache
def tables_read() -> dict[str, set[str]]:
    """For each column of ``animal_now`` the event tables that it depends on."""
    return {name: _tables_of(sql) for name, sql in _CELLS.items()}


@lru_cache(maxsize=64)
def _update(tables: frozenset[str]) -> str | None:
    """Sets the columns that read one of *tables*, by the SQL of ``_SELECT``; None: there is none.

    The others cannot have changed. An entry of one kind so costs a part of the whole row, and
    the index of codes is left alone.
    """
    cells = {name: sql for name, sql in _CELLS.items() if tables_read()[name] & tables}
    if not cells:
        return None
    needed = _needs(" ".join(cells.values()))
    joins = "".join(join for alias, join in _JOINS.items() if alias in needed)
    return f"""UPDATE animal_now SET ({", ".join(cells)}) =
        (SELECT {", ".join(cells.values())} FROM animal a {joins} WHERE a.id = ?1)
        WHERE animal = ?1"""


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


def refresh_after(
    connection: sqlite3.Connection, animals: Iterable[int], tables: Iterable[str]
) -> None:
    """As ``refresh``, where nothing was written but entries of *tables*."""
    wrote = frozenset(tables)
    if "described" in wrote:
        refresh(connection, animals)
    elif (update := _update(wrote)) is not None:
        connection.executemany(update, [(animal,) for animal in animals])


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
