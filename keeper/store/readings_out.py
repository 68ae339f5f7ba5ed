"""Readings that travel: the days of a probe as JSON, and their union with another book's.

As with batches, the order and the number of documents do not matter: a slot that is empty takes
what comes, and two values for one slot are a conflict, of which nothing is taken in. What a file
brought is told with the batch of the file, apart from what is no file's.
"""

import re
from collections.abc import Iterable, Iterator, Mapping
from datetime import date
from typing import Any

from keeper.language import tr
from keeper.store.database import Book
from keeper.store.documents import NotADocument
from keeper.store.journal import KEY_END
from keeper.store.packing import EMPTY, SLOTS
from keeper.store.reading_layers import HEARD as HEARD
from keeper.store.reading_layers import Whose
from keeper.store.readings_join import Key, Pieces, pieces_out
from keeper.store.rows import day_number, day_of

_KEYS = {"probe", "day", "hundredths", "batch"}
_MOST = -EMPTY - 1
_WHOSE = re.compile(r"([0-9]{1,19})?(?:(?:^| )over ([0-9]{1,19}))?")


def write_out_readings(book: Book, probe: str) -> Iterator[dict[str, Any]]:
    """Each day of *probe*, oldest first, as values for a JSON writer.

    day: of UTC; hundredths: of a degree Celsius, one for each five minutes, null where none is;
    batch: the key of the batch whose file brought them, as text because it is a large number;
    null for none, and ``over`` with a file's key where the readings were heard after that file.
    A file that was taken back is told too, as its batch is.
    """
    for (_, day, whose), values in pieces_out(book, probe):
        on = day_of(day).isoformat()
        hundredths = [values.get(slot) for slot in range(SLOTS)]
        yield {"probe": probe, "day": on, "hundredths": hundredths, "batch": whose_told(whose)}


def whose_told(whose: Whose) -> str | None:
    """
    >>> [whose_told(whose) for whose in (HEARD, Whose(7, 0), Whose(0, 5), Whose(7, 5))]
    [None, '7', 'over 5', '7 over 5']
    """
    batch = str(whose.batch) if whose.batch else ""
    over = f"over {whose.over}" if whose.over else ""
    return " ".join(filter(None, (batch, over))) or None


def whose_of(told: object) -> Whose | None:
    """The inverse of ``whose_told``; None for what is no such text, nor a key."""
    found = _WHOSE.fullmatch(str(told or ""))
    if isinstance(told, bool) or found is None or (told is not None and not told):
        return None
    whose = Whose(*(int(key or 0) for key in found.groups()))
    given = [key for key in found.groups() if key is not None]
    return whose if all(0 < int(key) < KEY_END for key in given) else None


def pieces_told(documents: Iterable[Mapping[str, Any]]) -> Pieces:
    """The days of *documents* as they are joined.

    Raises:
        NotADocument: one cannot be read, or two of them tell one slot differently.
    """
    days: dict[Key, dict[int, int]] = {}
    for number, document in enumerate(documents, start=1):
        where = tr("Document {number}", number=number)
        key, values = _read(where, document)
        before = days.setdefault(key, {})
        if any(before.get(slot, value) != value for slot, value in values.items()):
            raise NotADocument(
                tr(
                    "{where}: {probe} on {day} was told otherwise before.",
                    where=where,
                    probe=key[0],
                    day=document["day"],
                )
            )
        before.update(values)
    return days


def _read(where: str, document: Mapping[str, Any]) -> tuple[Key, dict[int, int]]:
    if set(document) != _KEYS:
        names = ", ".join(sorted(_KEYS))
        raise NotADocument(
            tr("{where}: it must tell {names} and nothing else.", where=where, names=names)
        )
    probe, day, told = (document[name] for name in ("probe", "day", "hundredths"))
    if not isinstance(probe, str) or not probe.strip():
        raise NotADocument(
            tr("{where}: probe is {probe!r}; it must be its name.", where=where, probe=probe)
        )
    if not isinstance(told, list) or len(told) != SLOTS or not all(map(_is_told, told)):
        raise NotADocument(
            tr(
                "{where}: hundredths must be {count} whole numbers or null.",
                where=where,
                count=SLOTS,
            )
        )
    whose = _whose(where, document["batch"])
    values = {slot: value for slot, value in enumerate(told) if value is not None}
    return (probe, _day_number(where, day), whose), values


def _whose(where: str, told: object) -> Whose:
    found = whose_of(told)
    if found is None:
        raise NotADocument(
            tr("{where}: batch is {batch!r}; it must be a key.", where=where, batch=told)
        )
    return found


def _is_told(value: object) -> bool:
    if value is None:
        return True
    return isinstance(value, int) and not isinstance(value, bool) and abs(value) <= _MOST


def _day_number(where: str, day: object) -> int:
    try:
        return day_number(date.fromisoformat(str(day)))
    except ValueError:
        raise NotADocument(
            tr("{where}: day is {day!r}; it must be such as 2026-03-01.", where=where, day=day)
        ) from None
