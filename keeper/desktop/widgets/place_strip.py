"""The strip at the top: the places with their keys, and at the right the clock and the light."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QLineF, QPointF, QRectF, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QHBoxLayout, QTabBar, QWidget

from keeper.desktop.look import Look
from keeper.desktop.places import Place
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import RIGHT, advance, middle_baseline, set_line
from keeper.language import tr

_PAD_UNITS = (2.7, 2.0)
_MARGIN_UNITS = (7.0, 3.5)


class PlaceStrip(QWidget):
    """Names of the places with their keys.

    ``place_asked(index)`` when one is clicked, or pressed by assistive technology, which chooses
    a tab without a click.
    """

    place_asked = Signal(int)

    def __init__(self, look: Look, places: Sequence[Place], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.look = look
        self._tabs = _Tabs(look, places, self)
        self._tabs.currentChanged.connect(self.place_asked)
        self._tabs.tabBarClicked.connect(self._ask_again)
        self._clock = _Clock(look, self)
        self._row = QHBoxLayout(self)
        self._row.setSpacing(0)
        self._row.addWidget(self._tabs)
        self._row.addWidget(self._clock, 1)
        look.changed.connect(self._fit)
        self._fit()

    def show_place(self, index: int) -> None:
        """Mark the place at *index* as the one gone to."""
        with QSignalBlocker(self._tabs):
            self._tabs.setCurrentIndex(index)

    def show_clock(self, day: str, clock: str) -> None:
        """Show the day in words and the clock; a small window shows the clock alone."""
        self._clock.show_clock(day, clock)

    def _ask_again(self, index: int) -> None:
        """A click on the place gone to gives it the keyboard back."""
        if index == self._tabs.currentIndex():
            self.place_asked.emit(index)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setPen(QPen(self.look.colour("line"), 1.1))
        y = self.height() - 0.6
        painter.drawLine(QLineF(0, y, self.width(), y))
        painter.end()

    def _fit(self) -> None:
        margin = round(self.look.u(*_MARGIN_UNITS) - self.look.u(*_PAD_UNITS))
        self._row.setContentsMargins(margin, 0, round(self.look.u(*_MARGIN_UNITS)), 1)
        self.updateGeometry()
        self.update()


class _Tabs(QTabBar):
    def __init__(self, look: Look, places: Sequence[Place], parent: QWidget) -> None:
        super().__init__(parent)
        self._look = look
        self._keys = tuple(place.key for place in places)
        self.setDrawBase(False)
        self.setExpanding(False)
        self.setUsesScrollButtons(False)
        self.setElideMode(Qt.TextElideMode.ElideNone)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setAccessibleName(tr("places", sense="of the window"))
        for index, place in enumerate(places):
            self.addTab(place.shown)
            self.setAccessibleTabName(index, f"{place.shown}, {place.key}")
            self.setTabVisible(index, place.in_strip)
        look.changed.connect(self._refit)
        self._refit()

    def tabSizeHint(self, index: int) -> QSize:
        look = self._look
        strong = look.font(Use.TABLE_STRONG)
        hint = advance(look.font(Use.KEY_HINT), self._keys[index])
        wide = hint + look.u(1.3, 1) + advance(strong, self.tabText(index))
        return QSize(round(wide + 2 * look.u(*_PAD_UNITS)), round(look.u(9.5, 7.5)))

    def minimumTabSizeHint(self, index: int) -> QSize:
        return self.tabSizeHint(index)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        for index in filter(self.isTabVisible, range(self.count())):
            self._paint_tab(painter, QRectF(self.tabRect(index)), index)
        painter.end()

    def _paint_tab(self, painter: QPainter, rect: QRectF, index: int) -> None:
        look, here = self._look, index == self.currentIndex()
        if here:
            painter.fillRect(rect, look.colour("ink"))
        name = look.font(Use.TABLE_STRONG if here else Use.TABLE)
        hint = look.font(Use.KEY_HINT)
        base, left = middle_baseline(rect, name), rect.left() + look.u(*_PAD_UNITS)
        key_ink = look.colour("ground" if here else "ink3")
        used = set_line(painter, QPointF(left, base), self._keys[index], hint, key_ink)
        left += used + look.u(1.3, 1)
        ink = look.colour("ground" if here else "ink2")
        set_line(painter, QPointF(left, base), self.tabText(index), name, ink)

    def _refit(self) -> None:
        self.setFont(self._look.font(Use.TABLE))  # a changed font makes the bar lay out again
        self.updateGeometry()
        self.update()


class _Clock(Drawn):
    def __init__(self, look: Look, parent: QWidget) -> None:
        super().__init__(look, parent)
        self._day = self._time = ""

    def show_clock(self, day: str, clock: str) -> None:
        self._day, self._time = day, clock
        self.tell(f"{day} {clock}".strip())

    def natural_size(self) -> tuple[float, float]:
        font = self.look.font(Use.TABLE)
        return advance(font, self._shown()) + self.look.u(4), self.look.u(9, 7)

    def paint(self, painter: QPainter) -> None:
        font, rect = self.look.font(Use.TABLE), QRectF(self.rect())
        place = QPointF(rect.right(), middle_baseline(rect, font))
        shown = self._shown() if advance(font, self._shown()) < rect.width() else self._time
        set_line(painter, place, shown, font, self.look.colour("ink2"), align=RIGHT)

    def _shown(self) -> str:
        look = self.look
        if look.small:
            return self._time
        light = tr(look.palette.name)
        if look.dim_step:
            light = tr("{light}, dim {step}", light=light, step=look.dim_step)
        return "   ".join(part for part in (self._day, self._time, f"{light} F12") if part)
