"""Composition root: opens the book, builds the places, shows the window."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt, QTimer
from PySide6.QtWidgets import QApplication, QWidget

from keeper import clock
from keeper.actions.station import home_dir, station_name
from keeper.desktop.chosen_language import give_to_qt, language_of_choice
from keeper.desktop.first_sight import Sight, keep_sights
from keeper.desktop.first_steps import book_by_hand, book_with_files
from keeper.desktop.look import Look
from keeper.desktop.made_ahead import make_ahead
from keeper.desktop.main_window import MainWindow
from keeper.desktop.places import Place
from keeper.desktop.remembered import (
    figure_ways,
    left_whole,
    remember_book,
    remember_light,
    remember_whole,
    second_place,
    was_large_text,
    was_red_lamp,
)
from keeper.language import tr, tr_noop
from keeper.start import bare_application, show_large

if TYPE_CHECKING:
    from keeper.actions.keeping import Keeping
    from keeper.desktop.background import Worker
    from keeper.desktop.house import House, Maker
    from keeper.desktop.notices import Notices
    from keeper.desktop.screens.welcome import Way, WelcomeScreen

# What follows the first paint is loaded where it is used: store, rules, verbs, other places.


def later(module: str, name: str) -> Maker:
    """A page whose module is loaded when it is first gone to: the first paint does not wait."""

    def make(look: Look, keeping: Keeping, notices: Notices) -> QWidget:
        page: QWidget = getattr(import_module(f"keeper.desktop.screens.{module}"), name)(
            look, keeping, notices
        )
        return page

    return make


_SCREENS = {
    "Round": ("round", "RoundScreen"),
    "Weigh-in": ("weigh_in", "WeighInScreen"),
    "Sheds": ("sheds", "ShedsScreen"),
    "Heat": ("heat", "HeatScreen"),
    "Racks": ("racks", "RacksScreen"),
    "Watch": ("watch", "WatchScreen"),
    "Females": ("females", "FemalesScreen"),
    "Prey": ("prey", "PreyScreen"),
    "Clutches": ("clutches", "ClutchesScreen"),
    "Lines": ("lines", "LinesScreen"),
    "Animal": ("animal", "AnimalScreen"),
    "Records": ("records", "RecordsScreen"),
    "House ways": ("settings", "SettingsScreen"),
    "What is new": ("whats_new", "WhatsNewScreen"),
}
PLACES: dict[str, Maker] = {name: later(*screen) for name, screen in _SCREENS.items()}
"""The places by name, in the order of the strip, then those that only the menu has."""

WELCOME_KEY = "F2"
SPOKEN = language_of_choice()
"""The language of this process; another that is chosen meanwhile is spoken from the next start."""


def begin(path: Path | None, window: MainWindow | None) -> None:
    """Bring up what a start brings up, in the *window* that shows its picture where one does."""
    app = application()
    front = Front(Look(red_lamp=was_red_lamp(), large_text=was_large_text()), window=window)
    front.setParent(app)
    _write_as_wanted()
    log_faults(front.tell)
    front.open(path)
    _collect_on_the_main_thread(front)
    _show_icon()


def application() -> QApplication:
    """The one QApplication of the process; its own windows speak the language too."""
    app = bare_application()
    give_to_qt(app)
    return app


def _write_as_wanted() -> None:
    """Figures in the machine's units and with its marks, before any is written."""
    from PySide6.QtCore import QLocale

    from keeper.desktop.locale_marks import writing_of
    from keeper.desktop.paper.sizes import paper_chosen, put_paper_to_use
    from keeper.desktop.remembered import wanted_paper
    from keeper.reports.writing import put_to_use

    put_to_use(writing_of(figure_ways(), QLocale()))
    put_paper_to_use(paper_chosen(wanted_paper(), QLocale()))


def _show_icon() -> None:
    from keeper.desktop.window_icon import house_icon

    QApplication.setWindowIcon(house_icon())


def _collect_on_the_main_thread(front: Front) -> None:
    from keeper.desktop.collecting import MainThreadCollector

    MainThreadCollector(front)


def build_house(keeping: Keeping, look: Look, window: MainWindow | None = None) -> House:
    """The window over an open book, with every place; in the *window* that shows its sight."""
    from keeper.desktop.house import House
    from keeper.desktop.live_line import LiveLine

    house = House(keeping, look, PLACES, window)
    live = LiveLine(keeping, house.notices, house)
    house.window.closing.connect(live.stop)  # before the book is backed up and closed
    QTimer.singleShot(0, live, live.start)
    house.window.closing.connect(lambda: _leave(keeping, house.window))
    return house


class Front(QObject):
    """What is in front of the keeper: the first page, or the window over a book.

    The light is remembered as it changes, not on closing: a start in a dark room after a power cut
    dazzles nobody.

    worker: where the demo collection is made, which takes seconds. window: one that shows what
    the first place will show, and is gone into.
    """

    def __init__(
        self, look: Look, *, worker: Worker | None = None, window: MainWindow | None = None
    ) -> None:
        super().__init__()
        self._look = look
        look.changed.connect(lambda: remember_light(look.red_lamp))
        self._worker = worker
        self.window = window
        self._held = ""
        self.house: House | None = None
        self.page: WelcomeScreen | None = None

    def open(self, path: Path | None) -> None:
        """Show the book at *path*; the first page when there is none, or no animal in it."""
        if path is None:
            self._welcome(None)
            return
        from keeper.actions.keeping import open_keeping
        from keeper.actions.troubles import BookError, said

        try:
            keeping = open_keeping(
                path, station=station_name(), now=clock.now, known_whole=left_whole(path)
            )
        except BookError as error:
            self._welcome(None, said(error), path)
            return
        if keeping.is_empty:
            self._welcome(keeping)
        else:
            self._enter(keeping)

    def tell(self, sentence: str) -> None:
        """Say *sentence* at the foot of the window, if there is one; at first sight, soon."""
        if self.window is None or self.window.at_first_sight:
            self._held = sentence
        else:
            self.window.foot.show_note(sentence)

    def _welcome(self, empty: Keeping | None, told: str = "", damaged: Path | None = None) -> None:
        """The first page, over the *empty* book or over none; with ways out for a damaged one."""
        from keeper.desktop.screens.welcome import WelcomeScreen

        home = None if empty is not None else _free(_documents() / "snakes.book")
        ways = self._ways_out(damaged) if damaged is not None else ()
        page = WelcomeScreen(self._look, clock.now, told, home, ways)
        page.demo_asked.connect(lambda: self._make_demo(empty))
        page.files_chosen.connect(
            lambda *chosen: self._try_enter(lambda: book_with_files(empty, *chosen))
        )
        page.hand_chosen.connect(lambda book: self._write_by_hand(empty, book))
        place = Place(
            key=WELCOME_KEY,
            name=tr_noop("Begin"),
            title=tr("The first page"),
            make=lambda _look: page,
        )
        self.page = page
        window = MainWindow(self._look, [place])
        self._show(window)
        self._tell_held()
        if empty is not None:
            window.closing.connect(lambda: self._leave_empty(empty))
            self.tell(empty.told or "")

    def _ways_out(self, damaged: Path) -> Sequence[Way]:
        from keeper.desktop.damaged import ways_out

        def open_again(sentence: str) -> None:
            self.open(damaged)
            self.tell(sentence)

        return ways_out(damaged, open_again=open_again, say=self._say_on_page)

    def _say_on_page(self, text: str) -> None:
        if self.page is not None:
            self.page.say(text)

    def _try_enter(self, made: Callable[[], Keeping]) -> bool:
        """Go into the book that *made* gives; where there is none, the page says why and stays."""
        from keeper.actions.troubles import REFUSALS

        try:
            self._enter(made())
        except (OSError, *REFUSALS) as refusal:
            self._say_on_page(_sentence(refusal))
            return False
        return True

    def _write_by_hand(self, empty: Keeping | None, book: Path | None) -> None:
        """Go into a book without an animal, where the first one is asked for."""
        if self._try_enter(lambda: book_by_hand(empty, book)) and self.house is not None:
            self.house.ask_newcomer()

    def _make_demo(self, empty: Keeping | None) -> None:
        folder = home_dir() / "demo"

        def job() -> Path:
            from keeper.rehearsal.collection import demo_book  # only when it is asked for

            folder.mkdir(parents=True, exist_ok=True)
            return demo_book(_free(folder / "demo.book"))

        worker = self._worker = self._worker or _background()
        worker.run(job, lambda path: self._show_demo(empty, path), self._refuse_demo)

    def _show_demo(self, empty: Keeping | None, path: Path) -> None:
        from keeper.actions.keeping import open_keeping

        if empty is not None:
            empty.close()
        self._enter(open_keeping(path, station=station_name(), now=clock.now))

    def _refuse_demo(self, error: Exception) -> None:
        from keeper.actions.troubles import REFUSALS

        if not isinstance(error, (OSError, *REFUSALS)):
            raise error
        told = tr("The demo collection could not be made. {why}", why=_sentence(error))
        self._say_on_page(told)

    def put_in_place(self, copy: Path) -> None:
        """Close the book, which is kept under another name, and open *copy* in its place."""
        from keeper.desktop.damaged import taken_place

        assert self.house is not None and self.window is not None
        path = self.house.keeping.book.path
        QApplication.setQuitOnLastWindowClosed(False)
        self.window.close()
        told = taken_place(copy, path)
        self.window = None
        self.open(path)
        self.tell(told)
        QApplication.setQuitOnLastWindowClosed(True)

    def _leave_empty(self, empty: Keeping) -> None:
        """The first page goes, and no house was entered with its book."""
        if self.house is None:
            empty.close()

    def _enter(self, keeping: Keeping) -> None:
        from keeper.desktop.start_note import say_at_start

        remember_book(keeping.book.path)
        self.page = None
        seen = self.window if self.window is not None and self.window.at_first_sight else None
        self.house = build_house(keeping, self._look, seen)
        self.house.notices.copy_agreed.connect(
            self.put_in_place, Qt.ConnectionType.QueuedConnection
        )
        if seen is None:
            self._show(self.house.window)
        say_at_start(keeping, self.tell)
        self._tell_held()
        make_ahead(self.house.window, PLACES, load_screens)

    def _tell_held(self) -> None:
        """What was to be told while there was no foot to tell it at."""
        held, self._held = self._held, ""
        if held:
            self.tell(held)

    def _show(self, window: MainWindow) -> None:
        before, self.window = self.window, window
        show_large(window)
        if before is not None:
            before.close()


def _background() -> Worker:
    from keeper.desktop.background import Background

    return Background()


def _documents() -> Path:
    """Where the keeper's own papers lie."""
    from PySide6.QtCore import QStandardPaths

    return Path(QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation))


def _sentence(error: Exception) -> str:
    """What the world refused: a disk's own words with the file it is about."""
    from keeper.actions.troubles import said

    if isinstance(error, OSError):
        return f"{error.filename}: {error.strerror}."
    return said(error)


def _free(path: Path) -> Path:
    """*path*, or the first like it with a number that is free."""
    candidates = (path.with_stem(f"{path.stem}-{n}") for n in range(2, 10_000))
    return path if not path.exists() else next(c for c in candidates if not c.exists())


def _leave(keeping: Keeping, window: MainWindow) -> None:
    """What is done when the window goes: back up, close the book, look ahead to the next start."""
    from keeper.actions.safe_keeping import close
    from keeper.actions.troubles import BookError

    ahead = _ahead(keeping, window)
    try:
        close(keeping, second_place(keeping.book.path))
        if keeping.book.writable:
            remember_whole(keeping.book.path)
            keep_sights(keeping.book.path, ahead)
    except BookError as error:
        import logging

        logging.getLogger(__name__).error("%s", error)


def _ahead(keeping: Keeping, window: MainWindow) -> list[Sight]:
    """Pictures for the next start; none where it will not look or speak as this one did."""
    if not (keeping.book.writable and window.isMaximized() and language_of_choice() == SPOKEN):
        return []
    if window.screen() is not QApplication.primaryScreen():
        return []
    from keeper.desktop.sights_ahead import sights_ahead

    look = Look(red_lamp=was_red_lamp(), large_text=was_large_text())
    return sights_ahead(keeping, PLACES, look, window.size())


def load_screens() -> None:
    """Load the modules of every place."""
    for module, _ in _SCREENS.values():
        import_module(f"keeper.desktop.screens.{module}")


def log_faults(tell: Callable[[str], None]) -> None:
    """Faults of the program go to a report and are told in one sentence; the window stays."""
    from keeper.desktop.faults import Faults

    faults = Faults(home_dir(), tell)
    faults.setParent(QApplication.instance())
    faults.install()
