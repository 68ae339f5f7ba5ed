"""Text in a CSV cell that no spreadsheet takes for a formula, and back again letter for letter."""

import re

MARK = "'"
"""Spreadsheets show a cell that begins so as text."""
_RUN = ("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠", "﹢", "﹣", "﹦", "﹫")
_NUMBER = re.compile(r"[-+]?[0-9]+([.,][0-9]+)?")


def guarded(text: str) -> str:
    """*text* as a cell; a number keeps its sign, all that might be run gets a mark before it.

    >>> guarded("=1+1"), guarded("-5.00"), guarded("ate well"), guarded("'so called'")
    ("'=1+1", '-5.00', 'ate well', "''so called'")
    """
    return MARK + text if text.startswith(MARK) or is_dangerous(text) else text


def unguarded(cell: str) -> str:
    """What ``guarded`` was given; a cell that nobody guarded stays as it is.

    >>> unguarded("'=1+1"), unguarded("''so called'"), unguarded("'so called'")
    ('=1+1', "'so called'", "'so called'")
    """
    inner = cell.removeprefix(MARK)
    is_guarded = inner != cell and (inner.startswith(MARK) or is_dangerous(inner))
    return inner if is_guarded else cell


def is_dangerous(text: str) -> bool:
    """A spreadsheet might run it: it begins, behind any blanks, as a formula does."""
    shown = text.lstrip(" \u00a0\u200b\ufeff")
    return shown.startswith(_RUN) and not _NUMBER.fullmatch(text)
