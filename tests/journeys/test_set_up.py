"""The set-up as a newcomer lives it when the packages cannot be installed."""

import venv
from pathlib import Path

import pytest

from keeper import _bootstrap
from keeper._machine import SetupError

NO_BACKEND = '[build-system]\nrequires = []\nbuild-backend = "keeper_no_such_backend"\n'


@pytest.fixture
def checkout(tmp_path: Path) -> Path:
    """A checkout that cannot be installed, on a network or off it."""
    (tmp_path / "resources").mkdir()
    (tmp_path / "pyproject.toml").write_text(NO_BACKEND)
    (tmp_path / "resources" / "constraints.txt").touch()
    return tmp_path


def test_a_half_made_environment_is_deleted(checkout: Path) -> None:
    environment = checkout / ".venv"
    with pytest.raises(SetupError, match="The Python packages could not be installed"):
        _bootstrap._build(environment, checkout, "")
    assert not environment.exists()


def test_an_environment_that_was_there_before_survives_and_is_tried_again(checkout: Path) -> None:
    environment = checkout / ".venv"
    venv.create(environment, with_pip=True, symlinks=True)
    (environment / "keeper-stamp").write_text("of an earlier pyproject")
    with pytest.raises(SetupError):
        _bootstrap._build(environment, checkout, "")
    assert _bootstrap.python_in(environment).exists()
    assert not (environment / "keeper-stamp").exists()
