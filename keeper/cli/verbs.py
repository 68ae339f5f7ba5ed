"""Each command: ask the book, then say it in text or JSON."""

import argparse
import getpass
import io
import json
import sys
from collections.abc import Callable, Mapping, Sequence
from contextlib import closing
from pathlib import Path
from typing import Any

from keeper import clock
from keeper.actions.bundle_files import write_bundle
from keeper.actions.checking import flaws_of, is_sound, mend, mended_sentences
from keeper.actions.csv_file import Wrong
from keeper.actions.due_board import DueRow, due_rows
from keeper.actions.expecting import Expected, expect
from keeper.actions.joining import join, looked_at
from keeper.actions.joining_words import bundled_told, joining_told
from keeper.actions.keeping import Keeping, animal_coded, animals_on, new_keeping, open_keeping
from keeper.actions.passing_animals import pass_on
from keeper.actions.records_out import write_out
from keeper.actions.station import station_name
from keeper.actions.stock_register import register_csv, register_of
from keeper.actions.taking_in import TakenIn, take_in
from keeper.actions.watching import watch_lines
from keeper.cli.documents import (
    due_document,
    expected_document,
    forecast_document,
    joining_document,
    register_document,
    taken_document,
    watch_document,
)
from keeper.cli.genes import genes_document, genes_lines
from keeper.cli.parsing import CHECK_FAILED, DONE, WRONG
from keeper.husbandry.animal import Sex
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.reasons import because
from keeper.reports.figures import plain
from keeper.reports.words import because_text, sentence, species_words, word, word_of
from keeper.rules.feeding import DueState
from keeper.store.database import open_book
from keeper.store.errors import BookError
from keeper.store.species_files import shipped_profiles


def _new(given: argparse.Namespace) -> int:
    new_keeping(given.book, station=station_name(), now=clock.now, keeper=_user()).close()
    _say("new book", path=str(given.book))
    return DONE


def _take_in(given: argparse.Namespace) -> int:
    if given.animals is None and given.diary is None:
        raise Wrong("no files")
    with closing(_open_to_write(given)) as keeping:
        if keeping.told is not None and not given.dry_run:
            raise BookError(keeping.told)
        taken = take_in(keeping, animals=given.animals, diary=given.diary, dry_run=given.dry_run)
    if given.json:
        _write_json(taken_document(taken))
    for fault in taken.faults:
        print(plain(str(fault)), file=sys.stderr)
    if not given.json:
        _say_taken(taken, dry_run=given.dry_run)
    return WRONG if taken.faults else DONE


def _export(given: argparse.Namespace) -> int:
    if given.whole is not None:
        return _export_whole(given)
    if given.animals is None and given.diary is None:
        raise Wrong("no files to write")
    if given.animal:
        raise Wrong("animals without a folder")
    with closing(_open(given)) as keeping:
        done = write_out(keeping, animals=given.animals, diary=given.diary)
    _say("written out", animals=done.animals, entries=done.entries)
    if done.left_out:
        _say("not in the files", left_out=done.left_out)
    return DONE


def _export_whole(given: argparse.Namespace) -> int:
    """Everything, or all that is told of the animals named."""
    if given.animals is not None or given.diary is not None:
        raise Wrong("whole and files")
    with closing(_open(given)) as keeping:
        if not given.animal:
            print(plain(bundled_told(write_bundle(keeping, given.whole))))
            return DONE
        chosen = [_animal(keeping, code) for code in dict.fromkeys(given.animal)]
        done = pass_on(keeping, chosen, given.whole)
    print(plain(bundled_told(done.bundled)))
    if done.pairings_left:
        _say("pairings stayed", count=done.pairings_left)
    return DONE


def _join(given: argparse.Namespace) -> int:
    with closing(_open_to_write(given)) as keeping:
        if keeping.told is not None:
            raise BookError(keeping.told)
        looked = looked_at(keeping, given.folder)
        found = looked.joining
        if not given.dry_run and found.is_new:
            found = join(keeping, looked)
    if given.json:
        _write_json(joining_document(found))
    else:
        for told in joining_told(found):
            print(plain(told))
        if given.dry_run:
            _say("joining not written")
    return WRONG if found.conflicts else DONE


def _due(given: argparse.Namespace) -> int:
    with closing(_open(given)) as keeping:
        rows = due_rows(keeping, given.on)
    if given.json:
        _write_json({"on": given.on.isoformat(), "rows": [due_document(row) for row in rows]})
    elif not rows:
        _say("no animals", on=given.on)
    else:
        due = sum(row.plan.state is DueState.DUE for row in rows)
        _say("board", on=given.on, due=due, animals=len(rows))
        for row in rows:
            print(_due_line(row))
    return DONE


def _watch(given: argparse.Namespace) -> int:
    with closing(_open(given)) as keeping:
        lines = watch_lines(keeping, given.on)
        animals = {row.animal: row for row in animals_on(keeping, given.on)}
    told = [watch_document(line, animals) for line in lines]
    if given.json:
        _write_json({"on": given.on.isoformat(), "rows": told})
        return DONE
    _say("watch" if lines else "nothing to watch", on=given.on, count=len(lines))
    for line, row in zip(lines, told, strict=True):
        who = row["animal"] or line.place or ""
        head = (word(line.severity), who, word_of("watch kind", line.kind))
        print(_columns(head, row["because"]))
    return DONE


def _genes(given: argparse.Namespace) -> int:
    with closing(_open(given)) as keeping:
        only = None if given.animal is None else _animal(keeping, given.animal)
        found = genes_document(keeping, only)
    if given.json:
        _write_json(found)
        return DONE
    lines = [*genes_lines(found)]
    for line in lines:
        print(line)
    if not lines:
        _say("no genes")
    return DONE


def _expect(given: argparse.Namespace) -> int:
    expected = expect(
        shipped_profiles(),
        species=given.species,
        sex=given.sex,
        age_days=given.age_days,
        weight_g=given.weight_g,
    )
    if given.json:
        _write_json(expected_document(expected))
    else:
        _say_expected(expected)
    return DONE


def _forecast(given: argparse.Namespace) -> int:
    from keeper.actions.forecasting import forecast_weight  # numpy: no other verb waits for it

    with closing(_open(given)) as keeping:
        now = _animal(keeping, given.animal)
        then = (row for row in animals_on(keeping, given.on) if row.animal == now.animal)
        found = forecast_weight(keeping, next(then, now), given.weight_g, given.on)
    document = forecast_document(found)
    if given.json:
        _write_json(document)
        return DONE
    told = "no forecast" if found.on is None else "forecast"
    _say(
        "reached already" if found.reached else told,
        animal=found.animal.code,
        target_g=found.target_g,
        on=found.on,
        low=found.low,
        high=found.high,
        share=100 * found.level,
    )
    print(document["because"])
    return DONE


def _register(given: argparse.Namespace) -> int:
    """CSV on stdout, UTF-8 wherever it goes, as JSON is."""
    with closing(_open(given)) as keeping:
        found = register_of(keeping, given.as_at or keeping.today)
    if given.json:
        _write_json(register_document(found))
    else:
        _write_utf8(register_csv(found))
    return DONE


def _check(given: argparse.Namespace) -> int:
    flaws = flaws_of(given.book)
    for flaw in flaws:
        print(plain(flaw), file=sys.stderr)
    if not flaws:
        _say("check holds", path=str(given.book))
        return DONE
    if given.mend:
        return _mend(given.book)
    print(plain(sentence(because("check can mend"))), file=sys.stderr)
    return CHECK_FAILED


def _mend(book: Path) -> int:
    """Done only when the copy is sound and nothing had to be left out."""
    mended = mend(book)
    for told in mended_sentences(mended):
        print(plain(told))
    return DONE if is_sound(mended) and not mended.left_out else CHECK_FAILED


def _due_line(row: DueRow) -> str:
    offer = ", ".join(
        sentence(because("offer", count=item.count, prey=item.prey, grams=item.grams))
        for item in row.plan.offer
    )
    head = (row.animal.place or "", row.animal.code, word(row.plan.state), offer)
    return _columns(head, because_text(row.plan.because, row.animal.sex))


def _columns(head: Sequence[str], rest: str) -> str:
    """Cells side by side where they are short, two spaces apart where they are not."""
    return plain("  ".join([*(f"{cell:<11}" for cell in head if cell), rest]))


def _say_expected(expected: Expected) -> None:
    found = expected.expectation
    _say(
        "expected",
        expected.sex,
        species=species_words(expected.profile),
        age_days=expected.age_days,
        p3=found.p3_g,
        p10=found.p10_g,
        p50=found.p50_g,
        p90=found.p90_g,
        p97=found.p97_g,
        basis=found.basis,
    )
    if found.beyond_curve:
        _say("beyond the curve")
    if expected.standing is not None:
        stands = expected.standing
        _say("stands", weight_g=expected.weight_g, z=stands.z, centile=stands.centile)
    _say("source", source=" ".join(found.source.split()).removesuffix("."))


def _say_taken(taken: TakenIn, *, dry_run: bool) -> None:
    counts = {"animals": taken.animals, "entries": taken.entries, "skipped": taken.skipped}
    if taken.faults:
        print(plain(sentence(because("not taken in", count=len(taken.faults)))), file=sys.stderr)
    elif taken.animals or taken.entries:
        _say("would take in" if dry_run else "taken in", **counts)
        if taken.skipped:
            _say("held already", **counts)
    else:
        _say("nothing new" if taken.skipped else "nothing to take in", **counts)


def _open_to_write(given: argparse.Namespace) -> Keeping:
    return open_keeping(given.book, station=station_name(), now=clock.now, keeper=_user())


def _open(given: argparse.Namespace) -> Keeping:
    """To read, without the writer's lock: a window may open beside it.

    Not read-only for SQLite, which may have a write to roll back that a power cut left.
    """
    return Keeping(open_book(given.book, station=""), shipped_profiles(), clock.now)


def _animal(keeping: Keeping, code: str) -> AnimalNow:
    try:
        return animal_coded(keeping, code)
    except LookupError as error:
        raise BookError(*error.args) from None


def _user() -> str:
    try:
        return getpass.getuser()
    except (OSError, KeyError):
        return ""


def _say(why: str, sex: Sex = Sex.UNKNOWN, /, **figures: Any) -> None:
    print(plain(sentence(because(why, **figures), sex)))


def _write_json(document: dict[str, Any]) -> None:
    """JSON is UTF-8 wherever it goes (RFC 8259), whatever the terminal's own encoding."""
    _write_utf8(f"{json.dumps(document, ensure_ascii=False, indent=2)}\n")


def _write_utf8(text: str) -> None:
    if isinstance(sys.stdout, io.TextIOWrapper):
        sys.stdout.reconfigure(encoding="utf-8", newline="\n")
    sys.stdout.write(text)


VERBS: Mapping[str, Callable[[argparse.Namespace], int]] = {
    "new": _new,
    "take-in": _take_in,
    "export": _export,
    "join": _join,
    "due": _due,
    "watch": _watch,
    "expect": _expect,
    "forecast": _forecast,
    "genes": _genes,
    "register": _register,
    "check": _check,
}
"""Every command that needs no window."""
