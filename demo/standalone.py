"""Builds keeper as one folder that needs no Python, then starts it and drives it once.

    .venv/bin/pip install -e ".[build]"
    .venv/bin/python demo/standalone.py

The folder is ``dist/keeper``; the command in it is ``dist/keeper/keeper``. Copied to another
machine of the same kind it runs as it is. What was driven is told line by line; a step that this
machine has no tools for is said to be left out, and one that fails ends the run with 1.
"""

import json
import os
import shutil
import subprocess
import sys
import tempfile
from datetime import date
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
FOLDER = ROOT / "dist" / "keeper"
COMMAND = FOLDER / "keeper"
LEFT_OUT = ("tkinter", "scipy", "pandas", "pytest", "hypothesis", "IPython", "PIL")
DRIVING = ("xvfb-run", "dbus-run-session", "xdotool")
ON = date(2026, 11, 24)
KEYS = """
"$1" open "$2" &
program=$!
shown=$(timeout 60 xdotool search --sync --onlyvisible --name keeper | head -1)
sleep 4
xdotool windowfocus --sync "$shown"
for key in F7 F6 F9 F2 F12; do xdotool key $key; sleep 2; xdotool getwindowname "$shown"; done
xdotool key ctrl+q
for second in $(seq 30); do kill -0 $program 2>/dev/null || break; sleep 1; done
kill $program 2>/dev/null && echo "it did not close" && exit 1
wait $program
"""


def build() -> None:
    """Run PyInstaller; its working files stay under ``build``."""
    options = ["--noconfirm", "--clean", "--onedir", "--name=keeper", "--log-level=WARN"]
    options += [f"--distpath={FOLDER.parent}", f"--workpath={ROOT / 'build'}"]
    options += [f"--specpath={ROOT / 'build'}", f"--paths={ROOT}"]
    options += ["--collect-submodules=keeper", "--collect-data=font_source_sans_pro"]
    options += [f"--add-data={ROOT / 'resources'}:keeper/resources"]
    options += [f"--exclude-module={name}" for name in LEFT_OUT]
    command = [sys.executable, "-m", "PyInstaller", *options, str(ROOT / "keeper" / "__main__.py")]
    subprocess.run(command, check=True, cwd=ROOT)


def size_mb(folder: Path) -> float:
    """Megabytes (10^6 bytes) of every file under *folder*, a linked file once."""
    files = (file for file in folder.rglob("*") if file.is_file() and not file.is_symlink())
    return sum(file.stat().st_size for file in files) / 1e6


def drive(room: Path) -> None:
    """Ask the built command for help and for a board, then walk its window and close it."""
    from keeper.rehearsal.collection import make_collection

    keeping = make_collection(room / "room.book", ends_on=ON)
    keeping.close()
    book = keeping.book.path
    env = os.environ | {"KEEPER_HOME": str(room / "home")}
    env.pop("PYTHONPATH", None)
    asked("help", [str(COMMAND), "--help"], env)
    told = asked("due", [str(COMMAND), "due", str(book), "--on", ON.isoformat(), "--json"], env)
    print(f"due: {len(json.loads(told)['rows'])} animals on the board")
    missing = [tool for tool in DRIVING if shutil.which(tool) is None]
    if missing:
        print(f"window: left out, this machine has no {', '.join(missing)}")
    else:
        script = room / "keys.sh"
        script.write_text(KEYS, encoding="utf-8")
        server = "-screen 0 1440x900x24 -noreset"  # a screen that resets refuses whoever comes then
        screen = ["xvfb-run", "-a", "-s", server, "dbus-run-session", "--"]
        asked("window", [*screen, "bash", str(script), str(COMMAND), str(book)], env)
    asked("check", [str(COMMAND), "check", str(book)], env)


def asked(what: str, command: list[str], env: dict[str, str]) -> str:
    """Run *command*; what it printed. SystemExit with its errors where it fails."""
    done = subprocess.run(
        command, env=env, capture_output=True, text=True, timeout=300, check=False
    )
    if done.returncode:
        raise SystemExit(f"{what}: exit {done.returncode}\n{done.stdout}{done.stderr}")
    first = next(iter(done.stdout.splitlines()), "")
    print(f"{what}: exit 0, {first[:100]}")
    return done.stdout


def main() -> None:
    sys.path.insert(0, str(ROOT))
    build()
    print(f"{FOLDER}: {size_mb(FOLDER):.0f} MB")
    with tempfile.TemporaryDirectory() as room:
        drive(Path(room))


if __name__ == "__main__":
    main()
