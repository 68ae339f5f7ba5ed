"""Makes a fresh checkout ready to run: virtual environment, packages, system libraries, display.

Standard library only, and of keeper only `_machine`: it runs before anything is installed.
Its syntax stays readable to Python 3.8, so that an old Python gets a sentence and not a traceback.

What it reads from the environment:
    KEEPER_VENV     where the virtual environment is kept (default: .venv in the checkout)
    KEEPER_NO_APT   1: install nothing into the system; unpack beside the environment instead
"""

from __future__ import annotations

import hashlib
import importlib.util
import os
import shutil
import subprocess
import sys
import time
from collections import deque
from collections.abc import Callable, Iterable, Iterator, Sequence
from pathlib import Path
from typing import NamedTuple

from keeper._machine import (
    BASE,
    BASE_ASKED,
    WAYLAND,
    WINDOW,
    WINDOW_ASKED,
    SetupError,
    administrator,
    apt_install,
    environment,
    last_words,
    run,
    say,
    supply,
    unpack,
)

OLDEST_PYTHON = (3, 11)
# Measured: 345 MB for the program and 757 MB with the tests, beside what pip downloads meanwhile.
NEEDED_MB = {"": 450, "test": 1000}
PROBE_SECONDS = 20
IS_LINUX = sys.platform.startswith("linux")

OPEN_WINDOW = "from PySide6.QtWidgets import QApplication; QApplication([])"


class Place(NamedTuple):
    """A checkout made ready: its virtual environment, and the variables to run it with."""

    venv: Path
    variables: dict[str, str]

    @property
    def python(self) -> Path:
        """The Python of the virtual environment."""
        return python_in(self.venv)

    def tool(self, name: str) -> Path:
        """A command installed beside that Python."""
        return self.python.with_name(name + self.python.suffix)

    def call(self, command: Sequence[object], folder: Path | None = None) -> int:
        """Runs a command here, or in `folder`, and hands back its exit code."""
        return subprocess.call([str(word) for word in command], env=self.variables, cwd=folder)


def guarded(work: Callable[[], int]) -> int:
    """Runs `work` and turns a failed set-up into its sentence and exit code 1."""
    try:
        return work()
    except SetupError as error:
        print(error, file=sys.stderr, flush=True)
        return 1
    except KeyboardInterrupt:
        print("Stopped.", file=sys.stderr, flush=True)
        return 130


def run_demo(root: Path, arguments: Sequence[str]) -> int:
    """Makes the checkout ready, then runs demo/journey.py in a window or, failing that, without."""
    return guarded(lambda: _demo(root, arguments))


def _demo(root: Path, arguments: Sequence[str]) -> int:
    place = with_display(prepare(root), root / "demo" / "out")
    journey = root / "demo" / "journey.py"
    if not journey.is_file():
        raise SetupError(f"The set-up is done, but the journey is not there: {journey} is missing.")
    return place.call([place.python, journey, *arguments])


def prepare(root: Path, extra: str = "") -> Place:
    """Makes the checkout at `root` ready, doing only what is not done yet.

    `extra` names a group of optional dependencies in pyproject.toml ("test", or "" for none).
    Raises SetupError when the machine cannot be made ready.
    """
    if sys.version_info[:2] < OLDEST_PYTHON:
        found, least = (".".join(map(str, v[:2])) for v in (sys.version_info, OLDEST_PYTHON))
        raise SetupError(f"keeper needs Python {least} or newer; this is Python {found}.")
    venv = venv_folder(root)
    if not _is_stamped(venv, root, extra):
        _build(venv, root, extra)
    if IS_LINUX:
        supply(venv, BASE, BASE_ASKED)
    return Place(venv, environment(venv))


# ------------------------------------------------------------------ the virtual environment


def venv_folder(root: Path) -> Path:
    """Where the virtual environment of the checkout at `root` is kept."""
    return Path(os.environ.get("KEEPER_VENV") or root / ".venv").expanduser().absolute()


def python_in(venv: Path) -> Path:
    """The Python of a virtual environment."""
    return venv / ("Scripts/python.exe" if os.name == "nt" else "bin/python")


def stamp_of(root: Path) -> str:
    """A fingerprint of everything an installation depends on, as sha256 in hexadecimal."""
    digest = hashlib.sha256(f"{root} {sys.version_info[:2]}".encode())
    for name in ("pyproject.toml", "resources/constraints.txt"):
        digest.update((root / name).read_bytes())
    return digest.hexdigest()


def _is_stamped(venv: Path, root: Path, extra: str) -> bool:
    """True when the environment holds what pyproject.toml asks for, with at least this extra."""
    stamp = venv / "keeper-stamp"
    if not (stamp.is_file() and python_in(venv).exists()):
        return False
    digest, _, extras = stamp.read_text().partition(" ")
    return digest == stamp_of(root) and extra in ("", extras)


def _build(venv: Path, root: Path, extra: str) -> None:
    """Makes or refreshes the environment; a new one that fails half-way is deleted again."""
    is_new = not _is_usable(venv)
    if is_new:
        _clear_the_way(venv, NEEDED_MB[extra])
    try:
        if is_new:
            _create(venv)
        (venv / "keeper-stamp").unlink(missing_ok=True)
        _install(venv, root, extra)
    except BaseException:
        if is_new:
            shutil.rmtree(venv, ignore_errors=True)
        raise
    (venv / "keeper-stamp").write_text(f"{stamp_of(root)} {extra}")


def _is_usable(venv: Path) -> bool:
    """True for an environment of this version of Python that has pip."""
    same = f"import pip, sys; sys.exit(sys.version_info[:2] != {sys.version_info[:2]})"
    try:
        return subprocess.run([python_in(venv), "-c", same], capture_output=True).returncode == 0
    except OSError:
        return False


def _clear_the_way(venv: Path, needed_mb: int) -> None:
    """Removes a broken environment; refuses any other folder, and a disk without room."""
    if venv.exists():
        if not (venv / "pyvenv.cfg").is_file() and (not venv.is_dir() or any(venv.iterdir())):
            raise SetupError(
                f"{venv} is not a virtual environment and is left alone;"
                " set KEEPER_VENV to a new or empty folder."
            )
        shutil.rmtree(venv)
    existing = next(folder for folder in venv.parents if folder.exists())
    free_mb = shutil.disk_usage(existing).free // 1_000_000
    if free_mb < needed_mb:
        raise SetupError(
            f"{existing} has {free_mb} MB free and {needed_mb} MB are needed;"
            " make room, or set KEEPER_VENV to a folder on a larger disk."
        )


def _create(venv: Path) -> None:
    """Makes an empty environment with pip in it, also where Debian's venv package is missing."""
    say(f"Making a virtual environment in {venv}.")
    package = "python{}.{}-venv".format(*sys.version_info[:2])
    if not _has_ensurepip() and administrator() is not None:
        apt_install([package], "A virtual environment")
    if _has_ensurepip():
        run([sys.executable, "-m", "venv", venv], "The virtual environment could not be made")
        return
    try:
        _create_with_unpacked_pip(venv)
    except (SetupError, StopIteration):
        raise SetupError(
            f"Python's venv module is incomplete here; type: sudo apt-get install {package}"
        ) from None


def _has_ensurepip() -> bool:
    importlib.invalidate_caches()
    return importlib.util.find_spec("ensurepip") is not None


def _create_with_unpacked_pip(venv: Path) -> None:
    """Makes an environment with pip out of Debian's own pip wheel, unpacked for the occasion."""
    run([sys.executable, "-m", "venv", "--without-pip", venv], "no environment")
    unpacked = venv / "pip-wheel"
    unpack(["python3-pip-whl"], unpacked)
    wheel = next(unpacked.rglob("pip-*.whl"))
    run([python_in(venv), f"{wheel}/pip", "install", "--no-index", wheel], "no pip")
    shutil.rmtree(unpacked)


def _install(venv: Path, root: Path, extra: str) -> None:
    """Installs keeper in editable form with the pinned packages, showing how far it is."""
    say("Fetching the Python packages; the first time this can take a minute or two.")
    begun = time.monotonic()
    target = f"{root}[{extra}]" if extra else str(root)
    pinned = root / "resources" / "constraints.txt"
    command = [str(python_in(venv)), "-m", "pip", "install", "--progress-bar", "off"]
    command += ["-e", target, "-c", str(pinned)]
    quiet = {"PIP_USER": "0", "PIP_NO_INPUT": "1", "PIP_DISABLE_PIP_VERSION_CHECK": "1"}
    with subprocess.Popen(
        command,
        env={**os.environ, **quiet},
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        encoding="utf-8",
        errors="replace",
    ) as pip:
        last = deque(_shown(pip.stdout or ()), maxlen=40)
    if pip.returncode:
        raise SetupError(
            f"The Python packages could not be installed ({last_words(last)});"
            " check the network and start again."
        )
    say(f"The packages are in place after {time.monotonic() - begun:.0f} s.")


def _shown(lines: Iterable[str]) -> Iterator[str]:
    """Passes pip's lines on and, on a terminal, shows the latest step on one line."""
    is_terminal = sys.stdout.isatty()
    for line in lines:
        if is_terminal and line.startswith(("Collecting", "Installing", "Building")):
            print(f"\r\x1b[K  {line.strip()[:70]}", end="", flush=True)
        yield line
    if is_terminal:
        print("\r\x1b[K", end="", flush=True)


# ------------------------------------------------------------------ the display


def with_display(place: Place, pictures: Path) -> Place:
    """The place to run a window in; without a display that answers, one that saves pictures.

    The program then finds QT_QPA_PLATFORM=offscreen and the folder in KEEPER_PICTURES.
    """
    if not IS_LINUX:
        return place
    place, reason = _try_display(place)
    if reason is None:
        return place
    say(f"{reason}, so this runs without a window and saves its pictures in {pictures}.")
    pictures.mkdir(parents=True, exist_ok=True)
    off_screen = {"QT_QPA_PLATFORM": "offscreen", "KEEPER_PICTURES": str(pictures)}
    return Place(place.venv, {**place.variables, **off_screen})


def _try_display(place: Place) -> tuple[Place, str | None]:
    """Where a window opens, fetching libraries if need be; and the reason if none does."""
    asked = place.variables.get("QT_QPA_PLATFORM", "")
    if asked.partition(":")[0] in ("offscreen", "minimal"):
        return place, f"QT_QPA_PLATFORM is {asked}"
    x, wayland = (place.variables.get(name) for name in ("DISPLAY", "WAYLAND_DISPLAY"))
    if not (x or wayland):
        return place, "There is no display"
    if _opens(place):
        return place, None
    try:
        supply(place.venv, WINDOW if x else WAYLAND, WINDOW_ASKED if x else len(WAYLAND))
    except SetupError as error:
        say(f"{error}.")
        return place, "The libraries for a window are missing"
    place = Place(place.venv, environment(place.venv))
    return place, None if _opens(place) else f"The display {x or wayland} does not answer"


def _opens(place: Place) -> bool:
    """Tries to open Qt on the display in a child, because Qt aborts where it cannot."""
    try:
        done = subprocess.run(
            [place.python, "-c", OPEN_WINDOW],
            env=place.variables,
            capture_output=True,
            timeout=PROBE_SECONDS,
        )
    except subprocess.TimeoutExpired:
        return False
    return done.returncode == 0
