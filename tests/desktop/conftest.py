"""What the tests of the window share: their helpers by name, and a window in front."""

import sys
from pathlib import Path

import pytest

sys.path.insert(0, str(Path(__file__).parent))


collect_ignore = ["at_spi_reader.py"]
"""It runs under the system's Python, which has Debian's bindings of AT-SPI."""


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
