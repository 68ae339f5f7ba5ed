"""A window with the Animal place alone, worked by keys; a worker that waits to be told."""

from __future__ import annotations

from contextlib import closing
from datetime import date

import pytest
from life_sample import WREN, a_book, key_of, unknown_sex, wren
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from keeper.desktop.background import AtOnce
from keeper.desktop.house import House
from keeper.desktop.look import Look
from keeper.desktop.screens.animal import AnimalScreen

K = Qt.Key
NONE, SHIFT, CONTROL = (
    Qt.KeyboardModifier.NoModifier,
    Qt.KeyboardModifier.ShiftModifier,
    Qt.KeyboardModifier.ControlModifier,
)
SECOND = date(2026, 9, 2)


class Later:
    """A worker that works when it is told to."""

    def __init__(self):
        self.jobs = []

    def run(self, job, done, failed):
        self.jobs.append((job, done))

    def stop(self, last=None):
        self.jobs.clear()

    def work(self):
        for job, done in self.jobs:
            done(job())
        self.jobs.clear()


class Desk:
    """A window with the Animal place alone; forecasts wait until asked for."""

    def __init__(self, qtbot, keeping, size=(1440, 900)):
        self.reckoner, self.look = Later(), Look()
        self.house = House(keeping, self.look, {"Animal": self._made})
        self.window = self.house.window
        qtbot.addWidget(self.window)
        self.window.resize(*size)
        self.window.show()
        with qtbot.waitActive(self.window):
            self.window.activateWindow()
        QApplication.processEvents()

    @property
    def page(self):
        return self.window.page("Animal")

    @property
    def told(self):
        return self.page.read_out.text().replace("\u00a0", " ")

    @property
    def foot(self):
        return self.window.foot.text().replace("\u00a0", " ")

    @property
    def cursor(self):
        return self.page.strip.view.cursor

    def press(self, key, modifier=NONE, times=1):
        for _ in range(times):
            QTest.keyClick(self.window.windowHandle(), key, modifier)
        QApplication.processEvents()

    def type(self, text, enter=True):
        """Type into the line that is open."""
        QTest.keyClicks(self.page.line.field, text)
        if enter:
            QTest.keyClick(self.page.line.field, K.Key_Return)
        QApplication.processEvents()

    def show(self, code):
        """The page of the animal with this code, read again."""
        self.page.show_animal(key_of(self.house.keeping, code))

    def to(self, day):
        self.page.go(lambda view: view.to(day))

    def picture(self):
        QApplication.processEvents()
        return self.window.grab().toImage()

    def _made(self, look, keeping, notices):
        return AnimalScreen(look, keeping, notices, reader=AtOnce(), reckoner=self.reckoner)


@pytest.fixture
def keeping(tmp_path):
    """Wren, her kin, and a hatchling of which little is known."""
    with closing(a_book(tmp_path / "animal.book")) as made:
        wren(made)
        unknown_sex(made)
        yield made


@pytest.fixture
def desk(qtbot, keeping):
    """Wren's page."""
    made = Desk(qtbot, keeping)
    made.show(WREN)
    return made
