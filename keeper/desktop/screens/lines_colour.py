"""A look of a line that is scored, as a row: generations, last mean, whether selection moves it."""

from __future__ import annotations

from keeper.actions.lines_desk import ColourLine
from keeper.desktop.widgets.line_list import LineFace
from keeper.desktop.widgets.tile import TileState
from keeper.language import tr, tr_table
from keeper.reports.figures import UNKNOWN, number

_TILES = {
    "rises": TileState.MOVES,
    "falls": TileState.MOVES,
    "stands": TileState.STANDS,
    "cannot tell": TileState.GATE_CANNOT_TELL,
}
_MOVES = tr_table(
    {"rises": "rises", "falls": "falls", "stands": "stands still", "cannot tell": "? cannot tell"}
)


def colour_face(line: ColourLine) -> LineFace:
    """The row of one line and look."""
    choice, facts = line.choice, line.facts
    told = facts.generations
    mean = number(told[-1].mean, 1) if told else UNKNOWN
    moves = _MOVES[facts.verdict.state]
    figures = (
        (str(choice.generations), tr("generations")),
        (mean, tr("last mean")),
        (moves, tr("with selection")),
    )
    name = choice.words
    under = tr("{species}, {count} scored from 1 to 10", species=choice.kind, count=choice.scored)
    said = "; ".join(f"{value} {what}" for value, what in figures)
    return LineFace(
        state=_TILES[facts.verdict.state],
        name=name,
        under=under,
        figures=figures,
        said=tr("{name}, {how}: {figures}", name=name, how=under, figures=said),
    )
