"""A life strip on paper, drawn by the painters of the window, with the figures of a day beneath."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QSizeF
from PySide6.QtGui import QPainter

from keeper.desktop.paper.flow import Artist
from keeper.desktop.paper.paper_look import PaperLook
from keeper.desktop.type import Use
from keeper.desktop.widgets.lettering import LEFT, RIGHT, advance, cap_height, set_line
from keeper.desktop.widgets.life_canvas import life_layout
from keeper.desktop.widgets.life_paint import Told, life_axis, paint_life
from keeper.desktop.widgets.life_view import LifeView, view_of
from keeper.desktop.widgets.read_out import Figure, Figures
from keeper.language import tr
from keeper.reports.figures import day, plain
from keeper.reports.paper_parts import Document, Facts, Heading, Part, Picture, Words
from keeper.reports.vet_summary import LIFE, LIFE_MM

TODAY = tr("today")


def life_artist(told: Told, view: LifeView) -> Artist:
    """Paints the strip of *view* in the look of paper."""

    def paint(painter: QPainter, size: QSizeF) -> None:
        look = PaperLook()
        paint_life(painter, look, told, view, size)
        axis, layout = life_axis(view, size.width(), look), life_layout(*size.toTuple(), look)
        if axis.shows(told.page.today):
            font = look.font(Use.TABLE_STRONG)
            base = layout.flag.center().y() + cap_height(font) / 2
            x, air = axis.x(told.page.today), look.u(1)
            ends = x + air + advance(font, TODAY) > axis.right
            place = QPointF(x - air if ends else x + air, base)
            ink = look.colour("ink")
            set_line(painter, place, TODAY, font, ink, align=RIGHT if ends else LEFT)

    return paint


def whole_life(told: Told) -> Artist:
    """Paints all that was lived, and nothing that is forecast."""
    page = told.page
    view = view_of(page.first_day, page.today, page.today, page.today)
    return life_artist(Told(page=page), view)


def life_document(told: Told, view: LifeView, figures: Figures, printed: str) -> Document:
    """The strip as it looks, its head, and the read-out of the cursor's day."""
    row = told.page.animal
    name = f"{row.name}, {row.code}" if row.name else row.code
    span = tr("{first} to {last}", first=plain(day(view.first)), last=plain(day(view.last)))
    return Document(
        title=tr("Life of {name}", name=name),
        aside=span,
        printed=printed,
        parts=(
            Picture(name=LIFE, high_mm=LIFE_MM),
            Heading(words=f"{plain(figures.head)}, {plain(figures.aside.split('   ')[0])}"),
            Facts(rows=tuple(_row(one) for group in figures.groups for one in group)),
            *_cause(figures),
        ),
    )


def _row(figure: Figure) -> tuple[str, str]:
    value = figure.value
    if figure.struck:
        value = tr("{figure} (struck through)", figure=value)
    parts = (value, figure.beneath)
    return plain(figure.label), plain(", ".join(part for part in parts if part))


def _cause(figures: Figures) -> tuple[Part, ...]:
    if not figures.cause:
        return ()
    return (Words(words=plain(f"{figures.cause_head}: {figures.cause}")),)
