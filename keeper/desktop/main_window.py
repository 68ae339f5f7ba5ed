"""The window: the place gone to, or at a start its picture. It assembles and decides nothing.

What the picture of a start does without is loaded when the places are entered.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QSize, QSizeF, Signal
from PySide6.QtGui import QCloseEvent, QResizeEvent
from PySide6.QtWidgets import QLabel, QMainWindow, QWidget

if TYPE_CHECKING:
    from PySide6.QtGui import QAction

    from keeper.desktop.furniture import Furniture
    from keeper.desktop.look import Look
    from keeper.desktop.places import Place
    from keeper.desktop.widgets.foot import Foot
    from keeper.desktop.widgets.place_strip import PlaceStrip

LEAST_PT = (768.0, 450.0)
"""The least window, in points: 1024 x 600 at 96 dpi."""


class MainWindow(QMainWindow):
    """Shows the places it is given, one at a time, each made when first gone to.

    Signals: ``undo_asked`` and ``redo_asked`` (Ctrl+Z, Ctrl+Shift+Z), ``scanned(code)`` from a
    label scanner, ``place_changed(index)``, ``closing`` before the window goes.

    Without a look it has no places, nor ``look``, ``strip`` and ``foot``, until ``enter``.
    """

    undo_asked = Signal()
    redo_asked = Signal()
    scanned = Signal(str)
    place_changed = Signal(int)
    closing = Signal()

    look: Look
    strip: PlaceStrip
    foot: Foot

    def __init__(self, look: Look | None = None, places: Sequence[Place] = ()) -> None:
        super().__init__()
        self._places: tuple[Place, ...] = ()
        self._pages: dict[int, QWidget] = {}
        self._index = -1
        self._sight: QLabel | None = None
        self._furniture: Furniture | None = None
        self._asked_early = 0
        self.setMinimumSize(_least_size(self))
        if look is not None:
            self.enter(look, places)

    @property
    def place(self) -> Place:
        """The place gone to; IndexError while there is none."""
        return self._places[self._index]

    @property
    def at_first_sight(self) -> bool:
        """Whether a picture stands for the first page."""
        return self._sight is not None

    def show_sight(self, sight: QLabel, title: str) -> None:
        """Show *sight* in place of the first page, and no page is made, until ``enter``."""
        self._sight = sight
        self.setCentralWidget(sight)
        self.setWindowTitle(title)

    def enter(self, look: Look, places: Sequence[Place]) -> None:
        """Show *places* in one look, in the place of what was a picture of the first."""
        from keeper.desktop.furniture import Furniture

        if self._sight is not None:  # its size is known: nothing is dressed twice
            self._sight = None
            look.fit(QSizeF(self.size()), self.logicalDpiY())
        self.look, self._places = look, tuple(places)
        made = Furniture(self, look, places)
        self.strip, self.foot = made.middle.strip, made.middle.foot
        self._furniture = made
        if self._places:
            self.go_to(self._asked_early)

    def page(self, name: str) -> QWidget:
        """The page of the place called *name*, made if need be; KeyError if there is none."""
        for index, place in enumerate(self._places):
            if place.name == name:
                return self._made_page(index)
        raise KeyError(name)

    def go_to(self, index: int) -> None:
        """Show the place at *index* and give it the keyboard."""
        if self._furniture is None:
            self._asked_early = index
            return
        page = self._made_page(index)
        moved = index != self._index
        self._index = index
        self._furniture.show_page(index, page)
        self.setWindowTitle(f"{self.place.title} · keeper")
        page.setFocus()
        if moved:
            self._furniture.announce(self.place.title)
            self.place_changed.emit(index)

    def back_to_page(self) -> None:
        """Give the page that is shown the keyboard again."""
        self._pages[self._index].setFocus()

    def add_command(self, menu: str, action: QAction) -> None:
        """Put *action* into the menu titled *menu* and make its shortcut work everywhere."""
        if self._furniture is not None:
            self._furniture.add_command(menu, action)

    def show_keys(self) -> None:
        """Lay the keys of this place over it, or take them away."""
        if self._furniture is not None:
            self._furniture.show_keys(self.place, self._pages[self._index])

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def closeEvent(self, event: QCloseEvent) -> None:
        self.closing.emit()
        super().closeEvent(event)

    def event(self, event: QEvent) -> bool:
        if self._furniture is not None:
            self._furniture.bar.watch(event)
        return super().event(event)

    def _fit(self) -> None:
        if self._furniture is not None:
            self.look.fit(QSizeF(self.size()), self.logicalDpiY())
            self._furniture.key_sheet.fit_parent()

    def _made_page(self, index: int) -> QWidget:
        if index not in self._pages:
            assert self._furniture is not None
            page = self._places[index].make(self.look)
            page.setAccessibleName(self._places[index].title)
            self._furniture.take(page)
            self._pages[index] = page
        return self._pages[index]


def _least_size(window: QWidget) -> QSize:
    px, room = window.logicalDpiY() / 72.0, window.screen().availableSize()
    least = (min(LEAST_PT[0] * px, room.width()), min(LEAST_PT[1] * px, room.height()))
    return QSize(round(least[0]), round(least[1]))
