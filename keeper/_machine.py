"""The machine under the program: its shared libraries and Debian packages.

Standard library only, and nothing else of keeper: it runs before anything is installed.
Its syntax stays readable to Python 3.8, so that an old Python gets a sentence and not a traceback.
"""

from __future__ import annotations

import os
import re
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Callable, Iterable, Sequence
from pathlib import Path

# Every library that QtGui, QtWidgets and the window-less plugin load, with the Debian 12 package
# that holds it. The first six are asked of apt, which finds the rest by itself.
BASE = {
    "libglib-2.0.so.0": "libglib2.0-0",
    "libGL.so.1": "libgl1",
    "libEGL.so.1": "libegl1",
    "libxkbcommon.so.0": "libxkbcommon0",
    "libdbus-1.so.3": "libdbus-1-3",
    "libfontconfig.so.1": "libfontconfig1",
    "libpcre2-8.so.0": "libpcre2-8-0",
    "libGLX.so.0": "libglx0",
    "libGLdispatch.so.0": "libglvnd0",
    "libX11.so.6": "libx11-6",
    "libxcb.so.1": "libxcb1",
    "libXau.so.6": "libxau6",
    "libXdmcp.so.6": "libxdmcp6",
    "libbsd.so.0": "libbsd0",
    "libfreetype.so.6": "libfreetype6",
    "libpng16.so.16": "libpng16-16",
    "libbrotlidec.so.1": "libbrotli1",
    "libexpat.so.1": "libexpat1",
}
BASE_ASKED = 6
BASE_DATA = {
    "libxkbcommon.so.0": ["xkb-data"],
    "libfontconfig.so.1": ["fontconfig-config", "fonts-dejavu-core"],
}
# The same for a real window, on X (first five asked of apt) and on Wayland.
WINDOW = {
    "libxcb-cursor.so.0": "libxcb-cursor0",
    "libxcb-icccm.so.4": "libxcb-icccm4",
    "libxcb-keysyms.so.1": "libxcb-keysyms1",
    "libxcb-shape.so.0": "libxcb-shape0",
    "libxkbcommon-x11.so.0": "libxkbcommon-x11-0",
    "libxcb-image.so.0": "libxcb-image0",
    "libxcb-util.so.1": "libxcb-util1",
    "libxcb-randr.so.0": "libxcb-randr0",
    "libxcb-render.so.0": "libxcb-render0",
    "libxcb-render-util.so.0": "libxcb-render-util0",
    "libxcb-shm.so.0": "libxcb-shm0",
    "libxcb-sync.so.1": "libxcb-sync1",
    "libxcb-xfixes.so.0": "libxcb-xfixes0",
    "libxcb-xkb.so.1": "libxcb-xkb1",
    "libX11-xcb.so.1": "libx11-xcb1",
}
WINDOW_ASKED = 5
WAYLAND = {
    "libwayland-client.so.0": "libwayland-client0",
    "libwayland-cursor.so.0": "libwayland-cursor0",
}

DLOPEN = """
import ctypes, sys
for name in sys.argv[1:]:
    try:
        ctypes.CDLL(name)
    except OSError:
        print(name)
"""
FONTS = """<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>/usr/share/fonts</dir>
  <dir>{syslibs}/usr/share/fonts</dir>
  <dir prefix="xdg">fonts</dir>
  <cachedir prefix="xdg">fontconfig</cachedir>
  <include ignore_missing="yes">{syslibs}/usr/share/fontconfig/conf.avail/60-latin.conf</include>
</fontconfig>
"""


class SetupError(Exception):
    """The machine could not be made ready; the message is one sentence for whoever typed it."""


def say(sentence: str) -> None:
    """Tells whoever typed the command what is going on."""
    sys.stdout.write(f"{sentence}\n")
    sys.stdout.flush()


def missing_libraries(sonames: Iterable[str], environ: dict[str, str]) -> list[str]:
    """Those of the shared libraries that cannot be loaded, tried in a child process."""
    command = [sys.executable, "-I", "-S", "-c", DLOPEN, *sonames]
    return subprocess.run(command, env=environ, stdout=subprocess.PIPE, text=True).stdout.split()


def environment(venv: Path) -> dict[str, str]:
    """The environment to run in: this process's, and whatever was unpacked into the venv."""
    environ = dict(os.environ)
    syslibs = venv / "syslibs"
    if not syslibs.is_dir():
        return environ
    folders = [*syslibs.glob("usr/lib/*-linux-*"), *syslibs.glob("lib/*-linux-*")]
    before = environ.get("LD_LIBRARY_PATH")
    environ["LD_LIBRARY_PATH"] = ":".join([*map(str, folders), *([before] if before else [])])
    if not Path("/etc/fonts/fonts.conf").exists():
        environ.setdefault("FONTCONFIG_FILE", str(syslibs / "fonts.conf"))
    if not Path("/usr/share/X11/xkb").exists():
        environ.setdefault("XKB_CONFIG_ROOT", str(syslibs / "usr/share/X11/xkb"))
    return environ


def supply(venv: Path, libraries: dict[str, str], asked: int) -> None:
    """Sees to it that every library loads: by apt, else unpacked, else says what to type."""
    missing = missing_libraries(libraries, environment(venv))
    if not missing:
        return
    top = list(libraries)[:asked]
    packages = [libraries[name] for name in top if name in missing or not set(top) & set(missing)]
    attempts: list[Callable[[], None]] = [
        lambda: apt_install(packages, "The program"),
        lambda: _unpack_libraries(venv, libraries, missing),
    ]
    reasons = []
    for attempt in attempts[administrator() is None :]:
        try:
            attempt()
        except SetupError as error:
            reasons.append(str(error))
        missing = missing_libraries(libraries, environment(venv))
        if not missing:
            return
    raise SetupError(line_to_type(packages, missing, shutil.which("dnf") is not None, reasons))


def line_to_type(
    packages: Sequence[str], missing: Sequence[str], has_dnf: bool, reasons: Sequence[str] = ()
) -> str:
    """The one sentence for a machine whose libraries only its keeper can install.

    >>> line_to_type(["libgl1"], ["libGL.so.1"], has_dnf=False)
    'System libraries are missing (libGL.so.1); type: sudo apt-get install libgl1'
    >>> line_to_type(["libgl1"], ["libGL.so.1", "libEGL.so.1"], has_dnf=False, reasons=["full"])
    'System libraries are missing (libGL.so.1 and 1 more; full); type: sudo apt-get install libgl1'
    """
    wide = "()(64bit)" if sys.maxsize > 2**32 else ""
    fedora = " ".join(f"'{soname}{wide}'" for soname in missing)
    line = f"dnf install {fedora}" if has_dnf else f"apt-get install {' '.join(packages)}"
    named = missing[0] + (f" and {len(missing) - 1} more" if missing[1:] else "")
    because = "; ".join([named, *reasons])
    return f"System libraries are missing ({because}); type: sudo {line}"


def administrator() -> list[str] | None:
    """What to put before an apt-get that changes the system; None when that is not to be done."""
    if os.environ.get("KEEPER_NO_APT") == "1" or not shutil.which("apt-get"):
        return None
    if os.geteuid() == 0:
        return []
    can = shutil.which("sudo") and _exit_code(["sudo", "-n", "true"]) == 0
    return ["sudo", "-n"] if can else None


def _exit_code(command: Sequence[str]) -> int:
    return subprocess.run(command, stdin=subprocess.DEVNULL, capture_output=True).returncode


def apt_install(packages: Sequence[str], what_for: str) -> None:
    """Installs Debian packages into the system, having said so."""
    before = [*(administrator() or []), "env", "DEBIAN_FRONTEND=noninteractive", "apt-get"]
    before += ["-q", "-o", "DPkg::Lock::Timeout=60"]
    say(
        f"{what_for} needs system packages; installing with apt-get: {' '.join(packages)}"
        " (KEEPER_NO_APT=1 keeps the system as it is)."
    )
    _exit_code([*before, "update"])
    install = [*before, "install", "-y", "--no-install-recommends", *packages]
    run(install, "apt-get could not install them")


def _unpack_libraries(venv: Path, libraries: dict[str, str], missing: Sequence[str]) -> None:
    """Unpacks the missing libraries, and the data they read, into the virtual environment."""
    packages = [libraries[name] for name in missing]
    for name in missing:
        packages += BASE_DATA.get(name, [])
    syslibs = venv / "syslibs"
    unpack(packages, syslibs)
    (syslibs / "fonts.conf").write_text(FONTS.format(syslibs=syslibs))


def unpack(packages: Sequence[str], target: Path) -> None:
    """Fetches Debian packages and unpacks them into `target`; needs no administrator."""
    if not (shutil.which("apt-get") and shutil.which("dpkg-deb")):
        raise SetupError("there is no apt-get to fetch them with")
    say(f"Unpacking Debian packages into {target}: {' '.join(packages)}.")
    target.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        options = _private_apt(folder)
        run(["apt-get", "-q", *options, "update"], "the package lists could not be fetched")
        shown = subprocess.run(
            ["apt-cache", *options, "show", *packages], capture_output=True, text=True
        ).stdout
        command = ["apt-get", "-q", *options, "download", *real_names(packages, shown)]
        run(command, "the packages could not be fetched", folder)
        for package in sorted(folder.glob("*.deb")):
            run(["dpkg-deb", "-x", package, target], "a package could not be unpacked")


def real_names(packages: Sequence[str], shown: str) -> list[str]:
    """The names to download, given what `apt-cache show` says; newer Debians add t64 to some.

    >>> real_names(["libgl1", "libpng16-16"], "Package: libgl1")
    ['libgl1', 'libpng16-16t64']
    """
    known = {line.partition(": ")[2] for line in shown.splitlines() if line.startswith("Package: ")}
    return [name if name in known else f"{name}t64" for name in packages]


def _private_apt(folder: Path) -> list[str]:
    """Options that let apt work for anyone, with its lists and downloads in `folder`."""
    for needed in ("state/lists/partial", "cache/archives/partial"):
        (folder / needed).mkdir(parents=True)
    settings = {
        "Dir::State": folder / "state",
        "Dir::State::status": "/var/lib/dpkg/status",
        "Dir::Cache": folder / "cache",
        "Debug::NoLocking": "1",
        "APT::Sandbox::User": "root",
        "APT::Update::Error-Mode": "any",
    }
    return [word for key, value in settings.items() for word in ("-o", f"{key}={value}")]


def run(command: Sequence[object], failure: str, folder: Path | None = None) -> None:
    """Runs a command quietly; raises SetupError with its last words when it fails."""
    try:
        done = subprocess.run(
            [str(word) for word in command],
            cwd=folder,
            stdin=subprocess.DEVNULL,
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            encoding="utf-8",
            errors="replace",
        )
    except OSError as error:
        raise SetupError(f"{failure} ({error})") from error
    if done.returncode:
        raise SetupError(f"{failure} ({last_words(done.stdout.splitlines())})")


def last_words(lines: Iterable[str]) -> str:
    """The line that says what went wrong: the last one marked as an error, else the last.

    >>> last_words(["ERROR: no such thing", "", "[notice] bye"])
    'no such thing'
    >>> last_words(["  OSError: no file", "  [end of output]", "hint: see above"])
    'OSError: no file'
    """
    said = [line.strip() for line in lines if line.strip()] or ["it said nothing"]
    errors = [line for line in said if re.match(r"(ERROR|E|\w*Error): ", line)]
    return (errors or said)[-1].removeprefix("ERROR: ").removeprefix("E: ").rstrip(".")
