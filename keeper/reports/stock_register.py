"""The stock register on paper and as a file: each line as it was written, and the sums."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime

from keeper.husbandry.animal import Sex
from keeper.husbandry.stock_lines import Change, Line, totals
from keeper.language import tr
from keeper.reports.figures import counted, day, moment, plain
from keeper.reports.paper_parts import Blank, Document, Facts, Heading, Table, Words
from keeper.reports.words import word

HEADS = (
    tr("no.", sense="of a line"),
    tr("day"),
    tr("animal"),
    tr("species"),
    tr("what happened"),
    tr("source, with whom, papers, reason"),
    tr("here then"),
)
SHARES = (0.06, 0.14, 0.16, 0.17, 0.14, 0.23, 0.10)
OWN = tr(
    "The keeper’s own record: every change of the stock that is in the book, in the order in which"
    " it was written. What was put right, taken back or written late is a line of its own; no line"
    " is changed and none is left out. Which register has to be kept and shown is for local law to"
    " say: check it."
)
COUNTED = tr(
    "Counted are animals that are here: not those on loan, missing, gone or dead. The sex is the"
    " one that was known then; entered means that it was here before its line."
)
EMPTY = tr("Nothing about the stock was written by that day.")
COLUMNS = (
    "entry",
    "written",
    "happened",
    "animal",
    "unnumbered",
    "species",
    "scientific",
    "sex",
    "hatched",
    "clutch",
    "dam",
    "what",
    "refers_to",
    "change",
    "total",
    "note",
    "permits",
    "reason",
)
"""Of the file; the same in every language."""

_UNNUMBERED = counted("young without a number", "young without a number")


@dataclass(frozen=True, slots=True, kw_only=True)
class RegisterFacts:
    """The lines as at the day *on*. species: scientific names by the book's own.

    is_over: the day has ended, so that no line of it is still to come.
    """

    on: date
    is_over: bool
    printed: datetime
    lines: Sequence[Line]
    species: Mapping[str, str]


def stock_register(facts: RegisterFacts) -> Document:
    """The register as it is printed."""
    on = plain(day(facts.on))
    still = tr("{day} is not over: lines of that day may follow.", day=on)
    open_day = () if facts.is_over else (Words(words=still, bold=True),)
    sums = tuple(
        sorted((facts.species.get(slug, slug), str(n)) for slug, n in totals(facts.lines).items())
    )
    rows = tuple(_row(line, facts.species) for line in facts.lines)
    return Document(
        title=tr("Stock register as at {day}", day=on),
        printed=plain(moment(facts.printed)),
        parts=(
            Words(words=OWN),
            Words(words=COUNTED),
            *open_day,
            Table(heads=HEADS, rows=rows, shares=SHARES, empty=EMPTY, again=True),
            Heading(words=tr("Here by these lines")),
            Facts(rows=sums),
            Blank(labels=(tr("Keeper"), tr("Day"))),
        ),
    )


def what_words(line: Line) -> str:
    """What happened, in words; of a line that speaks of another its number."""
    if line.what is Change.GONE:
        return tr("line {number} no longer stands", number=line.refers)
    if line.what is Change.AGAIN:
        return tr("line {number} stands again", number=line.refers)
    return word(line.what)


def register_cells(line: Line, species: Mapping[str, str]) -> tuple[str, ...]:
    """A line under ``COLUMNS``."""
    hatched = (
        "" if line.hatched is None else "/".join(sorted({d.isoformat() for d in line.hatched}))
    )
    return (
        str(line.number),
        line.written_on.isoformat(),
        line.happened_on.isoformat(),
        line.code,
        str(line.count) if line.unnumbered else "",
        line.species,
        species.get(line.species, ""),
        line.sex.value,
        hatched,
        line.clutch or "",
        line.dam or "",
        line.what.value,
        "" if line.refers is None else str(line.refers),
        str(line.change),
        str(line.total),
        line.note or "",
        "; ".join(line.permits),
        line.reason or "",
    )


def _row(line: Line, species: Mapping[str, str]) -> tuple[str, ...]:
    total = f"{line.total} ({line.change:+d})" if line.change else str(line.total)
    return (
        str(line.number),
        _days(line),
        _animal(line),
        species.get(line.species, line.species),
        what_words(line),
        _source(line),
        total.replace("-", "\u2212"),
    )


def _days(line: Line) -> str:
    happened = plain(day(line.happened_on))
    if line.written_on == line.happened_on:
        return happened
    written = plain(day(line.written_on))
    return tr("{day}, written {written}", day=happened, written=written)


def _animal(line: Line) -> str:
    if line.unnumbered:
        return f"{line.code}, {plain(_UNNUMBERED(line.count))}"
    sex = tr("sex not known") if line.sex is Sex.UNKNOWN else word(line.sex)
    return f"{line.code}, {sex}"


def _source(line: Line) -> str:
    told = (_hatched(line), *_clutch(line), line.note, *line.permits, line.reason)
    return "; ".join(part for part in told if part)


def _hatched(line: Line) -> str:
    if line.hatched is None:
        return ""
    first, last = (plain(day(each)) for each in line.hatched)
    if first == last:
        return tr("hatched {day}", day=first)
    return tr("hatched {first} to {last}", first=first, last=last)


def _clutch(line: Line) -> list[str]:
    """Where it comes from, on the lines on which it comes."""
    if line.what not in (Change.BORN, Change.NUMBERED, Change.ENTERED, Change.CAME):
        return []
    if line.clutch and line.dam:
        return [tr("clutch {clutch} of {dam}", clutch=line.clutch, dam=line.dam)]
    return [tr("clutch {clutch}", clutch=line.clutch)] if line.clutch else []
