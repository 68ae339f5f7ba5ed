"""The chosen tub in three lines: who, the reason of what it shows, and what its row shows first."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QWidget

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.lettering import RIGHT, Run, advance, set_line, set_runs
from keeper.language import tr


@dataclass(frozen=True, slots=True, kw_only=True)
class TubWords:
    """place, name and who in the first line, verdict and reason in the second, row in the third.

    keys: at the right of the first, only where there is room.
    """

    place: str
    name: str
    who: str
    verdict: str = ""
    reason: str = ""
    row: str = ""
    keys: str = ""


_ROW_FIRST = tr("Row first:")
NOTHING = TubWords(place="", name="", who="")


class TubLines(Drawn):
    """A sheet with the pointer's colour at its left, since it belongs to the chosen tub."""

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self._words = NOTHING

    def show_words(self, words: TubWords) -> None:
        """Show *words*."""
        if words == self._words:
            return
        self._words = words
        row = f"{_ROW_FIRST} {words.row}" if words.row else ""
        first = " ".join(part for part in (words.place, words.name, words.who) if part)
        second = " ".join(part for part in (words.verdict, words.reason) if part)
        self.tell("; ".join(part for part in (first, second, row, words.keys) if part))

    def natural_size(self) -> tuple[float, float]:
        return self.look.u(200), self.look.u(32, 25)

    def paint(self, painter: QPainter) -> None:
        look, words = self.look, self._words
        margin, pad = look.u(7, 3.5), look.u(7, 4)
        sheet = QRectF(margin, 0, self.width() - 2 * margin, self.height() - look.u(1))
        painter.fillRect(sheet, look.colour("sheet"))
        bar = QRectF(sheet.left(), sheet.top(), look.u(1.7, 1.3), sheet.height())
        painter.fillRect(bar, look.colour("point"))
        left, room = sheet.left() + pad, sheet.width() - pad - look.u(4, 2.4)
        base = sheet.top() + look.u(9, 7.4)
        if words.place:
            self._paint_first(painter, QPointF(left, base), room)
        strong = look.font(Use.BODY_STRONG)
        strong.setWeight(look.font(Use.LINE_TITLE).weight())
        second = base + look.u(9.4, 7)
        self._paint_line(painter, QPointF(left, second), (words.verdict, words.reason), room)
        if words.row:
            third = second + look.u(8, 6)
            self._paint_line(painter, QPointF(left, third), (_ROW_FIRST, words.row), room)

    def _paint_first(self, painter: QPainter, at: QPointF, room: float) -> None:
        look, words = self.look, self._words
        big = look.font(Use.PAGE_NAME)
        big.setPointSizeF(0.74 * big.pointSizeF())
        name = look.font(Use.PAGE_NAME)
        name.setPointSizeF(big.pointSizeF())
        name.setWeight(look.font(Use.BODY_STRONG).weight())
        aside, hint = look.font(Use.PAGE_ASIDE), look.font(Use.TABLE)
        ink, ink2 = look.colour("ink"), look.colour("ink2")
        runs = [
            Run(text=words.place, font=big, colour=ink),
            Run(text=words.name, font=name, colour=ink, gap=look.u(4, 2.6)),
            Run(text=words.who, font=aside, colour=ink2, gap=look.u(4, 2.6)),
        ]
        used = set_runs(painter, at, runs, room)
        if used + look.u(4) + advance(hint, words.keys) <= room:
            end = QPointF(at.x() + room, at.y())
            set_line(painter, end, words.keys, hint, ink2, align=RIGHT)

    def _paint_line(
        self, painter: QPainter, at: QPointF, parts: tuple[str, str], room: float
    ) -> None:
        """A strong beginning and its sentence, smaller where it is long, then cut."""
        look, (head, sentence) = self.look, parts
        strong, plain = look.font(Use.BODY_STRONG), look.font(Use.BODY)
        strong.setWeight(look.font(Use.LINE_TITLE).weight())
        ink = look.colour("ink")
        used = set_line(painter, at, head, strong, ink)
        used += look.u(2.4, 1.6) if head else 0.0
        left = room - used
        for _ in range(8):
            if advance(plain, sentence) <= left or plain.pointSizeF() <= 9.0:
                break
            plain.setPointSizeF(0.97 * plain.pointSizeF())
        set_line(painter, QPointF(at.x() + used, at.y()), sentence, plain, ink, room=left)
