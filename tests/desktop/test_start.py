"""What a start loads before it shows its picture, and how modules are loaded after it."""

import os
import subprocess
import sys
from pathlib import Path

import pytest
from trouble_sample import a_room

from keeper import app
from keeper.desktop.background import AtOnce
from keeper.desktop.look import Look

ROOT = Path(__file__).resolve().parents[2]

_CHILD = """
import sys
from datetime import datetime
from pathlib import Path
from keeper import __main__ as way_in, clock
at = datetime.fromisoformat(sys.argv[2])
clock.now = lambda: at
way_in.prepare()
from keeper import start
from PySide6 import QtCore, QtWidgets

def then(book, window):
    import builtins
    loaded = [name for name in sys.modules if name.startswith("keeper")]
    print("\\n".join([f"sight {window is not None}", *loaded]))
    print("names", "Qt" in vars(QtCore))
    print("import", builtins.__import__.__name__)
    window.close()

qt = start.bare_application()
start.begin(Path(sys.argv[1]), then)
qt.exec()
"""


@pytest.fixture
def told(qtbot, home, tmp_path, monkeypatch):
    """The lines that a start tells at its first sight, on a book that the window was closed on."""
    keeping = a_room(tmp_path / "room.book")
    path, now = keeping.book.path, keeping.now()
    monkeypatch.setattr("keeper.clock.now", lambda: now)
    keeping.close()
    front = app.Front(Look(), worker=AtOnce())
    front.open(path)
    qtbot.wait(50)
    front.window.close()
    done = subprocess.run(
        [sys.executable, "-c", _CHILD, str(path), now.isoformat()],
        cwd=ROOT,
        env=os.environ | {"QT_QPA_PLATFORM": "offscreen"},
        capture_output=True,
        text=True,
        check=True,
        timeout=60,
    )
    return done.stdout.splitlines()


def test_at_first_sight_no_word_look_or_rule_is_loaded(told):
    assert "sight True" in told
    assert {line for line in told if line.startswith("keeper")} == {
        "keeper",
        "keeper.__main__",
        "keeper.clock",
        "keeper.desktop",
        "keeper.desktop.plain_imports",
        "keeper.start",
        "keeper.actions",
        "keeper.actions.station",
        "keeper.desktop.remembered",
        "keeper.desktop.first_sight",
        "keeper.desktop.main_window",
    }


def test_at_first_sight_the_names_of_keys_and_colours_are_not_made(told):
    assert "names False" in told


def test_no_module_s_source_is_read_when_it_is_imported(told):
    (by,) = [line for line in told if line.startswith("import ")]
    assert by != "import __feature_import__"
