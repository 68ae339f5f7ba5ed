"""The neighbour time-line: the tubs of one rack, days across, each stay of an animal a bar.

The picture is painted once for each rack, span and animal and kept; the cursor moves over it.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date

from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QMouseEvent, QPainter
from PySide6.QtWidgets import QSizePolicy, QWidget

from keeper.actions.time_line import Bar, MarkKind, RackTime, TubTime
from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.kept_picture import KeptPicture
from keeper.desktop.widgets.lettering import CENTRE, advance, middle_baseline, set_line
from keeper.desktop.widgets.time_line_faces import MARK_WORDS, paint_mark
from keeper.desktop.widgets.time_line_paint import boxes_in_view, outline_pen, paint_time
from keeper.desktop.widgets.time_line_sheet import Shown, TimeSheet, label_px, time_sheet
from keeper.language import tr
from keeper.reports.figures import counted, day

_tubs, _stays = counted("tub", "tubs"), counted("stay", "stays")


class TimeLine(Drawn):
    """Shows a rack; ``asked`` carries the index of a tub pressed, its animal or None, and a day."""

    asked = Signal(object)

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._shown: Shown | None = None
        self._told_of: RackTime | None = None
        self._picture = KeptPicture()
        self._sheet: tuple[tuple[object, ...], TimeSheet] | None = None
        self._label: tuple[tuple[object, ...], float] = ((), 0.0)
        self._letters_of: tuple[object, ...] = ()
        self._letters: list[tuple[QRectF, MarkKind]] = []
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.lie_on("ground")

    def show_time(self, shown: Shown) -> None:
        """Show *shown*; the page moves no further than the chosen tub asks."""
        before = self._told_of
        same = before is not None and _names(before) == _names(shown.told)
        first = self._shown.first if self._shown is not None and same else 0
        self._shown = replace(shown, first=first)
        if self._told_of is not shown.told:
            self._told_of = shown.told
            self.tell("\n".join(_in_words(shown.told)))
        self._shown = replace(self._shown, first=self.sheet().page.first)
        self.update()

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(200), self.look.u(90, 66)

    def sheet(self) -> TimeSheet:
        """Where everything lies at the present size. RuntimeError before anything is shown."""
        if self._shown is None:
            raise RuntimeError("no rack is shown yet")
        asked = (self._shown, self.size(), self.look.u(1.0), self.look.small)
        if self._sheet is None or self._sheet[0] != asked:
            wide, high = self.width(), self.height()
            label = self._label_px(self._shown.told)
            self._sheet = asked, time_sheet(self.look, self._shown, wide, high, label)
        return self._sheet[1]

    def paint(self, painter: QPainter) -> None:
        shown = self._shown
        if shown is None:
            return
        sheet = self.sheet()
        self._place_letters(shown, sheet)
        about = (
            shown.told,
            shown.view.first,
            shown.view.last,
            shown.animal,
            sheet.page.first,
        )
        self._picture.lay(
            painter,
            self.size(),
            self.look,
            about,
            lambda made: paint_time(made, self.look, shown, sheet),
            paper="ground",
        )
        self._paint_cursor(painter, shown, sheet)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if self._shown is None or not event.buttons() & Qt.MouseButton.LeftButton:
            return
        sheet, at = self.sheet(), event.position()
        on = sheet.axis.day_at(at.x() - sheet.axis.px_a_day / 2)
        on = min(on, self._shown.told.on)
        for line in sheet.page.lines:
            rect = sheet.line_rect(line)
            if rect.top() <= at.y() <= rect.bottom():
                lane = int((at.y() - rect.top()) / line.lane_high)
                here = self._shown.told.tubs[line.tub].at(on)
                animal = next((bar.animal for bar in here if bar.lane == lane), None)
                self.asked.emit((line.tub, animal, on))

    def _paint_cursor(self, painter: QPainter, shown: Shown, sheet: TimeSheet) -> None:
        """The flag with its day, a line through every tub, a frame round the chosen stay."""
        look, axis = self.look, sheet.axis
        x = axis.x(shown.view.cursor) + axis.px_a_day / 2
        line = sheet.page.of(shown.tub)
        bottom = sheet.tubs.bottom() if line is None else sheet.line_rect(line).bottom()
        lines = sheet.page.lines
        bottom = sheet.line_rect(lines[-1]).bottom() if lines else bottom
        painter.fillRect(QRectF(x - 1, sheet.flag.top(), 2, bottom), look.colour("point"))
        for box, kind in self._letters:
            if box.left() < x + 1 and box.right() > x - 1:  # its letter stays to be read
                paint_mark(painter, box, kind, look)
        self._paint_flag(painter, sheet, x, day(shown.view.cursor))
        if line is None:
            return
        rect = sheet.line_rect(line)
        beside = QRectF(0, rect.top(), look.u(1.6, 1.2), rect.height())
        painter.fillRect(beside, look.colour("point"))
        chosen = self._chosen_bar(shown, shown.told.tubs[line.tub])
        if chosen is not None:
            rect = sheet.bar_rect(line, chosen, shown.told.on)
        painter.setPen(outline_pen(look))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(rect.adjusted(-1, -1, 1, 1))

    def _label_px(self, told: RackTime) -> float:
        asked = (told.tubs, self.look.u(1.0), self.look.small)
        if asked != self._label[0]:
            self._label = asked, label_px(self.look, told)
        return self._label[1]

    def _place_letters(self, shown: Shown, sheet: TimeSheet) -> None:
        """Where the letters stand, placed anew where the picture is another."""
        view, look = shown.view, self.look
        asked = (shown.told, view.first, view.last, sheet.page.first, self.size(), look.u(1.0))
        if asked != self._letters_of:
            self._letters = list(boxes_in_view(look, shown, sheet))
            self._letters_of = asked

    def _paint_flag(self, painter: QPainter, sheet: TimeSheet, x: float, words: str) -> None:
        look, strong = self.look, self.look.font(Use.TABLE_STRONG)
        wide = advance(strong, words) + look.u(4, 3)
        left = min(max(x - wide / 2, 0.0), self.width() - wide)
        flag = QRectF(left, sheet.flag.top(), wide, sheet.flag.height())
        painter.fillRect(flag, look.colour("point"))
        place = QPointF(flag.center().x(), middle_baseline(flag, strong))
        set_line(painter, place, words, strong, look.colour("on_point"), align=CENTRE)

    def _chosen_bar(self, shown: Shown, tub: TubTime) -> Bar | None:
        here = tub.at(shown.view.cursor)
        return next((bar for bar in here if bar.animal == shown.animal), None)


def _names(told: RackTime) -> list[str]:
    return [tub.name for tub in told.tubs]


def _in_words(told: RackTime) -> Iterator[str]:
    """The whole rack as text: each tub with who was in it from when to when, then the marks."""
    count = sum(len(tub.bars) for tub in told.tubs)
    yield tr(
        "time-line of {rack} from {first} to {last}: {tubs}, {stays}",
        rack=tr("rack {rack}", rack=told.letter) if told.letter else tr("the room"),
        first=day(told.first),
        last=day(told.on),
        tubs=_tubs(len(told.tubs)),
        stays=_stays(count),
    )
    for tub in told.tubs:
        stays = "; ".join(_stay_words(bar) for bar in tub.bars) or tr("cannot tell")
        yield tr("{who}: {nights}", who=tub.name, nights=stays)
    for mark in told.marks:
        row = None if mark.animal is None else told.who.get(mark.animal)
        who = "" if row is None else row.called
        where = " ".join(part for part in (mark.tub, who) if part)
        yield " ".join(part for part in (day(mark.on), where, MARK_WORDS[mark.kind]) if part)


def _stay_words(bar: Bar) -> str:
    until: date | None = bar.stay.until
    since = day(bar.stay.since)
    if until is None:
        return tr("{name} since {since}", name=bar.name, since=since)
    return tr("{name} from {since} to {until}", name=bar.name, since=since, until=day(until))
