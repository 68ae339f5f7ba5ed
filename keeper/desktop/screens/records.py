"""Records: everything that was done, newest first, and the way back from each."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from keeper.actions import undoing
from keeper.actions.due_board import feed_nights_around
from keeper.actions.finding import found
from keeper.actions.joined import came_with
from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.settings import own_figures, set_feed_nights
from keeper.actions.taking_in import TakenIn, take_in
from keeper.desktop.background import Worker
from keeper.desktop.look import Look
from keeper.desktop.notices import Notices
from keeper.desktop.page_keys import add_key
from keeper.desktop.screens.files_asking import FilesAsking, Paths
from keeper.desktop.screens.record_list import RecordList
from keeper.desktop.screens.records_care import BookCare
from keeper.desktop.screens.records_join import BookSharing
from keeper.desktop.screens.records_paper import RecordsPaper
from keeper.desktop.screens.settings_words import NIGHTS_ASKED
from keeper.desktop.type import Use
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.desktop.widgets.words_line import HeadLine, Words
from keeper.language import tr
from keeper.reports.figures import GAP, counted, night
from keeper.reports.words import verb_words

KEYS = tr(
    "T take the line back   R write it again   O one animal   I take in files"
    "   N feed nights   F own figures   B back up   C check   M mend a copy"
    "   E write everything out   J join another book   Ctrl+P stock register"
)
_SHOWN_NIGHTS = 4
_ENTRIES, _LINES = counted("entry", "entries"), counted("line", "lines")


def _kept_whole(keys: str) -> str:
    """The same with no line broken between a key and what it does.

    >>> _kept_whole("T take back   R write it again").split("   ")
    ['T\\xa0take\\xa0back', 'R\\xa0write\\xa0it\\xa0again']
    """
    return "   ".join(part.replace(" ", GAP) for part in keys.split("   "))


class RecordsScreen(QWidget):
    """The list of batches; T takes the chosen one back."""

    def __init__(
        self, look: Look, keeping: Keeping, notices: Notices, *, worker: Worker | None = None
    ) -> None:
        super().__init__()
        self._look, self._keeping, self._notices = look, keeping, notices
        self._head = HeadLine(look)
        self._list = RecordList(look, keeping, worker, self._say)
        self._asking = AskingLine(look, self)
        self._keys = Words(look, Use.BODY, "ink2")
        self._keys.setText(_kept_whole(KEYS))
        self._keys.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.body = Words(look, Use.BODY)
        self._files = FilesAsking(
            self._asking, looked=self._looked, say=self._say, agreed=self._agreed
        )
        self._care = BookCare(keeping, notices, self._asking, self._say, worker)
        self._sharing = BookSharing(
            keeping, notices, self._asking, self._say, page=self, look=look, worker=worker
        )
        self._paper = RecordsPaper(keeping, notices, self, self._asking)
        self._asked_back: int | None = None
        self._lay_out()
        for key, words, slot in (
            ("T", tr("take the chosen line back"), self._take_back),
            ("R", tr("write it again"), self._put_back),
            ("O", tr("one animal’s lines"), self._ask_animal),
            ("I", tr("take in files"), self._files.begin),
            ("N", tr("feed nights"), self._ask_feed_nights),
            ("F", tr("own figures"), self._show_own),
            ("B", tr("back up now"), self._care.back_up),
            ("C", tr("check the book"), self._care.check),
            ("M", tr("mend a copy of the book"), self._care.mend),
            ("E", tr("write everything out"), self._sharing.write_out),
            ("J", tr("join another book"), self._sharing.join),
            ("Ctrl+P", tr("stock register as at a day"), self._paper.ask),
            ("Ctrl+Shift+P", tr("The last PDF on a printer"), self._paper.desk.to_printer),
        ):
            add_key(self, key, words, slot)
        notices.changed.connect(self._list.hear)
        notices.changed.connect(self._show_head)
        look.changed.connect(self._dress)
        self._dress()
        self.setFocusProxy(self._list)

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self._head)
        column.addWidget(self._list, 1)
        self._under = QVBoxLayout()
        self._under.addWidget(self.body)
        column.addLayout(self._under)
        column.addWidget(self._keys)
        self.body.hide()
        column.addWidget(self._asking)

    def close_down(self) -> None:
        """Wait for a reading that runs; nothing is read any more."""
        self._list.stop()
        self._care.stop()
        self._sharing.stop()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._show_head()

    def _dress(self) -> None:
        margin = round(self._look.u(7, 3.5))
        self._under.setContentsMargins(margin, round(self._look.u(2)), margin, 0)
        self._keys.setContentsMargins(margin, 0, margin, 0)

    def _show_head(self) -> None:
        only = self._list.only
        where = [(str(self._keeping.book.path), False)]
        if only is not None:
            where.append((tr("only {name}", name=only.called), True))
        self._head.show_words(tr("Records"), where, (self._feed_nights(),))

    def _feed_nights(self) -> str:
        today = self._keeping.today
        coming = [n for n in feed_nights_around(self._keeping, today) if n >= today]
        if not coming:
            return tr("every night is a feed night")
        nights = ", ".join(night(n) for n in coming[:_SHOWN_NIGHTS])
        return tr("feed nights {nights}", nights=nights)

    def _take_back(self) -> None:
        """Asks once more with the same key, since later entries may lean on it."""
        row = self._list.chosen()
        if row is None:
            return
        if self._asked_back != row.batch.id:
            self._asked_back = row.batch.id
            came = len(came_with(self._keeping, row.batch.id))
            count = _LINES(came) if came else _ENTRIES(sum(row.counts.values()))
            self._notices.noted.emit(
                tr(
                    "{verb}: {count} would no longer stand. T again takes it back.",
                    verb=verb_words(row.batch.verb),
                    count=count,
                )
            )
            return
        self._asked_back = None
        if undoing.is_join(row.batch) and row.batch.stands:
            self.turn_join(row.batch.id, back=True)
            return
        self._notices.tell_of(lambda: undoing.take_back_batch(self._keeping, row.batch.id))

    def turn_join(self, join: int, *, back: bool) -> None:
        """Take a *join* back, or put it back, while the window goes on."""
        self._sharing.turn(join, back=back)

    def _put_back(self) -> None:
        row = self._list.chosen()
        if row is not None and undoing.is_join(row.batch) and not row.batch.stands:
            self.turn_join(row.batch.id, back=False)
        elif row is not None:
            self._notices.tell_of(lambda: undoing.put_back_batch(self._keeping, row.batch.id))

    def _say(self, text: str) -> None:
        """Show *text* under the table; nothing takes it away."""
        self.body.setText(text)
        self.body.setVisible(bool(text))

    def _ask_animal(self) -> None:
        asked = tr("Only the lines of (code, name or tub; nothing for all)")
        self._asking.ask(asked, self._keep_to)

    def _keep_to(self, text: str) -> bool:
        """The lines of the one animal meant by *text*."""
        meant = found(animals_on(self._keeping, self._keeping.today), text, most=1)
        if text.strip() and not meant:
            self._notices.refused.emit(tr("No animal here is called {text!r}.", text=text))
            return False
        self._list.keep_to(meant[0] if meant else None)
        self._show_head()
        return True

    def _looked(self, animals: Path | None, diary: Path | None) -> TakenIn:
        return take_in(self._keeping, animals=animals, diary=diary, dry_run=True)

    def _agreed(self, files: Paths, counts: str) -> None:
        asked = tr("Take in {counts}", counts=counts)
        self._asking.ask(asked, lambda text: self._take_in(files, text), tr("yes"))

    def _take_in(self, files: Paths, text: str) -> bool:
        self._say("")
        if text.casefold() in ("y", "yes", tr("yes")):
            animals, diary = files
            self._notices.tell_of(
                lambda: take_in(self._keeping, animals=animals, diary=diary).written
            )
        return True

    def _show_own(self) -> None:
        """The keeper's own figures beside the shipped ones, or away with them."""
        if self.body.isVisible():
            self._say("")
            return
        own = [
            tr(
                "{species}, {key}: {value:g}, shipped {shipped:g}; {why}",
                species=each.species,
                key=each.key,
                value=each.value,
                shipped=each.shipped,
                why=each.why,
            )
            for each in own_figures(self._keeping)
        ]
        self._say("\n".join(own) or tr("Every figure in use is the one that was shipped."))

    def _ask_feed_nights(self) -> None:
        self._asking.ask(NIGHTS_ASKED, self._set_nights)

    def _set_nights(self, rule: str) -> bool:
        return self._notices.tell_of(lambda: set_feed_nights(self._keeping, rule))
