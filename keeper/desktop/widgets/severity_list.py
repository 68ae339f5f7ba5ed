"""Lines of trouble in a list: severity block, title, reasons, how it ends; causes on a bracket."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from PySide6.QtCore import (
    QAbstractItemModel,
    QLineF,
    QPointF,
    QRect,
    QRectF,
    QSize,
    Qt,
)
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import (
    QAbstractItemView,
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.kept_picture import KeptRows, seen
from keeper.desktop.widgets.lettering import (
    CENTRE,
    RIGHT,
    Run,
    advance,
    font_to_fit,
    middle_baseline,
    set_line,
    set_runs,
    wrapped,
)
from keeper.desktop.widgets.row_list import FACE_ROLE, Index
from keeper.desktop.widgets.stamps import stamp_tile
from keeper.desktop.widgets.tile import FACES, TileState
from keeper.language import tr

_MOST_REASON_LINES, _MOST_WITH_CAUTIONS = 2, 5
_KEPT_MOST = 500
_ROWS_KEPT = 48


@dataclass(frozen=True, slots=True, kw_only=True)
class MemberFace:
    """An animal that a cause holds: its place, its name, what it shows, and a word at the right."""

    place: str
    name: str
    words: str
    aside: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class LineFace:
    """One line. reasons: whole sentences; cautions: those of them that must be seen in the list.

    count, of: large and small words under the block of a cause. mark: a word before the reasons.
    """

    severity: TileState
    title: str
    reasons: tuple[str, ...]
    cautions: tuple[str, ...] = ()
    since: str = ""
    ends: str = ""
    mark: str = ""
    count: str = ""
    of: str = ""
    members: tuple[MemberFace, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class AsideFace:
    """A line put aside: whose, the keeper's own words, till when; the first bears the heading."""

    heading: str
    place: str
    name: str
    words: str
    till: str


Face = LineFace | AsideFace


class SeverityList(QListView):
    """Shows a model whose ``FACE_ROLE`` gives a ``Face``; arrows walk, Enter activates.

    It scrolls line by line, and a line that is not all in view is not shown yet.
    """

    def __init__(
        self, look: Look, model: QAbstractItemModel, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setModel(model)
        self.setItemDelegate(LinePainter(look, self))
        self.setObjectName("watch lines")
        self.setAccessibleName(tr("what needs a look, worst first"))
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerItem)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setFrameShape(QListView.Shape.NoFrame)
        look.changed.connect(self.scheduleDelayedItemsLayout)


def shown_reasons(face: LineFace, room: float, fits: LineFits) -> list[str]:
    """As many whole sentences as fill the lines there are, cautions first kept, in their order.

    Two lines, and more only where the first reason and the cautions need them.
    """
    kept = [text for text in face.reasons[:1] if text]
    kept += [text for text in face.cautions if text not in kept]
    needed = len(fits(f"{face.mark} {' '.join(kept)}".strip(), room))
    most = max(_MOST_REASON_LINES, min(_MOST_WITH_CAUTIONS, needed))
    for text in face.reasons[1:]:
        tried = [s for s in face.reasons if s == text or s in kept]
        if text not in kept and len(fits(" ".join(tried), room)) <= most:
            kept.append(text)
    told = " ".join(text for text in face.reasons if text in kept)
    lines = fits(f"{face.mark} {told}".strip(), room)
    if len(lines) > most:
        lines = [*lines[: most - 1], " ".join(lines[most - 1 :])]
    return lines


class LineFits:
    """Breaks a text into lines in one font; what was broken lately is kept."""

    def __init__(self, look: Look) -> None:
        self._look = look
        self._font = look.font(Use.BODY)
        self._kept: dict[tuple[str, float], list[str]] = {}

    def __call__(self, text: str, room: float) -> list[str]:
        if (font := self._look.font(Use.BODY)) != self._font or len(self._kept) > _KEPT_MOST:
            self._font = font
            self._kept.clear()
        if (text, room) not in self._kept:
            self._kept[text, room] = list(wrapped(text, font, room))
        return list(self._kept[text, room])


class LinePainter(QStyledItemDelegate):
    """Paints a ``Face`` in its row; nothing is clipped that has room."""

    def __init__(self, look: Look, view: QListView) -> None:
        super().__init__(view)
        self._look, self._view, self._fits = look, view, LineFits(look)
        self._rows = KeptRows(_ROWS_KEPT)

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        width = self._view.viewport().width()
        face = index.data(FACE_ROLE)
        return QSize(width, round(self._height(face, width)))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        if option.rect.top() > 0 and option.rect.bottom() > self._view.viewport().height():
            return
        face, look = index.data(FACE_ROLE), self._look
        here = bool(option.state & QStyle.StateFlag.State_Selected)
        self._rows.lay(
            painter,
            option.rect,
            (face, here),
            seen(look),
            lambda p, r: self._paint(p, r, face, here),
        )

    def _paint(self, painter: QPainter, area: QRect, face: Face, here: bool) -> None:
        rect = QRectF(area)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setClipRect(rect)
        if isinstance(face, LineFace):
            self._paint_line(painter, rect, face, here)
        else:
            self._paint_aside(painter, rect, face, here)
        painter.restore()

    def _height(self, face: Face, width: float) -> float:
        look = self._look
        if isinstance(face, AsideFace):
            return look.u(6.6, 5.4) + (look.u(4, 3) if face.heading else 0.0)
        if _is_short(face):
            return look.u(8.8, 7)
        room = self._inside(QRectF(0, 0, width, 10)).width()
        lines = shown_reasons(face, room, self._fits)
        high = look.u(8.4, 6.8) + len(lines) * look.u(6, 5) + look.u(2.2, 1.6)
        return high + len(face.members) * self._member_px()

    def _member_px(self) -> float:
        return self._look.u(7, 5.8)

    def _block_px(self) -> float:
        return self._look.u(28, 21)

    def _inside(self, rect: QRectF) -> QRectF:
        """Where words go: right of the block and of the pointer beside it."""
        look = self._look
        left = self._block_px() + look.u(4.6, 3)
        return rect.adjusted(left, 0, -look.u(2.5, 1.5), 0)

    def _paint_line(self, painter: QPainter, rect: QRectF, face: LineFace, here: bool) -> None:
        look = self._look
        area = rect.adjusted(0, 0, 0, -look.u(2.2, 1.6))
        block = QRectF(area.left(), area.top(), self._block_px(), area.height())
        if here:
            paper = QRectF(area)
            paper.setLeft(block.right())
            painter.fillRect(paper, look.colour("sheet"))
            pointer = QRectF(block.right() + 2, area.top(), look.u(1.3, 1), area.height())
            painter.fillRect(pointer, look.colour("point"))
        self._paint_block(painter, block, face)
        inside = self._inside(area)
        if _is_short(face):
            self._paint_short(painter, inside, face)
            return
        base = area.top() + look.u(5.8, 4.7)
        self._paint_title(painter, inside, base, face)
        lines = shown_reasons(face, inside.width(), self._fits)
        font = look.font(Use.BODY)
        for text in lines:
            base += look.u(6, 5)
            place = QPointF(inside.left(), base)
            set_line(painter, place, text, font, look.colour("ink2"), room=inside.width())
        if face.members:
            self._paint_members(painter, inside, base + look.u(1.6, 1.2), face.members)

    def _paint_block(self, painter: QPainter, block: QRectF, face: LineFace) -> None:
        look = self._look
        tile = QRectF(block)
        tile.setHeight(min(block.height(), look.u(14, 11)))
        font = look.font(Use.BODY_STRONG)
        font.setWeight(look.font(Use.LINE_TITLE).weight())
        stamp_tile(painter, tile, face.severity, look.palette, font=font)
        if not face.members:
            return
        pen = QPen(look.colour("ink"), 2.0)
        pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(block.adjusted(1, 1, -1, -1))
        middle, base = block.center().x(), tile.bottom() + look.u(9, 7)
        if base + look.u(7, 5) > block.bottom():
            return
        large = look.font(Use.PAGE_HEAD)
        set_line(
            painter, QPointF(middle, base), face.count, large, look.colour("ink"), align=CENTRE
        )
        small = QPointF(middle, base + look.u(6, 5))
        set_line(painter, small, face.of, look.font(Use.TABLE), look.colour("ink2"), align=CENTRE)

    def _paint_title(self, painter: QPainter, inside: QRectF, base: float, face: LineFace) -> None:
        """The title in full where it can be, then how it ends, then since when."""
        look = self._look
        font, plain = look.font(Use.LINE_TITLE), look.font(Use.TABLE)
        place = QPointF(inside.left(), base)
        used = set_line(painter, place, face.title, font, look.colour("ink"), room=inside.width())
        room = inside.width() - used - look.u(4, 2)
        gap = look.u(4, 2.5)
        right = inside.right()
        for text in (face.ends, face.since):
            wide = advance(plain, text)
            if not text or wide > room:
                continue
            at = QPointF(right, base)
            set_line(painter, at, text, plain, look.colour("ink2"), align=RIGHT)
            right, room = right - wide - gap, room - wide - gap

    def _paint_short(self, painter: QPainter, inside: QRectF, face: LineFace) -> None:
        look = self._look
        strong, plain = look.font(Use.BODY_STRONG), look.font(Use.BODY)
        base = middle_baseline(inside, strong)
        ends = look.font(Use.TABLE)
        wide = advance(ends, face.ends)
        at = QPointF(inside.right(), base)
        set_line(painter, at, face.ends, ends, look.colour("ink2"), align=RIGHT)
        runs = [
            Run(text=face.title, font=strong, colour=look.colour("ink")),
            Run(text=" ".join(face.reasons), font=plain, colour=look.colour("ink2"), gap=look.u(3)),
        ]
        room = inside.width() - wide - look.u(4, 2)
        set_runs(painter, QPointF(inside.left(), base), runs, room)

    def _paint_members(
        self, painter: QPainter, inside: QRectF, top: float, members: Sequence[MemberFace]
    ) -> None:
        """The bracket with a tooth for each animal, and the animals."""
        look, high = self._look, self._member_px()
        left = inside.left() + look.u(1.8, 1.2)
        middles = [top + (n + 0.5) * high for n in range(len(members))]
        painter.setPen(QPen(look.colour("line"), 1.4))
        lines = [QLineF(left, top, left, middles[-1])]
        lines += [QLineF(left, y, left + look.u(3.4, 2.2), y) for y in middles]
        painter.drawLines(lines)
        for member, y in zip(members, middles, strict=True):
            row = QRectF(left, y - high / 2, inside.right() - left, high)
            self._paint_member(painter, row, member)

    def _paint_member(self, painter: QPainter, row: QRectF, member: MemberFace) -> None:
        look = self._look
        strong, plain = look.font(Use.TABLE_STRONG), look.font(Use.TABLE)
        base = middle_baseline(row, strong)
        at = QPointF(row.right(), base)
        right = set_line(painter, at, member.aside, plain, look.colour("ink2"), align=RIGHT)
        columns = (
            (member.place, strong, look.u(5.4, 3.6), look.u(13, 10)),
            (member.name, plain, look.u(20, 15), look.u(23, 17)),
            (member.words, plain, look.u(45, 33), row.width() - look.u(47, 34) - right),
        )
        for text, font, left, room in columns:
            place = QPointF(row.left() + left, base)
            set_line(painter, place, text, font, look.colour("ink"), room=room)

    def _paint_aside(self, painter: QPainter, rect: QRectF, face: AsideFace, here: bool) -> None:
        look = self._look
        row = QRectF(rect)
        if face.heading:
            row.setTop(rect.top() + look.u(4, 3))
            painter.setPen(QPen(look.colour("line"), 1.0))
            y = rect.top() + look.u(1.5, 1)
            painter.drawLine(QLineF(rect.left(), y, rect.right(), y))
        inside = self._inside(row)
        if here:
            painter.fillRect(inside.adjusted(-look.u(3), 0, 0, 0), look.colour("sheet"))
            bar = QRectF(row.left() + self._block_px() + 2, row.top(), look.u(1.3, 1), row.height())
            painter.fillRect(bar, look.colour("point"))
        strong, plain = look.font(Use.TABLE_STRONG), look.font(Use.TABLE)
        base, ink = middle_baseline(row, strong), look.colour("ink2")
        set_line(painter, QPointF(row.left(), base), face.heading, strong, ink)
        till = advance(plain, face.till)
        set_line(painter, QPointF(inside.right(), base), face.till, plain, ink, align=RIGHT)
        room = inside.width() - look.u(34, 26) - till - look.u(3)
        for text, font, left, wide in (
            (face.place, strong, 0.0, look.u(13, 10)),
            (face.name, plain, look.u(14, 11), look.u(19, 14)),
            (face.words, plain, look.u(34, 26), room),
        ):
            fitted = font_to_fit(font, text, wide, 8.0)
            place = QPointF(inside.left() + left, base)
            set_line(painter, place, text, fitted, ink, room=wide)


def _is_short(face: LineFace) -> bool:
    return face.severity is TileState.NOTED


def said(face: Face) -> str:
    """A line in words, for a screen reader."""
    return ". ".join(part for part in _parts(face) if part)


def _parts(face: Face) -> Iterator[str]:
    if isinstance(face, AsideFace):
        yield tr("put aside: {place} {name}", place=face.place, name=face.name)
        yield f"{face.words}, {face.till}"
        return
    yield f"{FACES[face.severity].words}: {face.title}"
    yield " ".join((face.mark, *face.reasons)).strip().rstrip(".")
    yield f"{face.since}, {face.ends}".strip(", ")
    for member in face.members:
        yield f"{member.place} {member.name}: {member.words}"
