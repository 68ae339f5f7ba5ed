"""Nights that are over: those to look at again, and those of which nothing is written."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent, QShowEvent
from PySide6.QtWidgets import QListWidget, QVBoxLayout, QWidget

from keeper.actions.keeping import Keeping
from keeper.actions.past_nights import (
    NightLook,
    PastNight,
    answer_night,
    covered_nights,
    late_night,
    looks,
    missing_nights,
    past_night,
)
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.look import Look
from keeper.desktop.notices import Notices
from keeper.desktop.type import Use
from keeper.desktop.widgets.words_line import HeadLine, Words
from keeper.husbandry.events import NightTold
from keeper.language import tr
from keeper.reports.figures import night as night_words
from keeper.reports.words import word

ANSWERS = {"1": NightTold.NO_ROUND, "2": NightTold.FORGOT, "3": NightTold.UNWRITTEN}
KEYS = tr(
    "Enter opens the night on its own lines     nothing written:  1 no round   2 forgot to record,"
    " open it   3 done, not recorded"
)


@dataclass(frozen=True, slots=True)
class _Line:
    night: date
    missing: bool
    words: str
    round: int | None = None


class PastNightsScreen(QWidget):
    """A list of nights, the newest first. ``night_asked`` carries the ``PastNight`` to walk."""

    night_asked = Signal(object)

    def __init__(self, look: Look, keeping: Keeping, notices: Notices) -> None:
        super().__init__()
        self._look, self._keeping, self._notices = look, keeping, notices
        self._lines: list[_Line] = []
        self._head = HeadLine(look)
        self.nights = QListWidget(self)
        self.nights.setAccessibleName(tr("Nights that are over"))
        self.nights.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._keys = Words(look, Use.BODY, "ink2")
        self._keys.setText(KEYS)
        page = QVBoxLayout(self)
        page.setContentsMargins(0, 0, 0, 0)
        self._middle = QVBoxLayout()
        self._middle.addWidget(self.nights)
        page.addWidget(self._head)
        page.addLayout(self._middle, 1)
        page.addWidget(self._keys)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        notices.changed.connect(self._hear)
        look.changed.connect(self._dress)
        self._dress()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._read()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, row = event.text(), self.nights.currentRow()
        if event.key() in (Qt.Key.Key_Up, Qt.Key.Key_Down) and self._lines:
            step = 1 if event.key() == Qt.Key.Key_Down else -1
            self.nights.setCurrentRow(min(max(row + step, 0), len(self._lines) - 1))
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and row >= 0:
            self._try(lambda: self._open(self._lines[row]))
        elif key in ANSWERS and row >= 0:
            self._try(lambda: self._answer(self._lines[row], ANSWERS[key]))
        else:
            super().keyPressEvent(event)

    def _open(self, line: _Line) -> None:
        if line.missing:
            raise ValueError(
                tr(
                    "Nothing is written of {night}; 1, 2 or 3 says why.",
                    night=night_words(line.night),
                )
            )
        night = past_night(self._keeping, line.night, line.round)
        if night is not None:
            self.night_asked.emit(night)

    def _answer(self, line: _Line, told: NightTold) -> None:
        if not line.missing:
            told_of = night_words(line.night)
            raise ValueError(tr("{night} has a round; Enter opens it.", night=told_of))
        self._notices.tell_written(answer_night(self._keeping, line.night, told))
        if told is NightTold.FORGOT:
            night: PastNight = late_night(self._keeping, line.night)
            self._notices.changed.emit()
            self.night_asked.emit(night)

    def _try(self, deed: Callable[[], None]) -> None:
        try:
            deed()
        except REFUSALS as refusal:
            self._notices.refused.emit(said(refusal))

    def _hear(self) -> None:
        if self.isVisible():
            self._read()

    def _read(self) -> None:
        missing = missing_nights(self._keeping, self._keeping.today)
        covered = covered_nights(self._keeping, self._keeping.today)
        told = [_Line(night, True, _missing_words(night)) for night in missing]
        told += [_Line(night, True, _covered_words(night)) for night in covered]
        told += [
            _Line(look.night, False, _look_words(look), look.round) for look in looks(self._keeping)
        ]
        self._lines = sorted(told, key=lambda line: line.night, reverse=True)
        before = max(self.nights.currentRow(), 0)
        self.nights.clear()
        self.nights.addItems([line.words for line in self._lines])
        self.nights.setCurrentRow(min(before, len(self._lines) - 1))
        asked = tr("none to answer")
        if missing:
            asked = tr("{count} to answer", count=len(missing))
        self._head.show_words(tr("Nights that are over"), right=[asked])

    def _dress(self) -> None:
        self.nights.setFont(self._look.font(Use.LINE_TITLE))
        margin = round(self._look.u(7, 3.5))
        # the chosen night stands out though another has the focus; the window's own style sheet
        # would outdo a palette
        chosen, on_it = (self._look.colour(role).name() for role in ("point", "on_point"))
        self.nights.setStyleSheet(
            f"selection-background-color: {chosen}; selection-color: {on_it};"
        )
        self._keys.setContentsMargins(margin, 0, margin, margin)
        self._middle.setContentsMargins(margin, round(self._look.u(2)), margin, 0)


def _missing_words(night: date) -> str:
    answers = ", ".join(word(told) for told in NightTold)
    return tr("{night}   nothing written: {answers}?", night=night_words(night), answers=answers)


def _covered_words(night: date) -> str:
    return tr(
        "{night}   was to be fed while the keeper was away; 2 writes it up.",
        night=night_words(night),
    )


def _look_words(look: NightLook) -> str:
    parts = (
        (look.left_in, tr("left in")),
        (look.assumed, tr("assumed")),
        (look.not_reached, tr("not reached")),
    )
    told = ", ".join(f"{count} {words}" for count, words in parts if count)
    where = f", {look.racks}" if look.racks else ""
    return f"{night_words(look.night)}{where}   {told or tr('every tub looked at')}"
