"""The process that writes a book out and joins one: ``python -m keeper.actions.sharing_process``.

Begun by the window (``sharing_aside``). It holds no words: its language is chosen before any is
loaded.
"""

import importlib
import os
import sys

from keeper.actions.catalogues import speak_as
from keeper.language import VARIABLE

if __name__ == "__main__":
    speak_as(os.environ.get(VARIABLE, ""))
    importlib.import_module("keeper.actions.sharing_served").serve(
        sys.stdin.buffer, sys.stdout.buffer
    )
