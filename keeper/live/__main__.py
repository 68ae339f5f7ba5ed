"""The process that listens: ``python -m keeper.live``, begun by the window."""

import importlib
import os
import sys

from keeper.actions.catalogues import VARIABLE, speak_as

if __name__ == "__main__":
    speak_as(os.environ.get(VARIABLE, ""))
    importlib.import_module("keeper.live.apart").serve(sys.stdin.buffer, sys.stdout.buffer)
