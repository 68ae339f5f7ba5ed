"""The weights of a clutch or a line on one sheet: a chart by age, and the figures beneath it."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime
from statistics import median

from keeper.husbandry.animal import Sex
from keeper.language import tr
from keeper.reports.figures import (
    MINUS,
    UNKNOWN,
    age,
    both,
    centile,
    day,
    grams,
    moment,
    number,
    plain,
    z_value,
)
from keeper.reports.paper_parts import Document, Heading, Picture, Table, Words

CHART = "kin"
CHART_MM = 112.0
HEADS = (
    tr("tub"),
    tr("name"),
    tr("sex", sense="a narrow column"),
    tr("age"),
    tr("empty", sense="weight"),
    tr("weighed"),
    tr("30 days"),
    tr("z, centile"),
    tr("refused"),
)
SHARES = (0.09, 0.16, 0.06, 0.13, 0.11, 0.12, 0.10, 0.12, 0.11)
_SEX = {
    Sex.FEMALE: tr("f", sense="female"),
    Sex.MALE: tr("m", sense="male"),
    Sex.UNKNOWN: UNKNOWN,
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Kinsman:
    """One of the clutch or line. refused: refusals since the last meal, excused ones included."""

    place: str
    code: str
    name: str
    sex: Sex
    age_days: int | None
    weighed_on: date | None
    weight_g: float | None
    month_percent: float | None
    z: float | None
    centile: float | None
    eaten_on: date | None
    refused: int


def kin_weights(of: str, rows: Sequence[Kinsman], printed: datetime) -> Document:
    """The sheet of *rows*, in their order."""
    return Document(
        title=tr("Weights: {of}", of=of),
        aside=tr("{count} animals", count=len(rows)),
        printed=plain(moment(printed)),
        parts=(
            Picture(name=CHART, high_mm=CHART_MM),
            Words(words=_middle(rows)),
            Heading(words=tr("Last weight of each, without meals")),
            Table(heads=HEADS, rows=tuple(_cells(row) for row in rows), shares=SHARES),
        ),
    )


def _middle(rows: Sequence[Kinsman]) -> str:
    known = sorted((row.weight_g, row.name or row.code) for row in rows if row.weight_g is not None)
    (least, lightest), (most, heaviest) = known[0], known[-1]
    middle = grams(median(weight for weight, _ in known))
    return plain(
        tr(
            "Middle of the last weights {middle}; lightest {lightest} {least},"
            " heaviest {heaviest} {most}. Compare within one age and sex only.",
            middle=middle,
            lightest=lightest,
            least=grams(least),
            heaviest=heaviest,
            most=grams(most),
        )
    )


def _cells(row: Kinsman) -> tuple[str, ...]:
    stands = UNKNOWN
    if row.z is not None and row.centile is not None:
        stands = both(z_value(row.z), centile(row.centile))
    return tuple(
        plain(cell)
        for cell in (
            row.place,
            row.name or row.code,
            _SEX[row.sex],
            age(row.age_days) if row.age_days is not None else UNKNOWN,
            grams(row.weight_g) if row.weight_g is not None else UNKNOWN,
            day(row.weighed_on, on=row.weighed_on) if row.weighed_on else UNKNOWN,
            _change(row.month_percent),
            stands,
            str(row.refused) if row.refused else "",
        )
    )


def _change(percent: float | None) -> str:
    """With its sign.

    >>> _change(4.2), _change(-3.0), _change(None)
    ('+4 %', '−3 %', '?')
    """
    if percent is None:
        return UNKNOWN
    told = number(percent)
    return f"{'' if told.startswith(MINUS) else '+'}{told} %"
