"""The keeper's verbs without a window: the same book, the same rules, text or JSON.

Exit codes: 0 done, 1 a check failed, 2 something given is wrong, with one sentence on stderr.
"""

import sys
from collections.abc import Callable, Sequence
from pathlib import Path

from keeper.actions.csv_file import Wrong
from keeper.cli.parsing import WRONG, parser
from keeper.cli.verbs import VERBS
from keeper.reports.figures import plain
from keeper.store.errors import BookError

Window = Callable[[Path | None], int]


def main(arguments: Sequence[str], window: Window) -> int:
    """Do what the command line asks for; returns the exit code.

    window: opens the window on a book, or on the keeper's last one; called for ``open`` and
    for no command at all.

    Raises:
        SystemExit: help was asked for, or the arguments cannot be read.
    """
    given = parser().parse_args(arguments)
    if given.command in (None, "open"):
        return window(given.book)
    try:
        return VERBS[given.command](given)
    except BrokenPipeError:
        raise
    except (Wrong, BookError, OSError) as error:
        print(plain(str(error)), file=sys.stderr)
        return WRONG
