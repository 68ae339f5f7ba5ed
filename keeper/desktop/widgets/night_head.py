"""The head line of a walk; of a night that is over it says so in reversed words."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.lettering import (
    RIGHT,
    Run,
    advance,
    font_to_fit,
    middle_baseline,
    runs_width,
    set_line,
    set_runs,
)
from keeper.desktop.widgets.words_line import HeadLine

LEAST_PT = 9.0


class NightHead(HeadLine):
    """A head line with a banner in the place of its name, while there is one."""

    def __init__(self, look: Look) -> None:
        super().__init__(look)
        self.banner = ""

    def show_words(
        self, head: str, parts: Sequence[tuple[str, bool]] = (), right: Sequence[str] = ()
    ) -> None:
        super().show_words(head, parts, right)
        if self.banner:
            self.tell(f"{self.banner}. {self.text()}")

    def paint(self, painter: QPainter) -> None:
        if not self.banner:
            super().paint(painter)
            return
        look, margin = self.look, self.look.u(7, 3.5)
        aside = Run(
            text="   ".join(self._right),
            font=look.font(Use.PAGE_ASIDE),
            colour=look.colour("ink2"),
        )
        block = self._paint_banner(painter, margin)
        base = 0.66 * self.height()
        end = self.width() - margin
        set_line(painter, QPointF(end, base), aside.text, aside.font, aside.colour, align=RIGHT)
        room = end - runs_width([aside]) - look.u(4) - block.right()
        set_runs(painter, QPointF(block.right(), base), self._runs()[1:], room)

    def _paint_banner(self, painter: QPainter, left: float) -> QRectF:
        look, high = self.look, float(self.height())
        most = 0.5 * self.width()
        font = font_to_fit(look.font(Use.PAGE_HEAD), self.banner, most, LEAST_PT)
        wide = advance(font, self.banner) + look.u(4)
        block = QRectF(left, 0.14 * high, wide, 0.72 * high)
        painter.fillRect(block, look.colour("ink"))
        place = QPointF(left + look.u(2), middle_baseline(block, font))
        set_line(painter, place, self.banner, font, look.colour("ground"))
        return block
