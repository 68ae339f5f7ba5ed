"""Read from a damaged book what can still be read of it, row by row."""

import sqlite3
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

Row = tuple[Any, ...]


class Salvage:
    """A file that may be damaged, opened to be read. partly: tables not read to their end."""

    def __init__(self, path: Path) -> None:
        self._connection = sqlite3.connect(f"{path.absolute().as_uri()}?mode=ro", uri=True)
        self._connection.text_factory = _text
        self.partly: set[str] = set()

    def close(self) -> None:
        self._connection.close()

    def rows(self, table: str, columns: Sequence[str]) -> Iterator[Row]:
        """Rows of *table*; some of them twice where the table is damaged.

        First from the beginning up to the damage, then from the end back to it, then what lies
        between two damaged places, each row sought by what the index of batches says.

        A column that a book of an earlier version has not is null.
        """
        has = {name for _, name, *_ in self._as_far_as_it_goes(f"PRAGMA table_info({table})")}
        cells = [name if name in has or not has else "NULL" for name in columns]
        select = f"SELECT {', '.join(cells)} FROM {table}"
        try:
            yield from self._connection.execute(select)
            return
        except (sqlite3.DatabaseError, UnicodeDecodeError) as error:
            if str(error).startswith("no such table"):
                return  # a book of a version that had none
            self.partly.add(table)
        keys = self._keys(table)
        if not keys:
            return  # what the table looks like is lost, too
        order = ", ".join(f"{key} DESC" for key in keys)
        yield from self._as_far_as_it_goes(f"{select} ORDER BY {order}")
        where = " AND ".join(f"{key} = ?" for key in keys)
        indexed = f"SELECT {', '.join(keys)} FROM {table} INDEXED BY {table}_batch"
        for found in list(self._as_far_as_it_goes(indexed)):
            yield from self._as_far_as_it_goes(f"{select} WHERE {where}", found)

    def _keys(self, table: str) -> list[str]:
        told = list(self._as_far_as_it_goes(f"PRAGMA table_info({table})"))
        return [name for _, name, _, _, _, key in sorted(told, key=lambda row: row[5]) if key]

    def _as_far_as_it_goes(self, select: str, values: Row = ()) -> Iterator[Row]:
        try:
            yield from self._connection.execute(select, values)
        except (sqlite3.DatabaseError, UnicodeDecodeError):
            return


def _text(raw: bytes) -> str:
    """Half a character is kept as such, so that the one row is refused and not the rest."""
    return raw.decode("utf-8", "surrogateescape")
