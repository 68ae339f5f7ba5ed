"""The round sheet: a night's lines as they are printed, thirty a page, in rack order."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, datetime

from keeper.husbandry.animal import Sex
from keeper.language import tr
from keeper.reports import figures
from keeper.reports.figures import moment, plain

LINES_MOST = 30
UNITS_MOST = 38
"""Lines and row ends that a page holds; more than eight row ends push lines to the next."""

BOXES = (tr("taken", sense="a narrow column"), "0", "5", "2", "7")
LEGEND = tr("0 refused · 5 left in · 2 part taken · 7 not offered")
HEADS = (
    tr("line", sense="of a sheet"),
    tr("tub"),
    tr("name"),
    tr("sex", sense="a narrow column"),
    tr("eaten", sense="a narrow column"),
    tr("plan and caution"),
    *BOXES,
    tr("grams"),
    tr("note"),
)

_SEX = {
    Sex.FEMALE: tr("f", sense="female"),
    Sex.MALE: tr("m", sense="male"),
    Sex.UNKNOWN: "?",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetLine:
    """One tub. row: the rack row it stands in. walked: it has boxes to mark."""

    line: int
    place: str
    row: str
    name: str
    sex: Sex
    eaten_days: int | None
    plan: str
    caution: str = ""
    walked: bool = True

    @property
    def cells(self) -> tuple[str, ...]:
        """Line, tub, name, sex letter and days since eaten."""
        eaten = "?" if self.eaten_days is None else tr("{days} d", days=self.eaten_days)
        return (str(self.line), self.place, self.name, _SEX[self.sex], eaten)


@dataclass(frozen=True, slots=True, kw_only=True)
class RowEnd:
    """The end of a rack row, with a box for *all but what is marked as planned*."""

    row: str
    first: int
    last: int

    @property
    def words(self) -> str:
        """The box's words.

        >>> RowEnd(row="B3", first=21, last=30).words
        'Row B3, lines 21–30: all but those marked, as planned'
        """
        if self.first == self.last:
            return tr(
                "Row {row}, line {line}: all but those marked, as planned",
                row=self.row,
                line=self.first,
            )
        return tr(
            "Row {row}, lines {first}–{last}: all but those marked, as planned",
            row=self.row,
            first=self.first,
            last=self.last,
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class RoundSheet:
    """Everything that is printed; *foot* gives what stands at the foot of each page."""

    title: str
    code: str
    keeper: str
    printed: str
    pages: tuple[tuple[SheetLine | RowEnd, ...], ...]

    def foot(self, page: int) -> str:
        """What stands at the foot of *page*, counted from 1."""
        return tr(
            "Printed {moment} · page {page} of {pages} · code {code}",
            moment=self.printed,
            page=page,
            pages=len(self.pages),
            code=self.code,
        )


def round_sheet(
    lines: Sequence[SheetLine], *, night: date, code: str, keeper: str, printed: datetime
) -> RoundSheet:
    """The sheet of *night* with its lines on pages.

    Raises:
        ValueError: there is no line to print.
    """
    if not lines:
        raise ValueError(tr("The night has no line to print."))
    return RoundSheet(
        title=tr("Round sheet, night of {night}", night=night_words(night)),
        code=code,
        keeper=keeper,
        printed=plain(moment(printed)),
        pages=tuple(_pages(lines)),
    )


def night_words(night: date) -> str:
    """The night with its weekday, for paper.

    >>> night_words(date(2026, 11, 25))
    'Wed 25 Nov 2026'
    """
    return plain(figures.night(night))


def _pages(lines: Sequence[SheetLine]) -> Iterator[tuple[SheetLine | RowEnd, ...]]:
    page: list[SheetLine | RowEnd] = []
    count = 0
    for block in _blocks(lines):
        if page and (count == LINES_MOST or len(page) + len(block) > UNITS_MOST):
            yield tuple(page)
            page, count = [], 0
        page += block
        count += 1
    yield tuple(page)


def _blocks(lines: Sequence[SheetLine]) -> Iterator[list[SheetLine | RowEnd]]:
    """Each line, the last of its row together with the row's end: the two are never parted."""
    first = lines[0].line
    for line, after in zip(lines, [*lines[1:], None], strict=True):
        if after is not None and after.row == line.row:
            yield [line]
            continue
        yield [line, RowEnd(row=line.row, first=first, last=line.line)]
        first = after.line if after is not None else 0
