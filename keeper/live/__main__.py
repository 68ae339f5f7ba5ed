"""The process that listens: ``python -m keeper.live``, begun by the window."""

import importlib
import os
import sys

from keeper.actions.catalogues import speak_as
from keeper.language import VARIABLE

if __name__ == "__main__":
    speak_as(os.environ.get(VARIABLE, ""))
    importlib.import_module("keeper.live.apart").serve(sys.stdin.buffer, sys.stdout.buffer)
