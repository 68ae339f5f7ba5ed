"""Plain text that follows the look: a label by use and ink, and the head line of a place."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainter, QPalette
from PySide6.QtWidgets import QLabel, QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import Run, runs_width, set_line, set_runs
from keeper.desktop.widgets.lettering import RIGHT as TO_THE_RIGHT


class Words(QLabel):
    """A label in the font of a use and the colour of a role; it wraps at its width."""

    def __init__(
        self, look: Look, use: Use, ink: str = "ink", parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._look, self._use, self._ink = look, use, ink
        self.setWordWrap(True)
        look.changed.connect(self._dress)
        self._dress()

    def _dress(self) -> None:
        self.setFont(self._look.font(self._use))
        palette = self.palette()
        palette.setColor(QPalette.ColorRole.WindowText, self._look.colour(self._ink))
        self.setPalette(palette)


class HeadLine(Drawn):
    """The head line of a place: its name, where one is, and at the right how much is left."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._head = ""
        self._parts: tuple[tuple[str, bool], ...] = ()
        self._right: tuple[str, ...] = ()

    def show_words(
        self, head: str, parts: Sequence[tuple[str, bool]] = (), right: Sequence[str] = ()
    ) -> None:
        """Show *head*, then *parts* as (text, strong), then *right* set flush right."""
        self._head, self._parts, self._right = head, tuple(parts), tuple(right)
        self.tell(" ".join((head, *(text for text, _ in parts), *right)))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(200), self.look.u(11, 9)

    def paint(self, painter: QPainter) -> None:
        look, base = self.look, 0.66 * self.height()
        margin = look.u(7, 3.5)
        room = self.width() - 2 * margin
        aside = look.font(Use.PAGE_ASIDE)
        right = "   ".join(self._right)
        set_line(
            painter,
            QPointF(self.width() - margin, base),
            right,
            aside,
            look.colour("ink2"),
            align=TO_THE_RIGHT,
        )
        taken = runs_width([Run(text=right, font=aside, colour=look.colour("ink2"))])
        set_runs(painter, QPointF(margin, base), self._runs(), room - taken - look.u(4))

    def _runs(self) -> list[Run]:
        look = self.look
        strong = look.font(Use.PAGE_ASIDE)
        strong.setWeight(look.font(Use.TABLE_STRONG).weight())
        runs = [Run(text=self._head, font=look.font(Use.PAGE_HEAD), colour=look.colour("ink"))]
        gap = look.u(4)
        for text, is_strong in self._parts:
            font = strong if is_strong else look.font(Use.PAGE_ASIDE)
            colour = look.colour("ink" if is_strong else "ink2")
            runs.append(Run(text=text, font=font, colour=colour, gap=gap))
            gap = look.u(2.2) if is_strong else look.u(1)
        return runs
