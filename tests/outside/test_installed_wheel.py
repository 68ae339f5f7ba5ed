"""The wheel, looked at from outside the checkout: what pip makes of the project."""

import os
import subprocess
import sys
import venv
import zipfile
from collections.abc import Sequence
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
KEPT_OUT = {"__pycache__"}


def run(command: Sequence[object], folder: Path) -> str:
    """Runs a command away from the checkout and hands back what it said."""
    variables = {n: v for n, v in os.environ.items() if n != "PYTHONPATH"}
    done = subprocess.run(
        [str(word) for word in command],
        cwd=folder,
        env=variables,
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
    )
    assert done.returncode == 0, done.stdout
    return done.stdout


def files_under(folder: Path) -> set[str]:
    """The files of a source folder, as paths below it."""
    kept = (f.relative_to(folder) for f in folder.rglob("*") if f.is_file())
    return {f.as_posix() for f in kept if not KEPT_OUT & set(f.parts)}


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The wheel of this checkout, built without the network."""
    pytest.importorskip("hatchling", reason="hatchling is part of the test extra")
    folder = tmp_path_factory.mktemp("wheel")
    options = ["--no-deps", "--no-index", "--no-build-isolation"]
    run([sys.executable, "-m", "pip", "wheel", *options, "-w", folder, ROOT], folder)
    return next(folder.glob("keeper-*.whl"))


def installed(wheel: Path, folder: Path, *options: str) -> Path:
    """Installs the wheel into an environment of its own and hands back its folder of commands."""
    venv.create(folder / "clean", symlinks=True)
    commands = folder / "clean" / "bin"
    pip = [sys.executable, "-m", "pip", "--python", commands / "python"]
    run([*pip, "install", *options, wheel], folder)
    return commands


def test_the_wheel_holds_every_sub_package_and_every_resource(wheel: Path) -> None:
    with zipfile.ZipFile(wheel) as archive:
        inside = {name for name in archive.namelist() if name.startswith("keeper/")}
    code = {f"keeper/{name}" for name in files_under(ROOT / "keeper")}
    resources = {f"keeper/resources/{name}" for name in files_under(ROOT / "resources")}
    assert inside == code | resources


def test_the_installed_package_finds_its_own_resources(wheel: Path, tmp_path: Path) -> None:
    python = installed(wheel, tmp_path, "--no-deps", "--no-index") / "python"
    borrowed = next(p for p in sys.path if (Path(p) / "sqlite_utils").is_dir())
    look = (
        f"import sys; sys.path.append({borrowed!r});"
        "from keeper.store.resources import resource_dir; print(resource_dir())"
    )
    found = Path(run([python, "-c", look], tmp_path).strip())
    assert found.is_relative_to(tmp_path / "clean")
    assert (found / "constraints.txt").is_file()


@pytest.mark.long
def test_pip_install_into_a_clean_environment_gives_a_working_command(
    wheel: Path, tmp_path: Path
) -> None:
    pinned = ROOT / "resources" / "constraints.txt"
    commands = installed(wheel, tmp_path, "-c", str(pinned))
    assert "due" in run([commands / "keeper", "--help"], tmp_path)
    book = tmp_path / "trial.book"
    run([commands / "keeper", "new", book], tmp_path)
    assert book.stat().st_size > 0
    run([commands / "keeper", "check", book], tmp_path)
