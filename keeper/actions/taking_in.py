"""Take in a keeper's own records: all or nothing, one batch, and never twice."""

import unicodedata
from collections import Counter
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from functools import lru_cache
from pathlib import Path
from typing import Any

from keeper.actions.csv_file import Fault
from keeper.actions.expecting import known_profile
from keeper.actions.keeping import Keeping, Written
from keeper.actions.records_csv import (
    AnimalRow,
    AnimalsRead,
    DiaryRow,
    Hatched,
    Spoken,
    read_animals,
    read_diary,
)
from keeper.husbandry.animal import AnimalId, Sex
from keeper.husbandry.events import (
    AboutAnimal,
    AnimalEvent,
    Described,
    Evidence,
    Moved,
    Offer,
    Regurgitation,
    Result,
    Sexed,
    ShedSign,
    ShedStage,
    Weighing,
)
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.reasons import Figure, Reason
from keeper.husbandry.when import Happened, on_day
from keeper.language import tr
from keeper.reports.words import sentence
from keeper.store import backups, reading
from keeper.store.journal import BatchWriter, batch

VERB = "take in"
_day = lru_cache(maxsize=20_000)(on_day)  # a diary tells many entries of few days
_KINDS = (Offer, Regurgitation, Weighing, ShedSign)


@dataclass(frozen=True, slots=True, kw_only=True)
class TakenIn:
    """What a take-in did, or would do: counts of what is new, and every fault.

    skipped: rows that the book holds already. written is None when nothing was.
    """

    animals: int
    entries: int
    skipped: int
    faults: tuple[Fault, ...] = ()
    written: Written | None = None


def take_in(
    keeping: Keeping, *, animals: Path | None, diary: Path | None, dry_run: bool = False
) -> TakenIn:
    """Take in records from CSV files as one batch; with any fault nothing is written.

    Raises:
        BookError: the book, or the backup made before, could not be written.
    """
    borne = Counter(code_now(row) for row in reading.board(keeping.book))
    known = {code_now(row): row for row in reading.board(keeping.book)}
    ambiguous = {code: count for code, count in borne.items() if count > 1}
    read = AnimalsRead()
    if animals is not None:
        read = read_animals(animals, _slug_of(keeping), keeping.today)
    faults = [*read.faults]
    if animals is not None:
        faults += _disagreements(keeping, animals.name, read.rows, known, ambiguous)
    diary_rows: list[DiaryRow] = []
    if diary is not None:
        spoken = _spoken(read, known, ambiguous)
        diary_rows, diary_faults = read_diary(diary, spoken, keeping.today)
        faults += diary_faults
    if faults:
        return TakenIn(animals=0, entries=0, skipped=0, faults=tuple(faults))
    return _taken(keeping, read.rows, diary_rows, known, dry_run=dry_run)


def code_now(row: AnimalNow) -> str:
    """The code as files are compared by it."""
    return unicodedata.normalize("NFC", row.code)


def _slug_of(keeping: Keeping) -> Callable[[str], str]:
    return lambda written: known_profile(keeping.shipped, written).slug


def _spoken(
    read: AnimalsRead, known: Mapping[str, AnimalNow], ambiguous: Mapping[str, int]
) -> Spoken:
    """A row that is faulty itself still says that its animal is there."""
    hatched: dict[str, date | None] = {code: row.hatched_first for code, row in known.items()}
    hatched |= {code: None for code in read.codes if code not in hatched}
    hatched |= {row.animal: row.hatched[0] for row in read.rows if row.hatched[0]}
    return Spoken(hatched=hatched, all_known=read.whole, ambiguous=ambiguous)


def _disagreements(
    keeping: Keeping,
    file: str,
    rows: Sequence[AnimalRow],
    known: Mapping[str, AnimalNow],
    ambiguous: Mapping[str, int],
) -> Iterator[Fault]:
    """Rows about animals of the book that say what the book never said."""
    for row in rows:
        if row.animal in ambiguous:
            figures = {"count": ambiguous[row.animal]}
            yield _fault(file, row, "animal", row.animal, "code borne twice", figures)
        elif row.animal in known:
            yield from _contradicted(keeping, file, row, known[row.animal])


def _contradicted(keeping: Keeping, file: str, row: AnimalRow, now: AnimalNow) -> Iterator[Fault]:
    """What the book holds now or once held is no news: an animal moves on, its old file stays.

    An empty cell says nothing, so it contradicts nothing.
    """
    told = {
        "species": (row.species, now.species),
        "sex": (None if row.sex is Sex.UNKNOWN else row.sex, now.sex),
        "hatched": (_span(row.hatched), _span((now.hatched_first, now.hatched_last))),
        "place": (row.place, now.place),
    }
    new = {name: pair for name, pair in told.items() if pair[0] not in (None, pair[1])}
    held = _once_held(keeping, now) if new else {}
    for column, (written, kept) in new.items():
        if written not in held[column]:
            figures = {"animal": row.animal, "kept": _shown(kept)}
            value = _shown(written) or ""
            yield _fault(file, row, column, value, "disagrees with the book", figures)


def _span(hatched: Hatched) -> Hatched | None:
    return hatched if hatched[0] else None


def _once_held(keeping: Keeping, now: AnimalNow) -> dict[str, set[object]]:
    """What was ever written of an animal and stands."""
    described = [e.event for e in reading.history(keeping.book, Described, now.animal)]
    sexes = reading.history(keeping.book, Sexed, now.animal)
    moves = reading.history(keeping.book, Moved, now.animal)
    return {
        "species": {event.species for event in described},
        "hatched": {(event.hatched_first, event.hatched_last) for event in described},
        "sex": {entry.event.sex for entry in sexes},
        "place": {entry.event.place for entry in moves},
    }


def _fault(
    file: str, row: AnimalRow, column: str, value: str, why: str, figures: Mapping[str, Figure]
) -> Fault:
    message = sentence(Reason(why, {"value": value, **figures}))
    return Fault(file=file, line=row.line, column=column, value=value, message=message)


def _shown(value: object) -> str | None:
    """A value as a file would write it; a span of hatching days as ISO 8601 has it."""
    if isinstance(value, tuple):
        first, last = value
        return f"{first}" if first == last else f"{first}/{last}"
    return None if value is None else str(value)


def _taken(
    keeping: Keeping,
    animal_rows: Sequence[AnimalRow],
    diary_rows: Sequence[DiaryRow],
    known: Mapping[str, AnimalNow],
    *,
    dry_run: bool,
) -> TakenIn:
    new_animals = [row for row in animal_rows if row.animal not in known]
    new_entries = _not_yet_written(keeping, diary_rows, known)
    counts = TakenIn(
        animals=len(new_animals),
        entries=len(new_entries),
        skipped=len(animal_rows) + len(diary_rows) - len(new_animals) - len(new_entries),
    )
    if dry_run or not (new_animals or new_entries):
        return counts
    backups.back_up(keeping.book, "before take in")
    written = _write(keeping, new_animals, new_entries, known)
    return TakenIn(
        animals=counts.animals, entries=counts.entries, skipped=counts.skipped, written=written
    )


def _not_yet_written(
    keeping: Keeping, rows: Sequence[DiaryRow], known: Mapping[str, AnimalNow]
) -> list[DiaryRow]:
    """Rows the book lacks. The same line twice in one diary is two events, not one."""
    held: Counter[tuple[object, ...]] = Counter()
    for code in {row.animal for row in rows} & set(known):
        for kind in _KINDS:
            for entry in reading.history(keeping.book, kind, known[code].animal):
                held[_print_of_event(code, entry.event)] += 1
    new = []
    for row in rows:
        mark = _print_of_row(row) if held else None
        if mark is not None and held[mark] > 0:
            held[mark] -= 1
        else:
            new.append(row)
    return new


def _print_of_row(row: DiaryRow) -> tuple[object, ...]:
    return _print_of_event(row.animal, _event(row, 0, timedelta(0)))


def _print_of_event(code: str, event: AnimalEvent) -> tuple[object, ...]:
    """What two tellings of the same event have in common."""
    told: tuple[object, ...]
    match event:
        case Offer():
            told = (event.result, event.mass_g)
        case Weighing():
            told = (event.weight_g,)
        case ShedSign():
            told = (event.stage,)
        case _:
            told = ()
    return (code, type(event), event.happened.day, event.note, *told)


def _write(
    keeping: Keeping,
    animals: Sequence[AnimalRow],
    entries: Sequence[DiaryRow],
    known: Mapping[str, AnimalNow],
) -> Written:
    at = keeping.now()
    offset = at.utcoffset() or timedelta(0)
    first_told: dict[str, date] = {}
    for row in entries:
        first_told[row.animal] = min(row.date, first_told.get(row.animal, row.date))
    keys = {code: row.animal for code, row in known.items()}
    with batch(keeping.book, verb=VERB, keeper=keeping.keeper, written=at) as writer:
        for new in animals:
            since = on_day(new.hatched[0] or first_told.get(new.animal, at.date()), offset)
            keys[new.animal] = _add_animal(writer, new, since)
        writer.add(*(_event(row, keys[row.animal], offset) for row in entries))
    what = tr("{animals} animals, {entries} entries", animals=len(animals), entries=len(entries))
    return Written(batch=writer.id, at=at, verb=VERB, what=what)


def _add_animal(writer: BatchWriter, row: AnimalRow, since: Happened) -> AnimalId:
    animal = writer.new_animal()
    first, last = row.hatched
    writer.add(
        Described(
            animal=animal,
            happened=since,
            code=row.animal,
            species=row.species,
            hatched_first=first,
            hatched_last=last,
        ),
        Sexed(animal=animal, happened=since, sex=row.sex),
    )
    if row.place:
        writer.add(Moved(animal=animal, happened=since, place=row.place))
    return animal


def _event(row: DiaryRow, animal: AnimalId, offset: timedelta) -> AboutAnimal:
    about: dict[str, Any] = {
        "animal": animal,
        "happened": _day(row.date, offset),
        "note": row.note,
    }
    if row.what in ("fed", "refused"):
        result = Result.TAKEN if row.what == "fed" else Result.REFUSED
        return Offer(result=result, evidence=Evidence.REPORTED, mass_g=row.grams, **about)
    if row.what == "weighed" and row.grams is not None:
        return Weighing(weight_g=row.grams, **about)
    if row.what == "regurgitated":
        return Regurgitation(**about)
    return ShedSign(stage=ShedStage(row.what), **about)
