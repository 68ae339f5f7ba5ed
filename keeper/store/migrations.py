"""Bring a book's tables to this program's version, in one transaction.

What is only new (a table, an index, a trigger) and what is derived needs no step: after the
steps every part that a new book has and this one lacks is made, and derived tables whose
columns changed are made anew. A step is for what changes a table that holds records.
"""

import sqlite3
from collections.abc import Callable, Mapping

from sqlite_utils import Database

from keeper.store.database import APPLICATION_ID, SCHEMA_VERSION
from keeper.store.schema import (
    CACHES,
    EVENT_TABLES,
    READING_TABLES,
    SPINE_TABLES,
    fresh_schema,
    new_parts,
    schema_parts,
)
from keeper.store.state import rebuild

Step = Callable[[sqlite3.Connection], None]


def _make_room_for_checksums(connection: sqlite3.Connection) -> None:
    """What was written before has none: it is not known to be as it was written."""
    columns = connection.execute("SELECT name FROM pragma_table_info('batch')").fetchall()
    if ("checksum",) not in columns:
        connection.execute("ALTER TABLE batch ADD COLUMN checksum INTEGER")


STEPS: Mapping[int, Step] = {1: _make_room_for_checksums}
"""By the version that a step leads away from. A step may not drop a table of record."""


def make_tables(connection: sqlite3.Connection) -> None:
    """Make the tables of a new book; both PRAGMAs are set inside the same transaction."""
    connection.executescript(
        f"""BEGIN IMMEDIATE;
        {fresh_schema()}
        PRAGMA application_id = {APPLICATION_ID};
        PRAGMA user_version = {SCHEMA_VERSION};
        COMMIT;"""
    )
    missing = missing_parts(connection)
    if missing:
        raise AssertionError(f"the new book lacks {', '.join(sorted(missing))}")


def bring_up(connection: sqlite3.Connection, steps: Mapping[int, Step] = STEPS) -> None:
    """Bring an older book to this version: all of it, or nothing is changed.

    Raises:
        AssertionError: a step is missing or wrong; the book then stays as it was.
    """
    connection.execute("PRAGMA foreign_keys = OFF")  # has no effect inside a transaction
    try:
        connection.execute("BEGIN IMMEDIATE")
        try:
            _take_steps(connection, steps)
            connection.execute("COMMIT")
        except BaseException:
            if connection.in_transaction:
                connection.execute("ROLLBACK")
            raise
    finally:
        connection.execute("PRAGMA foreign_keys = ON")


def missing_parts(connection: sqlite3.Connection) -> set[str]:
    """Tables and guarding triggers that a book must have and this one lacks."""
    database = Database(connection)
    guarded = {*SPINE_TABLES, *EVENT_TABLES}
    triggers = {f"{table}_no_{verb}" for table in guarded for verb in ("update", "delete")}
    present = {trigger.name for trigger in database.triggers}
    wanted = guarded | {*READING_TABLES, *CACHES}
    return wanted - set(database.table_names()) | (triggers - present)


def _take_steps(connection: sqlite3.Connection, steps: Mapping[int, Step]) -> None:
    """Another process may have been quicker: the version is read again with the lock held."""
    (version,) = connection.execute("PRAGMA user_version").fetchone()
    if version >= SCHEMA_VERSION:
        return
    for number in range(version, SCHEMA_VERSION):
        if number in steps:
            steps[number](connection)
    _make_parts(connection)
    rebuild(connection)
    _refuse_unlike_new(connection)
    connection.execute(f"PRAGMA user_version = {SCHEMA_VERSION}")


def _make_parts(connection: sqlite3.Connection) -> None:
    """Every part of a new book that is missing; derived tables that are otherwise, anew."""
    wanted = new_parts()
    there = schema_parts(connection)
    for table in CACHES:
        name = f"table {table}"
        if name in there and there[name] != wanted[name]:
            connection.execute(f"DROP TABLE {table}")
    there = schema_parts(connection)
    for kind in ("table", "index", "trigger"):
        for name in wanted.keys() - there.keys():
            if name.startswith(kind):
                connection.execute(wanted[name])


def _refuse_unlike_new(connection: sqlite3.Connection) -> None:
    wanted, there = new_parts(), schema_parts(connection)
    unlike = {name for name in wanted.keys() | there.keys() if wanted.get(name) != there.get(name)}
    if unlike:
        raise AssertionError(f"no step makes these as a new book has them: {sorted(unlike)}")
    broken = connection.execute("PRAGMA foreign_key_check").fetchall()
    if broken:
        raise sqlite3.IntegrityError(f"{len(broken)} rows name what the book does not have")
