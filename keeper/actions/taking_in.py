"""Take in a keeper's own records: all or nothing, one batch, and never twice."""

from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from pathlib import Path
from typing import Any

from keeper.actions.keeping import Keeping, Written
from keeper.actions.records_csv import AnimalRow, DiaryRow, Fault, read_animals, read_diary
from keeper.husbandry.animal import AnimalId
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
from keeper.husbandry.when import Happened, on_day
from keeper.store import backups, reading
from keeper.store.journal import BatchWriter, batch
from keeper.store.species_files import profile_for

VERB = "take in"
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
    """Take in records from CSV files as one batch; with any fault nothing is written."""
    today = keeping.today
    known = {row.code: row for row in reading.board(keeping.book)}
    animal_rows: list[AnimalRow] = []
    diary_rows: list[DiaryRow] = []
    faults: list[Fault] = []
    if animals is not None:
        animal_rows, faults = read_animals(animals, _slug_of(keeping), today)
        faults += _disagreements(animals.name, animal_rows, known)
    if diary is not None:
        hatched = {code: row.hatched_first for code, row in known.items()}
        hatched |= {row.animal: row.hatched[0] for row in animal_rows}
        diary_rows, diary_faults = read_diary(diary, hatched, today)
        faults += diary_faults
    if faults:
        return TakenIn(animals=0, entries=0, skipped=0, faults=tuple(faults))
    return _taken(keeping, animal_rows, diary_rows, known, dry_run=dry_run)


def _slug_of(keeping: Keeping) -> Callable[[str], str]:
    return lambda written: profile_for(keeping.shipped, written).slug


def _disagreements(
    file: str, rows: Sequence[AnimalRow], known: Mapping[str, AnimalNow]
) -> list[Fault]:
    """Rows about animals of the book that say something else than the book does."""
    faults = []
    for row in rows:
        now = known.get(row.animal)
        if now is None:
            continue
        pairs = {
            "species": (row.species, now.species),
            "sex": (row.sex, now.sex),
            "hatched": (row.hatched, (now.hatched_first, now.hatched_last)),
            "place": (row.place, now.place),
        }
        faults += [
            Fault(
                file=file,
                line=row.line,
                column=column,
                value=_shown(written),
                message=f"disagrees with the book, where {row.animal} has {_shown(kept)};"
                " change it there or leave the row out",
            )
            for column, (written, kept) in pairs.items()
            if written != kept
        ]
    return faults


def _shown(value: object) -> str:
    if isinstance(value, tuple):
        first, last = value
        return "no date" if first is None else f"{first}" if first == last else f"{first} to {last}"
    return "nothing" if value is None else str(value)


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
        mark = _print_of_event(row.animal, _event(row, 0, timedelta(0)))
        if held[mark] > 0:
            held[mark] -= 1
        else:
            new.append(row)
    return new


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
    what = f"{len(animals)} animals, {len(entries)} entries"
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
        "happened": on_day(row.date, offset),
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
