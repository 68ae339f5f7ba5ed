"""Colour across generations on paper: the picture, its families, what may come, and why."""

from keeper.language import tr
from keeper.reports.colour_facts import ColourFacts, FamilyRow, PairToCome
from keeper.reports.colour_words import pair_words, paragraphs
from keeper.reports.figures import UNKNOWN, number, percent, plain, span
from keeper.reports.paper_parts import Document, Facts, Heading, Picture, Table
from keeper.rules.colour import young_for_one

GENERATIONS = "generations"
CHART_MM = 112.0

FAMILY_HEADS = (
    tr("gen.", sense="a narrow column"),
    tr("clutch"),
    tr("dam × sire"),
    tr("mid-parent"),
    tr("scored"),
    tr("mean"),
    tr("expected"),
    tr("above", sense="their parents"),
)
_FAMILY_SHARES = (0.07, 0.1, 0.3, 0.13, 0.1, 0.09, 0.12, 0.09)
PAIR_HEADS = (
    "",
    tr("dam × sire"),
    tr("mid-parent"),
    tr("expected"),
    tr("nine in ten"),
    tr("above", sense="their parents"),
    tr("tubs for one"),
)
_PAIR_SHARES = (0.05, 0.36, 0.13, 0.12, 0.13, 0.09, 0.12)


def colour_sheet(facts: ColourFacts, printed: str) -> Document:
    """The sheet of one line's colour. printed: when, in words."""
    coming = (
        Heading(words=tr("Young to come")),
        Table(heads=PAIR_HEADS, rows=tuple(map(_pair, facts.pairs)), shares=_PAIR_SHARES),
    )
    told = tuple((each.head, plain(each.words)) for each in paragraphs(facts))
    return Document(
        title=tr("Colour: {what}", what=facts.choice.words),
        aside=tr("{count} scored", count=number(len(facts.dots))),
        printed=printed,
        parts=(
            Picture(name=GENERATIONS, high_mm=CHART_MM),
            Heading(words=tr("Families")),
            Table(
                heads=FAMILY_HEADS,
                rows=tuple(map(_family, facts.families)),
                shares=_FAMILY_SHARES,
                empty=tr("No clutch has scored young yet."),
                again=True,
            ),
            *(coming if facts.pairs else ()),
            Heading(words=tr("What it says")),
            Facts(rows=told),
        ),
    )


def _family(row: FamilyRow) -> tuple[str, ...]:
    parents = tr("{dam} × {sire}", dam=row.dam or UNKNOWN, sire=row.sire or UNKNOWN)
    return (
        number(row.generation),
        row.clutch,
        parents,
        number(row.mid_parent, 1) if row.mid_parent is not None else UNKNOWN,
        number(row.scored),
        number(row.mean, 1),
        number(row.expected.mean, 1) if row.expected else UNKNOWN,
        number(row.above) if row.above is not None else UNKNOWN,
    )


def _pair(pair: PairToCome) -> tuple[str, ...]:
    expected = pair.expected
    tubs = young_for_one(expected.beats)
    return (
        pair.letter,
        plain(pair_words(pair)),
        number(pair.mid_parent, 1),
        number(expected.mean, 1),
        span(number(expected.low, 1), number(expected.high, 1)),
        plain(percent(100 * expected.beats)),
        number(tubs) if tubs is not None else UNKNOWN,
    )
