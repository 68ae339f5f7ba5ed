"""House ways: the things that a house may want otherwise, each with what follows from it.

What belongs to the book is written there and can be taken back; what belongs to this machine is
kept outside every book, and the same key puts it back.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import QEvent, QLocale, QObject, Qt
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from keeper.actions.absence import end_absence
from keeper.actions.absences import coming_absences
from keeper.actions.keeping import Keeping
from keeper.actions.past_nights import evening_hour
from keeper.actions.safe_keeping import second_place_typed
from keeper.actions.settings import (
    evening_typed,
    feed_nights_chosen,
    feed_nights_typed,
    set_evening_hour,
    set_feed_nights,
)
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.chosen_language import language_after
from keeper.desktop.locale_marks import writing_of
from keeper.desktop.look import Look
from keeper.desktop.notices import Notices
from keeper.desktop.page_keys import add_key
from keeper.desktop.paper.sizes import Paper, paper_in_use, put_paper_to_use
from keeper.desktop.remembered import (
    FigureWays,
    figure_ways,
    remember_figure_ways,
    remember_language,
    remember_large_text,
    remember_light,
    remember_paper,
    remember_second_place,
    remember_tones,
    second_place,
    wanted_language,
    wants_tones,
)
from keeper.desktop.screens.settings_words import (
    NIGHTS_ASKED,
    NOTHING_PLAYS,
    TONES_HEARD,
    coming_words,
    evening_words,
    faces,
    place_words,
)
from keeper.desktop.sound.tones import tones
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.desktop.widgets.choice_row import ChoiceRow
from keeper.desktop.widgets.words_line import HeadLine
from keeper.language import tr
from keeper.reports.writing import put_to_use

NIGHTS, EVENING, MASS, HEAT, MARKS, LIGHT, TEXT, PLACE, LANGUAGE, PAPER, TONES = range(11)
NAMES = (
    tr("feed nights"),
    tr("when feed nights begin"),
    tr("grams or ounces"),
    tr("temperatures in Celsius or Fahrenheit"),
    tr("marks of numbers and dates"),
    tr("light, Day or Red lamp"),
    tr("size of the text"),
    tr("second place of backups"),
    tr("language of the words"),
    tr("size of the paper"),
    tr("tones of the round and of alarms"),
    tr("the absence that is to come"),
)
KEYS = "1234567890TA"


class SettingsScreen(QWidget):
    """One row each; the digit of one, or Enter on it, changes it or asks for it."""

    def __init__(self, look: Look, keeping: Keeping, notices: Notices) -> None:
        super().__init__()
        self._look, self._keeping, self._notices = look, keeping, notices
        self._head = HeadLine(look)
        self._asking = AskingLine(look, self)
        self._preview: Callable[[str], str] | None = None
        self._asked = NIGHTS
        self.rows = [ChoiceRow(look, self) for _ in NAMES]
        self._deeds = (
            self._ask_nights,
            self._ask_evening,
            lambda: self._write_as(replace(figure_ways(), ounces=not figure_ways().ounces)),
            lambda: self._write_as(replace(figure_ways(), fahrenheit=not figure_ways().fahrenheit)),
            lambda: self._write_as(
                replace(figure_ways(), house_marks=not figure_ways().house_marks)
            ),
            self._switch_light,
            self._switch_text,
            self._ask_place,
            self._change_language,
            self._change_paper,
            self._switch_tones,
            self._end_absence,
        )
        self._lay_out()
        for number, name in enumerate(NAMES):
            add_key(self, KEYS[number], name, self._doer(number))
            self.rows[number].clicked.connect(self._doer(number))
        add_key(self, "H", tr("hear the tones"), lambda: _hear_tones(notices))
        self._asking.field.textChanged.connect(self._show_preview)
        self._asking.installEventFilter(self)
        notices.changed.connect(self._show)
        look.changed.connect(self._show)
        self.setFocusProxy(self.rows[0])

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self._head)
        inside = QWidget()
        rows = QVBoxLayout(inside)
        rows.setContentsMargins(0, 0, 0, 0)
        rows.setSpacing(0)
        away, *others = self.rows[-1:] + self.rows[:-1]  # shown while there is an absence
        for row in (away, *others):
            rows.addWidget(row)
        away.hide()
        self.setTabOrder(away, others[0])
        rows.addStretch(1)
        room = QScrollArea(self)
        room.setWidget(inside)
        room.setWidgetResizable(True)
        room.setFrameShape(QFrame.Shape.NoFrame)
        room.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        room.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._room = room
        column.addWidget(room, 1)
        column.addWidget(self._asking)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._show()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """What was typed and left leaves no trace in its row."""
        if watched is self._asking and event.type() == QEvent.Type.Hide:
            self._show()
        return super().eventFilter(watched, event)

    def _show(self) -> None:
        if not self.isVisible():
            return
        where = [(tr("the key of a line, or Enter on it, changes it"), False)]
        self._head.show_words(tr("House ways"), where)
        shown = faces(self._keeping, self._look, figure_ways())
        for row, face in zip(self.rows, shown, strict=True):
            row.show_choice(face)
        away = bool(coming_absences(self._keeping, self._keeping.today))
        self.rows[-1].setVisible(away)

    def _doer(self, number: int) -> Callable[[], None]:
        def do() -> None:
            self.setFocusProxy(self.rows[number])
            self.rows[number].setFocus()
            self._room.ensureWidgetVisible(self.rows[number])
            self._deeds[number]()

        return do

    def _ask_nights(self) -> None:
        chosen = feed_nights_chosen(self._keeping)
        self._ask(
            NIGHTS,
            NIGHTS_ASKED,
            lambda text: self._notices.tell_of(lambda: set_feed_nights(self._keeping, text)),
            chosen.words,
            lambda text: coming_words(
                feed_nights_typed(text, self._keeping.today), self._keeping.today
            ),
        )

    def _ask_evening(self) -> None:
        self._ask(
            EVENING,
            tr("Feed nights begin at the hour"),
            lambda text: self._notices.tell_of(lambda: set_evening_hour(self._keeping, text)),
            str(evening_hour(self._keeping)),
            lambda text: evening_words(evening_typed(text)),
        )

    def _ask_place(self) -> None:
        before = second_place(self._keeping.book.path)
        self._ask(
            PLACE,
            tr("A folder on another disk or a stick (empty: none)"),
            self._set_place,
            str(before or ""),
            lambda text: place_words(self._keeping, second_place_typed(self._keeping, text)),
        )

    def _ask(
        self,
        row: int,
        question: str,
        take: Callable[[str], bool],
        written: str,
        preview: Callable[[str], str],
    ) -> None:
        self._asked, self._preview = row, None
        self._asking.ask(question, take, written)
        self._preview = preview

    def _show_preview(self, text: str) -> None:
        """What would follow from what is typed so far, in the row itself."""
        row = self.rows[self._asked]
        if self._preview is None or row.face is None or not self._asking.isVisible():
            return
        try:
            told, refused = self._preview(text), False
        except REFUSALS as refusal:
            told, refused = said(refusal), True
        row.show_choice(replace(row.face, effect=told, refused=refused))

    def _set_place(self, text: str) -> bool:
        try:
            folder = second_place_typed(self._keeping, text)
        except REFUSALS as refusal:
            self._notices.refused.emit(said(refusal))
            return False
        remember_second_place(self._keeping.book.path, folder)
        self._notices.noted.emit(place_words(self._keeping, folder))
        self._show()
        return True

    def _write_as(self, ways: FigureWays) -> None:
        """Every page reads its figures again: they are words by the time they are drawn."""
        remember_figure_ways(ways)
        put_to_use(writing_of(ways, QLocale()))
        self._notices.changed.emit()
        self._notices.noted.emit(
            tr("Every figure is written so from now on; the same key puts it back.")
        )

    def _switch_light(self) -> None:
        self._look.switch_light()
        remember_light(self._look.red_lamp)

    def _switch_text(self) -> None:
        self._look.switch_text()
        remember_large_text(self._look.large_text)
        self._show()

    def _change_language(self) -> None:
        remember_language(language_after(wanted_language()))
        self._show()

    def _end_absence(self) -> None:
        """The one to come is withdrawn, one that runs ends; without one it is said how to ask."""
        entry = next(iter(coming_absences(self._keeping, self._keeping.today)), None)
        if entry is None:
            self._notices.refused.emit(tr("No absence is to come; Ctrl+H in Round asks for one."))
        else:
            self._notices.tell_of(lambda: end_absence(self._keeping, entry))

    def _change_paper(self) -> None:
        """The other size, from now on."""
        chosen = next(paper for paper in Paper if paper is not paper_in_use())
        remember_paper(chosen.name)
        put_paper_to_use(chosen)
        self._show()

    def _switch_tones(self) -> None:
        remember_tones(not wants_tones())
        self._show()


def _hear_tones(notices: Notices) -> None:
    """Each once, whether they are wanted or not; where nothing can play that is said."""
    if tones.prepare():
        tones.hear_all()
        notices.noted.emit(TONES_HEARD)
    else:
        notices.refused.emit(NOTHING_PLAYS)
