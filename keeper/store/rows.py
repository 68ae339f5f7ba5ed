"""Events to rows and back. A new kind of event is one line in TABLES and one table.

A field's type and the unit in its name decide its column: dates become days,
``_g`` milligrams, ``_cm`` millimetres, ``_c`` thousandths of a degree, enums their word.
"""

import math
from collections import deque
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, fields
from datetime import UTC, date, datetime, timedelta, timezone
from enum import StrEnum
from functools import cache, partial
from typing import Any, get_args, get_type_hints

from keeper.husbandry import care, events, genes, house
from keeper.husbandry.events import Event
from keeper.husbandry.when import Happened

Cell = int | float | str | None

EPOCH_DAY = date(1970, 1, 1).toordinal()
_EPOCH = datetime(1970, 1, 1, tzinfo=UTC)
_MOMENT = timedelta(0)

TABLES: dict[type[Any], str] = {
    events.Described: "described",
    events.Sexed: "sexed",
    events.Stock: "stock",
    events.Moved: "moved",
    events.Offer: "offer",
    events.Regurgitation: "regurgitation",
    events.Weighing: "weighing",
    events.Measured: "measured",
    events.TotalLength: "total_length",
    events.ShedSign: "shed_sign",
    events.HoldSet: "hold_set",
    events.HoldEnded: "hold_ended",
    events.Clutch: "clutch",
    events.Paired: "paired",
    events.Remark: "remark",
    events.Snooze: "snooze",
    events.AsideUntil: "aside_until",
    events.OfferedThrough: "offered_through",
    events.StartStep: "start_step",
    events.Cleaned: "cleaned",
    care.Medicine: "medicine",
    care.Dose: "dose",
    care.FaecalTest: "faecal_test",
    care.Permit: "permit",
    care.Eggs: "eggs",
    care.EggsPlaced: "eggs_placed",
    genes.GeneRead: "gene_read",
    genes.LookScored: "look_scored",
    events.Heat: "heat",
    events.ProbePlaced: "probe_placed",
    events.Setting: "setting",
    events.Override: "override",
    events.RoundOpened: "round_opened",
    events.RoundClosed: "round_closed",
    events.NightAnswer: "night_answer",
    events.PlanLine: "plan_line",
    house.DailyRound: "daily_round",
    house.BagOpened: "bag_opened",
    house.PreyCounted: "prey_counted",
    house.MiteStep: "mite_step",
    house.HousePermit: "house_permit",
    house.PlaceAside: "place_aside",
    house.ReadingsTaken: "readings_taken",
    house.KeeperAway: "keeper_away",
    genes.GeneNamed: "gene_named",
}
KINDS = {table: kind for kind, table in TABLES.items()}
_MOST = 2**63 - 1
_UNITS = {"_g": ("_mg", 1000), "_cm": ("_mm", 10), "_c": ("_mc", 1000)}


def day_number(day: date) -> int:
    return day.toordinal() - EPOCH_DAY


def day_of(number: int) -> date:
    return date.fromordinal(number + EPOCH_DAY)


class Decoded(dict[Any, Any]):
    """What each cell that was met says; a cell is decoded once, None stays None."""

    def __init__(self, decode: Callable[[Any], Any]) -> None:
        super().__init__({None: None})
        self._decode = decode

    def __missing__(self, cell: Any) -> Any:
        found = self[cell] = self._decode(cell)
        return found


_DAYS = Decoded(day_of)
"""Kept for good: a book knows some thousands of days, and a board asks for each many times."""


@dataclass(frozen=True, slots=True)
class Column:
    """How one field of a dataclass lies in its table. factor: cells are so many times as large."""

    field: str
    name: str
    encode: Callable[[Any], Cell]
    decode: Callable[[Any], Any]
    factor: int = 0


def _same(value: Any) -> Any:
    return value


def checked_text(value: str) -> str:
    """*value* as plain text, if every reader of the book will get it back letter for letter.

    Raises ValueError for NUL, where other readers stop, and for half a surrogate pair.
    """
    try:
        is_whole = "\x00" not in value and (value.isascii() or bool(value.encode()))
    except UnicodeEncodeError:
        is_whole = False
    if not is_whole:
        raise ValueError(f"text cannot hold NUL or half a character, got {value!r}")
    return value if type(value) is str else str(value)


def _whole(value: int) -> int:
    if not -_MOST <= value <= _MOST:
        raise ValueError(f"a number must fit in 64 bits, got {value!r}")
    return int(value) if type(value) is bool else value


def _finite(value: float) -> float:
    if not math.isfinite(value):
        raise ValueError(f"a number is needed, got {value!r}")
    return float(value) + 0.0  # SQLite keeps no minus before a nought


def _scaled(factor: int, value: float) -> int:
    return _whole(round(_finite(value) * factor))


def _scaled_size(factor: int, value: float) -> int:
    scaled = _scaled(factor, value)
    if scaled == 0 and value > 0:
        raise ValueError(f"{value!r} is too small: the book keeps steps of {1 / factor:g}")
    return scaled


_CHECKED: dict[Any, Callable[[Any], Cell]] = {str: checked_text, int: _whole, float: _finite}


def _unscaled(factor: int, cell: int) -> float:
    return cell / factor


def _column(field: str, hint: Any) -> Column:
    kinds = [kind for kind in get_args(hint) or (hint,) if kind is not type(None)]
    kind = kinds[0]
    if kind is date:
        return Column(field, field, day_number, day_of)
    if kind is bool:
        return Column(field, field, int, bool)
    if isinstance(kind, type) and issubclass(kind, StrEnum):
        return Column(field, field, str, kind)
    for suffix, (stored, factor) in _UNITS.items():
        if field.endswith(suffix):
            name = field.removesuffix(suffix) + stored
            encode = _scaled if suffix == "_c" else _scaled_size
            told = partial(_unscaled, factor)
            return Column(field, name, partial(encode, factor), told, factor)
    return Column(field, field, _CHECKED[kind], _same)


def columns_of(kind: type[Any], skip: Sequence[str] = ("happened",)) -> tuple[Column, ...]:
    """The columns of a dataclass, in the order of its fields."""
    hints = get_type_hints(kind)
    return tuple(_column(f.name, hints[f.name]) for f in fields(kind) if f.name not in skip)


def decoded(column: Column, cells: Sequence[Any]) -> Iterable[Any]:
    """The values that *cells* of one column tell."""
    if column.decode is _same:
        return cells
    if column.factor:
        return [None if cell is None else cell / column.factor for cell in cells]
    values = _DAYS if column.decode is day_of else Decoded(column.decode)
    return map(values.__getitem__, cells)


def filled(made: Sequence[Any], columns: Sequence[Column], cells: Iterable[Sequence[Cell]]) -> None:
    """Put cells, column by column, into new objects of one dataclass.

    Their slots are filled directly: a constructor of many fields takes longer than all the rest,
    and what lies in the book was checked when it was written.
    """
    for column, found in zip(columns, cells, strict=True):
        put = getattr(type(made[0]), column.field).__set__
        deque(map(put, made, decoded(column, found)), maxlen=0)


_COLUMNS = {kind: columns_of(kind) for kind in TABLES}
_FIELDS = {kind: tuple(c.field for c in columns) for kind, columns in _COLUMNS.items()}
_ENCODERS = {kind: tuple((c.field, c.encode) for c in cols) for kind, cols in _COLUMNS.items()}
_DECODERS = {
    kind: tuple((c.field, c.decode) for c in columns if c.decode is not _same)
    for kind, columns in _COLUMNS.items()
}
_WHEN = ("at", "span", "utc_offset", "day", "batch", "seq")


def when_cells(happened: Happened) -> tuple[int, int, int, int]:
    """Whole seconds and minutes: what is finer is dropped."""
    offset = happened.at.utcoffset() or timedelta(0)
    return (
        (happened.at - _EPOCH) // timedelta(seconds=1),
        happened.span // timedelta(seconds=1),
        offset // timedelta(minutes=1),
        day_number(happened.day),
    )


def when_of(at: int, span: int, utc_offset: int, day: int) -> Happened:
    return Happened(
        at=datetime.fromtimestamp(at, _zone(utc_offset)),
        span=timedelta(seconds=span) if span else _MOMENT,
        day=day_of(day),
    )


def _whens(cells: Sequence[Sequence[Any]]) -> list[Happened]:
    """As ``when_of`` for columns of cells: equal spans and days are made once."""
    ats, spans, offsets, days = cells[:4]
    whens = [Happened.__new__(Happened) for _ in ats]
    same_spans = {span: timedelta(seconds=span) if span else _MOMENT for span in set(spans)}
    columns: dict[str, Iterable[Any]] = {
        "at": map(datetime.fromtimestamp, ats, map(_zone, offsets)),
        "span": map(same_spans.__getitem__, spans),
        "day": map(_DAYS.__getitem__, days),
    }
    for field, values in columns.items():
        deque(map(getattr(Happened, field).__set__, whens, values), maxlen=0)
    return whens


@cache
def _zone(utc_offset: int) -> timezone:
    return timezone(timedelta(minutes=utc_offset)) if utc_offset else UTC


def cell_names(kind: type[Any]) -> tuple[str, ...]:
    """The columns of an event's table in the order of ``from_row`` and ``to_row``."""
    return (*_WHEN, *(column.name for column in _COLUMNS[kind]))


def insert_sql(kind: type[Any]) -> str:
    """The statement that writes cells as ``to_row`` gives them."""
    return _INSERTS[kind]


def select_columns(kind: type[Any]) -> str:
    """What to select of an event's table, called e, for ``from_row``."""
    return _SELECTS[kind]


def _insert(kind: type[Any]) -> str:
    names = cell_names(kind)
    marks = ", ".join("?" * len(names))
    return f"INSERT INTO {TABLES[kind]} ({', '.join(names)}) VALUES ({marks})"


_INSERTS = {kind: _insert(kind) for kind in TABLES}
_SELECTS = {kind: ", ".join(f"e.{name}" for name in cell_names(kind)) for kind in TABLES}


def to_row(event: Event, batch: int, seq: int) -> tuple[Cell, ...]:
    """The cells of *event* in the order of ``insert_sql``."""
    cells = [
        None if (value := getattr(event, field)) is None else encode(value)
        for field, encode in _ENCODERS[type(event)]
    ]
    return (*when_cells(event.happened), batch, seq, *cells)


def from_row(kind: type[Any], row: Sequence[Any]) -> Any:
    """The event of *kind* from cells in the order of ``select_columns``."""
    given = dict(zip(_FIELDS[kind], row[len(_WHEN) :], strict=True))
    for field, decode in _DECODERS[kind]:
        if given[field] is not None:
            given[field] = decode(given[field])
    return kind(happened=when_of(*row[:4]), **given)


def from_rows(kind: type[Any], rows: Sequence[Sequence[Any]]) -> list[Any]:
    """As ``from_row`` for many, in less than half the time."""
    made: list[Any] = [object.__new__(kind) for _ in rows]
    if made:
        cells = list(zip(*rows, strict=True))
        deque(map(kind.happened.__set__, made, _whens(cells)), maxlen=0)
        filled(made, _COLUMNS[kind], cells[len(_WHEN) :])
    return made
