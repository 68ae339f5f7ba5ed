"""The way in: ``keeper`` and ``python -m keeper``. Only ``open`` brings up the window."""

import importlib
import os
import sys
from pathlib import Path

from keeper import cli


def main() -> int:
    """Run the command line; a reader that stops reading early is no fault."""
    try:
        code = cli.main(sys.argv[1:], window)
        sys.stdout.flush()
    except BrokenPipeError:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0
    except KeyboardInterrupt:
        return 130
    return code


def window(book: Path | None) -> int:
    """Open the window. Qt is loaded here and for nothing else."""
    return int(importlib.import_module("keeper.app").run(book))


if __name__ == "__main__":
    sys.exit(main())
