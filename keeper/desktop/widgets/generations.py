"""Colour across generations: every score as a dot, the line's means, mid-parents, what may come.

Sex is a shape, still here or gone a fill, bred from a ring; nothing is told by hue. The same
painter draws the picture on paper.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from operator import itemgetter

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QFont, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.generation_key import key_lines, paint_key
from keeper.desktop.widgets.generation_marks import RING, paint_diamond, paint_dot, paint_ring
from keeper.desktop.widgets.generation_shape import (
    LEAST_SCORE,
    MOST_SCORE,
    GenerationColumn,
    GenerationShape,
    band_middles,
    shape_of,
)
from keeper.desktop.widgets.kept_picture import KeptPicture
from keeper.desktop.widgets.lettering import (
    CENTRE,
    RIGHT,
    Run,
    advance,
    cap_height,
    font_to_fit,
    set_line,
    set_runs,
)
from keeper.desktop.widgets.spreading import spread
from keeper.language import tr
from keeper.reports.colour_facts import ColourFacts, Dot, GenerationRow, PairToCome
from keeper.reports.colour_words import AT_AGE, generation_words, picture_words, scored_how
from keeper.reports.figures import number

_LEAST_PT = 7.0
_DASHES = [5.0, 3.0]

Name = tuple[Dot, QPointF, QPointF, float]
"""Who is named, where its ring and its name stand, and the room of the name."""


class GenerationsPicture(Drawn):
    """x: generations; y: the score from 1 to 10."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._facts: ColourFacts | None = None
        self._kept = KeptPicture()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def show_colour(self, facts: ColourFacts | None) -> None:
        self._facts = facts
        self.tell(picture_words(facts) if facts else scored_how())

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(150, 110), self.look.u(80, 56)

    def paint(self, painter: QPainter) -> None:
        facts = self._facts
        if facts is None:
            return
        rect = QRectF(self.rect())
        self._kept.lay(
            painter,
            self.size(),
            self.look,
            facts,
            lambda p: paint_generations(p, self.look, facts, rect),
            "ground",
        )


def paint_generations(painter: QPainter, look: Look, facts: ColourFacts, rect: QRectF) -> None:
    """The whole picture in *rect*, in the light and type of *look*."""
    _Picture(painter, look, facts, rect).paint()


class _Picture:
    """One picture being painted."""

    def __init__(self, painter: QPainter, look: Look, facts: ColourFacts, rect: QRectF) -> None:
        self._painter, self._look, self._facts, self._rect = painter, look, facts, rect
        self._plain, self._strong = look.font(Use.TABLE), look.font(Use.TABLE_STRONG)
        self._leading = 1.75 * cap_height(self._plain)
        self._key = key_lines(facts, look, rect.width())
        left = rect.left() + advance(self._plain, "10") + look.u(3, 2.2)
        top = rect.top() + look.u(8.4, 6.6)
        foot = look.u(2.6, 2) + 2 * self._leading + look.u(2.4, 1.8)
        key = len(self._key) * self._leading * 1.12
        plot = QRectF(left, top, rect.right() - left, rect.bottom() - foot - key - top)
        self.shape: GenerationShape = shape_of(facts, plot, look.u(1.35, 1.1))

    def paint(self) -> None:
        self._grid()
        for generation, column in self.shape.columns.items():
            self._foot(column)
            self._bands(column, [p for p in self._facts.pairs if p.generation == generation])
        self._lines()
        names = [name for each in self.shape.columns.values() for name in self._named(each)]
        for _, ring, place, _ in names:
            self._leader(ring, place)
        for dot, place in zip(self._facts.dots, self.shape.places, strict=True):
            paint_dot(self._painter, self._look, dot, place, self.shape.radius)
            if dot.selected:
                paint_ring(self._painter, self._look, place, self.shape.radius)
        for dot, _, place, room in names:
            self._name(dot, place, room)
        self._figures()
        paint_key(self._painter, self._look, self._key, self._rect, self._leading)

    def _grid(self) -> None:
        look, plot, painter = self._look, self.shape.plot, self._painter
        head = QPointF(self._rect.left(), self._rect.top() + look.u(4, 3.3))
        runs = [
            Run(text=self._facts.choice.words, font=self._strong, colour=look.colour("ink")),
            Run(
                text=AT_AGE[self._facts.age],
                font=self._plain,
                colour=look.colour("ink2"),
                gap=look.u(3, 2.4),
            ),
        ]
        set_runs(painter, head, runs, room=self._rect.width())
        half = cap_height(self._plain) / 2
        for score in range(int(LEAST_SCORE), int(MOST_SCORE) + 1):
            y = self.shape.y(score)
            painter.setPen(QPen(look.colour("hair"), 1.0))
            painter.drawLine(QLineF(plot.left(), y, plot.right(), y))
            place = QPointF(plot.left() - look.u(1.5, 1.1), y + half)
            ink = look.colour("ink2")
            set_line(painter, place, number(score), self._plain, ink, align=RIGHT)
        painter.setPen(QPen(look.colour("line"), 1.3))
        painter.drawLine(plot.bottomLeft(), plot.bottomRight())
        painter.setPen(QPen(look.colour("hair"), 1.4))
        for column in list(self.shape.columns.values())[1:]:
            painter.drawLine(QLineF(column.left, plot.top(), column.left, plot.bottom()))

    def _foot(self, column: GenerationColumn) -> None:
        """What the generation is called, and how many of it are scored."""
        look, wide = self._look, 0.96 * (column.end - column.left)
        base = self.shape.plot.bottom() + look.u(2.6, 2) + cap_height(self._strong)
        called = generation_words(column.generation)
        if advance(self._strong, called) > wide:
            called = number(column.generation)
        row = self._row(column.generation)
        told = tr("{count} scored", count=number(row.scored)) if row else tr("to come")
        middle = (column.left + column.end) / 2
        lines = ((called, self._strong, "ink"), (told, self._plain, "ink2"))
        for n, (words, font, ink) in enumerate(lines):
            fitted = font_to_fit(font, words, wide, _LEAST_PT)
            place = QPointF(middle, base + n * self._leading)
            set_line(self._painter, place, words, fitted, look.colour(ink), align=CENTRE)

    def _row(self, generation: int) -> GenerationRow | None:
        return next((r for r in self._facts.generations if r.generation == generation), None)

    def _bands(self, column: GenerationColumn, pairs: Sequence[PairToCome]) -> None:
        if not pairs or column.bands is None:
            return
        room = (column.bands[1] - column.bands[0]) / len(pairs)
        wide = min(self._look.u(7, 5), 0.78 * room)
        for pair, x in zip(pairs, band_middles(column, pairs), strict=True):
            self._band(pair, x, wide)

    def _band(self, pair: PairToCome, x: float, wide: float) -> None:
        """Nine in ten of the young, the expected mean through it, the mid-parent and a letter."""
        look, painter, expected = self._look, self._painter, pair.expected
        top, bottom = self.shape.y(expected.high), self.shape.y(expected.low)
        patch = QRectF(x - wide / 2, top, wide, bottom - top)
        painter.fillRect(patch, look.colour("band2"))
        painter.setPen(QPen(look.colour("line"), 1.2))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(patch)
        y = self.shape.y(expected.mean)
        painter.setPen(QPen(look.colour("ink"), 2.2, Qt.PenStyle.SolidLine, _FLAT))
        painter.drawLine(QLineF(patch.left(), y, patch.right(), y))
        middle = QPointF(x, self.shape.y(pair.mid_parent))
        paint_diamond(painter, look, middle, self.shape.radius)
        letter = QPointF(x, top - look.u(1.2, 0.9))
        set_line(painter, letter, pair.letter, self._strong, look.colour("ink"), align=CENTRE)

    def _lines(self) -> None:
        """Means of generations as bars that are joined, mid-parents as diamonds on dashes."""
        painter, look = self._painter, self._look
        rows = self._facts.generations
        means = [self._at(row, row.mean) for row in rows]
        mids = [self._diamond(row, row.mid_parent) for row in rows if row.mid_parent is not None]
        dashes = QPen(look.colour("ink2"), 1.5, Qt.PenStyle.CustomDashLine, _FLAT)
        dashes.setDashPattern(_DASHES)
        for pen, places in ((dashes, mids), (QPen(look.colour("ink3"), 1.6), means)):
            painter.setPen(pen)
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawPolyline(QPolygonF(places))
        painter.setPen(QPen(look.colour("ink"), 2.6, Qt.PenStyle.SolidLine, _FLAT))
        for row in rows:
            column, y = self.shape.columns[row.generation], self.shape.y(row.mean)
            painter.drawLine(QLineF(column.first, y, column.right, y))
        for place in mids:
            paint_diamond(painter, look, place, 1.25 * self.shape.radius)

    def _at(self, row: GenerationRow, score: float) -> QPointF:
        return QPointF(self.shape.columns[row.generation].centre, self.shape.y(score))

    def _diamond(self, row: GenerationRow, score: float) -> QPointF:
        first = self.shape.columns[row.generation].first
        return QPointF(first + 2 * self.shape.radius, self.shape.y(score))

    def _figures(self) -> None:
        """Means and mid-parents to a tenth, before the marks they belong to."""
        look, half = self._look, cap_height(self._plain) / 2
        for row in self._facts.generations:
            column = self.shape.columns[row.generation]
            told = [(self.shape.y(row.mean), number(row.mean, 1), self._strong)]
            if row.mid_parent is not None:
                told.append((self.shape.y(row.mid_parent), number(row.mid_parent, 1), self._plain))
            told.sort(key=itemgetter(0))
            plot = self.shape.plot
            bases = spread([y for y, *_ in told], 4 * half, plot.top(), plot.bottom())
            for base, (_, words, font) in zip(bases, told, strict=True):
                place = QPointF(column.first - look.u(0.8, 0.6), base + half)
                fitted = font_to_fit(font, words, column.first - column.left - 4, _LEAST_PT)
                self._clear(place - QPointF(advance(fitted, words), 0), fitted, words)
                set_line(self._painter, place, words, fitted, look.colour("ink"), align=RIGHT)

    def _named(self, column: GenerationColumn) -> Iterator[Name]:
        """Those that are bred from, with the places of their names at the right of the dots."""
        both = zip(self._facts.dots, self.shape.places, strict=True)
        bred = [(d, p) for d, p in both if d.selected and d.generation == column.generation]
        bred.sort(key=lambda one: (one[1].y(), one[1].x()))
        plot, look = self.shape.plot, self._look
        if len(bred) * self._leading > plot.height():
            return
        half = cap_height(self._plain) / 2
        wanted = [place.y() for _, place in bred]
        middles = spread(wanted, self._leading, plot.top() + half, plot.bottom() - half)
        end = column.bands[0] if column.bands else column.end
        for y, (dot, ring) in zip(middles, bred, strict=True):
            left = self._beside(column, y, ring) + look.u(2.6, 2)
            room = end - left - look.u(0.8, 0.6)
            if room >= look.u(5, 4):
                yield dot, ring, QPointF(left, y), room

    def _beside(self, column: GenerationColumn, y: float, ring: QPointF) -> float:
        """Where the dots end in the line about *y*."""
        radius, near = self.shape.radius, 0.7 * self._leading
        both = zip(self._facts.dots, self.shape.places, strict=True)
        ends = [
            place.x() + radius
            for dot, place in both
            if dot.generation == column.generation
            and min(y, ring.y()) - near <= place.y() <= max(y, ring.y()) + near
        ]
        return max(*ends, ring.x() + RING * radius)

    def _leader(self, ring: QPointF, place: QPointF) -> None:
        self._painter.setPen(QPen(self._look.colour("line"), 0.9))
        start = QPointF(ring.x() + 1.1 * RING * self.shape.radius, ring.y())
        self._painter.drawLine(start, place - QPointF(self._look.u(0.6, 0.5), 0))

    def _name(self, dot: Dot, place: QPointF, room: float) -> None:
        words = tr("({name})", name=dot.called) if dot.outside else dot.called
        fitted = font_to_fit(self._plain, words, room, _LEAST_PT)
        base = place + QPointF(0, cap_height(fitted) / 2)
        self._clear(base, fitted, words, room)
        ink = self._look.colour("ink")
        set_line(self._painter, base, words, fitted, ink, room=room)

    def _clear(self, base: QPointF, font: QFont, words: str, room: float = math.inf) -> None:
        """Nothing of the lines beneath shows through *words*."""
        high = cap_height(font)
        wide = min(room, advance(font, words))
        box = QRectF(base.x() - 2, base.y() - 1.25 * high, wide + 4, 1.55 * high)
        self._painter.fillRect(box, self._look.colour("ground"))


_FLAT = Qt.PenCapStyle.FlatCap
