"""What the tests of the window share: their helpers by name, and a window in front."""

import sys
from pathlib import Path

import pytest

sys.path.insert(0, str(Path(__file__).parent))


collect_ignore = ["at_spi_reader.py"]
"""It runs under the system's Python, which has Debian's bindings of AT-SPI."""


@pytest.fixture
def home(tmp_path, monkeypatch):
    """What the program keeps on this machine, apart from what the user's own program keeps."""
    place = tmp_path / "home"
    monkeypatch.setenv("KEEPER_HOME", str(place))
    return place


@pytest.fixture
def front(qtbot, home):
    """Opens a book as a start of the program does; every window is closed at the end."""
    from keeper import app
    from keeper.desktop.background import AtOnce
    from keeper.desktop.look import Look

    fronts = []

    def opened(path):
        made = app.Front(Look(), worker=AtOnce())
        made.open(path)
        fronts.append(made)
        qtbot.waitUntil(made.window.isVisible)
        return made

    yield opened
    for made in fronts:
        made.window.close()
        made.window.deleteLater()


@pytest.fixture
def shell(qtbot):
    """A window in front with all nine places, on the round."""
    from sample import window

    from keeper.desktop.look import Look

    made = window(Look())
    qtbot.addWidget(made)
    made.resize(1440, 900)
    made.show()
    with qtbot.waitActive(made):
        made.activateWindow()
    return made
