"""The refusal strip in words and tiles."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from keeper.actions.refusal_strip import Cell, Margin, Strip, StripAnimal, StripRow, margin_of
from keeper.desktop.widgets.rack_legend import LegendItem
from keeper.desktop.widgets.refusal_strip import StripBlock, StripLine, StripPicture
from keeper.desktop.widgets.tile import TileState
from keeper.language import tr
from keeper.reports.figures import day
from keeper.reports.words import word

TILES = {
    Cell.TAKEN: TileState.TAKEN,
    Cell.PART: TileState.PART,
    Cell.REFUSED: TileState.REFUSED,
    Cell.EXCUSED: TileState.HELD,
    Cell.LEFT_IN: TileState.LEFT_IN,
    Cell.NOT_OFFERED: TileState.NOT_OFFERED,
    Cell.NOT_REACHED: TileState.NOT_REACHED,
}
_LOUD = 3
"""Fewer refusals are individuals, not a row."""
_LOUD_SHARE = 2.0


def picture_of(strip: Strip) -> StripPicture:
    """Blocks for rows in rack order, and the totals of the house under its nights."""
    margins = [strip.night_margin(index) for index in range(len(strip.nights))]
    house = margin_of(c for row in strip.rows for each in row.animals for c in each.cells)
    nights = tuple(_short(night) for night in strip.nights)
    return StripPicture(
        nights=nights,
        totals=tuple(_of(margin) for margin in margins),
        blocks=tuple(_block(row, nights, house) for row in strip.rows),
        words=_told(strip, margins, house),
    )


def strip_legend(strip: Strip) -> list[LegendItem]:
    """Every kind of night with how often it was."""
    every = [cell for row in strip.rows for each in row.animals for cell in each.cells]
    return [
        LegendItem(
            look=TILES[cell], letter="", words=word(cell), count=str(every.count(cell)), small=True
        )
        for cell in Cell
    ]


def head_words(strip: Strip) -> str:
    """What the margins count."""
    return tr(
        "last {count} feed nights, refused of offered; excused ones not counted",
        count=len(strip.nights),
    )


def _block(row: StripRow, nights: Sequence[str], house: Margin) -> StripBlock:
    margin = row.margin
    return StripBlock(
        name=row.name,
        total=_of(margin),
        lines=tuple(_line(each, nights) for each in row.animals),
        loud=margin.refused >= _LOUD and _share(margin) > _LOUD_SHARE * _share(house),
    )


def _line(each: StripAnimal, nights: Sequence[str]) -> StripLine:
    animal = each.animal
    label = animal.place_and_name
    total = _of(margin_of(each.cells))
    of_nights = zip(nights, each.cells, strict=True)
    known = [f"{night} {word(cell)}" for night, cell in of_nights if cell is not None]
    told = ", ".join(known) or tr("nothing offered")
    words = tr("{who}: {nights}", who=label, nights=told)
    if total:
        words = tr("{who}: {nights}; refused {total}", who=label, nights=told, total=total)
    return StripLine(
        label=label,
        states=tuple(None if cell is None else TILES[cell] for cell in each.cells),
        total=total,
        words=words,
    )


def _told(strip: Strip, margins: list[Margin], house: Margin) -> str:
    nights = ", ".join(
        f"{_short(night)} {_of(margin)}"
        for night, margin in zip(strip.nights, margins, strict=True)
        if margin.offered
    )
    rows = ", ".join(f"{row.name} {_of(row.margin)}" for row in strip.rows if row.margin.offered)
    return tr(
        "refused of offered: {house}; by night: {nights}; by row: {rows}",
        house=_of(house),
        nights=nights,
        rows=rows,
    )


def _of(margin: Margin) -> str:
    if not margin.offered:
        return ""
    return tr(
        "{refused} of {offered}",
        sense="a narrow column",
        refused=margin.refused,
        offered=margin.offered,
    )


def _share(margin: Margin) -> float:
    return margin.refused / margin.offered if margin.offered else 0.0


def _short(night: date) -> str:
    return day(night, on=night)
