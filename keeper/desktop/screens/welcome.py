"""The first page: take in your records, write them by hand, or look round the demo room."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QVBoxLayout, QWidget

from keeper.actions.first_book import Now, look_at_files
from keeper.desktop.look import Look
from keeper.desktop.screens.files_asking import FILES, FilesAsking, Paths
from keeper.desktop.type import Use
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.desktop.widgets.words_line import Words
from keeper.language import tr

NO_ANIMAL = tr("No animal stands in a book yet")
NOT_OPENED = tr("The book could not be opened")
WHAT_TO_DO = tr(
    "Choose another with  python -m keeper open BOOK,  or put a copy"
    " from its backups in its place; begin anew with one of these:"
)
BY_HAND = tr(
    "A book without an animal; the first one is asked for: code, kind, sex, hatch date, tub."
)
OR_ANEW = tr("Or begin anew, and leave the book as it is:")
DEMO = tr("An invented room of about eighty snakes; yours stays untouched.")
MAKING = tr("Making the invented room; it takes a few seconds.")
_RECORDS = tr("take in your records")
_HAND = tr("write your animals in by hand")
_LOOK = tr("look round the demo collection")


Way = tuple[str, str, str, Callable[[], None]]


class WelcomeScreen(QWidget):
    """Asks for two files, shows what they hold, and hands on what the keeper decides.

    told: why a book could not be opened. home: where a new book is proposed; None takes the
    files into the empty book that is open. ways: what may be done about a damaged book, as key,
    words, what is said beneath, and the deed.

    Signals: ``files_chosen(animals, diary, book)`` with paths or None, after a look without a
    fault and a last Enter; ``hand_chosen(book)`` with a path or None; ``demo_asked``.
    """

    files_chosen = Signal(object, object, object)
    hand_chosen = Signal(object)
    demo_asked = Signal()

    def __init__(
        self,
        look: Look,
        now: Now,
        told: str = "",
        home: Path | None = None,
        ways: Sequence[Way] = (),
    ) -> None:
        super().__init__()
        self._look, self._home = look, home
        self.body = Words(look, Use.BODY)
        self.asking = AskingLine(look, self)
        self._files = FilesAsking(
            self.asking,
            looked=lambda animals, diary: look_at_files(animals, diary, now),
            say=self.body.setText,
            agreed=self._agreed,
        )
        self._lay_out(told, ways)
        self._add_action("1", _RECORDS, self._files.begin)
        self._add_action("2", _HAND, self._by_hand)
        self._add_action("3", _LOOK, self._ask_demo)
        for key, words, _, deed in ways:
            self._add_action(key, words, deed)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    def say(self, sentence: str) -> None:
        """Show *sentence* under the choices."""
        self.body.setText(sentence)

    def _lay_out(self, told: str, ways: Sequence[Way]) -> None:
        look = self._look
        self._column = QVBoxLayout(self)
        self._fit()
        lines = (
            (NOT_OPENED if told else NO_ANIMAL, Use.PAGE_NAME, "ink"),
            (told, Use.BODY_STRONG, "ink"),
            *(line for way in ways for line in _lines_of(way)),
            (_what_to_do(told, ways), Use.BODY, "ink2"),
            (f"1   {_RECORDS}", Use.PAGE_HEAD, "ink"),
            ("" if ways else FILES, Use.BODY, "ink2"),
            (f"2   {_HAND}", Use.PAGE_HEAD, "ink"),
            ("" if ways else BY_HAND, Use.BODY, "ink2"),
            (f"3   {_LOOK}", Use.PAGE_HEAD, "ink"),
            ("" if ways else DEMO, Use.BODY, "ink2"),
        )
        for text, use, ink in lines:
            if text:
                line = Words(look, use, ink)
                line.setText(text)
                self._column.addWidget(line)
        self._column.addWidget(self.body)
        self._column.addStretch(1)
        self._column.addWidget(self.asking)
        look.changed.connect(self._fit)

    def _fit(self) -> None:
        margin = round(self._look.u(14, 6))
        self._column.setContentsMargins(margin, margin, margin, round(self._look.u(2)))
        self._column.setSpacing(round(self._look.u(4, 2.5)))

    def _add_action(self, key: str, words: str, slot: Callable[[], None]) -> None:
        action = QAction(words, self)
        action.setShortcut(QKeySequence(key))
        action.setShortcutContext(Qt.ShortcutContext.WidgetShortcut)
        action.triggered.connect(lambda _=False: slot())
        self.addAction(action)

    def _ask_demo(self) -> None:
        self.say(MAKING)
        self.demo_asked.emit()

    def _by_hand(self) -> None:
        if self._home is None:
            self.hand_chosen.emit(None)
        else:
            self.asking.ask(tr("Enter makes the book"), self._hand_named, str(self._home))

    def _hand_named(self, text: str) -> bool:
        book = self._named(text)
        if book is not None:
            self.hand_chosen.emit(book)
        return book is not None

    def _named(self, text: str) -> Path | None:
        if not text:
            self.say(tr("Name a file for the book, such as snakes.book in your documents."))
            return None
        return Path(text).expanduser()

    def _agreed(self, files: Paths, counts: str) -> None:
        if self._home is None:
            question, written = tr("Take in {counts}", counts=counts), tr("yes")
        else:
            question, written = tr("Enter makes the book"), str(self._home)
        self.asking.ask(question, lambda text: self._hand_on(files, text), written)

    def _hand_on(self, files: Paths, text: str) -> bool:
        if self._home is None:
            if text.casefold() in ("y", "yes", tr("yes")):
                self.files_chosen.emit(*files, None)
            return True
        book = self._named(text)
        if book is not None:
            self.files_chosen.emit(*files, book)
        return book is not None


def _what_to_do(told: str, ways: Sequence[Way]) -> str:
    """Room is for the ways back where there are some; the rest is told in its own turn."""
    return OR_ANEW if ways else WHAT_TO_DO if told else ""


def _lines_of(way: Way) -> tuple[tuple[str, Use, str], tuple[str, Use, str]]:
    key, words, beneath, _ = way
    return (f"{key}   {words}", Use.PAGE_HEAD, "ink"), (beneath, Use.BODY, "ink2")
