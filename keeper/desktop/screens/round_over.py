"""The pages of the round laid one over the other, and the pages that are asked for by name."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import QStackedLayout, QWidget

from keeper.actions.keeping import Keeping
from keeper.desktop.look import Look
from keeper.desktop.notices import Notices
from keeper.desktop.screens.all_but import AllButScreen
from keeper.desktop.screens.past_nights import PastNightsScreen


class RoundOver:
    """``page`` lies over the round and has the keyboard; None: the round itself is in sight."""

    def __init__(
        self,
        place: QWidget,
        views: Sequence[QWidget],
        look: Look,
        keeping: Keeping,
        notices: Notices,
    ) -> None:
        self._place = place
        self.all_but = AllButScreen(look, keeping, notices)
        self.past_nights = PastNightsScreen(look, keeping, notices)
        self.page: QWidget | None = None
        self._pages = QStackedLayout(place)
        for page in (*views, self.all_but, self.past_nights):
            self._pages.addWidget(page)

    def lay(self, page: QWidget | None) -> None:
        """Lay *page* over the round; None: take away what lies there."""
        self.page = page
        if page is not None:
            self._pages.setCurrentWidget(page)

    def show(self, view: QWidget) -> None:
        """Show *view* of the round, which nothing lies over."""
        self._pages.setCurrentWidget(view)

    def shows(self, view: QWidget) -> bool:
        """Whether *view* is in sight and nothing lies over it."""
        return self.page is None and self._pages.currentWidget() is view

    def give_keyboard(self) -> None:
        """To the page that lies there, or to the place."""
        self._place.setFocusProxy(self.page)  # type: ignore[arg-type]  # None takes it away
        if self._place.isVisible():
            self._place.setFocus()
