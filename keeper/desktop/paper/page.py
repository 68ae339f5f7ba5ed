"""A printed page: millimetres, black ink and grey, type of 12 points or more."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from math import floor
from pathlib import Path

from PySide6.QtCore import QMarginsF, QRectF, QSizeF, Qt
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontMetricsF,
    QPagedPaintDevice,
    QPageLayout,
    QPageSize,
    QPainter,
    QPdfWriter,
    QPen,
)

from keeper.desktop.paper.sizes import Paper, paper_in_use
from keeper.desktop.type import house_face
from keeper.language import tr

LEAST_PT = 12.0
NARROW_PERCENT = 78
MARGIN_MM = 9.0
FOOT_MM = 8.0
RESOLUTION_DPI = 600
INK = QColor(0, 0, 0)
GREY = QColor(214, 214, 214)
RULE = QColor(120, 120, 120)

_MM_AN_INCH = 25.4
_PX_AN_INCH = 96.0
_LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter


@dataclass(frozen=True, slots=True)
class Box:
    """A rectangle on the page, in millimetres from its top left corner."""

    left: float
    top: float
    width: float
    height: float


class Page:
    """The page that is being drawn on. All measures are millimetres, all type is black."""

    def __init__(self, painter: QPainter, device: QPagedPaintDevice) -> None:
        self._painter, self._device = painter, device
        self._dots = device.logicalDpiX() / _MM_AN_INCH
        size = device.pageLayout().fullRect(QPageLayout.Unit.Millimeter).size()
        self.size: QSizeF = size
        self.inside = _inside(size)

    def text(
        self,
        box: Box,
        words: str,
        *,
        pt: float = LEAST_PT,
        bold: bool = False,
        align: Qt.AlignmentFlag = _LEFT,
        wrap: bool = False,
    ) -> float:
        """Write *words* in *box*: narrowed where they do not fit, then cut with dots.

        Wrapped words are narrowed only where one of them is wider than the box. Returns their
        width.
        """
        width = box.width * self._dots
        font = self._fitted(_widest(words) if wrap else words, width, pt, bold)
        self._painter.setFont(font)
        self._painter.setPen(INK)
        metrics = QFontMetricsF(font, self._device)
        said = words if wrap else metrics.elidedText(words, Qt.TextElideMode.ElideRight, width)
        flags = int(align) | (int(Qt.TextFlag.TextWordWrap) if wrap else 0)
        self._painter.drawText(self._rect(box), flags, said)
        return metrics.horizontalAdvance(said) / self._dots

    def height_of(self, words: str, width: float, *, bold: bool = False) -> float:
        """How high *words* stand when they are wrapped to *width*."""
        dots = width * self._dots
        metrics = QFontMetricsF(self._fitted(_widest(words), dots, LEAST_PT, bold), self._device)
        room = QRectF(0, 0, dots, 1e6)
        flags = int(_LEFT) | int(Qt.TextFlag.TextWordWrap)
        return metrics.boundingRect(room, flags, words).height() / self._dots

    def width_of(self, words: str, *, pt: float = LEAST_PT, bold: bool = False) -> float:
        metrics = QFontMetricsF(self._font(pt, bold), self._device)
        return metrics.horizontalAdvance(words) / self._dots

    def fill(self, box: Box) -> None:
        """Grey, for what is not to be marked."""
        self._painter.fillRect(self._rect(box), GREY)

    def frame(self, box: Box, *, thick: float = 0.35) -> None:
        """A box to be marked."""
        self._painter.setPen(QPen(INK, thick * self._dots))
        self._painter.drawRect(self._rect(box))

    def code(self, box: Box, rows: Sequence[Sequence[int]], quiet: int) -> None:
        """The black modules of a picture code in *box*, with *quiet* white ones on every side."""
        corner = self._rect(box)
        module = corner.width() / (len(rows) + 2 * quiet)
        left, top = corner.left() + quiet * module, corner.top() + quiet * module
        runs = [
            QRectF(left + first * module, top + y * module, (end - first) * module, module)
            for y, row in enumerate(rows)
            for first, end in _runs(row)
        ]
        self._painter.setPen(Qt.PenStyle.NoPen)
        self._painter.setBrush(INK)
        self._painter.drawRects(runs)
        self._painter.setBrush(Qt.BrushStyle.NoBrush)

    @contextmanager
    def picture(self, box: Box) -> Iterator[tuple[QPainter, QSizeF]]:
        """A painter for *box* and its size, both in px at 96 dpi: what the window draws with."""
        scale = self._dots * _MM_AN_INCH / _PX_AN_INCH
        painter = self._painter
        painter.save()
        painter.translate(self._rect(box).topLeft())
        painter.scale(scale, scale)
        try:
            yield painter, QSizeF(box.width, box.height) * (_PX_AN_INCH / _MM_AN_INCH)
        finally:
            painter.restore()

    def rule(self, box: Box, *, thick: float = 0.15) -> None:
        """A line along the foot of *box*."""
        self._painter.setPen(QPen(INK if thick > 0.3 else RULE, thick * self._dots))
        foot = self._rect(box)
        self._painter.drawLine(foot.bottomLeft(), foot.bottomRight())

    def foot(self, words: str) -> None:
        """The line at the foot of the page."""
        top = self.size.height() - MARGIN_MM - FOOT_MM + 2
        self.text(Box(MARGIN_MM, top, self.inside.width, FOOT_MM - 2), words)

    def _font(self, pt: float, bold: bool) -> QFont:
        face = house_face()
        font = QFont(face.family)
        font.setPointSizeF(max(pt, LEAST_PT) * max(face.factor, 1.0))
        font.setWeight(QFont.Weight.Bold if bold else QFont.Weight.Normal)
        if face.stretch != 100:
            font.setStretch(face.stretch)
        font.setFeature(QFont.Tag("liga"), 0)  # a ligature has no letters when a PDF is read back
        return font

    def _fitted(self, words: str, width: float, pt: float, bold: bool) -> QFont:
        """As high as ever, and narrower down to *NARROW_PERCENT*."""
        font = self._font(pt, bold)
        needed = QFontMetricsF(font, self._device).horizontalAdvance(words)
        if needed > width > 0:
            share = max(NARROW_PERCENT, floor(100 * width / needed) - 1)
            font.setStretch(round(house_face().stretch * share / 100))
        return font

    def _rect(self, box: Box) -> QRectF:
        edges = (box.left, box.top, box.width, box.height)
        return QRectF(*(edge * self._dots for edge in edges))


def _widest(words: str) -> str:
    """The longest of *words*, which no line of a wrapped text can do without.

    >>> _widest("a tub that is walked")
    'walked'
    """
    return max(words.split(" "), key=len)


def _runs(row: Sequence[int]) -> list[tuple[int, int]]:
    """Where black begins and ends along a row: one rectangle a run leaves no hair between.

    >>> _runs([1, 1, 0, 1])
    [(0, 2), (3, 4)]
    """
    edges, before = [], False
    for n, black in enumerate((*row, 0)):
        if bool(black) != before:
            edges.append(n)
            before = bool(black)
    return list(zip(edges[::2], edges[1::2], strict=True))


Drawing = Callable[[Page], None]


def inside_of(paper: Paper | None = None) -> Box:
    """What may be drawn on, for those who cut pages before one is begun; None: that in use."""
    size = page_layout(paper).fullRect(QPageLayout.Unit.Millimeter).size()
    return _inside(size)


def _inside(size: QSizeF) -> Box:
    high = size.height() - 2 * MARGIN_MM - FOOT_MM
    return Box(MARGIN_MM, MARGIN_MM, size.width() - 2 * MARGIN_MM, high)


def print_to(device: QPagedPaintDevice, drawings: list[Drawing]) -> None:
    """Draw one page for each of *drawings* on *device*, a PDF or a printer.

    Raises:
        OSError: the device cannot be drawn on.
    """
    painter = QPainter()
    if not painter.begin(device):
        raise OSError(tr("The paper could not be written to; look at the place and the printer."))
    try:
        for number, draw in enumerate(drawings):
            if number:
                device.newPage()
            draw(Page(painter, device))
    finally:
        painter.end()


def write_pdf(path: Path, title: str, drawings: list[Drawing], paper: Paper | None = None) -> None:
    """Write *drawings* as a PDF at *path*, whole or not at all; paper None: that in use.

    Raises:
        OSError: it cannot be written there; what stood there is unharmed.
    """
    unfinished = path.with_name(f".{path.name}.part")
    try:
        unfinished.touch()
    except OSError as error:
        told = tr("{path} cannot be written: {error}.", path=path, error=error.strerror)
        raise OSError(told) from error
    writer = QPdfWriter(str(unfinished))
    writer.setResolution(RESOLUTION_DPI)
    writer.setTitle(title)
    writer.setCreator("keeper")
    writer.setColorModel(QPdfWriter.ColorModel.Grayscale)
    writer.setPageLayout(page_layout(paper))
    try:
        print_to(writer, drawings)
        del writer
        unfinished.replace(path)
    except OSError as error:
        unfinished.unlink(missing_ok=True)
        told = tr("{path} was not written: {error}", path=path, error=error)
        raise OSError(told) from error


def page_layout(paper: Paper | None = None) -> QPageLayout:
    """The whole sheet of *paper*, None: of that in use, upright; our own margins lie inside."""
    upright = QPageLayout.Orientation.Portrait
    layout = QPageLayout(QPageSize((paper or paper_in_use()).value), upright, QMarginsF(0, 0, 0, 0))
    layout.setMode(QPageLayout.Mode.FullPageMode)
    return layout
