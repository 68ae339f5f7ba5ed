"""Plain text that follows the look: a label, the reason, and the head line of a place."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from PySide6.QtCore import QPointF
from PySide6.QtGui import QFont, QFontMetricsF, QPainter, QPalette
from PySide6.QtWidgets import QLabel, QSizePolicy, QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.kept_picture import KeptPicture
from keeper.desktop.widgets.lettering import (
    RIGHT,
    Run,
    cap_height,
    runs_width,
    set_line,
    set_runs,
    wrapped,
)
from keeper.language import tr


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


class Reason(Drawn):
    """*Because* and its reason: a heading and wrapped lines, in a small window run together.

    It takes whatever height is left. A text too long for it is set a little smaller, then cut
    with an ellipsis; the screen reader gets all of it.
    """

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._reason = ""
        self._kept = KeptPicture()
        self.lie_on("ground")
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Expanding)

    def show_reason(self, reason: str) -> None:
        """Show *reason*, one or more whole sentences."""
        if reason != self._reason:
            self._reason = reason
            self.tell(tr("Because: {reason}", reason=reason))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(80, 60), self.look.u(12)

    def paint(self, painter: QPainter) -> None:
        self._kept.lay(painter, self.size(), self.look, self._reason, self._draw, "ground")

    def _draw(self, painter: QPainter) -> None:
        look, width = self.look, self.width()
        head, body = look.font(Use.BODY_STRONG), look.font(Use.BODY)
        base = cap_height(head) + look.u(1, 0.6)
        text = self._reason
        if look.small:
            text = tr("Because: {reason}", reason=text)
        else:
            set_line(painter, QPointF(0, base), tr("Because"), head, look.colour("ink2"))
            base += look.u(6.4)
        for line, font, at in _lines_that_fit(text, body, width, self.height() - base):
            set_line(painter, QPointF(0, base + at), line, font, look.colour("ink"), room=width)


def _lines_that_fit(
    text: str, font: QFont, width: float, height: float
) -> Iterator[tuple[str, QFont, float]]:
    """Lines of *text* with their font and offset; the last is cut where *height* ends."""
    for share in (1.0, 0.93, 0.86):
        smaller = QFont(font)
        smaller.setPointSizeF(share * font.pointSizeF())
        leading = QFontMetricsF(smaller).height() * 0.98
        most = 1 + int(max(0.0, height - 0.5 * leading) / leading)
        lines = list(wrapped(text, smaller, width))
        if len(lines) <= most:
            break
    if len(lines) > most:
        lines[most - 1 :] = [" ".join(lines[most - 1 :])]
    for number, line in enumerate(lines):
        yield line, smaller, number * leading


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
        return self.look.u(200), self.look.u(10, 9)

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
            align=RIGHT,
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
            colour = look.colour("ink" if is_strong else "ink3")
            runs.append(Run(text=text, font=font, colour=colour, gap=gap))
            gap = look.u(2.2) if is_strong else look.u(1)
        return runs
