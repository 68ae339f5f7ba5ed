"""Where everything of a time-line lies: the axis, the line of the rack, the tubs of a page."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta

from PySide6.QtCore import QRectF

from keeper.actions.time_line import Bar, RackTime
from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.lettering import advance, cap_height
from keeper.desktop.widgets.life_axis import TimeAxis
from keeper.desktop.widgets.life_view import LifeView
from keeper.desktop.widgets.time_line_layout import (
    Line,
    LinePage,
    LineSizes,
    exact_page,
    line_page,
)
from keeper.language import tr

ONE_DAY = timedelta(days=1)
LEAST_BAR_PX = 3.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Shown:
    """What is painted. first: the first tub of the page before; tub: the one that is chosen.

    animal: whose stays stand out; mates: those who ever shared a tub with it here. exact: on
    paper, where a page begins with *first* itself.
    """

    told: RackTime
    view: LifeView
    tub: int
    animal: int | None = None
    mates: frozenset[int] = frozenset()
    first: int = 0
    exact: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class TimeSheet:
    """Where everything lies on a picture of a size."""

    axis: TimeAxis
    flag: QRectF
    dates: QRectF
    rack: QRectF
    tubs: QRectF
    foot: float
    page: LinePage

    def line_rect(self, line: Line) -> QRectF:
        top = self.tubs.top() + line.top
        return QRectF(self.axis.left, top, self.axis.right - self.axis.left, line.height)

    def bar_rect(self, line: Line, bar: Bar, today: date) -> QRectF:
        """Where a stay is drawn, cut at the ends of the axis."""
        axis = self.axis
        left = max(axis.left, axis.x(bar.stay.since))
        until = today + ONE_DAY if bar.stay.until is None else bar.stay.until
        right = max(left + LEAST_BAR_PX, min(axis.right, axis.x(until)))
        top = self.tubs.top() + line.top + bar.lane * line.lane_high
        return QRectF(left, top + 0.5, right - left, line.lane_high - 1.0)


def label_px(look: Look, told: RackTime) -> float:
    """Room for the widest name of a tub at the left."""
    font = look.font(Use.TABLE)
    names = [tub.name for tub in told.tubs if tub.row] or ["A10·10"]
    others = [tub.name for tub in told.tubs if not tub.row]
    wide = max(advance(font, name) for name in names)
    wide = max([wide, *(min(advance(font, name), look.u(34, 26)) for name in others)])
    return max(wide, advance(look.font(Use.TABLE_STRONG), rack_words(told))) + look.u(3, 2.2)


def time_sheet(
    look: Look, shown: Shown, width: float, height: float, label: float | None = None
) -> TimeSheet:
    """Flag and dates on top, the line of the rack, then as many tubs as have room.

    label: ``label_px`` where it is known, for it asks for the width of every name.
    """
    margin = look.u(7, 3.5)
    left = margin + (label_px(look, shown.told) if label is None else label)
    right = max(left + 10.0, width - look.u(2, 1.4))
    view = shown.view
    axis = TimeAxis(first=view.first, last=view.last + ONE_DAY, left=left, right=right)
    flag = QRectF(left, 0, right - left, 0.0 if shown.exact else look.u(6, 5))
    dates = QRectF(left, flag.bottom(), right - left, look.u(10.4, 8.2))
    rack = QRectF(left, dates.bottom() + look.u(0.8, 0.5), right - left, look.u(5.6, 4.8))
    top = rack.bottom() + look.u(1.6, 1)
    foot = look.u(5.4, 4.4)
    tubs = QRectF(left, top, right - left, max(look.u(6), height - top - foot))
    days = (view.first, view.last)
    if shown.exact:
        page = exact_page(shown.told, days, tubs.height(), line_sizes(look), shown.first)
    else:
        at = (shown.first, shown.tub)
        page = line_page(shown.told, days, tubs.height(), line_sizes(look), at)
    return TimeSheet(axis=axis, flag=flag, dates=dates, rack=rack, tubs=tubs, foot=foot, page=page)


def used_height(sheet: TimeSheet) -> float:
    """Down to the foot of the last tub of the page, with room for the line beneath."""
    return sheet.tubs.top() + used_by(sheet.page) + sheet.foot


def line_sizes(look: Look) -> LineSizes:
    """A name must have room in the lowest lane."""
    least = cap_height(look.font(Use.TABLE)) + look.u(1.7, 1.4)
    return LineSizes(
        most=look.u(9, 7), least=least, tub_air=look.u(0.3, 0.2), row_air=look.u(1.8, 1.2)
    )


def rack_words(told: RackTime) -> str:
    """The line of the whole rack."""
    return tr("rack {rack}", rack=told.letter) if told.letter else tr("the room")


def used_by(page: LinePage) -> float:
    """Height down to the foot of the last tub."""
    return page.lines[-1].top + page.lines[-1].height if page.lines else 0.0
