"""The keeper's verbs without a window: the same book, the same rules, text or JSON.

Exit codes: 0 done, 1 a check failed, 2 something given is wrong, with one sentence on stderr.
"""

import argparse
import getpass
import io
import json
import sys
from collections.abc import Callable, Mapping, Sequence
from contextlib import closing
from datetime import date, timedelta
from pathlib import Path
from typing import Any, NoReturn

from keeper import clock
from keeper.actions import taking_in
from keeper.actions.checking import flaws_of
from keeper.actions.csv_file import Wrong
from keeper.actions.due_board import DueRow, due_rows
from keeper.actions.expecting import Expected, expect
from keeper.actions.keeping import Keeping, animals_on, new_keeping, open_keeping
from keeper.actions.records_csv import day_of, grams_of, sex_of
from keeper.actions.station import station_name
from keeper.actions.watching import watch_lines
from keeper.husbandry.animal import Sex
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.reasons import because
from keeper.reports.figures import plain
from keeper.reports.words import because_text, sentence, word, word_of
from keeper.rules.feeding import DueState
from keeper.rules.watch_facts import WatchLine
from keeper.store.errors import BookError
from keeper.store.species_files import load_profiles

DONE, CHECK_FAILED, WRONG = 0, 1, 2
_FURTHEST = timedelta(days=3660)

Window = Callable[[Path | None], int]


def main(arguments: Sequence[str], window: Window) -> int:
    """Do what the command line asks for; returns the exit code.

    window: opens the window on a book, or on the keeper's last one; called for ``open`` and
    for no command at all.
    """
    try:
        given = _parser().parse_args(arguments)
        if given.command in (None, "open"):
            return window(given.book)
        verb: Callable[[argparse.Namespace], int] = given.verb
        return verb(given)
    except BrokenPipeError:
        raise
    except (Wrong, BookError, LookupError, OSError) as error:
        print(plain(_said(error)), file=sys.stderr)
        return WRONG


def _new(given: argparse.Namespace) -> int:
    new_keeping(given.book, station=station_name(), now=clock.now, keeper=_user()).close()
    _say("new book", path=str(given.book))
    return DONE


def _take_in(given: argparse.Namespace) -> int:
    if given.animals is None and given.diary is None:
        raise Wrong("no files")
    with closing(_open(given)) as keeping:
        taken = taking_in.take_in(
            keeping, animals=given.animals, diary=given.diary, dry_run=given.dry_run
        )
    if given.json:
        _write_json(_taken_document(taken))
    for fault in taken.faults:
        print(plain(str(fault)), file=sys.stderr)
    if not given.json:
        _say_taken(taken, dry_run=given.dry_run)
    return WRONG if taken.faults else DONE


def _due(given: argparse.Namespace) -> int:
    with closing(_open(given)) as keeping:
        rows = due_rows(keeping, given.on)
    if given.json:
        _write_json({"on": given.on.isoformat(), "rows": [_due_document(row) for row in rows]})
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
    told = [_watch_document(line, animals) for line in lines]
    if given.json:
        _write_json({"on": given.on.isoformat(), "rows": told})
        return DONE
    _say("watch" if lines else "nothing to watch", on=given.on, count=len(lines))
    for line, row in zip(lines, told, strict=True):
        who = row["animal"] or line.place or ""
        head = (word(line.severity), who, word_of("watch kind", line.kind))
        print(_columns(head, row["because"]))
    return DONE


def _expect(given: argparse.Namespace) -> int:
    expected = expect(
        load_profiles(),
        species=given.species,
        sex=given.sex,
        age_days=given.age_days,
        weight_g=given.weight_g,
    )
    if given.json:
        _write_json(_expected_document(expected))
    else:
        _say_expected(expected)
    return DONE


def _check(given: argparse.Namespace) -> int:
    flaws = flaws_of(given.book)
    for flaw in flaws:
        print(plain(flaw), file=sys.stderr)
    if flaws:
        return CHECK_FAILED
    _say("check holds", path=str(given.book))
    return DONE


def _due_document(row: DueRow) -> dict[str, Any]:
    plan = row.plan
    return {
        "animal": row.animal.code,
        "place": row.animal.place,
        "state": plan.state.value,
        "due_on": _iso(plan.due_on),
        "days_since_eaten": plan.days_since_eaten,
        "interval_days": plan.interval_days,
        "hold": plan.hold.kind.value if plan.hold else None,
        "offer": [
            {"prey": item.prey, "count": item.count, "grams": round(item.grams, 1)}
            for item in plan.offer
        ],
        "offer_percent": _rounded(plan.offer_percent, 1),
        "because": plain(because_text(plan.because, row.animal.sex)),
    }


def _watch_document(line: WatchLine, animals: Mapping[int, AnimalNow]) -> dict[str, Any]:
    """A line of a place or a cause has no animal; its reasons then begin with where."""
    now = None if line.animal is None else animals[line.animal]
    where = (because("where", place=line.place),) if now is None and line.place else ()
    sex = now.sex if now else Sex.UNKNOWN
    return {
        "animal": now.code if now else None,
        "kind": line.kind,
        "severity": line.severity.value,
        "because": plain(because_text((*where, *line.because), sex)),
    }


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


def _expected_document(expected: Expected) -> dict[str, Any]:
    found, stands = expected.expectation, expected.standing
    return {
        "l": found.l,
        "m": found.m_g,
        "s": found.s,
        "p3": found.p3_g,
        "p10": found.p10_g,
        "p50": found.p50_g,
        "p90": found.p90_g,
        "p97": found.p97_g,
        "z": stands.z if stands else None,
        "centile": stands.centile if stands else None,
        "basis": found.basis,
        "source": " ".join(found.source.split()),
    }


def _say_expected(expected: Expected) -> None:
    found = expected.expectation
    _say(
        "expected",
        expected.sex,
        species=expected.profile.english,
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


def _taken_document(taken: taking_in.TakenIn) -> dict[str, Any]:
    return {
        "animals": taken.animals,
        "entries": taken.entries,
        "skipped": taken.skipped,
        "errors": [
            {
                "file": fault.file,
                "line": fault.line,
                "column": fault.column,
                "value": fault.value,
                "message": plain(fault.message),
            }
            for fault in taken.faults
        ],
    }


def _say_taken(taken: taking_in.TakenIn, *, dry_run: bool) -> None:
    counts = {"animals": taken.animals, "entries": taken.entries, "skipped": taken.skipped}
    if taken.faults:
        print(plain(sentence(because("not taken in", count=len(taken.faults)))), file=sys.stderr)
    elif taken.animals or taken.entries:
        _say("would take in" if dry_run else "taken in", **counts)
        if taken.skipped:
            _say("held already", **counts)
    else:
        _say("nothing new" if taken.skipped else "nothing to take in", **counts)


def _open(given: argparse.Namespace) -> Keeping:
    """Writable where it can be, even to read: a power cut may have left a write to roll back."""
    station = station_name() if given.command == "take-in" else ""
    return open_keeping(given.book, station=station, now=clock.now, keeper=_user())


def _user() -> str:
    try:
        return getpass.getuser()
    except (OSError, KeyError):
        return ""


def _said(error: Exception) -> str:
    if isinstance(error, LookupError) and error.args:
        return str(error.args[0])
    return str(error)


def _say(why: str, sex: Sex = Sex.UNKNOWN, /, **figures: Any) -> None:
    print(plain(sentence(because(why, **figures), sex)))


def _write_json(document: dict[str, Any]) -> None:
    """JSON is UTF-8 wherever it goes (RFC 8259), whatever the terminal's own encoding."""
    if isinstance(sys.stdout, io.TextIOWrapper):
        sys.stdout.reconfigure(encoding="utf-8")
    print(json.dumps(document, ensure_ascii=False, indent=2))


def _iso(day: date | None) -> str | None:
    return None if day is None else day.isoformat()


def _rounded(value: float | None, decimals: int) -> float | None:
    return None if value is None else round(value, decimals)


class _Parser(argparse.ArgumentParser):
    """Says in one sentence what is wrong, instead of the whole usage."""

    def error(self, message: str) -> NoReturn:
        told = f"{message[:1].upper()}{message[1:]}".removesuffix(".")
        print(plain(f"{told}. {self.prog} --help shows what is right."), file=sys.stderr)
        raise SystemExit(WRONG)


def _parser() -> argparse.ArgumentParser:
    parser = _Parser(prog="keeper", description=__doc__.partition("\n")[0], allow_abbrev=False)
    parser.set_defaults(book=None)
    commands = parser.add_subparsers(dest="command", metavar="COMMAND", parser_class=_Parser)
    _add(commands, "open", "open the window on a book", None)
    _add(commands, "new", "make a new, empty book", _new)
    take_in = _add(commands, "take-in", "take in records from CSV files, all or none", _take_in)
    take_in.add_argument("--animals", type=Path, metavar="FILE", help="animal,species,sex,...")
    take_in.add_argument("--diary", type=Path, metavar="FILE", help="animal,date,what,grams,note")
    take_in.add_argument("--dry-run", action="store_true", help="say what would be; write nothing")
    _with_json(take_in)
    _with_day(_add(commands, "due", "what each animal is due on a day, and why", _due))
    _with_day(_add(commands, "watch", "what needs a look on a day, worst first", _watch))
    _add_expect(commands)
    _add(commands, "check", "whether structure, references and state hold", _check)
    return parser


def _add(commands: Any, name: str, told: str, verb: Callable[..., int] | None) -> _Parser:
    made: _Parser = commands.add_parser(name, help=told, description=told, allow_abbrev=False)
    made.add_argument("book", type=Path, metavar="BOOK")
    made.set_defaults(verb=verb)
    return made


def _add_expect(commands: Any) -> None:
    told = "what a species, a sex and an age are expected to weigh"
    made = commands.add_parser("expect", help=told, description=told, allow_abbrev=False)
    made.add_argument("--species", required=True, metavar="NAME")
    made.add_argument("--sex", required=True, type=_read(sex_of), metavar="SEX")
    made.add_argument("--age-days", required=True, type=_read(_days), metavar="N")
    made.add_argument("--weight-g", type=_read(_grams), metavar="W", help="empty weight")
    made.set_defaults(verb=_expect)
    _with_json(made)


def _with_day(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--on", required=True, type=_read(_day), metavar="DATE")
    _with_json(parser)


def _with_json(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--json", action="store_true", help="one JSON document on stdout")


def _read(reader: Callable[[str], Any]) -> Callable[[str], Any]:
    """A reader of values as argparse wants it: its sentence becomes the option's error."""

    def read(written: str) -> Any:
        try:
            return reader(written)
        except Wrong as wrong:
            told = because(wrong.why, **{**wrong.figures, "value": written})
            raise argparse.ArgumentTypeError(sentence(told)) from None

    return read


def _day(written: str) -> date:
    day = day_of(written)
    latest = clock.today() + _FURTHEST
    if day > latest:
        raise Wrong("too far ahead", latest=latest)
    return day


def _days(written: str) -> int:
    if not (written.isascii() and written.isdigit() and len(written) < 7):
        raise Wrong("not a count")
    return int(written)


def _grams(written: str) -> float:
    grams = grams_of(written)
    if grams is None:
        raise Wrong("grams needed")
    return grams
