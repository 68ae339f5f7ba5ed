"""The pairing calendar of Females: rows and weeks walked by arrows, the chosen one read out."""

from __future__ import annotations

from bisect import bisect
from collections.abc import Sequence
from datetime import date, timedelta
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from keeper.actions.pairing_calendar import CalendarRow, PairingCalendar, monday_of
from keeper.desktop.look import Look
from keeper.desktop.models.faced_rows import FacedRows
from keeper.desktop.screens.pairing_faces import (
    Shown,
    ground_of,
    order_of,
    shown_face,
    week_faces,
)
from keeper.desktop.screens.pairing_words import in_view_words, read_out, week_words, weeks_told
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import announce
from keeper.desktop.widgets.pairing_legend import CalendarLegend
from keeper.desktop.widgets.pairing_list import (
    CalendarFoot,
    CalendarHead,
    CalendarList,
    CalendarReadOut,
    InView,
)
from keeper.desktop.widgets.pairing_row import CalendarFace
from keeper.desktop.widgets.pairing_shape import ZOOMS, WeeksInView
from keeper.desktop.widgets.row_list import ROW_ROLE
from keeper.desktop.widgets.words_line import Words
from keeper.language import tr

if TYPE_CHECKING:
    from keeper.actions.forecasting import WeightForecast

_NOBODY = tr(
    "No female has been with a male, laid, or comes to a gate within these weeks. A pairing is"
    " written on her page."
)
_WEEK = timedelta(days=7)


class PairingView(QWidget):
    """Shows a ``PairingCalendar``; it reads nothing itself. ``rows_came``: there are more rows."""

    rows_came = Signal()

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self.calendar: PairingCalendar | None = None
        self.forecasts: dict[int, WeightForecast] = {}
        self.week = 0  # the chosen one, counted from the first of the calendar
        self._view = WeeksInView(first=0, count=ZOOMS[-1], every=ZOOMS[-1])
        self.head, self.foot = CalendarHead(look, self), CalendarFoot(look, self)
        self.model = FacedRows[CalendarRow, CalendarFace](self)
        self.list = CalendarList(look, self.model, self)
        self.legend, self.beside = CalendarLegend(look, self), CalendarReadOut(look, self)
        self.none = Words(look, Use.PAGE_ASIDE, "ink", self)
        self._lay_out()
        self._listen()

    @property
    def chosen(self) -> CalendarRow | None:
        found = self.list.currentIndex().data(ROW_ROLE)
        return found if isinstance(found, CalendarRow) else None

    @property
    def monday(self) -> date:
        """The first day of the chosen week; LookupError while nothing is shown."""
        if self.calendar is None:
            raise LookupError
        return self.calendar.weeks[self.week].monday

    @property
    def weeks_shown(self) -> int:
        return self._view.count

    def show_calendar(self, calendar: PairingCalendar, shown: Sequence[Shown]) -> None:
        """Another reading with its rows in order; the chosen female and week stay chosen."""
        first = self.calendar is None
        self.calendar = calendar
        self._view = WeeksInView(
            first=self._view.first, count=self._view.count, every=len(calendar.weeks)
        )
        if first:
            self._go_to(self._this_week(calendar))
        self._show_rows(shown)

    def show_forecast(self, animal: int, forecast: WeightForecast) -> None:
        """The day of her weight came; a female may come on the calendar by it."""
        self.forecasts[animal] = forecast
        calendar = self.calendar
        if calendar is None:
            return
        row = next((each for each in calendar.rows if each.animal == animal), None)
        face = shown_face(row, forecast, calendar) if row is not None else None
        if row is None or face is None:
            return
        self._put_in(row, face, calendar.on)
        if self.chosen is not None and self.chosen.animal == animal:
            self._read_out()

    def choose(self, animal: int) -> bool:
        """Go to the row of *animal*; whether she stands on the calendar."""
        for number, row in enumerate(self.model.rows):
            if row.animal == animal:
                self.list.choose(number)
                return True
        return False

    def go_by(self, weeks: int) -> None:
        """So many weeks on, no further than the ends of the calendar."""
        if self.calendar is not None:
            self._go_to(min(max(0, self.week + weeks), len(self.calendar.weeks) - 1))
            self._show_view()
            announce(self.list, self._said())

    def go_home(self) -> None:
        """Back to this week."""
        if self.calendar is not None:
            self.go_by(self._this_week(self.calendar) - self.week)

    def zoom(self, nearer: int) -> None:
        """1: fewer weeks in view; -1: more of them."""
        at = ZOOMS.index(self._view.count) - nearer
        if 0 <= at < len(ZOOMS):
            self._view = self._view.zoomed(ZOOMS[at], self.week)
            self._show_view()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _this_week(self, calendar: PairingCalendar) -> int:
        return (monday_of(calendar.on) - calendar.first) // _WEEK

    def _go_to(self, week: int) -> None:
        self.week = week
        self._view = self._view.with_week(week)

    def _show_rows(self, shown: Sequence[Shown]) -> None:
        chosen = self.chosen.animal if self.chosen else None
        self.model.show_rows(shown)
        self.none.setVisible(not shown)
        animals = [row.animal for row, _ in shown]
        self.list.choose(animals.index(chosen) if chosen in animals else 0)
        self._show_view()

    def _put_in(self, row: CalendarRow, face: CalendarFace, on: date) -> None:
        """On her row, or on a new one in its place among the others."""
        animals = [each.animal for each in self.model.rows]
        if row.animal in animals:
            self.model.show_face(animals.index(row.animal), face)
            return
        orders = [order_of(each, on) for each in self.model.rows]
        self.model.put_in(bisect(orders, order_of(row, on)), (row, face))
        self.none.hide()
        if self.chosen is None:
            self.list.choose(0)
        self.rows_came.emit()

    def _show_view(self) -> None:
        """Head, rows and foot over the same weeks."""
        calendar = self.calendar
        if calendar is None:
            return
        view = InView(
            ground=ground_of(calendar),
            monday=calendar.weeks[self._view.first].monday,
            weeks=self._view.count,
            chosen=self.monday,
        )
        spare = float(self.list.verticalScrollBar().sizeHint().width())
        last = self._view.first + self._view.count - 1
        words = in_view_words(calendar, view.monday, calendar.weeks[last].monday, self.monday)
        self.head.show_view(view, spare, words)
        self.list.painter.view = view
        self.list.setAccessibleDescription(f"{words} {weeks_told(calendar)}")
        self.list.viewport().update()
        self.foot.show_weeks(view, week_faces(calendar), spare, weeks_told(calendar))
        self._read_out()

    def _read_out(self) -> None:
        row, calendar = self.chosen, self.calendar
        if row is not None and calendar is not None:
            told = read_out(row, self.forecasts.get(row.animal), calendar, self.monday)
            self.beside.show_paragraphs(told)
        else:
            self.beside.show_paragraphs(())

    def _said(self) -> str:
        """What is read out, less the gates and the incubator, which a step does not change."""
        row, calendar = self.chosen, self.calendar
        if row is None or calendar is None:
            return ""
        told = read_out(row, None, calendar, self.monday)
        here = " ".join(part.words for part in told[1:-2])
        return f"{week_words(self.monday, calendar.on)}: {here}"

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        self._frame = QHBoxLayout()
        left = QVBoxLayout()
        left.setSpacing(0)
        for widget in (self.head, self.none):
            left.addWidget(widget)
        left.addWidget(self.list, 1)
        left.addWidget(self.foot)
        self._frame.addLayout(left, 11)
        self._frame.addWidget(self.beside, 4)
        column.addLayout(self._frame, 1)
        column.addWidget(self.legend)
        self.none.setText(_NOBODY)
        self.none.hide()

    def _listen(self) -> None:
        self.list.week_asked.connect(self.go_by)
        self.list.this_week_asked.connect(self.go_home)
        self.list.zoom_asked.connect(self.zoom)
        self.list.selectionModel().currentChanged.connect(lambda *_: self._read_out())
        self._look.changed.connect(self._fit)

    def _fit(self) -> None:
        margin = round(self._look.u(4.8, 2.3))
        self._frame.setContentsMargins(margin, 0, margin, 0)
        self._frame.setSpacing(round(self._look.u(4, 2)))
        self.legend.updateGeometry()
        self._show_view()
