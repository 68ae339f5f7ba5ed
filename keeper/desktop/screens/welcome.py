"""The first page: take in your records, or look round the demo collection."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QDir, Qt, Signal
from PySide6.QtGui import QAction, QKeyEvent, QKeySequence
from PySide6.QtWidgets import QCompleter, QFileSystemModel, QVBoxLayout, QWidget

from keeper.actions.first_book import Now, look_at_files
from keeper.actions.taking_in import TakenIn
from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.desktop.widgets.words_line import Words

SHOWN_FAULTS = 12
FILES = (
    "Two CSV files. Animals: animal,species,sex,hatched,place. "
    "Diary: animal,date,what,grams,note, where what is one of fed, refused, regurgitated, "
    "weighed, dull, opaque, cleared, shed. Nothing is written before you have seen the count."
)


class WelcomeScreen(QWidget):
    """Asks for two files, shows what they hold, and hands on what the keeper decides.

    Signals: ``files_chosen(animals, diary)`` with two paths or None, after a look without a
    fault and Enter; ``demo_asked``.
    """

    files_chosen = Signal(object, object)
    demo_asked = Signal()

    def __init__(self, look: Look, now: Now, told: str = "") -> None:
        super().__init__()
        self._look, self._now = look, now
        self._files: list[Path | None] = []
        self._ready = False
        self.body = Words(look, Use.BODY)
        self._asking = AskingLine(look, self)
        self._complete_paths()
        self._lay_out(told)
        self._add_action("1", "take in your records", self._ask_animals)
        self._add_action("2", "look round the demo collection", self.demo_asked.emit)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if self._ready and event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.files_chosen.emit(*self._files)
            return
        super().keyPressEvent(event)

    def _lay_out(self, told: str) -> None:
        look = self._look
        column = QVBoxLayout(self)
        margin = round(look.u(14, 7))
        column.setContentsMargins(margin, margin, margin, round(look.u(2)))
        column.setSpacing(round(look.u(4)))
        lines = (
            (told, Use.BODY_STRONG, "ink"),
            ("No animal stands in a book yet", Use.PAGE_NAME, "ink"),
            ("1   take in your records", Use.PAGE_HEAD, "ink"),
            (FILES, Use.BODY, "ink2"),
            ("2   look round the demo collection", Use.PAGE_HEAD, "ink"),
            ("An invented room of about eighty snakes; yours stays untouched.", Use.BODY, "ink2"),
        )
        for text, use, ink in lines:
            if text:
                line = Words(look, use, ink)
                line.setText(text)
                column.addWidget(line)
        column.addWidget(self.body)
        column.addStretch(1)
        column.addWidget(self._asking)

    def _complete_paths(self) -> None:
        model = QFileSystemModel(self)
        model.setRootPath(QDir.rootPath())
        completer = QCompleter(model, self)
        self._asking.field.setCompleter(completer)

    def _add_action(self, key: str, words: str, slot: Callable[[], None]) -> None:
        action = QAction(words, self)
        action.setShortcut(QKeySequence(key))
        action.setShortcutContext(Qt.ShortcutContext.WidgetShortcut)
        action.triggered.connect(lambda _=False: slot())
        self.addAction(action)

    def _ask_animals(self) -> None:
        self._ready = False
        self._files = []
        self._asking.ask("Animals file", self._take_animals, f"{Path.home()}/")

    def _take_animals(self, text: str) -> bool:
        if not self._take_file(text):
            return False
        self._asking.ask("Diary file (empty: none)", self._take_diary, f"{Path(text).parent}/")
        return False

    def _take_diary(self, text: str) -> bool:
        none = not text or Path(text).is_dir()
        if not none and not self._take_file(text):
            return False
        if none:
            self._files.append(None)
        animals, diary = self._files
        self._show(look_at_files(animals, diary, self._now))
        return True

    def _take_file(self, text: str) -> bool:
        path = Path(text).expanduser()
        if not path.is_file():
            self.body.setText(f"There is no file {path}; name a CSV file.")
            return False
        self._files.append(path)
        return True

    def _show(self, taken: TakenIn) -> None:
        self._ready = not taken.faults and bool(taken.animals or taken.entries)
        if taken.faults:
            shown = "\n".join(str(fault) for fault in taken.faults[:SHOWN_FAULTS])
            more = len(taken.faults) - SHOWN_FAULTS
            rest = f"\nand {more} more" if more > 0 else ""
            self.body.setText(f"Nothing was taken in. Mend these and try again:\n{shown}{rest}")
        elif self._ready:
            self.body.setText(
                f"{taken.animals} animals and {taken.entries} entries. Enter takes them in."
            )
        else:
            self.body.setText("The files hold nothing to take in.")
