"""The demo: `python3 demo/run.py` makes this checkout ready and runs demo/journey.py in it."""

import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from keeper._bootstrap import run_demo  # noqa: E402 - found by the line above

if __name__ == "__main__":
    sys.exit(run_demo(ROOT, sys.argv[1:]))
