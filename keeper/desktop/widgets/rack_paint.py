"""Painting racks: uprights and shelves, the fronts of tubs, headings, and hot ends."""

from __future__ import annotations

from dataclasses import dataclass
from operator import attrgetter
from typing import NamedTuple

from PySide6.QtCore import QRect, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPen

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.lettering import advance
from keeper.desktop.widgets.rack_faces import RackFace
from keeper.desktop.widgets.rack_layout import Measures, RackShape
from keeper.desktop.widgets.rack_stamps import RackStamps
from keeper.language import tr
from keeper.reports.figures import heat_unit

_FRAME_PX = 3.4
_RING_PX = 2.0
_OUT = {True: "out", False: ""}
FRAME_SPREAD_PX = 5
"""How far the frame of the chosen tub reaches beyond it."""


class At(NamedTuple):
    """A tub by the index of its rack, its row and its place in the row."""

    rack: int
    row: int
    tub: int


@dataclass(frozen=True, slots=True, kw_only=True)
class FrontTub:
    """A tub's front. words: the whole of it as a sentence for a screen reader."""

    face: RackFace
    figure: str
    words: str
    shared: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class FrontRow:
    """number: on the left upright; heat: on the right, reversed where it is *out* of range."""

    number: str
    tubs: tuple[FrontTub, ...]
    heat: str = ""
    out: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class FrontRack:
    letter: str
    about: str
    rows: tuple[FrontRow, ...]


class RackPainter:
    """Paints racks in one look, tubs from stamps."""

    def __init__(self, look: Look) -> None:
        self.look = look
        self.stamps = RackStamps(look)

    def measures(self) -> Measures:
        """Lengths at the present look."""
        look = self.look
        figure = advance(look.font(Use.BODY), "00.0")
        return Measures(
            left=look.u(4.8, 4.4),
            right=look.u(2.2, 1.8),
            heat=figure + look.u(3, 2.4),
            air=look.u(5, 2.6),
            head=look.u(9, 7),
            widest=look.u(24, 20),
            tallest=look.u(25, 21),
            good=figure + look.u(3),
        )

    def rack(self, painter: QPainter, shape: RackShape, rack: FrontRack, widest: str) -> None:
        """The whole of a rack on clean ground; widest: the widest figure of the layer."""
        look, lay = self.look, painter.drawPixmap
        self.heading(painter, shape, rack)
        for upright in (shape.left, shape.right):
            painter.fillRect(upright, look.colour("fill1"))
        painter.setPen(look.colour("line"))
        painter.drawLines(list(shape.shelves))
        if not rack.rows:
            return
        numbers = self.stamps.labels(shape.numbers[0].size())
        heats = self.stamps.labels(shape.heats[0].size())
        tubs = self.stamps.tubs(QSize(*shape.tub_size), widest)
        for n, row in enumerate(rack.rows):
            lay(shape.numbers[n], numbers["number", row.number])
            lay(shape.heats[n], heats["heat", row.heat, _OUT[row.out]])
            for at, tub in zip(shape.tubs_at[n], row.tubs, strict=True):
                lay(at, tubs[tub.face, tub.figure, tub.shared])

    def mend_row(
        self,
        painter: QPainter,
        shape: RackShape,
        number: int,
        rows: tuple[FrontRow, FrontRow],
        widest: str,
    ) -> list[QRect]:
        """Paint what differs between two tellings of a row; returns where that is.

        A front covers all that was there before.
        """
        old, new = rows
        mended, size = [], QSize(*shape.tub_size)
        for n, (was, tub) in enumerate(zip(old.tubs, new.tubs, strict=True)):
            if was is tub or _looks(was) == (looks := _looks(tub)):
                continue
            rect = QRect(shape.tubs_at[number][n], size)
            painter.drawPixmap(rect, self.stamps.tubs(size, widest)[looks])
            mended.append(rect)
        if (old.heat, old.out) != (new.heat, new.out):
            box = shape.heats[number]
            painter.fillRect(box, self.look.colour("ground"))
            label = self.stamps.labels(box.size())["heat", new.heat, _OUT[new.out]]
            painter.drawPixmap(box, label)
            mended.append(box)
        return mended

    def heading(self, painter: QPainter, shape: RackShape, rack: FrontRack) -> None:
        """Letter, who lives there, and what stands at the right."""
        heat = tr("hot end {unit}", unit=heat_unit()) if any(row.heat for row in rack.rows) else ""
        painter.fillRect(shape.heading, self.look.colour("ground"))
        labels = self.stamps.labels(shape.heading.size())
        painter.drawPixmap(shape.heading, labels["heading", rack.letter, rack.about, heat])

    def frame(self, painter: QPainter, rect: QRectF) -> None:
        """The chosen tub: a stroke in the pointer's colour, with a ring of ground inside it."""
        painter.setBrush(Qt.BrushStyle.NoBrush)
        half = _FRAME_PX / 2
        for colour, width, out in (
            ("ground", _RING_PX, -_RING_PX / 2),
            ("point", _FRAME_PX, half - 0.4),
        ):
            pen = QPen(self.look.colour(colour), width)
            pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
            painter.setPen(pen)
            painter.drawRect(rect.adjusted(-out, -out, out, out))


_looks = attrgetter("face", "figure", "shared")
"""How a front looks; what only a screen reader is told does not count."""
