"""The set-up of a fresh checkout, as far as it can be seen without changing the machine."""

import ast
import os
import subprocess
import sys
from pathlib import Path

import pytest

from keeper import _bootstrap, _machine
from keeper._bootstrap import Place
from keeper._machine import SetupError

ROOT = Path(__file__).resolve().parents[2]
NOWHERE = {"libkeeper-nowhere.so.0": "libkeeper-nowhere0"}


@pytest.fixture
def checkout(tmp_path: Path) -> Path:
    """A checkout with nothing in it but what the set-up reads."""
    root = tmp_path / "checkout"
    (root / "resources").mkdir(parents=True)
    (root / "demo").mkdir()
    (root / "pyproject.toml").write_text("[project]\n")
    (root / "resources" / "constraints.txt").write_text("numpy==2.4.6\n")
    return root


@pytest.fixture
def stamped_venv(checkout: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """An environment that passes for complete, whose Python is the one running the tests."""
    venv = checkout / ".venv"
    (venv / "bin").mkdir(parents=True)
    (venv / "bin" / "python").symlink_to(sys.executable)
    (venv / "keeper-stamp").write_text(f"{_bootstrap.stamp_of(checkout)} ")
    monkeypatch.delenv("KEEPER_VENV", raising=False)
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(name, raising=False)
    return venv


def imported_by(module: Path) -> set[str]:
    """The top-level names a file imports."""
    tree = ast.parse(module.read_text(), feature_version=(3, 8))
    nodes = list(ast.walk(tree))
    plain = {alias.name for n in nodes if isinstance(n, ast.Import) for alias in n.names}
    return plain | {n.module or "" for n in nodes if isinstance(n, ast.ImportFrom)}


def test_importing_keeper_brings_in_neither_qt_nor_numpy() -> None:
    look = "import keeper, sys; print([m for m in ('PySide6', 'numpy') if m in sys.modules])"
    done = subprocess.run([sys.executable, "-c", look], cwd=ROOT, capture_output=True, text=True)
    assert done.stdout.strip() == "[]"


@pytest.mark.parametrize("name", ["_bootstrap", "_machine"])
def test_the_set_up_reads_on_an_old_python_and_needs_nothing_installed(name: str) -> None:
    names = imported_by(ROOT / "keeper" / f"{name}.py")
    foreign = {n for n in names if n.partition(".")[0] not in sys.stdlib_module_names}
    assert foreign <= {"keeper._machine"}


@pytest.mark.parametrize("changed", ["pyproject.toml", "resources/constraints.txt"])
def test_a_changed_list_of_packages_asks_for_a_new_installation(
    checkout: Path, stamped_venv: Path, changed: str
) -> None:
    assert _bootstrap._is_stamped(stamped_venv, checkout, "")
    (checkout / changed).write_text("# changed\n")
    assert not _bootstrap._is_stamped(stamped_venv, checkout, "")


def test_an_environment_for_the_demo_is_not_enough_for_the_tests(
    checkout: Path, stamped_venv: Path
) -> None:
    assert not _bootstrap._is_stamped(stamped_venv, checkout, "test")
    (stamped_venv / "keeper-stamp").write_text(f"{_bootstrap.stamp_of(checkout)} test")
    assert _bootstrap._is_stamped(stamped_venv, checkout, "test")
    assert _bootstrap._is_stamped(stamped_venv, checkout, "")


def test_an_environment_whose_python_is_gone_is_not_used(
    checkout: Path, stamped_venv: Path
) -> None:
    (stamped_venv / "bin" / "python").unlink()
    assert not _bootstrap._is_stamped(stamped_venv, checkout, "")


def test_a_folder_that_is_no_environment_is_refused_and_left_alone(tmp_path: Path) -> None:
    (tmp_path / "letters").write_text("dear")
    with pytest.raises(SetupError, match="is not a virtual environment and is left alone"):
        _bootstrap._clear_the_way(tmp_path, 0)
    assert (tmp_path / "letters").read_text() == "dear"


def test_a_broken_environment_is_cleared_away(tmp_path: Path) -> None:
    (tmp_path / "venv").mkdir()
    (tmp_path / "venv" / "pyvenv.cfg").touch()
    _bootstrap._clear_the_way(tmp_path / "venv", 0)
    assert not (tmp_path / "venv").exists()


def test_a_disk_without_room_is_refused_with_both_figures(tmp_path: Path) -> None:
    with pytest.raises(SetupError, match=r"has \d+ MB free and 1000000000 MB are needed"):
        _bootstrap._clear_the_way(tmp_path / "a" / "venv", 1_000_000_000)


def test_only_a_library_that_does_not_load_is_missing() -> None:
    sonames = ["libc.so.6", *NOWHERE]
    assert _machine.missing_libraries(sonames, dict(os.environ)) == list(NOWHERE)


def test_without_any_way_to_fetch_a_library_the_line_to_type_is_said(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("PATH", str(tmp_path))
    with pytest.raises(SetupError) as refusal:
        _machine.supply(tmp_path, NOWHERE, asked=1)
    assert str(refusal.value).endswith("type: sudo apt-get install libkeeper-nowhere0")
    assert "libkeeper-nowhere.so.0" in str(refusal.value)


def test_fedora_is_told_its_own_line() -> None:
    said = _machine.line_to_type(["libgl1"], ["libGL.so.1"], has_dnf=True)
    assert said.endswith("type: sudo dnf install 'libGL.so.1()(64bit)'")


def test_the_system_is_left_alone_when_asked(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("KEEPER_NO_APT", "1")
    assert _machine.administrator() is None


def test_unpacked_libraries_come_before_those_already_named(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("LD_LIBRARY_PATH", "/opt/mine")
    folder = tmp_path / "syslibs" / "usr" / "lib" / "x86_64-linux-gnu"
    folder.mkdir(parents=True)
    assert _machine.environment(tmp_path)["LD_LIBRARY_PATH"] == f"{folder}:/opt/mine"


def test_a_failed_command_is_told_in_its_own_last_words() -> None:
    command = [sys.executable, "-c", "print('E: no such package\\nbye'); raise SystemExit(100)"]
    with pytest.raises(SetupError, match=r"^it failed \(no such package\)$"):
        _machine.run(command, "it failed")


def test_a_command_that_is_not_there_is_told_too() -> None:
    with pytest.raises(SetupError, match="it failed"):
        _machine.run(["keeper-no-such-command"], "it failed")


def test_a_failed_set_up_is_one_sentence_and_exit_code_1(
    capsys: pytest.CaptureFixture[str],
) -> None:
    def fail() -> int:
        raise SetupError("The disk is full.")

    assert _bootstrap.guarded(fail) == 1
    assert capsys.readouterr().err == "The disk is full.\n"


def test_a_python_too_old_is_told_both_versions(
    checkout: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(sys, "version_info", (3, 9, 2, "final", 0))
    with pytest.raises(SetupError, match=r"needs Python 3\.11 or newer; this is Python 3\.9"):
        _bootstrap.prepare(checkout)


def test_a_missing_journey_is_said_plainly(
    checkout: Path, stamped_venv: Path, capfd: pytest.CaptureFixture[str]
) -> None:
    assert _bootstrap.run_demo(checkout, []) == 1
    assert "the journey is not there" in capfd.readouterr().err


def test_the_journey_gets_its_words_and_gives_its_exit_code(
    checkout: Path, stamped_venv: Path, capfd: pytest.CaptureFixture[str]
) -> None:
    show = "import os, sys; print(sys.argv[1:], os.environ['KEEPER_PICTURES']); sys.exit(7)"
    (checkout / "demo" / "journey.py").write_text(show)
    assert _bootstrap.run_demo(checkout, ["--quick"]) == 7
    said = capfd.readouterr().out
    assert f"['--quick'] {checkout / 'demo' / 'out'}" in said


def test_without_a_display_one_sentence_says_where_the_pictures_are(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    place = _bootstrap.with_display(Place(Path(sys.prefix), {}), tmp_path / "out")
    assert place.variables["QT_QPA_PLATFORM"] == "offscreen"
    assert (tmp_path / "out").is_dir()
    assert capsys.readouterr().out == (
        "There is no display, so this runs without a window"
        f" and saves its pictures in {tmp_path / 'out'}.\n"
    )


def test_a_display_named_but_dead_is_found_out_in_a_child() -> None:
    here = {n: v for n, v in os.environ.items() if n not in ("QT_QPA_PLATFORM", "WAYLAND_DISPLAY")}
    assert not _bootstrap._opens(Place(Path(sys.prefix), {**here, "DISPLAY": ":987"}))
    assert _bootstrap._opens(Place(Path(sys.prefix), {**here, "QT_QPA_PLATFORM": "offscreen"}))
