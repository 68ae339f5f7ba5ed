"""The JSON of a batch: what is said, in words, and how strictly it is read back.

Keys and other whole numbers beyond 2^53 are strings of digits, because other readers of
JSON would round them. Every field is written, None as null. Spans are ISO 8601 durations.
"""

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, fields
from datetime import datetime
from functools import cache
from typing import Any, get_args, get_origin, get_type_hints

import msgspec

from keeper.husbandry.events import Event
from keeper.husbandry.when import Happened
from keeper.language import tr
from keeper.store.errors import BookError
from keeper.store.journal import KEY_END, BatchId, EntryKey
from keeper.store.rows import KINDS, TABLES, checked_text, from_row, to_row
from keeper.store.standing import WHOLE

FORMAT = "keeper batch"
VERSION = 1
_EXACT = 2**53
_DIGITS = re.compile(r"-?[0-9]{1,19}")
_SHOWN = 60


class NotADocument(BookError):
    """A document says something that the book cannot hold; the text says where."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Document:
    """All that one batch says. An entry's number is its position."""

    batch: BatchId
    station: str
    keeper: str
    verb: str
    written: datetime
    reason: str | None
    animals: tuple[int, ...]
    rounds: tuple[int, ...]
    entries: tuple[Event, ...]
    withdrawals: tuple[EntryKey, ...]


_HEAD = {
    "format": str,
    "version": int,
    "batch": int,
    "station": str,
    "keeper": str,
    "verb": str,
    "written": datetime,
    "reason": str | None,
    "animals": list[int],
    "rounds": list[int],
    "entries": list[dict[str, Any]],
    "withdrawals": list[dict[str, Any]],
}
_FIELDS: dict[Any, dict[str, Any]] = {
    kind: {
        field.name: get_type_hints(kind)[field.name]
        for field in fields(kind)
        if field.name != "happened"
    }
    for kind in (*TABLES, Happened)
}
_ENTRY = {"kind": str, "seq": int, "happened": dict[str, Any], "fields": dict[str, Any]}
_WITHDRAWAL = {"seq": int, "target_batch": int, "target_seq": int | None}


def fields_of(kind: type[Any]) -> Mapping[str, Any]:
    """What an entry of *kind* says, each with its type; the time is told beside it."""
    return _FIELDS[kind]


def entry_json(seq: int, event: Event) -> dict[str, Any]:
    """One entry, number *seq* of its batch, as it stands in a document."""
    said = {name: _number(value) for name, value in msgspec.to_builtins(event).items()}
    happened = said.pop("happened")
    return {"kind": TABLES[type(event)], "seq": seq, "happened": happened, "fields": said}


def to_json(document: Document) -> dict[str, Any]:
    """*document* as values that any JSON writer takes."""
    return {
        "format": FORMAT,
        "version": VERSION,
        "batch": _number(document.batch),
        "station": document.station,
        "keeper": document.keeper,
        "verb": document.verb,
        "written": document.written.isoformat(timespec="milliseconds"),
        "reason": document.reason,
        "animals": [_number(key) for key in document.animals],
        "rounds": [_number(key) for key in document.rounds],
        "entries": [entry_json(n, event) for n, event in enumerate(document.entries)],
        "withdrawals": [_withdrawal_json(n, key) for n, key in enumerate(document.withdrawals)],
    }


def from_json(given: object) -> Document:
    """Read one document.

    Raises:
        NotADocument: anything in it is missing, unknown, impossible or finer than a book keeps.
    """
    if not isinstance(given, Mapping):
        raise NotADocument(tr("A batch must be a JSON object, got {given}.", given=_short(given)))
    head = _read(given, _HEAD, tr("The batch"))
    where = tr("Batch {batch}", batch=head["batch"])
    _refuse_unless(head["format"] == FORMAT, where, "format", head["format"], repr(FORMAT))
    _refuse_unless(head["version"] == VERSION, where, "version", head["version"], str(VERSION))
    _refuse_broken_text(where, head)
    keys = (*head["animals"], *head["rounds"])
    refuse_odd_head(head["batch"], head["written"], head["reason"], keys)
    return Document(
        batch=head["batch"],
        station=head["station"],
        keeper=head["keeper"],
        verb=head["verb"],
        written=head["written"],
        reason=head["reason"],
        animals=tuple(head["animals"]),
        rounds=tuple(head["rounds"]),
        entries=_entries(where, head["batch"], head["entries"]),
        withdrawals=_withdrawals(where, head["batch"], head["withdrawals"]),
    )


def refuse_odd_head(
    batch: BatchId, written: datetime, reason: str | None, keys: Sequence[int]
) -> None:
    """
    keys: of the animals and rounds that the batch brought.

    Raises:
        NotADocument: no batch that a book wrote has such a key, time of writing, reason or keys.
    """
    where = tr("Batch {batch}", batch=batch)
    _refuse_unless(0 < batch < KEY_END, where, "key", batch, tr("a key before 2080"))
    _refuse_odd_time(where, written)
    _refuse_broken_text(where, {"reason": reason})
    if keys:
        _refuse_foreign_keys(where, batch, keys)


def withdrawal_target(batch: BatchId, target: int, seq: int | None) -> tuple[int, int]:
    """What *batch* withdraws, as the book holds it: a batch and an entry's number there.

    Raises:
        NotADocument: no batch can withdraw that.
    """
    where = tr("Batch {batch}", batch=batch)
    _refuse_unless(0 < target < batch, where, "target_batch", target, tr("an older batch"))
    _refuse_unless(seq is None or seq >= 0, where, "target_seq", seq, tr("an entry or null"))
    return target, WHOLE if seq is None else seq


def _number(value: Any) -> Any:
    is_big = type(value) is int and not -_EXACT <= value <= _EXACT
    return str(value) if is_big else value


def _withdrawal_json(seq: int, key: EntryKey) -> dict[str, Any]:
    target_seq = None if key.seq == WHOLE else key.seq
    return {"seq": seq, "target_batch": _number(key.batch), "target_seq": target_seq}


def _entries(where: str, batch: BatchId, given: Sequence[Any]) -> tuple[Event, ...]:
    numbered: dict[int, Event] = {}
    for position, entry in enumerate(given):
        head = _read(
            entry, _ENTRY, tr("{where}, item {number} of entries", where=where, number=position)
        )
        inside = tr(
            "{where}, entry {number} ({kind})",
            where=where,
            number=head["seq"],
            kind=_short(head["kind"]),
        )
        known = head["kind"] in KINDS
        _refuse_unless(known, inside, "kind", head["kind"], tr("a kind this program knows"))
        numbered[head["seq"]] = _event(inside, KINDS[head["kind"]], batch, head)
    _refuse_gaps(where, "entries", list(numbered), len(given))
    return tuple(numbered[seq] for seq in sorted(numbered))


def _event(where: str, kind: type[Any], batch: BatchId, head: Mapping[str, Any]) -> Event:
    happened = _read(head["happened"], _FIELDS[Happened], f"{where}, happened")
    said = _read(head["fields"], _FIELDS[kind], where)
    try:
        event: Event = kind(happened=Happened(**happened), **said)
        kept: Event = from_row(kind, to_row(event, batch, head["seq"]))
    except (ValueError, OverflowError) as error:
        raise NotADocument(tr("{where}: {error}.", where=where, error=error)) from error
    if kept != event:
        raise NotADocument(
            tr(
                "{where}: it is finer than a book keeps, which would be {kept}.",
                where=where,
                kept=kept,
            )
        )
    return kept


def _withdrawals(where: str, batch: BatchId, given: Sequence[Any]) -> tuple[EntryKey, ...]:
    numbered: dict[int, EntryKey] = {}
    for position, withdrawal in enumerate(given):
        inside = tr("{where}, item {number} of withdrawals", where=where, number=position)
        head = _read(withdrawal, _WITHDRAWAL, inside)
        target = withdrawal_target(batch, head["target_batch"], head["target_seq"])
        numbered[head["seq"]] = EntryKey(*target)
    _refuse_gaps(where, "withdrawals", list(numbered), len(given))
    return tuple(numbered[seq] for seq in sorted(numbered))


def _read(given: Mapping[str, Any], hints: Mapping[str, Any], where: str) -> dict[str, Any]:
    """The members named in *hints*, each of its type, and no others."""
    missing = [name for name in hints if name not in given]
    unknown = [name for name in given if name not in hints]
    if missing:
        raise NotADocument(
            tr(
                "{where}: {name} is missing; it must be written, null if unknown.",
                where=where,
                name=missing[0],
            )
        )
    if unknown:
        raise NotADocument(
            tr(
                "{where}: {name} is not known here; a newer program may have written it.",
                where=where,
                name=_short(unknown[0]),
            )
        )
    return {name: _value(where, name, hint, given[name]) for name, hint in hints.items()}


def _value(where: str, name: str, hint: Any, given: Any) -> Any:
    item_hint = _item_hint(hint)
    try:
        if item_hint is not None and isinstance(given, list):
            return [msgspec.convert(_from_digits(item_hint, item), item_hint) for item in given]
        return msgspec.convert(_from_digits(hint, given), hint)
    except msgspec.ValidationError as error:
        told = tr(
            "{where}: {name} cannot be {given}: {error}.",
            where=where,
            name=name,
            given=_short(given),
            error=error,
        )
        raise NotADocument(told) from error


@cache
def _item_hint(hint: Any) -> Any:
    return get_args(hint)[0] if get_origin(hint) is list else None


@cache
def _takes_numbers(hint: Any) -> bool:
    return int in (get_args(hint) or (hint,))


def _from_digits(hint: Any, given: Any) -> Any:
    is_digits = isinstance(given, str) and _takes_numbers(hint) and _DIGITS.fullmatch(given)
    return int(given) if is_digits else given


def _refuse_unless(holds: bool, where: str, name: str, value: object, right: str) -> None:
    if not holds:
        raise NotADocument(
            tr(
                "{where}: {name} is {given}; it must be {right}.",
                where=where,
                name=name,
                given=_short(value),
                right=right,
            )
        )


def _refuse_odd_time(where: str, written: datetime) -> None:
    has_offset = written.utcoffset() is not None
    _refuse_unless(has_offset, where, "written", written, tr("a time with its offset"))
    in_range = 1900 <= written.year < 2200
    _refuse_unless(in_range, where, "written", written, tr("between 1900 and 2199"))
    is_kept = written.microsecond % 1000 == 0
    _refuse_unless(is_kept, where, "written", written, tr("whole milliseconds"))


def _refuse_broken_text(where: str, head: Mapping[str, Any]) -> None:
    for name in head.keys() & {"station", "keeper", "verb", "reason"}:
        try:
            checked_text(head[name] or "")
        except ValueError as error:
            raise NotADocument(
                tr("{where}: {name}: {error}.", where=where, name=name, error=error)
            ) from error


def _refuse_foreign_keys(where: str, batch: BatchId, keys: Sequence[int]) -> None:
    """A batch numbers its animals and rounds from its own key on."""
    expected = list(range(batch + 1, batch + 1 + len(keys)))
    found = sorted(keys)
    right = tr("the keys after its own")
    _refuse_unless(found == expected, where, "animals and rounds", found, right)


def refuse_gaps(batch: BatchId, name: str, numbers: Sequence[int]) -> None:
    """
    Raises:
        NotADocument: the entries or withdrawals of *batch* are not numbered from 0 on.
    """
    if sorted(numbers) != list(range(len(numbers))):
        _refuse_gaps(tr("Batch {batch}", batch=batch), name, numbers, len(numbers))


def _refuse_gaps(where: str, name: str, numbers: Sequence[int], count: int) -> None:
    is_whole = sorted(numbers) == list(range(count))
    right = tr("numbered from 0 to {last}", last=count - 1)
    _refuse_unless(is_whole, where, name, sorted(numbers), right)


def _short(value: object) -> str:
    text = repr(value)
    return text if len(text) <= _SHOWN else f"{text[:_SHOWN]}..."
