"""Composition root: opens the book, builds the places, shows the window."""

import logging
import sys
from logging.handlers import RotatingFileHandler
from pathlib import Path
from types import TracebackType

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QApplication

from keeper import clock
from keeper.actions.first_book import book_from_files
from keeper.actions.keeping import Keeping, open_keeping
from keeper.actions.safe_keeping import close
from keeper.actions.station import home_dir, station_name
from keeper.actions.taking_in import take_in
from keeper.actions.troubles import BookError
from keeper.desktop.house import House, Maker
from keeper.desktop.look import Look
from keeper.desktop.main_window import MainWindow
from keeper.desktop.places import Place
from keeper.desktop.remembered import last_book, remember_book, remember_light, was_red_lamp
from keeper.desktop.screens.animal import AnimalScreen
from keeper.desktop.screens.records import RecordsScreen
from keeper.desktop.screens.round import RoundScreen
from keeper.desktop.screens.weigh_in import WeighInScreen
from keeper.desktop.screens.welcome import WelcomeScreen
from keeper.rehearsal.collection import demo_book

PLACES: dict[str, Maker] = {
    "Round": RoundScreen,
    "Weigh-in": WeighInScreen,
    "Animal": AnimalScreen,
    "Records": RecordsScreen,
}
"""The places by name, in the order of the strip."""

WELCOME_KEY = "F2"
_LOG_BYTES = 1_000_000


def run(path: Path | None) -> int:
    """Open the window on the book at *path*, on the last one, or on the first page.

    Returns the exit code of the window.
    """
    app = application()
    _log_faults()
    front = Front(Look(red_lamp=was_red_lamp()))
    front.open(path or last_book())
    return app.exec()


def application() -> QApplication:
    """The one QApplication of the process, ready for our own palettes."""
    app = QApplication.instance() or QApplication(sys.argv[:1])
    assert isinstance(app, QApplication)
    app.setApplicationName("keeper")
    app.setDesktopFileName("keeper")
    app.setStyle("Fusion")
    return app


def build_house(keeping: Keeping, look: Look) -> House:
    """The window over an open book, with every place."""
    house = House(keeping, look, PLACES)
    house.window.closing.connect(lambda: _leave(keeping, look))
    return house


class Front(QObject):
    """What is in front of the keeper: the first page, or the window over a book."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look = look
        self.window: MainWindow | None = None
        self.house: House | None = None

    def open(self, path: Path | None) -> None:
        """Show the book at *path*; the first page when there is none, or no animal in it."""
        if path is None:
            self._welcome(None)
            return
        try:
            keeping = open_keeping(path, station=station_name(), now=clock.now)
        except BookError as error:
            self._welcome(None, str(error))
            return
        if keeping.is_empty:
            self._welcome(keeping)
        else:
            self._enter(keeping)

    def _welcome(self, keeping: Keeping | None, told: str = "") -> None:
        page = WelcomeScreen(self._look, clock.now, told)
        page.demo_asked.connect(self._show_demo)
        page.files_chosen.connect(lambda animals, diary: self._take(keeping, animals, diary))
        place = Place(
            key=WELCOME_KEY, name="Begin", title="The first page", make=lambda _look: page
        )
        self._show(MainWindow(self._look, [place]))

    def _take(self, keeping: Keeping | None, animals: Path | None, diary: Path | None) -> None:
        if keeping is not None:
            take_in(keeping, animals=animals, diary=diary)
            self._enter(keeping)
            return
        home = animals or diary
        if home is None:
            return
        path = _free(home.with_name("snakes.book"))
        made, _ = book_from_files(path, animals, diary, station=station_name(), now=clock.now)
        self._enter(made)

    def _show_demo(self) -> None:
        folder = home_dir() / "demo"
        folder.mkdir(parents=True, exist_ok=True)
        path = demo_book(_free(folder / "demo.book"))
        self._enter(open_keeping(path, station=station_name(), now=clock.now))

    def _enter(self, keeping: Keeping) -> None:
        remember_book(keeping.book.path)
        self.house = build_house(keeping, self._look)
        self._show(self.house.window)

    def _show(self, window: MainWindow) -> None:
        before, self.window = self.window, window
        window.resize(window.screen().availableSize())
        window.showMaximized()
        if before is not None:
            before.close()


def _free(path: Path) -> Path:
    """*path*, or the first like it with a number that is free."""
    candidates = (path.with_stem(f"{path.stem}-{n}") for n in range(2, 10_000))
    return path if not path.exists() else next(c for c in candidates if not c.exists())


def _leave(keeping: Keeping, look: Look) -> None:
    """What is done when the window goes: remember the light, back up, close the book."""
    remember_light(look.red_lamp)
    try:
        close(keeping)
    except BookError as error:
        logging.getLogger(__name__).error("%s", error)


def _log_faults() -> None:
    """Faults of the program go to a log beside the window's memory; the window stays."""
    home_dir().mkdir(parents=True, exist_ok=True)
    handler = RotatingFileHandler(home_dir() / "keeper.log", maxBytes=_LOG_BYTES, backupCount=2)
    logging.basicConfig(level=logging.WARNING, handlers=[handler])

    def told(kind: type[BaseException], fault: BaseException, trace: TracebackType | None) -> None:
        logging.getLogger("keeper").critical("fault", exc_info=(kind, fault, trace))
        sys.__excepthook__(kind, fault, trace)

    sys.excepthook = told
