"""What may stand on the command line, and one sentence for what may not."""

import argparse
import sys
from collections.abc import Callable
from datetime import date, timedelta
from pathlib import Path
from typing import Any, NoReturn

from keeper import clock
from keeper.actions.csv_file import Wrong
from keeper.actions.records_csv import day_of, grams_of, sex_of
from keeper.husbandry.reasons import because
from keeper.language import tr
from keeper.reports.figures import plain
from keeper.reports.words import sentence

ABOUT = tr("The keeper's verbs without a window: the same book, the same rules, text or JSON.")
DONE, CHECK_FAILED, WRONG = 0, 1, 2
"""Exit codes: done, a check failed, something given is wrong."""

_FURTHEST = timedelta(days=3660)


class Parser(argparse.ArgumentParser):
    """Says in one sentence what is wrong, instead of the whole usage."""

    def error(self, message: str) -> NoReturn:
        fault = f"{message[:1].upper()}{message[1:]}".removesuffix(".")
        told = tr("{fault}. {program} --help shows what is right.", fault=fault, program=self.prog)
        print(plain(told), file=sys.stderr)
        raise SystemExit(WRONG)


def parser() -> argparse.ArgumentParser:
    """Every command with its options; *command* says which was given, None for none."""
    made = Parser(prog="keeper", description=ABOUT, allow_abbrev=False)
    made.set_defaults(book=None)
    commands = made.add_subparsers(dest="command", metavar="COMMAND", parser_class=Parser)
    _add(commands, "open", tr("open the window on a book"))
    _add(commands, "new", tr("make a new, empty book"))
    take_in = _add(commands, "take-in", tr("take in records from CSV files, all or none"))
    take_in.add_argument("--animals", type=Path, metavar="FILE", help="animal,species,sex,...")
    take_in.add_argument("--diary", type=Path, metavar="FILE", help="animal,date,what,grams,note")
    take_in.add_argument(
        "--dry-run", action="store_true", help=tr("say what would be; write nothing")
    )
    _with_json(take_in)
    export = _add(commands, "export", tr("write the records out as files that can be taken in"))
    export.add_argument("--animals", type=Path, metavar="FILE", help=tr("a new file"))
    export.add_argument("--diary", type=Path, metavar="FILE", help=tr("a new file"))
    export.add_argument(
        "--whole", type=Path, metavar="FOLDER", help=tr("a new folder for everything")
    )
    export.add_argument(
        "--animal",
        action="append",
        default=[],
        metavar="CODE",
        help=tr("with --whole: only this one"),
    )
    join = _add(commands, "join", tr("join a book that was written out whole to this one"))
    join.add_argument("folder", type=Path, metavar="FOLDER")
    join.add_argument("--dry-run", action="store_true", help=tr("say what would be; write nothing"))
    _with_json(join)
    _with_day(_add(commands, "due", tr("what each animal is due on a day, and why")))
    _with_day(_add(commands, "watch", tr("what needs a look on a day, worst first")))
    _add_expect(commands)
    forecast = _add(commands, "forecast", tr("when an animal will reach a weight"))
    forecast.add_argument("--animal", required=True, metavar="CODE")
    forecast.add_argument("--weight-g", required=True, type=_read(_grams), metavar="W")
    _with_day(forecast)
    _add_aside(commands)
    check = _add(commands, "check", tr("whether structure, references, state and backups hold"))
    check.add_argument(
        "--mend", action="store_true", help=tr("write a mended copy beside the book")
    )
    return made


def _add(commands: Any, name: str, told: str) -> Parser:
    made: Parser = commands.add_parser(name, help=told, description=told, allow_abbrev=False)
    made.add_argument("book", type=Path, metavar="BOOK")
    return made


def _add_aside(commands: Any) -> None:
    """What is asked of the book now and then: genes and the register."""
    genes = _add(commands, "genes", tr("what animals carry of genes, and cards out of date"))
    genes.add_argument("--animal", metavar="CODE", help=tr("only this one"))
    _with_json(genes)
    _add_register(commands)


def _add_register(commands: Any) -> None:
    made = _add(commands, "register", tr("the stock register as at a day, as CSV"))
    made.add_argument("--as-at", type=_read(_day), metavar="DATE", help=tr("nothing: today"))
    _with_json(made)


def _add_expect(commands: Any) -> None:
    told = tr("what a species, a sex and an age are expected to weigh")
    made = commands.add_parser("expect", help=told, description=told, allow_abbrev=False)
    made.add_argument("--species", required=True, metavar="NAME")
    made.add_argument("--sex", required=True, type=_read(sex_of), metavar="SEX")
    made.add_argument("--age-days", required=True, type=_read(_days), metavar="N")
    made.add_argument("--weight-g", type=_read(_grams), metavar="W", help=tr("empty weight"))
    _with_json(made)


def _with_day(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--on", required=True, type=_read(_day), metavar="DATE")
    _with_json(parser)


def _with_json(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--json", action="store_true", help=tr("one JSON document on stdout"))


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
