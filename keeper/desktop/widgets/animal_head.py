"""The head of an animal's page: who she is in two lines, her weight and place at the right."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QLineF, QPointF
from PySide6.QtGui import QFont, QPainter, QPen
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import RIGHT, Run, advance, runs_width, set_line, set_runs


@dataclass(frozen=True, slots=True, kw_only=True)
class Identity:
    """Everything that the head says; an empty text leaves its place empty."""

    name: str
    code: str
    sex: str
    sex_known: str
    born: tuple[str, ...]
    weight: str
    weighed: str
    place: str
    place_since: str


class AnimalHead(Drawn):
    """Name and code; sex and how it is known first, then line, parents, hatching."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._identity: Identity | None = None

    def show_identity(self, identity: Identity) -> None:
        """Show one animal."""
        self._identity = identity
        parts = (
            identity.name,
            identity.code,
            f"{identity.sex} {identity.sex_known}".strip(),
            *identity.born,
            f"{identity.weight} {identity.weighed}".strip(),
            f"{identity.place} {identity.place_since}".strip(),
        )
        self.tell(", ".join(part for part in parts if part))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(200), self.look.u(16.5, 12.2)

    def paint(self, painter: QPainter) -> None:
        look, shown = self.look, self._identity
        margin = look.u(7, 3.5)
        bottom = self.height() - 1.0
        painter.setPen(QPen(look.colour("line"), 1.1))
        painter.drawLine(QLineF(margin, bottom, self.width() - margin, bottom))
        if shown is None:
            return
        first, second = look.u(7.3, 5.4), look.u(13.4, 9.9)
        name_base = look.u(10.6, 8)
        right = self._paint_right(painter, shown, first, second)
        left = self._paint_name(painter, shown, margin, name_base)
        room = right - left - look.u(5, 3)
        aside = self._aside()
        strong = QFont(aside)
        strong.setWeight(look.font(Use.PAGE_HEAD).weight())
        sex = [
            Run(text=shown.sex, font=strong, colour=look.colour("ink")),
            Run(text=shown.sex_known, font=aside, colour=look.colour("ink2"), gap=look.u(2.5, 1.8)),
        ]
        set_runs(painter, QPointF(left, first), sex, room)
        set_runs(painter, QPointF(left, second), self._born(shown, aside), room)

    def _aside(self) -> QFont:
        return self.look.font(Use.PAGE_ASIDE if not self.look.small else Use.TABLE)

    def _born(self, shown: Identity, font: QFont) -> list[Run]:
        gap = self.look.u(3.6, 2.4)
        ink = self.look.colour("ink2")
        return [
            Run(text=part, font=font, colour=ink, gap=gap if number else 0.0)
            for number, part in enumerate(part for part in shown.born if part)
        ]

    def _paint_name(self, painter: QPainter, shown: Identity, margin: float, base: float) -> float:
        """Name and code; returns where the next column begins."""
        look = self.look
        runs = [
            Run(text=shown.name, font=look.font(Use.PAGE_NAME), colour=look.colour("ink")),
            Run(
                text=shown.code,
                font=look.font(Use.ASIDE),
                colour=look.colour("ink2"),
                gap=look.u(4.5, 3) if shown.name else 0.0,
            ),
        ]
        most = 0.32 * self.width()
        set_runs(painter, QPointF(margin, base), runs, most)
        return margin + min(most, runs_width(runs)) + look.u(9, 5)

    def _paint_right(
        self, painter: QPainter, shown: Identity, first: float, second: float
    ) -> float:
        """Weight and place flush right; returns where they begin."""
        look = self.look
        right = self.width() - look.u(7, 3.5)
        strong = look.font(Use.PAGE_NAME)
        strong.setPointSizeF(0.62 * strong.pointSizeF())
        aside = self._aside()
        for above, beneath in (
            (shown.place, shown.place_since),
            (shown.weight, shown.weighed),
        ):
            set_line(painter, QPointF(right, first), above, strong, look.colour("ink"), align=RIGHT)
            set_line(
                painter, QPointF(right, second), beneath, aside, look.colour("ink2"), align=RIGHT
            )
            wide = max(advance(strong, above), advance(aside, beneath))
            right -= wide + look.u(13, 6) if wide else 0.0
        return right
