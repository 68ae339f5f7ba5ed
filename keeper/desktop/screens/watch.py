"""Watch: what needs a look, worst first, each with its reason and its end."""

from __future__ import annotations

from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget

from keeper.actions.keeping import Keeping
from keeper.actions.watch_board import WatchBoard, WatchItem, watch_board
from keeper.desktop.aside_reading import AsideReading
from keeper.desktop.background import Worker
from keeper.desktop.look import Look
from keeper.desktop.models.watch_rows import WatchRow, WatchRowsModel
from keeper.desktop.notices import Notices
from keeper.desktop.page_keys import add_key, add_told_key
from keeper.desktop.screens.watch_asking import WatchAsking
from keeper.desktop.screens.watch_ways import clutch_of
from keeper.desktop.screens.watch_words import (
    counts_of,
    detail_face,
    looked_at,
    nothing_words,
    now_lines,
    prey_of,
    rows_of,
)
from keeper.desktop.sound.tones import tones
from keeper.desktop.type import Use
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.desktop.widgets.row_list import ROW_ROLE, choose_row
from keeper.desktop.widgets.severity_counts import SeverityCounts
from keeper.desktop.widgets.severity_list import SeverityList
from keeper.desktop.widgets.watch_detail import WatchDetail
from keeper.desktop.widgets.words_line import Words
from keeper.language import tr

_LOOKING = tr("Looking through the book.")


class WatchScreen(QWidget):
    """The place *Watch*. The book is read off the main thread, and again when it changed."""

    def __init__(
        self, look: Look, keeping: Keeping, notices: Notices, *, worker: Worker | None = None
    ) -> None:
        super().__init__()
        self._look, self._notices = look, notices
        self._board: WatchBoard | None = None
        self._reading = AsideReading(
            self,
            keeping,
            worker,
            question=watch_board,
            take=self._take,
            refused=self._say_unread,
        )
        self.head = SeverityCounts(look)
        self.model = WatchRowsModel(self)
        self.list = SeverityList(look, self.model)
        self.detail = WatchDetail(look)
        self.nothing = Words(look, Use.PAGE_ASIDE, "ink")
        self.asking = AskingLine(look, self)
        self._asks = WatchAsking(keeping, notices, self.asking, self._row)
        self._lay_out()
        self._listen()
        self.setFocusProxy(self.list)
        self._show()

    def scanned(self, code: str) -> None:
        """Go to the line of the animal whose label was scanned."""
        for number, row in enumerate(self.model.rows):
            animal = row.about.animal
            if animal is not None and code in (animal.code, animal.place):
                self._choose(number)
                return
        told = tr("No line here is about {code!r}: nothing of it needs a look.", code=code)
        self._notices.refused.emit(told)

    def close_down(self) -> None:
        """Wait for a reading that runs; nothing is read any more."""
        self._reading.stop()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._reading.look()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    # --- reading -----------------------------------------------------------------------------

    def _take(self, board: WatchBoard) -> None:
        """The chosen line stays chosen; one that is gone leaves its place to the next."""
        before, place = self._row(), max(0, self.list.currentIndex().row())
        self._board = board
        tones.heard("watch", now_lines(board))
        self.model.show_rows(rows_of(board))
        keys = [row.key for row in self.model.rows]
        stays = before is not None and before.key in keys
        self._choose(keys.index(before.key) if before and stays else min(place, len(keys) - 1))
        self._show()

    def _say_unread(self, sentence: str) -> None:
        self.nothing.setText(tr("The watch could not be read. {why}", why=sentence))
        self._pages.setCurrentWidget(self._nothing_page)

    # --- showing -----------------------------------------------------------------------------

    def _lay_out(self) -> None:
        self._body = QWidget()
        self._frame = QHBoxLayout(self._body)
        self._frame.addWidget(self.list, 1)
        self._frame.addWidget(self.detail)
        self._nothing_page = QWidget()
        self._quiet = QVBoxLayout(self._nothing_page)
        self._quiet.addWidget(self.nothing)
        self._quiet.addStretch(1)
        self._pages = QStackedWidget()
        self._pages.addWidget(self._nothing_page)
        self._pages.addWidget(self._body)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.head)
        column.addWidget(self._pages, 1)
        column.addWidget(self.asking)

    def _listen(self) -> None:
        self.list.activated.connect(lambda _: self._open())
        add_told_key(self, "Enter", tr("open the animal’s page"), self._open)
        self.list.selectionModel().currentChanged.connect(lambda *_: self._show_detail())
        for key, words, slot in (
            ("Z", tr("put this line aside"), self._asks.reason),
            ("D", tr("done: what was found"), self._asks.found),
            ("C", tr("tubs cleaned: a tub, a row or a rack"), self._asks.cleaned),
            ("R", tr("daily round done"), self._asks.daily_round),
            ("B", tr("a bag of prey opened"), self._asks.bag),
            ("S", tr("prey counted: a bag that came, or what is left in one"), self._asks.prey),
            ("M", tr("a step against mites, of a rack or the room"), self._asks.mites),
            ("T", tr("a dose of medicine given, or missed"), self._asks.dose),
            ("P", tr("a permit or licence of the house"), self._asks.permit),
            ("L", tr("loosen the limit that is proposed"), self._asks.loosen),
        ):
            add_key(self, key, words, slot)
        self._notices.changed.connect(self._reading.hear)
        self._notices.readings_came.connect(self._reading.hear)
        self._look.changed.connect(self._fit)

    def _fit(self) -> None:
        look = self._look
        margin = round(look.u(7, 3.5))
        self._frame.setContentsMargins(margin, round(look.u(2, 1)), 0, round(look.u(1.5, 1)))
        self._frame.setSpacing(0)
        self._quiet.setContentsMargins(margin, round(look.u(6, 4)), margin, 0)
        share = round(0.295 * self.width())
        self.detail.setMinimumWidth(share)
        self.detail.setMaximumWidth(share)

    def _show(self) -> None:
        board = self._board
        if board is None:
            self.head.show_counts(tr("Watch"), _LOOKING, {})
            self.nothing.setText("")
            return
        self.head.show_counts(tr("Watch"), looked_at(board), counts_of(board))
        self.nothing.setText(nothing_words(board))
        some = bool(board.items or board.aside)
        self._pages.setCurrentWidget(self._body if some else self._nothing_page)
        self._show_detail()

    def _show_detail(self) -> None:
        row = self._row()
        if row is not None and self._board is not None:
            self.detail.show_face(detail_face(row, self._board.on))

    def _row(self) -> WatchRow | None:
        found = self.list.currentIndex().data(ROW_ROLE)
        return found if isinstance(found, WatchRow) else None

    def _choose(self, number: int) -> None:
        choose_row(self.list, number)

    # --- doing -------------------------------------------------------------------------------

    def _open(self) -> None:
        row = self._row()
        if row is None:
            return
        animal = row.about.animal
        if animal is None and (prey := prey_of(row.about)):
            self._notices.grade_asked.emit(prey)
            return
        if animal is None and (clutch := clutch_of(row.about)):
            self._notices.clutch_asked.emit(clutch)
            return
        if animal is None and isinstance(row.about, WatchItem):
            animal = next(iter(row.about.members), None)
        if animal is None:
            told = tr("This line is of a place; no one animal stands behind it.")
            self._notices.refused.emit(told)
        else:
            self._notices.animal_asked.emit(animal.animal)
