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
from keeper.store.documents import FORMAT, VERSION, NotADocument, fields_of
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

Row = Mapping[str, str]


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

    Raises ValueError for what cannot be read so.
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


def entry_document(table: str, row: Row) -> dict[str, Any]:
    """One entry as it stands in a document, from the cells of its row."""
    happened = {name: value_of(str, row[name]) for name in ("at", "span", "day")}
    fields = {name: _read(row, name, hint) for name, hint in fields_of(KINDS[table]).items()}
    return {"kind": table, "seq": _read(row, "seq", int), "happened": happened, "fields": fields}


def batch_document(row: Row) -> dict[str, Any]:
    """A batch without its entries and withdrawals."""
    texts = {name: _text(row, name) for name in ("station", "keeper", "verb")}
    return {
        "format": FORMAT,
        "version": VERSION,
        "batch": _read(row, "batch", int),
        **texts,
        "written": value_of(str, row["written"]),
        "reason": value_of(str, row["reason"]),
        "animals": _keys(row, "animals"),
        "rounds": _keys(row, "rounds"),
        "entries": [],
        "withdrawals": [],
    }


def withdrawal_document(row: Row) -> dict[str, Any]:
    """One withdrawal as it stands in a document."""
    return {name: _read(row, name, int) for name in WITHDRAWAL_COLUMNS[1:]}


def reading_row(said: Mapping[str, Any]) -> tuple[str, ...]:
    """One day of a probe; a dot stands where there is no reading, the batch where a file was."""
    told = (_NO_READING if value is None else str(value) for value in said["hundredths"])
    hundredths = guarded(" ".join(told))
    return cell(said["probe"]), cell(said["day"]), hundredths, cell(said["batch"])


def reading_document(row: Row) -> dict[str, Any]:
    """One day of a probe from the cells of its row."""
    told = unguarded(row["hundredths"]).split()
    hundredths = [None if each == _NO_READING else _number(each) for each in told]
    return {
        "probe": value_of(str, row["probe"]),
        "day": value_of(str, row["day"]),
        "hundredths": hundredths,
        "batch": _read(row, "batch", int),
    }


def count_in(row: Row, column: str) -> int:
    """A count that has to be there. Raises NotADocument where it is not, or is none."""
    found = _read(row, column, int)
    if found is None:
        raise _not_read(column, "")
    return int(found)


def _text(row: Row, column: str) -> str:
    return value_of(str, row[column]) or ""


def _keys(row: Row, column: str) -> list[int]:
    return [_number(each, column) for each in row[column].split()]


def _number(written: str, column: str = "hundredths") -> int:
    return int(_read({column: written}, column, int))


def _read(row: Row, column: str, hint: Any) -> Any:
    try:
        return value_of(hint, row[column])
    except ValueError:
        raise _not_read(column, row[column]) from None


def _not_read(column: str, written: str) -> NotADocument:
    told = because("bundle cell", column=column, written=repr(written[:60]))
    return NotADocument(sentence(told))


def _refused(text: str) -> Any:
    raise ValueError(text)
