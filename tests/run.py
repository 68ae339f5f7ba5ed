"""All checks: `python3 tests/run.py` makes this checkout ready and runs them, cheapest first.

--fast   ruff and the pure tests only, in seconds
--long   also the campaigns marked long
Anything else is passed to pytest.
"""

import argparse
import os
import sys
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from keeper._bootstrap import Place, guarded, prepare  # noqa: E402 - found by the line above

PURE = ["tests/unit", "tests/architecture", "keeper"]


def main(arguments: list[str]) -> int:
    """Runs the checks asked for and says at the end how they went."""
    options, for_pytest = _parser().parse_known_args(arguments)
    place = prepare(ROOT, "test")
    begun = time.monotonic()
    checks = _checks(place, options.fast, options.long, for_pytest)
    failed = [name for name, command in checks if not _passes(place, name, command)]
    how = f"Failed: {', '.join(failed)}" if failed else f"All {len(checks)} checks passed"
    print(f"{how}; {time.monotonic() - begun:.0f} s.", flush=True)
    return 1 if failed else 0


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        description="Runs the checks, cheapest first.",
        epilog="Anything else is passed to pytest.",
        allow_abbrev=False,
    )
    parser.add_argument("--fast", action="store_true", help="ruff and the pure tests only")
    parser.add_argument("--long", action="store_true", help="also the campaigns marked long")
    return parser


def _checks(
    place: Place, is_fast: bool, is_long: bool, for_pytest: list[str]
) -> list[tuple[str, list[object]]]:
    """Each check's name and command."""
    # files as they are ordered, the longest first, and not those of the most tests first
    spread = ["-n", str(os.cpu_count() or 1), "--dist", "loadfile", "--no-loadscope-reorder"]
    long = ["--long"] if is_long else []
    pytest = [place.python, "-m", "pytest", *spread, *long, *for_pytest]
    ruff = ("ruff", [place.tool("ruff"), "check", "."])
    if is_fast:
        return [ruff, ("pytest", [*pytest, *PURE])]
    return [
        ruff,
        ("import-linter", [place.tool("lint-imports")]),
        ("mypy", [place.python, "-m", "mypy", "--strict"]),
        ("pytest", pytest),
    ]


def _passes(place: Place, name: str, command: list[object]) -> bool:
    print(f"== {name}", flush=True)
    return place.call(command, ROOT) == 0


if __name__ == "__main__":
    sys.exit(guarded(lambda: main(sys.argv[1:])))
