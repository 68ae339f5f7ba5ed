"""A book with a past, as SQL text, for every version there was: what a migration has to bring up.

Run as a program it writes the one of this version, to be kept with it for good.
python3 tests/store/old_books.py
"""

import itertools
import sys
import tempfile
from dataclasses import fields
from datetime import UTC, date, datetime, timedelta
from enum import StrEnum
from pathlib import Path
from typing import Any, get_args, get_type_hints

ROOT = Path(__file__).resolve().parents[2]
DATA = Path(__file__).with_name("data")
_BEGAN = datetime(2024, 2, 27, 20, 30, tzinfo=UTC)
_ANIMALS, _ROUNDS = 12, 40


def old_book(version: int) -> Path:
    """Where the book of that version is kept."""
    return DATA / f"book_{version}.sql"


def main() -> None:
    sys.path.insert(0, str(ROOT))
    from keeper.store.database import APPLICATION_ID, SCHEMA_VERSION, create_book

    with tempfile.TemporaryDirectory() as folder:
        tails = itertools.count(7, 11)
        book = create_book(Path(folder) / "a.book", station="shed", tail=tails.__next__)
        _live(book)
        lines = [
            f"PRAGMA application_id = {APPLICATION_ID};",
            f"PRAGMA user_version = {SCHEMA_VERSION};",
            *book.connection.iterdump(),
        ]
        book.close()
    old_book(SCHEMA_VERSION).write_text("\n".join(lines) + "\n", encoding="utf-8")


def _live(book: Any) -> None:
    """Some animals, then night after night one entry of every kind; some of it taken back."""
    from keeper.husbandry.events import Described
    from keeper.husbandry.when import on_day
    from keeper.store.journal import EntryKey, batch, withdraw_batch
    from keeper.store.rows import TABLES

    with batch(book, verb="take in", keeper="Ro", written=_BEGAN) as writer:
        animals = [writer.new_animal() for _ in range(_ANIMALS)]
        for number, animal in enumerate(animals):
            said = Described(
                animal=animal,
                happened=on_day(_BEGAN.date()),
                code=f"Ä-{number}",
                species="house_snake",
                name='O\'Hara; "Lou"\n🐍' if number == 3 else None,
            )
            writer.add(said)
    kinds = [kind for kind in TABLES if kind is not Described]
    for night in range(_ROUNDS):
        written = _BEGAN + timedelta(days=3 * night)
        with batch(book, verb="note", keeper="Ro", written=written) as writer:
            keys = dict.fromkeys(("animal", "dam", "sire", "mate"), animals[night % len(animals)])
            keys["round"] = writer.new_round()
            writer.add(*(_event(kind, keys, night, written) for kind in kinds))
        if night % 8 == 5:
            key = writer.id
            back = withdraw_batch(book, key, verb="take back", keeper="Ro", written=written)
            if night % 16 == 5:
                withdraw_batch(book, back, verb="put back", keeper="Ro", written=written)
        elif night % 8 == 2:
            with batch(
                book, verb="correct", keeper="Ro", written=written, reason="misread"
            ) as again:
                again.withdraw(EntryKey(writer.id, 5))


def _event(kind: type[Any], keys: dict[str, int], number: int, at: datetime) -> Any:
    hints = get_type_hints(kind)
    names = [field.name for field in fields(kind)]
    said = {
        name: keys[name] if name in keys else _value(hints[name], number + n, at)
        for n, name in enumerate(names)
    }
    return kind(**said)


def _value(hint: Any, number: int, at: datetime) -> Any:
    """Something of the type *hint*, another thing for another *number*."""
    from keeper.husbandry.when import Happened, at_instant

    kind = next(kind for kind in get_args(hint) or (hint,) if kind is not type(None))
    if kind is Happened:
        return at_instant(at + timedelta(minutes=number))
    if issubclass(kind, StrEnum):
        return list(kind)[number % len(kind)]
    return _plain(kind, number, at.date())


def _plain(kind: type[Any], number: int, day: date) -> Any:
    if kind is date:
        return day + timedelta(days=number % 30)
    if kind is bool:
        return number % 2 == 0
    if kind is float:
        return 1.5 + number % 3
    return 1 + number % 5 if kind is int else f"wörd {number % 7}"


if __name__ == "__main__":
    main()
