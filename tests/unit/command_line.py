"""What the tests of the command line share: run it in this process and see what it said."""

import json
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

from keeper import cli


@dataclass(frozen=True, slots=True)
class Said:
    code: int
    out: str
    err: str

    @property
    def json(self) -> Any:
        return json.loads(self.out)


Run = Callable[..., Said]


def no_window(path: Path | None) -> int:
    raise AssertionError(f"the window was asked for, with {path}")


@pytest.fixture
def run(capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> Run:
    """Run one command line; what belongs to the machine goes to a passing folder."""
    monkeypatch.setenv("KEEPER_HOME", str(tmp_path / "home"))

    def run_it(*arguments: object, window: Callable[[Path | None], int] = no_window) -> Said:
        try:
            code = cli.main([str(argument) for argument in arguments], window)
        except SystemExit as stop:
            code = int(stop.code or 0)
        seen = capsys.readouterr()
        return Said(code, seen.out, seen.err)

    return run_it
