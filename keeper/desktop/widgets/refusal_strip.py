"""The last feed nights of every animal side by side, so that a bad row or a bad night shows."""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QFont, QPainter
from PySide6.QtWidgets import QSizePolicy, QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import CENTRE, LEFT, RIGHT, advance, set_line
from keeper.desktop.widgets.stamps import stamp_small
from keeper.desktop.widgets.strip_layout import Line, StripShape, StripSizes, strip_shape
from keeper.desktop.widgets.tile import TileState
from keeper.language import tr

_LEAST_PT = 7.0


@dataclass(frozen=True, slots=True, kw_only=True)
class StripLine:
    """An animal's nights, oldest first. total: its counted refusals among its offers."""

    label: str
    states: tuple[TileState | None, ...]
    total: str
    words: str


@dataclass(frozen=True, slots=True, kw_only=True)
class StripBlock:
    """A row of tubs. loud: so many refusals that its total is set strong."""

    name: str
    total: str
    lines: tuple[StripLine, ...]
    loud: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class StripPicture:
    """nights as days in short; totals of the whole house under them."""

    nights: tuple[str, ...]
    totals: tuple[str, ...]
    blocks: tuple[StripBlock, ...]
    words: str = ""


class RefusalStrip(Drawn):
    """Blocks in rack order, filled down columns, over the totals of the house."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._picture = StripPicture(nights=(), totals=(), blocks=())
        self._at: tuple[int, int] | None = None
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Expanding)
        self.lie_on("ground")

    def show_picture(self, picture: StripPicture) -> None:
        """Show *picture*; its words and every line are the text."""
        if picture is not self._picture:
            self._picture = picture
            lines = (line.words for block in picture.blocks for line in block.lines)
            self.tell("\n".join((picture.words, *lines)))

    def choose(self, at: tuple[int, int] | None) -> None:
        """Mark the animal at (block, line)."""
        if at != self._at:
            self._at = at
            self.update()

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(200), self.look.u(40, 30)

    def shape(self) -> StripShape:
        """Where everything lies at the present size."""
        margin = self.look.u(7, 3.5)
        area = QRectF(self.rect()).adjusted(margin, 0, -margin, -self._foot())
        counts = [len(block.lines) for block in self._picture.blocks]
        first = self._at[0] if self._at is not None else 0
        return strip_shape(counts, len(self._picture.nights), area, self._sizes(), first)

    def paint(self, painter: QPainter) -> None:
        shape, label = self.shape(), self._sizes().label
        for box in shape.columns:
            self._paint_nights(painter, box, shape, label)
        small = self._sized(Use.TABLE, shape.high)
        for line in shape.lines:
            if line.animal is None:
                self._paint_block(painter, line, shape)
            else:
                self._paint_line(painter, line, shape, label, small)
        self._paint_totals(painter, shape)

    def _sizes(self) -> StripSizes:
        look = self.look
        small = look.font(Use.TABLE)
        widest = tr("{refused} of {offered}", sense="a narrow column", refused="00", offered="00")
        return StripSizes(
            label=advance(small, "A10·10 Campion"),
            total=advance(small, widest) + look.u(1.5),
            widest=look.u(6.4, 5),
            tallest=look.u(5.2, 4.2),
            least=look.u(3.6, 3.5),
            head=look.u(6, 5),
            air=look.u(7, 4),
        )

    def _foot(self) -> float:
        return self.look.u(13, 10)

    def _paint_nights(
        self, painter: QPainter, box: QRectF, shape: StripShape, label: float
    ) -> None:
        """As many days at the head of a column as stand clear of each other, the last always."""
        font, count = self.look.font(Use.TABLE), len(self._picture.nights)
        font.setPointSizeF(0.85 * font.pointSizeF())
        widest = max((advance(font, night) for night in self._picture.nights), default=0.0)
        every = ceil((widest + self.look.u(1.5)) / shape.wide)
        left = box.left() + label
        for index, night in enumerate(self._picture.nights):
            if (count - 1 - index) % every == 0:
                at = QPointF(left + (index + 0.5) * shape.wide, box.top() + self.look.u(4, 3.4))
                set_line(painter, at, night, font, self.look.colour("ink3"), align=CENTRE)

    def _paint_block(self, painter: QPainter, line: Line, shape: StripShape) -> None:
        """The name of a row of tubs, and its total at the right."""
        look, block, room = self.look, self._picture.blocks[line.row], _room(line, shape)
        font = self._sized(Use.LINE_TITLE, 1.1 * shape.high)
        strong = self._sized(Use.LINE_TITLE if block.loud else Use.TABLE, shape.high)
        base = room.bottom() - 0.2 * shape.high
        set_line(painter, QPointF(room.left(), base), block.name, font, look.colour("ink"))
        ends = QPointF(room.right(), base)
        ink = look.colour("ink" if block.loud else "ink2")
        set_line(painter, ends, block.total, strong, ink, align=RIGHT)

    def _paint_line(
        self, painter: QPainter, line: Line, shape: StripShape, label: float, font: QFont
    ) -> None:
        look, room = self.look, _room(line, shape)
        told = self._picture.blocks[line.row].lines[line.animal or 0]
        if self._at == (line.row, line.animal):
            painter.fillRect(room, look.colour("sheet"))
            bar = QRectF(room.left() - look.u(1.6), room.top(), look.u(1), room.height())
            painter.fillRect(bar, look.colour("point"))
        self._paint_cells(painter, room, told, shape, label)
        if font.pointSizeF() >= _LEAST_PT:
            base = room.bottom() - 0.26 * shape.high
            short = label - look.u(1.5)
            for x, text, align, wide in (
                (room.left(), told.label, LEFT, short),
                (room.right(), told.total, RIGHT, None),
            ):
                at = QPointF(x, base)
                set_line(painter, at, text, font, look.colour("ink2"), align=align, room=wide)

    def _paint_cells(
        self, painter: QPainter, room: QRectF, told: StripLine, shape: StripShape, label: float
    ) -> None:
        gap = 2.0 if shape.high > 9 else 1.0
        left, palette = room.left() + label, self.look.palette
        dots = self.devicePixelRatioF()
        wide, high = max(2, int(shape.wide - gap)), max(2, int(shape.high - gap))
        for index, state in enumerate(told.states):
            if state is not None:
                cell = QRectF(round(left + index * shape.wide), round(room.top()), wide, high)
                stamp_small(painter, cell, state, palette, dots)

    def _sized(self, use: Use, high: float) -> QFont:
        """The font of a use, no higher than a line of *high* px can hold."""
        font = self.look.font(use)
        most = 0.72 * high * 72.0 / max(1.0, float(self.logicalDpiY()))
        font.setPointSizeF(max(1.0, min(font.pointSizeF(), most)))
        return font

    def _paint_totals(self, painter: QPainter, shape: StripShape) -> None:
        """Refused of offered in the whole house, night by night, and what has no room."""
        look, picture = self.look, self._picture
        font, strong = look.font(Use.TABLE), look.font(Use.TABLE_STRONG)
        base = self.height() - look.u(2.6, 2)
        above = base - look.u(5, 4)
        left = look.u(7, 3.5)
        left += set_line(painter, QPointF(left, base), tr("the house"), strong, look.colour("ink"))
        left += look.u(4, 2.6)
        for night, total in zip(picture.nights, picture.totals, strict=True):
            wide = max(advance(font, night), advance(strong, total))
            set_line(painter, QPointF(left, above), night, font, look.colour("ink3"))
            set_line(painter, QPointF(left, base), total, strong, look.colour("ink"))
            left += wide + look.u(4, 2.4)
        if picture.blocks and shape.last - shape.first < len(picture.blocks):
            at = QPointF(self.width() - look.u(7, 3.5), base)
            told = tr(
                "{first} to {last} of {count} rows, ↓ goes on",
                first=picture.blocks[shape.first].name,
                last=picture.blocks[shape.last - 1].name,
                count=len(picture.blocks),
            )
            set_line(painter, at, told, font, look.colour("ink2"), align=RIGHT)


def _room(line: Line, shape: StripShape) -> QRectF:
    """Where a line stands in its column."""
    box = shape.columns[line.column]
    return QRectF(box.left(), line.top, box.width(), shape.high)
