"""The pairing calendar on the page: its head, its rows, its foot and what is read out beside it.

Arrows walk: up and down the females, to the sides the weeks. The frame round the chosen week is
laid over rows that are kept as pictures.
"""

from __future__ import annotations

from collections.abc import Hashable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from PySide6.QtCore import (
    QAbstractItemModel,
    QLineF,
    QPointF,
    QRectF,
    Qt,
    Signal,
)
from PySide6.QtGui import QKeyEvent, QPainter, QPen
from PySide6.QtWidgets import QStyleOptionViewItem, QWidget

from keeper.desktop.look import Look
from keeper.desktop.widgets.clutch_panel import ClutchPanel, Paragraph
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.kept_picture import KeptPicture
from keeper.desktop.widgets.pairing_frame import (
    WeekFace,
    foot_height,
    head_height,
    paint_calendar_foot,
    paint_calendar_head,
)
from keeper.desktop.widgets.pairing_row import CalendarFace, Ground, paint_row
from keeper.desktop.widgets.pairing_shape import CalendarColumns, row_height
from keeper.desktop.widgets.row_list import Index, RowList, RowPainter
from keeper.language import tr

_ROWS_KEPT = 40
_WEEK = timedelta(days=7)


@dataclass(frozen=True, slots=True, kw_only=True)
class InView:
    """What head, rows and foot share: weeks from *monday* on, and the Monday that is chosen."""

    ground: Ground
    monday: date
    weeks: int
    chosen: date

    def columns(self, look: Look, width: float) -> CalendarColumns:
        return CalendarColumns.of(look, width, self.monday, self.weeks)

    def frame(self, columns: CalendarColumns) -> tuple[float, float]:
        """Left and right of the chosen week."""
        return columns.axis.x(self.chosen), columns.axis.x(self.chosen + _WEEK)


class CalendarHead(Drawn):
    """Months and Mondays over the rows."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._view: InView | None = None
        self._spare = 0.0
        self._kept = KeptPicture()
        self.lie_on("ground")

    def show_view(self, view: InView, spare: float, words: str) -> None:
        """*spare* px at the right stay free; *words*: which weeks are in view."""
        self._view, self._spare = view, spare
        self.tell(words)

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(150, 110), head_height(self.look)

    def paint(self, painter: QPainter) -> None:
        if (view := self._view) is not None:
            about = (view, self._spare)
            self._kept.lay(
                painter, self.size(), self.look, about, lambda p: self._draw(p, view), "ground"
            )

    def _draw(self, painter: QPainter, view: InView) -> None:
        rect = QRectF(self.rect()).adjusted(0, 0, -self._spare, 0)
        columns = view.columns(self.look, rect.width())
        paint_calendar_head(painter, rect, columns, view.ground, self.look)
        left, right = view.frame(columns)
        painter.setPen(QPen(self.look.colour("point"), 1.8))
        top, foot = rect.bottom() - self.look.u(6, 5), rect.bottom()
        painter.drawPolyline(_gate(left, right, top, foot))


class CalendarList(RowList):
    """Shows a model whose ``FACE_ROLE`` gives a ``CalendarFace``.

    Signals: ``week_asked`` with weeks to go on by; ``this_week_asked``; ``zoom_asked`` with 1 for
    fewer weeks and -1 for more.
    """

    week_asked = Signal(int)
    this_week_asked = Signal()
    zoom_asked = Signal(int)

    def __init__(
        self, look: Look, model: QAbstractItemModel, parent: QWidget | None = None
    ) -> None:
        super().__init__(look, model, row_height, parent)
        self.painter = CalendarPainter(self, _ROWS_KEPT)
        self.setItemDelegate(self.painter)
        self.setObjectName("pairing calendar")
        self.setAccessibleName(tr("pairing calendar, what comes next first"))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Weeks and zoom; all else as every list takes it."""
        plain = not event.modifiers() & Qt.KeyboardModifier.ControlModifier
        match event.key():
            case Qt.Key.Key_Left if plain:
                self.week_asked.emit(-1)
            case Qt.Key.Key_Right if plain:
                self.week_asked.emit(1)
            case Qt.Key.Key_Space if plain:
                self.this_week_asked.emit()
            case Qt.Key.Key_Plus | Qt.Key.Key_Equal if plain:
                self.zoom_asked.emit(1)
            case Qt.Key.Key_Minus if plain:
                self.zoom_asked.emit(-1)
            case _:
                super().keyPressEvent(event)


class CalendarPainter(RowPainter):
    """Paints faces in ``view``; the frame of the chosen week lies over them."""

    view: InView | None = None

    def beside(self) -> Hashable:
        view = self.view
        return None if view is None else (view.ground, view.monday, view.weeks)

    def draw(
        self, painter: QPainter, row: QRectF, face: CalendarFace, *, here: bool, held: bool
    ) -> None:
        assert self.view is not None
        look, columns = self.look, self.view.columns(self.look, row.width())
        painter.save()
        paint_row(painter, row, face, columns, self.view.ground, look, here=here)
        painter.restore()

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        super().paint(painter, option, index)
        if (view := self.view) is None:
            return
        left, right = view.frame(view.columns(self.look, option.rect.width()))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(self.look.colour("point"), 1.8))
        top, foot = option.rect.top(), option.rect.bottom() + 1
        painter.drawLines([QLineF(x, top, x, foot) for x in (left, right)])


class CalendarFoot(Drawn):
    """How many clutches lie in the incubator, week by week."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._view: InView | None = None
        self._weeks: tuple[WeekFace, ...] = ()
        self._spare = 0.0
        self._kept = KeptPicture()
        self.lie_on("ground")

    def show_weeks(self, view: InView, weeks: Sequence[WeekFace], spare: float, words: str) -> None:
        """As the head; *weeks*: all of the calendar, *words*: their figures."""
        self._view, self._weeks, self._spare = view, tuple(weeks), spare
        self.tell(words)

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(150, 110), foot_height(self.look)

    def paint(self, painter: QPainter) -> None:
        if (view := self._view) is not None:
            about = (view, self._weeks, self._spare)
            self._kept.lay(
                painter, self.size(), self.look, about, lambda p: self._draw(p, view), "ground"
            )

    def _draw(self, painter: QPainter, view: InView) -> None:
        rect = QRectF(self.rect()).adjusted(0, 0, -self._spare, 0)
        columns = view.columns(self.look, rect.width())
        paint_calendar_foot(painter, rect, self._weeks, columns, view.ground, self.look)
        left, right = view.frame(columns)
        painter.setPen(QPen(self.look.colour("point"), 1.8))
        painter.drawPolyline(_gate(left, right, rect.bottom() - 1, rect.top()))


class CalendarReadOut(ClutchPanel):
    """The chosen female and week in whole sentences, kept as a picture."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._kept = KeptPicture()
        self._shown: tuple[Paragraph, ...] = ()
        self.lie_on("ground")
        self.setObjectName("pairing calendar read out")

    def show_paragraphs(self, paragraphs: Sequence[Paragraph]) -> None:
        self._shown = tuple(paragraphs)
        super().show_paragraphs(paragraphs)

    def paint(self, painter: QPainter) -> None:
        self._kept.lay(painter, self.size(), self.look, self._shown, super().paint, "ground")


def _gate(left: float, right: float, closed: float, end: float) -> list[QPointF]:
    """Three sides of a frame, closed at *closed*."""
    return [
        QPointF(left, end),
        QPointF(left, closed),
        QPointF(right, closed),
        QPointF(right, end),
    ]
