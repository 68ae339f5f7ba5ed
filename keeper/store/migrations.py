"""Bring a book's tables to this program's version, in one transaction."""

import sqlite3

from sqlite_utils import Database

from keeper.store.database import APPLICATION_ID, SCHEMA_VERSION
from keeper.store.schema import (
    CACHES,
    EVENT_TABLES,
    READING_TABLES,
    SPINE_TABLES,
    fresh_schema,
)


def migrate(connection: sqlite3.Connection) -> None:
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


def missing_parts(connection: sqlite3.Connection) -> set[str]:
    """Tables and guarding triggers that a book must have and this one lacks."""
    database = Database(connection)
    guarded = {*SPINE_TABLES, *EVENT_TABLES}
    triggers = {f"{table}_no_{verb}" for table in guarded for verb in ("update", "delete")}
    present = {trigger.name for trigger in database.triggers}
    wanted = guarded | {*READING_TABLES, *CACHES}
    return wanted - set(database.table_names()) | (triggers - present)
