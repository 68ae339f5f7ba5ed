"""The record of one clutch on paper: from who may have sired it to the fate of each young."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime

from keeper.husbandry.animal import Sex, Status
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.reasons import Reason
from keeper.language import tr
from keeper.reports.figures import (
    UNKNOWN,
    celsius,
    counted,
    day,
    days,
    grams,
    moment,
    percent,
    plain,
    span,
)
from keeper.reports.paper_parts import Blank, Document, Facts, Heading, Part, Table, Words
from keeper.reports.words import because_text, sentence, word

YOUNG_HEADS = (
    tr("letter"),
    tr("number"),
    tr("hatched at"),
    tr("now", sense="a weight"),
    tr("sex", sense="a narrow column"),
    tr("line"),
    tr("first shed"),
    tr("first meal"),
    tr("fate"),
)
YOUNG_SHARES = (0.07, 0.13, 0.11, 0.10, 0.10, 0.13, 0.13, 0.13, 0.10)
TOLD_HEADS = (tr("day"), tr("what was written"), tr("note"))
TOLD_SHARES = (0.18, 0.42, 0.40)
LOOK_HEADS = (tr("look"), tr("share"), tr("of the good eggs"), tr("may carry"))
LOOK_SHARES = (0.24, 0.12, 0.34, 0.30)
_BY_HAND = (tr("First candling, what was seen"), tr("Second candling, what was seen"))
_CLOSES, _OPEN = tr("The balance closes."), tr("The balance does not close: put it right first.")

_readings = counted("day", "days")


@dataclass(frozen=True, slots=True, kw_only=True)
class YoungTold:
    """One young of the record. shed_on, ate_on: the first of each."""

    row: AnimalNow
    letter: str
    hatch_g: float | None = None
    shed_on: date | None = None
    ate_on: date | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class SireTold:
    """A candidate: his name, his odds from 0 to 1, and what was written of him with her."""

    name: str
    odds: float
    because: Sequence[Reason]


@dataclass(frozen=True, slots=True, kw_only=True)
class HeatTold:
    """Lowest, mean and highest degrees Celsius since a day, and on how many days it was read."""

    since: date
    low_c: float
    mean_c: float
    high_c: float
    read: int


@dataclass(frozen=True, slots=True, kw_only=True)
class GenesTold:
    """Genes on a day. looks: the look, its share, how many of the good eggs, what it may carry.

    sires: their odds after the looks of the young, in words; empty where nothing is added.
    """

    on: date
    eggs: int
    looks: Sequence[tuple[str, str, str, str]] = ()
    sires: str = ""
    contradictions: Sequence[str] = ()
    inbreeding: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class RecordFacts:
    """What the record is made of. counts: numbers by what they are, in the order of the sheet.

    lay: where the eggs lay, newest last; told: day, words and note of what became of them;
    unknown: why there are no odds. eggs_in: whether good eggs are in, which may be candled.
    """

    code: str
    dam: AnimalNow
    species: str
    printed: datetime
    laid_on: date
    counts: Sequence[tuple[str, int]]
    closes: bool
    eggs_in: bool
    mass_g: float | None = None
    pairings: Sequence[str] = ()
    sires: Sequence[SireTold] = ()
    written_sires: Sequence[str] = ()
    unknown: Reason | None = None
    pre_lay_on: date | None = None
    before_g: float | None = None
    after_g: tuple[date, float] | None = None
    lay: Sequence[str] = ()
    heat: HeatTold | None = None
    window: tuple[date, date] | None = None
    out_on: tuple[date, date] | None = None
    told: Sequence[tuple[date, str, str]] = ()
    young: Sequence[YoungTold] = ()
    cautions: Sequence[Reason] = ()
    genes: GenesTold | None = None


def clutch_record(facts: RecordFacts) -> Document:
    """The record as it is printed."""
    return Document(
        title=tr("Clutch record: {code}", code=facts.code),
        aside=plain(tr("laid {day}", day=day(facts.laid_on))),
        printed=plain(moment(facts.printed)),
        parts=(
            Facts(rows=tuple(_dam(facts))),
            Heading(words=tr("Candidate sires, as odds")),
            *_sires(facts),
            *_genes(facts.genes),
            Heading(words=tr("Eggs and incubator")),
            Facts(rows=tuple(_eggs(facts))),
            Words(words=_CLOSES if facts.closes else _OPEN, bold=not facts.closes),
            Heading(words=tr("What became of the eggs, and candling")),
            _told(facts),
            *((Blank(labels=_BY_HAND),) if facts.eggs_in else ()),
            Heading(words=tr("Young")),
            _young(facts.young),
            Words(words=because_text(facts.cautions), bold=True),
        ),
    )


def heat_words(heat: HeatTold | None) -> str:
    """The heat that eggs lay in, or that none was read.

    >>> told = HeatTold(since=date(2026, 10, 7), low_c=27.6, mean_c=28.0, high_c=28.5, read=49)
    >>> plain(heat_words(told))
    '27.6–28.5 °C, 28 °C in the mean; read on 49 days since 7 Oct 2026'
    """
    if heat is None:
        return tr("no heat was read there")
    return tr(
        "{range}, {mean} in the mean; read on {days} since {day}",
        range=span(celsius(heat.low_c), celsius(heat.high_c)),
        mean=celsius(heat.mean_c),
        days=_readings(heat.read),
        day=day(heat.since),
    )


def odds_words(odds: float) -> str:
    """Odds as per cent, never as certain.

    >>> plain(odds_words(0.741)), plain(odds_words(1.0))
    ('74 %', 'the only one written')
    """
    return tr("the only one written") if odds >= 1.0 else percent(round(100 * odds))


def sire_words(name: str, odds: float, because: Sequence[Reason]) -> str:
    """A candidate, his odds, and what was written of him."""
    return tr("{name}, {odds}: {why}", name=name, odds=odds_words(odds), why=because_text(because))


def fate_words(row: AnimalNow) -> str:
    """Here, or what became of it."""
    return tr("here") if row.status is Status.KEPT else word(row.status)


def narrow_sex(sex: Sex) -> str:
    """The sex where there is little room."""
    return UNKNOWN if sex is Sex.UNKNOWN else word(sex)


def _dam(facts: RecordFacts) -> list[tuple[str, str]]:
    dam = facts.dam
    name = f"{dam.name}, {dam.code}" if dam.name else dam.code
    after = UNKNOWN
    if facts.after_g is not None:
        on, weight_g = facts.after_g
        after = plain(tr("{weight} on {day}", weight=grams(weight_g), day=day(on)))
    return [
        (tr("Dam"), f"{name} ({facts.species})"),
        (tr("Line"), dam.line or UNKNOWN),
        (tr("Pairings"), plain("; ".join(facts.pairings)) or UNKNOWN),
        (tr("Pre-lay shed"), plain(day(facts.pre_lay_on)) if facts.pre_lay_on else UNKNOWN),
        (tr("Laid"), plain(day(facts.laid_on))),
        (tr("Dam before laying"), plain(grams(facts.before_g)) if facts.before_g else UNKNOWN),
        (tr("Dam after laying"), after),
    ]


def _sires(facts: RecordFacts) -> list[Part]:
    told: list[Part] = [
        Words(words=plain(sire_words(each.name, each.odds, each.because))) for each in facts.sires
    ]
    if not told and facts.unknown is not None:
        told.append(Words(words=plain(sentence(facts.unknown))))
    if facts.written_sires:
        names = ", ".join(facts.written_sires)
        told.append(Words(words=tr("On the young’s pages: {names}.", names=names)))
    return told


def _genes(genes: GenesTold | None) -> list[Part]:
    if genes is None:
        return []
    told: list[Part] = []
    if genes.sires:
        words = tr("With that and the looks of the young: {odds}.", odds=genes.sires)
        told.append(Words(words=plain(words)))
    told += [Words(words=plain(each), bold=True) for each in genes.contradictions]
    head = tr("Expected young, reckoned on {day}", day=day(genes.on))
    if genes.looks:
        rows = tuple(tuple(plain(cell) for cell in look) for look in genes.looks)
        told += [
            Heading(words=plain(head)),
            Table(heads=LOOK_HEADS, rows=rows, shares=LOOK_SHARES),
        ]
    if genes.inbreeding:
        told.append(Words(words=plain(genes.inbreeding)))
    return told


def _eggs(facts: RecordFacts) -> list[tuple[str, str]]:
    counts = ", ".join(f"{name} {count}" for name, count in facts.counts)
    window, out = UNKNOWN, UNKNOWN
    if facts.window is not None:
        first, last = facts.window
        window = plain(span(day(first, on=last), day(last)))
    if facts.out_on is not None:
        first, last = facts.out_on
        out = plain(span(day(first, on=last), day(last)) if first != last else day(last))
        out = tr("{when}, after {days}", when=out, days=days((first - facts.laid_on).days))
    return [
        (tr("Counts"), counts),
        (tr("Clutch weight"), plain(grams(facts.mass_g)) if facts.mass_g else UNKNOWN),
        (tr("Lay in"), "; ".join(facts.lay) or UNKNOWN),
        (tr("Heat there"), plain(heat_words(facts.heat))),
        (tr("First slit expected"), window if facts.out_on is None else ""),
        (tr("Pipped or out"), plain(out)),
    ]


def _told(facts: RecordFacts) -> Table:
    rows = tuple((plain(day(on)), plain(words), note) for on, words, note in facts.told)
    return Table(heads=TOLD_HEADS, rows=rows, shares=TOLD_SHARES)


def _young(young: Sequence[YoungTold]) -> Table:
    rows = tuple(tuple(plain(cell) for cell in _cells(each)) for each in young)
    empty = tr("No young of it has a page yet.")
    return Table(heads=YOUNG_HEADS, rows=rows, shares=YOUNG_SHARES, empty=empty)


def _cells(young: YoungTold) -> tuple[str, ...]:
    row = young.row
    return (
        young.letter or UNKNOWN,
        row.code,
        grams(young.hatch_g) if young.hatch_g is not None else UNKNOWN,
        grams(row.weight_g) if row.weight_g is not None else UNKNOWN,
        narrow_sex(row.sex),
        row.line or UNKNOWN,
        day(young.shed_on) if young.shed_on else UNKNOWN,
        day(young.ate_on) if young.ate_on else UNKNOWN,
        fate_words(row),
    )
