"""The way in: ``keeper`` and ``python -m keeper``. Only ``open`` brings up the window."""

import gc
import importlib
import os
import sys
from collections.abc import Sequence
from pathlib import Path


def main() -> int:
    """Run the command line; a reader that stops reading early is no fault."""
    try:
        code = _run(sys.argv[1:])
        sys.stdout.flush()
    except BrokenPipeError:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0
    except KeyboardInterrupt:
        return 130
    return code


def window(book: Path | None) -> int:
    """Open the window. Qt is loaded here and for nothing else."""
    prepare()
    return int(importlib.import_module("keeper.start").run(book))


def prepare() -> None:
    """Load Qt with the collector still: none of it is ever garbage."""
    gc.disable()
    importlib.import_module("keeper.desktop.plain_imports").import_plainly()


def _run(arguments: Sequence[str]) -> int:
    if is_plain_open(arguments):
        return window(Path(arguments[1]) if arguments[1:] else None)
    importlib.import_module("keeper.desktop.chosen_language").choose()
    return int(importlib.import_module("keeper.cli").main(arguments, window))


def is_plain_open(arguments: Sequence[str]) -> bool:
    """Whether the window is asked for with no option: its start loads no other verb.

    >>> is_plain_open([]), is_plain_open(["open", "my.book"]), is_plain_open(["open", "--help"])
    (True, True, False)
    """
    options = any(argument.startswith("-") for argument in arguments)
    return not options and (not arguments or arguments[0] == "open") and len(arguments) < 3


if __name__ == "__main__":
    sys.exit(main())
