"""What is typed at the table: which sheet, row or rack, and each exception as line and result."""

from __future__ import annotations

import re

from keeper.actions.all_but import Scope, rack_scope, row_scope
from keeper.actions.round_entries import OtherResult
from keeper.actions.rounds import Walk
from keeper.desktop.screens.round_asking import REASONS, RESULTS
from keeper.husbandry.events import Result
from keeper.language import tr

NOT_OFFERED = "7"
CODE = re.compile(r"[\d ]{9,}")
_ROW = re.compile(r"([^\W\d_]{1,3})\s*(\d{1,3})")
_EXCEPTION = re.compile(r"(\d{1,5})\s+(\d)(?:\s+(\d))?")
_RESULTS = {key: result for key, result in RESULTS.items() if key.isdigit()}


def typed_scope(walk: Walk, text: str) -> Scope:
    """The row (``B3``) or rack (``B``) that *text* names.

    Raises:
        LookupError: there is none on this night, in one sentence.
    """
    row = _ROW.fullmatch(text.strip())
    if row is None:
        return rack_scope(walk, text)
    wanted = (row[1].upper(), int(row[2]))
    line = next((tub.line for tub in walk.tubs if tub.row == wanted), None)
    if line is None:
        raise LookupError(tr("There is no row {row} on this night.", row=f"{wanted[0]}{wanted[1]}"))
    return row_scope(walk, line)


def typed_exceptions(text: str) -> list[OtherResult]:
    """Exceptions as typed, ``12 0`` or ``12 7 1, 15 5``: line, result and perhaps the reason.

    Raises:
        ValueError: one of them cannot be read, in one sentence; none is taken.
    """
    return [_exception(part) for part in text.split(",") if part.strip()]


def _exception(text: str) -> OtherResult:
    found = _EXCEPTION.fullmatch(text.strip())
    if found is None:
        raise ValueError(
            tr(
                "{typed!r} is no exception; line and result are right, such as 12 0 or 12 7 1.",
                typed=text.strip(),
            )
        )
    line, digit, why = int(found[1]), found[2], found[3]
    if digit == NOT_OFFERED:
        if why not in REASONS:
            raise ValueError(
                tr("Line {line} was not offered: why? 7 and a reason, such as 7 1.", line=line)
            )
        return OtherResult(line=line, result=Result.NOT_OFFERED, withheld=REASONS[why])
    if digit not in _RESULTS or why is not None:
        raise ValueError(
            tr(
                "Line {line}: {digit} is no result; 0 refused, 5 left in, 2 part, 7 not offered.",
                line=line,
                digit=digit,
            )
        )
    return OtherResult(line=line, result=_RESULTS[digit])
