"""Shed clocks down the page: days since the last shed, the cycle since dull, and the verdict."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import QLineF, QPointF, QRectF, QSize, Signal
from PySide6.QtGui import QMouseEvent, QPainter, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from keeper.actions.life_lanes import ShedCycle
from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.kept_picture import KeptPicture
from keeper.desktop.widgets.lettering import (
    CENTRE,
    LEAST_PT,
    advance,
    middle_baseline,
    narrowed,
    set_line,
)
from keeper.desktop.widgets.patterns import FINE, paint_pattern
from keeper.desktop.widgets.shed_strips import (
    STAGE_LOOKS,
    Strip,
    paint_cycles,
    paint_open,
    paint_strip,
)
from keeper.desktop.widgets.stamps import stamp_tile
from keeper.desktop.widgets.tile import TileState
from keeper.desktop.widgets.walked import first_shown
from keeper.husbandry.events import ShedStage
from keeper.language import tr
from keeper.reports.words import word

_NAME, _NAME_SMALL = 15, 12
"""Where a name begins, in units right of its place."""
_STAGES = (ShedStage.DULL, ShedStage.OPAQUE, ShedStage.CLEARED)
LEGEND = tuple((stage.value, word(stage)) for stage in _STAGES)
LETTERS = tr(
    "thin lines: past cycles to their shed   band: when a shed is usual   ticks: past sheds"
)


@dataclass(frozen=True, slots=True, kw_only=True)
class ShedFace:
    """One animal's line. state: a tile of severity, None where nothing is to look at."""

    place: str
    name: str
    kind: str
    state: TileState | None
    letter: str
    strip: Strip
    cycles: tuple[ShedCycle, ...]
    is_open: bool  # the last of the cycles still runs
    most_days: float
    title: str
    aside: str
    told: str


@dataclass(frozen=True, slots=True)
class _Columns:
    place: float
    strip: QRectF
    cycle: QRectF
    tile: float
    words: float
    right: float


class ShedList(Drawn):
    """Shows the lines round the one walked to. ``asked(line)`` by the mouse."""

    asked = Signal(int)

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._faces: tuple[ShedFace, ...] = ()
        self._line = self._first = 0
        self._is_chosen = True
        self._most, self._cycle_most = 90.0, 21.0
        self._today = date.min
        self._kinds: frozenset[str] = frozenset()
        self._heads, self._body = KeptPicture(), KeptPicture()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def show_sheds(self, faces: Sequence[ShedFace], today: date) -> None:
        """Show *faces*; which one is chosen is told with ``choose``."""
        self._faces, self._today = tuple(faces), today
        self._kinds = frozenset(face.kind for face in faces)
        lates = sorted(face.strip.late or 0.0 for face in faces)
        self._most = max(30.0, 1.25 * (lates[int(0.95 * (len(lates) - 1))] if lates else 0.0))
        self._cycle_most = max((1.5 * face.most_days for face in faces), default=21.0)
        self.tell("\n".join(face.told for face in faces))

    def choose(self, line: int, *, chosen: bool = True) -> None:
        """Keep line *line* in view; chosen: whether it is marked as the one that keys act on."""
        self._line, self._is_chosen = line, chosen
        self.update()

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(200, 150), self.look.u(60, 50)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        for line, rect in self._rects():
            if rect.contains(event.position()):
                self.asked.emit(line)

    def paint(self, painter: QPainter) -> None:
        rects = self._rects()
        about = (self._most, self._cycle_most, self._kinds)
        heads = QSize(self.width(), round(self.look.u(11, 9)))
        self._heads.lay(
            painter, heads, self.look, about, lambda p: self._paint_heads(p, self._columns())
        )
        for line, rect in rects:
            if line == self._line and self._is_chosen:
                self._paint_chosen(painter, rect)
        shown = (self._first, self._faces[self._first : self._first + len(rects)], self._today)
        self._body.lay(
            painter, self.size(), self.look, (*about, *shown), lambda p: self._paint_rows(p, rects)
        )

    def _paint_rows(self, painter: QPainter, rects: Sequence[tuple[int, QRectF]]) -> None:
        """What the lines say, the chosen one like any other: a step down paints none anew."""
        columns = self._columns()
        for line, rect in rects:
            face = self._faces[line]
            self._paint_who(painter, face, rect, columns)
            strip = self._in(columns.strip, rect)
            paint_strip(painter, face.strip, strip, self._most, self.look)
            cycle = self._in(columns.cycle, rect)
            scale = cycle.width() / self._cycle_most
            paint_cycles(painter, face.cycles, cycle, scale, self.look)
            if face.is_open and face.cycles:
                paint_open(painter, face.cycles[-1], cycle, scale, self._today, self.look)
            self._paint_words(painter, face, rect, columns)
        painter.setPen(QPen(self.look.colour("hair"), 1.0))
        bases = [rect.bottom() for _, rect in rects]
        painter.drawLines([QLineF(columns.place, y, columns.right, y) for y in bases])

    def _rects(self) -> list[tuple[int, QRectF]]:
        top, row = self.look.u(11, 9), self.look.u(11, 9.4)
        room = int((self.height() - top) // row)
        self._first = first_shown(self._line, len(self._faces), room, self._first)
        shown = range(self._first, min(self._first + room, len(self._faces)))
        return [(n, QRectF(0, top + (n - self._first) * row, self.width(), row)) for n in shown]

    def _columns(self) -> _Columns:
        look, left = self.look, self.look.u(7, 3.5)
        right = self.width() - left
        widest = max((advance(look.font(Use.TABLE), kind) for kind in self._kinds), default=0.0)
        beside = look.u(_NAME, _NAME_SMALL) + look.u(3)
        who = left + min(max(look.u(56, 45), beside + widest), look.u(70, 60))
        room = right - who
        strip = QRectF(who, 0, 0.28 * room, 0)
        cycle = QRectF(strip.right() + look.u(5, 3), 0, 0.28 * room, 0)
        tile = cycle.right() + look.u(5, 3)
        return _Columns(left, strip, cycle, tile, tile + look.u(9, 7.4), right)

    def _in(self, column: QRectF, row: QRectF) -> QRectF:
        return QRectF(column.left(), row.top(), column.width(), row.height())

    def _paint_heads(self, painter: QPainter, columns: _Columns) -> None:
        look, font = self.look, self.look.font(Use.TABLE)
        base = look.u(4, 3.4)
        heads = (
            (columns.place, tr("place, name, kind")),
            (columns.strip.left(), tr("days since the last shed")),
            (columns.cycle.left(), tr("days since dull")),
            (columns.tile, tr("what stands")),
        )
        for x, words in heads:
            set_line(painter, QPointF(x, base), words, font, look.colour("ink2"))
        for column, most, step in (
            (columns.strip, self._most, 30),
            (columns.cycle, self._cycle_most, 7),
        ):
            for days in range(0, int(most) + 1, step):
                x = column.left() + days / most * column.width()
                place = QPointF(x, base + look.u(4.8, 4))
                set_line(painter, place, str(days), font, look.colour("ink3"), align=CENTRE)
        painter.setPen(QPen(look.colour("line"), 1.1))
        y = look.u(10.4, 8.5)
        painter.drawLine(QLineF(columns.place, y, columns.right, y))

    def _paint_chosen(self, painter: QPainter, rect: QRectF) -> None:
        look = self.look
        left = look.u(7, 3.5) - look.u(2.4, 1.6)
        painter.fillRect(rect.adjusted(left, 1, -look.u(4, 2), -1), look.colour("sheet"))
        bar = QRectF(left, rect.top() + 1, look.u(1.4, 1), rect.height() - 2)
        painter.fillRect(bar, look.colour("point"))

    def _paint_who(
        self, painter: QPainter, face: ShedFace, rect: QRectF, columns: _Columns
    ) -> None:
        look, strong = self.look, self.look.font(Use.TABLE_STRONG)
        first = rect.top() + look.u(4.6, 3.9)
        name = columns.place + look.u(_NAME, _NAME_SMALL)
        room = columns.strip.left() - name - look.u(2)
        set_line(painter, QPointF(columns.place, first), face.place, strong, look.colour("ink"))
        place = QPointF(name, first)
        set_line(painter, place, face.name, strong, look.colour("ink"), room=room)
        plain = narrowed(look.font(Use.TABLE), face.kind, room, LEAST_PT)
        beneath = QPointF(name, first + look.u(4.6, 3.9))
        set_line(painter, beneath, face.kind, plain, look.colour("ink2"), room=room)

    def _paint_words(
        self, painter: QPainter, face: ShedFace, rect: QRectF, columns: _Columns
    ) -> None:
        look = self.look
        if face.state is not None:
            tile = QRectF(columns.tile, rect.top() + look.u(2.4, 2), look.u(6.6, 5.6), look.u(6, 5))
            stamp_tile(painter, tile, face.state, look.palette, face.letter)
        strong, plain = look.font(Use.TABLE_STRONG), look.font(Use.TABLE)
        room = columns.right - columns.words
        one = rect if not face.aside else rect.adjusted(0, 0, 0, -rect.height() / 2.4)
        first = middle_baseline(one, strong)
        place = QPointF(columns.words, first)
        set_line(painter, place, face.title, strong, look.colour("ink"), room=room)
        beneath = QPointF(columns.words, first + look.u(4.6, 3.9))
        set_line(painter, beneath, face.aside, plain, look.colour("ink2"), room=room)


class ShedLegend(Drawn):
    """How stages and spans are drawn."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._kept = KeptPicture()
        told = ", ".join((*(words for _, words in LEGEND), LETTERS))
        self.tell(tr("legend: {told}", told=told))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(150, 110), self.look.u(7, 5.6)

    def paint(self, painter: QPainter) -> None:
        self._kept.lay(painter, self.size(), self.look, LEGEND, self._draw)

    def _draw(self, painter: QPainter) -> None:
        look, font = self.look, self.look.font(Use.TABLE)
        left, row = look.u(7, 3.5), QRectF(self.rect())
        base = middle_baseline(row, font)
        for name, words in LEGEND:
            patch = QRectF(left, row.center().y() - look.u(1.5), look.u(8, 6), look.u(3))
            pattern, paper, mark = STAGE_LOOKS[name]
            painter.fillRect(patch, look.colour(paper))
            paint_pattern(painter, patch, pattern, look.colour(mark), FINE)
            painter.setPen(QPen(look.colour("line"), 1.0))
            painter.drawRect(patch)
            left = patch.right() + look.u(1.4, 1)
            ink = look.colour("ink2")
            left += set_line(painter, QPointF(left, base), words, font, ink) + look.u(3, 2)
        room = self.width() - left
        set_line(painter, QPointF(left, base), LETTERS, font, look.colour("ink2"), room=room)
