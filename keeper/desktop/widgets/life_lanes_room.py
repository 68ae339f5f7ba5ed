"""The lanes of where she stood: how warm it was, which tub, and with whom."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import groupby

from PySide6.QtCore import QLineF, QPointF, QRectF
from PySide6.QtGui import QPainterPath

from keeper.actions.day_of_life import HEAT_SPEAKS_DAYS
from keeper.actions.life_places import HeatDay, Mate, Stay
from keeper.desktop.type import Use
from keeper.desktop.widgets.lettering import CENTRE, RIGHT, cap_height
from keeper.desktop.widgets.life_canvas import Canvas
from keeper.desktop.widgets.patterns import rising_lines
from keeper.husbandry.animal import IN_THE_ROOM
from keeper.language import tr
from keeper.reports.figures import degrees, heat_unit
from keeper.reports.words import word

_COLUMN_PX = 2.0
Of = Callable[[HeatDay], float | None]


@dataclass(frozen=True, slots=True, kw_only=True)
class HeatScale:
    """Degrees to a height."""

    low_c: float
    high_c: float
    top: float
    bottom: float

    def y(self, temp_c: float) -> float:
        share = (temp_c - self.low_c) / (self.high_c - self.low_c)
        return self.bottom - share * (self.bottom - self.top)


def paint_heat(canvas: Canvas) -> None:
    """Hot end above, night low below, what is wanted behind; a cold dip with its figure."""
    lane, look = canvas.layout.heat, canvas.look
    canvas.lane(lane, tr("heat"), heat_unit(), top=True)
    days = [heat for heat in canvas.page.beside.heat if canvas.axis.shows(heat.day)]
    if not days:
        words = tr("not read")
        canvas.words(lane.left() + look.u(3, 2), canvas.middle(lane), words, ink="ink3")
        return
    scale = _scale(canvas, lane, days)
    _paint_wanted(canvas, scale)
    _paint_degrees(canvas, lane, scale)
    thin = list(_thinned(canvas, days))
    _paint_between(canvas, thin, scale)
    canvas.painter.strokePath(_path(canvas, thin, scale, _hot), canvas.pen("ink", 1.8))
    canvas.painter.strokePath(_path(canvas, thin, scale, _night), canvas.pen("ink2", 1.3))
    _paint_dip(canvas, lane, days, scale)
    _paint_heat_names(canvas, lane)


def paint_place(canvas: Canvas) -> None:
    """A tick where she moved in, the place beside it, hatched while she was not alone."""
    lane = canvas.layout.place
    canvas.lane(lane, tr("place"))
    beside = canvas.page.beside
    if not beside.stays:
        words = tr("no place in the book")
        canvas.words(lane.left() + canvas.look.u(3, 2), canvas.middle(lane), words, ink="ink3")
    for mate in beside.mates:
        _paint_mate(canvas, lane, mate)
    for change in beside.stock:
        if change.status not in IN_THE_ROOM and canvas.axis.shows(change.happened.day):
            _paint_left(canvas, lane, canvas.axis.x(change.happened.day), word(change.status))
    for stay in beside.stays:
        last = (stay.until or canvas.page.today) - timedelta(days=1 if stay.until else 0)
        if canvas.axis.shows(stay.since, last):
            _paint_stay(canvas, lane, stay, beside.mates)


def _hot(heat: HeatDay) -> float | None:
    return heat.hot_c


def _night(heat: HeatDay) -> float | None:
    return heat.night_c


def _scale(canvas: Canvas, lane: QRectF, days: Sequence[HeatDay]) -> HeatScale:
    """Holds what was read and what is wanted."""
    wanted = canvas.page.profile.heat
    read = [t for heat in days for t in (heat.hot_c, heat.night_c) if t is not None]
    low = min([wanted.night_low_c.value, *read])
    high = max([wanted.hot_high_c.value, *read])
    air = canvas.look.u(1.6, 0.8)
    return HeatScale(
        low_c=math.floor(low) - 1.0,
        high_c=math.ceil(high) + 0.5,
        top=lane.top() + air,
        bottom=lane.bottom() - air / 2,
    )


def _paint_wanted(canvas: Canvas, scale: HeatScale) -> None:
    wanted, axis = canvas.page.profile.heat, canvas.axis
    right = canvas.today_x
    for low, high in (
        (wanted.hot_low_c, wanted.hot_high_c),
        (wanted.night_low_c, wanted.night_high_c),
    ):
        top, bottom = scale.y(high.value), scale.y(low.value)
        rect = QRectF(axis.left, top, right - axis.left, bottom - top)
        canvas.painter.fillRect(rect, canvas.look.colour("band2"))


def _paint_degrees(canvas: Canvas, lane: QRectF, scale: HeatScale) -> None:
    half, tick = cap_height(canvas.look.font(Use.TABLE)) / 2, canvas.look.u(1.2)
    step = 5 if scale.high_c - scale.low_c < 12 else 10
    first = math.ceil(scale.low_c / step) * step
    for level in range(first, math.floor(scale.high_c) + 1, step):
        y = scale.y(level)
        canvas.line("line", 1.1, lane.left() - tick, y, lane.left(), y)
        canvas.words(lane.left() - 1.7 * tick, y + half, degrees(level), align=RIGHT)


def _thinned(canvas: Canvas, days: Sequence[HeatDay]) -> Iterator[HeatDay]:
    """One point a column at most: of each the coldest, because a dip must not vanish."""
    for _, column in groupby(days, key=lambda heat: int(canvas.axis.x(heat.day) / _COLUMN_PX)):
        first, *more = column
        yield _coldest(first, more) if more else first


def _coldest(first: HeatDay, more: Sequence[HeatDay]) -> HeatDay:
    """The lowest of each figure, on the first of the days."""
    days = (first, *more)
    hot = [heat.hot_c for heat in days if heat.hot_c is not None]
    night = [heat.night_c for heat in days if heat.night_c is not None]
    return HeatDay(
        day=first.day,
        hot_c=min(hot) if hot else None,
        night_c=min(night) if night else None,
    )


def _path(canvas: Canvas, days: Sequence[HeatDay], scale: HeatScale, of: Of) -> QPainterPath:
    """A line that breaks where nothing was read."""
    path = QPainterPath()
    before: date | None = None
    most = timedelta(days=1 + HEAT_SPEAKS_DAYS.value + math.ceil(_COLUMN_PX / canvas.axis.px_a_day))
    for heat in days:
        value = of(heat)
        if value is None:
            continue
        place = QPointF(canvas.axis.x(heat.day), scale.y(value))
        if before is None or heat.day - before > most:
            path.moveTo(place)
        path.lineTo(place)
        before = heat.day
    return path


def _paint_between(canvas: Canvas, days: Sequence[HeatDay], scale: HeatScale) -> None:
    """Upright hairlines from the night low to the hot end."""
    every = canvas.look.u(1.2)
    lines: list[QLineF] = []
    next_x = canvas.axis.left
    for heat in days:
        x = canvas.axis.x(heat.day)
        if heat.hot_c is not None and heat.night_c is not None and x >= next_x:
            lines.append(QLineF(x, scale.y(heat.hot_c), x, scale.y(heat.night_c)))
            next_x = x + every
    canvas.painter.setPen(canvas.pen("line", 0.9))
    canvas.painter.drawLines(lines)


def _paint_dip(canvas: Canvas, lane: QRectF, days: Sequence[HeatDay], scale: HeatScale) -> None:
    """The coldest hot end in view, where it was too cold to digest."""
    limit_c = canvas.page.profile.heat.digest_hot_low_c.value
    cold = [(heat.hot_c, heat.day) for heat in days if heat.hot_c is not None]
    low, on = min(cold, default=(limit_c, canvas.page.today))
    if low >= limit_c:
        return
    words = degrees(low)
    half, wide = 0.5 * canvas.wide(words, Use.BODY_STRONG), canvas.look.u(2)
    x = canvas.axis.x(on)
    left = x - half - wide if x - 2 * half - wide > lane.left() else x + half + wide
    base = min(scale.y(low) + canvas.look.u(1.6, 1.3), lane.bottom() - canvas.look.u(0.8))
    canvas.words(left, base, words, use=Use.BODY_STRONG, ink="ink", align=CENTRE, paper="ground")


def _paint_heat_names(canvas: Canvas, lane: QRectF) -> None:
    """Which line is which, where it ends."""
    look, wanted = canvas.look, canvas.page.profile.heat
    low, high = degrees(wanted.hot_low_c.value), degrees(wanted.hot_high_c.value)
    names = (tr("hot end, wanted {low}–{high}", low=low, high=high), tr("night low"))
    left = canvas.today_x + look.u(2.5, 2)
    step = 0.42 * lane.height()
    base = lane.top() + cap_height(look.font(Use.TABLE)) + look.u(2, 1)
    if left + canvas.wide(names[0]) > canvas.axis.right:
        return
    for n, name in enumerate(names):
        canvas.words(left, base + n * step, name)


def _paint_mate(canvas: Canvas, lane: QRectF, mate: Mate) -> None:
    axis = canvas.axis
    left = max(axis.left, axis.x(mate.since))
    right = min(axis.right, axis.x(mate.until or canvas.page.today))
    if right <= left:
        return
    high = canvas.look.u(1.7, 1.1)
    rect = QRectF(left, lane.bottom() - high, right - left, high)
    canvas.painter.save()
    canvas.painter.setClipRect(rect)
    canvas.painter.setPen(canvas.pen("ink2", 1.1))
    canvas.painter.drawLines(list(rising_lines(rect, canvas.look.u(1.1))))
    canvas.painter.restore()


def _paint_left(canvas: Canvas, lane: QRectF, x: float, words: str) -> None:
    """She left the room: sold, lost, died, on loan."""
    canvas.line("ink", 2.0, x, lane.top() + 0.34 * lane.height(), x, lane.bottom())
    base = lane.bottom() - canvas.look.u(2.7, 1.7)
    canvas.words(x + canvas.look.u(1.5, 1.2), base, words)


def _paint_stay(canvas: Canvas, lane: QRectF, stay: Stay, mates: Sequence[Mate]) -> None:
    axis, look = canvas.axis, canvas.look
    left = max(axis.left, axis.x(stay.since))
    right = min(axis.right, axis.x(stay.until) if stay.until else axis.right)
    if axis.shows(stay.since):
        canvas.line("ink", 2.0, left, lane.top() + 0.34 * lane.height(), left, lane.bottom())
    names = _with(stay, mates)
    place = left + look.u(1.5, 1.2)
    room = right - place - look.u(0.5)
    base = lane.bottom() - look.u(2.7, 1.7)
    for words in (_shared(stay.place, names), stay.place):
        if canvas.wide(words) <= room:
            canvas.words(place, base, words)
            return


def _shared(place: str, names: str) -> str:
    return tr("{place} with {names}", place=place, names=names) if names else place


def _with(stay: Stay, mates: Sequence[Mate]) -> str:
    """Who shared the tub during the stay."""
    names = [
        mate.name
        for mate in mates
        if (mate.until is None or stay.since < mate.until)
        and (stay.until is None or mate.since < stay.until)
    ]
    return ", ".join(dict.fromkeys(names))
