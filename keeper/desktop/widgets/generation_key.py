"""The key beneath the picture of generations: what of its marks is in use, each with its words."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.generation_marks import paint_diamond, paint_dot, paint_ring
from keeper.desktop.widgets.lettering import advance, cap_height, set_line
from keeper.husbandry.animal import Sex
from keeper.language import tr
from keeper.reports.colour_facts import ColourFacts, Dot

Sample = Callable[[QPainter, Look, QPointF, float], None]
"""Paints a mark about a point, of a radius."""

Item = tuple[Sample, str]


def key_lines(facts: ColourFacts, look: Look, room: float) -> list[list[Item]]:
    """Marks with their words, in as many lines of *room* px as they need."""
    lines: list[list[Item]] = [[]]
    used = 0.0
    for item in _items(facts):
        wide = _wide(look, item)
        if lines[-1] and used + wide > room:
            lines.append([])
            used = 0.0
        lines[-1].append(item)
        used += wide
    return lines


def paint_key(
    painter: QPainter, look: Look, lines: Sequence[Sequence[Item]], rect: QRectF, leading: float
) -> None:
    """The *lines* at the foot of *rect*."""
    font, radius = look.font(Use.TABLE), look.u(1.2, 1.0)
    half = cap_height(font) / 2
    for n, line in enumerate(lines):
        base = rect.bottom() - (len(lines) - n - 0.6) * leading * 1.12
        x = rect.left()
        for item in line:
            item[0](painter, look, QPointF(x + look.u(2, 1.6), base - half), radius)
            place = QPointF(x + _sample_wide(look), base)
            set_line(painter, place, item[1], font, look.colour("ink2"))
            x += _wide(look, item)


def _wide(look: Look, item: Item) -> float:
    return _sample_wide(look) + advance(look.font(Use.TABLE), item[1]) + look.u(4, 3)


def _sample_wide(look: Look) -> float:
    return look.u(5, 4)


def _items(facts: ColourFacts) -> Iterator[Item]:
    """Only what is in the picture."""
    dots = facts.dots
    for sex, words in _SEXES:
        if any(dot.sex is sex for dot in dots):
            yield _dotted(sex=sex), words
    if any(not dot.here for dot in dots):
        yield _dotted(here=False), tr("hollow: gone")
    if any(not dot.like_age for dot in dots):
        yield _dotted(like_age=False), tr("barred: another age")
    if any(dot.selected for dot in dots):
        yield _ringed, tr("ringed: bred from")
    if any(dot.outside for dot in dots):
        yield _bracketed, tr("of another line")
    yield _bar, tr("mean")
    if any(row.mid_parent is not None for row in facts.generations) or facts.pairs:
        yield _diamond, tr("mid-parent")
    if facts.pairs:
        yield _band, tr("expected, nine in ten")


_SEXES = (
    (Sex.FEMALE, tr("female")),
    (Sex.MALE, tr("male")),
    (Sex.UNKNOWN, tr("sex not known")),
)


def _dotted(*, sex: Sex = Sex.FEMALE, here: bool = True, like_age: bool = True) -> Sample:
    dot = Dot(animal=0, called="", sex=sex, here=here, generation=0, score=5.0, like_age=like_age)

    def paint(painter: QPainter, look: Look, place: QPointF, radius: float) -> None:
        paint_dot(painter, look, dot, place, radius)

    return paint


def _ringed(painter: QPainter, look: Look, place: QPointF, radius: float) -> None:
    _dotted()(painter, look, place, 0.8 * radius)
    paint_ring(painter, look, place, 0.8 * radius)


def _bracketed(painter: QPainter, look: Look, place: QPointF, radius: float) -> None:
    font = look.font(Use.TABLE)
    base = QPointF(place.x(), place.y() + cap_height(font) / 2)
    ink = look.colour("ink2")
    set_line(painter, base, "( )", font, ink, align=Qt.AlignmentFlag.AlignHCenter)


def _bar(painter: QPainter, look: Look, place: QPointF, radius: float) -> None:
    painter.setPen(QPen(look.colour("ink"), 2.6))
    reach = QPointF(1.6 * radius, 0)
    painter.drawLine(QLineF(place - reach, place + reach))


def _diamond(painter: QPainter, look: Look, place: QPointF, radius: float) -> None:
    paint_diamond(painter, look, place, 0.9 * radius)


def _band(painter: QPainter, look: Look, place: QPointF, radius: float) -> None:
    reach = 1.4 * radius
    patch = QRectF(place.x() - reach, place.y() - reach, 2 * reach, 2 * reach)
    painter.fillRect(patch, look.colour("band2"))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(look.colour("line"), 1.2))
    painter.drawRect(patch)
    painter.setPen(QPen(look.colour("ink"), 2.0))
    painter.drawLine(QLineF(patch.left(), place.y(), patch.right(), place.y()))
