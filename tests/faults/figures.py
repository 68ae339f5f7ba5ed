"""What the campaigns found when they last ran, written by themselves and by nobody else.

The quick tests write nothing: a figure in the table is of a campaign.
"""

import json
import platform
import sqlite3
from pathlib import Path
from typing import Any

from keeper import clock

FIGURES = Path(__file__).with_name("figures.json")


def keep(fault: str, **figures: Any) -> None:
    """Write down what a campaign against *fault* found, in place of what it found before."""
    known = read()
    known[fault] = figures | {
        "on": clock.today().isoformat(),
        "machine": f"{platform.system()}, Python {platform.python_version()}, "
        f"SQLite {sqlite3.sqlite_version}",
    }
    text = json.dumps(dict(sorted(known.items())), ensure_ascii=False, indent=1)
    FIGURES.write_text(f"{text}\n", encoding="utf-8")


def read() -> dict[str, dict[str, Any]]:
    """By fault, the figures of its last campaign."""
    return json.loads(FIGURES.read_text(encoding="utf-8")) if FIGURES.exists() else {}
