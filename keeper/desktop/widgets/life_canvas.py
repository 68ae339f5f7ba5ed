"""Where the parts of a life strip lie, and what every painter of a part is given."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from keeper.actions.animal_page import AnimalPage
from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.lettering import CENTRE, LEFT, RIGHT, advance, cap_height, set_line
from keeper.desktop.widgets.life_axis import TimeAxis

LABEL_LEFT_UNITS = (7.0, 3.5)
AXIS_LEFT_UNITS = (33.0, 24.0)
AXIS_RIGHT_UNITS = (15.6, 14.6)
FLAG_UNITS = (6.0, 5.0)


@dataclass(frozen=True, slots=True, kw_only=True)
class LifeLayout:
    """The parts of a life strip from top to bottom, all on the same axis."""

    flag: QRectF
    plot: QRectF
    dates: QRectF
    meals: QRectF
    not_eaten: QRectF
    shed: QRectF
    heat: QRectF
    place: QRectF
    notes: QRectF
    breeding: QRectF

    @property
    def lanes(self) -> tuple[QRectF, ...]:
        return (
            self.meals,
            self.not_eaten,
            self.shed,
            self.heat,
            self.place,
            self.notes,
            self.breeding,
        )


_LANE_UNITS = {
    "meals": (19.5, 11.5),
    "not_eaten": (9.0, 6.0),
    "shed": (9.5, 6.2),
    "heat": (18.0, 11.0),
    "place": (9.5, 6.0),
    "notes": (7.0, 5.2),
    "breeding": (7.5, 5.6),
}
_GAP_UNITS = (0.8, 0.4)
_DATES_UNITS = (12.0, 8.4)
_FOOT_UNITS = (1.6, 0.8)


def life_layout(width: float, height: float, look: Look) -> LifeLayout:
    """Lanes have their height; the plot takes what is left."""
    left, right = look.u(*AXIS_LEFT_UNITS), width - look.u(*AXIS_RIGHT_UNITS)
    rects: dict[str, QRectF] = {}
    bottom = height - look.u(*_FOOT_UNITS)
    for name, units in reversed(_LANE_UNITS.items()):
        high = look.u(*units)
        rects[name] = QRectF(left, bottom - high, right - left, high)
        bottom -= high + look.u(*_GAP_UNITS)
    dates = QRectF(left, bottom - look.u(*_DATES_UNITS), right - left, look.u(*_DATES_UNITS))
    flag = QRectF(left, 0, right - left, look.u(*FLAG_UNITS))
    top = flag.bottom() + look.u(0.6, 0.4)
    plot = QRectF(left, top, right - left, max(look.u(12), dates.top() - top))
    return LifeLayout(flag=flag, plot=plot, dates=dates, **rects)


class Canvas:
    """A painter with the look, the axis and the layout, and what all lanes do."""

    def __init__(
        self, painter: QPainter, look: Look, axis: TimeAxis, layout: LifeLayout, page: AnimalPage
    ) -> None:
        self.painter = painter
        self.look = look
        self.axis = axis
        self.layout = layout
        self.page = page

    @property
    def today_x(self) -> float:
        """Where today lies, kept within the axis."""
        x = self.axis.x(self.page.today)
        return min(max(x, self.axis.left), self.axis.right)

    def pen(self, ink: str, width: float = 1.0, style: Qt.PenStyle = Qt.PenStyle.SolidLine) -> QPen:
        """A flat pen in the colour of a role; dashes are 4 on 4 px as the house draws them."""
        pen = QPen(self.look.colour(ink), width, style, Qt.PenCapStyle.FlatCap)
        if style is Qt.PenStyle.CustomDashLine:
            pen.setDashPattern([4 / width, 3 / width])
        return pen

    def line(self, ink: str, width: float, *ends: float) -> None:
        """A line from x1, y1 to x2, y2."""
        self.painter.setPen(self.pen(ink, width))
        self.painter.drawLine(QLineF(*ends))

    def words(
        self,
        x: float,
        base: float,
        text: str,
        *,
        use: Use = Use.TABLE,
        ink: str = "ink2",
        align: Qt.AlignmentFlag = LEFT,
        room: float | None = None,
        paper: str = "",
    ) -> float:
        """Text on a baseline, knocked out of what lies beneath where *paper* is a role."""
        font = self.look.font(use)
        if paper:
            self.clear(x, base, text, use, align, paper)
        return set_line(
            self.painter,
            QPointF(x, base),
            text,
            font,
            self.look.colour(ink),
            align=align,
            room=room,
        )

    def clear(
        self, x: float, base: float, text: str, use: Use, align: Qt.AlignmentFlag, paper: str
    ) -> None:
        """Lay *paper* under where *text* will stand."""
        font = self.look.font(use)
        wide, high, pad = advance(font, text), cap_height(font), self.look.u(0.7)
        left = x - {LEFT: 0.0, CENTRE: wide / 2, RIGHT: wide}[align]
        rect = QRectF(left - pad, base - high - pad, wide + 2 * pad, high + 2 * pad)
        self.painter.fillRect(rect, self.look.colour(paper))

    def wide(self, text: str, use: Use = Use.TABLE) -> float:
        return advance(self.look.font(use), text)

    def middle(self, rect: QRectF, use: Use = Use.TABLE) -> float:
        """The baseline that centres capitals in *rect*."""
        return rect.center().y() + cap_height(self.look.font(use)) / 2

    def lane(self, rect: QRectF, name: str, unit: str = "", top: bool = False) -> None:
        """The base line of a lane and its name at the left."""
        self.line("line", 1.1, rect.left(), rect.bottom(), rect.right(), rect.bottom())
        left, strong = self.look.u(*LABEL_LEFT_UNITS), self.look.font(Use.TABLE_STRONG)
        base = self.middle(rect, Use.TABLE_STRONG)
        if unit or top:
            base = rect.top() + cap_height(strong) + self.look.u(1.4, 0.6)
        self.words(left, base, name, use=Use.TABLE_STRONG, ink="ink")
        if unit:
            self.words(left, base + self.look.u(4.6, 3.9), unit, ink="ink3")


class Free:
    """Which stretches of a lane no mark or word has taken yet."""

    def __init__(self, left: float, right: float) -> None:
        self._left, self._right = left, right
        self._taken: list[tuple[float, float]] = []

    def take(self, left: float, right: float) -> None:
        self._taken.append((left, right))

    def has(self, left: float, right: float) -> bool:
        """Whether nothing lies between the two and both lie in the lane."""
        inside = self._left <= left and right <= self._right
        return inside and all(right <= one or left >= other for one, other in self._taken)

    def claim(self, left: float, right: float) -> bool:
        """Take the stretch if it is free."""
        if not self.has(left, right):
            return False
        self.take(left, right)
        return True
