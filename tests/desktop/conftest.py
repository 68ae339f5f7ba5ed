"""Lets the tests of the window import their own helper, ``shots``, by name."""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
