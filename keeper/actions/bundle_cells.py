"""What a batch says as cells of tables, one table for each kind of entry, and back exactly.

An empty cell is *not known*, the mark alone is a text without letters, and a text that a
spreadsheet might run has the mark before it. Figures are written so that they are read back
to the last bit, in grams, centimetres and degrees Celsius whatever the window shows.
"""

import re
from collections.abc import Mapping
from typing import Any, get_args

from keeper.actions.cells import MARK, guarded, unguarded
from keeper.husbandry.reasons import because
from keeper.reports.words import sentence
from keeper.store import readings_out
from keeper.store.documents import NotADocument, fields_of
from keeper.store.rows import KINDS

BATCHES, WITHDRAWALS, READINGS, COVER = "batches", "withdrawals", "readings", "cover"
COVER_COLUMNS = ("format", "version", "batches", "readings")
BATCH_COLUMNS = (
    *("batch", "stands", "station", "keeper", "verb", "written", "reason"),
    *("animals", "rounds", "entries", "withdrawals"),
)
WITHDRAWAL_COLUMNS = ("batch", "seq", "target_batch", "target_seq")
READING_COLUMNS = ("probe", "day", "hundredths", "batch")
_ENTRY_HEAD = ("batch", "seq", "stands", "called", "at", "span", "day")
"""stands and called are for those who read the table; they are not read back."""

_WHOLE = re.compile(r"-?[0-9]{1,19}")
_NUMBER = re.compile(r"-?[0-9]+(\.[0-9]+)?(e[-+]?[0-9]{1,3})?")
_YES_NO = {"yes": True, "no": False}
_NO_READING = "."


class NotRead(ValueError):
    """A cell that says nothing where a value of that type belongs."""


def entry_columns(table: str) -> tuple[str, ...]:
    """The heading of the table of one kind of entry."""
    return (*_ENTRY_HEAD, *fields_of(KINDS[table]))


def cell(value: object) -> str:
    """A value of a document as a cell.

    >>> cell(None), cell(""), cell(True), cell(41.2), cell("=1+1")
    ('', "'", 'yes', '41.2', "'=1+1")
    """
    if value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, float):
        return guarded(repr(value))
    text = str(value)
    return guarded(text) if text else MARK


def value_of(hint: Any, written: str) -> Any:
    """What *written* says where a value of type *hint* belongs; the inverse of ``cell``.

    Raises NotRead for what cannot be read so.
    """
    if not written:
        return None
    text = "" if written == MARK else unguarded(written)
    kind = (get_args(hint) or (hint,))[0]
    if kind is bool:
        return _YES_NO[text] if text in _YES_NO else _refused(text)
    if kind is int:
        return int(text) if _WHOLE.fullmatch(text) else _refused(text)
    if kind is float:
        return float(text) if _NUMBER.fullmatch(text) else _refused(text)
    return text


def entry_row(
    table: str, batch: int, said: Mapping[str, Any], *, stands: bool, called: str
) -> tuple[str, ...]:
    """The cells of one entry, said as it stands in a document."""
    happened = said["happened"]
    head = (batch, said["seq"], stands, called, happened["at"], happened["span"], happened["day"])
    fields = (said["fields"][name] for name in fields_of(KINDS[table]))
    return tuple(cell(value) for value in (*head, *fields))


def reading_row(said: Mapping[str, Any]) -> tuple[str, ...]:
    """One day of a probe; a dot stands where there is no reading, the batch where a file was."""
    told = (_NO_READING if value is None else str(value) for value in said["hundredths"])
    hundredths = guarded(" ".join(told))
    return cell(said["probe"]), cell(said["day"]), hundredths, cell(said["batch"])


def hundredths_of(written: str) -> list[int | None]:
    """What the cell of a day's readings says; the inverse of what ``reading_row`` writes."""
    told = unguarded(written).split()
    return [None if each == _NO_READING else value_of(int, each) for each in told]


def whose_of(written: str) -> str | None:
    """Whose the readings of a day are, as ``store.readings_out`` tells it."""
    told: str | None = value_of(str, written)
    return told if readings_out.whose_of(told) is not None else _refused(written)


def not_read(column: str, written: str) -> NotADocument:
    """That a cell of *column* cannot be read."""
    told = because("bundle cell", column=column, written=repr(written[:60]))
    return NotADocument(sentence(told))


def _refused(text: str) -> Any:
    raise NotRead(text)
