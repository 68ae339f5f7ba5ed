"""The strip at the top: the places with their keys, and at the right the clock and the light."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QLineF, QPointF, QRectF, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFont, QPainter, QPainterPath, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QTabBar, QWidget

from keeper.desktop.look import Look
from keeper.desktop.places import SHIFT, Place
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import RIGHT, advance, cap_height, middle_baseline, set_line
from keeper.language import tr

_PAD_UNITS = (2.7, 2.0)
_PADS = (1.0, 0.8, 0.6, 0.45)
_MARGIN_UNITS = (7.0, 3.5)
_GAP_UNITS = (1.3, 1.0)
_TIME = "00:00"


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
        """Names, keys and clock in the room there is: margins shrink first, then keys go."""
        outside = round(self.look.u(*_MARGIN_UNITS))
        pad = self._tabs.fit(self.width() - 2 * outside - self._clock.least())
        self._row.setContentsMargins(outside - pad, 0, outside, 1)
        self.updateGeometry()
        self.update()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()


class _Tabs(QTabBar):
    def __init__(self, look: Look, places: Sequence[Place], parent: QWidget) -> None:
        super().__init__(parent)
        self._look = look
        self._keys = tuple(place.key for place in places)
        self._share, self._keys_shown = _PADS[0], True
        self.setDrawBase(False)
        self.setExpanding(False)
        self.setUsesScrollButtons(False)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setAccessibleName(tr("places", sense="of the window"))
        for index, place in enumerate(places):
            self.addTab(place.shown)
            self.setAccessibleTabName(index, f"{place.shown}, {place.key}")
            self.setTabVisible(index, place.in_strip)
        look.changed.connect(self._refit)
        self._refit()

    def fit(self, room: float) -> int:
        """Take the widest margins that *room* px allow, and the keys where they fit; the margin."""
        ways = [(share, keys) for keys in (True, False) for share in _PADS]
        fitting = (way for way in ways if self._wide(*way) <= room)
        chosen = next(fitting, ways[-1])
        if chosen != (self._share, self._keys_shown):
            self._share, self._keys_shown = chosen
            self._refit()
        return round(self._pad())

    def tabSizeHint(self, index: int) -> QSize:
        wide = self._inside(index, self._keys_shown) + 2 * self._pad()
        return QSize(round(wide), round(self._look.u(9.5, 7.5)))

    def _pad(self) -> float:
        return self._share * self._look.u(*_PAD_UNITS)

    def _wide(self, share: float, keys: bool) -> float:
        """Px of all names in the strip."""
        inside = [self._inside(n, keys) for n in range(self.count()) if self.isTabVisible(n)]
        return sum(inside) + len(inside) * (2 * share * self._look.u(*_PAD_UNITS) + 1)

    def _inside(self, index: int, keys: bool) -> float:
        name = advance(self._look.font(Use.TABLE_STRONG), self.tabText(index))
        return name + (self._hint_wide(index) + self._look.u(*_GAP_UNITS) if keys else 0.0)

    def _hint_wide(self, index: int) -> float:
        key, font = self._keys[index], self._look.font(Use.KEY_HINT)
        arrow = _arrow_wide(font) if key.startswith(SHIFT) else 0.0
        return arrow + advance(font, key.removeprefix(SHIFT))

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
        base, left = middle_baseline(rect, name), rect.left() + self._pad()
        key_ink = look.colour("ground" if here else "ink3")
        if self._keys_shown:
            key, end = self._keys[index], left + self._hint_wide(index)
            if key.startswith(SHIFT):
                _paint_arrow(painter, QPointF(left, base), hint, key_ink)
            bare = key.removeprefix(SHIFT)
            set_line(painter, QPointF(end, base), bare, hint, key_ink, align=RIGHT)
            left = end + look.u(*_GAP_UNITS)
        ink = look.colour("ground" if here else "ink2")
        set_line(painter, QPointF(left, base), self.tabText(index), name, ink)

    def _refit(self) -> None:
        self.setFont(self._look.font(Use.TABLE))
        self.setElideMode(Qt.TextElideMode.ElideNone)  # makes the bar lay out again
        self.updateGeometry()
        self.update()


def _arrow_wide(font: QFont) -> float:
    return 1.15 * cap_height(font)


def _paint_arrow(painter: QPainter, foot: QPointF, font: QFont, ink: QColor) -> None:
    """The hollow arrow that stands on the shift key; the house face has none."""
    high, wide = cap_height(font), 0.9 * cap_height(font)
    points = ((0.5, 1.0), (1.0, 0.45), (0.72, 0.45), (0.72, 0.0), (0.28, 0.0), (0.28, 0.45))
    path = QPainterPath(QPointF(foot.x(), foot.y() - 0.45 * high))
    for across, up in points:
        path.lineTo(QPointF(foot.x() + across * wide, foot.y() - up * high))
    path.closeSubpath()
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(ink, 1.0))
    painter.drawPath(path)
    painter.restore()


class _Clock(Drawn):
    def __init__(self, look: Look, parent: QWidget) -> None:
        super().__init__(look, parent)
        self._day = self._time = ""

    def show_clock(self, day: str, clock: str) -> None:
        self._day, self._time = day, clock
        self.tell(f"{day} {clock}".strip())

    def least(self) -> float:
        """Px of the clock alone, with air before it."""
        return advance(self.look.font(Use.TABLE), _TIME) + self.look.u(2, 1)

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
