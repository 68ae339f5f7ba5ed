"""What stands in the window beside its pages: strip, foot line, menus, keys and dress."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QApplication, QMenu, QStackedWidget, QVBoxLayout, QWidget

from keeper.desktop.dress import dress, tint
from keeper.desktop.look import Look
from keeper.desktop.page_keys import lines_of, lines_of_places, page_actions, page_lines
from keeper.desktop.places import Place, keys_in
from keeper.desktop.scan import ScanFilter
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import announce
from keeper.desktop.widgets.foot import Foot
from keeper.desktop.widgets.key_sheet import KeySheet
from keeper.desktop.widgets.menu_bar import MenuOnRequest
from keeper.desktop.widgets.place_strip import PlaceStrip
from keeper.language import tr, tr_noop

if TYPE_CHECKING:
    from keeper.desktop.main_window import MainWindow


class Middle(QWidget):
    """Strip of places, the pages one upon another, foot line."""

    def __init__(self, look: Look, places: Sequence[Place], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.strip = PlaceStrip(look, places, self)
        self.stack = QStackedWidget(self)
        self.foot = Foot(look, self)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.strip)
        column.addWidget(self.stack, 1)
        column.addWidget(self.foot)


class Furniture(QObject):
    """Everything of *window* that is no page, wired to what the window does."""

    def __init__(self, window: MainWindow, look: Look, places: Sequence[Place]) -> None:
        super().__init__(window)
        self._window, self._look, self._places = window, look, tuple(places)
        self.middle = Middle(look, places, window)
        window.setCentralWidget(self.middle)
        self.middle.show()  # in a window that is shown it would wait for an event
        self.key_sheet = KeySheet(look, self.middle.stack)
        self.menus: dict[str, QMenu] = {}
        self._dressed: set[QWidget] = set()  # since the look changed last
        self.bar = MenuOnRequest(window)
        window.setMenuBar(self.bar)
        self._general = self._add_actions()
        self._listen()
        self._dress()

    def add_command(self, menu: str, action: QAction) -> None:
        """Put *action* into the menu called *menu* and make its shortcut work everywhere."""
        if menu not in self.menus:
            self.menus[menu] = self.bar.add(tr(menu))
        self.menus[menu].addAction(action)
        self._window.addAction(action)

    def take(self, page: QWidget) -> None:
        """Lay *page* with the others; one that takes no keyboard is made to."""
        if page.focusPolicy() == Qt.FocusPolicy.NoFocus:
            page.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.middle.stack.addWidget(page)
        self._dress_once(page)

    def show_page(self, index: int, page: QWidget) -> None:
        """*page* on top, the place at *index* marked in the strip, the key sheet gone."""
        self.key_sheet.hide()
        self._dress_once(page)
        self.middle.stack.setCurrentWidget(page)
        self.middle.strip.show_place(index)

    def announce(self, title: str) -> None:
        """Have assistive technology say where the keeper now is."""
        announce(self._window, title)

    def show_keys(self, place: Place, page: QWidget) -> None:
        """Lay the keys of *place* over its page, or take them away."""
        if self.key_sheet.isVisible():
            self.key_sheet.hide()
            return
        own = place.keys + page_lines(page)
        everywhere = lines_of(self._general) + lines_of_places(self._places)
        self.key_sheet.show_keys(place.shown, own + everywhere)

    def _listen(self) -> None:
        window = self._window
        self.middle.strip.place_asked.connect(window.go_to)
        self._look.changed.connect(self._dress)
        self.bar.put_away.connect(window.back_to_page)
        self._scanner = ScanFilter(window)
        self._scanner.scanned.connect(window.scanned)
        app = QApplication.instance()
        if app is not None:
            app.installEventFilter(self._scanner)

    def _add_actions(self) -> tuple[QAction, ...]:
        window, look = self._window, self._look
        for index, place in enumerate(self._places):
            keys = keys_in(place, self._places)
            self.add_command(
                tr_noop("&Places"), _action(window, place.shown, keys, self._goer(index))
            )
        here = self.menus.setdefault("&Here", self.bar.add(tr("&Here")))
        here.aboutToShow.connect(lambda: self._fill_here(here))
        undo = _action(window, tr("Take back"), ["Ctrl+Z"], window.undo_asked.emit)
        redo = _action(window, tr("Write again"), ["Ctrl+Shift+Z"], window.redo_asked.emit)
        light = _action(window, tr("Light, Day or Red lamp"), ["F12"], look.switch_light)
        dim = _action(window, tr("Dim the red lamp"), ["Ctrl+F12"], look.dim)
        leave = _action(window, tr("Close the book"), ["Ctrl+Q"], window.close)
        keys_here = _action(window, tr("Keys of this place"), ["F1"], window.show_keys)
        menu = _action(window, tr("Menu"), ["F10"], self.bar.ask)
        for title, action in (
            (tr_noop("&Book"), undo),
            (tr_noop("&Book"), redo),
            (tr_noop("&Book"), leave),
            (tr_noop("&Light"), light),
            (tr_noop("&Light"), dim),
            (tr_noop("&Keys"), keys_here),
        ):
            self.add_command(title, action)
        window.addAction(menu)
        return undo, redo, light, dim, menu, leave

    def _goer(self, index: int) -> Callable[[], None]:
        return lambda: self._window.go_to(index)

    def _fill_here(self, here: QMenu) -> None:
        here.clear()
        page = self.middle.stack.currentWidget()
        if page is not None:
            here.addActions(page_actions(page, here))

    def _dress(self) -> None:
        """A change of look for what is in sight; a page out of sight changes when it is shown."""
        tint(self._look.palette, self._look.font(Use.BODY))
        self._dressed.clear()
        for part in (self.bar, self.key_sheet, self.middle.stack.currentWidget()):
            if part is not None:
                self._dress_once(part)

    def _dress_once(self, part: QWidget) -> None:
        if part not in self._dressed:
            dress(part, self._look.palette)
            self._dressed.add(part)


def _action(parent: QWidget, text: str, keys: Sequence[str], slot: Callable[[], object]) -> QAction:
    action = QAction(text, parent)
    action.setShortcuts([QKeySequence(key) for key in keys])
    action.triggered.connect(lambda _=False: slot())
    return action
