"""The window: strip of places, the place gone to, foot line. It assembles and decides nothing."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QEvent, QSize, QSizeF, Qt, Signal
from PySide6.QtGui import QAction, QCloseEvent, QKeySequence, QResizeEvent
from PySide6.QtWidgets import QApplication, QMainWindow, QMenu, QStackedWidget, QVBoxLayout, QWidget

from keeper.desktop.dress import dress, tint
from keeper.desktop.look import Look
from keeper.desktop.page_keys import lines_of, lines_of_places, page_actions, page_lines
from keeper.desktop.places import Place
from keeper.desktop.scan import ScanFilter
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import announce
from keeper.desktop.widgets.foot import Foot
from keeper.desktop.widgets.key_sheet import KeySheet
from keeper.desktop.widgets.menu_bar import MenuOnRequest
from keeper.desktop.widgets.place_strip import PlaceStrip

LEAST_PT = (768.0, 450.0)
"""The least window, in points: 1024 x 600 at 96 dpi."""


class MainWindow(QMainWindow):
    """Shows the places it is given, one at a time, each made when first gone to.

    Signals: ``undo_asked`` and ``redo_asked`` (Ctrl+Z, Ctrl+Shift+Z), ``scanned(code)`` from a
    label scanner, ``place_changed(index)``, ``closing`` before the window goes.

    sight: shown in place of the first page, and no page is made, until ``enter``.
    """

    undo_asked = Signal()
    redo_asked = Signal()
    scanned = Signal(str)
    place_changed = Signal(int)
    closing = Signal()

    def __init__(self, look: Look, places: Sequence[Place], sight: QWidget | None = None) -> None:
        super().__init__()
        self.look = look
        self._places = tuple(places)
        self._pages: dict[int, QWidget] = {}
        self._index = -1
        self._sight = sight
        self._is_complete = False
        self._asked_early = 0
        self.strip = PlaceStrip(look, self._places, self)
        self.foot = Foot(look, self)
        self._stack = QStackedWidget(self)
        self._assemble()
        if sight is not None:
            self._show_sight(sight)
            return
        self._complete()
        if self._places:
            self.go_to(0)

    @property
    def place(self) -> Place:
        """The place gone to; IndexError while there is none."""
        return self._places[self._index]

    @property
    def at_first_sight(self) -> bool:
        """Whether the sight it was made with still stands for the first page."""
        return self._sight is not None

    def page(self, name: str) -> QWidget:
        """The page of the place called *name*, made if need be; KeyError if there is none."""
        for index, place in enumerate(self._places):
            if place.name == name:
                return self._made_page(index)
        raise KeyError(name)

    def go_to(self, index: int) -> None:
        """Show the place at *index* and give it the keyboard."""
        if self._sight is not None:
            self._asked_early = index
            return
        page = self._made_page(index)
        moved = index != self._index
        self._index = index
        self._key_sheet.hide()
        self._stack.setCurrentWidget(page)
        self.strip.show_place(index)
        self.setWindowTitle(f"{self.place.title} · keeper")
        page.setFocus()
        if moved:
            announce(self, self.place.title)
            self.place_changed.emit(index)

    def enter(self, places: Sequence[Place]) -> None:
        """Take the sight away: *places*, the same by name and key, can be gone to."""
        sight, self._sight = self._sight, None
        self._places, self._index = tuple(places), -1
        self._complete()
        self.go_to(self._asked_early)
        if sight is not None:
            self._stack.removeWidget(sight)
            sight.deleteLater()

    def add_command(self, menu: str, action: QAction) -> None:
        """Put *action* into the menu titled *menu* and make its shortcut work everywhere."""
        if menu not in self._menus:
            self._menus[menu] = self._bar.add(menu)
        self._menus[menu].addAction(action)
        self.addAction(action)

    def show_keys(self) -> None:
        """Lay the keys of this place over it, or take them away."""
        if self._sight is not None:
            return
        if self._key_sheet.isVisible():
            self._key_sheet.hide()
            return
        own = self.place.keys + page_lines(self._pages[self._index])
        everywhere = lines_of(self._general) + lines_of_places(self._places)
        self._key_sheet.show_keys(self.place.name, own + everywhere)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.look.fit(QSizeF(self.size()), self.logicalDpiY())
        if self._is_complete:
            self._key_sheet.fit_parent()

    def closeEvent(self, event: QCloseEvent) -> None:
        self.closing.emit()
        super().closeEvent(event)

    def event(self, event: QEvent) -> bool:
        if self._is_complete:
            self._bar.watch(event)
        return super().event(event)

    def _assemble(self) -> None:
        middle = QWidget(self)
        column = QVBoxLayout(middle)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.strip)
        column.addWidget(self._stack, 1)
        column.addWidget(self.foot)
        self.setCentralWidget(middle)
        self.setMinimumSize(_least_size(self))

    def _complete(self) -> None:
        """Menus, keys and the dress of ordinary widgets: what a first sight does without."""
        self._key_sheet = KeySheet(self.look, self._stack)
        self._menus: dict[str, QMenu] = {}
        self._bar = MenuOnRequest(self)
        self.setMenuBar(self._bar)
        self._add_actions()
        self._listen()
        self._dress()
        self._is_complete = True

    def _listen(self) -> None:
        self.strip.place_asked.connect(self.go_to)
        self.look.changed.connect(self._dress)
        self._bar.put_away.connect(self._back_to_page)
        self._scanner = ScanFilter(self)
        self._scanner.scanned.connect(self.scanned)
        app = QApplication.instance()
        if app is not None:
            app.installEventFilter(self._scanner)

    def _add_actions(self) -> None:
        for index, place in enumerate(self._places):
            keys = [place.key] + ([f"Alt+{index + 1}"] if index < 9 else [])
            slot = self._goer(index)
            self.add_command("&Places", _action(self, place.name, keys, slot))
        here = self._menus.setdefault("&Here", self._bar.add("&Here"))
        here.aboutToShow.connect(lambda: self._fill_here(here))
        undo = _action(self, "Take back", ["Ctrl+Z"], self.undo_asked.emit)
        redo = _action(self, "Write again", ["Ctrl+Shift+Z"], self.redo_asked.emit)
        light = _action(self, "Light, Day or Red lamp", ["F12"], self.look.switch_light)
        dim = _action(self, "Dim the red lamp", ["Ctrl+F12"], self.look.dim)
        leave = _action(self, "Close the book", ["Ctrl+Q"], self.close)
        keys_here = _action(self, "Keys of this place", ["F1"], self.show_keys)
        menu = _action(self, "Menu", ["F10"], self._bar.ask)
        for title, action in (
            ("&Book", undo),
            ("&Book", redo),
            ("&Book", leave),
            ("&Light", light),
            ("&Light", dim),
            ("&Keys", keys_here),
        ):
            self.add_command(title, action)
        self.addAction(menu)
        self._general = (undo, redo, light, dim, menu, leave)

    def _goer(self, index: int) -> Callable[[], None]:
        return lambda: self.go_to(index)

    def _fill_here(self, here: QMenu) -> None:
        here.clear()
        here.addActions(page_actions(self._pages[self._index], here))

    def _made_page(self, index: int) -> QWidget:
        if index not in self._pages:
            page = self._places[index].make(self.look)
            page.setAccessibleName(self._places[index].title)
            if page.focusPolicy() == Qt.FocusPolicy.NoFocus:
                page.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            self._stack.addWidget(page)
            self._pages[index] = page
        return self._pages[index]

    def _show_sight(self, sight: QWidget) -> None:
        self._index = 0
        tint(self.look.palette, self.look.font(Use.BODY))
        self._stack.addWidget(sight)
        self.strip.show_place(0)
        self.setWindowTitle(f"{self._places[0].title} · keeper")

    def _back_to_page(self) -> None:
        self._pages[self._index].setFocus()

    def _dress(self) -> None:
        dress(self, self.look.palette, self.look.font(Use.BODY))


def _least_size(window: QWidget) -> QSize:
    px, room = window.logicalDpiY() / 72.0, window.screen().availableSize()
    least = (min(LEAST_PT[0] * px, room.width()), min(LEAST_PT[1] * px, room.height()))
    return QSize(round(least[0]), round(least[1]))


def _action(parent: QWidget, text: str, keys: Sequence[str], slot: Callable[[], object]) -> QAction:
    action = QAction(text, parent)
    action.setShortcuts([QKeySequence(key) for key in keys])
    action.triggered.connect(lambda _=False: slot())
    return action
