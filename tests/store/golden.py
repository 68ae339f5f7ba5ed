"""The schema of a new book as text; run as a program it writes the golden file of this version.

python3 tests/store/golden.py
"""

import sqlite3
import sys
from contextlib import closing
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
DATA = Path(__file__).with_name("data")


def golden(version: int) -> Path:
    """Where the schema of that version of the book is kept."""
    return DATA / f"schema_{version}.sql"


def schema_text(connection: sqlite3.Connection) -> str:
    """Tables, indexes and triggers with their SQL, by kind and name."""
    rows = connection.execute(
        "SELECT sql FROM sqlite_master WHERE sql IS NOT NULL ORDER BY type, name"
    )
    return "".join(f"{sql};\n" for (sql,) in rows)


def main() -> None:
    sys.path.insert(0, str(ROOT))
    from keeper.store.database import SCHEMA_VERSION
    from keeper.store.schema import fresh_schema

    with closing(sqlite3.connect(":memory:")) as connection:
        connection.executescript(fresh_schema())
        golden(SCHEMA_VERSION).write_text(schema_text(connection), encoding="utf-8")


if __name__ == "__main__":
    main()
