"""The racks of a room as they stand, drawn once into a picture and mended where a tub changes."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from PySide6.QtCore import QPointF, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QMouseEvent, QPainter, QPaintEvent, QPixmap, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from keeper.desktop.look import Look
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.rack_layout import RackShape, lay_out
from keeper.desktop.widgets.rack_paint import FRAME_SPREAD_PX, At, FrontRack, FrontRow, RackPainter


class RackFront(Drawn):
    """Every rack at once. ``tub_asked`` carries the place of a tub pressed with the mouse."""

    tub_asked = Signal(object)

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._racks: tuple[FrontRack, ...] = ()
        self._every: tuple[At, ...] = ()
        self._shapes: list[RackShape] = []
        self._shown: tuple[int, ...] = ()
        self._near = False
        self._at: At | None = None
        self._picture = QPixmap()
        self._chosen = QRect()  # the chosen tub with its frame, empty while it is not drawn
        self._told = ""
        self._fresh = False  # whether the picture shows the racks as they are
        self._painter = RackPainter(look)
        self._widest = ""
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Expanding)
        self.lie_on("ground")
        look.changed.connect(self._draw_anew)

    @property
    def at(self) -> At | None:
        """The tub that is chosen."""
        return self._at

    @property
    def near(self) -> bool:
        """Whether the rack at hand fills the place."""
        return self._near

    def show_racks(self, racks: Sequence[FrontRack], widest: str, told: str) -> None:
        """Show *racks*; only tubs that differ are painted where the room has kept its shape.

        widest: the widest figure of the layer. told: what is shown, in words.
        """
        before, self._racks = self._racks, tuple(racks)
        changed = _changed(before, self._racks)
        if changed is None:
            self._every = tuple(_every(self._racks))
            self._at = self._at if self._has(self._at) else None
            self._draw_anew()
        elif widest != self._widest:
            self._fresh = False
            self.update()
        elif self._fresh and changed:
            self._mend(before, changed)
        self._widest = widest
        if told != self._told:
            self._told = told
            self.setText(told)

    def choose(self, at: At | None) -> None:
        """Put the frame round the tub *at*; its words become the picture's description."""
        before, self._at = self._at, at if self._has(at) else None
        if self._near and (before is None or at is None or before.rack != at.rack):
            self._draw_anew()
        self.update(self._chosen)
        self._chosen = self._framed()
        self.update(self._chosen)
        self.setAccessibleDescription(self.words_at(self._at))

    def come_near(self, near: bool) -> None:
        """Show the rack of the chosen tub alone, or the whole room again."""
        if near != self._near:
            self._near = near
            self._draw_anew()

    def words_at(self, at: At | None) -> str:
        """The tub *at* as a sentence; empty where there is none."""
        if at is None or not self._has(at):
            return ""
        return self._racks[at.rack].rows[at.row].tubs[at.tub].words

    @property
    def every(self) -> tuple[At, ...]:
        """Every tub in walking order."""
        return self._every

    def rect_of(self, at: At | None) -> QRect | None:
        """Where the tub *at* is drawn; None while it is not."""
        if at is None or not self._has(at) or at.rack not in self._laid_out():
            return None
        shape = self._shapes[self._shown.index(at.rack)]
        return QRect(shape.tubs_at[at.row][at.tub], QSize(*shape.tub_size))

    def tub_under(self, point: QPointF) -> At | None:
        """The tub drawn at *point*."""
        spot, shown = point.toPoint(), self._laid_out()
        here = (at for at in self._every if at.rack in shown)
        return next((at for at in here if (self.rect_of(at) or QRect()).contains(spot)), None)

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(200), self.look.u(40, 30)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        found = self.tub_under(event.position())
        if found is not None and event.button() is Qt.MouseButton.LeftButton:
            self.tub_asked.emit(found)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._draw_anew()

    def paintEvent(self, event: QPaintEvent) -> None:
        if not self._fresh:
            self._paint_whole()
        painter, rect = QPainter(self), event.rect()
        dots = self._picture.devicePixelRatio()
        if dots == 1.0:
            painter.drawPixmap(rect, self._picture, rect)
        else:
            place = QRectF(rect)
            source = QRectF(place.topLeft() * dots, place.size() * dots)
            painter.drawPixmap(place, self._picture, source)
        if rect.intersects(self._chosen):
            spread = FRAME_SPREAD_PX
            inner = self._chosen.adjusted(spread, spread, -spread, -spread)
            self._painter.frame(painter, QRectF(inner))
        painter.end()

    def _framed(self) -> QRect:
        spread, rect = FRAME_SPREAD_PX, self.rect_of(self._at)
        return rect.adjusted(-spread, -spread, spread, spread) if rect else QRect()

    def _has(self, at: At | None) -> bool:
        if at is None or not 0 <= at.rack < len(self._racks):
            return False
        rows = self._racks[at.rack].rows
        return 0 <= at.row < len(rows) and 0 <= at.tub < len(rows[at.row].tubs)

    def _draw_anew(self) -> None:
        """The picture is old, and where all lies is reckoned again with it."""
        self._fresh, self._shapes = False, []
        self.update()

    def _laid_out(self) -> tuple[int, ...]:
        """The racks that are shown, each with its shape in the same order."""
        if not self._shapes:
            every = tuple(range(len(self._racks)))
            here = self._at.rack if self._at is not None else 0
            shown = (here,) if self._near and every else every
            rows = (self._racks[index].rows for index in shown)
            counts = [[len(row.tubs) for row in rack] for rack in rows]
            margin = self.look.u(7, 3.5)
            area = QRectF(self.rect()).adjusted(margin, 0, -margin, 0)
            self._shapes = lay_out(counts, area, self._painter.measures())
            self._shown = shown if self._shapes else ()
        return self._shown

    def _mend(self, before: Sequence[FrontRack], changed: Sequence[int]) -> None:
        """Paint the tubs and readings that are not as they were into the picture."""
        painter, spread = QPainter(self._picture), FRAME_SPREAD_PX
        for index in changed:
            if index not in self._shown:
                continue
            old, new = before[index], self._racks[index]
            shape = self._shapes[self._shown.index(index)]
            for number, pair in enumerate(zip(old.rows, new.rows, strict=True)):
                if pair[0] is not pair[1]:
                    for rect in self._painter.mend_row(painter, shape, number, pair, self._widest):
                        self.update(rect.adjusted(-spread, -spread, spread, spread))
            if old.about != new.about:
                self._painter.heading(painter, shape, new)
                self.update(shape.heading)
        painter.end()

    def _paint_whole(self) -> None:
        dots, size = self.devicePixelRatioF(), self.size()
        self._painter.stamps.set_for(dots)
        if self._picture.size() != size * dots or self._picture.devicePixelRatio() != dots:
            self._picture = QPixmap(size * dots)  # the old one serves again where it can
            self._picture.setDevicePixelRatio(dots)
        self._fresh = True
        self._picture.fill(self.look.colour("ground"))
        painter = QPainter(self._picture)
        self.paint(painter)
        painter.end()
        self._chosen = self._framed()

    def paint(self, painter: QPainter) -> None:
        """Draw all of it, where it lies."""
        for index, shape in zip(self._laid_out(), self._shapes, strict=True):
            self._painter.rack(painter, shape, self._racks[index], self._widest)


def _changed(old: Sequence[FrontRack], new: Sequence[FrontRack]) -> list[int] | None:
    """Which racks may differ; None where the room has not the same racks, rows and tubs."""
    if len(old) != len(new):
        return None
    changed = [n for n, rack in enumerate(new) if rack is not old[n]]
    for n in changed:
        if old[n].letter != new[n].letter or not _same_rows(old[n].rows, new[n].rows):
            return None
    return changed


def _same_rows(old: Sequence[FrontRow], new: Sequence[FrontRow]) -> bool:
    return len(old) == len(new) and all(
        one.number == other.number and len(one.tubs) == len(other.tubs)
        for one, other in zip(old, new, strict=True)
        if one is not other
    )


def _every(racks: Sequence[FrontRack]) -> Iterator[At]:
    for rack, shown in enumerate(racks):
        for row, tubs in enumerate(shown.rows):
            yield from (At(rack, row, tub) for tub in range(len(tubs.tubs)))
