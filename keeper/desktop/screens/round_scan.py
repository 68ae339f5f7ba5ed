"""What a label scanner read during the round: a tub's line, or a sheet to type."""

from __future__ import annotations

from keeper.actions.keeping import Keeping
from keeper.actions.sheets import sheet_walk
from keeper.desktop.screens.all_but_typing import CODE
from keeper.desktop.screens.round_doing import line_of
from keeper.desktop.screens.round_pages import Standing
from keeper.language import tr


def scanned_line(keeping: Keeping, here: Standing | None, code: str) -> int | None:
    """The line of the tub whose animal or place bears *code*; None: *code* is a sheet's.

    With a round open only a sheet of that very night is meant.

    Raises:
        LookupError, ValueError: neither, in one sentence.
    """
    line = line_of(here.walk, code) if here is not None else None
    if line is not None:
        return line
    if CODE.fullmatch(code):
        sheet_walk(keeping, code, here.walk if here else None)
        return None
    if here is None:
        told = tr("No round is open, so {code!r} has no tub to go to; Enter begins one.", code=code)
        raise LookupError(told)
    raise LookupError(tr("No tub of tonight’s round bears {code!r}.", code=code))
