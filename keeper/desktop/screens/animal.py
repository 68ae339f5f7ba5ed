"""The Animal place: one life on one axis, worked with the arrow keys, no tabs and no dialogs."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QKeySequence, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from keeper.actions.animal_desk import Opened
from keeper.actions.animal_page import AnimalPage
from keeper.actions.day_of_life import day_of_life
from keeper.actions.keeping import Keeping
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.background import Worker
from keeper.desktop.look import Look
from keeper.desktop.notices import Notices
from keeper.desktop.screens.animal_comings import newcomer_asked
from keeper.desktop.screens.animal_deeds import Key, Maker, entries, finding, young
from keeper.desktop.screens.animal_genes import AnimalGenes
from keeper.desktop.screens.animal_line import AnimalLine
from keeper.desktop.screens.animal_paper import AnimalPaper
from keeper.desktop.screens.animal_photo import photo_asked, pictures_on
from keeper.desktop.screens.animal_reading import AnimalReading
from keeper.desktop.screens.animal_words import figures_of, identity
from keeper.desktop.type import Use
from keeper.desktop.widgets.animal_head import AnimalHead
from keeper.desktop.widgets.drawn import announce
from keeper.desktop.widgets.life_strip import LifeStrip
from keeper.desktop.widgets.life_view import LifeView
from keeper.desktop.widgets.photo_sheet import PhotoSheet
from keeper.desktop.widgets.read_out import ReadOut
from keeper.desktop.widgets.words_line import Words
from keeper.husbandry.now import AnimalNow
from keeper.language import tr

if TYPE_CHECKING:
    from keeper.actions.forecasting import WeightForecast

_NOBODY = tr("This book holds no animal yet. A writes one in; Records takes your files in.")


class AnimalScreen(QWidget):
    """Shows one animal; reader, reckoner and kin_reader are the workers of its reading."""

    def __init__(
        self,
        look: Look,
        keeping: Keeping,
        notices: Notices,
        *,
        reader: Worker | None = None,
        reckoner: Worker | None = None,
        kin_reader: Worker | None = None,
    ) -> None:
        super().__init__()
        self._look, self._keeping, self._notices = look, keeping, notices
        self._page: AnimalPage | None = None
        self._everyone: Sequence[AnimalNow] = ()
        self._reading = AnimalReading(
            keeping,
            reader,
            reckoner,
            opened=self._show,
            reckoned=self._show_forecast,
            refused=notices.refused.emit,
        )
        self.head = AnimalHead(look, self)
        self.strip = LifeStrip(look, self)
        self.read_out, self.photos = ReadOut(look, self), PhotoSheet(look, self)
        self.genes = AnimalGenes(keeping, look, self, self.read_out, notices, kin_reader)
        self.line = AnimalLine(look, self, notices)
        self.paper = AnimalPaper(keeping, notices, self, self.strip, self.line, self.genes.now)
        self.nobody = Words(look, Use.BODY, "ink2", self)
        self._assemble()
        self._listen()

    @property
    def page(self) -> AnimalPage | None:
        """The page that is shown; None while there is none."""
        return self._page

    def show_animal(self, animal: int) -> None:
        """Open the page of the animal with this key."""
        self.line.leave()
        self._reading.read(animal)

    def scanned(self, code: str) -> None:
        """Open the page of the animal whose label was scanned."""
        row = next((row for row in self._everyone if row.code == code), None)
        if row is None:
            self._notices.refused.emit(tr("No animal in this book has the code {code}.", code=code))
        else:
            self.show_animal(row.animal)

    def go(self, moved: Callable[[LifeView], LifeView]) -> None:
        """Move the cursor or zoom, and read the day out."""
        if self._page is not None:
            self.strip.show_view(moved(self.strip.view))
            announce(self.read_out, self._show_day(self._page))

    def close_down(self) -> None:
        """Let go of the book in both threads; no result arrives after this."""
        self._reading.stop()
        self.genes.stop()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        old = self._page is not None and self._page.today != self._keeping.today
        if self._reading.stale or old:
            self._reading.again()

    def _show(self, opened: Opened) -> None:
        self._everyone, self._page = opened.everyone, opened.page
        for part in (self.head, self.strip):
            part.setVisible(opened.page is not None)
        self.genes.show_side(opened.page is not None)
        self.nobody.setVisible(opened.page is None)
        self.photos.hide()  # until the day of the cursor has one
        if opened.page is not None:
            self.head.show_identity(identity(opened.page))
            self.strip.show_page(opened.page, waiting=opened.page.target_g is not None)
            self._show_day(opened.page)
            self.genes.read(opened.page.animal)

    def _show_forecast(self, page: AnimalPage, told: WeightForecast | None) -> None:
        self.strip.show_page(page, told)
        self._show_day(page)

    def _show_day(self, page: AnimalPage) -> str:
        """Read the day of the cursor out; returns it in short."""
        figures = figures_of(page, day_of_life(page, self.strip.view.cursor))
        self.read_out.show_figures(figures)
        self.photos.show_photos(*pictures_on(self._keeping, page, self.strip.view.cursor))
        first = figures.groups[0][0]
        return f"{figures.head}, {first.label} {first.value}"

    def _changed(self) -> None:
        self._reading.hear()
        if self.isVisible():
            self._reading.again()

    def _walk(self, step: int) -> None:
        """The next animal in walking order, or the one before."""
        here = [row.animal for row in self._everyone if row.in_the_room]
        if not here:
            return
        asked = self._reading.asked_for
        at = here.index(asked) + step if asked in here else 0
        self.show_animal(here[at % len(here)])

    def ask_newcomer(self) -> None:
        """Open the line for an animal that the book does not hold yet."""
        self.line.open(newcomer_asked(self._keeping, self.show_animal))

    def _show_stay(self) -> None:
        """Where the animal stood on the day of the cursor, in the racks' time-line."""
        if self._page is not None:
            day = min(self.strip.view.cursor, self._keeping.today)
            self._notices.stay_asked.emit(self._page.animal.animal, day)

    def _ask(self, make: Maker) -> None:
        """Open the line for an entry of the day of the cursor."""
        if self._page is None:
            return
        try:
            self.line.open(make(self._keeping, self._page.animal, self.strip.view.cursor))
        except REFUSALS as refusal:
            self._notices.refused.emit(said(refusal))

    def _assemble(self) -> None:
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.nobody.setText(_NOBODY)
        self.nobody.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.nobody.hide()
        self._middle = QHBoxLayout()
        self._middle.setSpacing(0)
        self._middle.addWidget(self.strip, 1)
        side = QVBoxLayout()
        side.setSpacing(0)
        side.addWidget(self.read_out, 1)
        side.addWidget(self.genes.sheet, 1)
        side.addWidget(self.photos)
        self._middle.addLayout(side)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.head)
        column.addWidget(self.genes.band)
        column.addWidget(self.nobody, 1)
        column.addLayout(self._middle, 1)
        column.addWidget(self.line)
        self._fit()

    def _fit(self) -> None:
        look = self._look
        margin = round(look.u(7, 3.5))
        self._middle.setContentsMargins(0, 0, margin, round(look.u(1.2, 0.6)))
        self.nobody.setContentsMargins(margin, round(look.u(6, 4)), margin, 0)

    def _listen(self) -> None:
        self._look.changed.connect(self._fit)
        self._notices.changed.connect(self._changed)
        self.destroyed.connect(self._reading.stop)
        self.strip.day_asked.connect(lambda day: self.go(lambda view: view.to(day)))
        for key in (*self._moves(), *self._deeds(), self.genes.key, *self.paper.keys()):
            self.addAction(_action(self, key))

    def _moves(self) -> Sequence[Key]:
        strip = self.strip

        def go(moved: Callable[[LifeView], LifeView]) -> Callable[[], None]:
            return lambda: self.go(moved)

        return (
            (tr("A day back"), "Left", go(lambda v: v.by_days(-1))),
            (tr("A day on"), "Right", go(lambda v: v.by_days(1))),
            (tr("To the entry before"), "Shift+Left", go(lambda v: v.to_event(strip.days, -1))),
            (tr("To the next entry"), "Shift+Right", go(lambda v: v.to_event(strip.days, 1))),
            (tr("A month back"), "Ctrl+Left", go(lambda v: v.by_months(-1))),
            (tr("A month on"), "Ctrl+Right", go(lambda v: v.by_months(1))),
            (tr("To hatching"), "Home", go(lambda v: v.to(v.life_first))),
            (tr("To today"), "End", go(lambda v: v.to(v.today))),
            (tr("Nearer"), "+ =", go(lambda v: v.zoomed(1))),
            (tr("Further"), "-", go(lambda v: v.zoomed(-1))),
        )

    def _deeds(self) -> Sequence[Key]:
        def everyone() -> Sequence[AnimalNow]:
            return self._everyone

        find = finding(everyone, self.show_animal)
        return (
            (tr("The animal before"), "PgUp", lambda: self._walk(-1)),
            (tr("The next animal"), "PgDown", lambda: self._walk(1)),
            (tr("Find an animal"), "/ Ctrl+F", lambda: self.line.open(find())),
            *entries(self._ask, everyone),
            (tr("Young hatched"), "Y", lambda: self._ask(young(self.show_animal))),
            (tr("A new animal"), "A", self.ask_newcomer),
            (tr("Photo"), "O", lambda: self._ask(photo_asked)),
            (tr("Where and beside whom it stood"), "W", self._show_stay),
        )


def _action(page: QWidget, key: Key) -> QAction:
    words, keys, slot = key
    action = QAction(words, page)
    action.setShortcuts([QKeySequence(one) for one in keys.split()])
    action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
    action.triggered.connect(lambda _=False: slot())
    return action
